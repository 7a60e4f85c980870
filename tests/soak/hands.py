"""Two hands that do by lot whatever can be done in the window, from a table of gestures."""

from __future__ import annotations

import random
from collections.abc import Callable

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from app.accent_strip import onset
from app.main_window import MainWindow

LEFT = Qt.MouseButton.LeftButton
HELD = [Qt.KeyboardModifier.NoModifier] * 3 + [Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier]
KEYS = [
    Qt.Key.Key_Right, Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End,
    Qt.Key.Key_Space, Qt.Key.Key_H, Qt.Key.Key_S, Qt.Key.Key_T, Qt.Key.Key_D, Qt.Key.Key_U, Qt.Key.Key_F,
    Qt.Key.Key_R, Qt.Key.Key_0, Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_A, Qt.Key.Key_C, Qt.Key.Key_L,
    Qt.Key.Key_N, Qt.Key.Key_B, Qt.Key.Key_Escape,
]  # fmt: skip
BOWINGS = ["bowing_add", "bowing_copy", "bowing_up", "bowing_down", "bowing_delete", "bowing_next", "bowing_previous"]
CHECKS = ["finding_next", "finding_previous", "mend", "tell_as_note", "tell_not", "tell_all", "bow_and_fiddle"]
VIEWS = [
    "zoom_in", "zoom_out", "zoom_fit", "marks_every", "marks_bars", "marks_needed", "look_dark", "look_light", "strip",
    "trace",
]  # fmt: skip
ACCENTS = ["plan_bar_none", "plan_phrase_by-phrase", "plan_part_backbeat", "plan_tune_drawn", "plan_tune_on-beat"]
PLANS = ["plan", "plan_onward", "plan_compare", "planner"]
TAKES = ["plan_take", "plan_take_new", "plan_drop"]
SAVES = ["save", "save", "save_as"]
PRINTS = ["preview", "export_abc"]
PLAYS = ["play", "play", "play_start", "play_bars", "play_round", "play_all", "play_set", "slower", "faster", "ladder",
         "hear_backing", "hear_count-in"]  # fmt: skip
COMPARES = ["compare", "compare", "compare", "compare_reference"]
MOST_BOWINGS = 8
WORDS = ["", "ferry", "jig", "o", "geese at", "#none", "no such tune"]


class Hands:
    """Random gestures on a window.

    Args:
        window: With a lesson open.
        lot: What gestures are drawn from.
        wait: Lets events be handled until a condition holds, or for a while.
    """

    def __init__(self, window: MainWindow, lot: random.Random, wait: Callable[[Callable[[], bool]], None]) -> None:
        self._window, self._lot, self._wait = window, lot, wait
        self.last = ""  # the gesture that was done last
        self._gestures: dict[str, tuple[int, Callable[[], None]]] = {
            "click": (30, self._click),
            "drag": (6, self._drag),
            "key": (30, self._key),
            "undo": (4, self._undo),
            "redo": (3, self._redo),
            "bowing": (4, self._bowing),
            "finding": (3, lambda: self._act(CHECKS)),
            "choose": (3, self._choose),
            "view": (3, lambda: self._act(VIEWS)),
            "accents": (2, lambda: self._act(ACCENTS)),
            "compare": (2, lambda: self._act(["compare", "compare", "compare_reference"])),
            "plan": (1.5, lambda: self._act(PLANS)),
            "plan and take": (1, self._plan),
            "take": (1, lambda: self._act(TAKES)),
            "save": (1.5, lambda: self._act(SAVES)),
            "print": (0.4, lambda: self._act(PRINTS)),
            "play": (2, lambda: self._act(PLAYS)),
            "hear": (0.5, self._hear),
            "shelf": (0.7, self._find),
            "set": (0.7, self._set),
            "pause": (2, lambda: self._wait(lambda: False)),
        }
        self._names = list(self._gestures)
        self._weights = [weight for weight, _ in self._gestures.values()]

    def do_something(self) -> None:
        """Do one thing."""
        self.last = self._lot.choices(self._names, self._weights)[0]
        self._gestures[self.last][1]()

    def do_everything(self, wait_for: Callable[[Callable[[], bool], str], None]) -> None:
        """Do once all that can be done.

        Args:
            wait_for: Lets events be handled until a condition holds; the second says which.
        """
        page = self._window.page
        self._act(["plan"])
        wait_for(lambda: page.plan is not None, "the plan")
        for name in dict.fromkeys(
            (*TAKES, *BOWINGS, *CHECKS, *VIEWS, *ACCENTS, *PLANS, *COMPARES, *SAVES, *PRINTS, *PLAYS)
        ):
            self._act([name])
            self._wait(lambda: False)
        for name, (_, gesture) in self._gestures.items():
            self.last = name
            gesture()
            self._wait(lambda: False)

    # ------------------------------------------------------------------------------------------------- on the page

    def _somewhere(self) -> QPoint:
        page, state = self._window.page, self._window.document.state
        assert state is not None
        note = self._lot.choice([note.id for note in state.tune.sequence if not note.hidden])
        row = self._lot.randrange(len(page.rows))
        if self._lot.random() < 0.4 and note in page.rows[row].signs:
            return page.sign_point(note, row)
        if self._lot.random() < 0.2 and self._window.actions_by_name["strip"].isChecked():
            return page.strip_point(onset(state.tune, note), row)
        return page.head_point(note, row) + QPoint(self._lot.randint(-9, 9), self._lot.randint(-9, 9))

    def _click(self) -> None:
        place = self._somewhere()
        QTest.mouseMove(self._window.page, place)
        QTest.mouseClick(self._window.page, LEFT, self._lot.choice(HELD), place)

    def _drag(self) -> None:
        page = self._window.page
        QTest.mousePress(page, LEFT, pos=self._somewhere())
        for _ in range(self._lot.randint(1, 4)):
            QTest.mouseMove(page, self._somewhere())
        QTest.mouseRelease(page, LEFT, pos=self._somewhere())

    def _key(self) -> None:
        self._window.page.setFocus()
        QTest.keyClick(self._window.page, self._lot.choice(KEYS), self._lot.choice(HELD[:4]))

    # ------------------------------------------------------------------------------------------------- in the window

    def _act(self, names: list[str]) -> None:
        self.last = self._lot.choice(names)
        self._window.actions_by_name[self.last].trigger()

    def _undo(self) -> None:
        for _ in range(self._lot.randint(1, 6)):
            self._window.actions_by_name["undo"].trigger()

    def _redo(self) -> None:
        for _ in range(self._lot.randint(1, 6)):
            self._window.actions_by_name["redo"].trigger()

    def _bowing(self) -> None:
        state = self._window.document.state
        assert state is not None
        self._act(["bowing_delete"] if len(state.lesson.bowings) >= MOST_BOWINGS else BOWINGS)

    def _choose(self) -> None:
        rows = self._window.side_list.model.rowCount()
        if rows:
            self._window.side_list.choose(self._lot.randrange(rows))

    def _plan(self) -> None:
        self._act(["plan"])
        self._wait(lambda: self._window.page.plan is not None)
        self._act(TAKES)

    def _hear(self) -> None:
        self._act(["play"])
        self._wait(lambda: False)
        self._wait(lambda: False)
        self._act(["play"])

    def _find(self) -> None:
        shelf = self._window.shelf
        if shelf.isVisible() and self._lot.random() < 0.3:
            shelf.hide()
            return
        shelf.show()
        shelf.pane.filters.words.setText(self._lot.choice(WORDS))
        self._wait(lambda: not shelf.pane.desk.searches)

    def _set(self) -> None:
        self._window.show_set()
        sets = self._window.set_window
        assert sets is not None
        self.last = self._lot.choice(["add", "remove", "up", "best", "hide"])
        match self.last:
            case "add":
                sets.add_open.trigger()
            case "remove" if self._window.sets.state.tunes:
                sets.choose_tune(0)
                sets.remove()
            case "up":
                sets.move_by(-1)
            case "best":
                sets.take_best_order()
        self._wait(lambda: not sets.waits)
        if self._lot.random() < 0.5:
            sets.hide()
