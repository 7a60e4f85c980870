"""Recovery copies on the disk: what they hold, who claims them, and what stays of them."""

from __future__ import annotations

import os
import pickle
import signal
import string
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from immutabledict import immutabledict

from app.files import read_path, save_lesson
from app.imprint import Imprint
from app.recovery_copy import Note, hold_of, left_behind, new_path, read_note, remove, write_copy
from app.recovery_writer import RecoveryWriter
from core.lesson import Lesson
from core.order import playing_order
from tests.property.strategies import lessons

WHEN = datetime(2031, 5, 4, 17, 30, 5, tzinfo=UTC)
NOTE = Note("The Weir", WHEN, 3)
TEXTS = st.text(alphabet=string.printable + "é’–?>\U0001f3bb")
NOTES = st.builds(
    Note,
    title=TEXTS,
    edited=st.datetimes(timezones=st.just(UTC)).map(lambda when: when.replace(microsecond=0)),
    edits=st.integers(0, 10**6),
    file=st.none() | TEXTS.filter(lambda name: "/" not in name and name.strip(".")).map(lambda name: Path("/") / name),
    known=st.none() | st.builds(Imprint, st.integers(0, 10**9), st.text(string.hexdigits, min_size=64, max_size=64)),
    shown=st.integers(0, 20),
)


@pytest.fixture
def writer():
    writer = RecoveryWriter()
    yield writer
    writer.close()


@given(lesson=lessons(), note=NOTES)
@settings(max_examples=20, deadline=None)
def test_a_copy_gives_back_the_lesson_and_what_was_known_of_it(tmp_path_factory, lesson: Lesson, note: Note):
    path = tmp_path_factory.mktemp("copies") / "a.musicxml"
    write_copy(path, lesson, note)
    assert read_path(path).lessons == (lesson,)
    assert read_note(path.read_bytes()) == note


def test_windows_and_crashes_have_names_of_their_own(tmp_path: Path):
    assert len({new_path(tmp_path) for _ in range(1000)}) == 1000


def test_what_is_left_behind_comes_last_edited_first_and_what_is_held_does_not(tmp_path: Path, four_bars: Lesson):
    for day in (1, 3, 2):
        write_copy(new_path(tmp_path), four_bars, replace(NOTE, edited=WHEN.replace(day=day), edits=day))
    held = new_path(tmp_path)
    write_copy(held, four_bars, NOTE)
    assert hold_of(held).take()
    left = left_behind(tmp_path)
    assert [one.note.edits for one in left] == [3, 2, 1]
    assert all(one.lesson == four_bars for one in left)
    assert left_behind(tmp_path) == []  # all are claimed now
    for one in left:
        remove(one.path, one.hold)
    assert sorted(path.suffix for path in tmp_path.iterdir()) == [".held", ".musicxml"]


def test_a_copy_that_is_as_its_file_is_by_now_goes(tmp_path: Path, four_bars: Lesson):
    save_lesson(four_bars, tmp_path / "saved.mxl")
    write_copy(new_path(tmp_path / "r"), four_bars, replace(NOTE, file=tmp_path / "saved.mxl"))
    assert left_behind(tmp_path / "r") == []
    assert list((tmp_path / "r").iterdir()) == []


def test_a_claim_that_never_got_its_copy_is_cleared(tmp_path: Path):
    (tmp_path / "a.held").write_text("")
    held = hold_of(tmp_path / "b.musicxml")
    held.take()
    assert left_behind(tmp_path) == []
    assert [path.name for path in tmp_path.iterdir()] == ["b.held"]
    held.let_go()


def test_a_copy_tells_whether_its_file_has_changed_since(tmp_path: Path, four_bars: Lesson, with_pickup: Lesson):
    file = tmp_path / "saved.mxl"
    known = save_lesson(with_pickup, file)
    write_copy(new_path(tmp_path / "r"), four_bars, replace(NOTE, file=file, known=known))
    (left,) = left_behind(tmp_path / "r")
    assert not left.file_has_changed
    file.write_bytes(b"other")
    assert left.file_has_changed
    file.unlink()
    assert left.file_has_changed


def test_a_copy_without_its_note_is_offered_all_the_same(tmp_path: Path, four_bars: Lesson):
    save_lesson(four_bars, tmp_path / "a.musicxml")
    (left,) = left_behind(tmp_path)
    assert left.lesson == four_bars
    assert left.note.title == four_bars.tune.title
    assert left.note.file is None


def test_a_copy_that_cannot_be_read_is_offered_as_such_and_never_removed(tmp_path: Path, four_bars: Lesson):
    write_copy(new_path(tmp_path), four_bars, replace(NOTE, edited=WHEN.replace(year=1999)))
    (tmp_path / "a.musicxml").write_bytes(b"\0\0\0")
    good, left = left_behind(tmp_path)
    assert good.lesson == four_bars
    assert left.lesson is None
    assert (tmp_path / "a.musicxml").exists()


@pytest.mark.parametrize("said", ["{}", "[]", "null", '{"title": 1}', "{", '"x"'])
def test_a_note_of_another_make_is_refused(said: str):
    with pytest.raises(ValueError):  # noqa: PT011
        read_note(f"<?xml?>\n<?bowbench-recovery {said}?>\n".encode())


def test_the_process_writes_copies_of_one_tune_and_of_another(
    tmp_path: Path, four_bars: Lesson, with_pickup: Lesson, writer: RecoveryWriter
):
    renamed = replace(four_bars, bowings=(replace(four_bars.bowings[0], name="Renamed"),))
    for edits, lesson in enumerate((four_bars, renamed, with_pickup, four_bars)):
        writer.write(tmp_path / "a.musicxml", lesson, replace(NOTE, edits=edits))
        assert read_note((tmp_path / "a.musicxml").read_bytes()).edits == edits
        assert read_path(tmp_path / "a.musicxml").lessons == (lesson,)


def test_a_process_that_dies_loses_no_copy(tmp_path: Path, four_bars: Lesson, writer: RecoveryWriter):
    writer.write(tmp_path / "a.musicxml", four_bars, NOTE)
    for edits in (2, 3):
        if writer.pid is not None:
            os.kill(writer.pid, signal.SIGKILL)
        writer.write(tmp_path / "a.musicxml", four_bars, replace(NOTE, edits=edits))
        assert read_note((tmp_path / "a.musicxml").read_bytes()).edits == edits


def test_a_copy_that_cannot_be_written_says_why(tmp_path: Path, four_bars: Lesson, writer: RecoveryWriter):
    (tmp_path / "file").write_text("")
    with pytest.raises(FileExistsError):
        writer.write(tmp_path / "file" / "a.musicxml", four_bars, NOTE)


def test_the_process_ends_with_the_window(tmp_path: Path, four_bars: Lesson, writer: RecoveryWriter):
    writer.write(tmp_path / "a.musicxml", four_bars, NOTE)
    pid = writer.pid
    assert pid is not None
    writer.close()
    with pytest.raises(ProcessLookupError):
        os.kill(pid, 0)


def test_a_lesson_passes_between_processes_unchanged(four_bars: Lesson):
    assert pickle.loads(pickle.dumps(four_bars)) == four_bars


def test_a_lesson_is_sent_without_the_answers_that_another_thread_may_be_keeping_with_it(four_bars: Lesson):
    plain = pickle.dumps(four_bars)
    playing_order(four_bars.tune)
    assert four_bars.tune.places
    assert pickle.dumps(four_bars) == plain


def test_a_copy_that_cannot_be_sent_leaves_no_half_of_it_in_the_way_of_the_next(
    tmp_path: Path, four_bars: Lesson, with_pickup: Lesson, writer: RecoveryWriter
):
    writer.write(tmp_path / "a.musicxml", four_bars, NOTE)
    pid = writer.pid
    unsendable = replace(four_bars, fields=immutabledict({"long": "x" * 300_000, "not to be pickled": lambda: None}))
    with pytest.raises((pickle.PicklingError, AttributeError)):
        writer.write(tmp_path / "b.musicxml", unsendable, NOTE)
    writer.write(tmp_path / "c.musicxml", with_pickup, NOTE)
    assert read_path(tmp_path / "c.musicxml").lessons == (with_pickup,)
    assert writer.pid == pid
