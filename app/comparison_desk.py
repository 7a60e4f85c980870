"""Puts the comparison to work in the window: its actions, and the menu of bowings to compare with."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu

from app.comparison import Comparison
from app.document import Document
from app.page_view import PageView


class ComparisonDesk(QObject):
    """Which bowings are compared, as the menus have it.

    Signals:
        hinted: A sentence for the status line.
    """

    hinted = Signal(str)

    def __init__(self, document: Document, comparison: Comparison, page: PageView, parent: QObject | None = None):
        super().__init__(parent)
        self._document, self._comparison, self._page = document, comparison, page
        self._actions: Mapping[str, QAction] = {}
        self._menu: QMenu | None = None
        document.lesson_changed.connect(self.show_state)
        comparison.changed.connect(self.show_state)

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        return {"compare": self.toggle, "compare_reference": self.tell_from_this}

    def use(self, actions: Mapping[str, QAction], menu: QMenu) -> None:
        """Take the actions of the window and the menu to be filled with bowings."""
        self._actions, self._menu = actions, menu
        menu.aboutToShow.connect(self._fill_menu)
        self.show_state()

    def toggle(self) -> None:
        """Compare bowings, those that were compared last or all, or show one alone again, as the menu entry says."""
        if self._comparison.runs:
            self._comparison.end()
        else:
            self._comparison.start()
            self.hinted.emit(self._page.comparison_words())
        self.show_state()

    def tell_from_this(self) -> None:
        """Tell the other bowings that are compared from the one that is worked on."""
        state = self._document.state
        if state is not None:
            self._comparison.refer_to(state.shown)
            self.hinted.emit(self._page.comparison_words())

    def show_state(self) -> None:
        """Show in the actions what is compared, and whether there is anything to compare."""
        if self._menu is None:
            return
        state, runs = self._document.state, self._comparison.runs
        several = state is not None and len(state.lesson.bowings) > 1
        self._actions["compare"].setChecked(runs)
        self._actions["compare"].setEnabled(several)
        self._actions["compare_reference"].setEnabled(runs)
        self._menu.menuAction().setEnabled(several)

    def _fill_menu(self) -> None:
        menu, state = self._menu, self._document.state
        assert menu is not None
        menu.clear()
        for place, bowing in enumerate(state.lesson.bowings if state is not None else ()):
            action = menu.addAction(bowing.name.replace("&", "&&"))
            action.setCheckable(True)
            action.setChecked(place in self._comparison.chosen)
            action.setEnabled(self._comparison.runs or state is None or place != state.shown)
            action.toggled.connect(partial(self._comparison.put, place))
