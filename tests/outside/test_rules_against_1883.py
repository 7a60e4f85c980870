"""Every rule held against print: where it speaks in the fiddle book of 1883, and a tune of the book that it leaves be.

Each row was read off the printed tune, by hand, and says what stands there. The book's own bowings are good ones, so
what a rule tells of them is mostly a note; three rules speak nowhere in the book, and have rows from other sources.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

import pytest

from core.accent_plan import parse_plan
from core.bowing import Bowing
from core.check import RULES, check
from core.order import playing_order
from core.reach import ORDINARY, ReachSettings
from core.tune import Tempo
from tests.core.builders import bowed
from tests.outside.book_of_1883 import FOLDER, tune


class Row(NamedTuple):
    """What is told of one tune, what stands there in print, and a tune of which the rule says nothing."""

    name: str
    bars: tuple[int, ...]  # of the first finding
    printed: str
    silent: str = "SoldiersJoy"


ROWS = {
    "mark-against-slur": Row("TidalWaveJig", (13,), "an up-bow under the second half of a slur that is marked down"),
    "redundant-mark": Row(
        "TomDeeringsRamblesReel", (10,), "a down-bow and a dot under a slur that begins down: two in one bow"
    ),
    "tune-on-other-bow": Row("RumAndOnionsJig", (1,), "no mark on the first note, and an odd number of strokes"),
    "round-retake": Row("CollegeHornpipe", (0,), "begins down, and its last bar ends down"),
    "part-on-other-bow": Row("HuntTheFoxJig", (5, 6, 7, 8), "8 + 8 + 8 + 7 strokes and no mark"),
    "ending-on-other-bow": Row("ArmyAndNavyReel", (18,), "a slur into the first ending and none into the second"),
    "phrase-on-other-bow": Row("HasteToTheWeddingJig", (5, 6), "bar 4 has five strokes"),
    "phrase-slurred-differently": Row("BoyleOReillysReel", (3,), "bar 1 with a slur at its end, bar 3 without"),
    "like-on-other-bow": Row("LittleDiamondJig", (3,), "bar 3 is bar 1 a step higher, after eleven strokes"),
    "like-slurred-differently": Row("PatCarneysReel", (10,), "bar 9 with a slur, bar 10, a step lower, without"),
    "accent-up": Row("AndrewCareysSlipjig", tuple(range(1, 9)), "nine is odd: bars begin down and up in turn"),
    "accent-buried": Row("LittleDukesReel", (2, 4, 5, 6, 7, 8), "slurs that lead onto the beat"),
    "accent-unstruck": Row("LittleDiamondJig", (1, 3), "rests on the second beat"),
    "retake-on-some-passes": Row("RumAndOnionsJig", (3,), "marked down in the midst of a strain that turns round"),
    "retake": Row("AcaciaReel", (1,), "down-bows on two notes running", "FishersHornpipe"),
    "equal-notes-slurred": Row("PriestInHisBootsJig", (5,), "a slur over A and A"),
    "long-stroke": Row("KittyONeilsChampionJig", (33, 34), "a slur, and a tie over the bar line"),
    "bow-drift": Row("KittyONeilsChampionJig", (33, 34), "the same: long slurs down, short ones up"),
    "slur-leaps-string": Row("NoraCreinasJig", (1,), "G5 and G4 in one bow"),
}
ELSEWHERE = {"phrase-plans", "stroke-beyond-bow", "bow-runs-out"}  # the classes below


def test_every_rule_is_held_against_something() -> None:
    assert ROWS.keys() | ELSEWHERE == RULES.keys()
    assert ROWS.keys().isdisjoint(ELSEWHERE)


@pytest.mark.parametrize("rule", ROWS)
def test_it_speaks_where_print_gives_it_cause_and_nowhere_else(rule: str) -> None:
    row = ROWS[rule]
    told = [finding.bars for finding in check(*tune(row.name)).findings if finding.rule == rule]
    assert told[0] == row.bars, row.printed
    assert rule not in {finding.rule for finding in check(*tune(row.silent)).findings}


class TestWhatNeverSpeaksInPrint:
    """Published tunes can be played: the bow lasts for every one of them, until it is drawn too slowly."""

    def test_a_bow_that_lasts_at_the_pace_of_the_dance_does_not_at_a_tenth_of_it(self) -> None:
        slow = ReachSettings(tempo=Tempo(Fraction(1), Fraction(10)))
        at_pace, slowly = (
            {finding.rule for finding in check(*tune("KittyONeilsChampionJig"), reach_settings=settings).findings}
            for settings in (ORDINARY, slow)
        )
        assert "stroke-beyond-bow" not in at_pace
        assert "stroke-beyond-bow" in slowly

    @pytest.mark.parametrize("times", range(1, 7))
    def test_the_bow_runs_out_when_each_short_stroke_brings_back_less_than_the_long_one_took(self, times: int) -> None:
        """Bow speeds of 5 to 100 cm/s (Askenfelt, JASA 80, 1986, 1007, from memory) and plain arithmetic."""
        bar_s = Fraction(60, 100) * 2  # half = 100
        down, up = 5 * bar_s * Fraction(39, 8), 100 * bar_s / 8
        needed = (times - 1) * (down - up) + down
        findings = check(*bowed("A8-|A8-|A8-|A8-|A7B|" * times)).findings
        assert ("bow-runs-out" in {finding.rule for finding in findings}) == (needed > 65)

    def test_a_plan_by_phrase_is_told_and_the_plan_of_the_dance_is_not(self) -> None:
        """Common practice, no source. Every bar of the tune begins down, and so does every accent on the beat."""
        written, bowing = tune("SoldiersJoy")
        assert check(written, bowing).findings == ()
        (finding,) = check(written, replace(bowing, accents=parse_plan("by-phrase"))).findings
        assert finding.rule == "phrase-plans"
        assert "backbeat" not in finding.text


def test_a_tune_turns_round_just_when_its_strokes_are_odd_in_number() -> None:
    """Common practice, no source: counted here without any rule of ours, in separate bows; every fifth tune."""
    odd = 0
    for path in sorted(FOLDER.glob("*.abc"))[::5]:
        written, _ = tune(path.stem)
        order = playing_order(written)
        strokes = sum(not note.is_rest and not note.held for visit in order for note in written.bars[visit.bar].notes)
        told = {finding.rule for finding in check(written, Bowing("Separate bows")).findings}
        assert ("tune-on-other-bow" in told) == (strokes % 2 == 1), path.stem
        odd += strokes % 2
    assert odd > 20
