"""The page for assistive technology: a list with an item for each note of each bowing on it.

An item is asked for what it is when it is read, so that nothing need be kept true while the bowing changes. Qt makes
the list when a screen reader, or the like, first asks for the page; without one none of this is made.
"""

from __future__ import annotations

from functools import cache, partial
from typing import Any, Protocol

import shiboken6
from PySide6.QtCore import QObject, QRect
from PySide6.QtGui import QAccessible, QAccessibleEvent, QAccessibleInterface
from PySide6.QtWidgets import QAccessibleWidget, QWidget

NoteOfRow = tuple[int, str]
_made: list[PageReader] = []  # Qt deletes them with their pages, and never before


class Readable(Protocol):
    """What the page has to say; it is a ``QWidget`` too."""

    def readable_count(self) -> int:
        """How many notes and rests can be read."""

    def readable_note(self, index: int) -> NoteOfRow:
        """Row and note id of one of them, in the order in which they stand."""

    def readable_focus(self) -> int | None:
        """Which of them the keyboard acts on; None for an empty tune."""

    def note_words(self, row: int, note_id: str) -> str:
        """All there is to say of a note."""

    def note_area(self, row: int, note_id: str) -> QRect:
        """Where a note stands in the widget; empty where it is not drawn yet."""


def tell_focus(page: QWidget) -> None:
    """Let assistive technology read the note that the keyboard acts on, as it is now."""
    if not QAccessible.isActive():
        return
    reader = QAccessible.queryAccessibleInterface(page)
    place = reader.page.readable_focus() if isinstance(reader, PageReader) else None
    if place is None:
        return
    for kind in (QAccessible.Event.NameChanged, QAccessible.Event.Focus):
        event = QAccessibleEvent(page, kind)
        event.setChild(place)
        QAccessible.updateAccessibility(event)


@cache
def install(kind: type[QWidget]) -> None:
    """Let Qt make readers for the pages of a class, which are ``Readable``."""
    QAccessible.installFactory(partial(_reader, kind))


def _reader(kind: type[QWidget], _class: str, made_for: QObject | None) -> QAccessibleInterface | None:
    if not isinstance(made_for, kind):
        return None
    _made[:] = [reader for reader in _made if shiboken6.isValid(reader)]
    _made.append(PageReader(made_for))
    return _made[-1]


class PageReader(QAccessibleWidget):
    """A page as a list of notes.

    Args:
        page: The widget, which is ``Readable``.
    """

    def __init__(self, page: QWidget) -> None:
        super().__init__(page, QAccessible.Role.List)
        self.page: Any = page
        self._items: list[NoteReader] = []
        page.destroyed.connect(partial(_forget, self._items))

    def childCount(self) -> int:
        return int(self.page.readable_count()) if shiboken6.isValid(self.page) else 0

    def child(self, index: int) -> QAccessibleInterface | None:  # type: ignore[override]
        if not 0 <= index < self.childCount():
            return None
        while len(self._items) <= index:
            item = NoteReader(self, len(self._items))
            QAccessible.registerAccessibleInterface(item)
            self._items.append(item)
        return self._items[index]

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return child.index if isinstance(child, NoteReader) else -1

    def childAt(self, x: int, y: int) -> QAccessibleInterface | None:  # type: ignore[override]
        items = map(self.child, range(self.childCount()))
        inside = (item for item in items if item is not None and item.rect().contains(x, y))
        return next(inside, None)

    def focusChild(self) -> QAccessibleInterface | None:  # type: ignore[override]
        index = self.page.readable_focus() if self.page.hasFocus() else None
        return self.child(index) if index is not None else None


class NoteReader(QAccessibleInterface):
    """One item: whatever note stands at its place.

    Args:
        reader: The list.
        index: Its place in the list.
    """

    def __init__(self, reader: PageReader, index: int) -> None:
        super().__init__()
        self._reader = reader
        self.index = index

    def _place(self) -> NoteOfRow | None:
        return self._reader.page.readable_note(self.index) if self.index < self._reader.childCount() else None

    def isValid(self) -> bool:
        return shiboken6.isValid(self._reader) and self._place() is not None

    def object(self) -> QObject | None:  # type: ignore[override]
        return None

    def parent(self) -> QAccessibleInterface:
        return self._reader

    def child(self, index: int) -> QAccessibleInterface | None:  # type: ignore[override]
        return None

    def childAt(self, x: int, y: int) -> QAccessibleInterface | None:  # type: ignore[override]
        return None

    def childCount(self) -> int:
        return 0

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return -1

    def rect(self) -> QRect:
        """On the screen."""
        page, place = self._reader.page, self._place()
        area = page.note_area(*place) if place is not None else QRect()
        return QRect() if area.isEmpty() else QRect(page.mapToGlobal(area.topLeft()), area.size())

    def role(self) -> QAccessible.Role:
        return QAccessible.Role.ListItem

    def text(self, kind: QAccessible.Text) -> str:
        place = self._place()
        if kind is not QAccessible.Text.Name or place is None:
            return ""
        return str(self._reader.page.note_words(*place))

    def setText(self, kind: QAccessible.Text, text: str) -> None:
        """Nothing can be set."""

    def state(self) -> QAccessible.State:
        page, place = self._reader.page, self._place()
        state = QAccessible.State()
        state.focusable = state.selectable = True
        if place is not None:
            state.focused = state.selected = page.hasFocus() and self.index == page.readable_focus()
            state.offscreen = not page.visibleRegion().intersects(page.note_area(*place))
        return state


def _forget(items: list[NoteReader], _page: QObject | None = None) -> None:
    """Let go of the items of a page that is gone."""
    for item in items:
        if shiboken6.isValid(item):
            QAccessible.deleteAccessibleInterface(QAccessible.uniqueId(item))
    items.clear()
