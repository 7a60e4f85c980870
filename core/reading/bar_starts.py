"""Where in the full bar each short bar begins: pick-ups, and parts of a bar that a repeat or double bar cuts in two."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import Protocol

from core.tune import Meter


class BarLike(Protocol):
    """What is asked of a bar here: a ``core.tune.Bar``, or a reader's draft of one."""

    @property
    def meter(self) -> Meter: ...
    @property
    def length(self) -> Fraction: ...
    @property
    def opens_repeat(self) -> bool: ...
    @property
    def repeats(self) -> int: ...
    @property
    def ending(self) -> tuple[int, ...]: ...
    @property
    def part(self) -> str: ...
    @property
    def ends_section(self) -> bool: ...


def bar_starts(bars: Sequence[BarLike]) -> list[Fraction]:
    """Find ``Bar.start`` of bars whose other values are known.

    A short first bar is a pick-up, unless it is all there is of its section. Later a short bar at a seam completes the
    short bar before the seam, where the two make a full bar. Any other short bar at a seam is a pick-up, unless it is
    an ending or its section's last.

    An ending that begins inside a bar completes that bar up to the pick-up that is played after it, and later endings
    do so alike.

    Returns:
        For each bar quarter notes from the beginning of a full bar to its first note.
    """
    starts: list[Fraction] = []
    pickups = {Fraction(0)}  # lengths of the pick-ups so far
    parted = -1  # index of the bar that the endings continue, where they begin inside one
    for index, bar in enumerate(bars):
        full, length, start = bar.meter.bar_length, bar.length, Fraction(0)
        before = index - 1
        begins_ending = bool(bar.ending) and (index == 0 or bars[before].ending != bar.ending)
        if begins_ending and index:
            if not bars[before].ending:
                parted = before
            elif parted >= 0:
                before = parted
        if full is None or not 0 < length < full:
            pass
        elif index == 0:
            if len(bars) > 1 and not bar.repeats:
                start = full - length
        elif is_seam(bars[index - 1], bar):
            filled = starts[before] + bars[before].length
            missing = full - filled - length
            if bars[before].meter == bar.meter and (not missing or (begins_ending and missing in pickups)):
                start = filled
            elif not begins_ending and index + 1 < len(bars) and not is_seam(bar, bars[index + 1]):
                start = full - length
        if full is not None and start and start + length == full:
            pickups.add(length)
        starts.append(start)
    return starts


def is_seam(before: BarLike, bar: BarLike) -> bool:
    """Whether a section ends between two bars: a repeat, a double bar, a jump, an ending, a part."""
    return before.ends_section or bar.opens_repeat or before.ending != bar.ending or bool(bar.part)
