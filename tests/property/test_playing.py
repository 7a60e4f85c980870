"""Whatever the tune and its bowing: it can be played, comes to its end, and every moment of it stands in the tune."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from app.player_choice import PlayerChoice
from app.player_feed import Feed
from app.player_programme import Passage, Programme, Step, recipe_of
from app.player_take import make_take
from core.order import playing_order
from tests.property.strategies import bowings, tunes


@given(st.data())
@settings(max_examples=25, deadline=None)
def test_any_tune_is_played_to_its_end_and_each_moment_stands_in_it(data):
    tune = data.draw(tunes())
    bowing = data.draw(bowings(tune))
    first_bar = data.draw(st.none() | st.integers(0, len(tune.bars) - 1))
    bars = data.draw(st.none() | st.integers(0, len(tune.bars) - 1).map(lambda bar: (bar, bar)))
    programme = Programme((Passage(tune, bowing, bars),), speed=Fraction(3, 2), count_in=data.draw(st.integers(0, 2)))
    take = make_take(recipe_of(programme, Step(), None, first_bar), PlayerChoice().heard)
    feed = Feed(lambda before: None)
    feed.start(take)
    played = {visit.bar for visit in playing_order(tune)}
    ids = {note.id for note in tune.sequence}
    while not feed.ended:
        assert feed.skip(30_011) or feed.ended
        place = feed.heard(feed.given)
        moment = place.take.moment(place.sample)
        assert moment.note_id == "" or moment.note_id in ids
        assert 0 <= moment.bar < len(tune.bars)
        assert bars is None or moment.bar == bars[0] or bars[0] not in played
    assert feed.given >= take.end - take.start


@given(st.data())
@settings(max_examples=25, deadline=None)
def test_another_speed_of_any_tune_keeps_the_bar_at_every_place(data):
    tune = data.draw(tunes())
    passage = Passage(tune, data.draw(bowings(tune)))
    plain, slow = (
        make_take(recipe_of(Programme((passage,), speed=speed, count_in=1), Step()), PlayerChoice().heard)
        for speed in (Fraction(1), Fraction(data.draw(st.integers(25, 150)), 100))
    )
    for played, other in zip(plain.performance.bars, slow.performance.bars, strict=True):
        middle = round((played.begin + played.end) / 2 * 44_100)
        there = Fraction(slow.sample_like(plain, middle), 44_100)
        assert other.begin - Fraction(1, 10_000) <= there <= other.end + Fraction(1, 10_000)
