"""Which bow signs stand over which notes, for three densities of marking, and how many rows of them.

Directions come from ``core.strokes``; this module only decides where a reader is told.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from enum import Enum

from core.bowing import Bow, Bowing
from core.once import once
from core.order import playing_order
from core.strokes import Played, Strokes
from core.tune import Tune
from core.values import dataclass


class MarkDensity(Enum):
    """How many strokes carry a sign."""

    EVERY = "every"  # every stroke
    BARS = "bars"  # the first stroke that begins in each bar, and what the player fixed
    NEEDED = "needed"  # the first stroke and those that alternation would take the other way (rule B1)


@dataclass(frozen=True, slots=True)
class BowSign:
    """The sign over one note.

    Attributes:
        bows: One direction, or that of the first pass and then the other one where passes differ: one a row, the
            first pass next to the staff.
        fixed: The player fixed it, by a mark or a retake; else it follows from the strokes before.
        retake: The bow is lifted before the note to take the same direction again.
    """

    bows: tuple[Bow, ...]
    fixed: bool
    retake: bool = False


def bow_signs(tune: Tune, bowing: Bowing, strokes: Strokes, density: MarkDensity) -> Mapping[str, BowSign]:
    """The signs that a density shows.

    Args:
        tune: The tune.
        bowing: One of its bowings.
        strokes: ``core.strokes.work_out`` of the two.
        density: How many strokes carry a sign.
    Returns:
        Signs by note id, in written order. Only notes that begin a stroke whenever they are played are listed.
    """
    first = next((note.note_id for note in strokes.played if note.starts), None)
    marks, retakes, by_note = dict(bowing.marks), bowing.retakes, strokes.by_note
    signs: dict[str, BowSign] = {}
    for bar in tune.bars:
        bar_begun = False
        for note in bar.notes:
            passes = by_note.get(note.id, ())
            if not passes or not all(played.starts for played in passes):
                continue
            fixed = note.id in marks or note.id in retakes
            if density is MarkDensity.BARS:
                shown = fixed or not bar_begun
            elif density is MarkDensity.NEEDED:
                shown = note.id == first or any(played.retake for played in passes)
            else:
                shown = True
            bar_begun = True
            if shown:
                signs[note.id] = BowSign(_directions(passes), fixed, _is_lifted(passes))
    return signs


def rows_shown(signs: Mapping[str, BowSign]) -> dict[str, int]:
    """Rows that the signs take: two where passes differ.

    Returns:
        Rows by note id, for ``Engraver.engrave``.
    """
    return {note_id: len(sign.bows) for note_id, sign in signs.items()}


def rows_kept(tune: Tune, signs: Mapping[str, BowSign]) -> dict[str, int]:
    """Rows that the signs may come to take: two in each bar that is played more than once.

    Passes begin or cease to differ with one slur anywhere in the tune; with this room kept, the page stays where it is.

    Returns:
        Rows by note id, for ``Engraver.engrave``.
    """
    again, bar_of = _played_again(tune), tune.bar_of
    return {note_id: 2 if bar_of[note_id] in again else 1 for note_id in signs}


@once
def _played_again(tune: Tune) -> frozenset[int]:
    """Indexes of the bars that are played more than once."""
    return frozenset(bar for bar, times in Counter(visit.bar for visit in playing_order(tune)).items() if times > 1)


def _directions(passes: tuple[Played, ...]) -> tuple[Bow, ...]:
    first = passes[0].bow
    return (first, first.turned) if any(played.bow is not first for played in passes) else (first,)


def _is_lifted(passes: tuple[Played, ...]) -> bool:
    """The bow is lifted whenever the note is played; over a rest nobody need be told."""
    return all(played.retake and not played.over_rest for played in passes)
