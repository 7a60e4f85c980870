"""Which notes of a bar stand under one beam.

Beams show the beats. Common practice, no source: eighths by half bars in 4/4 and 2/2 and by the bar in 2/4 and 3/8,
by single beats where a group has sixteenths, dots or tuplets in it; compound metres by dotted beats; other metres by
their groups as written.
"""

from __future__ import annotations

from fractions import Fraction

from core.tune import Bar, Meter, note_value

_EIGHTH = Fraction(1, 2)

# Metre -> (group of plain eighths, group of anything else), in quarter notes.
_GROUPS = {
    "4/4": (Fraction(2), Fraction(1)), "2/2": (Fraction(2), Fraction(1)), "2/4": (Fraction(2), Fraction(1)),
    "3/4": (Fraction(1), Fraction(1)), "3/2": (Fraction(2), Fraction(1)), "6/4": (Fraction(1), Fraction(1)),
    "3/8": (Fraction(3, 2), Fraction(3, 2)),
}  # fmt: skip


def beam_groups(bar: Bar) -> tuple[range, ...]:
    """Beams of a bar.

    Args:
        bar: The bar.
    Returns:
        For each beam the places in ``bar.notes``, two or more, in order; no two share a note.
    """
    wide, narrow = _boundaries(bar.meter, wide=True), _boundaries(bar.meter, wide=False)
    runs: list[list[int]] = []
    last: tuple[int, int] | None = None
    for place, note in enumerate(bar.notes):
        value = note_value(note.length, note.tuplet)
        if note.is_rest or value is None or value[0] > _EIGHTH:
            last = None
            continue
        group = _group_of(bar.start + note.at, wide)
        if last is None or group != last:
            runs.append([])
        runs[-1].append(place)
        last = group
    beams: list[range] = []
    for run in runs:
        if _is_plain(bar, run):
            beams.append(range(run[0], run[-1] + 1))
        else:
            beams.extend(_split(bar, run, narrow))
    return tuple(beam for beam in beams if len(beam) > 1)


def tuplet_groups(bar: Bar) -> tuple[range, ...]:
    """Tuplets of a bar: for each the places in ``bar.notes``, in order."""
    groups: list[range] = []
    for place, note in enumerate(bar.notes):
        if note.tuplet is None:
            continue
        if note.tuplet.starts or not groups or groups[-1].stop != place:
            groups.append(range(place, place + 1))
        else:
            groups[-1] = range(groups[-1].start, place + 1)
    return tuple(groups)


def _is_plain(bar: Bar, run: list[int]) -> bool:
    return all(bar.notes[place].length == _EIGHTH and bar.notes[place].tuplet is None for place in run)


def _split(bar: Bar, run: list[int], narrow: tuple[Fraction, ...]) -> list[range]:
    """Break a run at the beats; a tuplet is never broken, and one longer than a beat stands alone."""
    tuplet_of = {place: group for group in tuplet_groups(bar) for place in group}
    groups: list[range] = []
    last: tuple[int, int] | None = None
    for place in run:
        tuplet = tuplet_of.get(place)
        anchor = tuplet.start if tuplet is not None and tuplet.start in run else place
        group = _group_of(bar.start + bar.notes[anchor].at, narrow)
        if groups and group == last:
            groups[-1] = range(groups[-1].start, place + 1)
        else:
            groups.append(range(place, place + 1))
        last = group
    return groups


def _boundaries(meter: Meter, wide: bool) -> tuple[Fraction, ...]:
    """Starts of the groups in a full bar, in quarter notes; the last one is the bar's length and repeats after it."""
    length = meter.bar_length
    if length is None:
        return (Fraction(0), Fraction(1))
    if str(meter) in _GROUPS:
        size = _GROUPS[str(meter)][0 if wide else 1]
    elif meter.is_compound:
        size = Fraction(12, meter.unit)
    elif len(meter.groups) > 1:
        starts = [Fraction(0)]
        for group in meter.groups:
            starts.append(starts[-1] + Fraction(4 * group, meter.unit))
        return tuple(starts)
    else:
        size = Fraction(4, meter.unit) if meter.unit <= 4 else Fraction(8, meter.unit)
    starts = [Fraction(0)]
    while starts[-1] + size < length:
        starts.append(starts[-1] + size)
    return (*starts, length)


def _group_of(place: Fraction, boundaries: tuple[Fraction, ...]) -> tuple[int, int]:
    """Which time round the bar, and which group in it, a place falls in."""
    around, inside = divmod(place, boundaries[-1])
    return int(around), sum(1 for start in boundaries if start <= inside)
