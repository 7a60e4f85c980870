"""Adding tunes to a set: the one on the page, another of its book, or one of any file."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QMenu, QPushButton, QWidget

from app.dialogs import Dialogs
from app.document import Document
from app.files import FileError, read_path
from app.set_list import SetList
from app.settings import Settings
from core.errors import RefusedEditError
from core.translation import tr


class AddTuneButton(QPushButton):
    """Opens a menu of the ways to add a tune at the end.

    Args:
        sets: The set.
        document: The open lesson.
        settings: Where files are asked for.
        dialogs: Asks the user.

    Signals:
        added: Place of the tune in the set.
        told: A sentence: why it is not added.
    """

    added = Signal(int)
    told = Signal(str)

    def __init__(
        self, sets: SetList, document: Document, settings: Settings, dialogs: Dialogs, parent: QWidget | None = None
    ) -> None:
        super().__init__(tr("&Add a tune"), parent)
        self._sets, self._document, self._settings, self._dialogs = sets, document, settings, dialogs
        self.ways = QMenu(self)
        self.from_page = self.ways.addAction(tr("The tune on the &page"), self.add_open_tune)
        self.from_book = self.ways.addAction(tr("From the &open book…"), self.add_from_book)
        self.from_file = self.ways.addAction(tr("From a &file…"), self.add_from_file)
        self.ways.aboutToShow.connect(self._enable)
        self.setMenu(self.ways)

    def add_open_tune(self) -> None:
        """Put the tune on the page at the end."""
        self._add(self._sets.add_open_tune)

    def add_from_book(self) -> None:
        """Ask for a tune of the open book and put it at the end."""
        index = self._dialogs.tune_of_book(self.window(), tr("the open book"), self._sets.book)
        if index is not None:
            self._add(partial(self._sets.add_from_book, index))

    def add_from_file(self) -> None:
        """Ask for a file, and for one of its tunes where it holds several, and put that at the end."""
        path = self._dialogs.path_to_open(self.window(), self._settings.folder)
        if path is None:
            return
        try:
            lessons = read_path(path).lessons
        except FileError as fault:
            self.told.emit(str(fault))
            return
        self._settings.folder = path.parent
        index = self._dialogs.tune_of_book(self.window(), path.name, lessons) if len(lessons) > 1 else 0
        if index is not None:
            self._add(partial(self._sets.add, path, lessons[index]))

    def _add(self, add: Callable[[], int]) -> None:
        try:
            place = add()
        except RefusedEditError as refusal:
            self.told.emit(str(refusal))
        else:
            self.added.emit(place)

    def _enable(self) -> None:
        self.from_page.setEnabled(self._document.state is not None)
        self.from_book.setEnabled(len(self._sets.book) > 1)
