"""The plans that answer one question, as they are told one beside another. No Qt."""

from __future__ import annotations

from dataclasses import replace

from app.plan_answers import Planned
from app.plan_preview import PlanPreview
from app.plan_words import changed_bars, plan_row, plan_sentence
from core.planner import Plan
from core.tune import Tune
from core.values import dataclass


@dataclass(frozen=True)
class PlanListing:
    """Plans, best first.

    Attributes:
        name: What a bowing is called that is planned so.
        label: What taking one is called, to be undone.
        planned: The plans and what each would change.
        rows: A line for each plan, told from the best.
    """

    name: str = ""
    label: str = ""
    planned: tuple[Planned, ...] = ()
    rows: tuple[str, ...] = ()

    @property
    def plans(self) -> tuple[Plan, ...]:
        return tuple(planned.plan for planned in self.planned)

    def with_next(self, planned: Planned) -> PlanListing:
        """The same with the next best."""
        listed = *self.planned, planned
        row = planned.row or plan_row(planned.plan, listed[0].plan)
        return replace(self, planned=listed, rows=(*self.rows, row))

    def sentence(self, row: int) -> str:
        """What there is to say of a plan."""
        return self.planned[row].sentence or plan_sentence(self.plans[row], self.plans[0])

    def preview(self, row: int, tune: Tune, bowing_name: str) -> PlanPreview:
        """A plan as the page shows it in the place of a bowing."""
        planned = self.planned[row]
        return PlanPreview(
            replace(planned.plan.bowing, name=bowing_name),
            f"{self.name}: {self.sentence(row)} {changed_bars(tune, planned.changes)}",
            planned.changes,
            planned.proposal.bar_chances if planned.proposal is not None else {},
        )
