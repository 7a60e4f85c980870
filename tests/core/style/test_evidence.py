"""What places say of one another, beside the same counted one by one."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from core.style.contexts import CONTEXTS, LIKENESS
from core.style.evidence import (
    MARKED_WIDTH,
    NEIGHBOURS_WIDTH,
    OUTSIDE,
    SHARPNESS,
    SURE,
    Likeness,
    from_marked,
    from_neighbours,
)
from core.style.style import facts
from tests.core.builders import tune_of
from tests.core.style.hands import lesson

Numbers = NDArray[np.float64]
TUNE = lesson(7)[0]
LOTS = np.random.default_rng(7)
PLACES = len(facts(TUNE).found)
GUESS = LOTS.uniform(0.001, 0.999, PLACES)
JOINED = {
    "nothing": np.full(PLACES, np.nan),
    "a third": np.where(LOTS.random(PLACES) < 0.3, LOTS.integers(0, 2, PLACES), np.nan),
    "everything": LOTS.integers(0, 2, PLACES).astype(np.float64),
}


def equal(likeness: Likeness) -> NDArray[np.bool_]:
    """[context, place, other]: alike in it."""
    return likeness.groups[:, :, None] == likeness.groups[:, None, :]


def softmax(likeness: Likeness, sharpness: float, place: int, others: list[int]) -> Numbers:
    whole = (np.array(LIKENESS) / 10) @ equal(likeness)[:, place, others]
    weights = np.exp(sharpness * (whole - whole.max()))
    return np.asarray(weights / weights.sum())


def odds(chance: float) -> float:
    held = min(max(chance, SURE), 1 - SURE)
    return float(np.log(held / (1 - held)))


@pytest.mark.parametrize("given", JOINED)
def test_the_marked_places_say_what_is_counted_of_them(given: str) -> None:
    likeness, joined = facts(TUNE).likeness, JOINED[given]
    alike = equal(likeness)
    marked = [place for place in range(PLACES) if not np.isnan(joined[place])]
    found = from_marked(likeness, joined, GUESS)
    assert found.shape == (PLACES, MARKED_WIDTH)
    for place in range(0, PLACES, 3):
        rates, seen, beyond, rest = [], [], [], []
        for context in range(len(CONTEXTS)):
            same = [other for other in marked if alike[context, place, other]]
            seen.append(len(same) if marked else np.nan)
            rates.append(np.mean(joined[same]) if same else np.nan)
            beyond.append(sum(joined[same] - GUESS[same]) / (len(same) + 1) if marked else np.nan)
        for sharpness in SHARPNESS if marked else ():
            weights = softmax(likeness, sharpness, place, marked)
            rest += [weights @ joined[marked], weights @ (joined[marked] - GUESS[marked])]
        if marked:
            closest = next((context for context, rate in enumerate(rates) if not np.isnan(rate)), len(CONTEXTS) - 1)
            shares = [(values.sum() + 1) / (len(marked) + 5) for values in (joined[marked], GUESS[marked])]
            own, expected = (np.log(share / (1 - share)) for share in shares)
            rest += [rates[closest], closest, own - expected]
        else:
            rest = [np.nan] * (2 * len(SHARPNESS) + 3)
        np.testing.assert_allclose(found[place], [*rates, *seen, *beyond, *rest, GUESS[place]], rtol=1e-5, atol=1e-6)


@pytest.mark.parametrize("given", JOINED)
def test_the_places_beside_and_those_alike_say_what_is_counted_of_them(given: str) -> None:
    read, joined = facts(TUNE), JOINED[given]
    likeness, bars = read.likeness, read.bars
    alike = equal(likeness)
    held = np.where(np.isnan(joined), GUESS, joined)
    said = np.array([odds(chance) for chance in held])
    found = from_neighbours(likeness, joined, GUESS, bars)
    assert found.shape == (PLACES, NEIGHBOURS_WIDTH)
    for place in range(0, PLACES, 3):
        beside = [place + offset for offset in (-3, -2, -1, 1, 2, 3)]
        row = [odds(GUESS[place]), *(said[each] if 0 <= each < PLACES else OUTSIDE for each in beside)]
        row += [0 <= each < PLACES and not np.isnan(joined[each]) for each in (place - 1, place + 1)]
        others = [
            [other for other in range(PLACES) if other != place and alike[context, place, other]]
            for context in range(len(CONTEXTS))
        ]
        row += [np.mean(said[same]) if same else odds(GUESS[place]) for same in others]
        row += map(len, others)
        rest = [other for other in range(PLACES) if other != place]
        row += [softmax(likeness, sharpness, place, rest) @ said[rest] for sharpness in SHARPNESS]
        row += [held.mean(), held[bars == bars[place]].mean()]
        np.testing.assert_allclose(found[place], row, rtol=1e-5, atol=1e-6)


def test_a_single_place_is_like_no_other() -> None:
    read = facts(tune_of("A4 B4"))
    assert len(read.found) == 1
    row = from_neighbours(read.likeness, np.array([np.nan]), np.array([0.25]), read.bars)[0]
    assert np.isfinite(row).all()
    np.testing.assert_allclose(row[[0, -4, -3]], odds(0.25), rtol=1e-6)
