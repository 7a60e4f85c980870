"""What it costs to go from bar to bar: for all crossings of a model at once, by the strokes that meet there."""

from __future__ import annotations

from collections.abc import Sequence
from math import inf
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.planner.divisions import Ends
from core.planner.network import Costs
from core.planner.problem import Crossing, PlanNote, Problem, Retake
from core.planner.rows import Flags
from core.planner.scale import Scale


def meetings(problems: Sequence[Problem], scale: Scale, before: Ends, after: Ends) -> tuple[Costs, Flags]:
    """Work out all crossings.

    Args:
        problems: The problem under each plan.
        scale: Its weights.
        before, after: For each crossing how the one bar can end and the next begin; crossings x sizes.
    Returns:
        plans x crossings x last ends of the one bar x first ends of the next: what they cost, all times; and whether
        two strokes that go one way are one there.
    """
    problem = problems[0]
    crossings = problem.crossings
    notes = [_first(problem, crossing) for crossing in crossings]
    together = _joined(problem, crossings, notes, before, after)
    apart = _apart(problem, crossings, notes, after)
    lift = _column([_lift_cost(problem, scale, *each) for each in zip(crossings, notes, strict=True)])
    turn = _column([inf if note.retake is Retake.MUST else 0.0 for note in notes])
    times = _column([crossing.times for crossing in crossings])
    held = np.array([note.held for note in notes])
    hooked = np.array([note.hooked for note in notes])
    shape = len(problems), len(crossings), len(before.sizes), 2, len(after.sizes), 2
    costs, run_on = np.empty(shape), np.zeros(shape, bool)
    for plan, under in enumerate(problems):
        accented = np.array([_first(under, crossing).accented for crossing in crossings])
        buried = _column(scale.missed * (accented & ~held & ~hooked))  # by a down-bow; an up-bow misses it anyhow
        up = _column(scale.missed * (accented & held))  # a held note that is struck, since another was played before
        for bow, (joined, begun) in enumerate(((together + buried, apart), (together, apart + up))):
            run_on[plan, :, :, bow, :, bow] = joined <= begun + lift
            costs[plan, :, :, bow, :, bow] = times * np.minimum(joined, begun + lift)
            costs[plan, :, :, 1 - bow, :, bow] = times * (begun + turn)
    ends = len(problems), len(crossings), 2 * len(before.sizes), 2 * len(after.sizes)
    return costs.reshape(ends), run_on.reshape(ends)


def _joined(
    problem: Problem, crossings: Sequence[Crossing], notes: Sequence[PlanNote], before: Ends, after: Ends
) -> Costs:
    """What it costs to join over a bar line, accents left out; infinite where that cannot be."""
    may = _column(
        [crossing.runs_on and note.joined is not False for crossing, note in zip(crossings, notes, strict=True)]
    )
    must = _column([note.joined is True for note in notes])
    longest = _column([problem.bars[crossing.before].longest for crossing in crossings])
    struck = before.struck[:, :, None] + after.struck[:, None, :]
    ticks = before.ticks[:, :, None] + after.ticks[:, None, :]
    fits = (struck < 2) | ((struck <= problem.settings.most_notes) & (ticks <= longest))
    fixed = before.fixed[:, :, None] & after.fixed[:, None, :]
    # a bar taken in one stroke is slurred to no neighbour, so that a stroke holds two bars at most
    parted = ~before.whole[:, :, None] & ~after.whole[:, None, :]
    fits = np.where(must, fits | fixed, fits & parted)
    sizes = np.array(problem.stroke_costs, float)
    price = _column([0 if note.held else note.join_cost for note in notes])
    costs = sizes[struck] - sizes[before.struck][:, :, None] - sizes[after.struck][:, None, :] + price
    joined: Costs = np.where(fits & may, costs, inf)
    return joined


def _apart(problem: Problem, crossings: Sequence[Crossing], notes: Sequence[PlanNote], after: Ends) -> Costs:
    """What it costs to begin a stroke in a bar, accents and retakes left out; infinite where that cannot be."""
    bars = [problem.bars[crossing.after] for crossing in crossings]
    fits = _column([bar.seam for bar in bars]) | fits_here(problem, [bar.longest for bar in bars], after)[:, None, :]
    sizes = np.array(problem.stroke_costs, float)
    struck = (sizes[after.struck + 1] - sizes[after.struck])[:, None, :]  # a held note, since another was played before
    held = _column([note.held for note in notes])
    must = _column([crossing.runs_on and note.joined is True for crossing, note in zip(crossings, notes, strict=True)])
    price = _column([note.apart_cost for note in notes])
    apart: Costs = np.where(fits & ~must, price + np.where(held, struck, 0), inf)
    return apart


def fits_here(problem: Problem, longest: Sequence[int], first: Ends) -> Flags:
    """Which first strokes may begin in bars with such limits; bars x sizes."""
    limits = np.array(longest)[:, None]
    small = (first.struck <= problem.settings.most_notes) & (first.ticks <= limits)
    fits: Flags = (first.struck < 2) | small | first.fixed
    return fits


def _lift_cost(problem: Problem, scale: Scale, crossing: Crossing, note: PlanNote) -> float:
    """What it costs to take the next bar the way of the stroke before."""
    if problem.bars[crossing.after].seam:
        return problem.settings.weights.retake_over_rest if crossing.over_rest else scale.broken
    return inf if note.retake is Retake.NEVER else note.retake_cost


def _first(problem: Problem, crossing: Crossing) -> PlanNote:
    return problem.notes[problem.bars[crossing.after].first]


def _column(values: Sequence[float] | NDArray[np.int64]) -> NDArray[Any]:
    """A number or flag for each crossing, whatever the ends."""
    return np.array(values)[:, None, None]
