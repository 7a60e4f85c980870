"""What goes into a pack: lessons and tune books, kinds of files, and the folder."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.dialogs import Dialogs
from app.pack_sources import Source
from app.pack_work import PackWish
from app.settings import Settings
from core.pack.kinds import WORDS, in_order, ready
from core.shelf.paths import to_text
from core.translation import tr, translatable

FOLDER_NAME = translatable("Lesson pack")
INTRODUCTION = translatable(
    "Each lesson, and each tune of a book, gets a folder with its files; a contents page and a zip of all stand beside "
    "them. Packing into the same folder again makes only what is missing or has changed."
)
ON_PAGE = "on page"  # stands for the lesson that is on the page when the pack is made
Place = Path | str


class PackForm(QWidget):
    """The choice.

    Args:
        settings: Where folders were found last.
        dialogs: Asks for files and folders.

    Signals:
        changed: Something was chosen.
    """

    changed = Signal()

    def __init__(self, settings: Settings, dialogs: Dialogs, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._settings, self._dialogs = settings, dialogs
        introduction = QLabel(tr(INTRODUCTION))
        introduction.setWordWrap(True)
        introduction.setProperty("rank", "quiet")
        label = QLabel(tr("&Lessons and tune books"))
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Lessons and tune books that go into the pack"))
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.list.setTextElideMode(Qt.TextElideMode.ElideMiddle)
        label.setBuddy(self.list)
        self.add_files = QPushButton(tr("Add &files…"))
        self.add_folder = QPushButton(tr("Add a f&older…"))
        self.remove_button = QPushButton(tr("&Remove"))
        adding = QHBoxLayout()
        for button in (self.add_files, self.add_folder, self.remove_button):
            adding.addWidget(button)
        adding.addStretch(1)
        self.kinds = {kind: QCheckBox(tr(WORDS[kind])) for kind in in_order(ready())}
        made = QGroupBox(tr("Made of each lesson"))
        column = QVBoxLayout(made)
        for box in self.kinds.values():
            box.setChecked(True)
            box.toggled.connect(self.changed)
            column.addWidget(box)
        folder_label = QLabel(tr("&Into the folder"))
        self.folder = QLineEdit(str(settings.folder / tr(FOLDER_NAME)))
        self.folder.setAccessibleName(tr("Folder of the pack"))
        folder_label.setBuddy(self.folder)
        self.choose_folder = QPushButton(tr("&Choose…"))
        self.choose_folder.setAccessibleName(tr("Choose the folder of the pack"))
        into = QHBoxLayout()
        into.addWidget(self.folder, 1)
        into.addWidget(self.choose_folder)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(introduction)
        column.addWidget(label)
        column.addWidget(self.list, 1)
        column.addLayout(adding)
        column.addWidget(made)
        column.addWidget(folder_label)
        column.addLayout(into)
        self.add_files.clicked.connect(self.ask_for_files)
        self.add_folder.clicked.connect(self.ask_for_folder)
        self.remove_button.clicked.connect(self.remove)
        self.choose_folder.clicked.connect(self.ask_for_out)
        self.folder.textChanged.connect(self.changed)
        self.list.itemSelectionChanged.connect(self._enable)
        QShortcut(QKeySequence(Qt.Key.Key_Delete), self.list, self.remove, context=Qt.ShortcutContext.WidgetShortcut)
        self._enable()

    def wish(self, on_page: Callable[[], Source]) -> PackWish:
        """What was chosen.

        Args:
            on_page: Gives the lesson on the page; called where it goes in.
        """
        places = self.places
        kinds = frozenset(kind for kind, box in self.kinds.items() if box.isChecked())
        paths = tuple(place for place in places if isinstance(place, Path))
        given = (on_page(),) if ON_PAGE in places else ()
        return PackWish(paths, given, Path(self.folder.text().strip()).expanduser(), kinds)

    @property
    def is_complete(self) -> bool:
        """Whether a pack can be made of what was chosen."""
        kinds = any(box.isChecked() for box in self.kinds.values())
        return kinds and self.list.count() > 0 and bool(self.folder.text().strip())

    @property
    def places(self) -> list[Place]:
        """What goes in, in order."""
        return [self.list.item(row).data(Qt.ItemDataRole.UserRole) for row in range(self.list.count())]

    def offer_open_lesson(self, title: str) -> None:
        """Put the lesson on the page first, where it is not there yet."""
        if ON_PAGE not in self.places:
            self._insert(0, ON_PAGE, "")
        self.name_open_lesson(title)
        self.changed.emit()

    def name_open_lesson(self, title: str) -> None:
        """Say which lesson is on the page, where it goes in."""
        if ON_PAGE in self.places:
            item = self.list.item(self.places.index(ON_PAGE))
            item.setText(tr("{title} (the lesson on the page)", title=title or "Untitled"))
            item.setToolTip(item.text())

    def add(self, paths: list[Path]) -> None:
        """Add files and folders that are not there yet."""
        for path in dict.fromkeys(paths):
            if path not in self.places:
                self._insert(self.list.count(), path, to_text(path))
        self.changed.emit()

    def ask_for_files(self) -> None:
        """Ask for files and add them."""
        self.add(self._dialogs.paths_to_pack(self, self._settings.folder))

    def ask_for_folder(self) -> None:
        """Ask for a folder and add it."""
        folder = self._dialogs.folder_to_pack(self, self._settings.folder)
        if folder is not None:
            self.add([folder])

    def ask_for_out(self) -> None:
        """Ask for the folder of the pack."""
        folder = self._dialogs.folder_of_pack(self, Path(self.folder.text()))
        if folder is not None:
            self.folder.setText(str(folder))

    def remove(self) -> None:
        """Take what is chosen in the list out of it."""
        for item in self.list.selectedItems():
            self.list.takeItem(self.list.row(item))
        self._enable()
        self.changed.emit()

    def _insert(self, row: int, place: Place, text: str) -> None:
        item = QListWidgetItem(text)
        item.setData(Qt.ItemDataRole.UserRole, place)
        item.setToolTip(text)
        self.list.insertItem(row, item)

    def _enable(self) -> None:
        self.remove_button.setEnabled(bool(self.list.selectedItems()))
