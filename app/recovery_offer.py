"""Offers the lessons that were not saved when a window ended, and opens the one that is chosen."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.dialogs import Dialogs
from app.recovery import Recovery
from app.recovery_copy import Left
from app.way_in import WayIn
from core.translation import tr


class RecoveryOffer(QObject):
    """Asks what becomes of the lessons that were left behind.

    Args:
        way_in: Lets in the lesson that is chosen.
        recovery: Finds the lessons, and opens them.
        dialogs: Asks the user.
        window: Above which the questions stand.

    Signals:
        told: A sentence that stays on the window: what was opened.
        hinted: A sentence for the status line.
    """

    told = Signal(str)
    hinted = Signal(str)

    def __init__(self, way_in: WayIn, recovery: Recovery, dialogs: Dialogs, window: QWidget) -> None:
        super().__init__(window)
        self._way_in = way_in
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
        if chosen is not None and not self._way_in.may_come():
            chosen = None
        for other in left:
            if other is not chosen:
                other.hold.let_go()
        if chosen is not None:
            self._open(chosen)

    def _open(self, left: Left) -> None:
        from app.recovery_dialog import about

        assert left.lesson is not None
        file = left.note.file
        elsewhere = self._way_in.let_in(
            partial(self._recovery.open_left, left), file, (left.lesson,), file, left.note.known
        )
        opened = tr(
            "“{title}” is open as it stood, and is not saved yet. {about}",
            title=left.note.title or tr("Untitled"), about=about(left),
        )  # fmt: skip
        self.told.emit(f"{opened} {elsewhere}".strip())
