"""What the user is told of the open lesson's file: others have it open, others have changed it, it is gone."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.lesson_file import Change, LessonFile
from core.translation import tr


class FileNews(QObject):
    """Puts what a ``LessonFile`` sees into words, with what can be done about it.

    Args:
        document: The document.
        file: What is known of its file.
        save: Saves the lesson.
        read_again: Opens a file in the place of the open lesson.

    Signals:
        told: (sentence, lines, what can be done about it) for ``Notice.say``.
    """

    told = Signal(str, object, object)

    def __init__(
        self,
        document: Document,
        file: LessonFile,
        save: Callable[[], object],
        read_again: Callable[[Path], object],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._save = save
        self._read_again = read_again
        file.changed.connect(self._on_changed)

    def _on_changed(self, change: Change) -> None:
        path = self._document.path
        if path is None:
            return
        if change is Change.GONE:
            self._document.stack.resetClean()  # it stands in no file any more
            self.told.emit(
                tr("{name} is no longer where it was.", name=path.name), (), (tr("&Save it again"), self._save)
            )
            return
        if self._document.is_modified:
            text = tr(
                "{name} has been changed by another window or program. Saving will ask which of the two to keep.",
                name=path.name,
            )
            self.told.emit(text, (), None)
        else:
            text = tr("{name} has been changed by another window or program.", name=path.name)
            self.told.emit(text, (), (tr("&Read it again"), partial(self._read_again, path)))


def elsewhere(document: Document, file: LessonFile) -> str:
    """A sentence where another window has the same file open; "" where none has."""
    path = document.path
    if path is None or not file.is_open_elsewhere:
        return ""
    return tr(
        "{name} is open in another window too: whoever saves second is asked which of the two to keep.", name=path.name
    )
