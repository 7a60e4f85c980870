"""The set window, by mouse and keys."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest

from app.document import Document
from app.files import read_path
from app.join_panel import GOES_ON
from app.main_window import MainWindow
from app.remedy_panel import LOOKING
from app.set_list import SetList
from app.set_rows import SeamRow, TuneRow
from app.set_window import SetWindow
from app.theme import DARK, LIGHT
from core.lesson import add_bowing
from core.severity import Severity

LEFT = Qt.MouseButton.LeftButton
ALT, CTRL = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier
BOOK = (
    "X:1\nT:Odd\nM:4/4\nL:1/4\nK:D\nd2 f2|a2 f d|]\n\n"  # five strokes
    "X:2\nT:Even\nM:4/4\nL:1/4\nK:D\nd2 f2|a2 d2|]\n\n"
    "X:3\nT:Fixed\nM:4/4\nL:1/4\nK:D\nvd2 f2|a2 d2|]\n"
)


@pytest.fixture
def book(tmp_path: Path) -> Path:
    path = tmp_path / "book.abc"
    path.write_text(BOOK, encoding="utf-8")
    return path


@pytest.fixture
def document(qapp: object) -> Document:
    return Document()


@pytest.fixture
def opened(document: Document, settings, dialogs, book: Path, qtbot) -> SetWindow:
    """The set window with tune 1 of the book open and nothing in the set."""
    sets = SetList(document)
    lessons = read_path(book).lessons
    sets.book_opens(book, lessons)
    document.open(lessons[0])
    opened = SetWindow(sets, document, settings, dialogs)
    opened.sets = sets  # keeps it alive
    qtbot.addWidget(opened)
    opened.show()
    qtbot.waitExposed(opened)
    return opened


def add(opened: SetWindow, dialogs, *indexes: int) -> None:
    """Add tunes of the open book."""
    for index in indexes:
        dialogs.answers["tune_of_book"] = index
        opened.add_book.trigger()


def sentences(opened: SetWindow) -> list[str]:
    return [row.sentence for row in opened.model.rows if isinstance(row, SeamRow)]


def titles(opened: SetWindow) -> list[str]:
    return [row.title for row in opened.model.rows if isinstance(row, TuneRow)]


def press(opened: SetWindow, key: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    opened.list.setFocus()
    QTest.keyClick(opened.list, key, held)


def test_it_can_be_opened_with_no_lesson_open(qtbot, settings, dialogs) -> None:
    window = MainWindow(settings, dialogs)
    qtbot.addWidget(window)
    window.show()
    assert window.actions_by_name["tune_set"].isEnabled()
    window.actions_by_name["tune_set"].trigger()
    assert window.set_window.isVisible()
    window.set_window.add_menu.aboutToShow.emit()
    assert not window.set_window.add_open.isEnabled()
    assert not window.set_window.add_book.isEnabled()
    window.close()
    assert not window.set_window.isVisible()


def test_tunes_and_the_joins_between_them_stand_in_one_list(opened, dialogs) -> None:
    add(opened, dialogs, 0, 1)
    assert titles(opened) == ["1. Odd", "2. Even"]
    assert sentences(opened) == [
        "“Odd” ends down, “Even” begins up: turned round to its end (alone it begins down).",
        "Back to the start: “Even” ends down, “Odd” begins up: turned round to its end (alone it begins down).",
    ]
    assert [type(row) for row in opened.model.rows] == [TuneRow, SeamRow, TuneRow, SeamRow]
    assert [opened.model.index(k).data().split(":")[0] for k in range(4)] == ["1. Odd", "Warning", "2. Even", "Note"]


def test_the_tune_on_the_page_is_added_and_named_as_such(opened) -> None:
    opened.add_open.trigger()
    (row, _) = opened.model.rows
    assert (row.title, row.detail) == ("1. Odd", "As written, once (on the page)")
    assert opened.chosen_tune == 0


def test_a_tune_of_another_file_is_added(opened, dialogs, tmp_path) -> None:
    other = tmp_path / "other.abc"
    other.write_text("X:1\nT:Other\nM:4/4\nL:1/4\nK:D\nd2 f2|\n", encoding="utf-8")
    dialogs.answers["path_to_open"] = other
    opened.add_file.trigger()
    assert opened.model.rows[0].detail == "As written, once (other.abc)"


@pytest.mark.parametrize("text", ["", "no tune at all", "<score-partwise"])
def test_a_file_that_cannot_be_read_is_refused_in_a_sentence_and_nothing_is_lost(
    opened, dialogs, tmp_path, text
) -> None:
    add(opened, dialogs, 0)
    other = tmp_path / "other.abc"
    other.write_text(text, encoding="utf-8")
    dialogs.answers["path_to_open"] = other
    opened.add_file.trigger()
    assert opened.notice.isVisible()
    assert opened.notice.sentence.startswith("other.abc")
    assert titles(opened) == ["1. Odd"]


def test_to_think_better_of_it_adds_nothing(opened, dialogs) -> None:
    dialogs.answers["path_to_open"] = None
    opened.add_file.trigger()
    dialogs.answers["tune_of_book"] = None
    opened.add_book.trigger()
    assert titles(opened) == []


def test_keys_move_and_remove_the_chosen_tune(opened, dialogs) -> None:
    add(opened, dialogs, 0, 1, 2)
    press(opened, Qt.Key.Key_Up, ALT)
    assert titles(opened) == ["1. Odd", "2. Fixed", "3. Even"]
    assert opened.chosen_tune == 1
    press(opened, Qt.Key.Key_Down, ALT)
    assert (titles(opened)[2], opened.chosen_tune) == ("3. Fixed", 2)
    press(opened, Qt.Key.Key_Delete)
    assert titles(opened) == ["1. Odd", "2. Even"]
    assert opened.chosen_tune == 1
    press(opened, Qt.Key.Key_Delete)
    press(opened, Qt.Key.Key_Delete)
    assert titles(opened) == []
    assert not opened.remove_button.isEnabled()


def test_arrow_keys_walk_through_tunes_and_joins(opened, dialogs) -> None:
    add(opened, dialogs, 0, 1)
    press(opened, Qt.Key.Key_Home)
    assert opened.chosen_tune == 0
    press(opened, Qt.Key.Key_Down)
    assert isinstance(opened.chosen, SeamRow)
    assert not opened.up_button.isEnabled()
    assert not opened.bowing.isEnabled()


def test_times_and_bowing_are_chosen_for_the_chosen_tune(qtbot, opened, document) -> None:
    opened.add_open.trigger()
    opened.times.setFocus()
    QTest.keyClick(opened.times, Qt.Key.Key_Up)
    assert opened.model.rows[0].detail == "As written, twice (on the page)"
    assert sentences(opened)[0].startswith("“Odd” ends down and begins up the second time")
    document.change("Copy", lambda lesson: add_bowing(lesson, lesson.bowings[0]), 1)
    qtbot.waitUntil(lambda: opened.bowing.count() == 2)
    assert [opened.bowing.itemText(k) for k in range(2)] == ["As written", "As written 2"]
    opened.bowing.setFocus()
    QTest.keyClick(opened.bowing, Qt.Key.Key_Down)
    assert opened.model.rows[0].detail == "As written 2, twice (on the page)"


def test_a_join_says_why_it_matters_and_a_smooth_one_that_it_does_not(opened, dialogs) -> None:
    add(opened, dialogs, 1, 0)
    opened.choose_join(0)
    assert opened._why.text() == GOES_ON
    assert opened.remedies.buttons == []
    opened.choose_join(1)
    assert opened._why.text().startswith("Set comes round on the other bow.")


def test_a_remedy_in_the_tune_on_the_page_is_one_undo_step(qtbot, opened, dialogs, document) -> None:
    add(opened, dialogs, 0, 1)
    before = document.state
    opened.choose_join(0)
    assert opened.remedies.words == LOOKING
    qtbot.waitUntil(lambda: not opened.waits)
    button = opened.remedies.buttons[0]
    assert button.text() == "Slur notes 2 and 3 of bar 2 · 1 slur more"
    QTest.mouseClick(button, LEFT)
    assert sentences(opened)[0] == "“Odd” ends up, “Even” begins down: the bow goes on by itself."
    assert opened.list.hasFocus()
    assert (document.stack.count(), document.stack.undoText()) == (1, "Slur notes 2 and 3 of bar 2")
    press(opened, Qt.Key.Key_Z, CTRL)
    assert document.state == before
    qtbot.waitUntil(lambda: "turned round" in sentences(opened)[0])


def test_remedies_in_other_tunes_are_told_and_have_no_button(qtbot, opened, dialogs) -> None:
    add(opened, dialogs, 0, 1)
    opened.choose_join(0)
    qtbot.waitUntil(lambda: not opened.waits)
    told = "In “Even”, which is not on the page: Take the first note of bar 1 down every time."
    assert told in opened.elsewhere.text()
    assert not any("Take" in button.text() for button in opened.remedies.buttons)


def test_when_another_tune_is_opened_nothing_is_done_to_it(qtbot, opened, dialogs, document, book) -> None:
    add(opened, dialogs, 0, 1)
    opened.choose_join(0)
    qtbot.waitUntil(lambda: not opened.waits)
    assert opened.remedies.buttons
    opened.sets.book_opens(None, ())
    document.open(read_path(book).lessons[2])
    assert opened.remedies.remedies == ()
    qtbot.waitUntil(lambda: not opened.waits)
    assert opened.remedies.remedies == ()
    assert opened.elsewhere.text().startswith("In “Odd”, which is not on the page: Slur notes 2 and 3 of bar 2")
    assert opened.model.rows[0].detail == "As written, once (book.abc)"


def test_control_and_return_do_the_first_remedy(qtbot, opened, dialogs) -> None:
    add(opened, dialogs, 0, 1)
    opened.choose_join(0)
    qtbot.waitUntil(lambda: not opened.waits)
    press(opened, Qt.Key.Key_Return, CTRL)
    assert "goes on by itself" in sentences(opened)[0]


def test_a_remedy_is_done_in_the_bowing_that_the_set_plays(qtbot, opened, dialogs, document) -> None:
    document.change("Copy", lambda lesson: add_bowing(lesson, lesson.bowings[0]), 1)
    document.show(0)
    opened.add_open.trigger()
    add(opened, dialogs, 1)
    opened.choose_tune(0)
    opened.bowing.setCurrentIndex(1)
    opened.bowing.activated.emit(1)
    opened.choose_join(0)
    qtbot.waitUntil(lambda: not opened.waits)
    first = document.state.lesson.bowings[0]
    press(opened, Qt.Key.Key_Return, CTRL)
    assert document.state.shown == 1
    assert document.state.lesson.bowings[0] == first
    assert "goes on by itself" in sentences(opened)[0]


def test_the_note_after_a_join_is_shown_on_the_page_until_the_window_goes(opened, dialogs) -> None:
    shown = []
    opened.notes_wanted.connect(lambda notes, severity: shown.append((notes, severity)))
    add(opened, dialogs, 1, 0)
    opened.choose_join(0)
    assert shown[-1] == (("b0n1",), Severity.NOTE)
    opened.choose_tune(1)
    assert shown[-1] == ((), Severity.NOTE)
    opened.choose_join(0)
    opened.close()
    assert shown[-1] == ((), Severity.NOTE)


def test_marks_of_a_finding_on_the_page_are_left_alone_by_tunes(opened, dialogs) -> None:
    shown = []
    opened.notes_wanted.connect(lambda notes, severity: shown.append(notes))
    add(opened, dialogs, 1, 2)
    opened.choose_tune(0)
    opened.close()
    assert shown == []


def test_the_best_order_is_told_and_taken(opened, dialogs) -> None:
    add(opened, dialogs, 0, 1)
    assert "in the order 2, 1: no turned joins" in opened.verdict.text()
    QTest.mouseClick(opened.order_button, LEFT)
    assert titles(opened) == ["1. Even", "2. Odd"]
    assert not opened.order_button.isVisible()
    assert "No other order does better" in opened.verdict.text()


def test_the_set_is_there_again_at_the_next_start(opened, dialogs, settings, qtbot) -> None:
    add(opened, dialogs, 0, 1)
    opened.choose_tune(1)
    opened.times.setValue(3)
    again = MainWindow(settings, dialogs)
    qtbot.addWidget(again)
    again.show()
    again.show_set()
    assert titles(again.set_window) == ["1. Odd", "2. Even"]
    assert again.sets.state.tunes[1].times == 3


def test_a_tune_that_is_gone_is_told_and_remembered_until_the_set_changes(
    opened, dialogs, settings, qtbot, book
) -> None:
    add(opened, dialogs, 0, 1)
    names = settings.set_names
    book.unlink()
    again = MainWindow(settings, dialogs)
    qtbot.addWidget(again)
    again.show()
    again.show_set()
    assert again.set_window.notice.lines == ("book.abc cannot be opened: there is no such file.",)
    assert settings.set_names == names


def test_every_part_has_a_name_for_the_screen_reader(opened) -> None:
    for part in (opened.list, opened.bowing, opened.times, opened.verdict, opened.elsewhere):
        assert part.accessibleName()
    for button in (opened.add_button, opened.up_button, opened.down_button, opened.remove_button):
        assert button.text()
        assert not button.autoDefault()


@pytest.mark.parametrize("theme", [LIGHT, DARK])
def test_signs_and_words_take_the_colours_of_the_look(opened, dialogs, theme) -> None:
    add(opened, dialogs, 0, 1)
    opened.set_theme(theme)
    picture = opened.list.viewport().grab().toImage()
    places = ((x, y) for x in range(picture.width()) for y in range(0, picture.height(), 2))
    colours = {picture.pixelColor(x, y).name() for x, y in places}
    assert QColor(theme.field).name() in colours
    assert any(severity in colours for severity in theme.severities.values())
