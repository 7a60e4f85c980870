"""What tells a previewed bowing from the bowing itself by shape: a dashed frame, a bracket under each changed bar.

The bracket runs from bar line to bar line, below all that the line holds, so that it is not taken for an ending; that
of the bar under the pointer, or with the focus note, is drawn thick.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.page_layout import SIDE_MARGIN, PageLayout, PlacedLine
from app.theme import Theme
from core.engraving.picture import STAFF_SPACE, Box

FRAME = 5  # pixels
BRACKET_FOOT = 0.6 * STAFF_SPACE
BRACKET_DROP = 60  # below the band of the line
BRACKET_INSET = 60  # from the bar lines
THIN, THICK = 1.5, 3.5  # pixels


def bar_box(placed: PlacedLine, bar: int) -> Box | None:
    """A bar with the room over and under it on the page; None where the line waits or does not hold it."""
    if placed.picture is None or bar not in placed.picture.measures:
        return None
    measure = placed.picture.measures[bar]
    return Box(SIDE_MARGIN + measure.left, placed.top, SIDE_MARGIN + measure.right, placed.bottom)


def bar_at(layout: PageLayout, x: float, y: float) -> int | None:
    """Index of the bar at a place of the page; None beside all."""
    for placed in layout.lines:
        if placed.top <= y <= placed.bottom:
            for bar in range(placed.line.first, placed.line.stop):
                box = bar_box(placed, bar)
                if box is not None and box.left <= x <= box.right:
                    return bar
    return None


def paint_brackets(
    painter: QPainter,
    placed_lines: Sequence[PlacedLine],
    bars: Collection[int],
    here: int | None,
    scale: float,
    theme: Theme,
) -> None:
    """A bracket under each changed bar; ``here`` is the bar whose change is told now."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for bar, box in _boxes(placed_lines, bars):
        pen = QPen(QColor(theme.tint), THICK if bar == here else THIN)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        rect = _scaled(box.grown(-BRACKET_INSET, BRACKET_DROP), scale)
        foot = BRACKET_FOOT * scale
        painter.drawPolyline(
            [
                rect.bottomLeft() - QPointF(0, foot),
                rect.bottomLeft(),
                rect.bottomRight(),
                rect.bottomRight() - QPointF(0, foot),
            ]
        )


def paint_frame(painter: QPainter, layout: PageLayout, scale: float, theme: Theme) -> None:
    """A dashed frame round the page."""
    pen = QPen(QColor(theme.tint), FRAME)
    pen.setDashPattern([3, 2])
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(QRectF(0, 0, layout.width * scale, layout.height * scale))


def _boxes(placed_lines: Sequence[PlacedLine], bars: Collection[int]) -> Iterator[tuple[int, Box]]:
    for placed in placed_lines:
        for bar in range(placed.line.first, placed.line.stop):
            box = bar_box(placed, bar) if bar in bars else None
            if box is not None:
                yield bar, box


def _scaled(box: Box, scale: float) -> QRectF:
    return QRectF(box.left * scale, box.top * scale, box.width * scale, box.height * scale)
