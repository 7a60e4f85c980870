"""From the mouse press to the painted page and table, in the real window with 4 bowings of 32 bars under one another.

Run by hand: ``python -m tests.benchmarks.compare_edit [CLICKS]``. Clicks slur or separate a note drawn by lot among
those in sight, as in ``click_to_paint``; the pointer rests on the note for 60 ms before the press. The clock runs from
before the press until the page and the totals are painted: with one bowing on the page; with four, always on the one
that is worked on; with four, on one drawn by lot, so that most clicks also change the one worked on; and on the
reference, from which the three others are then told anew. Under each the same in processor time, which a busy machine
changes less, and its split: what is not listed is Qt's, and painting of panes.

Goal: 95 of 100 clicks within one frame at 60 Hz (16.7 ms).
"""

from __future__ import annotations

import os
import random
import sys
import tempfile
import time
from collections import defaultdict
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app import page_notes
from app.document import Document
from app.engraved_page import EngravedPage
from app.main_window import MainWindow
from app.page_canvas import PageCanvas
from app.settings import Settings
from app.side_list import SideList
from app.window import spare_pauses
from core.bowing import Join, can_join
from core.lesson import Lesson
from core.reading import read_file
from tests.benchmarks.click_to_paint import FRAME_MS, REST_MS, TUNE, Painted, milliseconds_since, report

NAMES = ("Separate", "Pairs", "Shuffled", "By lot")


class Split:
    """Adds up the time spent in some functions; the innermost that is counted has it."""

    def __init__(self) -> None:
        self.spent: defaultdict[str, float] = defaultdict(float)
        self._open: list[list[float]] = []

    def watch(self, owner: object, name: str, called: str) -> None:
        plain: Callable[..., object] = getattr(owner, name)

        def timed(*args: object, **kwargs: object) -> object:
            inner = [0.0]
            self._open.append(inner)
            start = time.thread_time()
            try:
                return plain(*args, **kwargs)
            finally:
                took = 1000 * (time.thread_time() - start)
                self._open.pop()
                self.spent[called] += took - inner[0]
                if self._open:
                    self._open[-1][0] += took

        setattr(owner, name, timed)


def four_bowings() -> Lesson:
    lesson = read_file(TUNE.encode()).lessons[0]
    tune, lot = lesson.tune, random.Random(4)
    choices: tuple[Callable[[int], bool], ...] = (
        lambda place: False,
        lambda place: place % 2 == 1,
        lambda place: place % 4 == 2,
        lambda place: lot.random() < 0.3,
    )
    bowings = []
    for name, chosen in zip(NAMES, choices, strict=True):
        joined = [note.id for place, note in enumerate(tune.sequence) if chosen(place) and can_join(tune, note.id)]
        bowing = lesson.bowings[0]
        bowings.append(replace(bowing, name=name, joins=bowing.joins.update(dict.fromkeys(joined, Join.SLUR))))
    return replace(lesson, bowings=tuple(bowings))


def places_in_sight(window: MainWindow, rows: tuple[int, ...]) -> list[tuple[int, QPoint]]:
    page = window.page
    seen = page.visibleRegion().boundingRect()
    notes = [note.id for bar in page.rows[0].here.tune.bars for note in bar.notes[:-1]]
    found = [(row, page.head_point(note, row)) for row in rows for note in notes]
    return [(row, place) for row, place in found if seen.contains(place)]


def time_clicks(
    app: QApplication, window: MainWindow, split: Split, clicks: int, rows: tuple[int, ...] | None
) -> list[float]:
    """Click notes of these rows, or of the one worked on where None."""
    page, lot, times, work = window.page, random.Random(clicks), [], []
    window.document.show(rows[0] if rows is not None else 0)
    page.focus_on("b2n1")
    page.focus_on("b1n1")  # in sight
    window.area.verticalScrollBar().setValue(0)
    app.processEvents()
    totals = window.side_list.table if window.comparison.runs else window.side_list.totals
    painted = Painted(page, totals.viewport() if window.comparison.runs else totals)
    split.spent.clear()
    spent: defaultdict[str, float] = defaultdict(float)
    for _ in range(clicks):
        row, place = lot.choice(places_in_sight(window, rows if rows is not None else (page.active,)))
        QTest.mouseMove(page, place)
        app.processEvents()
        QTest.qWait(REST_MS)
        count = window.document.stack.count()
        painted.seen.clear()
        split.spent.clear()
        start, worked = time.perf_counter(), time.thread_time()
        QTest.mousePress(page, Qt.MouseButton.LeftButton, pos=place)
        QTest.mouseRelease(page, Qt.MouseButton.LeftButton, pos=place)
        app.processEvents()
        times.append(milliseconds_since(start))
        work.append(1000 * (time.thread_time() - worked))
        for called, took in split.spent.items():
            spent[called] += took
        assert window.document.stack.count() == count + 1, "a click that changed nothing measures nothing"
        assert window.document.state.shown == page.rows[row].place
        assert page in painted.seen
        while page.waits:
            app.processEvents()
    report("   in processor time", work)
    print("   " + ", ".join(f"{called} {took / clicks:.1f}" for called, took in sorted(spent.items())) + " ms a click")
    return times


def main() -> None:
    clicks = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    app = QApplication.instance() or QApplication([])
    split = Split()
    split.watch(Document, "_report_on", "check")
    split.watch(page_notes, "make_rows", "signs and differences")
    split.watch(EngravedPage, "engrave", "engraving")
    split.watch(PageCanvas, "paintEvent", "painting the page")
    split.watch(SideList, "_on_lesson_changed", "side list")
    with tempfile.TemporaryDirectory() as folder:
        window = MainWindow(Settings(Path(folder) / "settings.ini"))
        window.resize(1366, 768)
        window.show()
        window.document.open(four_bowings())
        QTest.qWait(300)
        spare_pauses()  # as the program does
        one = report("one bowing on the page", time_clicks(app, window, split, clicks, None))
        window.comparison.start()
        window.area.fit_width()
        QTest.qWait(300)
        window.document.show(1)
        QTest.qWait(300)
        worked = report("four bowings, the one worked on", time_clicks(app, window, split, clicks, (1,)))
        by_lot = report("four bowings, one of them by lot", time_clicks(app, window, split, clicks, (0, 1, 2, 3)))
        reference = report("four bowings, the reference", time_clicks(app, window, split, clicks, (0,)))
        window.document.stack.setClean()
        window.close()
    for how, slow in (("worked on", worked), ("by lot", by_lot), ("the reference", reference)):
        verdict = "met" if slow <= FRAME_MS else "MISSED"
        print(f"goal, {how}: p95 within {FRAME_MS:.1f} ms: {verdict}; {slow / one:.2f} of one bowing")


if __name__ == "__main__":
    main()
