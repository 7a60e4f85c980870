"""Pitches of ABC notes: octaves, the key, and the accidentals that hold in the bar (ABC 2.1, 4.1, 4.2 and 11.3)."""

from __future__ import annotations

from functools import lru_cache

from core.reading.abc_draft import Complaints
from core.reading.abc_fields import ACCIDENTAL_ALTERS
from core.translation import tr
from core.tune import Key, Pitch

LOWEST_OCTAVE, HIGHEST_OCTAVE = 0, 9
NO_PITCHES: frozenset[Pitch] = frozenset()
_PLACES = {letter: (letter.upper(), 4 if letter.isupper() else 5) for letter in "ABCDEFGabcdefg"}


@lru_cache(maxsize=512)
def _pitch(octave: int, step: str, alter: int) -> Pitch:
    return Pitch(octave, step, alter)


class Pitches:
    """Turns the letters of notes into pitches.

    Attributes:
        key: In force; set it by ``change_key``.
        accidentals_carry: An accidental holds to the end of the bar.
        same_octave_only: It holds for its own octave, not for all.
    """

    def __init__(self, complaints: Complaints) -> None:
        self.accidentals_carry = True
        self.same_octave_only = False
        self._complaints = complaints
        self.change_key(Key(0, "none"))

    def change_key(self, key: Key) -> None:
        """Put a key in force; accidentals so far end."""
        self.key = key
        self._alters = key.alters()
        self._accidentals: dict[str, int] = {}

    def end_bar(self) -> None:
        """End the accidentals of the bar."""
        self._accidentals = {}

    def read(
        self, accidental: str | None, letter: str, marks: str, tied: frozenset[Pitch] = NO_PITCHES
    ) -> tuple[Pitch, bool]:
        """Pitch of a note, and whether it shows an accidental that key and bar do not need.

        Args:
            accidental: As written, or None.
            letter: ``A`` to ``G`` or ``a`` to ``g``.
            marks: Commas and apostrophes.
            tied: Pitches that a tie leads from to this note: it keeps their accidentals over the bar line.
        """
        step, octave = _PLACES[letter]
        if marks:
            octave += marks.count("'") - marks.count(",")
            if not LOWEST_OCTAVE <= octave <= HIGHEST_OCTAVE:
                text = tr("A note beyond all instruments is moved to the nearest octave that can be shown.")
                self._complaints.say(text, once="octave")
                octave = min(max(octave, LOWEST_OCTAVE), HIGHEST_OCTAVE)
        place = f"{step}{octave}" if self.same_octave_only else step
        in_force = self._accidentals.get(place, self._alters[step])
        if accidental is not None:
            alter = ACCIDENTAL_ALTERS[accidental]
            if self.accidentals_carry:
                self._accidentals[place] = alter
            return _pitch(octave, step, alter), alter == in_force
        for pitch in tied:
            if pitch.step == step and pitch.octave == octave:
                return pitch, False
        return _pitch(octave, step, in_force), False
