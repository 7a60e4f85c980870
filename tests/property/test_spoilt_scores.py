"""Scores with elements dropped, doubled, moved and misspelt: read with all promises of a tune kept, or refused."""

import random
from pathlib import Path

import pytest
from lxml import etree

from core.bowing import Bowing
from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.reading.musicxml import read_musicxml
from core.tune import Tune, note_value
from core.writing.musicxml import write_musicxml
from tests.outside.musicxml_suite import FILES
from tests.property.strategies import AWKWARD

TEXTS = ("", "0", "-1", "1", "3", "7", "999999999", "1e9", "0.3", "x", "start", "stop", "yes", "b0n1", "[", "½", "A")
SPOILT_PER_FILE = 2


def spoil(root: etree._Element, chance: random.Random) -> None:
    """Change a handful of elements in one of the ways in which files are broken by hand and by programs."""
    for _ in range(chance.randint(1, 6)):
        elements = [element for element in root.iter() if element is not root]
        if not elements:
            return
        element, other = chance.choice(elements), chance.choice(elements)
        match chance.randrange(6):
            case 0:
                element.getparent().remove(element)
            case 1:
                element.addnext(etree.fromstring(etree.tostring(element, with_tail=False)))
            case 2:
                element.text = chance.choice(TEXTS)
            case 3:
                element.set(chance.choice([*element.attrib, "number", "type", "id"]), chance.choice(TEXTS))
            case 4:
                element.tag = other.tag
            case 5:
                other.append(etree.fromstring(etree.tostring(element, with_tail=False)))


def check_tune(tune: Tune) -> None:
    ids = [note.id for note in tune.sequence]
    assert tune.bars
    assert len(set(ids)) == len(ids)
    before = None
    for bar in tune.bars:
        place = 0
        for note in bar.notes:
            assert note.at == place
            assert note.length > 0
            assert note_value(note.length, note.tuplet)
            if note.held:
                assert before is not None
                assert [pitch.midi for pitch in before.pitches] == [pitch.midi for pitch in note.pitches]
            place += note.length
            before = note


def check_bowing(tune: Tune, bowing: Bowing) -> None:
    notes = {note.id: note for note in tune.sequence}
    for note_id in bowing.joins:
        before = tune.before(note_id)
        assert before is not None
        assert not any((before.is_rest, notes[note_id].is_rest, notes[note_id].held))
    assert not any(notes[note_id].is_rest for note_id in bowing.marks)
    assert not bowing.retakes & (bowing.joins.keys() | bowing.marks.keys())
    assert all(bowing.signs.values())
    assert bowing.signs.keys() <= notes.keys()


def check_spoilt(data: bytes, seed: str) -> None:
    root = etree.fromstring(data, etree.XMLParser(remove_comments=True, remove_pis=True))
    spoil(root, random.Random(seed))
    try:
        reading = read_musicxml(etree.tostring(root))
    except UnreadableFileError:
        return
    for lesson in reading.lessons:
        check_tune(lesson.tune)
        for bowing in lesson.bowings:
            check_bowing(lesson.tune, bowing)
        again = read_musicxml(write_musicxml(lesson).encode())
        same = again.lessons == (lesson,)
        assert same


@pytest.mark.parametrize("path", [path for path in FILES if path.suffix == ".xml"], ids=lambda path: path.name)
def test_spoilt_files_of_others(path: Path) -> None:
    for number in range(SPOILT_PER_FILE):
        check_spoilt(path.read_bytes(), f"{path.name} {number}")


@pytest.mark.parametrize("lesson", AWKWARD, ids=range(len(AWKWARD)))
def test_spoilt_files_of_ours(lesson: Lesson) -> None:
    for number in range(8 * SPOILT_PER_FILE):
        check_spoilt(write_musicxml(lesson).encode(), f"ours {number}")
