"""Plans by phrase: the planner itself chooses on-beat or backbeat for each phrase, where the tune lies best.

The choice changes at the ends of phrases only, and each change costs (``Weights.plan_change``). Phrases of which half
the bars come again take the same plan, so that what is the same in the tune stays the same under the bow.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from dataclasses import replace
from functools import cache
from itertools import combinations, groupby

from core.accent_plan import AccentPlan, PlanKind
from core.accents import PHRASE_PLANS, phrases
from core.bowing import Bowing, set_plan
from core.planner.join_costs import JoinOdds
from core.planner.open_problem import OpenProblem
from core.planner.plan import Plan, finished, plan_bowing
from core.planner.problem import STANDARD, Problem, pose, with_accents
from core.planner.scale import scale_of
from core.planner.search import Search, in_time
from core.planner.settings import PlannerSettings
from core.recurrence import bar_classes
from core.tune import Tune
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class PhraseGroup:
    """Phrases that take the same plan.

    Attributes:
        phrases: Indexes in ``core.accents.phrases``.
        bars: Indexes in ``Tune.bars`` of their bars whose plan is by phrase.
    """

    phrases: tuple[int, ...]
    bars: frozenset[int]


def phrase_groups(tune: Tune, bowing: Bowing) -> tuple[PhraseGroup, ...]:
    """The phrases with bars whose plan is by phrase; those that are kin together, in the order of their first bars."""
    in_force = bowing.plans(len(tune.bars))
    if all(plan.kind is not PlanKind.BY_PHRASE for plan in in_force):
        return ()
    classes = bar_classes(tune)
    found: list[list[int]] = []
    spans = phrases(tune)
    for number, span in enumerate(spans):
        if not any(in_force[bar].kind is PlanKind.BY_PHRASE for bar in span):
            continue
        kin = [group for group in found if any(_are_kin(classes, spans[other], span) for other in group)]
        found = [group for group in found if group not in kin] + [sorted([number, *(n for g in kin for n in g)])]
    return tuple(
        PhraseGroup(
            tuple(group),
            frozenset(bar for number in group for bar in spans[number] if in_force[bar].kind is PlanKind.BY_PHRASE),
        )
        for group in sorted(found)
    )


def _are_kin(classes: Sequence[int], first: range, second: range) -> bool:
    same = sum(classes[one] == classes[other] for one, other in zip(first, second, strict=False))
    return 2 * same >= min(len(first), len(second))


def resolved(tune: Tune, bowing: Bowing, groups: Sequence[PhraseGroup], choice: Sequence[PlanKind]) -> Bowing:
    """The bowing with a plan of its own in each phrase whose plan was by phrase."""
    plan_of = {bar: AccentPlan(kind) for group, kind in zip(groups, choice, strict=True) for bar in group.bars}
    for plan, bars in groupby(range(len(tune.bars)), key=plan_of.get):
        run = list(bars)
        if plan is not None:
            bowing = set_plan(tune, bowing, plan, run[0], run[-1] + 1)
    return bowing


def changes_of_plan(groups: Sequence[PhraseGroup], choice: Sequence[PlanKind]) -> int:
    """How often a phrase has another plan than the phrase before it, where both were chosen."""
    of_phrase = {number: kind for group, kind in zip(groups, choice, strict=True) for number in group.phrases}
    return sum(of_phrase[number] is not of_phrase[number - 1] for number in of_phrase if number - 1 in of_phrase)


def work_out_plan(
    tune: Tune,
    bowing: Bowing,
    settings: PlannerSettings = STANDARD,
    *,
    style: JoinOdds | None = None,
    keep: bool = True,
    free: Collection[str] | None = None,
    keep_start: bool = False,
    go_on: Callable[[], None] = lambda: None,
) -> Plan:
    """Plan the best bowing; where its plan is by phrase, under the best choice of plans for the phrases.

    Args:
        tune, bowing, settings, style, keep, free, keep_start: As for ``pose``, but plans may be by phrase.
        go_on: Called now and then; an error that it raises ends the planning and is passed on.
    Returns:
        The plan. Where plans were by phrase its bowing names on-beat or backbeat for each, and changes of plan are
        counted in its cost.
    Raises:
        RefusedPlanError: what is kept leaves no bowing.
    """
    groups = phrase_groups(tune, bowing)
    if not groups:
        problem = pose(tune, bowing, settings, style=style, keep=keep, free=free, keep_start=keep_start)
        return plan_bowing(problem, go_on)
    throughout = [resolved(tune, bowing, groups, [kind] * len(groups)) for kind in PHRASE_PLANS]
    base = pose(tune, throughout[0], settings, style=style, keep=keep, free=free, keep_start=keep_start)
    problems = (base, *(with_accents(base, other) for other in throughout[1:]))

    @cache
    def posed(choice: tuple[int, ...]) -> Problem:
        if len(set(choice)) == 1:
            return problems[choice[0]]
        kinds = [PHRASE_PLANS[plan] for plan in choice]
        problem = with_accents(base, resolved(tune, bowing, groups, kinds))
        return replace(problem, plan_changes=changes_of_plan(groups, kinds))

    search = Search(_open_problem(problems, groups), posed, in_time(go_on, settings.time_limit_s))
    search.run()
    return finished(posed(search.best.choice or (0,)), search)


def _open_problem(problems: tuple[Problem, ...], groups: Sequence[PhraseGroup]) -> OpenProblem:
    group_of = {bar: number for number, group in enumerate(groups) for bar in group.bars}
    borders = {}
    for (one, first), (other, second) in combinations(enumerate(groups), 2):
        times = sum(abs(number - near) == 1 for number in first.phrases for near in second.phrases)
        if times:
            borders[one, other] = times
    return OpenProblem(
        problems,
        scale_of(problems[0]),
        tuple(group_of.get(bar.written, -1) for bar in problems[0].bars),
        borders,
        len(groups),
    )
