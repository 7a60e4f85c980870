"""What stands in the place of the page while no lesson is open."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QSize, Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QListWidget, QListWidgetItem, QPushButton, QVBoxLayout, QWidget

from app.samples import sample_files, sample_label
from app.theme import scaled_font
from core.translation import tr

HEIGHT, LEAST_LINES = 330, 4  # of a list: pixels wanted, lines of text needed


class Welcome(QWidget):
    """The ways to open a tune.

    Signals:
        open_wanted, paste_wanted: The buttons.
        file_chosen: Path of a recent file.
        sample_chosen: Path of a tune that comes with the program.
    """

    open_wanted = Signal()
    paste_wanted = Signal()
    file_chosen = Signal(Path)
    sample_chosen = Signal(Path)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        title = QLabel(tr("What shall we bow?"))
        title.setFont(scaled_font(title.font(), 1.9))
        words = QLabel(tr("Open a lesson, a score or a tune book, drop one here, or paste a tune as ABC text."))
        words.setProperty("rank", "quiet")
        words.setWordWrap(True)
        self.open_button = QPushButton(tr("Open…"))
        self.open_button.clicked.connect(self.open_wanted)
        self.paste_button = QPushButton(tr("Paste a tune"))
        self.paste_button.clicked.connect(self.paste_wanted)
        buttons = QHBoxLayout()
        buttons.addWidget(self.open_button)
        buttons.addWidget(self.paste_button)
        buttons.addStretch(1)
        self.recent = _FileList(tr("Opened lately"))
        self.samples = _FileList(tr("Tunes to try"))
        lists = QHBoxLayout()
        lists.setSpacing(24)
        for part, chosen in ((self.samples, self.sample_chosen), (self.recent, self.file_chosen)):
            part.chosen.connect(chosen)
            lists.addWidget(part, 1)
        column = QVBoxLayout()
        column.setSpacing(14)
        column.addStretch(1)
        column.addWidget(title)
        column.addWidget(words)
        column.addLayout(buttons)
        column.addSpacing(10)
        column.addLayout(lists)
        column.addStretch(2)
        row = QHBoxLayout(self)
        row.setContentsMargins(30, 20, 30, 20)
        row.addStretch(1)
        row.addLayout(column, 6)
        row.addStretch(1)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        QTimer.singleShot(0, self, self._show_samples)  # not where a lesson takes its place at once

    def _show_samples(self) -> None:
        if self.isVisible() and not self.samples.list.count():
            self.samples.show_files(sample_files(), sample_label)

    def show_recent(self, paths: Sequence[Path]) -> None:
        """Show the files opened lately; nothing of the list where there are none."""
        self.recent.show_files([path for path in paths if os.path.exists(path)], lambda path: path.name)


class _List(QListWidget):
    """Less high where there is less room."""

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), HEIGHT)

    def minimumSizeHint(self) -> QSize:
        return QSize(super().minimumSizeHint().width(), LEAST_LINES * self.fontMetrics().lineSpacing())


class _FileList(QWidget):
    chosen = Signal(Path)

    def __init__(self, title: str) -> None:
        super().__init__()
        heading = QLabel(title)
        heading.setProperty("rank", "heading")
        self.list = _List()
        self.list.setAccessibleName(title)
        self.list.itemActivated.connect(self._on_activated)
        self.list.itemClicked.connect(self._on_activated)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(heading)
        column.addWidget(self.list)

    def show_files(self, paths: Sequence[Path], label: Callable[[Path], str]) -> None:
        self.list.clear()
        for path in paths:
            item = QListWidgetItem(label(path))
            item.setData(Qt.ItemDataRole.UserRole, path)
            item.setToolTip(str(path))
            self.list.addItem(item)
        self.setVisible(bool(paths))

    def _on_activated(self, item: QListWidgetItem) -> None:
        self.chosen.emit(item.data(Qt.ItemDataRole.UserRole))
