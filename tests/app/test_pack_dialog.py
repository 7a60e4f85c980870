"""The lesson pack in the window."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.main_window import MainWindow
from app.pack_dialog import PackDialog
from app.pack_folder import CONTENTS
from core.lesson import rename_bowing
from core.pack.kinds import Kind

TUNE = "X:{n}\nT:Tune {n}\nM:4/4\nL:1/8\nK:D\nd2fd Adfd|e2ge Bege|]\n"
LONG_MS = 60_000


@pytest.fixture
def dialog(window: MainWindow, tmp_path: Path) -> PackDialog:
    """Open, with only ABC to be made into ``tmp_path/Class``."""
    window.actions_by_name["pack"].trigger()
    dialog = window.pack_dialog
    for kind, box in dialog.form.kinds.items():
        box.setChecked(kind is Kind.ABC)
    dialog.form.folder.setText(str(tmp_path / "Class"))
    return dialog


@pytest.fixture
def book(tmp_path: Path) -> Path:
    path = tmp_path / "book.abc"
    path.write_text("\n".join(TUNE.format(n=n) for n in range(1, 31)), "utf-8")
    return path


def made(qtbot, dialog: PackDialog) -> None:
    QTest.mouseClick(dialog.make_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not dialog.work.is_busy, timeout=LONG_MS)


def test_the_lesson_on_the_page_is_packed_as_it_stands_there(qtbot, window, dialog, tmp_path):
    window.document.change("Rename", lambda lesson: rename_bowing(lesson, 0, "For Tuesday"), 0)
    made(qtbot, dialog)
    assert dialog.told.text() == "1 lesson was made, 0 stood already."
    assert "For Tuesday" in (tmp_path / "Class" / "Gate of the Weir" / "Gate of the Weir.abc").read_text("utf-8")
    assert (tmp_path / "Class" / CONTENTS).exists()
    shown = []
    dialog._show_folder = shown.append
    assert dialog.focusWidget() is dialog.folder_button
    QTest.keyClick(dialog.folder_button, Qt.Key.Key_Space)
    assert shown == [tmp_path / "Class"]


def test_files_and_folders_are_added_once_and_removed_by_a_key(dialog, dialogs, book):
    dialogs.answers = {"paths_to_pack": [book, book], "folder_to_pack": book.parent}
    QTest.mouseClick(dialog.form.add_files, Qt.MouseButton.LeftButton)
    QTest.mouseClick(dialog.form.add_folder, Qt.MouseButton.LeftButton)
    assert dialog.form.places[1:] == [book, book.parent]
    dialog.form.list.selectAll()
    QTest.keyClick(dialog.form.list, Qt.Key.Key_Delete)
    assert dialog.form.places == []
    assert not dialog.make_button.isEnabled()


def test_stopping_leaves_what_is_made_and_says_that_there_is_more(qtbot, dialog, book, tmp_path):
    dialog.form.add([book])
    QTest.mouseClick(dialog.make_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: dialog.doing.text().startswith("Packing") and dialog.bar.value() > 0, timeout=LONG_MS)
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not dialog.work.is_busy, timeout=LONG_MS)
    assert dialog.isVisible()
    assert "not whole" in dialog.told.text()
    assert not (tmp_path / "Class" / CONTENTS).exists()
    QTest.mouseClick(dialog.again_button, Qt.MouseButton.LeftButton)
    made(qtbot, dialog)
    assert "not whole" not in dialog.told.text()
    assert len(list((tmp_path / "Class").glob("*/*.abc"))) == 31


def test_a_bad_file_is_a_line_and_the_rest_is_made(qtbot, dialog, tmp_path):
    bad = tmp_path / "bad.abc"
    bad.write_text("no tune", "utf-8")
    dialog.form.add([bad])
    made(qtbot, dialog)
    assert "1 lesson was made" in dialog.told.text()
    assert [dialog.lines.item(row).text().split(":")[0] for row in range(dialog.lines.count())] == [str(bad)]


def test_a_folder_with_other_files_is_refused_in_words(qtbot, dialog, book):
    dialog.form.folder.setText(str(book.parent))
    made(qtbot, dialog)
    assert dialog.pages.currentWidget() is dialog.form
    assert dialog.notice.isVisible()


def test_closing_the_window_ends_a_packing(qtbot, window, dialog, book):
    dialog.form.add([book])
    QTest.mouseClick(dialog.make_button, Qt.MouseButton.LeftButton)
    window.close()
    assert not dialog.work.is_busy


def test_every_field_has_a_name_for_those_who_cannot_see_it(dialog):
    for part in (dialog.form.list, dialog.form.folder, dialog.form.choose_folder, dialog.bar, dialog.lines):
        assert part.accessibleName()
