"""What two places can have in common: from the whole bar note for note down to two lengths at a place of the beat.

``CONTEXTS`` is a table. Each row makes of places a *key*, columns of whole numbers that are all equal where two places
are alike in this way. How often notes were joined under each key is all that is learned by counting
(``core.style.counts``), and what a habit is told by (``core.style.habits``).
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from itertools import pairwise
from typing import NamedTuple, TypeAlias

import numpy as np
from numpy.typing import NDArray

from core.style.digests import Column, Digests, mixed, salts
from core.style.places import NOTE, Places

Key: TypeAlias = tuple[NDArray[np.generic], ...]  # columns of whole numbers or booleans

FIRST = 0  # of a bar: the step into it counts too, else bars are alike whatever comes before
WIDE = 12  # steps: farther is as far
LAST_BARS = 3  # of a section that are told apart
NOTHING = -(2**40)  # in the place of a length or step where there is none


class Context(NamedTuple):
    """One way in which places are alike.

    Attributes:
        name: Ours, for figures and saved styles.
        words: What is alike, to be read after "notes with ...".
        key: Of places.
        by_dance: Whether it is counted for each dance as well.
        only_within: It says something within one tune only.
    """

    name: str
    words: str
    key: Callable[[Places], Key]
    by_dance: bool = False
    only_within: bool = False


def _steps(found: Places, first: int, last: int, most: int) -> list[Column]:
    """From note to note on the staff between two of ``Places.around``, no more than so many steps."""
    notes = found.around[first : last + 1]
    return [
        np.where(one.sounding & after.sounding, np.clip(after.height - one.height, -most, most), NOTHING)
        for one, after in pairwise(notes)
    ]


def _lengths(found: Places, first: int, last: int) -> list[Column]:
    """Of notes of ``Places.around``, apart in and outside tuplets."""
    notes = found.around[first : last + 1]
    return [np.where(one.sounding, 2 * one.length + (one.tuplet > 0), NOTHING) for one in notes]


def _two_lengths(found: Places) -> list[Column]:
    return _lengths(found, NOTE - 1, NOTE)


def _lead(found: Places) -> Column:
    """How the first note of a half bar is reached."""
    return np.where(found.leads_half, np.sign(found.step), NOTHING)


def _exact(found: Places) -> Key:
    into = np.where(found.index == FIRST, np.clip(found.step, -WIDE, WIDE), 0)
    return found.bar.kind, found.index, into


CONTEXTS = (
    Context("bar", "the same bar", _exact, only_within=True),
    Context(
        "steps of the bar", "the rhythm and the steps of the whole bar",
        lambda at: (at.bar.rhythm, at.bar.steps, at.index, at.over_bar_line),
    ),
    Context(
        "contour of the bar", "the rhythm, the rises and the falls of the whole bar",
        lambda at: (at.bar.rhythm, at.bar.contour, at.index, at.over_bar_line),
    ),
    Context(
        "rhythm of the bar", "the rhythm of the whole bar",
        lambda at: (at.bar.rhythm, at.index), by_dance=True,
    ),
    Context(
        "contour of the half", "the rhythm, the rises and the falls of the half bar",
        lambda at: (at.in_half, at.half_rhythm, at.half_contour, _lead(at)),
    ),
    Context(
        "steps of the half", "the rhythm and the steps of the half bar",
        lambda at: (at.in_half, at.half_rhythm, at.half_steps, at.step),
    ),
    Context(
        "rhythm of the half", "the rhythm of the half bar",
        lambda at: (at.in_half, at.half_rhythm), by_dance=True,
    ),
    Context(
        "half in the bar", "the rhythm of the half bar and the place in the bar",
        lambda at: (at.note.at, at.half_rhythm),
    ),
    Context(
        "rhythm of the beat", "the rhythm of the beat and the length before",
        lambda at: (at.in_beat, at.beat_rhythm, *_lengths(at, NOTE - 1, NOTE - 1), at.over_bar_line),
        by_dance=True,
    ),
    Context(
        "five notes", "the rhythm, the rises and the falls of five notes",
        lambda at: (at.in_beat, *_lengths(at, NOTE - 2, NOTE + 2), *_steps(at, NOTE - 2, NOTE + 2, 1)),
    ),
    Context(
        "four notes", "the rhythm, the rises and the falls of four notes and the place in the half bar",
        lambda at: (at.in_half, *_lengths(at, NOTE - 2, NOTE + 1), *_steps(at, NOTE - 2, NOTE + 1, 1)),
    ),
    Context(
        "turn", "the two lengths, the step and the step behind",
        lambda at: (at.in_beat, *_two_lengths(at), *_steps(at, NOTE - 1, NOTE + 1, 2)),
    ),
    Context(
        "interval", "the two lengths and the interval",
        lambda at: (at.in_half, *_two_lengths(at), at.step),
    ),
    Context(
        "place in the bar", "the two lengths and the place in the bar",
        lambda at: (at.note.at, at.bar.full, *_two_lengths(at)), by_dance=True,
    ),
    Context(
        "place in the half", "the two lengths and the place in the half bar",
        lambda at: (at.in_half, *_two_lengths(at)), by_dance=True,
    ),
    Context(
        "rise or fall", "the two lengths, rising or falling, and the place in the beat",
        lambda at: (at.in_beat, *_two_lengths(at), np.sign(at.step)),
    ),
    Context(
        "bar of the phrase", "the two lengths, the place in the bar and the bar of the phrase",
        lambda at: (at.bar.full_bars_before % 4, at.note.at, *_two_lengths(at)), by_dance=True,
    ),
    Context(
        "end of the section", "the two lengths, the place in the bar and the bar from the end",
        lambda at: (np.minimum(at.bar.full_bars_behind, LAST_BARS), at.note.at, *_two_lengths(at)),
    ),
)  # fmt: skip

# How much each counts where places are compared as a whole, in tenths, in the order of the table.
LIKENESS = (20, 10, 10, 10, 10, 10, 7, 5, 7, 7, 7, 5, 5, 4, 3, 3, 3, 2)


def digests(found: Places) -> Digests:
    """The keys of places: a row for each of ``CONTEXTS``, an entry for each place."""
    keys = [context.key(found) for context in CONTEXTS]
    sizes = tuple([len(key) for key in keys])
    parts = np.stack([part.astype(np.int64, copy=False) for key in keys for part in key]).view(np.uint64)
    return np.asarray(mixed(np.add.reduceat(mixed(parts + _salts(sizes)), np.cumsum((0, *sizes[:-1])), axis=0)))


@cache
def _salts(sizes: tuple[int, ...]) -> Digests:
    """For each part of each key, so that none is taken for another."""
    own = [salts(context.name, size) for context, size in zip(CONTEXTS, sizes, strict=True)]
    return np.concatenate(own)[:, None]
