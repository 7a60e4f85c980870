"""How fast a dance is usually played: a table for tunes that name no tempo.

B: Breathnach, Ceol Rince na hÉireann 1 (1963), p. ix, as quoted elsewhere. S: the table of a set-dance club in Sydney.
N: the page of a Scottish country dance club in Nanaimo, whose own two figures for strathspeys are 56 and 64. Where a
source gives a range, its middle.
"""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache

from core.once import once
from core.tune import Meter, Tempo, Tune
from core.values import dataclass

DUPLE = {2, 4}  # units in a simple bar that is danced two beats to the bar

BEATS_A_MINUTE = {
    "reel": (112, "B"),
    "double jig": (127, "B"),
    "jig": (127, "B, for double jigs"),
    "single jig": (137, "B"),
    "slide": (136, "S, 132 to 140"),
    "slip jig": (144, "B"),
    "slipjig": (144, "B"),
    "hornpipe": (90, "B"),
    "clog": (90, "as hornpipes; common practice, no source"),
    "polka": (136, "S, 132 to 140"),
    "strathspey": (60, "N, 56 and 64"),
    "waltz": (130, "100 to 160; common practice, no source"),
    "march": (105, "90 to 120; common practice, no source"),
    "barndance": (90, "80 to 100; common practice, no source"),
    "air": (50, "common practice, no source"),
    "": (100, "no dance named: a middling pace; common practice, no source"),
}
"""Beats a minute by dance, and where the figure is from. The beat is that of ``beat_of``."""

_LONGEST_FIRST = sorted(filter(None, BEATS_A_MINUTE), key=len, reverse=True)


@dataclass(frozen=True, slots=True)
class Pace:
    """The tempo at which a tune is taken to be played.

    Attributes:
        tempo: The tempo.
        dance: The row of ``BEATS_A_MINUTE`` that it is from; None where the tune itself or a setting names it.
    """

    tempo: Tempo
    dance: str | None = None

    @property
    def seconds_a_quarter(self) -> float:
        beat, per_minute = self.tempo.beat, self.tempo.per_minute
        return 60 * beat.denominator * per_minute.denominator / (beat.numerator * per_minute.numerator)


@once
def pace(tune: Tune, override: Tempo | None = None) -> Pace:
    """The tempo set from outside, else the tune's own, else that of its dance."""
    tempo = override or tune.tempo
    if tempo:
        return Pace(tempo)
    dance = dance_named(tune.dance)
    return Pace(Tempo(beat_of(tune.bars[0].meter), Fraction(BEATS_A_MINUTE[dance][0])), dance)


@lru_cache(maxsize=256)
def dance_named(text: str) -> str:
    """The row of ``BEATS_A_MINUTE`` that a text names, the longest name first; "" where it names none."""
    return next((name for name in _LONGEST_FIRST if re.search(rf"\b{name}s?\b", text)), "")


def beat_of(meter: Meter) -> Fraction:
    """Length in quarter notes of the beat that dancers count.

    Half a bar of 2/4, 4/4 or 2/2 however it is written, three units in compound time, else one unit; a quarter note in
    free metre.

    >>> beat_of(Meter((4,), 4)), beat_of(Meter((9,), 8)), beat_of(Meter((3,), 4))
    (Fraction(2, 1), Fraction(3, 2), Fraction(1, 1))
    """
    length = meter.bar_length
    if length is None:
        return Fraction(1)
    if meter.is_compound:
        return Fraction(12, meter.unit)
    return length / 2 if meter.count in DUPLE else Fraction(4, meter.unit)
