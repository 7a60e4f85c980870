"""Ornaments put on notes of a bowing, by keys and menus of the real window."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMenu

from core.bowing import Grace, Ornament, Signs
from core.tune import Pitch

SHIFT = Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def page(window):
    window.page.setFocus()
    window.page.focus_on("b0n2")  # f in D major
    return window.page


def ornaments(window) -> dict[str, tuple[Ornament, ...]]:
    return {note: signs.ornaments for note, signs in window.document.state.bowing.signs.items()}


def test_a_key_puts_a_cut_before_the_focus_note_and_takes_it_away(window, page):
    before = window.document.state
    QTest.keyClick(page, Qt.Key.Key_C)
    assert window.document.state.bowing.signs == {"b0n2": Signs((Grace((Pitch(5, "G", 0),), slashed=True),))}
    assert window.document.stack.undoText() == "Put a cut on bar 1, note 2"
    assert window.document.state.tune is before.tune
    QTest.keyClick(page, Qt.Key.Key_C)
    assert window.document.state == before


@pytest.mark.parametrize(
    ("key", "ornament"),
    [(Qt.Key.Key_L, Ornament.ROLL), (Qt.Key.Key_N, Ornament.TURN), (Qt.Key.Key_B, Ornament.BOWED_TRIPLET)],
)
def test_keys_put_signs_on_the_focus_note(window, page, key, ornament):
    directions = window.document.report().strokes.bows
    QTest.keyClick(page, key)
    assert ornaments(window) == {"b0n2": (ornament,)}
    assert window.document.report().strokes.bows == directions  # rule B8
    window.document.stack.undo()
    assert ornaments(window) == {}


def test_a_selection_is_ornamented_in_one_step(window, page):
    QTest.keyClick(page, Qt.Key.Key_Right, SHIFT)
    QTest.keyClick(page, Qt.Key.Key_L)
    assert ornaments(window) == {"b0n2": (Ornament.ROLL,), "b0n3": (Ornament.ROLL,)}
    assert window.document.stack.count() == 1


def test_the_menu_of_a_note_holds_the_ornaments(window, page):
    QTest.keyClick(page, Qt.Key.Key_Menu)
    menu = next(menu for menu in window.findChildren(QMenu) if menu.isVisible() and menu.parent() is window)
    inner = next(action.menu() for action in menu.actions() if action.text() == "&Ornaments")
    assert [action.objectName() for action in inner.actions()] == [
        "ornament_cut", "ornament_roll", "ornament_turn", "ornament_triplet",
    ]  # fmt: skip
    inner.actions()[2].trigger()
    menu.close()
    assert ornaments(window) == {"b0n2": (Ornament.TURN,)}


def test_only_the_line_of_an_ornamented_note_is_engraved_anew_and_it_shows_more(window, page):
    before = page.pictures[0]
    QTest.keyClick(page, Qt.Key.Key_C)
    assert len(page.pictures[0].shapes) > len(before.shapes)


def test_another_bowing_keeps_its_own_ornaments(window, page):
    window.actions_by_name["bowing_copy"].trigger()
    page.setFocus()
    QTest.keyClick(page, Qt.Key.Key_L)
    first, second = window.document.state.lesson.bowings
    assert not first.signs
    assert second.signs["b0n2"].ornaments == (Ornament.ROLL,)


def test_a_rest_takes_no_ornament(window, page):
    heard = []
    page.hinted.connect(heard.append)
    page.focus_on("b3n6")  # z2
    QTest.keyClick(page, Qt.Key.Key_L)
    assert heard[-1] == "A rest takes no ornament."
    assert window.document.stack.count() == 0
