"""The findings as a Qt list: a thin adapter, and the delegate that paints a row."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from enum import IntEnum

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPoint,
    QRect,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPixmap
from PySide6.QtWidgets import QAbstractItemView, QStyledItemDelegate, QStyleOptionViewItem

from app.severity_signs import WORDS, paint_severity
from app.theme import LIGHT, Theme, mix
from core.check import RULES, Finding
from core.translation import plural, tr

Index = QModelIndex | QPersistentModelIndex
PAD = 8  # pixels around the texts of a row
SIGN = 14  # side of the severity sign
TEXT_LEFT = PAD + SIGN + 8
ROWS_KEPT = 300


class Role(IntEnum):
    """Data of a row beyond its text."""

    FINDING = Qt.ItemDataRole.UserRole
    IS_OF_NOTE = Qt.ItemDataRole.UserRole + 1  # the focus note of the page is among its notes


class FindingsModel(QAbstractListModel):
    """Findings in the order of the report."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._findings: tuple[Finding, ...] = ()
        self._note_id = ""

    @property
    def findings(self) -> tuple[Finding, ...]:
        return self._findings

    def show_findings(self, findings: Sequence[Finding]) -> None:
        """Show other findings; rows that stay keep their selection and place."""
        old, new = self._findings, tuple(findings)
        head = 0
        while head < min(len(old), len(new)) and old[head] == new[head]:
            head += 1
        tail = 0
        while tail < min(len(old), len(new)) - head and old[-1 - tail] == new[-1 - tail]:
            tail += 1
        if len(old) - tail > head:
            self.beginRemoveRows(QModelIndex(), head, len(old) - tail - 1)
            self._findings = old[:head] + old[len(old) - tail :]
            self.endRemoveRows()
        if len(new) - tail > head:
            self.beginInsertRows(QModelIndex(), head, len(new) - tail - 1)
            self._findings = new
            self.endInsertRows()
        self._findings = new  # the remedies of equal findings may be other functions

    def show_note(self, note_id: str) -> list[int]:
        """Highlight the findings about a note.

        Returns:
            Their rows.
        """
        before, self._note_id = self._rows_of(self._note_id), note_id
        rows = self._rows_of(note_id)
        for row in set(before) ^ set(rows):
            self.dataChanged.emit(self.index(row), self.index(row), [Role.IS_OF_NOTE])
        return rows

    def _rows_of(self, note_id: str) -> list[int]:
        return [row for row, finding in enumerate(self._findings) if note_id in finding.notes] if note_id else []

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's own signature)
        return 0 if parent.isValid() else len(self._findings)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        finding = self._findings[index.row()]
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return f"{heading_text(finding)}: {finding.text}"
            case Qt.ItemDataRole.ToolTipRole:
                return why_text(finding)
            case Role.FINDING:
                return finding
            case Role.IS_OF_NOTE:
                return bool(self._note_id) and self._note_id in finding.notes
        return None


class FindingDelegate(QStyledItemDelegate):
    """Paints a finding: sign and word of its severity, where it is, and its sentence.

    Rows are painted once and kept as pixmaps: an edit repaints the whole list, and most of it looks as before.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.theme: Theme = LIGHT
        self._heights: dict[tuple[str, int], int] = {}
        self._rows: OrderedDict[tuple[object, ...], QPixmap] = OrderedDict()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        finding: Finding = index.data(Role.FINDING)
        view = option.widget
        room = view.viewport().width() if isinstance(view, QAbstractItemView) else 300
        width = room - TEXT_LEFT - PAD
        key = finding.text, width
        height = self._heights.get(key)
        if height is None:
            metrics = QFontMetrics(option.font)
            text = metrics.boundingRect(QRect(0, 0, max(width, 60), 10_000), _WRAP, finding.text)
            height = self._heights[key] = text.height() + metrics.height() + 2 * PAD + 2
        return QSize(100, height)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        finding: Finding = index.data(Role.FINDING)
        from PySide6.QtWidgets import QStyle  # not for the start: it brings eleven tables of names

        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        focused = chosen and bool(option.state & QStyle.StateFlag.State_HasFocus)
        of_note = bool(index.data(Role.IS_OF_NOTE))
        ratio = painter.device().devicePixelRatioF()
        size = option.rect.size()
        key = (
            finding.severity, where_text(finding), finding.text, chosen, focused, of_note,
            size.width(), size.height(), ratio, self.theme.name, option.font.key(),
        )  # fmt: skip
        row = self._rows.get(key)
        if row is None:
            row = QPixmap(size * ratio)
            row.setDevicePixelRatio(ratio)
            with QPainter(row) as inner:
                self._paint_row(inner, QRect(QPoint(0, 0), size), option.font, finding, chosen, focused, of_note)
            self._rows[key] = row
            if len(self._rows) > ROWS_KEPT:
                self._rows.popitem(last=False)
        else:
            self._rows.move_to_end(key)
        painter.drawPixmap(option.rect.topLeft(), row)

    def _paint_row(
        self, painter: QPainter, place: QRect, font: QFont, finding: Finding, chosen: bool, focused: bool, of_note: bool
    ) -> None:
        theme = self.theme
        ground = QColor(theme.tint_soft) if chosen else mix(theme.tint_soft, theme.field, 0.45 if of_note else 0)
        painter.fillRect(place, ground)
        if of_note:
            painter.fillRect(QRect(0, 0, 3, place.height()), QColor(theme.tint))
        if focused:
            painter.setPen(QColor(theme.tint))
            painter.drawRect(place.adjusted(0, 0, -1, -1))
        colour = QColor(theme.severities[finding.severity])
        metrics = QFontMetrics(font)
        line = metrics.height()
        paint_severity(painter, finding.severity, QRectF(PAD, PAD, SIGN, line), colour)
        width = place.width() - TEXT_LEFT - PAD
        bold = QFont(font)
        bold.setWeight(QFont.Weight.DemiBold)
        painter.setFont(bold)
        painter.setPen(colour)
        word = tr(WORDS[finding.severity], "severity")
        painter.drawText(QRect(TEXT_LEFT, PAD, width, line), Qt.AlignmentFlag.AlignLeft, word)
        used = QFontMetrics(bold).horizontalAdvance(word) + 8
        painter.setFont(font)
        painter.setPen(QColor(theme.quiet))
        where = metrics.elidedText(where_text(finding), Qt.TextElideMode.ElideRight, width - used)
        painter.drawText(QRect(TEXT_LEFT + used, PAD, width - used, line), Qt.AlignmentFlag.AlignLeft, where)
        painter.setPen(QColor(theme.text))
        painter.drawText(QRect(TEXT_LEFT, PAD + line + 2, width, place.height() - line - PAD), _WRAP, finding.text)
        painter.setPen(QColor(theme.line))
        painter.drawLine(place.bottomLeft(), place.bottomRight())


_WRAP = int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignLeft) | int(Qt.AlignmentFlag.AlignTop)


def why_text(finding: Finding) -> str:
    """What the finding's rule is called and what it rests on."""
    rule = RULES[finding.rule]
    return tr("{title}. {why}", "of a rule", title=tr(rule.title), why=tr(rule.why))


def heading_text(finding: Finding) -> str:
    """Severity and place of a finding in words."""
    where = where_text(finding)
    word = tr(WORDS[finding.severity], "severity")
    return tr("{severity}, {where}", severity=word, where=where) if where else word


def where_text(finding: Finding) -> str:
    """The bars and pass of a finding, as "pick-up, bars 1–4, 7, pass 2"."""
    numbers = [number for number in dict.fromkeys(finding.bars) if number]
    words = [tr("pick-up")] if 0 in finding.bars else []
    if numbers:
        words.append(plural("bar {numbers}", "bars {numbers}", len(numbers), numbers=number_ranges(numbers)))
    if finding.pass_number is not None:
        words.append(tr("pass {number}", number=finding.pass_number))
    return tr(", ", "between parts of a sentence").join(words)


def number_ranges(numbers: Sequence[int]) -> str:
    """Numbers with runs drawn together.

    >>> number_ranges([1, 2, 3, 7])
    '1–3, 7'
    """
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(str(run[0]) if len(run) == 1 else f"{run[0]}–{run[-1]}" for run in runs)
