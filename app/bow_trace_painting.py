"""Draws the way of the bow: time along, the frog above and the tip below, so that down-bows go down.

Hatched is where the bow cannot be at speeds within the limits.

Everywhere a second is as wide and a centimetre as high as anywhere else: at one even speed all strokes are equally
steep. An open triangle with the word "out" shows where the bow leaves the hair at that speed, a full one with a bar
across where no speed within the limits would keep it there.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from app.theme import Theme, mix, scaled_font
from core.bow_way import BowWay, Leg, Out
from core.check import Severity
from core.translation import tr, translatable
from core.values import dataclass

SECOND = 2.6  # line heights a second is wide at least
WIDEST_SECOND = 8.0
HAIR = 3.6  # line heights the hair is high
BEYOND = 0.75  # line heights drawn beyond either end of the hair
LEAST_BARRED = 0.06  # of the hair; less is not worth a shape
PAD = 8  # pixels at either end of the tune
FROG, TIP, OUT = translatable(("frog", "tip", "out"))  # at the ends of the hair, and where it ends


@dataclass(frozen=True)
class Scale:
    """Where times and places lie in pixels.

    Attributes:
        left: x of the first second when nothing is scrolled away.
        second: Pixels a second.
        frog, tip: y of the ends of the hair.
        hair_cm: Length of the hair.
    """

    left: float
    second: float
    frog: float
    tip: float
    hair_cm: float

    def x(self, seconds: float) -> float:
        return self.left + seconds * self.second

    def seconds(self, x: float) -> float:
        return (x - self.left) / self.second

    def y(self, cm: float) -> float:
        return self.frog + cm * (self.tip - self.frog) / self.hair_cm


class TracePainter:
    """Sizes and colours of a trace.

    Args:
        font: Of the widget.
        theme: Its colours.
    """

    def __init__(self, font: QFont, theme: Theme) -> None:
        self.theme = theme
        self.small = scaled_font(font, 0.85)
        self._line = QFontMetricsF(font).height()
        self._metrics = QFontMetricsF(self.small)
        self._digit = self._metrics.horizontalAdvance("0")
        self.gutter = round(max(self._metrics.horizontalAdvance(tr(word)) for word in (FROG, TIP)) + 2 * PAD)
        self._beyond = BEYOND * self._line
        self.height = round(self._metrics.height() + 2 * self._beyond + HAIR * self._line)

    def scale(self, way: BowWay, width: int) -> Scale:
        """The scale at which a way fits a width, if it can."""
        fitting = (width - self.gutter - 2 * PAD) / max(way.seconds, 1e-3)
        second = min(max(fitting, SECOND * self._line), WIDEST_SECOND * self._line)
        frog = self._metrics.height() + self._beyond
        return Scale(self.gutter + PAD, second, frog, frog + HAIR * self._line, way.hair_cm)

    def paint(
        self, painter: QPainter, way: BowWay, bars: Sequence[str], at: int, again: Sequence[int], scale: Scale,
        scrolled: int, width: int,
    ) -> None:  # fmt: skip
        """Paint what is in sight.

        Args:
            painter: On the widget, with nothing scrolled away.
            way: What to draw.
            bars: What stands over each visit.
            at: Index of the chosen note in ``BowWay.notes_s``, or -1.
            again: Indexes of its other playings.
            scale: From ``scale`` for this way and width.
            scrolled: Pixels scrolled away at the left.
            width: Of the widget.
        """
        theme = self.theme
        top, bottom = scale.frog - self._beyond, scale.tip + self._beyond
        painter.setFont(self.small)
        painter.save()
        painter.setClipRect(QRectF(self.gutter, 0, width - self.gutter, bottom + 1))
        painter.translate(-scrolled, 0)
        begin, end = scale.seconds(scrolled + self.gutter), scale.seconds(scrolled + width)
        shown = slice(way.leg_at(begin), bisect_left(way.legs, end, key=lambda leg: leg.begin_s))
        legs = way.legs[shown]
        painter.fillRect(QRectF(scrolled, scale.frog, width, scale.tip - scale.frog), QColor(theme.field))
        self._paint_barred(painter, legs, scale)
        self._paint_bars(painter, way, bars, scale, scrolled, begin, end)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if at >= 0:
            self._paint_place(painter, way, at, again, scale, top, bottom)
        # One line for each stroke: a polyline of this width takes Qt twenty times as long.
        painter.setPen(QPen(QColor(theme.ink), 1.4, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        hair = QRectF(scrolled + self.gutter, scale.frog - 1, width - self.gutter, scale.tip - scale.frog + 2)
        painter.setClipRect(hair)
        painter.drawLines([_line(leg, scale) for leg in legs])
        if at >= 0 and way.legs:
            leg = way.legs[way.leg_at(way.notes_s[at])]
            painter.setPen(QPen(QColor(theme.tint), 3.2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
            painter.drawLine(_line(leg, scale))
        painter.setClipRect(QRectF(scrolled + self.gutter, top, width - self.gutter, bottom - top))
        self._paint_outs(painter, legs, scale)
        painter.restore()
        painter.setPen(QPen(QColor(theme.quiet), 1))
        for word, y in ((tr(FROG), scale.frog), (tr(TIP), scale.tip)):
            painter.drawLine(QPointF(self.gutter, y), QPointF(width, y))
            place = QRectF(0, y - self._metrics.height() / 2, self.gutter - PAD / 2, self._metrics.height())
            painter.drawText(place, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, word)

    def _paint_barred(self, painter: QPainter, legs: Sequence[Leg], scale: Scale) -> None:
        """Where no speeds within the limits can have brought the bow, hatched."""
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(mix(self.theme.quiet, self.theme.field, 0.5), Qt.BrushStyle.BDiagPattern))
        hair = scale.hair_cm
        least = LEAST_BARRED * hair
        for leg in legs:
            (low, high), (next_low, next_high) = leg.begin_room, leg.end_room
            if low > least or next_low > least:
                self._paint_beside(painter, leg, scale, 0.0, low, min(next_low, hair))
            if hair - high > least or hair - next_high > least:
                self._paint_beside(painter, leg, scale, hair, high, max(next_high, 0.0))

    def _paint_beside(
        self, painter: QPainter, leg: Leg, scale: Scale, edge_cm: float, begin_cm: float, end_cm: float
    ) -> None:
        left, right, edge = scale.x(leg.begin_s), scale.x(leg.end_s), scale.y(edge_cm)
        corners = ((left, edge), (left, scale.y(begin_cm)), (right, scale.y(end_cm)), (right, edge))
        painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in corners]))

    def _paint_bars(
        self, painter: QPainter, way: BowWay, bars: Sequence[str], scale: Scale, scrolled: int, begin: float, end: float
    ) -> None:
        first, stop = max(bisect_left(way.visits_s, begin) - 1, 0), bisect_left(way.visits_s, end)
        places = [(bars[visit], scale.x(way.visits_s[visit])) for visit in range(first, stop)]
        bottom = scale.tip + self._beyond
        painter.setPen(QPen(QColor(self.theme.line), 1))
        painter.drawLines([QLineF(x, 0, x, bottom) for _, x in places])
        painter.setPen(QColor(self.theme.quiet))
        free = float(scrolled)  # no number begins left of here
        for label, x in places:
            if label and x >= free:
                painter.drawText(QPointF(x + 3, self._metrics.ascent()), label)
                free = x + 3 + self._digit * (len(label) + 1)

    def _paint_place(
        self, painter: QPainter, way: BowWay, at: int, again: Sequence[int], scale: Scale, top: float, bottom: float
    ) -> None:
        """A line through the chosen note under a full peg; an open peg where the same note is played again."""
        tint, size = QColor(self.theme.tint), self._beyond / 2
        painter.setPen(QPen(tint, 1.2))
        x = scale.x(way.notes_s[at])
        painter.drawLine(QPointF(x, top), QPointF(x, bottom))
        for other in (*again, at):
            painter.setBrush(tint if other == at else Qt.BrushStyle.NoBrush)
            x = scale.x(way.notes_s[other])
            painter.drawEllipse(QPointF(x, top + size / 2), size / 2, size / 2)

    def _paint_outs(self, painter: QPainter, legs: Sequence[Leg], scale: Scale) -> None:
        outs = [leg for leg in legs if leg.out is not Out.NO]
        wide = self._metrics.horizontalAdvance(tr(OUT))
        for index, leg in enumerate(outs):
            anyhow = leg.out is Out.ANYHOW
            colour = QColor(self.theme.severities[Severity.WARNING] if anyhow else self.theme.text)
            x, size = scale.x(leaves_s(leg, scale.hair_cm)), self._beyond * 0.75
            base, way = (scale.tip + 1, 1) if leg.down else (scale.frog - 1, -1)
            painter.setPen(QPen(colour, 1.4))
            painter.setBrush(colour if anyhow else QColor(self.theme.panel))
            painter.drawPolygon(QPolygonF([
                QPointF(x - size / 2, base), QPointF(x + size / 2, base), QPointF(x, base + way * size),
            ]))  # fmt: skip
            if anyhow:
                painter.drawLine(QPointF(x - size * 0.7, base), QPointF(x + size * 0.7, base))
            after = next((scale.x(leaves_s(other, scale.hair_cm)) for other in outs[index + 1 :]
                          if other.down == leg.down), None)  # fmt: skip
            left = x + size / 2 + 2
            if after is None or left + wide < after - size / 2:
                height = self._metrics.height()
                place = QRectF(left, base if leg.down else base - height * 0.9, wide + 2, height * 0.9)
                painter.drawText(place, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, tr(OUT))


def leaves_s(leg: Leg, hair_cm: float) -> float:
    """When the bow leaves the hair in a leg that runs out; its end where the even speed keeps it on."""
    hair_end = hair_cm if leg.down else 0.0
    way = leg.end_cm - leg.begin_cm
    share = (hair_end - leg.begin_cm) / way if way else 1.0
    return leg.begin_s + min(max(share, 0.0), 1.0) * (leg.end_s - leg.begin_s)


def _line(leg: Leg, scale: Scale) -> QLineF:
    return QLineF(scale.x(leg.begin_s), scale.y(leg.begin_cm), scale.x(leg.end_s), scale.y(leg.end_cm))
