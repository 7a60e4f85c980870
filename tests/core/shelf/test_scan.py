"""Scanning folders: what is read, what is known again, and what never gets lost."""

from __future__ import annotations

import os
import sys
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from core.accent_plan import parse_plan
from core.reading.abc import read_abc
from core.shelf import scan as scanning
from core.shelf.remarks import change_tags, note_opened, set_status
from core.shelf.scan import add_places, drop_place, places_of, scan
from core.translation import install
from core.writing.musicxml import write_musicxml
from core.writing.mxl import pack_mxl
from tests.core.shelf.conftest import Shelf, abc

GATE = abc("Gate of the Weir", "d2fd Adfd|e2ge Bege")
SILL = abc("Over the Sill", "G2BG DGBG|A2cA EAcA", 2)
LOCK = abc("Lock and Key", "B2dB GBdB|c2ec Acec", 3)
NOON = datetime(2031, 5, 4, 12, tzinfo=UTC)


def remark(shelf: Shelf, words: str, status: str = "ready", tag: str = "class") -> None:
    """Say something of a tune, of every kind."""
    entry = shelf.one(words=words)
    set_status(shelf.catalogue, entry.id, status)
    change_tags(shelf.catalogue, entry.id, [tag])
    assert note_opened(shelf.catalogue, entry.file, entry.place - 1, NOON)


def said(shelf: Shelf, words: str) -> tuple[str, tuple[str, ...], str | None]:
    entry = shelf.one(words=words)
    return entry.status, entry.tags, entry.opened


SAID = ("ready", ("class",), "2031-05-04T12:00:00+00:00")
NOTHING = ("", (), None)


@pytest.fixture
def readings(monkeypatch: pytest.MonkeyPatch) -> list[bytes]:
    """The bytes of every file that is taken apart."""
    seen = []
    real = scanning.read_file
    monkeypatch.setattr(scanning, "read_file", lambda data: (seen.append(data), real(data))[1])
    return seen


def test_books_and_lessons_are_read_and_other_files_are_not(shelf):
    lesson = read_abc(abc("In a lesson", "A4 B4")).lessons[0]
    shelf.write("book.ABC", GATE, SILL)
    (shelf.folder / "lesson.musicxml").write_text(write_musicxml(lesson), "utf-8")
    (shelf.folder / "packed.mxl").write_bytes(pack_mxl(write_musicxml(lesson)))
    shelf.write("notes.txt", LOCK)
    shelf.write(".hidden/book.abc", LOCK)
    report = shelf.scan()
    assert (report.files, report.new, report.problems) == (3, 3, [])
    assert shelf.titles() == ["Gate of the Weir", "In a lesson", "In a lesson", "Over the Sill"]


def test_a_file_that_did_not_change_is_not_read_again(shelf, readings):
    path = shelf.write("book.abc", GATE)
    shelf.scan()
    assert len(readings) == 1
    shelf.scan()
    os.utime(path, (5, 5))  # another time, the same bytes: hashed, not taken apart
    shelf.scan()
    assert len(readings) == 1
    shelf.write("book.abc", SILL)
    assert shelf.scan().changed == 1
    assert len(readings) == 2


def test_a_file_that_was_still_being_written_is_looked_at_again(shelf):
    path = shelf.write("book.abc", GATE)
    now = path.stat().st_mtime_ns
    scan(shelf.catalogue, now_ns=lambda: now)
    path.write_text(GATE.replace("Weir", "Mill"), "utf-8")  # as long, and within the same tick of the disk's clock
    os.utime(path, ns=(now, now))
    shelf.scan()
    assert shelf.titles() == ["Gate of the Mill"]


def test_other_facts_are_read_once_the_program_knows_more(shelf, readings, monkeypatch):
    shelf.write("book.abc", GATE)
    shelf.scan()
    for module in ("core.shelf.scan", "core.shelf.filing"):
        monkeypatch.setattr(f"{module}.FACTS_VERSION", 2)
    shelf.scan()
    assert len(readings) == 2


@pytest.mark.parametrize(
    "change",
    [
        lambda shelf: shelf.write("book.abc", SILL, GATE),
        lambda shelf: shelf.write("book.abc", LOCK, SILL),
        lambda shelf: shelf.write("book.abc", GATE, SILL.replace("Sill", "Low Sill")),
        lambda shelf: shelf.write("book.abc", GATE, SILL.replace("G2BG", "G2BA")),
        lambda shelf: (shelf.folder / "book.abc").rename(shelf.folder / "other.abc"),
        lambda shelf: shelf.folder.joinpath("deep").mkdir() or (shelf.folder / "book.abc").rename(
            shelf.folder / "deep" / "book.abc"),
        lambda shelf: (shelf.folder / "book.abc").unlink() or shelf.write("other.abc", LOCK, SILL),
        lambda shelf: (shelf.folder / "book.abc").unlink() or shelf.write(
            "deep/book.abc", GATE, SILL.replace("A2", "B2")),
    ],
    ids=["reordered", "another put before", "title mended", "note mended", "renamed", "moved", "into another book",
         "moved and mended"],
)  # fmt: skip
def test_what_the_teacher_said_goes_with_the_tune(shelf, change):
    shelf.write("book.abc", GATE, SILL)
    shelf.scan()
    remark(shelf, "sill")
    change(shelf)
    shelf.scan()
    assert said(shelf, "sill") == SAID
    assert all(not entry.status for entry in shelf.find() if "Sill" not in entry.title)


def test_a_file_deleted_and_put_back_has_what_was_said(shelf, readings):
    path = shelf.write("book.abc", GATE)
    shelf.scan()
    remark(shelf, "gate")
    kept = path.rename(path.with_suffix(".gone"))
    assert shelf.scan().gone == 1
    assert shelf.titles() == []
    kept.rename(path)
    assert shelf.scan().back == 1
    assert said(shelf, "gate") == SAID
    assert len(readings) == 1


def test_a_tune_taken_out_of_its_book_and_put_back_has_what_was_said(shelf):
    shelf.write("book.abc", GATE, SILL)
    shelf.scan()
    remark(shelf, "sill")
    shelf.write("book.abc", GATE)
    shelf.scan()
    assert shelf.titles() == ["Gate of the Weir"]
    shelf.write("book.abc", GATE, SILL)
    shelf.scan()
    assert said(shelf, "sill") == SAID


def test_two_files_that_change_names_keep_what_was_said_of_their_tunes(shelf):
    one, two = shelf.write("a.abc", GATE), shelf.write("b.abc", SILL)
    shelf.scan()
    remark(shelf, "gate")
    remark(shelf, "sill", "taught", "fair")
    one.rename(shelf.folder / "c")
    two.rename(one)
    (shelf.folder / "c").rename(two)
    shelf.scan()
    assert said(shelf, "gate") == SAID
    assert said(shelf, "sill")[:2] == ("taught", ("fair",))


def test_a_copy_starts_with_nothing_said(shelf):
    shelf.write("a.abc", GATE)
    shelf.scan()
    remark(shelf, "gate")
    shelf.write("b.abc", GATE)
    assert shelf.scan().new == 1
    assert {entry.file.name: entry.status for entry in shelf.find()} == {"a.abc": "ready", "b.abc": ""}


def test_a_move_that_was_seen_as_a_copy_first_hands_on_what_was_said(shelf):
    path = shelf.write("a.abc", GATE)
    shelf.scan()
    remark(shelf, "gate")
    shelf.write("b.abc", GATE)
    shelf.scan()
    path.unlink()
    shelf.scan()
    assert said(shelf, "gate") == SAID
    assert shelf.titles(words="class") == ["Gate of the Weir"]
    shelf.write("a.abc", GATE)
    shelf.scan()
    assert [entry.status for entry in shelf.find()] == ["ready", "ready"]


def test_a_folder_that_was_renamed_is_one_move_a_file(shelf, readings):
    for number in range(4):
        shelf.write(f"old/{number}.abc", GATE.replace("Weir", f"Weir {number}"))
    shelf.scan()
    remark(shelf, "3")
    (shelf.folder / "old").rename(shelf.folder / "new")
    report = shelf.scan()
    assert (report.moved, report.gone, report.new) == (4, 0, 0)
    assert len(readings) == 4
    assert said(shelf, "3") == SAID
    assert shelf.one(words="3").file == shelf.folder / "new" / "3.abc"


@pytest.mark.parametrize(
    ("data", "line"),
    [(b"", "tune"), (b"PK\x03\x04 no zip", ""), (b"<score-partwise><part", ""), (b"\xff\xfe\x00", ""),
     (b"X:1\nT:a", "")],
)  # fmt: skip
def test_a_bad_file_costs_one_line_each_time(shelf, data, line):
    shelf.write("good.abc", GATE)
    (shelf.folder / "bad.abc").write_bytes(data)
    for _ in range(2):
        (problem,) = shelf.scan().problems
        assert problem.path.name == "bad.abc"
        assert "\n" not in str(problem)
        assert line in problem.text
        assert shelf.titles() == ["Gate of the Weir"]


def test_a_mistake_in_a_reader_costs_one_line_too(shelf, monkeypatch):
    shelf.write("a.abc", GATE)
    shelf.write("b.abc", SILL)
    real = scanning.read_file
    monkeypatch.setattr(scanning, "read_file", lambda data: real(data) if b"Sill" in data else 1 / 0)
    (problem,) = shelf.scan().problems
    assert problem.text == "cannot be read (ZeroDivisionError: division by zero)."
    assert shelf.titles() == ["Over the Sill"]


def test_why_a_file_cannot_be_read_is_said_in_the_language_of_the_scan(shelf):
    shelf.write("a.abc", "spoilt")
    (problem,) = shelf.scan().problems
    install(lambda text, comment, n: f"Anders: {text}")
    try:
        (anew,) = shelf.scan().problems
    finally:
        install(None)
    assert not problem.text.startswith("Anders: ")
    assert anew.text.startswith("Anders: ")


def test_a_file_that_a_better_reader_can_read_comes_on_the_shelf(shelf, monkeypatch):
    shelf.write("a.abc", GATE)
    with monkeypatch.context() as patched:
        patched.setattr(scanning, "read_file", lambda data: 1 / 0)
        shelf.scan()
    report = shelf.scan()
    assert (report.problems, report.changed) == ([], 1)
    assert shelf.titles() == ["Gate of the Weir"]


def test_a_file_that_is_spoilt_and_mended_has_what_was_said(shelf):
    shelf.write("book.abc", GATE)
    shelf.scan()
    remark(shelf, "gate")
    shelf.write("book.abc", "spoilt")
    assert len(shelf.scan().problems) == 1
    assert shelf.titles() == []
    shelf.write("book.abc", GATE)
    shelf.scan()
    assert said(shelf, "gate") == SAID


def test_a_file_too_large_is_left_out_in_one_line(shelf, monkeypatch):
    monkeypatch.setattr(scanning, "LARGEST_FILE_BYTES", 100)
    shelf.write("book.abc", GATE * 3)
    (problem,) = shelf.scan().problems
    assert "larger than" in problem.text


NAMES = [b"caf\xe9.abc", b"line\nbreak.abc", b"'; DROP TABLE tune; --.abc", "ø\u202egnp.abc".encode(), b" .abc",
         b"%_*?.abc", b"n" * 250 + b".abc"]  # fmt: skip


@pytest.mark.skipif(sys.platform != "linux", reason="other systems refuse such names")
@pytest.mark.parametrize("name", NAMES)
def test_hostile_file_names(shelf, name):
    path = os.path.join(os.fsencode(shelf.folder), name)
    with open(path, "w", encoding="utf-8") as file:
        file.write(GATE)
    shelf.scan()
    remark(shelf, "gate")
    assert os.fsencode(shelf.one().file) == path
    os.rename(path, path[:-4] + b"2.abc")
    shelf.scan()
    assert said(shelf, "gate") == SAID
    with open(path, "w", encoding="utf-8") as file:
        file.write("spoilt")
    (problem,) = shelf.scan().problems
    str(problem).encode()
    assert str(problem).isprintable()


def test_links_in_a_circle_are_walked_once(shelf):
    shelf.write("deep/book.abc", GATE)
    (shelf.folder / "deep" / "up").symlink_to(shelf.folder, target_is_directory=True)
    (shelf.folder / "again").symlink_to(shelf.folder / "deep", target_is_directory=True)
    (shelf.folder / "book.abc").symlink_to(shelf.folder / "deep" / "book.abc")
    (shelf.folder / "self.abc").symlink_to(shelf.folder / "self.abc")
    (shelf.folder / "nowhere.abc").symlink_to(shelf.folder / "missing.abc")
    report = shelf.scan()
    assert (report.files, report.problems) == (1, [])
    assert shelf.one().file == shelf.folder / "deep" / "book.abc"


def test_links_to_music_elsewhere_are_followed(shelf, tmp_path):
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    (elsewhere / "book.abc").write_text(GATE, "utf-8")
    (tmp_path / "single.abc").write_text(SILL, "utf-8")
    (shelf.folder / "linked").symlink_to(elsewhere, target_is_directory=True)
    (shelf.folder / "single.abc").symlink_to(tmp_path / "single.abc")
    shelf.scan()
    assert shelf.titles() == ["Gate of the Weir", "Over the Sill"]


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no pipes in folders")
def test_a_pipe_among_the_music_is_left_alone(shelf):
    os.mkfifo(shelf.folder / "pipe.abc")
    assert shelf.scan().files == 0


def refuse(monkeypatch: pytest.MonkeyPatch, name: str, closed: Path) -> None:
    """Let the system refuse one path, whoever runs the tests (root may do everything)."""
    real = getattr(os, name)

    def refusing(path, *args, **kwargs):
        if os.fsencode(path) == os.fsencode(closed):
            raise PermissionError(13, "Permission denied", path)
        return real(path, *args, **kwargs)

    monkeypatch.setattr(os, name, refusing)


def test_a_folder_that_cannot_be_looked_into_keeps_its_tunes_on_the_shelf(shelf, monkeypatch):
    shelf.write("closed/book.abc", GATE)
    shelf.write("open.abc", SILL)
    shelf.scan()
    remark(shelf, "gate")
    refuse(monkeypatch, "scandir", shelf.folder / "closed")
    report = shelf.scan()
    assert [str(problem) for problem in report.problems] == [
        f"{shelf.folder / 'closed'}: cannot be looked into: you have no permission there."
    ]
    assert report.gone == 0
    assert said(shelf, "gate") == SAID


def test_a_place_that_is_not_there_costs_one_line_and_its_tunes_wait(shelf):
    shelf.write("book.abc", GATE)
    shelf.scan()
    remark(shelf, "gate")
    shelf.folder.rename(shelf.folder.with_name("unplugged"))
    (problem,) = shelf.scan().problems
    assert problem.text == "is not there."
    assert shelf.titles() == []
    shelf.folder.with_name("unplugged").rename(shelf.folder)
    shelf.scan()
    assert said(shelf, "gate") == SAID


def test_a_place_taken_off_and_put_back_has_what_was_said(shelf):
    shelf.write("book.abc", GATE)
    inner = shelf.folder / "inner"
    shelf.write("inner/book.abc", SILL)
    add_places(shelf.catalogue, [inner, inner])
    shelf.scan()
    remark(shelf, "gate")
    drop_place(shelf.catalogue, shelf.folder)
    assert places_of(shelf.catalogue) == (inner,)
    assert shelf.titles() == ["Over the Sill"]
    add_places(shelf.catalogue, [shelf.folder])
    shelf.scan()
    assert said(shelf, "gate") == SAID


def test_a_single_file_can_be_a_place(shelf, tmp_path):
    single = tmp_path / "single"  # whatever its name ends in: the teacher says that it is music
    single.write_text(GATE, "utf-8")
    add_places(shelf.catalogue, [single])
    shelf.scan()
    assert shelf.one().file == single


def test_scanning_one_place_leaves_the_others_alone(shelf, tmp_path):
    path = shelf.write("book.abc", GATE)
    shelf.scan()
    path.unlink()
    (tmp_path / "other").mkdir()
    scan(shelf.catalogue, [tmp_path / "other"])
    assert shelf.titles() == ["Gate of the Weir"]


def test_a_tune_moved_to_another_place_is_known_before_its_old_place_is_scanned(shelf, tmp_path):
    path = shelf.write("book.abc", GATE)
    shelf.scan()
    remark(shelf, "gate")
    other = tmp_path / "other"
    other.mkdir()
    path.rename(other / "moved.abc")
    add_places(shelf.catalogue, [other])
    scan(shelf.catalogue, [other])
    assert said(shelf, "gate") == SAID


def test_a_scan_that_is_stopped_keeps_what_it_has_and_puts_nothing_away(shelf):
    for number in range(5):
        shelf.write(f"{number}.abc", GATE.replace("Weir", f"Weir {number}"))
    names = []
    report = shelf.scan(watch=lambda now: names.append(now.name), stopped=lambda: len(names) > 3)
    assert report.stopped
    assert len(shelf.titles()) == 3
    (shelf.folder / "0.abc").unlink()
    assert shelf.scan(stopped=lambda: True).stopped
    assert len(shelf.titles()) == 3
    assert not shelf.scan().stopped
    assert len(shelf.titles()) == 4


def test_progress_counts_up_to_the_end(shelf):
    shelf.write("a.abc", GATE)
    shelf.write("b.abc", SILL)
    told = []
    shelf.scan(watch=told.append)
    assert [(now.done, now.total) for now in told] == [(0, 0), (0, 2), (1, 2), (2, 2)]
    assert told[1].name.endswith("a.abc")


def test_bowings_of_a_lesson_are_told_with_their_plans(shelf):
    lesson = read_abc(abc("In a lesson", "A4 B4")).lessons[0]
    bowings = (replace(lesson.bowings[0], name="Drive", accents=parse_plan("backbeat")),)
    (shelf.folder / "lesson.musicxml").write_text(write_musicxml(replace(lesson, bowings=bowings)), "utf-8")
    shelf.scan()
    assert [(one.name, one.accents) for one in shelf.one(bowing="backbeat").bowings] == [("Drive", "backbeat")]
    assert shelf.titles(bowing="dri") == ["In a lesson"]
