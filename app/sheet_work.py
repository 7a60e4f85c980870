"""Lays a sheet out while the window goes on: what it says in a thread, what it shows in steps between events."""

from __future__ import annotations

from collections.abc import Iterator
from time import monotonic

from PySide6.QtCore import QObject, QTimer, Signal

from app.plan_work import PlanWork
from app.sheet import Printed, Sheet, lay_out_steps
from app.sheet_content import Content, content_of
from core.engraving.engraver import Engraver
from core.sheet_plan import SheetPlan

AT_ONCE_S = 0.012  # steps are taken for so long before other events have their turn
PAUSE_MS = 120  # without another change, before work begins
PICTURES_KEPT = 2048  # eight bowings of a long tune in a few sizes


class SheetWork(QObject):
    """One sheet at a time; asking for another drops the one before.

    Signals:
        begun: Work on a sheet begins.
        done: The ``Sheet``.
        refused: Why there is none, one sentence.
    """

    begun = Signal()
    done = Signal(object)
    refused = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._engraver = Engraver(PICTURES_KEPT)
        self._asked: tuple[Printed, SheetPlan] | None = None
        self._steps: Iterator[Sheet | None] | None = None
        self._words = PlanWork(self)
        self._words.told.connect(self._on_content)
        self._words.refused.connect(self.refused)
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self._begin)
        self._turn = QTimer(self, interval=0)
        self._turn.timeout.connect(self._go_on)

    @property
    def runs(self) -> bool:
        """Whether a sheet is still to come."""
        return self._pause.isActive() or self._words.runs or self._steps is not None

    def ask(self, given: Printed, plan: SheetPlan) -> None:
        """Ask for a sheet."""
        self.stop()
        self._asked = given, plan
        self._pause.start()

    def stop(self) -> None:
        """Drop the sheet that was asked for."""
        self._words.stop()
        self._pause.stop()
        self._turn.stop()
        self._steps = None

    def _begin(self) -> None:
        assert self._asked is not None
        given, plan = self._asked
        self.begun.emit()
        self._words.start(lambda go_on, tell: tell(content_of(given, plan, go_on)))

    def _on_content(self, content: Content) -> None:
        assert self._asked is not None
        self._steps = lay_out_steps(content, self._asked[1], None, self._engraver)
        self._turn.start()

    def _go_on(self) -> None:
        until = monotonic() + AT_ONCE_S
        while self._steps is not None and monotonic() < until:
            step = next(self._steps)
            if step is not None:
                self._turn.stop()
                self._steps = None
                self.done.emit(step)
