"""Saving the open lesson, with every question on the way: where to, over what, and what if it cannot be.

Nothing is overwritten that the user has not seen, and a save that fails leaves lesson and disk as they were and offers
another place.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.dialogs import Answer, Clash, Dialogs
from app.document import Document
from app.files import ChangedFileError, FileError, Saved, lesson_path, save_over, suggested_name
from app.imprint import Imprint, imprint_of
from app.lesson_file import LessonFile
from core.translation import tr


class Saving(QObject):
    """Saves the lesson of a document.

    Args:
        document: The document.
        file: What is known of its file.
        dialogs: Asks the user.
        folder: Where files are suggested; asked each time.
        window: Above which the questions stand.

    Signals:
        saved: The file that the lesson now stands in.
        told: A sentence that stays on the window: the save failed and was given up.
        hinted: A sentence for the status line: it is saved, and where what stood there is now.
    """

    saved = Signal(object)
    told = Signal(str)
    hinted = Signal(str)

    def __init__(
        self, document: Document, file: LessonFile, dialogs: Dialogs, folder: Callable[[], Path], window: QWidget
    ) -> None:
        super().__init__(window)
        self._document = document
        self._file = file
        self._dialogs = dialogs
        self._folder = folder
        self._window = window

    def save(self) -> bool:
        """Save the lesson in its file; asks for one where it has none. Whether it is saved."""
        path = self._document.path
        return self.save_as() if path is None else self._write(path, self._file.known)

    def save_as(self, folder: Path | None = None) -> bool:
        """Ask for a file and save the lesson in it. Whether it is saved.

        Args:
            folder: Where the file is suggested; beside the lesson's own, or as the settings have it, where None.
        """
        state = self._document.state
        if state is None:
            return False
        path = self._document.path
        if folder is None and path is not None:
            suggestion = path
        else:
            name = path.name if path is not None else suggested_name(state.tune.title)
            suggestion = (folder or self._folder()) / name
        chosen = self._dialogs.path_to_save(self._window, suggestion)
        if chosen is None:
            return False
        path = lesson_path(chosen)
        if path == self._document.path:
            return self._write(path, self._file.known)
        return self._write(path, _as_agreed(path) if path == chosen else None)

    def may_leave(self) -> bool:
        """Whether the open lesson may go: it is saved, or the user says so."""
        state = self._document.state
        if state is None or not self._document.is_modified:
            return True
        answer = self._dialogs.about_changes(self._window, state.tune.title or tr("Untitled"))
        return answer is Answer.DROP or (answer is Answer.SAVE and self.save())

    def _write(self, path: Path, known: Imprint | None, *, set_aside: bool = False) -> bool:
        state = self._document.state
        assert state is not None
        try:
            saved = save_over(state.lesson, path, known, set_aside=set_aside)
        except ChangedFileError:
            return self._settle(path)
        except FileError as fault:
            if self._dialogs.save_elsewhere(self._window, str(fault)):
                return self.save_as(_another_folder(path, self._folder()))
            self.told.emit(str(fault))
            return False
        self._on_saved(path, saved)
        return True

    def _settle(self, path: Path) -> bool:
        """Ask what becomes of a file that holds something else than we know."""
        if path == self._document.path:
            sentence = tr(
                "{name} has been changed by another window or program since this lesson was read from it.",
                name=path.name,
            )
        else:
            sentence = tr("There is a file {name} already.", name=path.name)
        answer = self._dialogs.about_clash(self._window, sentence)
        if answer is Clash.OTHER_NAME:
            return self.save_as()
        return answer is Clash.OVERWRITE and self._write(path, None, set_aside=True)

    def _on_saved(self, path: Path, saved: Saved) -> None:
        self._document.mark_saved(path)
        self._file.know(path, saved.imprint)
        self.saved.emit(path)
        if saved.aside is None:
            text = tr("Saved in {name}.", name=path.name)
        else:
            text = tr("Saved in {name}. What stood there is kept in {kept}.", name=path.name, kept=saved.aside.name)
        self.hinted.emit(text)


def _as_agreed(path: Path) -> Imprint | None:
    """What is at a name that the user has just agreed to overwrite."""
    try:
        return imprint_of(path)
    except (OSError, ValueError):
        return None  # saving will say what is wrong


def _another_folder(path: Path, usual: Path) -> Path:
    """Where to suggest a file that could not be saved at ``path``."""
    return usual if usual != path.parent else Path.home()
