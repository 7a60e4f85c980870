"""The unofficial MusicXML files that travel with music21, and what music21 makes of the melody in each of their parts.

Told in the terms that both readers share: sounding notes (ties joined, neighbouring rests joined, grace notes left
aside) with MIDI keys and length, which notes a slur joins to the one before, bow marks, and repeat signs by bar.
"""

from __future__ import annotations

import importlib.util
import warnings
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from core.bowing import Bow, Bowing
from core.tune import Tune

MUSIC21 = importlib.util.find_spec("music21")
assert MUSIC21
FOLDER = Path(MUSIC21.origin or "").parent / "musicxml"
FILES = sorted(path for path in FOLDER.glob("*TestSuite/*") if path.suffix in (".xml", ".mxl", ".musicxml"))


@dataclass(frozen=True)
class Melody:
    """One melody line.

    Attributes:
        notes: (MIDI keys low to high, empty for a rest; length in quarter notes) of each sounding note.
        joins: Places of the notes that a slur joins to the note before.
        bows: (place, direction) of each bow mark.
        repeats: (index of the bar, "|:" or ":|") of each repeat sign.
    """

    notes: tuple[tuple[tuple[int, ...], Fraction], ...]
    joins: frozenset[int]
    bows: frozenset[tuple[int, Bow]]
    repeats: frozenset[tuple[int, str]]


def our_melody(tune: Tune, bowing: Bowing) -> Melody:
    """The melody of a lesson."""
    notes: list[tuple[tuple[int, ...], Fraction]] = []
    joins, bows = set(), set()
    for note in tune.sequence:
        keys = tuple(sorted(pitch.midi for pitch in note.pitches))
        if notes and (note.held or (note.is_rest and not notes[-1][0])):
            notes[-1] = (keys, notes[-1][1] + note.length)
        else:
            notes.append((keys, note.length))
        if note.id in bowing.joins:
            joins.add(len(notes) - 1)
        if note.id in bowing.marks:
            bows.add((len(notes) - 1, bowing.marks[note.id].bow))
    repeats = {(index, "|:") for index, bar in enumerate(tune.bars) if bar.opens_repeat}
    repeats |= {(index, ":|") for index, bar in enumerate(tune.bars) if bar.repeats}
    return Melody(tuple(notes), frozenset(joins), frozenset(bows), frozenset(repeats))


def melodies_by_music21(path: Path) -> list[Melody] | None:
    """The first voice of each part as music21 reads it; None where music21 cannot read the file."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        from music21 import converter
        from music21.exceptions21 import Music21Exception

        try:
            score = converter.parse(path, forceSource=True)
        except (Music21Exception, ValueError, KeyError, AttributeError, TypeError):
            return None
        return [_melody(part) for part in score.parts]


def _melody(part: object) -> Melody:
    from music21 import articulations, bar, spanner

    notes: list[tuple[tuple[int, ...], Fraction]] = []
    joins, bows, repeats = set(), set(), set()
    places: dict[int, int] = {}
    measures = list(part.getElementsByClass("Measure"))  # type: ignore[attr-defined]
    for index, measure in enumerate(measures):
        for side, sign in ((measure.leftBarline, "|:"), (measure.rightBarline, ":|")):
            if isinstance(side, bar.Repeat):
                repeats.add((index, sign))
        voices = list(measure.voices)
        for element in (voices[0] if voices else measure).notesAndRests:
            if element.duration.isGrace or "Harmony" in element.classes:
                continue
            keys = () if element.isRest else tuple(sorted(int(pitch.ps) for pitch in element.pitches))
            length = Fraction(element.quarterLength)
            held = bool(keys) and element.tie is not None and element.tie.type in ("stop", "continue")
            if notes and notes[-1][0] == keys and (held or not keys):
                notes[-1] = (keys, notes[-1][1] + length)
            else:
                notes.append((keys, length))
            places[id(element)] = len(notes) - 1
            for sign in element.articulations:
                if isinstance(sign, articulations.UpBow | articulations.DownBow):
                    bows.add((len(notes) - 1, Bow.UP if isinstance(sign, articulations.UpBow) else Bow.DOWN))
    for slur in part.recurse().getElementsByClass(spanner.Slur):  # type: ignore[attr-defined]
        first, last = (places.get(id(note)) for note in (slur.getFirst(), slur.getLast()))
        if first is not None and last is not None:
            joins |= set(range(first + 1, last + 1))
    return Melody(tuple(notes), frozenset(joins), frozenset(bows), frozenset(repeats))
