"""A playing as a Standard MIDI File: the General MIDI fiddle, with tempo, metre and key.

The bowing can be seen in the notes: those of one stroke overlap a little, strokes are parted, accents are velocities.
Ticks are exact quarters of the metre (``TICKS`` to a quarter note), so that bar lines of other programs fall where ours
do; swing, grace notes and stops stand between them as they are played.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from io import BytesIO
from itertools import pairwise
from typing import NamedTuple

from mido import Message, MetaMessage, MidiFile, MidiTrack

from core.sound.attacks import Attack
from core.sound.performance import Performance
from core.sound.tags import Tags
from core.tune import Key, Meter

TICKS = 960
FIDDLE = 110  # General MIDI 1: program 111, Fiddle, counted from 0 in the file
CHANNEL = 0
SLOWEST_QUARTER_S = Fraction(0xFFFFFF, 1_000_000)  # a tempo has 24 bits of microseconds
PLAIN_VELOCITY, VELOCITY_A_DB = 76, 6
SLURRED_LESS = 10
OVERLAP_S = Fraction(12, 1000)  # of a slurred note with the one before, at most half the shorter of the two
PART_S = Fraction(12, 1000)  # between strokes, at most an eighth of the note before
BEND_A_SEMITONE = 4096  # General MIDI 1: two semitones either way
SLIDE_S = Fraction(90, 1000)
SLIDE_STEPS = 6
MAJOR_KEYS = ("Cb", "Gb", "Db", "Ab", "Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#", "C#")
MINOR_KEYS = ("Abm", "Ebm", "Bbm", "Fm", "Cm", "Gm", "Dm", "Am", "Em", "Bm", "F#m", "C#m", "G#m", "D#m", "A#m")
MINOR_MODES = ("minor", "aeolian", "dorian", "phrygian", "locrian")


class _Event(NamedTuple):
    """A message at a time; at the same time lower ranks come first (note off before note on)."""

    tick: int
    rank: int
    message: Message | MetaMessage


def midi_file(playings: Sequence[Performance], tags: Tags) -> bytes:
    """Write playings, one after another, as the bytes of a Standard MIDI File of format 1.

    Args:
        playings: At least one; each may have a tempo of its own.
        tags: Title, bowing and the like, as meta events of the first track.
    """
    conducted: list[_Event] = []
    played: list[_Event] = [_Event(0, 0, Message("program_change", channel=CHANNEL, program=FIDDLE))]
    offset = 0
    for playing in playings:
        conducted += _conducted(playing, offset)
        played += _played(playing, offset)
        offset += _ticks(playing, playing.end)
    for text in (*tags.lines, *(f"Bowing: {name}" for name in [tags.bowing] if name)):
        conducted.insert(0, _Event(0, -1, MetaMessage("text", text=text)))
    file = MidiFile(type=1, ticks_per_beat=TICKS, charset="utf-8")
    file.tracks.append(_track(tags.title or "Untitled", conducted, offset))
    file.tracks.append(_track("Fiddle", played, offset))
    out = BytesIO()
    file.save(file=out)
    return out.getvalue()


def _track(name: str, events: list[_Event], end: int) -> MidiTrack:
    track = MidiTrack([MetaMessage("track_name", name=name, time=0)])
    before = 0
    for event in sorted(events, key=lambda event: event[:2]):
        track.append(event.message.copy(time=event.tick - before))
        before = event.tick
    track.append(MetaMessage("end_of_track", time=max(end - before, 0)))
    return track


def _quarter_s(playing: Performance) -> Fraction:
    """Seconds in what the file calls a quarter note."""
    return min(playing.quarter_s, SLOWEST_QUARTER_S)


def _ticks(playing: Performance, seconds: Fraction) -> int:
    return round(seconds * TICKS / _quarter_s(playing))


# -------------------------------------------------------------------------------------------------- tempo, metre, key


def _conducted(playing: Performance, offset: int) -> Iterator[_Event]:
    yield _Event(offset, 0, MetaMessage("set_tempo", tempo=round(_quarter_s(playing) * 1_000_000)))
    bars = playing.tune.bars
    meter: Meter | None = None
    key: Key | None = None
    for visit, played in enumerate(playing.bars):
        bar = bars[played.bar]
        at = offset + (_ticks(playing, played.begin) if visit else 0)
        if bar.key != key:
            yield _Event(at, 2, _key_signature(bar.key))
            key = bar.key
        if visit == 0 and bar.start and not playing.begin:  # the pick-up is a short bar of its own
            yield from _time_signature(at, bar.length / 4)
        elif bar.meter != meter and bar.meter.groups:
            yield from _time_signature(at, None, bar.meter)
            meter = bar.meter


def _time_signature(at: int, whole_notes: Fraction | None, meter: Meter | None = None) -> Iterator[_Event]:
    """The metre, or that of a short bar; nothing where the file has no number for it."""
    if meter is not None:
        count, unit = meter.count, meter.unit
    else:
        assert whole_notes is not None
        count, unit = whole_notes.numerator, whole_notes.denominator
    if 0 < count <= 255 and unit & (unit - 1) == 0:
        yield _Event(at, 1, MetaMessage("time_signature", numerator=count, denominator=unit))


def _key_signature(key: Key) -> MetaMessage:
    names = MINOR_KEYS if key.mode in MINOR_MODES else MAJOR_KEYS
    return MetaMessage("key_signature", key=names[max(-7, min(key.fifths, 7)) + 7])


# -------------------------------------------------------------------------------------------------------------- notes


def _played(playing: Performance, offset: int) -> Iterator[_Event]:
    attacks = playing.attacks
    for attack, after in pairwise([*attacks, None]):
        assert attack is not None
        last = attack.sounds_until - attack.tones[-1].begin
        followed = after is not None and after.begin == attack.sounds_until
        until = attack.sounds_until - (min(PART_S, last / 8) if followed else 0)
        for event in _sounded(attack, until):
            yield _Event(offset + _ticks(playing, event[0]), *event[1:])


def _sounded(attack: Attack, until: Fraction) -> Iterator[tuple[Fraction, int, Message]]:
    """Messages of an attack at their seconds; a key that is fingered on sounds on."""
    velocity = max(1, min(127, round(PLAIN_VELOCITY + VELOCITY_A_DB * attack.loud_db)))
    sounding: tuple[int, ...] = ()
    before = attack.begin
    for number, tone in enumerate(attack.tones):
        after = attack.tones[number + 1].begin if number + 1 < len(attack.tones) else until
        overlap = min(OVERLAP_S, (tone.begin - before) / 2, (after - tone.begin) / 2)
        for key in sounding:
            if key not in tone.keys:
                yield tone.begin + overlap, 0, _off(key)
        for key in tone.keys:
            if key not in sounding:
                less = SLURRED_LESS if number else 0
                yield tone.begin, 3, Message("note_on", channel=CHANNEL, note=key, velocity=max(1, velocity - less))
        if tone.slide:
            yield from _slid(tone.begin, min(SLIDE_S, (after - tone.begin) / 2), tone.slide)
        sounding, before = tone.keys, tone.begin
    for key in sounding:
        yield until, 0, _off(key)


def _off(key: int) -> Message:
    return Message("note_off", channel=CHANNEL, note=key, velocity=64)


def _slid(begin: Fraction, seconds: Fraction, semitones: int) -> Iterator[tuple[Fraction, int, Message]]:
    for step in range(SLIDE_STEPS + 1):
        share = 1 - Fraction(step, SLIDE_STEPS)
        bend = max(-8192, min(8191, round(BEND_A_SEMITONE * semitones * share)))
        yield begin + seconds * (1 - share), 2, Message("pitchwheel", channel=CHANNEL, pitch=bend)
