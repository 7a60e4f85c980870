"""What planning costs: run by hand with ``python -m tests.benchmarks.planning [EVERY] [CPSAT_EVERY]``.

Plans the tunes of three open collections (each EVERY-th, all by default) on-beat, backbeat and by phrase, with the
fewest slurs and smooth, counts every plan's numbers again with ``core.planner.score``, and prints what is proven, what
is missed and broken, and the times (process time of planning alone, reading and judging left out). On each
CPSAT_EVERY-th case (none by default) the constraint solver plans the same, beside it in the same run.
Goal: p95 at most 25 ms, worst at most 250 ms, and p95 at least 30 times below the constraint solver's.
"""

from __future__ import annotations

import gc
import sys
from collections import Counter, defaultdict
from statistics import median
from time import process_time

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import set_plan
from core.planner import Flow, PlannerSettings, RefusedPlanError, score, work_out_plan
from core.reading.abc import read_abc
from core.strokes import work_out
from tests.outside.abc_collections import FOLDERS, sources

PLANS = (PlanKind.ON_BEAT, PlanKind.BACKBEAT, PlanKind.BY_PHRASE)
FLOWS = (Flow.FEWEST_SLURS, Flow.SMOOTH)
SOLVER_LIMIT_S = 60.0


def main() -> None:
    """Print the figures."""
    words = [int(word) for word in sys.argv[1:]]
    every, solver_every = (*words, *(1, 0)[len(words) :])
    times: dict[tuple[PlanKind, Flow], list[float]] = defaultdict(list)
    outcome: dict[tuple[PlanKind, Flow], Counter[str]] = defaultdict(Counter)
    slowest: list[tuple[float, str]] = []
    beside: list[tuple[float, float]] = []
    number = 0
    gc.freeze()
    for source in sources(*FOLDERS)[::every]:
        for lesson in read_abc(source.text).lessons:
            for kind in PLANS:
                bowing = set_plan(lesson.tune, lesson.bowings[0], AccentPlan(kind))
                for flow in FLOWS:
                    began = process_time()
                    try:
                        plan = work_out_plan(lesson.tune, bowing, PlannerSettings(flow), keep=False)
                    except RefusedPlanError as refusal:
                        outcome[kind, flow][str(refusal)] += 1
                        continue
                    taken = 1000 * (process_time() - began)
                    times[kind, flow].append(taken)
                    slowest.append((taken, f"{source.place} {kind.value} {flow.name}"))
                    told = outcome[kind, flow]
                    told["plans"] += 1
                    told["proven"] += plan.proven
                    told["nothing missed"] += not plan.score.missed
                    told["nothing broken"] += not plan.score.broken
                    strokes = work_out(lesson.tune, plan.bowing)
                    told["numbers differ when counted again"] += score(plan.problem, plan.bowing) != plan.score
                    told["not the same on every pass"] += any(len(set(bows)) > 1 for bows in strokes.bows.values())
                    told["does not come round"] += not strokes.comes_round
                    number += 1
                    if solver_every and number % solver_every == 0:
                        from tests.outside.planner_by_cpsat import solve

                        began = process_time()
                        solve(plan.problem, SOLVER_LIMIT_S)
                        beside.append((taken, 1000 * (process_time() - began)))
    for (kind, flow), told in outcome.items():
        print(f"{kind.value:10} {flow.name:13} {_times(times[kind, flow])}  {dict(told)}")
    print(f"all: {_times([one for some in times.values() for one in some])}")
    for taken, place in sorted(slowest)[-8:]:
        print(f"  {taken:7.1f} ms  {place}")
    if beside:
        ours, theirs = zip(*beside, strict=True)
        print(f"{len(beside)} cases beside the constraint solver: ours {_times(ours)}; the solver's {_times(theirs)}")
        print(f"p95 of the solver's times divided by p95 of ours: {_p95(theirs) / _p95(ours):.0f}")


def _times(values: list[float] | tuple[float, ...]) -> str:
    return f"median {median(values):.1f}, p95 {_p95(values):.1f}, worst {max(values):.1f} ms"


def _p95(values: list[float] | tuple[float, ...]) -> float:
    return sorted(values)[int(0.95 * len(values))]


if __name__ == "__main__":
    main()
