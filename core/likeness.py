"""Bars that are like bars written before them, and how: the same, but for one note, transposed, of the same shape.

"The same" (``core.recurrence``) goes before all others and is the only one that binds: the others suggest. Each bar
has at most one model, so that nothing is told twice, and the bars of a phrase keep to the model of their neighbours
where they can. The same rhythm alone is no likeness. Found by looking up keys, in time that grows with the notes.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Mapping, Sequence
from enum import Enum
from itertools import pairwise
from typing import NamedTuple

from core.once import once
from core.pitch_numbers import REST, pitch_numbers
from core.recurrence import bar_classes, returns
from core.ticks import ticks
from core.tune import Tune
from core.values import dataclass

FEWEST_NOTES = 4  # struck notes of a bar; fewer are alike by chance
FEWEST_NOTES_ALONE = 5  # of a bar that is like another while the bars beside the two are not
WIDEST_SHIFT = 7  # steps: an octave


class Likeness(Enum):
    """How a bar is like its model, the closest first."""

    SAME = "the same"
    ONE_NOTE = "but for one note"  # another pitch, or one note parted in two, or two drawn into one
    SHIFTED = "transposed within the key"
    SHAPE = "in rhythm, rises and falls"  # two bars in a row at least: one alone is chance


@dataclass(frozen=True, slots=True)
class Model:
    """What a bar is like.

    Attributes:
        bar: Index of the earlier bar in ``tune.bars``.
        likeness: How it is like it.
        steps: For ``SHIFTED``: how many steps of the scale it lies higher (positive) or lower; else 0.
        distance: How many full bars after its model it comes; the endings of a repeat count once.
    """

    bar: int
    likeness: Likeness
    steps: int
    distance: int


@once
def models(tune: Tune) -> Mapping[int, Model]:
    """For each bar (index) that has one: its model, always an earlier bar; in written order."""
    classes = bar_classes(tune)
    rhythms, numbers = _rhythms(tune), pitch_numbers(tune)
    shapes: list[_Shape] = []
    for index, (kind, pitches) in enumerate(zip(ticks(tune).kinds, numbers.bars, strict=True)):
        known = classes[index] < index
        shapes.append(shapes[classes[index]] if known else _shape(rhythms[kind], pitches, numbers.heights))
    positions = _positions(tune)
    found: dict[int, Model] = {}

    def take(bar: int, model: int, likeness: Likeness) -> None:
        steps = shapes[bar].height - shapes[model].height if likeness is Likeness.SHIFTED else 0
        found[bar] = Model(model, likeness, steps, positions[bar] - positions[model])

    for run in returns(tune):
        for offset in range(run.length):
            take(run.again + offset, run.first + offset, Likeness.SAME)
    bars = [bar for bar, shape in enumerate(shapes) if shape.counts]
    for order, step in ((bars, 1), (bars[::-1], -1)):  # first beside bars that have a model, then anywhere
        for bar in order:
            beside = found.get(bar - step)
            model = beside.bar + step if beside else -1
            if bar not in found and model >= 0 and _one_note_apart(shapes[bar], shapes[model]):
                take(bar, model, Likeness.ONE_NOTE)
    for bar, model in _first_one_note_apart(shapes, [bar for bar in bars if classes[bar] == bar]).items():
        if bar not in found:
            take(bar, model, Likeness.ONE_NOTE)
    for bar, model in _sharing([shape.intervals for shape in shapes], bars, found).items():
        if 0 < abs(shapes[bar].height - shapes[model].height) <= WIDEST_SHIFT:
            take(bar, model, Likeness.SHIFTED)
    alike = _sharing([shape.contour for shape in shapes], bars, found)
    for bar, model in alike.items():
        if alike.get(bar - 1) == model - 1 or alike.get(bar + 1) == model + 1:
            take(bar, model, Likeness.SHAPE)
    return {bar: model for bar, model in sorted(found.items()) if not _by_chance(bar, found, shapes)}


class _Rhythm(NamedTuple):
    """What is compared of a bar's rhythm; the metre does not count.

    Attributes:
        key: Equal where places, lengths and ties are.
        notes: For each note a number, equal where place, length and tie are.
        struck: Whether each is a note with an attack, not a rest and not held.
        ends: Where each note ends.
        counts: It holds enough notes to be compared at all.
    """

    key: Hashable
    notes: tuple[int, ...]
    struck: tuple[bool, ...]
    ends: tuple[int, ...]
    counts: bool


class _Shape(NamedTuple):
    """What is compared of a bar.

    Attributes:
        counts: It holds enough to be compared at all.
        notes: Equal where place, length, pitches and tie of two notes are.
        struck: Whether each is a note with an attack, not a rest and not held.
        ends: Where each note ends.
        height: Step of the first note on the scale of all octaves.
        intervals: Shared by bars that are transposed within the key.
        contour: Shared by bars with the same rhythm that rise and fall alike.
    """

    counts: bool
    notes: tuple[tuple[int, int], ...]
    struck: tuple[bool, ...]
    ends: tuple[int, ...]
    height: int
    intervals: Hashable
    contour: Hashable


def _rhythms(tune: Tune) -> list[_Rhythm]:
    """What is compared of each rhythm of ``ticks(tune)``."""
    numbers: dict[Hashable, int] = {}
    found = []
    for one in ticks(tune).rhythms:
        notes = zip(one.ends, one.lengths, one.held, strict=True)
        struck = tuple([not rest and not held for rest, held in zip(one.rests, one.held, strict=True)])
        found.append(
            _Rhythm(
                key=numbers.setdefault((one.start, one.lengths, one.held), len(numbers)),
                notes=tuple(
                    [numbers.setdefault((one.start + end, length, held), len(numbers)) for end, length, held in notes]
                ),
                struck=struck,
                ends=one.ends,
                counts=sum(struck) >= FEWEST_NOTES,
            )
        )
    return found


def _shape(rhythm: _Rhythm, pitches: tuple[int, ...], heights: tuple[int, ...]) -> _Shape:
    """What is compared of a bar with these pitches, numbered."""
    notes = tuple(zip(rhythm.notes, pitches, strict=True))
    sounding = [heights[pitch] for pitch in pitches if pitch != REST]
    first = sounding[0] if sounding else 0
    if not rhythm.counts:
        return _Shape(False, notes, rhythm.struck, rhythm.ends, first, None, None)
    rests = () if len(sounding) == len(pitches) else tuple([pitch == REST for pitch in pitches])
    relative = tuple([height - first for height in sounding])
    rises = tuple([(after > before) - (after < before) for before, after in pairwise(sounding)])
    return _Shape(
        counts=True,
        notes=notes,
        struck=rhythm.struck,
        ends=rhythm.ends,
        height=first,
        intervals=(rhythm.key, rests, relative),
        contour=(rhythm.key, rests, rises),
    )


def _by_chance(bar: int, found: Mapping[int, Model], shapes: Sequence[_Shape]) -> bool:
    """Whether a bar of few notes is no more than like its model, and neither bar beside it is like the one beside."""
    model = found[bar]
    fewest = min(sum(shapes[index].struck) for index in (bar, model.bar))
    if model.likeness is Likeness.SAME or fewest >= FEWEST_NOTES_ALONE:
        return False
    beside = [found[bar + step].bar - model.bar == step for step in (-1, 1) if bar + step in found]
    return not any(beside)


def _one_note_apart(one: _Shape, other: _Shape) -> bool:
    """Whether two bars are equal but for one note, or two in the time of one."""
    longest = min(len(one.notes), len(other.notes))
    before = next((k for k in range(longest) if one.notes[k] != other.notes[k]), longest)
    after = next((k for k in range(longest - before) if one.notes[-1 - k] != other.notes[-1 - k]), longest - before)
    middles = [shape.struck[before : len(shape.notes) - after] for shape in (one, other)]
    ends = [shape.ends[len(shape.notes) - after - 1] for shape in (one, other)]
    return sorted(map(len, middles)) in ([1, 1], [1, 2]) and all(map(all, middles)) and ends[0] == ends[1]


def _first_one_note_apart(shapes: Sequence[_Shape], bars: list[int]) -> dict[int, int]:
    """For each bar the first bar before it that is equal but for one note, or two in the time of one.

    A bar with a note left out is known by what stands before the gap and behind it. Both are numbered as they come,
    so that a key takes no longer for a long bar than for a short one.
    """
    numbers: dict[Hashable, int] = {}
    gap_of_one: dict[Hashable, int] = {}
    gap_of_two: dict[Hashable, int] = {}
    found = {}
    for bar in _sharing_two_notes(shapes, bars):
        shape = shapes[bar]
        before, behind = [0], [0]
        for note in shape.notes:
            before.append(numbers.setdefault((before[-1], note), len(numbers) + 1))
        for note in reversed(shape.notes):
            behind.append(numbers.setdefault((note, behind[-1]), len(numbers) + 1))
        behind.reverse()
        struck, ends = shape.struck, shape.ends
        ones = [(before[k], behind[k + 1], ends[k]) for k in range(len(struck)) if struck[k]]
        twos = [(before[k], behind[k + 2], ends[k + 1]) for k in range(len(struck) - 1) if struck[k] and struck[k + 1]]
        earlier = [gaps[key] for gaps in (gap_of_one, gap_of_two) for key in ones if key in gaps]
        earlier += [gap_of_one[key] for key in twos if key in gap_of_one]
        if earlier:
            found[bar] = min(earlier)
        for gaps, keys in ((gap_of_one, ones), (gap_of_two, twos)):
            for key in keys:
                gaps.setdefault(key, bar)
    return found


def _sharing_two_notes(shapes: Sequence[_Shape], bars: list[int]) -> list[int]:
    """The bars that begin or end with the same two notes as another.

    Bars that are equal but for one note, or two in the time of one, do so: the shorter has ``FEWEST_NOTES`` or more,
    and all but one are equal, on the two sides of the gap.
    """
    begin, end = ([shapes[bar].notes[part] for bar in bars] for part in (slice(2), slice(-2, None)))
    begins, ends = Counter(begin), Counter(end)
    return [bar for bar, one, other in zip(bars, begin, end, strict=True) if begins[one] > 1 or ends[other] > 1]


def _sharing(keys: list[Hashable], bars: list[int], found: Mapping[int, Model]) -> dict[int, int]:
    """For each bar without a model an earlier bar of the same key: the one behind its neighbour's, else the first."""
    first: dict[Hashable, int] = {}
    sharing: dict[int, int] = {}
    for bar in bars:
        earlier = first.setdefault(keys[bar], bar)
        if bar in found or earlier == bar:
            continue
        behind = sharing.get(bar - 1, bar) + 1
        sharing[bar] = behind if behind < bar and keys[behind] == keys[bar] else earlier
    return sharing


def _positions(tune: Tune) -> tuple[int, ...]:
    """How many full bars come before each bar; the endings of a repeat begin at the same place."""
    places = []
    place = at_ending = 0
    ending: tuple[int, ...] = ()
    for bar in tune.bars:
        if bar.ending and not ending:
            at_ending = place
        elif bar.ending and bar.ending != ending:
            place = at_ending
        ending = bar.ending
        places.append(place)
        place += not bar.is_pickup
    return tuple(places)
