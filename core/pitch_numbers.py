"""Pitches of a tune as whole numbers, for walks that compare many of them.

A ``Pitch`` is a value with three parts, and comparing or looking up many of them is slow. A tune has few pitches and
many notes, so that they can be numbered as they come.
"""

from __future__ import annotations

from collections.abc import Hashable

from core.once import once
from core.tune import Tune
from core.values import dataclass

REST = 0


@dataclass(frozen=True, slots=True)
class PitchNumbers:
    """What sounds in a tune.

    Attributes:
        bars: For each bar of ``Tune.bars`` a number for each note, equal where the pitches are; ``REST`` for a rest.
        heights: By number the step on the staff (``Pitch.height``) of the highest pitch; 0 for a rest.
        keys: By number the MIDI key (``Pitch.midi``) of the highest pitch; 0 for a rest.
    """

    bars: tuple[tuple[int, ...], ...]
    heights: tuple[int, ...]
    keys: tuple[int, ...]


@once
def pitch_numbers(tune: Tune) -> PitchNumbers:
    """Number the pitches of a tune."""
    numbers: dict[Hashable, int] = {(): REST}
    heights, keys = [0], [0]
    bars = []
    for bar in tune.bars:
        found = []
        for note in bar.notes:
            pitches = note.pitches
            if len(pitches) == 1:
                (pitch,) = pitches
                key: Hashable = (pitch.octave, pitch.step, pitch.alter)
            else:
                key = pitches
            number = numbers.get(key)
            if number is None:
                number = numbers[key] = len(numbers)
                heights.append(pitches[-1].height)
                keys.append(pitches[-1].midi)
            found.append(number)
        bars.append(tuple(found))
    return PitchNumbers(tuple(bars), tuple(heights), tuple(keys))
