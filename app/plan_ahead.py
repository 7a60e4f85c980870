"""The plan that is likely to be asked for next, worked out while the pointer rests on the button that asks for it."""

from __future__ import annotations

from collections.abc import Hashable
from threading import Event

from PySide6.QtCore import QObject, Signal

from app.plan_answers import Planned
from app.plan_work import GoOn, PlanWork, Tell, Work

LOOK_S = 0.002


class Answer:
    """What is or will be known about one question.

    Attributes:
        key: Stands for the question.
        planned: The answer; None while it is not known, and where there is none.
        over: Set once nothing more comes.
    """

    def __init__(self, key: Hashable) -> None:
        self.key = key
        self.planned: Planned | None = None
        self.over = Event()


class PlanAhead(QObject):
    """Holds one answer at most.

    Signals:
        found: The ``Planned`` that is at hand now.
    """

    found = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._answer = Answer(None)
        self._work = PlanWork(self)
        self._work.told.connect(self._keep)
        for signal in (self._work.ended, self._work.refused, self._work.failed):
            signal.connect(lambda *_: self._answer.over.set())

    def look_for(self, key: Hashable, work: Work) -> None:
        """Let work tell the answer to what the key stands for, if that is not known or looked for already."""
        if key != self._answer.key:
            self.drop()
            self._answer = Answer(key)
            self._work.start(work)

    def answer(self, key: Hashable) -> Planned | None:
        """The answer to what the key stands for, if it is at hand."""
        return self._answer.planned if key == self._answer.key else None

    def awaited(self, key: Hashable, work: Work) -> Work:
        """Work that tells the answer as soon as it is found, where it is looked for; else the same work."""
        answer = self._answer
        if key != answer.key:
            self.drop()
            return work

        def wait(go_on: GoOn, tell: Tell) -> None:
            while not answer.over.wait(LOOK_S):
                go_on()
            if answer.planned is not None:
                tell(answer.planned)
            else:
                work(go_on, tell)  # to hear why there is none

        return wait

    def drop(self) -> None:
        """Forget the answer, or leave off looking for it."""
        self._work.stop()
        self._answer.over.set()
        self._answer = Answer(None)

    def _keep(self, planned: Planned) -> None:
        self._answer.planned = planned
        self._answer.over.set()
        self.found.emit(planned)
