"""A guided tour of the window: a few stops, each beside the part that it tells of.

The window stays as it is meanwhile: whatever is told of can be tried at once, by mouse or keyboard.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import NamedTuple

from PySide6.QtCore import QObject, QRect, Signal
from PySide6.QtWidgets import QMainWindow, QWidget

from app.settings import Settings
from app.tour_balloon import TourBalloon
from core.translation import tr, translatable


class Stop(NamedTuple):
    """A stop of the tour.

    Attributes:
        place: Of the window's parts, the one that it is beside.
        title, text: What is told there.
    """

    place: str
    title: str
    text: str


STOPS = (
    Stop(
        "page",
        "The tune",
        "This is a lesson to try things on. Click a note: it is slurred to the next, or the slur is parted. Click "
        "a bow mark: the stroke turns round, and every later one with it. Whatever you do can be undone with "
        "Ctrl+Z.",
    ),
    Stop(
        "bowings",
        "Its bowings",
        "One tune, several ways to bow it. Choose one and it is on the page; tick several and they stand under "
        "one another, with what tells them apart.",
    ),
    Stop(
        "check",
        "What a player would trip over",
        "The bow check reads along while you work. Choose a line: its notes are marked on the page, it says why "
        "it matters, and offers what mends it.",
    ),
    Stop(
        "plan",
        "A bowing worked out",
        "Choose which beats to drive, press F9, and the best bowing for them is shown on the page. It is a "
        "preview: Enter takes it, Esc drops it.",
    ),
    Stop(
        "play",
        "How it sounds",
        "F5 plays the tune as it is bowed, from the marked note on. Go round and round a few bars, or let it grow "
        "faster step by step. Rest often, and stop where anything hurts.",
    ),
    Stop(
        "print",
        "On paper",
        "Print a sheet for yourself or for a class. Ctrl+Shift+P shows its pages beside all that you can choose.",
    ),
    Stop(
        "help",
        "Whenever you want to know more",
        "Help has the manual, with pictures, all keys, and this tour. Shift+F1 and a click tell what anything in "
        "the window is. Your own tunes: File > Open, or drop a file on the window.",
    ),
)


COUNT = translatable("{n} of {all}")


class Spot(NamedTuple):
    """Where a stop is: a widget, and the part of it that is meant, in its own pixels; all of it where None."""

    widget: QWidget
    part: QRect | None = None


class Tour(QObject):
    """Leads from stop to stop.

    Args:
        window: The window that is shown.
        places: For each place of ``STOPS``, what brings that part into sight and gives it.
        settings: Remembers that the tour was seen.

    Signals:
        ended: It is over, or was broken off.
    """

    ended = Signal()

    def __init__(self, window: QMainWindow, places: Mapping[str, Callable[[], Spot]], settings: Settings) -> None:
        super().__init__(window)
        self._window, self._places, self._settings = window, places, settings
        self._stop = 0
        self._focus_before: QWidget | None = None
        self.balloon: TourBalloon | None = None

    @property
    def runs(self) -> bool:
        """Whether it is shown."""
        return self.balloon is not None

    def start(self) -> None:
        """Begin at the first stop; it counts as seen from here on."""
        self._settings.tour_seen = True
        if self.balloon is None:
            self._focus_before = self._window.focusWidget()
            self.balloon = TourBalloon(self._window)
            self.balloon.forward_wanted.connect(lambda: self.go(self._stop + 1))
            self.balloon.back_wanted.connect(lambda: self.go(self._stop - 1))
            self.balloon.end_wanted.connect(self.end)
        self.go(0)

    def go(self, stop: int) -> None:
        """Show a stop, by its number from 0; before the first there is none, behind the last it is over."""
        if self.balloon is None or stop < 0:
            return
        if stop >= len(STOPS):
            self.end()
            return
        self._stop = stop
        place, title, text = STOPS[stop]
        spot = self._places[place]()
        count = tr(COUNT, n=stop + 1, all=len(STOPS))
        self.balloon.show_stop(*spot, tr(title), tr(text), count, first=stop == 0, last=stop == len(STOPS) - 1)

    def end(self) -> None:
        """Leave off, and give the keyboard back."""
        if self.balloon is None:
            return
        balloon, self.balloon = self.balloon, None
        had_keyboard = balloon.isAncestorOf(self._window.focusWidget() or self._window)
        balloon.close_down()
        if had_keyboard and self._focus_before is not None and self._focus_before.isVisible():
            self._focus_before.setFocus()
        self.ended.emit()
