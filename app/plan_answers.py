"""What the planner is given to do, to run in a thread: values in, values told. No Qt."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from app.plan_choices import Question
from core import planner
from core.bowing import Bowing
from core.planner import Plan, PlannerSettings
from core.tune import Tune
from core.values import dataclass

if TYPE_CHECKING:
    from core.style.carry_on import Proposal

GoOn = Callable[[], None]
Tell = Callable[[object], None]
ALTERNATIVES = 3


@dataclass(frozen=True)
class Planned:
    """A plan and what it would change.

    Attributes:
        plan: The plan.
        changes: Sentences by index of the bar in ``Tune.bars``.
        row, sentence: Its line in the list and what there is to say of it; "" where its numbers say it.
        proposal: What it is, where it carries on the bowing in a style.
    """

    plan: Plan
    changes: Mapping[int, str]
    row: str = ""
    sentence: str = ""
    proposal: Proposal | None = None


def tell_best(question: Question, before: Bowing, go_on: GoOn, tell: Tell) -> None:
    """Tell the best plan, as a ``Planned``.

    Args:
        question: What the planner is asked.
        before: The bowing on the page, for what changes.
        go_on: Raises where nobody waits any more.
        tell: Takes it.
    Raises:
        RefusedPlanError: what is kept leaves no bowing.
    """
    tune = question.tune
    best = planner.work_out_plan(
        tune, question.bowing, question.settings, keep=question.keep, free=question.free,
        keep_start=question.keep_start, go_on=go_on,
    )  # fmt: skip
    tell(Planned(best, changes_by_bar(tune, before, best.bowing)))


def tell_next_best(best: Plan, before: Bowing, go_on: GoOn, tell: Tell) -> None:
    """Tell the plans beside the best one that differ audibly, each a ``Planned``, from the best on."""
    for plan in planner.alternatives(best, ALTERNATIVES, go_on=go_on):
        tell(Planned(plan, changes_by_bar(best.problem.tune, before, plan.bowing)))


def tell_starting_versions(tune: Tune, bowing: Bowing, settings: PlannerSettings, go_on: GoOn, tell: Tell) -> None:
    """Tell the bowings that a teacher starts from, each as it is ready."""
    for version in planner.starting_versions(tune, bowing, settings, go_on=go_on):
        tell(version)


def tell_suited(tune: Tune, bowing: Bowing, settings: PlannerSettings, go_on: GoOn, tell: Tell) -> None:
    """Tell how each accent plan suits a tune, as one tuple."""
    tell(planner.suitability(tune, bowing, settings, go_on=go_on))


def changes_by_bar(tune: Tune, before: Bowing, after: Bowing) -> dict[int, str]:
    """What changes in each bar, as one text a bar."""
    found: dict[int, list[str]] = {}
    for change in planner.changes(tune, before, after):
        found.setdefault(change.bar, []).append(change.text)
    return {bar: " ".join(texts) for bar, texts in sorted(found.items())}
