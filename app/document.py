"""The open lesson: the only place where a lesson is replaced, and the undo steps that lead back.

Every change is a value put in the place of another; who listens gets both and redraws what differs. A document knows
no widget and asks nobody anything: to guard unsaved work is the window's business.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from app.commands import Edit
from core.bowing import Bowing
from core.check import Report
from core.lesson import Lesson, edit_bowing
from core.lesson_check import check_lesson
from core.tune import Tune
from core.values import dataclass

REPORTS_KEPT = 64  # so that undo, redo and changing between bowings need no new check


@dataclass(frozen=True)
class State:
    """A lesson and which of its bowings is on the page.

    Attributes:
        lesson: The lesson.
        shown: Place of the shown bowing in ``lesson.bowings``.
    """

    lesson: Lesson
    shown: int = 0

    @property
    def tune(self) -> Tune:
        return self.lesson.tune

    @property
    def bowing(self) -> Bowing:
        """The bowing on the page."""
        return self.lesson.bowings[self.shown]


class Document(QObject):
    """The open lesson with its undo stack.

    Signals:
        lesson_changed: (before, after), each a ``State`` or None; any edit, undo, opening, or choice of bowing.
        modified_changed: Whether there is something to save.
        path_changed: The file that the lesson is saved in, or None.
    """

    lesson_changed = Signal(object, object)
    modified_changed = Signal(bool)
    path_changed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.stack = QUndoStack(self)
        self.stack.cleanChanged.connect(self._on_clean_changed)
        self._state: State | None = None
        self._path: Path | None = None
        self._reports: OrderedDict[Hashable, tuple[Tune, Report]] = OrderedDict()  # the tune keeps its id from others

    @property
    def state(self) -> State | None:
        return self._state

    @property
    def path(self) -> Path | None:
        """The lesson file; None for a lesson that has never been saved as one."""
        return self._path

    @property
    def is_modified(self) -> bool:
        return not self.stack.isClean()

    def report(self, index: int | None = None) -> Report:
        """What the check finds in a bowing of the open lesson, the shown one where no index is given."""
        state = self._open_state()
        return self._report_on(state.lesson, state.bowing if index is None else state.lesson.bowings[index])

    def report_on(self, bowing: Bowing) -> Report:
        """What the check finds in a bowing of the open tune; nothing is worked out before it is asked for."""
        return self._report_on(self._open_state().lesson, bowing)

    def foresee(self, bowing: Bowing) -> Report:
        """Check what may become the shown bowing next, so that its report is at hand if it does."""
        report = self._report_on(self._open_state().lesson, bowing).worked_out()
        _ = report.reach, report.strokes.bows  # told among the totals, and of the note in focus
        return report

    def _report_on(self, lesson: Lesson, bowing: Bowing) -> Report:
        key = (id(lesson.tune), bowing, lesson.quiet, lesson.reach, lesson.tuning)
        if key not in self._reports:
            self._reports[key] = (lesson.tune, check_lesson(lesson, bowing))
            if len(self._reports) > REPORTS_KEPT:
                self._reports.popitem(last=False)
        return self._reports[key][1]

    def open(self, lesson: Lesson, path: Path | None = None, *, unsaved: bool = False) -> None:
        """Take a lesson in the place of the open one; there is no way back over this.

        Args:
            lesson: The lesson.
            path: The lesson file that it came from; None where it has none yet.
            unsaved: It stands in no file at all (pasted text), so it counts as modified from the start.
        """
        self.stack.clear()
        self.stack.setClean()  # an empty stack that was not clean stays so when it is cleared
        if unsaved:
            self.stack.resetClean()
        self._reports.clear()
        self._set_path(path)
        self.put(State(lesson))

    def edit(self, label: str, edit: Callable[[Tune, Bowing], Bowing], index: int | None = None) -> bool:
        """Edit a bowing as one undo step, and show it; the shown one where no index is given.

        Returns:
            False where the edit changed nothing, and so nothing was pushed.
        Raises:
            RefusedEditError: the edit has no meaning there; nothing was changed.
        """
        shown = self._open_state().shown if index is None else index
        return self.change(label, lambda lesson: edit_bowing(lesson, shown, edit), shown, shown)

    def change(self, label: str, change: Callable[[Lesson], Lesson], shown: int, undone: int | None = None) -> bool:
        """Change the lesson as one undo step and show a bowing of the changed lesson.

        Args:
            label: What the change does.
            change: Makes the new lesson.
            shown: Place of the bowing to show.
            undone: Place of the bowing to show when it is undone; the one that is shown now where None.
        Returns:
            False where the change left the lesson equal, and so nothing was pushed.
        Raises:
            RefusedEditError: the change has no meaning; nothing was changed.
        """
        before = self._open_state()
        after = change(before.lesson)
        if after == before.lesson:
            return False
        back = before if undone is None else replace(before, shown=undone)
        self.stack.push(Edit(self, back, State(after, shown), label))
        return True

    def show(self, index: int) -> None:
        """Put another bowing of the lesson on the page; no undo step."""
        state = self._open_state()
        if index != state.shown:
            self.put(replace(state, shown=index))

    def put(self, state: State) -> None:
        """Replace the state and announce it. For ``Edit``; others call ``edit``, ``change`` or ``open``."""
        before, self._state = self._state, state
        self.lesson_changed.emit(before, state)

    def mark_saved(self, path: Path) -> None:
        """Say that the lesson as it is now stands in this lesson file."""
        self._set_path(path)
        self.stack.setClean()

    def _on_clean_changed(self, clean: bool) -> None:
        self.modified_changed.emit(not clean)

    def _open_state(self) -> State:
        if self._state is None:
            raise ValueError("no lesson is open")
        return self._state

    def _set_path(self, path: Path | None) -> None:
        if path != self._path:
            self._path = path
            self.path_changed.emit(path)
