"""Where the lines of a page stand and what is at a place: plain geometry, no widget.

All lengths are picture units (1/100 mm at natural size), y runs down, the origin is the page's top left corner.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field
from fractions import Fraction
from math import ceil

from core.engraving.lines import Line
from core.engraving.picture import STAFF_SPACE, Box, Picture
from core.tune import Tune
from core.values import dataclass

MUSIC_WIDTH = 18000
SIDE_MARGIN = 1100
TOP_MARGIN = 800
BOTTOM_MARGIN = 1200
LINE_GAP = 260
LINE_GAP_WITH_STRIP = 80  # the strip parts the lines well enough
HEADING_GAP = 350
LEAST_ABOVE = 6 * STAFF_SPACE  # over the staff, so that the first bow mark or slur moves nothing
LEAST_BELOW = 4 * STAFF_SPACE
LEAST_BELOW_TO_STRIP = 3 * STAFF_SPACE
STRIP_HEIGHT = 1.6 * STAFF_SPACE  # of the accent strip, which has a line's foot to itself
STRIP_GAP = 0.4 * STAFF_SPACE  # over it
NAME_HEIGHT = 2.1 * STAFF_SPACE  # of the name over the line of a bowing that stands among others
LANE_HEIGHT = 2.3 * STAFF_SPACE  # of the differences under it
BOWING_GAP = 60  # between the bowings of a line
STACK_GAP = 620  # between all bowings of one line and those of the next
NOTE_REACH = 1.3 * STAFF_SPACE  # how far beside a note it still answers
SIGN_REACH = 0.55 * STAFF_SPACE


@dataclass(frozen=True)
class Target:
    """What is under the pointer.

    Attributes:
        note_id: The note or rest.
        is_sign: The pointer is on the bow mark over the note, not on the note.
        place: The place of the accent strip that the pointer is on: index of the bar, and quarter notes from the
            beginning of the full bar. None where it is not on the strip.
        row: Which of the bowings on the page, counted from 0.
        is_difference: The pointer is on what tells the note from that of another bowing.
    """

    note_id: str
    is_sign: bool = False
    place: tuple[int, Fraction] | None = None
    row: int = 0
    is_difference: bool = False

    @property
    def is_note(self) -> bool:
        """The pointer is on the note itself."""
        return not self.is_sign and self.place is None and not self.is_difference


@dataclass(frozen=True)
class PlacedLine:
    """A line of the page.

    Attributes:
        line: Its bars.
        picture: Its engraving, or None while it waits for its turn.
        top: y of the band that the line has to itself.
        bottom: End of the band.
        picture_top: y at which the picture is painted.
        strip: y of the middle of the accent strip, below all that the picture holds; None where it is hidden.
        name: y of the middle of the name of its bowing, over all that the picture holds; None where it has none.
        lane: y of the middle of the differences from another bowing, at the foot; None where none are shown.
    """

    line: Line
    picture: Picture | None
    top: float
    bottom: float
    picture_top: float
    strip: float | None = None
    name: float | None = None
    lane: float | None = None

    @property
    def foot(self) -> float:
        """y under the music and its strip: where the differences begin, else the end of the band."""
        return self.bottom if self.lane is None else self.lane - LANE_HEIGHT / 2

    def heads(self) -> dict[str, float]:
        """x of each note's head in the picture; empty while the line waits."""
        return {} if self.picture is None else {note_id: head.x for note_id, head in self.picture.heads.items()}

    def page_box(self, box: Box) -> Box:
        """A box of the picture as it stands on the page."""
        left, top = SIDE_MARGIN, self.picture_top
        return Box(box.left + left, box.top + top, box.right + left, box.bottom + top)


@dataclass(frozen=True)
class PageLayout:
    """Lines under one another.

    Attributes:
        lines: From the top; at least one for any tune.
        heading: Height of the title and credits.
        width, height: Of the whole page, margins included.
        line_of: Index in ``lines`` of each note and rest by id.
    """

    lines: tuple[PlacedLine, ...]
    heading: float
    width: float
    height: float
    line_of: dict[str, int] = field(repr=False)

    def line_at(self, y: float) -> int | None:
        """The line in whose band a height lies, or None."""
        for index, placed in enumerate(self.lines):
            if placed.top <= y < placed.bottom:
                return index
        return None

    def target_at(self, x: float, y: float) -> Target | None:
        """The bow mark or else the note that a place belongs to, generously; None beside the music."""
        index = self.line_at(y)
        placed = self.lines[index] if index is not None else None
        if placed is None or placed.picture is None:
            return None
        x, y = x - SIDE_MARGIN, y - placed.picture_top
        sign = placed.picture.slot_at(x, y, SIGN_REACH)
        if sign is not None:
            return Target(sign, is_sign=True)
        note = placed.picture.note_at(x, y, NOTE_REACH)
        return Target(note) if note is not None else None

    def strip_at(self, x: float, y: float) -> tuple[PlacedLine, float] | None:
        """The line on whose accent strip a place lies, and x in its picture; None beside all strips."""
        index = self.line_at(y)
        placed = self.lines[index] if index is not None else None
        if placed is None or placed.picture is None or placed.strip is None:
            return None
        return (placed, x - SIDE_MARGIN) if abs(y - placed.strip) <= STRIP_HEIGHT / 2 else None

    def lane_at(self, x: float, y: float) -> tuple[PlacedLine, float] | None:
        """The line at whose foot among the differences a place lies, and x in its picture; None beside all."""
        index = self.line_at(y)
        placed = self.lines[index] if index is not None else None
        if placed is None or placed.picture is None or placed.lane is None:
            return None
        return (placed, x - SIDE_MARGIN) if abs(y - placed.lane) <= LANE_HEIGHT / 2 else None

    def lines_between(self, top: float, bottom: float) -> range:
        """The lines whose bands reach into a strip of the page."""
        hit = [index for index, placed in enumerate(self.lines) if placed.bottom > top and placed.top < bottom]
        return range(hit[0], hit[-1] + 1) if hit else range(0)

    def note_box(self, note_id: str) -> Box | None:
        """Where a note stands on the page; None while its line waits, or for a hidden rest."""
        placed = self.lines[self.line_of[note_id]]
        if placed.picture is None or note_id not in placed.picture.boxes:
            return None
        return placed.page_box(placed.picture.boxes[note_id])


def lay_out(
    tune: Tune,
    lines: Sequence[Line],
    pictures: Sequence[Picture | None],
    heading: float,
    music_width: float,
    *,
    strip: bool = False,
) -> PageLayout:
    """Put the lines of one bowing under one another: ``stack`` for one that needs no name."""
    return stack(tune, lines, [pictures], heading, music_width, strip=strip)[0]


def stack(
    tune: Tune,
    lines: Sequence[Line],
    pictures: Sequence[Sequence[Picture | None]],
    heading: float,
    music_width: float,
    *,
    strip: bool = False,
    reference: int | None = None,
    known: Sequence[PageLayout] = (),
) -> tuple[PageLayout, ...]:
    """Put the lines of bowings under one another: the first line of each, then the second of each, and so on.

    Room above and below each staff is counted in whole staff spaces, so that an edit which makes a line a little
    taller leaves the rest of the page where it is.

    Args:
        tune: The tune.
        lines: Which bars stand on which line.
        pictures: For each bowing those of its lines; None for one that waits.
        heading: Height of the title and credits.
        music_width: Width of the lines.
        strip: Room is kept for an accent strip under each line.
        reference: The bowing, counted from 0, from which the others are told apart: each line has room for a name
            over it and, but for the reference, for differences at its foot. None for neither.
        known: Layouts of the same lines: what stands there as it did is taken from them.
    Returns:
        For each bowing where its lines stand, all of one page and so of one width and height.
    """
    rows = [_Row(strip, reference is not None, reference not in (None, row)) for row in range(len(pictures))]
    last_gap = LINE_GAP if not strip else LINE_GAP_WITH_STRIP
    gap, last_gap = (BOWING_GAP, STACK_GAP) if reference is not None else (last_gap, last_gap)
    placed: list[list[PlacedLine]] = [[] for _ in pictures]
    y = TOP_MARGIN + heading + (HEADING_GAP if heading else 0)
    before: Sequence[tuple[PlacedLine, ...]] = [layout.lines for layout in known]
    if len(before) != len(rows):
        before = [()] * len(rows)
    for place, line in enumerate(lines):
        for row, of_row, to, was in zip(rows, pictures, placed, before, strict=True):
            stays = bool(was) and row.has_placed(was[place], of_row[place], y)
            to.append(was[place] if stays else row.place(line, of_row[place], y))
            y = to[-1].bottom + gap
        y += last_gap - gap
    width, height = music_width + 2 * SIDE_MARGIN, y - last_gap + BOTTOM_MARGIN
    line_of = (
        known[0].line_of
        if known
        else {
            note.id: index
            for index, line in enumerate(lines)
            for bar in tune.bars[line.first : line.stop]
            for note in bar.notes
        }
    )
    return tuple(PageLayout(tuple(of_row), heading, width, height, line_of) for of_row in placed)


@dataclass(frozen=True)
class _Row:
    """What a line of a bowing has room for beside its picture."""

    strip: bool
    name: bool
    lane: bool

    def has_placed(self, placed: PlacedLine, picture: Picture | None, top: float) -> bool:
        """Whether a line stands as ``place`` would put it."""
        room = (placed.strip is not None, placed.name is not None, placed.lane is not None)
        same = picture is not None and placed.picture is picture and placed.top == top
        return same and room == (self.strip, self.name, self.lane)

    def place(self, line: Line, picture: Picture | None, top: float) -> PlacedLine:
        """Put a line under this height."""
        head = NAME_HEIGHT if self.name else 0
        least_below = LEAST_BELOW_TO_STRIP if self.strip else LEAST_BELOW
        above, staff, below = LEAST_ABOVE, 4 * STAFF_SPACE, least_below
        picture_top = top
        if picture is not None:
            above = max(LEAST_ABOVE, ceil((picture.staff_top - picture.top) / STAFF_SPACE) * STAFF_SPACE)
            staff = picture.staff_bottom - picture.staff_top
            below = max(least_below, ceil((picture.height - picture.staff_bottom) / STAFF_SPACE) * STAFF_SPACE)
            picture_top = top + head + above - picture.staff_top
        strip_top = top + head + above + staff + below + STRIP_GAP
        lane_top = strip_top + STRIP_HEIGHT if self.strip else strip_top - STRIP_GAP
        return PlacedLine(
            line,
            picture,
            top,
            lane_top + (LANE_HEIGHT if self.lane else 0),
            picture_top,
            strip_top + STRIP_HEIGHT / 2 if self.strip and picture is not None else None,
            top + NAME_HEIGHT / 2 if self.name else None,
            lane_top + LANE_HEIGHT / 2 if self.lane else None,
        )
