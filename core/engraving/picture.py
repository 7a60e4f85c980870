"""A picture of one engraved line: what to draw and where, without Qt.

A picture is a display list: ``core.engraving.svg`` makes it from what the engraver writes. Everything in it is frozen
and can be shared, cached and painted any number of times, on screen and on paper alike.

Units: all coordinates are in units of 1/100 millimetre at natural size, at which a staff is 7.2 mm high
(``UNITS_PER_MM``, ``STAFF_SPACE``). x runs to the right, y runs *down*; the origin is the top left corner.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from enum import Enum
from functools import cached_property
from typing import NamedTuple

from core.engraving.glyphs import DOWN_BOW, UP_BOW, Command, glyph_box, outline_box
from core.engraving.kinds import Kind
from core.values import dataclass

UNITS_PER_MM = 100
STAFF_SPACE = 180.0  # between two staff lines
SIGN_SCALE = 1.25  # of a bow sign beside other glyphs: read at arm's length, and the most looked at
ROW_STEP = 0.459  # from one row of bow signs to the next, in ems of the sign

SHARED = frozenset({Kind.CHORD, Kind.WORDS, Kind.PART, Kind.NUMBER})  # what is the same for all bowings of a tune
EDGE = 40.0  # between what stands outermost in a picture and its edge


class Point(NamedTuple):
    """A place."""

    x: float
    y: float


class Box(NamedTuple):
    """A rectangle; ``top`` is less than ``bottom`` because y runs down."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        return self.right - self.left

    @property
    def height(self) -> float:
        return self.bottom - self.top

    @property
    def centre(self) -> Point:
        return Point((self.left + self.right) / 2, (self.top + self.bottom) / 2)

    def contains(self, x: float, y: float) -> bool:
        return self.left <= x <= self.right and self.top <= y <= self.bottom

    def grown(self, dx: float, dy: float) -> Box:
        """The box with ``dx`` added left and right and ``dy`` above and below."""
        return Box(self.left - dx, self.top - dy, self.right + dx, self.bottom + dy)

    def united(self, other: Box) -> Box:
        """The smallest box that holds both."""
        return Box(
            min(self.left, other.left),
            min(self.top, other.top),
            max(self.right, other.right),
            max(self.bottom, other.bottom),
        )

    def overlaps(self, other: Box) -> bool:
        """Whether the two share an area (touching edges do not count)."""
        return (
            self.left < other.right and other.left < self.right and self.top < other.bottom and other.top < self.bottom
        )


class Glyph(NamedTuple):
    """One sign of the music font.

    Attributes:
        code: SMuFL code point in four hex digits; ``core.engraving.glyphs`` has its outline.
        x, y: Where the glyph's origin stands.
        size: Em size; outlines are in 1/1000 em with y up.
        kind: What it is part of.
        owner: Id of the note that it belongs to, or "".
    """

    code: str
    x: float
    y: float
    size: float
    kind: Kind = Kind.OTHER
    owner: str = ""

    @property
    def box(self) -> Box:
        left, bottom, right, top = glyph_box(self.code)
        k = self.size / 1000
        return Box(self.x + left * k, self.y - top * k, self.x + right * k, self.y - bottom * k)


@dataclass(frozen=True, slots=True)
class Outline:
    """A line or an area.

    Attributes:
        commands: Its steps, in picture units.
        filled: The area inside is inked.
        pen: Width of the line drawn along it; 0 for none.
        dash: Lengths of dashes and gaps; empty for a solid line.
        round_ends: The line's ends are round rather than flat.
        kind: What it is part of.
        owner: Id of the note that it belongs to (a slur's or tie's first note), or "".
    """

    commands: tuple[Command, ...]
    filled: bool
    pen: float = 0.0
    dash: tuple[float, ...] = ()
    round_ends: bool = False
    kind: Kind = Kind.OTHER
    owner: str = ""

    @property
    def box(self) -> Box:
        """What it covers, half the pen around it included."""
        left, top, right, bottom = outline_box(self.commands)
        return Box(left, top, right, bottom).grown(self.pen / 2, self.pen / 2)


Shape = Glyph | Outline


class Anchor(Enum):
    """Which part of a text stands at its x."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True, slots=True)
class Run:
    """A piece of text in one style.

    Attributes:
        text: The characters.
        size: Em size in picture units.
        music: Set in the music font, else in the text font.
        bold, italic: Style of the text font.
    """

    text: str
    size: float
    music: bool = False
    bold: bool = False
    italic: bool = False


@dataclass(frozen=True, slots=True)
class Text:
    """A line of text, its runs one after the other.

    Attributes:
        x, y: Where it stands; y is the base line.
        anchor: Which part of the whole line stands at x.
        runs: At least one.
        kind: What it is.
        owner: Id of the note that it belongs to, or "".
    """

    x: float
    y: float
    anchor: Anchor
    runs: tuple[Run, ...]
    kind: Kind = Kind.OTHER
    owner: str = ""

    @property
    def text(self) -> str:
        return "".join(run.text for run in self.runs)


@dataclass(frozen=True, slots=True)
class BowSlot:
    """Room kept for bow signs over a note; nothing is drawn there by the picture itself.

    Attributes:
        note_id: The note, always the first of a stroke.
        x: Centre of the signs.
        bottom: Where the foot of the sign in the first row stands.
        size: Em size for a sign's glyph.
        rows: How many signs have room over one another, 1 or 2.
    """

    note_id: str
    x: float
    bottom: float
    size: float
    rows: int = 1

    def foot(self, row: int) -> float:
        """Where the foot of a sign stands; row 0 is next to the staff."""
        return self.bottom - row * ROW_STEP * self.size

    def box(self, rows: int | None = None) -> Box:
        """The room of the first rows, or of all."""
        half = slot_width(self) / 2
        top = self.foot((rows or self.rows) - 1) - slot_height(self)
        return Box(self.x - half, top, self.x + half, self.bottom)


@dataclass(frozen=True, slots=True)
class Curve:
    """A drawn slur or tie.

    Attributes:
        start: Id of its first note; where that stands on an earlier line, still that note.
        end: Id of its last note, likewise.
        tie: A tie, not a slur.
        box: Where it is drawn.
        shape: Its place in ``Picture.shapes``.
    """

    start: str
    end: str
    tie: bool
    box: Box
    shape: int


@dataclass(frozen=True, eq=False)
class Picture:
    """The display list of one line. Two pictures are equal only if they are the same object.

    Attributes:
        width, height: Of the whole; nothing but texts at the very edge reaches beyond.
        staff_top, staff_bottom: y of the top and bottom staff lines.
        shapes: In painting order.
        texts: In painting order, over the shapes.
        boxes: Box of each note and rest of the line with its stem, flag, dots and accidental, by note id; hidden rests
            have none.
        heads: Centre of each note's head (the middle of its heads in a double stop) or of the rest, by note id.
        bow_slots: Room for bow signs, by note id.
        measures: Box of each bar's staff by index in ``Tune.bars``, in order.
        curves: Slurs and ties, in drawing order.
        top: y over which nothing stands.
    """

    width: float
    height: float
    staff_top: float
    staff_bottom: float
    shapes: tuple[Shape, ...]
    texts: tuple[Text, ...]
    boxes: Mapping[str, Box]
    heads: Mapping[str, Point]
    bow_slots: Mapping[str, BowSlot]
    measures: Mapping[int, Box]
    curves: tuple[Curve, ...] = ()
    top: float = 0.0

    @cached_property
    def slurs(self) -> tuple[Curve, ...]:
        """The slurs among the curves."""
        return tuple(curve for curve in self.curves if not curve.tie)

    def note_at(self, x: float, y: float, reach: float = STAFF_SPACE) -> str | None:
        """The note or rest nearest to a place.

        Args:
            x, y: The place.
            reach: How far outside its box a note still answers.
        Returns:
            A note id, or None where no note's box, grown by ``reach``, holds the place.
        """
        near = [
            (abs(self.heads[note_id].x - x), note_id)
            for note_id, box in self.boxes.items()
            if box.left - reach <= x <= box.right + reach and box.grown(reach, reach).contains(x, y)
        ]
        return min(near)[1] if near else None

    def slot_at(self, x: float, y: float, reach: float = STAFF_SPACE / 2) -> str | None:
        """The note whose bow slot, grown by ``reach``, holds a place; the nearest where slots are close."""
        near = [
            (abs(slot.x - x), slot.note_id)
            for slot in self.bow_slots.values()
            if abs(slot.x - x) <= slot.size + reach and slot.box().grown(reach, reach).contains(x, y)
        ]
        return min(near)[1] if near else None


def without_shared(picture: Picture) -> Picture:
    """The picture without what is the same for all bowings of a tune (``SHARED``), and as much less tall.

    What is left stands where it stood.
    """
    kept = [place for place, shape in enumerate(picture.shapes) if shape.kind not in SHARED]
    now_at = {place: index for index, place in enumerate(kept)}
    shapes = tuple(picture.shapes[place] for place in kept)
    texts = tuple(text for text in picture.texts if text.kind not in SHARED)
    boxes = [slot.box() for slot in picture.bow_slots.values()]
    boxes += picture.boxes.values()
    boxes += (shape.box for shape in shapes if shape.kind is not Kind.NOTE)
    top = min([*(box.top for box in boxes), *(text.y - text.runs[0].size for text in texts)])
    bottom = max([*(box.bottom for box in boxes), *(text.y + text.runs[0].size / 2 for text in texts)])
    return replace(
        picture,
        top=max(picture.top, top - EDGE),
        height=min(picture.height, bottom + EDGE),
        shapes=shapes,
        texts=texts,
        curves=tuple(replace(curve, shape=now_at[curve.shape]) for curve in picture.curves),
    )


def slot_height(slot: BowSlot) -> float:
    """Height of the taller bow sign in a slot."""
    return glyph_box(UP_BOW)[3] * slot.size / 1000


def slot_width(slot: BowSlot) -> float:
    """Width of the wider bow sign in a slot."""
    return max(glyph_box(code)[2] - glyph_box(code)[0] for code in (DOWN_BOW, UP_BOW)) * slot.size / 1000
