"""The plan that is likely to be asked for next, worked out while the pointer rests on the button that asks for it."""

from __future__ import annotations

from collections.abc import Hashable

from PySide6.QtCore import QObject, Signal

from app.plan_answers import Planned
from app.plan_work import PlanWork, Work


class PlanAhead(QObject):
    """Holds one answer at most, by what it answers; a question that cannot be answered has none.

    Signals:
        found: The ``Planned`` that is at hand now.
    """

    found = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._key: Hashable = None
        self._planned: Planned | None = None
        self._work = PlanWork(self)
        self._work.told.connect(self._keep)

    def look_for(self, key: Hashable, work: Work) -> None:
        """Let work tell the answer to what the key stands for, if that is not known or looked for already."""
        if key != self._key:
            self.drop()
            self._key = key
            self._work.start(work)

    def answer(self, key: Hashable) -> Planned | None:
        """The answer to what the key stands for, if it is at hand."""
        return self._planned if key == self._key else None

    def drop(self) -> None:
        """Forget the answer, or leave off looking for it."""
        self._work.stop()
        self._key, self._planned = None, None

    def _keep(self, planned: Planned) -> None:
        self._planned = planned
        self.found.emit(planned)
