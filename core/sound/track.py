"""A track: sounds laid along the samples, of which any stretch can be rendered.

What a stretch holds does not depend on how it is asked for: every sound is worked out whole and added in the same
order, so that blocks of any size join to the very same samples.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Iterable
from fractions import Fraction
from functools import cached_property
from typing import NamedTuple, TypeAlias

import numpy as np
from numpy.typing import NDArray

from core.values import dataclass

SAMPLES_A_SECOND = 44_100
Samples: TypeAlias = NDArray[np.float32]
"""Mono; a full-scale sine reaches from -1 to 1."""


def sample_at(seconds: Fraction) -> int:
    """The sample that is nearest to a time."""
    return _nearest(seconds.numerator, seconds.denominator)


def samples_between(begin: Fraction, end: Fraction) -> int:
    """Samples that a stretch of time lasts, to the nearest, wherever it lies."""
    return _nearest(
        end.numerator * begin.denominator - begin.numerator * end.denominator, begin.denominator * end.denominator
    )


def _nearest(numerator: int, denominator: int) -> int:
    """Samples in a fraction of a second; whole numbers are much faster here than fractions."""
    return (2 * numerator * SAMPLES_A_SECOND + denominator) // (2 * denominator)


def db(level: float) -> np.float32:
    """Factor of a level in decibels."""
    return np.float32(10 ** (level / 20))


class Clip(NamedTuple):
    """One sound of a track.

    Attributes:
        begin: Its first sample on the track.
        length: Samples.
        sound: Works it out; always to the same samples.
    """

    begin: int
    length: int
    sound: Callable[[], Samples]


@dataclass(frozen=True)
class Track:
    """Sounds by their beginnings; they may overlap."""

    clips: tuple[Clip, ...]

    def render(self, start: int, count: int) -> Samples:
        """The samples from ``start`` on; silence where there is no sound."""
        stretch = np.zeros(count, np.float32)
        stop = start + count
        first = bisect_left(self._begins, start - self._longest + 1)
        for clip in self.clips[first : bisect_left(self._begins, stop)]:
            begin, end = max(clip.begin, start), min(clip.begin + clip.length, stop)
            if begin < end:
                stretch[begin - start : end - start] += clip.sound()[begin - clip.begin : end - clip.begin]
        return stretch

    @cached_property
    def _begins(self) -> list[int]:
        return [clip.begin for clip in self.clips]

    @cached_property
    def _longest(self) -> int:
        return max((clip.length for clip in self.clips), default=0)


def track(clips: Iterable[Clip]) -> Track:
    """A track of clips in any order."""
    return Track(tuple(sorted(clips, key=lambda clip: clip.begin)))
