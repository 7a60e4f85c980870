"""Invented hands: tunes drawn by lot, slurred by a rule that is known."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace
from functools import cache

import numpy as np
from immutabledict import immutabledict
from numpy.typing import NDArray

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing, Join
from core.style.learning import Example, example, learn
from core.style.places import Places, places
from core.style.style import Style
from core.tune import Tune
from tests.core.builders import bowed

LETTERS = "DEFGABcdef"
LESSONS = 14

Rule = Callable[[Places], NDArray[np.bool_]]


def falls_from_the_beat(at: Places) -> NDArray[np.bool_]:
    """The hand of these tests: the second note of a beat is slurred to the first where it lies lower."""
    return (at.in_beat > 0) & (at.step < 0) & ~at.over_bar_line


def bars(lots: random.Random, count: int) -> list[str]:
    """Bars of eight eighths."""
    drawn = []
    for _ in range(count):
        place, letters = lots.randrange(len(LETTERS)), ""
        for _ in range(8):
            letters += LETTERS[place]
            place = min(max(place + lots.choice((-2, -1, 1, 2)), 0), len(LETTERS) - 1)
        drawn.append(letters)
    return drawn


def lesson(seed: int, rule: Rule = falls_from_the_beat) -> tuple[Tune, Bowing]:
    """Sixteen bars in two repeated parts; bars 5 and 6 are bars 1 and 2 again, and so in the second part."""
    lots = random.Random(seed)
    parts = []
    for _ in range(2):
        one, two, *others = bars(lots, 6)
        parts.append(" | ".join([one, two, *others[:2], one, two, *others[2:]]))
    tune, bare = bowed(f"|: {parts[0]} :: {parts[1]} :|", accents=AccentPlan(PlanKind.NONE))
    return replace(tune, title=f"Lesson {seed}", dance="reel"), slurred(tune, bare, rule)


def slurred(tune: Tune, bare: Bowing, rule: Rule) -> Bowing:
    """Slurs by a rule."""
    found = places(tune)
    joined = zip(found.ids, rule(found), strict=True)
    return replace(bare, joins=immutabledict({note_id: Join.SLUR for note_id, slurred in joined if slurred}))


@cache
def examples() -> tuple[Example, ...]:
    """Lessons enough to learn from."""
    return tuple(example(*lesson(seed)) for seed in range(LESSONS))


@cache
def style() -> Style:
    """What is learned from them."""
    return learn(examples(), "Invented")
