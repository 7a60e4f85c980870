"""Puts the page to work in the window: what menus and keys do to its notes, and the menus that it opens itself."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from PySide6.QtCore import QObject, QPoint
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget

from app.actions import NOTE_ITEMS, PLANS, STRIP_ITEMS, MenuItems, fill_menu
from app.page_view import PageView
from app.proposals import Extent
from core.accent_plan import PlanKind
from core.bowing import Bow, Ornament

MOST_PASSES = 4  # that a mark can be limited to from a menu or a key


class PageDesk(QObject):
    """The page's actions and its menus.

    Args:
        page: The page.
        window: Over which the menus open.
    """

    def __init__(self, page: PageView, window: QWidget) -> None:
        super().__init__(window)
        self._page, self._window = page, window
        self._actions: Mapping[str, QAction] = {}
        self._menu: QMenu | None = None
        page.menu_wanted.connect(self._show_note_menu)
        page.strip_menu_wanted.connect(partial(self._show_menu, STRIP_ITEMS))

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        page = self._page
        handlers: dict[str, Callable[[], object]] = {
            "slur": page.toggle_slur,
            "separate": page.separate,
            "hook": page.hook,
            "turn": page.turn,
            "down": partial(page.fix, Bow.DOWN),
            "up": partial(page.fix, Bow.UP),
            "free": page.free,
            "retake": page.retake,
            "pass_all": partial(page.limit, None),
            "accent": page.toggle_accent,
            "ornament_cut": partial(page.toggle_ornament, Ornament.CUT),
            "ornament_roll": partial(page.toggle_ornament, Ornament.ROLL),
            "ornament_turn": partial(page.toggle_ornament, Ornament.TURN),
            "ornament_triplet": partial(page.toggle_ornament, Ornament.BOWED_TRIPLET),
        }
        handlers |= {f"pass_{number}": partial(page.limit, number) for number in range(1, MOST_PASSES + 1)}
        handlers |= {
            f"plan_{extent.value}_{plan}": partial(page.set_plan, extent, None if plan == "drawn" else PlanKind(plan))
            for extent in Extent
            for plan in PLANS
        }
        return handlers

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, to put them into the menus."""
        self._actions = actions

    def _show_note_menu(self, place: QPoint) -> None:
        passes = self._page.passes()
        left_out = {f"pass_{number}" for number in range(passes + 1, MOST_PASSES + 1)}
        if passes < 2:
            left_out |= {"pass_all", "pass_1"}
        self._show_menu(tuple(item for item in NOTE_ITEMS if item not in left_out), place)

    def _show_menu(self, items: MenuItems, place: QPoint) -> None:
        if self._menu is not None and self._menu.isVisible():
            return  # some systems tell of the menu key twice
        menu = self._menu = QMenu(self._window)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.destroyed.connect(self._forget_menu)
        fill_menu(menu, items, self._actions)
        menu.popup(place)

    def _forget_menu(self) -> None:
        self._menu = None
