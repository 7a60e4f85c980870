"""Laws of what tells bowings apart, on tunes of any kind."""

from __future__ import annotations

from collections.abc import Mapping

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.bowing import Bowing, separate_bows
from core.differences import Difference, differences
from core.strokes import work_out
from core.tune import Tune
from tests.property.strategies import bowings, tunes

slow = settings(deadline=None, max_examples=50, suppress_health_check=[HealthCheck.too_slow])


def told(tune: Tune, one: Bowing, other: Bowing) -> Mapping[str, Difference]:
    return differences(tune, one, work_out(tune, one), other, work_out(tune, other))


@slow
@given(st.data())
def test_the_other_way_round_each_pair_is_turned_round_and_a_bowing_differs_in_nothing_from_itself(data):
    tune = data.draw(tunes())
    one, other = data.draw(bowings(tune)), data.draw(bowings(tune))
    assert told(tune, one, one) == {}
    back = told(tune, other, one)
    for note, found in told(tune, one, other).items():
        for pair, turned in zip(astuple(found), astuple(back[note]), strict=True):
            assert pair == (None if turned is None else turned[::-1])
    assert told(tune, one, other).keys() == back.keys()


@slow
@given(st.data())
def test_a_note_left_out_is_joined_signed_and_bowed_alike(data):
    tune = data.draw(tunes())
    one = data.draw(bowings(tune))
    other = separate_bows(one, "Separate")
    bows, other_bows = work_out(tune, one).bows, work_out(tune, other).bows
    found = told(tune, one, other)
    for note in tune.sequence:
        if note.id not in found:
            assert one.joins.get(note.id) == other.joins.get(note.id)
            assert one.signs_on(note.id) == other.signs_on(note.id)
            assert note.held or bows.get(note.id) == other_bows.get(note.id)


def astuple(difference: Difference) -> tuple:
    return difference.joins, difference.bows, difference.signs
