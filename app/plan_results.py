"""What the planner found or says: the wait, a sentence, the list of plans, and what takes or drops the chosen one."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from core.translation import tr, translatable

ROW_PAD = 10  # pixels beside and around the words of a row
BREAKS = translatable(
    "Accents as played. Breaks: bars bowed unlike most of their like, and retakes at a seam without a rest."
)


class PlanResults(QWidget):
    """Shows results; knows no lesson.

    Signals:
        row_chosen: The row of the plan that the user came to.
        take_wanted, take_new_wanted, drop_wanted: Asked for by button or double click; the pane hears Enter.
        note_wanted: Id of the note that the sentence leads to.
    """

    row_chosen = Signal(int)
    take_wanted = Signal()
    take_new_wanted = Signal()
    drop_wanted = Signal()
    note_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._note_id = ""
        self.wait_words = _label(tr("What is worked out"))
        self.wait_bar = QProgressBar()
        self.wait_bar.setTextVisible(False)
        self.wait_bar.setAccessibleName(tr("Working"))
        self.wait_bar.setFixedHeight(6)
        self.wait = QWidget()
        self.sentence = _label(tr("What was worked out"))
        self.sentence.setToolTip(tr(BREAKS))
        self.go_button = button("", tr("Go to the bar that the sentence names"))
        self.go_button.setProperty("rank", "link")
        self.list = QListWidget()
        self.list.setAccessibleName(tr("The best bowing and the next best"))
        self.list.setToolTip(tr("Choose one to see it on the page; Enter takes it"))
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.take_button = button(tr("&Take"), tr("Put it in the place of this bowing (Enter)"))
        self.take_new_button = button(tr("As a new b&owing"), tr("Keep this bowing and add a new one (Shift+Enter)"))
        self.drop_button = button(tr("Dro&p"), tr("Leave the bowing as it is (Esc)"))
        self.name = QLineEdit()
        self.name.setAccessibleName(tr("Name of the new bowing"))
        self.name.setPlaceholderText(tr("Name of the new bowing"))
        self.taking = QWidget()
        self._lay_out()
        self.list.currentRowChanged.connect(self.row_chosen)
        self.list.itemDoubleClicked.connect(lambda _: self.take_wanted.emit())
        self.take_button.clicked.connect(self.take_wanted)
        self.take_new_button.clicked.connect(self.take_new_wanted)
        self.drop_button.clicked.connect(self.drop_wanted)
        self.go_button.clicked.connect(lambda: self.note_wanted.emit(self._note_id))
        self.wait.hide()
        self.say("")
        self.show_rows(())

    def _lay_out(self) -> None:
        waiting = QVBoxLayout(self.wait)
        waiting.setContentsMargins(0, 0, 0, 0)
        waiting.addWidget(self.wait_words)
        waiting.addWidget(self.wait_bar)
        taking = QVBoxLayout(self.taking)
        taking.setContentsMargins(0, 0, 0, 0)
        row = QHBoxLayout()
        row.addWidget(self.take_button, 1)
        row.addWidget(self.drop_button)
        taking.addLayout(row)
        taking.addWidget(self.take_new_button)
        taking.addWidget(self.name)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        for widget in (self.wait, self.sentence, self.go_button, self.list, self.taking):
            column.addWidget(widget)
        column.setAlignment(self.go_button, Qt.AlignmentFlag.AlignLeft)

    @property
    def has_keyboard(self) -> bool:
        """Whether the list, or what takes and drops, has the keyboard."""
        return any(part.hasFocus() for part in (self.list, self.name, *self.taking.findChildren(QPushButton)))

    def begin_wait(self, words: str, steps: int = 0) -> None:
        """Name what is worked out, in so many steps where that is known; shown by ``show_wait``."""
        self.wait.hide()
        self.wait_words.setText(words)
        self.wait_bar.setRange(0, steps)
        self.wait_bar.setValue(0)

    def show_wait(self) -> None:
        """Show that something is worked out."""
        self.wait.show()

    def say(self, sentence: str, note_id: str = "", bar: int = 0) -> None:
        """Show a sentence, and a button to a note in a bar, given by its printed number, where it leads to one."""
        self._note_id = note_id
        self.sentence.setText(sentence)
        self.sentence.setVisible(bool(sentence))
        self.go_button.setText(tr("Go to bar {bar}", bar=bar))
        self.go_button.setVisible(bool(note_id))

    def show_rows(self, rows: Sequence[str]) -> None:
        """List plans, the best first; the same row stays chosen. Nothing is announced."""
        chosen = min(max(self.list.currentRow(), 0), len(rows) - 1)
        self.list.blockSignals(True)
        self.list.clear()
        self.list.addItems(rows)
        self.list.setCurrentRow(chosen)
        self.list.blockSignals(False)
        self.list.setVisible(bool(rows))
        self.taking.setVisible(bool(rows))
        self._fit_list()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_list()

    def _fit_list(self) -> None:
        """As high as its rows and these as high as their words, so that the pane scrolls and not the list in it."""
        room = QRect(0, 0, self.list.viewport().width() - 2 * ROW_PAD, 10_000)
        rows = 0
        for item in (self.list.item(row) for row in range(self.list.count())):
            height = self.list.fontMetrics().boundingRect(room, Qt.TextFlag.TextWordWrap, item.text()).height()
            item.setSizeHint(QSize(room.width(), height + ROW_PAD))
            rows += height + ROW_PAD
        self.list.setFixedHeight(rows + 2 * self.list.frameWidth() + 4)


def button(text: str, tip: str) -> QPushButton:
    """A button with its tool tip."""
    made = QPushButton(text)
    made.setToolTip(tip)
    return made


def _label(name: str) -> QLabel:
    label = QLabel()
    label.setWordWrap(True)
    label.setAccessibleName(name)
    return label
