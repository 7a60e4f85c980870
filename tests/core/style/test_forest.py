"""Forests as arrays say what the library says that grew them."""

from __future__ import annotations

import lightgbm
import numpy as np
import pytest

from core.style.forest import DEPTH, Growth, Nursery, forest_of

LOTS = np.random.default_rng(5)
WIDTH = 6


def rows(count: int) -> np.ndarray:
    """Whole and broken numbers, many of them missing."""
    drawn = LOTS.normal(size=(count, WIDTH)).astype(np.float32)
    drawn[:, :2] = np.round(2 * drawn[:, :2])
    drawn[:, 1:4][LOTS.random((count, 3)) < 0.2] = np.nan
    return drawn


def joined(shown: np.ndarray) -> np.ndarray:
    """Something to be learned of them, and some noise."""
    whole = np.nan_to_num(shown, nan=0.7)
    return (whole[:, 0] * whole[:, 1] + whole[:, 3] - whole[:, 4] ** 2 + LOTS.normal(size=len(shown)) > 0).astype(float)


@pytest.mark.parametrize("leaves", [2, 8, 12, 16, 17, 40])
def test_a_forest_adds_up_what_its_trees_say(leaves: int) -> None:
    learned = rows(3000)
    settings = {"objective": "binary", "num_leaves": leaves, "max_depth": DEPTH, "verbosity": -1, "num_threads": 1}
    model = lightgbm.train(settings, lightgbm.Dataset(learned, joined(learned)), 30)
    asked = rows(700)  # more than a block
    asked[0], asked[1], asked[2] = np.nan, np.inf, -np.inf
    said = forest_of(model.dump_model()).log_odds(asked)
    np.testing.assert_allclose(said, model.predict(asked, raw_score=True), rtol=0, atol=1e-5)
    assert np.ptp(said) > 1


def test_a_forest_of_nothing_but_leaves_says_one_thing() -> None:
    shown = rows(100)
    model = lightgbm.train({"objective": "binary", "verbosity": -1}, lightgbm.Dataset(shown, np.ones(100)), 3)
    said = forest_of(model.dump_model()).log_odds(shown)
    np.testing.assert_allclose(said, model.predict(shown, raw_score=True), atol=1e-5)


def test_the_same_seed_grows_the_same_forest() -> None:
    shown = rows(500)
    nursery = Nursery(shown, joined(shown), Growth(trees=5, leaves=8, rate=0.1, fewest=20, share=0.5))
    one, again, other = (nursery.grow(seed).log_odds(shown) for seed in (1, 1, 2))
    assert (one == again).all()
    assert (one != other).any()


def test_no_rows_have_no_answers() -> None:
    shown = rows(500)
    nursery = Nursery(shown, joined(shown), Growth(trees=2, leaves=4, rate=0.1, fewest=20, share=1))
    assert len(nursery.grow(0).log_odds(shown[:0])) == 0


@pytest.mark.parametrize(("left_if_missing", "missing"), [(True, 1.0), (False, 2.0)])
def test_up_to_the_limit_the_answer_is_left(left_if_missing: bool, missing: float) -> None:
    question = {
        "split_feature": 1, "threshold": 1.0, "default_left": left_if_missing, "missing_type": "NaN",
        "left_child": {"leaf_value": 1.0}, "right_child": {"leaf_value": 2.0},
    }  # fmt: skip
    forest = forest_of({"tree_info": [{"tree_structure": question}]})
    asked = np.array([[9, 0.5], [9, 1], [0, 1.0001], [0, np.nan]], np.float32)
    assert forest.log_odds(asked).tolist() == [1, 1, 2, missing]
