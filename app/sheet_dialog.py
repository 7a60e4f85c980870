"""Asks what goes on the printed sheet, and where it goes."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.sheet import PAPERS, SheetSettings
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson

DENSITY_WORDS = {
    MarkDensity.EVERY: "On every stroke",
    MarkDensity.BARS: "Where each bar begins",
    MarkDensity.NEEDED: "Only where needed to read the rest",
}


class Way(Enum):
    """Where a sheet goes."""

    PREVIEW = "Preview"
    PRINT = "Print…"
    EXPORT = "Export as PDF…"


@dataclass(frozen=True)
class SheetChoice:
    """What the user wants on paper.

    Attributes:
        bowings: Places of the bowings in the lesson, in order; at least one.
        settings: Paper and marks.
        way: Where it goes.
    """

    bowings: tuple[int, ...]
    settings: SheetSettings
    way: Way


class SheetDialog(QDialog):
    """Bowings, bow marks and paper; a button for each way.

    Args:
        lesson: What is printed.
        shown: The bowing on the page, ticked at first.
        settings: Chosen the last time.
        way: The button that Return presses.
    """

    def __init__(
        self, lesson: Lesson, shown: int, settings: SheetSettings, way: Way, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle("Print a sheet")
        self._way = way
        self.bowings = QListWidget()
        self.bowings.setAccessibleName("Bowings on the sheet")
        for place, bowing in enumerate(lesson.bowings):
            item = QListWidgetItem(bowing.name)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsUserCheckable | Qt.ItemFlag.ItemIsSelectable)
            item.setCheckState(Qt.CheckState.Checked if place == shown else Qt.CheckState.Unchecked)
            item.setSizeHint(QSize(0, self.fontMetrics().height() + 12))
            self.bowings.addItem(item)
        self.bowings.itemChanged.connect(self._on_ticked)
        self.marks = QComboBox()
        for density, words in DENSITY_WORDS.items():
            self.marks.addItem(words, density)
        self.marks.setCurrentIndex(self.marks.findData(settings.marks))
        self.paper = QComboBox()
        for name, paper in PAPERS.items():
            self.paper.addItem(name, paper)
        self.paper.setCurrentIndex(self.paper.findText(settings.paper.name))
        form = QFormLayout()
        form.addRow("&Bowings", self.bowings)
        form.addRow("Bow &marks", self.marks)
        form.addRow("&Paper for PDF", self.paper)
        self._missing = QLabel("Tick at least one bowing.")
        self._missing.setProperty("rank", "quiet")
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        buttons.rejected.connect(self.reject)
        self.way_buttons: dict[Way, QPushButton] = {}
        for choice in Way:
            button = buttons.addButton(choice.value, QDialogButtonBox.ButtonRole.ActionRole)
            button.setAutoDefault(choice is way)
            button.setDefault(choice is way)
            button.clicked.connect(lambda _=False, chosen=choice: self._take(chosen))
            self.way_buttons[choice] = button
        column = QVBoxLayout(self)
        column.addLayout(form)
        column.addWidget(self._missing)
        column.addWidget(buttons)
        self._on_ticked()

    @property
    def choice(self) -> SheetChoice:
        """What is chosen now."""
        return SheetChoice(
            self._ticked(),
            SheetSettings(paper=self.paper.currentData(), marks=self.marks.currentData()),
            self._way,
        )

    def _ticked(self) -> tuple[int, ...]:
        rows = range(self.bowings.count())
        return tuple(row for row in rows if self.bowings.item(row).checkState() is Qt.CheckState.Checked)

    def _on_ticked(self) -> None:
        some = bool(self._ticked())
        self._missing.setVisible(not some)
        for button in self.way_buttons.values():
            button.setEnabled(some)

    def _take(self, way: Way) -> None:
        self._way = way
        self.accept()
