"""What the page shows beside the music where bowings are compared: names, the one that is worked on, differences.

The bowing that keys act on has a bar along the left of its lines and its name in bold; the one from which the others
are told apart says so behind its name.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter

from app.difference_painting import ARCH_WIDTH, SHAPE_WORDS, Shape, lane_of, paint_lane, paint_shape
from app.page_heading import SMALL_SIZE, fitted
from app.page_layout import SIDE_MARGIN, TOP_MARGIN, PlacedLine
from app.page_rows import Row
from app.painting import paint_text, run_width
from app.theme import Theme
from core.engraving.picture import STAFF_SPACE, Anchor, Run, Text
from core.translation import tr, translatable

NAME_SIZE = 320.0
BAR_LEFT, BAR_WIDTH = 0.4 * SIDE_MARGIN, 0.9 * STAFF_SPACE
IS_REFERENCE = translatable("the others are told from this one")
LEGEND_SIZE = 0.8 * SMALL_SIZE
LEGEND_HEIGHT = 2.6 * SMALL_SIZE
LEGEND_GAP = 1.9 * STAFF_SPACE  # between one shape's words and the next shape


def paint_names(
    painter: QPainter, row: Row, placed_lines: Sequence[PlacedLine], width: float, theme: Theme,
    *, active: bool, reference: bool,
) -> None:  # fmt: skip
    """The name over each of these lines, and the bar along them; the painter's unit is a picture unit of the page."""
    room = width - 2 * SIDE_MARGIN
    for placed in placed_lines:
        if placed.name is None:
            continue
        y = placed.name + 0.35 * NAME_SIZE
        name = fitted(Run(row.name, NAME_SIZE, bold=active), room * 0.6)
        paint_text(painter, Text(SIDE_MARGIN, y, Anchor.START, (name,)), QColor(theme.ink))
        if reference:
            after = SIDE_MARGIN + run_width(name)
            words = Run(f"  {tr(IS_REFERENCE)}", LEGEND_SIZE, italic=True)
            paint_text(painter, Text(after, y, Anchor.START, (words,)), QColor(theme.faint_ink))
        if active:
            bar = QRectF(BAR_LEFT, placed.top, BAR_WIDTH, placed.bottom - placed.top)
            painter.fillRect(bar, QColor(theme.tint))


def paint_differences(painter: QPainter, row: Row, placed_lines: Sequence[PlacedLine], theme: Theme) -> None:
    """What tells these lines from those of the reference; the painter's unit is a picture unit of the page."""
    if not row.differences:
        return
    for placed in placed_lines:
        if placed.picture is not None and placed.lane is not None:
            paint_lane(painter, placed, lane_of(row.here.tune, placed.heads(), row.differences), theme)


def paint_legend(painter: QPainter, heading: float, width: float, reference: str, theme: Theme) -> None:
    """What the shapes mean, at the foot of a heading; the painter's unit is a picture unit of the page.

    Args:
        heading: Height of the heading, with ``LEGEND_HEIGHT`` for this.
        reference: Name of the bowing from which the others are told.
    """
    told = fitted(Run(tr("Beside “{name}”:", name=reference), LEGEND_SIZE, italic=True), (width - 2 * SIDE_MARGIN) / 4)
    pieces = [Run(f" {tr(SHAPE_WORDS[shape], 'legend')}", LEGEND_SIZE) for shape in Shape]
    whole = run_width(told) + sum(ARCH_WIDTH + LEGEND_GAP + run_width(piece) for piece in pieces)
    scale = min(1.0, (width - 2 * SIDE_MARGIN) / whole)
    painter.save()
    painter.translate(SIDE_MARGIN, TOP_MARGIN + heading - 0.6 * LEGEND_SIZE)
    painter.scale(scale, scale)
    paint_text(painter, Text(0, 0, Anchor.START, (told,)), QColor(theme.faint_ink))
    x = run_width(told) + LEGEND_GAP
    for shape, piece in zip(Shape, pieces, strict=True):
        paint_shape(painter, shape, x + ARCH_WIDTH / 2, -0.3 * LEGEND_SIZE, QColor(theme.ink))
        paint_text(painter, Text(x + ARCH_WIDTH, 0, Anchor.START, (piece,)), QColor(theme.ink))
        x += ARCH_WIDTH + run_width(piece) + LEGEND_GAP
    painter.restore()
