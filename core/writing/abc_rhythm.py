"""Lengths of notes in ABC: the unit note length that suits a tune, broken rhythm, tuplets, and which notes touch.

Notes under one beam touch (ABC 2.1, 4.7), others stand apart where a beat begins. Broken rhythm is written where it
saves fractions, for two notes within a beat (4.4).
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from functools import lru_cache
from itertools import accumulate

from core.engraving.beams import beam_groups
from core.tune import Bar, Meter, Note
from core.values import dataclass

UNITS = (Fraction(1, 2), Fraction(1, 4))  # quarter notes: an eighth, as most tune books have it, or a sixteenth
_BROKEN = {Fraction(3): ">", Fraction(1, 3): "<", Fraction(7): ">>", Fraction(1, 7): "<<"}
_NORMAL = {2: 3, 3: 2, 4: 3, 6: 2, 8: 3}  # 4.13: notes in the time of; for 5, 7 and 9 it depends on the metre
_SHORTEST_WITHOUT_FLAGS = Fraction(1)  # quarter notes


@dataclass(frozen=True, slots=True)
class NoteRhythm:
    """How the length of one note is written.

    Attributes:
        tuplet: ``(3`` and the like before the first note of a tuplet, or "".
        length: Behind the note: ``2``, ``3/2``, ``/`` or "".
        broken: ``>`` or ``<`` between it and the next note, or "".
        touches: The next note is under the same beam or is the other one of a broken rhythm.
        parted: A space follows.
    """

    tuplet: str
    length: str
    broken: str
    touches: bool
    parted: bool


def choose_unit(bars: Sequence[Bar]) -> Fraction:
    """The unit note length, in quarter notes, with which the lengths of a tune take the fewest characters."""
    return min(UNITS, key=lambda unit: sum(_cost(*length) for bar in bars for length in _lengths(bar, unit)))


def _cost(length: str, broken: str) -> int:
    return len(length) + ("/" in length) + len(broken)


def bar_rhythm(bar: Bar, unit: Fraction) -> list[NoteRhythm]:
    """How the lengths of a bar's notes are written.

    Args:
        bar: The bar.
        unit: Unit note length in quarter notes.
    """
    tuplets = {run.start: _tuplet_text(bar.notes[run.start], len(run), bar.meter) for run in tuplet_runs(bar.notes)}
    beamed = {place for beam in beam_groups(bar) for place in beam[:-1]}  # with the next note
    rhythms = []
    for place, (length, broken) in enumerate(_lengths(bar, unit)):
        touches = place in beamed or bool(broken)
        parted = not touches and place + 1 < len(bar.notes) and _are_parted(bar, place)
        rhythms.append(NoteRhythm(tuplets.get(place, ""), length, broken, touches, parted))
    return rhythms


def length_text(length: Fraction, unit: Fraction) -> str:
    """What stands behind a note of a length, both in quarter notes (4.3).

    >>> [length_text(Fraction(length), Fraction(1)) for length in ("1", "2", "3/2", "1/2", "1/4")]
    ['', '2', '3/2', '/', '/4']
    """
    return _times_text(length.numerator, length.denominator, unit.numerator, unit.denominator)


@lru_cache(maxsize=1024)  # keyed by whole numbers, which are faster to look up than fractions
def _times_text(above: int, below: int, unit_above: int, unit_below: int) -> str:
    times = Fraction(above * unit_below, below * unit_above)
    count = "" if times.numerator == 1 else str(times.numerator)
    if times.denominator == 1:
        return count
    return "/" if times == Fraction(1, 2) else f"{count}/{times.denominator}"


def _lengths(bar: Bar, unit: Fraction) -> list[tuple[str, str]]:
    """Text of each note's length, and the sign of a broken rhythm that it has with the next one, or ""."""
    lengths: list[tuple[str, str]] = []
    second_of_pair: Fraction | None = None
    for place, note in enumerate(bar.notes):
        if second_of_pair is not None:
            lengths.append((length_text(second_of_pair, unit), ""))
            second_of_pair = None
            continue
        after = bar.notes[place + 1] if place + 1 < len(bar.notes) else None
        broken = _broken_sign(bar, note, after, unit) if after is not None else ""
        if after is not None and broken:
            second_of_pair = (note.length + after.length) / 2
            lengths.append((length_text(second_of_pair, unit), broken))
        else:
            lengths.append((length_text(_written(note), unit), ""))
    return lengths


def _written(note: Note) -> Fraction:
    """Quarter notes as they would be outside the note's tuplet."""
    return note.length * note.tuplet.actual / note.tuplet.normal if note.tuplet else note.length


def _broken_sign(bar: Bar, first: Note, second: Note, unit: Fraction) -> str:
    """The sign that makes one note longer and the other shorter, where two short notes are a pair within a beat."""
    if first.length == second.length or first.tuplet or second.tuplet or second.held:
        return ""
    whole, beat = first.length + second.length, _beat(bar.meter)
    into = (bar.start + first.at) % beat
    if whole > 2 * unit or into + whole > beat or (into % whole and not bar.meter.is_compound):
        return ""
    return _BROKEN.get(first.length / second.length, "")


def tuplet_runs(notes: Sequence[Note]) -> list[range]:
    """Tuplets of a bar: for each the places of its notes, in order."""
    runs: list[range] = []
    before: tuple[int, int] | None = None
    for place, note in enumerate(notes):
        ratio = (note.tuplet.actual, note.tuplet.normal) if note.tuplet else None
        if note.tuplet and (note.tuplet.starts or ratio != before):
            runs.append(range(place, place + 1))
        elif note.tuplet:
            runs[-1] = range(runs[-1].start, place + 1)
        before = ratio
    return runs


def _tuplet_text(first: Note, count: int, meter: Meter) -> str:
    """``(p``, or ``(p:q`` or ``(p:q:r`` where the short form would mean something else (4.13)."""
    assert first.tuplet is not None
    actual, normal = first.tuplet.actual, first.tuplet.normal
    if count != actual:
        return f"({actual}:{normal}:{count}"
    usual = _NORMAL.get(actual, 3 if meter.is_compound else 2)
    return f"({actual}" if normal == usual else f"({actual}:{normal}"


def _are_parted(bar: Bar, place: int) -> bool:
    """Whether a space stands between a note and the next one, which are not under one beam."""
    note, after = bar.notes[place], bar.notes[place + 1]
    if _has_flags(note) and _has_flags(after):
        return True  # or they would be under one beam
    return _begins_beat(bar.meter, bar.start + after.at)


def _has_flags(note: Note) -> bool:
    return not note.is_rest and _written(note) < _SHORTEST_WITHOUT_FLAGS


def _beat(meter: Meter) -> Fraction:
    """Quarter notes between the beats that are kept apart: three units in 3/8, 6/8 and the like, else a quarter."""
    in_threes = meter.count % 3 == 0 and meter.unit >= 8 and len(meter.groups) == 1
    return Fraction(12, meter.unit) if in_threes else Fraction(1)


def _begins_beat(meter: Meter, place: Fraction) -> bool:
    if meter.bar_length and len(meter.groups) > 1:
        starts = accumulate(Fraction(4 * group, meter.unit) for group in (0, *meter.groups))
        return place % meter.bar_length in set(starts)
    if str(meter) == "2/2":
        return place % 2 == 0
    return place % _beat(meter) == 0
