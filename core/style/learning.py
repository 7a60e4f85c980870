"""Learn a style from bowed lessons.

A later stage must not be told by an earlier one what that stage knew by heart, so each lesson is told what is learned
from other lessons only. And since a style is asked what follows from a few marked bars, each lesson is shown several
times, with other bars marked: its first four, its first section, none, and some that are drawn by lot.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from core.bowing import Bowing
from core.errors import RefusedEditError
from core.order import sections
from core.style.counts import Counts, count
from core.style.evidence import Numbers, from_marked, from_neighbours
from core.style.forest import Growth, Nursery
from core.style.habits import habits
from core.style.style import Facts, Figures, Style, chance, facts
from core.style.together import Round, done_together
from core.translation import tr
from core.tune import Tune
from core.values import dataclass

V = TypeVar("V")

SEGUE = "segue"  # "and so on": notes behind it that are not slurred say nothing
FIRST_BARS = 4
FOLDS = 6  # parts of the lessons; a multiple of GUESSING
GUESSING = 3
SEEDS = 2  # forests that speak together
DRAWN = 1  # times that a lesson is shown with bars drawn by lot
DRAWN_BARS = (2, 4, 6, 8)
ALONE = Growth(trees=90, leaves=12, rate=0.09, fewest=20, share=0.25)
BESIDE_MARKED = Growth(trees=120, leaves=12, rate=0.085, fewest=25, share=0.2)
BESIDE_ALL = Growth(trees=90, leaves=8, rate=0.055, fewest=50, share=0.3)
FEWEST_LESSONS, FEWEST_SLURRED = 12, 200


class TooLittleError(RefusedEditError):
    """There is too little to learn from; the text says how much is needed."""


@dataclass(frozen=True)
class Example:
    """A bowed tune to learn from.

    Attributes:
        tune: The tune.
        read: What is looked at of it.
        joined: For each of its places 1 or 0; not a number where the bowing does not say.
    """

    tune: Tune
    read: Facts
    joined: Numbers


def example(tune: Tune, bowing: Bowing) -> Example:
    """What a bowing teaches; behind the word "segue" nothing, since slurs are left to the player there."""
    ends = next(
        (
            (index, words.at)
            for index, bar in enumerate(tune.bars)
            for words in sorted(bar.words, key=lambda words: words.at)
            if SEGUE in words.text.lower()
        ),
        None,
    )
    read = facts(tune)
    joined = np.array([note_id in bowing.joins for note_id in read.found.ids], np.float64)
    if ends is not None:
        told = [
            (bar, tune.note(note_id).at) < ends for note_id, bar in zip(read.found.ids, read.bars.tolist(), strict=True)
        ]
        joined[~np.array(told, np.bool_)] = np.nan
    return Example(tune, read, joined)


Watch = Callable[[int, int], None]
View = Callable[[Example], NDArray[np.bool_]]  # which places of a lesson are marked


def first_bars(shown: Example) -> NDArray[np.bool_]:
    """Which places stand in the first four full bars or before them."""
    full = np.cumsum([not bar.is_pickup for bar in shown.tune.bars])
    return np.asarray(full[shown.read.bars] <= FIRST_BARS)


def first_section(shown: Example) -> NDArray[np.bool_]:
    """Which places stand in the first section."""
    return shown.read.bars < sections(shown.tune)[0].stop


def nothing(shown: Example) -> NDArray[np.bool_]:
    """No place."""
    return np.zeros(len(shown.joined), np.bool_)


def _drawn(lots: np.random.Generator, shown: Example) -> NDArray[np.bool_]:
    bars = np.unique(shown.read.bars)
    first = lots.integers(max(1, len(bars) - FIRST_BARS + 1))
    return np.isin(shown.read.bars, bars[first : first + lots.choice(DRAWN_BARS)])


def marked_only(shown: Example, marked: NDArray[np.bool_]) -> Numbers:
    """What is joined in the marked places, the rest not a number."""
    return np.where(marked, shown.joined, np.nan)


def refuse_too_little(examples: Sequence[Example]) -> None:
    """Say so where there is too little to learn from.

    Raises:
        TooLittleError: fewer lessons or slurred notes than a style needs.
    """
    slurred = int(sum(np.nansum(shown.joined) for shown in examples))
    if len(examples) < FEWEST_LESSONS or slurred < FEWEST_SLURRED:
        raise TooLittleError(
            tr(
                "There is too little to learn a style from (bowed lessons: {lessons}, slurred notes: {slurred}): at "
                "least {fewest_lessons} lessons with {fewest_slurred} slurred notes in all are needed.",
                lessons=len(examples), slurred=slurred, fewest_lessons=FEWEST_LESSONS, fewest_slurred=FEWEST_SLURRED,
            )
        )  # fmt: skip


def learn(
    examples: Sequence[Example], name: str, notice: str = "", seed: int = 1883, watch: Watch = lambda done, total: None
) -> Style:
    """Learn a style; the same examples in the same order give the same style.

    Args:
        examples: What to learn from.
        name, notice: Of the style.
        seed: Says which lessons stand in for others, and what is shown of each.
        watch: Called again and again, in the caller's thread, with how much is done and how much there is; raises to
            leave off.
    Raises:
        TooLittleError: there are too few.
        MissingLibraryError: the library that grows trees cannot be loaded.
    """
    refuse_too_little(examples)
    lots = np.random.default_rng(seed)
    fold = lots.permutation(len(examples)) % FOLDS
    views: list[View] = [first_bars, first_section, nothing, *[partial(_drawn, lots)] * DRAWN]
    shown = [[view(one) for view in views] for one in examples]
    steps = _Steps(watch, len(examples))
    found = habits(examples)
    steps.lessons_read()
    counts, counted = _counted_apart(examples, fold)
    rows = [np.hstack([one.read.measures, measures]) for one, measures in zip(examples, counted, strict=True)]
    group = fold % GUESSING

    known = [~np.isnan(one.joined) for one in examples]
    first = _Stage([[part] for part in rows], [[each] for each in known], examples, group, ALONE, steps)
    guess = [chance(odds[0]) for odds in first.told_apart]

    asked = [[each & ~marked for marked in marks] for each, marks in zip(known, shown, strict=True)]
    given = [[marked_only(one, marked) for marked in marks] for one, marks in zip(examples, shown, strict=True)]
    beside = [
        [np.hstack([part, from_marked(one.read.likeness, joined, chances)]) for joined in joins]
        for one, part, joins, chances in steps.each(zip(examples, rows, given, guess, strict=True))
    ]
    second = _Stage(beside, asked, examples, group, BESIDE_MARKED, steps)
    settled = [
        [
            np.hstack([part, from_neighbours(one.read.likeness, joined, chance(odds), one.read.bars)])
            for part, joined, odds in zip(parts, joins, told, strict=True)
        ]
        for one, parts, joins, told in steps.each(zip(examples, beside, given, second.told_apart, strict=True))
    ]
    third = _Stage(settled, asked, examples, None, BESIDE_ALL, steps)
    told = np.concatenate([one.joined[each] for one, each in zip(examples, known, strict=True)])
    figures = Figures(len(examples), len(told), int(told.sum()))
    return Style(name, notice, figures, found, counts, (first.forests, second.forests, third.forests))


def _counted_apart(examples: Sequence[Example], fold: NDArray[np.int64]) -> tuple[Counts, list[NDArray[np.float32]]]:
    """Counts over all lessons; and for each lesson what is counted over the other parts of them."""
    known = [~np.isnan(one.joined) for one in examples]
    counts, apart = count(
        np.concatenate([one.read.keys[each] for one, each in zip(examples, known, strict=True)]),
        np.concatenate([one.joined[each] for one, each in zip(examples, known, strict=True)]),
        np.concatenate([np.full(each.sum(), part) for part, each in zip(fold, known, strict=True)]),
        FOLDS,
    )
    return counts, [apart[part].measures(one.read.keys) for one, part in zip(examples, fold, strict=True)]


class _Steps:
    """How far it is, for whoever watches: counted in trees, which take longest."""

    READ = 100  # trees that take as long as what is read of all lessons once
    PASSES = 3

    def __init__(self, watch: Watch, lessons: int) -> None:
        self._watch, self._lessons = watch, lessons
        grown_apart = SEEDS + GUESSING
        self._total = (
            self.PASSES * self.READ + grown_apart * (ALONE.trees + BESIDE_MARKED.trees) + SEEDS * BESIDE_ALL.trees
        )
        self._done = 0.0
        self.tell()

    def tell(self, trees: int = 0) -> None:
        """How far it is, with so many trees more."""
        self._watch(round(self._done) + trees, self._total)

    def grown(self, trees: int) -> None:
        """So many trees are done with."""
        self._done += trees
        self.tell()

    def lessons_read(self) -> None:
        """Something was read of all lessons."""
        self.grown(self.READ)

    def each(self, lessons: Iterable[V]) -> Iterator[V]:
        """What is read of lessons, one by one."""
        for one in lessons:
            yield one
            self._done += self.READ / self._lessons
            self.tell()


Views = list[list[NDArray[np.float32]]]  # for each lesson, for each view of it: rows


class _Stage:
    """Forests of one stage, and what they would say of each lesson if they did not know it.

    Attributes:
        forests: Grown from all lessons.
        told_apart: For each lesson and view the log-odds of a forest grown from other lessons; empty without groups.
    """

    def __init__(
        self,
        rows: Views,
        asked: list[list[NDArray[np.bool_]]],
        examples: Sequence[Example],
        group: NDArray[np.int64] | None,
        growth: Growth,
        steps: _Steps,
    ) -> None:
        views = [(number, view) for number, own in enumerate(rows) for view in range(len(own))]

        def prepared(_: Round) -> Nursery:
            shown = [rows[number][view][asked[number][view]] for number, view in views]
            joined = [examples[number].joined[asked[number][view]] for number, view in views]
            return Nursery(np.concatenate(shown), np.concatenate(joined), growth)

        (nursery,) = done_together([prepared], steps.tell)
        chosen: list[NDArray[np.int64] | None] = [None] * SEEDS
        if group is not None:
            owner = np.concatenate([np.full(asked[number][view].sum(), number) for number, view in views])
            chosen += [np.flatnonzero(group[owner] != left_out) for left_out in range(GUESSING)]
        grown = done_together([partial(nursery.grow, seed, each) for seed, each in enumerate(chosen)], steps.tell)
        steps.grown(len(chosen) * growth.trees)
        self.forests = tuple(grown[:SEEDS])
        self.told_apart: list[list[Numbers]] = [[] for _ in rows]
        for left_out, forest in enumerate(grown[SEEDS:]):
            for number in np.flatnonzero(group == left_out):
                self.told_apart[number] = [forest.log_odds(view) for view in rows[number]]
                steps.tell()
