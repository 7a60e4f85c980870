"""How bars can be divided into strokes, and what the cheapest division costs: for all rows of a model at once.

From outside a bar only its ends matter: direction and size of its first stroke and of its last. A division is a chain
of strokes, so the cheapest for each two ends is found from the last stroke backwards, as in any shortest path.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import chain
from math import inf
from typing import NamedTuple

import numpy as np

from core.planner.network import Costs
from core.planner.rows import HEAD, INNER, RETAKE, TURN, Flags, Ints, Rows
from core.values import dataclass


class Way(NamedTuple):
    """A way of bowing the notes of a bar, for each note.

    Attributes:
        bows: Direction, 0 down and 1 up.
        joins: Joined to the note before in the bar (0 or 1; the first note 0).
        retakes: Goes the way of the stroke before (0 or 1; the first note 0).
    """

    bows: tuple[int, ...]
    joins: tuple[int, ...]
    retakes: tuple[int, ...]

    @property
    def name(self) -> bytes:
        """What tells ways apart: directions and joins."""
        return bytes((*self.bows, *self.joins))

    @property
    def head(self) -> int:
        """Notes of the first stroke."""
        return next((place for place, join in enumerate(self.joins) if place and not join), len(self.joins))

    @property
    def tail(self) -> int:
        """Notes of the last stroke."""
        return next(notes for notes, join in enumerate(reversed(self.joins), 1) if not join)


@dataclass(frozen=True, eq=False)
class Ends:
    """The sizes of strokes that begin a bar, or that end it; rows x sizes.

    An *end* is a size and a direction, given as one number: twice the index of the size, plus 1 for an up-bow.

    Attributes:
        sizes: Notes, from the smallest on.
        struck, ticks: Size; held notes do not count as struck.
        fixed: Every join in that stroke is fixed.
        whole: The stroke is the whole bar.
    """

    sizes: tuple[int, ...]
    struck: Ints
    ticks: Ints
    fixed: Flags
    whole: Flags

    def of(self, rows: Sequence[int] | Ints) -> Ends:
        """Those of some rows."""
        return Ends(self.sizes, self.struck[rows], self.ticks[rows], self.fixed[rows], self.whole[rows])

    def number(self, notes: int, bow: int) -> int:
        """The number of an end."""
        return 2 * self.sizes.index(notes) + bow


class Stroke(NamedTuple):
    """All strokes of so many notes; rows x places of the first note.

    Attributes:
        costs: rows x places x directions; infinite where there can be none.
        struck, ticks, fixed: As in ``Ends``.
    """

    costs: Costs
    struck: Ints
    ticks: Ints
    fixed: Flags


class Divisions:
    """The divisions of all rows.

    Attributes:
        rows: The rows.
        strokes: By number of notes, as far as there are any.
        firsts, lasts: The strokes that begin and end the bars.
        costs: rows x first ends x last ends: of the cheapest division with these; infinite where there is none.
    """

    def __init__(self, rows: Rows) -> None:
        self.rows = rows
        self.strokes = dict(_strokes(rows))
        self._starts = rows.width - rows.counts
        self._every = np.arange(len(rows.counts))
        at_starts = {notes: np.minimum(self._starts, rows.width - notes) for notes in self.strokes}
        self.firsts = self._ends(at_starts)
        self.lasts = self._ends({notes: np.full_like(self._starts, rows.width - notes) for notes in self.strokes})
        self._entered = self._enter()
        self.costs = self._costs()

    def _ends(self, places: Mapping[int, Ints]) -> Ends:
        """The strokes of each number of notes that begin at some place of each row."""
        found = []
        for notes, strokes in self.strokes.items():
            here = self._every, places[notes]
            if np.isfinite(strokes.costs[here]).any():
                found.append((notes, strokes.struck[here], strokes.ticks[here], strokes.fixed[here]))
        sizes = tuple([notes for notes, *_ in found])
        whole = np.array(sizes, np.int64) == self.rows.counts[:, None]
        if not found:
            return Ends((), whole.astype(np.int64), whole.astype(np.int64), whole, whole)
        struck, ticks, fixed = (np.stack(column, axis=1) for column in list(zip(*found, strict=True))[1:])
        return Ends(sizes, struck, ticks, fixed, whole)

    def _enter(self) -> Costs:
        """Places x rows x directions of the stroke before x last ends: the least that all from a place on costs.

        Behind the last place nothing can be entered.
        """
        rows, last = self.rows, self.lasts
        shape = len(self._every), 2, 2 * len(last.sizes)
        entered = np.full((rows.width + 1, *shape), inf)
        for place in range(rows.width - 1, 0, -1):
            begun = np.full(shape, inf)  # by the direction of the stroke that begins here
            for notes, strokes in self.strokes.items():
                if place + notes < rows.width:
                    np.minimum(begun, strokes.costs[:, place, :, None] + entered[place + notes], out=begun)
            if rows.width - place in last.sizes:
                end = last.number(rows.width - place, 0)
                begun[:, 0, end], begun[:, 1, end + 1] = self.strokes[rows.width - place].costs[:, place].T
            turn, retake = rows.prices[:, place, TURN, None, None], rows.prices[:, place, RETAKE, None, None]
            np.minimum(begun[:, ::-1] + turn, begun + retake, out=entered[place])
        return entered

    def _costs(self) -> Costs:
        first, last, width = self.firsts, self.lasts, self.rows.width
        costs = np.full((len(self._every), 2 * len(first.sizes), 2 * len(last.sizes)), inf)
        for number, notes in enumerate(first.sizes):
            stroke = self.strokes[notes].costs[self._every, np.minimum(self._starts, width - notes)]
            behind = np.minimum(self._starts + notes, width)
            begins = 2 * number
            costs[:, begins : begins + 2] = stroke[..., None] + self._entered[behind, self._every]
            if notes in last.sizes and first.whole[:, number].any():
                whole, ends = first.whole[:, number], last.number(notes, 0)
                costs[whole, begins, ends], costs[whole, begins + 1, ends + 1] = stroke[whole].T
        return costs

    def way(self, row: int, first: int, last: int) -> Way:
        """The cheapest way of a row with two ends; of several the one with slurs first, and then without retakes."""
        notes, bow = self.firsts.sizes[first // 2], first % 2
        place = int(self._starts[row]) + notes
        sizes, bows, retakes = [notes], [bow], [0]
        if place < self.rows.width:
            costs = {notes: self.strokes[notes].costs[row].tolist() for notes in reversed(self.strokes)}
            prices = self.rows.prices[row, :, TURN:].tolist()
            entered = self._entered[:, row, :, last].tolist()
            entered[-1][last % 2] = 0.0  # the end
            tail = self.lasts.sizes[last // 2]
        while place < self.rows.width:
            notes, bow, retaken = _next(costs, prices, entered, place, bow, tail)
            sizes.append(notes)
            bows.append(bow)
            retakes.append(retaken)
            place += notes
        joins = [[0] + [1] * (notes - 1) for notes in sizes]
        return Way(
            tuple([bow for bow, notes in zip(bows, sizes, strict=True) for _ in range(notes)]),
            tuple(chain.from_iterable(joins)),
            tuple(
                [retaken * (1 - join) for retaken, of_stroke in zip(retakes, joins, strict=True) for join in of_stroke]
            ),
        )


def _next(
    costs: Mapping[int, list[list[float]]],
    prices: list[list[float]],
    entered: list[list[float]],
    place: int,
    before: int,
    tail: int,
) -> tuple[int, int, int]:
    """The next stroke: its notes, its direction, and whether it is retaken.

    Args:
        costs: Of strokes, by notes, place and direction, those of most notes first.
        prices: By place: to turn the bow, to retake it.
        entered: By place and direction of the stroke before: the least that all from there on costs.
        place, before: Where it begins, behind which direction.
        tail: Notes of the last stroke.
    """
    for retaken in (0, 1):
        bow = before if retaken else 1 - before
        rest = entered[place][before] - prices[place][retaken]
        for notes, here in costs.items():
            behind = place + notes
            if behind < len(entered) - (notes != tail) and here[place][bow] + entered[behind][bow] == rest:
                return notes, bow, retaken
    raise ValueError("there is no way with these ends")


def _strokes(rows: Rows) -> Iterator[tuple[int, Stroke]]:
    """The strokes of each number of notes that some can have, from the smallest on.

    The notes of a planned stroke are not too many, and it does not last too long; one that is fixed may be of any size,
    and so may one in which a single note is struck.
    """
    every = np.arange(len(rows.counts))[:, None]
    costs, struck, ticks = rows.prices[..., HEAD], rows.struck, rows.ticks
    fixed = np.ones(struck.shape, bool)
    for notes in range(1, rows.width + 1):
        if notes > 1:
            costs = costs[:, :-1] + rows.prices[:, notes - 1 :, INNER]
            struck = struck[:, :-1] + rows.struck[:, notes - 1 :]
            ticks = ticks[:, :-1] + rows.ticks[:, notes - 1 :]
            fixed = fixed[:, :-1] & rows.fixed[:, notes - 1 :]
            fits = fixed | (struck < 2) | ((struck <= rows.most_notes) & (ticks <= rows.limits[:, : 1 - notes]))
            costs = np.where(fits[..., None], costs, inf)  # longer ones hold this one, and do not fit either
        if not np.isfinite(costs).any():
            return
        yield notes, Stroke(costs + rows.sizes[every, struck][..., None], struck, ticks, fixed)
