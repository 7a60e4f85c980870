"""What a file shows of strokes beside slurs: directions, and the dots on both sides of a hook."""

from __future__ import annotations

from collections.abc import Iterable

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


def struck_before(tune: Tune, note_id: str) -> Note | None:
    """The note struck last before this one, in written order: held notes are passed over, a rest is given back."""
    before = tune.before(note_id)
    while before is not None and before.held:
        before = tune.before(before.id)
    return before


def hook_sides(tune: Tune, hooks: Iterable[str]) -> frozenset[str]:
    """Ids of the notes that a dot is written on: each hooked note, and the note struck before it."""
    sides = set()
    for note_id in hooks:
        before = struck_before(tune, note_id)
        sides |= {note_id, before.id} if before is not None else {note_id}
    return frozenset(sides)
