"""A problem as a network: a choice for each kind of bar, or for each bar, and for each group of phrases its plan.

- *Alike*: all bars of one kind in one group of phrases share a choice.
- *Loose*: each bar has its own, and nothing is asked of its like, which gives a bound.

A bar can be bowed in the ways that it has under each plan open to it; the choice for its group says which count.
``core.planner.exact`` has the third model.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise
from math import inf
from typing import NamedTuple

import numpy as np

from core.planner.network import Costs, Elimination, Network, cheapest, eliminated
from core.planner.problem import Problem
from core.planner.tables import Scale, Table, bar_table, crossing_costs
from core.planner.ways import Ints, Ways


@dataclass(frozen=True)
class OpenProblem:
    """A problem with plans to choose.

    Attributes:
        problems: The problem under each plan throughout.
        scale: Their weights.
        group_of: For each bar the group of phrases that it takes its plan from; -1 where its plan is settled.
        borders: By two groups, the smaller first: how often a phrase of one stands beside a phrase of the other.
        groups: How many there are.
    """

    problems: tuple[Problem, ...]
    scale: Scale
    group_of: tuple[int, ...]
    borders: Mapping[tuple[int, int], int] = field(default_factory=dict)
    groups: int = 0

    @property
    def first(self) -> Problem:
        """The problem under the first plan; under another only accents differ."""
        return self.problems[0]

    def plans_of(self, bar: int) -> range:
        """The plans that a bar can have, as indexes in ``problems``."""
        return range(len(self.problems) if self.group_of[bar] >= 0 else 1)

    def kinds(self, choice: Sequence[int]) -> dict[Hashable, list[int]]:
        """The bars of each kind under a choice of plans."""
        found: dict[Hashable, list[int]] = {}
        for bar, group in enumerate(self.group_of):
            found.setdefault(self.problems[choice[group] if group >= 0 else 0].bars[bar].kind, []).append(bar)
        return found

    def add_choices(self, network: Network) -> tuple[int, ...]:
        """Add a variable for the plan of each group, each change of plan at its price."""
        plans = len(self.problems)
        chosen = tuple(network.add(np.zeros(plans)) for _ in range(self.groups))
        change = self.first.settings.weights.plan_change
        for (one, other), times in self.borders.items():
            network.connect(chosen[one], chosen[other], times * change * (1 - np.eye(plans)))
        return chosen

    def crossings(self, number: int, before: Table, after: Sequence[Table]) -> Iterator[Costs]:
        """What a crossing costs from a bar's ways under one plan to those of the next bar under each of its plans."""
        for problem, table in zip(self.problems, after, strict=False):
            yield crossing_costs(problem, self.scale, problem.crossings[number], before, table)


def settled(problem: Problem, scale: Scale) -> OpenProblem:
    """A problem whose accents are settled."""
    return OpenProblem((problem,), scale, (-1,) * len(problem.bars))


@dataclass(frozen=True)
class Answer:
    """The cheapest bowing of a model.

    Attributes:
        total: Its cost, changes of plan included; infinite where there is none.
        ways: For each bar its ways and the one chosen.
        choice: For each group of phrases its plan.
    """

    total: float
    ways: tuple[tuple[Ways, int], ...] = ()
    choice: tuple[int, ...] = ()

    def differing(self, problem: OpenProblem) -> dict[Hashable, int]:
        """By kind, how many bars are bowed otherwise than most of their like; kinds without any are left out."""
        found = {}
        for kind, bars in problem.kinds(self.choice).items() if self.ways else ():
            chosen = Counter(self.ways[bar] for bar in bars)
            if len(chosen) > 1:  # perhaps the same, listed for other bars
                times: Counter[bytes] = Counter()
                for (ways, way), count in chosen.items():
                    times[names(ways, np.array([way]))[0]] += count
                if len(times) > 1:
                    found[kind] = len(bars) - max(times.values())
        return found


NO_ANSWER = Answer(inf)


class Unit(NamedTuple):
    """Bars that are bowed alike.

    Attributes:
        bars: Indexes in ``Problem.bars``.
        group: The group of phrases that they take their plan from; -1 where it is settled.
        kinds: Their kind under each plan.
        tables: The ways that they choose from under each plan.
        first, last: The variables that say what their first and their last stroke are: values under one plan behind
            those under the plan before.
    """

    bars: tuple[int, ...]
    group: int
    kinds: tuple[Hashable, ...]
    tables: tuple[Table, ...]
    first: int
    last: int

    def chosen(self, first: int, last: int) -> tuple[Ways, int]:
        """The ways and the one of them that two values stand for, which are of one plan."""
        for table in self.tables:
            height, width = table.costs.shape
            if first < height:
                return table.ways, table.cheapest(first, last)
            first, last = first - height, last - width
        raise IndexError("no such values")

    def totals(self, by_ends: Costs) -> list[Costs]:
        """For each plan, what the cheapest bowing with each way costs, given what it costs with each two values."""
        found = []
        row = column = 0
        for table in self.tables:
            height, width = table.costs.shape
            found.append(table.totals(by_ends[row : row + height, column : column + width]))
            row, column = row + height, column + width
        return found


class Model:
    """A network and what its values mean.

    Attributes:
        problem: Of what.
        network: The network; never changed once it has been asked for something.
        chosen: For each group of phrases the variable that says which plan it takes.
        units: The bars bowed alike.
    """

    def __init__(
        self, problem: OpenProblem, network: Network, chosen: tuple[int, ...], units: tuple[Unit, ...],
        *, thinned: bool = False,
    ) -> None:  # fmt: skip
        self.problem, self.network, self.chosen, self.units = problem, network, chosen, units
        self._thinned = thinned  # many values are out of the question
        self._elimination: Elimination | None = None

    def solve(self, go_on: Callable[[], None]) -> Answer:
        """The cheapest bowing.

        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        choice = cheapest(self.network, go_on) if self._thinned else self._eliminated(go_on).cheapest()
        if not choice.values:
            return NO_ANSWER
        ways: dict[int, tuple[Ways, int]] = {}
        for unit in self.units:
            ways.update(dict.fromkeys(unit.bars, unit.chosen(choice.values[unit.first], choice.values[unit.last])))
        plans = tuple(choice.values[variable] for variable in self.chosen)
        return Answer(choice.cost, tuple(ways[bar] for bar in range(len(ways))), plans)

    def least(self, go_on: Callable[[], None]) -> list[Costs]:
        """For each unit, what the cheapest bowing costs with each two values of its first and last stroke.

        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        return self._eliminated(go_on).least([(unit.first, unit.last) for unit in self.units], go_on)

    def totals_by_way(self, go_on: Callable[[], None]) -> list[list[Costs]]:
        """For each unit, plan and way, what the cheapest bowing with it costs; infinite where there is none.

        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        return [unit.totals(costs) for unit, costs in zip(self.units, self.least(go_on), strict=True)]

    def under(self, limit: float, go_on: Callable[[], None]) -> Model:
        """The same without what only bowings have that cost the limit or more.

        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        network = self.network.copy()
        for unit, costs in zip(self.units, self.least(go_on), strict=True):
            for variable, axis in ((unit.first, 1), (unit.last, 0)):
                network.alone[variable] = np.where(costs.min(axis=axis) < limit, 0.0, inf)
        return Model(self.problem, network, self.chosen, self.units, thinned=True)

    def forced(self, ways: Mapping[int, int]) -> Model:
        """The same where the bars of some units, by number and with one plan each, are bowed in a given way."""
        network, units = self.network.copy(), list(self.units)
        for number, way in ways.items():
            unit = units[number]
            (table,) = unit.tables
            costs = np.full(table.costs.shape, inf)
            costs[table.ways.begins[way], table.ways.finishes[way]] = table.way_costs[way]
            network.pairs[unit.first, unit.last] = costs
            alone = np.where(np.arange(len(table.ways)) == way, table.way_costs, inf)
            units[number] = unit._replace(tables=(replace(table, costs=costs, way_costs=alone),))
        return Model(self.problem, network, self.chosen, tuple(units))

    def tied(self, answer: Answer) -> Model | None:
        """The same where bars of one kind that an answer begins or ends otherwise must begin or end alike.

        Returns:
            None where the answer begins and ends all of them alike.
        """
        of_kind: dict[Hashable, list[Unit]] = defaultdict(list)
        for unit in self.units:
            of_kind[unit.kinds[answer.choice[unit.group] if unit.group >= 0 else 0]].append(unit)
        network = self.network.copy()
        apart = False
        for units in of_kind.values():
            for one, other in pairwise(units):
                for at_start in (True, False):
                    if _end(answer, one, at_start=at_start) != _end(answer, other, at_start=at_start):
                        apart = True
                        _tie(network, one, other, at_start=at_start)
        return Model(self.problem, network, self.chosen, self.units, thinned=self._thinned) if apart else None

    def _eliminated(self, go_on: Callable[[], None]) -> Elimination:
        if self._elimination is None:
            self._elimination = eliminated(self.network, go_on)
        return self._elimination


def alike(problem: OpenProblem) -> Model | None:
    """One choice for bars of one group of phrases that are of one kind under each plan; None where that cannot be."""
    found: dict[Hashable, list[int]] = {}
    for bar, group in enumerate(problem.group_of):
        kinds = tuple(problem.problems[plan].bars[bar].kind for plan in problem.plans_of(bar))
        found.setdefault((group, kinds), []).append(bar)
    return grouped(problem, tuple(found.values()))


def loose(problem: OpenProblem) -> Model | None:
    """A choice for each bar; None where what is fixed cannot be had."""
    return grouped(problem, tuple([bar] for bar in range(len(problem.group_of))))


def grouped(problem: OpenProblem, groups: Sequence[Sequence[int]]) -> Model | None:
    """A model in which some bars, of one kind and one group of phrases, are bowed alike; None where that cannot be."""
    network = Network()
    chosen = problem.add_choices(network)
    units = []
    for bars in groups:
        unit = _unit(network, problem, tuple(bars))
        if unit is None:
            return None
        units.append(unit)
        if unit.group >= 0:
            network.connect(chosen[unit.group], unit.first, which_plan([len(table.costs) for table in unit.tables]))
    of_bar = {bar: unit for unit in units for bar in unit.bars}
    for number, crossing in enumerate(problem.first.crossings):
        before, after = of_bar[crossing.before], of_bar[crossing.after]
        costs = side_by_side([list(problem.crossings(number, table, after.tables)) for table in before.tables])
        network.connect(before.last, after.first, costs)
    return Model(problem, network, chosen, tuple(units))


def _unit(network: Network, problem: OpenProblem, bars: tuple[int, ...]) -> Unit | None:
    under = [problem.problems[plan] for plan in problem.plans_of(bars[0])]
    tables = []
    for one in under:
        table = bar_table(one, problem.scale, bars)
        if table is None:
            return None  # what is fixed is the same under every plan
        tables.append(table)
    costs = _on_the_diagonal([table.costs for table in tables])
    first, last = (network.add(np.zeros(size)) for size in costs.shape)
    network.connect(first, last, costs)
    kinds = tuple(one.bars[bars[0]].kind for one in under)
    return Unit(bars, problem.group_of[bars[0]], kinds, tuple(tables), first, last)


def _on_the_diagonal(blocks: Sequence[Costs]) -> Costs:
    """One table of tables of which no two can be had together."""
    if len(blocks) == 1:
        return blocks[0]
    costs = np.full((sum(len(block) for block in blocks), sum(block.shape[1] for block in blocks)), inf)
    row = column = 0
    for block in blocks:
        height, width = block.shape
        costs[row : row + height, column : column + width] = block
        row, column = row + height, column + width
    return costs


def which_plan(sizes: Sequence[int]) -> Costs:
    """Forbids values of one plan where the other is chosen: plans x values, of which each plan has so many."""
    plan_of = np.repeat(np.arange(len(sizes)), sizes)
    costs: Costs = np.where(np.arange(len(sizes))[:, None] == plan_of[None, :], 0.0, inf)
    return costs


def side_by_side(blocks: Sequence[Sequence[Costs]]) -> Costs:
    """One table of tables in rows and columns."""
    if len(blocks) == len(blocks[0]) == 1:
        return blocks[0][0]
    return np.concatenate([np.concatenate(row, axis=1) for row in blocks])


def names(ways: Ways, kept: Ints) -> list[bytes]:
    """What tells ways apart: directions and joins."""
    rows = np.concatenate((ways.bows[kept], ways.joins[kept]), axis=1).astype(np.int8)
    return [row.tobytes() for row in rows]


def _end(answer: Answer, unit: Unit, *, at_start: bool) -> tuple[int, int]:
    """Direction and ticks of the first or last stroke of a unit in an answer."""
    ways, way = answer.ways[unit.bars[0]]
    ends, number = (ways.first, ways.begins[way]) if at_start else (ways.last, ways.finishes[way])
    return int(ends.bows[number]), int(ends.ticks[number])


def _tie(network: Network, one: Unit, other: Unit, *, at_start: bool) -> None:
    """Where two units are of one kind, their first or last strokes must be alike."""
    rows, columns = _labels(one, at_start=at_start), _labels(other, at_start=at_start)
    costs = [[inf if kind == its and end != their_end else 0.0 for its, their_end in columns] for kind, end in rows]
    first, second = (unit.first if at_start else unit.last for unit in (one, other))
    network.connect(first, second, np.array(costs))


def _labels(unit: Unit, *, at_start: bool) -> list[tuple[Hashable, tuple[int, int]]]:
    """For each value of a variable the kind of the bar, and direction and ticks of the stroke."""
    labels: list[tuple[Hashable, tuple[int, int]]] = []
    for kind, table in zip(unit.kinds, unit.tables, strict=True):
        ends = table.ways.first if at_start else table.ways.last
        labels += [(kind, end) for end in zip(ends.bows.tolist(), ends.ticks.tolist(), strict=True)]
    return labels
