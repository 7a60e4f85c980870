"""Which directions a file shows: those the player fixed, and those of strokes that every pass takes alike."""

from __future__ import annotations

from core.bowing import Bow, Bowing
from core.strokes import work_out
from core.tune import Note, Tune


def starts_stroke(bowing: Bowing, note: Note) -> bool:
    """Whether a written note begins a stroke."""
    return not note.is_rest and not note.held and note.id not in bowing.joins


def derived_bows(tune: Tune, bowing: Bowing) -> dict[str, Bow]:
    """Directions by note id of the stroke starts that go the same way on every pass."""
    directions = work_out(tune, bowing).bows
    derived = {}
    for note in tune.sequence:
        passes = directions.get(note.id, ())
        if starts_stroke(bowing, note) and len(set(passes)) == 1:
            derived[note.id] = passes[0]
    return derived


def written_bows(tune: Tune, bowing: Bowing) -> dict[str, Bow]:
    """All directions that a file shows, by note id; a fixed mark stands as fixed, wherever it stands."""
    return derived_bows(tune, bowing) | {note_id: mark.bow for note_id, mark in bowing.marks.items()}
