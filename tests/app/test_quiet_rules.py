"""A teacher turns rules of the check down, for one lesson, and takes it back."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMenu

from app.files import read_path, save_lesson
from app.quiet_menus import quiet_text
from app.side_list import NOTHING_TOLD, SideList
from core.reading.abc import read_abc
from core.severity import Severity, set_quiet

LEFT = Qt.MouseButton.LeftButton
EVEN = "X:1\nM:4/4\nL:1/4\nK:D\n|:d2 f a|d2 f a:|\n"  # down, up, down; up, down, up
LABEL = "Tell “Accent on an up-bow” as a note"


@pytest.fixture
def side(window) -> SideList:
    return window.side_list


def severities(side: SideList, rule: str) -> set[Severity]:
    return {finding.severity for finding in side.model.findings if finding.rule == rule}


def open_finding_menu(side: SideList, rule: str) -> QMenu:
    row = next(row for row, finding in enumerate(side.model.findings) if finding.rule == rule)
    side.choose(row)
    side.list.scrollTo(side.model.index(row))
    place = side.list.visualRect(side.model.index(row)).topLeft() + QPoint(5, 5)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, place, side.list.viewport().mapToGlobal(place))
    QApplication.sendEvent(side.list.viewport(), event)
    return open_menu(side)


def open_menu(side: SideList) -> QMenu:
    return next(menu for menu in side.findChildren(QMenu) if menu.isVisible())


def pick(menu: QMenu, text: str) -> None:
    action = next(action for action in menu.actions() if action.text() == text)
    QTest.mouseClick(menu, LEFT, pos=menu.actionGeometry(action).center())


def offered(menu: QMenu) -> list[str]:
    return [action.text() for action in menu.actions() if not action.isSeparator()]


def test_a_rule_is_told_as_a_note(window, side):
    assert severities(side, "accent-up") == {Severity.WARNING}
    pick(open_finding_menu(side, "accent-up"), "Tell this as a note")
    assert severities(side, "accent-up") == {Severity.NOTE}
    assert window.document.stack.undoText() == LABEL
    assert (side.quiet_line.isVisible(), side.quiet_line.text()) == (True, "1 rule is turned down …")
    window.document.stack.undo()
    assert severities(side, "accent-up") == {Severity.WARNING}
    assert not side.quiet_line.isVisible()


def test_a_rule_is_not_told_at_all(window, side):
    totals = side.totals.totals
    pick(open_finding_menu(side, "accent-up"), "Do not tell this in this lesson")
    assert severities(side, "accent-up") == set()
    assert side.totals.totals == totals
    assert window.document.is_modified


def test_a_note_is_turned_down_to_nothing_only(side):
    assert offered(open_finding_menu(side, "like-on-other-bow")) == ["Do not tell this in this lesson"]
    open_menu(side).close()


def test_a_rule_told_as_a_note_is_told_as_it_is_again(window, side):
    pick(open_finding_menu(side, "accent-up"), "Tell this as a note")
    pick(open_finding_menu(side, "accent-up"), "Tell this as it is again")
    assert severities(side, "accent-up") == {Severity.WARNING}
    assert window.document.state.lesson.quiet == {}


def test_the_line_below_the_list_leads_back(window, side):
    for rule in ("accent-up", "like-on-other-bow"):
        pick(open_finding_menu(side, rule), "Do not tell this in this lesson")
    assert side.quiet_line.text() == "2 rules are turned down …"
    QTest.mouseClick(side.quiet_line, LEFT)
    pick(open_menu(side), "Accent on an up-bow (not told now)")
    assert severities(side, "accent-up") == {Severity.WARNING}
    assert severities(side, "like-on-other-bow") == set()
    window.document.stack.undo()
    QTest.mouseClick(side.quiet_line, LEFT)
    pick(open_menu(side), "All rules")
    assert severities(side, "like-on-other-bow") == {Severity.NOTE}
    assert not side.quiet_line.isVisible()


def test_an_empty_list_does_not_hide_that_rules_are_turned_down(window, side):
    for rule in {finding.rule for finding in side.model.findings}:
        pick(open_finding_menu(side, rule), "Do not tell this in this lesson")
    assert NOTHING_TOLD in [label.text() for label in side.findChildren(QLabel) if label.isVisible()]
    assert side.quiet_line.isVisible()


def test_what_is_turned_down_is_saved_with_the_lesson(window, side, tmp_path):
    pick(open_finding_menu(side, "accent-up"), "Do not tell this in this lesson")
    save_lesson(window.document.state.lesson, tmp_path / "quiet.musicxml")
    window.document.open(read_path(tmp_path / "quiet.musicxml").lessons[0])
    assert severities(side, "accent-up") == set()
    assert side.quiet_line.isVisible()


def test_rules_that_this_program_does_not_know_are_not_counted():
    quiet = set_quiet(read_abc(EVEN).lessons[0].quiet, "a rule of another time", None)
    assert quiet_text(quiet) == ""
    assert quiet_text(set_quiet(quiet, "retake", None)) == "1 rule is turned down …"


def test_the_check_menu_turns_the_chosen_finding_down_too(window, side):
    side.choose(next(row for row, finding in enumerate(side.model.findings) if finding.rule == "accent-up"))
    window.actions_by_name["tell_as_note"].trigger()
    assert severities(side, "accent-up") == {Severity.NOTE}
    assert side.chosen.rule == "accent-up"
    window.actions_by_name["tell_not"].trigger()
    assert severities(side, "accent-up") == set()
    window.actions_by_name["tell_all"].trigger()
    assert severities(side, "accent-up") == {Severity.WARNING}


def test_turning_down_asks_for_a_finding_first(window, side):
    side.list.clearSelection()
    window.actions_by_name["tell_not"].trigger()
    assert window._hint.text() == "Choose a finding first."
    assert window.document.stack.count() == 0
