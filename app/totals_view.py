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
from core.translation import number, percent, plural, tr

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
        self.setAccessibleName(tr("Totals"))
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


def spaced_percent(share: float) -> str:
    """A share as a figure, with room before the sign, such as "92 %"."""
    return tr("{n} %", n=round(100 * share))


def figures(totals: Totals, reach: Reach) -> Figures:
    """Figure and word of each total, in rows."""
    return (
        (
            (str(totals.strokes), plural("stroke", "strokes", totals.strokes, "under a figure")),
            (tr("{seconds} s", seconds=number(reach.longest_s, ".1f")), tr("longest", "stroke; under a figure")),
            (str(totals.slurs), plural("slur", "slurs", totals.slurs, "under a figure")),
            (str(totals.retakes), plural("retake", "retakes", totals.retakes, "under a figure")),
        ),
        (
            (str(totals.driven), tr("driven", "accents; under a figure")),
            (str(totals.up), tr("on up-bow", "accents; under a figure")),
            (str(totals.buried), tr("buried", "accents; under a figure")),
            (str(totals.unstruck), tr("unstruck", "accents; under a figure")),
        ),
        (
            (spaced_percent(totals.consistency), tr("consistent", "under a figure")),
            (tr("Yes") if totals.comes_round else tr("No"), tr("comes round", "under a figure")),
            (bow_used(reach), at_speed(reach)),
        ),
    )


def totals_sentence(totals: Totals, reach: Reach) -> str:
    """All totals in one sentence, for screen readers."""
    return tr(
        "{strokes}, {slurs}, {retakes}; accents: {driven} driven, {up} on an up-bow, {buried} buried, {unstruck} "
        "unstruck; {consistency} consistent; comes round; longest stroke {seconds} seconds, {used} of bow {speed}."
        if totals.comes_round
        else "{strokes}, {slurs}, {retakes}; accents: {driven} driven, {up} on an up-bow, {buried} buried, {unstruck} "
        "unstruck; {consistency} consistent; does not come round; longest stroke {seconds} seconds, {used} of bow "
        "{speed}.",
        strokes=plural("1 stroke", "{n} strokes", totals.strokes),
        slurs=plural("1 slur", "{n} slurs", totals.slurs),
        retakes=plural("1 retake", "{n} retakes", totals.retakes),
        driven=totals.driven, up=totals.up, buried=totals.buried, unstruck=totals.unstruck,
        consistency=percent(totals.consistency), seconds=number(reach.longest_s, ".1f"),
        used=bow_used(reach), speed=at_speed(reach),
    )  # fmt: skip
