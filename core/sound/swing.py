"""Swing: how unevenly two written eighths of a beat are played.

A quarter of a simple metre in which a note begins, or a rest, at its half is swung: the half comes later, and what
stands before and behind it is stretched evenly. So written dots stay 3:1, snaps 1:3, and triplets even. Compound metres
are not swung.
"""

from __future__ import annotations

from fractions import Fraction

from core.tempos import dance_named
from core.tune import Bar, Tune
from core.values import dataclass

EVEN = Fraction(1)
HALF = Fraction(1, 2)
MOST_SWING = Fraction(4)

SWING = {
    "reel": EVEN, "polka": EVEN, "march": EVEN, "strathspey": EVEN, "waltz": EVEN, "air": EVEN,
    "hornpipe": Fraction(2), "clog": Fraction(2), "barndance": Fraction(2),
}  # fmt: skip
"""First eighth to second by dance; dances that are not listed are even. Common practice, no source."""


def swing_of(tune: Tune) -> Fraction:
    """First eighth to second in the tune's dance."""
    return SWING.get(dance_named(tune.dance), EVEN)


@dataclass(frozen=True, slots=True)
class SwungBar:
    """Where the places of a bar are played.

    Attributes:
        ratio: First eighth to second, at least 1.
        quarters: The quarters, counted from 0 at the beginning of the full bar, that are swung.
    """

    ratio: Fraction = EVEN
    quarters: frozenset[int] = frozenset()

    def at(self, place: Fraction) -> Fraction:
        """The place, in quarter notes from the beginning of the full bar, at which a written place is played."""
        quarter = int(place)
        if quarter not in self.quarters:
            return place
        within = place - quarter
        first = self.ratio / (self.ratio + 1)
        return quarter + (within * 2 * first if within <= HALF else first + (within - HALF) * 2 * (1 - first))


STRAIGHT = SwungBar()


def swung(bar: Bar, ratio: Fraction) -> SwungBar:
    """Find the quarters of a bar that are swung.

    Args:
        bar: The bar; where it ends inside a quarter, what follows begins there.
        ratio: First eighth to second.
    """
    if ratio == EVEN or bar.meter.is_compound:
        return STRAIGHT
    places = (*(bar.start + note.at for note in bar.notes), bar.start + bar.length)
    return SwungBar(ratio, frozenset(int(place) for place in places if place % 1 == HALF))
