"""How sure each bar of a proposal is, under it: a full disc, a half one or a ring, and the word beside it.

They stand among the accents, where most room is left between them; under the line where accents are hidden.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen

from app.accent_strip import place_x
from app.page_layout import SIDE_MARGIN, PlacedLine
from app.page_rows import Row
from app.preview_painting import BRACKET_DROP, bar_box
from app.sureness import Sureness, sure_word, sureness
from app.theme import Theme
from core.engraving.picture import STAFF_SPACE, Box

WORD_SIZE = 1.3 * STAFF_SPACE
SMALLEST = 9  # pixels
DISC = 0.62  # of the size of the words, across
LOWER = 0.35  # of the size of the words, below the line of the bracket: over it are the shapes of the accents
GAP = 0.35  # of the size of the words, beside disc and word
ACCENT_ROOM = 1.6 * STAFF_SPACE  # about the shape of an accent, or two of other passes


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
    row: Row,
    sure: Mapping[int, float],
    here: int | None,
    scale: float,
    theme: Theme,
) -> None:
    """A shape and a word under each proposed bar; ``here`` is the bar that is told now. The painter's unit is a pixel.

    Where there is no room for the word, the shape stands alone.
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
            if bar not in sure or (box := bar_box(placed, bar)) is None:
                continue
            left, right = (x * scale for x in free_room(row, placed, bar, box))
            word, across = sure_word(sure[bar]), DISC * size
            width = across + measures.horizontalAdvance(word) + GAP * size
            if width + 2 * GAP * size > right - left:
                word, width = "", across
            start = (left + right - width) / 2
            y = placed.strip * scale if placed.strip is not None else (box.bottom + BRACKET_DROP) * scale + LOWER * size
            if placed.strip is None:
                ground = QRectF(start, y - size / 2, width, size)
                painter.fillRect(ground.adjusted(-GAP * size, 0, GAP * size, 0), QColor(theme.paper))
            ink = QColor(theme.tint if bar == here else theme.ink)
            filled, ring = sure_shape(sureness(sure[bar]), QPointF(start + across / 2, y), across)
            painter.fillPath(filled, ink)
            painter.strokePath(ring, QPen(ink, max(size / 9, 1)))
            painter.setPen(ink)
            painter.drawText(QPointF(start + across + GAP * size, y + measures.capHeight() / 2), word)


def free_room(row: Row, placed: PlacedLine, bar: int, box: Box) -> tuple[float, float]:
    """The widest stretch of a bar's strip without an accent, left and right, in units of the page."""
    if placed.picture is None or placed.strip is None:
        return box.left, box.right
    tune, half = row.here.tune, ACCENT_ROOM / 2
    places = (place_x(tune, placed.picture, place) for place in row.accents if place[0] == bar)
    taken = sorted(SIDE_MARGIN + x for x in places if x is not None)
    starts = [box.left, *(x + half for x in taken)]
    stops = [*(x - half for x in taken), box.right]
    return max(zip(starts, stops, strict=True), key=lambda room: room[1] - room[0])
