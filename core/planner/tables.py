"""What a bar, or all bars of one kind together, can be bowed like and what each way costs; and the same for crossings.

From outside a bar only its ends matter: the direction and size of its first stroke and of its last. Of all ways with
the same ends the cheapest counts. The three numbers are added up into one, in which a missed accent outweighs all
that may be broken, and that outweighs all that anything may cost (``Scale``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf
from typing import NamedTuple

import numpy as np

from core.bowing import Bow
from core.planner.long_bars import cheapest_ways
from core.planner.network import Costs
from core.planner.problem import Crossing, PlanBar, PlanNote, Problem, RefusedPlanError, Retake
from core.planner.score import Score
from core.planner.ways import MOST_WAYS, Ends, Flags, Rhythm, Ways, arranged, most_ways, ways_of
from core.translation import tr

BOWS = (Bow.DOWN, Bow.UP)  # directions are 0 and 1 in what follows
MOST_EXACT = 2**53  # whole numbers up to here are exact as floats


class Scale(NamedTuple):
    """What the three numbers weigh in one.

    Attributes:
        missed, broken: Weight of one missed accent and of one thing broken; a cost of 1 weighs 1.
    """

    missed: int
    broken: int

    def total(self, score: Score) -> int:
        """The three numbers in one."""
        return score.missed * self.missed + score.broken * self.broken + score.cost

    def score(self, total: float) -> Score:
        """The three numbers again."""
        missed, rest = divmod(int(total), self.missed)
        return Score(missed, *divmod(rest, self.broken))


def scale_of(problem: Problem) -> Scale:
    """The weights for a problem: each just above all that what is weighed less can add up to.

    Raises:
        RefusedPlanError: the tune is so long that the numbers would not be exact.
    """
    weights, settings = problem.settings.weights, problem.settings
    playings = sum(bar.visits * (bar.stop - bar.first) for bar in problem.bars)
    dearest = max(max(note.join_cost, note.apart_cost) for note in problem.notes)
    dearest += weights.retake + weights.retake_over_rest
    dearest += settings.stroke_cost(1) + settings.stroke_cost(4) + weights.each_note_more
    broken = 1 + playings * dearest + weights.plan_change * len(problem.bars)
    crossings = sum(crossing.times for crossing in problem.crossings)
    missed = broken * (1 + crossings + len(problem.bars))
    if missed * (playings + 1) > MOST_EXACT:
        raise RefusedPlanError(tr("The tune is too long to work out a bowing for all of it at once: choose some bars."))
    return Scale(missed, broken)


@dataclass(frozen=True)
class Table:
    """What each way of bowing a bar costs, or all bars of a kind together.

    Attributes:
        ways: The ways; of a long bar only the cheapest for its ends.
        way_costs: Of each, all playings; infinite for what is not allowed.
        costs: First strokes x last strokes: of the cheapest way with these.
    """

    ways: Ways
    way_costs: Costs
    costs: Costs

    def cheapest(self, begin: int, finish: int) -> int:
        """The cheapest way with these ends; of several the first."""
        found = np.flatnonzero((self.ways.begins == begin) & (self.ways.finishes == finish))
        return int(found[np.argmin(self.way_costs[found])])

    def totals(self, by_ends: Costs) -> Costs:
        """What the cheapest bowing with each way costs, given what it costs with the cheapest way of the same ends."""
        ends = self.ways.begins, self.ways.finishes
        with np.errstate(invalid="ignore"):  # impossible beside impossible is not a number
            total = by_ends[ends] - self.costs[ends] + self.way_costs
        return np.where(np.isnan(total), inf, total)


class Prices(NamedTuple):
    """What the notes of a bar cost, all playings of all bars of the kind together.

    Attributes:
        join, apart: By note: joined to the one before inside the bar, or not (the bar's first: nothing).
        retake: By note.
        unless_down: By note: an accent that a down-bow alone meets, joined (by a hook) or not.
        unless_driven: By note: an accent that is met by a new down-bow alone.
        strokes: By number of notes: a stroke of that size.
        bows: By note: the direction it must have, 0 or 1, or -1; None for a note that must have both.
    """

    join: tuple[int, ...]
    apart: tuple[int, ...]
    retake: tuple[int, ...]
    unless_down: tuple[int, ...]
    unless_driven: tuple[int, ...]
    strokes: tuple[int, ...]
    bows: tuple[int | None, ...]


class _Listed(NamedTuple):
    """Some bars, whatever their accents are.

    Attributes:
        rhythm: What they ask for together; None where they contradict one another.
        ways: All ways of it; None where there are too many.
        prices: Without accents.
        costs: What each way costs without accents; nothing where the ways are not listed.
    """

    rhythm: Rhythm | None
    ways: Ways | None
    prices: Prices
    costs: Costs


def bar_table(problem: Problem, scale: Scale, bars: Sequence[int]) -> Table | None:
    """The ways of bowing some bars of one kind, all of them alike.

    Args:
        problem: The problem.
        scale: Its weights.
        bars: Indexes in ``Problem.bars``.
    Returns:
        None where nothing satisfies what is fixed in these bars.
    """
    key = (scale, tuple(bars), tuple(note.accented for note in problem.notes_of(bars[0])))
    if key not in problem.found:
        problem.found[key] = _bar_table(problem, scale, bars)
    table = problem.found[key]
    assert table is None or isinstance(table, Table)
    return table


def _bar_table(problem: Problem, scale: Scale, bars: Sequence[int]) -> Table | None:
    rhythm, ways, plain, without_accents = _listed(problem, bars)
    if rhythm is None or None in plain.bows:
        return None
    prices = _with_accents(problem, scale, bars, plain)
    if ways is None:
        ways = arranged(rhythm, *cheapest_ways(rhythm, prices))
        without_accents = plain_costs_of(ways, prices)
    if not len(ways):
        return None
    way_costs = without_accents + accent_costs_of(ways, prices)
    firsts, lasts = _usable(problem, bars, ways)
    costs = np.full((len(firsts), len(lasts)), inf)
    costs[ways.begins[ways.groups], ways.finishes[ways.groups]] = np.minimum.reduceat(way_costs, ways.groups)
    costs[~firsts] = inf
    costs[:, ~lasts] = inf
    return Table(ways, way_costs, costs) if np.isfinite(costs).any() else None


def lists_every_way(problem: Problem, bar: int) -> bool:
    """Whether the table of a bar has every way that is allowed."""
    listed = _listed(problem, [bar])
    return listed.rhythm is None or listed.ways is not None


def crossing_costs(problem: Problem, scale: Scale, crossing: Crossing, before: Table, after: Table) -> Costs:
    """What one crossing costs, all its times: last strokes of the one bar x first strokes of the other."""
    last, first = before.ways.last, after.ways.first
    key = (scale, crossing, last, first, _first(problem, crossing.after).accented)
    if key not in problem.found:
        problem.found[key] = np.minimum(*boundary(problem, scale, crossing, last, first)) * crossing.times
    costs = problem.found[key]
    assert isinstance(costs, np.ndarray)
    return costs


def boundary(problem: Problem, scale: Scale, crossing: Crossing, before: Ends, after: Ends) -> tuple[Costs, Costs]:
    """What one crossing costs once: if its second note is joined to its first, and if it is not."""
    note, bar = _first(problem, crossing.after), problem.bars[crossing.after]
    same = before.bows[:, None] == after.bows[None, :]
    joined: Costs = np.full(same.shape, inf)
    if crossing.runs_on and note.joined is not False:
        joined = np.where(same, _joined(problem, scale, crossing, before, after), inf)
    if crossing.runs_on and note.joined:
        return joined, np.full(same.shape, inf)
    turn = inf if note.retake is Retake.MUST else 0.0
    apart: Costs = np.where(same, _lift_cost(problem, scale, note, bar, crossing), turn) + note.apart_cost
    if note.held:  # struck here, because another note was played before it
        steps = np.array(problem.stroke_costs, float)
        apart += (steps[after.struck + 1] - steps[after.struck])[None, :]
        if note.accented:
            apart += np.where(after.bows == 0, 0, scale.missed)[None, :]
    if not bar.seam:
        apart = np.where(_fits_here(problem, bar, after)[None, :], apart, inf)
    return joined, apart


def _joined(problem: Problem, scale: Scale, crossing: Crossing, before: Ends, after: Ends) -> Costs:
    """What it costs to join over a bar line, whatever the directions."""
    note, settings = _first(problem, crossing.after), problem.settings
    struck = before.struck[:, None] + after.struck[None, :]
    ticks = before.ticks[:, None] + after.ticks[None, :]
    good = (struck < 2) | ((struck <= settings.most_notes) & (ticks <= problem.bars[crossing.before].longest))
    if note.joined:
        good |= before.fixed[:, None] & after.fixed[None, :]
    else:  # a bar taken in one stroke is slurred to no neighbour, so that a stroke holds two bars at most
        good &= ~before.whole[:, None] & ~after.whole[None, :]
    steps = np.array(problem.stroke_costs, float)
    costs = steps[struck] - steps[before.struck][:, None] - steps[after.struck][None, :]
    if not note.held:
        costs += note.join_cost
        if note.accented and not note.hooked:  # up-bows are counted as missed in the bar's own table
            costs += np.where(after.bows == 0, scale.missed, 0)[None, :]
    return np.where(good, costs, inf)


def _lift_cost(problem: Problem, scale: Scale, note: PlanNote, bar: PlanBar, crossing: Crossing) -> float:
    """What it costs to take the next bar the way of the stroke before."""
    if bar.seam:
        return problem.settings.weights.retake_over_rest if crossing.over_rest else scale.broken
    return inf if note.retake is Retake.NEVER else note.retake_cost


def _usable(problem: Problem, bars: Sequence[int], ways: Ways) -> tuple[Flags, Flags]:
    """Which first and last strokes suit the bars' surroundings, as far as these do not depend on how they are bowed."""
    firsts, lasts = np.ones(len(ways.first.bows), bool), np.ones(len(ways.last.bows), bool)
    for number in bars:
        bar = problem.bars[number]
        entered = _entered_by_a_join(problem, number)
        if bar.seam and not entered:
            firsts &= _fits_here(problem, bar, ways.first)
        held_through = bar.stop - bar.first == 1 and problem.notes[bar.first].held
        if entered and not held_through and _entered_by_a_join(problem, number + 1):
            firsts &= ~ways.first.whole
            lasts &= ~ways.last.whole
    return firsts, lasts


def _fits_here(problem: Problem, bar: PlanBar, first: Ends) -> Flags:
    """Which first strokes may begin in this bar."""
    small = (first.struck <= problem.settings.most_notes) & (first.ticks <= bar.longest)
    fits: Flags = (first.struck < 2) | small | first.fixed
    return fits


def _entered_by_a_join(problem: Problem, number: int) -> bool:
    """Whether a fixed join or a tie leads into a bar."""
    return number in problem.run_into and bool(_first(problem, number).joined)


def _first(problem: Problem, number: int) -> PlanNote:
    return problem.notes[problem.bars[number].first]


def _listed(problem: Problem, bars: Sequence[int]) -> _Listed:
    key = ("listed", *bars)
    if key not in problem.found:
        rhythm, prices = _rhythm(problem, bars), _prices(problem, bars)
        ways = ways_of(rhythm) if rhythm is not None and most_ways(rhythm) <= MOST_WAYS else None
        costs = np.zeros(0) if ways is None else plain_costs_of(ways, prices)
        problem.found[key] = _Listed(rhythm, ways, prices, costs)
    listed = problem.found[key]
    assert isinstance(listed, _Listed)
    return listed


def _rhythm(problem: Problem, bars: Sequence[int]) -> Rhythm | None:
    """What the bars ask for together; None where they contradict one another."""
    columns = list(zip(*(problem.notes_of(bar) for bar in bars), strict=True))
    joined: list[bool | None] = [False]
    retakes = [Retake.NEVER]
    for column in columns[1:]:
        asked = {note.joined for note in column} - {None}
        if len(asked) > 1:
            return None
        joined.append(asked.pop() if asked else None)
        wishes = {note.retake for note in column}
        if wishes >= {Retake.MUST, Retake.NEVER}:
            return None
        must = Retake.MUST in wishes
        retakes.append(Retake.MUST if must else Retake.NEVER if Retake.NEVER in wishes else Retake.MAY)
    notes = problem.notes_of(bars[0])
    return Rhythm(
        lengths=tuple(note.length for note in notes),
        held=tuple(note.held for note in notes),
        joined=tuple(joined),
        kept=(False, *(all(note.joined for note in column) for column in columns[1:])),
        retakes=tuple(retakes),
        most_notes=problem.settings.most_notes,
        longest=problem.bars[bars[0]].longest,
        longest_before=max(problem.bars[max(near, 0)].longest for bar in bars for near in (bar - 1, bar)),
    )


def _prices(problem: Problem, bars: Sequence[int]) -> Prices:
    """Without accents."""
    count = problem.bars[bars[0]].stop - problem.bars[bars[0]].first
    join, apart, retake = ([0] * count for _ in range(3))
    asked: list[set[int]] = [set() for _ in range(count)]
    for number in bars:
        visits = problem.bars[number].visits
        for place, note in enumerate(problem.notes_of(number)):
            join[place] += 0 if note.held else note.join_cost * visits
            apart[place] += note.apart_cost * visits if place else 0
            retake[place] += note.retake_cost * visits
            if note.bow is not None:
                asked[place].add(BOWS.index(note.bow))
    visits = sum(problem.bars[number].visits for number in bars)
    return Prices(
        join=tuple(join),
        apart=tuple(apart),
        retake=tuple(retake),
        unless_down=(0,) * count,
        unless_driven=(0,) * count,
        strokes=tuple(cost * visits for cost in problem.stroke_costs[: count + 1]),
        bows=tuple(None if len(bows) > 1 else min(bows, default=-1) for bows in asked),
    )


def _with_accents(problem: Problem, scale: Scale, bars: Sequence[int], prices: Prices) -> Prices:
    unless_down, unless_driven = list(prices.unless_down), list(prices.unless_driven)
    for number in bars:
        for place, note in enumerate(problem.notes_of(number)):
            if note.accented and not note.held:
                missed = unless_down if note.hooked or place == 0 else unless_driven
                missed[place] += scale.missed * problem.bars[number].visits
    return prices._replace(unless_down=tuple(unless_down), unless_driven=tuple(unless_driven))


def plain_costs_of(ways: Ways, prices: Prices) -> Costs:
    """What each way costs without regard to accents; infinite where a direction is not the one asked for."""
    costs: Costs = ways.joins @ np.array(prices.join, float) + ways.retakes @ np.array(prices.retake, float)
    if any(prices.apart):
        costs += (1 - ways.joins) @ np.array(prices.apart, float)
    if any(prices.strokes):
        costs += ways.sizes @ np.array(prices.strokes, float)
    for place, bow in enumerate(prices.bows):
        if bow is not None and bow >= 0:
            costs[ways.bows[:, place] != bow] = inf
    return costs


def accent_costs_of(ways: Ways, prices: Prices) -> Costs:
    """What the accents cost that each way misses."""
    costs: Costs = np.zeros(len(ways))
    for place, (unless_down, unless_driven) in enumerate(zip(prices.unless_down, prices.unless_driven, strict=True)):
        if unless_down:
            costs += unless_down * ways.bows[:, place]
        if unless_driven:
            costs += unless_driven * (ways.bows[:, place] | ways.joins[:, place])
    return costs
