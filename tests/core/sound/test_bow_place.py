from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.bow_way import bow_way
from core.bowing import Bow
from core.reach import work_out_reach
from core.sound.bow_place import bow_places
from core.sound.performance import Manner, perform
from core.strokes import work_out
from core.tune import Tempo
from tests.core.builders import bowed
from tests.property.strategies import bowings, tunes

TEMPO = Tempo(Fraction(1), Fraction(120))


def test_the_bow_goes_down_and_up_with_the_strokes():
    tune, bowing = bowed("A2 B2 (c2 d2)|")
    places = bow_places(perform(tune, bowing, manner=Manner(TEMPO)))
    down, up, slur = (places.at(seconds) for seconds in (0.25, 0.75, 1.25))
    assert [moment.bow for moment in (down, up, slur)] == [Bow.DOWN, Bow.UP, Bow.DOWN]
    assert places.at(0.4).cm > places.at(0.1).cm
    assert places.at(0.9).cm < places.at(0.6).cm
    assert places.at(1.9).cm - places.at(1.1).cm == pytest.approx(0.8 * 30)  # the even speed, through the slur


def test_in_a_rest_the_bow_stays_where_it_was():
    tune, bowing = bowed("A4 z4|")
    moment = bow_places(perform(tune, bowing, manner=Manner(TEMPO))).at(1.5)
    assert (moment.bow, moment.moving) == (Bow.DOWN, False)


def test_before_the_first_stroke_there_is_no_place():
    tune, bowing = bowed("A8|")
    assert bow_places(perform(tune, bowing, manner=Manner(TEMPO, count_in=1))).at(1.9) is None


def test_hooked_notes_are_one_way_of_the_bow():
    tune, bowing = bowed("A4=B4|")
    assert len(bow_places(perform(tune, bowing, manner=Manner(TEMPO))).bows) == 1


@settings(max_examples=15, deadline=None)
@given(st.data(), tunes())
def test_an_even_playing_takes_the_way_that_the_page_draws(data, tune):
    bowing = data.draw(bowings(tune))
    strokes = work_out(tune, bowing)
    way = bow_way(tune, strokes, work_out_reach(tune, bowing, strokes))
    places = bow_places(perform(tune, bowing, strokes, Manner(swing=Fraction(1))))
    assert places.begins_s == pytest.approx([leg.begin_s for leg in way.legs])
    assert [bow is Bow.DOWN for bow in places.bows] == [leg.down for leg in way.legs]
    assert [span.end_cm - span.begin_cm for span in places.spans] == pytest.approx(
        [leg.end_cm - leg.begin_cm for leg in way.legs]
    )
    assert [span.begin_cm for span in places.spans] == pytest.approx([leg.begin_cm for leg in way.legs])
