"""What tunes of the shelf are looked for by: words, first notes, and choices of dance, key, metre and status."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit, QVBoxLayout, QWidget

from app.flow_row import FlowRow
from core.shelf.query import Query
from core.shelf.remarks import STATUSES
from core.shelf.search import Choices
from core.translation import tr, translatable

PAUSE_MS = 120  # after a key, so that a word typed in one go is one search
ANY = translatable({"dance": "Any dance", "key": "Any key", "meter": "Any metre", "status": "Any status"})
NAMES = translatable({"dance": "Dance", "key": "Key", "meter": "Metre", "status": "Status"})
TIPS = translatable({
    "dance": "Find tunes of one dance only", "key": "Find tunes of one key only",
    "meter": "Find tunes of one metre only", "status": "Find tunes of one status only",
})  # fmt: skip
NO_KEY = translatable("no key")
STEPS = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageDown: 10, Qt.Key.Key_PageUp: -10}


class ShelfFilters(QWidget):
    """Rows of fields, narrow enough to stand beside a page.

    Signals:
        changed: Something else is looked for.
        step_wanted: Rows to go down in the list while a line has the keyboard.
        open_wanted: Enter was pressed in a line.
        leave_wanted: Escape was pressed where nothing was typed.
    """

    changed = Signal()
    step_wanted = Signal(int)
    open_wanted = Signal()
    leave_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.order = "best"
        self.words = _line(tr("Find by title, tag, composer …"), tr("Words of the tune"))
        self.words.setToolTip(tr("Beginnings of words in titles, tags, credits and file names"))
        self.notes = _line(tr("First notes: u d s, or dBAF"), tr("First notes of the tune"))
        self.notes.setToolTip(
            tr("How the tune begins: u, d and s for up, down and same, or names of notes (DD for two D)")
        )
        self.any_key = QCheckBox(tr("in any key"))
        self.any_key.setToolTip(tr("Find the names of notes in every key"))
        self.any_key.setEnabled(False)
        self.boxes = {name: _box(name, text) for name, text in ANY.items()}
        for status in (*STATUSES, "none"):
            self.boxes["status"].addItem(tr(status), status)
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self.changed)
        rows = QVBoxLayout(self)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.setSpacing(6)
        rows.addWidget(self.words)
        for widgets in ((self.notes, self.any_key), tuple(self.boxes.values())):
            row = FlowRow(6)
            for widget in widgets:
                row.add(widget, 0 if widget is self.any_key else 1)
            rows.addLayout(row)
        for line in (self.words, self.notes):
            line.installEventFilter(self)
            line.textChanged.connect(lambda _: self._pause.start())
        self.notes.textChanged.connect(lambda text: self.any_key.setEnabled(bool(text.strip())))
        self.any_key.toggled.connect(lambda _: self.changed.emit())
        for box in self.boxes.values():
            box.activated.connect(lambda _: self.changed.emit())

    @property
    def query(self) -> Query:
        """What is looked for."""
        chosen = {name: str(box.currentData() or "") for name, box in self.boxes.items()}
        if chosen["key"] == NO_KEY:
            chosen["key"] = "none"
        words, notes = self.words.text(), self.notes.text()
        return Query(words, notes=notes, any_key=self.any_key.isChecked(), order=self.order, **chosen)

    @property
    def waits(self) -> bool:
        """Whether what was typed last has not been told yet."""
        return self._pause.isActive()

    @property
    def is_empty(self) -> bool:
        """Whether nothing is asked for, so that all tunes are found."""
        return self.query == Query(any_key=self.any_key.isChecked(), order=self.order)

    def clear(self) -> None:
        """Ask for nothing."""
        for box in self.boxes.values():
            box.setCurrentIndex(0)
        self.words.clear()
        self.notes.clear()
        self.changed.emit()

    def offer(self, choices: Choices) -> None:
        """Offer the values that the shelf has; what was chosen stays chosen."""
        self._offer("dance", choices.dances)
        self._offer("key", choices.keys)
        self._offer("meter", choices.meters)

    def _offer(self, name: str, values: Sequence[str]) -> None:
        box = self.boxes[name]
        chosen = box.currentData()
        box.clear()
        box.addItem(tr(ANY[name]), "")
        for value in values:
            box.addItem(tr(NO_KEY) if value == NO_KEY else value, value)
        box.setCurrentIndex(max(box.findData(chosen), 0))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let arrow keys walk the list, Enter open and Escape empty a line while it has the keyboard."""
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            key = Qt.Key(event.key())
            if key in STEPS:
                self.step_wanted.emit(STEPS[key])
                return True
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                if self._pause.isActive():  # what was typed last counts
                    self._pause.stop()
                    self.changed.emit()
                self.open_wanted.emit()
                return True
            if key == Qt.Key.Key_Escape:
                if self.is_empty:
                    self.leave_wanted.emit()
                else:
                    self.clear()
                return True
        return super().eventFilter(watched, event)


def _line(placeholder: str, name: str) -> QLineEdit:
    line = QLineEdit()
    line.setPlaceholderText(placeholder)
    line.setAccessibleName(name)
    line.setClearButtonEnabled(True)
    return line


def _box(name: str, text: str) -> QComboBox:
    box = QComboBox()
    box.addItem(tr(text), "")
    box.setAccessibleName(tr(NAMES[name]))
    box.setToolTip(tr(TIPS[name]))
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setMinimumContentsLength(7)
    return box
