"""A set as it is played: the tunes in their order, the bow going on, no gap between them."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import numpy as np
import pytest

from core.bowing import Bow
from core.sound.backing import back
from core.sound.mix import TAIL, Mix, in_a_row, mix
from core.sound.performance import Manner, perform
from core.sound.set_playing import perform_set
from core.sound.tags import set_tags
from core.sound.track import sample_at
from core.tune import Credit, Tempo
from core.tune_set import Entry, TuneSet
from tests.core.builders import bowed

HALVES = Tempo(Fraction(2), Fraction(120))  # a bar in a second


def entry(text: str, times: int = 1, title: str = "Typed", composer: str = "") -> Entry:
    tune, bowing = bowed(text)
    credits = (Credit("composer", composer),) if composer else ()
    return Entry(replace(tune, title=title, credits=credits), bowing, times)


def test_each_tune_is_played_as_often_as_the_set_says() -> None:
    three, one = entry("A2B2c2d2|]", 3), entry("e2f2g2a2|]")
    playings = perform_set(TuneSet((three, one)), [Manner(HALVES)] * 2)
    assert [playing.tune for playing in playings] == [three.tune] * 3 + [one.tune]


def test_the_bow_goes_on_from_tune_to_tune() -> None:
    odd, even = entry("A2B2c4|]", 2), entry("e2f2g2a2|]")
    playings = perform_set(TuneSet((odd, even)), [Manner(HALVES)] * 2)
    bows = [[attack.bow for attack in playing.attacks] for playing in playings]
    assert bows[0] == [Bow.DOWN, Bow.UP, Bow.DOWN]
    assert bows[1] == [Bow.UP, Bow.DOWN, Bow.UP]
    assert bows[2] == [Bow.DOWN, Bow.UP, Bow.DOWN, Bow.UP]
    for before, after in pairwise(bows):
        assert before[-1] is not after[0]


def test_a_tune_in_which_nothing_sounds_leaves_the_bow_where_it_was() -> None:
    odd, silent = entry("A2B2c4|]"), entry("z8|]")
    playings = perform_set(TuneSet((odd, silent, odd)), [Manner(HALVES)] * 3)
    assert playings[2].attacks[0].bow is Bow.UP


def test_bars_are_counted_in_before_the_first_playing_only() -> None:
    playings = perform_set(TuneSet((entry("A2B2c2d2|]", 2), entry("e8|]"))), [Manner(HALVES, count_in=2)] * 2)
    assert [playing.begin for playing in playings] == [2, 0, 0]


def test_each_tune_keeps_its_tempo() -> None:
    slow = Manner(Tempo(Fraction(2), Fraction(60)))
    playings = perform_set(TuneSet((entry("A8|]"), entry("B8|]"))), [Manner(HALVES), slow])
    assert [playing.end for playing in playings] == [1, 2]


def test_the_next_tune_begins_where_the_one_before_is_over_and_that_rings_on_under_it() -> None:
    playings = perform_set(TuneSet((entry("A8|]"), entry("z8|]"))), [Manner(HALVES)] * 2)
    mixes = [mix(playing, back(playing)) for playing in playings]
    row = in_a_row(mixes)
    seam = sample_at(playings[0].end)
    assert (row.begins, row.length) == ((0, seam), 2 * seam + TAIL)
    heard = row.render(0, row.length)
    ringing = mixes[0].render(seam, TAIL)
    assert np.abs(ringing).max() > 0.001
    assert heard[seam : seam + TAIL] == pytest.approx(ringing + mixes[1].render(0, TAIL), abs=1e-6)
    assert heard[:seam] == pytest.approx(mixes[0].render(0, seam))


def test_a_row_holds_the_same_samples_however_it_is_asked_for() -> None:
    played = perform(*bowed("A2B2c2d2|]"), manner=Manner(HALVES))
    row = in_a_row([mix(played)] * 3)
    whole = row.render(0, row.length)
    assert np.array_equal(np.concatenate(list(row.blocks(10_007))), whole)
    assert np.array_equal(row.render(40_000, 30_000), whole[40_000:70_000])
    assert len(row.render(row.length - 5, 100)) == 5


def test_a_row_of_one_is_the_mix() -> None:
    alone = mix(perform(*bowed("A2B2c2d2|]"), manner=Manner(HALVES)))
    assert np.array_equal(in_a_row([alone]).render(0, alone.length), alone.render(0, alone.length))


def test_playings_shorter_than_their_tails_ring_on_together() -> None:
    short = Mix(TAIL + 10, ())
    row = in_a_row([short, short, short])
    assert (row.begins, row.length) == ((0, 10, 20), 30 + TAIL)


def test_the_tags_of_a_set_name_its_tunes_and_each_composer_once() -> None:
    tune_set = TuneSet((
        entry("A8|]", 2, "The Warm Stove", "Ada Quern"), entry("B8|]", 1, "Chalk", "Ada Quern"), entry("c8|]", 1, ""),
    ))  # fmt: skip
    tags = set_tags(tune_set, perform_set(tune_set, [Manner(HALVES)] * 3))
    assert tags.title == "The Warm Stove / Chalk / Untitled"
    assert tags.composer == "Ada Quern"
    assert tags.comment == "Quarter notes a minute: 240"
