"""The chosen finding offers what mends it, found while the window goes on."""

from __future__ import annotations

from threading import Event

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from app.document import Document
from app.main_window import MainWindow
from app.remedy_panel import LOOKING, NONE_FOUND, RemedyButton
from app.remedy_search import RemedySearch, search
from app.side_list import SideList
from core.check import Remedy, check
from core.reading.abc import read_abc

LEFT = Qt.MouseButton.LeftButton
ODD = "X:1\nM:4/4\nL:1/4\nK:D\n|:d f a f|d2 f a:|\n"  # seven strokes: the second time begins up
HELD = "X:1\nM:3/4\nL:1/4\nK:D\n|:d3|d3|d3:|\n"  # one note a bar: nothing to slur, and a mark turns other bars round
MANY = "X:1\nM:4/4\nL:1/8\nK:D\n" + "d2 fd Adfd|" * 40 + "]\n"  # seven strokes a bar


@pytest.fixture
def side(qtbot, document: Document) -> SideList:
    side = SideList(document)
    qtbot.addWidget(side)
    side.resize(340, 800)
    side.show()
    return side


def open_text(document: Document, text: str) -> None:
    document.open(read_abc(text).lessons[0])


def choose(side: SideList, rule: str) -> None:
    side.choose(next(row for row, finding in enumerate(side.model.findings) if finding.rule == rule))


def texts(side: SideList) -> list[str]:
    return [button.text() for button in side.remedies.buttons]


def rules(side: SideList) -> set[str]:
    return {finding.rule for finding in side.model.findings}


def test_remedies_are_shown_with_their_cost_when_they_are_found(qtbot, side, document):
    open_text(document, ODD)
    choose(side, "part-on-other-bow")
    assert (side.remedies.words, texts(side)) == (LOOKING, [])
    qtbot.waitUntil(lambda: not side.waits)
    assert texts(side)[0] == "Slur notes 3 and 4 of bar 1 · 1 slur more"
    assert len(texts(side)) == 3
    qtbot.waitUntil(lambda: all(button.isVisible() for button in side.remedies.buttons))


def test_a_click_mends_as_one_undo_step(qtbot, side, document):
    open_text(document, ODD)
    before = document.state
    choose(side, "part-on-other-bow")
    qtbot.waitUntil(lambda: not side.waits)
    label = side.remedies.remedies[1].label
    QTest.mouseClick(side.remedies.buttons[1], LEFT)
    assert "part-on-other-bow" not in rules(side)
    assert (document.stack.count(), document.stack.undoText()) == (1, label)
    document.stack.undo()
    assert document.state == before


def test_that_none_was_found_is_said(qtbot, side, document):
    open_text(document, HELD)
    choose(side, "phrase-on-other-bow")
    qtbot.waitUntil(lambda: not side.waits)
    assert (side.remedies.words, texts(side)) == (NONE_FOUND, [])


def test_an_answer_about_another_finding_is_dropped(qtbot, side, document):
    open_text(document, HELD)
    choose(side, "part-on-other-bow")
    QTest.qWait(20)  # it runs now
    choose(side, "phrase-on-other-bow")
    qtbot.waitUntil(lambda: not side.waits)
    QTest.qWait(50)
    assert side.remedies.words == NONE_FOUND


def test_an_edit_makes_what_was_found_before_it_void(qtbot, side, document):
    open_text(document, ODD)
    choose(side, "part-on-other-bow")
    qtbot.waitUntil(lambda: not side.waits)
    offered = side.remedies.remedies
    document.edit("Mend", offered[0].edit)
    QTest.qWait(50)
    assert side.chosen is None or side.chosen.rule != "part-on-other-bow"
    assert not set(offered) & set(side.remedies.remedies)


def test_nothing_is_looked_for_once_nothing_is_chosen(side, document):
    open_text(document, ODD)
    choose(side, "part-on-other-bow")
    side.list.clearSelection()
    assert not side.waits
    assert not side.remedies.isVisible()


def test_a_dropped_search_tells_nothing(qtbot):
    lesson = read_abc(MANY).lessons[0]
    finding = next(f for f in check(lesson.tune, lesson.bowings[0]).findings if f.rule == "phrase-on-other-bow")
    looks = RemedySearch()
    told = []
    looks.found.connect(told.append)
    looks.start(lesson, lesson.bowings[0], finding)
    QTest.qWait(30)
    looks.stop()
    QTest.qWait(100)
    assert told == []
    assert not looks.runs


def test_a_dropped_search_stops_at_its_next_trial():
    lesson = read_abc(ODD).lessons[0]
    finding = check(lesson.tune, lesson.bowings[0]).findings[0]
    dropped = Event()
    assert search(lesson, lesson.bowings[0], finding, dropped) != ()
    dropped.set()
    assert search(lesson, lesson.bowings[0], finding, dropped) == ()


@pytest.mark.parametrize(
    ("slurs", "text"),
    [(1, "Mend · 1 slur more"), (2, "Mend · 2 slurs more"), (-1, "Mend · 1 slur fewer"), (0, "Mend")],
)
def test_the_cost_is_told_in_slurs(slurs, text):
    assert Remedy("Mend", lambda t, b: b, slurs).text == text


def test_a_button_is_as_high_as_its_words_need(qtbot):
    button = RemedyButton("Part the slur between notes 2 and 3 of bars 11 and 28 · 2 slurs fewer")
    qtbot.addWidget(button)
    line = button.fontMetrics().height()
    assert button.heightForWidth(1000) < 2 * line
    assert button.heightForWidth(200) >= 3 * line


# ------------------------------------------------------------------------------------------------- in the window


@pytest.fixture
def odd(qtbot, window: MainWindow) -> MainWindow:
    open_text(window.document, ODD)
    choose(window.side_list, "part-on-other-bow")
    qtbot.waitUntil(lambda: not window.side_list.waits)
    QTest.qWait(20)
    return window


def test_the_pointer_on_a_remedy_shows_it_on_the_page(odd):
    button = odd.side_list.remedies.buttons[0]
    QTest.mouseMove(button, QPoint(2, 2))
    QTest.mouseMove(button, button.rect().center())
    assert odd.page.preview.joined == ("b0n3", "b0n4")
    assert odd._hint.text() == "Click to slur notes 3 and 4 of bar 1."
    QTest.mouseMove(odd.side_list.totals, QPoint(5, 5))
    assert odd.page.preview.joined == ()


def test_the_keyboard_on_a_remedy_shows_it_and_does_it(odd):
    button = odd.side_list.remedies.buttons[0]
    button.setFocus(Qt.FocusReason.TabFocusReason)
    assert odd.page.preview.joined == ("b0n3", "b0n4")
    QTest.keyClick(button, Qt.Key.Key_Space)
    assert odd.page.preview.joined == ()
    assert "b0n4" in odd.document.state.bowing.joins


def test_control_and_return_do_the_first_remedy(odd):
    QTest.keyClick(odd, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert set(odd.document.state.bowing.joins) == {"b0n4"}
    assert odd.document.stack.count() == 1


def test_control_and_return_change_nothing_while_it_is_looked_for(window):
    open_text(window.document, ODD)
    choose(window.side_list, "part-on-other-bow")
    QTest.keyClick(window, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert window.document.stack.count() == 0
    assert window._hint.text() == LOOKING
