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

from core.planner.divisions import Way
from core.planner.listing import Listing, cheapest_ways, every_way
from core.planner.models import Model
from core.planner.network import Costs, Network, cheapest
from core.planner.open_problem import NO_ANSWER, Answer
from core.planner.problem import Problem
from core.planner.rows import Ints


class _Kept(NamedTuple):
    """What is left of the ways of a bar.

    Attributes:
        plans: Under each plan its kind and its ways.
        plan_of, firsts, lasts: By value of the variable: its plan, and the ends of the way.
        variable: Says which way is taken; those under one plan stand behind those under the plan before.
    """

    plans: tuple[tuple[Hashable, Listing], ...]
    plan_of: Ints
    firsts: Ints
    lasts: Ints
    variable: int

    def way(self, value: int) -> Way:
        """The way that a value stands for."""
        plan = int(self.plan_of[value])
        return self.plans[plan][1].way(value - int(np.searchsorted(self.plan_of, plan)))

    def names(self) -> list[tuple[Hashable, bytes]]:
        """For each value the kind of the bar and what tells the way from others."""
        return [(kind, name) for kind, ways in self.plans for name in ways.names(np.arange(len(ways.costs)))]


class _Base(NamedTuple):
    """The network without regard to bars that are alike."""

    network: Network
    chosen: tuple[int, ...]
    bars: tuple[_Kept, ...]


class Exact:
    """The search among all bowings."""

    def __init__(self, loose: Model, answer: Answer, go_on: Callable[[], None]) -> None:
        """Prepare the search.

        Args:
            loose: The loose model.
            answer: Its answer, as far as it is known: kinds of which bars differ in it are heeded from the beginning.
            go_on: Called now and then; raises to stop.
        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        self._problem, self._layout, self._go_on = loose.problem, loose.layout, go_on
        self._least = loose.least(go_on)
        self._heeded: set[Hashable] = set(answer.differing(self._problem))
        self.complete = True
        self._listed = self._list()

    def _list(self) -> list[list[tuple[Hashable, Listing, Costs]]]:
        """For each bar and plan its kind, ways, and what the cheapest bowing with each costs.

        Where bars of one kind have the same fixed and the same costs, the cheapest for each choice of ends serves all.
        """
        by_kind: dict[Hashable, list[int]] = defaultdict(list)
        for bar, unit in enumerate(self._layout.units):
            for kind in dict.fromkeys(unit.kinds):
                by_kind[kind].append(bar)
        mixed = {kind for kind, bars in by_kind.items() if _fixed_differently(self._problem.first, bars)}
        divisions = self._layout.divisions
        found = []
        for unit in self._layout.units:
            plans = []
            for kind, row in zip(unit.kinds, unit.rows, strict=True):
                every = every_way(divisions, row) if kind in mixed else None
                self.complete &= every is not None or kind not in mixed
                ways = every or cheapest_ways(divisions, row)
                plans.append((kind, ways, ways.totals(self._least[row], divisions.costs[row])))
            found.append(plans)
        return found

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
        every_plan = np.arange(len(self._problem.problems))[:, None]
        bars = []
        for unit, listed in zip(self._layout.units, self._listed, strict=True):
            plans = tuple((kind, ways.only(np.flatnonzero(total < limit))) for kind, ways, total in listed)
            costs = np.concatenate([ways.costs for _, ways in plans])
            if not len(costs):
                return None
            plan_of = np.repeat(np.arange(len(plans)), [len(ways.costs) for _, ways in plans])
            firsts = np.concatenate([ways.firsts for _, ways in plans])
            lasts = np.concatenate([ways.lasts for _, ways in plans])
            bars.append(_Kept(plans, plan_of, firsts, lasts, network.add(costs)))
            if unit.group >= 0:
                wrong = np.where(every_plan == plan_of, 0.0, np.inf)
                network.connect(chosen[unit.group], bars[-1].variable, wrong)
        for number, crossing in enumerate(self._problem.first.crossings):
            before, after = bars[crossing.before], bars[crossing.after]
            costs = self._layout.crossings[after.plan_of, number, before.lasts[:, None], after.firsts]
            network.connect(before.variable, after.variable, costs)
        return _Base(network, chosen, tuple(bars))

    def _solve(self, base: _Base) -> Answer:
        """The cheapest bowing if bars of the kinds that are heeded, and no others, differ at a price."""
        network = base.network.copy()
        firsts, lasts = self._layout.worth_keeping
        for unit, bar in zip(self._layout.units, base.bars, strict=True):
            if self._heeded.isdisjoint(unit.kinds):  # then nothing but its ends matters
                rows = unit.rows[0] + bar.plan_of
                worth = firsts[rows, bar.firsts] & lasts[rows, bar.lasts]
                network.alone[bar.variable] = np.where(worth, network.alone[bar.variable], np.inf)
        for kind in self._heeded:
            bars = [number for number, bar in enumerate(base.bars) if any(its == kind for its, _ in bar.plans)]
            self._let_differ(network, base, kind, {number: base.bars[number].names() for number in bars})
        choice = cheapest(network, self._go_on, strike_out=True)
        if not choice.values:
            return NO_ANSWER
        values = [choice.values[bar.variable] for bar in base.bars]
        run_on = tuple(
            [
                bool(self._layout.run_on[after.plan_of[then], number, before.lasts[now], after.firsts[then]])
                for number, crossing in enumerate(self._problem.first.crossings)
                for before, now in [(base.bars[crossing.before], values[crossing.before])]
                for after, then in [(base.bars[crossing.after], values[crossing.after])]
            ]
        )
        ways = tuple([bar.way(value) for bar, value in zip(base.bars, values, strict=True)])
        return Answer(choice.cost, ways, run_on, tuple([choice.values[variable] for variable in base.chosen]))

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
            plans = (plan for plan, (its_kind, _) in enumerate(base.bars[number].plans) if its_kind == kind)
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


def _fixed_differently(problem: Problem, bars: Sequence[int]) -> bool:
    """Whether limits, what is fixed or what slurs cost is not the same in bars of one kind."""
    asked = {
        (
            problem.bars[bar].longest,
            problem.bars[max(bar - 1, 0)].longest,
            *(
                (note.hooked, note.bow, note.retake, *((note.joined, note.join_cost, note.apart_cost) if place else ()))
                for place, note in enumerate(problem.notes_of(bar))
            ),
        )
        for bar in bars
    }
    return len(asked) > 1
