"""Lengths that no single note value shows, cut into values that are tied."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from core.tune import NOTE_BASES, Tuplet, note_value

SHORTEST = NOTE_BASES[-1]
LONGEST = Fraction(64)  # quarter notes in one note
_VALUES = sorted({base * dots for base in NOTE_BASES for dots in (Fraction(1), Fraction(3, 2))}, reverse=True)
_NORMAL = {3: 2, 5: 4, 6: 4, 7: 4, 9: 8}  # notes in the time of


@lru_cache(maxsize=1024)
def split_length(length: Fraction, tuplet: Tuplet | None = None) -> tuple[tuple[Fraction, Tuplet | None], ...]:
    """Cut a length into note values.

    Args:
        length: Sounding length in quarter notes, greater than 0; lengths beyond ``LONGEST`` are cut off there.
        tuplet: The tuplet that the source puts it in.
    Returns:
        Lengths with their tuplets, each of which ``note_value`` can show, in order. A length that neither whole note
        values nor a tuplet of 3, 5, 6, 7 or 9 can show is rounded to 512th notes. One value where that is enough.

    >>> [str(length) for length, _ in split_length(Fraction(9, 2))]
    ['4', '1/2']
    """
    length = min(length, LONGEST)
    if note_value(length, tuplet) is not None:
        return ((length, tuplet),)
    if note_value(length) is not None:
        return ((length, None),)
    for candidate in (tuplet, None, *(Tuplet(actual, normal) for actual, normal in _NORMAL.items())):
        scale = Fraction(candidate.actual, candidate.normal) if candidate else Fraction(1)
        pieces = _greedy(length * scale)
        if sum(pieces) == length * scale:
            return tuple((piece / scale, candidate) for piece in pieces)
    rounded = max(round(length / SHORTEST), 1) * SHORTEST
    return tuple((piece, None) for piece in _greedy(rounded))


def is_exact(length: Fraction, pieces: tuple[tuple[Fraction, Tuplet | None], ...]) -> bool:
    """Whether the pieces fill the length: nothing was cut off or rounded."""
    return (pieces[0][0] if len(pieces) == 1 else sum(piece for piece, _ in pieces)) == length


def _greedy(length: Fraction) -> list[Fraction]:
    """Plain and dotted values, longest first, as far as they go into the length."""
    pieces = []
    for value in _VALUES:
        while value <= length:
            pieces.append(value)
            length -= value
    return pieces
