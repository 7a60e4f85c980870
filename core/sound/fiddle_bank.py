"""Recordings of single fiddle notes, made ready to be read at any pitch for any time.

The file is ``resources/sound/fiddle_bank.npz``; its licence and what stands in it are beside it.

They speak slowly, as they were played: a tenth of a second until they are full. A fiddler who plays reels bites at
once. So they are levelled here, and how a note begins and goes on is left to the envelope of the bow.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache, lru_cache
from importlib.resources import files
from typing import Any

import numpy as np
from numpy.lib.npyio import NpzFile
from numpy.typing import NDArray

from core.sound.track import SAMPLES_A_SECOND, Samples
from core.values import dataclass

FULL_SCALE = 32_768
WINDOW = 529  # samples in which a level is measured, 12 ms: two periods of the open G string
SLOW_WINDOW = 1764  # behind the beginning, 40 ms
SPOKEN = int(0.2 * SAMPLES_A_SECOND)  # where the beginning is over
MOST_LIFT = 6.0
BODY = int(0.35 * SAMPLES_A_SECOND)  # where a note that is not attacked enters
KEPT_LENGTH = 16_384  # notes are worked out in multiples of it


@dataclass(frozen=True)
class Recording:
    """One note.

    Attributes:
        key: Its pitch as a MIDI key, with a fraction.
        samples: From the attack to the end of the loop, one sample more for reading between samples.
        loop_begin, loop_end: The samples from one up to the other can be repeated for ever.
    """

    key: float
    samples: Samples
    loop_begin: int
    loop_end: int


@contextmanager
def _bank() -> Iterator[NpzFile]:
    """The file, whose parts are unpacked as they are asked for."""
    with (files("resources") / "sound" / "fiddle_bank.npz").open("rb") as file, np.load(file) as bank:
        yield bank


@cache
def keys() -> tuple[float, ...]:
    """Pitch of each recording as a MIDI key with a fraction, low to high."""
    with _bank() as bank:
        return tuple((bank["roots"] + bank["cents"] / 100).tolist())


@cache
def recording(number: int) -> Recording:
    """A recording by its place in ``keys``; each is read when it is first wanted, so that a player need not wait."""
    with _bank() as bank:
        begin, end = map(int, bank["loops"][number])
        samples: Samples = (bank[f"sample_{bank['roots'][number]}"] / FULL_SCALE).astype(np.float32)
    levelled, left_out = _levelled(samples[:end], begin)
    begin, end = begin - left_out, end - left_out
    return Recording(keys()[number], np.append(levelled, levelled[begin]), begin, end)


def _levelled(samples: Samples, loop_begin: int) -> tuple[Samples, int]:
    """As loud at its beginning, and all along, as in the mean; and how many samples were too soft and left out.

    Args:
        samples: Up to the end of the loop.
        loop_begin: Where the loop begins, which sounds on behind its end.
    """
    full = float(np.sqrt((samples[SPOKEN:].astype(float) ** 2).mean()))
    round_again = np.concatenate([samples, samples[loop_begin : loop_begin + SLOW_WINDOW]])
    quick = full / _levels(samples[: SPOKEN + WINDOW], WINDOW)[:SPOKEN]
    slow = full / _levels(round_again, SLOW_WINDOW)[: len(samples)]
    share = np.linspace(1, 0, SPOKEN)  # less and less quick, so that nothing steps
    lift = slow
    lift[:SPOKEN] = quick**share * slow[:SPOKEN] ** (1 - share)
    lift = np.minimum(lift, MOST_LIFT)
    left_out = int((lift < MOST_LIFT).argmax())
    return (samples * lift).astype(np.float32)[left_out:], left_out


def _levels(samples: Samples, window: int) -> NDArray[np.float64]:
    """Root mean square around each sample, in windows without edges."""
    power = np.pad(samples.astype(float) ** 2, window, mode="reflect")
    for width in (window // 2, window - window // 2):  # two boxes make a triangle
        sums = np.concatenate([[0.0], np.cumsum(power)])
        power = (sums[width:] - sums[:-width]) / width
    first = (len(power) - len(samples)) // 2
    levels: NDArray[np.float64] = np.sqrt(np.maximum(power[first : first + len(samples)], 0) + 1e-12)
    return levels


def sounding(key: int, length: int, *, attacked: bool) -> Samples:
    """A note of a key, at an even level.

    Args:
        key: MIDI key.
        length: Samples wanted.
        attacked: From the attack of the recording on; else from its body.
    Returns:
        At least as many samples as wanted; not to be written to.
    """
    return _kept(key, attacked, -(-length // KEPT_LENGTH) * KEPT_LENGTH)


def slid(key: int, length: int, semitones: int, sliding: int, *, attacked: bool) -> Samples:
    """A note that is reached by sliding.

    Args:
        key: MIDI key that is reached.
        length: Samples wanted.
        semitones: From the key to where the slide begins.
        sliding: Samples that the slide takes.
        attacked: As for ``sounding``.
    """
    way = np.clip(1 - np.arange(length) / max(sliding, 1), 0, 1) * semitones
    nearest = _nearest(key)
    steps = 2 ** ((key + way - nearest.key) / 12)
    return _read(nearest, (0 if attacked else BODY) + np.cumsum(steps) - steps[0])


@lru_cache(maxsize=128)
def _kept(key: int, attacked: bool, length: int) -> Samples:
    nearest = _nearest(key)
    begin = 0 if attacked else BODY
    return _read(nearest, begin + np.arange(length) * 2 ** ((key - nearest.key) / 12))


def _nearest(key: int) -> Recording:
    return recording(min(range(len(keys())), key=lambda number: abs(keys()[number] - key)))


def _read(source: Recording, places: NDArray[np.floating[Any]]) -> Samples:
    """The recording at places between its samples, going round in its loop."""
    begin, end = source.loop_begin, source.loop_end
    places = np.where(places < end, places, begin + (places - begin) % (end - begin))
    before = places.astype(np.int32)
    share = (places - before).astype(np.float32)
    samples = source.samples
    read: Samples = samples[before] * (1 - share) + samples[before + 1] * share
    read.setflags(write=False)
    return read
