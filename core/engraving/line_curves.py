"""Slurs and ties that touch a line, wherever they begin and end."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from core.bowing import Bowing
from core.engraving.lines import Line
from core.tune import Note, Tune
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class LineCurve:
    """A slur or tie as it is drawn on a line, by ids of notes.

    Attributes:
        start, end: The notes between which it is drawn.
        tie: It is a tie.
        of, to: The notes between which it truly stands, which may be further off.
    """

    start: str
    end: str
    tie: bool
    of: str
    to: str


def curves_on(tune: Tune, bowing: Bowing, line: Line) -> list[LineCurve]:
    """Slurs and ties that touch the line, their ends moved into the bar beside the line where they lie further off."""
    low, high = max(line.first - 1, 0), min(line.stop + 1, len(tune.bars))
    notes = [note for bar in tune.bars[low:high] for note in bar.notes]
    near = {note.id for note in notes}
    inside = {note.id for bar in tune.bars[line.first : line.stop] for note in bar.notes}
    curves = []
    for before, note in pairwise(notes):
        if note.held and not before.is_rest and (before.id in inside or note.id in inside):
            curves.append(LineCurve(before.id, note.id, True, before.id, note.id))
    for stroke in _slurred(tune, bowing, notes):
        drawn = [note_id for note_id in stroke if note_id in near]
        touches = any(note_id in inside for note_id in drawn)
        if touches and len(drawn) > 1:
            curves.append(LineCurve(drawn[0], drawn[-1], False, stroke[0], stroke[-1]))
    return curves


def _slurred(tune: Tune, bowing: Bowing, notes: list[Note]) -> Iterator[list[str]]:
    """Note ids of each stroke that needs a slur among these notes, whole strokes even where they reach further."""
    sequence = tune.sequence
    place = tune.places[notes[0].id] if notes else 0
    last = tune.places[notes[-1].id] if notes else -1
    while place > 0 and _goes_on(bowing, sequence[place]):
        place -= 1
    while place <= last:
        stop = place + 1
        while stop < len(sequence) and _goes_on(bowing, sequence[stop]):
            stop += 1
        if any(note.id in bowing.joins for note in sequence[place + 1 : stop]):
            yield [note.id for note in sequence[place:stop]]
        place = stop


def _goes_on(bowing: Bowing, note: Note) -> bool:
    return not note.is_rest and (note.held or note.id in bowing.joins)
