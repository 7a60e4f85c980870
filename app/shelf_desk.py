"""Work at the shelf in threads of its own: finding and noting in one, scanning in another, while the window goes on.

Only values go into the threads and only values come out; no Qt object is touched there. Each thread has its own
connection to the catalogue. What the teacher says is done in the order said; of searches only the last is answered.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from datetime import UTC, datetime
from pathlib import Path
from threading import Event
from typing import TypeVar

from PySide6.QtCore import QCoreApplication, QObject, QTimer, Signal

from core.shelf.catalogue import Catalogue
from core.shelf.errors import GoneError, QueryError, ShelfError, UnusableShelfError
from core.shelf.paths import is_under, to_bytes
from core.shelf.query import Query
from core.shelf.rebuild import rebuild
from core.shelf.remarks import change_tags, note_opened, set_status
from core.shelf.scan import Progress, ScanReport, add_places, drop_place, places_of, scan
from core.shelf.search import Choices, Found, choices, count, find
from core.values import dataclass

T = TypeVar("T")

LOOK_MS = 10
PROGRESS_MS = 100
MOST_FOUND = 1000  # rows of the list: more than anybody reads
TURN_S = 0.001  # a scanning thread hands over to the window after this long; Python's own 5 ms can be seen


@dataclass(frozen=True)
class Stock:
    """What is on the shelf.

    Attributes:
        places: Folders and files that were put on it.
        tunes: How many there are.
        choices: What they can be filtered by.
    """

    places: tuple[Path, ...]
    tunes: int
    choices: Choices


class ShelfDesk(QObject):
    """Asks the catalogue, and tells when it has answered. Threads and catalogue are made at the first question.

    Args:
        path: The catalogue.

    Signals:
        found: (``Query``, ``Found``) of the last search.
        refused: Why the last search makes no sense: one sentence.
        stock_changed: The ``Stock``, after a scan or a change of places.
        scan_moved: ``Progress`` of the scan that runs.
        scanned: ``ScanReport`` of the scan that ended.
        failed: (sentence, whether the catalogue has to be built anew).
    """

    found = Signal(object, object)
    refused = Signal(str)
    stock_changed = Signal(object)
    scan_moved = Signal(object)
    scanned = Signal(object)
    failed = Signal(str, bool)

    def __init__(self, path: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.path = path
        self._desk: ThreadPoolExecutor | None = None
        self._scanner: ThreadPoolExecutor | None = None
        self._catalogue: Catalogue | None = None  # of the desk's thread
        self._wanted: Query | None = None
        self._pending: list[tuple[Future[object], Callable[[object], None]]] = []
        self._stop = Event()
        self._scans = 0
        self._progress = Progress(0, 0)
        self._look = QTimer(self, interval=LOOK_MS)
        self._look.timeout.connect(self._take)
        self._watch = QTimer(self, interval=PROGRESS_MS)
        self._watch.timeout.connect(lambda: self.scan_moved.emit(self._progress))
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.close)

    @property
    def searches(self) -> bool:
        """Whether the last search is still to be answered."""
        return self._wanted is not None

    @property
    def waits(self) -> bool:
        """Whether any answer is to come, that of a scan too."""
        return bool(self._pending)

    @property
    def scans(self) -> bool:
        """Whether a scan runs or is to come."""
        return self._scans > 0

    # ------------------------------------------------------------------------------------------------- asking

    def find(self, query: Query) -> None:
        """Look for tunes; an earlier search that was not answered yet never is."""
        self._wanted = query

        def work(catalogue: Catalogue) -> Found | None:
            return find(catalogue, query, MOST_FOUND) if query is self._wanted else None

        def told(found: Found | None) -> None:
            if found is not None and query is self._wanted:
                self._wanted = None
                self.found.emit(query, found)

        self._at_desk(work, told)

    def ask_stock(self) -> None:
        """Ask what is on the shelf."""
        self._at_desk(_stock, self.stock_changed.emit)

    # ------------------------------------------------------------------------------------------------- saying

    def set_status(self, tune: int, status: str) -> None:
        """Give a tune a status."""
        self._at_desk(lambda catalogue: set_status(catalogue, tune, status))

    def change_tags(self, tune: int, add: Sequence[str], remove: Sequence[str]) -> None:
        """Put tags on a tune and take others off."""
        self._at_desk(lambda catalogue: change_tags(catalogue, tune, add, remove))

    def note_opened(self, path: Path, position: int) -> None:
        """Note that the tune at this place of a file (from 0) was opened now; nothing where there is no shelf."""
        if self.path.exists():
            now = datetime.now(UTC)
            self._at_desk(lambda catalogue: note_opened(catalogue, path, position, now))

    # ------------------------------------------------------------------------------------------------- places

    def add_places(self, places: Sequence[Path]) -> None:
        """Put folders or files on the shelf and read them."""
        self._at_desk(lambda catalogue: add_places(catalogue, places), lambda _: self.scan(places))

    def drop_place(self, place: Path) -> None:
        """Take a folder or file off the shelf."""
        self._at_desk(lambda catalogue: drop_place(catalogue, place), lambda _: self.ask_stock())

    def rebuild(self) -> None:
        """Set the catalogue aside, begin a new one and read all places again."""

        def work() -> object:
            if self._catalogue is not None:
                self._catalogue.close()
                self._catalogue = None
            return rebuild(self.path)

        self._stop.set()
        self._submit(self._desk_threads(), work, lambda _: self.scan())

    def scan(self, places: Sequence[Path] | None = None) -> None:
        """Look through these places, or all, for what is new; scans wait for one another."""
        if self._scanner is None:
            self._scanner = ThreadPoolExecutor(1, "shelf scan")
        if not self._scans:
            self._stop = Event()
            self._progress = Progress(0, 0)
            self._watch.start()
        self._scans += 1
        self._submit(self._scanner, lambda stop=self._stop: self._scan(places, stop), self._on_scanned)

    def read_again(self, path: Path) -> None:
        """Read one file that was just saved, if it belongs on the shelf."""
        if not self.path.exists():
            return

        def told(places: tuple[Path, ...]) -> None:
            if any(is_under(to_bytes(path), to_bytes(place)) for place in places):
                self.scan([path])

        self._at_desk(places_of, told)

    def stop_scan(self) -> None:
        """Let the scan that runs, and those that wait, end at the next file."""
        self._stop.set()

    def close(self) -> None:
        """End what runs: notes are written first, a scan ends at its next file."""
        self._stop.set()
        self._wanted = None
        self._look.stop()
        self._watch.stop()
        if self._desk is not None:
            self._desk.submit(self._close_catalogue)
            self._desk.shutdown(wait=True)
        if self._scanner is not None:
            self._scanner.shutdown(wait=True)
        self._desk = self._scanner = None
        self._pending, self._scans = [], 0

    # ------------------------------------------------------------------------------------------------- in the threads

    def _at_desk(self, work: Callable[[Catalogue], T], told: Callable[[T], object] = lambda _: None) -> None:
        def with_catalogue() -> T:
            if self._catalogue is None:
                self._catalogue = Catalogue(self.path)
            return work(self._catalogue)

        self._submit(self._desk_threads(), with_catalogue, told)

    def _scan(self, places: Sequence[Path] | None, stop: Event) -> ScanReport:
        def watch(progress: Progress) -> None:
            self._progress = progress

        before = sys.getswitchinterval()
        sys.setswitchinterval(TURN_S)
        try:
            with Catalogue(self.path) as catalogue:
                return scan(catalogue, places, watch=watch, stopped=stop.is_set)
        finally:
            sys.setswitchinterval(before)

    def _close_catalogue(self) -> None:
        if self._catalogue is not None:
            self._catalogue.close()
            self._catalogue = None

    # ------------------------------------------------------------------------------------------------- answers

    def _desk_threads(self) -> ThreadPoolExecutor:
        if self._desk is None:
            self._desk = ThreadPoolExecutor(1, "shelf desk")
        return self._desk

    def _submit(self, threads: ThreadPoolExecutor, work: Callable[[], T], told: Callable[[T], object]) -> None:
        self._pending.append((threads.submit(work), told))
        self._look.start()

    def _take(self) -> None:
        done = [(future, told) for future, told in self._pending if future.done()]
        self._pending = [(future, told) for future, told in self._pending if not future.done()]
        for future, told in done:
            try:
                answer = future.result()
            except QueryError as refusal:
                self._wanted = None
                self.refused.emit(str(refusal))
            except GoneError as refusal:
                self.failed.emit(str(refusal), False)
            except ShelfError as fault:
                self._wanted = None
                if told == self._on_scanned:
                    self._end_scan()
                self.failed.emit(str(fault), isinstance(fault, UnusableShelfError))
            else:
                told(answer)
        if not self._pending:
            self._look.stop()

    def _on_scanned(self, report: ScanReport) -> None:
        self._end_scan()
        self.scanned.emit(report)
        self.ask_stock()

    def _end_scan(self) -> None:
        self._scans -= 1
        if not self._scans:
            self._watch.stop()


def _stock(catalogue: Catalogue) -> Stock:
    return Stock(places_of(catalogue), count(catalogue), choices(catalogue))
