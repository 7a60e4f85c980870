"""From the key that carries a bowing on to the painted preview, in the real window on reels of 32 written bars.

Run by hand: ``python -m tests.benchmarks.carry_to_preview [TUNES]``. Each tune is made by lot (as for
``plan_to_preview``) and has slurs in its first four bars. It is opened, carried on in the style that comes with the
program, dropped, and planned on the beat; the clock runs from each command until the page is painted with the preview
on it. Both are measured on the same tunes in one run, so that on a busy machine their ratio still tells something.
Beside it: what the thread needs for the proposal.

Goal: a median of 150 ms for carrying on, after the first use.
"""

from __future__ import annotations

import os
import random
import sys
import tempfile
import time
from pathlib import Path
from statistics import median

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from immutabledict import immutabledict
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app import carrying
from app.main_window import MainWindow
from app.settings import Settings
from app.window import spare_pauses
from core.bowing import Join
from core.lesson import Lesson, edit_bowing
from core.reading import read_file
from tests.benchmarks.click_to_paint import Painted, milliseconds_since, report
from tests.benchmarks.plan_to_preview import Split, reel

GOAL_MS = 150
MARKED = 4


def begun(lot: random.Random) -> Lesson:
    """A reel by lot, the second and third note of every half bar slurred in its first bars."""
    lesson = read_file(reel(lot).encode()).lessons[0]
    joins = {
        bar.notes[place].id: Join.SLUR
        for bar in lesson.tune.bars[:MARKED]
        for place in (2, 5)
        if place < len(bar.notes)
    }
    return edit_bowing(lesson, 0, lambda _, bowing: bowing.__class__(bowing.name, immutabledict(joins)))


def time_preview(app: QApplication, window: MainWindow, painted: Painted, action: str) -> float:
    """Milliseconds from a command to its preview; the preview is dropped again."""
    painted.seen.clear()
    start = time.perf_counter()
    window.actions_by_name[action].trigger()
    while window.page.plan is None or not painted.seen:
        app.processEvents()
        if window.page.plan is None:
            painted.seen.clear()
    taken = milliseconds_since(start)
    while window.plan.works:
        app.processEvents()
    window.plan.drop()
    QTest.qWait(100)
    return taken


def main() -> None:
    tunes = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    app = QApplication.instance() or QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        window = MainWindow(Settings(Path(folder) / "settings.ini"))
        window.resize(1366, 768)
        window.show()
        window.document.open(begun(random.Random(0)))
        window.show_planner(True)
        QTest.qWait(300)
        spare_pauses()  # as the program does
        painted = Painted(window.page)
        first = time_preview(app, window, painted, "carry_on")
        time_preview(app, window, painted, "plan")
        split = Split()
        split.timed(carrying, "proposal_for", "  the proposal, in its thread")
        lot = random.Random(tunes)
        carried, planned = [], []
        for _ in range(tunes):
            window.document.open(begun(lot))
            while window.page.waits:
                app.processEvents()
            QTest.qWait(100)
            split.click()
            carried.append(time_preview(app, window, painted, "carry_on"))
            split.answered()
            window.document.open(begun(lot))  # another tune: what is known of one tune is kept with it
            while window.page.waits:
                app.processEvents()
            QTest.qWait(100)
            planned.append(time_preview(app, window, painted, "plan"))
        print(f"the very first, with all that is loaded for it: {first:.0f} ms")
        report("carrying on, to the painted preview", carried)
        for words, times in split.times.items():
            report(words, times)
        report("planning on the beat, to the painted preview", planned)
        print(f"carrying on takes {median(carried) / median(planned):.2f} times as long as planning (medians)")
        window.document.stack.setClean()
        window.close()
    print(f"goal: a median of {GOAL_MS} ms: {'met' if median(carried) <= GOAL_MS else 'MISSED'}")


if __name__ == "__main__":
    main()
