"""Our ABC reader on three open collections: it reads every tune, and reads them as music21 does where that can."""

from __future__ import annotations

import os
import random
import time
from collections import Counter

import pytest

from core.reading.abc import decode, read_abc
from tests.outside.abc_collections import (
    CORPUS,
    FOLDERS,
    Source,
    Verdict,
    compare,
    our_facts,
    sources,
    their_facts,
)

SAMPLE = 150  # tunes; music21 takes most of the time
WHOLE = "BOWBENCH_WHOLE_COLLECTIONS"  # set it to compare all tunes; some minutes

SOURCES = sources(*FOLDERS)
pytestmark = pytest.mark.skipif(not SOURCES, reason="this music21 comes without the ABC collections")


def test_every_tune_of_the_collections_is_read_in_little_time() -> None:
    started = time.process_time()
    lessons = [
        lesson
        for folder in FOLDERS
        for path in sorted((CORPUS / folder).glob("*.abc"))
        for lesson in read_abc(decode(path.read_bytes())).lessons
    ]
    assert len(lessons) == len(SOURCES)
    assert time.process_time() - started < 30  # seconds; some 5 on a quiet machine
    assert all(lesson.tune.title for lesson in lessons)
    for lesson in lessons[::7]:
        assert_holds_together(lesson.tune, lesson.bowings[0])


def assert_holds_together(tune, bowing) -> None:
    """What ``core.tune`` and ``core.bowing`` promise of every tune and bowing."""
    ids = [note.id for note in tune.sequence]
    assert len(set(ids)) == len(ids)
    for bar in tune.bars:
        assert bar.notes
        at = 0
        for note in bar.notes:
            assert note.at == at
            at += note.length
    for note_id in bowing.joins:
        note, before = tune.note(note_id), tune.before(note_id)
        assert note.pitches
        assert not note.held
        assert before is not None
        assert before.pitches
    assert all(tune.note(note_id).pitches and not tune.note(note_id).held for note_id in bowing.marks)


@pytest.fixture(scope="module")
def verdicts() -> list[Verdict]:
    chosen: list[Source] = SOURCES if os.environ.get(WHOLE) else random.Random(1883).sample(SOURCES, SAMPLE)
    return [compare(source) for source in chosen]


def test_nearly_all_tunes_are_read_as_music21_reads_them(verdicts: list[Verdict]) -> None:
    equal = sum(verdict.mended for verdict in verdicts)
    assert equal >= 0.98 * len(verdicts), Counter(verdict.name for verdict in verdicts if not verdict.mended)


def test_every_difference_has_a_name(verdicts: list[Verdict]) -> None:
    assert [verdict.source.place for verdict in verdicts if verdict.name == "unexplained"] == []


def test_the_comparison_sees_a_difference() -> None:
    """A near miss, so that the comparison itself is known to work: one note, one slur, one mark changed."""
    text = "X:1\nT:Probe\nM:4/4\nL:1/8\nK:D\nd2|:uDEFG (AB)cd|efga b4|d4 e4|f4 g2:|\n"
    theirs = their_facts(text)
    assert our_facts(text).differences(theirs) == set()
    assert our_facts(text.replace("DEFG", "DEF^G")).differences(theirs) == {"notes"}
    assert our_facts(text.replace("(AB)c", "A(Bc)")).differences(theirs) == {"joins"}
    assert our_facts(text.replace("uD", "vD")).differences(theirs) == {"marks"}
    assert our_facts(text.replace(":|", "|]")).differences(theirs) == {"repeats"}


def test_a_tune_that_music21_gives_up_on_is_compared_without_what_it_cannot_read() -> None:
    verdict = compare(Source("Probe", 'X:1\nT:Probe\nM:4/4\nL:1/8\nK:D\nd2"_> 2,1"D2 EFGA|B4 c4|]\n'))
    assert (verdict.name, verdict.mended) == ("texts and !marks! break what stands beside them", True)


# Bowings of single tunes of the 1883 book, read by eye from its ABC


def tune_of_1883(name: str):
    path = CORPUS / "ryansMammoth" / f"{name}.abc"
    if not path.exists():
        pytest.skip("this music21 comes without the tune")
    return read_abc(decode(path.read_bytes())).lessons[0]


def test_soldiers_joy_has_its_slurs_its_marks_and_its_pickups() -> None:
    lesson = tune_of_1883("SoldiersJoy")
    tune, bowing = lesson.tune, lesson.bowings[0]
    assert [bar.number for bar in tune.bars] == [*range(9), 8, *range(9, 17)]
    assert [bar.start for bar in tune.bars if bar.is_pickup] == [1.5, 1.5]
    assert [bar.repeats for bar in tune.bars] == [0] * 8 + [2] + [0] * 8 + [2]
    assert {note_id: mark.bow.value for note_id, mark in bowing.marks.items()} == {"b0n1": "up", "b9n1": "up"}
    assert sorted(bowing.joins) == ["b0n2", "b2n5", "b4n5", "b6n5", "b9n2"]


def test_a_quoted_digit_is_a_finger() -> None:
    lesson = tune_of_1883("CollegeHornpipe")
    fingers = [signs.fingerings for signs in lesson.bowings[0].signs.values() if signs.fingerings]
    assert fingers == [("4",)]
    assert not any(bar.chords for bar in lesson.tune.bars)
