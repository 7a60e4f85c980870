"""The list of bowings: every change an undo step, and the page follows."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QMimeData, QModelIndex, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit

from app.bowings_pane import ROW_MIME, BowingsPane
from app.document import Document
from core.bowing import toggle_join_to_next


@pytest.fixture
def pane(qtbot, document: Document) -> BowingsPane:
    pane = BowingsPane(document)
    qtbot.addWidget(pane)
    pane.resize(340, 240)
    pane.show()
    return pane


@pytest.fixture
def three(pane: BowingsPane, document: Document) -> BowingsPane:
    """Three bowings, the first on the page."""
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    pane.copy()
    pane.add()
    document.show(0)
    return pane


def names(document: Document) -> list[str]:
    return [bowing.name for bowing in document.state.lesson.bowings]


def shown(document: Document) -> str:
    return document.state.bowing.name


def press(pane: BowingsPane, button: str) -> None:
    QTest.mouseClick(pane.buttons[button], Qt.MouseButton.LeftButton)


def click_row(pane: BowingsPane, row: int) -> None:
    place = pane.list.visualRect(pane.model.index(row)).center()
    QTest.mouseClick(pane.list.viewport(), Qt.MouseButton.LeftButton, pos=place)


def test_a_new_bowing_has_separate_bows_and_is_on_the_page(pane, document):
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    press(pane, "add")
    assert names(document) == ["As written", "Separate bows"]
    assert shown(document) == "Separate bows"
    assert not document.state.bowing.joins
    document.stack.undo()
    assert names(document) == ["As written"]


def test_a_copy_is_bowed_alike_and_edited_apart(pane, document):
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    press(pane, "copy")
    assert names(document) == ["As written", "As written copy"]
    assert document.state.lesson.bowings[1].joins == document.state.lesson.bowings[0].joins
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n3"))
    assert len(document.state.lesson.bowings[0].joins) == 1
    assert len(document.state.lesson.bowings[1].joins) == 2


def test_copies_of_one_bowing_have_names_of_their_own(pane, document):
    press(pane, "copy")
    document.show(0)
    press(pane, "copy")
    assert len(set(names(document))) == 3


def test_a_click_puts_a_bowing_on_the_page_without_an_undo_step(three, document):
    steps = document.stack.count()
    click_row(three, 1)
    assert shown(document) == "As written copy"
    assert document.stack.count() == steps


def test_the_list_shows_which_bowing_is_on_the_page_without_choosing_it_again(three, document):
    document.show(2)
    assert three.list.currentIndex().row() == 2
    assert document.state.shown == 2


def test_a_name_is_typed_in_the_list_itself(qtbot, three, document):
    three.start_renaming()
    editor = three.list.findChild(QLineEdit)
    editor.selectAll()
    QTest.keyClicks(editor, "Class, easy")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: names(document)[0] == "Class, easy")
    document.stack.undo()
    assert names(document)[0] == "As written"


def test_a_name_that_is_taken_is_refused_in_words(qtbot, three, document):
    before = document.state
    with qtbot.waitSignal(three.hinted) as told:
        three.rename(0, "Separate bows")
    assert told.args == ["There is a bowing named “Separate bows” already."]
    assert document.state is before


def test_buttons_move_the_shown_bowing(three, document):
    press(three, "down")
    assert names(document) == ["As written copy", "As written", "Separate bows"]
    assert shown(document) == "As written"
    press(three, "up")
    assert names(document) == ["As written", "As written copy", "Separate bows"]
    document.stack.undo()
    assert names(document) == ["As written copy", "As written", "Separate bows"]


def test_a_bowing_at_the_end_cannot_go_further(three, document):
    assert not three.buttons["up"].isEnabled()
    assert three.buttons["down"].isEnabled()
    document.show(2)
    assert not three.buttons["down"].isEnabled()


@pytest.mark.parametrize(
    ("row", "before_row", "order"),
    [(0, 3, [1, 2, 0]), (0, 2, [1, 0, 2]), (2, 0, [2, 0, 1]), (1, 1, [0, 1, 2]), (1, 2, [0, 1, 2]), (0, -1, [1, 2, 0])],
)
def test_a_bowing_dropped_between_two_others_goes_there(three, document, row, before_row, order):
    before = names(document)
    steps = document.stack.count()
    data = three.model.mimeData([three.model.index(row)])
    assert not three.model.dropMimeData(data, Qt.DropAction.MoveAction, before_row, 0, QModelIndex())
    assert names(document) == [before[place] for place in order]
    assert document.stack.count() == steps + (order != [0, 1, 2])
    assert shown(document) == "As written"


def test_something_else_dropped_on_the_list_is_ignored(three, document):
    data = QMimeData()
    data.setText("a tune")
    assert not three.model.dropMimeData(data, Qt.DropAction.MoveAction, 0, 0, QModelIndex())
    assert ROW_MIME not in data.formats()
    assert names(document) == ["As written", "As written copy", "Separate bows"]


def test_deleting_shows_a_neighbour_and_undo_brings_it_back(three, document):
    document.show(2)
    gone = shown(document)
    press(three, "delete")
    assert gone not in names(document)
    assert document.state.shown == 1
    document.stack.undo()
    assert shown(document) == gone


def test_the_only_bowing_cannot_be_deleted(qtbot, pane, document):
    assert not pane.buttons["delete"].isEnabled()
    with qtbot.waitSignal(pane.hinted) as told:
        pane.delete()
    assert told.args == ["A lesson keeps at least one bowing."]
    assert document.stack.count() == 0


def test_the_next_bowing_is_a_key_away_and_goes_round(three, document):
    three.show_by(1)
    assert document.state.shown == 1
    three.show_by(-1)
    three.show_by(-1)
    assert document.state.shown == 2


def test_buttons_have_names_that_can_be_read_out(pane):
    assert all(len(button.accessibleName()) > 5 for button in pane.buttons.values())
