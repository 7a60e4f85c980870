"""The file of the open lesson: what it looked like when we last saw it, who else has it open, and who changes it.

A thread looks at the file every now and then (a folder far away may keep it waiting); the window is told once for each
change. Size and time say whether to read the file again; its content alone says whether it has changed.
"""

from __future__ import annotations

from contextlib import suppress
from enum import Enum
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject, QTimer, Signal

from app.data_folder import data_folder
from app.document import Document
from app.hold import Hold, hold_on
from app.imprint import Imprint, imprint_of

if TYPE_CHECKING:
    from concurrent.futures import Future, ThreadPoolExecutor

LOOK_MS = 1000
LOOKS_UNTIL_GONE = 3  # programs that write a file anew may take it away for a moment
Trace = tuple[int, int] | None  # size and time of last change in nanoseconds; None for no file


class Change(Enum):
    """What happened to a file."""

    REWRITTEN = "rewritten"
    GONE = "gone"


class LessonFile(QObject):
    """Watches the lesson file of a document.

    Args:
        document: The document; where it has no lesson file there is nothing to watch.
        folder: Where the claims on open files of all windows stand; the user's own where None.

    Signals:
        changed: A ``Change``: another program or window has changed the file.
    """

    changed = Signal(object)

    def __init__(self, document: Document, folder: Path | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._folder = folder or data_folder() / "open"
        self._document = document
        self._path: Path | None = None
        self._known: Imprint | None = None
        self._told: Imprint | None = None  # the last content that the window was told of
        self._trace: Trace = None
        self._absences = 0
        self._hold: Hold | None = None
        self._thread: ThreadPoolExecutor | None = None
        self._look: Future[tuple[Trace, Imprint | None]] | None = None
        self._timer = QTimer(self, interval=LOOK_MS)
        self._timer.timeout.connect(self.look)
        document.path_changed.connect(self._on_path_changed)
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.end)

    @property
    def known(self) -> Imprint | None:
        """What the file looked like when the lesson was read from it or last saved in it."""
        return self._known

    @property
    def is_open_elsewhere(self) -> bool:
        """Whether another window had this file open before us, and still has."""
        return self._hold is not None and not self._hold.is_held

    def know(self, path: Path | None, known: Imprint | None) -> None:
        """The open lesson was just read from a file or saved in it, and this is what the file looked like."""
        self._on_path_changed(path)
        self._known = self._told = known
        self._trace = None
        self._absences = 0
        self._look = None  # what is being looked at now is from before

    def look(self) -> None:
        """Take what the last look has seen, and begin the next."""
        if self._path is None:
            return
        if self._hold is not None:
            with suppress(OSError):
                self._hold.take()  # the other window may have closed
        if self._look is not None and self._look.done():
            look, self._look = self._look, None
            with suppress(OSError):  # not to be reached now: neither changed nor gone
                self._take(*look.result())
        if self._look is None and self._path is not None:
            if self._thread is None:
                from concurrent.futures import ThreadPoolExecutor  # not for the start

                self._thread = ThreadPoolExecutor(1, "lesson file")
            self._look = self._thread.submit(_see, self._path, self._trace, self._told)

    def end(self) -> None:
        """The window closes."""
        self._timer.stop()
        self._path = None
        self._let_go()
        if self._thread is not None:
            self._thread.shutdown(wait=False, cancel_futures=True)
            self._thread = None

    def _take(self, trace: Trace, seen: Imprint | None) -> None:
        self._trace = trace
        if trace is None:
            self._absences += 1
            if self._absences == LOOKS_UNTIL_GONE:
                self.changed.emit(Change.GONE)
            return
        self._absences = 0
        if seen != self._told:
            self._told = seen
            if seen != self._known:
                self.changed.emit(Change.REWRITTEN)

    def _on_path_changed(self, path: Path | None) -> None:
        if path == self._path:
            return
        self._let_go()
        self._path = path
        self._known = self._told = None
        if path is None:
            self._timer.stop()
            return
        self._hold = hold_on(self._folder, path)
        with suppress(OSError):  # then nobody is told, and saving still asks
            self._hold.take()
        self._timer.start()

    def _let_go(self) -> None:
        if self._hold is not None:
            self._hold.let_go()
            self._hold = None


def _see(path: Path, before: Trace, told: Imprint | None) -> tuple[Trace, Imprint | None]:
    try:
        stat = path.stat()
    except FileNotFoundError:
        return None, None
    trace = stat.st_size, stat.st_mtime_ns
    return trace, told if trace == before else imprint_of(path)
