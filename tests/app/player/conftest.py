"""A sound device that plays as many samples as a test says, and someone who listens to it."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import numpy as np
import pytest
from PySide6.QtCore import QIODevice, QObject, Signal

from app.document import Document
from app.player import Player
from app.player_choice import PlayerChoice
from app.player_device import NoSoundError, Opened, Pull
from app.player_feed import Feed
from app.player_programme import Passage, Recipe, Step
from app.player_take import Take, make_take
from app.set_list import SetList
from core.lesson import Lesson
from core.sound.track import SAMPLES_A_SECOND, Samples


class FakeSink:
    """Plays when it is told to.

    Attributes:
        heard: All that it played.
    """

    def __init__(self) -> None:
        self.heard: list[Samples] = []
        self.device: QIODevice | None = None

    def start(self, device: QIODevice) -> None:
        self.device = device

    def stop(self) -> None:
        self.device = None

    def processedUSecs(self) -> int:
        return -(-sum(map(len, self.heard)) * 1_000_000 // SAMPLES_A_SECOND)  # rounded up, so that none is lost

    def play(self, samples: int) -> None:
        assert self.device is not None, "plays though it was stopped"
        self.heard.append(np.frombuffer(bytes(self.device.read(4 * samples)), np.float32))


class FakeDevices(QObject):
    """One device, or, with a fault, none."""

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.fault = ""
        self.sinks: list[FakeSink] = []

    def open(self, feed: Feed) -> Opened:
        if self.fault:
            raise NoSoundError(self.fault)
        self.sinks.append(FakeSink())
        return Opened(self.sinks[-1], Pull(feed, lambda samples: samples.tobytes(), 4, self))


class Listener:
    """Lets the device play and the player follow, step by step."""

    STEP_S = 0.01

    def __init__(self, player: Player, devices: FakeDevices, qtbot) -> None:
        self.player, self.devices, self._qtbot = player, devices, qtbot
        self.seconds = 100.0  # of the clock that the player sees
        self.told: list[str] = []
        player.hinted.connect(self.told.append)

    def now(self) -> float:
        return self.seconds

    @property
    def sink(self) -> FakeSink:
        return self.devices.sinks[-1]

    def until(self, condition: Callable[[], object]) -> None:
        """Wait for the thread; nothing is played meanwhile."""
        self._qtbot.waitUntil(lambda: (self.player.tick(), bool(condition()))[1], timeout=20_000)

    def begin(self) -> None:
        self.until(lambda: self.player._output.is_open)
        self.settle()

    def settle(self) -> None:
        """Wait until all that was asked of the thread is there."""
        self.until(lambda: self.player._making is None and not self.player._swap_due and not self.player._next_due)

    def hear(self, seconds: float) -> None:
        """Let time go on, and with it the device."""
        for _ in range(round(seconds / self.STEP_S)):
            self.seconds += self.STEP_S
            if self.player.plays and self.devices.sinks and self.sink.device is not None:
                self.sink.play(round(self.STEP_S * SAMPLES_A_SECOND))
            self.player.tick()
            if not self.player.plays:
                return


@pytest.fixture
def devices(qapp) -> FakeDevices:
    return FakeDevices()


@pytest.fixture
def sets(document: Document) -> SetList:
    return SetList(document)


@pytest.fixture
def listener(qtbot, document: Document, sets: SetList, devices: FakeDevices) -> Iterator[Listener]:
    found: list[Listener] = []
    player = Player(document, sets, PlayerChoice(), devices, lambda: found[0].now())
    found.append(Listener(player, devices, qtbot))
    player._timer.timeout.disconnect()  # a test says when time goes on
    yield found[0]
    player.close_down()


@pytest.fixture
def player(listener: Listener) -> Player:
    return listener.player


@pytest.fixture
def take(four_bars: Lesson) -> Take:
    """The first bar of a reel, counted in."""
    passage = Passage(four_bars.tune, four_bars.bowings[0], (0, 0))
    return make_take(Recipe(Step(), passage, 1, 1, counts=True), PlayerChoice().heard)
