"""What clicks and held keys mean on the page, as tables."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt

from app.here import Here
from app.proposals import (
    Proposal,
    propose_free,
    propose_hook,
    propose_join,
    propose_retake,
    propose_turn,
)
from core.translation import translatable

NO_KEY, CTRL, SHIFT = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
)
HELD_KEYS: Mapping[int, Qt.KeyboardModifier] = {Qt.Key.Key_Control: CTRL, Qt.Key.Key_Shift: SHIFT}
MENU_KEYS = (Qt.Key.Key_Menu, Qt.Key.Key_F10)  # the latter with Shift
# What a click does: (on a bow mark, key held) -> proposal. Shift on a note extends the selection and is not here.
CLICKS: Mapping[tuple[bool, Qt.KeyboardModifier], Callable[[Here, str], Proposal]] = {
    (False, NO_KEY): propose_join,
    (False, CTRL): propose_hook,
    (True, NO_KEY): propose_turn,
    (True, SHIFT): propose_free,
    (True, CTRL): propose_retake,
}
NOTE_TIPS = translatable("Drag over notes for a longer slur; Ctrl+click hooks.")
SIGN_TIPS = translatable("Shift+click frees, Ctrl+click retakes.")
TIPS = {False: NOTE_TIPS, True: SIGN_TIPS}  # by whether the pointer is on a bow mark
STRIP_TIPS = translatable("Right button: accents of more bars.")


def held_key(keys: Qt.KeyboardModifier) -> Qt.KeyboardModifier:
    """The one of Ctrl and Shift that is held; both held are neither."""
    return keys & (CTRL | SHIFT)
