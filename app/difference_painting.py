"""What tells a bowing from another under its lines, its shapes told apart by form alone.

Between two notes an arch: whole where they are slurred here, cut where they are slurred in the other bowing, with a dot
under it where both share a stroke in another way. Under a note a square: full for a sign that stands here, empty for
one that stands in the other bowing, half full where both have one. A line with a tick under each note whose bow goes
the other way; a double arrow where it begins.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from enum import Enum
from functools import cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.page_layout import NOTE_REACH, SIDE_MARGIN, PlacedLine
from app.theme import Theme
from core.differences import Difference
from core.engraving.picture import STAFF_SPACE
from core.translation import translatable
from core.tune import Tune
from core.values import dataclass

PEN = 0.16 * STAFF_SPACE
ARCH_WIDTH, ARCH_HEIGHT = 1.7 * STAFF_SPACE, 0.75 * STAFF_SPACE
SQUARE = 0.72 * STAFF_SPACE
UPPER = -0.55 * STAFF_SPACE  # arches and squares, from the middle of the lane
LOWER = 0.55 * STAFF_SPACE  # the line of other directions
TICK = 0.28 * STAFF_SPACE
ARROW = 0.62 * STAFF_SPACE  # half its height
AT_EDGE = 1.3 * STAFF_SPACE  # how far before the first note of a line its arch stands


class Shape(Enum):
    """The shapes beside the line of other directions; values are what the legend says of them."""

    SLURRED = "slurred"
    APART = "not slurred"
    OTHERWISE = "slurred or hooked"
    MORE = "a sign more"
    LESS = "a sign less"
    OTHER = "another sign"
    TURNED = "the bow goes the other way"


SHAPE_WORDS = translatable({
    Shape.SLURRED: "slurred", Shape.APART: "not slurred", Shape.OTHERWISE: "slurred or hooked",
    Shape.MORE: "a sign more", Shape.LESS: "a sign less", Shape.OTHER: "another sign",
    Shape.TURNED: "the bow goes the other way",
}, "legend")  # fmt: skip


@dataclass(frozen=True)
class Lane:
    """What is drawn at the foot of a line; x in picture units.

    Attributes:
        shapes: Each with the middle of its place and the id of its note.
        runs: For each row of notes with other directions their places and ids.
    """

    shapes: tuple[tuple[Shape, float, str], ...]
    runs: tuple[tuple[tuple[float, str], ...], ...]

    def note_at(self, x: float) -> str | None:
        """Id of the note whose shape or tick stands nearest to a place; None beside all."""
        marks = [(abs(at - x), note_id) for _, at, note_id in self.shapes]
        marks += [(abs(at - x), note_id) for run in self.runs for at, note_id in run]
        return min(marks)[1] if marks and min(marks)[0] <= NOTE_REACH else None


def lane_of(tune: Tune, heads: Mapping[str, float], differences: Mapping[str, Difference]) -> Lane:
    """What is drawn under a line.

    Args:
        tune: The tune.
        heads: x of the head of each note and rest of the line, in written order.
        differences: By note id; those of other lines are passed over.
    """
    shapes: list[tuple[Shape, float, str]] = []
    runs: list[list[tuple[float, str]]] = []
    before: float | None = None
    runs_on = False
    for note_id, x in heads.items():
        found = differences.get(note_id)
        if found is not None and found.joins is not None:
            here, there = found.joins
            shape = Shape.APART if here is None else Shape.SLURRED if there is None else Shape.OTHERWISE
            shapes.append((shape, x - AT_EDGE if before is None else (before + x) / 2, note_id))
        if found is not None and found.signs is not None:
            with_here, with_there = map(bool, found.signs)
            shape = Shape.OTHER if with_here and with_there else Shape.MORE if with_here else Shape.LESS
            shapes.append((shape, x, note_id))
        if found is not None and found.bows is not None:
            if runs_on:
                runs[-1].append((x, note_id))
            else:
                runs.append([(x, note_id)])
            runs_on = True
        elif not tune.note(note_id).held:  # a held note goes on as it was struck
            runs_on = False
        before = x
    return Lane(tuple(shapes), tuple(map(tuple, runs)))


@cache
def shape_paths(shape: Shape) -> tuple[QPainterPath, QPainterPath]:
    """What of a shape is filled, and what is drawn with a pen; the middle of its place at 0, 0."""
    filled, drawn = QPainterPath(), QPainterPath()
    half, rise = ARCH_WIDTH / 2, ARCH_HEIGHT / 2
    match shape:
        case Shape.SLURRED | Shape.OTHERWISE:
            drawn.moveTo(-half, rise)
            drawn.cubicTo(QPointF(-half * 0.5, -rise * 1.6), QPointF(half * 0.5, -rise * 1.6), QPointF(half, rise))
            if shape is Shape.OTHERWISE:
                filled.addEllipse(QPointF(0, rise * 0.9), PEN, PEN)
        case Shape.APART:
            for side in (-1, 1):
                drawn.moveTo(side * half, rise)
                drawn.quadTo(QPointF(side * half * 0.75, -rise * 0.3), QPointF(side * half * 0.34, -rise * 0.75))
            drawn.moveTo(half * 0.16, -rise * 1.25)
            drawn.lineTo(-half * 0.16, rise)
        case Shape.MORE | Shape.LESS | Shape.OTHER:
            box = QRectF(-SQUARE / 2, -SQUARE / 2, SQUARE, SQUARE)
            drawn.addRect(box.adjusted(PEN / 2, PEN / 2, -PEN / 2, -PEN / 2))
            if shape is Shape.MORE:
                filled.addRect(box)
            elif shape is Shape.OTHER:
                filled.addPolygon([box.bottomLeft(), box.bottomRight(), box.topRight()])
                filled.closeSubpath()
        case Shape.TURNED:
            drawn.moveTo(0, -ARROW * 0.9)
            drawn.lineTo(0, ARROW * 0.9)
            for side in (-1, 1):
                filled.addPolygon([QPointF(0, side * ARROW), QPointF(-ARROW * 0.42, side * ARROW * 0.35),
                                   QPointF(ARROW * 0.42, side * ARROW * 0.35)])  # fmt: skip
                filled.closeSubpath()
    return filled, drawn


def paint_lane(painter: QPainter, placed: PlacedLine, lane: Lane, theme: Theme) -> None:
    """Paint what tells a line from that of the other bowing; the painter's unit is a picture unit of the page."""
    if placed.lane is None:
        return
    filled, drawn = QPainterPath(), QPainterPath()
    filled.setFillRule(Qt.FillRule.WindingFill)
    for shape, x in _placed_shapes(lane):
        y = placed.lane + (LOWER if shape is Shape.TURNED else UPPER)
        for path, part in zip((filled, drawn), shape_paths(shape), strict=True):
            path.addPath(part.translated(SIDE_MARGIN + x, y))
    y = placed.lane + LOWER
    for run in lane.runs:
        drawn.moveTo(SIDE_MARGIN + run[0][0], y)
        drawn.lineTo(SIDE_MARGIN + run[-1][0], y)
        for x, _ in run[1:]:
            drawn.moveTo(SIDE_MARGIN + x, y - TICK)
            drawn.lineTo(SIDE_MARGIN + x, y + TICK)
    _paint(painter, filled, drawn, QColor(theme.ink))


def paint_shape(painter: QPainter, shape: Shape, x: float, y: float, colour: QColor) -> None:
    """Paint one shape with its middle at a place, as a legend does."""
    filled, drawn = (part.translated(x, y) for part in shape_paths(shape))
    _paint(painter, filled, drawn, colour)


def _placed_shapes(lane: Lane) -> Iterator[tuple[Shape, float]]:
    yield from ((shape, x) for shape, x, _ in lane.shapes)
    yield from ((Shape.TURNED, run[0][0]) for run in lane.runs)


def _paint(painter: QPainter, filled: QPainterPath, drawn: QPainterPath, colour: QColor) -> None:
    pen = QPen(colour, PEN)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.strokePath(drawn, pen)
    painter.fillPath(filled, colour)
