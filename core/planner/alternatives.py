"""The next best bowings that differ audibly from a plan.

A bowing counts as another one if it bows at least two written bars otherwise, and at least a tenth of the bars played.
For each kind of bar and each way of bowing it the best plan with that way is known at once. These are gone through from
the best on, then plans with two such ways; those that differ enough from all that came before are alternatives.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import combinations
from math import inf
from typing import TypeAlias

from core.bowing import Bow, Bowing
from core.planner.listing import Listing, cheapest_ways, every_way
from core.planner.models import Forced, Model, grouped
from core.planner.network import Costs, TooManyCombinationsError
from core.planner.open_problem import settled
from core.planner.plan import Plan, to_bowing
from core.planner.problem import Problem
from core.planner.scale import scale_of
from core.planner.score import score
from core.strokes import work_out

MOST_TRIED = 40
WAYS_IN_A_PAIR = 3  # the cheapest of each group
LEAST_BARS = 2  # written
LEAST_SHARE = 10  # one in ten of the bars played


def alternatives(plan: Plan, count: int = 3, go_on: Callable[[], None] = lambda: None) -> tuple[Plan, ...]:
    """The next best bowings that differ audibly from a plan and from one another.

    Args:
        plan: What to look beside.
        count: How many at most.
        go_on: Called now and then; an error that it raises ends the search and is passed on.
    Returns:
        From the best on; their bounds are the plan's. Fewer than asked for where nothing else differs enough, or where
        the best ``MOST_TRIED`` of either sort held no more.
    """
    problem = plan.problem
    scale = scale_of(problem)
    model = grouped(settled(problem, scale), _bowed_alike(problem, plan.bowing))
    if model is None:
        return ()
    plans = [plan]
    ways = [_ways(problem, plan.bowing)]
    try:
        listed = _listed(model)
        least = model.least(go_on)
        totals = [one.totals(least[row], model.layout.divisions.costs[row]) for row, one in enumerate(listed)]
        seen = set(ways)
        for forced in _candidates(totals):
            if len(plans) > count or len(seen) > 2 * MOST_TRIED:
                break
            answer = model.solve(go_on, {number: _forced(listed[number], way) for number, way in forced.items()})
            if not answer.ways:
                continue
            bowing = to_bowing(problem, answer)
            theirs = _ways(problem, bowing)
            if theirs not in seen and all(_differ_audibly(problem, theirs, others) for others in ways):
                plans.append(Plan(problem, bowing, score(problem, bowing), plan.bound))
                ways.append(theirs)
            seen.add(theirs)
    except TooManyCombinationsError:
        pass
    return tuple(sorted(plans[1:], key=lambda other: other.score))


def _listed(model: Model) -> list[Listing]:
    """The ways of each group; of very long bars the cheapest for each two ends."""
    divisions = model.layout.divisions
    rows = range(len(divisions.costs))
    return [every_way(divisions, row) or cheapest_ways(divisions, row) for row in rows]


def _forced(ways: Listing, number: int) -> Forced:
    return Forced(ways.way(number), int(ways.firsts[number]), int(ways.lasts[number]), float(ways.costs[number]))


def _candidates(totals: Sequence[Costs]) -> Iterator[dict[int, int]]:
    """Groups of bars, by number, with a way for each: one group, from the cheapest on, then two."""
    single = sorted(
        (total, number, way)
        for number, costs in enumerate(totals)
        for way, total in enumerate(costs.tolist())
        if total < inf
    )
    for _, number, way in single[:MOST_TRIED]:
        yield {number: way}
    of_group = [[one for one in single if one[1] == number] for number in range(len(totals))]
    few = [one for ways in of_group for one in ways[1 : 1 + WAYS_IN_A_PAIR]]  # the first is the plan's own
    pairs = [
        (one[0] + other[0], {one[1]: one[2], other[1]: other[2]})
        for one, other in combinations(few, 2)
        if one[1] != other[1]
    ]
    for _, pair in sorted(pairs, key=lambda found: found[0])[:MOST_TRIED]:
        yield pair


_Ways: TypeAlias = tuple[tuple[tuple[Bow, bool], ...], ...]


def _ways(problem: Problem, bowing: Bowing) -> _Ways:
    """For each bar the direction of each note and whether it is joined to the one before."""
    bows = work_out(problem.tune, bowing).bows
    return tuple(
        tuple((bows[note.note_id][0], note.held or note.note_id in bowing.joins) for note in problem.notes_of(number))
        for number in range(len(problem.bars))
    )


def _bowed_alike(problem: Problem, bowing: Bowing) -> tuple[list[int], ...]:
    """Bars of one kind that a bowing bows alike."""
    groups: dict[object, list[int]] = {}
    for number, (bar, way) in enumerate(zip(problem.bars, _ways(problem, bowing), strict=True)):
        inner = (way[0][0], *way[1:])
        groups.setdefault((bar.kind, inner), []).append(number)
    return tuple(groups.values())


def _differ_audibly(problem: Problem, one: _Ways, other: _Ways) -> bool:
    differing = [bar for bar, way, theirs in zip(problem.bars, one, other, strict=True) if way != theirs]
    played = sum(bar.visits for bar in problem.bars)
    return len(differing) >= LEAST_BARS and LEAST_SHARE * sum(bar.visits for bar in differing) >= played
