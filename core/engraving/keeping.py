"""Pictures as plain values of JSON, and back, so that they outlast the process that engraved them.

A picture is *named* by all that it depends on: every value of its tune, the line, its width, and what of the bowing is
in reach. Who keeps pictures must let go of those that another version of this package made.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from typing import Any, Protocol

from core.engraving.glyphs import Command
from core.engraving.kinds import Kind
from core.engraving.picture import Anchor, BowSlot, Box, Curve, Glyph, Outline, Picture, Point, Run, Shape, Text
from core.once import once
from core.tune import Tune

Plain = Any
"""Lists, texts, numbers, truths."""


class Keeper(Protocol):
    """Has pictures of earlier times."""

    def find(self, tune: str, name: str) -> Picture | None:
        """The picture of a name, among those of a tune by its digest."""


@once
def tune_digest(tune: Tune) -> str:
    """A name for all that a tune holds."""
    return hashlib.sha256(repr(tune).encode("utf-8", "surrogatepass")).hexdigest()


def picture_name(tune: Tune, rest: tuple[object, ...]) -> str:
    """A name for a picture, from its tune and the rest that it depends on: values whose ``repr`` tells all of them."""
    return hashlib.sha256(f"{tune_digest(tune)} {rest!r}".encode("utf-8", "surrogatepass")).hexdigest()


def to_plain(picture: Picture) -> Plain:
    """A picture as lists, for JSON."""
    return [
        picture.width, picture.height, picture.staff_top, picture.staff_bottom, picture.top,
        [_plain_shape(shape) for shape in picture.shapes],
        [_plain_text(text) for text in picture.texts],
        [[note_id, *box] for note_id, box in picture.boxes.items()],
        [[note_id, *head] for note_id, head in picture.heads.items()],
        [[slot.note_id, slot.x, slot.bottom, slot.size, slot.rows] for slot in picture.bow_slots.values()],
        [[index, *box] for index, box in picture.measures.items()],
        [[curve.start, curve.end, curve.tie, curve.shape, *curve.box] for curve in picture.curves],
    ]  # fmt: skip


def from_plain(plain: Plain) -> Picture:
    """A picture from its lists.

    Raises:
        ValueError, TypeError, KeyError, IndexError, AttributeError: they are no picture's.
    """
    width, height, staff_top, staff_bottom, top, shapes, texts, boxes, heads, slots, measures, curves = plain
    return Picture(
        width=width,
        height=height,
        staff_top=staff_top,
        staff_bottom=staff_bottom,
        shapes=tuple(_shape(shape) for shape in shapes),
        texts=tuple(_text(*text) for text in texts),
        boxes={note_id: Box(*box) for note_id, *box in boxes},
        heads={note_id: Point(*head) for note_id, *head in heads},
        bow_slots={slot[0]: BowSlot(*slot) for slot in slots},
        measures={index: Box(*box) for index, *box in measures},
        curves=tuple(Curve(start, end, tie, Box(*box), shape) for start, end, tie, shape, *box in curves),
        top=top,
    )


_KINDS: Mapping[str, Kind] = {kind.value: kind for kind in Kind}


def _plain_shape(shape: Shape) -> Plain:
    if isinstance(shape, Glyph):
        return [shape.kind.value, shape.owner, shape.code, shape.x, shape.y, shape.size]
    commands = [[command.letter, *command.numbers] for command in shape.commands]
    return [shape.kind.value, shape.owner, commands, shape.filled, shape.pen, list(shape.dash), shape.round_ends]


def _shape(plain: Plain) -> Shape:
    kind, owner, first, *rest = plain
    if isinstance(first, str):
        x, y, size = rest
        return Glyph(first, x, y, size, _KINDS[kind], owner)
    filled, pen, dash, round_ends = rest
    commands = tuple(Command(letter, tuple(numbers)) for letter, *numbers in first)
    return Outline(commands, filled, pen, tuple(dash), round_ends, _KINDS[kind], owner)


def _plain_text(text: Text) -> Plain:
    runs = [[run.text, run.size, run.music, run.bold, run.italic] for run in text.runs]
    return [text.x, text.y, text.anchor.value, text.kind.value, text.owner, runs]


def _text(x: float, y: float, anchor: str, kind: str, owner: str, runs: Plain) -> Text:
    return Text(x, y, Anchor(anchor), tuple(Run(*run) for run in runs), _KINDS[kind], owner)
