"""Tunes of the shelf as a table; what is typed into it goes out as a wish and is shown at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt, Signal
from PySide6.QtWidgets import QComboBox, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from core.accent_plan import plan_name
from core.shelf.paths import to_text
from core.shelf.remarks import STATUSES, tags_typed
from core.shelf.search import Entry
from core.translation import plural, tr, translatable

Index = QModelIndex | QPersistentModelIndex
NO_STATUS = translatable("none")
# Heading, and the order of ``core.shelf.search.ORDERS`` that a click on it asks for; "" for none
COLUMNS = (
    (translatable("Title"), "title"), (translatable("Dance"), "dance"), (translatable("Key"), "key"),
    (translatable("Metre"), "meter"), (translatable("Status"), "status"), (translatable("Tags"), ""),
    (translatable("Bowings"), ""), (translatable("Last opened"), "opened"),
)  # fmt: skip
TITLE, STATUS, TAGS, BOWINGS = 0, 4, 5, 6
EDITABLE = (STATUS, TAGS)


class ShelfModel(QAbstractTableModel):
    """The tunes that a search found.

    Signals:
        status_wanted: (id of the tune, status).
        tags_wanted: (id of the tune, tags to put on, tags to take off).
    """

    status_wanted = Signal(int, str)
    tags_wanted = Signal(int, tuple, tuple)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.entries: tuple[Entry, ...] = ()

    def show(self, entries: Sequence[Entry]) -> None:
        """Show other tunes."""
        self.beginResetModel()
        self.entries = tuple(entries)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's own signature)
        return 0 if parent.isValid() else len(self.entries)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if role == Qt.ItemDataRole.DisplayRole and orientation is Qt.Orientation.Horizontal:
            return tr(COLUMNS[section][0])
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        entry, column = self.entries[index.row()], index.column()
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return cells(entry)[column]
        if role == Qt.ItemDataRole.ToolTipRole:
            return _tip(entry, column)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{tr(COLUMNS[column][0])}: {cells(entry)[column] or tr(NO_STATUS)}"
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return flags | Qt.ItemFlag.ItemIsEditable if index.column() in EDITABLE else flags

    def setData(self, index: Index, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        if role != Qt.ItemDataRole.EditRole:
            return False
        entry = self.entries[index.row()]
        if index.column() == STATUS:
            after = replace(entry, status="" if value == NO_STATUS else str(value))
            if after == entry:
                return False
            self.status_wanted.emit(entry.id, after.status)
        else:
            after = replace(entry, tags=tuple(sorted(tags_typed(str(value)))))
            if after == entry:
                return False
            gone = tuple(tag for tag in entry.tags if tag not in after.tags)
            self.tags_wanted.emit(entry.id, tuple(tag for tag in after.tags if tag not in entry.tags), gone)
        self.entries = (*self.entries[: index.row()], after, *self.entries[index.row() + 1 :])
        self.dataChanged.emit(index, index)
        return True


class StatusDelegate(QStyledItemDelegate):
    """Edits a status by choosing it from a list that opens at once."""

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: Index) -> QWidget:
        editor = QComboBox(parent)
        for status in (NO_STATUS, *STATUSES):
            editor.addItem(tr(status), status)
        editor.setAccessibleName(tr("Status of the tune"))
        editor.activated.connect(lambda _: self._finish(editor))
        return editor

    def setEditorData(self, editor: QWidget, index: Index) -> None:
        assert isinstance(editor, QComboBox)
        editor.setCurrentText(str(index.data()) or tr(NO_STATUS))
        editor.showPopup()

    def setModelData(self, editor: QWidget, model: object, index: Index) -> None:
        assert isinstance(editor, QComboBox)
        assert isinstance(model, ShelfModel)
        model.setData(index, editor.currentData())

    def _finish(self, editor: QComboBox) -> None:
        self.commitData.emit(editor)
        self.closeEditor.emit(editor)


def cells(entry: Entry) -> tuple[str, ...]:
    """The texts of a row, in the order of ``COLUMNS``."""
    status = tr(entry.status) if entry.status else ""
    return (
        entry.title or tr("Untitled"), entry.dance, _key(entry), entry.meter, status, ", ".join(entry.tags),
        _bowings(entry), (entry.opened or "")[:10],
    )  # fmt: skip


def _key(entry: Entry) -> str:
    """The key in little room: the first three letters of the mode say enough (ABC 2.1, 3.1.14)."""
    tonic, _, mode = entry.key.partition(" ")
    return f"{tonic} {mode[:3]}" if tonic != "no" else ""


def _bowings(entry: Entry) -> str:
    names = [bowing.name for bowing in entry.bowings]
    return names[0] if len(names) == 1 else f"{len(names)}: {', '.join(names)}"


def _tip(entry: Entry, column: int) -> str:
    if column == STATUS:
        return tr("Double-click, or press S, to choose a status")
    if column == TAGS:
        return tr("Double-click, or press T, to type tags with commas between")
    if column == BOWINGS:
        return "\n".join(
            tr("{bowing}, accents {plan}", bowing=bowing.name, plan=plan_name(bowing.accents))
            for bowing in entry.bowings
        )
    facts = tr(
        "{parts}, {bars}, {key}, begins {notes}",
        parts=plural("1 part", "{n} parts", entry.parts), bars=plural("1 bar", "{n} bars", entry.bars),
        key=entry.key, notes=entry.notes[:8],
    )  # fmt: skip
    place = tr("{file}, tune {number}", file=to_text(entry.file), number=entry.place)
    return "\n".join([*entry.other_titles, facts, place])
