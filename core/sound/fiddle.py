"""The fiddle: one envelope of the bow for each attack, under it the notes that are fingered.

The first note of an attack sounds from the attack of its recording on; a slurred one enters in the body of its own,
the two crossing for a hundredth of a second, so that nothing speaks anew. Between attacks the bow all but stops.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache, partial
from typing import NamedTuple

import numpy as np

from core.bowing import Bow
from core.sound.attacks import Attack
from core.sound.fiddle_bank import slid, sounding
from core.sound.performance import Performance
from core.sound.track import SAMPLES_A_SECOND, Clip, Samples, Track, db, sample_at, samples_between, track

LEVEL_DB = 2.0  # of a plain down-bow, above the level of the recordings (-20 dB)


def _samples(seconds: float) -> int:
    return round(seconds * SAMPLES_A_SECOND)


# The envelope, by ear and by the measures of the tests. In short attacks its parts shrink to the shares beside them.
RISE = {Bow.DOWN: _samples(0.008), Bow.UP: _samples(0.011)}  # to the bite; at most a quarter of the attack
SETTLED = _samples(0.070)  # the bite is over; at most half
FALL = _samples(0.024)  # before the end; at most a quarter
STILL = _samples(0.006)  # of it, at the edge
RELEASE = _samples(0.025)  # what rings on
EDGE = 0.06  # level between attacks
SETTLED_SHARE, END_SHARE = 0.8, 0.6  # of an accent
END_LEVEL = 0.95

CROSSING = _samples(0.010)
SLIDE = _samples(0.090)


class _Fingered(NamedTuple):
    """A tone of an attack: its first sample, counted from the attack, the keys and the slide."""

    begin: int
    keys: tuple[int, ...]
    slide: int


class _Bowed(NamedTuple):
    """All that the sound of an attack depends on."""

    tones: tuple[_Fingered, ...]
    length: int  # samples up to the release
    loud_db: float
    bow: Bow


def fiddle(performance: Performance) -> Track:
    """The fiddle's track of a playing."""
    return track(_clip(attack) for attack in performance.attacks)


def _clip(attack: Attack) -> Clip:
    begin = attack.begin
    bowed = _Bowed(
        tuple([_Fingered(samples_between(begin, tone.begin), tone.keys, tone.slide) for tone in attack.tones]),
        max(samples_between(begin, attack.sounds_until), 1),
        attack.loud_db,
        attack.bow,
    )
    return Clip(sample_at(begin), bowed.length + RELEASE, partial(_sound, bowed))


@lru_cache(maxsize=512)
def _sound(bowed: _Bowed) -> Samples:
    total = bowed.length + RELEASE
    sound = np.zeros(total, np.float32)
    for voice in _voices(bowed, total):
        begin = max(voice.begin - CROSSING // 2, 0)
        end = min(voice.end + CROSSING // 2, total)
        length = end - begin
        attacked = not voice.begin
        crossing = _crossing(min(CROSSING, length))
        if voice.slide:
            heard = slid(voice.key, length, voice.slide, min(SLIDE, length // 2), attacked=attacked)
        elif attacked:
            heard = sounding(voice.key, length, attacked=True)
        else:
            period = round(SAMPLES_A_SECOND / (440 * 2 ** ((voice.key - 69) / 12)))
            heard = sounding(voice.key, length + period, attacked=False)
            heard = heard[_in_phase(sound[begin : begin + len(crossing)], heard, crossing, period) :]
        heard = heard[:length] * voice.level
        if not attacked:
            heard[: len(crossing)] *= crossing
        if voice.end < total:
            heard[-len(crossing) :] *= crossing[::-1]
        sound[begin:end] += heard
    return sound * _envelope(bowed)


def _in_phase(leaving: Samples, entering: Samples, crossing: Samples, period: int) -> int:
    """How far into a note to enter, within a period, so that it adds most to the note that it takes over from.

    Two notes a semitone apart could else all but cancel each other for the time of the crossing.
    """
    return int(np.correlate(entering[: len(leaving) + period - 1], leaving * crossing, "valid").argmax())


@lru_cache(maxsize=64)
def _crossing(length: int) -> Samples:
    """A fade in; with its mirror image it keeps the power of two notes that have nothing in common."""
    return np.sin(np.linspace(0, np.pi / 2, length, dtype=np.float32))


class _Voice(NamedTuple):
    """A key that sounds through one or more tones, in samples from the beginning of the attack."""

    key: int
    begin: int
    end: int
    slide: int
    level: np.float32


def _voices(bowed: _Bowed, total: int) -> Iterator[_Voice]:
    """Each key that sounds, from where it is fingered to where it is left; slurred on to itself it sounds on."""
    going: dict[int, tuple[int, int, np.float32]] = {}  # key: begin, slide, level
    for tone in bowed.tones:
        for key in [key for key in going if key not in tone.keys]:
            begin, slide, level = going.pop(key)
            yield _Voice(key, begin, tone.begin, slide, level)
        for key in tone.keys:
            if key not in going:
                going[key] = tone.begin, tone.slide, np.float32(len(tone.keys) ** -0.5)
    for key, (begin, slide, level) in going.items():
        yield _Voice(key, begin, total, slide, level)


def _envelope(bowed: _Bowed) -> Samples:
    length = bowed.length
    accent = float(db(bowed.loud_db))
    rise = min(RISE[bowed.bow], length // 4)
    settled = max(min(SETTLED, length // 2), rise)
    falling = min(FALL, length // 4)
    places = [0, rise, settled, length - falling, length - falling * STILL // FALL, length, length + RELEASE]
    levels = [
        EDGE, accent, 1 + SETTLED_SHARE * (accent - 1), END_LEVEL * (1 + END_SHARE * (accent - 1)),
        EDGE, EDGE, 0.0,
    ]  # fmt: skip
    return np.interp(np.arange(length + RELEASE), places, levels).astype(np.float32) * db(LEVEL_DB)
