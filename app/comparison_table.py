"""The totals of the bowings that are compared, side by side: a column for each bowing, a row for each total."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QAbstractTableModel, QEvent, QModelIndex, QObject, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QFont, QPainter, QPalette, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from app.comparison import Comparison
from app.document import Document
from app.name_header import NameHeader
from core.check import Report
from core.translation import number, tr, translatable

Index = QModelIndex | QPersistentModelIndex
ROWS: tuple[tuple[str, Callable[[Report], str]], ...] = translatable(
    (
        ("Strokes", lambda report: str(report.totals.strokes)),
        ("Slurs", lambda report: str(report.totals.slurs)),
        ("Retakes", lambda report: str(report.totals.retakes)),
        ("Driven", lambda report: str(report.totals.driven)),
        ("On up-bow", lambda report: str(report.totals.up)),
        ("Buried", lambda report: str(report.totals.buried)),
        ("Unstruck", lambda report: str(report.totals.unstruck)),
        ("Consistent, %", lambda report: str(round(100 * report.totals.consistency))),
        ("Comes round", lambda report: tr("Yes") if report.totals.comes_round else tr("No")),
        ("Longest, s", lambda report: number(report.reach.longest_s, ".1f")),
    )
)
ROW_PAD = 6  # pixels over and under the words of a row
WIDEST_FIGURE = "8888"
NO_CORNER = "QTableCornerButton::section { background: transparent; border: none; }"
PLAIN = "QHeaderView::section { background: transparent; border: none; padding: 0 6px; }"


class ComparisonModel(QAbstractTableModel):
    """The figures of each bowing in a column; views are told of the figures that differ and of no others.

    Signals:
        marked: The columns of which some are told from or worked on now, and some no more.
    """

    marked = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._names: tuple[str, ...] = ()
        self._columns: tuple[tuple[str, ...], ...] = ()
        self._reports: tuple[Report, ...] = ()  # what the columns say
        self._active = self._reference = -1

    @property
    def figures(self) -> dict[str, tuple[str, ...]]:
        """The figures of each bowing, in the order of ``ROWS``, by its name."""
        return dict(zip(self._names, self._columns, strict=True))

    def show(self, names: Sequence[str], reports: Sequence[Report], active: int, reference: int) -> bool:
        """Show these bowings, one of them as the one that is worked on, one as that from which the others are told.

        Returns:
            Whether other bowings are shown, or another one is worked on or told from.
        """
        known = {id(report): column for report, column in zip(self._reports, self._columns, strict=True)}
        columns = tuple(known.get(id(report)) or figures_of(report) for report in reports)
        self._reports = tuple(reports)
        before, heads = self._columns, (self._names, self._active, self._reference)
        if len(columns) != len(before):
            self.beginResetModel()
        self._names, self._columns, self._active, self._reference = tuple(names), columns, active, reference
        if len(columns) != len(before):
            self.endResetModel()
            return True
        for place, (was, now) in enumerate(zip(before, columns, strict=True)):
            for row in (row for row, pair in enumerate(zip(was, now, strict=True)) if pair[0] != pair[1]):
                figure = self.createIndex(row, place)
                self.dataChanged.emit(figure, figure)
        if heads[0] != self._names and columns:
            self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(columns) - 1)
        elif heads != (self._names, active, reference):
            self.marked.emit(frozenset({*heads[1:], active, reference}))
        return heads != (self._names, active, reference)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's own signature)
        return 0 if parent.isValid() else len(ROWS)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        figure = self._columns[index.column()][index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return figure
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{self._names[index.column()]}, {ROWS[index.row()][0].lower()}: {figure}"
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return Qt.AlignmentFlag.AlignCenter
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if orientation is Qt.Orientation.Vertical:
            return tr(ROWS[section][0]) if role == Qt.ItemDataRole.DisplayRole else None
        if section >= len(self._names):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self._names[section]
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            name = self._names[section]
            if section == self._active == self._reference:
                return tr("{name}, worked on, the others are told from it", name=name)
            if section == self._active:
                return tr("{name}, worked on", name=name)
            return tr("{name}, the others are told from it", name=name) if section == self._reference else name
        if role == Qt.ItemDataRole.FontRole:
            font = QFont()
            font.setBold(section == self._active)
            font.setItalic(section == self._reference)
            return font
        return None


def figures_of(report: Report) -> tuple[str, ...]:
    """The figures of a bowing, in the order of ``ROWS``."""
    return tuple(figure(report) for _, figure in ROWS)


class FigureDelegate(QStyledItemDelegate):
    """Writes a figure in the middle of its cell: with each click some do, and a style asks much more of a cell."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        from PySide6.QtWidgets import QStyle  # not for the start: it brings eleven tables of names

        if option.state & QStyle.StateFlag.State_HasFocus:
            super().paint(painter, option, index)
            return
        painter.setFont(option.font)
        painter.setPen(option.palette.color(QPalette.ColorRole.Text))
        painter.drawText(option.rect, Qt.AlignmentFlag.AlignCenter, index.data())


class ComparisonTable(QTableView):
    """Shows the totals while bowings are compared, and is hidden else; a click on a name shows that bowing."""

    def __init__(self, document: Document, comparison: Comparison, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._comparison = comparison
        self.totals = ComparisonModel(self)
        self.setModel(self.totals)
        self.setItemDelegate(FigureDelegate(self))
        self.setAccessibleName(tr("Totals of the bowings that are compared"))
        self.setToolTip(tr("Click a name to work on that bowing: bold is the one worked on, slanted the one told from"))
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.names = NameHeader(self)
        self.setHorizontalHeader(self.names)
        self.names.sectionClicked.connect(self._on_name_clicked)
        self.totals.modelReset.connect(self._fit)
        self.totals.headerDataChanged.connect(self._fit)
        self.totals.marked.connect(self._show_marks)
        self.horizontalScrollBar().rangeChanged.connect(self._fit)
        self.verticalHeader().setHighlightSections(False)
        self.verticalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.verticalHeader().setStyleSheet(PLAIN)
        self.setCornerButtonEnabled(False)
        self.setStyleSheet(NO_CORNER)
        self._fit()
        self.hide()

    def show_totals(self) -> None:
        """Show the totals as they are now, where bowings are compared."""
        state, places = self._document.state, self._comparison.places
        runs = state is not None and self._comparison.runs
        if state is not None and runs:
            reference = self._comparison.reference
            names = [state.lesson.bowings[place].name for place in places]
            reports = [self._document.report(place) for place in places]
            told_from = places.index(reference) if reference is not None else -1
            active = places.index(state.shown)
            if self.totals.show(names, reports, active, told_from):
                self.scrollTo(self.totals.index(0, active))
        self.setVisible(runs)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._fit()

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), self.height())

    def _show_marks(self, columns: frozenset[int]) -> None:
        """Paint the names of columns anew; ``headerDataChanged`` would paint the whole table."""
        header = self.horizontalHeader()
        for column in columns:
            header.viewport().update(
                header.sectionViewportPosition(column), 0, header.sectionSize(column), header.height()
            )

    def _fit(self) -> None:
        """Be as high as all rows, in letters of this size, the names wrapped or turned so that all columns fit."""
        letters = self.fontMetrics()
        line = letters.height() + ROW_PAD
        self.verticalHeader().setMinimumSectionSize(line)
        self.verticalHeader().setDefaultSectionSize(line)
        room = self.width() - self.verticalHeader().sizeHint().width() - 2 * self.frameWidth()
        self.names.fit(room, WIDEST_FIGURE)
        bar = self.horizontalScrollBar()
        scrolls = bar.sizeHint().height() if bar.maximum() > 0 else 0
        self.setFixedHeight(scrolls + self.names.height() + line * len(ROWS) + 2 * self.frameWidth())

    def _on_name_clicked(self, column: int) -> None:
        self._document.show(self._comparison.places[column])
