"""The notes of one bar in ABC (ABC 2.1, section 4), in the order of 4.20: what stands before a note, the note, its end.

Accidentals are written as the standard has them by default: one holds for its letter in every octave to the end of
the bar (11.3).
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from core.bowing import Articulation, Bow, Bowing, Grace, Ornament, Signs
from core.chords import parse_chord
from core.engraving.bow_signs import MarkDensity
from core.reading.abc_marks import sign_in_words
from core.tune import Bar, Key, Note, Pitch, Tune
from core.writing.abc_fields import ACCIDENTALS
from core.writing.abc_rhythm import NoteRhythm, bar_rhythm, length_text
from core.writing.abc_strokes import is_tied, written_strokes
from core.writing.abc_text import one_line, quoted

_BOWS = {Bow.UP: "u", Bow.DOWN: "v"}
_MIDDLE_OCTAVE = 4  # of the capital letters
_GRACE_UNIT = Fraction(1, 2)  # quarter notes; the lengths of grace notes do not follow L: (4.12)

# ABC 2.1, 4.14 and 4.16; the long names that the standard lacks are common additions (from memory).
ORNAMENTS = {
    Ornament.ROLL: "~", Ornament.TRILL: "T", Ornament.MORDENT: "M", Ornament.UPPER_MORDENT: "P",
    Ornament.TURN: "!turn!", Ornament.INVERTED_TURN: "!invertedturn!", Ornament.SLIDE: "!slide!",
    Ornament.CUT: "!cut!",
}  # fmt: skip
ARTICULATIONS = {
    Articulation.STACCATO: ".", Articulation.ACCENT: "L", Articulation.FERMATA: "H", Articulation.TENUTO: "!tenuto!",
    Articulation.STACCATISSIMO: "!wedge!", Articulation.SNAP_PIZZICATO: "!snap!", Articulation.OPEN_STRING: "!open!",
    Articulation.BREATH_MARK: "!breath!", Articulation.STRONG_ACCENT: "!marcato!", Articulation.SPICCATO: "!spiccato!",
    Articulation.STRESS: "!stress!", Articulation.UNSTRESS: "!unstress!", Articulation.HARMONIC: "!harmonic!",
    Articulation.DETACHED_LEGATO: "!tenuto!.",  # which is how it looks
}  # fmt: skip
ON_RESTS = (Articulation.FERMATA, Articulation.BREATH_MARK)


class NoteWriter:
    """Writes the notes of one bowing, bar by bar and in order.

    Args:
        tune: The tune.
        bowing: What stands on its notes.
        unit: Unit note length in quarter notes.
        density: Which strokes have a bow mark beside those that the player fixed; None for no others.
    """

    def __init__(self, tune: Tune, bowing: Bowing, unit: Fraction, density: MarkDensity | None) -> None:
        self._bowing, self._unit = bowing, unit
        self._strokes = written_strokes(tune, bowing, density)
        self._before: Note | None = None

    def bar(self, bar: Bar) -> str:
        """The notes of a bar, with the chords and words over them."""
        accidentals = _Accidentals(bar.key)
        texts = _texts(bar)
        parts: list[str] = []
        closes = touches = False
        for place, (note, rhythm) in enumerate(zip(bar.notes, bar_rhythm(bar, self._unit), strict=True)):
            if closes and not touches and parts[-1][-1] != " " and note.id in self._strokes.opens:
                parts.append(" ")
            closes, touches = note.id in self._strokes.closes, rhythm.touches
            parts += texts.get(place, ())
            parts.append(self._note(note, rhythm, accidentals))
        if not bar.notes:  # ABC has no empty bars
            parts.append("x" + length_text(bar.meter.bar_length or Fraction(1), self._unit))
        return "".join(parts)

    def _note(self, note: Note, rhythm: NoteRhythm, accidentals: _Accidentals) -> str:
        strokes, signs = self._strokes, self._bowing.signs_on(note.id)
        tied = self._before is not None and is_tied(self._before, note)
        self._before = note
        parts = [rhythm.tuplet]
        if note.is_rest:
            marks = [ARTICULATIONS[sign] for sign in signs.articulations if sign in ON_RESTS]
            parts += [*marks, "x" if note.hidden else "z", rhythm.length]
        else:
            parts += ["(" if note.id in strokes.opens else "", _graces(signs.graces, accidentals)]
            parts += [self._marks(note, signs), _pitches(note, tied, accidentals), rhythm.length]
            parts += ["-" if note.id in strokes.ties else "", ")" if note.id in strokes.closes else ""]
        return "".join([*parts, rhythm.broken, " " if rhythm.parted else ""])

    def _marks(self, note: Note, signs: Signs) -> str:
        strokes = self._strokes
        articulations = signs.articulations
        if note.id in strokes.hooks and strokes.hooks[note.id] not in articulations:
            articulations = (*articulations, strokes.hooks[note.id])
        marks = [f"!{finger}!" for finger in signs.fingerings]
        if note.id in strokes.bows and not note.held:
            marks.append(_BOWS[strokes.bows[note.id]])
        marks += [ORNAMENTS[sign] for sign in signs.ornaments if sign in ORNAMENTS]
        return "".join([*marks, *(ARTICULATIONS[sign] for sign in articulations)])


def _texts(bar: Bar) -> dict[int, list[str]]:
    """Chord symbols and words by the place of the note that sounds where they stand.

    A chord symbol that is none stands as words. Words that a reader takes as a sign of playing order are left out.
    """
    texts: dict[int, list[str]] = {}
    items = [(chord.at, chord.text, "" if parse_chord(one_line(chord.text)) else "^") for chord in bar.chords]
    items += [(words.at, words.text, "^" if words.above else "_") for words in bar.words]
    for at, text, placement in items:
        place = max((place for place, note in enumerate(bar.notes) if note.at <= at), default=0)
        text = one_line(text)
        if text and not (placement and sign_in_words(text)):
            texts.setdefault(place, []).append(quoted(text, placement))
    return texts


class _Accidentals:
    """Accidentals in force in a bar, by letter."""

    def __init__(self, key: Key) -> None:
        self._alters = key.alters()

    def write(self, pitch: Pitch, always: bool = False) -> str:
        """A pitch as text (4.1, 4.2), with an accidental where it needs one, or always."""
        accidental = ""
        if always or self._alters[pitch.step] != pitch.alter:
            accidental = ACCIDENTALS[pitch.alter]
            self._alters[pitch.step] = pitch.alter
        return accidental + pitch_text(pitch)


def pitch_text(pitch: Pitch) -> str:
    """A pitch without its accidental.

    >>> [pitch_text(Pitch(octave, "G")) for octave in (3, 4, 5, 6)]
    ['G,', 'G', 'g', "g'"]
    """
    up = pitch.octave - _MIDDLE_OCTAVE
    return pitch.step.lower() + "'" * (up - 1) if up > 0 else pitch.step + "," * -up


def _pitches(note: Note, tied: bool, accidentals: _Accidentals) -> str:
    """The pitches of a note; one that is tied on keeps its accidental (4.11) unless two pitches share a letter."""
    bare = tied and not note.courtesy and len({pitch.height for pitch in note.pitches}) == len(note.pitches)
    texts = [pitch_text(p) if bare else accidentals.write(p, note.courtesy or tied) for p in note.pitches]
    return texts[0] if len(texts) == 1 else f"[{''.join(texts)}]"


def _graces(graces: Sequence[Grace], accidentals: _Accidentals) -> str:
    """Grace notes in braces (4.12), plain ones and those with a stroke apart."""
    text = ""
    slashed: bool | None = None
    for grace in graces:
        if grace.slashed is not slashed:
            text += ("}" if text else "") + ("{/" if grace.slashed else "{")
            slashed = grace.slashed
        pitches = [accidentals.write(pitch) for pitch in grace.pitches]
        text += pitches[0] if len(pitches) == 1 else f"[{''.join(pitches)}]"
        text += length_text(grace.length, _GRACE_UNIT)
    return text + "}" if text else ""
