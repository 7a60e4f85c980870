"""Decision trees as plain arrays: grown by a library, kept and read without it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.errors import BowbenchError
from core.translation import tr

LARGEST = float(np.finfo(np.float32).max)
DEPTH = 6  # questions from the root of a tree to a leaf, at most


class MissingLibraryError(BowbenchError):
    """A library that is needed to learn cannot be loaded; styles that are learned already can be used."""


@dataclass(frozen=True)
class Forest:
    """Trees whose leaves add up to log-odds; the arrays but the last have an entry for each node.

    Attributes:
        column: Which measure is asked for.
        limit: Up to here the answer is *left*.
        missing_left: Where the measure is not a number the answer is left.
        left, right: The node that follows; of a leaf the leaf itself.
        value: Of a leaf; 0 elsewhere.
        roots: First node of each tree.
    """

    column: NDArray[np.int16]
    limit: NDArray[np.float32]
    missing_left: NDArray[np.bool_]
    left: NDArray[np.int32]
    right: NDArray[np.int32]
    value: NDArray[np.float32]
    roots: NDArray[np.int32]

    def log_odds(self, rows: NDArray[np.float32]) -> NDArray[np.float64]:
        """Add up the leaves of all trees for each row of measures."""
        node = np.broadcast_to(self.roots, (len(rows), len(self.roots)))
        for _ in range(DEPTH):
            measured = np.take_along_axis(rows, self.column[node], axis=1)
            goes_left = np.where(np.isnan(measured), self.missing_left[node], measured <= self.limit[node])
            node = np.where(goes_left, self.left[node], self.right[node])
        return np.asarray(self.value[node].sum(axis=1, dtype=np.float64))

    def arrays(self) -> dict[str, NDArray[Any]]:
        """By name of the attribute."""
        return {field.name: getattr(self, field.name) for field in fields(self)}


@dataclass(frozen=True, slots=True)
class Growth:
    """How trees are grown.

    Attributes:
        trees, leaves: How many, and leaves of each.
        rate: How much each tree adds.
        fewest: Examples in a leaf.
        share: Of the measures that a tree may ask for.
    """

    trees: int
    leaves: int
    rate: float
    fewest: int
    share: float


class Nursery:
    """Examples to grow forests from, all of them or some; the same ones and the same seed give the same forest.

    Args:
        rows: Measures, a row for each example.
        joined: 1 or 0 for each.
        growth: How.
    Raises:
        MissingLibraryError: the library that grows trees cannot be loaded.
    """

    def __init__(self, rows: NDArray[np.float32], joined: NDArray[np.float64], growth: Growth) -> None:
        try:
            import lightgbm  # slow to load, and not needed to read a forest
        except (ImportError, OSError) as error:  # OSError: a library of the system that it needs, such as libgomp
            raise MissingLibraryError(
                tr("To learn a style LightGBM is needed, which cannot be loaded here: {why}", why=error)
            ) from error
        self._train = lightgbm.train
        self._trees = growth.trees
        self._settings = {
            "objective": "binary", "num_leaves": growth.leaves, "max_depth": DEPTH, "learning_rate": growth.rate,
            "min_data_in_leaf": growth.fewest, "feature_fraction": growth.share, "lambda_l2": 10.0, "max_bin": 63,
            "bagging_fraction": 0.7, "bagging_freq": 1, "feature_pre_filter": False,
            "num_threads": 1, "deterministic": True, "force_col_wise": True, "verbosity": -1,
        }  # fmt: skip
        self._data = lightgbm.Dataset(rows, joined, params=self._settings, free_raw_data=False).construct()

    def grow(self, seed: int, chosen: NDArray[np.int64] | None = None) -> Forest:
        """Grow a forest from the examples with these indexes (rising), or from all."""
        data = self._data if chosen is None else self._data.subset(chosen.tolist())
        grown = self._train({**self._settings, "seed": seed}, data, self._trees).dump_model()
        return _flatten([tree["tree_structure"] for tree in grown["tree_info"]])


def _flatten(trees: list[Mapping[str, Any]]) -> Forest:
    nodes: list[tuple[int, float, bool, int, int, float]] = []

    def add(node: Mapping[str, Any]) -> int:
        place = len(nodes)
        if "leaf_value" in node:
            nodes.append((0, 0.0, False, place, place, node["leaf_value"]))
            return place
        nodes.append((0, 0.0, False, 0, 0, 0.0))
        limit = node["threshold"]
        missing_left = node["default_left"] if node["missing_type"] == "NaN" else limit >= 0  # else read as 0
        left, right = add(node["left_child"]), add(node["right_child"])
        nodes[place] = (node["split_feature"], limit, missing_left, left, right, 0.0)
        return place

    roots = [add(tree) for tree in trees]
    column, limit, missing_left, left, right, value = zip(*nodes, strict=True)
    return Forest(
        np.array(column, np.int16), np.array(limit).clip(-LARGEST, LARGEST).astype(np.float32),
        np.array(missing_left, np.bool_), np.array(left, np.int32), np.array(right, np.int32),
        np.array(value, np.float32), np.array(roots, np.int32),
    )  # fmt: skip
