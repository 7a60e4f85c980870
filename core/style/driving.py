"""Whether a hand drives the accents of its plan: a style is not bent to accents that the marked bars pass by."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection
from dataclasses import replace

from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind
from core.accents import Met, weigh
from core.bowing import Bowing
from core.strokes import work_out
from core.tune import Tune

DRIVEN = 0.8  # of the accents in marked bars, from which on they are meant to be driven


def drives_accents(tune: Tune, bowing: Bowing, marked: Collection[int]) -> bool:
    """Whether the marked bars drive the accents of their plan, or there are none in them.

    Which way round a run of marked bars is bowed depends on bars before it that may be bare, so either counts.

    Args:
        tune: The tune.
        bowing: Its bowing and accent plan.
        marked: Indexes in ``Tune.bars``.
    """
    accents = weigh(tune, bowing, work_out(tune, bowing)).by_bar
    driven = whole = 0
    run: Counter[Met] = Counter()
    for index in range(len(tune.bars) + 1):
        if index in marked:
            run.update(accents[index][0])
        elif run:
            driven += max(run[Met.DRIVEN], run[Met.UP])
            whole += run[Met.DRIVEN] + run[Met.UP] + run[Met.BURIED]
            run.clear()
    return driven >= DRIVEN * whole


def without_plan(bowing: Bowing) -> Bowing:
    """The bowing with no accent plan; accents that are written in the tune stay."""
    return replace(bowing, accents=AccentPlan(PlanKind.NONE), accent_changes=immutabledict())


def with_plan_of(bowing: Bowing, other: Bowing) -> Bowing:
    """The bowing with the accent plan of another."""
    return replace(bowing, accents=other.accents, accent_changes=other.accent_changes)
