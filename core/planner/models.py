"""A problem as a network: a choice for each kind of bar, or for each bar.

- *Alike*: all bars of one kind share a choice, so that none differs from its like.
- *Loose*: each bar has its own, and nothing is asked of its like, which gives a bound.
- *Exact*: each bar has its own, and one more for each kind names the way from which its bars may differ at the price of
  one thing broken each.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from math import inf

import numpy as np

from core.planner.network import Costs, Network, cheapest, least
from core.planner.problem import Problem
from core.planner.tables import Scale, Table, bar_table, crossing_costs
from core.planner.ways import Ints, Ways


@dataclass(frozen=True)
class Group:
    """Bars that are bowed alike.

    Attributes:
        bars: Indexes in ``Problem.bars``.
        table: The ways that they choose from.
        first, last: The variables that say what their first and their last stroke are.
    """

    bars: tuple[int, ...]
    table: Table
    first: int
    last: int


@dataclass(frozen=True)
class Model:
    """A network and what its values mean.

    Attributes:
        network: The network.
        groups: The bars bowed alike.
        group_of: For each bar its group.
    """

    network: Network
    groups: tuple[Group, ...]
    group_of: tuple[int, ...]

    def of_bar(self, number: int) -> Group:
        """The group of a bar, by index in ``Problem.bars``."""
        return self.groups[self.group_of[number]]


@dataclass(frozen=True)
class Answer:
    """The cheapest bowing of a model.

    Attributes:
        total: Its cost, infinite where there is none.
        ways: For each bar its ways and the one chosen.
    """

    total: float
    ways: tuple[tuple[Ways, int], ...] = ()


def solve(model: Model | None, go_on: Callable[[], None]) -> Answer:
    """The cheapest bowing of a model; none where there is no model.

    Raises:
        TooManyCombinationsError: the memory allowed is not enough.
    """
    if model is None:
        return Answer(inf)
    choice = cheapest(model.network, go_on)
    if not choice.values:
        return Answer(inf)
    chosen = [
        (group.table.ways, group.table.cheapest(choice.values[group.first], choice.values[group.last]))
        for group in model.groups
    ]
    return Answer(choice.cost, tuple(chosen[group] for group in model.group_of))


def solve_with(model: Model, forced: Mapping[int, int], go_on: Callable[[], None]) -> Answer:
    """The cheapest bowing of a model in which the bars of some groups, by number, are bowed in a given way.

    Raises:
        TooManyCombinationsError: the memory allowed is not enough.
    """
    network = Network(list(model.network.alone), dict(model.network.pairs))
    groups = list(model.groups)
    for number, way in forced.items():
        group = model.groups[number]
        ways, way_costs = group.table.ways, group.table.way_costs
        costs = np.full(group.table.costs.shape, inf)
        costs[ways.begins[way], ways.finishes[way]] = way_costs[way]
        network.pairs[group.first, group.last] = costs
        alone = np.where(np.arange(len(ways)) == way, way_costs, inf)
        groups[number] = replace(group, table=replace(group.table, costs=costs, way_costs=alone))
    return solve(replace(model, network=network, groups=tuple(groups)), go_on)


def alike(problem: Problem, scale: Scale) -> Model | None:
    """One choice for each kind; None where what is fixed cannot be had in all bars of some kind."""
    return grouped(problem, scale, tuple(kinds(problem).values()))


def loose(problem: Problem, scale: Scale) -> Model | None:
    """A choice for each bar; None where what is fixed cannot be had."""
    return grouped(problem, scale, tuple([number] for number in range(len(problem.bars))))


class Exact:
    """Bars for themselves, each that differs from its like at a price.

    Only ways of a bar with which the loose model stays below a limit are looked at, so that a limit near what is
    possible leaves little to search.
    """

    def __init__(self, problem: Problem, scale: Scale, model: Model, go_on: Callable[[], None]) -> None:
        """Prepare the search.

        Args:
            problem: The problem.
            scale: Its weights.
            model: Its loose model.
            go_on: Called now and then; raises to stop.
        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        self._problem, self._scale, self._go_on = problem, scale, go_on
        self._tables = [group.table for group in model.groups]
        self._totals = totals_by_way(model, go_on)

    def under(self, limit: float) -> Answer:
        """The best bowing that costs less than a limit; an infinite total where there is none.

        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        problem, scale, tables = self._problem, self._scale, self._tables
        kept = [np.flatnonzero(totals < limit) for totals in self._totals]
        if not all(len(ways) for ways in kept):
            return Answer(inf)
        groups = kinds(problem)
        for bars in groups.values():
            if not _fixed_differently(problem, bars):
                for bar in bars:
                    kept[bar] = _cheapest_of_its_ends(tables[bar], kept[bar])
        network = Network()
        variables = [network.add(table.way_costs[ways]) for table, ways in zip(tables, kept, strict=True)]
        for bars in groups.values():
            _make_alike(scale, network, [(variables[bar], tables[bar].ways, kept[bar]) for bar in bars])
        for crossing in problem.crossings:
            before, after = tables[crossing.before], tables[crossing.after]
            costs = crossing_costs(problem, scale, crossing, before, after)
            last, first = before.ways.finishes[kept[crossing.before]], after.ways.begins[kept[crossing.after]]
            network.connect(variables[crossing.before], variables[crossing.after], costs[last[:, None], first[None, :]])
        choice = cheapest(network, self._go_on, strike_out=True)
        if choice.cost >= limit:
            return Answer(inf)
        chosen = (
            (table.ways, int(ways[choice.values[variable]]))
            for table, ways, variable in zip(tables, kept, variables, strict=True)
        )
        return Answer(choice.cost, tuple(chosen))


def with_differing(problem: Problem, scale: Scale, answer: Answer) -> Answer:
    """A bowing of the loose model with the price of bars that differ from most of their like."""
    differing = 0
    for bars in kinds(problem).values():
        chosen = [answer.ways[bar] for bar in bars]
        times = Counter(name for ways, way in chosen for name in _names(ways, np.array([way])))
        differing += len(bars) - max(times.values())
    return replace(answer, total=answer.total + differing * scale.broken)


def totals_by_way(model: Model, go_on: Callable[[], None]) -> list[Costs]:
    """For each group and each way of its bars, what the cheapest bowing with it costs; infinite where there is none.

    Raises:
        TooManyCombinationsError: the memory allowed is not enough.
    """
    lowest = least(model.network, [(group.first, group.last) for group in model.groups], go_on)
    totals = []
    for group, costs in zip(model.groups, lowest, strict=True):
        ends = group.table.ways.begins, group.table.ways.finishes
        with np.errstate(invalid="ignore"):  # impossible beside impossible is not a number
            total = costs[ends] - group.table.costs[ends] + group.table.way_costs
        totals.append(np.where(np.isnan(total), inf, total))
    return totals


def _cheapest_of_its_ends(table: Table, ways: Ints) -> Ints:
    """Of some ways, the cheapest for each choice of ends."""
    order = np.lexsort((ways, table.way_costs[ways], table.ways.finishes[ways], table.ways.begins[ways]))
    ways = ways[order]
    ends = np.stack((table.ways.begins[ways], table.ways.finishes[ways]))
    best: Ints = ways[np.append(True, (ends[:, 1:] != ends[:, :-1]).any(axis=0))]
    return best


def _make_alike(scale: Scale, network: Network, bars: Sequence[tuple[int, Ways, Ints]]) -> None:
    """Let bars of one kind differ from a common way at the price of one thing broken each.

    Args:
        scale: The weights.
        network: Gets a variable for the common way.
        bars: For each bar its variable, its ways, and which of them the values stand for.
    """
    if len(bars) < 2:
        return
    named = [_names(ways, kept) for _, ways, kept in bars]
    times = Counter(name for names in named for name in names)
    shared = {name: number for number, name in enumerate(name for name, count in times.items() if count > 1)}
    # the last value stands for a way that no second bar has: then one bar is like it, and no more
    common = network.add(np.array([0.0] * len(shared) + [-float(scale.broken)]))
    for (variable, _, _), names in zip(bars, named, strict=True):
        costs = np.full((len(shared) + 1, len(names)), float(scale.broken))
        for number, name in enumerate(names):
            if name in shared:
                costs[shared[name], number] = 0
        network.connect(common, variable, costs)


def _names(ways: Ways, kept: Ints) -> list[bytes]:
    """What tells ways apart: directions and joins."""
    rows = np.concatenate((ways.bows[kept], ways.joins[kept]), axis=1).astype(np.int8)
    return [row.tobytes() for row in rows]


def grouped(problem: Problem, scale: Scale, groups: Sequence[Sequence[int]]) -> Model | None:
    """A model in which the bars of each group, all of one kind, are bowed alike; None where that cannot be."""
    network = Network()
    found = []
    for bars in groups:
        table = bar_table(problem, scale, bars)
        if table is None:
            return None
        first, last = (network.add(np.zeros(size)) for size in table.costs.shape)
        network.connect(first, last, table.costs)
        found.append(Group(tuple(bars), table, first, last))
    numbers = {bar: number for number, bars in enumerate(groups) for bar in bars}
    model = Model(network, tuple(found), tuple(numbers[bar] for bar in range(len(problem.bars))))
    for crossing in problem.crossings:
        before, after = model.of_bar(crossing.before), model.of_bar(crossing.after)
        costs = crossing_costs(problem, scale, crossing, before.table, after.table)
        network.connect(before.last, after.first, costs)
    return model


def kinds(problem: Problem) -> dict[int, list[int]]:
    """The bars of each kind, as indexes in ``Problem.bars``."""
    found: dict[int, list[int]] = {}
    for number, bar in enumerate(problem.bars):
        found.setdefault(bar.kind, []).append(number)
    return found


def _fixed_differently(problem: Problem, bars: Sequence[int]) -> bool:
    """Whether what is fixed or what slurs cost is not the same in bars of one kind."""
    asked = {
        tuple(
            (note.hooked, note.bow, note.retake, *((note.joined, note.join_cost, note.apart_cost) if place else ()))
            for place, note in enumerate(problem.notes_of(bar))
        )
        for bar in bars
    }
    return len(asked) > 1
