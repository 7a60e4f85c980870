"""Offers the lessons that were not saved when a window ended, and opens the one that is chosen."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.dialogs import Dialogs
from app.document import Document
from app.file_news import elsewhere
from app.lesson_file import LessonFile
from app.recovery import Recovery
from app.recovery_copy import Left
from app.saving import Saving
from app.set_list import SetList
from core.translation import tr


class RecoveryOffer(QObject):
    """Asks what becomes of the lessons that were left behind.

    Args:
        document: Takes the lesson that is chosen.
        file: Is told what the lesson's file looked like.
        sets: Is told where a lesson comes from.
        saving: Asks whether the open lesson may go.
        recovery: Finds the lessons.
        dialogs: Asks the user.
        window: Above which the questions stand.

    Signals:
        opened: A lesson has taken the place of what was open.
        told: A sentence that stays on the window: what was opened.
        hinted: A sentence for the status line.
    """

    opened = Signal()
    told = Signal(str)
    hinted = Signal(str)

    def __init__(
        self,
        document: Document,
        file: LessonFile,
        sets: SetList,
        saving: Saving,
        recovery: Recovery,
        dialogs: Dialogs,
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._document = document
        self._file = file
        self._sets = sets
        self._saving = saving
        self._recovery = recovery
        self._dialogs = dialogs
        self._window = window

    def offer(self, *, asked: bool = False) -> None:
        """Offer what was left behind, if there is anything.

        Args:
            asked: The user wants to know, so say if there is nothing.
        """
        left = self._recovery.left_behind()
        if not left:
            if asked:
                self.hinted.emit(tr("All lessons were saved."))
            return
        chosen = self._dialogs.lesson_left_behind(self._window, left)
        if chosen is not None and not self._saving.may_leave():
            chosen = None
        for other in left:
            if other is not chosen:
                other.hold.let_go()
        if chosen is not None:
            self._open(chosen)

    def _open(self, left: Left) -> None:
        from app.recovery_dialog import about

        assert left.lesson is not None
        self._sets.book_opens(left.note.file, (left.lesson,))
        self._recovery.open_left(left)
        self._file.know(left.note.file, left.note.known)
        self.opened.emit()
        opened = tr(
            "“{title}” is open as it stood, and is not saved yet. {about}",
            title=left.note.title or tr("Untitled"), about=about(left),
        )  # fmt: skip
        self.told.emit(f"{opened} {elsewhere(self._document, self._file)}".strip())
