"""Chooses one tune of a book."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import (
    QAbstractTableModel,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSortFilterProxyModel,
    Qt,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.window_layout import fitting
from core.lesson import AS_WRITTEN, Lesson
from core.translation import plural, tr, translatable

Index = QModelIndex | QPersistentModelIndex
RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
ROWS_MEASURED, ARROW = 50, 36  # pixels beside the word of a heading, for its edges and the arrow of the order
COLUMNS = translatable(("Number", "Title", "Dance", "Key", "Metre"))


class TunesModel(QAbstractTableModel):
    """The tunes of a book, one a row."""

    def __init__(self, lessons: Sequence[Lesson], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._lessons = tuple(lessons)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's own signature)
        return 0 if parent.isValid() else len(self._lessons)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if role == Qt.ItemDataRole.DisplayRole and orientation is Qt.Orientation.Horizontal:
            return tr(COLUMNS[section])
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        lesson = self._lessons[index.row()]
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() == 0:
            return RIGHT
        if role == Qt.ItemDataRole.UserRole:  # what sorting goes by
            return lesson.tune.number if index.column() == 0 else _cells(lesson)[index.column()].casefold()
        if role == Qt.ItemDataRole.DisplayRole:
            return _cells(lesson)[index.column()]
        return None

    def matches(self, row: int, words: Sequence[str]) -> bool:
        """Whether every word stands somewhere in a tune's titles, bowing, dance, key or number."""
        lesson = self._lessons[row]
        text = " ".join((*_cells(lesson), *lesson.tune.other_titles)).casefold()
        return all(word in text for word in words)


class _Filter(QSortFilterProxyModel):
    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.setSortRole(Qt.ItemDataRole.UserRole)
        self._words: tuple[str, ...] = ()

    def set_words(self, text: str) -> None:
        self._words = tuple(text.casefold().split())
        self.invalidate()

    def filterAcceptsRow(self, row: int, parent: Index) -> bool:
        model = self.sourceModel()
        assert isinstance(model, TunesModel)
        return model.matches(row, self._words)


class TuneChooser(QDialog):
    """A dialog with the tunes of a book and a line to find one by any word.

    Args:
        name: What the book is called.
        lessons: Its tunes.
    """

    def __init__(self, name: str, lessons: Sequence[Lesson], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Choose a tune of {name}", name=name))
        self.resize(fitting(self, 640, 460))
        self._count = len(lessons)
        self.filter = QLineEdit()
        self.filter.setPlaceholderText(tr("Find by title, dance, key or number"))
        self.filter.setAccessibleName(tr("Find a tune"))
        self.filter.setClearButtonEnabled(True)
        self.filter.textChanged.connect(self._on_text_changed)
        self.filter.installEventFilter(self)
        self._rows = _Filter(self)
        self._rows.setSourceModel(TunesModel(lessons, self))
        self.table = QTableView()
        self.table.setAccessibleName(tr("Tunes"))
        self.table.setModel(self._rows)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setSortingEnabled(True)
        self.table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        self.table.setShowGrid(False)
        self.table.setTabKeyNavigation(False)
        self.table.verticalHeader().hide()
        header = self.table.horizontalHeader()
        header.setResizeContentsPrecision(ROWS_MEASURED)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        header.setMinimumSectionSize(header.fontMetrics().horizontalAdvance(tr(COLUMNS[0])) + ARROW)
        self.table.horizontalHeader().setHighlightSections(False)
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.table.activated.connect(self.accept)
        self._found = QLabel()
        self._found.setProperty("rank", "quiet")
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Open | QDialogButtonBox.StandardButton.Cancel)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        for widget in (self.filter, self.table, self._found, self.buttons):
            column.addWidget(widget)
        self._on_text_changed("")

    @property
    def chosen(self) -> int | None:
        """Index of the chosen lesson, or None."""
        rows = self.table.selectionModel().selectedRows()
        return self._rows.mapToSource(rows[0]).row() if rows else None

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let the arrow keys walk the table while the finding line has the keyboard."""
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()))
            if step is not None and self._rows.rowCount():
                row = self.table.currentIndex().row() + step
                self.table.selectRow(min(max(row, 0), self._rows.rowCount() - 1))
                return True
        return super().eventFilter(watched, event)

    def _on_text_changed(self, text: str) -> None:
        self._rows.set_words(text)
        found = self._rows.rowCount()
        if found and self.chosen is None:
            self.table.selectRow(0)
        self._found.setText(
            plural("{found} of 1 tune", "{found} of {n} tunes", self._count, found=found)
            if text.strip()
            else plural("1 tune", "{n} tunes", self._count)
        )
        self.buttons.button(QDialogButtonBox.StandardButton.Open).setEnabled(found > 0)


def _cells(lesson: Lesson) -> tuple[str, ...]:
    """Texts of a row; a bowing that has a name of its own stands beside the title."""
    tune, first = lesson.tune, lesson.tune.bars[0]
    title = tune.title or tr("Untitled")
    if lesson.bowings[0].name != AS_WRITTEN:
        title = f"{title} ({lesson.bowings[0].name})"
    return (str(tune.number), title, tune.dance, str(first.key), str(first.meter))
