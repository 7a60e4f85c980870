"""How sure a style is of a bar, in three steps: a word, a shape, a sentence. No Qt."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from enum import Enum

from core.translation import listed, percent, plural, tr, translatable


class Sureness(Enum):
    """Steps, the surest first; the value is the chance from which on a bar belongs to it."""

    SURE = 0.75
    LIKELY = 0.4
    GUESS = 0.0


WORDS = translatable({Sureness.SURE: "sure", Sureness.LIKELY: "likely", Sureness.GUESS: "a guess"}, "of a bar")
TOLD = translatable({
    Sureness.SURE: "The style is sure of this bar: {chance}.",
    Sureness.LIKELY: "This bar is likely so, not sure: {chance}.",
    Sureness.GUESS: "This bar is a guess: {chance}.",
})  # fmt: skip


def sureness(chance: float) -> Sureness:
    """The step of a chance (0 to 1) that all of a bar is as proposed."""
    return next(step for step in Sureness if chance >= step.value)


def sure_word(chance: float) -> str:
    """The word under a bar."""
    return tr(WORDS[sureness(chance)], "of a bar")


def sure_sentence(chance: float) -> str:
    """All there is to say of a bar."""
    return tr(TOLD[sureness(chance)], chance=percent(min(chance, 0.99)))


def count_sure(chances: Iterable[float]) -> str:
    """How many bars are how sure, as part of a sentence: ``"12 bars sure, 3 likely and 1 a guess"``."""
    counts = Counter(map(sureness, chances))
    first, *others = (step for step in Sureness if counts[step])
    told = [plural("1 bar {sure}", "{n} bars {sure}", counts[first], sure=tr(WORDS[first], "of a bar"))]
    told += [
        plural("1 {sure}", "{n} {sure}", counts[step], "n: bars", sure=tr(WORDS[step], "of a bar")) for step in others
    ]
    return listed(told)
