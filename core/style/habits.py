"""Habits of a hand in words, counted: what is slurred oftener or more seldom than the rest, in how many cases, where.

A habit is told of two notes next to each other by up to three things: their lengths, how the second lies to the first,
and where the two stand to the beat. They are counted only, whatever the trees of a style make of them.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import log
from typing import TYPE_CHECKING, NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.style.places import Places
from core.translation import listed, percent, tr, translatable
from core.values import dataclass

if TYPE_CHECKING:
    from core.style.learning import Example

FEWEST_CASES = 12
CLOSE = 0.1  # shares that differ by less tell the same
MOST_BARS = 4
HARDLY_EVER = 0.1
STEP = 1  # of the staff; farther is a leap

Holds = NDArray[np.bool_]
Part = tuple[str, Callable[[Places], Holds]]  # words, of which places they hold


def _from_beat(at: Places) -> Holds:
    return np.asarray(at.before.at % at.before.beat == 0)


def _on_beat(at: Places) -> Holds:
    return np.asarray(at.in_beat == 0)


# the first that holds
LENGTHS: tuple[Part, ...] = (
    (translatable("notes of a triplet"), lambda at: at.inside_tuplet),
    (translatable("two equal notes"), lambda at: at.before.length == at.note.length),
    (translatable("a longer note and a shorter one"), lambda at: at.before.length > at.note.length),
    (translatable("a shorter note and a longer one"), lambda at: at.before.length < at.note.length),
)  # fmt: skip
MOTIONS: tuple[Part, ...] = (
    (translatable("falling by a step"), lambda at: at.step == -STEP),
    (translatable("rising by a step"), lambda at: at.step == STEP),
    (translatable("falling by a leap"), lambda at: at.step < -STEP),
    (translatable("rising by a leap"), lambda at: at.step > STEP),
    (translatable("on the same line or space"), lambda at: at.step == 0),
)
PLACES: tuple[Part, ...] = (
    (translatable("over the bar line"), lambda at: at.over_bar_line),
    (translatable("into the beat"), lambda at: ~at.over_bar_line & _on_beat(at)),
    (translatable("from the beat"), lambda at: ~_on_beat(at) & _from_beat(at)),
    (translatable("off the beat"), lambda at: ~_on_beat(at) & ~_from_beat(at)),
)  # fmt: skip
KINDS = (LENGTHS, MOTIONS, PLACES)
ANY = ""  # in the place of words: whichever

Figure = tuple[str, ...]  # words of a part of each of ``KINDS``, or ``ANY``


class _Cases(NamedTuple):
    """Places of which it is known whether they are joined, in written order.

    Attributes:
        joined: Whether each is.
        parts: [kind, place]: which part of each of ``KINDS`` holds.
        tune, bar: Index of its tune among the examples, printed number of its bar.
    """

    joined: NDArray[np.bool_]
    parts: NDArray[np.int64]
    tune: NDArray[np.int64]
    bar: NDArray[np.int64]

    @property
    def share(self) -> float:
        """Of them that are joined."""
        return float(self.joined.sum() / len(self.joined))

    def where(self, holds: Holds) -> _Cases:
        """Those of which it holds."""
        return _Cases(self.joined[holds], self.parts[:, holds], self.tune[holds], self.bar[holds])


@dataclass(frozen=True)
class Habit:
    """What a hand does in one figure.

    Attributes:
        figure: Which two notes, in one to three phrases: ``("two equal notes", "falling by a step")``.
        joined, seen: How often they are in one stroke, and how often they come.
        where: Some of the cases that do as most do, as (title of the tune, printed number of the bar of the second
            note); from several tunes where there are.
    """

    figure: tuple[str, ...]
    joined: int
    seen: int
    where: tuple[tuple[str, int], ...]

    @property
    def share(self) -> float:
        """Of the cases that are joined."""
        return self.joined / self.seen

    def sentence(self) -> str:
        """In words, with the number of cases."""
        told = {
            "figure": " ".join(tr(phrase) for phrase in self.figure), "joined": self.joined, "seen": self.seen,
            "bars": _bars(self.where),
        }  # fmt: skip
        if self.share <= HARDLY_EVER:
            return tr("Hardly ever slurred ({joined} of {seen} cases): {figure}, for example {bars}.", **told)
        return tr(
            "Slurred in {share} of the cases ({joined} of {seen}): {figure}, for example {bars}.",
            share=percent(self.share), **told,
        )  # fmt: skip


def habits(examples: Sequence[Example], most: int = 8) -> tuple[Habit, ...]:
    """The most telling habits, the most telling first; none where nothing differs from the rest."""
    seen = _by_figure(_cases(examples))
    if not seen:
        return ()
    share = seen[ANY, ANY, ANY].share
    ranked = sorted(
        (figure for figure, cases in seen.items() if figure[0] != ANY and len(cases.joined) >= FEWEST_CASES),
        key=lambda figure: (-_surprise(seen[figure], share), figure),
    )
    taken: list[Figure] = []
    for figure in ranked:
        if len(taken) < most and _differs(seen[figure], share) and not any(
            _related(figure, other) and not _differs(seen[figure], seen[other].share) for other in taken
        ):  # fmt: skip
            taken.append(figure)
    titles = [one.tune.title for one in examples]
    return tuple(_habit(figure, seen[figure], titles) for figure in taken)


def _cases(examples: Sequence[Example]) -> _Cases:
    """All of them."""
    found = [_Cases(np.zeros(0, np.bool_), np.zeros((len(KINDS), 0), np.int64), *np.zeros((2, 0), np.int64))]
    for index, one in enumerate(examples):
        at = one.read.found
        parts = np.stack([np.stack([holds(at) for _, holds in parts]).argmax(axis=0) for parts in KINDS])
        numbers = np.array([bar.number for bar in one.tune.bars], np.int64)
        cases = _Cases(one.joined > 0, parts, np.full(len(at), index), numbers[one.read.bars])
        found.append(cases.where(~np.isnan(one.joined)))
    return _Cases(*(np.concatenate(columns, axis=-1) for columns in zip(*found, strict=True)))


def _by_figure(cases: _Cases) -> dict[Figure, _Cases]:
    """The cases of each figure that comes."""
    found: dict[Figure, _Cases] = {(): cases} if len(cases.joined) else {}
    for kind, parts in enumerate(KINDS):
        narrower: dict[Figure, _Cases] = {}
        for figure, own in found.items():
            narrower[*figure, ANY] = own
            for part, (words, _) in enumerate(parts):
                if (holds := own.parts[kind] == part).any():
                    narrower[*figure, words] = own.where(holds)
        found = narrower
    return found


def _differs(cases: _Cases, share: float) -> bool:
    return abs(cases.share - share) >= CLOSE


def _related(figure: Figure, other: Figure) -> bool:
    """One is the other, told more closely."""
    pairs = [(one, two) for one, two in zip(figure, other, strict=True) if ANY not in (one, two)]
    return all(one == two for one, two in pairs)


def _surprise(cases: _Cases, share: float) -> float:
    """How unlike the rest the cases are: likelihood ratio of their own share and that of all."""
    own, count = cases.share, len(cases.joined)
    return count * sum(
        part * log(part / whole) for part, whole in ((own, share), (1 - own, 1 - share)) if part and whole
    )


def _habit(figure: Figure, cases: _Cases, titles: Sequence[str]) -> Habit:
    joined, seen = int(cases.joined.sum()), len(cases.joined)
    usual = cases.where(cases.joined == (2 * joined > seen))
    places = list(
        dict.fromkeys((titles[tune], bar) for tune, bar in zip(usual.tune.tolist(), usual.bar.tolist(), strict=True))
    )
    by_tune: dict[str, list[tuple[str, int]]] = {}
    for place in places:
        by_tune.setdefault(place[0], []).append(place)
    spread = [place for rank in range(MOST_BARS) for own in by_tune.values() for place in own[rank : rank + 1]]
    where = tuple(sorted(spread[:MOST_BARS], key=places.index))
    return Habit(tuple(phrase for phrase in figure if phrase != ANY), joined, seen, where)


def _bars(where: tuple[tuple[str, int], ...]) -> str:
    titles = list(dict.fromkeys(title for title, _ in where))
    told = []
    for title in titles:
        bars = [str(bar) for of, bar in where if of == title and bar > 0]
        named = [tr("the pick-up")] if any(of == title and bar == 0 for of, bar in where) else []
        if bars:
            named.append(tr("bar {bar}", bar=bars[0]) if len(bars) == 1 else tr("bars {bars}", bars=listed(bars)))
        text = listed(named)
        told.append(text if len(titles) == 1 else tr("{bars} of “{title}”", bars=text, title=title))
    return tr("; ", "between tunes").join(told)
