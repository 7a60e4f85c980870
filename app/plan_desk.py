"""Puts the planner to work in the window: its actions, its tab beside the page, and what it shows on the page.

The planner is made when it is first wanted: it takes longer to load than the rest of the window.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWidget

from app.document import Document
from app.page_view import PageView
from app.plan_preview import PlanPreview
from app.preview_banner import PreviewBanner
from app.settings import Settings
from app.side_tabs import SideTabs
from core.translation import tr

if TYPE_CHECKING:
    from app.plan_pane import PlanPane


class PlanDesk(QObject):
    """The planner in the window.

    Args:
        document: The lesson.
        tabs: Where its tab comes and goes.
        banner: Tells over the page that a plan is shown.
        page: Shows a plan before it is taken.
        settings: Remembers whether the planner is in sight.

    Signals:
        made: The ``PlanPane``, which there was none of before.
        previewed: The ``PlanPreview`` that the page shows from now on; None for the document's own bowing.
        room_wanted: Pixels of width that the pane would like to have.
        hinted: A sentence for the status line.
    """

    made = Signal(object)
    previewed = Signal(object)
    room_wanted = Signal(int)
    hinted = Signal(str)

    def __init__(
        self,
        document: Document,
        tabs: SideTabs,
        banner: PreviewBanner,
        page: PageView,
        settings: Settings,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._tabs, self._banner, self._page = document, tabs, banner, page
        self._settings = settings
        self._actions: Mapping[str, QAction] = {}
        banner.take_wanted.connect(self._take)
        banner.bars_wanted.connect(self._take_bars)
        banner.drop_wanted.connect(self.drop)
        tabs.close_wanted.connect(lambda _: self.show_planner(False))
        tabs.shown.connect(self._on_pane_shown)

    @cached_property
    def pane(self) -> PlanPane:
        """The planner, made now if it was not wanted before."""
        from app.plan_pane import PlanPane

        pane = PlanPane(self._document, self._settings, lambda: self._page.selection)
        self._tabs.add(pane, tr("Plan"))
        pane.previewed.connect(self._on_previewed)
        pane.hinted.connect(self.hinted)
        pane.likely.connect(self._page.foresee_plan)
        pane.note_wanted.connect(self._page.focus_on)
        pane.page_wanted.connect(self._page.setFocus)
        self.made.emit(pane)
        return pane

    @property
    def _is_made(self) -> bool:
        return "pane" in self.__dict__

    @property
    def previews(self) -> bool:
        """Whether the page shows a plan in the place of the document's bowing."""
        return self._page.plan is not None

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        return {
            "plan": lambda: self._do(lambda pane: pane.work_out()),
            "plan_onward": lambda: self._do(lambda pane: pane.mend_from_here()),
            "carry_on": lambda: self._do(lambda pane: pane.carry_on()),
            "style_words": lambda: self._do(lambda pane: pane.tell_style()),
            "plan_compare": lambda: self._do(lambda pane: pane.compare()),
            "plan_versions": lambda: self.pane.add_starting_versions(),
            "plan_take": self._take,
            "plan_take_new": lambda: self.pane.take_as_new(),
            "plan_take_bars": self._take_bars,
            "plan_drop": self.drop,
            "planner": self.toggle,
        }

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, to show in them what can be done."""
        self._actions = actions
        actions["plan"].hovered.connect(lambda: self.pane.look_ahead())
        self.show_state()

    def toggle(self) -> None:
        """Bring the planner into sight, with the keyboard; hide it where it is in sight."""
        shown = not self._is_made or self._tabs.current is not self.pane
        self.show_planner(shown)
        (self.pane.form.accents if shown else self._page).setFocus(Qt.FocusReason.ShortcutFocusReason)

    def show_planner(self, shown: bool) -> None:
        """Show the planner in a tab beside the bow check, or hide it, and remember it."""
        self._settings.planner = shown
        self._actions["planner"].setChecked(shown)
        if shown:
            self._tabs.choose(self.pane)
        elif self._is_made:
            self.pane.drop()
            self._tabs.close_pane(self.pane)

    def _on_pane_shown(self, pane: QWidget) -> None:
        if self._is_made and pane is self.pane:
            self.room_wanted.emit(self.pane.wanted_width)

    def use_style(self, name: str) -> None:
        """Carry bowings on in this style from now on."""
        self.pane.styles.choose(name)

    def drop(self) -> None:
        """Show the document's own bowing again."""
        if self._is_made:
            self.pane.drop()

    def close_down(self) -> None:
        """Leave off for good: the window goes."""
        if self._is_made:
            self.pane.close_down()

    def show_state(self) -> None:
        """Let a plan be taken or dropped while there is one on the page."""
        for name in ("plan_take", "plan_take_new", "plan_drop"):
            self._actions[name].setEnabled(self.previews)
        shown = self._page.plan
        self._actions["plan_take_bars"].setEnabled(shown is not None and shown.takes_bars)

    def _do(self, work: Callable[[PlanPane], object]) -> None:
        """Show the planner and let it work."""
        self.show_planner(True)
        work(self.pane)

    def _take(self) -> None:
        self.pane.take()

    def _take_bars(self) -> None:
        self.pane.take_bars()

    def _on_previewed(self, preview: PlanPreview | None) -> None:
        """Show a preview, on the page last: what the banner takes of its room need not be engraved at once."""
        if preview is None:
            self._page.show_plan(None)
        self._banner.show_preview(preview)
        if preview is not None:
            self._page.show_plan(preview)
        self.show_state()
        self.previewed.emit(preview)
        if preview is not None:
            self.hinted.emit(preview.sentence)
