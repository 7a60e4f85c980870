"""Real tunes, sampled from three open collections, written as lessons: valid, and read back equal."""

import pytest

from core.reading.abc import decode, read_abc
from core.reading.musicxml import read_musicxml
from core.writing.musicxml import write_musicxml
from tests.outside.abc_collections import CORPUS, FOLDERS
from tests.outside.schema import faults

EVERY = 12  # file; with 1, all 4,248 tunes come back equal (a minute)
FILES = [path for folder in FOLDERS for path in sorted((CORPUS / folder).glob("*.abc"))[::EVERY]]


@pytest.mark.parametrize("folder", FOLDERS)
def test_tunes_of_the_collections_come_back_equal(folder: str) -> None:
    files = [path for path in FILES if path.parent.name == folder]
    assert files
    for path in files:
        for lesson in read_abc(decode(path.read_bytes())).lessons[:20]:
            reading = read_musicxml(write_musicxml(lesson).encode())
            same = reading.lessons == (lesson,)
            assert same, f"{path.name} {lesson.tune.number}"
            assert reading.problems == ()


def test_tunes_of_the_collections_are_written_validly() -> None:
    for path in FILES[::6]:
        lesson = read_abc(decode(path.read_bytes())).lessons[0]
        assert faults(write_musicxml(lesson)) == [], path.name
