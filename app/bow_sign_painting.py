"""Paints bow signs into the room that pictures keep for them: one row, or two where passes differ.

Signs are not part of a picture, because one slur turns every later stroke round while the engraving stays.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple
from weakref import WeakKeyDictionary

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPainterPath

from app.painting import PRINT_INKS, Inks, glyph_path, paint_text, text_box, texts_within
from core.bowing import Bow
from core.engraving.bow_signs import BowSign
from core.engraving.glyphs import DOWN_BOW, UP_BOW, glyph_box
from core.engraving.kinds import Kind
from core.engraving.picture import Anchor, BowSlot, Box, Picture, Run, Text, slot_height, slot_width

LIFT = "E4CE"  # breathMarkComma: the bow is lifted
LIFT_SCALE = 0.8  # beside the sign that it stands before
SIGN_GAP = 1 / 16  # between a lift comma and its sign, in ems of the sign
NEIGHBOUR_GAP = 0.09  # between a sign and that over the next note, likewise
SMALLEST_SIGN = 0.6  # size of a sign squeezed between neighbours, beside one with room
ROW_LABELS = ("1.", "2.")  # in front of the rows for the first and the next time, where the two differ
LABEL_SIZE = 0.3  # in ems of a sign
LABEL_GAP = 0.08  # between a label and the first sign of its row, likewise
LABEL_LIFTS = (0.0, 0.05, 0.1, 0.15)  # how far up a label may move where something is in its way, likewise


class Room(NamedTuple):
    """How far a sign may reach to the left and the right of its middle."""

    left: float
    right: float


FREE = Room(float("inf"), float("inf"))


def paint_bow_signs(painter: QPainter, picture: Picture, signs: Mapping[str, BowSign], inks: Inks = PRINT_INKS) -> None:
    """Paint the signs that stand in the picture's bow slots; a sign whose note has no slot is left out.

    Where passes differ there are two rows: the first pass next to the staff, the next one over it, and in front of
    them, once a line, what they are.
    """
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    room = _room(picture)
    for note_id, slot in picture.bow_slots.items():
        sign = signs.get(note_id)
        if sign is None:
            continue
        colour = inks.ink if sign.fixed else inks.light
        for row, bow in enumerate(sign.bows[: slot.rows]):
            path = bow_sign_path(bow, sign.retake, slot.size, room[note_id])
            painter.fillPath(path.translated(slot.x, slot.foot(row)), colour)
    for label in row_labels(picture, signs):
        paint_text(painter, label, inks.light)
    painter.restore()


def row_labels(picture: Picture, signs: Mapping[str, BowSign]) -> tuple[Text, ...]:
    """What stands in front of the two rows of signs of a line: before the first two signs that have room for it."""
    doubled = {
        slot.note_id: signs[slot.note_id]
        for slot in picture.bow_slots.values()
        if slot.rows > 1 and slot.note_id in signs and len(signs[slot.note_id].bows) > 1
    }
    known = _labels.setdefault(picture, {})
    for slot in _bars_first(picture) if doubled else ():
        sign = doubled.get(slot.note_id)
        if sign is None:
            continue
        key = (slot.note_id, sign.bows[0], sign.retake)
        if key not in known:
            known[key] = _labels_before(picture, slot, sign)
        if known[key]:
            return known[key]
    return ()


def _labels_before(picture: Picture, slot: BowSlot, sign: BowSign) -> tuple[Text, ...]:
    """The labels in front of one slot; none where something is in their way."""
    left = bow_sign_path(sign.bows[0], sign.retake, slot.size, _room(picture)[slot.note_id]).boundingRect().left()
    x = slot.x + left - LABEL_GAP * slot.size
    for up in LABEL_LIFTS:
        labels = tuple(
            Text(x, slot.foot(row) - up * slot.size, Anchor.END, (Run(text, LABEL_SIZE * slot.size, bold=True),))
            for row, text in enumerate(ROW_LABELS)
        )
        boxes = tuple(map(text_box, labels))
        if not any(label.overlaps(box) for label in boxes for box in _taken(picture)):
            return labels
    return ()


def _bars_first(picture: Picture) -> list[BowSlot]:
    """The bow slots, the first of each bar before all others."""
    slots = list(picture.bow_slots.values())
    firsts = [
        next((slot for slot in slots if bar.left <= slot.x <= bar.right), None) for bar in picture.measures.values()
    ]
    return [*filter(None, firsts), *slots]


@lru_cache(maxsize=1024)
def bow_sign_path(bow: Bow, retake: bool, size: float, room: Room = FREE) -> QPainterPath:
    """Outline of one sign: the middle of its foot at 0, 0.

    Args:
        bow: Direction.
        retake: A lift comma stands before the sign.
        size: Em size.
        room: How far it may reach to either side; it shrinks to fit, down to a legible size.
    """
    code = DOWN_BOW if bow is Bow.DOWN else UP_BOW
    left, _, right, _ = glyph_box(code)
    lift = SIGN_GAP + LIFT_SCALE * glyph_box(LIFT)[2] / 1000 if retake else 0.0
    half = (right - left) / 2000
    size *= max(SMALLEST_SIGN, min(1.0, room.left / ((half + lift) * size), room.right / (half * size)))
    middle = (left + right) / 2 * size / 1000
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    path.addPath(glyph_path(code, size).translated(-middle, 0))
    if retake:
        comma = LIFT_SCALE * size
        y = (glyph_box(LIFT)[3] * comma - glyph_box(UP_BOW)[3] * size) / 1000
        path.addPath(glyph_path(LIFT, comma).translated(-middle - lift * size, y))
    return path


_rooms: WeakKeyDictionary[Picture, dict[str, Room]] = WeakKeyDictionary()
_labels: WeakKeyDictionary[Picture, dict[tuple[str, Bow, bool], tuple[Text, ...]]] = WeakKeyDictionary()
_taken_places: WeakKeyDictionary[Picture, tuple[Box, ...]] = WeakKeyDictionary()


def _taken(picture: Picture) -> tuple[Box, ...]:
    """Boxes of all that a picture shows over its staff, room for bow signs included."""
    known = _taken_places.get(picture)
    if known is None:
        shapes = [shape.box for shape in picture.shapes]
        known = _taken_places[picture] = (
            *(box for box in shapes if box.top < picture.staff_top),
            *(text_box(text) for text in texts_within(picture)),
            *(slot.box() for slot in picture.bow_slots.values()),
        )
    return known


def _room(picture: Picture) -> dict[str, Room]:
    """Room of the sign in each slot that does not meet those over its neighbours or its own grace notes."""
    known = _rooms.get(picture)
    if known is not None:
        return known
    slots = sorted(picture.bow_slots.values(), key=lambda slot: slot.x)
    room = dict.fromkeys(picture.bow_slots, FREE)
    for slot, after in pairwise(slots):
        between = after.x - slot.x - NEIGHBOUR_GAP * slot.size
        each = round(max(between / 2, between - slot_width(slot) / 2))
        room[slot.note_id] = room[slot.note_id]._replace(right=each)
        room[after.note_id] = Room(each, FREE.right)
    for shape in picture.shapes:
        slot_beside = picture.bow_slots.get(shape.owner) if shape.kind is Kind.GRACE else None
        if slot_beside is not None:
            box = shape.box
            if box.top < slot_beside.bottom and slot_beside.bottom - slot_height(slot_beside) < box.bottom:
                free = round(slot_beside.x - box.right)
                room[shape.owner] = room[shape.owner]._replace(left=min(room[shape.owner].left, free))
    _rooms[picture] = room
    return room
