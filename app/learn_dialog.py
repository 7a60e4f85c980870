"""Learning a style from tunes that are found on the shelf: its name, how far it is, and what was found."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import (
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.files import FileError
from app.plan_work import PlanWork
from app.style_dialog import StyleText
from app.style_learning import Learned, Step, tell_learned
from app.style_words import style_text
from app.styles import known_name, style_name
from app.window_layout import fitting
from core.shelf.query import Query
from core.translation import plural, tr

WIDTH, TEXT_HEIGHT = 560, 240
STEPS = 1000


class LearnDialog(QDialog):
    """Learns one style after another; the window goes on meanwhile.

    Args:
        path: The catalogue.
        query: Which tunes of it.
        tunes: How many they are.

    Signals:
        learned: Name of the style that is kept now.
    """

    learned = Signal(str)

    def __init__(self, path: Path, query: Query, tunes: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._path, self._query = path, query
        self.setWindowTitle(tr("Learn a style"))
        self.work = PlanWork(self)
        told = QLabel(
            plural(
                "How notes are slurred is learned from the bowing of the tune that is found on the shelf.",
                "How notes are slurred is learned from the bowings of the {n} tunes that are found on the shelf.",
                tunes,
            )
            + " "
            + tr("The lessons are read and not changed; what is learned stays on this computer.")
        )
        told.setWordWrap(True)
        self.name = QLineEdit(tr("My own style"))
        self.name.setAccessibleName(tr("Name of the style"))
        self.name.selectAll()
        self.says = QLabel()
        self.says.setWordWrap(True)
        self.says.setAccessibleName(tr("What comes of it"))
        self.progress = QProgressBar()
        self.progress.setRange(0, STEPS)
        self.progress.setTextVisible(False)
        self.progress.setAccessibleName(tr("How far learning is"))
        self.text = StyleText()
        self.learn_button = QPushButton(tr("&Learn"))
        self.learn_button.setDefault(True)
        self.close_button = QPushButton(tr("Cancel"))
        self._lay_out(told)
        self.progress.hide()
        self.text.hide()
        self.name.textChanged.connect(self._on_named)
        self.learn_button.clicked.connect(self.learn)
        self.close_button.clicked.connect(self._leave)
        self.work.told.connect(self._on_told)
        self.work.refused.connect(self._on_refused)
        self.work.failed.connect(partial(self._on_refused, tr("It could not be learned.")))
        self._on_named()

    def _lay_out(self, told: QLabel) -> None:
        row = QFormLayout()
        row.addRow(tr("&Name"), self.name)
        buttons = QHBoxLayout()
        buttons.addStretch(1)
        buttons.addWidget(self.learn_button)
        buttons.addWidget(self.close_button)
        column = QVBoxLayout(self)
        for item in (told, row, self.says, self.progress, self.text, buttons):
            column.addWidget(item) if isinstance(item, QWidget) else column.addLayout(item)
        self.setMinimumWidth(fitting(self, WIDTH, TEXT_HEIGHT).width())

    def learn(self) -> None:
        """Begin, with the name that is typed."""
        try:
            name = style_name(self.name.text())
        except FileError as fault:
            self.says.setText(str(fault))
            return
        self._show_work(True)
        self.work.start(partial(tell_learned, self._path, self._query, name))

    def _leave(self) -> None:
        """Leave off what runs; where nothing does, close."""
        if self.work.runs:
            self.work.stop()
            self._show_work(False)
            self.says.setText(tr("Left off; nothing was kept."))
        else:
            self.reject()

    def _show_work(self, runs: bool) -> None:
        self.progress.setVisible(runs)
        self.progress.setValue(0)
        self.name.setEnabled(not runs)
        self.learn_button.setEnabled(not runs)
        self.close_button.setText(tr("Leave off") if runs else tr("Cancel"))

    def _on_named(self) -> None:
        known = known_name(self.name.text())
        self.says.setText(tr("There is a style of this name: learning replaces it.") if known else "")

    def _on_told(self, told: object) -> None:
        if isinstance(told, Step):
            self.progress.setValue(round(STEPS * told.share))
            self.says.setText(told.words)
        elif isinstance(told, Learned):
            self._show_work(False)
            self.says.setText(told.sentence())
            self.text.setPlainText(style_text(told.style))
            self.text.setMinimumHeight(fitting(self, WIDTH, TEXT_HEIGHT).height())
            self.text.show()
            self.learn_button.hide()
            self.name.setEnabled(False)
            self.close_button.setText(tr("&Close"))
            self.close_button.setFocus()
            self.learned.emit(told.style.name)

    def _on_refused(self, sentence: str) -> None:
        self._show_work(False)
        self.says.setText(sentence)

    def reject(self) -> None:
        """Closed in any way: nothing goes on behind it."""
        self.work.stop()
        super().reject()

    def closeEvent(self, event: QCloseEvent) -> None:
        self.work.stop()
        super().closeEvent(event)
