"""The tunes that come with the program: every one reads without a word, is whole, and lies under the hand."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from importlib.resources import files
from itertools import pairwise

import pytest

from core.accent_plan import AccentPlan, accented_places
from core.accents import Met, weigh
from core.bowing import Bow, Bowing, Join, Ornament, stroke_notes
from core.check import Report, check
from core.chords import parse_chord
from core.order import playing_order
from core.reading import read_file
from core.recurrence import recurring_bars
from core.strokes import work_out
from core.tune import STEP_SEMITONES, Bar, Pitch, Tune

SAMPLES = files("sample_tunes")
NAMES = sorted(entry.name for entry in SAMPLES.iterdir() if entry.name.endswith(".abc"))
OPEN_G, FOURTH_FINGER_ON_E = Pitch(3, "G"), Pitch(5, "B")
CHORD_NOTES = {"major": (0, 4, 7), "minor": (0, 3, 7), "dominant": (0, 4, 7, 10)}  # semitones over the root


def tunes_in(name: str) -> list[Tune]:
    return [lesson.tune for lesson in read_file((SAMPLES / name).read_bytes()).lessons]


ALL = [tune for name in NAMES for tune in tunes_in(name)]
each_tune = pytest.mark.parametrize("tune", ALL, ids=lambda tune: tune.title)


@pytest.mark.parametrize("name", NAMES)
def test_a_sample_reads_without_a_problem(name: str) -> None:
    assert read_file((SAMPLES / name).read_bytes()).problems == ()


def test_every_dance_is_there() -> None:
    dances = {tune.dance for tune in ALL}
    assert dances >= {"reel", "jig", "slip jig", "hornpipe", "polka", "waltz", "strathspey", "march", "barndance"}


def test_no_title_is_used_twice() -> None:
    titles = Counter(title for tune in ALL for title in (tune.title, *tune.other_titles))
    assert [title for title, count in titles.items() if count > 1] == []


def test_one_file_is_a_book_to_choose_from() -> None:
    assert len(tunes_in("tuesday_class_book.abc")) == 4


@each_tune
def test_a_tune_has_two_repeated_parts_and_sixteen_bars(tune: Tune) -> None:
    assert sum(bar.repeats == 2 for bar in tune.bars) >= 2
    assert len({bar.number for bar in tune.bars if bar.number}) >= 16


@each_tune
def test_a_tune_says_who_made_it_and_how_fast_it_goes(tune: Tune) -> None:
    assert {"composer", "origin", "transcriber"} <= {credit.kind for credit in tune.credits}
    assert tune.tempo is not None


@each_tune
def test_every_bar_goes_on_where_the_one_played_before_it_stopped(tune: Tune) -> None:
    played = [tune.bars[visit.bar] for visit in playing_order(tune)]
    for bar, following in pairwise([*played, played[0]]):
        assert (bar.start + bar.length) % full_length(bar) == following.start, f"bar {bar.number}"


@each_tune
def test_every_full_bar_has_a_chord_over_it_that_fits_its_strong_beats(tune: Tune) -> None:
    """A few passing notes on a strong beat are good style; more would be a wrong chord."""
    chord, fits = None, []
    for bar in tune.bars:
        names = {symbol.at: parse_chord(symbol.text) for symbol in bar.chords}
        for note in bar.notes:
            chord = names.get(note.at, chord)
            if not bar.is_pickup and note.at in accented_places(AccentPlan(), bar.meter):
                assert chord is not None
                above_root = note.pitches[0].midi - STEP_SEMITONES[chord.root] - chord.root_alter
                fits.append(above_root % 12 in CHORD_NOTES[chord.kind])
    assert sum(fits) >= 0.85 * len(fits)


@each_tune
def test_a_tune_comes_home_to_its_key_note(tune: Tune) -> None:
    assert tune.bars[-1].notes[-1].pitches[0].step == tune.bars[-1].key.tonic


@each_tune
def test_a_tune_lies_in_the_first_position(tune: Tune) -> None:
    pitches = [pitch.midi for note in tune.sequence for pitch in note.pitches]
    assert OPEN_G.midi <= min(pitches) < max(pitches) <= FOURTH_FINGER_ON_E.midi


@each_tune
def test_a_third_of_the_bars_or_more_come_again(tune: Tune) -> None:
    assert sum(len(group) for group in recurring_bars(tune)) >= len(tune.bars) / 3


def test_the_signs_of_a_marked_tune_are_all_met_somewhere() -> None:
    bowings = [lesson.bowings[0] for name in NAMES for lesson in read_file((SAMPLES / name).read_bytes()).lessons]
    signs = [signs for bowing in bowings for signs in bowing.signs.values()]
    assert any(signs.graces for signs in signs)
    assert any(Ornament.ROLL in signs.ornaments for signs in signs)
    assert {mark.bow for bowing in bowings for mark in bowing.marks.values()} == set(Bow)
    assert any(bowing.joins for bowing in bowings)


# --- the finished lesson -------------------------------------------------------------------------------------------

FERRY = read_file((SAMPLES / "tuesday_ferry.musicxml").read_bytes()).lessons[0]
PLAYED_BARS = 32  # two parts of eight bars, each played twice


def checked(name: str) -> tuple[Bowing, Report]:
    bowing = FERRY.named(name)
    return bowing, check(FERRY.tune, bowing)


def test_the_lesson_reads_without_a_problem_and_holds_the_tune_of_the_plain_file() -> None:
    reading = read_file((SAMPLES / "tuesday_ferry.musicxml").read_bytes())
    assert reading.problems == ()
    assert reading.is_lesson_file
    assert reading.lessons[0].tune == tunes_in("tuesday_ferry.abc")[0]


def test_the_lesson_goes_from_plain_to_ornamented() -> None:
    assert [bowing.name for bowing in FERRY.bowings] == [
        "Separate bows",
        "On the beat, few slurs",
        "Backbeat",
        "By phrase, smooth",
        "By phrase with ornaments",
    ]


@pytest.mark.parametrize("bowing", FERRY.bowings, ids=lambda bowing: bowing.name)
def test_every_bowing_of_the_lesson_comes_round_without_a_retake_or_a_fault(bowing: Bowing) -> None:
    report = check(FERRY.tune, bowing)
    assert report.totals.comes_round
    assert report.totals.retakes == 0
    assert not any(finding.severity.value == "fault" for finding in report.findings)


def test_separate_bows_show_what_a_bar_of_seven_does() -> None:
    """Bars of 7, 7, 7 and 8 strokes: the fifth bar, the first again, begins on the other bow."""
    bowing, report = checked("Separate bows")
    assert [len(FERRY.tune.bars[bar].notes) for bar in (1, 2, 3, 4)] == [7, 7, 7, 8]
    assert [report.strokes.bows[f"b{bar}n1"][0].value for bar in (1, 2, 3, 4, 5)] == ["down", "up", "down", "up", "up"]
    assert ("phrase-on-other-bow", (5, 6)) in {(finding.rule, finding.bars) for finding in report.findings}
    assert not bowing.joins


def test_on_the_beat_every_first_and_third_beat_is_driven() -> None:
    totals = checked("On the beat, few slurs")[1].totals
    assert totals.driven == 2 * PLAYED_BARS
    assert totals.up == totals.buried == totals.unstruck == 0
    assert totals.consistency == 1


def test_on_the_beat_there_is_one_slur_in_each_half_bar_of_an_odd_number_of_notes_and_no_other() -> None:
    """One fewer, and the next strong beat would come on an up-bow."""
    bowing = FERRY.named("On the beat, few slurs")
    pickup, *bars = FERRY.tune.bars
    halves = [[note for note in bar.notes if half <= note.at < half + 2] for bar in bars for half in (0, 2)]
    halves[-1] += pickup.notes  # completes the last bar when the tune is played again
    assert [sum(note.id in bowing.joins for note in half) for half in halves] == [len(half) % 2 for half in halves]


def test_the_backbeat_drives_beats_two_and_four_with_one_up_bow_after_each() -> None:
    totals = checked("Backbeat")[1].totals
    assert totals.driven == 2 * PLAYED_BARS  # the pick-up has the fourth beat that the last bar lacks
    assert totals.up == totals.buried == totals.unstruck == 0
    assert totals.strokes == 2 * totals.driven
    assert totals.consistency == 1


def test_the_backbeat_slurs_over_bar_lines_with_a_cut_between_equal_notes() -> None:
    bowing, report = checked("Backbeat")
    over_bar_lines = [bar.notes[0] for bar in FERRY.tune.bars[1:] if bowing.joins.get(bar.notes[0].id) is Join.SLUR]
    equal = [note for note in over_bar_lines if FERRY.tune.before(note.id).pitches == note.pitches]
    assert len(over_bar_lines) > len(equal) > 0
    assert all(bowing.signs_on(note.id).graces for note in equal)
    assert report.findings == ()


def test_by_phrase_the_second_part_moves_to_the_backbeat_and_its_cadence_comes_home() -> None:
    bowing, report = checked("By phrase, smooth")
    accents = weigh(FERRY.tune, bowing, report.strokes)
    assert [phrase.kind.value for phrase in accents.phrases] == ["on-beat", "on-beat", "backbeat", "backbeat"]
    missed = [accent for accent in accents.met if accent.met is not Met.DRIVEN]
    assert [(FERRY.tune.bars[accent.bar].number, accent.place) for accent in missed] == [(17, 1), (17, 3), (18, 1)]
    assert {accent.met for accent in missed} == {Met.UP}
    assert report.totals.consistency == 1


def test_by_phrase_slurs_are_of_twos_and_threes() -> None:
    assert set(slur_sizes(FERRY.named("By phrase, smooth"))) == {1, 2, 3}


def test_the_ornamented_version_keeps_the_bows_of_the_smooth_one() -> None:
    smooth, ornamented = FERRY.named("By phrase, smooth"), FERRY.named("By phrase with ornaments")
    assert ornamented.joins == smooth.joins
    assert work_out(FERRY.tune, ornamented).bows == work_out(FERRY.tune, smooth).bows
    assert {ornament for signs in ornamented.signs.values() for ornament in signs.ornaments} == {
        Ornament.ROLL,
        Ornament.BOWED_TRIPLET,
    }
    assert any(signs.graces for signs in ornamented.signs.values())
    assert not smooth.signs


def slur_sizes(bowing: Bowing) -> list[int]:
    """Notes in each written stroke, in written order."""
    starts = [note for note in FERRY.tune.sequence if note.id not in bowing.joins]
    return [len(stroke_notes(FERRY.tune, bowing, note.id)) for note in starts]


def full_length(bar: Bar) -> Fraction:
    length = bar.meter.bar_length
    assert length is not None
    return length
