"""How often notes were joined under each key, beside the same counted one by one."""

from __future__ import annotations

from collections import Counter

import numpy as np
import pytest

from core.style.counts import COLUMNS, DANCE_PRIOR, FEWEST, MOST, PRIOR, WIDTH, Counts, count, keys
from core.style.style import facts
from tests.core.style.hands import lesson

LOTS = np.random.default_rng(3)
PARTS = 3
KEYS = LOTS.integers(0, 60, (200, 5)).astype(np.uint64)
JOINED = LOTS.integers(0, 2, 200).astype(np.float64)
PART = LOTS.integers(0, PARTS - 1, 200)  # the last part has no places


def plain(rows: list[int]) -> dict[int, tuple[int, int]]:
    """By key (joined, seen) over these places."""
    seen = Counter(int(key) for row in rows for key in KEYS[row])
    joined = Counter(int(key) for row in rows for key in KEYS[row] if JOINED[row])
    return {key: (joined[key], seen[key]) for key in sorted(seen) if seen[key] >= FEWEST}


def told(counts: Counts) -> dict[int, tuple[int, int]]:
    return {
        key: (joined, seen)
        for key, joined, seen in zip(counts.keys.tolist(), counts.joined.tolist(), counts.seen.tolist(), strict=True)
    }


def test_all_places_are_counted_and_those_of_the_other_parts() -> None:
    everything, without = count(KEYS, JOINED, PART, PARTS)
    assert told(everything) == plain(list(range(200)))
    assert everything.share == JOINED.mean()
    assert len(without) == PARTS
    for part, counts in enumerate(without):
        others = [row for row, own in enumerate(PART.tolist()) if own != part]
        assert told(counts) == plain(others)
        assert list(told(counts)) == sorted(told(counts))
        assert counts.share == JOINED[others].mean()


def test_what_was_counted_is_drawn_towards_the_share_of_all() -> None:
    read = facts(lesson(1)[0])
    joined = LOTS.integers(0, 2, len(read.found)).astype(np.float64)
    counts, _ = count(read.keys, joined, np.zeros(len(joined), np.int64) + (joined > 0), 2)
    measures = counts.measures(read.keys)
    assert measures.shape == (len(joined), WIDTH)
    known = told(counts)
    for place in range(0, len(joined), 5):
        row: list[float] = []
        chance = counts.share
        for key, (_, by_dance) in zip(read.keys[place].tolist(), COLUMNS, strict=True):
            yes, seen = known.get(key, (0, 0))
            if by_dance:
                share = (yes + DANCE_PRIOR * chance) / (seen + DANCE_PRIOR)
                row.append(np.log(share / (1 - share)))
            else:
                chance = (yes + PRIOR * counts.share) / (seen + PRIOR)
                row += [np.log(chance / (1 - chance)), min(seen, MOST)]
        np.testing.assert_allclose(measures[place], row, rtol=1e-5, atol=1e-6)


def test_nothing_counted_says_the_share_of_all() -> None:
    read = facts(lesson(1)[0])
    nothing = Counts(np.zeros(0, np.uint64), np.zeros(0, np.int32), np.zeros(0, np.int32), 0.25)
    assert np.unique(nothing.measures(read.keys)).tolist() == pytest.approx([np.log(1 / 3), 0])


def test_dances_are_counted_apart_only_where_the_table_says_so() -> None:
    read = facts(lesson(1)[0])
    whole = read.likeness.groups.astype(np.uint64)
    reel, jig = keys(whole, "reel"), keys(whole, "jig")
    for column, (_, by_dance) in enumerate(COLUMNS):
        assert (reel[:, column] == jig[:, column]).any() != by_dance
        assert len(np.unique(reel[:, column])) == len(np.unique(jig[:, column]))
