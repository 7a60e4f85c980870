"""Which sample of the stream is heard now: by the sound device, or by a clock of its own where there is no sound."""

from __future__ import annotations

from collections.abc import Callable

from app.player_device import MOST_REBUILT, MOST_SKIPPED_S, STALLED, STALLED_S, Devices, NoSoundError, Opened
from app.player_feed import Feed
from core.sound.track import SAMPLES_A_SECOND
from core.translation import tr

STEP_S = 0.1  # a device may say so seldom what it plays

Now = Callable[[], float]
"""Seconds of a clock that never goes back."""


class SoundClock:
    """A device that reads the stream; it is built anew where it stands still.

    Args:
        feed: The stream.
        devices: Where the device comes from.
        now: The clock that tells how long it stands still.
    Raises:
        NoSoundError: there is no sound.
    """

    def __init__(self, feed: Feed, devices: Devices, now: Now) -> None:
        self._feed, self._devices, self._now = feed, devices, now
        self._base = feed.given
        self._opened: Opened | None = devices.open(feed)
        self._seen, self._seen_at = self._base, now()  # what the device said last that was new, and when
        self._told = self._base
        self._rebuilt = 0

    def sample(self) -> int:
        """The sample that the device plays now; between what it says, time goes on by the clock.

        Raises:
            NoSoundError: it does not go on, however often it is built anew.
        """
        if self._opened is None:
            raise NoSoundError(tr(STALLED))
        sample = min(self._base + self._opened.samples, self._feed.given)
        now = self._now()
        if sample > self._seen or (self._feed.ended and sample >= self._feed.given):
            self._seen, self._seen_at, self._rebuilt = sample, now, 0
        elif now - self._seen_at >= STALLED_S and self._feed.ended:
            self._seen = self._feed.given  # a device may keep its last samples to itself
        elif now - self._seen_at >= STALLED_S:
            self._rebuilt += 1
            if self._rebuilt > MOST_REBUILT:
                raise NoSoundError(tr(STALLED))
            self.rebuild()
        since = min(max(now - self._seen_at, 0.0), STEP_S) if self._seen > self._base else 0.0
        going_on = min(self._seen + int(since * SAMPLES_A_SECOND), self._feed.given)
        self._told = max(self._told, going_on)
        return self._told

    def rebuild(self) -> None:
        """Open the default device anew and go on with what has not been heard.

        Raises:
            NoSoundError: there is none any more.
        """
        self.close()
        self._base, self._seen_at = self._seen, self._now()
        self._told = self._base
        self._opened = self._devices.open(self._feed)

    def close(self) -> None:
        """Stop the device; what was not heard of the stream is to be given out again."""
        if self._opened is not None:
            self._opened.close()
            self._opened = None
            self._feed.back_to(self._seen)


class SilentClock:
    """Goes through the stream in its own time."""

    def __init__(self, feed: Feed, now: Now) -> None:
        self._feed, self._now = feed, now
        self._last = now()
        self._rest = 0.0  # of a sample

    def sample(self) -> int:
        """The sample that would be heard now."""
        now = self._now()
        due = min(max(now - self._last, 0.0), MOST_SKIPPED_S) * SAMPLES_A_SECOND + self._rest
        self._last = now
        self._rest = due - int(due)
        self._feed.skip(int(due))
        return self._feed.given

    def close(self) -> None:
        """Nothing is to be stopped."""
