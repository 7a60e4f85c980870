"""What is measured of a place, as numbers: columns of a table, read by the trees of a style."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

from core.style.digests import Column
from core.style.places import NOTE, Places, Sounds

DANCES = ("reel", "strathspey", "hornpipe", "jig", "highland fling", "clog", "slip jig")
OTHER_NAMES = {"fling": "highland fling", "slipjig": "slip jig"}
OPEN_STRINGS = (55, 62, 69, 76)  # key numbers of G3 D4 A4 E5
WIDE = 12  # steps: farther is as far

Numbers: TypeAlias = NDArray[np.generic]


def dance_number(dance: str) -> int:
    """Index in ``DANCES``, or behind its end for any other."""
    name = OTHER_NAMES.get(dance, dance)
    return DANCES.index(name) if name in DANCES else len(DANCES)


def _string(midi: Column) -> NDArray[np.intp]:
    """The highest open string that lies no higher, the lowest below all."""
    return np.maximum(np.searchsorted(OPEN_STRINGS, midi, side="right") - 1, 0)


def _length(offset: int) -> Callable[[Places], Numbers]:
    def length(at: Places) -> Numbers:
        sounds = at.around[NOTE + offset]
        return np.where(sounds.sounding, sounds.length / sounds.beat, np.nan)

    return length


def _step(first: int, second: int) -> Callable[[Places], Numbers]:
    def step(at: Places) -> Numbers:
        one, other = at.around[NOTE + first], at.around[NOTE + second]
        steps = np.clip(other.height - one.height, -WIDE, WIDE)
        return np.where(one.sounding & other.sounding, steps, np.nan)

    return step


def _turn(at: Places, first: Sounds, second: Sounds) -> Numbers:
    """Whether a step goes on in the direction of the step before the note: 1, turns back: -1, or neither: 0."""
    turns = np.sign(at.step) * np.sign(second.height - first.height)
    return np.where(first.sounding & second.sounding, turns, np.nan)


NUMBERS: dict[str, Callable[[Places], Numbers]] = {
    "bar length": lambda at: at.bar.full,
    "compound": lambda at: at.bar.compound,
    "beats into the bar": lambda at: at.note.at / at.note.beat,
    "place in the beat": lambda at: at.in_beat / at.note.beat,
    "place in the half": lambda at: at.in_half / at.note.beat,
    "share of the bar": lambda at: at.note.at / at.bar.full,
    "length before": _length(-1),
    "length": _length(0),
    "length behind": _length(1),
    "length two before": _length(-2),
    "length two behind": _length(2),
    "length three before": _length(-3),
    "place of the note before": lambda at: at.before.at % at.before.beat / at.before.beat,
    "step": _step(-1, 0),
    "step before": _step(-2, -1),
    "step behind": _step(0, 1),
    "step two behind": _step(1, 2),
    "size of the step": lambda at: np.minimum(np.abs(at.step), WIDE),
    "semitones": lambda at: at.note.midi - at.before.midi,
    "pitch": lambda at: at.note.midi,
    "pitch before": lambda at: at.before.midi,
    "inside a tuplet": lambda at: at.inside_tuplet,
    "in a tuplet": lambda at: at.note.tuplet > 0,
    "before in a tuplet": lambda at: at.before.tuplet > 0,
    "opens a tuplet": lambda at: at.note.opens_tuplet,
    "tuplet behind": lambda at: at.after.opens_tuplet,
    "tuplet goes on": lambda at: (at.after.tuplet == at.note.tuplet) & (at.note.tuplet != 0),
    "over a bar line": lambda at: at.over_bar_line,
    "note of the bar": lambda at: at.index,
    "notes to the bar line": lambda at: at.bar.notes - at.index,
    "notes of the bar": lambda at: at.bar.notes,
    "bars before": lambda at: at.bar.full_bars_before,
    "bars behind": lambda at: at.bar.full_bars_behind,
    "bar of four": lambda at: at.bar.full_bars_before % 4,
    "bar of two": lambda at: at.bar.full_bars_before % 2,
    "section": lambda at: at.bar.section,
    "strings crossed": lambda at: _string(at.note.midi) - _string(at.before.midi),
    "open string": lambda at: np.isin(at.note.midi, OPEN_STRINGS),
    "open string before": lambda at: np.isin(at.before.midi, OPEN_STRINGS),
    "goes on": lambda at: _turn(at, at.around[NOTE - 2], at.before),
    "will go on": lambda at: _turn(at, at.note, at.after),
    "bar came before": lambda at: at.bar.again,
    "equal bars": lambda at: at.bar.alike,
    "rest behind": lambda at: 1 - at.after.sounding,
    "rest before": lambda at: 1 - at.around[NOTE - 2].sounding,
    "double stop": lambda at: at.note.double | at.before.double,
    "shortest of the bar": lambda at: at.bar.shortest,
    "lengths of the bar": lambda at: at.bar.lengths,
    "tuplet notes of the bar": lambda at: at.bar.tuplet_notes,
    "step over the note before": _step(-2, 0),
    "step over the note": _step(-1, 1),
    "in one beat": lambda at: at.inside_beat,
    "in one half": lambda at: at.inside_half,
    "equal pitch": lambda at: at.step == 0,
}


WIDTH = 1 + len(NUMBERS)  # columns of ``measure``


def measure(found: Places, dance: str) -> NDArray[np.float32]:
    """Measure places of a tune: a row for each, a column for the dance and one for each of ``NUMBERS``."""
    measures = np.empty((WIDTH, len(found)), np.float32)
    measures[0] = dance_number(dance)
    for column, measured in zip(measures[1:], NUMBERS.values(), strict=True):
        column[:] = measured(found)
    return np.ascontiguousarray(measures.T)
