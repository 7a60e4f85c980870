"""The mix of fiddle, backing and clicks: any stretch of it, always to the same samples."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate

import numpy as np

from core.sound.backing import Backing, strums
from core.sound.clicks import clicks
from core.sound.fiddle import fiddle
from core.sound.part import USUAL, Levels, Part
from core.sound.performance import Performance
from core.sound.track import SAMPLES_A_SECOND, Samples, Track, db, sample_at
from core.values import dataclass

TAIL = round(0.8 * SAMPLES_A_SECOND)  # samples in which the last notes die away
BLOCK = 65_536  # samples that files are written in
KNEE, CEILING = np.float32(0.7), np.float32(0.99)  # samples beyond the knee are bent, so that none passes the ceiling

BALANCE_DB = {Part.FIDDLE: 0.0, Part.BACKING: -4.0, Part.COUNT_IN: -2.0, Part.CLICK: -5.0}
"""What the parts are at their usual level; by ear."""


@dataclass(frozen=True)
class Mix:
    """A playing to be heard.

    Attributes:
        length: Samples, from the first click or note to the end of the tail.
        tracks: What sounds, with a factor for each.
    """

    length: int
    tracks: tuple[tuple[Track, np.float32], ...]

    def render(self, start: int, count: int) -> Samples:
        """Samples from ``start`` on, fewer than ``count`` where the mix ends before."""
        count = max(min(count, self.length - start), 0)
        heard = np.zeros(count, np.float32)
        for track, factor in self.tracks:
            heard += track.render(start, count) * factor
        return _limited(heard)

    def blocks(self, count: int = BLOCK) -> Iterator[Samples]:
        """All samples, ``count`` at a time, the last block as long as it has to be."""
        for start in range(0, self.length, count):
            yield self.render(start, count)


@dataclass(frozen=True)
class MixRow:
    """Mixes one after another: each begins where the playing before it is over, which rings on under it.

    Attributes:
        begins: The sample with which each begins.
        mixes: At least one.
    """

    begins: tuple[int, ...]
    mixes: tuple[Mix, ...]

    @property
    def length(self) -> int:
        """Samples, to the end of the last tail."""
        return self.begins[-1] + self.mixes[-1].length

    def render(self, start: int, count: int) -> Samples:
        """Samples from ``start`` on, fewer than ``count`` where it ends before."""
        heard = np.zeros(max(min(count, self.length - start), 0), np.float32)
        for begin, one in zip(self.begins, self.mixes, strict=True):
            first, last = max(start, begin), min(start + len(heard), begin + one.length)
            if first < last:
                heard[first - start : last - start] += one.render(first - begin, last - first)
        return np.clip(heard, -CEILING, CEILING)

    def blocks(self, count: int = BLOCK) -> Iterator[Samples]:
        """All samples, ``count`` at a time, the last block as long as it has to be."""
        for start in range(0, self.length, count):
            yield self.render(start, count)


def in_a_row(mixes: Sequence[Mix]) -> MixRow:
    """Mixes, at least one, as they are played one after another."""
    lengths = [one.length - TAIL for one in mixes]
    return MixRow((0, *accumulate(lengths[:-1])), tuple(mixes))


def mix(performance: Performance, backing: Backing | None = None, levels: Levels = USUAL) -> Mix:
    """Mix a playing.

    Args:
        performance: The playing.
        backing: Its backing, if any.
        levels: How loud each part is; those not listed are not heard.
    """
    sounds = {
        Part.FIDDLE: lambda: fiddle(performance),
        Part.BACKING: lambda: strums(backing) if backing else Track(()),
        Part.COUNT_IN: lambda: clicks(performance, counting_in=True),
        Part.CLICK: lambda: clicks(performance, counting_in=False),
    }
    heard = [(sounds[part](), db(BALANCE_DB[part] + level)) for part, level in levels.items()]
    return Mix(sample_at(performance.end) + TAIL, tuple((track, factor) for track, factor in heard if track.clips))


def _limited(heard: Samples) -> Samples:
    """Loud samples bent towards full scale, each by itself, so that blocks need to know nothing of each other."""
    over = np.abs(heard) > KNEE
    if over.any():
        rest = CEILING - KNEE
        heard[over] = np.sign(heard[over]) * (KNEE + rest * np.tanh((np.abs(heard[over]) - KNEE) / rest))
    return heard
