"""Which accidentals a bar needs: what the key signature gives, and what was written before in the same bar."""

from __future__ import annotations

from core.tune import Key, Pitch


class BarAccidentals:
    """Accidentals in force in one bar, note by note; an accidental holds for its own octave to the end of the bar."""

    def __init__(self, key: Key) -> None:
        self._signature = key.alters()
        self._written: dict[tuple[str, int], int] = {}

    def needed(self, pitch: Pitch) -> bool:
        """Whether the pitch, as the next one in the bar, needs an accidental of its own."""
        return self._written.get((pitch.step, pitch.octave), self._signature[pitch.step]) != pitch.alter

    def write(self, pitch: Pitch) -> None:
        """Take note that the pitch stands in the bar now."""
        self._written[pitch.step, pitch.octave] = pitch.alter
