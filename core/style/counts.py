"""How often notes were joined in each context, over all lessons that a style is learned from."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.style.contexts import CONTEXTS
from core.style.digests import Digests, mixed, salts
from core.style.numbers import DANCES, dance_number
from core.values import dataclass

FEWEST = 2  # a key that was seen once only is not kept
MOST = 50  # seen oftener is as good
GLOBAL = tuple(context for context in CONTEXTS if not context.only_within)
COLUMNS = tuple((context, by_dance) for context in GLOBAL for by_dance in (False, True)[: 1 + context.by_dance])
WIDTH = sum(1 if by_dance else 2 for _, by_dance in COLUMNS)  # columns of ``Counts.measures``
PRIOR, DANCE_PRIOR = 2.0, 3.0  # places that the share of all places, and that of all dances, count for

_ROWS = np.array([CONTEXTS.index(context) for context, _ in COLUMNS])  # of ``core.style.contexts.digests``
_BY_DANCE = np.array([by_dance for _, by_dance in COLUMNS])
_OF_DANCE = salts("dance", len(DANCES) + 1)


def keys(digests: Digests, dance: str) -> Digests:
    """What places are counted under.

    Args:
        digests: Of the places, as ``core.style.contexts.digests`` has them.
        dance: Of the tune.
    Returns:
        A row for each place, a column for each of ``COLUMNS``.
    """
    found = digests[_ROWS]
    found[_BY_DANCE] = mixed(found[_BY_DANCE] + _OF_DANCE[dance_number(dance)])
    return np.ascontiguousarray(found.T)


@dataclass(frozen=True)
class Counts:
    """What was counted.

    Attributes:
        keys: Digests, rising.
        joined, seen: For each: how often notes were joined, and how often there was such a place.
        share: Of all places that were joined.
    """

    keys: Digests
    joined: NDArray[np.int32]
    seen: NDArray[np.int32]
    share: float

    def measures(self, keys: Digests) -> NDArray[np.float32]:
        """For rows of digests: log-odds of each context drawn towards the share of all, and how often it was seen."""
        if not len(self.keys):
            nothing = np.zeros(keys.shape, np.int32)
            return smoothed(nothing, nothing, self.share)
        index = np.searchsorted(self.keys, keys).clip(max=len(self.keys) - 1)
        known = self.keys[index] == keys
        joined, seen = (np.where(known, counted[index], 0) for counted in (self.joined, self.seen))
        return smoothed(joined, seen, self.share)


def count(
    keys: Digests, joined: NDArray[np.float64], part: NDArray[np.int64], parts: int
) -> tuple[Counts, list[Counts]]:
    """Count places by their digests.

    Args:
        keys: A row for each place.
        joined: 1 or 0 for each.
        part: To which part of the lessons each belongs, from 0.
        parts: How many there are.
    Returns:
        What all of them say, and for each part what the others say.
    """
    (unique, inverse), rows = np.unique(keys, return_inverse=True), keys.shape[1]
    where = (len(unique) * part[:, None] + inverse.reshape(keys.shape)).ravel()
    seen, yes = (
        np.bincount(where, np.repeat(values, rows), parts * len(unique)).astype(np.int32).reshape(parts, len(unique))
        for values in (np.ones(len(joined)), joined)
    )  # fmt: skip

    def counts(own: NDArray[np.bool_], seen: NDArray[np.int32], yes: NDArray[np.int32]) -> Counts:
        often = seen >= FEWEST
        return Counts(unique[often], yes[often], seen[often], float(joined[own].mean()))

    all_seen, all_yes = seen.sum(axis=0, dtype=np.int32), yes.sum(axis=0, dtype=np.int32)
    without = [counts(part != each, all_seen - seen[each], all_yes - yes[each]) for each in range(parts)]
    return counts(part >= 0, all_seen, all_yes), without


def smoothed(joined: NDArray[np.int32], seen: NDArray[np.int32], share: float) -> NDArray[np.float32]:
    """Measures of ``Counts.measures`` from counts by row and column."""
    columns = []
    chance = np.full(len(joined), share)
    for number, (_, by_dance) in enumerate(COLUMNS):
        yes, all_of_them = joined[:, number], seen[:, number]
        if by_dance:
            columns.append(logit((yes + DANCE_PRIOR * chance) / (all_of_them + DANCE_PRIOR)))
        else:
            chance = (yes + PRIOR * share) / (all_of_them + PRIOR)
            columns += [logit(chance), np.minimum(all_of_them, MOST).astype(np.float64)]
    return np.stack(columns, axis=1).astype(np.float32)


def logit(chance: NDArray[np.float64]) -> NDArray[np.float64]:
    """Log-odds of a probability above 0 and below 1."""
    return np.asarray(np.log(chance / (1 - chance)))
