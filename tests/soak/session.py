"""A session of chapters: a lesson is opened, worked on by lot, undone to its beginning and redone to its end.

Between chapters the window is brought to rest with the same lesson on the page, and the process is examined: what
differs then has been gathered.
"""

from __future__ import annotations

import faulthandler
import random
import shutil
import sys
import threading
import time
import traceback
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QCoreApplication, QEvent, QtMsgType, qInstallMessageHandler
from PySide6.QtWidgets import QApplication

from app import player_device
from app.main_window import MainWindow
from app.samples import sample_files
from app.settings import Look, Settings
from core.lesson import Lesson
from tests.soak.answers import Answers
from tests.soak.hands import Hands
from tests.soak.health import Health, examine, objects

PAUSE_S = 0.03
PATIENCE_S = 20.0
USUAL = ("This plugin does not support",)  # what Qt says of a screen that is none


class Session:
    """A window and somebody's hands.

    Args:
        seed: Of all that is drawn by lot.
        folder: For settings, recovery copies, the shelf, and all that is saved; ``XDG_DATA_HOME`` is to lie in it.
        hangs_s: Ends the process and shows where it stands if one gesture takes longer than this; never where None.

    Attributes:
        faults: What went wrong, in words, with its traceback.
        history: How the process was after each chapter.
        undoable: Steps that could be undone at the end of the last chapter, and objects that were held for them alone.
        gestures: Done so far.
    """

    def __init__(self, seed: int, folder: Path, hangs_s: float | None = None) -> None:
        self._hangs_s = hangs_s
        self._lot = random.Random(seed)
        self.faults: list[str] = []
        self.history: list[Health] = []
        self.gestures = 0
        self.undoable = (0, 0)
        self._restore: list[Callable[[], object]] = []
        try:
            self._begin(folder)
        except BaseException:
            self._leave()
            raise

    def _begin(self, folder: Path) -> None:
        self._watch()
        self._silence()
        samples = folder / "tunes"
        samples.mkdir()
        for path in sample_files():
            shutil.copy(path, samples)
        self._lessons = sorted(samples.iterdir())
        settings = Settings(folder / "settings.ini")
        settings.look = Look.LIGHT
        settings.folder = folder
        self._answers = Answers(self._lot, folder, self.wait)
        self.window = MainWindow(settings, self._answers)
        self.window.resize(1200, 760)
        self.window.show()
        self._hands = Hands(self.window, self._lot, self.wait)
        self.window.shelf.add_places([samples])

    def _watch(self) -> None:
        """Hear of every exception, wherever it is raised, and of what Qt complains about."""
        sys_hook, thread_hook, unraisable_hook = sys.excepthook, threading.excepthook, sys.unraisablehook

        def on_error(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
            self._tell("".join(traceback.format_exception(kind, error, trace)))

        def on_message(kind: QtMsgType, context: object, text: str) -> None:
            if kind is not QtMsgType.QtDebugMsg and not text.startswith(USUAL):
                self._tell(f"Qt: {text}")

        sys.excepthook = on_error
        threading.excepthook = lambda told: on_error(told.exc_type, told.exc_value, told.exc_traceback)
        sys.unraisablehook = lambda told: on_error(told.exc_type, told.exc_value, told.exc_traceback)
        before = qInstallMessageHandler(on_message)
        self._restore += [
            lambda: setattr(sys, "excepthook", sys_hook),
            lambda: setattr(threading, "excepthook", thread_hook),
            lambda: setattr(sys, "unraisablehook", unraisable_hook),
            lambda: qInstallMessageHandler(before),
        ]

    def _silence(self) -> None:
        """Play through the clock that is silent, whatever sound devices there are."""
        opens = player_device.Devices.open

        def refuse(devices: object, feed: object) -> player_device.Opened:
            raise player_device.NoSoundError("The tune is played in silence.")

        player_device.Devices.open = refuse
        self._restore.append(lambda: setattr(player_device.Devices, "open", opens))

    def _tell(self, text: str) -> None:
        last = self._hands.last if hasattr(self, "_hands") else "start"
        self.faults.append(f"after gesture {self.gestures} ({last}): {text}")
        print(self.faults[-1], file=sys.stderr, flush=True)

    # ------------------------------------------------------------------------------------------------- time

    def wait(self, condition: Callable[[], bool]) -> None:
        """Handle events until a condition holds, but no longer than a pause; for a pause where it never does."""
        end = time.monotonic() + PAUSE_S
        while time.monotonic() < end and not condition():
            self._handle_events()
            time.sleep(0.001)

    def wait_for(self, condition: Callable[[], bool], what: str) -> None:
        """Handle events until a condition holds; a fault where that takes too long."""
        end = time.monotonic() + PATIENCE_S
        while not condition():
            self._handle_events()
            time.sleep(0.001)
            if time.monotonic() > end:
                self._tell(f"waited {PATIENCE_S:.0f} s in vain: {what}")
                return

    def _handle_events(self) -> None:
        try:
            QApplication.processEvents()
        except Exception:  # from a method of ours that Qt called
            self._tell(traceback.format_exc())

    # ------------------------------------------------------------------------------------------------- chapters

    def chapter(self, gestures: int) -> None:
        """Open a tune, work on it, undo all and redo all; then see what the undo stack has held, and empty it."""
        self._open(self._lot.choice(self._lessons))
        for place in range(gestures):
            if self._hangs_s is not None:
                faulthandler.dump_traceback_later(self._hangs_s, exit=True)
            try:
                self._hands.do_something()
            except Exception:
                self._tell(traceback.format_exc())
            self.gestures += 1
            if place % 4 == 0:
                self._handle_events()
        faulthandler.cancel_dump_traceback_later()
        self._calm()
        self._undo_and_redo()
        self._weigh_steps()

    def use_everything(self) -> None:
        """Do once all that can be done, so that what stays after its first use is there before anything is weighed."""
        self._open(self._lessons[0])
        self._answers.goes_through = True
        try:
            self._hands.do_everything(self.wait_for)
        except Exception:
            self._tell(traceback.format_exc())
        self._answers.goes_through = False
        self._calm()
        self._undo_and_redo()

    def _open(self, path: Path) -> None:
        if not self.window.open_path(path):
            self._tell(f"{path.name} was not opened")
        self._first = self._lesson

    @property
    def _lesson(self) -> Lesson:
        state = self.window.document.state
        assert state is not None
        return state.lesson

    def _calm(self) -> None:
        """Leave off all that still goes on."""
        window = self.window
        window.actions_by_name["plan_drop"].trigger()
        if window.playing.player.plays:
            window.actions_by_name["play"].trigger()
        if window.comparison.runs:
            window.actions_by_name["compare"].trigger()
        if window.set_window is not None:
            window.set_window.hide()
        window.shelf.hide()
        self.wait_for(lambda: not window.page.waits, "the page")
        self.wait_for(lambda: not window.shelf.pane.desk.searches and not window.shelf.pane.desk.scans, "the shelf")

    def _undo_and_redo(self) -> None:
        stack, end = self.window.document.stack, self._lesson
        steps = stack.index()
        stack.setIndex(0)
        if self._lesson != self._first:
            self._tell("undo all does not give the first lesson")
        stack.setIndex(steps)
        if self._lesson != end:
            self._tell("redo all does not give the last lesson")

    def _weigh_steps(self) -> None:
        """Let the undo steps go, and count what goes with them."""
        stack = self.window.document.stack
        steps, before = stack.count(), objects()
        stack.setClean()
        stack.clear()
        self.undoable = steps, before - objects()

    def look(self) -> Health:
        """Come to rest with the same lesson as ever and examine the process."""
        self._open(self._lessons[0])
        self._calm()
        if self.window.set_window is not None:
            while self.window.sets.state.tunes:
                self.window.sets.remove(0)
        for _ in range(20):
            self.wait(lambda: False)
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        self.history.append(examine(self.gestures))
        return self.history[-1]

    def end(self) -> None:
        """Close the window."""
        self.window.document.stack.setClean()
        self.window.close()
        self.window.deleteLater()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        self._leave()

    def _leave(self) -> None:
        for restore in reversed(self._restore):
            restore()
