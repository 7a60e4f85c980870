"""From the click on "Work out" to the painted preview, in the real window on reels of 32 written bars.

Run by hand: ``python -m tests.benchmarks.plan_to_preview [TUNES]``. Each tune is made by lot, so that no line of it was
engraved and no bar of it planned before: two phrases that come again, every bar with notes of its own beside. It is
opened with separate bows, and the button is pressed with the mouse: once as a hand does, after the pointer has rested
on it for 60 ms (the planner uses that rest), once with no rest at all, as F9 does. The clock runs until the page is
painted with the plan on it, and the sentence with its three numbers stands in the pane. Beside it, from the clicks
without rest, the split: what is not listed is painting, and the wait for the window to take the answer; and what it
costs in the same run to let the engraver load and draw the whole tune, by which a busy machine is seen. Then the way
from one listed plan to the next by the arrow key.

The threads share one interpreter, so what the window does while the planner works counts as planning.

Goal: a median of 100 ms from the click to the preview.
"""

from __future__ import annotations

import os
import random
import sys
import tempfile
import time
from collections import defaultdict
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.main_window import MainWindow
from app.settings import Settings
from app.window import spare_pauses
from core import planner
from core.reading import read_file
from tests.benchmarks.click_to_paint import REST_MS, Painted, milliseconds_since, report, time_full_drawing

GOAL_MS = 100
STEPS = "DEFGABcdefgab"
RHYTHMS = ((2, 1, 1, 1, 1, 1, 1), (1,) * 8, (2, 1, 1, 2, 1, 1), (1, 1, 1, 1, 2, 1, 1), (3, 1, 1, 1, 1, 1))


def reel(lot: random.Random) -> str:
    """A reel of 32 bars by lot: AABA' CCDC', each phrase of four bars."""

    def bar() -> str:
        place, notes = lot.randrange(len(STEPS)), []
        for length in lot.choice(RHYTHMS):
            notes.append(STEPS[place] + (str(length) if length > 1 else ""))
            place = min(max(place + lot.choice((-3, -2, -1, 1, 2, 3)), 0), len(STEPS) - 1)
        return "".join(notes)

    phrases = [[bar() for _ in range(4)] for _ in range(4)]
    a, b, c, d = phrases
    order = (a, a, b, [*a[:3], bar()], c, c, d, [*c[:3], bar()])
    return "X:1\nT:By Lot\nR:reel\nM:4/4\nL:1/8\nK:D\n" + "|".join("|".join(phrase) for phrase in order) + "|]\n"


class Split:
    """Times what goes on under the click, by the functions in which it does."""

    def __init__(self) -> None:
        self._since: dict[str, list[float]] = defaultdict(list)
        self.times: dict[str, list[float]] = defaultdict(list)

    def click(self) -> None:
        """Count from here."""
        self._since.clear()

    def answered(self) -> None:
        """Keep the first time of each since the click."""
        for words, times in self._since.items():
            self.times[words].append(times[0])

    def timed(self, owner: object, name: str, words: str) -> None:
        """Time a function of a module or an object from now on."""
        function: Callable[..., object] = getattr(owner, name)

        def timing(*args: object, **others: object) -> object:
            start = time.perf_counter()
            try:
                return function(*args, **others)
            finally:
                self._since[words].append(milliseconds_since(start))

        setattr(owner, name, timing)


def time_plans(
    app: QApplication, window: MainWindow, tunes: int, split: Split, rest_ms: int
) -> tuple[list[float], list[float]]:
    """Milliseconds of each click, and of each step to another plan of the list."""
    lot = random.Random(tunes + rest_ms)
    painted = Painted(window.page)
    clicks, steps = [], []
    for _ in range(tunes):
        window.document.open(read_file(reel(lot).encode()).lessons[0])
        while window.page.waits:
            app.processEvents()
        QTest.qWait(100)
        window.page.setFocus()
        QTest.mouseMove(window.plan.form.keep, QPoint(3, 3))
        app.processEvents()
        if rest_ms:
            QTest.mouseMove(window.plan.work_button, window.plan.work_button.rect().center())
            QTest.qWait(rest_ms)
        split.click()
        painted.seen.clear()
        start = time.perf_counter()
        QTest.mouseClick(window.plan.work_button, Qt.MouseButton.LeftButton)
        while window.page.plan is None or not painted.seen:
            app.processEvents()
            if window.page.plan is None:
                painted.seen.clear()  # painted for something else, such as the pressed button
        clicks.append(milliseconds_since(start))
        split.answered()
        assert window.plan.results.sentence.text()
        while window.plan.works:
            app.processEvents()
        QTest.qWait(200)  # as a hand takes
        for _ in window.plan.plans[1:]:
            painted.seen.clear()
            start = time.perf_counter()
            QTest.keyClick(window.plan.results.list, Qt.Key.Key_Down)
            while not painted.seen:
                app.processEvents()
            steps.append(milliseconds_since(start))
        window.plan.drop()
    return clicks, steps


def main() -> None:
    tunes = int(sys.argv[1]) if len(sys.argv) > 1 else 60
    app = QApplication.instance() or QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        window = MainWindow(Settings(Path(folder) / "settings.ini"))
        window.resize(1366, 768)
        window.show()
        window.document.open(read_file(reel(random.Random(0)).encode()).lessons[0])
        window.show_planner(True)
        QTest.qWait(300)
        spare_pauses()  # as the program does
        time_plans(app, window, 3, Split(), 0)  # what is loaded with the first plan is loaded
        split = Split()
        split.timed(planner, "work_out_plan", "  planning, in its thread")
        split.timed(planner, "changes", "  words on what changes, in its thread")
        split.timed(window.page, "show_plan", "  checking, engraving and laying out")
        split.timed(window.document, "foresee", "    of that checking")
        rested, _ = time_plans(app, window, tunes, Split(), REST_MS)
        clicks, steps = time_plans(app, window, tunes, split, 0)
        report("click to painted preview, with a rest", rested)
        report("the same without any rest", clicks)
        for words, times in sorted(split.times.items(), reverse=True):
            report(words, times)
        report("from one plan of the list to the next", steps)
        report("the engraver alone, the whole tune anew", time_full_drawing(window, 10))
        window.document.stack.setClean()
        window.close()
    for how, times in (("with a rest", rested), ("without", clicks)):
        median = sorted(times)[len(times) // 2]
        print(f"goal {how}: a median of {GOAL_MS} ms: {'met' if median <= GOAL_MS else 'MISSED'}")


if __name__ == "__main__":
    main()
