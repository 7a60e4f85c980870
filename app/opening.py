"""Opening a lesson, from wherever it comes: a file, the shelf, the clipboard, the tunes that come with the program.

The open lesson stays as it is where that fails or the user thinks better of it.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QMenu, QWidget

from app.dialogs import Dialogs
from app.document import Document
from app.files import FileError, is_slow_to_read, read_known
from app.imprint import Imprint
from app.settings import Settings
from app.way_in import WayIn
from core.errors import UnreadableFileError
from core.reading import Reading, read_file
from core.translation import plural, tr, translatable

if TYPE_CHECKING:
    from core.shelf.search import Entry

PASTED = translatable("The pasted text")


class Opening(QObject):
    """Puts lessons into a document.

    Args:
        document: The document.
        way_in: Lets lessons into it.
        dialogs: Asks the user.
        settings: Remembers files and their folder.
        window: Above which the questions stand.

    Signals:
        read: (file, place of the tune in it), where it comes from a file of the user's.
        told: (sentence, lines, what can be done about it) for ``Notice.say``.
        hinted: A sentence for the status line.
    """

    read = Signal(object, int)
    told = Signal(str, object, object)
    hinted = Signal(str)

    def __init__(
        self, document: Document, way_in: WayIn, dialogs: Dialogs, settings: Settings, window: QWidget
    ) -> None:
        super().__init__(window)
        self._document = document
        self._way_in = way_in
        self._dialogs = dialogs
        self._settings = settings
        self._window = window

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        return {"open": self.ask_and_open, "paste": self.open_pasted}

    def ask_and_open(self) -> None:
        """Ask for a file and open it."""
        path = self._dialogs.path_to_open(self._window, self._settings.folder)
        if path is not None:
            self.open_path(path)

    def open_entry(self, entry: Entry) -> bool:
        """Open a tune of the shelf."""
        return self.open_path(entry.file, entry)

    def open_path(self, path: Path, entry: Entry | None = None) -> bool:
        """Open a file.

        Args:
            entry: Which tune of it is wanted, as the shelf has it; asked where None.
        """
        is_own = self._document.path is not None and path.absolute() == self._document.path.absolute()
        if is_own and not self._way_in.may_come():  # which may write the file that is to be read
            return False
        try:
            read = self._read(path)
        except FileError as fault:
            self._settings.forget_file(path)
            self.told.emit(str(fault), (), None)
            return False
        if read is None or not (is_own or self._way_in.may_come()):
            return False
        if not self._put_reading(read[0], path.name, path, read[1], entry=entry):
            return False
        self._settings.remember_file(path)
        return True

    def open_sample(self, path: Path) -> bool:
        """Open a tune that comes with the program; saving asks for a file of the user's own."""
        try:
            reading = read_known(path)[0]
        except FileError as fault:
            self.told.emit(str(fault), (), None)
            return False
        return self._way_in.may_come() and self._put_reading(reading, path.name)

    def open_pasted(self) -> bool:
        """Open the tune in the clipboard, ABC or MusicXML text."""
        text = QGuiApplication.clipboard().text()
        if not text.strip():
            self.hinted.emit(tr("There is no text to paste: copy a tune first."))
            return False
        try:
            reading = read_file(text.encode())
        except UnreadableFileError as fault:
            self.told.emit(tr("{what} is no tune that can be read: {fault}", what=tr(PASTED), fault=fault), (), None)
            return False
        return self._way_in.may_come() and self._put_reading(reading, tr(PASTED), unsaved=True)

    def fill_recent(self, menu: QMenu) -> None:
        """Put the files opened lately into a menu, in place of what was there."""
        menu.clear()
        for path in self._settings.recent_files:
            action = menu.addAction(f"{path.name}    {path.parent}")
            action.triggered.connect(partial(self.open_path, path))
        if menu.isEmpty():
            menu.addAction(tr("Nothing opened yet")).setEnabled(False)

    def _read(self, path: Path) -> tuple[Reading, Imprint] | None:
        """Read a file; a large one with a way to leave off, and then None."""
        if not is_slow_to_read(path):
            return read_known(path)
        return self._dialogs.wait(self._window, tr("Reading {name} …", name=path.name), partial(read_known, path))

    def _put_reading(
        self,
        reading: Reading,
        name: str,
        path: Path | None = None,
        known: Imprint | None = None,
        *,
        unsaved: bool = False,
        entry: Entry | None = None,
    ) -> bool:
        """Put what was read in the place of the open lesson, which may go."""
        index = self._choose_lesson(reading, name, entry)
        if index is None:
            return False
        own = path if path is not None and reading.is_lesson_file and len(reading.lessons) == 1 else None
        put = partial(self._document.open, reading.lessons[index], own, unsaved=unsaved)
        elsewhere = self._way_in.let_in(put, path, reading.lessons, own, known)
        if path is not None:
            self.read.emit(path, index)
        self._tell(reading, name, elsewhere)
        return True

    def _choose_lesson(self, reading: Reading, name: str, entry: Entry | None) -> int | None:
        if len(reading.lessons) == 1:
            return 0
        from core.shelf.search import lesson_of  # not for the window's start

        found = lesson_of(entry, reading.lessons) if entry is not None else None
        return self._dialogs.tune_of_book(self._window, name, reading.lessons) if found is None else found

    def _tell(self, reading: Reading, name: str, elsewhere: str) -> None:
        """Say what there is to know of what was opened, if anything."""
        count = len(reading.problems)
        repaired = plural(
            "{name} is open; 1 thing was repaired or left out on the way.",
            "{name} is open; {n} things were repaired or left out on the way.",
            count, name=name,
        )  # fmt: skip
        sentences = [repaired if count else "", elsewhere]
        if any(sentences):
            lines = [str(problem)[:1].upper() + str(problem)[1:] for problem in reading.problems]
            self.told.emit(" ".join(filter(None, sentences)), lines, None)
