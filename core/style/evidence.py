"""What the marked bars of a tune say about its other bars.

For each context of ``core.style.contexts``: how many marked places are alike in it, and how often these were joined.
Where a rougher guess is at hand, also by how much the marked places were joined more than it says: a tune may be
slurred more than others, as a whole or in one figure.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from core.style.contexts import CONTEXTS, LIKENESS
from core.style.counts import logit
from core.style.places import Place

SHARPNESS = (1.0, 2.0)  # how fast what is less alike counts less
SURE = 0.01  # a chance is not taken for nearer to 0 or 1
SHARE, PLACES = 0.2, 5.0  # of all places joined, about; so many count for that in a tune's own share
OUTSIDE = -3.0  # log-odds beside the first and the last place

MARKED_WIDTH = 3 * len(CONTEXTS) + 2 * len(SHARPNESS) + 4  # columns of ``from_marked``
NEIGHBOURS_WIDTH = 11 + 2 * len(CONTEXTS) + len(SHARPNESS)  # of ``from_neighbours``

Numbers = NDArray[np.float64]


def identify(found: Sequence[Place]) -> NDArray[np.int32]:
    """A row for each place, a column for each context; equal numbers where places are alike."""
    columns = []
    for context in CONTEXTS:
        numbers: dict[object, int] = {}
        columns.append([numbers.setdefault(context.key(place), len(numbers)) for place in found])
    return np.array(columns, dtype=np.int32).T.reshape(len(found), len(CONTEXTS))


class Likeness:
    """Which places of a tune are alike; worked out once for a tune.

    Attributes:
        equal: [place, other, context]: alike in it.
        whole: [place, other]: how much alike in all.
    """

    def __init__(self, alike: NDArray[np.int32]) -> None:
        self.equal = alike[:, None, :] == alike[None, :, :]
        self.whole: Numbers = self.equal @ np.array(LIKENESS)


def from_marked(likeness: Likeness, joined: Numbers, guess: Numbers) -> NDArray[np.float32]:
    """Measures of every place of a tune from those that are marked.

    Args:
        likeness: Of all places.
        joined: 1 or 0 where marked, else not a number.
        guess: A probability for every place, from what was learned elsewhere.
    """
    marked = np.flatnonzero(~np.isnan(joined))
    count, contexts = len(joined), len(CONTEXTS)
    if not len(marked):
        nothing = np.full((count, MARKED_WIDTH), np.nan, np.float32)
        nothing[:, -1] = guess
        return nothing
    equal = likeness.equal[:, marked, :].astype(np.float64)
    yes = joined[marked]
    more = yes - guess[marked]
    seen = equal.sum(axis=1)
    said = np.einsum("pmc,m->pc", equal, yes)
    with np.errstate(invalid="ignore"):
        rates = np.where(seen > 0, said / seen, np.nan)
    beyond = np.einsum("pmc,m->pc", equal, more) / (seen + 1)
    closest = np.where((seen > 0).any(axis=1), (seen > 0).argmax(axis=1), contexts - 1)
    columns = [*_by_likeness(likeness.whole[:, marked], yes, more)]
    columns += [rates[np.arange(count), closest], closest]
    own, expected = (_share(values.sum(), len(marked)) for values in (yes, guess[marked]))
    columns += [np.full(count, own - expected), guess]
    return np.hstack([rates, seen, beyond, np.stack(columns, axis=1)]).astype(np.float32)


def from_neighbours(
    likeness: Likeness, joined: Numbers, guess: Numbers, bars: NDArray[np.int64]
) -> NDArray[np.float32]:
    """Measures of every place from a guess for all of them: of the places beside it, and of those that are alike.

    Args:
        likeness, joined: As for ``from_marked``.
        guess: A probability for every place.
        bars: The bar of each place.
    """
    count = len(joined)
    known = ~np.isnan(joined)
    held = np.where(known, joined, guess)
    odds = _odds(held)
    columns = [_odds(guess)]
    reach = 3
    padded = np.pad(odds, reach, constant_values=OUTSIDE)
    columns += [padded[reach + offset : reach + offset + count] for offset in (-3, -2, -1, 1, 2, 3)]
    marked = np.pad(known.astype(np.float64), 1)
    columns += [marked[:count], marked[2:]]
    equal = likeness.equal.copy()
    itself = np.arange(count)
    equal[itself, itself, :] = False
    others = equal.sum(axis=1)
    means = np.einsum("poc,o->pc", equal, odds) / np.maximum(others, 1)
    columns += [*np.where(others > 0, means, columns[0][:, None]).T, *others.T]
    whole = likeness.whole.copy()
    whole[itself, itself] = -np.inf
    if count > 1:
        columns += [_weighted(whole, sharpness) @ odds for sharpness in SHARPNESS]
    else:
        columns += [odds for _ in SHARPNESS]
    same_bar = bars[:, None] == bars[None, :]
    columns += [np.full(count, held.mean()), same_bar @ held / same_bar.sum(axis=1)]
    return np.stack(columns, axis=1).astype(np.float32)


def _by_likeness(whole: Numbers, yes: Numbers, more: Numbers) -> list[Numbers]:
    found = []
    for sharpness in SHARPNESS:
        weights = _weighted(whole, sharpness)
        found += [weights @ yes, weights @ more]
    return found


def _weighted(whole: Numbers, sharpness: float) -> Numbers:
    """Weights of the columns in each row; they add up to 1."""
    weights = np.exp(sharpness * (whole - whole.max(axis=1, keepdims=True)))
    return np.asarray(weights / weights.sum(axis=1, keepdims=True))


def _share(joined: float, count: int) -> float:
    """Log-odds of a share, drawn towards what is common."""
    return float(logit(np.array((joined + SHARE * PLACES) / (count + PLACES))))


def _odds(chance: Numbers) -> Numbers:
    return logit(np.clip(chance, SURE, 1 - SURE))
