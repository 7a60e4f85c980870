"""Lifts bow signs off beams and dots, and to one height over each beam, so that they read as a row.

The engraver sets every sign as near to its note as it can: over a slanted beam the signs climb, over notes above the
staff they hop. They are lifted to the highest of their beam, never lowered, and only where nothing is in the way.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from core.engraving.picture import STAFF_SPACE, BowSlot, Box, Outline, slot_height

HIGHEST_LIFT = 2.5 * STAFF_SPACE  # further up a sign would leave its note
AIR = STAFF_SPACE / 4  # kept free around a lifted sign


def off_notes(slots: Mapping[str, BowSlot], beams: Iterable[Outline], dots: Iterable[Box]) -> dict[str, BowSlot]:
    """Lift bow slots whose signs would touch a beam that climbs beside their note, or a dot, head or accidental.

    Args:
        slots: As the engraver set them, by note id.
        beams: Beams, secondary ones included.
        dots: Boxes of the other parts of notes over the staff.
    Returns:
        All slots, in the same order.
    """
    lifted = dict(slots)
    rooms = [(slot, slot.box(1)) for slot in slots.values()]
    for beam in beams:
        over = beam.box
        for slot, room in rooms:
            if over.top < room.bottom + AIR and room.left < over.right and over.left < room.right:
                _lift_off(lifted, slot, _top_between(beam, room) - AIR)
    for dot in dots:
        for slot, room in rooms:
            if room.overlaps(dot):
                _lift_off(lifted, slot, dot.top - AIR)
    return lifted


def _lift_off(slots: dict[str, BowSlot], slot: BowSlot, bottom: float) -> None:
    """Lift a slot to a height, if that is no further than its sign is high."""
    if slots[slot.note_id].bottom > bottom > slot.bottom - slot_height(slot):
        slots[slot.note_id] = replace(slot, bottom=bottom)


def _top_between(beam: Outline, room: Box) -> float:
    """The least y of a beam under a sign."""
    points = [numbers for _, numbers in beam.commands if numbers]
    left, right = (min(points, key=key) for key in (lambda p: (p[0], p[1]), lambda p: (-p[0], p[1])))
    slope = (right[1] - left[1]) / ((right[0] - left[0]) or 1)
    return min(left[1] + slope * (min(max(x, left[0]), right[0]) - left[0]) for x in (room.left, room.right))


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
