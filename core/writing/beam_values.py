"""Beams as MusicXML has them: begin, continue, end or a hook, for each level of each note."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from core.bowing import Grace
from core.engraving.beams import beam_groups
from core.tune import Bar, Note, note_value


def bar_beams(bar: Bar) -> dict[int, tuple[str, ...]]:
    """Beam values by place in the bar, first level first; notes without a beam are not listed."""
    beams: dict[int, tuple[str, ...]] = {}
    for group in beam_groups(bar):
        levels = _levels([_flags(bar.notes[place].length, bar.notes[place]) for place in group])
        beams.update({group[inner]: values for inner, values in levels.items()})
    return beams


def grace_beams(graces: Sequence[Grace]) -> dict[int, tuple[str, ...]]:
    """Beam values of the grace notes before one note, by place; empty for a lone one."""
    return _levels([_flags(grace.length) for grace in graces]) if len(graces) > 1 else {}


def _levels(flags: Sequence[int]) -> dict[int, tuple[str, ...]]:
    """Beam values of notes under one beam.

    Args:
        flags: Flags that each note would have alone (1 for an eighth).
    Returns:
        For each place the values of level 1, 2 ...: begin, continue, end, forward hook or backward hook.
    """
    if not flags or min(flags) < 1:
        return {}
    last = len(flags) - 1
    values: dict[int, tuple[str, ...]] = {}
    for place, count in enumerate(flags):
        of_note = []
        for level in range(1, count + 1):
            before = place > 0 and flags[place - 1] >= level
            after = place < last and flags[place + 1] >= level
            value = {(True, True): "continue", (True, False): "end", (False, True): "begin"}.get((before, after))
            of_note.append(value or ("forward hook" if place == 0 else "backward hook"))
        values[place] = tuple(of_note)
    return values


def _flags(length: Fraction, note: Note | None = None) -> int:
    """Flags of a note value: 1 for an eighth, 0 from a quarter up."""
    value = note_value(length, note.tuplet if note else None)
    flags = 0
    while value is not None and value[0] * 2**flags < 1:
        flags += 1
    return flags
