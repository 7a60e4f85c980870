"""Where the shelf stands in the window: a dock beside the page, closed until it is wanted.

What is in it is made when it is first shown, or has something to do.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QDialog, QDockWidget, QWidget

from app.samples import sample_files
from app.shelf_place import default_shelf
from core.translation import tr

if TYPE_CHECKING:
    from app.shelf_desk import ShelfDesk
    from app.shelf_pane import ShelfPane
    from core.shelf.query import Query

LATER_MS = 1000  # a shelf that nobody has looked at yet hears so late of what was opened


class ShelfDock(QDockWidget):
    """The dock with its ``ShelfPane``.

    Args:
        parent: The window.
        path: The catalogue; the user's own where None.

    Signals:
        opened, folder_wanted, hinted, told: Those of the pane.
        learned: Name of a style that was learned from lessons of the shelf.
        left: The keyboard may go back to the page.
    """

    opened = Signal(object)
    folder_wanted = Signal()
    hinted = Signal(str)
    told = Signal(str, list)
    learned = Signal(str)
    left = Signal()

    def __init__(self, parent: QWidget, path: Path | None = None) -> None:
        super().__init__(tr("Shelf"), parent)
        self.setObjectName("shelf")
        self.setAllowedAreas(Qt.DockWidgetArea.AllDockWidgetAreas)
        self._path = path or default_shelf()
        self._to_tell: list[Callable[[ShelfDesk], None]] = []
        self._later = QTimer(self, singleShot=True, interval=LATER_MS)
        self._later.timeout.connect(self._tell)
        self.hide()

    @cached_property
    def pane(self) -> ShelfPane:
        """The shelf itself, made now if it was not wanted before."""
        from app.shelf_pane import ShelfPane

        pane = ShelfPane(self._path)
        self.setWidget(pane)
        pane.opened.connect(self.opened)
        pane.folder_wanted.connect(self.folder_wanted)
        pane.samples_wanted.connect(self._add_samples)
        pane.hinted.connect(self.hinted)
        pane.told.connect(self.told)
        pane.learn_wanted.connect(self._ask_to_learn)
        pane.leave_wanted.connect(self._leave)
        return pane

    @property
    def _is_made(self) -> bool:
        return "pane" in self.__dict__

    def add_places(self, places: list[Path]) -> None:
        """Put folders or files on the shelf and read them."""
        self.pane.add_places(places)

    def note_opened(self, path: Path, position: int) -> None:
        """Note that the tune at this place of a file (from 0) was opened; nothing where there is no shelf."""
        self._tell_later(lambda desk: desk.note_opened(path, position))

    def read_again(self, path: Path) -> None:
        """Read one file that was just saved, if it belongs on the shelf."""
        self._tell_later(lambda desk: desk.read_again(path))

    def end(self) -> None:
        """End what runs; what the shelf was not told yet is told first."""
        self._later.stop()
        self._tell()
        if self._is_made:
            for dialog in self.findChildren(QDialog):
                dialog.close()
            self.pane.desk.close()

    def _tell_later(self, words: Callable[[ShelfDesk], None]) -> None:
        if not self._is_made and not self._path.exists():
            return
        self._to_tell.append(words)
        if self._is_made:
            self._tell()
        else:
            self._later.start()

    def _tell(self) -> None:
        to_tell, self._to_tell = self._to_tell, []
        for words in to_tell:
            words(self.pane.desk)

    def showEvent(self, event: QShowEvent) -> None:
        self.pane  # noqa: B018  (made now)
        super().showEvent(event)

    def toggle(self) -> None:
        """Give the search line the keyboard, opening the shelf first; close it where that has the keyboard already."""
        if self.isVisible() and self.pane.has_keyboard:
            self._leave()
            return
        self.show()
        self.raise_()
        self.pane.take_keyboard()

    def learn_style(self) -> None:
        """Have a style learned from the tunes that are found, opening the shelf first."""
        self.show()
        self.raise_()
        self.pane.learn()

    def _ask_to_learn(self, query: Query, tunes: int) -> None:
        from app.learn_dialog import LearnDialog

        for dialog in self.findChildren(LearnDialog):
            if dialog.work.runs:
                break
            dialog.close()  # what it tells is of other tunes
        else:
            dialog = LearnDialog(self._path, query, tunes, self)
            dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
            dialog.learned.connect(self.learned)
        dialog.show()
        dialog.raise_()
        dialog.activateWindow()

    def _leave(self) -> None:
        self.hide()
        self.left.emit()

    def _add_samples(self) -> None:
        folders = {path.parent for path in sample_files()}
        self.pane.add_places(sorted(folders))
