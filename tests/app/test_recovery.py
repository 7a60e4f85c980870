"""When a lesson is copied, what the copy holds, and when it goes."""

from __future__ import annotations

import errno
from dataclasses import replace
from pathlib import Path

import pytest

import app.recovery
import app.recovery_writer
from app.document import Document
from app.files import read_path, save_lesson
from app.recovery import LATEST_MS, REST_MS, Recovery
from app.recovery_copy import Left, left_behind
from core.bowing import Bow, fix_bow
from core.lesson import Lesson


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return tmp_path / "copies"


@pytest.fixture
def recovery(document: Document, folder: Path):
    recovery = Recovery(document, folder=folder)
    yield recovery
    recovery.end()


def edit(document: Document, place: int = 0) -> None:
    note = document.state.tune.bars[0].notes[place].id
    assert document.edit("Up", lambda tune, bowing: fix_bow(tune, bowing, note, Bow.UP))


def copies(folder: Path) -> list[Lesson]:
    return [read_path(path).lessons[0] for path in folder.glob("*.musicxml")]


def settle(qtbot, recovery: Recovery) -> None:
    qtbot.waitUntil(lambda: not recovery.waits, timeout=20_000)


def crash(recovery: Recovery) -> None:
    """Let go of what the system would let go of."""
    recovery._copy.hold.let_go()


def test_a_copy_is_due_well_within_five_seconds():
    assert REST_MS <= LATEST_MS <= 2000


def test_an_unchanged_lesson_has_no_copy(qtbot, document, recovery, folder):
    recovery.write_now()
    settle(qtbot, recovery)
    assert not folder.exists()


def test_an_edit_is_copied_by_itself(qtbot, document, recovery, folder):
    edit(document)
    assert recovery.waits
    settle(qtbot, recovery)
    assert copies(folder) == [document.state.lesson]


def test_steady_edits_do_not_put_the_copy_off(qtbot, document, recovery, folder):
    for place in range(6):
        edit(document, place)
        qtbot.wait(REST_MS * 3 // 4)  # never a rest
    qtbot.waitUntil(lambda: len(list(folder.glob("*.musicxml"))) == 1, timeout=20_000)


def test_every_edit_goes_into_the_same_copy(qtbot, document, recovery, folder):
    for place in range(3):
        edit(document, place)
        recovery.write_now()
    settle(qtbot, recovery)
    assert copies(folder) == [document.state.lesson]
    crash(recovery)
    (left,) = left_behind(folder)
    assert left.note.edits == 3
    left.hold.let_go()


@pytest.mark.parametrize("way", ["saved", "undone", "another"])
def test_the_copy_goes_with_what_it_was_for(qtbot, document, recovery, folder, tmp_path, with_pickup, way):
    edit(document)
    recovery.write_now()
    if way == "saved":
        document.mark_saved(tmp_path / "a.mxl")
    elif way == "undone":
        document.stack.undo()
    else:
        document.open(with_pickup)
    settle(qtbot, recovery)
    assert list(folder.iterdir()) == []


def test_closing_the_window_takes_the_copy_away(qtbot, document, recovery, folder):
    edit(document)
    recovery.write_now()
    recovery.end()
    assert list(folder.iterdir()) == []


def test_ending_in_any_other_way_leaves_the_last_state(qtbot, document, recovery, folder):
    edit(document)
    recovery.leave()
    assert copies(folder) == [document.state.lesson]


def test_a_pasted_lesson_is_copied_before_its_first_edit(qtbot, document, recovery, folder, with_pickup):
    document.open(with_pickup, unsaved=True)
    recovery.write_now()
    settle(qtbot, recovery)
    assert copies(folder) == [with_pickup]


def test_a_lesson_from_a_file_is_unchanged_after_a_pasted_one(document, four_bars, with_pickup):
    document.open(with_pickup, unsaved=True)
    document.open(four_bars)
    assert not document.is_modified


def left_of(qtbot, document: Document, recovery: Recovery, folder: Path) -> Left:
    recovery.write_now()
    settle(qtbot, recovery)
    crash(recovery)
    (left,) = left_behind(folder)
    return left


def test_a_lesson_left_behind_opens_as_a_changed_one_with_its_file_and_bowing(
    qtbot, document, recovery, folder, tmp_path
):
    file = tmp_path / "a.mxl"
    lesson = document.state.lesson
    document.open(replace(lesson, bowings=(*lesson.bowings, replace(lesson.bowings[0], name="Second"))), file)
    document.show(1)
    edit(document)
    left = left_of(qtbot, document, recovery, folder)
    fresh = Document()
    other = Recovery(fresh, folder=folder)
    other.open_left(left)
    assert (fresh.state, fresh.path, fresh.is_modified) == (document.state, file, True)
    assert other.path == left.path
    edit(fresh, 2)
    settle(qtbot, other)
    assert copies(folder) == [fresh.state.lesson]  # in the same copy, so that there never was a moment without one
    other.leave()
    crash(other)
    (again,) = left_behind(folder)
    assert again.note.edits == 2
    again.hold.let_go()


def test_opening_one_left_behind_while_another_is_changed_takes_only_the_copy_of_that(
    qtbot, document, recovery, folder, with_pickup
):
    edit(document)
    left = left_of(qtbot, document, recovery, folder)
    recovery._copy = None
    document.open(with_pickup, unsaved=True)
    recovery.write_now()
    recovery.open_left(left)
    settle(qtbot, recovery)
    assert copies(folder) == [left.lesson]


def test_a_copy_that_cannot_be_kept_is_told_once(qtbot, document, recovery, monkeypatch):
    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "")

    told = []
    recovery.failed.connect(told.append)
    monkeypatch.setattr(app.recovery_writer.RecoveryWriter, "write", full)
    for place in range(2):
        edit(document, place)
        recovery.write_now()
        qtbot.waitUntil(lambda: not recovery._pending, timeout=20_000)
    assert told == ["No recovery copy of this lesson can be kept: the disk is full. Save it soon."]


def test_a_copy_that_failed_is_tried_again_without_another_edit(qtbot, document, recovery, folder, monkeypatch):
    monkeypatch.setattr(app.recovery, "RETRY_MS", 50)
    folder.write_text("a file where the folder should be")
    edit(document)
    recovery.write_now()
    qtbot.waitUntil(lambda: recovery._has_failed, timeout=20_000)
    folder.unlink()
    qtbot.waitUntil(lambda: copies(folder) == [document.state.lesson], timeout=20_000)


def test_a_copy_that_failed_by_a_mistake_of_ours_is_tried_again_too(qtbot, document, recovery, folder, monkeypatch):
    writes = app.recovery_writer.RecoveryWriter.write
    faults = [RuntimeError("a mistake")]

    def write(writer, *values):
        if faults:
            raise faults.pop()
        writes(writer, *values)

    monkeypatch.setattr(app.recovery, "RETRY_MS", 50)
    monkeypatch.setattr(app.recovery_writer.RecoveryWriter, "write", write)
    edit(document)
    recovery.write_now()
    with qtbot.captureExceptions() as told:
        qtbot.waitUntil(lambda: copies(folder) == [document.state.lesson], timeout=20_000)
    assert [str(error) for _, error, _ in told] == ["a mistake"]


def test_a_crash_between_saving_and_removing_is_no_offer(qtbot, document, recovery, folder, tmp_path):
    document.open(document.state.lesson, tmp_path / "a.mxl")
    edit(document)
    recovery.write_now()
    settle(qtbot, recovery)
    save_lesson(document.state.lesson, tmp_path / "a.mxl")
    crash(recovery)
    assert left_behind(folder) == []


def test_an_edit_behind_the_save_is_still_an_offer(qtbot, document, recovery, folder, tmp_path):
    document.open(document.state.lesson, tmp_path / "a.mxl")
    save_lesson(document.state.lesson, tmp_path / "a.mxl")
    edit(document)
    left = left_of(qtbot, document, recovery, folder)
    assert left.lesson == document.state.lesson
    left.hold.let_go()
