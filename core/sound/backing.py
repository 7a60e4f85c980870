"""Backing: the chords over the staff, vamped on plucked strings.

A bass note and a chord by turns, as the metre has it. A tune without chords is backed by a drone, the tonic and its
fifth; where not even the key names a tonic there is no backing. The vamps are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum
from fractions import Fraction
from functools import partial
from typing import NamedTuple

from core.chords import parse_chord
from core.once import once
from core.sound.chord_notes import ChordNotes, chord_notes
from core.sound.performance import Performance
from core.sound.plucked import LENGTH, strummed
from core.sound.track import SAMPLES_A_SECOND, Clip, Samples, Track, db, sample_at, track
from core.translation import tr
from core.tune import Bar, Meter, Tune
from core.values import dataclass


class Hand(Enum):
    """What the player of a vamp plucks."""

    BASS = "the bass of the chord"
    OTHER_BASS = "its fifth, or what stands for it"
    CHORD = "the chord"


class Hit(NamedTuple):
    """One place of a vamp.

    Attributes:
        place: Quarter notes from the beginning of the full bar.
        hand: What is plucked.
        level_db: How loud.
    """

    place: Fraction
    hand: Hand
    level_db: float


_SIGNS = {"B": (Hand.BASS, 0.0), "F": (Hand.OTHER_BASS, -1.0), "c": (Hand.CHORD, -5.0)}


def _vamp(text: str, step: Fraction) -> tuple[Hit, ...]:
    """``"B c F c"``, a sign for each step of the bar, ``.`` for none."""
    signs = enumerate(text.split())
    return tuple(Hit(number * step, *_SIGNS[sign]) for number, sign in signs if sign != ".")


EIGHTH, QUARTER, HALF = Fraction(1, 2), Fraction(1), Fraction(2)
VAMPS = {
    "4/4": _vamp("B c F c", QUARTER), "2/2": _vamp("B c F c", QUARTER), "2/4": _vamp("B c F c", EIGHTH),
    "3/4": _vamp("B c c", QUARTER), "3/8": _vamp("B c c", EIGHTH), "3/2": _vamp("B c F c F c", QUARTER),
    "6/8": _vamp("B . c F . c", EIGHTH), "9/8": _vamp("B . c F . c F . c", EIGHTH),
    "12/8": _vamp("B . c F . c B . c F . c", EIGHTH), "6/4": _vamp("B . c F . c", QUARTER),
}  # fmt: skip

LOWEST_BASS, LOWEST_CHORD = 40, 52  # MIDI keys: E2, E3
CHORD_STRINGS = 4
LEFT_OUT_FIRST = (7, 0, 5, 2)  # semitones over the root, where a chord has more tones than strings
FIFTHS = (7, 6, 8)
STRUM_APART = round(0.009 * SAMPLES_A_SECOND)
RINGS_FOR = {Hand.BASS: 1.6, Hand.OTHER_BASS: 1.6, Hand.CHORD: 0.9}  # of the time to the next hit
RINGS_S = 0.15, 0.8  # at least, and at most


class Strum(NamedTuple):
    """Strings plucked together.

    Attributes:
        at: Seconds from the beginning of the playing.
        seconds: How long they ring.
        keys: MIDI keys, low to high.
        level_db: How loud.
    """

    at: Fraction
    seconds: float
    keys: tuple[int, ...]
    level_db: float


@dataclass(frozen=True)
class Backing:
    """The backing of a playing.

    Attributes:
        strums: By time.
        unread: A sentence for each chord symbol that cannot be read; the chord before it goes on.
    """

    strums: tuple[Strum, ...]
    unread: tuple[str, ...] = ()


def back(performance: Performance) -> Backing:
    """Work out the backing of a playing."""
    tune = performance.tune
    harmony = _harmony(tune)
    of_bars: dict[int, list[tuple[Fraction, tuple[int, ...], Hit]]] = {}
    plucked = []
    for visit, (begin, _, index, _) in enumerate(performance.bars):
        if visit == 0 and tune.bars[index].is_pickup:
            continue
        if index not in of_bars:
            hits = _plucked(tune.bars[index], harmony.bars[index])
            of_bars[index] = [(performance.second_of(visit, hit.place) - begin, keys, hit) for keys, hit in hits]
        plucked += [(begin + offset, keys, hit) for offset, keys, hit in of_bars[index]]
    ends = [at for at, _, _ in plucked[1:]] + [performance.end]
    shortest, longest = RINGS_S
    strums = []
    for (at, keys, hit), end in zip(plucked, ends, strict=False):
        seconds = min(max((float(end) - float(at)) * RINGS_FOR[hit.hand], shortest), longest)
        strums.append(Strum(at, seconds, keys, hit.level_db))
    return Backing(tuple(strums), harmony.unread)


def _plucked(bar: Bar, changes: tuple[_Change, ...]) -> Iterator[tuple[tuple[int, ...], Hit]]:
    """The hits of a bar and their keys."""
    for hit in _vamp_of(bar.meter):
        sounding = _sounding(changes, hit.place)
        if sounding is not None and bar.start <= hit.place < bar.start + bar.length:
            changes_here = any(change.place == hit.place for change in changes)
            yield _keys(sounding, Hand.BASS if changes_here and hit.hand is Hand.OTHER_BASS else hit.hand), hit


def strums(backing: Backing) -> Track:
    """The track of a backing."""
    return track(_clips(backing))


def _clips(backing: Backing) -> Iterator[Clip]:
    for at, seconds, keys, level_db in backing.strums:
        length = min(round(seconds * SAMPLES_A_SECOND), LENGTH)
        yield Clip(sample_at(at), length, partial(_heard, keys, length, level_db))


def _heard(keys: tuple[int, ...], length: int, level_db: float) -> Samples:
    return strummed(keys, length, STRUM_APART) * db(level_db)


class _Change(NamedTuple):
    """From a place of a bar, in quarter notes from the beginning of the full bar, on: these notes, or none."""

    place: Fraction
    notes: ChordNotes | None


class _Harmony(NamedTuple):
    bars: tuple[tuple[_Change, ...], ...]
    unread: tuple[str, ...]


@once
def _harmony(tune: Tune) -> _Harmony:
    """What sounds in each written bar: first what goes on from the bar written before it."""
    if not any(bar.chords for bar in tune.bars):
        return _drone(tune)
    bars, unread = [], []
    notes: ChordNotes | None = None
    for bar in tune.bars:
        changes = [_Change(Fraction(-1), notes)]
        for symbol in bar.chords:
            chord = parse_chord(symbol.text)
            if chord is None:
                unread.append(
                    tr(
                        "Bar {number}: “{text}” is no chord; the chord before it goes on.",
                        number=bar.number,
                        text=symbol.text,
                    )
                )
                continue
            notes = chord_notes(chord)
            changes.append(_Change(bar.start + symbol.at, notes))
        bars.append(tuple(changes))
    return _Harmony(tuple(bars), tuple(dict.fromkeys(unread)))


def _drone(tune: Tune) -> _Harmony:
    bars = []
    for bar in tune.bars:
        chord = parse_chord(bar.key.tonic + "5") if bar.key.tonic else None
        bars.append((_Change(Fraction(-1), chord_notes(chord) if chord else None),))
    return _Harmony(tuple(bars), ())


def _sounding(changes: tuple[_Change, ...], place: Fraction) -> ChordNotes | None:
    return next(change.notes for change in reversed(changes) if change.place <= place)


def _vamp_of(meter: Meter) -> tuple[Hit, ...]:
    if str(meter) in VAMPS:
        return VAMPS[str(meter)]
    step = Fraction(4, meter.unit)
    if len(meter.groups) > 1:  # a bass where each group begins, chords between
        return tuple(hit for text, place in _groups(meter) for hit in _moved(_vamp(text, step), place * step))
    beats = int(meter.bar_length / meter.beat_length) if meter.bar_length else 64
    return _vamp(" ".join(("B", "c", "F", "c")[number % 4] for number in range(beats)), meter.beat_length)


def _groups(meter: Meter) -> Iterator[tuple[str, int]]:
    place = 0
    for number, size in enumerate(meter.groups):
        yield " ".join(["F" if number else "B", *["c"] * (size - 1)]), place
        place += size


def _moved(hits: tuple[Hit, ...], by: Fraction) -> tuple[Hit, ...]:
    return tuple(hit._replace(place=hit.place + by) for hit in hits)


def _keys(notes: ChordNotes, hand: Hand) -> tuple[int, ...]:
    """MIDI keys of what a hand plucks of a chord."""
    match hand:
        case Hand.BASS:
            return (_from(LOWEST_BASS, notes.bass),)
        case Hand.OTHER_BASS:
            over = {(tone - notes.root) % 12: tone for tone in notes.tones}
            return (_from(LOWEST_BASS, next((over[fifth] for fifth in FIFTHS if fifth in over), notes.root)),)
        case Hand.CHORD:
            tones = list(notes.tones)
            for semitones in LEFT_OUT_FIRST:
                if len(tones) > CHORD_STRINGS and (notes.root + semitones) % 12 in tones:
                    tones.remove((notes.root + semitones) % 12)
            return tuple(sorted(_from(LOWEST_CHORD, tone) for tone in tones[:CHORD_STRINGS]))


def _from(lowest: int, pitch_class: int) -> int:
    """The lowest key of a pitch class that is not below another key."""
    return lowest + (pitch_class - lowest) % 12
