"""Lifts bow signs to one height over each beam, so that they read as a row.

The engraver sets every sign as near to its note as it can: over a slanted beam the signs climb, over notes above the
staff they hop. They are lifted to the highest of their beam, never lowered, and only where nothing is in the way.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from core.engraving.picture import STAFF_SPACE, BowSlot, Box

HIGHEST_LIFT = 2.5 * STAFF_SPACE  # further up a sign would leave its note
AIR = STAFF_SPACE / 2  # kept free around a lifted sign


def level_rows(
    slots: Mapping[str, BowSlot], beams: Iterable[Sequence[str]], taken: Sequence[Box]
) -> dict[str, BowSlot]:
    """Lift bow slots to a common height.

    Args:
        slots: As the engraver set them, by note id.
        beams: Ids of the notes with a slot under each beam.
        taken: Boxes of what a lifted sign must not meet: slurs, chord symbols, endings and the like.
    Returns:
        All slots, in the same order. Those of a beam share a height, or stand as before where one of them cannot.
    """
    levelled = dict(slots)
    for beam in beams:
        top = min(slots[note_id].bottom for note_id in beam)
        lower = [slot for slot in map(slots.__getitem__, beam) if slot.bottom > top]
        if all(_can_be_lifted(slot, top, taken) for slot in lower):
            levelled.update((slot.note_id, replace(slot, bottom=top)) for slot in lower)
    return levelled


def _can_be_lifted(slot: BowSlot, bottom: float, taken: Sequence[Box]) -> bool:
    """A sign can be lifted this far without meeting anything, or passing over it."""
    lift = slot.bottom - bottom
    room = slot.box()
    way = Box(room.left, room.top - lift, room.right, room.top).grown(AIR, AIR)
    return lift <= HIGHEST_LIFT and not any(way.overlaps(box) for box in taken)
