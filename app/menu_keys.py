"""Letters go to the menus first, while one is open or the menu bar has the keyboard.

Keys of commands that belong to one widget work while it has the focus, and it keeps the focus while a menu is open
that the mouse opened. For Qt such a command also belongs to the menu bar if it is in one of its menus, and the bar has
the focus while the keyboard goes through them. In both cases a letter that should choose from the menu would do the
command instead.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QMenu, QMenuBar

HELD = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier | Qt.KeyboardModifier.MetaModifier


class MenuKeys(QObject):
    """Keeps plain keys for a menu, or for the menu bar, while it has the keyboard."""

    def __init__(self, menu: QMenu | QMenuBar) -> None:
        super().__init__(menu)
        menu.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and not event.modifiers() & HELD
            and not Qt.Key.Key_F1 <= event.key() <= Qt.Key.Key_F35  # no menu chooses by these
        ):
            event.accept()  # it is no command's key now, and comes as a key of the menu
            return True
        return False
