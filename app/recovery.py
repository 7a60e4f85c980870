"""Keeps a recovery copy of the open lesson while it is changed and not saved, and finds those that were left behind.

A copy is due once the hands have rested for a moment, and at the latest ``LATEST_MS`` after the first step that it
lacks; it is written elsewhere (``app.recovery_writer``), so that no click waits for it. It goes when the lesson is
saved, taken back to what is saved, or given up for another one; it stays when the program ends in any other way.
"""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from datetime import UTC, datetime
from functools import cached_property, partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QElapsedTimer, QObject, QTimer, Signal

from app.data_folder import data_folder
from app.document import Document, State
from app.hold import Hold
from app.imprint import Imprint
from app.recovery_copy import Left, Note, hold_of, left_behind, new_path, remove
from core.file_faults import why
from core.translation import tr
from core.values import dataclass

if TYPE_CHECKING:
    from concurrent.futures import Future, ThreadPoolExecutor

    from app.recovery_writer import RecoveryWriter

REST_MS = 700
LATEST_MS = 2000  # leaves three of five seconds for the writing on a busy machine
STAND_BY_MS = 200  # after the first edit the process that writes is started, so that it waits for the first copy
RETRY_MS = 5000  # after a copy that could not be written
LOOK_MS = 100


@dataclass(frozen=True)
class _Copy:
    path: Path
    hold: Hold


class Recovery(QObject):
    """The recovery copy of one window.

    Args:
        document: Whose lesson is kept.
        known: What the lesson's file looked like when it was read or written; asked whenever a copy is written.
        folder: Where the copies of all windows stand; the user's own where None.

    Signals:
        failed: One sentence: no copy could be written; once, until one is written again.
    """

    failed = Signal(str)

    def __init__(
        self,
        document: Document,
        known: Callable[[], Imprint | None] = lambda: None,
        folder: Path | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.folder = folder or data_folder() / "recovery"
        self._document = document
        self._known = known
        self._thread: ThreadPoolExecutor | None = None
        self._pending: list[Future[None]] = []
        self._copy: _Copy | None = None
        self._steps = 0
        self._edited = datetime.now(UTC)
        self._has_failed = False
        self._waits = QElapsedTimer()  # since the first step that the copy lacks
        self._due = QTimer(self, singleShot=True)
        self._due.timeout.connect(self.write_now)
        self._stand_by = QTimer(self, singleShot=True, interval=STAND_BY_MS)
        self._stand_by.timeout.connect(lambda: self._submit(self._writer.start))
        self._look = QTimer(self, interval=LOOK_MS)
        self._look.timeout.connect(self._take_answers)
        document.lesson_changed.connect(self._on_lesson_changed)
        document.modified_changed.connect(self._on_modified)
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.leave)

    @cached_property
    def _writer(self) -> RecoveryWriter:
        """Loaded for the first copy."""
        from app.recovery_writer import RecoveryWriter

        return RecoveryWriter()

    @property
    def path(self) -> Path | None:
        """The copy of the open lesson; None where it needs none, or has none yet."""
        return self._copy.path if self._copy is not None else None

    @property
    def waits(self) -> bool:
        """Whether a copy is due or being written."""
        return self._due.isActive() or bool(self._pending)

    # ------------------------------------------------------------------------------------------------- keeping

    def write_now(self) -> None:
        """Hand a copy of the lesson as it is now to the writer."""
        self._due.stop()
        self._waits.invalidate()
        state = self._document.state
        if state is None or not self._document.is_modified:
            return
        if self._copy is None:
            path = new_path(self.folder)
            self._copy = _Copy(path, hold_of(path))
        copy = self._copy
        note = Note(state.tune.title, self._edited, self._steps, self._document.path, self._known(), state.shown)

        def write() -> None:
            copy.hold.take()
            self._writer.write(copy.path, state.lesson, note)

        self._submit(write)

    def open_left(self, left: Left) -> None:
        """Open a lesson that was left behind, as a changed one; its copy becomes the copy of this window.

        Raises:
            ValueError: that copy could not be read.
        """
        if left.lesson is None:
            raise ValueError("there is no lesson in this copy")
        self._document.open(left.lesson, left.note.file, unsaved=True)
        self._drop_copy()  # one that was begun just now
        self._copy = _Copy(left.path, left.hold)
        self._steps = left.note.edits
        self._edited = left.note.edited
        self._document.show(min(left.note.shown, len(left.lesson.bowings) - 1))

    def left_behind(self) -> list[Left]:
        """Copies of windows that ended without saving (``app.recovery_copy.left_behind``)."""
        return left_behind(self.folder)

    def end(self) -> None:
        """The window closes, and the user has had a say: the copy goes."""
        self._drop_copy()
        self.leave()

    def leave(self) -> None:
        """The program ends and nobody was asked: what is changed is copied once more, and stays."""
        if self._due.isActive():
            self.write_now()
        self._stand_by.stop()
        self._look.stop()
        if self._thread is not None:
            self._thread.submit(self._writer.close)
            self._thread.shutdown(wait=True)
        self._thread, self._pending = None, []

    # ------------------------------------------------------------------------------------------------- following

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        if before is None or before.tune is not after.tune or before.lesson is after.lesson:
            return  # another lesson, or another bowing of it
        self._steps += 1
        self._edited = datetime.now(UTC)
        self._plan()  # the undo stack knows only later whether this is what is saved

    def _on_modified(self, modified: bool) -> None:
        if not modified:
            self._drop_copy()
            return
        self._stand_by.start()
        self._steps = min(self._steps, 1)  # what came before belongs to what is saved
        if not self._due.isActive():  # unsaved from the start
            self._edited = datetime.now(UTC)
            self._plan()

    def _plan(self) -> None:
        if not self._waits.isValid():
            self._waits.start()
        self._due.start(max(0, min(REST_MS, LATEST_MS - self._waits.elapsed())))

    def _drop_copy(self) -> None:
        self._stand_by.stop()
        self._due.stop()
        self._waits.invalidate()
        self._steps = 0
        if self._copy is not None:
            copy, self._copy = self._copy, None
            self._submit(partial(_remove, copy))  # behind what is still being written

    # ------------------------------------------------------------------------------------------------- in the thread

    def _submit(self, work: Callable[[], None]) -> None:
        if self._thread is None:
            from concurrent.futures import ThreadPoolExecutor  # not for the start

            self._thread = ThreadPoolExecutor(1, "recovery copies")
        self._pending.append(self._thread.submit(work))
        self._look.start()

    def _take_answers(self) -> None:
        done = [future for future in self._pending if future.done()]
        self._pending = [future for future in self._pending if not future.done()]
        for future in done:
            try:
                future.result()
            except Exception as fault:
                if self._document.is_modified and not self._due.isActive():
                    self._due.start(RETRY_MS)
                if not isinstance(fault, OSError):
                    raise  # a mistake of ours, told as one
                if not self._has_failed:
                    self._has_failed = True
                    self.failed.emit(
                        tr(
                            "No recovery copy of this lesson can be kept: {why}. Save it soon.",
                            why=why(fault, writing=True),
                        )
                    )
            else:
                self._has_failed = False
        if not self._pending:
            self._look.stop()


def _remove(copy: _Copy) -> None:
    with suppress(OSError):  # it stays, and is known for saved at the next start
        remove(copy.path, copy.hold)
