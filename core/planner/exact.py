"""A problem as a network in which each bar has its own choice and differs from its like at the price of a break.

Only ways of a bar with which the loose model stays below a limit are looked at, so that a limit near what is possible
leaves little to search. For a kind of bars one more variable names the way from which they may differ; a kind is heeded
only once an answer bows some of its bars otherwise than most, so that the network hangs together no more than it must.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Hashable, Sequence
from dataclasses import replace
from typing import NamedTuple

import numpy as np

from core.planner.models import NO_ANSWER, Answer, Model, names, side_by_side, which_plan
from core.planner.network import Costs, Network, cheapest
from core.planner.problem import Problem
from core.planner.tables import Table
from core.planner.ways import Ints, Ways


class _Kept(NamedTuple):
    """What is left of the ways of a bar.

    Attributes:
        plans: Under each plan its kind, its table, and which ways.
        variable: Says which of them is taken; those under one plan stand behind those under the plan before.
    """

    plans: tuple[tuple[Hashable, Table, Ints], ...]
    variable: int

    def way(self, value: int) -> tuple[Ways, int]:
        """The ways and the one of them that a value stands for."""
        for _, table, ways in self.plans:
            if value < len(ways):
                return table.ways, int(ways[value])
            value -= len(ways)
        raise IndexError("no such value")

    def names(self) -> list[tuple[Hashable, bytes]]:
        """For each value the kind of the bar and what tells the way from others."""
        return [(kind, name) for kind, table, ways in self.plans for name in names(table.ways, ways)]


class _Base(NamedTuple):
    """The network without regard to bars that are alike."""

    network: Network
    chosen: tuple[int, ...]
    bars: tuple[_Kept, ...]


class Exact:
    """The search among all bowings."""

    def __init__(self, loose: Model, go_on: Callable[[], None]) -> None:
        """Prepare the search.

        Args:
            loose: The loose model.
            go_on: Called now and then; raises to stop.
        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        self._problem, self._units, self._go_on = loose.problem, loose.units, go_on
        self._totals = loose.totals_by_way(go_on)
        self._heeded: set[Hashable] = set()

    def under(self, limit: float) -> Answer:
        """The best bowing that costs less than a limit; an infinite total where there is none.

        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        best = NO_ANSWER
        base = self._base(limit)
        while base is not None:
            found = self._solve(base)
            if found.total >= limit:
                break
            differing = found.differing(self._problem)
            unheeded = differing.keys() - self._heeded
            real = found.total + self._problem.scale.broken * sum(differing[kind] for kind in unheeded)
            if real < limit:
                best, limit = replace(found, total=real), real
            if not unheeded:
                break
            self._heeded |= unheeded
        return best

    def _base(self, limit: float) -> _Base | None:
        """The network of what is worth keeping; None where some bar has no way left."""
        network = Network()
        chosen = self._problem.add_choices(network)
        bars = []
        for unit, plans in zip(self._units, self._worth_keeping(limit), strict=True):
            costs = np.concatenate([table.way_costs[ways] for _, table, ways in plans])
            if not len(costs):
                return None
            bars.append(_Kept(plans, network.add(costs)))
            if unit.group >= 0:
                sizes = [len(ways) for _, _, ways in plans]
                network.connect(chosen[unit.group], bars[-1].variable, which_plan(sizes))
        for number, crossing in enumerate(self._problem.first.crossings):
            before, after = bars[crossing.before], bars[crossing.after]
            network.connect(before.variable, after.variable, self._crossing(number, before, after))
        return _Base(network, chosen, tuple(bars))

    def _worth_keeping(self, limit: float) -> list[tuple[tuple[Hashable, Table, Ints], ...]]:
        """For each bar and plan the ways with which the loose model stays below a limit.

        Where bars of one kind have the same fixed and the same costs, the cheapest for each choice of ends serves all.
        """
        by_kind: dict[Hashable, list[int]] = defaultdict(list)
        for bar, unit in enumerate(self._units):
            for kind in dict.fromkeys(unit.kinds):
                by_kind[kind].append(bar)
        mixed = {kind for kind, bars in by_kind.items() if _fixed_differently(self._problem.first, bars)}
        found = []
        for unit, totals in zip(self._units, self._totals, strict=True):
            plans = []
            for kind, table, total in zip(unit.kinds, unit.tables, totals, strict=True):
                ways = np.flatnonzero(total < limit)
                plans.append((kind, table, ways if kind in mixed else _cheapest_of_its_ends(table, ways)))
            found.append(tuple(plans))
        return found

    def _crossing(self, number: int, before: _Kept, after: _Kept) -> Costs:
        tables = [table for _, table, _ in after.plans]
        firsts = [table.ways.begins[ways] for _, table, ways in after.plans]
        rows = []
        for _, table, ways in before.plans:
            last = table.ways.finishes[ways][:, None]
            costs = self._problem.crossings(number, table, tables)
            rows.append([block[last, first] for block, first in zip(costs, firsts, strict=True)])
        return side_by_side(rows)

    def _solve(self, base: _Base) -> Answer:
        """The cheapest bowing if bars of the kinds that are heeded, and no others, differ at a price."""
        network = base.network.copy()
        named = [bar.names() for bar in base.bars]
        for kind in self._heeded:
            bars = [number for number, bar in enumerate(base.bars) if any(its == kind for its, _, _ in bar.plans)]
            self._let_differ(network, base, kind, {number: named[number] for number in bars})
        choice = cheapest(network, self._go_on, strike_out=True)
        if not choice.values:
            return NO_ANSWER
        ways = tuple(bar.way(choice.values[bar.variable]) for bar in base.bars)
        return Answer(choice.cost, ways, tuple(choice.values[variable] for variable in base.chosen))

    def _let_differ(
        self, network: Network, base: _Base, kind: Hashable, named: dict[int, list[tuple[Hashable, bytes]]]
    ) -> None:
        """Let bars of one kind differ from a common way at the price of one thing broken each.

        The common way is one that two bars can have, or one that a single bar has: then that bar, whose plan must make
        it of this kind, is like it and no other is. Where no bar is of this kind there is none.

        Args:
            network: Gets a variable for the common way.
            base: What it is made of.
            kind: The kind.
            named: Kind and name of each way of the bars that can be of this kind, by number of the bar.
        """
        broken = float(self._problem.scale.broken)
        times = Counter(name for own in named.values() for its_kind, name in set(own) if its_kind == kind)
        shared = {name: place for place, name in enumerate(name for name, count in times.items() if count > 1)}
        plans_of: dict[int, set[int]] = defaultdict(set)  # by group: under which plans it has bars of this kind
        for number in named:
            plans = (plan for plan, (its_kind, _, _) in enumerate(base.bars[number].plans) if its_kind == kind)
            plans_of[self._problem.group_of[number]].update(plans)
        values = [0.0] * len(shared) + [-broken] * len(plans_of) + [0.0]
        common = network.add(np.array(values))
        for place, (group, its_plans) in enumerate(plans_of.items(), len(shared)):
            if group >= 0:
                costs = np.zeros((len(values), len(self._problem.problems)))
                costs[place, [plan for plan in range(costs.shape[1]) if plan not in its_plans]] = np.inf
                network.connect(common, base.chosen[group], costs)
        for number, own in named.items():
            costs = np.zeros((len(values), len(own)))
            for column, (its_kind, name) in enumerate(own):
                if its_kind == kind:
                    costs[:, column] = broken
                    if name in shared:
                        costs[shared[name], column] = 0
            network.connect(common, base.bars[number].variable, costs)


def _cheapest_of_its_ends(table: Table, ways: Ints) -> Ints:
    """Of some ways, the cheapest for each choice of ends."""
    order = np.lexsort((ways, table.way_costs[ways], table.ways.finishes[ways], table.ways.begins[ways]))
    ways = ways[order]
    ends = np.stack((table.ways.begins[ways], table.ways.finishes[ways]))
    best: Ints = ways[(np.diff(ends, prepend=-1) != 0).any(axis=0)]
    return best


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
