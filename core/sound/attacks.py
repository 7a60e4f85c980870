"""The attacks of a playing: what the bow and the fingers do, from note to note.

The bow makes an *attack* where a stroke begins, one for each further part of a bowed triplet, and one, after a stop,
for each hooked note. What is fingered meanwhile are *tones*: a slurred note, a cut or a turn is a new tone of the same
attack and has no attack of its own.

How loud an attack is says where the accents are: down-bows are a little stronger than up-bows, and an accented place is
driven where the bowing lets it be. A place that a slur buries cannot be heard, as on the page it cannot be seen.
Fermatas and breath marks take no time. All the loudness and the stops here are ours, by ear.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field
from enum import Enum
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from core.accents import Met, weigh
from core.bowing import PARTING, Articulation, Bow, Bowing, Ornament, Signs
from core.sound.bar_times import BarTimes, PlayedBar
from core.sound.figures import Moment, fingered
from core.strokes import Strokes
from core.tune import Note, Tune
from core.values import dataclass

BOW_DB = {Bow.DOWN: 0.0, Bow.UP: -1.0}
ACCENT_DB = {Met.DRIVEN: 6.5, Met.UP: 5.5, Met.BURIED: 0.0, Met.UNSTRUCK: 0.0}
SIGN_DB = {
    Articulation.ACCENT: 6.0, Articulation.STRONG_ACCENT: 8.0, Articulation.STRESS: 3.0, Articulation.UNSTRESS: -3.0,
}  # fmt: skip
SOUNDS_FOR = {  # share of its length that the last tone of an attack sounds; common practice, no source
    Articulation.STACCATO: Fraction(1, 2), Articulation.STACCATISSIMO: Fraction(1, 3),
    Articulation.SPICCATO: Fraction(1, 3),
}  # fmt: skip
WHOLE = Fraction(1)
STOP_S = Fraction(60, 1000)  # before a hooked note, and while the bow is lifted for a retake
STOP_SHARE = Fraction(1, 3)  # of the tone before it, at most


class Start(Enum):
    """How the bow makes an attack."""

    STROKE = "a stroke begins, the bow turning"
    RETAKEN = "a stroke begins, the bow lifted and set down"
    HOOKED = "the stroke goes on after a stop"


class Tone(NamedTuple):
    """What is fingered from a moment on, until the next tone or the end of the attack.

    Attributes:
        begin: Seconds from the beginning of the playing.
        keys: MIDI keys, low to high; more than one in a double stop.
        note: Index in ``Strokes.played`` of the written note.
        slide: Semitones from ``keys`` at which the finger sets down, to slide to them; 0 for no slide.
    """

    begin: Fraction
    keys: tuple[int, ...]
    note: int
    slide: int = 0


class Attack(NamedTuple):
    """One attack of the bow and what sounds on it.

    Attributes:
        begin, end: Seconds from the beginning of the playing; the bow moves from one to the other.
        sounds_until: The sound is stopped here, at ``end`` or before it.
        start: How it is made.
        bow: Direction.
        loud_db: Above a plain down-bow.
        tones: At least one, the first at ``begin``.
        visit: Index in the playing order of the bar where it begins.
    """

    begin: Fraction
    end: Fraction
    sounds_until: Fraction
    start: Start
    bow: Bow
    loud_db: float
    tones: tuple[Tone, ...]
    visit: int


def attacks_of(
    tune: Tune, bowing: Bowing, strokes: Strokes, times: Sequence[BarTimes], bars: Sequence[PlayedBar]
) -> tuple[Attack, ...]:
    """Work out the attacks of a playing.

    Args:
        tune: The tune.
        bowing: A bowing of it.
        strokes: Directions of the same bowing.
        times: For each bar of the tune when its notes begin.
        bars: When each visit of ``strokes.order`` is played.
    Returns:
        Attacks by time; rests leave gaps between them.
    """
    return _Walk(tune, bowing, strokes, times, bars).attacks()


@dataclass
class _Open:
    """The attack that is being played."""

    begin: Fraction
    start: Start
    bow: Bow
    loud_db: float
    visit: int
    tones: list[Tone] = field(default_factory=list)
    last_sounds_for: Fraction = WHOLE  # the share of its last tone that sounds


class _Walk:
    """The walk through the playing order that makes the attacks."""

    def __init__(
        self, tune: Tune, bowing: Bowing, strokes: Strokes, times: Sequence[BarTimes], bars: Sequence[PlayedBar]
    ) -> None:
        self.tune, self.bowing, self.strokes, self.times, self.bars = tune, bowing, strokes, times, bars
        self.met = {(accent.visit, accent.note_id): accent.met for accent in weigh(tune, bowing, strokes).met}
        self.fingered: dict[str, tuple[Moment, ...]] = {}
        self.open: _Open | None = None
        self.found: list[Attack] = []

    def attacks(self) -> tuple[Attack, ...]:
        index = 0
        for visit, (played, bowed) in enumerate(zip(self.bars, self.strokes.visits, strict=True)):
            steps = iter(zip(*bowed, strict=True))
            times = pairwise([*[played.begin + offset for offset in self.times[played.bar].notes[:-1]], played.end])
            for note, (begin, end) in zip(self.tune.bars[played.bar].notes, times, strict=True):
                if note.is_rest:
                    self._close(begin)
                    continue
                bow, starts, struck, retake = next(steps)
                self._note(note, index, visit, begin, end, (bow, starts, struck, retake))
                index += 1
        if self.bars:
            self._close(self.bars[-1].end)
        return tuple(self.found)

    def _note(
        self, note: Note, index: int, visit: int, begin: Fraction, end: Fraction, step: tuple[Bow, bool, bool, bool]
    ) -> None:
        bow, starts, struck, retake = step
        signs = self.bowing.signs_on(note.id)
        held = note.held and not struck and self.open is not None
        if not held:
            parted = not starts and not PARTING.isdisjoint(signs.articulations)
            if starts:
                self._begin(begin, Start.RETAKEN if retake else Start.STROKE, bow, self._loud(note, visit, bow), visit)
            elif struck or parted or self.open is None:
                self._begin(begin, Start.HOOKED, bow, self._loud(note, visit, bow), visit)
        assert self.open is not None
        share = min((SOUNDS_FOR.get(sign, WHOLE) for sign in signs.articulations), default=WHOLE)
        self.open.last_sounds_for = share
        if held:
            return
        moments = self._moments(note, signs, begin, end)
        if Ornament.BOWED_TRIPLET not in signs.ornaments:
            self.open.tones += [Tone(begin + at if at else begin, keys, index, slide) for at, keys, slide in moments]
            return
        third = (end - begin) / 3
        keys = moments[-1].keys
        self.open.tones += [Tone(begin + at, keys, index, slide) for at, keys, slide in moments if at < third]
        for part, turned in ((1, bow.turned), (2, bow)):
            self._begin(begin + part * third, Start.STROKE, turned, BOW_DB[turned], visit)
            self.open.tones.append(Tone(begin + part * third, keys, index))
            self.open.last_sounds_for = share

    def _moments(self, note: Note, signs: Signs, begin: Fraction, end: Fraction) -> tuple[Moment, ...]:
        if note.id not in self.fingered:
            self.fingered[note.id] = fingered(self.tune, note, signs, end - begin)
        return self.fingered[note.id]

    def _loud(self, note: Note, visit: int, bow: Bow) -> float:
        met = self.met.get((visit, note.id))
        signed = [SIGN_DB[sign] for sign in self.bowing.signs_on(note.id).articulations if sign in SIGN_DB]
        planned = [] if met is None else [ACCENT_DB[met]]
        return BOW_DB[bow] + max([*signed, *planned], default=0.0)

    def _begin(self, begin: Fraction, start: Start, bow: Bow, loud_db: float, visit: int) -> None:
        stopped = start is not Start.STROKE
        self._close(begin, stopped=stopped)
        self.open = _Open(begin, start, bow, loud_db, visit)

    def _close(self, end: Fraction, *, stopped: bool = False) -> None:
        """End the attack that is being played, if any; ``stopped`` where the bow stops before what follows."""
        going, self.open = self.open, None
        if going is None:
            return
        until = end
        if stopped or going.last_sounds_for is not WHOLE:
            begin = going.tones[-1].begin
            last = end - begin
            until = begin + last * going.last_sounds_for
            if stopped:
                until = min(until, end - min(STOP_S, STOP_SHARE * last))
        self.found.append(
            Attack(going.begin, end, until, going.start, going.bow, going.loud_db, tuple(going.tones), going.visit)
        )
