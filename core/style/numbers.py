"""What is measured of a place, as numbers: rows of a table, read by the trees of a style."""

from __future__ import annotations

from collections.abc import Callable
from math import nan

import numpy as np
from numpy.typing import NDArray

from core.style.places import NOTE, Place, Sound

DANCES = ("reel", "strathspey", "hornpipe", "jig", "highland fling", "clog", "slip jig")
OTHER_NAMES = {"fling": "highland fling", "slipjig": "slip jig"}
OPEN_STRINGS = (55, 62, 69, 76)  # key numbers of G3 D4 A4 E5
WIDE = 12  # steps: farther is as far


def dance_number(dance: str) -> int:
    """Index in ``DANCES``, or behind its end for any other."""
    name = OTHER_NAMES.get(dance, dance)
    return DANCES.index(name) if name in DANCES else len(DANCES)


def _string(midi: int) -> int:
    """The highest open string that lies no higher, the lowest below all."""
    return max((index for index, lowest in enumerate(OPEN_STRINGS) if midi >= lowest), default=0)


def _length(offset: int) -> Callable[[Place], float]:
    def length(place: Place) -> float:
        sound = place.around[NOTE + offset]
        return sound.length / sound.beat if sound else nan

    return length


def _step(first: int, second: int) -> Callable[[Place], float]:
    def step(place: Place) -> float:
        one, other = place.around[NOTE + first], place.around[NOTE + second]
        return float(max(-WIDE, min(WIDE, other.height - one.height))) if one and other else nan

    return step


def _turn(place: Place, first: Sound | None, second: Sound | None) -> float:
    """Whether a step goes on in the direction of the step before the note: 1, turns back: -1, or neither: 0."""
    if first is None or second is None:
        return nan
    return float(np.sign(place.step) * np.sign(second.height - first.height))


NUMBERS: dict[str, Callable[[Place], float]] = {
    "bar length": lambda place: place.bar.full,
    "compound": lambda place: place.bar.compound,
    "beats into the bar": lambda place: place.note.at / place.note.beat,
    "place in the beat": lambda place: place.note.at % place.note.beat / place.note.beat,
    "place in the half": lambda place: place.note.at % (2 * place.note.beat) / place.note.beat,
    "share of the bar": lambda place: place.note.at / place.bar.full,
    "length before": _length(-1),
    "length": _length(0),
    "length behind": _length(1),
    "length two before": _length(-2),
    "length two behind": _length(2),
    "length three before": _length(-3),
    "place of the note before": lambda place: place.before.at % place.before.beat / place.before.beat,
    "step": _step(-1, 0),
    "step before": _step(-2, -1),
    "step behind": _step(0, 1),
    "step two behind": _step(1, 2),
    "size of the step": lambda place: min(abs(place.step), WIDE),
    "semitones": lambda place: place.note.midi - place.before.midi,
    "pitch": lambda place: place.note.midi,
    "pitch before": lambda place: place.before.midi,
    "inside a tuplet": lambda place: place.inside_tuplet,
    "in a tuplet": lambda place: place.note.tuplet > 0,
    "before in a tuplet": lambda place: place.before.tuplet > 0,
    "opens a tuplet": lambda place: place.note.opens_tuplet,
    "tuplet behind": lambda place: place.after is not None and place.after.opens_tuplet,
    "tuplet goes on": lambda place: place.after is not None and place.after.tuplet == place.note.tuplet != 0,
    "over a bar line": lambda place: place.over_bar_line,
    "note of the bar": lambda place: place.index,
    "notes to the bar line": lambda place: len(place.bar.sounds) - place.index,
    "notes of the bar": lambda place: len(place.bar.sounds),
    "bars before": lambda place: place.bar.full_bars_before,
    "bars behind": lambda place: place.bar.full_bars_behind,
    "bar of four": lambda place: place.bar.full_bars_before % 4,
    "bar of two": lambda place: place.bar.full_bars_before % 2,
    "section": lambda place: place.bar.section,
    "strings crossed": lambda place: _string(place.note.midi) - _string(place.before.midi),
    "open string": lambda place: place.note.midi in OPEN_STRINGS,
    "open string before": lambda place: place.before.midi in OPEN_STRINGS,
    "goes on": lambda place: _turn(place, place.around[NOTE - 2], place.before),
    "will go on": lambda place: _turn(place, place.note, place.after),
    "bar came before": lambda place: place.bar.again,
    "equal bars": lambda place: place.bar.alike,
    "rest behind": lambda place: place.after is None,
    "rest before": lambda place: place.around[NOTE - 2] is None,
    "double stop": lambda place: place.note.double or place.before.double,
    "shortest of the bar": lambda place: min(sound.length for sound in place.bar.sounds),
    "lengths of the bar": lambda place: len({sound.length for sound in place.bar.sounds}),
    "tuplet notes of the bar": lambda place: sum(sound.tuplet > 0 for sound in place.bar.sounds),
    "step over the note before": _step(-2, 0),
    "step over the note": _step(-1, 1),
    "in one beat": lambda place: place.before in place.beat_group,
    "in one half": lambda place: place.before in place.group,
    "equal pitch": lambda place: place.step == 0,
}


WIDTH = 1 + len(NUMBERS)  # columns of ``measure``


def measure(found: tuple[Place, ...], dance: str) -> NDArray[np.float32]:
    """Measure places of a tune: a row for each, a column for the dance and one for each of ``NUMBERS``."""
    number = dance_number(dance)
    rows = [[number, *[measured(place) for measured in NUMBERS.values()]] for place in found]
    return np.array(rows, dtype=np.float32).reshape(len(found), WIDTH)
