"""Puts the player to work in the window: its actions, its bar, the mark on the page, and what is remembered."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QAction

from app.actions import draw_icon
from app.document import Document, State
from app.page_view import PageView
from app.plan_preview import PlanPreview
from app.player import Player
from app.player_bar import PlayerBar
from app.player_choice import SPEED_STEP, read_choice, write_choice
from app.player_device import Devices
from app.player_take import Moment
from app.set_list import SetList
from app.settings import Settings
from app.theme import LIGHT, Theme
from core.sound.mix import Part

WARM_MS = 1500  # after a lesson is opened what the first note needs is loaded


class PlayerDesk(QObject):
    """The player and its bar.

    Signals:
        hinted: A sentence for the status line.
    """

    hinted = Signal(str)

    def __init__(
        self, document: Document, sets: SetList, settings: Settings, page: PageView, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document, self._sets, self._settings, self._page = document, sets, settings, page
        self._theme = LIGHT
        self._actions: Mapping[str, QAction] = {}
        self.player = Player(document, sets, read_choice(settings.player), Devices(self), parent=self)
        self._kept = self.player.choice
        self.bar = PlayerBar(self.player)
        self._warm = QTimer(self, singleShot=True, interval=WARM_MS)
        self._warm.timeout.connect(self.player.warm_up)
        self.player.changed.connect(self._on_changed)
        self.player.moved.connect(self._on_moved)
        self.player.hinted.connect(self.hinted)
        self.bar.close_wanted.connect(partial(self.show_bar, False))
        document.lesson_changed.connect(self._on_lesson_changed)
        sets.changed.connect(self._on_changed)

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        player = self.player
        return {
            "play": lambda: self._do(lambda: player.toggle(self._page.focus_note)),
            "play_start": lambda: self._do(player.play),
            "play_bars": lambda: self._do(lambda: player.play_round(self._page.selection)),
            "play_round": lambda: self._switch("play_round", lambda on: player.choose(loops=on)),
            "play_all": lambda: self._do(lambda: player.choose(bars=None)),
            "play_set": lambda: self._switch("play_set", lambda on: player.choose(plays_set=on)),
            "slower": lambda: self._do(lambda: player.change_speed(-SPEED_STEP)),
            "faster": lambda: self._do(lambda: player.change_speed(SPEED_STEP)),
            "ladder": lambda: self._switch("ladder", lambda on: player.choose(climbs=on)),
            "player": lambda: self.show_bar(self._actions["player"].isChecked()),
        } | {f"hear_{part.value}": partial(self._hear, part) for part in Part}

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, to show in them what is chosen."""
        self._actions = actions
        self.bar.use(actions["play"], actions["play_round"], actions["ladder"])
        self._on_changed()

    def show_bar(self, shown: bool) -> None:
        """Show the bar; hide it and stop."""
        if not shown:
            self.player.stop()
            focused = self.bar.window().focusWidget()
            if focused is not None and self.bar.isAncestorOf(focused):
                self._page.setFocus()
        self.bar.setVisible(shown)
        self._on_changed()

    def show_plan(self, plan: PlanPreview | None) -> None:
        """Play a previewed bowing, as the page shows it."""
        self.player.show_plan(plan)

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._theme = theme
        self.bar.set_theme(theme)
        self._show_play()

    def close_down(self) -> None:
        """Stop for good."""
        self._warm.stop()
        self.player.close_down()

    def _do(self, work: Callable[[], object]) -> None:
        """Show the bar, since the player is used, and do something with it."""
        if not self.bar.isVisible():
            self.show_bar(True)
        work()

    def _switch(self, name: str, choose: Callable[[bool], object]) -> None:
        """Choose what a switch now says; the bar, once it is shown, sets all switches by what is chosen."""
        on = self._actions[name].isChecked()
        self._do(lambda: choose(on))

    def _hear(self, part: Part) -> None:
        self._switch(f"hear_{part.value}", lambda on: self.player.hear(part, on))

    def _on_changed(self) -> None:
        choice = self.player.choice
        if choice is not self._kept:
            self._kept = choice
            self._settings.player = write_choice(choice)
        if not self._actions:
            return
        self._show_play()
        on = {"play_round": choice.loops, "ladder": choice.climbs, "play_set": choice.plays_set}
        on |= {f"hear_{part.value}": part not in choice.muted for part in Part}
        on["player"] = not self.bar.isHidden()
        for name, value in on.items():
            self._actions[name].setChecked(value)
        self._actions["play_set"].setEnabled(bool(self._sets.state.tunes) or choice.plays_set)

    def _show_play(self) -> None:
        """Say and draw what the first action does now."""
        if self._actions:
            action, plays = self._actions["play"], self.player.plays
            action.setText("&Stop" if plays else "&Play")
            action.setIconText("Stop" if plays else "Play")
            action.setIcon(draw_icon("stop" if plays else "play", self._theme))

    def _on_moved(self, moment: Moment | None) -> None:
        there = moment is not None and moment.recipe.passage.tune is self.player.tune
        self._page.show_played(moment.note_id if moment is not None and there else "")

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        if before is None or before.tune is not after.tune:
            self.bar.show_tune(after.tune)
        if before is None:
            self._warm.start()
