"""Puts the planner to work in the window: its actions, its tab beside the page, and what it shows on the page."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction

from app.page_view import PageView
from app.plan_pane import PlanPane
from app.plan_preview import PlanPreview
from app.preview_banner import PreviewBanner
from app.settings import Settings
from app.side_tabs import SideTabs


class PlanDesk(QObject):
    """The planner in the window.

    Args:
        pane: The planner.
        tabs: Where its tab comes and goes.
        banner: Tells over the page that a plan is shown.
        page: Shows a plan before it is taken.
        settings: Remembers whether the planner is in sight.

    Signals:
        previewed: The ``PlanPreview`` that the page shows from now on; None for the document's own bowing.
        room_wanted: Pixels of width that the pane would like to have.
        hinted: A sentence for the status line.
    """

    previewed = Signal(object)
    room_wanted = Signal(int)
    hinted = Signal(str)

    def __init__(
        self,
        pane: PlanPane,
        tabs: SideTabs,
        banner: PreviewBanner,
        page: PageView,
        settings: Settings,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._pane, self._tabs, self._banner, self._page, self._settings = pane, tabs, banner, page, settings
        self._actions: Mapping[str, QAction] = {}
        banner.take_wanted.connect(pane.take)
        banner.drop_wanted.connect(pane.drop)
        pane.previewed.connect(self._on_previewed)
        pane.hinted.connect(self.hinted)
        pane.likely.connect(page.foresee_plan)
        pane.note_wanted.connect(page.focus_on)
        pane.page_wanted.connect(page.setFocus)
        tabs.close_wanted.connect(lambda _: self.show_planner(False))

    @property
    def previews(self) -> bool:
        """Whether the page shows a plan in the place of the document's bowing."""
        return self._page.plan is not None

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        pane = self._pane
        return {
            "plan": lambda: self._do(pane.work_out),
            "plan_onward": lambda: self._do(pane.mend_from_here),
            "plan_compare": lambda: self._do(pane.compare),
            "plan_versions": pane.add_starting_versions,
            "plan_take": pane.take,
            "plan_take_new": pane.take_as_new,
            "plan_drop": pane.drop,
            "planner": self.toggle,
        }

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, to show in them what can be done."""
        self._actions = actions
        actions["plan"].hovered.connect(self._pane.look_ahead)
        self.show_state()

    def toggle(self) -> None:
        """Bring the planner into sight, with the keyboard; hide it where it is in sight."""
        shown = self._tabs.current is not self._pane
        self.show_planner(shown)
        (self._pane.form.accents if shown else self._page).setFocus(Qt.FocusReason.ShortcutFocusReason)

    def show_planner(self, shown: bool) -> None:
        """Show the planner in a tab beside the bow check, or hide it, and remember it."""
        self._settings.planner = shown
        self._actions["planner"].setChecked(shown)
        if shown:
            self._tabs.choose(self._pane)
            self.room_wanted.emit(self._pane.wanted_width)
        else:
            self._pane.drop()
            self._tabs.close_pane(self._pane)

    def drop(self) -> None:
        """Show the document's own bowing again."""
        self._pane.drop()

    def show_state(self) -> None:
        """Let a plan be taken or dropped while there is one on the page."""
        for name in ("plan_take", "plan_take_new", "plan_drop"):
            self._actions[name].setEnabled(self.previews)

    def _do(self, work: Callable[[], object]) -> None:
        """Show the planner and let it work."""
        self.show_planner(True)
        work()

    def _on_previewed(self, preview: PlanPreview | None) -> None:
        self._page.show_plan(preview)
        self._banner.show_preview(preview)
        self.show_state()
        self.previewed.emit(preview)
        if preview is not None:
            self.hinted.emit(preview.sentence)
