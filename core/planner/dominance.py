"""Which ends of bars are beaten by others, so that the cheapest bowing can do without them.

An end is beaten by another that can stand in its place in any bowing, whatever the neighbours are, and costs no more.
As each is beaten against all that its neighbours can be, all can be left out at once.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.planner.network import Costs
from core.planner.rows import Flags, Ints

MOST_COMPARED = 4_000_000


def worth_keeping(costs: Costs, crossings: Costs, before: Ints, after: Ints) -> tuple[Flags, Flags]:
    """Which ends are not beaten: rows x first ends, and rows x last ends.

    Args:
        costs: rows x first ends x last ends.
        crossings: plans x crossings x last ends of the one bar x first ends of the next, under its plan.
        before, after: plans x crossings: the row of the one bar and of the next under a plan; -1 where it is not open.
    """
    rows, firsts, lasts = costs.shape
    plans, count = before.shape
    if max(rows, plans * count) * firsts * lasts * max(firsts, lasts) > MOST_COMPARED:
        return np.ones((rows, firsts), bool), np.ones((rows, lasts), bool)
    with np.errstate(invalid="ignore"):  # impossible beside impossible says nothing
        worse_firsts, worse_lasts = _how_much_worse(costs.transpose(2, 0, 1)), _how_much_worse(costs.transpose(1, 0, 2))
        whatever_follows = _how_much_worse(crossings.transpose(0, 3, 1, 2).reshape(plans * firsts, count, lasts))
        for plan in range(plans):
            whatever_came = _how_much_worse(crossings[plan].transpose(1, 0, 2))
            for crossing, (one, other) in enumerate(zip(before[plan], after[plan], strict=True)):
                if other >= 0:
                    worse_firsts[other] += whatever_came[crossing]
                if one >= 0:
                    worse_lasts[one] += whatever_follows[crossing]
    return ~_beaten(worse_firsts), ~_beaten(worse_lasts)


def _how_much_worse(costs: Costs) -> NDArray[np.float64]:
    """How much worse than another an end is at worst: tables x ends x others, of neighbours x tables x ends."""
    costs = np.ascontiguousarray(costs)  # so that whole tables are compared at once
    worse: NDArray[np.float64] = np.fmax.reduce(costs[..., :, None] - costs[..., None, :], axis=0)
    return worse


def _beaten(worse: NDArray[np.float64]) -> Flags:
    earlier = np.tri(worse.shape[1], k=-1, dtype=bool).T  # of two that are as good the first stays
    beaten: Flags = ((worse < 0) | ((worse == 0) & earlier)).any(axis=1)
    return beaten
