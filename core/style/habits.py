"""Habits of a hand in words, counted: what is slurred oftener or more seldom than the rest, in how many cases, where.

A habit is told of two notes next to each other by up to three things: their lengths, how the second lies to the first,
and where the two stand to the beat. They are counted only, whatever the trees of a style make of them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import product
from math import isnan, log
from typing import TYPE_CHECKING

from core.style.places import Place
from core.translation import listed, percent, tr, translatable

if TYPE_CHECKING:
    from core.style.learning import Example

FEWEST_CASES = 12
CLOSE = 0.1  # shares that differ by less tell the same
MOST_BARS = 4
HARDLY_EVER = 0.1
STEP = 1  # of the staff; farther is a leap

Part = tuple[str, Callable[[Place], bool]]  # words, whether they hold of a place


def _from_beat(place: Place) -> bool:
    return place.before.at % place.before.beat == 0


def _on_beat(place: Place) -> bool:
    return place.note.at % place.note.beat == 0


# the first that holds
LENGTHS: tuple[Part, ...] = (
    (translatable("notes of a triplet"), lambda place: place.inside_tuplet),
    (translatable("two equal notes"), lambda place: place.before.length == place.note.length),
    (translatable("a longer note and a shorter one"), lambda place: place.before.length > place.note.length),
    (translatable("a shorter note and a longer one"), lambda place: place.before.length < place.note.length),
)  # fmt: skip
MOTIONS: tuple[Part, ...] = (
    (translatable("falling by a step"), lambda place: place.step == -STEP),
    (translatable("rising by a step"), lambda place: place.step == STEP),
    (translatable("falling by a leap"), lambda place: place.step < -STEP),
    (translatable("rising by a leap"), lambda place: place.step > STEP),
    (translatable("on the same line or space"), lambda place: place.step == 0),
)
PLACES: tuple[Part, ...] = (
    (translatable("over the bar line"), lambda place: place.over_bar_line),
    (translatable("into the beat"), lambda place: not place.over_bar_line and _on_beat(place)),
    (translatable("from the beat"), lambda place: not _on_beat(place) and _from_beat(place)),
    (translatable("off the beat"), lambda place: not _on_beat(place) and not _from_beat(place)),
)  # fmt: skip
ANY: Part = ("", lambda _: True)


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
    seen: dict[tuple[str, ...], list[tuple[str, int, bool]]] = {}
    for one in examples:
        for place, joined in zip(one.read.found, one.joined, strict=True):
            if not isnan(joined):
                case = (one.tune.title, one.tune.bars[place.note.bar].number, bool(joined > 0))
                for figure in product(*(("", _words(parts, place)) for parts in (LENGTHS, MOTIONS, PLACES))):
                    seen.setdefault(figure, []).append(case)
    everything = seen.get(("", "", ""), [])
    if not everything:
        return ()
    share = _share(everything)
    ranked = sorted(
        (figure for figure, cases in seen.items() if figure[0] and len(cases) >= FEWEST_CASES),
        key=lambda figure: (-_surprise(seen[figure], share), figure),
    )
    taken: list[tuple[str, ...]] = []
    for figure in ranked:
        if len(taken) < most and _differs(seen[figure], share) and not any(
            _related(figure, other) and not _differs(seen[figure], _share(seen[other])) for other in taken
        ):  # fmt: skip
            taken.append(figure)
    return tuple(_habit(figure, seen[figure]) for figure in taken)


def _words(parts: Iterable[Part], place: Place) -> str:
    return next((words for words, holds in parts if holds(place)), "")


def _share(cases: Sequence[tuple[str, int, bool]]) -> float:
    return sum(joined for *_, joined in cases) / len(cases)


def _differs(cases: Sequence[tuple[str, int, bool]], share: float) -> bool:
    return abs(_share(cases) - share) >= CLOSE


def _related(figure: tuple[str, ...], other: tuple[str, ...]) -> bool:
    """One is the other, told more closely."""
    pairs = [(one, two) for one, two in zip(figure, other, strict=True) if one and two]
    return all(one == two for one, two in pairs)


def _surprise(cases: Sequence[tuple[str, int, bool]], share: float) -> float:
    """How unlike the rest the cases are: likelihood ratio of their own share and that of all."""
    own, count = _share(cases), len(cases)
    return count * sum(
        part * log(part / whole) for part, whole in ((own, share), (1 - own, 1 - share)) if part and whole
    )


def _habit(figure: tuple[str, ...], cases: Sequence[tuple[str, int, bool]]) -> Habit:
    joined = sum(is_joined for *_, is_joined in cases)
    usual = 2 * joined > len(cases)
    places = list(dict.fromkeys((title, bar) for title, bar, is_joined in cases if is_joined is usual))
    by_tune: dict[str, list[tuple[str, int]]] = {}
    for place in places:
        by_tune.setdefault(place[0], []).append(place)
    spread = [place for rank in range(MOST_BARS) for own in by_tune.values() for place in own[rank : rank + 1]]
    where = tuple(sorted(spread[:MOST_BARS], key=places.index))
    return Habit(tuple(phrase for phrase in figure if phrase), joined, len(cases), where)


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
