"""Habits in words, with their counts."""

from dataclasses import replace

import pytest

from core.style.habits import FEWEST_CASES, Habit, habits
from core.style.learning import example
from tests.core.builders import bowed
from tests.core.style.hands import examples, falls_from_the_beat, lesson


def told(text: str, title: str = "Typed"):
    tune, bowing = bowed(text)
    return habits([example(replace(tune, title=title), bowing)])


def test_the_hand_of_the_invented_lessons_is_told():
    first = habits(examples())[0]
    assert first.figure in {("two equal notes", f"falling by a {size}", "from the beat") for size in ("step", "leap")}
    assert first.joined == first.seen > FEWEST_CASES


def test_cases_are_counted():
    """Eighths that fall by a step from the beat: 4 in each bar, one of the sixteen apart."""
    slurred, plain = "(BA)(BA)(BA)(BA)", "(BA)(BA)BA(BA)"
    fell = next(one for one in told(f"{slurred} | {slurred} | {plain} | {slurred}") if "from the beat" in one.figure)
    assert (fell.joined, fell.seen) == (15, 16)
    assert fell.sentence().startswith("Slurred in 94% of the cases (15 of 16): ")
    assert fell.sentence().endswith(", for example bars 1, 2, 3 and 4.")


def test_what_is_hardly_ever_slurred_is_told_as_that():
    bars = " | ".join(["(Bd)(Bd)(Bd)(Bd)"] * 4)
    assert any("Hardly ever slurred (0 of 15 cases): two equal notes" in one.sentence() for one in told(bars))


def test_cases_come_from_several_tunes():
    shown = [example(*lesson(seed)) for seed in range(3)]
    sentence = habits(shown)[0].sentence()
    assert all(f"of “Lesson {seed}”" in sentence for seed in range(3))


def test_a_pickup_is_told_by_its_name():
    habit = Habit(("two equal notes",), 9, 10, (("Tune", 0), ("Tune", 3)))
    assert habit.sentence().endswith("for example the pick-up and bar 3.")


def test_no_habit_is_told_twice():
    found = habits(examples())
    assert len({one.figure for one in found}) == len(found)


@pytest.mark.parametrize("text", ["BA", "BABA BABA"])
def test_few_cases_make_no_habit(text):
    assert told(text) == ()


def test_every_place_of_a_lesson_is_in_one_figure_of_each_kind():
    shown = [example(*lesson(0, falls_from_the_beat))]
    places = sum(len(one.joined) for one in shown)
    assert all(one.seen <= places for one in habits(shown))
