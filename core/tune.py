"""The tune as written: pitches, rhythm, bars, chords and the signs that say what is played after what.

Everything that differs from one bowing to another (slurs, bow marks, grace notes, ornaments, articulation) is *not*
here: it lives in ``core.bowing``. A tune is never edited; a lesson keeps one tune and any number of bowings.

All times are ``Fraction`` in quarter notes. Values are frozen and know nothing of files, engraving or sound.
"""

from __future__ import annotations

from dataclasses import fields
from enum import Enum
from fractions import Fraction
from functools import cached_property

from core.values import dataclass

STEP_SEMITONES = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}
STEPS = "CDEFGAB"  # of an octave, upwards
SHARP_ORDER = "FCGDAEB"
MODE_FIFTHS = {  # fifths to add to the major key on the same tonic
    "major": 0, "minor": -3, "ionian": 0, "dorian": -2, "phrygian": -4,
    "lydian": 1, "mixolydian": -1, "aeolian": -3, "locrian": -5,
}  # fmt: skip
NOTE_BASES = tuple(Fraction(8, 2**k) for k in range(11))  # breve 8, whole 4, half 2 ... 1/512 note
MAX_DOTS = 3


@dataclass(frozen=True, slots=True, order=True)
class Pitch:
    """A sounding pitch with its spelling.

    Attributes:
        octave: Scientific octave; middle C is C4.
        step: Letter ``"A"`` to ``"G"``.
        alter: Semitones from the natural step, -2 to 2.
    """

    octave: int
    step: str
    alter: int = 0

    @property
    def midi(self) -> int:
        """MIDI key number; A4 is 69."""
        return 12 * (self.octave + 1) + STEP_SEMITONES[self.step] + self.alter

    @property
    def height(self) -> int:
        """Step on the staff, counted through all octaves whatever the accidentals; C4 is 28."""
        return len(STEPS) * self.octave + STEPS.index(self.step)

    def __str__(self) -> str:
        return f"{self.step}{'#' * self.alter if self.alter > 0 else 'b' * -self.alter}{self.octave}"


@dataclass(frozen=True, slots=True)
class Tuplet:
    """Membership of a note in a tuplet.

    Attributes:
        actual: Number of notes in the tuplet (3 in a triplet).
        normal: Number of notes of the same value whose time they take (2 in a triplet).
        starts: This note is the first of its tuplet; following notes with ``starts`` False belong to it.
    """

    actual: int
    normal: int
    starts: bool = False


def note_value(length: Fraction, tuplet: Tuplet | None = None) -> tuple[Fraction, int] | None:
    """Find the note value that shows a length.

    Args:
        length: Sounding length in quarter notes.
        tuplet: The tuplet that the note stands in, if any.
    Returns:
        ``(base, dots)`` with base in quarter notes (8 breve, 4 whole, 1/2 eighth), or None where no single note
        value of at most three dots shows the length.

    >>> note_value(Fraction(3, 2))
    (Fraction(1, 1), 1)
    >>> note_value(Fraction(1, 3), Tuplet(3, 2))
    (Fraction(1, 2), 0)
    """
    written = length * tuplet.actual / tuplet.normal if tuplet else length
    for dots in range(MAX_DOTS + 1):
        base = written / (2 - Fraction(1, 2**dots))
        if base in NOTE_BASES:
            return base, dots
    return None


@dataclass(frozen=True, slots=True)
class Note:
    """One written note, double stop or rest.

    Attributes:
        id: Ours; unique in the tune and the same in every bowing, picture, finding and file. Letters, digits, ``.``,
            ``_`` and ``-``, starting with a letter (so that it can be an XML id).
        at: Quarter notes from the start of the bar *as it stands in the file* to this note.
        length: Sounding length in quarter notes, greater than 0; ``note_value`` always finds a value for it.
        pitches: Low to high; empty for a rest.
        held: Tied on from the note before it: sounds on, is not struck again (rule B3).
        tuplet: Its tuplet, if any.
        courtesy: The source shows an accidental that key and bar do not need.
        hidden: A rest that takes time and is not printed.
    """

    id: str
    at: Fraction
    length: Fraction
    pitches: tuple[Pitch, ...] = ()
    held: bool = False
    tuplet: Tuplet | None = None
    courtesy: bool = False
    hidden: bool = False

    @property
    def is_rest(self) -> bool:
        return not self.pitches


@dataclass(frozen=True, slots=True)
class Meter:
    """A time signature.

    Attributes:
        groups: Numerator as written, ``(4,)`` or ``(2, 3, 2)``; empty for free metre.
        unit: Denominator: 4 is a quarter note.
        sign: ``"common"`` or ``"cut"`` where the letter C is printed in place of figures, else ``""``.
    """

    groups: tuple[int, ...] = (4,)
    unit: int = 4
    sign: str = ""

    @property
    def count(self) -> int:
        """Units in a bar; 0 for free metre."""
        return sum(self.groups)

    @property
    def bar_length(self) -> Fraction | None:
        """Quarter notes in a full bar; None for free metre."""
        return Fraction(4 * self.count, self.unit) if self.groups else None

    @property
    def is_compound(self) -> bool:
        """Beats of three units: 6/8, 9/8, 12/8 and the like."""
        return len(self.groups) == 1 and self.count > 3 and self.count % 3 == 0

    @property
    def beat_length(self) -> Fraction:
        """Quarter notes in a beat: a group of three units in compound time, else one unit."""
        return Fraction(4 * (3 if self.is_compound else 1), self.unit)

    def __str__(self) -> str:
        return f"{'+'.join(map(str, self.groups))}/{self.unit}" if self.groups else "free"


@dataclass(frozen=True, slots=True)
class Key:
    """A key signature.

    Attributes:
        fifths: Sharps (positive) or flats (negative), -7 to 7.
        mode: A key of ``MODE_FIFTHS``, or ``"none"`` where the source names no tonic.
        altered: Accidentals that differ from what ``fifths`` gives, as (step, alter) in the order written.
    """

    fifths: int = 0
    mode: str = "major"
    altered: tuple[tuple[str, int], ...] = ()

    def alters(self) -> dict[str, int]:
        """Semitones that the signature puts on each step, all seven steps."""
        alters = dict.fromkeys(SHARP_ORDER, 0)
        for step in SHARP_ORDER[: max(self.fifths, 0)]:
            alters[step] = 1
        for step in SHARP_ORDER[::-1][: max(-self.fifths, 0)]:
            alters[step] = -1
        return alters | dict(self.altered)

    @property
    def tonic(self) -> str:
        """Name of the tonic such as ``"F#"``; empty where the mode is ``"none"``."""
        if self.mode not in MODE_FIFTHS:
            return ""
        place = self.fifths - MODE_FIFTHS[self.mode] + 1  # of the tonic on the line F C G D A E B F# ...
        return SHARP_ORDER[place % 7] + ("#" * (place // 7) if place >= 0 else "b" * -(place // 7))

    def __str__(self) -> str:
        return f"{self.tonic} {self.mode}" if self.tonic else "no key"


@dataclass(frozen=True, slots=True)
class ChordSymbol:
    """A chord name over the staff; ``core.chords`` reads and writes the text.

    Attributes:
        at: Quarter notes from the start of the bar.
        text: As printed, for example ``"Am7"`` or ``"G/B"``.
    """

    at: Fraction
    text: str


@dataclass(frozen=True, slots=True)
class Words:
    """Text beside the staff that is not a chord.

    Attributes:
        at: Quarter notes from the start of the bar.
        text: One line.
        above: Printed above the staff, else below.
    """

    at: Fraction
    text: str
    above: bool = True


class BarLine(Enum):
    """How the bar line at the end of a bar looks; repeats are said by the bar's own fields."""

    PLAIN = "plain"
    DOUBLE = "double"
    FINAL = "final"


class Jump(Enum):
    """What the player does at the end of a bar, beyond repeats."""

    DA_CAPO = "D.C."
    DA_CAPO_AL_FINE = "D.C. al Fine"
    DA_CAPO_AL_CODA = "D.C. al Coda"
    DAL_SEGNO = "D.S."
    DAL_SEGNO_AL_FINE = "D.S. al Fine"
    DAL_SEGNO_AL_CODA = "D.S. al Coda"


@dataclass(frozen=True, slots=True)
class Bar:
    """One written bar.

    Attributes:
        number: Printed number. An opening pick-up is 0; bars count on through the tune, endings included; a part of a
            bar after a repeat or double bar that completes the short bar before it shares that bar's number.
        notes: In time order, without gaps: each note starts where the one before it ends, the first at 0.
        meter, key: In force throughout the bar.
        start: Quarter notes from the beginning of a *full* bar to the first note: 0, or more in a pick-up.
        opens_repeat: A repeat starts before the first note.
        repeats: How often in all the section ending here is played, 0 where no repeat ends (2 for ``:|``).
        ending: Passes for which the bar is played, ``(1,)`` under a first ending; empty outside endings.
        line: The bar line after the last note.
        part: Letter or name of the part that starts here, or "".
        segno, coda, to_coda, fine: Signs: target of D.S.; target of the jump to the coda; where that jump leaves
            (at the end of this bar); where the playing ends after a jump (at the end of this bar).
        jump: Jump at the end of this bar.
        chords, words: In time order.
    """

    number: int
    notes: tuple[Note, ...]
    meter: Meter = Meter()
    key: Key = Key()
    start: Fraction = Fraction(0)
    opens_repeat: bool = False
    repeats: int = 0
    ending: tuple[int, ...] = ()
    line: BarLine = BarLine.PLAIN
    part: str = ""
    segno: bool = False
    coda: bool = False
    to_coda: bool = False
    fine: bool = False
    jump: Jump | None = None
    chords: tuple[ChordSymbol, ...] = ()
    words: tuple[Words, ...] = ()

    @property
    def length(self) -> Fraction:
        """Quarter notes that the bar's notes and rests fill."""
        return self.notes[-1].at + self.notes[-1].length if self.notes else Fraction(0)

    @property
    def is_pickup(self) -> bool:
        """Begins inside the metre's bar: a pick-up to the next bar line."""
        return self.start.numerator > 0  # twice as fast as comparing the fraction

    @property
    def ends_section(self) -> bool:
        """A repeat, double bar, final bar or jump stands at its end."""
        return self.repeats > 0 or self.line is not BarLine.PLAIN or self.jump is not None


@dataclass(frozen=True, slots=True)
class Tempo:
    """A tempo mark.

    Attributes:
        beat: Length of the beat in quarter notes (3/2 for a dotted quarter).
        per_minute: Beats a minute.
        text: Words beside it, or "".
    """

    beat: Fraction
    per_minute: Fraction
    text: str = ""


@dataclass(frozen=True, slots=True)
class Credit:
    """Where a tune comes from.

    Attributes:
        kind: ``composer``, ``lyricist``, ``arranger``, ``origin``, ``source``, ``book``, ``transcriber``, ``notes``,
            ``history``, ``discography``, ``group``, ``area``, ``file``, ``lyrics``, ``rights`` or another word that a
            file uses.
        text: As written.
    """

    kind: str
    text: str


@dataclass(frozen=True)
class Tune:
    """A tune of one melody line.

    Attributes:
        title: First title; may be empty.
        bars: At least one, in written order.
        other_titles: Further titles.
        dance: ``reel``, ``jig`` ... in small letters; empty where unknown.
        tempo: At the start, if given.
        credits: In file order.
        part_order: Names of the parts in the order they are played (``("A", "A", "B")``); empty where the written
            order and the repeats say it.
        number: Number in its tune book (ABC ``X:``), 1 elsewhere.
    """

    title: str
    bars: tuple[Bar, ...]
    other_titles: tuple[str, ...] = ()
    dance: str = ""
    tempo: Tempo | None = None
    credits: tuple[Credit, ...] = ()
    part_order: tuple[str, ...] = ()
    number: int = 1

    @cached_property
    def sequence(self) -> tuple[Note, ...]:
        """All written notes and rests in written order."""
        return tuple(note for bar in self.bars for note in bar.notes)

    @cached_property
    def places(self) -> dict[str, int]:
        """Place of each note in ``sequence`` by note id."""
        return {note.id: place for place, note in enumerate(self.sequence)}

    @cached_property
    def bar_of(self) -> dict[str, int]:
        """Index in ``bars`` of each note's bar by note id."""
        return {note.id: index for index, bar in enumerate(self.bars) for note in bar.notes}

    def note(self, note_id: str) -> Note:
        """The note with this id.

        Raises:
            KeyError: no such note.
        """
        return self.sequence[self.places[note_id]]

    def __getstate__(self) -> dict[str, object]:
        """What is sent to another process: the tune itself, without the answers that are kept with it (``core.once``).

        Another thread may be adding answers at the same time.
        """
        return {field.name: getattr(self, field.name) for field in fields(self)}

    def before(self, note_id: str) -> Note | None:
        """The note or rest written just before this one, or None at the start."""
        place = self.places[note_id]
        return self.sequence[place - 1] if place else None

    def after(self, note_id: str) -> Note | None:
        """The note or rest written just after this one, or None at the end."""
        place = self.places[note_id] + 1
        return self.sequence[place] if place < len(self.sequence) else None
