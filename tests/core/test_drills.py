"""Drills on typed bars; what is due is counted by hand."""

import pytest
from hypothesis import given, settings

from core.accents import Met, weigh
from core.bowing import Bow, Join
from core.drills import DRILLS, drill_bowing, running_length
from core.errors import RefusedEditError
from core.exercise import pose_exercise
from core.strokes import work_out
from tests.core.builders import bowed, bows
from tests.property.strategies import lessons

REEL = "|:GABc dedB|GABc dedB|GABc dedB|GABc dedB:|"
JIG = "|:GAB cde|GAB cde|GAB cde|GAB cde:|"


def drilled(text: str, name: str, meter: str = "4/4") -> str:
    tune, bowing = bowed(text, meter)
    return bows(tune, drill_bowing(tune, bowing, name))


def test_separate_bows_have_no_slur() -> None:
    assert drilled("|:(GAB)c dedB:|", "separate") == "D U D U D U D U | D U D U D U D U"


def test_pairs_begin_with_the_beat() -> None:
    assert drilled(REEL, "pairs").split(" | ")[0] in ("D=D U=U D=D U=U", "U=U D=D U=U D=D")


def test_pairs_across_the_beat_go_over_the_bar_line_but_not_over_a_repeat() -> None:
    tune, bowing = bowed(REEL)
    joins = drill_bowing(tune, bowing, "pairs-across").joins
    assert {"b1n1", "b2n1", "b3n1"} <= set(joins)
    assert "b0n1" not in joins


def test_three_and_one_drives_the_beat() -> None:
    assert drilled(REEL, "three-and-one").startswith("D=D=D U D=D=D U | D=D=D U D=D=D U")


def test_one_and_three_drives_the_beat() -> None:
    assert drilled(REEL, "one-and-three").startswith("D U=U=U D U=U=U | D U=U=U D U=U=U")


def test_threes_go_over_the_bar_line_and_leave_the_backbeat_a_down_bow() -> None:
    tune, bowing = bowed(REEL)
    found = drill_bowing(tune, bowing, "threes-across")
    assert {"b1n1", "b1n2", "b2n1", "b2n2", "b3n1", "b3n2"} <= set(found.joins)
    met = weigh(tune, found, work_out(tune, found)).met
    assert {accent.met for accent in met} == {Met.DRIVEN}


def test_in_compound_time_the_groups_are_threes() -> None:
    assert drilled(JIG, "three-and-one", "6/8").split(" | ")[1] in ("D=D=D U=U=U", "U=U=U D=D=D")
    tune, bowing = bowed(JIG, "6/8")
    joins = drill_bowing(tune, bowing, "threes-across").joins
    assert {"b1n1", "b1n2"} <= set(joins)


def test_equal_pitches_rests_and_other_lengths_are_not_slurred_by_a_pattern() -> None:
    tune, bowing = bowed("|:GGBc d2zB|GABc dedB:|")
    joins = drill_bowing(tune, bowing, "pairs").joins
    assert joins.keys() >= {"b0n4", "b1n2", "b1n4", "b1n6", "b1n8"}
    assert not joins.keys() & {"b0n2", "b0n5", "b0n7"}


def test_the_other_bow_turns_every_stroke_round() -> None:
    tune, bowing = bowed("|:vG(AB)c rdeudB:|")
    turned = drill_bowing(tune, bowing, "other-bow")
    before, after = (work_out(tune, each).played for each in (bowing, turned))
    assert [played.bow.turned for played in before] == [played.bow for played in after]
    assert before[0].bow is Bow.DOWN
    assert turned.joins == bowing.joins


def test_signs_are_taken_over_and_slurs_are_not() -> None:
    tune, bowing = bowed("|:~G(AB)c dedB|GABc dedB:|")
    found = drill_bowing(tune, bowing, "on-beat")
    assert found.signs == bowing.signs
    assert found.name == DRILLS["on-beat"].title


def test_a_drill_that_a_tune_has_no_notes_for_is_refused_in_words() -> None:
    tune, bowing = bowed("|:G4 A4|B4 c4:|")
    assert running_length(tune) == 2
    with pytest.raises(RefusedEditError, match="Three and one"):
        drill_bowing(tune, bowing, "three-and-one")


@settings(max_examples=10, deadline=None)
@given(lessons())
def test_every_drill_bows_any_tune_or_refuses_in_a_sentence(lesson) -> None:
    for name in DRILLS:
        try:
            found = drill_bowing(lesson.tune, lesson.bowings[0], name)
        except RefusedEditError as refusal:
            said = str(refusal)
        else:
            said = "."
            work_out(lesson.tune, found)
            assert found.signs == lesson.bowings[0].signs
        assert said.endswith(".")


class TestExercise:
    """What is asked, and its key."""

    def test_nothing_of_the_bowing_is_given(self) -> None:
        tune, bowing = bowed("|:(GA)Bc vded~B|(GA)Bc dedB:|")
        posed = pose_exercise(tune, bowing)
        assert not posed.asked.joins
        assert not posed.asked.marks
        assert not posed.shown
        assert posed.asked.signs == bowing.signs
        assert posed.answer == bowing
        assert posed.task == "Write in how the bow goes."

    def test_the_bars_before_are_given(self) -> None:
        tune, bowing = bowed("d2|(GA)Bc dedB|(GA)Bc (de)dB|]")
        posed = pose_exercise(tune, bowing, from_bar=2)
        assert posed.asked.joins == {"b1n2": Join.SLUR}
        assert {"b0n1", "b1n8"} <= posed.shown
        assert "b2n1" not in posed.shown
        assert posed.task == "Write in how the bow goes from bar 2 on."

    def test_a_drill_asks_for_its_own_bowing(self) -> None:
        tune, bowing = bowed(REEL)
        posed = pose_exercise(tune, bowing, 3, "three-and-one")
        assert posed.task == DRILLS["three-and-one"].task + " Write slurs and bows in from bar 3 on."
        assert posed.answer.joins["b2n2"] is Join.SLUR
        assert "b2n2" not in posed.asked.joins
        assert "b1n2" in posed.asked.joins
