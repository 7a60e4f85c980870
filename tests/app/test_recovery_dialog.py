"""Lessons left behind, in the dialog and in the window."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.dialogs import Clash, Dialogs
from app.files import read_path, save_lesson
from app.recovery_copy import Note, left_behind, new_path, write_copy
from app.recovery_dialog import FOR_GOOD, RecoveryDialog, about
from core.lesson import Lesson

WHEN = datetime(2031, 5, 4, 17, 30, tzinfo=UTC)


@pytest.fixture
def folder(window) -> Path:
    return window.recovery.folder


@pytest.fixture
def file(tmp_path: Path, with_pickup: Lesson) -> Path:
    return tmp_path / "sill.musicxml"


@pytest.fixture
def crashed(folder: Path, file: Path, four_bars: Lesson, with_pickup: Lesson) -> None:
    """Two copies: one of a lesson with a file, and an earlier one that never had one."""
    note = Note("Over the Sill", WHEN, 12, file, save_lesson(with_pickup, file))
    changed = replace(with_pickup, bowings=(replace(with_pickup.bowings[0], name="Kept"),))
    write_copy(new_path(folder), changed, note)
    write_copy(new_path(folder), four_bars, Note("Gate of the Weir", WHEN.replace(day=3), 1))


@pytest.fixture
def dialog(qtbot, crashed, folder):
    left = left_behind(folder)
    dialog = RecoveryDialog(left)
    qtbot.addWidget(dialog)
    dialog.show()
    yield dialog
    for one in left:
        one.hold.let_go()


def row(dialog: RecoveryDialog, number: int) -> list[str]:
    return [dialog.table.item(number, column).text() for column in range(4)]


def test_each_row_tells_title_file_time_and_edits(dialog):
    assert row(dialog, 0)[:2] + row(dialog, 0)[3:] == ["Over the Sill", "sill.musicxml", "12"]
    assert row(dialog, 1)[:2] + row(dialog, 1)[3:] == ["Gate of the Weir", "never saved", "1"]
    assert "31" in row(dialog, 0)[2]


def test_the_chosen_row_tells_what_became_of_its_file(dialog, file):
    assert dialog.about.text() == f"Its file is {file}."
    QTest.keyClick(dialog.table, Qt.Key.Key_Down)
    assert dialog.about.text() == "It was never saved in a file of its own."
    file.write_text("other")
    assert "has been changed since" in about(dialog.left[0])
    file.unlink()
    assert "not there now" in about(dialog.left[0])


def test_enter_opens_the_chosen_one(dialog):
    QTest.keyClick(dialog.table, Qt.Key.Key_Down)
    QTest.keyClick(dialog.table, Qt.Key.Key_Return)
    assert dialog.result() == RecoveryDialog.DialogCode.Accepted
    assert dialog.chosen.note.title == "Gate of the Weir"


def test_escape_keeps_all(dialog, folder):
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert dialog.chosen is None
    assert len(list(folder.glob("*.musicxml"))) == 2


def test_throwing_away_takes_two_presses_and_another_row_begins_afresh(dialog, folder):
    dialog.throw_button.click()
    assert dialog.throw_button.text() == FOR_GOOD
    QTest.keyClick(dialog.table, Qt.Key.Key_Down)
    assert dialog.throw_button.text() != FOR_GOOD
    dialog.throw_button.click()
    assert len(list(folder.glob("*.musicxml"))) == 2
    dialog.throw_button.click()
    assert [one.note.title for one in dialog.left] == ["Over the Sill"]
    assert len(list(folder.iterdir())) == 2  # the other one and its claim
    dialog.throw_button.click()
    dialog.throw_button.click()
    assert not dialog.isVisible()
    assert list(folder.iterdir()) == []


def test_a_copy_that_cannot_be_read_can_only_be_kept_or_thrown_away(qtbot, window, folder):
    folder.mkdir(parents=True)
    (folder / "a.musicxml").write_bytes(b"\0")
    left = left_behind(folder)
    dialog = RecoveryDialog(left)
    qtbot.addWidget(dialog)
    assert not dialog.open_button.isEnabled()
    assert str(folder / "a.musicxml") in dialog.about.text()
    left[0].hold.let_go()


# ------------------------------------------------------------------------------------------------- in the window


def choose(dialogs, number: int | None):
    """Let the question be answered by the lesson of a row."""
    dialogs.answers["lesson_left_behind"] = None
    if number is not None:
        dialogs.lesson_left_behind = lambda parent, left: left[number]


def test_with_nothing_left_behind_nothing_is_asked(window, dialogs):
    window.offer_left_behind()
    window.actions_by_name["recover"].trigger()
    assert dialogs.asked == []


def test_what_is_kept_for_later_is_offered_again(window, dialogs, crashed):
    choose(dialogs, None)
    for _ in range(2):
        window.offer_left_behind()
        assert len(dialogs.left) == 2


def test_an_opened_one_is_a_changed_lesson_that_remembers_its_file(window, dialogs, crashed, file):
    choose(dialogs, 0)
    window.offer_left_behind()
    assert window.document.state.bowing.name == "Kept"
    assert window.document.path == file
    assert window.isWindowModified()
    assert window.notice.sentence == f"“Over the Sill” is open as it stood, and is not saved yet. Its file is {file}."
    assert window.save()
    assert read_path(file).lessons[0].bowings[0].name == "Kept"
    window.recovery.end()
    assert [one.note.title for one in left_behind(window.recovery.folder)] == ["Gate of the Weir"]


def test_saving_one_whose_file_has_changed_since_asks(window, dialogs, crashed, file, four_bars):
    save_lesson(four_bars, file)
    choose(dialogs, 0)
    window.offer_left_behind()
    assert "has been changed since" in window.notice.sentence
    dialogs.answers["about_clash"] = Clash.CANCEL
    assert not window.save()
    assert read_path(file).lessons == (four_bars,)


def test_one_that_never_had_a_file_is_saved_under_a_name_that_is_asked_for(window, dialogs, crashed, tmp_path):
    choose(dialogs, 1)
    window.offer_left_behind()
    dialogs.answers["path_to_save"] = tmp_path / "weir.mxl"
    assert window.save()
    assert dialogs.suggestion.name == "Gate of the Weir.musicxml"


def test_the_real_dialog_gives_the_chosen_one(window, crashed, folder):
    left = left_behind(folder)
    QTimer.singleShot(0, lambda: QApplication.activeModalWidget().open_button.click())
    assert Dialogs().lesson_left_behind(window, left) is left[0]
    QTimer.singleShot(0, lambda: QApplication.activeModalWidget().keep_button.click())
    assert Dialogs().lesson_left_behind(window, left) is None
    for one in left:
        one.hold.let_go()
