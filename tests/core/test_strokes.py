from dataclasses import replace
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.bowing import Bow, Bowing, Grace, Join, Ornament, Signs, fix_bow, join, set_signs
from core.order import Visit
from core.strokes import EFFECTS, NEXT_BOW, STEP_OF_JOIN, STEP_OF_MARK, Step, work_out
from core.tune import Tune
from tests.core.builders import bowed, bows
from tests.property.strategies import bowings, tunes


def directions(text: str, meter: str = "4/4") -> str:
    return bows(*bowed(text, meter))


def test_the_tables_are_complete() -> None:
    assert set(NEXT_BOW) == set(product(Bow, Step))
    assert set(EFFECTS) == set(Step)
    assert set(STEP_OF_JOIN) == set(Join)
    assert set(STEP_OF_MARK) == set(Bow)


def test_strokes_alternate_and_slurs_keep_the_direction() -> None:
    assert directions("A(Bc)d (efg)a") == "D U=U D U=U=U D"


def test_a_tied_note_is_held_in_one_stroke() -> None:
    tune, bowing = bowed("A4 B4-|B4 c4")
    assert bows(tune, bowing) == "D U | =U D"
    assert [note.struck for note in work_out(tune, bowing).played] == [True, True, False, True]


def test_hooked_notes_share_a_direction_and_are_struck() -> None:
    tune, bowing = bowed("A=B c2 =d2 e2")
    assert bows(tune, bowing) == "D=D U=U D"
    assert [note.struck for note in work_out(tune, bowing).played] == [True] * 5
    assert [note.starts for note in work_out(tune, bowing).played] == [True, False, True, False, True]


@pytest.mark.parametrize("ornament", Ornament)
def test_ornaments_and_grace_notes_turn_no_stroke_round(ornament: Ornament) -> None:
    """Rule B8; a bowed triplet is three strokes and ends as it began."""
    tune, bowing = bowed("A2B2c2d2|")
    signs = Signs(graces=(Grace(tune.bars[0].notes[2].pitches),), ornaments=(ornament,))
    assert bows(tune, set_signs(bowing, "b0n2", signs)) == "D U D U"


class TestFirstStroke:
    """Rule B6."""

    @pytest.mark.parametrize(
        ("text", "expected"),
        [
            ("A4 B4|c8", "D U | D"),  # on the beat
            ("A2 B2 c2|d8", "U D U | D"),
            ("A|B4 c4|", "U | D U"),
            ("AB|c8|", "D U | D"),
            ("ABc|d8|", "U D U | D"),
            ("(AB)|c8|", "U=U | D"),
            ("(A|B)cdefgab|", "D | =D U D U D U D U"),  # the slur runs over the bar line
            ("A-|A8|", "D | =D"),
            ("A|zBcd efga|b8", "D | - U D U D U D U | D"),  # nothing begins the bar after the pick-up
            ("z8|A4B4|", "- | D U"),
            ("z2A2|", "- U"),  # nothing follows: as if a full bar did
            ("z8|", "-"),
        ],
    )
    def test_without_any_mark(self, text: str, expected: str) -> None:
        assert directions(text) == expected

    @pytest.mark.parametrize(
        ("text", "expected"),
        [
            ("uA4 B4|", "U D"),
            ("A4 uB4|", "D U"),
            ("A4 vB4|", "D D"),  # on the beat starts down; the mark then asks for a retake
            ("vA|B8|", "D | U"),
            ("AuB|c8|", "D U | D"),
            ("AvBc|d8|", "U D U | D"),
            ("ABvc|d8|", "D U D | U"),  # the mark is reached without a retake
            ("AB|uc8|", "U D | U"),
            ("zAvBc d4|e8|", "- U D U D | U"),
            ("AB(c|ud4) e4|", "D U D | =D U"),  # inside a stroke a mark sets nothing
            ("AB|c4 ud4 ve4 uf4|", "D U | D U D U"),
        ],
    )
    def test_with_marks(self, text: str, expected: str) -> None:
        assert directions(text) == expected


class TestMarksAndRetakes:
    """Rules B4, B5, B7 and B12."""

    def test_a_mark_sets_the_direction_of_its_stroke(self) -> None:
        tune, bowing = bowed("A2 vB2 c2 uc2")
        assert bows(tune, bowing) == "D D U U"
        assert [note.retake for note in work_out(tune, bowing).played] == [False, True, False, True]

    def test_a_retake_repeats_whatever_direction_came_before(self) -> None:
        assert directions("A2 rB2 c2 d2") == "D D U D"
        assert directions("uA2 rB2 c2 d2") == "U U D U"

    def test_a_retake_on_the_first_stroke_means_nothing(self) -> None:
        assert directions("rA4 B4|") == "D U"

    def test_a_mark_inside_a_stroke_changes_nothing(self) -> None:
        assert directions("(A uB) c2 =vd2 e2") == "D=D U=U D"

    def test_a_rest_does_not_change_alternation(self) -> None:
        assert directions("A2 z2 B2 z2|c2 z2 d4") == "D - U - | D - U"

    def test_a_retake_over_a_rest_is_told_apart(self) -> None:
        tune, bowing = bowed("A2 z2 vB2 vc2")
        played = work_out(tune, bowing).played
        assert [(note.retake, note.over_rest) for note in played] == [(False, False), (True, True), (True, False)]

    def test_a_mark_for_one_pass_leaves_the_other_alone(self) -> None:
        tune, bowing = bowed("|:A2 B2 c2 d2:|")
        assert bows(tune, fix_bow(tune, bowing, "b0n1", Bow.UP, only_pass=2)) == "D U D U | U D U D"


class TestPasses:
    """Rules B10 and B11."""

    def test_alternation_runs_on_over_a_repeat(self) -> None:
        tune, bowing = bowed("|:A4 B2 c2:|")
        assert bows(tune, bowing) == "D U D | U D U"
        assert work_out(tune, bowing).bows == {
            "b0n1": (Bow.DOWN, Bow.UP),
            "b0n2": (Bow.UP, Bow.DOWN),
            "b0n3": (Bow.DOWN, Bow.UP),
        }

    def test_a_slur_from_the_first_ending_does_not_reach_the_second(self) -> None:
        assert directions("|:A4 (B4|[1c4) d4:|[2e4 f4|]") == "D U | =U D | U D | U D"

    def test_a_slur_into_the_second_ending_holds_only_where_its_notes_are_neighbours(self) -> None:
        tune, bowing = bowed("|:A8|[1B8:|[2c8|]")
        assert bows(tune, join(tune, bowing, "b2n1")) == "D | U | D | U"

    def test_a_held_note_that_is_reached_by_a_jump_is_struck(self) -> None:
        tune, bowing = bowed("A8-||A4 B4:|")
        assert bows(tune, bowing) == "D | =D U | D U"
        again = [note for note in work_out(tune, bowing).played if note.note_id == "b1n1"]
        assert [(note.pass_number, note.starts, note.struck) for note in again] == [(1, False, False), (2, True, True)]

    def test_a_join_over_a_rest_means_nothing(self) -> None:
        tune, bowing = bowed("A2 z2 B4")
        crooked = Bowing("", joins=bowing.joins.set("b0n3", Join.SLUR))
        assert bows(tune, crooked) == "D - U"

    def test_bars_that_are_never_played_have_no_direction(self) -> None:
        tune, bowing = bowed("{A}A8||{B}B8|]", part_order="A")
        assert work_out(tune, bowing).bows == {"b0n1": (Bow.DOWN,), "b1n1": ()}

    def test_another_order_can_be_asked_for(self) -> None:
        tune, bowing = bowed("A8|(B4 c2) d2|e8|")
        strokes = work_out(tune, bowing, (Visit(1, 1), Visit(1, 2)))
        assert [note.bow.value for note in strokes.played] == ["down", "down", "up", "down", "down", "up"]


class TestComingRound:
    """Rule B10, once more from the start."""

    @pytest.mark.parametrize(
        ("text", "comes_round", "retake"),
        [
            ("A4 B4|", True, False),
            ("A4 B2 c2|", False, False),
            ("vA4 B2 c2|", True, True),
            ("vA4 B4|", True, False),
            ("A|B4 c2 d|", True, False),
            ("z8|", True, False),
            ("A8|", False, False),
        ],
    )
    def test_comes_round(self, text: str, comes_round: bool, retake: bool) -> None:
        strokes = work_out(*bowed(text))
        assert (strokes.comes_round, strokes.round_retake) == (comes_round, retake)

    def test_next_bow_is_what_alternation_gives(self) -> None:
        assert work_out(*bowed("A4 B4|")).next_bow is Bow.DOWN
        assert work_out(*bowed("A4 B2 c2|")).next_bow is Bow.UP

    def test_coming_round_is_what_playing_twice_shows(self) -> None:
        for text in ("A4 B2 c2|", "vA4 B2 c2|", "A4 B4|", "AB|c4 vd4|", "(AB)|c4 d2|"):
            tune, bowing = bowed(text)
            once = work_out(tune, bowing)
            twice = work_out(tune, bowing, once.order * 2)
            first, second = twice.played[: len(once.played)], twice.played[len(once.played) :]
            assert once.comes_round is ([n.bow for n in first] == [n.bow for n in second]), text


def test_inputs_stay_as_they_were() -> None:
    tune, bowing = bowed("|:(AB)cd vefga:|")
    again: tuple[Tune, Bowing] = bowed("|:(AB)cd vefga:|")
    assert work_out(tune, bowing) == work_out(tune, bowing)
    assert (tune, bowing) == again


def test_played_notes_can_be_found_by_note() -> None:
    strokes = work_out(*bowed("|:A4 B2 c2:|"))
    assert [note.visit for note in strokes.by_note["b0n2"]] == [0, 1]


class TestAfterAnotherTune:
    """In a set, alternation runs on from the tune before (rule B10)."""

    @staticmethod
    def after(text: str, bow: Bow) -> str:
        return "".join("D" if played.bow is Bow.DOWN else "U" for played in work_out(*bowed(text), after=bow).played)

    def test_the_first_stroke_alternates_with_the_last_before(self) -> None:
        assert self.after("A4B4|", Bow.DOWN) == "UD"
        assert self.after("A4B4|", Bow.UP) == "DU"

    def test_a_pick_up_is_no_reason_to_begin_otherwise(self) -> None:
        assert self.after("A2|B8|", Bow.UP) == "DU"

    def test_a_mark_on_the_first_note_is_a_retake_where_it_goes_the_same_way(self) -> None:
        strokes = work_out(*bowed("vA4B4|"), after=Bow.DOWN)
        assert [(played.bow, played.retake) for played in strokes.played] == [(Bow.DOWN, True), (Bow.UP, False)]

    def test_a_retake_on_the_first_note_repeats_the_stroke_before(self) -> None:
        tune, bowing = bowed("A4B4|")
        bowing = replace(bowing, retakes=frozenset({"b0n1"}))
        assert work_out(tune, bowing, after=Bow.UP).played[0].bow is Bow.UP
        assert work_out(tune, bowing).played[0].bow is Bow.DOWN


@given(st.data())
@settings(max_examples=60, deadline=None)
def test_bar_by_bar_and_note_by_note_are_the_same(data: st.DataObject) -> None:
    tune = data.draw(tunes())
    strokes = work_out(tune, data.draw(bowings(tune)))
    spelt_out = [
        strokes.playing(visit, number) for visit, bar in enumerate(strokes.visits) for number in range(len(bar.bows))
    ]
    assert tuple(spelt_out) == strokes.played
    assert {note: tuple(one.bow for one in passes) for note, passes in strokes.by_note.items()} == {
        note: directions for note, directions in strokes.bows.items() if directions
    }
    assert [sum(of_bar.retakes) for of_bar in strokes.visits] == [
        sum(one.retake for one in strokes.played if one.visit == visit) for visit in range(len(strokes.visits))
    ]
