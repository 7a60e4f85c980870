"""A problem as a network: a choice for each kind of bar, or for each bar, and for each group of phrases its plan.

- *Alike*: all bars of one kind in one group of phrases share a choice.
- *Loose*: each bar has its own, and nothing is asked of its like, which gives a bound.

From outside a bar only its ends matter, so a choice is two variables, for the first stroke and for the last, and what
the cheapest way with both costs. A bar has the ends that it can have under each plan open to it; the choice for its
group says which count. ``core.planner.exact`` has the third model.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Hashable, Mapping, Sequence
from itertools import pairwise
from math import inf
from typing import NamedTuple

import numpy as np

from core.planner.divisions import Way
from core.planner.layout import Layout, at_either_end
from core.planner.network import (
    MOST_COMBINATIONS,
    Choice,
    Costs,
    Network,
    TooManyCombinationsError,
    cheapest,
    eliminated,
)
from core.planner.open_problem import Answer, OpenProblem
from core.planner.rows import Flags, Ints

FEW_COMBINATIONS = 32_768  # tied units that need more are worth thinning first


class Forced(NamedTuple):
    """A way that a unit of which one plan is open must be bowed in.

    Attributes:
        way: The way.
        first, last: Its ends.
        cost: All playings.
    """

    way: Way
    first: int
    last: int
    cost: float


class _Values(NamedTuple):
    """What the values of a variable stand for.

    Attributes:
        plans: By value: the plan under which it counts; values of one plan stand together.
        ends: By value: the end.
    """

    plans: Ints
    ends: Ints


class _Built(NamedTuple):
    """A network and what its variables stand for.

    Attributes:
        network: The network.
        chosen: For each group of phrases the variable that says which plan it takes.
        firsts, lasts: For each unit the values of two variables, for its first stroke and for its last; these are
            numbered one behind the other from ``len(chosen)`` on.
    """

    network: Network
    chosen: tuple[int, ...]
    firsts: list[_Values]
    lasts: list[_Values]

    def first(self, unit: int) -> int:
        """The variable for the first stroke of a unit."""
        return len(self.chosen) + 2 * unit

    def last(self, unit: int) -> int:
        """The variable for its last stroke."""
        return len(self.chosen) + 2 * unit + 1


class Model:
    """Units of bars bowed alike, each by itself.

    Attributes:
        problem: Of what.
        layout: The units, and what they and the crossings between them cost.
    """

    def __init__(
        self, layout: Layout, kept: tuple[Flags, Flags] | None = None, ties: Sequence[tuple[int, int, bool]] = ()
    ) -> None:
        """Make a model.

        Args:
            layout: The units.
            kept: rows x first ends, and rows x last ends: what the cheapest bowing may need; None: what is not beaten.
            ties: Two units that begin alike (True) or end alike (False) where they are of one kind.
        """
        self.problem, self.layout = layout.problem, layout
        self._kept = kept or layout.worth_keeping
        self._ties = ties

    def solve(
        self, go_on: Callable[[], None], forced: Mapping[int, Forced] | None = None, *, below: float = inf
    ) -> Answer:
        """The cheapest bowing.

        Args:
            go_on: Called now and then; raises to stop.
            forced: By number of the unit, the way that it must be bowed in.
            below: Where it costs as much or more, its total alone is told; it may then be told as infinite.
        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        forced = forced or {}
        built = self._built(*self._kept, forced)
        try:
            choice = cheapest(built.network, go_on, most=FEW_COMBINATIONS if self._ties else MOST_COMBINATIONS)
        except TooManyCombinationsError:
            if not self._ties:
                raise
            built = self._built(*self._under(below, go_on), forced)
            choice = cheapest(built.network, go_on)
        return self._answer(built, choice, forced) if choice.cost < below else Answer(choice.cost)

    def least(self, go_on: Callable[[], None], ends: tuple[Flags, Flags] | None = None) -> Costs:
        """Rows x first ends x last ends: what the cheapest bowing with these costs; infinite where there is none.

        Args:
            go_on: Called now and then; raises to stop.
            ends: The ends looked at, as ``Layout.possible``; None: all. Ends left out count as if there were none.
        Raises:
            TooManyCombinationsError: the memory allowed is not enough.
        """
        built = self._built(*(ends or self.layout.possible), {})
        elimination = eliminated(built.network, go_on)
        units = range(len(self.layout.units))
        found = elimination.least([(built.first(unit), built.last(unit)) for unit in units], go_on)
        least: Costs = np.full(self.layout.divisions.costs.shape, inf)
        for unit, first, last, costs in zip(self.layout.units, built.firsts, built.lasts, found, strict=True):
            rows = np.array(unit.rows)
            here = first.plans[:, None] == last.plans
            indexes = np.broadcast_arrays(rows[first.plans][:, None], first.ends[:, None], last.ends)
            least[tuple(index[here] for index in indexes)] = costs[here]
        return least

    def tied(self, answer: Answer) -> Model | None:
        """The same where bars of one kind that an answer begins or ends otherwise must begin or end alike.

        Returns:
            None where the answer begins and ends all of them alike.
        """
        of_kind: dict[Hashable, list[int]] = defaultdict(list)
        for number, unit in enumerate(self.layout.units):
            of_kind[unit.kinds[answer.choice[unit.group] if unit.group >= 0 else 0]].append(number)
        apart = []
        for units in of_kind.values():
            for one, other in pairwise(units):
                ways = [answer.ways[self.layout.units[unit].bars[0]] for unit in (one, other)]
                apart += [(one, other, True)] if len({(way.bows[0], way.head) for way in ways}) > 1 else []
                apart += [(one, other, False)] if len({(way.bows[-1], way.tail) for way in ways}) > 1 else []
        if not apart:
            return None
        ties = [*self._ties, *apart]
        firsts, lasts = (flags.copy() for flags in self.layout.worth_keeping)
        for kept, possible, rows in zip((firsts, lasts), self.layout.possible, self._tied_rows(ties), strict=True):
            kept[rows] = possible[rows]  # they may be needed although others beat them
        return Model(self.layout, (firsts, lasts), ties)

    def _under(self, limit: float, go_on: Callable[[], None]) -> tuple[Flags, Flags]:
        """The ends without those of tied units that only bowings have that cost the limit or more, tied or not."""
        firsts, lasts = (flags.copy() for flags in self._kept)
        cheap_enough = at_either_end(Model(self.layout).least(go_on, self._kept) < limit)
        for kept, cheap, rows in zip((firsts, lasts), cheap_enough, self._tied_rows(self._ties), strict=True):
            kept[rows] &= cheap[rows]
        return firsts, lasts

    def _tied_rows(self, ties: Sequence[tuple[int, int, bool]]) -> list[list[int]]:
        """The rows of units that are tied at the start, and at the end."""
        units = self.layout.units
        return [
            [row for *tied, side in ties if side is at_start for unit in tied for row in units[unit].rows]
            for at_start in (True, False)
        ]

    def _built(self, firsts: Flags, lasts: Flags, forced: Mapping[int, Forced]) -> _Built:
        """The network of some ends."""
        layout, network = self.layout, Network()
        chosen = self.problem.add_choices(network)
        plans = np.arange(len(self.problem.problems))
        all_firsts, all_lasts = _values(layout, firsts), _values(layout, lasts)
        of_firsts, of_lasts = [], []
        for number, (unit, first, last) in enumerate(zip(layout.units, all_firsts, all_lasts, strict=True)):
            if number in forced:
                way = forced[number]
                first, last = (_Values(np.zeros(1, np.int64), np.array([end])) for end in (way.first, way.last))
                costs = np.array([[way.cost]])
            else:
                rows = unit.rows[0] + first.plans[:, None]
                costs = layout.divisions.costs[rows, first.ends[:, None], last.ends]
                if len(unit.rows) > 1:
                    costs[first.plans[:, None] != last.plans] = inf
            of_firsts.append(first)
            of_lasts.append(last)
            begins, ends = (network.add(np.zeros(size)) for size in costs.shape)
            network.connect(begins, ends, costs)
            if unit.group >= 0:
                network.connect(chosen[unit.group], begins, np.where(plans[:, None] == first.plans, 0.0, inf))
        built = _Built(network, chosen, of_firsts, of_lasts)
        for number, (before, after) in enumerate(zip(layout.before, layout.after, strict=True)):
            last, first = of_lasts[before], of_firsts[after]
            costs = layout.crossings[first.plans, number, last.ends[:, None], first.ends]
            network.connect(built.last(before), built.first(after), costs)
        for one, other, at_start in self._ties:
            self._tie(built, one, other, at_start=at_start)
        return built

    def _tie(self, built: _Built, one: int, other: int, *, at_start: bool) -> None:
        """Where two units are of one kind, their first or last strokes must be alike."""
        units, values = self.layout.units, built.firsts if at_start else built.lasts
        rows, columns = (
            [
                (units[unit].kinds[plan], end)
                for plan, end in zip(*(each.tolist() for each in values[unit]), strict=True)
            ]
            for unit in (one, other)
        )
        costs = [[inf if kind == its and end != their_end else 0.0 for its, their_end in columns] for kind, end in rows]
        first, second = (built.first(unit) if at_start else built.last(unit) for unit in (one, other))
        built.network.connect(first, second, np.array(costs, float).reshape(len(rows), len(columns)))

    def _answer(self, built: _Built, choice: Choice, forced: Mapping[int, Forced]) -> Answer:
        layout = self.layout
        plans, firsts, lasts = [], [], []
        ways: dict[int, Way] = {}
        for number, unit in enumerate(layout.units):
            begins, ends = choice.values[built.first(number)], choice.values[built.last(number)]
            plans.append(int(built.firsts[number].plans[begins]))
            firsts.append(int(built.firsts[number].ends[begins]))
            lasts.append(int(built.lasts[number].ends[ends]))
            if number in forced:
                way = forced[number].way
            else:
                way = layout.divisions.way(unit.rows[plans[-1]], firsts[-1], lasts[-1])
            ways.update(dict.fromkeys(unit.bars, way))
        run_on = tuple(
            [
                bool(layout.run_on[plans[after], number, lasts[before], firsts[after]])
                for number, (before, after) in enumerate(zip(layout.before, layout.after, strict=True))
            ]
        )
        return Answer(
            choice.cost,
            tuple([ways[bar] for bar in range(len(ways))]),
            run_on,
            tuple([choice.values[group] for group in built.chosen]),
        )


def _values(layout: Layout, ends: Flags) -> list[_Values]:
    """For each unit, some of the ends of its rows."""
    rows, numbers = np.nonzero(ends)
    plans = layout.plan_of_row[rows]
    stops = np.searchsorted(rows, [unit.rows[-1] for unit in layout.units], side="right").tolist()
    return [_Values(plans[start:stop], numbers[start:stop]) for start, stop in pairwise([0, *stops])]


def alike(problem: OpenProblem) -> Model | None:
    """One choice for bars of one group of phrases that are of one kind under each plan; None where that cannot be."""
    found: dict[Hashable, list[int]] = {}
    for bar, group in enumerate(problem.group_of):
        kinds = tuple([problem.problems[plan].bars[bar].kind for plan in problem.plans_of(bar)])
        found.setdefault((group, kinds), []).append(bar)
    return grouped(problem, tuple(found.values()))


def loose(problem: OpenProblem) -> Model | None:
    """A choice for each bar; None where what is fixed cannot be had."""
    return grouped(problem, tuple([bar] for bar in range(len(problem.group_of))))


def grouped(problem: OpenProblem, groups: Sequence[Sequence[int]]) -> Model | None:
    """A model in which some bars, of one kind and one group of phrases, are bowed alike; None where that cannot be."""
    layout = Layout(problem, groups)
    return None if layout.impossible else Model(layout)
