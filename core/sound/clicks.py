"""The click: a short tick on each beat, higher where a bar begins."""

from __future__ import annotations

from functools import cache, partial

import numpy as np

from core.sound.performance import Performance
from core.sound.track import SAMPLES_A_SECOND, Clip, Samples, Track, sample_at, track

LENGTH = int(0.05 * SAMPLES_A_SECOND)
HERTZ = {True: 1650.0, False: 1100.0}  # strong, and the other beats
DIES_AWAY = 90.0  # to 1/e, times a second
LEVEL = 0.35


def clicks(performance: Performance, *, counting_in: bool) -> Track:
    """The clicks of a playing: those that count in, or those of the tune."""
    return track(
        Clip(sample_at(click.at), LENGTH, partial(_tick, click.strong))
        for click in performance.clicks
        if click.counting_in is counting_in
    )


@cache
def _tick(strong: bool) -> Samples:
    seconds = np.arange(LENGTH) / SAMPLES_A_SECOND
    tick = np.sin(2 * np.pi * HERTZ[strong] * seconds) * np.exp(-DIES_AWAY * seconds) * LEVEL
    return tick.astype(np.float32)
