"""The unofficial MusicXML suite inside music21: 142 files and a packed one, none of them ours."""

from pathlib import Path

import pytest

from core.reading import read_file
from core.tune import note_value
from tests.outside.musicxml_suite import FILES, melodies_by_music21, our_melody

INVALID = {"01e", "41g", "41h", "74a", "99d"}  # against the 4.0 schema

# Files that music21 reads otherwise, and why.
DIFFERENCES = {
    "01d-Pitches-Microtones.xml": "pitches between the semitones, which we move to the nearest",
    "01f-Pitches-EditorialMicrotoneAccidentals.xml": "pitches between the semitones, which we move to the nearest",
    "03b-Rhythm-Backup.xml": "the other voice goes on longer: we fill the bar with a hidden rest",
    "21f-Chord-ElementInBetween.xml": "music21 plays a chord one note after the other if something stands between",
    "32c-MultipleNotationChildren.xml": "accidental without alter: music21 goes by the sign, the standard by alter",
    "33i-Ties-NotEnded.xml": "ties with one end, to the same note: we hold the note",
    "43d-MultiStaff-StaffChange.xml": "one voice on two staves: music21 makes two parts of it",
}


def name(path: Path) -> str:
    return path.name


def test_the_suite_is_all_there() -> None:
    assert sum(path.suffix == ".xml" for path in FILES) == 142
    assert {path.name.split("-")[0] for path in FILES} >= INVALID


@pytest.mark.parametrize("path", FILES, ids=name)
def test_every_file_is_read_and_keeps_the_promises_of_a_tune(path: Path) -> None:
    reading = read_file(path.read_bytes())
    assert reading.lessons
    assert not reading.is_lesson_file
    for problem in reading.problems:
        assert problem.text.endswith(".")
        assert problem.text[0].isupper() or problem.text[0] in "“0123456789"
    for lesson in reading.lessons:
        ids = [note.id for note in lesson.tune.sequence]
        assert len(set(ids)) == len(ids)
        for bar in lesson.tune.bars:
            place = 0
            for note in bar.notes:
                assert note.at == place
                assert note_value(note.length, note.tuplet)
                assert list(note.pitches) == sorted(note.pitches, key=lambda pitch: pitch.midi)
                place += note.length
        for bowing in lesson.bowings:
            assert set(ids) >= {*bowing.joins, *bowing.marks, *bowing.signs}


@pytest.mark.parametrize("path", FILES, ids=name)
def test_music21_hears_the_same(path: Path) -> None:
    by_music21 = melodies_by_music21(path)
    assert by_music21 is not None
    lessons = read_file(path.read_bytes()).lessons
    ours = [our_melody(lesson.tune, bowing) for lesson in lessons for bowing in lesson.bowings]
    same = all(melody in by_music21 for melody in ours)
    assert same is (path.name not in DIFFERENCES)
