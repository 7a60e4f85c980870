"""A letter typed into an open menu chooses from it; on the page the same letter does a command."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.about_dialog import AboutDialog


@pytest.fixture
def help_menu(window):
    window.page.setFocus()
    window.page.focus_on("b1n1")
    return window.menuBar().actions()[-1].menu()


def type_letter(key):
    """Through the system's way of keys, which asks for commands first."""
    popup = QApplication.activePopupWidget()
    QTest.keyClick((popup or QApplication.activeWindow()).windowHandle(), key)


def test_on_the_page_the_letter_is_a_command(window, help_menu):
    type_letter(Qt.Key.Key_A)
    assert "accent" in window.document.stack.undoText()


def test_in_a_menu_that_the_keyboard_opened_it_chooses(window, help_menu):
    bar = window.menuBar()
    bar.setFocus(Qt.FocusReason.MenuBarFocusReason)
    bar.setActiveAction(help_menu.menuAction())
    assert QApplication.activePopupWidget() is help_menu
    type_letter(Qt.Key.Key_A)
    assert not window.document.stack.canUndo()
    (about,) = window.findChildren(AboutDialog)
    about.close()


def test_in_a_menu_that_the_mouse_opened_it_chooses(window, help_menu):
    help_menu.popup(window.page.mapToGlobal(window.page.rect().center()))
    type_letter(Qt.Key.Key_A)
    assert not window.document.stack.canUndo()
    (about,) = window.findChildren(AboutDialog)
    about.close()


def test_in_the_menu_of_a_note_too(window, help_menu):
    page = window.page
    page.menu_wanted.emit(page.mapToGlobal(page.head_point("b1n1")))
    popup = QApplication.activePopupWidget()
    assert popup is not None
    type_letter(Qt.Key.Key_B)  # bowed triplet on the page; in this menu no entry has it
    assert not window.document.stack.canUndo()
    popup.close()


def test_keys_with_control_still_do_their_commands(window, help_menu):
    window.page.toggle_slur()
    bar = window.menuBar()
    bar.setFocus(Qt.FocusReason.MenuBarFocusReason)
    QTest.keyClick(window.windowHandle(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert not window.document.stack.canUndo()


def test_function_keys_do_their_commands_although_the_bar_has_the_keyboard(window, help_menu):
    bar = window.menuBar()
    bar.setFocus(Qt.FocusReason.MenuBarFocusReason)
    QTest.keyClick(window.windowHandle(), Qt.Key.Key_F9)
    assert window.planning.pane.isVisible()
