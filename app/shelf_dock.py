"""Where the shelf stands in the window: a dock beside the page, closed until it is wanted."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDockWidget, QWidget

from app.shelf_pane import ShelfPane
from app.shelf_place import default_shelf
from app.welcome import sample_files


class ShelfDock(QDockWidget):
    """The dock with its ``ShelfPane``.

    Args:
        parent: The window.
        path: The catalogue; the user's own where None.

    Signals:
        opened, folder_wanted, hinted, told: Those of the pane.
        left: The keyboard may go back to the page.
    """

    opened = Signal(object)
    folder_wanted = Signal()
    hinted = Signal(str)
    told = Signal(str, list)
    left = Signal()

    def __init__(self, parent: QWidget, path: Path | None = None) -> None:
        super().__init__("Shelf", parent)
        self.setObjectName("shelf")
        self.setAllowedAreas(Qt.DockWidgetArea.AllDockWidgetAreas)
        self.pane = ShelfPane(path or default_shelf())
        self.setWidget(self.pane)
        self.hide()
        pane = self.pane
        pane.opened.connect(self.opened)
        pane.folder_wanted.connect(self.folder_wanted)
        pane.samples_wanted.connect(self._add_samples)
        pane.hinted.connect(self.hinted)
        pane.told.connect(self.told)
        pane.leave_wanted.connect(self._leave)
        self.add_places = pane.add_places
        self.note_opened = pane.desk.note_opened
        self.read_again = pane.desk.read_again
        self.end = pane.desk.close

    def toggle(self) -> None:
        """Give the search line the keyboard, opening the shelf first; close it where that has the keyboard already."""
        if self.isVisible() and self.pane.has_keyboard:
            self._leave()
            return
        self.show()
        self.raise_()
        self.pane.take_keyboard()

    def _leave(self) -> None:
        self.hide()
        self.left.emit()

    def _add_samples(self) -> None:
        folders = {path.parent for path in sample_files()}
        self.pane.add_places(sorted(folders))
