"""Puts the player to work in the window: its actions, its bar, the mark on the page, and what is remembered.

Player and bar are made when they are first used; until then only what is chosen for them is known.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property, partial
from importlib import import_module
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.actions import draw_icon
from app.document import Document, State
from app.page_view import PageView
from app.plan_preview import PlanPreview
from app.player_choice import SPEED_STEP, PlayerChoice, read_choice, write_choice
from app.set_list import SetList
from app.settings import Settings
from app.theme import LIGHT, Theme
from core.sound.part import Part
from core.translation import tr

if TYPE_CHECKING:
    from concurrent.futures import Future

    from app.player import Player
    from app.player_bar import PlayerBar
    from app.player_take import Moment

WARM_MS = 1500  # after a lesson is opened what the first note needs is loaded
LOOK_MS = 50
MODULES = ("app.player", "app.player_bar", "app.player_device")  # loaded in a thread, before they are wanted


class PlayerDesk(QObject):
    """The player and its bar.

    Attributes:
        place: Where the bar stands in the window; as long as it is hidden, that takes no room.

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
        self._kept = read_choice(settings.player)
        self._plan: PlanPreview | None = None
        self._loading: Future[None] | None = None
        self._drawn: bool | None = False  # drawn to stop, or to play; None where it is to be drawn anew
        self.place = QWidget()
        self.place.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        room = QVBoxLayout(self.place)
        room.setContentsMargins(0, 0, 0, 0)
        self._warm = QTimer(self, singleShot=True)
        self._warm.timeout.connect(self._warm_up)
        document.lesson_changed.connect(self._on_lesson_changed)
        sets.changed.connect(self._on_changed)

    @cached_property
    def player(self) -> Player:
        """The player, made now if it was not used before."""
        from app.player import Player
        from app.player_device import Devices

        player = Player(self._document, self._sets, self._kept, Devices(self), parent=self)
        player.changed.connect(self._on_changed)
        player.moved.connect(self._on_moved)
        player.hinted.connect(self.hinted)
        player.show_plan(self._plan)
        return player

    @cached_property
    def bar(self) -> PlayerBar:
        """The bar, made now if it was not shown before."""
        from app.player_bar import PlayerBar

        bar = PlayerBar(self.player)
        self.place.layout().addWidget(bar)
        bar.close_wanted.connect(partial(self.show_bar, False))
        bar.set_theme(self._theme)
        bar.use(*(self._actions[name] for name in ("play", "play_round", "ladder")))
        if self._document.state is not None:
            bar.show_tune(self._document.state.tune)
        return bar

    @property
    def _is_used(self) -> bool:
        return "player" in self.__dict__

    @property
    def _has_bar(self) -> bool:
        return "bar" in self.__dict__

    @property
    def _choice(self) -> PlayerChoice:
        return self.player.choice if self._is_used else self._kept

    @property
    def plays(self) -> bool:
        """Whether it plays, or is about to."""
        return self._is_used and self.player.plays

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        return {
            "play": lambda: self._do(lambda player: player.toggle(self._page.focus_note)),
            "play_start": lambda: self._do(lambda player: player.play()),
            "play_bars": lambda: self._do(lambda player: player.play_round(self._page.selection)),
            "play_round": lambda: self._switch("play_round", lambda player, on: player.choose(loops=on)),
            "play_all": lambda: self._do(lambda player: player.choose(bars=None)),
            "play_set": lambda: self._switch("play_set", lambda player, on: player.choose(plays_set=on)),
            "slower": lambda: self._do(lambda player: player.change_speed(-SPEED_STEP)),
            "faster": lambda: self._do(lambda player: player.change_speed(SPEED_STEP)),
            "ladder": lambda: self._switch("ladder", lambda player, on: player.choose(climbs=on)),
            "player": lambda: self.show_bar(self._actions["player"].isChecked()),
        } | {f"hear_{part.value}": partial(self._hear, part) for part in Part}

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, to show in them what is chosen."""
        self._actions = actions
        self._on_changed()

    def show_bar(self, shown: bool) -> None:
        """Show the bar; hide it and stop."""
        if not shown and self._has_bar:
            self.player.stop()
            focused = self.bar.window().focusWidget()
            if focused is not None and self.bar.isAncestorOf(focused):
                self._page.setFocus()
        if shown or self._has_bar:
            self.bar.setVisible(shown)
        self._on_changed()

    def show_plan(self, plan: PlanPreview | None) -> None:
        """Play a previewed bowing, as the page shows it."""
        self._plan = plan
        if self._is_used:
            self.player.show_plan(plan)

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._theme = theme
        if self._has_bar:
            self.bar.set_theme(theme)
        self._drawn = None
        self._show_play()

    def close_down(self) -> None:
        """Stop for good."""
        self._warm.stop()
        if self._is_used:
            self.player.close_down()

    def _do(self, work: Callable[[Player], object]) -> None:
        """Show the bar, since the player is used, and do something with it."""
        if not self.bar.isVisible():
            self.show_bar(True)
        work(self.player)

    def _switch(self, name: str, choose: Callable[[Player, bool], object]) -> None:
        """Choose what a switch now says; the bar, once it is shown, sets all switches by what is chosen."""
        on = self._actions[name].isChecked()
        self._do(lambda player: choose(player, on))

    def _hear(self, part: Part) -> None:
        self._switch(f"hear_{part.value}", lambda player, on: player.hear(part, on))

    def _warm_up(self) -> None:
        """Load the player in a thread, and then what its first note needs."""
        if not self._is_used and self._loading is None:
            from concurrent.futures import ThreadPoolExecutor  # not for the start

            threads = ThreadPoolExecutor(max_workers=1)
            self._loading = threads.submit(_load)
            threads.shutdown(wait=False)
        if self._is_used or (self._loading is not None and self._loading.done()):
            self.player.warm_up()
        else:
            self._warm.start(LOOK_MS)

    def _on_changed(self) -> None:
        choice = self._choice
        if choice is not self._kept:
            self._kept = choice
            self._settings.player = write_choice(choice)
        if not self._actions:
            return
        self._show_play()
        on = {"play_round": choice.loops, "ladder": choice.climbs, "play_set": choice.plays_set}
        on |= {f"hear_{part.value}": part not in choice.muted for part in Part}
        on["player"] = self._has_bar and not self.bar.isHidden()
        for name, value in on.items():
            self._actions[name].setChecked(value)
        self._actions["play_set"].setEnabled(bool(self._sets.state.tunes) or choice.plays_set)

    def _show_play(self) -> None:
        """Say and draw what the first action does now."""
        if self._actions:
            action, plays = self._actions["play"], self.plays
            action.setText(tr("&Stop") if plays else tr("&Play"))
            action.setIconText(tr("Stop") if plays else tr("Play"))
            if plays is not self._drawn:
                self._drawn = plays
                action.setIcon(draw_icon("stop" if plays else "play", self._theme))

    def _on_moved(self, moment: Moment | None) -> None:
        there = moment is not None and moment.recipe.passage.tune is self.player.tune
        self._page.show_played(moment.note_id if moment is not None and there else "")

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        if self._has_bar and (before is None or before.tune is not after.tune):
            self.bar.show_tune(after.tune)
        if before is None:
            self._warm.start(WARM_MS)


def _load() -> None:
    for module in MODULES:
        import_module(module)
