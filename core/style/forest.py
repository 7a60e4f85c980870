"""Decision trees as plain arrays: grown by a library, kept and read without it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import fields
from functools import cached_property
from threading import Lock
from typing import Any, TypeAlias

import numpy as np
from numpy.typing import NDArray

from core.errors import BowbenchError
from core.translation import tr
from core.values import dataclass

LARGEST = float(np.finfo(np.float32).max)
DEPTH = 6  # questions from the root of a tree to a leaf, at most
BLOCK = 256  # rows at a time


class MissingLibraryError(BowbenchError):
    """A library that is needed to learn cannot be loaded; styles that are learned already can be used."""


@dataclass(frozen=True)
class Forest:
    """Trees whose leaves add up to log-odds.

    No tree is walked: every question of every tree is answered, and the leaf is the first one that no answer rules out.
    (The leaves of a tree are numbered from left to right, so that *not left* rules out those on the left.)

    Attributes:
        column: [tree, question]: which measure is asked for.
        limit: [tree, question]: up to here the answer is *left*.
        missing_left: [tree, question]: where the measure is not a number the answer is left.
        rules_out: [tree, question]: a bit for each leaf, the first the lowest: 1 where *not left* rules it out. Trees
            with fewer questions than others ask some that rule out nothing.
        value: [tree, leaf].
    """

    column: NDArray[np.int16]
    limit: NDArray[np.float32]
    missing_left: NDArray[np.bool_]
    rules_out: NDArray[np.unsignedinteger[Any]]
    value: NDArray[np.float32]

    def log_odds(self, rows: NDArray[np.float32]) -> NDArray[np.float64]:
        """Add up the leaves of all trees for each row of measures."""
        found = [self._log_odds(rows[start : start + BLOCK]) for start in range(0, len(rows), BLOCK)]
        return np.concatenate(found) if found else np.zeros(0)

    def _log_odds(self, rows: NDArray[np.float32]) -> NDArray[np.float64]:
        columns = np.ascontiguousarray(rows.T[: self._width])
        either = np.concatenate([columns, columns])
        missing = np.isnan(columns)
        for half, far in ((either[: self._width], -np.inf), (either[self._width :], np.inf)):
            half[missing] = far
        not_left = either.take(self._asked, axis=0) > self.limit[:, :, None]
        ruled_out = np.bitwise_or.reduce(not_left * self.rules_out[:, :, None], axis=1)
        first = ~ruled_out & (ruled_out + self.rules_out.dtype.type(1))  # its bit alone
        leaf = np.ascontiguousarray(np.frexp(first.T.astype(np.float32))[1] - 1)
        trees, leaves = self.value.shape
        return np.asarray(self.value.take(leaf + np.arange(0, trees * leaves, leaves)).sum(axis=1, dtype=np.float64))

    @cached_property
    def _asked(self) -> NDArray[np.int64]:
        """Which measure is asked for, of a row with all that is missing far left, then far right."""
        return self.column.astype(np.int64) + np.where(self.missing_left, 0, self._width)

    @cached_property
    def _width(self) -> int:
        """How many measures are looked at, the last of them asked for."""
        return int(self.column.max(initial=0)) + 1

    def arrays(self) -> dict[str, NDArray[Any]]:
        """By name of the attribute."""
        return {field.name: getattr(self, field.name) for field in fields(self)}

    def refuse_faults(self, width: int) -> None:
        """Refuse what is no forest for rows of this width.

        Raises:
            ValueError: it would lead nowhere, or asks for what is not measured.
        """
        questions = self.column.shape
        if [array.dtype.kind for array in self.arrays().values()] != ["i", "f", "b", "u", "f"]:
            raise ValueError("a forest is made of other numbers")
        if any(one.shape != questions for one in (self.limit, self.missing_left, self.rules_out)):
            raise ValueError("a forest lists its questions differently")
        if self.value.ndim != 2 or len(questions) != 2 or len(self.value) != len(self.column):
            raise ValueError("a forest lists its trees differently")
        if ((self.column < 0) | (self.column >= width)).any():
            raise ValueError("a tree asks for what is not measured")
        if self.value.shape[1] > np.iinfo(self.rules_out.dtype).bits:
            raise ValueError("a tree has more leaves than bits")
        never_ruled_out = ~np.bitwise_or.reduce(self.rules_out, axis=1)
        if not (never_ruled_out & never_ruled_out.dtype.type(2 ** self.value.shape[1] - 1)).all():
            raise ValueError("a tree leads nowhere")


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
        self._booster = lightgbm.Booster
        self._lock = Lock()
        self._trees = growth.trees
        self._settings = {
            "objective": "binary", "num_leaves": growth.leaves, "max_depth": DEPTH, "learning_rate": growth.rate,
            "min_data_in_leaf": growth.fewest, "feature_fraction": growth.share, "lambda_l2": 10.0, "max_bin": 63,
            "bagging_fraction": 0.7, "bagging_freq": 1, "feature_pre_filter": False,
            "num_threads": 1, "deterministic": True, "force_col_wise": True, "verbosity": -1,
        }  # fmt: skip
        self._data = lightgbm.Dataset(rows, joined, params=self._settings, free_raw_data=False).construct()

    def grow(
        self, seed: int, chosen: NDArray[np.int64] | None = None, after_tree: Callable[[], None] = lambda: None
    ) -> Forest:
        """Grow a forest; several can be grown at the same time, in threads.

        Args:
            seed: Says which measures and examples each tree sees.
            chosen: Indexes of the examples to grow it from, rising; None for all.
            after_tree: Called after each tree; raises to leave off.
        """
        with self._lock:
            data = self._data if chosen is None else self._data.subset(chosen.tolist())
            growing = self._booster({**self._settings, "seed": seed}, data)
        for _ in range(self._trees):
            growing.update()
            after_tree()
        return forest_of(growing.dump_model())


def forest_of(model: Mapping[str, Any]) -> Forest:
    """The trees of a model as LightGBM tells them (``Booster.dump_model``)."""
    found = [_questions(tree["tree_structure"]) for tree in model["tree_info"]]
    most_questions = max(len(questions) for questions, _ in found)
    most_leaves = most_questions + 1
    shape = len(found), most_questions
    column, limit, missing_left = np.zeros(shape, np.int16), np.zeros(shape, np.float32), np.zeros(shape, np.bool_)
    bits = np.min_scalar_type(2**most_leaves - 1)
    rules_out = np.zeros(shape, bits)
    value = np.zeros((len(found), most_leaves), np.float32)
    for tree, (questions, leaves) in enumerate(found):
        value[tree, : len(leaves)] = leaves
        for number, (asked, up_to, left_if_missing, first, stop) in enumerate(questions):
            column[tree, number], missing_left[tree, number] = asked, left_if_missing
            limit[tree, number] = min(max(up_to, -LARGEST), LARGEST)
            rules_out[tree, number] = 2**stop - 2**first
    return Forest(column, limit, missing_left, rules_out, value)


Question: TypeAlias = tuple[int, float, bool, int, int]  # column, limit, missing left, leaves on the left: first, stop


def _questions(tree: Mapping[str, Any]) -> tuple[list[Question], list[float]]:
    """The questions of a tree, and the values of its leaves from left to right."""
    questions: list[Question] = []
    leaves: list[float] = []

    def add(node: Mapping[str, Any]) -> None:
        if "leaf_value" in node:
            leaves.append(node["leaf_value"])
            return
        first = len(leaves)
        add(node["left_child"])
        limit = node["threshold"]
        missing_left = node["default_left"] if node["missing_type"] == "NaN" else limit >= 0  # else read as 0
        questions.append((node["split_feature"], limit, missing_left, first, len(leaves)))
        add(node["right_child"])

    add(tree)
    return questions, leaves
