"""What the marked bars of a tune say about its other bars.

For each context of ``core.style.contexts``: how many marked places are alike in it, and how often these were joined.
Where a rougher guess is at hand, also by how much the marked places were joined more than it says: a tune may be
slurred more than others, as a whole or in one figure.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.style.contexts import CONTEXTS, LIKENESS
from core.style.counts import logit
from core.style.digests import Digests

SHARPNESS = (1.0, 2.0)  # how fast what is less alike counts less
SURE = 0.01  # a chance is not taken for nearer to 0 or 1
SHARE, PLACES = 0.2, 5.0  # of all places joined, about; so many count for that in a tune's own share
OUTSIDE = -3.0  # log-odds beside the first and the last place
REACH = 3  # places to either side that are looked at

MARKED_WIDTH = 3 * len(CONTEXTS) + 2 * len(SHARPNESS) + 4  # columns of ``from_marked``
NEIGHBOURS_WIDTH = 11 + 2 * len(CONTEXTS) + len(SHARPNESS)  # of ``from_neighbours``

Numbers = NDArray[np.float64]


class Likeness:
    """Which places of a tune are alike; worked out once for a tune.

    Args:
        digests: Of the places, as ``core.style.contexts.digests`` has them.

    Attributes:
        groups: [context, place]: a number that places have in common which are alike in this context, and in no other
            context; from 0, none left out.
        whole: [place, other]: how much alike in all, in tenths.
    """

    def __init__(self, digests: Digests) -> None:
        order = digests.argsort(axis=1)
        rising = np.take_along_axis(digests, order, axis=1)
        first = np.ones(digests.shape, np.bool_)
        first[:, 1:] = rising[:, 1:] != rising[:, :-1]
        numbers = first.ravel().cumsum().reshape(digests.shape) - 1
        self.groups = np.empty(digests.shape, np.int64)
        np.put_along_axis(self.groups, order, numbers, axis=1)
        self._count = int(first.sum())
        self.whole = self._compared()

    def sums(self, values: Numbers, chosen: NDArray[np.int64] | None = None) -> Numbers:
        """For each context and place the sum of what the places have that are alike.

        Args:
            values: Of each chosen place.
            chosen: Indexes of these places; None for all.
        """
        groups = self.groups if chosen is None else self.groups[:, chosen]
        repeated = np.broadcast_to(values, groups.shape).ravel()
        return np.asarray(np.bincount(groups.ravel(), repeated, self._count)[self.groups])

    def _compared(self) -> NDArray[np.uint16]:
        count = self.groups[0].size
        whole = np.zeros((count, count), np.uint16)
        for numbers, tenths in zip(self.groups.astype(np.int32), LIKENESS, strict=True):
            whole += (numbers[:, None] == numbers).view(np.uint8) * np.uint16(tenths)
        return whole


def _weights(whole: NDArray[np.uint16], sharpness: float) -> Numbers:
    """How much places count that are so much alike in all."""
    most = sum(LIKENESS)
    return np.asarray(np.exp(sharpness * (np.arange(most + 1) - most) / 10).take(whole))


def from_marked(likeness: Likeness, joined: Numbers, guess: Numbers) -> NDArray[np.float32]:
    """Measures of every place of a tune from those that are marked.

    Args:
        likeness: Of all places.
        joined: 1 or 0 where marked, else not a number.
        guess: A probability for every place, from what was learned elsewhere.
    """
    marked = np.flatnonzero(~np.isnan(joined))
    count, contexts = len(joined), len(CONTEXTS)
    columns = np.full((MARKED_WIDTH, count), np.nan, np.float32)
    columns[-1] = guess
    if not len(marked):
        return columns.T
    yes = joined[marked]
    more = yes - guess[marked]
    seen = likeness.sums(np.ones(len(marked)), marked)
    alike = seen > 0
    with np.errstate(invalid="ignore"):
        rates = likeness.sums(yes, marked) / seen  # not a number where none is alike
    closest = np.where(alike.any(axis=0), alike.argmax(axis=0), contexts - 1)
    columns[:contexts] = rates
    columns[contexts : 2 * contexts] = seen
    columns[2 * contexts : 3 * contexts] = likeness.sums(more, marked) / (seen + 1)
    told = np.stack([yes, more, np.ones(len(marked))], axis=1)
    rest = iter(columns[3 * contexts :])
    for sharpness in SHARPNESS:
        said, beyond, whole = (_weights(likeness.whole[:, marked], sharpness) @ told).T
        next(rest)[:] = said / whole
        next(rest)[:] = beyond / whole
    next(rest)[:] = rates[closest, np.arange(count)]
    next(rest)[:] = closest
    own, expected = (_share(values.sum(), len(marked)) for values in (yes, guess[marked]))
    next(rest)[:] = own - expected
    return columns.T


def from_neighbours(
    likeness: Likeness, joined: Numbers, guess: Numbers, bars: NDArray[np.int64]
) -> NDArray[np.float32]:
    """Measures of every place from a guess for all of them: of the places beside it, and of those that are alike.

    Args:
        likeness, joined: As for ``from_marked``.
        guess: A probability for every place.
        bars: The bar of each place.
    """
    count, contexts = len(joined), len(CONTEXTS)
    known = ~np.isnan(joined)
    held = np.where(known, joined, guess)
    odds, guessed = _odds(held), _odds(guess)
    columns = np.empty((NEIGHBOURS_WIDTH, count), np.float32)
    rest = iter(columns)
    next(rest)[:] = guessed
    padded = np.pad(odds, REACH, constant_values=OUTSIDE)
    for offset in (-3, -2, -1, 1, 2, 3):
        next(rest)[:] = padded[REACH + offset : REACH + offset + count]
    marked = np.pad(known, 1)
    next(rest)[:] = marked[:count]
    next(rest)[:] = marked[2:]
    others = likeness.sums(np.ones(count)) - 1
    means = (likeness.sums(odds) - odds) / np.maximum(others, 1)
    columns[9 : 9 + contexts] = np.where(others > 0, means, guessed)
    columns[9 + contexts : 9 + 2 * contexts] = others
    rest = iter(columns[9 + 2 * contexts :])
    told = np.stack([odds, np.ones(count)], axis=1)
    for sharpness in SHARPNESS:
        weights = _weights(likeness.whole, sharpness)
        np.fill_diagonal(weights, 0.0)  # without itself
        said, whole = (weights @ told).T
        next(rest)[:] = said / whole if count > 1 else odds
    next(rest)[:] = held.mean()
    next(rest)[:] = np.bincount(bars, held)[bars] / np.bincount(bars)[bars]
    return columns.T


def _share(joined: float, count: int) -> float:
    """Log-odds of a share, drawn towards what is common."""
    return float(logit(np.array((joined + SHARE * PLACES) / (count + PLACES))))


def _odds(chance: Numbers) -> Numbers:
    return logit(np.clip(chance, SURE, 1 - SURE))
