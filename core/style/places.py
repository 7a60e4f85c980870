"""The places of a tune where two notes may or may not share a stroke, and what stands around each.

A *place* is a note that can be joined to the note before it. A note tied on is part of the note that it is tied to;
grace notes, signs and fingering belong to a bowing and are not looked at. No place is where the planner plans no slur:
after a rest, and at the first note of a section.

All is kept in *columns*, whole numbers with an entry for each place, so that what is asked of a place is worked out for
all places of a tune at once. What has no number, such as the rhythm of a bar, is a digest (``core.style.digests``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from functools import cached_property
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.once import once
from core.order import sections
from core.pitch_numbers import REST, pitch_numbers
from core.recurrence import bar_classes
from core.style.digests import Column, mixed, of_runs
from core.ticks import BarTicks, ticks
from core.tune import Meter, Tune
from core.values import dataclass

UNIT = 20160  # of a quarter note: whole for all usual note values, dotted or in tuplets
BEFORE, AFTER = 3, 2  # sounding notes around a place that are looked at
NOTE = BEFORE  # index of the place's own note in ``Places.around``
FAR = 48  # steps: farther is as far, in ``Places.half_steps``


class Sounds(NamedTuple):
    """Notes as they sound, with what is tied to them, in columns.

    Attributes:
        sounding: 1; 0 for a rest and outside the tune, where ``bar`` is -1, ``beat`` 1 and all others are 0.
        bar: Index in ``Tune.bars``.
        at, length: In units; ``at`` from the beginning of a full bar.
        beat: Length of a beat there.
        height, midi: Of the highest pitch: step on the staff, key number.
        double: 1 where there is more than one pitch, else 0.
        tuplet: A number for its tuplet, 0 outside tuplets.
        opens_tuplet: 1 for the first of a tuplet, else 0.
    """

    sounding: Column
    bar: Column
    at: Column
    length: Column
    beat: Column
    height: Column
    midi: Column
    double: Column
    tuplet: Column
    opens_tuplet: Column


NOTHING = (0, -1, 0, 0, 1, 0, 0, 0, 0, 0)  # a row of ``Sounds`` where nothing sounds


class Bars(NamedTuple):
    """What is looked at of bars with notes, in columns.

    Attributes:
        notes: How many are struck in it.
        rhythm: Digest of where each begins and how long it is.
        steps: Digest of the steps from note to note on the staff.
        contour: The same, told only whether they rise or fall.
        kind: The same number for bars that are equal note for note.
        alike: How many bars of the tune are equal to it, itself among them.
        again: 1 where an equal bar was written before it, else 0.
        section: Which section of the tune it stands in, from 0.
        full_bars_before, full_bars_behind: In its section.
        full: Length of a full bar, in units.
        compound: 1 where beats have three parts, else 0.
        shortest: The shortest length of its notes.
        lengths: How many different lengths its notes have.
        tuplet_notes: How many of its notes stand in tuplets.
    """

    notes: Column
    rhythm: Column
    steps: Column
    contour: Column
    kind: Column
    alike: Column
    again: Column
    section: Column
    full_bars_before: Column
    full_bars_behind: Column
    full: Column
    compound: Column
    shortest: Column
    lengths: Column
    tuplet_notes: Column


@dataclass(frozen=True, eq=False)
class Places:
    """The places of a tune, in written order.

    Attributes:
        ids: Of the notes that can be joined to the note before.
        around: ``BEFORE`` sounding notes before each, itself, ``AFTER`` behind it.
        bar: The bar each stands in.
        index: Which note of the bar it is, from 0.
        leads_half: It is the first note of its half bar (two beats).
        half_rhythm: Digest of the rhythm of the half bar, counted from its beginning.
        half_steps, half_contour: Digests of the steps inside the half bar, as ``Bars`` has them.
        beat_rhythm: Digest of the rhythm of the beat.
    """

    ids: tuple[str, ...]
    around: tuple[Sounds, ...]
    bar: Bars
    index: Column
    leads_half: NDArray[np.bool_]
    half_rhythm: Column
    half_steps: Column
    half_contour: Column
    beat_rhythm: Column

    def __len__(self) -> int:
        return len(self.ids)

    @property
    def note(self) -> Sounds:
        return self.around[NOTE]

    @property
    def before(self) -> Sounds:
        """The notes that they can be joined to; all of them sound."""
        return self.around[NOTE - 1]

    @property
    def after(self) -> Sounds:
        return self.around[NOTE + 1]

    @cached_property
    def step(self) -> Column:
        """From the note before to the note, on the staff."""
        return self.note.height - self.before.height

    @cached_property
    def in_beat(self) -> Column:
        """From the beginning of the beat to the note, in units."""
        return self.note.at % self.note.beat

    @cached_property
    def in_half(self) -> Column:
        """From the beginning of the half bar to the note, in units."""
        return self.note.at % (2 * self.note.beat)

    @cached_property
    def over_bar_line(self) -> NDArray[np.bool_]:
        return np.not_equal(self.before.bar, self.note.bar)

    @cached_property
    def inside_tuplet(self) -> NDArray[np.bool_]:
        """Both notes belong to the same tuplet."""
        return np.asarray((self.note.tuplet == self.before.tuplet) & (self.note.tuplet != 0))

    @cached_property
    def inside_half(self) -> NDArray[np.bool_]:
        """Both notes stand in the same half bar."""
        return np.asarray(~self.over_bar_line & (_group(self.before, 2) == _group(self.note, 2)))

    @cached_property
    def inside_beat(self) -> NDArray[np.bool_]:
        """Both notes stand in the same beat."""
        return np.asarray(~self.over_bar_line & (_group(self.before, 1) == _group(self.note, 1)))


@once
def places(tune: Tune) -> Places:
    """All places of a tune."""
    ids, written, order = _sounds(tune)
    sounds = Sounds(*written)
    firsts = np.flatnonzero(np.diff(sounds.bar[:-1], prepend=-1))  # of each bar with notes
    counts = np.diff(firsts, append=len(ids))
    own_bar = np.repeat(np.arange(len(firsts)), counts)
    index = np.arange(len(ids)) - firsts[own_bar]

    nothing = len(ids)
    played = np.array([*[nothing] * BEFORE, *order, *[nothing] * AFTER], np.int64)
    starts = np.array([section.start for section in sections(tune)])
    struck = np.flatnonzero((played[BEFORE:-AFTER] != nothing) & (played[BEFORE - 1 : -AFTER - 1] != nothing))
    own = played[struck + BEFORE]
    can_be = (index[own] > 0) | ~np.isin(sounds.bar[own], starts)
    struck, own = struck[can_be], own[can_be]
    around = written[:, played[struck[None, :] + np.arange(BEFORE + 1 + AFTER)[:, None]]]

    inside = Sounds(*written[:, :-1])
    steps = np.diff(inside.height, prepend=0)
    bars = _bars(tune, inside, firsts, counts, index, steps)
    halves, beats = (_starts(inside, own_bar, count) for count in (2, 1))
    own_half, own_beat = (np.repeat(np.arange(len(one)), np.diff(one, append=nothing)) for one in (halves, beats))
    in_half = np.arange(nothing) - halves[own_half]
    digests = (
        (_rhythm(inside.at % (2 * inside.beat), inside.length, halves), own_half),
        (_steps(np.clip(steps, -FAR, FAR), in_half, halves), own_half),
        (_steps(np.sign(steps), in_half, halves), own_half),
        (_rhythm(inside.at % inside.beat, inside.length, beats), own_beat),
    )
    return Places(
        tuple([ids[number] for number in own.tolist()]),
        tuple([Sounds(*around[:, number]) for number in range(BEFORE + 1 + AFTER)]),
        Bars(*bars[:, own_bar[own]]), index[own], in_half[own] == 0,
        *[each[group[own]] for each, group in digests],
    )  # fmt: skip


def _sounds(tune: Tune) -> tuple[list[str], NDArray[np.int64], list[int]]:
    """The notes as they sound.

    Returns:
        Their ids; a row for each field of ``Sounds`` with one more entry, for what does not sound; and in written order
        which of them is struck, this last one for each rest.
    """
    clock, pitches = ticks(tune), pitch_numbers(tune)
    rhythms = [_in_units(rhythm, clock.per_quarter) for rhythm in clock.rhythms]
    tops: dict[int, tuple[int, int, bool]] = {}
    ids: list[str] = []
    rows: list[tuple[int, ...]] = []
    order: list[int] = []
    tied: list[tuple[int, int]] = []  # a note that goes on, for how much longer
    rests = -1
    tuplets, beat, meter = 0, 1, None
    for number, (bar, kind, numbers) in enumerate(zip(tune.bars, clock.kinds, pitches.bars, strict=True)):
        if bar.meter is not meter:
            meter = bar.meter
            beat = _units(*meter.beat_length.as_integer_ratio())
        for note, (at, length), pitch in zip(bar.notes, rhythms[kind], numbers, strict=True):
            tuplet = note.tuplet
            opens = tuplet is not None and tuplet.starts
            tuplets += opens
            if pitch == REST:
                order.append(rests)
            elif note.held and order and order[-1] != rests:
                tied.append((order[-1], length))
            else:
                top = tops.get(pitch)
                if top is None:
                    highest = note.pitches[-1]
                    top = tops[pitch] = (highest.height, highest.midi, len(note.pitches) > 1)
                order.append(len(ids))
                ids.append(note.id)
                rows.append((1, number, at, length, beat, *top, tuplets if tuplet else 0, opens))
    written = np.array([*rows, NOTHING], np.int64).T
    for struck, longer in tied:
        written[Sounds._fields.index("length"), struck] += longer
    return ids, written, [struck if struck != rests else len(ids) for struck in order]


def _in_units(rhythm: BarTicks, per_quarter: int) -> list[tuple[int, int]]:
    """Where each note of a bar begins and how long it is."""
    return [
        (_units(rhythm.start + end - length, per_quarter), _units(length, per_quarter))
        for length, end in zip(rhythm.lengths, rhythm.ends, strict=True)
    ]


def _units(count: int, per_quarter: int) -> int:
    return count * UNIT // per_quarter


def _group(sounds: Sounds, beats: int) -> Column:
    """Which beat of its bar, or half of so many beats, each note stands in."""
    return sounds.at // (beats * sounds.beat)


def _starts(sounds: Sounds, own_bar: Column, beats: int) -> Column:
    """Which notes are the first of their bar or beat (half of so many beats)."""
    group = _group(sounds, beats)
    return np.flatnonzero(np.diff(own_bar, prepend=-1).astype(np.bool_) | np.diff(group, prepend=-1).astype(np.bool_))


def _rhythm(at: Column, length: Column, starts: Column) -> Column:
    """Digests of the rhythm of runs of notes."""
    return of_runs(mixed(mixed(at) + length.view(np.uint64)), starts).view(np.int64)


def _steps(steps: Column, index: Column, starts: Column) -> Column:
    """Digests of the steps inside runs of notes; the one into the first does not count.

    Args:
        steps: Into each note.
        index: Which note of its run it is.
        starts: Of the runs.
    """
    parts = mixed(mixed(index) + steps.view(np.uint64))
    parts[index == 0] = 0
    return of_runs(parts, starts).view(np.int64)


def _bars(
    tune: Tune, inside: Sounds, firsts: Column, counts: Column, index: Column, steps: Column
) -> NDArray[np.int64]:
    """A row for each field of ``Bars``, an entry for each bar with notes."""
    if not len(firsts):
        return np.zeros((len(Bars._fields), 0), np.int64)
    stops = [*firsts[1:].tolist(), len(index)]
    lengths = inside.length.tolist()
    return np.array(
        [
            counts,
            _rhythm(inside.at, inside.length, firsts),
            _steps(steps, index, firsts),
            _steps(np.sign(steps), index, firsts),
            *np.array(list(_of_bars(tune)), np.int64).T[:, inside.bar[firsts]],
            np.minimum.reduceat(inside.length, firsts),
            [len(set(lengths[first:stop])) for first, stop in zip(firsts.tolist(), stops, strict=True)],
            np.add.reduceat((inside.tuplet > 0).astype(np.int64), firsts),
        ],
        np.int64,
    )


def _of_bars(tune: Tune) -> Iterator[tuple[int, ...]]:
    """Of each bar what ``Bars`` has from ``kind`` to ``compound``."""
    classes = bar_classes(tune)
    alike = Counter(classes)
    of_meter: dict[Meter, tuple[int, bool]] = {}
    for number, section in enumerate(sections(tune)):
        full_bars = sum(not tune.bars[index].is_pickup for index in section)
        before = 0
        for index in section:
            bar, kind = tune.bars[index], classes[index]
            known = of_meter.get(bar.meter)
            if known is None:
                length = bar.meter.bar_length
                full = _units(*length.as_integer_ratio()) if length else 4 * UNIT
                known = of_meter[bar.meter] = full, bar.meter.is_compound
            yield kind, alike[kind], kind != index, number, before, full_bars - 1 - before, *known
            before += not bar.is_pickup
