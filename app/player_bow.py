"""A picture of the bow while it plays: which way it goes and where on the hair the string is."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme import LIGHT, Theme
from core.bowing import Bow
from core.check import Severity
from core.sound.bow_place import BowMoment
from core.translation import tr, translatable

NAME = translatable("Bow")
WORDS = translatable({Bow.DOWN: "down-bow", Bow.UP: "up-bow"})
FROG, TIP = 12, 6  # pixels left and right of the hair
ARROW = 10  # pixels
SIGN = 22  # pixels right of the bow


class BowPicture(QWidget):
    """The bow from frog (left) to tip, the string across it, and the sign of the stroke beside it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr(NAME))
        self.setToolTip(tr("Frog on the left, tip on the right; the upright line is the string"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMinimumWidth(110)
        self._theme = LIGHT
        self._moment: BowMoment | None = None
        self._hair_cm = 1.0

    @property
    def words(self) -> str:
        """What is shown, in words."""
        if self._moment is None:
            return tr("The bow rests")
        cm = round(self._moment.cm)
        is_on_hair = 0 <= cm <= round(self._hair_cm)
        where = tr("{cm} cm from the frog", cm=cm) if is_on_hair else tr("beyond the hair")
        return tr("{bow}, {where}", bow=tr(WORDS[self._moment.bow]), where=where)

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._theme = theme
        self.update()

    def show_bow(self, moment: BowMoment | None, hair_cm: float = 1.0) -> None:
        """Show where the bow is; None for one that is not set down."""
        turned = (moment and moment.bow) is not (self._moment and self._moment.bow)
        self._moment, self._hair_cm = moment, hair_cm
        if turned:
            self.setAccessibleDescription(self.words)
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(190, 30)

    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            wood, hair = QColor(self._theme.quiet), QColor(self._theme.text)
            left, right = FROG, self.width() - SIGN - TIP
            middle = self.height() / 2 + 3
            stick = QPainterPath(QPointF(2, middle - 7))
            stick.quadTo(QPointF((left + right) / 2, middle - 3), QPointF(right + 2, middle - 8))
            stick.lineTo(right, middle)
            painter.setPen(QPen(wood, 2))
            painter.drawPath(stick)
            painter.fillRect(QRectF(left - 7, middle - 6, 7, 7), wood)
            painter.setPen(QPen(hair, 1.2))
            painter.drawLine(QPointF(left, middle), QPointF(right, middle))
            if self._moment is not None:
                self._paint_string(painter, left, right, middle)

    def _paint_string(self, painter: QPainter, left: float, right: float, middle: float) -> None:
        moment = self._moment
        assert moment is not None
        share = moment.cm / self._hair_cm
        out = not -0.005 <= share <= 1.005
        colour = QColor(self._theme.severities[Severity.WARNING] if out else self._theme.tint)
        x = left + min(max(share, 0.0), 1.0) * (right - left)
        if moment.moving:  # an arrow along the hair
            ahead = ARROW if moment.bow is Bow.DOWN else -ARROW
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour)
            painter.drawPolygon([QPointF(x + ahead, middle), QPointF(x, middle - 5), QPointF(x, middle + 5)])
        painter.setPen(QPen(colour, 3))
        painter.drawLine(QPointF(x, middle - 9), QPointF(x, middle + 8))
        painter.setPen(QPen(QColor(self._theme.text), 2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        painter.drawPolyline(_sign(moment.bow, self.width() - SIGN + 5, middle - 8))


def _sign(bow: Bow, x: float, y: float) -> list[QPointF]:
    """The bow mark of a stroke, 12 pixels wide."""
    if bow is Bow.DOWN:
        return [QPointF(x, y + 13), QPointF(x, y), QPointF(x + 12, y), QPointF(x + 12, y + 13)]
    return [QPointF(x, y), QPointF(x + 6, y + 14), QPointF(x + 12, y)]
