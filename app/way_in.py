"""The way in for lessons: what happens beside the document when one takes the place of the open one."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.file_news import elsewhere
from app.imprint import Imprint
from app.lesson_file import LessonFile
from app.saving import Saving
from app.set_list import SetList
from core.lesson import Lesson


class WayIn(QObject):
    """Lets a lesson in, from wherever it comes.

    Args:
        document: The document that it is put into.
        file: Is told what the lesson's file looked like.
        sets: Is told of the book that it comes from.
        saving: Asks whether the open lesson may go.

    Signals:
        opened: A lesson has taken the place of what was open.
    """

    opened = Signal()

    def __init__(
        self, document: Document, file: LessonFile, sets: SetList, saving: Saving, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document, self._file, self._sets, self._saving = document, file, sets, saving

    def may_come(self) -> bool:
        """Whether the open lesson may go; the user is asked where it is not saved."""
        return self._saving.may_leave()

    def let_in(
        self, put: Callable[[], None], book: Path | None, lessons: Sequence[Lesson], own: Path | None,
        known: Imprint | None,
    ) -> str:  # fmt: skip
        """Let a lesson in; the open one may go.

        Args:
            put: Puts it into the document.
            book: The file that it was read from.
            lessons: All that there are in it.
            own: The file that it is saved in; None where it has none yet.
            known: What that file looked like.
        Returns:
            A sentence where another window has the same file open, else "".
        """
        self._sets.book_opens(book, lessons)
        put()
        self._file.know(own, known)
        self.opened.emit()
        return elsewhere(self._document, self._file)
