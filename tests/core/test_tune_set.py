"""Sets by hand: D and U are the strokes, and each case can be counted through on paper."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.bowing import Bow
from core.tune_set import (
    Entry,
    Playing,
    Seam,
    TuneSet,
    comes_round,
    seams,
)
from tests.core.builders import bowed

EVEN = "A4B4|c4d4|"  # D U D U
ODD = "A4B4|c4d2e2|"  # D U D U D
PICKUP = "A2|B4c4|d6|"  # U D U D


def set_of(*texts: str, times: tuple[int, ...] = ()) -> TuneSet:
    entries = (bowed(text) for text in texts)
    return TuneSet(tuple(Entry(t, b, n) for (t, b), n in zip(entries, times or [1] * len(texts), strict=True)))


def told(found: tuple[Seam, ...]) -> list[str]:
    """Each seam as "next DU": way, last and first stroke; behind it what is to say of it."""
    return [
        f"{seam.way.value} {'D' if seam.last is Bow.DOWN else 'U'}{'D' if seam.first is Bow.DOWN else 'U'}"
        + " turned" * seam.is_turned + " retake" * seam.is_retake + " rest" * seam.over_rest
        for seam in found
    ]  # fmt: skip


def seams_of(*texts: str, times: tuple[int, ...] = ()) -> list[str]:
    return told(seams(set_of(*texts, times=times)))


class TestFromTuneToTune:
    def test_an_even_tune_leads_into_the_next_by_itself(self) -> None:
        assert seams_of(EVEN, EVEN) == ["next UD", "round UD"]

    def test_an_odd_tune_turns_the_next_round(self) -> None:
        # D U D U D, then U D U D, which ends down: the start comes up as well
        assert seams_of(ODD, EVEN) == ["next DU turned", "round DU turned"]

    def test_two_odd_tunes_together_come_round(self) -> None:
        assert seams_of(ODD, ODD) == ["next DU turned", "round UD"]

    def test_a_mark_on_the_first_note_is_a_retake_where_the_bow_stands_wrong(self) -> None:
        assert seams_of(ODD, "v" + EVEN) == ["next DD retake", "round UD"]

    def test_a_mark_that_alternation_brings_anyhow_is_none(self) -> None:
        assert seams_of(EVEN, "v" + EVEN) == ["next UD", "round UD"]

    def test_a_pick_up_wants_an_up_bow(self) -> None:
        # U D U D | then EVEN wants D and gets U; EVEN ends up where it came in down: D U D U; turned: U D U D
        assert seams_of(PICKUP, EVEN) == ["next DU turned", "round DU"]
        assert seams_of(EVEN, PICKUP) == ["next UD turned", "round UD"]
        assert seams_of(ODD, PICKUP) == ["next DU", "round DU turned"]

    def test_a_later_mark_sets_a_turned_tune_right(self) -> None:
        found = seams(set_of(ODD, "A4B4|vc4d4|"))
        assert told(found) == ["next DU turned", "round UD"]
        assert found[0].right_from == "b1n1"

    def test_a_tune_turned_to_its_end_is_right_from_nowhere(self) -> None:
        assert seams(set_of(ODD, EVEN))[0].right_from is None
        assert seams(set_of(EVEN, EVEN))[0].right_from is None

    def test_a_retake_written_on_the_first_note_repeats_the_stroke_before(self) -> None:
        tune, bowing = bowed(EVEN)
        retaken = replace(bowing, retakes=frozenset({"b0n1"}))
        found = seams(TuneSet((*set_of(ODD).entries, Entry(tune, retaken))))
        assert told(found)[0] == "next DD retake"


class TestRests:
    @pytest.mark.parametrize(
        "texts", [("A4B4|c4d2e2|z8|", "v" + EVEN), (ODD, "z2vA4B2|c4d4|"), ("A4B4|c4d2ez|", "v" + EVEN)]
    )
    def test_one_at_the_join_makes_the_retake_cheap(self, texts: tuple[str, str]) -> None:
        assert seams_of(*texts)[0] == "next DD retake rest"

    def test_one_inside_a_tune_does_not(self) -> None:
        assert seams_of("A4z2B2|c4d2e2|", "v" + EVEN)[0] == "next DD retake"

    def test_a_tune_of_rests_is_a_rest_between_its_neighbours(self) -> None:
        tune_set = set_of(ODD, "z8|", EVEN)
        found = seams(tune_set)
        assert told(found) == ["next DU turned rest", "round DU turned"]
        assert (found[0].before, found[0].after) == (Playing(0, 1), Playing(2, 1))

    def test_tunes_of_rests_at_the_start_are_passed_over_on_the_way_round(self) -> None:
        found = seams(set_of("z8|", EVEN))
        assert told(found) == ["round UD rest"]
        assert (found[0].before, found[0].after) == (Playing(1, 1), Playing(1, 1))

    def test_nothing_but_rests_and_no_tunes_at_all_have_no_seams(self) -> None:
        assert seams_of("z8|", "z8|") == []
        assert seams(TuneSet(())) == ()
        assert comes_round(())


class TestTimesThrough:
    def test_an_odd_tune_turns_round_every_other_time(self) -> None:
        assert seams_of(ODD, times=(4,)) == ["again DU turned", "again UD", "again DU turned", "round UD"]

    def test_an_odd_tune_twice_leads_on_as_an_even_one(self) -> None:
        assert seams_of(ODD, EVEN, times=(2, 1)) == ["again DU turned", "next UD", "round UD"]

    def test_a_pass_of_a_mark_is_counted_anew_each_time(self) -> None:
        tune, bowing = bowed("|:A4B2c2:|")  # D U D, U D U, and so on
        only_first = replace(bowing, marks=bowed("|:vA4B2c2:|")[1].marks)
        assert told(seams(TuneSet((Entry(tune, only_first, 2),)))) == ["again DD retake", "round DD retake"]

    def test_a_lone_tune_has_the_way_back_to_its_start(self) -> None:
        assert seams_of(ODD) == ["round DU turned"]
        assert comes_round(seams(set_of(EVEN)))
        assert not comes_round(seams(set_of(ODD)))
