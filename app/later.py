"""What can wait until the window is painted: parts give it away as jobs, which are done one by one between events."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QWidget

from app import overrides  # noqa: F401  before any class of ours below one of Qt

GAP_MS = 5  # before each job, for what has come in meanwhile
LATEST_MS = 1000


class Later(QObject):
    """Jobs that wait for the first picture of a window.

    Args:
        waits: Whether there is a picture to wait for; else every job is done at once.
    """

    def __init__(self, waits: bool = False, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._waits = waits
        self._has_begun = False
        self._jobs: deque[Callable[[], object]] = deque()

    @property
    def waits(self) -> bool:
        """Whether jobs are still put off."""
        return self._waits

    def do(self, job: Callable[[], object]) -> None:
        """Do a job when the window is painted, after those that were given before it; at once where it is."""
        if self._waits:
            self._jobs.append(job)
        else:
            job()

    def begin_after_painting(self, window: QWidget) -> None:
        """Begin when all of a window has been painted once more, and at the latest after ``LATEST_MS``."""
        window.installEventFilter(self)
        window.update()
        QTimer.singleShot(LATEST_MS, self, self._begin)  # nothing of it may be in sight

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The window is being painted; what is in it comes in the same turn."""
        if event.type() is QEvent.Type.Paint:
            watched.removeEventFilter(self)
            QTimer.singleShot(0, self, self._begin)
        return False

    def _begin(self) -> None:
        if self._waits and not self._has_begun:
            self._has_begun = True
            self._pause()

    def _pause(self) -> None:
        QTimer.singleShot(GAP_MS, self, self._step)

    def _step(self) -> None:
        """Do one job; what was clicked or typed meanwhile comes before the next. A mistake in one ends no other."""
        try:
            if self._jobs:
                self._jobs.popleft()()
        finally:
            if self._jobs:
                self._pause()
            else:
                self._waits = False
