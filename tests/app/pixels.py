"""What is painted, pixel by pixel."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRect
from PySide6.QtGui import QColor, QImage, QPainter

from app.painting import PRINT_INKS
from core.engraving.picture import Box, Picture

SCALE = 0.1  # pixels a picture unit


def painted(picture: Picture, *paints: Callable[[QPainter], object], paper: QColor = PRINT_INKS.paper) -> QImage:
    """An image of the picture's size on which some things have been painted."""
    image = QImage(int(picture.width * SCALE) + 1, int(picture.height * SCALE) + 1, QImage.Format.Format_RGB32)
    image.fill(paper)
    painter = QPainter(image)
    painter.scale(SCALE, SCALE)
    for paint in paints:
        paint(painter)
    painter.end()
    return image


def darkest(image: QImage, box: Box) -> int:
    """Darkest grey, 0 to 255, in a box of picture units."""
    place = QRect(int(box.left * SCALE), int(box.top * SCALE), int(box.width * SCALE), int(box.height * SCALE))
    return min(
        image.pixelColor(x, y).lightness()
        for x in range(max(place.left(), 0), min(place.right() + 1, image.width()))
        for y in range(max(place.top(), 0), min(place.bottom() + 1, image.height()))
    )
