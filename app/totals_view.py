"""The totals of a bowing: figures with a word under each, painted as one piece because they change with every click."""

from __future__ import annotations

from math import ceil

from PySide6.QtCore import QPointF, QSize
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme import LIGHT, Theme, scaled_font
from core.check import Totals

ROWS = 3
ROW_GAP = 8  # pixels


class TotalsView(QWidget):
    """Shows ``Totals``; the same in one sentence is its accessible description."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("Totals")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._totals: Totals | None = None
        self._theme = LIGHT

    @property
    def totals(self) -> Totals | None:
        return self._totals

    def show_totals(self, totals: Totals | None) -> None:
        """Show other totals; none for no lesson."""
        if totals != self._totals:
            self._totals = totals
            self.setAccessibleDescription("" if totals is None else totals_sentence(totals))
            self.update()

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._theme = theme
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(260, ROWS * self._row_height() + (ROWS - 1) * ROW_GAP)

    def minimumSizeHint(self) -> QSize:
        return QSize(220, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._totals is None:
            return
        large, small = self._fonts()
        over, under = QFontMetricsF(large), QFontMetricsF(small)
        line = over.height() + under.height() + ROW_GAP
        placed = [
            (place * self.width() / len(row), line * number, figure, word)
            for number, row in enumerate(figures(self._totals))
            for place, (figure, word) in enumerate(row)
        ]
        with QPainter(self) as painter:
            painter.setFont(large)
            painter.setPen(QColor(self._theme.text))
            for x, y, figure, _ in placed:
                painter.drawText(QPointF(x, y + over.ascent()), figure)
            painter.setFont(small)
            painter.setPen(QColor(self._theme.quiet))
            for x, y, _, word in placed:
                painter.drawText(QPointF(x, y + over.height() + under.ascent()), word)

    def _fonts(self) -> tuple[QFont, QFont]:
        large, small = scaled_font(self.font(), 1.45), scaled_font(self.font(), 0.9)
        large.setWeight(QFont.Weight.DemiBold)
        return large, small

    def _row_height(self) -> int:
        large, small = self._fonts()
        return ceil(QFontMetricsF(large).height() + QFontMetricsF(small).height())


def figures(totals: Totals) -> tuple[tuple[tuple[str, str], ...], ...]:
    """Figure and word of each total, in rows."""
    return (
        (
            (str(totals.strokes), _plural(totals.strokes, "stroke")),
            (str(totals.slurs), _plural(totals.slurs, "slur")),
            (str(totals.retakes), _plural(totals.retakes, "retake")),
        ),
        (
            (str(totals.driven), "driven"),
            (str(totals.up), "on up-bow"),
            (str(totals.buried), "buried"),
            (str(totals.unstruck), "unstruck"),
        ),
        (
            (f"{totals.consistency:.0%}".replace("%", " %"), "consistent"),
            ("Yes" if totals.comes_round else "No", "comes round"),
        ),
    )


def totals_sentence(totals: Totals) -> str:
    """All totals in one sentence, for screen readers."""
    round_again = "comes round" if totals.comes_round else "does not come round"
    return (
        f"{totals.strokes} {_plural(totals.strokes, 'stroke')}, {totals.slurs} {_plural(totals.slurs, 'slur')}, "
        f"{totals.retakes} {_plural(totals.retakes, 'retake')}; accents: {totals.driven} driven, {totals.up} on an "
        f"up-bow, {totals.buried} buried, {totals.unstruck} unstruck; {totals.consistency:.0%} consistent; "
        f"{round_again}."
    )


def _plural(count: int, word: str) -> str:
    return word if count == 1 else word + "s"
