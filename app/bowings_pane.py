"""The lesson's bowings: which is on the page, and adding, copying, naming, ordering and deleting them.

Every change is an edit of the document; the list shows what the document announces and never changes by itself.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from PySide6.QtCore import (
    QAbstractListModel,
    QMimeData,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QFont
from PySide6.QtWidgets import (
    QAbstractItemView,
    QLabel,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.comparison import Comparison
from app.document import Document, State
from app.flow_row import FlowRow
from core.bowing import separate_bows
from core.errors import RefusedEditError
from core.lesson import Lesson, add_bowing, delete_bowing, move_bowing, rename_bowing
from core.translation import tr, translatable

Index = QModelIndex | QPersistentModelIndex
ROW_MIME = "application/x-bowbench-bowing-row"
NEW_NAME = translatable("Separate bows")
MOST_ROWS_SHOWN = 6
TIP = translatable(
    "Choose the bowing on the page; tick others to compare them with it; double-click to rename, drag to reorder"
)


class BowingsModel(QAbstractListModel):
    """Names of the bowings; renaming and dropping go out as requests.

    Signals:
        rename_wanted: (row, new name).
        move_wanted: (row, row to move it to).
        compare_wanted: (row, whether it is to be compared).
    """

    rename_wanted = Signal(int, str)
    move_wanted = Signal(int, int)
    compare_wanted = Signal(int, bool)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._names: tuple[str, ...] = ()
        self._shown = -1
        self._compared: tuple[int, ...] = ()

    def show_names(self, names: Sequence[str], shown: int, compared: tuple[int, ...] = ()) -> None:
        """Show other names, one of them as the one on the page, and tick those that are compared.

        Where only another one is on the page, views are told nothing: they would lay all rows out anew.
        """
        new = tuple(names), shown, compared
        if len(names) != len(self._names):
            self.beginResetModel()
            self._names, self._shown, self._compared = new
            self.endResetModel()
            return
        before = self._names, self._compared
        self._names, self._shown, self._compared = new
        if before != (self._names, self._compared):
            self.dataChanged.emit(self.index(0), self.index(len(names) - 1))

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's own signature)
        return 0 if parent.isValid() else len(self._names)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return self._names[index.row()]
        if role == Qt.ItemDataRole.AccessibleTextRole:
            name, is_compared = self._names[index.row()], index.row() in self._compared
            if index.row() == self._shown:
                return tr("{name}, on the page, compared" if is_compared else "{name}, on the page", name=name)
            return tr("{name}, compared", name=name) if is_compared else name
        if role == Qt.ItemDataRole.CheckStateRole and len(self._names) > 1:
            return Qt.CheckState.Checked if index.row() in self._compared else Qt.CheckState.Unchecked
        if role == Qt.ItemDataRole.ToolTipRole:
            return tr(TIP)
        if role == Qt.ItemDataRole.FontRole and index.row() == self._shown:
            return bold_of(QFont())
        return None

    def setData(self, index: Index, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        if role == Qt.ItemDataRole.EditRole and str(value) != self._names[index.row()]:
            self.rename_wanted.emit(index.row(), str(value))
            return True
        if role == Qt.ItemDataRole.CheckStateRole and len(self._names) > 1:
            self.compare_wanted.emit(index.row(), Qt.CheckState(value) is Qt.CheckState.Checked)
            return True
        return False

    def flags(self, index: Index) -> Qt.ItemFlag:
        if not index.isValid():
            return Qt.ItemFlag.ItemIsDropEnabled  # between the rows only
        return (
            Qt.ItemFlag.ItemIsEnabled
            | Qt.ItemFlag.ItemIsSelectable
            | Qt.ItemFlag.ItemIsEditable
            | Qt.ItemFlag.ItemIsDragEnabled
            | Qt.ItemFlag.ItemIsUserCheckable
        )

    def supportedDropActions(self) -> Qt.DropAction:
        return Qt.DropAction.MoveAction

    def mimeTypes(self) -> list[str]:
        return [ROW_MIME]

    def mimeData(self, indexes: Sequence[QModelIndex]) -> QMimeData:
        data = QMimeData()
        data.setData(ROW_MIME, str(indexes[0].row()).encode())
        return data

    def dropMimeData(self, data: QMimeData, action: Qt.DropAction, row: int, column: int, parent: Index) -> bool:
        if not data.hasFormat(ROW_MIME):
            return False
        source = int(bytes(data.data(ROW_MIME).data()))
        before = row if row >= 0 else len(self._names)
        target = before - 1 if before > source else before
        if target != source:
            self.move_wanted.emit(source, target)
        return False  # the view must not take the dragged row away: the document says where it is


class NameDelegate(QStyledItemDelegate):
    """Keeps room in each row for its name in bold, so that no row changes its size when it comes to the page."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        option.font = bold_of(option.font)
        return super().sizeHint(option, index)


def bold_of(font: QFont) -> QFont:
    """The font as it is for the name of the bowing on the page."""
    bold = QFont(font)
    bold.setWeight(QFont.Weight.DemiBold)
    return bold


class BowingsPane(QWidget):
    """List of the bowings with its buttons.

    Signals:
        hinted: A sentence for the status line, such as why something was refused.
    """

    hinted = Signal(str)

    def __init__(self, document: Document, parent: QWidget | None = None, comparison: Comparison | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._comparison = comparison or Comparison(document, self)
        self._seen: tuple[list[str], int, tuple[int, ...]] | None = None
        self._marked: set[int] = set()  # rows that came to the page or left it, to be painted anew
        self._paint_marks_soon = QTimer(self, singleShot=True, interval=0)  # page and totals are painted first
        self._paint_marks_soon.timeout.connect(self._paint_marks)
        self.model = BowingsModel(self)
        self.model.rename_wanted.connect(self.rename)
        self.model.move_wanted.connect(self.put_at)
        self.model.compare_wanted.connect(self._comparison.put)
        self.list = QListView()
        self.list.setAccessibleName(tr("Bowings of this lesson"))
        self.list.setModel(self.model)
        self.list.setItemDelegate(NameDelegate(self.list))
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.DoubleClicked)
        self.list.setDragDropMode(QAbstractItemView.DragDropMode.InternalMove)
        self.list.setDefaultDropAction(Qt.DropAction.MoveAction)
        self.list.setDropIndicatorShown(True)
        self.list.setToolTip(tr(TIP))
        self.list.selectionModel().currentChanged.connect(self._on_chosen)
        self.list.horizontalScrollBar().rangeChanged.connect(self._fit)
        heading = QLabel(tr("Bowings", "heading beside narrow buttons"))
        heading.setProperty("rank", "heading")
        self.buttons: dict[str, QToolButton] = {}
        row = FlowRow(2)
        row.add(heading, 1)
        for name, text, tip, do in self._button_table():
            button = QToolButton()
            button.setText(text)
            button.setToolTip(tip)
            button.setAccessibleName(tip)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            button.clicked.connect(do)
            self.buttons[name] = button
            row.add(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 12, 14, 8)
        column.addLayout(row)
        column.addWidget(self.list)
        document.lesson_changed.connect(self._on_lesson_changed)
        self._comparison.changed.connect(self._show_bowings)
        self._show_bowings()

    def _button_table(self) -> tuple[tuple[str, str, str, Callable[[], None]], ...]:
        return (
            ("add", tr("Add", "narrow button"), tr("Add a bowing with separate bows"), self.add),
            ("copy", tr("Copy", "narrow button"), tr("Copy the bowing on the page"), self.copy),
            ("up", "↑", tr("Move the bowing up in the list"), lambda: self.move_by(-1)),
            ("down", "↓", tr("Move the bowing down in the list"), lambda: self.move_by(1)),
            ("delete", tr("Delete", "narrow button"), tr("Delete the bowing on the page"), self.delete),
        )

    # ------------------------------------------------------------------------------------------------- edits

    def add(self) -> None:
        """Add a bowing with every note on a bow of its own, after the shown one, and show it."""
        if (state := self._document.state) is not None:
            new = replace(separate_bows(state.bowing, tr(NEW_NAME)), accents=state.bowing.accents)
            place = state.shown + 1
            self._change(tr("Add a bowing"), lambda lesson: add_bowing(lesson, new, place), place)

    def copy(self) -> None:
        """Add a copy of the shown bowing after it and show it."""
        if (state := self._document.state) is not None:
            new = replace(state.bowing, name=tr("{name} copy", name=state.bowing.name))
            place = state.shown + 1
            self._change(
                tr("Copy “{name}”", name=state.bowing.name), lambda lesson: add_bowing(lesson, new, place), place
            )

    def delete(self) -> None:
        """Delete the shown bowing; undo brings it back."""
        if (state := self._document.state) is not None:
            shown = state.shown
            after = min(shown, len(state.lesson.bowings) - 2)
            compared = [place - (place > shown) for place in self._comparison.places if place != shown]
            if len(compared) > 1:
                after = min(compared, key=lambda place: abs(place - after))
            self._change(
                tr("Delete “{name}”", name=state.bowing.name), lambda lesson: delete_bowing(lesson, shown), after
            )

    def rename(self, row: int, name: str) -> None:
        """Give a bowing another name."""
        if (state := self._document.state) is not None:
            old = state.lesson.bowings[row].name
            self._change(tr("Rename “{name}”", name=old), lambda lesson: rename_bowing(lesson, row, name), state.shown)

    def put_at(self, row: int, to: int) -> None:
        """Move a bowing to another row; the shown bowing stays on the page."""
        if (state := self._document.state) is not None:
            names = [bowing.name for bowing in move_bowing(state.lesson, row, to).bowings]
            shown = names.index(state.bowing.name)
            name = state.lesson.bowings[row].name
            self._change(tr("Move “{name}”", name=name), lambda lesson: move_bowing(lesson, row, to), shown)

    def move_by(self, rows: int) -> None:
        """Move the shown bowing up or down."""
        if (state := self._document.state) is not None:
            to = state.shown + rows
            if 0 <= to < len(state.lesson.bowings):
                self.put_at(state.shown, to)

    def start_renaming(self) -> None:
        """Let the user type another name for the shown bowing in the list itself."""
        if self._document.state is not None:
            self.list.setFocus(Qt.FocusReason.ShortcutFocusReason)
            self.list.edit(self.model.index(self._document.state.shown))

    def show_by(self, rows: int) -> None:
        """Put the next or the previous bowing on the page, round the ends; go through those that are compared."""
        if (state := self._document.state) is not None:
            places = self._comparison.places if self._comparison.runs else range(len(state.lesson.bowings))
            self._document.show(places[(places.index(state.shown) + rows) % len(places)])

    def _change(self, label: str, change: Callable[[Lesson], Lesson], shown: int) -> None:
        try:
            done = self._document.change(label, change, shown)
        except RefusedEditError as refusal:
            self.hinted.emit(str(refusal))
        else:
            self.hinted.emit(tr("Done: {edit}.", edit=label) if done else "")

    # ------------------------------------------------------------------------------------------------- the document

    def _on_lesson_changed(self, before: State | None, after: State | None) -> None:
        self._show_bowings()

    def _show_bowings(self) -> None:
        state = self._document.state
        names = [bowing.name for bowing in state.lesson.bowings] if state is not None else []
        shown = state.shown if state is not None else -1
        compared = self._comparison.chosen
        if (names, shown, compared) == self._seen:
            return
        before, self._seen = self._seen, (names, shown, compared)
        selection = self.list.selectionModel()
        selection.blockSignals(True)  # shown, not chosen: nothing goes back to the document
        marked = {self.list.currentIndex().row()}
        self.model.show_names(names, shown, compared)
        self.list.setCurrentIndex(self.model.index(shown))
        selection.blockSignals(False)
        self._marked |= marked | {shown}
        self._paint_marks_soon.start()
        if before is None or names != before[0]:
            self._fit()
        for button in self.buttons.values():
            button.setEnabled(state is not None)
        self.buttons["up"].setEnabled(shown > 0)
        self.buttons["down"].setEnabled(0 <= shown < len(names) - 1)
        self.buttons["delete"].setEnabled(len(names) > 1)

    def _paint_marks(self) -> None:
        """Paint the rows that came to the page or left it: the list itself has not heard of it."""
        for row in self._marked:
            self.list.update(self.model.index(row))
        self._marked = set()

    def _fit(self) -> None:
        """Be as high as a few rows, and as the bar under them where a name is longer than the pane is wide."""
        names = self.model.rowCount()
        rows = min(max(names, 2), MOST_ROWS_SHOWN)
        height = self.list.sizeHintForRow(0) if names else self.fontMetrics().height() + 6
        bar = self.list.horizontalScrollBar()
        scrolls = bar.sizeHint().height() if bar.maximum() > 0 else 0
        self.list.setFixedHeight(rows * height + scrolls + 2 * self.list.frameWidth() + 4)

    def _on_chosen(self, now: QModelIndex) -> None:
        if self._document.state is not None and now.isValid():
            self._document.show(now.row())
