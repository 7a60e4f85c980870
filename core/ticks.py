"""Times of a tune as whole numbers, for walks that compare many of them.

A ``Fraction`` is exact and slow. All times of one tune have a common denominator, so that they can be counted in
whole ticks of it, which is as exact and costs no more than an ``int``. A tune has few rhythms and many bars: what
depends on the rhythm of a bar alone is worked out for each rhythm once.
"""

from __future__ import annotations

from functools import cached_property
from itertools import accumulate, chain
from math import lcm
from typing import NamedTuple, TypeAlias

from core.once import once
from core.tune import Meter, Tune
from core.values import dataclass

_Ratio: TypeAlias = tuple[int, int]
_Notes: TypeAlias = tuple[tuple[_Ratio, bool, bool], ...]  # lengths in quarters, which are rests, which are held


class BarTicks(NamedTuple):
    """The rhythm of one bar, in ticks.

    Attributes:
        meter: In force throughout the bar.
        start: From the beginning of a full bar to the first note.
        lengths: Of each note.
        ends: Where each note ends, from the first note of the bar.
        full: Length of a full bar; None for free metre.
        rests: Whether each note is a rest.
        held: Whether each note is tied on from the one before.
        sounding: The lengths without those of rests.
    """

    meter: Meter
    start: int
    lengths: tuple[int, ...]
    ends: tuple[int, ...]
    full: int | None
    rests: tuple[bool, ...]
    held: tuple[bool, ...]
    sounding: tuple[int, ...]


@dataclass(frozen=True)
class Ticks:
    """Times of a tune.

    Attributes:
        per_quarter: Ticks in a quarter note.
        rhythms: All that differ.
        kinds: For each bar of ``tune.bars`` the index of its rhythm.
        bars: The rhythm of each bar; of bars with the same rhythm the very same.
    """

    per_quarter: int
    rhythms: tuple[BarTicks, ...]
    kinds: tuple[int, ...]
    bars: tuple[BarTicks, ...]

    @cached_property
    def lengths(self) -> tuple[int, ...]:
        """Of each note of ``Tune.sequence``."""
        return tuple(chain.from_iterable([bar.lengths for bar in self.bars]))


@once
def ticks(tune: Tune) -> Ticks:
    """Count the times of a tune in ticks: the largest unit that makes all of them whole."""
    meters: dict[Meter, int] = {}
    numbers: dict[tuple[_Notes, _Ratio, int], int] = {}
    kinds = []
    meter, meter_number = None, 0
    for bar in tune.bars:
        notes = tuple([(note.length.as_integer_ratio(), not note.pitches, note.held) for note in bar.notes])
        if bar.meter is not meter:
            meter = bar.meter
            meter_number = meters.setdefault(meter, len(meters))
        kinds.append(numbers.setdefault((notes, bar.start.as_integer_ratio(), meter_number), len(numbers)))
    full_bars = [(meter, meter.bar_length) for meter in meters]
    denominators = {bottom for notes, _, _ in numbers for (_, bottom), _, _ in notes}
    denominators.update([bottom for _, (_, bottom), _ in numbers])
    denominators.update([length.denominator for _, length in full_bars if length is not None])
    per_quarter = lcm(*denominators)
    unit = {denominator: per_quarter // denominator for denominator in denominators}
    full = [None if length is None else length.numerator * unit[length.denominator] for _, length in full_bars]
    rhythms = []
    for notes, (top, bottom), meter_number in numbers:
        lengths = tuple([top * unit[bottom] for (top, bottom), _, _ in notes])
        rests, held = tuple([rest for _, rest, _ in notes]), tuple([held for _, _, held in notes])
        sounding = tuple([length for length, rest in zip(lengths, rests, strict=True) if not rest])
        rhythms.append(
            BarTicks(
                full_bars[meter_number][0], top * unit[bottom], lengths, tuple(accumulate(lengths)), full[meter_number],
                rests, held, sounding,
            )
        )  # fmt: skip
    return Ticks(per_quarter, tuple(rhythms), tuple(kinds), tuple([rhythms[kind] for kind in kinds]))
