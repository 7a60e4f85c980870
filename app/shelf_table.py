"""The list of tunes on the shelf: a row is opened with Enter or a double click, status and tags are edited in place."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QPoint, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemDelegate, QAbstractItemView, QHeaderView, QMenu, QTableView, QWidget

from app.shelf_model import COLUMNS, EDITABLE, NO_STATUS, STATUS, TAGS, TITLE, ShelfModel, StatusDelegate
from core.shelf.remarks import STATUSES
from core.shelf.search import Entry
from core.translation import tr

LETTERS = (22, 9, 8, 7, 10, 16, 24, 14)  # width of each column in average letters; the title takes what is left
HEADING_EDGES, CELL_EDGES = 20, 14  # pixels beside the words of a heading and of a cell
EDIT_KEYS = {Qt.Key.Key_S: STATUS, Qt.Key.Key_T: TAGS}


class ShelfTable(QTableView):
    """A table over a ``ShelfModel``.

    Signals:
        opened: The ``Entry`` that the user wants to open.
        order_wanted: Name of an order of ``core.shelf.search.ORDERS``.
    """

    opened = Signal(object)
    order_wanted = Signal(str)

    def __init__(self, model: ShelfModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self._menu: QMenu | None = None
        self.setModel(model)
        self.setAccessibleName(tr("Tunes on the shelf"))
        self.setItemDelegateForColumn(STATUS, StatusDelegate(self))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + 9)
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionsClickable(True)
        header.sectionClicked.connect(self._on_heading_clicked)
        header.setSectionResizeMode(TITLE, QHeaderView.ResizeMode.Fixed)
        letter = self.fontMetrics().averageCharWidth()
        for column, letters in enumerate(LETTERS):
            heading = header.fontMetrics().horizontalAdvance(tr(COLUMNS[column][0])) + HEADING_EDGES
            self.setColumnWidth(column, max(letters * letter + CELL_EDGES, heading))
        self.doubleClicked.connect(self._on_double_clicked)

    @property
    def current(self) -> Entry | None:
        """The chosen tune."""
        index = self.currentIndex()
        return self._model.entries[index.row()] if index.isValid() else None

    @property
    def is_edited(self) -> bool:
        """Whether something is being typed into a cell."""
        return self.state() == QAbstractItemView.State.EditingState

    def choose(self, row: int, tune: int | None = None) -> None:
        """Choose the row of a tune, where it is listed, else a row by its place, or the last before it."""
        entries = self._model.entries
        found = next((place for place, entry in enumerate(entries) if entry.id == tune), min(row, len(entries) - 1))
        if found >= 0:
            self.setCurrentIndex(self._model.index(found, TITLE))

    def step(self, rows: int) -> None:
        """Choose a row further down or up."""
        self.choose(max(self.currentIndex().row() + rows, 0))

    def edit_column(self, column: int) -> None:
        """Edit status or tags of the chosen tune."""
        if self.current is not None:
            index = self._model.index(self.currentIndex().row(), column)
            self.setCurrentIndex(index)
            self.edit(index)

    def open_current(self) -> None:
        """Say that the chosen tune is wanted."""
        if self.current is not None:
            self.opened.emit(self.current)

    # ------------------------------------------------------------------------------------------------- Qt events

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.ShortcutOverride and _edits(event):
            event.accept()  # F2 is a key of the window too
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if self.is_edited:
            super().keyPressEvent(event)  # Enter ends the typing and comes here all the same
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.open_current()
        elif _edits(event):
            column = self.currentIndex().column()
            self.edit_column(EDIT_KEYS.get(key, column if column in EDITABLE else TAGS))
        else:
            super().keyPressEvent(event)

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        """Go back to the title, which may have been pushed out of sight."""
        super().closeEditor(editor, hint)
        self.choose(self.currentIndex().row())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the title what the others leave."""
        super().resizeEvent(event)
        others = sum(self.columnWidth(column) for column in range(1, len(COLUMNS)))
        least = LETTERS[TITLE] * self.fontMetrics().averageCharWidth() + CELL_EDGES
        self.setColumnWidth(TITLE, max(least, self.viewport().width() - others))

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if self.current is not None:
            by_key = event.reason() is QContextMenuEvent.Reason.Keyboard
            below = self.visualRect(self.currentIndex()).bottomLeft()
            self._show_menu(self.viewport().mapToGlobal(below) if by_key else event.globalPos())

    def keyboardSearch(self, search: str) -> None:
        """Letters are keys here; what is looked for is typed into the search line."""

    def _show_menu(self, place: QPoint) -> None:
        menu = self._menu = QMenu(self)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.addAction(tr("&Open"), self.open_current)
        statuses = menu.addMenu(tr("&Status"))
        current = self.current
        for status in (NO_STATUS, *STATUSES):
            action = statuses.addAction(tr(status), lambda status=status: self._set_status(status))
            action.setCheckable(True)
            action.setChecked(current is not None and (current.status or NO_STATUS) == status)
        menu.addAction(tr("&Tags…"), lambda: self.edit_column(TAGS))
        orders = menu.addMenu(tr("Order &by"))
        for heading, order in COLUMNS:
            if order:
                orders.addAction(tr(heading), lambda order=order: self.order_wanted.emit(order))
        menu.popup(place)

    def _set_status(self, status: str) -> None:
        self._model.setData(self._model.index(self.currentIndex().row(), STATUS), status)

    def _on_double_clicked(self, index: QModelIndex) -> None:
        if index.column() in EDITABLE:
            self.edit(index)
        else:
            self.open_current()

    def _on_heading_clicked(self, column: int) -> None:
        if order := COLUMNS[column][1]:
            self.order_wanted.emit(order)


def _edits(event: QKeyEvent) -> bool:
    key = Qt.Key(event.key())
    return key == Qt.Key.Key_F2 or (key in EDIT_KEYS and event.modifiers() == Qt.KeyboardModifier.NoModifier)
