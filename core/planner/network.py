"""Variables with few values each, what each value costs, and what pairs of values cost: the cheapest choice, exactly.

Variables are eliminated one by one, the one that touches the fewest combinations first (bucket elimination; R. Dechter,
Artificial Intelligence 113, 1999, 41, from memory); if asked for, values that can never be better than another one are
struck out before. Costs are whole numbers held as floats, exact up to 2**53. Nothing here knows of bows.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import field
from heapq import heapify, heappop, heappush
from math import inf, prod
from typing import NamedTuple, TypeAlias

import numpy as np
from numpy.typing import NDArray

from core.values import dataclass

Costs: TypeAlias = NDArray[np.float64]

MOST_COMBINATIONS = 4_000_000
MOST_COMPARED = 2_000_000
SWEEPS = 3  # what is left then is soon eliminated


class TooManyCombinationsError(Exception):
    """The variables hang together too closely to be eliminated in the memory allowed."""


@dataclass
class Network:
    """A network under construction.

    Attributes:
        alone: For each variable, what each of its values costs.
        pairs: By two variables, the smaller first: what each two of their values cost together.
    """

    alone: list[Costs] = field(default_factory=list)
    pairs: dict[tuple[int, int], Costs] = field(default_factory=dict)

    def add(self, costs: Costs) -> int:
        """Add a variable; gives its number."""
        self.alone.append(costs)
        return len(self.alone) - 1

    def copy(self) -> Network:
        """Another one to build on."""
        return Network(list(self.alone), dict(self.pairs))

    def connect(self, first: int, second: int, costs: Costs) -> None:
        """Let two variables cost something together, on top of what they cost already.

        Args:
            first, second: Variables, perhaps the same one.
            costs: Values of the first x values of the second; infinite for what may not be.
        """
        if first == second:
            self.alone[first] = self.alone[first] + np.diagonal(costs)
            return
        if first > second:
            first, second, costs = second, first, costs.T
        known = self.pairs.get((first, second))
        self.pairs[first, second] = costs if known is None else known + costs


class Choice(NamedTuple):
    """A value for each variable.

    Attributes:
        cost: Of all of them together; infinite where nothing is possible.
        values: By variable; empty where nothing is possible.
    """

    cost: float
    values: tuple[int, ...]


NOTHING = Choice(inf, ())


def cheapest(
    network: Network, go_on: Callable[[], None], *, strike_out: bool = False, most: int = MOST_COMBINATIONS
) -> Choice:
    """Find the cheapest choice; of several, the one with the lowest values in the order of elimination.

    Args:
        network: The network.
        go_on: Called now and then; raises to stop.
        strike_out: First strike out values that are never better than others, which pays where variables have many.
        most: Combinations that are allowed in one table.
    Raises:
        TooManyCombinationsError: that is not enough.
    """
    left = _Left(network)
    if strike_out:
        left.drop_impossible()
        left.strike_out(go_on)
    if not all(len(values) for values in left.values):
        return NOTHING
    left.part_at_settled()
    picked = Elimination(left, go_on, most).cheapest()
    values = zip(left.values, picked.values, strict=bool(picked.values))
    return Choice(picked.cost, tuple(int(kept[value]) for kept, value in values))


def eliminated(network: Network, go_on: Callable[[], None]) -> Elimination:
    """Eliminate all variables of a network, to ask more than one thing of it.

    Raises:
        TooManyCombinationsError: the memory allowed is not enough.
    """
    return Elimination(_Left(network), go_on)


class Elimination:
    """A network whose variables have been eliminated."""

    def __init__(self, left: _Left, go_on: Callable[[], None], most: int = MOST_COMBINATIONS) -> None:
        self._steps = left.eliminate(go_on, most)

    def cheapest(self) -> Choice:
        """The cheapest choice; of several, the one with the lowest values in the order of elimination."""
        cost = sum(float(step.table.min()) for step in self._steps if not step.others)
        if cost == inf:
            return NOTHING
        picked: dict[int, int] = {}
        for step in reversed(self._steps):
            picked[step.variable] = int(np.argmin(step.table[step.column(picked)]))
        return Choice(cost, tuple(picked[variable] for variable in range(len(picked))))

    def least(self, pairs: Sequence[tuple[int, int]], go_on: Callable[[], None]) -> list[Costs]:
        """For each two values of connected variables, what the cheapest choice with these two costs.

        Args:
            pairs: Two variables each, connected to one another.
            go_on: Called now and then; raises to stop.
        Returns:
            For each pair, values of the first x values of the second.
        """
        steps = self._steps
        place = {step.variable: number for number, step in enumerate(steps)}
        apart = sum(float(step.table.min()) for step in steps if not step.others)
        outside: list[Costs] = [np.zeros(())] * len(steps)  # by step, over its others: the least of all else
        children: list[list[int]] = [[] for _ in steps]
        for number, step in enumerate(steps):
            if step.others:
                children[min(place[other] for other in step.others)].append(number)
        found: dict[frozenset[int], Costs] = {}
        wanted = {frozenset(pair) for pair in pairs}
        for number in range(len(steps) - 1, -1, -1):
            go_on()
            step = steps[number]
            scope = (step.variable, *step.others)
            elsewhere = 0.0 if step.others else apart - float(step.table.min())  # what hangs together apart from this
            table = step.table + outside[number] + elsewhere
            for other in step.others:
                if frozenset((step.variable, other)) in wanted:
                    rest = tuple(axis for axis in range(1, len(scope)) if scope[axis] != other)
                    found[frozenset((step.variable, other))] = table.min(axis=rest)
            for child in children[number]:
                outside[child] = _least_outside(table, scope, steps[child])
        tables = []
        for first, second in pairs:
            table = found[frozenset((first, second))]
            tables.append(table if place[first] < place[second] else table.T)
        return tables


def _least_outside(table: Costs, scope: Sequence[int], child: _Step) -> Costs:
    """Of a table over some variables, the least for each choice of what an earlier step touches, without its part."""
    axes = tuple(axis for axis, variable in enumerate(scope) if variable not in child.others)
    order = [variable for variable in scope if variable in child.others]
    least_here = table.min(axis=axes).transpose([order.index(variable) for variable in child.others])
    with np.errstate(invalid="ignore"):  # impossible both ways
        outside: Costs = np.nan_to_num(least_here - child.table.min(axis=0), nan=inf, posinf=inf)
    return outside


class _Step(NamedTuple):
    """One elimination: what each value of a variable costs at best, for each choice of the others it touches."""

    variable: int
    others: tuple[int, ...]
    table: Costs

    def column(self, picked: Mapping[int, int]) -> tuple[slice | int, ...]:
        """Where the table tells of the variable, the values of the others being picked."""
        return (slice(None), *(picked[other] for other in self.others))


class _Left:
    """What is left of a network while values are struck out."""

    def __init__(self, network: Network) -> None:
        self.alone = list(network.alone)
        self.tables: list[dict[int, Costs]] = [{} for _ in self.alone]  # by variable and neighbour, own values first
        for (first, second), costs in network.pairs.items():
            self.tables[first][second] = costs
            self.tables[second][first] = costs.T
        self.values = [np.arange(len(costs)) for costs in self.alone]

    def drop_impossible(self) -> None:
        """Strike out values that cost infinitely much alone."""
        for variable, costs in enumerate(self.alone):
            possible = np.isfinite(costs)
            if not possible.all():
                self._keep(variable, np.flatnonzero(possible))

    def part_at_settled(self) -> None:
        """Take variables with one value out of the tables: what they cost depends on the other one alone."""
        for variable, costs in enumerate(self.alone):
            if len(costs) == 1:
                for neighbour, table in self.tables[variable].items():
                    self.alone[neighbour] = self.alone[neighbour] + table[0]
                    del self.tables[neighbour][variable]
                self.tables[variable] = {}

    def strike_out(self, go_on: Callable[[], None]) -> None:
        """Strike out values that are impossible, or never better than another one of the same variable."""
        waiting = set(range(len(self.alone)))
        for _ in range(SWEEPS):
            again: set[int] = set()
            for variable in sorted(waiting, key=lambda one: len(self.values[one])):
                go_on()
                kept = self._possible(variable)
                if kept.all():
                    kept = self._worth_keeping(variable)
                if not kept.all():
                    self._keep(variable, np.flatnonzero(kept))
                    again.add(variable)
                    again.update(self.tables[variable])
            waiting = again

    def _possible(self, variable: int) -> NDArray[np.bool_]:
        kept: NDArray[np.bool_] = np.isfinite(self.alone[variable])
        for costs in self.tables[variable].values():
            kept &= np.isfinite(costs).any(axis=1)
        return kept

    def _worth_keeping(self, variable: int) -> NDArray[np.bool_]:
        """Which values are not beaten by another whatever the neighbours are; all of them finite somewhere."""
        alone = self.alone[variable]
        count = len(alone)
        kept = np.ones(count, bool)
        widest = max((costs.shape[1] for costs in self.tables[variable].values()), default=1)
        if count < 2 or count * count * widest > MOST_COMPARED:
            return kept
        worse = alone[:, None] - alone[None, :]  # how much worse the first value is than the second, at worst
        with np.errstate(invalid="ignore"):  # impossible beside impossible says nothing
            for costs in self.tables[variable].values():
                by_neighbour = np.ascontiguousarray(costs.T)  # so that all values are compared at once
                worse = worse + np.fmax.reduce(by_neighbour[:, :, None] - by_neighbour[:, None, :], axis=0)
        beats = (worse < 0) | ((worse == 0) & (np.arange(count)[:, None] < np.arange(count)[None, :]))
        kept[beats.any(axis=0)] = False
        return kept

    def _keep(self, variable: int, kept: NDArray[np.intp]) -> None:
        self.values[variable] = self.values[variable][kept]
        self.alone[variable] = self.alone[variable][kept]
        for neighbour, costs in self.tables[variable].items():
            costs = costs[kept]
            self.tables[variable][neighbour] = costs
            self.tables[neighbour][variable] = costs.T

    def eliminate(self, go_on: Callable[[], None], most: int) -> list[_Step]:
        """Eliminate every variable; the steps in order. Nothing is left afterwards."""
        sizes = [len(values) for values in self.values]
        touching = [set(tables) for tables in self.tables]
        wide: list[list[tuple[tuple[int, ...], Costs]]] = [[] for _ in sizes]  # tables of three variables and more
        waiting = [(_combinations(one, sizes, touching), one) for one in range(len(sizes))]
        heapify(waiting)
        current = {one: combinations for combinations, one in waiting}
        steps = []
        while waiting:
            combinations, variable = heappop(waiting)
            if current.get(variable) != combinations:
                continue  # it has touched others since
            del current[variable]
            if combinations > most:
                raise TooManyCombinationsError
            go_on()
            others = tuple(touching[variable])
            table = self._sum(variable, others, wide[variable])
            steps.append(_Step(variable, others, table))
            self._tell(variable, others, np.minimum.reduce(table), wide)
            for other in others:
                touching[other].update(others)
                touching[other] -= {other, variable}
                now = _combinations(other, sizes, touching)
                if now != current[other]:
                    current[other] = now
                    heappush(waiting, (now, other))
        return steps

    def _sum(self, variable: int, others: tuple[int, ...], wide: Sequence[tuple[tuple[int, ...], Costs]]) -> Costs:
        """What each value of a variable costs, for each choice of the others that it touches."""
        tables = self.tables[variable]
        if len(others) == 2 and not wide:  # most are like this
            one, other = others
            return self.alone[variable][:, None, None] + tables[one][:, :, None] + tables[other][:, None, :]
        total = self.alone[variable].reshape(-1, *(1 for _ in others))
        for axis, other in enumerate(others, 1):
            if other in tables:
                costs = tables[other]
                shape = [1] * (len(others) + 1)
                shape[0], shape[axis] = costs.shape
                total = total + costs.reshape(shape)
        axes = {one: axis for axis, one in enumerate((variable, *others))}
        for variables, costs in wide:
            order = sorted(range(len(variables)), key=lambda place: axes[variables[place]])
            shape = [1] * (len(others) + 1)
            for place in order:
                shape[axes[variables[place]]] = costs.shape[place]
            total = total + costs.transpose(order).reshape(shape)
        return total

    def _tell(
        self, variable: int, others: tuple[int, ...], least: Costs, wide: list[list[tuple[tuple[int, ...], Costs]]]
    ) -> None:
        """Put what a variable costs at best in the place of the variable."""
        for other in others:
            self.tables[other].pop(variable, None)
        if len(others) == 1:
            self.alone[others[0]] = self.alone[others[0]] + least
        elif len(others) == 2:
            one, other = others
            known = self.tables[one].get(other)
            both = least if known is None else known + least
            self.tables[one][other], self.tables[other][one] = both, both.T
        for other in others:
            wide[other] = [part for part in wide[other] if variable not in part[0]]
            if len(others) > 2:
                wide[other].append((others, least))


def _combinations(variable: int, sizes: Sequence[int], touching: Sequence[set[int]]) -> int:
    """How many combinations of values a variable and those that it touches have."""
    return sizes[variable] * prod([sizes[other] for other in touching[variable]])
