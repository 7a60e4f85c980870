"""What mends the chosen finding, worked out in a thread of its own while the window goes on.

Only values go into the thread and only values come out; no Qt object is touched there. An answer is told if it is
still wanted when it comes, and a search that is not wanted any more stops at its next trial.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property, partial
from threading import Event
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject, QTimer, Signal

from core.bowing import Bowing
from core.check import Finding, Remedy, Report
from core.lesson import Lesson
from core.lesson_check import check_lesson
from core.tune import Tune

if TYPE_CHECKING:
    from concurrent.futures import Future, ThreadPoolExecutor

Work = Callable[[Event], tuple[object, ...]]

AFTER_PAINT_MS = 10  # lets the chosen row be painted first, and a walk through the list pass by
LOOK_MS = 5


class RemedySearch(QObject):
    """One search at a time; a new one takes the place of the one before.

    Signals:
        found: What was asked for last, such as remedies of a finding, best first; perhaps nothing.
    """

    found = Signal(tuple)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._dropped = Event()
        self._work: Work | None = None
        self._future: Future[tuple[object, ...]] | None = None
        self._wait = QTimer(self, singleShot=True, interval=AFTER_PAINT_MS)
        self._wait.timeout.connect(self._submit)
        self._look = QTimer(self, interval=LOOK_MS)
        self._look.timeout.connect(self._take)
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.stop)  # the program would else not end before the search does

    @cached_property
    def _threads(self) -> ThreadPoolExecutor:
        """Made for the first search."""
        from concurrent.futures import ThreadPoolExecutor

        return ThreadPoolExecutor(max_workers=1)

    @property
    def runs(self) -> bool:
        """Whether an answer is to come."""
        return self._wait.isActive() or self._look.isActive()

    def start(self, lesson: Lesson, bowing: Bowing, finding: Finding) -> None:
        """Look for what mends a finding of this bowing, judged by what the lesson sets."""
        self.look_for(partial(search, lesson, bowing, finding))

    def look_for(self, work: Work) -> None:
        """Look for something else; ``work`` is told that it is dropped by the event that it is given."""
        self.stop()
        self._work = work
        self._wait.start()

    def stop(self) -> None:
        """Drop the search that runs; its answer is never told."""
        self._dropped.set()
        self._dropped = Event()
        self._work = self._future = None
        self._wait.stop()
        self._look.stop()

    def _submit(self) -> None:
        assert self._work is not None
        self._future = self._threads.submit(self._work, self._dropped)
        self._look.start()

    def _take(self) -> None:
        if self._future is not None and self._future.done():
            future, self._work, self._future = self._future, None, None
            self._look.stop()
            self.found.emit(future.result())


def search(lesson: Lesson, bowing: Bowing, finding: Finding, dropped: Event) -> tuple[Remedy, ...]:
    """Find remedies, or none at all once the search was dropped."""
    from core.remedies import remedies  # not for the start

    def judge(tune: Tune, bowing: Bowing) -> Report:
        return judge_unless_dropped(lesson, bowing, dropped)

    try:
        return remedies(lesson.tune, bowing, finding, judge)
    except DroppedError:
        return ()


def judge_unless_dropped(lesson: Lesson, bowing: Bowing, dropped: Event) -> Report:
    """Check a bowing of a lesson.

    Raises:
        DroppedError: the search was dropped.
    """
    if dropped.is_set():
        raise DroppedError
    return check_lesson(lesson, bowing)


class DroppedError(Exception):
    """Nobody waits for the answer any more."""
