"""Whatever two busy hands do, nothing breaks, and undo leads back to where they began."""

from __future__ import annotations

import random

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.accent_strip import onset
from app.main_window import MainWindow
from app.samples import sample_files
from core.differences import differences
from core.lesson_check import check_lesson
from core.reach import ReachSettings
from core.strings import TUNINGS
from core.strokes import work_out

LEFT = Qt.MouseButton.LeftButton
KEYS = [
    Qt.Key.Key_Right, Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End,
    Qt.Key.Key_Space, Qt.Key.Key_H, Qt.Key.Key_S, Qt.Key.Key_T, Qt.Key.Key_D, Qt.Key.Key_U, Qt.Key.Key_F,
    Qt.Key.Key_R, Qt.Key.Key_0, Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_Escape, Qt.Key.Key_F8,
    Qt.Key.Key_A, Qt.Key.Key_C, Qt.Key.Key_L, Qt.Key.Key_N, Qt.Key.Key_B,
]  # fmt: skip
HELD = [Qt.KeyboardModifier.NoModifier] * 3 + [Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier]
ACTIONS = [
    "undo", "redo", "bowing_add", "bowing_copy", "bowing_up", "bowing_down", "bowing_delete", "bowing_next", "mend",
    "tell_as_note", "tell_not", "tell_all", "bow_and_fiddle", "trace",
    "zoom_in", "zoom_out", "zoom_fit", "marks_every", "marks_bars", "marks_needed", "look_dark", "look_light",
    "compare", "compare", "compare_reference", "bowing_previous",
    "strip", "plan_bar_none", "plan_phrase_by-phrase", "plan_part_backbeat", "plan_tune_drawn",
]  # fmt: skip


class BusyHands:
    """Random gestures on a window, by a seed."""

    def __init__(self, window: MainWindow, seed: int) -> None:
        self._window = window
        self._page = window.page
        self._lot = random.Random(seed)

    def do_something(self) -> None:
        self._lot.choice([self._click, self._click, self._drag, self._key, self._key, self._act, self._choose])()

    def _somewhere(self) -> QPoint:
        tune = self._window.document.state.tune
        note = self._lot.choice([note.id for note in tune.sequence if not note.hidden])
        row = self._lot.randrange(len(self._page.rows))
        if self._lot.random() < 0.4 and note in self._page.rows[row].signs:
            return self._page.sign_point(note, row)
        if self._lot.random() < 0.2 and self._window.actions_by_name["strip"].isChecked():
            return self._page.strip_point(onset(tune, note), row)
        if self._lot.random() < 0.1 and self._page.rows[row].differences:
            return self._page.difference_point(note, row)
        return self._page.head_point(note, row) + QPoint(self._lot.randint(-9, 9), self._lot.randint(-9, 9))

    def _click(self) -> None:
        place = self._somewhere()
        QTest.mouseMove(self._page, place)
        QTest.mouseClick(self._page, LEFT, self._lot.choice(HELD), place)

    def _drag(self) -> None:
        QTest.mousePress(self._page, LEFT, pos=self._somewhere())
        for _ in range(self._lot.randint(1, 4)):
            QTest.mouseMove(self._page, self._somewhere())
        QTest.mouseRelease(self._page, LEFT, pos=self._somewhere())

    def _key(self) -> None:
        self._page.setFocus()
        QTest.keyClick(self._page, self._lot.choice(KEYS), self._lot.choice(HELD[:4]))

    def _act(self) -> None:
        self._window.actions_by_name[self._lot.choice(ACTIONS)].trigger()

    def _choose(self) -> None:
        rows = self._window.side_list.model.rowCount()
        if rows:
            self._window.side_list.choose(self._lot.randrange(rows))


@pytest.mark.parametrize("path", sample_files()[::3], ids=lambda path: path.stem)
def test_two_busy_hands_break_nothing_and_undo_leads_back(qtbot, window, dialogs, path):
    dialogs.answers |= {"tune_of_book": 0, "bow_and_fiddle": (ReachSettings(hair_cm=30), TUNINGS["high bass"])}
    window.open_sample(path)
    document = window.document
    start = document.state.lesson
    hands = BusyHands(window, seed=len(path.stem))
    for step in range(60):
        hands.do_something()
        if step % 5 == 0:
            QApplication.processEvents()
    state, end = document.state, document.state.lesson
    fresh = check_lesson(state.lesson, state.bowing)
    if not window.comparison.runs:
        assert window.side_list.totals.totals == fresh.totals
    assert window.side_list.model.findings == fresh.findings
    assert set(window.page.signs) <= set(state.tune.places)
    steps_done = document.stack.index()
    document.stack.setIndex(0)
    assert document.state.lesson == start
    document.stack.setIndex(steps_done)
    assert document.state.lesson == end


@pytest.mark.parametrize("seed", range(3))
def test_two_busy_hands_while_bowings_are_compared(qtbot, window, dialogs, seed):
    dialogs.answers |= {"bow_and_fiddle": (ReachSettings(hair_cm=30), TUNINGS["high bass"])}
    window.open_sample(next(path for path in sample_files() if path.suffix == ".musicxml"))
    document, page = window.document, window.page
    start = document.state.lesson
    window.comparison.start()
    hands = BusyHands(window, seed)
    for step in range(50):
        hands.do_something()
        if step % 5 == 0:
            QApplication.processEvents()
    state = document.state
    shown = [state.lesson.bowings[place] for place in window.comparison.places]
    assert [row.here.bowing for row in page.rows] == shown
    assert page.rows[page.active].here.bowing is state.bowing
    reference = window.comparison.reference
    for row in page.rows:
        fresh = check_lesson(state.lesson, row.here.bowing)
        assert row.here.strokes.bows == fresh.strokes.bows
        if reference is not None:
            other = state.lesson.bowings[reference]
            apart = differences(state.tune, row.here.bowing, fresh.strokes, other, work_out(state.tune, other))
            assert row.differences == apart
            assert window.side_list.table.totals.figures[row.name][0] == str(fresh.totals.strokes)
    steps_done, end = document.stack.index(), state.lesson
    document.stack.setIndex(0)
    assert document.state.lesson == start
    document.stack.setIndex(steps_done)
    assert document.state.lesson == end
