"""Real tunes, sampled from three open collections, written as lessons: valid, and read back equal.

``python -m tests.outside.test_musicxml_collections`` takes all 4,248 tunes (ten minutes; options in ``whole_runs``)
and lets music21 read them too: pitches, lengths, slurs, bows, grace notes, endings and repeats must be the lesson's.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields

import pytest

from core.lesson import Lesson
from core.reading.abc import decode, read_abc
from core.reading.musicxml import read_musicxml
from core.writing.musicxml import write_musicxml
from tests.outside.abc_collections import CORPUS, FOLDERS, Source
from tests.outside.schema import faults
from tests.outside.second_readers import Shown, read_by_music21, shown_by
from tests.outside.whole_runs import run

EVERY = 12  # file
FILES = [path for folder in FOLDERS for path in sorted((CORPUS / folder).glob("*.abc"))[::EVERY]]


@pytest.mark.parametrize("folder", FOLDERS)
def test_tunes_of_the_collections_come_back_equal(folder: str) -> None:
    files = [path for path in FILES if path.parent.name == folder]
    assert files
    for path in files:
        for lesson in read_abc(decode(path.read_bytes())).lessons[:20]:
            assert comes_back(lesson, write_musicxml(lesson)), f"{path.name} {lesson.tune.number}"


def test_tunes_of_the_collections_are_written_validly_and_music21_reads_them_as_meant() -> None:
    for path in FILES[::6]:
        lesson = read_abc(decode(path.read_bytes())).lessons[0]
        text = write_musicxml(lesson)
        assert faults(text) == [], path.name
        assert read_otherwise(lesson, text) == [], path.name


def comes_back(lesson: Lesson, text: str) -> bool:
    """Whether a lesson is read back without change, and without a word."""
    reading = read_musicxml(text.encode())
    return reading.lessons == (lesson,) and reading.problems == ()


def read_otherwise(lesson: Lesson, text: str) -> list[str]:
    """What music21 reads otherwise than the lesson has it, in words of ``Shown``."""
    ours = [shown_by(lesson, bowing) for bowing in lesson.bowings]
    theirs = read_by_music21(text)
    return [
        field.name
        for field in fields(Shown)
        if [getattr(shown, field.name) for shown in ours] != [getattr(shown, field.name) for shown in theirs]
    ]


def examine(source: Source) -> Iterator[tuple[str, str]]:
    """What a run by hand counts of a tune."""
    for lesson in read_abc(source.text).lessons:
        text = write_musicxml(lesson)
        yield ("comes back equal", "") if comes_back(lesson, text) else ("comes back changed", "comes back changed")
        found = faults(text)
        yield ("invalid", found[0]) if found else ("valid", "")
        other = ", ".join(read_otherwise(lesson, text))
        yield (f"music21 differs: {other}", f"music21 differs: {other}") if other else ("music21 reads the same", "")


if __name__ == "__main__":
    run("Write tunes of the collections as MusicXML; read them by our reader, the schema and music21.", examine)
