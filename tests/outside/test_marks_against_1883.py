"""Printed bow marks of the fiddle book of 1883 (music21's corpus, folder ryansMammoth), each from the one before.

The published counts were made before this program by two readers of their own; what the pairs are, and where the
figures come from, says ``tests.outside.printed_marks_of_1883``, which prints the whole table.
"""

from __future__ import annotations

import pytest

from tests.outside.printed_marks_of_1883 import (
    BARS_THAT_BEGIN_DOWN,
    BY_EYE,
    PLAIN,
    PLAIN_PAIRS,
    WITHOUT_SEGUE,
    Between,
    Why,
    beginnings,
    by_dance,
    pairs,
    plain,
    without_segue,
)


def test_as_many_marks_as_counted_before_follow_by_alternation() -> None:
    agree, count = by_dance(without_segue())["all"]
    assert count == pytest.approx(1082, abs=12)
    assert agree == pytest.approx(853, abs=12)


@pytest.mark.parametrize("dance", ["strathspey", "jig", "reel", "hornpipe"])
def test_each_dance_agrees_as_often_as_counted_before(dance: str) -> None:
    agree, count = by_dance(without_segue())[dance]
    assert agree / count == pytest.approx(WITHOUT_SEGUE[dance], abs=0.015)


@pytest.mark.parametrize(("dance", "share"), PLAIN.items())
def test_a_second_count_finds_the_same_shares(dance: str, share: float) -> None:
    """Two jigs more or less are one per cent."""
    agree, count = by_dance(plain())[dance]
    assert agree / count == pytest.approx(share, abs=0.015)


def test_the_second_count_has_about_as_many_pairs() -> None:
    """Ours has 39 more of 1,515: what else the other reader left out is not known."""
    assert len(plain()) == pytest.approx(PLAIN_PAIRS, rel=0.03)


def test_marks_disagree_by_retakes_after_a_longer_note_and_seldom_otherwise() -> None:
    """Read by eye, 11 of 15 were retakes after a longer note; where marks agree such places are no rule."""
    disagree = [pair.why for pair in without_segue() if not pair.agrees]
    agree = [pair.why for pair in without_segue() if pair.agrees]
    seen, of = BY_EYE["after a longer note"]
    assert disagree.count(Why.AFTER_LONGER) / len(disagree) >= seen / of
    assert disagree.count(Why.AFTER_LONGER) / len(disagree) > 2 * agree.count(Why.AFTER_LONGER) / len(agree)


def test_over_a_rest_the_bow_comes_back_more_often_than_not() -> None:
    """Rule B7 takes a rest for no stroke, and calls a retake over it cheap: print does so, against one pair in five."""
    over_a_rest = [pair.agrees for pair in pairs() if pair.between is Between.REST]
    assert over_a_rest.count(False) > len(over_a_rest) / 2


def test_bars_begin_down_about_as_often_as_counted_before() -> None:
    """The same bars; 77 % of ours begin down, 76 % did, from a reader of slurs of its own."""
    begins = [down for _, bars in beginnings() for down in bars]
    down, count = BARS_THAT_BEGIN_DOWN
    assert len(begins) == count
    assert sum(begins) / count == pytest.approx(down / count, abs=0.02)


def test_bars_of_slip_jigs_begin_down_and_up_about_equally() -> None:
    """Nine is odd; counted before as "near half"."""
    begins = [down for tune, bars in beginnings() if tune.dance in ("slip jig", "slipjig") for down in bars]
    assert sum(begins) / len(begins) == pytest.approx(0.5, abs=0.1)
