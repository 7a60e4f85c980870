"""Answers that are kept with the value they depend on."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from fractions import Fraction

from core.accent_plan import AccentPlan, PlanKind
from core.accents import SPOTS_KEPT, weigh
from core.bowing import Bowing, Signs, set_plan, set_signs
from core.once import lately, once
from core.strings import FINGERINGS_KEPT, strings_of
from core.strokes import work_out
from tests.core.builders import tune_of


@dataclass(frozen=True)
class Value:
    number: int


def test_an_answer_is_worked_out_once_for_each_choice_of_arguments():
    asked = []

    @once
    def times(value: Value, factor: int = 1) -> tuple[int]:
        asked.append(factor)
        return (value.number * factor,)

    value = Value(7)
    answers = [times(value, factor) for factor in range(500)]
    assert all(times(value, factor) is answer for factor, answer in enumerate(answers))
    assert times(value, factor=3) == (21,)
    assert asked == [*range(500), 3]
    assert times(Value(7)) is not times(value)


def test_of_ever_new_arguments_only_the_last_are_kept():
    asked = []

    @lately(3)
    def times(value: Value, factor: int) -> int:
        asked.append(factor)
        return value.number * factor

    value = Value(7)
    assert [times(value, factor) for factor in range(5)] == [0, 7, 14, 21, 28]
    assert [times(value, factor) for factor in (4, 3, 2)] == [28, 21, 14]
    assert asked == [0, 1, 2, 3, 4]
    assert times(value, 0) == 0
    assert asked == [0, 1, 2, 3, 4, 0]
    assert [len(kept) for name, kept in value.__dict__.items() if name != "number"] == [3]


def test_threads_that_forget_for_one_another_still_have_right_answers():
    @lately(2)
    def times(value: Value, factor: int) -> int:
        return value.number * factor

    value = Value(7)

    def ask(start: int) -> bool:
        return all(times(value, (start + step) % 9) == 7 * ((start + step) % 9) for step in range(4000))

    with ThreadPoolExecutor(6) as threads:
        assert all(threads.map(ask, range(6)))


def test_a_tune_gathers_no_more_with_every_fingering_and_every_accent_plan():
    tune, bowing = tune_of("ABcd efga | ABcd efga | ABcd efga | ABcd efga |"), Bowing("Plain")
    fingers = [(note.id, str(finger)) for note in tune.sequence for finger in range(5)]
    for note_id, finger in fingers:
        bowing = set_signs(bowing, note_id, Signs(fingerings=(finger,)))
        strings_of(tune, bowing)
    for place in range(1, 2 * SPOTS_KEPT):
        drawn = set_plan(tune, bowing, AccentPlan(PlanKind.PLACES, (Fraction(place, 3 * SPOTS_KEPT),)))
        weigh(tune, drawn, work_out(tune, drawn))
    sizes = [len(kept) for name, kept in tune.__dict__.items() if name.startswith("_core.")]
    assert len(fingers) > FINGERINGS_KEPT
    assert max(sizes) == SPOTS_KEPT
    assert FINGERINGS_KEPT in sizes
