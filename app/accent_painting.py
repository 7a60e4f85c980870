"""The accent strip under the lines, its shapes told apart by form alone: they read in grey, without seeing colours.

A driven accent is a full wedge pointing down, one on an up-bow an open wedge pointing up, a buried one a dot under an
arch, as a note lies under a slur, and one that is not struck an empty ring.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache
from weakref import WeakKeyDictionary

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPixmap

from app.accent_strip import Accented, Place, place_x
from app.page_layout import SIDE_MARGIN, STRIP_HEIGHT, PlacedLine
from app.theme import LIGHT, Theme, mix
from core.accents import Met
from core.check import Severity
from core.engraving.picture import STAFF_SPACE, Picture
from core.tune import Tune

SIZE = 1.15 * STAFF_SPACE
SMALL = 0.74  # of two shapes side by side
PEN = 0.14  # of the size
BAND_GAP = 40  # between the strip of a bar and the bar line
STAMP_ROOM = 1.1  # a stamp's half width, in sizes
APART = 1.2 * STAFF_SPACE  # between the middles of two shapes


@lru_cache(maxsize=256)
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


class StripPainter:
    """Paints the strips of a page; keeps a stamp of each shape, for a page shows dozens and is painted with each click.

    Attributes:
        theme: Colours.
    """

    def __init__(self) -> None:
        self._stamps: dict[tuple[Met, ...], tuple[QPixmap, float]] = {}
        self._places: WeakKeyDictionary[Picture, dict[Place, float | None]] = WeakKeyDictionary()
        self.theme: Theme = LIGHT

    @property
    def theme(self) -> Theme:
        return self._theme

    @theme.setter
    def theme(self, theme: Theme) -> None:
        self._theme = theme
        self.forget_stamps()

    def forget_stamps(self) -> None:
        """To be called when zoom or screen are others."""
        self._stamps.clear()

    def paint(
        self,
        painter: QPainter,
        tune: Tune,
        placed_lines: Iterable[PlacedLine],
        accents: Mapping[Place, Accented],
        possible: Place | None,
        scale: float,
    ) -> None:
        """Paint a soft band under each bar and a shape at each accented place; the painter's unit is a pixel.

        Args:
            possible: The place that a click would accent or no more; it is framed.
            scale: Pixels a picture unit.
        """
        ground = mix(self._theme.line, self._theme.paper, 0.3)
        half = STRIP_HEIGHT / 2 * scale
        lines: dict[int, tuple[PlacedLine, float]] = {}  # by bar: its line and the middle of the strip, in pixels
        for placed in placed_lines:
            if placed.picture is None or placed.strip is None:
                continue
            y = placed.strip * scale
            lines |= dict.fromkeys(range(placed.line.first, placed.line.stop), (placed, y))
            for staff in placed.picture.measures.values():
                left, right = ((SIDE_MARGIN + x) * scale for x in (staff.left + BAND_GAP, staff.right - BAND_GAP))
                painter.fillRect(QRect(round(left), round(y - half), round(right - left), round(2 * half)), ground)
            if possible is not None:
                self._paint_frame(painter, tune, placed, possible, scale)
        ratio = painter.device().devicePixelRatioF()
        for place, there in accents.items():
            if place[0] not in lines:
                continue
            placed, y = lines[place[0]]
            x = self._x(tune, placed, place)
            if x is not None:
                stamp, middle = self._stamp(there.shown, scale, ratio)
                # whole device pixels: sharper, and painted faster
                left, top = (round((at - middle) * ratio) / ratio for at in (x * scale, y))
                painter.drawPixmap(QPointF(left, top), stamp)

    def _paint_frame(self, painter: QPainter, tune: Tune, placed: PlacedLine, place: Place, scale: float) -> None:
        x = self._x(tune, placed, place)
        if x is None or placed.strip is None:
            return
        half = STRIP_HEIGHT / 2 * scale - 1
        painter.setBrush(mix(self._theme.tint, self._theme.paper, 0.22))
        painter.setPen(QPen(QColor(self._theme.tint), 1.5, Qt.PenStyle.DashLine))
        painter.drawRoundedRect(QRectF(x * scale - half, placed.strip * scale - half, 2 * half, 2 * half), 3, 3)

    def _x(self, tune: Tune, placed: PlacedLine, place: Place) -> float | None:
        """x of a place on the page; None where the line does not hold it."""
        if placed.picture is None or not placed.line.first <= place[0] < placed.line.stop:
            return None
        known = self._places.setdefault(placed.picture, {})
        if place not in known:
            x = place_x(tune, placed.picture, place)
            known[place] = None if x is None else SIDE_MARGIN + x
        return known[place]

    def _stamp(self, shown: tuple[Met, ...], scale: float, device_ratio: float) -> tuple[QPixmap, float]:
        """A stamp, and how far its middle lies from its corner, in pixels."""
        known = self._stamps.get(shown)
        if known is None:
            side = round(2 * STAMP_ROOM * SIZE * scale * device_ratio)
            stamp = QPixmap(side, side)
            stamp.setDevicePixelRatio(device_ratio)
            stamp.fill(Qt.GlobalColor.transparent)
            with QPainter(stamp) as painter:
                painter.setRenderHint(QPainter.RenderHint.Antialiasing)
                middle = side / 2 / device_ratio
                painter.translate(middle, middle)
                painter.scale(scale, scale)
                paint_met(painter, 0, 0, shown, self._theme)
            known = self._stamps[shown] = stamp, middle
        return known
