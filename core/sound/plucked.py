"""A plucked string: a burst of noise that goes round a loop and softens each time round.

Karplus and Strong, Computer Music Journal 7 (1983), 43: each sample is the mean of the two a period before it. A period
is worked out at once, and the whole is then read at the rate that brings the pitch to the cent.
"""

from __future__ import annotations

from functools import lru_cache
from itertools import pairwise

import numpy as np

from core.sound.track import SAMPLES_A_SECOND, Samples

LENGTH = int(1.0 * SAMPLES_A_SECOND)
RING_S = {True: 2.6, False: 1.8}  # to a thousandth, of strings below LOW_KEY and above
LOW_KEY = 52
PLUCKED_AT = 5  # a fifth of the string from its end
LEVEL = 0.1  # root mean square of the first 0.2 s
BEGINS = 44  # samples, 1 ms
FADE = int(0.06 * SAMPLES_A_SECOND)


@lru_cache(maxsize=64)
def plucked(key: int) -> Samples:
    """``LENGTH`` samples of a string tuned to a MIDI key."""
    hertz = 440 * 2 ** ((key - 69) / 12)
    period = round(SAMPLES_A_SECOND / hertz - 0.5)  # the mean of two samples adds half a sample
    noise = np.random.default_rng(key).uniform(-1, 1, period)  # seeded: always the same string
    noise -= noise.mean()
    for _ in range(2):
        noise = (noise + np.roll(noise, 1)) / 2
    noise -= np.roll(noise, max(1, period // PLUCKED_AT))
    loss = np.float32(10 ** (-3 * period / SAMPLES_A_SECOND / RING_S[key < LOW_KEY]) / 2)
    rounds = np.empty((int(LENGTH / period * 1.05) + 3, period), np.float32)
    rounds[0] = noise
    last = np.float32(0)
    for before, after in pairwise(rounds):
        after[1:] = loss * (before[1:] + before[:-1])
        after[0] = loss * (before[0] + last)
        last = before[-1]
    flat = rounds.ravel()
    places = np.arange(LENGTH) * (hertz * (period + 0.5) / SAMPLES_A_SECOND)
    whole = places.astype(np.int32)
    share = (places - whole).astype(np.float32)
    string: Samples = flat[whole] * (1 - share) + flat[whole + 1] * share
    string[:BEGINS] *= np.linspace(0, 1, BEGINS, dtype=np.float32)
    string *= np.float32(LEVEL / np.sqrt((string[: SAMPLES_A_SECOND // 5].astype(float) ** 2).mean()))
    return string


@lru_cache(maxsize=256)
def strummed(keys: tuple[int, ...], length: int, apart: int) -> Samples:
    """Strings plucked one after another and damped at the end.

    Args:
        keys: MIDI keys in the order plucked.
        length: Samples, at most ``LENGTH``.
        apart: Samples from one string to the next.
    """
    sound = np.zeros(length, np.float32)
    for number, key in enumerate(keys):
        begin = min(number * apart, length)
        sound[begin:] += plucked(key)[: length - begin]
    fade = min(FADE, length)
    sound[length - fade :] *= np.linspace(1, 0, fade, dtype=np.float32)
    return sound / np.float32(len(keys) ** 0.5)
