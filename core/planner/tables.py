"""What a bar, or all bars of one kind together, can be bowed like and what each way costs; and the same for crossings.

From outside a bar only its *ends* matter: the direction and size of its first stroke and of its last. Of all ways with
the same ends the cheapest is kept. The three numbers are added up into one, in which a missed accent outweighs all
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
from core.planner.shapes import MOST_ROWS, Flags, Ints, Rhythm, row_limit, shape_of

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
    dearest = max(note.join_cost for note in problem.notes) + weights.retake + weights.retake_over_rest
    dearest += settings.stroke_cost(1) + settings.stroke_cost(4) + weights.each_note_more
    broken = 1 + playings * dearest + weights.plan_change * len(problem.bars)
    crossings = sum(crossing.times for crossing in problem.crossings)
    missed = broken * (1 + crossings + len(problem.bars))
    if missed * (playings + 1) > MOST_EXACT:
        raise RefusedPlanError("The tune is too long to work out a bowing for all of it at once: choose some bars.")
    return Scale(missed, broken)


@dataclass(frozen=True)
class Table:
    """The ways of bowing a bar, one for each choice of ends (or each way for itself).

    Attributes:
        begins, finishes: Direction of the first and of the last stroke, 0 down and 1 up.
        heads, tails: Number of notes in the first and in the last stroke.
        costs: Of the cheapest way with these ends, all playings of all bars of the kind together.
        joins, retakes: ways x notes, as in ``Shape``.
        head_struck, head_ticks, tail_struck, tail_ticks: Size of the first and the last stroke; held notes do not count
            as struck.
        head_fixed, tail_fixed: Every join in that stroke is fixed.
        one_stroke: The whole bar is one stroke.
    """

    begins: Ints
    finishes: Ints
    heads: Ints
    tails: Ints
    costs: Costs
    joins: Ints
    retakes: Ints
    head_struck: Ints
    head_ticks: Ints
    tail_struck: Ints
    tail_ticks: Ints
    head_fixed: Flags
    tail_fixed: Flags
    one_stroke: Flags

    def __len__(self) -> int:
        return len(self.costs)


class Prices(NamedTuple):
    """What the notes of a bar cost, all playings of all bars of the kind together.

    Attributes:
        join: By note: joined to the one before inside the bar.
        retake: By note.
        unless_down: By note: an accent that a down-bow alone meets, joined (by a hook) or not.
        unless_driven: By note: an accent that is met by a new down-bow alone.
        strokes: By number of notes: a stroke of that size.
        bows: By note: the direction it must have, 0 or 1, or -1; None for a note that must have both.
    """

    join: tuple[int, ...]
    retake: tuple[int, ...]
    unless_down: tuple[int, ...]
    unless_driven: tuple[int, ...]
    strokes: tuple[int, ...]
    bows: tuple[int | None, ...]


def bar_table(problem: Problem, scale: Scale, bars: Sequence[int], *, every_way: bool = False) -> Table | None:
    """The ways of bowing some bars of one kind, all of them alike.

    Args:
        problem: The problem.
        bars: Indexes in ``Problem.bars``.
        every_way: List each way for itself, where the bar is short enough for that; else the cheapest for its ends.
    Returns:
        None where nothing satisfies what is fixed in these bars.
    """
    rhythm = _rhythm(problem, bars)
    prices = _prices(problem, scale, bars)
    if rhythm is None or None in prices.bows:
        return None
    if row_limit(rhythm) <= MOST_ROWS:
        table = _listed(rhythm, prices, every_way=every_way)
    else:
        table = _table(rhythm, *cheapest_ways(rhythm, prices))
    usable = np.ones(len(table), bool)
    for bar in bars:
        usable &= _usable(problem, bar, table)
    table = _picked(table, np.flatnonzero(usable))
    return table if len(table) else None


def most_ways(problem: Problem, bar: int) -> int:
    """How many ways there are at most to bow one bar."""
    rhythm = _rhythm(problem, [bar])
    return 0 if rhythm is None else 2 * row_limit(rhythm)


def crossing_costs(problem: Problem, scale: Scale, crossing: Crossing, before: Table, after: Table) -> Costs:
    """What one crossing costs for every way of bowing its two bars, all its times together: ways x ways."""
    joined, apart = boundary(problem, scale, crossing, before, after)
    costs: Costs = np.minimum(joined, apart) * crossing.times
    return costs


def boundary(
    problem: Problem, scale: Scale, crossing: Crossing, before: Table, after: Table
) -> tuple[Costs, Costs]:
    """What one crossing costs once: if its second note is joined to its first, and if it is not."""
    note, bar = _first(problem, crossing.after), problem.bars[crossing.after]
    same = before.finishes[:, None] == after.begins[None, :]
    impossible = np.full(same.shape, inf)
    joined: Costs = impossible
    if crossing.runs_on and note.joined is not False:
        joined = np.where(same, _joined(problem, scale, crossing, before, after), inf)
    if crossing.runs_on and note.joined:
        return joined, impossible
    lift = _lift_cost(problem, scale, note, bar, crossing)
    turn = inf if note.retake is Retake.MUST else 0.0
    apart: Costs = np.where(same, float(lift), turn)
    if note.held:  # struck here, because another note was played before it
        struck = after.head_struck
        steps = _stroke_costs(problem)
        apart += (steps[struck + 1] - steps[struck])[None, :]
        if note.accented:
            apart += np.where(after.begins == 0, 0, scale.missed)[None, :]
    if not bar.seam:
        apart = np.where(_fits_here(problem, bar, after)[None, :], apart, inf)
    return joined, apart


def _joined(problem: Problem, scale: Scale, crossing: Crossing, before: Table, after: Table) -> Costs:
    """What it costs to join over a bar line, whatever the directions."""
    note = _first(problem, crossing.after)
    struck = before.tail_struck[:, None] + after.head_struck[None, :]
    ticks = before.tail_ticks[:, None] + after.head_ticks[None, :]
    settings = problem.settings
    good = (struck < 2) | ((struck <= settings.most_notes) & (ticks <= problem.bars[crossing.before].longest))
    if note.joined:
        good |= before.tail_fixed[:, None] & after.head_fixed[None, :]
    else:  # a bar taken in one stroke is slurred to no neighbour, so that a stroke holds two bars at most
        good &= ~before.one_stroke[:, None] & ~after.one_stroke[None, :]
    steps = _stroke_costs(problem)
    costs = steps[struck] - steps[before.tail_struck][:, None] - steps[after.head_struck][None, :]
    if not note.held:
        costs += note.join_cost
        if note.accented and not note.hooked:  # up-bows are counted as missed in the bar's own table
            costs += np.where(after.begins == 0, scale.missed, 0)[None, :]
    return np.where(good, costs, inf)


def _lift_cost(problem: Problem, scale: Scale, note: PlanNote, bar: PlanBar, crossing: Crossing) -> float:
    """What it costs to take the next bar the way of the stroke before."""
    if bar.seam:
        return problem.settings.weights.retake_over_rest if crossing.over_rest else scale.broken
    return inf if note.retake is Retake.NEVER else note.retake_cost


def _usable(problem: Problem, number: int, table: Table) -> Flags:
    """Which ways suit a bar's surroundings, as far as these do not depend on how they are bowed."""
    bar = problem.bars[number]
    usable = np.ones(len(table), bool)
    entered = _first(problem, number).joined and _runs_on_into(problem, number)
    if bar.seam and not entered:
        usable &= _fits_here(problem, bar, table)
    left = number + 1 < len(problem.bars) and _first(problem, number + 1).joined and _runs_on_into(problem, number + 1)
    held_through = bar.stop - bar.first == 1 and problem.notes[bar.first].held
    if entered and left and not held_through:
        usable &= ~table.one_stroke
    return usable


def _fits_here(problem: Problem, bar: PlanBar, table: Table) -> Flags:
    """Which ways have a first stroke that may begin in this bar."""
    small = (table.head_struck <= problem.settings.most_notes) & (table.head_ticks <= bar.longest)
    fits: Flags = (table.head_struck < 2) | small | table.head_fixed
    return fits


def _first(problem: Problem, number: int) -> PlanNote:
    return problem.notes[problem.bars[number].first]


def _runs_on_into(problem: Problem, number: int) -> bool:
    return any(crossing.after == number and crossing.runs_on for crossing in problem.crossings)


def _stroke_costs(problem: Problem) -> Costs:
    longest = 2 * max(bar.stop - bar.first for bar in problem.bars) + 2
    return np.array([problem.settings.stroke_cost(notes) for notes in range(longest)], float)


def _rhythm(problem: Problem, bars: Sequence[int]) -> Rhythm | None:
    """What the bars ask for together; None where they contradict one another."""
    columns = list(zip(*(_notes(problem, bar) for bar in bars), strict=True))
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
    notes = _notes(problem, bars[0])
    return Rhythm(
        lengths=tuple(note.length for note in notes),
        held=tuple(note.held for note in notes),
        joined=tuple(joined),
        retakes=tuple(retakes),
        most_notes=problem.settings.most_notes,
        longest=problem.bars[bars[0]].longest,
    )


def _prices(problem: Problem, scale: Scale, bars: Sequence[int]) -> Prices:
    count = problem.bars[bars[0]].stop - problem.bars[bars[0]].first
    join, retake, unless_down, unless_driven = ([0] * count for _ in range(4))
    asked: list[set[int]] = [set() for _ in range(count)]
    for number in bars:
        visits = problem.bars[number].visits
        for place, note in enumerate(_notes(problem, number)):
            join[place] += 0 if note.held else note.join_cost * visits
            retake[place] += note.retake_cost * visits
            if note.accented and not note.held:
                missed = unless_down if note.hooked or place == 0 else unless_driven
                missed[place] += scale.missed * visits
            if note.bow is not None:
                asked[place].add(BOWS.index(note.bow))
    visits = sum(problem.bars[number].visits for number in bars)
    return Prices(
        tuple(join),
        tuple(retake),
        tuple(unless_down),
        tuple(unless_driven),
        tuple(problem.settings.stroke_cost(notes) * visits for notes in range(count + 1)),
        tuple(None if len(bows) > 1 else min(bows, default=-1) for bows in asked),
    )


def _notes(problem: Problem, number: int) -> tuple[PlanNote, ...]:
    bar = problem.bars[number]
    return problem.notes[bar.first : bar.stop]


def _listed(rhythm: Rhythm, prices: Prices, *, every_way: bool) -> Table:
    """The table of a bar whose ways can all be listed."""
    shape = shape_of(rhythm)
    base = shape.joins @ np.array(prices.join, float) + shape.retakes @ np.array(prices.retake, float)
    base += shape.sizes @ np.array(prices.strokes, float)
    unless_down, unless_driven = np.array(prices.unless_down, float), np.array(prices.unless_driven, float)
    found = []
    for begins in (0, 1):
        up = shape.turned ^ begins
        costs = base + up @ unless_down + (up | shape.joins) @ unless_driven
        rows = np.arange(len(costs))
        for place, bow in enumerate(prices.bows):
            if bow is not None and bow >= 0:
                rows = rows[up[rows, place] == bow]
        if not every_way:
            rows = _cheapest_for_its_ends(shape.heads[rows], up[rows, -1], shape.tails[rows], costs[rows], rows)
        found.append((np.full(len(rows), begins), shape.joins[rows], shape.retakes[rows], costs[rows]))
    return _table(rhythm, *(np.concatenate(columns) for columns in zip(*found, strict=True)))


def _cheapest_for_its_ends(heads: Ints, finishes: Ints, tails: Ints, costs: Costs, rows: Ints) -> Ints:
    ends = (heads * 2 + finishes) * (int(tails.max(initial=0)) + 1) + tails
    order = np.lexsort((rows, costs, ends))
    ends = ends[order]
    first = np.ones(len(ends), bool)
    first[1:] = ends[1:] != ends[:-1]
    return rows[order[first]]


def _table(rhythm: Rhythm, begins: Ints, joins: Ints, retakes: Ints, costs: Costs) -> Table:
    """A table from its rows."""
    count = len(rhythm.lengths)
    joined = joins == 1
    heads = 1 + np.cumprod(joined[:, 1:], axis=1).sum(axis=1)
    tails = 1 + np.cumprod(joined[:, :0:-1], axis=1).sum(axis=1)
    turns = (count - 1) - joins.sum(axis=1) - retakes.sum(axis=1)
    struck = np.concatenate(([0], np.cumsum([not held for held in rhythm.held])))
    ticks = np.concatenate(([0], np.cumsum(rhythm.lengths)))
    from_start = np.cumprod([1, 1, *(fixed is True for fixed in rhythm.joined[1:])])
    from_stop = np.cumprod([1, 1, *(fixed is True for fixed in rhythm.joined[:0:-1])])
    return Table(
        begins=begins,
        finishes=(begins + turns) % 2,
        heads=heads,
        tails=tails,
        costs=costs,
        joins=joins,
        retakes=retakes,
        head_struck=struck[heads],
        head_ticks=ticks[heads],
        tail_struck=struck[count] - struck[count - tails],
        tail_ticks=ticks[count] - ticks[count - tails],
        head_fixed=from_start[heads] == 1,
        tail_fixed=from_stop[tails] == 1,
        one_stroke=heads == count,
    )


def _picked(table: Table, rows: Ints) -> Table:
    if len(rows) == len(table):
        return table
    return Table(**{name: getattr(table, name)[rows] for name in Table.__dataclass_fields__})
