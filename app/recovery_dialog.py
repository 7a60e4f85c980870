"""Offers lessons that were changed and not saved when the program ended: to open one, keep or throw away."""

from __future__ import annotations

import os
from collections.abc import Sequence

from PySide6.QtCore import QDateTime, QLocale, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app.recovery_copy import Left, remove
from core.translation import tr, translatable

COLUMNS = translatable(("Tune", "File", "Last edit", "Edits"))
NO_FILE, NOT_READABLE = translatable(("never saved", "cannot be read"))
WIDTH, ROWS = 100, 6  # characters; rows shown at most
EDGES = 12
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
THROW_AWAY, FOR_GOOD = translatable(("&Throw away", "&Throw away for good"))


class RecoveryDialog(QDialog):
    """A list of lessons left behind.

    What is thrown away goes at once, after a second press of the button; all else stays as it is.

    Args:
        left: At least one lesson, in the order shown.

    Attributes:
        chosen: The lesson to open, or None.
        left: Those that still stand in the list.
    """

    def __init__(self, left: Sequence[Left], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Lessons that were not saved"))
        self.left = list(left)
        self.chosen: Left | None = None
        sentence = QLabel(tr("The program ended before these lessons were saved. They are as they stood then."))
        sentence.setWordWrap(True)
        self.table = QTableWidget(len(self.left), len(COLUMNS))
        self.about = QLabel()
        self.about.setWordWrap(True)
        self.about.setTextFormat(Qt.TextFormat.PlainText)
        self.about.setProperty("rank", "quiet")
        self.about.setAccessibleName(tr("About the chosen lesson"))
        self.open_button = QPushButton(tr("&Open"))
        self.keep_button = QPushButton(tr("&Keep for later"))
        self.throw_button = QPushButton(tr(THROW_AWAY))
        self._fill()
        self._lay_out(sentence)
        self.open_button.clicked.connect(self._open)
        self.keep_button.clicked.connect(self.reject)
        self.throw_button.clicked.connect(self._throw_away)
        self.table.currentCellChanged.connect(lambda *_: self._show_current())
        self.table.cellDoubleClicked.connect(lambda *_: self._open())
        self.table.selectRow(0)
        self._show_current()
        self.table.setFocus()

    @property
    def current(self) -> Left | None:
        """The lesson of the chosen row."""
        row = self.table.currentRow()
        return self.left[row] if 0 <= row < len(self.left) else None

    def _fill(self) -> None:
        table = self.table
        table.setHorizontalHeaderLabels([tr(title) for title in COLUMNS])
        table.setAccessibleName(tr("Lessons that were not saved"))
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.setWordWrap(False)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + EDGES)
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for column, mode in enumerate(("Stretch", "Stretch", "ResizeToContents", "ResizeToContents")):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode[mode])
        for row, left in enumerate(self.left):
            for column, text in enumerate(_words(left)):
                item = QTableWidgetItem(text)
                if column == len(COLUMNS) - 1:
                    item.setTextAlignment(RIGHT)
                table.setItem(row, column, item)
        table.horizontalHeaderItem(len(COLUMNS) - 1).setTextAlignment(RIGHT)
        rows = min(max(len(self.left), 3), ROWS)
        table.setMinimumHeight(rows * table.verticalHeader().defaultSectionSize() + header.sizeHint().height() + EDGES)
        table.setSizeAdjustPolicy(QAbstractItemView.SizeAdjustPolicy.AdjustToContents)

    def _lay_out(self, sentence: QLabel) -> None:
        self.open_button.setDefault(True)
        self.keep_button.setAutoDefault(False)
        self.throw_button.setAutoDefault(False)
        buttons = QHBoxLayout()
        buttons.addWidget(self.throw_button)
        buttons.addStretch(1)
        buttons.addWidget(self.keep_button)
        buttons.addWidget(self.open_button)
        column = QVBoxLayout(self)
        column.setSpacing(EDGES)
        column.addWidget(sentence)
        column.addWidget(self.table, 1)
        column.addWidget(self.about)
        column.addLayout(buttons)
        self.setMinimumWidth(WIDTH * self.fontMetrics().averageCharWidth())
        self.about.setMinimumHeight(3 * self.fontMetrics().lineSpacing())

    def _show_current(self) -> None:
        left = self.current
        self.throw_button.setText(tr(THROW_AWAY))
        self.throw_button.setEnabled(left is not None)
        self.open_button.setEnabled(left is not None and left.lesson is not None)
        self.about.setText(about(left) if left is not None else "")

    def _open(self) -> None:
        if self.current is not None and self.current.lesson is not None:
            self.chosen = self.current
            self.accept()

    def _throw_away(self) -> None:
        left = self.current
        if left is None:
            return
        if self.throw_button.text() != FOR_GOOD:
            self.throw_button.setText(tr(FOR_GOOD))
            self.about.setText(tr("Press once more to throw this lesson away. There is no way back."))
            return
        try:
            remove(left.path, left.hold)
        except OSError:
            self.about.setText(tr("It cannot be thrown away: {path} is protected.", path=left.path))
            return
        row = self.table.currentRow()
        del self.left[row]
        self.table.removeRow(row)
        if self.left:
            self.table.selectRow(min(row, len(self.left) - 1))
            self._show_current()
        else:
            self.reject()


def about(left: Left) -> str:
    """A sentence or two on where a lesson came from and what has become of that."""
    note = left.note
    if left.lesson is None:
        return tr("This copy cannot be read. It stands in {path}.", path=left.path)
    if note.file is None:
        return tr("It was never saved in a file of its own.")
    if not os.path.exists(note.file):
        return tr("Its file was {file}, which is not there now.", file=note.file)
    if left.file_has_changed:
        return tr(
            "Its file is {file}, which has been changed since. Saving will ask which of the two to keep.",
            file=note.file,
        )
    return tr("Its file is {file}.", file=note.file)


def _words(left: Left) -> tuple[str, str, str, str]:
    note = left.note
    when = QDateTime.fromSecsSinceEpoch(int(note.edited.timestamp()))
    file = tr(NOT_READABLE) if left.lesson is None else tr(NO_FILE) if note.file is None else note.file.name
    return (
        note.title or tr("Untitled"),
        file,
        QLocale().toString(when, QLocale.FormatType.ShortFormat),
        str(note.edits) if note.edits else "",
    )
