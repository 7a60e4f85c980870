"""Times of a tune as whole numbers, for walks that compare many of them.

A ``Fraction`` is exact and slow. All times of one tune have a common denominator, so that they can be counted in
whole ticks of it, which is as exact and costs no more than an ``int``.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import accumulate
from math import lcm

from core.once import once
from core.tune import Tune


@dataclass(frozen=True, slots=True)
class BarTicks:
    """Times of one bar in ticks.

    Attributes:
        start: From the beginning of a full bar to the first note.
        lengths: Of each note.
        ends: Where each note ends, from the first note of the bar.
        full: Length of a full bar; None for free metre.
    """

    start: int
    lengths: tuple[int, ...]
    ends: tuple[int, ...]
    full: int | None


@dataclass(frozen=True)
class Ticks:
    """Times of a tune.

    Attributes:
        per_quarter: Ticks in a quarter note.
        bars: By index in ``tune.bars``.
    """

    per_quarter: int
    bars: tuple[BarTicks, ...]


@once
def ticks(tune: Tune) -> Ticks:
    """Count the times of a tune in ticks: the largest unit that makes all of them whole."""
    meters = {bar.meter: bar.meter.bar_length for bar in tune.bars}
    denominators = {note.length.denominator for note in tune.sequence}
    denominators.update(bar.start.denominator for bar in tune.bars)
    denominators.update(length.denominator for length in meters.values() if length is not None)
    per_quarter = lcm(*denominators)

    def count(time: Fraction) -> int:
        return time.numerator * (per_quarter // time.denominator)

    full = {meter: None if length is None else count(length) for meter, length in meters.items()}
    bars = []
    for bar in tune.bars:
        lengths = tuple([count(note.length) for note in bar.notes])
        bars.append(BarTicks(count(bar.start), lengths, tuple(accumulate(lengths)), full[bar.meter]))
    return Ticks(per_quarter, tuple(bars))
