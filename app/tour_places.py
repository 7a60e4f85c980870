"""Where in the window the stops of the tour are, and what makes the window ready for it."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from app.actions import MENUS
from app.samples import sample_files
from app.tour import Spot

if TYPE_CHECKING:
    from app.main_window import MainWindow

FIRST_LESSON = "tuesday_ferry.musicxml"
TOOL_MENUS = {"play": "Pla&y", "print": "&File"}  # where the same can be chosen


def tour_places(window: MainWindow) -> dict[str, Callable[[], Spot]]:
    """For each place of ``app.tour.STOPS``, what brings that part into sight and says where it is."""

    def check() -> Spot:
        window.tabs.choose(window.side_list)
        return Spot(window.side_list)

    def plan() -> Spot:
        window.show_planner(True)
        return Spot(window.plan)

    def tool(name: str) -> Spot:
        """A button; the menu with the same, where the tool bar is too short for it."""
        button = window.tool_bar.widgetForAction(window.actions_by_name[name])
        return Spot(button) if button.isVisible() else menu(TOOL_MENUS[name])

    def menu(title: str) -> Spot:
        bar = window.menuBar()
        place = [item[0] for item in MENUS].index(title)
        return Spot(bar, bar.actionGeometry(bar.actions()[place]))

    return {
        "page": lambda: Spot(window.area),
        "bowings": lambda: Spot(window.bowings),
        "check": check,
        "plan": plan,
        "play": partial(tool, "play"),
        "print": partial(tool, "print"),
        "help": partial(menu, "&Help"),
    }


def get_ready(window: MainWindow) -> Callable[[], object]:
    """Open the lesson to try things on, where none is open.

    Returns:
        What puts the panes back as they were.
    """
    had_planner = window.actions_by_name["planner"].isChecked()
    if window.document.state is None:
        window.open_sample(next(path for path in sample_files() if path.name == FIRST_LESSON))

    def put_back() -> None:
        if not had_planner and not window.planning.previews:
            window.show_planner(False)
        window.tabs.choose(window.side_list)

    return put_back
