"""What can be measured of a sound without knowing how it was made: levels, dips, pitch and onsets."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

RATE = 44_100
WINDOW, HOP = 441, 88  # 10 ms, every 2 ms


def levels(sound: NDArray) -> tuple[NDArray, NDArray]:
    """Middles of windows of 10 ms in seconds, and the root mean square in each."""
    power = np.concatenate([[0.0], np.cumsum(sound.astype(float) ** 2)])
    begins = np.arange(0, len(sound) - WINDOW, HOP)
    means = np.maximum(power[begins + WINDOW] - power[begins], 0) / WINDOW
    return (begins + WINDOW / 2) / RATE, np.sqrt(means + 1e-14)


def dip_db(measured: tuple[NDArray, NDArray], at: float, *, after_silence: bool = False) -> float:
    """How far the level falls within 30 ms before and 40 ms after a time, below what it is on either side.

    After a silence, below what it is behind alone.
    """
    times, level = measured

    def between(begin: float, end: float) -> NDArray:
        return level[np.searchsorted(times, at + begin) : np.searchsorted(times, at + end)]

    around = np.median(between(0.045, 0.085))
    if not after_silence:
        around = min(around, np.median(between(-0.060, -0.025)))
    return float(20 * np.log10(around / between(-0.030, 0.040).min()))


def level_db(sound: NDArray, begin: float, end: float) -> float:
    """Root mean square of a stretch in decibels."""
    stretch = sound[round(begin * RATE) : round(end * RATE)].astype(float)
    return float(10 * np.log10((stretch**2).mean() + 1e-14))


def cents_off(sound: NDArray, begin: float, end: float, key: int) -> float:
    """How far a stretch is from a MIDI key in equal temperament, by its first five partials weighed by strength."""
    first, last = begin + 0.25 * (end - begin), begin + 0.85 * (end - begin)
    stretch = sound[round(first * RATE) : round(last * RATE)]
    size = 1 << 18
    spectrum = np.abs(np.fft.rfft(stretch * np.hanning(len(stretch)), size))
    fundamental = 440 * 2 ** ((key - 69) / 12)
    found, weights = [], []
    for partial in range(1, 6):
        hertz = partial * fundamental
        low, high = int(hertz * 0.972 / RATE * size), int(hertz * 1.029 / RATE * size)
        peak = low + int(spectrum[low:high].argmax())
        if peak in (low, high - 1):
            continue
        left, middle, right = np.log(spectrum[peak - 1 : peak + 2] + 1e-12)
        exact = peak + 0.5 * (left - right) / (left - 2 * middle + right)
        found.append(1200 * np.log2(exact * RATE / size / hertz))
        weights.append(spectrum[peak])
    return float(np.average(found, weights=weights))


def noise_db(sound: NDArray, begin: float, end: float, key: int) -> float:
    """How loud a stretch is between the partials of a MIDI key, beside its partials, from 100 Hz to 9 kHz."""
    size = 1 << 16
    stretch = sound[round(begin * RATE) : round(end * RATE)]
    power = np.abs(np.fft.rfft(stretch * np.hanning(len(stretch)), size)) ** 2
    hertz = np.arange(len(power)) * RATE / size
    fundamental = 440 * 2 ** ((key - 69) / 12)
    off = np.abs(hertz / fundamental - np.round(hertz / fundamental)) * fundamental
    heard = (hertz > 100) & (hertz < 9000)
    at_partial = off < 2.4 / (end - begin)  # the width of a partial in so short a stretch
    return float(10 * np.log10(power[heard & ~at_partial].mean() / power[heard & at_partial].mean()))


def onset(sound: NDArray, near: float, until: float) -> float:
    """Seconds at which a note is halfway, in decibels, between the dip near a time and its level from there on.

    The level is followed in windows of 2 ms that are 0.5 ms apart.
    """
    window, hop = 88, 22
    begin = max(round((near - 0.030) * RATE), 0)
    stretch = sound[begin : round(min(until, near + 0.090) * RATE)].astype(float)
    power = np.concatenate([[0.0], np.cumsum(stretch**2)])
    places = np.arange(0, len(stretch) - window, hop)
    level = 10 * np.log10((power[places + window] - power[places]) / window + 1e-10)
    level = np.convolve(level, np.ones(9) / 9, "same")  # 4.5 ms: a period of the lowest string
    dip = int(level[: round(0.055 * RATE / hop)].argmin())
    reached = dip + int(np.argmax(level[dip:] >= (level[dip] + np.median(level[dip + 20 :])) / 2))
    return (begin + places[reached] + window / 2) / RATE
