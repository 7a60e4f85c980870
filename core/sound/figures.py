"""Grace notes and ornaments as the tones that a fiddler plays in the time of one note.

Grace notes are played on the beat and take their time from the note (common practice in dance music, no source); so do
cuts. All lengths here are ours, by ear: quick enough to be heard as one move of a finger.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from core.bowing import Grace, Ornament, Signs
from core.ornamenting import lower_neighbour, upper_neighbour
from core.tune import Note, Tune

CUT_S = Fraction(45, 1000)  # a cut, a pat, and grace notes of an eighth or less
LONG_GRACE_S = Fraction(90, 1000)
MORDENT_S = Fraction(60, 1000)  # each of the first two notes
TURN_S = Fraction(90, 1000)  # each of the first three notes
TRILL_S = Fraction(75, 1000)
SHORTEST_ROLL_S = Fraction(120, 1000)  # below it there is time for the cut alone
LONG_ROLL_QUARTERS = Fraction(3, 2)  # three eighths: the note, a cut, the note, a pat, the note
CUT_SHARE = Fraction(3, 10)  # of the note that it is on, at most
GRACES_SHARE = Fraction(1, 2)  # of their note, all together, at most
SLIDE_SEMITONES = -1

MAIN, UPPER, LOWER = 0, 1, -1
FIGURES = (
    Ornament.ROLL, Ornament.TURN, Ornament.INVERTED_TURN, Ornament.TRILL, Ornament.MORDENT, Ornament.UPPER_MORDENT,
    Ornament.CUT,
)  # fmt: skip


class Moment(NamedTuple):
    """What is fingered from a moment on.

    Attributes:
        at: Seconds from the beginning of the note.
        keys: MIDI keys, low to high.
        slide: Semitones from ``keys`` at which the finger sets down, to slide to them; 0 for no slide.
    """

    at: Fraction
    keys: tuple[int, ...]
    slide: int = 0


def fingered(tune: Tune, note: Note, signs: Signs, length_s: Fraction) -> tuple[Moment, ...]:
    """What is fingered in the time of a note.

    Args:
        tune: The tune.
        note: A note of it, no rest.
        signs: What stands on the note in a bowing; a bowed triplet and articulation are the bow's and left aside.
        length_s: Seconds that the note lasts.
    Returns:
        Moments in order, the first at 0.
    """
    keys = tuple(pitch.midi for pitch in note.pitches)
    if not signs.graces and not signs.ornaments:
        return (Moment(Fraction(0), keys),)
    moments = list(_graces(signs.graces, length_s))
    begin = moments.pop().at if moments else Fraction(0)
    ornament = next((figure for figure in FIGURES if figure in signs.ornaments), None)
    slide = SLIDE_SEMITONES if Ornament.SLIDE in signs.ornaments else 0
    if ornament is None:
        return (*moments, Moment(begin, keys, slide))
    neighbours = {UPPER: upper_neighbour(tune, note.id).midi, LOWER: lower_neighbour(tune, note.id).midi}
    for at, degree in _figure(ornament, length_s - begin, note.length >= LONG_ROLL_QUARTERS):
        moments.append(Moment(begin + at, (*keys[:-1], neighbours[degree]) if degree else keys, slide))
        slide = 0
    return tuple(moments)


def _graces(graces: tuple[Grace, ...], length_s: Fraction) -> Iterator[Moment]:
    """Grace notes, and behind them, without keys, the moment at which the note itself begins."""
    if not graces:
        return
    wanted = [CUT_S if grace.slashed or grace.length <= Fraction(1, 2) else LONG_GRACE_S for grace in graces]
    share = GRACES_SHARE if len(graces) > 1 else CUT_SHARE
    squeeze = min(Fraction(1), share * length_s / sum(wanted))
    at = Fraction(0)
    for grace, seconds in zip(graces, wanted, strict=True):
        yield Moment(at, tuple(pitch.midi for pitch in grace.pitches))
        at += seconds * squeeze
    yield Moment(at, ())


def _figure(ornament: Ornament, length: Fraction, long: bool) -> Iterator[tuple[Fraction, int]]:
    """Seconds from the beginning, and the note (main) or its neighbour."""
    match ornament:
        case Ornament.ROLL if long:
            yield Fraction(0), MAIN
            yield from _touched(length / 3, length / 3, UPPER)
            yield from _touched(2 * length / 3, length / 3, LOWER)
        case Ornament.ROLL if length >= SHORTEST_ROLL_S:
            yield from _touched(Fraction(0), length / 2, UPPER)
            yield from _touched(length / 2, length / 2, LOWER)
        case Ornament.TURN:
            yield from _even((UPPER, MAIN, LOWER, MAIN), min(TURN_S, length / 4))
        case Ornament.INVERTED_TURN:
            yield from _even((LOWER, MAIN, UPPER, MAIN), min(TURN_S, length / 4))
        case Ornament.MORDENT:
            yield from _even((MAIN, LOWER, MAIN), min(MORDENT_S, length / 4))
        case Ornament.UPPER_MORDENT:
            yield from _even((MAIN, UPPER, MAIN), min(MORDENT_S, length / 4))
        case Ornament.TRILL:
            pairs = max(1, int((length / TRILL_S - 1) / 2))
            yield from _even((MAIN, UPPER) * pairs + (MAIN,), length / (2 * pairs + 1))
        case _:  # a cut, and a roll for which there is no time
            yield from _touched(Fraction(0), length, UPPER)


def _touched(at: Fraction, length: Fraction, degree: int) -> Iterator[tuple[Fraction, int]]:
    """A note with a finger dropped on, or lifted off, where it begins."""
    yield at, degree
    yield at + min(CUT_S, CUT_SHARE * length), MAIN


def _even(degrees: tuple[int, ...], each: Fraction) -> Iterator[tuple[Fraction, int]]:
    for place, degree in enumerate(degrees):
        yield place * each, degree
