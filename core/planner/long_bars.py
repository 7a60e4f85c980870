"""The cheapest ways of joining the notes of a bar that is too long to list them all: note by note."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from core.planner.ways import Ints, Rhythm

if TYPE_CHECKING:
    from core.planner.tables import Prices


class _State(NamedTuple):
    """What decides how a bar can go on: direction at its start, notes of its first stroke once that has ended (else
    0), direction now, and notes of the stroke so far."""

    begins: int
    head: int
    bow: int
    run: int


class _Way(NamedTuple):
    """The cheapest way to a state: its cost without the stroke that is still going on, and its choices."""

    cost: int
    joins: tuple[int, ...]
    retakes: tuple[int, ...]

    def comes_before(self, other: _Way) -> bool:
        """Cheaper, or as cheap with slurs earlier in the bar."""
        return self.cost < other.cost or (self.cost == other.cost and self.joins > other.joins)


def cheapest_ways(rhythm: Rhythm, prices: Prices) -> tuple[Ints, Ints, Ints]:
    """For each choice of directions and sizes of the first and the last stroke the cheapest way.

    Returns:
        Direction at the start (0 down, 1 up); joins and retakes, ways x notes.
    """
    count = len(rhythm.lengths)
    ways = {
        _State(begins, 0, begins, 1): _Way(prices.unless_down[0] * begins, (0,), (0,))
        for begins in (0, 1)
        if prices.bows[0] in (-1, begins)
    }
    for place in range(1, count):
        reached: dict[_State, _Way] = {}
        for state, way in ways.items():
            for joined, retake in rhythm.options(place):
                bow = state.bow if joined or retake else 1 - state.bow
                if prices.bows[place] not in (-1, bow):
                    continue
                cost = way.cost + prices.unless_down[place] * bow + prices.unless_driven[place] * (bow | joined)
                if joined:
                    after = _State(state.begins, state.head, bow, state.run + 1)
                    if not rhythm.fits(place - state.run, place + 1):
                        continue
                    cost += prices.join[place]
                else:
                    after = _State(state.begins, state.head or state.run, bow, 1)
                    cost += prices.apart[place] + prices.retake[place] * retake
                    cost += prices.strokes[rhythm.struck(place - state.run, place)]
                better = _Way(cost, (*way.joins, joined), (*way.retakes, retake))
                if after not in reached or better.comes_before(reached[after]):
                    reached[after] = better
        ways = reached
    found = sorted(ways.items())
    return (
        np.array([state.begins for state, _ in found], np.int64),
        np.array([way.joins for _, way in found], np.int64).reshape(-1, count),
        np.array([way.retakes for _, way in found], np.int64).reshape(-1, count),
    )
