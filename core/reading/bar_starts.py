"""Where in the full bar each short bar begins: pick-ups, and parts of a bar that a repeat or double bar cuts in two."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from core.tune import Bar, BarLine


def bar_starts(bars: Sequence[Bar]) -> list[Fraction]:
    """Find ``Bar.start`` of bars whose other values are known.

    A short first bar is a pick-up, unless it is all there is of its section. Later a short bar at a seam completes the
    short bar before the seam, where the two make a full bar; a first ending that begins inside a bar is completed
    alike by all later ones. Any other short bar at a seam is a pick-up, unless it is an ending or its section's last.

    Returns:
        For each bar quarter notes from the beginning of a full bar to its first note.
    """
    starts: list[Fraction] = []
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
            if len(bars) > 1 and not (bar.repeats or bar.line is BarLine.FINAL):
                start = full - length
        elif _is_seam(bars[index - 1], bar):
            filled = starts[before] + bars[before].length
            if filled + length == full and bars[before].meter == bar.meter:
                start = filled
            elif not begins_ending and index + 1 < len(bars) and not _is_seam(bar, bars[index + 1]):
                start = full - length
        starts.append(start)
    return starts


def _is_seam(before: Bar, bar: Bar) -> bool:
    """Whether a section ends between two bars."""
    return before.ends_section or bar.opens_repeat or before.ending != bar.ending or bool(bar.part)
