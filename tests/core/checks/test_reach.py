"""Without a tempo and a dance, half = 100 is assumed: a bar of 4/4 lasts 1.2 s, an eighth 0.15 s."""

from dataclasses import replace
from fractions import Fraction

import pytest

from core.check import Finding, Severity, check
from core.reach import ORDINARY, ReachSettings
from core.tune import Tempo
from tests.core.builders import bowed

FOUR_BARS_AGAINST_AN_EIGHTH = "A8-|A8-|A8-|A8-|A7B|"  # 5.85 s down: at least 29.25 cm; 0.15 s up: at most 15 cm


def findings(text: str, rule: str, settings: ReachSettings = ORDINARY) -> list[Finding]:
    return [f for f in check(*bowed(text), reach_settings=settings).findings if f.rule == rule]


class TestStrokeBeyondBow:
    def test_eleven_bars_are_too_long(self) -> None:
        (finding,) = findings("A8-|" * 10 + "A8|", "stroke-beyond-bow")
        assert finding.text == (
            "The stroke that begins with the first note of bar 1 lasts 13.2 seconds (half = 100, assumed): at 5 cm/s, "
            "about as slow as a bow speaks, it needs more than 65 cm of hair."
        )
        assert (finding.severity, finding.bars, finding.notes) == (Severity.WARNING, (1,), ("b0n1",))

    def test_it_is_told_once_for_all_passes_and_not_as_running_out_besides(self) -> None:
        text = "|:" + "A8-|" * 10 + "A8:|"
        assert len(findings(text, "stroke-beyond-bow")) == 1
        assert findings(text, "bow-runs-out") == []

    def test_ten_bars_are_not(self) -> None:
        assert findings("A8-|" * 9 + "A8|", "stroke-beyond-bow") == []

    def test_ten_bars_are_too_long_for_less_hair(self) -> None:
        (finding,) = findings("A8-|" * 9 + "A8|", "stroke-beyond-bow", ReachSettings(hair_cm=59))
        assert finding.text.endswith("more than 59 cm of hair.")


class TestBowRunsOut:
    def test_no_speeds_bring_the_bow_back_in_time(self) -> None:
        (finding,) = findings(FOUR_BARS_AGAINST_AN_EIGHTH * 4, "bow-runs-out")
        assert finding.text == (
            "In bar 16, the bow runs out at the tip: the first note finds no room on 65 cm of hair at any bow speeds "
            "of 5 to 100 cm/s (half = 100, assumed)."
        )
        assert (finding.severity, finding.notes, finding.pass_number) == (Severity.WARNING, ("b15n1",), None)

    def test_three_times_there_is_room(self) -> None:
        assert findings(FOUR_BARS_AGAINST_AN_EIGHTH * 3, "bow-runs-out") == []

    def test_a_retake_makes_room(self) -> None:
        retaken = FOUR_BARS_AGAINST_AN_EIGHTH.replace("A8", "vA8", 1).replace("B", "vB")
        assert findings(retaken * 4, "bow-runs-out") == []

    def test_up_bows_run_out_at_the_frog_on_the_pass_that_is_told(self) -> None:
        text = "|:u" + (FOUR_BARS_AGAINST_AN_EIGHTH * 2)[:-1] + ":|"
        (finding,) = findings(text, "bow-runs-out")
        assert finding.text.startswith("In bar 6 the second time, the bow runs out at the frog: the first note finds")
        assert finding.pass_number == 2

    def test_neighbouring_places_are_told_together(self) -> None:
        one_speed = ReachSettings(20, 5, 5, 5, Tempo(Fraction(1, 2), Fraction(60)))  # 15 cm down, 5 up, 15 down
        (finding,) = findings("A3BA3B|" * 3, "bow-runs-out", one_speed)
        assert finding.text == (
            "In bars 1–3, the bow runs out at the tip: 3 strokes find no room on 20 cm of hair at any bow speeds of "
            "5 to 5 cm/s (eighth = 60)."
        )
        assert finding.notes == ("b0n3", "b1n3", "b2n3")


class TestBowDrift:
    def test_seven_to_one(self) -> None:
        """At speeds up to three times apart a bar drifts 18.2 - 7.8 = 10.4 cm: the sixth finds no room."""
        (finding,) = findings("(ABcdefg)a|" * 6, "bow-drift")
        assert finding.text == (
            "In bars 1–6, down-bows together last 7.0 times as long as up-bows: at one bow speed of 30 cm/s "
            "(half = 100, assumed) the bow drifts to the tip and off 65 cm of hair."
        )
        assert (finding.severity, finding.bars) == (Severity.NOTE, (1, 2, 3, 4, 5, 6))

    def test_the_whole_run_is_one_finding_on_all_passes(self) -> None:
        (finding,) = findings("|:" + ("(ABcdefg)a|" * 32)[:-1] + ":|", "bow-drift")
        assert finding.bars == tuple(range(1, 33))

    def test_up_bows_drift_to_the_frog(self) -> None:
        (finding,) = findings("(uABcdefg)a|" + "(ABcdefg)a|" * 5, "bow-drift")
        assert "up-bows together last 7.0 times as long as down-bows" in finding.text
        assert "drifts to the frog" in finding.text

    @pytest.mark.parametrize(
        "text",
        [
            "(ABcdefg)a|" * 5,  # five times there is room
            "(ABc)d(efg)a|" * 32,  # three to one is practice
            "(ABcdefg)z|" * 32,  # a rest to bring the bow back in
            "(ABcdefga)|" * 32,
            "A8-|A8-|A8-|A8|B8-|B8|" * 8,  # long notes are drawn slowly anyway
        ],
    )
    def test_no_drift_to_tell(self, text: str) -> None:
        assert findings(text, "bow-drift") == []

    def test_the_usual_pace_of_a_dance_is_named(self) -> None:
        tune, bowing = bowed("(ABcdefg)a|" * 16)
        (finding,) = (f for f in check(replace(tune, dance="reel"), bowing).findings if f.rule == "bow-drift")
        assert "(half = 112, usual for this dance)" in finding.text
