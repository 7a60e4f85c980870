"""A problem as a network: a choice for each kind of bar, or for each bar.

- *Alike*: all bars of one kind share a choice, so that none differs from its like.
- *Loose*: each bar has its own, and nothing is asked of its like, which gives a bound.
- *Exact*: each bar has its own, and one more for each kind names the way from which its bars may differ at the price of
  one thing broken each.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import inf

import numpy as np

from core.planner.network import Network, cheapest, least
from core.planner.problem import Problem
from core.planner.tables import Scale, Table, bar_table, crossing_costs
from core.planner.ways import Ints, Ways


@dataclass(frozen=True)
class Model:
    """A network and what its values mean.

    Attributes:
        network: The network.
        tables: For each bar the ways that it chooses from.
        firsts, lasts: For each bar, the variables that say what its first and its last stroke are.
    """

    network: Network
    tables: tuple[Table, ...]
    firsts: tuple[int, ...]
    lasts: tuple[int, ...]


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
    """The cheapest bowing of a model; none where there is no model."""
    if model is None:
        return Answer(inf)
    choice = cheapest(model.network, go_on)
    if not choice.values:
        return Answer(inf)
    ends = zip(model.tables, model.firsts, model.lasts, strict=True)
    return Answer(
        choice.cost,
        tuple((table.ways, table.cheapest(choice.values[first], choice.values[last])) for table, first, last in ends),
    )


def alike(problem: Problem, scale: Scale) -> Model | None:
    """One choice for each kind; None where what is fixed cannot be had in all bars of some kind."""
    return _model(problem, scale, tuple(kinds(problem).values()))


def loose(problem: Problem, scale: Scale) -> Model | None:
    """A choice for each bar; None where what is fixed cannot be had."""
    return _model(problem, scale, tuple([number] for number in range(len(problem.bars))))


def exact(problem: Problem, scale: Scale, under: float, go_on: Callable[[], None]) -> Answer:
    """The best bowing where bars may differ from their like, if it is better than one known already.

    Ways of a bar with which not even the loose model stays below that one are left out.

    Args:
        problem: The problem.
        scale: Its weights.
        under: What the bowing known already costs; infinite where none is known.
        go_on: Called now and then; raises to stop.
    Returns:
        A bowing that costs less; else a total of ``under`` without a bowing.
    Raises:
        TooManyCombinationsError: the memory allowed is not enough.
    """
    model = loose(problem, scale)
    if model is None:
        return Answer(under)
    lowest = least(model.network, list(zip(model.firsts, model.lasts, strict=True)), go_on)
    kept = []
    for table, least_costs in zip(model.tables, lowest, strict=True):
        ends = table.ways.begins, table.ways.finishes
        with np.errstate(invalid="ignore"):
            costs = least_costs[ends] - table.costs[ends] + table.way_costs
        kept.append(np.flatnonzero(costs < under))  # what is impossible is not a number
        if not len(kept[-1]):
            return Answer(under)
    groups = kinds(problem)
    for bars in groups.values():
        if not _fixed_differently(problem, bars):
            for bar in bars:
                kept[bar] = _cheapest_of_its_ends(model.tables[bar], kept[bar])
    network = Network()
    variables = [network.add(table.way_costs[ways]) for table, ways in zip(model.tables, kept, strict=True)]
    for bars in groups.values():
        _make_alike(scale, network, [(variables[bar], model.tables[bar].ways, kept[bar]) for bar in bars])
    for crossing in problem.crossings:
        before, after = model.tables[crossing.before], model.tables[crossing.after]
        costs = crossing_costs(problem, scale, crossing, before, after)
        last, first = before.ways.finishes[kept[crossing.before]], after.ways.begins[kept[crossing.after]]
        network.connect(variables[crossing.before], variables[crossing.after], costs[last[:, None], first[None, :]])
    choice = cheapest(network, go_on, strike_out=True)
    if choice.cost >= under:
        return Answer(under)
    chosen = (
        (table.ways, int(ways[choice.values[variable]]))
        for table, ways, variable in zip(model.tables, kept, variables, strict=True)
    )
    return Answer(choice.cost, tuple(chosen))


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


def _model(problem: Problem, scale: Scale, groups: Sequence[Sequence[int]]) -> Model | None:
    """A model in which the bars of each group are bowed alike."""
    network = Network()
    of_bar: dict[int, tuple[Table, int, int]] = {}
    for bars in groups:
        table = bar_table(problem, scale, bars)
        if table is None:
            return None
        first, last = (network.add(np.zeros(size)) for size in table.costs.shape)
        network.connect(first, last, table.costs)
        of_bar.update((bar, (table, first, last)) for bar in bars)
    for crossing in problem.crossings:
        (before, _, last), (after, first, _) = of_bar[crossing.before], of_bar[crossing.after]
        network.connect(last, first, crossing_costs(problem, scale, crossing, before, after))
    tables, firsts, lasts = zip(*(of_bar[number] for number in range(len(problem.bars))), strict=True)
    return Model(network, tables, firsts, lasts)


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
            (note.joined if place else None, note.hooked, note.bow, note.retake, note.join_cost if place else 0)
            for place, note in enumerate(problem.notes_of(bar))
        )
        for bar in bars
    }
    return len(asked) > 1
