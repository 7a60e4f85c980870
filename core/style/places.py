"""The places of a tune where two notes may or may not share a stroke, and what stands around each.

A *place* is a note that can be joined to the note before it. A note tied on is part of the note that it is tied to;
grace notes, signs and fingering belong to a bowing and are not looked at. No place is where the planner plans no slur:
after a rest, and at the first note of a section.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

from core.once import once
from core.order import sections
from core.recurrence import bar_classes
from core.ticks import ticks
from core.tune import Tune

UNIT = 20160  # of a quarter note: whole for all usual note values, dotted or in tuplets
BEFORE, AFTER = 3, 2  # sounding notes around a place that are looked at
NOTE = BEFORE  # index of the place's own note in ``Place.around``


class Sound(NamedTuple):
    """A note as it sounds, with what is tied to it.

    Attributes:
        note_id: Of the note that is struck.
        bar: Index in ``Tune.bars``.
        at, length: In units; ``at`` from the beginning of a full bar.
        beat: Length of a beat there.
        height, midi: Of the highest pitch: step on the staff, key number.
        double: It has more than one pitch.
        tuplet: A number for its tuplet, 0 outside tuplets.
        opens_tuplet: It is the first of its tuplet.
    """

    note_id: str
    bar: int
    at: int
    length: int
    beat: int
    height: int
    midi: int
    double: bool
    tuplet: int
    opens_tuplet: bool


class BarFacts(NamedTuple):
    """What is looked at of a bar with notes.

    Attributes:
        sounds: Its notes.
        rhythm: Where each begins and how long it is.
        steps: From note to note on the staff.
        kind: The same number for bars that are equal note for note.
        alike: How many bars of the tune are equal to it, itself among them.
        again: An equal bar was written before it.
        section: Which section of the tune it stands in, from 0.
        full_bars_before, full_bars_behind: In its section.
        full: Length of a full bar.
        compound: Beats of three.
    """

    sounds: tuple[Sound, ...]
    rhythm: tuple[tuple[int, int], ...]
    steps: tuple[int, ...]
    kind: int
    alike: int
    again: bool
    section: int
    full_bars_before: int
    full_bars_behind: int
    full: int
    compound: bool


@dataclass(frozen=True, slots=True)
class Place:
    """A note that can be joined to the note before it.

    Attributes:
        around: ``BEFORE`` sounding notes before it, itself, ``AFTER`` behind it; None for a rest and outside the tune.
        bar: The bar it stands in.
        index: Which note of the bar it is, from 0.
        group: The notes of its half bar (two beats).
        beat_group: The notes of its beat.
    """

    around: tuple[Sound | None, ...]
    bar: BarFacts
    index: int
    group: tuple[Sound, ...]
    beat_group: tuple[Sound, ...]

    @property
    def note(self) -> Sound:
        return self._sound(NOTE)

    @property
    def before(self) -> Sound:
        """The note that it can be joined to."""
        return self._sound(NOTE - 1)

    @property
    def after(self) -> Sound | None:
        return self.around[NOTE + 1]

    @property
    def step(self) -> int:
        """From the note before to the note, on the staff."""
        return self.note.height - self.before.height

    @property
    def over_bar_line(self) -> bool:
        return self.before.bar != self.note.bar

    @property
    def inside_tuplet(self) -> bool:
        """Both notes belong to the same tuplet."""
        return self.note.tuplet == self.before.tuplet != 0

    def _sound(self, index: int) -> Sound:
        sound = self.around[index]
        assert sound is not None  # a place has a note before it
        return sound


@once
def places(tune: Tune) -> tuple[Place, ...]:
    """All places of a tune, in written order."""
    sounds = _sounds(tune)
    bars = _bars(tune, [sound for sound in sounds if sound])
    starts = {section.start for section in sections(tune)}
    padded = [*[None] * BEFORE, *sounds, *[None] * AFTER]
    found = []
    index, bar = 0, -1
    for number, sound in enumerate(sounds):
        if sound is None:
            continue
        index = index + 1 if sound.bar == bar else 0
        bar = sound.bar
        around = tuple(padded[number : number + BEFORE + 1 + AFTER])
        if around[NOTE - 1] is None or (index == 0 and bar in starts):
            continue
        facts = bars[bar]
        half, beat = sound.at // (2 * sound.beat), sound.at // sound.beat
        group = tuple([one for one in facts.sounds if one.at // (2 * one.beat) == half])
        found.append(Place(around, facts, index, group, tuple([one for one in group if one.at // one.beat == beat])))
    return tuple(found)


def _sounds(tune: Tune) -> list[Sound | None]:
    """The notes as they sound; None for each rest."""
    clock = ticks(tune)
    sounds: list[Sound | None] = []
    tuplets = 0
    for index, (bar, times) in enumerate(zip(tune.bars, clock.bars, strict=True)):
        beat = _units(bar.meter.beat_length.numerator, bar.meter.beat_length.denominator)
        for note, length, end in zip(bar.notes, times.lengths, times.ends, strict=True):
            units = _units(length, clock.per_quarter)
            last = sounds[-1] if sounds else None
            tuplets += bool(note.tuplet and note.tuplet.starts)
            if note.is_rest:
                sounds.append(None)
            elif note.held and last:
                sounds[-1] = last._replace(length=last.length + units)
            else:
                top = note.pitches[-1]
                at = _units(times.start + end - length, clock.per_quarter)
                sounds.append(
                    Sound(
                        note.id, index, at, units, beat, top.height, top.midi, len(note.pitches) > 1,
                        tuplets if note.tuplet else 0, bool(note.tuplet and note.tuplet.starts),
                    )
                )  # fmt: skip
    return sounds


def _units(count: int, per_quarter: int) -> int:
    return count * UNIT // per_quarter


def _bars(tune: Tune, sounds: list[Sound]) -> dict[int, BarFacts]:
    """What is looked at of each bar with notes, by index in ``Tune.bars``."""
    classes = bar_classes(tune)
    alike = Counter(classes)
    by_bar: dict[int, list[Sound]] = {}
    for sound in sounds:
        by_bar.setdefault(sound.bar, []).append(sound)
    found = {}
    for number, section in enumerate(sections(tune)):
        full_bars = sum(not tune.bars[index].is_pickup for index in section)
        before = 0
        for index in section:
            bar = tune.bars[index]
            inside = tuple(by_bar.get(index, ()))
            length = bar.meter.bar_length
            if inside:
                found[index] = BarFacts(
                    sounds=inside,
                    rhythm=tuple([(sound.at, sound.length) for sound in inside]),
                    steps=tuple([after.height - one.height for one, after in pairwise(inside)]),
                    kind=classes[index],
                    alike=alike[classes[index]],
                    again=classes[index] != index,
                    section=number,
                    full_bars_before=before,
                    full_bars_behind=full_bars - 1 - before,
                    full=_units(length.numerator, length.denominator) if length else 4 * UNIT,
                    compound=bar.meter.is_compound,
                )
            before += not bar.is_pickup
    return found
