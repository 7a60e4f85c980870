"""The help menu put to work: manual, keys, tour, what things are, and what the program is made of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWhatsThis

from app.dialogs import Dialogs
from app.help_texts import KEYS_TITLE, keys_text
from app.settings import Settings
from core.translation import tr

if TYPE_CHECKING:
    from app.main_window import MainWindow
    from app.manual_window import ManualWindow
    from app.tour import Tour


class HelpDesk(QObject):
    """What helps; each part is made when it is first wanted.

    Args:
        window: The window.
        dialogs: Show what keys do.
        settings: Remembers whether the tour was seen.
    """

    def __init__(self, window: MainWindow, dialogs: Dialogs, settings: Settings) -> None:
        super().__init__(window)
        self._window, self._dialogs, self._settings = window, dialogs, settings
        self._put_back: Callable[[], object] | None = None
        self._actions: Mapping[str, QAction] = {}
        self.tour: Tour | None = None
        self.manual: ManualWindow | None = None

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        return {
            "manual": self.show_manual,
            "keys": self.show_keys,
            "tour": self.start_tour,
            "whats_this": QWhatsThis.enterWhatsThisMode,
            "about": self.show_about,
        }

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, whose keys are told."""
        self._actions = actions

    def greet(self) -> None:
        """At the very first start, with nothing opened yet: open the lesson to try things on, and start the tour."""
        if not self._settings.tour_seen and not self._settings.recent_files:
            self.start_tour()

    def start_tour(self) -> None:
        """Lead through the window; from the beginning where it is on already."""
        from app.tour import Tour  # not for the window's start, here and below
        from app.tour_places import get_ready, tour_places

        if self.tour is None:
            self.tour = Tour(self._window, tour_places(self._window), self._settings)
            self.tour.ended.connect(self._on_tour_ended)
        if not self.tour.runs:
            self._put_back = get_ready(self._window)
        self.tour.start()

    def _on_tour_ended(self) -> None:
        put_back, self._put_back = self._put_back, None
        if put_back is not None:
            put_back()

    def show_manual(self) -> None:
        """Show the manual, where it was left."""
        if self.manual is None:
            from app.manual_window import ManualWindow

            self.manual = ManualWindow(self._window)
        self.manual.present()

    def show_keys(self) -> None:
        """Show what mouse and keys do on the page."""
        self._dialogs.tell(self._window, tr(KEYS_TITLE), keys_text(self._actions))

    def show_about(self) -> None:
        """Show what the program is made of."""
        from app.about_dialog import AboutDialog

        AboutDialog(self._window).open()

    def close_down(self) -> None:
        """Close what is open."""
        if self.manual is not None:
            self.manual.close()
        if self.tour is not None:
            self.tour.end()
