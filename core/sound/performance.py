"""A playing of a tune: what the bow and the fingers do, timed to the fraction of a second.

The bow makes *attacks*: one where a stroke begins, one for each further part of a bowed triplet, and one, after a stop,
for each hooked note. What is fingered meanwhile are *tones*: a slurred note, a cut or a turn is a new tone of the same
attack and has no attack of its own.

How loud an attack is says where the accents are: down-bows are a little stronger than up-bows, and an accented place is
driven where the bowing lets it be. A place that a slur buries cannot be heard, as on the page it cannot be seen.
Fermatas and breath marks take no time. All the loudness and the stops here are ours, by ear.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import Enum
from fractions import Fraction
from functools import cached_property
from itertools import pairwise
from typing import NamedTuple

from core.accents import Met, weigh
from core.bowing import PARTING, Articulation, Bow, Bowing, Ornament, Signs
from core.sound.figures import Moment, fingered
from core.sound.swing import MOST_SWING, SwungBar, swing_of, swung
from core.strokes import Strokes, work_out
from core.tempos import pace
from core.tune import Bar, Meter, Note, Tempo, Tune

MOST_COUNT_IN = 8  # bars
SPEEDS = (Fraction(1, 10), Fraction(3))
FREE_BAR = Meter((4,), 4)  # how bars of free metre are counted in

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


class Click(NamedTuple):
    """A beat that can be clicked.

    Attributes:
        at: Seconds from the beginning of the playing.
        strong: The first beat of a bar.
        counting_in: Before the tune begins.
    """

    at: Fraction
    strong: bool
    counting_in: bool


class PlayedBar(NamedTuple):
    """One visit of the playing order.

    Attributes:
        begin, end: Seconds from the beginning of the playing.
        bar: Index in ``tune.bars``.
        pass_number: As in the playing order.
    """

    begin: Fraction
    end: Fraction
    bar: int
    pass_number: int


@dataclass(frozen=True, slots=True)
class Manner:
    """How a tune is to be played.

    Attributes:
        tempo: In place of that of the tune or its dance.
        speed: Share of the tempo, 1 for all of it.
        swing: First of two written eighths to the second, 1 to 4, in place of that of the dance.
        count_in: Bars that are counted before the tune; a pick-up comes at the end of the last of them.
    Raises:
        ValueError: a value is out of its limits; the text is one sentence.
    """

    tempo: Tempo | None = None
    speed: Fraction = Fraction(1)
    swing: Fraction | None = None
    count_in: int = 0

    def __post_init__(self) -> None:
        slowest, fastest = SPEEDS
        if not slowest <= self.speed <= fastest:
            raise ValueError(f"The speed must be {float(slowest):.0%} to {float(fastest):.0%} of the tempo.")
        if self.swing is not None and not 1 <= self.swing <= MOST_SWING:
            raise ValueError(f"The swing must be 1 to {MOST_SWING}.")
        if not 0 <= self.count_in <= MOST_COUNT_IN:
            raise ValueError(f"The bars counted in must be 0 to {MOST_COUNT_IN}.")


PLAIN = Manner()


@dataclass(frozen=True)
class Performance:
    """A playing of a tune.

    Attributes:
        tune: The tune.
        strokes: What was played, and in which order of bars.
        quarter_s: Seconds in a quarter note.
        begin: Seconds until the tune begins, all that is counted in.
        end: Seconds until its last bar is over.
        bars: The visits.
        attacks: By time; rests leave gaps between them.
        clicks: By time.
        swung: For each bar of the tune where its places are played.
    """

    tune: Tune = field(repr=False)
    strokes: Strokes = field(repr=False)
    quarter_s: Fraction
    begin: Fraction
    end: Fraction
    bars: tuple[PlayedBar, ...]
    attacks: tuple[Attack, ...]
    clicks: tuple[Click, ...]
    swung: tuple[SwungBar, ...]

    def visit_at(self, seconds: float | Fraction) -> int:
        """Index of the visit that is played at a time: the first before all, the last behind all."""
        return max(bisect_right(self._bar_begins, seconds) - 1, 0)

    def attack_at(self, seconds: float | Fraction) -> int:
        """Index of the attack that sounds at a time, or sounded last; -1 before all."""
        return bisect_right(self._attack_begins, seconds) - 1

    def tone_at(self, seconds: float | Fraction) -> Tone | None:
        """The tone that sounds at a time; None in a rest."""
        index = self.attack_at(seconds)
        if index < 0 or seconds >= self.attacks[index].end:
            return None
        tones = self.attacks[index].tones
        return tones[bisect_right(tones, seconds, key=lambda tone: tone.begin) - 1]

    def second_of(self, visit: int, place: Fraction) -> Fraction:
        """Seconds at which a place of a bar, in quarter notes from the beginning of the full bar, is played."""
        played = self.bars[visit]
        bar, places = self.tune.bars[played.bar], self.swung[played.bar]
        return played.begin + (places.at(place) - places.at(bar.start)) * self.quarter_s

    @cached_property
    def _bar_begins(self) -> tuple[Fraction, ...]:
        return tuple(bar.begin for bar in self.bars)

    @cached_property
    def _attack_begins(self) -> tuple[Fraction, ...]:
        return tuple(attack.begin for attack in self.attacks)


def perform(tune: Tune, bowing: Bowing, strokes: Strokes | None = None, manner: Manner = PLAIN) -> Performance:
    """Play a tune in a bowing.

    Args:
        tune: The tune.
        bowing: A bowing of it.
        strokes: Directions of the same bowing and the bars to play, in any order (``core.sound.loops``); once through
            the tune where None.
        manner: Tempo, speed, swing and count-in.
    """
    strokes = work_out(tune, bowing) if strokes is None else strokes
    tempo = pace(tune, manner.tempo).tempo
    quarter_s = Fraction(60) / (tempo.per_minute * tempo.beat * manner.speed)
    ratio = swing_of(tune) if manner.swing is None else manner.swing
    places = tuple(swung(bar, ratio) for bar in tune.bars)
    first = tune.bars[strokes.order[0].bar]
    now = begin = _count_in_quarters(first, manner.count_in) * quarter_s
    clicks = list(_counted_in(first, manner.count_in, begin, quarter_s))
    timings = [_timing(bar, played_at, quarter_s) for bar, played_at in zip(tune.bars, places, strict=True)]
    bars = []
    for bar_index, pass_number in strokes.order:
        timing = timings[bar_index]
        end = now + timing.notes[-1]
        bars.append(PlayedBar(now, end, bar_index, pass_number))
        clicks += [Click(now + at, strong, counting_in=False) for at, strong in timing.beats]
        now = end
    attacks = _Bowed(tune, bowing, strokes, timings, tuple(bars)).attacks()
    return Performance(tune, strokes, quarter_s, begin, now, tuple(bars), attacks, tuple(clicks), places)


class _BarTiming(NamedTuple):
    """Seconds from the beginning of a bar: of its notes and its end; of its beats, and which is the first of a bar."""

    notes: tuple[Fraction, ...]
    beats: tuple[tuple[Fraction, bool], ...]


def _timing(bar: Bar, places: SwungBar, quarter_s: Fraction) -> _BarTiming:
    starts_at = places.at(bar.start)
    stop = bar.start + bar.length
    return _BarTiming(
        tuple((places.at(bar.start + at) - starts_at) * quarter_s for at in (*(n.at for n in bar.notes), bar.length)),
        tuple(
            ((places.at(place) - starts_at) * quarter_s, place == 0)
            for place in _beats(bar)
            if bar.start <= place < stop
        ),
    )


def _beats(bar: Bar) -> Iterator[Fraction]:
    """Beats of a full bar, in quarter notes from its beginning; of free metre, of the bar as it is."""
    meter = bar.meter
    if len(meter.groups) > 1:
        place = 0
        for group in meter.groups:
            yield Fraction(4 * place, meter.unit)
            place += group
        return
    beat = meter.beat_length
    length = meter.bar_length or bar.start + bar.length
    for number in range(-(-length // beat)):
        yield number * beat


def _counted_bar(first: Bar) -> tuple[Bar, Fraction]:
    """A full bar of the first bar's metre without notes, and its length in quarter notes."""
    meter = first.meter if first.meter.groups else FREE_BAR
    length = meter.bar_length
    assert length is not None
    return Bar(0, (), meter), length


def _count_in_quarters(first: Bar, count: int) -> Fraction:
    """How long it takes to count in; a pick-up falls into the last counted bar."""
    _, length = _counted_bar(first)
    return max(count * length - (length - first.start if first.start else 0), Fraction(0))


def _counted_in(first: Bar, count: int, begin: Fraction, quarter_s: Fraction) -> Iterator[Click]:
    bar, length = _counted_bar(first)
    for number in range(count):
        for place in _beats(bar):
            at = (number * length + place) * quarter_s
            if at < begin:
                yield Click(at, place == 0, counting_in=True)


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


class _Bowed:
    """The walk through the playing order that makes the attacks."""

    def __init__(
        self, tune: Tune, bowing: Bowing, strokes: Strokes, timings: list[_BarTiming], bars: tuple[PlayedBar, ...]
    ) -> None:
        self.tune, self.bowing, self.strokes, self.timings, self.bars = tune, bowing, strokes, timings, bars
        self.met = {(accent.visit, accent.note_id): accent.met for accent in weigh(tune, bowing, strokes).met}
        self.fingered: dict[str, tuple[Moment, ...]] = {}
        self.open: _Open | None = None
        self.found: list[Attack] = []

    def attacks(self) -> tuple[Attack, ...]:
        index = 0
        for visit, (played, bowed) in enumerate(zip(self.bars, self.strokes.visits, strict=True)):
            steps = iter(zip(*bowed, strict=True))
            times = pairwise([*[played.begin + offset for offset in self.timings[played.bar].notes[:-1]], played.end])
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
        self.open.last_sounds_for = min((SOUNDS_FOR.get(sign, WHOLE) for sign in signs.articulations), default=WHOLE)
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
