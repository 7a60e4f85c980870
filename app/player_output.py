"""Where the stream goes: to the sound device, or to a silent clock where there is none."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from app.player_clock import Now, SilentClock, SoundClock
from app.player_device import Devices, NoSoundError
from app.player_feed import Feed
from core.sound.track import SAMPLES_A_SECOND


class PlayerOutput(QObject):
    """Gives the stream out, and says how far it is heard.

    Args:
        feed: The stream.
        devices: Where the sound device comes from.
        now: The clock for silent playing.

    Signals:
        silenced: Why nothing is heard from now on, one sentence.
        changed: There is sound now, or none any more.
    """

    silenced = Signal(str)
    changed = Signal()

    def __init__(self, feed: Feed, devices: Devices, now: Now, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._feed, self._devices, self._now = feed, devices, now
        self._clock: SoundClock | SilentClock | None = None
        self._silence = ""
        devices.changed.connect(self._on_devices_changed)

    @property
    def is_open(self) -> bool:
        """Whether the stream is being given out."""
        return self._clock is not None

    @property
    def silence(self) -> str:
        """Why nothing is heard, one sentence; "" where there is sound."""
        return self._silence

    def open(self) -> None:
        """Begin to give the stream out."""
        try:
            self._clock = SoundClock(self._feed, self._devices, self._now)
            self._silence = ""
        except NoSoundError as fault:
            self._go_silent(str(fault))

    def close(self) -> None:
        """Give nothing out any more."""
        if self._clock is not None:
            self._clock.close()
            self._clock = None

    def heard(self, delay_ms: int) -> int | None:
        """The sample that is heard now; None where the stream has ended and all of it was given out.

        Args:
            delay_ms: How much later a device is heard than it says.
        """
        assert self._clock is not None
        try:
            sample = self._clock.sample()
        except NoSoundError as fault:
            self._go_silent(str(fault))
            sample = self._feed.given
        if self._feed.ended and sample >= self._feed.given:
            return None
        delay = delay_ms * SAMPLES_A_SECOND // 1000 if isinstance(self._clock, SoundClock) else 0
        return min(max(sample - delay, 0), self._feed.given)

    def _go_silent(self, sentence: str) -> None:
        self.close()
        self._clock = SilentClock(self._feed, self._now)
        if sentence != self._silence:
            self._silence = sentence
            self.silenced.emit(sentence)
            self.changed.emit()

    def _on_devices_changed(self) -> None:
        try:
            if isinstance(self._clock, SoundClock):
                self._clock.rebuild()
            elif self._clock is not None:
                self.open()
                self.changed.emit()
        except NoSoundError as fault:
            self._go_silent(str(fault))
