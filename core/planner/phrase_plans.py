"""Plans by phrase: the planner itself chooses on-beat or backbeat for each phrase, where the tune lies best.

The choice changes at the ends of phrases only, and each change costs (``Weights.plan_change``). Phrases of which half
the bars come again take the same plan, so that what is the same in the tune stays the same under the bow.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Hashable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations, groupby
from math import inf
from time import monotonic
from typing import NamedTuple

import numpy as np

from core.accent_plan import AccentPlan, PlanKind
from core.accents import PHRASE_PLANS, phrases
from core.bowing import Bowing, set_plan
from core.planner.join_costs import Style
from core.planner.network import Costs, Network, TooManyCombinationsError, least_over
from core.planner.plan import OutOfTimeError, Plan, UnfinishedPlanError, plan_bowing
from core.planner.problem import STANDARD, Problem, RefusedPlanError, pose, with_accents
from core.planner.score import Score
from core.planner.settings import PlannerSettings
from core.planner.tables import Scale, Table, bar_table, crossing_costs, scale_of
from core.recurrence import bar_classes
from core.tune import Tune


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
    style: Style | None = None,
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
    ends_at = monotonic() + settings.time_limit_s

    first = [PHRASE_PLANS[0]] * len(groups)
    base = pose(
        tune, resolved(tune, bowing, groups, first), settings,
        style=style, keep=keep, free=free, keep_start=keep_start,
    )  # fmt: skip

    def posed(choice: Sequence[PlanKind]) -> Problem:
        problem = with_accents(base, resolved(tune, bowing, groups, choice))
        return replace(problem, plan_changes=changes_of_plan(groups, choice))

    def go_on_in_time() -> None:
        go_on()
        if monotonic() > ends_at:
            raise OutOfTimeError

    search = _Search(posed, scale_of(base), go_on)
    problems = tuple(posed([kind] * len(groups)) for kind in PHRASE_PLANS)
    try:
        search.go_through(_bounds(problems, search.scale, groups, go_on_in_time, alike=True), go_on_in_time)
        if search.best is None or search.best.score.missed or search.best.score.broken:
            # bars that differ from their like are broken: bounded by the bars without regard to that, and one more
            loose = _bounds(problems, search.scale, groups, go_on_in_time, alike=False)
            search.go_through(loose + search.scale.broken, go_on_in_time)
    except (OutOfTimeError, TooManyCombinationsError):
        search.bounds.append(Score(0, 0, 0))
        for problem in problems if search.best is None else ():
            search.plan(problem)
    if search.best is None:
        raise search.refusal or RefusedPlanError("What is kept leaves no bowing.")
    return replace(search.best, bound=min([search.best.score, *search.bounds]))


class _Search:
    """Goes through choices of plans, those with the lowest bounds first.

    Attributes:
        best: The best plan so far.
        bounds: What bounds the plans found.
        refusal: Why a choice has no bowing.
    """

    def __init__(self, posed: Callable[[Sequence[PlanKind]], Problem], scale: Scale, go_on: Callable[[], None]) -> None:
        self.scale = scale
        self.best: Plan | None = None
        self.bounds: list[Score] = []
        self.refusal: RefusedPlanError | None = None
        self._posed, self._go_on = posed, go_on
        self._tried: set[int] = set()

    def go_through(self, bounds: Costs, go_on: Callable[[], None]) -> None:
        """Try every choice not tried yet whose bound is better than the best plan.

        Args:
            bounds: One axis for each group of phrases, one place for each plan: what no bowing can be better than.
            go_on: Called now and then; raises to stop.
        """
        for number in np.argsort(bounds, axis=None, kind="stable"):
            bound = bounds.flat[number]
            if bound == inf or (self.best is not None and bound >= self.scale.total(self.best.score)):
                return
            if int(number) not in self._tried:
                go_on()
                self._tried.add(int(number))
                self.plan(self._posed([PHRASE_PLANS[place] for place in np.unravel_index(number, bounds.shape)]))

    def plan(self, problem: Problem) -> None:
        """Plan under one choice and keep the plan if it is the best so far."""
        try:
            plan = plan_bowing(problem, self._go_on)
        except UnfinishedPlanError as unfinished:
            self.bounds.append(unfinished.bound)
            self.refusal = unfinished
            return
        except RefusedPlanError as refusal:
            self.refusal = refusal
            return
        self.bounds.append(plan.bound)
        if self.best is None or plan.score < self.best.score:
            self.best = plan


class _Unit(NamedTuple):
    """Bars bowed alike, with what they can be bowed like under each plan, and the variables that say how."""

    bars: tuple[int, ...]
    group: int  # -1 where the plan is not by phrase
    tables: tuple[Table | None, ...]
    first: int
    last: int


def _bounds(
    problems: Sequence[Problem],
    scale: Scale,
    groups: Sequence[PhraseGroup],
    go_on: Callable[[], None],
    *,
    alike: bool,
) -> Costs:
    """For each choice of plans what no bowing can be better than, changes of plan included.

    Args:
        problems: The problem under each plan of ``PHRASE_PLANS`` throughout.
        scale: Their weights.
        groups: What is chosen for, one axis each.
        go_on: Called now and then; raises to stop.
        alike: Only bowings count that bow bars of one kind in one group alike; else each bar is bowed for itself.
    """
    network = Network()
    chosen = [network.add(np.zeros(len(PHRASE_PLANS))) for _ in groups]
    of_bar: dict[int, _Unit] = {}
    for bars, group in _units(problems, groups, alike=alike):
        unit = _unit(network, problems, scale, bars, group)
        if unit is None:
            return np.full([len(PHRASE_PLANS)] * len(groups), inf)
        of_bar.update((bar, unit) for bar in bars)
        if group >= 0:
            network.connect(chosen[group], unit.first, _which_plan(unit))
    for number, crossing in enumerate(problems[0].crossings):
        before, after = of_bar[crossing.before], of_bar[crossing.after]
        costs = [
            [
                crossing_costs(problem, scale, problem.crossings[number], of_before, of_after)
                for problem, of_after in zip(problems, after.tables, strict=True)
                if of_after is not None
            ]
            for of_before in before.tables
            if of_before is not None
        ]
        network.connect(before.last, after.first, np.block(costs))
    change = problems[0].settings.weights.plan_change
    for (one, first), (other, second) in combinations(enumerate(groups), 2):
        borders = sum(abs(number - near) == 1 for number in first.phrases for near in second.phrases)
        if borders:
            network.connect(chosen[one], chosen[other], borders * change * (1 - np.eye(len(PHRASE_PLANS))))
    return least_over(network, chosen, go_on)


def _units(
    problems: Sequence[Problem], groups: Sequence[PhraseGroup], *, alike: bool
) -> Iterator[tuple[tuple[int, ...], int]]:
    """The bars that share a choice, as indexes in ``Problem.bars``, and the group of phrases that they belong to."""
    group_of = {bar: number for number, group in enumerate(groups) for bar in group.bars}
    found: dict[Hashable, list[int]] = {}
    for number, bar in enumerate(problems[0].bars):
        group = group_of.get(bar.written, -1)
        kinds = tuple(problem.bars[number].kind for problem in problems)
        found.setdefault((group, kinds) if alike else number, []).append(number)
    for bars in found.values():
        yield tuple(bars), group_of.get(problems[0].bars[bars[0]].written, -1)


def _unit(
    network: Network, problems: Sequence[Problem], scale: Scale, bars: tuple[int, ...], group: int
) -> _Unit | None:
    tables = tuple(
        bar_table(problem, scale, bars) if group >= 0 or number == 0 else None
        for number, problem in enumerate(problems)
    )
    sizes = [table.costs.shape if table else (0, 0) for table in tables]
    first, last = (network.add(np.zeros(sum(size[end] for size in sizes))) for end in (0, 1))
    costs = np.full((sum(size[0] for size in sizes), sum(size[1] for size in sizes)), inf)
    row = column = 0
    for table, (height, width) in zip(tables, sizes, strict=True):
        if table is not None:
            costs[row : row + height, column : column + width] = table.costs
        row, column = row + height, column + width
    if not costs.size:
        return None
    network.connect(first, last, costs)
    return _Unit(bars, group, tables, first, last)


def _which_plan(unit: _Unit) -> Costs:
    """Forbids first strokes of one plan where the other is chosen: plans x first strokes."""
    sizes = [table.costs.shape[0] if table else 0 for table in unit.tables]
    plan_of = np.repeat(np.arange(len(sizes)), sizes)
    costs: Costs = np.where(np.arange(len(sizes))[:, None] == plan_of[None, :], 0.0, inf)
    return costs
