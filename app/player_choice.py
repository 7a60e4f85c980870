"""What the user has chosen for playing, and how it is remembered."""

from __future__ import annotations

import json
from contextlib import suppress
from dataclasses import field, replace
from fractions import Fraction

from immutabledict import immutabledict

from core.sound.ladder import Ladder
from core.sound.part import USUAL, Levels, Part
from core.values import dataclass

LEAST_SPEED, MOST_SPEED, SPEED_STEP = 25, 150, 5  # percent of the tempo
LEAST_LEVEL, MOST_LEVEL = -24, 6  # decibels
MOST_COUNTED = 4  # bars
DELAY_MS = 15  # what was given out is heard so much later, as measured on one machine
MOST_DELAY_MS = 500


@dataclass(frozen=True)
class PlayerChoice:
    """How the tune is to be played.

    Attributes:
        speed: Percent of the tempo.
        loops: What is played begins again at its end.
        bars: First and last bar to be played, by their printed numbers; None for the whole tune with its repeats.
        climbs: The speed is that of the ladder, one rung after another.
        ladder: The practice ladder.
        count_in: Bars counted before the tune, and before each new rung.
        levels: Decibels above the usual level, by part.
        muted: Parts that are not heard.
        plays_set: The set of tunes is played in the place of the open one.
        delay_ms: Milliseconds by which the sound is heard after the device says that it was played.
    """

    speed: int = 100
    loops: bool = False
    bars: tuple[int, int] | None = None
    climbs: bool = False
    ladder: Ladder = Ladder()
    count_in: int = 1
    levels: Levels = field(default_factory=lambda: USUAL.set(Part.CLICK, 0.0))
    muted: frozenset[Part] = frozenset({Part.CLICK})
    plays_set: bool = False
    delay_ms: int = DELAY_MS

    @property
    def share(self) -> Fraction:
        """The speed as a share of the tempo."""
        return Fraction(self.speed, 100)

    @property
    def heard(self) -> Levels:
        """Levels of the parts that are heard."""
        return immutabledict({part: level for part, level in self.levels.items() if part not in self.muted})


def write_choice(choice: PlayerChoice) -> str:
    """What is kept from one start of the program to the next; not what belongs to one tune or one practice."""
    ladder = choice.ladder
    return json.dumps(
        {
            "ladder": [ladder.first, ladder.last, ladder.step, ladder.times],
            "count_in": choice.count_in,
            "levels": {part.value: level for part, level in choice.levels.items()},
            "muted": sorted(part.value for part in choice.muted),
            "delay_ms": choice.delay_ms,
        }
    )


def read_choice(text: str) -> PlayerChoice:
    """Read what was kept; whatever is unreadable or out of its limits is left as it is at first."""
    choice = PlayerChoice()
    try:
        kept = json.loads(text)
    except (ValueError, RecursionError):
        return choice
    if not isinstance(kept, dict):
        return choice
    with suppress(KeyError, TypeError, ValueError):
        choice = replace(choice, ladder=Ladder(*map(_whole, kept["ladder"])))
    for name, least, most in (("count_in", 0, MOST_COUNTED), ("delay_ms", -MOST_DELAY_MS, MOST_DELAY_MS)):
        value = kept.get(name)
        if type(value) is int and least <= value <= most:
            choice = replace(choice, **{name: value})
    levels, muted = kept.get("levels"), kept.get("muted")
    if isinstance(levels, dict):
        given = {part: levels.get(part.value) for part in Part}
        fit = {part: float(level) for part, level in given.items()
               if type(level) in (int, float) and LEAST_LEVEL <= level <= MOST_LEVEL}  # fmt: skip
        choice = replace(choice, levels=choice.levels.update(fit))
    if isinstance(muted, list):
        choice = replace(choice, muted=frozenset(part for part in Part if part.value in muted))
    return choice


def _whole(value: object) -> int:
    if type(value) is not int:
        raise TypeError("not a whole number")
    return value
