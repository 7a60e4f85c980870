"""The notes of a chord symbol, as pitch classes."""

from __future__ import annotations

from functools import lru_cache

from core.chords import NO_CHORD, Chord, DegreeType
from core.tune import STEP_SEMITONES
from core.values import dataclass

# Semitones over the root; a ninth is a second, an eleventh a fourth, a thirteenth a sixth.
TONES = {
    "major": (0, 4, 7), "minor": (0, 3, 7), "augmented": (0, 4, 8), "diminished": (0, 3, 6),
    "dominant": (0, 4, 7, 10), "major-seventh": (0, 4, 7, 11), "minor-seventh": (0, 3, 7, 10),
    "diminished-seventh": (0, 3, 6, 9), "augmented-seventh": (0, 4, 8, 10), "half-diminished": (0, 3, 6, 10),
    "major-minor": (0, 3, 7, 11), "major-sixth": (0, 4, 7, 9), "minor-sixth": (0, 3, 7, 9),
    "dominant-ninth": (0, 4, 7, 10, 2), "major-ninth": (0, 4, 7, 11, 2), "minor-ninth": (0, 3, 7, 10, 2),
    "dominant-11th": (0, 4, 7, 10, 2, 5), "major-11th": (0, 4, 7, 11, 2, 5), "minor-11th": (0, 3, 7, 10, 2, 5),
    "dominant-13th": (0, 4, 7, 10, 2, 5, 9), "major-13th": (0, 4, 7, 11, 2, 5, 9),
    "minor-13th": (0, 3, 7, 10, 2, 5, 9), "suspended-second": (0, 2, 7), "suspended-fourth": (0, 5, 7),
    "power": (0, 7),
}  # fmt: skip
DEGREES = {2: 2, 3: 4, 4: 5, 5: 7, 6: 9, 7: 10, 9: 2, 11: 5, 13: 9}
"""Semitones over the root of each degree that a symbol can name."""


@dataclass(frozen=True, slots=True)
class ChordNotes:
    """Pitch classes, 0 for C to 11 for B.

    Attributes:
        root: The root.
        bass: What the bass plays; the root unless the symbol names another.
        tones: Of the chord, without the bass where that is foreign to it; from the root on, ascending.
    """

    root: int
    bass: int
    tones: tuple[int, ...]


@lru_cache(maxsize=512)
def chord_notes(chord: Chord) -> ChordNotes | None:
    """The notes of a chord; None where the symbol says that there is none."""
    if chord.kind == NO_CHORD:
        return None
    tones = set(TONES.get(chord.kind, TONES["major"]))
    for degree in chord.degrees:
        plain = DEGREES.get(degree.value, 0)
        match degree.type:
            case DegreeType.ADD:
                tones.add((plain + degree.alter) % 12)
            case DegreeType.ALTER:
                tones = (tones - {plain}) | {(plain + degree.alter) % 12}
            case DegreeType.SUBTRACT:
                tones -= {plain, plain - 1} if degree.value == 3 else {plain}
    root = (STEP_SEMITONES[chord.root] + chord.root_alter) % 12
    bass = root if chord.bass is None else (STEP_SEMITONES[chord.bass[0]] + chord.bass[1]) % 12
    return ChordNotes(root, bass, tuple((root + tone) % 12 for tone in sorted(tones)))
