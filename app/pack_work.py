"""A packing in a thread of its own, while the window goes on; only values go in and come out."""

from __future__ import annotations

from concurrent.futures import Future, ThreadPoolExecutor
from pathlib import Path
from threading import Event

from PySide6.QtCore import QCoreApplication, QObject, QTimer, Signal

from app.pack_folder import PackFolderError
from app.pack_run import PackReport, Progress, make_pack
from app.pack_sources import Source, find_sources
from app.pack_workers import usual_jobs
from core.file_faults import why
from core.pack.kinds import Kind
from core.translation import tr
from core.values import dataclass

LOOK_MS = 50


@dataclass(frozen=True, slots=True)
class PackWish:
    """What is to be packed.

    Attributes:
        places: Files and folders.
        given: Sources that are in no file as they are wanted.
        out: Folder of the pack.
        kinds: What is made of each lesson.
    """

    places: tuple[Path, ...]
    given: tuple[Source, ...]
    out: Path
    kinds: frozenset[Kind]


class PackWork(QObject):
    """Makes packs, one at a time.

    Signals:
        moved: ``Progress``, some times a second at most.
        ended: The ``PackReport``, and the lines of what is not in the pack.
        failed: Why nothing was packed: one sentence.
    """

    moved = Signal(object)
    ended = Signal(object, object)
    failed = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._threads: ThreadPoolExecutor | None = None
        self._future: Future[tuple[PackReport, list[str]]] | None = None
        self._stop = Event()
        self._progress: Progress | None = None
        self._look = QTimer(self, interval=LOOK_MS)
        self._look.timeout.connect(self._take)
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.close)

    @property
    def is_busy(self) -> bool:
        return self._future is not None

    def start(self, wish: PackWish) -> None:
        """Make a pack; nothing where one is being made."""
        if self._future is not None:
            return
        if self._threads is None:
            self._threads = ThreadPoolExecutor(1, "pack")
        self._stop = Event()
        self._future = self._threads.submit(self._work, wish, self._stop)
        self._look.start()

    def stop(self) -> None:
        """Stop soon; what is made stands."""
        self._stop.set()

    def close(self) -> None:
        """Stop and wait for the end, which nobody is told of."""
        self._stop.set()
        self._look.stop()
        self._future = None
        if self._threads is not None:
            self._threads.shutdown(wait=True)
            self._threads = None

    def _work(self, wish: PackWish, stop: Event) -> tuple[PackReport, list[str]]:
        found = find_sources(wish.places, wish.given)
        if not found.sources:
            raise PackFolderError(" ".join([*found.problems, tr("There is no lesson and no tune book to pack.")]))

        def watch(progress: Progress) -> None:
            self._progress = progress

        report = make_pack(found, wish.out, wish.kinds, spare_jobs(), watch, stop.is_set)
        return report, [*found.problems, *map(str, report.problems)]

    def _take(self) -> None:
        progress, self._progress = self._progress, None
        if progress is not None:
            self.moved.emit(progress)
        if self._future is None or not self._future.done():
            return
        future, self._future = self._future, None
        self._look.stop()
        try:
            report, problems = future.result()
        except PackFolderError as fault:
            self.failed.emit(str(fault))
        except OSError as fault:
            self.failed.emit(tr("The pack cannot be written: {reason}.", reason=why(fault, writing=True)))
        else:
            self.ended.emit(report, problems)


def spare_jobs() -> int:
    """Processes that leave the window a processor."""
    return max(1, usual_jobs() - 1)
