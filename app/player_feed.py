"""The stream of samples that the player gives out: takes one after another, and what was given out when.

Where one take follows another the first rings on under it; where one is swapped for another in the middle the two
cross, so that nothing clicks. Nothing here knows of Qt: a device reads from it, a silent clock skips through it.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from threading import RLock
from typing import NamedTuple

import numpy as np

from app.player_take import Take
from core.sound.mix import TAIL
from core.sound.track import Samples

CROSSING = 352  # samples, 8 ms


class Place(NamedTuple):
    """A sample of a take."""

    take: Take
    sample: int


class _Stretch(NamedTuple):
    """From sample ``out`` of the stream on, ``take`` is given out from its ``sample`` on."""

    out: int
    take: Take
    sample: int


class Feed:
    """The stream.

    Args:
        next_take: Called where a take is over, from whatever thread reads; the take that follows, or None.
    """

    def __init__(self, next_take: Callable[[Take], Take | None]) -> None:
        self._next_take = next_take
        self._lock = RLock()
        self._log: deque[_Stretch] = deque()
        self._now: Place | None = None
        self._ringing: list[Samples] = []  # what is still to be added of takes before
        self._rising: Samples | None = None  # factors for what comes next
        self._over = False  # the last take only rings on
        self._ended = False
        self.given = 0  # samples, from the beginning of the stream

    @property
    def ended(self) -> bool:
        """All was given out."""
        return self._ended

    @property
    def place(self) -> Place | None:
        """What is given out next."""
        return self._now

    def start(self, take: Take, sample: int | None = None) -> None:
        """Begin with a take, from its start where no sample is given."""
        with self._lock:
            self._log.clear()
            self._ringing, self._rising = [], None
            self._over = self._ended = False
            self.given = 0
            self._go_to(take, take.start if sample is None else sample)

    def swap(self, find: Callable[[Place], Place | None]) -> bool:
        """Go on in another take at once; ``find`` says where.

        Returns:
            False where it says nowhere; True too where all but the last ringing was given out.
        """
        with self._lock:
            if self._now is None or self._over or self._ended:
                return True
            take, sample = self._now
            going_on = find(self._now)
            if going_on is None:
                return False
            falling = np.linspace(1, 0, CROSSING, dtype=np.float32)
            self._ringing.append(take.sound.read(sample, CROSSING) * falling)
            self._rising = falling[::-1]
            self._go_to(*going_on)
            return True

    def back_to(self, out: int) -> None:
        """Give out again what was given out from a sample of the stream on."""
        with self._lock:
            place = self.heard(out)
            if place is None:
                return
            while self._log and self._log[-1].out > out:
                self._log.pop()
            self._ringing, self._rising = [], None
            self._ended = False
            self._over = place.sample >= place.take.end
            self.given = out
            self._now = place

    def heard(self, out: int) -> Place | None:
        """What stands at a sample of the stream; samples before it are not asked for any more."""
        with self._lock:
            while len(self._log) > 1 and self._log[1].out <= out:
                self._log.popleft()
            if not self._log:
                return None
            first = self._log[0]
            return Place(first.take, first.sample + max(out - first.out, 0))

    def read(self, count: int) -> Samples:
        """The next samples, fewer where it ends."""
        with self._lock:
            pieces = [piece for _, piece in self._walk(count, self._rendered)]
            return np.concatenate(pieces) if pieces else np.zeros(0, np.float32)

    def skip(self, count: int) -> int:
        """Go on without rendering anything; how many samples, fewer where it ends."""
        with self._lock:
            self._ringing, self._rising = [], None
            return sum(length for length, _ in self._walk(count, lambda place, length: None))

    def _walk(self, count: int, give: Callable[[Place, int], object]) -> list[tuple[int, object]]:
        given = []
        while count > 0 and self._now is not None and not self._ended:
            take, sample = self._now
            until = take.end + TAIL if self._over else take.end
            if sample >= until:
                self._take_over(take, sample)
                continue
            length = min(count, until - sample)
            given.append((length, give(self._now, length)))
            self._now = Place(take, sample + length)
            self.given += length
            count -= length
        return given

    def _take_over(self, take: Take, sample: int) -> None:
        following = None if self._over else self._next_take(take)
        if following is not None and following.end > following.start:  # else it would begin again for ever
            self._ringing.append(take.sound.read(take.end, TAIL))
            self._go_to(following, following.start)
        elif self._over:
            self._ended = True
        else:
            self._over = True

    def _go_to(self, take: Take, sample: int) -> None:
        if self._log and self._log[-1].out == self.given:
            self._log.pop()
        self._log.append(_Stretch(self.given, take, sample))
        self._now = Place(take, sample)

    def _rendered(self, place: Place, length: int) -> Samples:
        heard = place.take.sound.read(place.sample, length)
        if self._rising is not None:
            rising = self._rising[:length]
            heard[: len(rising)] *= rising
            self._rising = self._rising[length:] if length < len(self._rising) else None
        if self._ringing:
            for ringing in self._ringing:
                heard[: len(ringing)] += ringing[:length]
            self._ringing = [ringing[length:] for ringing in self._ringing if len(ringing) > length]
            np.clip(heard, -1, 1, out=heard)
        return heard
