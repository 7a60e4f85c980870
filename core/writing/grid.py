"""The divisions of a quarter note that a MusicXML file counts in."""

from __future__ import annotations

from fractions import Fraction
from math import lcm

from core.tune import Tune


class Grid:
    """Divisions of a quarter note in which everything in a tune falls on whole numbers."""

    def __init__(self, tune: Tune) -> None:
        times = {note.length for note in tune.sequence}
        times |= {chord.at for bar in tune.bars for chord in bar.chords}
        times |= {words.at for bar in tune.bars for words in bar.words}
        self.divisions = lcm(*(time.denominator for time in times))

    def __call__(self, time: Fraction) -> str:
        return str(int(time * self.divisions))
