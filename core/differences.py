"""What tells two bowings of one tune apart, note by note: slurs, directions, and what else stands on a note."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from core.bowing import Bow, Bowing, Join, Signs
from core.strokes import Strokes
from core.tune import Tune


@dataclass(frozen=True, slots=True)
class Difference:
    """What differs on one note: (in the one bowing, in the other), or None for what does not.

    Attributes:
        joins: How the note shares the stroke of the note before it; None within for a stroke of its own.
        bows: Its direction on each pass.
        signs: Grace notes, ornaments, articulation and fingers.
    """

    joins: tuple[Join | None, Join | None] | None = None
    bows: tuple[tuple[Bow, ...], tuple[Bow, ...]] | None = None
    signs: tuple[Signs, Signs] | None = None


def differences(
    tune: Tune, bowing: Bowing, strokes: Strokes, other: Bowing, other_strokes: Strokes
) -> Mapping[str, Difference]:
    """What tells a bowing from another one.

    Fixed marks and retakes count by the directions that they give. A held note goes where it was struck, and so its
    direction is not told again.

    Args:
        tune: The tune.
        bowing, other: Two of its bowings.
        strokes, other_strokes: ``core.strokes.work_out`` of each.
    Returns:
        Differences by note id, in written order; notes that do not differ are left out.
    """
    joins = _changed(bowing.joins, other.joins)
    signs = _changed(bowing.signs, other.signs)
    bows, other_bows = strokes.bows, other_strokes.bows
    found = {}
    for note in tune.sequence:
        turned = not note.held and bows.get(note.id) != other_bows.get(note.id)
        if turned or note.id in joins or note.id in signs:
            found[note.id] = Difference(
                (bowing.joins.get(note.id), other.joins.get(note.id)) if note.id in joins else None,
                (bows.get(note.id, ()), other_bows.get(note.id, ())) if turned else None,
                (bowing.signs_on(note.id), other.signs_on(note.id)) if note.id in signs else None,
            )
    return found


def _changed(one: Mapping[str, object], other: Mapping[str, object]) -> set[str]:
    """Keys whose values differ; a key that only one has counts."""
    if one is other:
        return set()
    return {key for key in (*one, *other) if one.get(key) != other.get(key)}
