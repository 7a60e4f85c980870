"""Bow and strings against published rules, plain arithmetic, and what printed tunes really ask of a player."""

from __future__ import annotations

import random
from dataclasses import replace
from fractions import Fraction

import pytest

from core.bowing import Bowing
from core.check import Severity, check
from core.reach import Reach, ReachSettings, drift_cm, runs_out, work_out_reach
from core.reading.abc import read_abc
from core.strings import strings_of
from core.strokes import work_out
from core.tempos import pace
from core.tune import Tempo, Tune
from tests.core.builders import bowed
from tests.outside.abc_collections import FOLDERS, sources

REEL = ReachSettings(tempo=Tempo(Fraction(2), Fraction(112)))  # Breathnach (1963), as quoted: half note = 112
SAUNDERS_GROUP = "(ABc)d(efg)a|"  # three slurred down, one up
SAMPLE = 300  # tunes


def reach(text: str, settings: ReachSettings = REEL, meter: str = "4/4") -> Reach:
    tune, bowing = bowed(text, meter)
    return work_out_reach(tune, bowing, work_out(tune, bowing), settings)


class TestSaunders:
    """Self-Instructing School for the Violin (1847), pp. 16-17 (name and date from memory)."""

    def test_the_bow_stays_where_the_single_note_takes_as_much_bow_as_the_three(self) -> None:
        group = reach(SAUNDERS_GROUP).moves[:2]
        assert drift_cm(group, 10, 30) == pytest.approx(0)
        assert runs_out(reach(SAUNDERS_GROUP * 100).moves, 65, 10, 30) == ()

    def test_else_it_runs_out_at_the_tip(self) -> None:
        eighth_s = 60 / 112 / 4
        assert drift_cm(reach(SAUNDERS_GROUP).moves[:2], 30, 30) == pytest.approx(2 * 30 * eighth_s)
        found = reach(SAUNDERS_GROUP * 8)
        assert found.runs_out_even
        assert all(found.moves[index].down for index in found.runs_out_even)
        assert found.can_be_evened

    def test_reversed_it_runs_out_at_the_hand(self) -> None:
        found = reach("(uABc)d(efg)a|" + SAUNDERS_GROUP * 7)
        assert found.runs_out_even
        assert not any(found.moves[index].down for index in found.runs_out_even)
        assert min(span.end_cm for span in found.even) < 0

    def test_seven_and_one_likewise(self) -> None:
        found = reach("(ABcdefg)a|" * 16)
        assert found.runs_out_even
        assert runs_out(found.moves, 65, 10, 70) == ()
        assert runs_out(found.moves, 65, 10, 30) != ()


class TestArithmetic:
    """Counted by hand from 65 cm of hair and the tempo."""

    def test_an_eighth_of_a_reel(self) -> None:
        move = reach("ABcd efga|").moves[0]
        assert 1000 * move.seconds == pytest.approx(133.9, abs=0.05)
        assert 30 * move.seconds == pytest.approx(4.02, abs=0.005)

    def test_three_and_one_leave_the_hair_in_the_eighth_group(self) -> None:
        found = reach(SAUNDERS_GROUP * 4)
        assert drift_cm(found.moves[:2], 30, 30) == pytest.approx(8.04, abs=0.005)
        assert found.even[0].begin_cm == 0
        assert found.runs_out_even == (14,)  # the slur of the eighth group
        assert max(span.end_cm for span in found.even) == pytest.approx(68.3, abs=0.05)
        assert reach((SAUNDERS_GROUP * 4)[: -len("(efg)a|")] + "z4|").runs_out_even == ()

    @pytest.mark.parametrize(("seconds", "cm_s"), [(4, 16.25), (1, 65)])
    def test_a_whole_bow(self, seconds: int, cm_s: float) -> None:
        quarters = Tempo(Fraction(1), Fraction(60))
        found = reach(f"A{2 * seconds}|", ReachSettings(even_cm_s=cm_s, tempo=quarters), f"{seconds}/4")
        assert found.longest_s == seconds
        assert found.even == ((0, 65),)


# What the collections ask for

SOURCES = sources(*FOLDERS)
needs_collections = pytest.mark.skipif(not SOURCES, reason="this music21 comes without the ABC collections")


@pytest.fixture(scope="module")
def printed() -> list[tuple[Tune, Bowing]]:
    lessons = [read_abc(source.text).lessons[0] for source in random.Random(1883).sample(SOURCES, SAMPLE)]
    return [(lesson.tune, lesson.bowings[0]) for lesson in lessons]


@needs_collections
class TestPrintedTunesAreLeftInPeace:
    """Published tunes can be played: of all 4,248, none runs out, 1 drifts, 36 have slurs that leap over a string."""

    def test_the_bow_never_runs_out_in_print(self, printed: list[tuple[Tune, Bowing]]) -> None:
        for tune, bowing in printed:
            warned = [f.rule for f in check(tune, bowing).findings if f.severity is Severity.WARNING]
            assert not {"bow-runs-out", "stroke-beyond-bow"} & set(warned), tune.title

    def test_drift_and_leaps_are_rare_in_print(self, printed: list[tuple[Tune, Bowing]]) -> None:
        told = [{finding.rule for finding in check(tune, bowing).findings} for tune, bowing in printed]
        assert sum("bow-drift" in rules for rules in told) <= 0.01 * SAMPLE
        assert sum("slur-leaps-string" in rules for rules in told) <= 0.03 * SAMPLE

    def test_even_speed_alone_would_cry_wolf(self, printed: list[tuple[Tune, Bowing]]) -> None:
        """Why the even model is shown and not warned of: it loses the bow in about a quarter of the tunes."""
        lost = sum(bool(work_out_reach(*each, work_out(*each)).runs_out_even) for each in printed)
        assert lost > 0.15 * SAMPLE

    def test_the_same_tunes_at_a_tenth_of_the_pace_do_run_out(self, printed: list[tuple[Tune, Bowing]]) -> None:
        """So that the silence above is known not to be deafness."""
        out = 0
        for tune, bowing in printed[::5]:
            usual = pace(tune).tempo
            slow = ReachSettings(tempo=replace(usual, per_minute=usual.per_minute / 10))
            out += not work_out_reach(tune, bowing, work_out(tune, bowing), slow).can_be_evened
        assert out > 0


@needs_collections
def test_printed_fingers_of_the_1883_book_lie_where_the_least_crossing_puts_them() -> None:
    """Of the fingers printed on D4, A4 and E5 five in six are what is chosen without looking at them."""
    agree = {"0": [0, 0], "4": [0, 0]}
    for source in sources("ryansMammoth"):
        if '"4"' not in source.text and '"0"' not in source.text:
            continue
        lesson = read_abc(source.text).lessons[0]
        tune, bowing = lesson.tune, lesson.bowings[0]
        free, printed = strings_of(tune, Bowing("without fingers")), strings_of(tune, bowing)
        for note_id, signs in bowing.signs.items():
            pitches = "".join(map(str, tune.note(note_id).pitches))
            if pitches in ("D4", "A4", "E5") and signs.fingerings in (("0",), ("4",)):
                counted = agree[signs.fingerings[0]]
                counted[0] += free[note_id] == printed[note_id]
                counted[1] += 1
    for alike, total in agree.values():
        assert total > 100
        assert alike > 0.8 * total
