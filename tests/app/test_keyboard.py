"""Everything without a mouse: each command through the menus by keys, each control of each window by Tab."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QMenu,
    QPlainTextEdit,
    QRadioButton,
    QSlider,
    QWidget,
)

from app.actions import ACTIONS, MENUS, SEPARATOR, MenuItems
from app.bow_fiddle_dialog import BowFiddleDialog
from app.main_window import MainWindow
from app.sheet_dialog import SheetDialog, Way
from app.tune_chooser import TuneChooser
from core.lesson import Lesson
from core.sheet_plan import SheetKind, begin

CONTROLS = (QAbstractButton, QAbstractItemView, QAbstractSpinBox, QComboBox, QLineEdit, QPlainTextEdit, QSlider)
MOST_STEPS = 400


def names(items: MenuItems) -> Iterator[str]:
    for item in items:
        if isinstance(item, tuple):
            yield from names(item[1])
        elif item != SEPARATOR:
            yield item


def test_every_command_is_in_a_menu():
    assert {spec.name for spec in ACTIONS} <= set(names(MENUS))


def test_no_two_commands_share_a_key(window):
    """Plain letters belong to the page; a key of the window must not be one of them either."""
    for one, other in combinations(window.actions_by_name.values(), 2):
        shared = set(one.shortcuts()) & set(other.shortcuts())
        assert not shared, f"{one.objectName()} and {other.objectName()}: {[key.toString() for key in shared]}"


def letters(menu: QWidget) -> list[str]:
    shown = (action for action in menu.actions() if not action.isSeparator())
    return [QKeySequence.mnemonic(action.text()).toString() for action in shown]


def test_a_letter_opens_one_thing_in_each_menu(window):
    menus = [window.menuBar(), *(menu for menu in window.menuBar().findChildren(QMenu) if menu.actions())]
    for menu in menus:
        found = letters(menu)
        assert all(found), [action.text() for action in menu.actions()]
        assert len(set(found)) == len(found), [action.text() for action in menu.actions()]


def walk(menu: QMenu) -> Iterator[QAction]:
    """Commands that the arrow keys come to in an open menu and the menus inside it."""
    first = None
    for _ in range(MOST_STEPS):
        QTest.keyClick(menu, Qt.Key.Key_Down)
        action = menu.activeAction()
        if action is None or action is first:
            return
        first = first or action
        yield action
        inner = action.menu()
        if isinstance(inner, QMenu) and action.isEnabled():
            QTest.keyClick(menu, Qt.Key.Key_Right)
            assert inner.isVisible(), action.text()
            first_inside = inner.activeAction()
            if first_inside is not None:  # it is entered on its first command
                yield first_inside
            yield from walk(inner)
            QTest.keyClick(inner, Qt.Key.Key_Left)
    raise AssertionError("the menu never comes round")


def test_arrow_keys_come_to_every_command(window):
    window.activateWindow()
    reached: set[str] = set()
    for action in window.menuBar().actions():
        letter = QKeySequence.mnemonic(action.text()).toString()  # as "Alt+F"
        QTest.keySequence(window, QKeySequence(letter))
        menu = action.menu()
        assert isinstance(menu, QMenu)
        assert menu.isVisible(), action.text()
        reached |= {found.objectName() for found in (menu.activeAction(), *walk(menu)) if found is not None}
        QTest.keyClick(menu, Qt.Key.Key_Escape)
        menu.hide()
    missing = {spec.name for spec in ACTIONS if window.actions_by_name[spec.name].isEnabled()} - reached
    assert not missing


def test_a_command_is_given_by_letters_alone(window):
    window.activateWindow()
    before = window.page.zoom
    QTest.keySequence(window, QKeySequence("Alt+V"))
    QTest.keyClick(QApplication.activePopupWidget(), Qt.Key.Key_I)
    assert window.page.zoom > before


def wanted(window: QWidget) -> set[QWidget]:
    """Controls in sight that a hand with a mouse could use. Of radio buttons Tab comes to the checked one."""
    found = set()
    for kind in CONTROLS:
        for widget in window.findChildren(kind):
            if (
                widget.isVisible()
                and widget.isEnabled()
                and widget.window() is window
                and not widget.objectName().startswith("qt_")
                and not isinstance(widget, QHeaderView)  # what it does is done by keys in the list below it
                and not (isinstance(widget, QRadioButton) and not widget.isChecked())
                and not isinstance(widget.parent(), QAbstractSpinBox | QComboBox)
            ):
                found.add(widget)
    return found


def reached_by_tab(window: QWidget) -> set[QWidget]:
    """Widgets that Tab comes to until it is back at the first."""
    window.activateWindow()
    order: list[QWidget] = []
    while len(order) < MOST_STEPS:
        QTest.keyClick(window.focusWidget() or window, Qt.Key.Key_Tab)
        now = window.focusWidget()
        assert now is not None
        if order and now is order[0]:
            return set(order)
        order.append(now)
    raise AssertionError(f"Tab never comes round: {order[-5:]}")


def check(window: QWidget) -> None:
    """Tab comes to every control, and each has a name that can be read out."""
    reached = reached_by_tab(window)
    for widget in wanted(window):
        says = widget.accessibleName() or getattr(widget, "text", str)() or label_of(widget)
        assert says, f"no name: {widget}"
        assert widget in reached or widget.focusProxy() in reached, f"not reached: {type(widget).__name__} “{says}”"


def label_of(widget: QWidget) -> str:
    """The text of the label that names a control."""
    labels = (label for label in widget.window().findChildren(QLabel) if label.buddy() is widget)
    return next((label.text() for label in labels), "")


def with_docks(window: MainWindow) -> None:
    for name in ("planner", "shelf", "player", "compare"):
        action = window.actions_by_name[name]
        if not action.isChecked():
            action.trigger()


def test_tab_comes_to_all_of_the_window(window):
    check(window)


def test_tab_comes_to_all_of_the_window_with_every_pane_open(window):
    with_docks(window)
    check(window)


@pytest.mark.parametrize("kind", SheetKind)
def test_tab_comes_to_all_of_the_sheet_dialog(qtbot, four_bars, kind):
    check(shown(qtbot, SheetDialog(four_bars, begin(kind), Way.PRINT)))


def test_tab_comes_to_all_about_bow_and_fiddle(qtbot, four_bars):
    check(shown(qtbot, BowFiddleDialog(four_bars)))


def test_tab_comes_to_all_where_a_tune_is_chosen(qtbot, four_bars: Lesson):
    check(shown(qtbot, TuneChooser("book.abc", [four_bars, four_bars])))


@pytest.mark.parametrize(("command", "dialog"), [("pack", "pack_dialog"), ("tune_set", "set_window")])
def test_tab_comes_to_all_of_the_dialogs_that_stay(window, command, dialog):
    window.actions_by_name[command].trigger()
    check(getattr(window, dialog))


def shown(qtbot, dialog: QWidget) -> QWidget:
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.waitExposed(dialog)
    return dialog


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space])
def test_enter_presses_a_button_of_the_window_as_space_does(window, key):
    before = len(window.document.state.lesson.bowings)
    add = window.bowings.buttons["add"]
    add.setFocus()
    QTest.keyClick(add, key)
    assert len(window.document.state.lesson.bowings) == before + 1
