"""Engraved lines are kept for the next start, and never taken where they might be wrong."""

from __future__ import annotations

import json
import os
from dataclasses import fields, replace
from hashlib import sha256
from pathlib import Path

import pytest

from app import kept_pictures
from app.kept_pictures import LINES_KEPT, TUNES_KEPT, KeptPictures
from core.bowing import Bowing, slur_span
from core.engraving.bow_signs import rows_kept
from core.engraving.engraver import Engraver
from core.engraving.keeping import from_plain, picture_name, to_plain, tune_digest
from core.engraving.lines import break_lines
from core.engraving.picture import Picture
from core.reading import read_file
from core.tune import Tune

TOP = Path(__file__).parents[2]
LESSON = read_file((TOP / "sample_tunes" / "tuesday_ferry.musicxml").read_bytes()).lessons[0]
TUNE, BOWING = LESSON.tune, LESSON.bowings[0]


class Counting(Engraver):
    """Says how many lines it has engraved itself."""

    engraved = 0

    def _engrave(self, *args):
        self.engraved += 1
        return super()._engrave(*args)


def engrave(engraver: Engraver, tune: Tune = TUNE, bowing: Bowing = BOWING, width: int = 18000) -> list[Picture]:
    slots = rows_kept(tune, [note.id for note in tune.sequence[::4]])
    return [engraver.engrave(tune, bowing, line, slots, width) for line in break_lines(tune)]


def same(one: Picture, other: Picture) -> bool:
    return all(getattr(one, row.name) == getattr(other, row.name) for row in fields(Picture))


def keep(folder: Path) -> list[Picture]:
    engraver = Engraver()
    pictures = engrave(engraver)
    KeptPictures(folder).keep(tune_digest(TUNE), engraver.made(TUNE, pictures))
    return pictures


@pytest.fixture(scope="module")
def engraved() -> list[Picture]:
    return engrave(Engraver())


def test_a_picture_comes_back_from_json_as_it_was(engraved):
    for picture in engraved:
        back = from_plain(json.loads(json.dumps(to_plain(picture))))
        assert same(picture, back)
        assert [type(shape) for shape in back.shapes] == [type(shape) for shape in picture.shapes]
        assert repr(back.shapes) == repr(picture.shapes)


def test_the_next_process_engraves_nothing_of_what_is_kept(tmp_path):
    before = keep(tmp_path / "new")
    engraver = Counting(keeper=KeptPictures(tmp_path / "new"))
    after = engrave(engraver)
    assert all(map(same, before, after))
    assert engraver.engraved == len(before) - min(LINES_KEPT, len(before))


def test_whatever_a_picture_depends_on_makes_another_of_it(tmp_path):
    keep(tmp_path)
    first, second = TUNE.bars[0].notes[0], TUNE.bars[0].notes[1]
    raised = replace(first, pitches=(replace(first.pitches[0], octave=first.pitches[0].octave + 1),))
    bars = (replace(TUNE.bars[0], notes=(raised, *TUNE.bars[0].notes[1:])), *TUNE.bars[1:])
    plain = Bowing("plain")
    slurred = slur_span(TUNE, plain, first.id, second.id)
    for case in ((replace(TUNE, bars=bars), BOWING, 18000), (TUNE, BOWING, 17000), (TUNE, slurred, 18000)):
        kept, own = Counting(keeper=KeptPictures(tmp_path)), Engraver()
        assert same(engrave(kept, *case)[0], engrave(own, *case)[0])
        assert kept.engraved > 0
    assert picture_name(TUNE, (1,)) != picture_name(TUNE, (2,)) != picture_name(replace(TUNE, title="x"), (2,))


@pytest.mark.parametrize(
    "damage",
    [
        lambda data: data[: len(data) // 2],
        lambda data: b"",
        lambda data: data[:32],
        lambda data: data[:-9] + bytes([data[-9] ^ 1]) + data[-8:],
        lambda data: sha256(b"[1, 2]").digest() + b"[1, 2]",
        lambda data: sha256(b'["x", {}]').digest() + b'["x", {}]',
        lambda data: sha256(changed := data[32:].replace(b'"staff"', b'"stuff"')).digest() + changed,
        lambda data: data.replace(b'"staff"', b'"stuff"'),
        lambda data: data.replace(b"[[", b"[", 3),
        lambda data: sha256(b"[" * 100_000).digest() + b"[" * 100_000,
    ],
)
def test_a_damaged_file_is_passed_over_and_written_anew(tmp_path, damage, engraved):
    keep(tmp_path)
    (path,) = tmp_path.iterdir()
    path.write_bytes(damage(path.read_bytes()))
    kept = KeptPictures(tmp_path)
    engraver = Counting(keeper=kept)
    assert all(map(same, engrave(engraver), engraved))
    assert engraver.engraved > 0
    kept.keep(tune_digest(TUNE), engraver.made(TUNE, engrave(engraver)))
    again = Counting(keeper=KeptPictures(tmp_path))
    engrave(again)
    assert again.engraved == max(len(engraved) - LINES_KEPT, 0)


def test_what_another_version_engraved_is_passed_over(tmp_path, monkeypatch):
    keep(tmp_path)
    monkeypatch.setattr(kept_pictures, "OWN_CODE", ("core",))
    engraver = Counting(keeper=KeptPictures(tmp_path))
    pictures = engrave(engraver)
    assert engraver.engraved == len(pictures)
    KeptPictures(tmp_path).keep(tune_digest(TUNE), engraver.made(TUNE, pictures))
    again = Counting(keeper=KeptPictures(tmp_path))
    engrave(again)
    assert again.engraved < len(pictures)


def test_what_was_engraved_before_an_update_is_not_taken_for_work_of_the_new_version(tmp_path, monkeypatch):
    running = KeptPictures(tmp_path)
    monkeypatch.setattr(kept_pictures, "OWN_CODE", ("core",))  # other files, while the window is open
    engraver = Engraver()
    pictures = engrave(engraver)
    running.keep(tune_digest(TUNE), engraver.made(TUNE, pictures))
    after = Counting(keeper=KeptPictures(tmp_path))
    engrave(after)
    assert after.engraved == len(pictures)


def test_no_more_than_some_tunes_and_lines_are_kept(tmp_path, engraved):
    for number in range(TUNES_KEPT + 2):
        KeptPictures(tmp_path).keep(f"{number:032}", {str(place): engraved[0] for place in range(LINES_KEPT + 5)})
        os.utime(tmp_path / f"{number:032}.json", (number, number))
    KeptPictures(tmp_path).keep("last", {"a": engraved[0]})
    names = {path.name for path in tmp_path.iterdir()}
    assert len(names) == TUNES_KEPT
    assert "last.json" in names
    assert f"{0:032}.json" not in names
    assert KeptPictures(tmp_path).find(f"{TUNES_KEPT + 1:032}", str(LINES_KEPT)) is None
    assert KeptPictures(tmp_path).find(f"{TUNES_KEPT + 1:032}", "0") is not None


def test_a_folder_that_cannot_be_written_is_no_harm(tmp_path, engraved):
    (tmp_path / "file").write_bytes(b"")
    KeptPictures(tmp_path / "file").keep("tune", {"a": engraved[0]})
    assert KeptPictures(tmp_path / "file").find("tune", "a") is None
