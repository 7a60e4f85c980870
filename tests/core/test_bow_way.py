from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.bow_way import BowWay, Out, bow_way
from core.bowing import Ornament, Signs, set_signs
from core.reach import ReachSettings, work_out_reach
from core.strokes import work_out
from core.tune import Tempo
from tests.core.builders import bowed
from tests.property.strategies import lessons

SECONDS = ReachSettings(even_cm_s=10, tempo=Tempo(Fraction(1, 2), Fraction(60)))  # an eighth lasts a second


def way(text: str, settings: ReachSettings = SECONDS) -> BowWay:
    tune, bowing = bowed(text)
    strokes = work_out(tune, bowing)
    return bow_way(tune, strokes, work_out_reach(tune, bowing, strokes, settings))


def times(found: BowWay) -> list[tuple[float, float]]:
    return [(leg.begin_s, leg.end_s) for leg in found.legs]


def test_legs_lie_where_their_notes_sound_and_rests_are_left_free() -> None:
    found = way("(AB)c z d4|A8|")
    assert times(found) == [(0, 2), (2, 3), (4, 8), (8, 16)]
    assert [leg.set_down for leg in found.legs] == [True, False, True, False]
    assert (found.visits_s, found.seconds) == ((0, 8), 16)
    assert found.notes_s == (0, 1, 2, 4, 8)


def test_a_repeat_is_laid_out_twice() -> None:
    found = way("A2|:B8:|")
    assert times(found) == [(0, 2), (2, 10), (10, 18)]
    assert [leg.down for leg in found.legs] == [False, True, False]


def test_the_parts_of_a_bowed_triplet_follow_one_another() -> None:
    tune, bowing = bowed("(A3B)c4|")
    cracked = set_signs(bowing, "b0n1", Signs(ornaments=(Ornament.BOWED_TRIPLET,)))
    strokes = work_out(tune, cracked)
    found = bow_way(tune, strokes, work_out_reach(tune, cracked, strokes, SECONDS))
    assert times(found) == [(0, 1), (1, 2), (2, 4), (4, 8)]


def test_where_the_bow_runs_out_is_told_apart_by_what_mends_it() -> None:
    drifting = way("A3Bc3d|e3f2z2|", replace(SECONDS, even_cm_s=20))
    assert [leg.out for leg in drifting.legs] == [Out.NO, Out.NO, Out.EVEN, Out.NO, Out.NO, Out.NO]
    assert drifting.legs[2].end_cm == 100  # drawn to its end
    assert drifting.legs[3].set_down
    hopeless = way("A8-|A6B2|")  # 14 s at 5 cm/s are 70 cm
    assert [leg.out for leg in hopeless.legs] == [Out.ANYHOW, Out.NO]


def test_the_room_narrows_in_a_long_stroke_and_is_the_whole_hair_where_the_bow_is_set_down() -> None:
    found = way("A4 B2z2|c8|")
    assert [leg.begin_room for leg in found.legs] == [(0, 65), (20, 65), (0, 65)]
    assert [leg.end_room for leg in found.legs] == [(20, 65), (0, 55), (40, 65)]


@pytest.mark.parametrize(
    ("seconds", "leg", "note"), [(-1, 0, 0), (0, 0, 0), (1.5, 0, 1), (2, 1, 2), (3.5, 1, 2), (99, 3, 4)]
)
def test_a_time_leads_to_its_leg_and_note(seconds: float, leg: int, note: int) -> None:
    found = way("(AB)c z d4|A8|")
    assert (found.leg_at(seconds), found.note_at(seconds)) == (leg, note)


def test_where_nothing_is_played_there_are_no_legs() -> None:
    found = way("z8|z8|")
    assert (found.legs, found.notes_s, found.seconds) == ((), (), 16)
    assert (found.leg_at(3), found.note_at(3)) == (0, 0)


@given(lessons(), st.data())
@settings(max_examples=60, deadline=None)
def test_legs_follow_one_another_and_take_their_seconds_at_the_even_speed(lesson, data) -> None:
    tune, bowing, assumed = lesson.tune, lesson.bowings[0], lesson.reach
    strokes = work_out(tune, bowing)
    reach = work_out_reach(tune, bowing, strokes, assumed)
    found = bow_way(tune, strokes, reach)
    for index, (leg, move) in enumerate(zip(found.legs, reach.moves, strict=True)):
        assert leg.end_s - leg.begin_s == pytest.approx(move.seconds)
        assert abs(leg.end_cm - leg.begin_cm) == pytest.approx(assumed.even_cm_s * move.seconds)
        assert leg.begin_s == pytest.approx(max(found.notes_s[leg.first], found.legs[index - 1].end_s if index else 0))
        if index and not leg.set_down:
            assert leg.begin_s == pytest.approx(found.legs[index - 1].end_s)
            assert leg.begin_cm == found.legs[index - 1].end_cm
        assert leg.end_s <= found.seconds * (1 + 1e-9) + 1e-9
        assert found.leg_at((leg.begin_s + leg.end_s) / 2) == index
