"""The ways of joining the notes inside a bar, listed for its rhythm.

A *shape* is what these ways depend on: lengths, ties, what is fixed, and the limits of a stroke. Many bars share one,
so that shapes are kept. Bars with more than ``MOST_ROWS`` ways are the business of ``core.planner.long_bars``.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import prod
from typing import NamedTuple, TypeAlias

import numpy as np
from numpy.typing import NDArray

from core.planner.problem import Retake

MOST_ROWS = 4096

Ints: TypeAlias = NDArray[np.int64]
Flags: TypeAlias = NDArray[np.bool_]


class Rhythm(NamedTuple):
    """What the ways of joining inside a bar depend on; one entry for each note, the first with ``joined`` False.

    Attributes:
        lengths: In ticks.
        held: Tied on.
        joined: With the note before: fixed so, fixed not, or free (None).
        retakes: Whether a stroke may go the way of the one before.
        most_notes: Of a planned stroke.
        longest: Ticks of a planned stroke that begins in this bar.
    """

    lengths: tuple[int, ...]
    held: tuple[bool, ...]
    joined: tuple[bool | None, ...]
    retakes: tuple[Retake, ...]
    most_notes: int
    longest: int

    def options(self, place: int) -> list[tuple[int, int]]:
        """(joined, retaken) for a note, as far as nothing fixed forbids it; joined first."""
        joined, retake = self.joined[place], self.retakes[place]
        options = [(1, 0)] if joined is not False else []
        if joined is not True:
            options += [(0, 0)] if retake is not Retake.MUST else []
            options += [(0, 1)] if retake is not Retake.NEVER else []
        return options

    def struck(self, first: int, stop: int) -> int:
        """How many notes from ``first`` up to ``stop`` are not held."""
        return (stop - first) - sum(self.held[first:stop])

    def fits(self, first: int, stop: int) -> bool:
        """Whether the notes from ``first`` up to ``stop`` can be one stroke that begins in this bar."""
        struck = self.struck(first, stop)
        if struck < 2 or all(self.joined[first + 1 : stop]):
            return True
        return struck <= self.most_notes and sum(self.lengths[first:stop]) <= self.longest


@dataclass(frozen=True, slots=True)
class Shape:
    """All ways of joining the notes of a bar, one in each row; those with slurs early in the bar come first.

    Attributes:
        joins: rows x notes: joined to the note before (0 or 1; the first note always 0).
        retakes: rows x notes: goes the way of the stroke before.
        turned: rows x notes: 1 where the direction is not that of the bar's first note.
        heads, tails: Number of notes in the first and in the last stroke.
        sizes: rows x (notes + 1): how many strokes hold that many notes, ties counted once.
    """

    joins: Ints
    retakes: Ints
    turned: Ints
    heads: Ints
    tails: Ints
    sizes: Ints


def row_limit(rhythm: Rhythm) -> int:
    """How many ways there are at most."""
    return prod(len(rhythm.options(place)) for place in range(1, len(rhythm.lengths)))


@lru_cache(maxsize=4096)
def shape_of(rhythm: Rhythm) -> Shape:
    """List the ways of joining; strokes after the first keep the limits, the first may have begun before the bar.

    Args:
        rhythm: With a ``row_limit`` of at most ``MOST_ROWS``.
    """
    count = len(rhythm.lengths)
    joins, retakes = _choices(rhythm)
    turned = np.zeros_like(joins)
    for place in range(1, count):
        turned[:, place] = turned[:, place - 1] ^ (1 - joins[:, place] - retakes[:, place])
    heads, tails = np.ones(len(joins), np.int64), np.ones(len(joins), np.int64)
    running = np.ones(len(joins), bool)
    for place in range(1, count):
        joined = joins[:, place] == 1
        running &= joined
        heads += running
        tails = np.where(joined, tails + 1, 1)
    return Shape(joins, retakes, turned, heads, tails, _sizes(rhythm, joins))


def _choices(rhythm: Rhythm) -> tuple[Ints, Ints]:
    """Every allowed row of joins and retakes."""
    count = len(rhythm.lengths)
    columns = [[(0, 0)], *(rhythm.options(place) for place in range(1, count))]
    grids = np.indices([len(options) for options in columns]).reshape(count, -1)
    picked = [np.array(options, np.int64)[grid] for options, grid in zip(columns, grids, strict=True)]
    rows = np.stack(picked, axis=1)
    joins, retakes = rows[:, :, 0], rows[:, :, 1]
    allowed = np.ones(len(joins), bool)
    for first in range(1, count):
        for stop in range(first + 2, count + 1):
            if not rhythm.fits(first, stop):  # longer runs from here hold this one
                allowed &= ~((joins[:, first] == 0) & joins[:, first + 1 : stop].all(axis=1))
                break
    return joins[allowed], retakes[allowed]


def _sizes(rhythm: Rhythm, joins: Ints) -> Ints:
    count = len(rhythm.lengths)
    sizes = np.zeros((len(joins), count + 1), np.int64)
    rows = np.arange(len(joins))
    running = np.full(len(joins), rhythm.struck(0, 1))
    for place in range(1, count):
        struck = rhythm.struck(place, place + 1)
        joined = joins[:, place] == 1
        ended = ~joined
        sizes[rows[ended], running[ended]] += 1
        running = np.where(joined, running + struck, struck)
    sizes[rows, running] += 1
    return sizes
