"""A problem as a network: a variable for each kind of bar, or for each bar.

- *Alike*: all bars of one kind share a variable, so that none differs from its like.
- *Loose*: each bar has its own, and nothing is asked of its like, which gives a bound.
- *Exact*: each bar has its own, and one more variable for each kind names the way from which its bars may differ at the
  price of one thing broken each.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass
from math import inf

import numpy as np

from core.planner.network import Network, cheapest
from core.planner.problem import Problem
from core.planner.tables import Scale, Table, bar_table, crossing_costs, most_ways

ALL_WAYS = 300  # ways of a bar that may be told apart, where bars of one kind are fixed differently


@dataclass(frozen=True)
class Model:
    """A network and what its values mean.

    Attributes:
        network: The network.
        tables: For each bar the ways that its variable chooses from.
        variables: For each bar its variable.
        exact: Its cheapest choice is the best bowing under what the model asks.
    """

    network: Network
    tables: tuple[Table, ...]
    variables: tuple[int, ...]
    exact: bool = True


@dataclass(frozen=True)
class Answer:
    """The cheapest bowing of a model.

    Attributes:
        total: Its cost, infinite where there is none.
        ways: For each bar its table and the row chosen.
    """

    total: float
    ways: tuple[tuple[Table, int], ...] = ()


def solve(model: Model | None, go_on: Callable[[], None]) -> Answer:
    """The cheapest bowing of a model; none where there is no model."""
    if model is None:
        return Answer(inf)
    choice = cheapest(model.network, go_on)
    if not choice.values:
        return Answer(inf)
    ways = ((table, choice.values[v]) for table, v in zip(model.tables, model.variables, strict=True))
    return Answer(choice.cost, tuple(ways))


def alike(problem: Problem, scale: Scale) -> Model | None:
    """One variable for each kind; None where what is fixed cannot be had in all bars of some kind."""
    groups = kinds(problem)
    found = {kind: bar_table(problem, scale, bars) for kind, bars in groups.items()}
    network, variables = Network(), {}
    for kind, table in found.items():
        if table is None:
            return None
        variables[kind] = network.add(table.costs)
    tables = tuple(table for bar in problem.bars if (table := found[bar.kind]) is not None)
    return _connected(problem, scale, network, tables, tuple(variables[bar.kind] for bar in problem.bars))


def loose(problem: Problem, scale: Scale) -> Model | None:
    """One variable for each bar; None where what is fixed cannot be had."""
    tables = _tables_of_bars(problem, scale)
    if tables is None:
        return None
    network = Network()
    variables = tuple(network.add(table.costs) for table in tables)
    return _connected(problem, scale, network, tables, variables)


def exact(problem: Problem, scale: Scale) -> Model | None:
    """A variable for each bar and each kind; None where what is fixed cannot be had."""
    differing = {kind for kind, bars in kinds(problem).items() if _fixed_differently(problem, bars)}
    listed = {number for number, bar in enumerate(problem.bars) if bar.kind in differing}
    few = all(most_ways(problem, number) <= ALL_WAYS for number in listed)
    tables = _tables_of_bars(problem, scale, listed if few else set())
    if tables is None:
        return None
    network = Network()
    variables = tuple(network.add(table.costs) for table in tables)
    for bars in kinds(problem).values():
        if len(bars) < 2:
            continue
        ways = [_ways(tables[bar]) for bar in bars]
        times = Counter(way for of_bar in ways for way in set(of_bar))
        shared = {way: number for number, way in enumerate(way for way, count in times.items() if count > 1)}
        # the last value stands for a way that no second bar has: then only one of the bars is like it
        common = network.add(np.array([0.0] * len(shared) + [-float(scale.broken)]))
        for bar, of_bar in zip(bars, ways, strict=True):
            costs = np.full((len(shared) + 1, len(of_bar)), float(scale.broken))
            for number, way in enumerate(of_bar):
                if way in shared:
                    costs[shared[way], number] = 0
            network.connect(common, variables[bar], costs)
    return _connected(problem, scale, network, tables, variables, exact=few)


def kinds(problem: Problem) -> dict[int, list[int]]:
    """The bars of each kind, as indexes in ``Problem.bars``."""
    found: dict[int, list[int]] = {}
    for number, bar in enumerate(problem.bars):
        found.setdefault(bar.kind, []).append(number)
    return found


def _tables_of_bars(
    problem: Problem, scale: Scale, listed: Collection[int] = frozenset()
) -> tuple[Table, ...] | None:
    """For each bar its own table, every way for itself in those listed; None where one has no way."""
    tables = []
    for number in range(len(problem.bars)):
        table = bar_table(problem, scale, [number], every_way=number in listed)
        if table is None:
            return None
        tables.append(table)
    return tuple(tables)


def _connected(
    problem: Problem,
    scale: Scale,
    network: Network,
    tables: tuple[Table, ...],
    variables: tuple[int, ...],
    *,
    exact: bool = True,
) -> Model:
    for crossing in problem.crossings:
        costs = crossing_costs(problem, scale, crossing, tables[crossing.before], tables[crossing.after])
        network.connect(variables[crossing.before], variables[crossing.after], costs)
    return Model(network, tables, variables, exact)


def _ways(table: Table) -> list[bytes]:
    """What tells the rows of a table apart: the first direction, joins and retakes."""
    return [row.tobytes() for row in np.column_stack((table.begins, table.joins, table.retakes)).astype(np.int8)]


def _fixed_differently(problem: Problem, bars: Sequence[int]) -> bool:
    """Whether what is fixed or what slurs cost is not the same in bars of one kind."""
    asked = {
        tuple(
            (note.joined if place else None, note.hooked, note.bow, note.retake, note.join_cost if place else 0)
            for place, note in enumerate(problem.notes[problem.bars[bar].first : problem.bars[bar].stop])
        )
        for bar in bars
    }
    return len(asked) > 1
