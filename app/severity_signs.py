"""How grave a finding is, as a shape and a word; colour only repeats it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from core.check import Severity
from core.translation import translatable

WORDS = translatable({Severity.FAULT: "Fault", Severity.WARNING: "Warning", Severity.NOTE: "Note"}, "severity")


def paint_severity(painter: QPainter, severity: Severity, place: QRectF, colour: QColor) -> None:
    """Paint the sign of a severity: a filled square with a cross, an open triangle with a stroke, a ring."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    side = min(place.width(), place.height())
    box = QRectF(0, 0, side, side)
    box.moveCenter(place.center())
    pen = QPen(colour, side / 8, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)
    inset = side / 8
    inner = box.adjusted(inset, inset, -inset, -inset)
    if severity is Severity.FAULT:
        path = QPainterPath()
        path.addRoundedRect(box, side / 5, side / 5)
        painter.fillPath(path, colour)
        cross = box.adjusted(side * 0.3, side * 0.3, -side * 0.3, -side * 0.3)
        pen.setColor(QColor("#ffffff" if colour.lightness() < 150 else "#201010"))
        painter.setPen(pen)
        painter.drawLine(cross.topLeft(), cross.bottomRight())
        painter.drawLine(cross.topRight(), cross.bottomLeft())
    elif severity is Severity.WARNING:
        painter.setPen(pen)
        painter.drawPolygon(
            QPolygonF([QPointF(inner.center().x(), inner.top()), inner.bottomRight(), inner.bottomLeft()])
        )
        x = box.center().x()
        painter.drawLine(QPointF(x, box.top() + side * 0.42), QPointF(x, box.top() + side * 0.68))
    else:
        painter.setPen(pen)
        painter.drawEllipse(inner)
    painter.restore()
