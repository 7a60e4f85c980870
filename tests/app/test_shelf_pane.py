"""The shelf beside the page: finding, opening and noting tunes, and scans that never hold the window up."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QElapsedTimer, QEvent, QPoint, Qt
from PySide6.QtGui import QContextMenuEvent, QKeyEvent
from PySide6.QtTest import QSignalSpy, QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication, QComboBox, QLineEdit, QWidget

from app import shelf_desk
from app.dialogs import Answer
from app.main_window import MainWindow
from app.shelf_model import BOWINGS, COLUMNS, STATUS, TAGS, TITLE
from app.shelf_pane import ShelfPane
from core.bowing import toggle_join_to_next
from core.shelf.catalogue import Catalogue
from core.shelf.remarks import change_tags, set_status
from core.shelf.scan import add_places, scan
from core.shelf.search import find

TUNES = ("Gate of the Weir", "Over the Sill", "Lock and Key")


def book(*titles: str) -> str:
    return "".join(
        f"X:{number}\nT:{title}\nR:{('reel', 'jig')[number % 2]}\nM:4/4\nL:1/8\nK:{'DGA'[number % 3]}\n"
        f"{'ABcdefg'[number % 7]}2Bc d2ef|g4 {'ABcdefg'[number // 7 % 7]}4|]\n\n"
        for number, title in enumerate(titles, start=1)
    )


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    folder = tmp_path / "music"
    folder.mkdir()
    (folder / "book.abc").write_text(book(*TUNES), "utf-8")
    return folder


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "shelf.db"


@pytest.fixture
def filled(path: Path, folder: Path) -> Path:
    """A catalogue that holds the folder."""
    with Catalogue(path) as catalogue:
        add_places(catalogue, [folder])
        scan(catalogue)
    return path


@pytest.fixture
def show(qtbot) -> Callable[[Path], ShelfPane]:
    """Show a pane over a catalogue and wait until it has settled."""

    def show(path: Path) -> ShelfPane:
        pane = ShelfPane(path)
        qtbot.addWidget(pane, before_close_func=lambda pane: pane.desk.close())
        pane.resize(700, 420)
        pane.show()
        qtbot.waitExposed(pane)
        settle(pane)
        return pane

    return show


@pytest.fixture
def pane(show, filled: Path) -> ShelfPane:
    return show(filled)


def wait_for(reached: Callable[[], bool]) -> bool:
    """Let the window work until something is reached; False where it takes far too long."""
    timer = QElapsedTimer()
    timer.start()
    while not reached() and timer.elapsed() < 20_000:
        QTest.qWait(5)
    return reached()


def settle(pane: ShelfPane) -> None:
    """Until every answer has come, and every pause after typing has ended."""
    for _ in range(2):
        assert wait_for(lambda: not pane.desk.waits and not pane.filters.waits)
        QTest.qWait(1)
    assert wait_for(lambda: not pane.desk.waits)


def listed(pane: ShelfPane) -> list[str]:
    return [pane.model.index(row, TITLE).data() for row in range(pane.model.rowCount())]


def type_words(pane: ShelfPane, text: str) -> None:
    pane.filters.words.setFocus()
    QTest.keyClicks(pane.filters.words, text)
    settle(pane)


def message(pane: ShelfPane) -> str:
    return pane.message.text() if pane.message.isVisible() else ""


def said(path: Path, title: str) -> tuple[str, tuple[str, ...]]:
    with Catalogue(path) as catalogue:
        (entry,) = (entry for entry in find(catalogue).entries if entry.title == title)
    return entry.status, entry.tags


# ------------------------------------------------------------------------------------------------------------ finding


def test_all_tunes_are_listed_at_first(pane):
    assert listed(pane) == ["Gate of the Weir", "Lock and Key", "Over the Sill"]
    assert pane.count.text() == "3 tunes"
    assert pane.table.current.title == "Gate of the Weir"


def test_typing_finds(pane):
    type_words(pane, "sil")
    assert listed(pane) == ["Over the Sill"]
    assert pane.count.text() == "1 of 3 tunes"


def test_choices_are_those_of_the_shelf_and_narrow_the_list(pane):
    box = pane.filters.boxes["key"]
    assert [box.itemText(index) for index in range(box.count())] == ["Any key", "A major", "D major", "G major"]
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Down)
    settle(pane)
    assert listed(pane) == ["Over the Sill"]


def test_first_notes_find_in_one_key_or_in_any(pane):
    pane.filters.notes.setFocus()
    assert not pane.filters.any_key.isEnabled()
    QTest.keyClicks(pane.filters.notes, "bbc")
    settle(pane)
    assert listed(pane) == ["Gate of the Weir"]
    QTest.keyClick(pane.filters.any_key, Qt.Key.Key_Space)
    settle(pane)
    assert listed(pane) == ["Gate of the Weir"]


def test_letters_that_make_no_sense_are_told_where_the_count_stands(pane):
    pane.filters.notes.setFocus()
    QTest.keyClicks(pane.filters.notes, "dx")
    settle(pane)
    assert listed(pane) == []
    assert "expected u, d and s" in pane.count.text()
    QTest.keyClick(pane.filters.notes, Qt.Key.Key_Backspace)
    settle(pane)
    assert pane.count.text() == "2 of 3 tunes"  # that begin with a step down


def test_escape_empties_the_fields_then_leaves(pane):
    left = QSignalSpy(pane.leave_wanted)
    type_words(pane, "sill")
    QTest.keyClick(pane.filters.words, Qt.Key.Key_Escape)
    settle(pane)
    assert len(listed(pane)) == 3
    assert left.count() == 0
    QTest.keyClick(pane.filters.words, Qt.Key.Key_Escape)
    assert left.count() == 1


def test_arrow_keys_walk_the_list_from_the_search_line(pane):
    pane.filters.words.setFocus()
    QTest.keyClick(pane.filters.words, Qt.Key.Key_Down)
    assert pane.table.current.title == "Lock and Key"
    for _ in range(5):
        QTest.keyClick(pane.filters.words, Qt.Key.Key_Down)
    assert pane.table.current.title == "Over the Sill"
    QTest.keyClick(pane.filters.words, Qt.Key.Key_PageUp)
    assert pane.table.current.title == "Gate of the Weir"


def test_a_heading_puts_the_list_in_order(pane):
    header = pane.table.horizontalHeader()
    place = QPoint(header.sectionViewportPosition(1) + 5, header.height() // 2)
    QTest.mouseClick(header.viewport(), Qt.MouseButton.LeftButton, pos=place)
    settle(pane)
    assert [entry.dance for entry in pane.model.entries] == ["jig", "jig", "reel"]


# ------------------------------------------------------------------------------------------------------------ opening


def test_the_menu_of_a_row_puts_the_list_in_order_too(pane):
    pane.table.choose(0)
    pane.table.contextMenuEvent(QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, QPoint(0, 0), QPoint(0, 0)))
    (orders,) = (a.menu() for a in QApplication.activePopupWidget().actions() if a.text() == "Order &by")
    assert [action.text() for action in orders.actions()] == [heading for heading, order in COLUMNS if order]
    next(action for action in orders.actions() if action.text() == "Key").trigger()
    QApplication.activePopupWidget().close()
    assert pane.filters.order == "key"


def test_enter_in_the_search_line_opens_what_was_typed_though_it_is_not_listed_yet(pane):
    opened = QSignalSpy(pane.opened)
    pane.filters.words.setFocus()
    QTest.keyClicks(pane.filters.words, "lock")
    QTest.keyClick(pane.filters.words, Qt.Key.Key_Return)
    settle(pane)
    assert [opened.at(index)[0].title for index in range(opened.count())] == ["Lock and Key"]


def test_enter_and_a_double_click_open_the_tune_in_the_row(pane):
    opened = QSignalSpy(pane.opened)
    pane.table.setFocus()
    QTest.keyClick(pane.table, Qt.Key.Key_Down)
    QTest.keyClick(pane.table, Qt.Key.Key_Return)
    double_click(pane, 2, TITLE)
    assert [opened.at(index)[0].title for index in range(opened.count())] == ["Lock and Key", "Over the Sill"]


def double_click(pane: ShelfPane, row: int, column: int) -> None:
    place = pane.table.visualRect(pane.model.index(row, column)).center()
    QTest.mouseClick(pane.table.viewport(), Qt.MouseButton.LeftButton, pos=place)
    QTest.mouseDClick(pane.table.viewport(), Qt.MouseButton.LeftButton, pos=place)


# ------------------------------------------------------------------------------------------------------------- noting


def editor(pane: ShelfPane, kind: type[QWidget]) -> QWidget:
    (found,) = pane.table.viewport().findChildren(kind)
    return found


def test_t_edits_the_tags_in_place(pane, filled):
    opened = QSignalSpy(pane.opened)
    pane.table.setFocus()
    QTest.keyClick(pane.table, Qt.Key.Key_T)
    line = editor(pane, QLineEdit)
    QTest.keyClicks(line, "summer school, class,")
    QTest.keyClick(line, Qt.Key.Key_Return)
    settle(pane)
    assert pane.model.index(0, TAGS).data() == "class, summer school"
    assert said(filled, "Gate of the Weir") == ("", ("class", "summer school"))
    assert opened.count() == 0
    assert pane.table.currentIndex().column() == TITLE
    type_words(pane, "summ")
    assert listed(pane) == ["Gate of the Weir"]


def test_s_chooses_a_status_in_place(pane, filled):
    pane.table.setFocus()
    QTest.keyClick(pane.table, Qt.Key.Key_S)
    box = editor(pane, QComboBox)
    QTest.keyClick(box.view(), Qt.Key.Key_Down)
    QTest.keyClick(box.view(), Qt.Key.Key_Return)
    settle(pane)
    assert pane.model.index(0, STATUS).data() == "to do"
    assert said(filled, "Gate of the Weir") == ("to do", ())


def test_a_double_click_on_status_or_tags_edits_them(pane):
    opened = QSignalSpy(pane.opened)
    double_click(pane, 1, TAGS)
    assert pane.table.state() == QAbstractItemView.State.EditingState
    QTest.keyClick(editor(pane, QLineEdit), Qt.Key.Key_Escape)
    assert opened.count() == 0


def test_f2_edits_though_it_is_a_key_of_the_window_too(pane):
    pane.table.setFocus()
    override = QKeyEvent(QEvent.Type.ShortcutOverride, Qt.Key.Key_F2, Qt.KeyboardModifier.NoModifier)
    override.ignore()
    QApplication.sendEvent(pane.table, override)
    assert override.isAccepted()
    QTest.keyClick(pane.table, Qt.Key.Key_F2)
    assert pane.table.is_edited
    QTest.keyClick(editor(pane, QLineEdit), Qt.Key.Key_Escape)


def test_what_another_window_said_meanwhile_is_not_taken_back(pane, filled):
    with Catalogue(filled) as other:
        change_tags(other, pane.table.current.id, ["fair"])
        set_status(other, pane.table.current.id, "taught")
    pane.model.setData(pane.model.index(0, TAGS), "class")
    settle(pane)
    assert said(filled, "Gate of the Weir") == ("taught", ("class", "fair"))


# -------------------------------------------------------------------------------------------------------------- scans


def test_nothing_is_read_or_made_before_the_pane_is_shown(qtbot, path):
    pane = ShelfPane(path)
    qtbot.addWidget(pane)
    pane.desk.note_opened(Path("book.abc"), 0)
    pane.desk.read_again(Path("book.abc"))
    assert not pane.desk.waits
    assert not path.exists()


def test_an_empty_shelf_says_what_to_do(show, path, folder):
    pane = show(path)
    assert "Add the folders in which your lessons and tune books lie" in message(pane)
    wanted = QSignalSpy(pane.folder_wanted)
    pane.take_keyboard()
    QTest.keyClick(pane.folder_button, Qt.Key.Key_Space)
    assert wanted.count() == 1
    pane.add_places([folder])
    settle(pane)
    assert len(listed(pane)) == 3
    assert message(pane) == ""


def test_a_folder_without_music_says_so(show, path, tmp_path):
    pane = show(path)
    (tmp_path / "nothing").mkdir()
    pane.add_places([tmp_path / "nothing"])
    settle(pane)
    assert "no lessons or tune books" in message(pane)


def test_what_is_new_is_found_when_the_shelf_is_opened(filled, folder, show):
    (folder / "new.abc").write_text(book("Late Arrival"), "utf-8")
    assert "Late Arrival" in listed(show(filled))


def test_files_that_cannot_be_read_are_told_when_the_user_asked_for_a_scan(filled, folder, show):
    (folder / "bad.abc").write_bytes(b"")
    pane = show(filled)
    told = QSignalSpy(pane.told)
    hinted = QSignalSpy(pane.hinted)
    pane.desk.scan()
    settle(pane)
    assert told.count() == 0
    assert hinted.at(0)[0] == "Looked through 2 files: 1 cannot be read."
    pane.scan()
    settle(pane)
    sentence, lines = told.at(0)
    assert sentence == "1 file or folder on the shelf cannot be read."
    assert len(lines) == 1
    assert str(folder / "bad.abc") in lines[0]


def test_a_scan_shows_how_far_it_is_and_can_be_left(pane, folder, monkeypatch):
    for number in range(40):
        (folder / f"{number}.abc").write_text(book(f"Tune {number}"), "utf-8")
    real = shelf_desk.scan

    def slow_scan(catalogue, places, *, watch, stopped):
        def slowly(progress):
            watch(progress)
            QTest.qSleep(20)

        return real(catalogue, places, watch=slowly, stopped=stopped)

    monkeypatch.setattr(shelf_desk, "scan", slow_scan)
    pane.scan()
    assert wait_for(lambda: pane.progress.maximum() == 41 and pane.progress.value() > 3)
    assert pane.cancel_button.isVisible()
    type_words_while_it_runs = pane.filters.words
    QTest.keyClicks(type_words_while_it_runs, "sill")
    assert wait_for(lambda: listed(pane) == ["Over the Sill"])
    assert pane.desk.scans
    hinted = QSignalSpy(pane.hinted)
    QTest.mouseClick(pane.cancel_button, Qt.MouseButton.LeftButton)
    settle(pane)
    assert hinted.at(hinted.count() - 1)[0].startswith("Left off")
    assert not pane.cancel_button.isVisible()


def test_a_folder_can_be_taken_off_the_shelf(pane, folder):
    (inner,) = (action.menu() for action in pane.places_menu.actions() if action.menu() is not None)
    assert inner.title() == str(folder)
    inner.actions()[0].trigger()
    settle(pane)
    assert "The shelf is empty" in message(pane)


def test_a_damaged_shelf_offers_to_be_built_anew_with_what_was_said(show, filled):
    with Catalogue(filled) as catalogue:
        set_status(catalogue, 1, "ready")
    filled.write_bytes(b"spoilt" * 1000)
    pane = show(filled)
    assert "is damaged" in message(pane)
    assert "what you noted is kept" in message(pane)
    assert not pane.folder_button.isVisible()
    pane.take_keyboard()
    QTest.keyClick(pane.rebuild_button, Qt.Key.Key_Space)
    settle(pane)
    assert len(listed(pane)) == 3
    assert pane.model.entries[0].status == "ready"


def test_another_program_that_never_ends_writing_is_told_in_a_sentence(pane, filled, monkeypatch):
    monkeypatch.setattr("core.shelf.catalogue.PATIENCE_S", 0.05)
    told = QSignalSpy(pane.told)
    other = sqlite3.connect(filled, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    pane.model.setData(pane.model.index(0, STATUS), "ready")
    settle(pane)
    other.execute("ROLLBACK")
    other.close()
    assert "Another program is writing" in told.at(0)[0]
    assert pane.model.index(0, STATUS).data() == ""


def test_notes_are_written_before_the_window_ends(pane, filled):
    for _ in range(10):
        pane.desk.change_tags(1, ["class"], [])
    pane.desk.set_status(1, "taught")
    pane.desk.close()
    assert said(filled, "Gate of the Weir") == ("taught", ("class",))


# -------------------------------------------------------------------------------------------------------------- names


def test_everything_can_be_reached_and_has_a_name(pane):
    pane.filters.words.setFocus()
    seen, widget = [], pane.filters.words
    while widget not in seen:
        seen.append(widget)
        QTest.keyClick(widget, Qt.Key.Key_Tab)
        widget = QApplication.focusWidget()
    assert {pane.filters.words, pane.filters.notes, *pane.filters.boxes.values(), pane.table} <= set(seen)
    assert pane.places_button in seen
    for widget in seen:
        assert widget.accessibleName() or getattr(widget, "text", str)(), widget


def test_cells_tell_their_column_and_tips_tell_the_rest(pane):
    assert pane.model.data(pane.model.index(0, STATUS), Qt.ItemDataRole.AccessibleTextRole) == "Status: none"
    assert "press T" in pane.model.data(pane.model.index(0, TAGS), Qt.ItemDataRole.ToolTipRole)
    assert "accents on the beat" in pane.model.data(pane.model.index(0, BOWINGS), Qt.ItemDataRole.ToolTipRole)
    assert "book.abc, tune 1" in pane.model.data(pane.model.index(0, TITLE), Qt.ItemDataRole.ToolTipRole)
    headings = [pane.model.headerData(section, Qt.Orientation.Horizontal) for section in range(len(COLUMNS))]
    assert headings == [heading for heading, _ in COLUMNS]


# ------------------------------------------------------------------------------------------------------ in the window


@pytest.fixture
def with_shelf(window: MainWindow, dialogs, folder: Path) -> MainWindow:
    """A window whose shelf holds the folder and is open."""
    dialogs.answers["folder_to_shelve"] = folder
    window.actions_by_name["shelf"].trigger()
    settle(window.shelf.pane)
    window.ask_and_shelve()
    settle(window.shelf.pane)
    return window


def test_the_shelf_is_closed_at_first_and_a_key_opens_and_closes_it(window):
    action = window.actions_by_name["shelf"]
    assert not window.shelf.isVisible()
    assert not action.isChecked()
    action.trigger()
    settle(window.shelf.pane)
    assert window.shelf.isVisible()
    assert action.isChecked()
    action.trigger()
    assert not window.shelf.isVisible()
    assert not action.isChecked()
    assert window.page.hasFocus()


def test_the_key_of_an_open_shelf_goes_to_its_search_line(with_shelf):
    with_shelf.page.setFocus()
    with_shelf.actions_by_name["shelf"].trigger()
    assert with_shelf.shelf.isVisible()
    assert with_shelf.shelf.pane.filters.words.hasFocus()


def test_opening_from_the_shelf_opens_that_tune_of_the_book(with_shelf):
    pane = with_shelf.shelf.pane
    type_words(pane, "lock")
    QTest.keyClick(pane.filters.words, Qt.Key.Key_Return)
    assert with_shelf.document.state.tune.title == "Lock and Key"
    assert with_shelf.page.hasFocus()
    settle(pane)
    with Catalogue(pane.desk.path) as catalogue:
        assert {entry.title: bool(entry.opened) for entry in find(catalogue).entries} == {
            "Gate of the Weir": False, "Lock and Key": True, "Over the Sill": False,
        }  # fmt: skip


@pytest.mark.parametrize(("answer", "opens"), [(Answer.STAY, False), (Answer.DROP, True)])
def test_opening_from_the_shelf_asks_about_unsaved_changes(with_shelf, dialogs, answer, opens):
    with_shelf.document.edit("Slur", lambda tune, bowing: toggle_join_to_next(tune, bowing, "b0n1"))
    dialogs.answers["about_changes"] = answer
    with_shelf.open_entry(with_shelf.shelf.pane.model.entries[2])
    assert dialogs.asked[-1] == "about_changes"
    assert (with_shelf.document.state.tune.title == "Over the Sill") is opens


def test_a_tune_that_moved_within_its_book_since_the_scan_is_still_the_one_opened(with_shelf, folder):
    entry = with_shelf.shelf.pane.model.entries[2]
    (folder / "book.abc").write_text(book("Another in Front") + book(*TUNES), "utf-8")
    assert with_shelf.open_entry(entry)
    assert with_shelf.document.state.tune.title == "Over the Sill"


def test_a_file_that_is_gone_since_the_scan_is_told_in_a_sentence(with_shelf, folder):
    (folder / "book.abc").unlink()
    assert not with_shelf.open_entry(with_shelf.shelf.pane.model.entries[0])
    assert "cannot be opened" in with_shelf.notice.sentence


def test_a_lesson_saved_in_a_folder_of_the_shelf_is_on_the_shelf_at_once(with_shelf, dialogs, folder):
    dialogs.answers["path_to_save"] = folder / "own.musicxml"
    with_shelf.save_as()
    settle(with_shelf.shelf.pane)
    assert ("own.musicxml", "Gate of the Weir") in {
        (entry.file.name, entry.title) for entry in with_shelf.shelf.pane.model.entries
    }


def test_where_the_shelf_stands_is_remembered(qtbot, with_shelf, settings, dialogs):
    with_shelf.document.stack.setClean()
    with_shelf.close()
    again = MainWindow(settings, dialogs)
    qtbot.addWidget(again)
    again.show()
    qtbot.waitExposed(again)
    settle(again.shelf.pane)
    assert again.shelf.isVisible()
    assert len(listed(again.shelf.pane)) == 3
