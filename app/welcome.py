"""What stands in the place of the page while no lesson is open."""

from __future__ import annotations

import os
import re
from collections.abc import Callable, Sequence
from importlib.resources import as_file, files
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QListWidget, QListWidgetItem, QPushButton, QVBoxLayout, QWidget

from app.theme import scaled_font

SAMPLE_SUFFIXES = (".abc", ".musicxml", ".mxl")


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
        title = QLabel("What shall we bow?")
        title.setFont(scaled_font(title.font(), 1.9))
        words = QLabel("Open a lesson, a score or a tune book, drop one here, or paste a tune as ABC text.")
        words.setProperty("rank", "quiet")
        words.setWordWrap(True)
        self.open_button = QPushButton("Open…")
        self.open_button.clicked.connect(self.open_wanted)
        self.paste_button = QPushButton("Paste a tune")
        self.paste_button.clicked.connect(self.paste_wanted)
        buttons = QHBoxLayout()
        buttons.addWidget(self.open_button)
        buttons.addWidget(self.paste_button)
        buttons.addStretch(1)
        self.recent = _FileList("Opened lately")
        self.samples = _FileList("Tunes to try")
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
        self.samples.show_files(sample_files(), sample_label)

    def show_recent(self, paths: Sequence[Path]) -> None:
        """Show the files opened lately; nothing of the list where there are none."""
        self.recent.show_files([path for path in paths if os.path.exists(path)], lambda path: path.name)


class _FileList(QWidget):
    chosen = Signal(Path)

    def __init__(self, title: str) -> None:
        super().__init__()
        heading = QLabel(title)
        heading.setProperty("rank", "heading")
        self.list = QListWidget()
        self.list.setAccessibleName(title)
        self.list.setMinimumHeight(330)
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


def sample_files() -> list[Path]:
    """The tunes that come with the program, by name."""
    found = []
    for entry in files("sample_tunes").iterdir():
        if entry.name.endswith(SAMPLE_SUFFIXES):
            with as_file(entry) as path:
                found.append(path)
    return sorted(found)


def sample_label(path: Path) -> str:
    """What a sample is called, without reading it as a tune: the first screen should come at once."""
    text = path.read_text("utf-8")
    tunes = len(_TUNE.findall(text))
    if tunes > 1:
        return f"{path.stem.replace('_', ' ').capitalize()} ({tunes} tunes)"
    title = _TITLE.search(text)
    name = " ".join((title[1] or title[2]).split()) if title is not None else path.stem
    return name if path.suffix == ".abc" else f"{name} (finished lesson)"


_TUNE = re.compile(r"^X:", re.MULTILINE)
_TITLE = re.compile(r"^T:(.*)$|<(?:work|movement)-title>([^<]*)<", re.MULTILINE)
