"""The style that comes with the program, on tunes of the fiddle book of 1883 that it was not learned from.

The measured figures are made by hand (``tests.outside.style_by_1883``); here a few tunes hold that it is worth having.
"""

from __future__ import annotations

from importlib.resources import files
from itertools import product

import numpy as np
from numpy.typing import NDArray

from core.style.carry_on import carry_on
from core.style.learning import example, first_bars, first_section, marked_only
from core.style.style import agreed, book_of_1883, chance, say
from tests.outside.book_of_1883 import all_tunes
from tests.outside.style_by_1883 import FEWEST_TO_LEARN, THRESHOLD, copied, examples, scores, slurs, unused


def test_it_carries_on_better_than_copying_equal_bars() -> None:
    joined, proposed, simple = [], [], []
    for tune, bowing in unused().values():
        one = example(tune, bowing)
        marked = first_bars(one)
        asked = ~np.isnan(one.joined) & ~marked
        joined.append(one.joined[asked] > 0)
        said = chance(say(book_of_1883(), one.read, marked_only(one, marked)))
        proposed.append(said[asked] >= THRESHOLD)
        simple.append(copied(one, marked)[asked] > 0)
    _, _, ours = scores(np.concatenate(joined), np.concatenate(proposed))
    _, _, copying = scores(np.concatenate(joined), np.concatenate(simple))
    assert ours > copying + 0.1


def test_it_was_learned_from_other_tunes_and_says_so() -> None:
    style = book_of_1883()
    few = {name for name, each in all_tunes().items() if slurs(*each) >= FEWEST_TO_LEARN}
    assert style.figures.lessons == len(few - set(unused()))
    notice = (files("resources") / "styles" / "book_of_1883.NOTICE.txt").read_text(encoding="utf-8")
    assert f"{style.figures.lessons} of {len(all_tunes()):,} tunes" in notice
    assert f"{style.figures.joined:,} of {style.figures.places:,} pairs" in notice


def test_what_is_said_of_bars_equal_to_marked_ones_is_neither_too_sure_nor_too_shy() -> None:
    said, joined = [], []
    for one, view in product(examples().values(), (first_bars, first_section)):
        given = marked_only(one, view(one))
        told = agreed(one.read, np.zeros(len(given)), given)  # nothing is known of the rest
        asked = (told != 0) & np.isnan(given) & ~np.isnan(one.joined)
        said.append(told[asked])
        joined.append(one.joined[asked] > 0)
    odds, right = np.concatenate(said), np.concatenate(joined)
    for rather in (odds > 0, odds < 0):
        loss, *others = (_surprise(factor * odds[rather], right[rather]) for factor in (1, 0.5, 2))
        assert rather.sum() > 100
        assert loss < min(others)


def _surprise(odds: NDArray[np.float64], joined: NDArray[np.bool_]) -> float:
    """Mean of minus the logarithm of the probability of what is printed."""
    return float(np.mean(np.log1p(np.exp(np.where(joined, -odds, odds)))))


def test_a_printed_tune_can_be_carried_on() -> None:
    tune, bowing = next(iter(unused().values()))
    proposal = carry_on(tune, bowing, range(5), book_of_1883())
    assert proposal.bowing.joins
    assert all(0 <= sure <= 1 for sure in proposal.bar_chances.values())
