"""Ways of bowing a bar, listed, for searches to which more than its ends matters."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from math import inf
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.planner.divisions import Divisions, Way
from core.planner.network import Costs
from core.planner.rows import TURN, Ints

MOST_WAYS = 4096


class Listing(NamedTuple):
    """Some ways of bowing the bars of a row.

    Attributes:
        firsts, lasts: By way: its ends.
        costs: By way: all playings.
        way: Gives one by its number.
        names: Gives what tells each way from others, ``Way.name``.
    """

    firsts: Ints
    lasts: Ints
    costs: Costs
    way: Callable[[int], Way]
    names: Callable[[Ints], list[bytes]]

    def totals(self, least: Costs, cheapest: Costs) -> Costs:
        """What the cheapest bowing with each way costs; infinite where there is none.

        Args:
            least: First ends x last ends: what the cheapest bowing with these costs.
            cheapest: The same: what the cheapest way with these costs.
        """
        ends = self.firsts, self.lasts
        with np.errstate(invalid="ignore"):  # impossible beside impossible is not a number
            totals = least[ends] - cheapest[ends] + self.costs
        return np.where(np.isnan(totals), inf, totals)

    def only(self, kept: Ints) -> Listing:
        """Some of these ways, by number."""
        return Listing(
            self.firsts[kept],
            self.lasts[kept],
            self.costs[kept],
            lambda number: self.way(int(kept[number])),
            lambda numbers: self.names(kept[numbers]),
        )


def cheapest_ways(divisions: Divisions, row: int) -> Listing:
    """The cheapest way with each two ends, by first end, then by last."""
    costs = divisions.costs[row]
    firsts, lasts = np.nonzero(np.isfinite(costs))
    way = cache(lambda number: divisions.way(row, int(firsts[number]), int(lasts[number])))
    return Listing(
        firsts, lasts, costs[firsts, lasts], way, lambda numbers: [way(number).name for number in numbers.tolist()]
    )


def every_way(divisions: Divisions, row: int) -> Listing | None:
    """Every way that is allowed; of those that begin in one direction the ones with early slurs first.

    Returns:
        None where there may be more than ``MOST_WAYS``.
    """
    strokes, width = divisions.strokes, divisions.rows.width
    start = width - int(divisions.rows.counts[row])
    prices = divisions.rows.prices[row, :, TURN:].tolist()
    behind: dict[tuple[int, int], _Endings] = {}  # by place and direction of the stroke that begins there
    for place in range(width - 1, start - 1, -1):
        for bow in (0, 1):
            parts = []
            for notes in reversed([notes for notes in strokes if place + notes <= width]):
                cost, after = float(strokes[notes].costs[row, place, bow]), place + notes
                if cost < inf and after == width:
                    parts.append(_Endings.of_one(notes, bow, cost))
                elif cost < inf:
                    for retaken, price in enumerate(prices[after]):
                        if price < inf:
                            ways = behind[after, bow if retaken else 1 - bow]
                            parts.append(ways.after(notes, bow, cost + price, retaken=bool(retaken)))
            if sum(len(part.costs) for part in parts) > MOST_WAYS:
                return None
            behind[place, bow] = _Endings.joined(parts, width - place)
    return _Endings.joined([behind[start, 0], behind[start, 1]], width - start).listing(divisions)


class _Endings(NamedTuple):
    """Ways of bowing a bar from some place on.

    Attributes:
        marks: ways x 3 x notes: direction, joined, retaken.
        costs: By way.
    """

    marks: NDArray[np.int8]
    costs: Costs

    @staticmethod
    def of_one(notes: int, bow: int, cost: float) -> _Endings:
        """The one way of a single stroke."""
        return _Endings(_stroke(notes, bow)[None], np.array([cost]))

    @staticmethod
    def joined(parts: list[_Endings], notes: int) -> _Endings:
        """Several lists in one, of as many notes."""
        if not parts:
            return _Endings(np.zeros((0, 3, notes), np.int8), np.zeros(0))
        return _Endings(np.concatenate([part.marks for part in parts]), np.concatenate([part.costs for part in parts]))

    def after(self, notes: int, bow: int, cost: float, *, retaken: bool) -> _Endings:
        """The same behind one more stroke."""
        count, _, behind = self.marks.shape
        marks = np.empty((count, 3, notes + behind), np.int8)
        marks[:, :, :notes] = _stroke(notes, bow)
        marks[:, :, notes:] = self.marks
        marks[:, 2, notes] = retaken
        return _Endings(marks, cost + self.costs)

    def listing(self, divisions: Divisions) -> Listing:
        """As a listing."""
        bows, joined = self.marks[:, 0], self.marks[:, 1, 1:] == 1
        heads = 1 + np.cumprod(joined, axis=1).sum(axis=1)
        tails = 1 + np.cumprod(joined[:, ::-1], axis=1).sum(axis=1)
        firsts = 2 * np.searchsorted(divisions.firsts.sizes, heads) + bows[:, 0]
        lasts = 2 * np.searchsorted(divisions.lasts.sizes, tails) + bows[:, -1]
        return Listing(firsts, lasts, self.costs, self._way, self._names)

    def _way(self, number: int) -> Way:
        return Way(*map(tuple, self.marks[number].tolist()))

    def _names(self, numbers: Ints) -> list[bytes]:
        marks = self.marks[numbers]
        return [row.tobytes() for row in np.concatenate((marks[:, 0], marks[:, 1]), axis=1)]


def _stroke(notes: int, bow: int) -> NDArray[np.int8]:
    return np.array([[bow] * notes, [0] + [1] * (notes - 1), [0] * notes], np.int8)
