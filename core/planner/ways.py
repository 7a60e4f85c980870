"""The ways of bowing the notes inside a bar, listed for its rhythm.

Many bars share a rhythm, so that the lists are kept. Bars with more than ``MOST_WAYS`` ways are the business of
``core.planner.long_bars``.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import prod
from typing import NamedTuple, TypeAlias

import numpy as np
from numpy.typing import NDArray

from core.planner.problem import Retake

MOST_WAYS = 4096

Ints: TypeAlias = NDArray[np.int64]
Flags: TypeAlias = NDArray[np.bool_]


class Rhythm(NamedTuple):
    """What the ways of joining inside a bar depend on; one entry for each note, the first with ``joined`` False.

    Attributes:
        lengths: In ticks.
        held: Tied on.
        joined: With the note before: fixed so, fixed not, or free (None).
        kept: Fixed as joined in every one of the bars: a stroke of such notes alone may be of any size.
        retakes: Whether a stroke may go the way of the one before.
        most_notes: Of a planned stroke.
        longest: Ticks of a planned stroke that begins in this bar.
        longest_before: The same for the bar before or this one, whichever is more.
    """

    lengths: tuple[int, ...]
    held: tuple[bool, ...]
    joined: tuple[bool | None, ...]
    kept: tuple[bool, ...]
    retakes: tuple[Retake, ...]
    most_notes: int
    longest: int
    longest_before: int

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
        """Whether the notes from ``first`` up to ``stop`` can be in one stroke, which may begin before the bar."""
        struck = self.struck(first, stop)
        if struck < 2 or all(self.kept[first + 1 : stop]):
            return True
        longest = self.longest if first else self.longest_before
        return struck <= self.most_notes and sum(self.lengths[first:stop]) <= longest


@dataclass(frozen=True, eq=False)
class Ends:
    """The ways in which a first stroke can begin a bar, or a last stroke end it.

    Attributes:
        bows: Direction, 0 down and 1 up.
        struck, ticks: Size; held notes do not count as struck.
        fixed: Every join in that stroke is fixed.
        whole: The stroke is the whole bar.
    """

    bows: Ints
    struck: Ints
    ticks: Ints
    fixed: Flags
    whole: Flags


@dataclass(frozen=True, eq=False)
class Ways:
    """Ways of bowing a bar, one in each row; ways with the same ends stand together, those with early slurs first.

    Attributes:
        first, last: What the first and the last stroke can be like.
        begins, finishes: For each way, which of these its first and its last stroke are.
        bows: ways x notes: direction, 0 down and 1 up.
        joins: ways x notes: joined to the note before (0 or 1; the first note always 0).
        retakes: ways x notes: goes the way of the stroke before.
        sizes: ways x (notes + 1): how many strokes hold that many notes, ties counted once.
        groups: The first way of each group with the same ends.
    """

    first: Ends
    last: Ends
    begins: Ints
    finishes: Ints
    bows: Ints
    joins: Ints
    retakes: Ints
    sizes: Ints
    groups: Ints

    def __len__(self) -> int:
        return len(self.joins)


def most_ways(rhythm: Rhythm) -> int:
    """How many ways there are at most."""
    return 2 * prod(len(rhythm.options(place)) for place in range(1, len(rhythm.lengths)))


@lru_cache(maxsize=4096)
def ways_of(rhythm: Rhythm) -> Ways:
    """List the ways that keep the limits; the first stroke may have begun before the bar.

    Args:
        rhythm: With at most ``MOST_WAYS`` ways.
    """
    joins, retakes = _choices(rhythm)
    return arranged(
        rhythm,
        np.repeat([0, 1], len(joins)),
        np.concatenate((joins, joins)),
        np.concatenate((retakes, retakes)),
    )


def arranged(rhythm: Rhythm, begins: Ints, joins: Ints, retakes: Ints) -> Ways:
    """Put ways in order, those with the same ends together.

    Args:
        rhythm: Theirs.
        begins: For each way the direction of the first note, 0 or 1.
        joins, retakes: ways x notes.
    """
    turns = 1 - joins - retakes
    turns[:, 0] = begins
    bows = np.cumsum(turns, axis=1) % 2
    joined = joins[:, 1:] == 1
    heads = 1 + np.cumprod(joined, axis=1).sum(axis=1)
    tails = 1 + np.cumprod(joined[:, ::-1], axis=1).sum(axis=1)
    firsts, begins = np.unique(heads * 2 + bows[:, 0], return_inverse=True)
    lasts, finishes = np.unique(tails * 2 + bows[:, -1], return_inverse=True)
    order = np.lexsort((np.arange(len(joins)), finishes, begins))
    begins, finishes, joins = begins[order], finishes[order], joins[order]
    keys = begins * (len(lasts) + 1) + finishes
    return Ways(
        first=_ends(rhythm, firsts, at_start=True),
        last=_ends(rhythm, lasts, at_start=False),
        begins=begins,
        finishes=finishes,
        bows=bows[order],
        joins=joins,
        retakes=retakes[order],
        sizes=_sizes(rhythm, joins),
        groups=np.flatnonzero(np.diff(keys, prepend=-1)),
    )


def _ends(rhythm: Rhythm, keys: Ints, *, at_start: bool) -> Ends:
    """What strokes at one end of the bar are like, each given as twice its number of notes plus its direction."""
    count = len(rhythm.lengths)
    spans = [(0, notes) if at_start else (count - notes, count) for notes in (keys // 2).tolist()]
    return Ends(
        bows=keys % 2,
        struck=np.array([rhythm.struck(first, stop) for first, stop in spans], np.int64),
        ticks=np.array([sum(rhythm.lengths[first:stop]) for first, stop in spans], np.int64),
        fixed=np.array([all(rhythm.kept[first + 1 : stop]) for first, stop in spans], bool),
        whole=np.array([stop - first == count for first, stop in spans], bool),
    )


def _choices(rhythm: Rhythm) -> tuple[Ints, Ints]:
    """Every way of joining that keeps the limits, as joins and retakes; those with early slurs come first."""
    count = len(rhythm.lengths)
    columns = [[(0, 0)], *(rhythm.options(place) for place in range(1, count))]
    grids = np.indices([len(options) for options in columns]).reshape(count, -1)
    picked = [np.array(options, np.int64)[grid] for options, grid in zip(columns, grids, strict=True)]
    rows = np.stack(picked, axis=1)
    joins, retakes = rows[:, :, 0], rows[:, :, 1]
    allowed = np.ones(len(joins), bool)
    for first in range(count):
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
