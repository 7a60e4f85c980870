"""The shapes on the accent strip: told apart by form alone, so that they read in grey and without seeing colours.

A driven accent is a full wedge pointing down, one on an up-bow an open wedge pointing up, a buried one a dot under an
arch, as a note lies under a slur, and one that is not struck an empty ring.
"""

from __future__ import annotations

from functools import cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.theme import Theme
from core.accents import Met
from core.check import Severity
from core.engraving.picture import STAFF_SPACE

SIZE = 1.15 * STAFF_SPACE
SMALL = 0.74  # of two shapes side by side
PEN = 0.14  # of the size
APART = 1.2 * STAFF_SPACE  # between the middles of two shapes


@cache
def shape(met: Met, size: float = SIZE) -> tuple[QPainterPath, QPainterPath]:
    """The shape of one way to be met, about the origin, y down.

    Returns:
        What is filled and what is drawn along with a pen of ``PEN`` times the size.
    """
    filled, drawn = QPainterPath(), QPainterPath()
    half = size / 2
    match met:
        case Met.DRIVEN:
            _wedge(filled, half, point=half)
        case Met.UP:
            _wedge(drawn, half * 0.86, point=-half * 0.86)
        case Met.BURIED:
            drawn.arcMoveTo(QRectF(-half * 0.95, -half * 0.75, size * 0.95, size), 0)
            drawn.arcTo(QRectF(-half * 0.95, -half * 0.75, size * 0.95, size), 0, 180)
            filled.addEllipse(QPointF(0, half * 0.45), half * 0.38, half * 0.38)
        case Met.UNSTRUCK:
            drawn.addEllipse(QPointF(0, 0), half * 0.78, half * 0.78)
    return filled, drawn


def _wedge(path: QPainterPath, half: float, point: float) -> None:
    path.moveTo(-half, -point)
    path.lineTo(half, -point)
    path.lineTo(0, point)
    path.closeSubpath()


def ink_of(met: Met, theme: Theme) -> QColor:
    """The colour of a shape; the form alone tells the same."""
    grave = {Met.UP: Severity.WARNING, Met.BURIED: Severity.WARNING, Met.UNSTRUCK: Severity.NOTE}
    return QColor(theme.severities[grave[met]] if met in grave else theme.ink)


def paint_met(painter: QPainter, x: float, y: float, shown: tuple[Met, ...], theme: Theme) -> None:
    """Paint one shape, or two smaller ones side by side, with their middle at a place."""
    size = SIZE if len(shown) == 1 else SIZE * SMALL
    for number, met in enumerate(shown):
        middle = QPointF(x + (number - (len(shown) - 1) / 2) * APART * SMALL, y)
        filled, drawn = shape(met, size)
        painter.fillPath(filled.translated(middle), ink_of(met, theme))
        pen = QPen(ink_of(met, theme), PEN * size)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.strokePath(drawn.translated(middle), pen)
