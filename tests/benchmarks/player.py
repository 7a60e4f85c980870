"""From the key to the first buffer of sound, in the real window; and how long a change waits while it plays.

Run by hand: ``python -m tests.benchmarks.player [TIMES]``. The device is one of our own that asks for a buffer as soon
as it is opened, so that what is measured ends where a real one would begin to sound. *Cold* is a process that has
played nothing (one measure each, in processes of their own, with and without the warming up that the window does while
nobody plays); *warm* is the same window, playing again after an edit, so that the notes are played out anew. Beside it,
in the same run: from choosing another bowing or speed to its first sample given out, and one tick of the follow mark.

Goal: 100 ms cold.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEventLoop, QIODevice, QObject, Qt, QTimer, Signal
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

import app.player_desk
import app.player_device
from app.main_window import MainWindow
from app.player_device import BUFFER_MS, Opened, Pull
from app.player_feed import Feed
from app.settings import Settings
from core.sound.track import SAMPLES_A_SECOND
from tests.benchmarks.click_to_paint import TUNE, milliseconds_since, report

COLD = "--cold"


class EagerSink:
    """Takes a buffer when it is started, and afterwards as time goes on."""

    def start(self, device: QIODevice) -> None:
        self.device = device
        self.taken = 0
        self.began = time.perf_counter()
        self.processedUSecs()

    def processedUSecs(self) -> int:
        elapsed = time.perf_counter() - self.began
        due = round((elapsed + BUFFER_MS / 1000) * SAMPLES_A_SECOND) - self.taken
        self.taken += len(bytes(self.device.read(4 * due))) // 4
        return min(round(elapsed * 1_000_000), self.taken * 1_000_000 // SAMPLES_A_SECOND)

    def stop(self) -> None:
        self.began = time.perf_counter()


class EagerDevices(QObject):
    """The one device."""

    changed = Signal()

    def open(self, feed: Feed) -> Opened:
        return Opened(EagerSink(), Pull(feed, lambda samples: samples.tobytes(), 4, self))


def open_window(folder: str, count_in: int) -> MainWindow:
    app.player_device.Devices = EagerDevices
    window = MainWindow(Settings(Path(folder) / "settings.ini"))
    window.resize(1280, 820)
    window.show()
    file = Path(folder) / "tune.abc"
    file.write_text(TUNE)
    window.open_path(file)
    window.page.setFocus()
    QTest.qWaitForWindowActive(window)
    window.playing.player.choose(count_in=count_in)
    return window


def wait_until(condition: Callable[[], object]) -> None:
    while not condition():  # asleep between events, as the window is: the thread has the interpreter to itself
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)


def first_buffer(window: MainWindow) -> tuple[float, float]:
    """Milliseconds until it is there, and of a processor, all threads together."""
    player = window.playing.player
    start, worked = time.perf_counter(), time.process_time()
    QTest.keyClick(window.page, Qt.Key.Key_F5)
    wait_until(lambda: player._feed.given and player.plays)
    taken = milliseconds_since(start), 1000 * (time.process_time() - worked)
    player.stop()
    QTest.qWait(20)
    player._feed.given = 0
    return taken


def cold(warmed_up: bool, count_in: int) -> None:
    """Print one measure of a process that has played nothing."""
    QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        window = open_window(folder, count_in)
        until = time.perf_counter() + (4 if warmed_up else 0.5)
        window.playing._warm.start(500 if warmed_up else 60_000)
        pulse = QTimer(interval=20)
        pulse.start()
        wait_until(lambda: time.perf_counter() > until)
        pulse.stop()
        print(*first_buffer(window))
        window.document.stack.setClean()
        window.close()


def report_both(name: str, measured: list[tuple[float, float]]) -> None:
    report(name, [taken for taken, _ in measured])
    report("    of a processor, all threads", [worked for _, worked in measured])


def main(times: int) -> None:
    for name, warmed_up, count_in in (
        ("cold, counted in", 0, 1),
        ("cold, at once", 0, 0),
        ("warmed up, counted in", 1, 1),
        ("warmed up, at once", 1, 0),
    ):
        call = [sys.executable, "-m", "tests.benchmarks.player", COLD, str(warmed_up), str(count_in)]
        runs = [subprocess.run(call, capture_output=True, text=True, check=True) for _ in range(max(times // 4, 3))]
        report_both(f"key to first buffer, {name}", [tuple(map(float, run.stdout.split()[-2:])) for run in runs])
    QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        window = open_window(folder, 1)
        player, document = window.playing.player, window.document
        first_buffer(window)
        warm = []
        for _ in range(times):
            window.page.toggle_slur()
            warm.append(first_buffer(window))
        report_both("key to first buffer, warm, edited", warm)
        window.bowings.copy()
        player.choose(loops=True)
        player.play()
        wait_until(lambda: player.moment is not None)
        for name, change in (
            ("bowing", lambda: document.show(1 - document.state.shown)),
            ("speed", lambda: player.choose(speed=170 - player.choice.speed if player.choice.speed != 100 else 80)),
        ):
            report(f"another {name} to its first sample", [_swapped(window, change) for _ in range(times)])
        ticks = []
        for _ in range(20 * times):
            start = time.perf_counter()
            player.tick()
            ticks.append(milliseconds_since(start))
        report("one tick of the follow mark", ticks)
        document.stack.setClean()
        window.close()


def _swapped(window: MainWindow, change: Callable[[], object]) -> float:
    player = window.playing.player
    before = player._feed.place.take
    start = time.perf_counter()
    change()
    wait_until(lambda: player._feed.place.take is not before)
    return milliseconds_since(start)


if __name__ == "__main__":
    if COLD in sys.argv:
        cold(bool(int(sys.argv[-2])), int(sys.argv[-1]))
    else:
        main(int(sys.argv[1]) if len(sys.argv) > 1 else 20)
