"""How sure each bar of a proposal is, under it: a full disc, a half one or a ring, and the word beside it.

They stand on the bracket of a bar that changes, on paper of their own, and alone under a bar that does not.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen

from app.page_layout import PlacedLine
from app.preview_painting import BRACKET_DROP, bar_box
from app.sureness import Sureness, sure_word, sureness
from app.theme import Theme
from core.engraving.picture import STAFF_SPACE

WORD_SIZE = 1.3 * STAFF_SPACE
SMALLEST = 9  # pixels
DISC = 0.62  # of the size of the words, across
LOWER = 0.35  # of the size of the words, below the line of the bracket: over it are the shapes of the accents
GAP = 0.35  # of the size of the words, beside disc and word


def sure_shape(step: Sureness, middle: QPointF, across: float) -> tuple[QPainterPath, QPainterPath]:
    """The shape of a step round a place: what is filled, and what is drawn as a line."""
    round_it = QRectF(middle.x() - across / 2, middle.y() - across / 2, across, across)
    ring, filled = QPainterPath(), QPainterPath()
    ring.addEllipse(round_it)
    if step is Sureness.SURE:
        filled.addEllipse(round_it)
    elif step is Sureness.LIKELY:
        filled.moveTo(middle)
        filled.arcTo(round_it, 90, 180)
        filled.closeSubpath()
    return filled, ring


def paint_sureness(
    painter: QPainter,
    placed_lines: Sequence[PlacedLine],
    sure: Mapping[int, float],
    here: int | None,
    scale: float,
    theme: Theme,
) -> None:
    """A shape and a word under each proposed bar; ``here`` is the bar that is told now. The painter's unit is a pixel.

    Where a bar is too narrow for the word, the shape stands alone.
    """
    if not sure:
        return
    font = QFont(painter.font())
    size = max(round(WORD_SIZE * scale), SMALLEST)
    font.setPixelSize(size)
    measures = QFontMetricsF(font)
    painter.setFont(font)
    for placed in placed_lines:
        for bar in range(placed.line.first, placed.line.stop):
            box = bar_box(placed, bar) if bar in sure else None
            if box is None:
                continue
            word, across = sure_word(sure[bar]), DISC * size
            width = across + measures.horizontalAdvance(word) + GAP * size
            if width + 2 * GAP * size > box.width * scale:
                word, width = "", across
            y = (box.bottom + BRACKET_DROP) * scale + LOWER * size
            left = (box.left + box.right) / 2 * scale - width / 2
            ground = QRectF(left, y - size / 2, width, size)
            painter.fillRect(ground.adjusted(-GAP * size, 0, GAP * size, 0), QColor(theme.paper))
            ink = QColor(theme.tint if bar == here else theme.ink)
            filled, ring = sure_shape(sureness(sure[bar]), QPointF(left + across / 2, y), across)
            painter.fillPath(filled, ink)
            painter.strokePath(ring, QPen(ink, max(size / 9, 1)))
            painter.setPen(ink)
            middle = measures.capHeight() / 2
            painter.drawText(QPointF(left + across + GAP * size, y + middle), word)
