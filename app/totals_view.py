"""The totals of a bowing: figures with a word under each, painted as one piece because they change with every click.

What rests on an assumption, the bow used, says so under its figure.
"""

from __future__ import annotations

from math import ceil
from typing import TypeAlias

from PySide6.QtCore import QEvent, QPointF, QSize
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.bow_words import at_speed, bow_used
from app.theme import LIGHT, Theme, scaled_font
from core.check import Report, Totals
from core.reach import Reach

ROWS = 3
ROW_GAP = 8  # pixels
WORD_GAP = 4

Row: TypeAlias = tuple[tuple[str, str], ...]
Figures: TypeAlias = tuple[Row, ...]
"""Figure and word of each total, in rows."""


class TotalsView(QWidget):
    """Shows the totals of a ``Report``; the same in one sentence is its accessible description."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("Totals")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._report: Report | None = None
        self._figures: Figures = ()
        self._rows: Figures = ()
        self._theme = LIGHT
        self._take_font()

    @property
    def totals(self) -> Totals | None:
        return self._report.totals if self._report is not None else None

    @property
    def rows(self) -> Figures:
        """The rows as they stand: one whose words would run into each other is parted."""
        return self._rows

    def show_report(self, report: Report | None) -> None:
        """Show the totals of another report; none for no lesson."""
        self._report = report
        shown = figures(report.totals, report.reach) if report is not None else ()
        if shown != self._figures:
            self._figures = shown
            self._fit()
            self.setAccessibleDescription(totals_sentence(report.totals, report.reach) if report is not None else "")
            self.update()

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._theme = theme
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(260, self._height(len(self._figures) or ROWS))

    def minimumSizeHint(self) -> QSize:
        return QSize(220, self.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._fit()
        super().resizeEvent(event)

    def _fit(self) -> None:
        """Part the rows as this width asks, and be as high as they need."""
        self._rows = tuple(part for row in self._figures for part in self._parted(row))
        height = self._height(len(self._rows) or ROWS)
        if height != self.height():
            self.setFixedHeight(height)

    def _height(self, rows: int) -> int:
        return ceil(rows * self._line - ROW_GAP)

    def paintEvent(self, event: QPaintEvent) -> None:
        over, under = self._over, self._under
        placed = [
            (place * self.width() / len(row), self._line * number, figure, word)
            for number, row in enumerate(self._rows)
            for place, (figure, word) in enumerate(row)
        ]
        with QPainter(self) as painter:
            painter.setFont(self._large)
            painter.setPen(QColor(self._theme.text))
            for x, y, figure, _ in placed:
                painter.drawText(QPointF(x, y + over.ascent()), figure)
            painter.setFont(self._small)
            painter.setPen(QColor(self._theme.quiet))
            for x, y, _, word in placed:
                painter.drawText(QPointF(x, y + over.height() + under.ascent()), word)

    def changeEvent(self, event: QEvent) -> None:
        if event.type() is QEvent.Type.FontChange:
            self._take_font()
            self._fit()
        super().changeEvent(event)

    def _parted(self, row: Row) -> list[Row]:
        widest = max(max(self._over.horizontalAdvance(one), self._under.horizontalAdvance(word)) for one, word in row)
        side_by_side = len(row)
        while side_by_side > 1 and (widest + WORD_GAP) * side_by_side > self.width():
            side_by_side = (side_by_side + 1) // 2
        return [row[first : first + side_by_side] for first in range(0, len(row), side_by_side)]

    def _take_font(self) -> None:
        self._large, self._small = scaled_font(self.font(), 1.45), scaled_font(self.font(), 0.9)
        self._large.setWeight(QFont.Weight.DemiBold)
        self._over, self._under = QFontMetricsF(self._large), QFontMetricsF(self._small)
        self._line = self._over.height() + self._under.height() + ROW_GAP


def figures(totals: Totals, reach: Reach) -> Figures:
    """Figure and word of each total, in rows."""
    return (
        (
            (str(totals.strokes), _plural(totals.strokes, "stroke")),
            (f"{reach.longest_s:.1f} s", "longest"),
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
            (bow_used(reach), at_speed(reach)),
        ),
    )


def totals_sentence(totals: Totals, reach: Reach) -> str:
    """All totals in one sentence, for screen readers."""
    round_again = "comes round" if totals.comes_round else "does not come round"
    return (
        f"{totals.strokes} {_plural(totals.strokes, 'stroke')}, {totals.slurs} {_plural(totals.slurs, 'slur')}, "
        f"{totals.retakes} {_plural(totals.retakes, 'retake')}; accents: {totals.driven} driven, {totals.up} on an "
        f"up-bow, {totals.buried} buried, {totals.unstruck} unstruck; {totals.consistency:.0%} consistent; "
        f"{round_again}; longest stroke {reach.longest_s:.1f} seconds, {bow_used(reach)} of bow {at_speed(reach)}."
    )


def _plural(count: int, word: str) -> str:
    return word if count == 1 else word + "s"
