"""The planner at work in a thread of its own while the window goes on.

Only values go into the thread and only values come out; no Qt object is touched there. Each piece of work has a
number; what a piece tells is passed on only while its number is the latest, and a piece that nobody waits for any
more stops where it next asks whether to go on.
"""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import field
from queue import SimpleQueue
from threading import Event

from PySide6.QtCore import QCoreApplication, QObject, QTimer, Signal

from core.errors import RefusedEditError
from core.values import dataclass

GoOn = Callable[[], None]
"""Raises where the work is not wanted any more."""
Tell = Callable[[object], None]
"""Passes on one result."""
Work = Callable[[GoOn, Tell], None]

SLOW_MS = 300  # from here on a wait is shown
LOOK_MS = 3


class DroppedError(Exception):
    """Nobody waits for the answer any more."""


@dataclass(frozen=True)
class Piece:
    """Work that was begun.

    Attributes:
        generation: Its number.
        dropped: Set when it is not wanted any more.
        results: What it told and what was not passed on yet.
    """

    generation: int
    dropped: Event = field(default_factory=Event)
    results: SimpleQueue[object] = field(default_factory=SimpleQueue)

    def run(self, work: Work) -> None:
        """Do the work, in its thread."""
        self.go_on()
        work(self.go_on, self.results.put)

    def go_on(self) -> None:
        """Raise ``DroppedError`` once the piece was dropped."""
        if self.dropped.is_set():
            raise DroppedError


class PlanWork(QObject):
    """One piece of work at a time; a new one takes the place of the one before.

    Signals:
        told: One result, as it comes.
        slow: The work goes on for so long that the wait should be shown.
        ended: All is told.
        refused: Why it cannot be done, one sentence; nothing more comes.
        failed: An error of ours ended it; nothing more comes, and the error is raised.
    """

    told = Signal(object)
    slow = Signal()
    ended = Signal()
    refused = Signal(str)
    failed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._threads = ThreadPoolExecutor(max_workers=1)
        self._generation = 0
        self._piece: Piece | None = None
        self._future: Future[None] | None = None
        self._look = QTimer(self, interval=LOOK_MS)
        self._look.timeout.connect(self._take)
        self._patience = QTimer(self, singleShot=True, interval=SLOW_MS)
        self._patience.timeout.connect(self.slow)
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.stop)  # the program would else not end before the work does

    @property
    def runs(self) -> bool:
        """Whether something is still to come."""
        return self._piece is not None

    def start(self, work: Work) -> None:
        """Begin a piece of work."""
        self.stop()
        self._generation += 1
        self._piece = Piece(self._generation)
        self._future = self._threads.submit(self._piece.run, work)
        self._look.start()
        self._patience.start()

    def stop(self) -> None:
        """Drop the work that runs; nothing of it is told any more."""
        if self._piece is not None:
            self._piece.dropped.set()
        self._piece = self._future = None
        self._look.stop()
        self._patience.stop()

    def _take(self) -> None:
        piece, future = self._piece, self._future
        if piece is None or future is None:
            return
        done = future.done()  # asked before the results are taken: none can come in between
        while not piece.results.empty():
            self.told.emit(piece.results.get())
            if not self._is_wanted(piece):  # who was told may have begun something else
                return
        if done:
            self.stop()
            fault = future.exception()
            if isinstance(fault, RefusedEditError):
                self.refused.emit(str(fault))
            elif fault is not None:
                self.failed.emit()
                raise fault
            else:
                self.ended.emit()

    def _is_wanted(self, piece: Piece) -> bool:
        return self._piece is not None and self._piece.generation == piece.generation
