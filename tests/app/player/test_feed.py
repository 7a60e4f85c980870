"""The stream of samples: loops, swaps, and what was given out when."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import numpy as np
import pytest

from app.player_choice import PlayerChoice
from app.player_feed import CROSSING, Feed, Place
from app.player_take import BLOCK, make_take
from core.bowing import Join
from core.bowing import join as joined
from core.sound.mix import TAIL, mix

FROM_FLOAT_S = 1e-6


def read_all(feed: Feed, block: int, most: int) -> np.ndarray:
    pieces = []
    while most > 0 and len(piece := feed.read(min(block, most))):
        pieces.append(piece)
        most -= len(piece)
    return np.concatenate(pieces)


def mixed(take) -> np.ndarray:
    """The whole mix, by the core alone, with silence behind it."""
    heard = mix(take.performance, take.backing, take.levels)
    return np.concatenate([*heard.blocks(), np.zeros(4 * TAIL, np.float32)])


@pytest.mark.parametrize("block", [441, 1000, BLOCK, 50_001])
def test_a_loop_is_exact_to_the_sample_and_rings_on_into_its_next_round(take, block):
    feed = Feed(lambda before: replace(take, recipe=replace(take.recipe, counts=False)))
    feed.start(take)
    whole, begin, end = mixed(take), take.begin, take.end
    heard = read_all(feed, block, begin + 3 * (end - begin))
    ringing = whole[end : end + TAIL]
    np.testing.assert_array_equal(heard[:end], whole[:end])
    for number in (1, 2):
        at = begin + number * (end - begin)
        expected = whole[begin:end].copy()
        expected[: len(ringing)] += ringing[: end - begin]
        np.testing.assert_allclose(heard[at : at + end - begin], np.clip(expected, -1, 1), atol=FROM_FLOAT_S)


def test_what_is_played_once_ends_when_it_has_rung_on(take):
    feed = Feed(lambda before: None)
    feed.start(take)
    heard = read_all(feed, 4096, 10_000_000)
    assert len(heard) == take.end + TAIL
    assert feed.ended
    np.testing.assert_array_equal(heard, mixed(take)[: take.end + TAIL])


def test_a_take_without_length_is_not_begun_for_ever(take):
    empty = replace(take, recipe=replace(take.recipe, counts=False))
    empty.__dict__["end"] = empty.begin  # the place of a cached property
    feed = Feed(lambda before: empty)
    feed.start(take)
    assert len(read_all(feed, 4096, 10_000_000)) == take.end + TAIL


def test_a_swap_goes_on_at_the_same_sample_and_crosses_without_a_jump(take, four_bars):
    tune = four_bars.tune
    slurred = joined(tune, take.recipe.passage.bowing, tune.bars[0].notes[4].id, Join.SLUR)
    other = make_take(replace(take.recipe, passage=replace(take.recipe.passage, bowing=slurred)), take.levels)
    feed = Feed(lambda before: None)
    feed.start(take)
    at = take.begin + 20_000
    before = feed.read(at)
    assert feed.swap(lambda place: Place(other, other.sample_like(place.take, place.sample)))
    after = feed.read(take.end - at)
    assert feed.place == Place(other, take.end)
    np.testing.assert_array_equal(before, mixed(take)[:at])
    np.testing.assert_array_equal(after[CROSSING:], mixed(other)[at + CROSSING : take.end])
    both = np.concatenate([before, after])
    assert np.abs(np.diff(both[at - 50 : at + CROSSING + 50])).max() <= 1.5 * np.abs(np.diff(mixed(take))).max()


def test_another_speed_goes_on_at_the_same_place_of_the_bar(take):
    slow = make_take(replace(take.recipe, speed=Fraction(1, 2)), take.levels)
    for quarters in (Fraction(0), Fraction(1, 3), Fraction(7, 2)):
        seconds = take.performance.second_of(0, quarters)
        there = slow.sample_like(take, round(seconds * 44_100))
        assert abs(there / 44_100 - slow.performance.second_of(0, quarters)) < Fraction(1, 20_000)


def test_what_was_not_heard_is_given_out_again(take):
    feed = Feed(lambda before: None)
    feed.start(take)
    first = feed.read(90_000)
    feed.back_to(70_000)
    assert feed.given == 70_000
    np.testing.assert_array_equal(feed.read(20_000), first[70_000:])


def test_it_goes_back_over_the_end_of_a_take_too(take):
    feed = Feed(lambda before: replace(take, recipe=replace(take.recipe, counts=False)))
    feed.start(take)
    feed.read(take.end + 5_000)
    feed.back_to(take.end - 1_000)
    assert feed.heard(take.end - 1_000) == Place(take, take.end - 1_000)
    feed.read(1_500)
    assert feed.place.sample == take.begin + 500


def test_skipping_leads_where_reading_leads(take):
    again = replace(take, recipe=replace(take.recipe, counts=False))
    reading, skipping = Feed(lambda before: again), Feed(lambda before: again)
    for feed in (reading, skipping):
        feed.start(take)
    for count in (10, take.end, 4 * take.end):
        reading.read(count)
        assert skipping.skip(count) == count
        assert skipping.place == reading.place
        assert skipping.given == reading.given


def test_each_sample_of_the_stream_is_known_by_its_place(take):
    again = replace(take, recipe=replace(take.recipe, counts=False))
    feed = Feed(lambda before: again)
    feed.start(take)
    feed.read(2 * take.end)
    assert feed.heard(take.end - 1) == Place(take, take.end - 1)
    assert feed.heard(take.end) == Place(again, take.begin)
    assert feed.heard(take.end + 77) == Place(again, take.begin + 77)


def test_what_is_the_same_is_not_rendered_again(take):
    again = make_take(replace(take.recipe, counts=False), take.levels, take)
    assert again.sound is take.sound
    louder = make_take(take.recipe, PlayerChoice().heard.set(next(iter(take.levels)), -6.0), take)
    assert louder.performance is take.performance
    assert louder.sound is not take.sound
