"""The undo step. Lessons are values, so one class serves all edits: redo puts one value, undo puts the other."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QUndoCommand

if TYPE_CHECKING:
    from app.document import Document, State


class Edit(QUndoCommand):
    """One edit of the lesson.

    Args:
        document: Where the lesson stands.
        before: State that undo puts back.
        after: State that redo puts.
        label: What the edit did, as the menu shows it behind "Undo".
    """

    def __init__(self, document: Document, before: State, after: State, label: str) -> None:
        super().__init__(label)
        self._document = document
        self._before = before
        self._after = after

    def redo(self) -> None:
        self._document.put(self._after)

    def undo(self) -> None:
        self._document.put(self._before)
