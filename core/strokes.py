"""The direction of every note on every pass: bow rules B1 to B12 as a small state machine.

One walk through the playing order, bar by bar. For each note played, ``_steps`` tells how it continues from what was
played just before, and ``NEXT_BOW`` and ``EFFECTS`` tell what follows from that. A rule coded anywhere else than in
these tables, in ``_steps`` and in ``_first_bow`` would be a mistake.

What follows from the steps of a bar depends on the stroke before it alone, so a bar that is entered in the same way
again is not worked out again: ``BarStrokes`` are shared by all passes that they are true of, and whoever reads
``Strokes`` bar by bar has as little to do. ``Strokes.played`` spells them out note by note, for those who ask.

Grace notes and ornaments do not appear: they belong to their note's stroke, and a bowed triplet ends as it began
(rule B8).
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import field
from enum import Enum
from functools import cached_property, lru_cache
from itertools import chain
from typing import NamedTuple

from immutabledict import immutabledict

from core.bowing import Bow, Bowing, Join, Mark
from core.once import once
from core.order import Visit, playing_order
from core.ticks import BarTicks, ticks
from core.tune import Tune
from core.values import dataclass


class Step(Enum):
    """How a note continues from the note played before it."""

    NEW = "new stroke"
    RETAKEN = "retaken"  # a new stroke, the bow lifted to go the same way again (rule B4)
    MARKED_DOWN = "marked down"  # a new stroke in a direction that the player fixed (rule B4)
    MARKED_UP = "marked up"
    SLURRED = "slurred"
    HOOKED = "hooked"
    HELD = "held"

    __hash__ = object.__hash__  # members are singletons; Enum's own hash is slow, and tables are read for every note


NEXT_BOW = {  # a test asserts that every pair is present
    (Bow.DOWN, Step.NEW): Bow.UP,  # rule B1
    (Bow.UP, Step.NEW): Bow.DOWN,
    (Bow.DOWN, Step.RETAKEN): Bow.DOWN,  # rule B4
    (Bow.UP, Step.RETAKEN): Bow.UP,
    (Bow.DOWN, Step.MARKED_DOWN): Bow.DOWN,
    (Bow.UP, Step.MARKED_DOWN): Bow.DOWN,
    (Bow.DOWN, Step.MARKED_UP): Bow.UP,
    (Bow.UP, Step.MARKED_UP): Bow.UP,
    (Bow.DOWN, Step.SLURRED): Bow.DOWN,  # rule B2
    (Bow.UP, Step.SLURRED): Bow.UP,
    (Bow.DOWN, Step.HOOKED): Bow.DOWN,  # rule B9
    (Bow.UP, Step.HOOKED): Bow.UP,
    (Bow.DOWN, Step.HELD): Bow.DOWN,  # rule B3
    (Bow.UP, Step.HELD): Bow.UP,
}


class Effect(NamedTuple):
    """What a step does, direction apart."""

    starts: bool  # a new stroke begins: the only place where a mark sets the direction
    struck: bool  # the note has an attack of its own


EFFECTS = {
    Step.NEW: Effect(starts=True, struck=True),
    Step.RETAKEN: Effect(starts=True, struck=True),
    Step.MARKED_DOWN: Effect(starts=True, struck=True),
    Step.MARKED_UP: Effect(starts=True, struck=True),
    Step.SLURRED: Effect(starts=False, struck=False),
    Step.HOOKED: Effect(starts=False, struck=True),
    Step.HELD: Effect(starts=False, struck=False),
}
STEP_OF_JOIN = {Join.SLUR: Step.SLURRED, Join.HOOK: Step.HOOKED}
STEP_OF_MARK = {Bow.DOWN: Step.MARKED_DOWN, Bow.UP: Step.MARKED_UP}
MARK_OF_STEP = {step: bow for bow, step in STEP_OF_MARK.items()}


class BarStrokes(NamedTuple):
    """How the notes of one bar are bowed on one pass: for each note, rests left out, held notes included.

    Attributes:
        bows: Direction.
        starts: A new stroke begins here.
        struck: The note has an attack: a stroke begins or the note is hooked.
        retakes: A stroke begins in the direction of the stroke before it.
    """

    bows: tuple[Bow, ...]
    starts: tuple[bool, ...]
    struck: tuple[bool, ...]
    retakes: tuple[bool, ...]


class Played(NamedTuple):
    """One note played once.

    Attributes:
        note_id: The written note.
        visit: Index in the playing order.
        bar: Index in ``tune.bars``.
        pass_number: How often the bar has now been played, counted from 1.
        bow: Direction.
        starts: A new stroke begins here.
        struck: The note has an attack: a stroke begins or the note is hooked.
        retake: A stroke begins in the direction of the stroke before it.
        over_rest: The retake has a rest before it, in which the bow can come back (rule B7); else False.
    """

    note_id: str
    visit: int
    bar: int
    pass_number: int
    bow: Bow
    starts: bool
    struck: bool
    retake: bool
    over_rest: bool


@dataclass(frozen=True)
class Strokes:
    """All directions of one bowing.

    Attributes:
        tune: The tune.
        order: Its bars in playing order.
        visits: How each of them is bowed.
        next_bow: What alternation gives after the last stroke; down where nothing is played.
        comes_round: Played again from the start, every direction is the same as the first time.
        round_retake: That it comes round takes a retake: the last stroke and the first go the same way.
    """

    tune: Tune = field(repr=False)
    order: tuple[Visit, ...]
    visits: tuple[BarStrokes, ...]
    next_bow: Bow
    comes_round: bool
    round_retake: bool = False

    @cached_property
    def visits_of(self) -> tuple[tuple[int, ...], ...]:
        """For each written bar the indexes in the playing order at which it is played."""
        found: list[list[int]] = [[] for _ in self.tune.bars]
        for index, (bar, _) in enumerate(self.order):
            found[bar].append(index)
        return tuple(map(tuple, found))

    @cached_property
    def by_bar(self) -> tuple[tuple[BarStrokes, ...], ...]:
        """How each written bar is bowed, one for each time that it is played; empty for a bar that is never played."""
        visits = self.visits
        return tuple([tuple([visits[index] for index in of_bar]) for of_bar in self.visits_of])

    @cached_property
    def bows(self) -> Mapping[str, tuple[Bow, ...]]:
        """For each written note the direction on each pass of its bar; empty for a bar that is never played."""
        found: dict[str, tuple[Bow, ...]] = {}
        for bar, passes in zip(_written(self.tune), self.by_bar, strict=True):
            if passes:
                found.update(zip(bar.note_ids, zip(*[strokes.bows for strokes in passes], strict=True), strict=True))
            else:
                found.update(dict.fromkeys(bar.note_ids, ()))
        return immutabledict(found)

    @cached_property
    def played(self) -> tuple[Played, ...]:
        """The notes in playing order, rests left out, held notes included."""
        return tuple(self._played())

    @cached_property
    def by_note(self) -> Mapping[str, tuple[Played, ...]]:
        """What is played of each written note, one for each pass of its bar; unplayed notes are left out."""
        found: dict[str, list[Played]] = {}
        for note in self.played:
            found.setdefault(note.note_id, []).append(note)
        return {note_id: tuple(passes) for note_id, passes in found.items()}

    def playing(self, visit: int, number: int) -> Played:
        """One note of one visit, as it stands in ``played``.

        Args:
            visit: Index in the playing order.
            number: Of the note among those of its bar, from 0; rests do not count.
        """
        bar, pass_number = self.order[visit]
        written, strokes = _written(self.tune)[bar], self.visits[visit]
        retake = strokes.retakes[number]
        over_rest = retake and (written.rhythm.after_rest[number] or (not number and self._rests(visit)))
        return Played(
            written.note_ids[number], visit, bar, pass_number,
            strokes.bows[number], strokes.starts[number], strokes.struck[number], retake, over_rest,
        )  # fmt: skip

    def _rests(self, visit: int) -> bool:
        """Whether a rest is played between the last note before a visit and the visit."""
        for bar, _ in reversed(self.order[:visit]):
            written = _written(self.tune)[bar]
            if written.sounds_to == NOWHERE:
                return True
            if written.note_ids:
                return False
        return False

    def _played(self) -> Iterator[Played]:
        rested = False
        bars = _written(self.tune)
        for index, ((bar, pass_number), strokes) in enumerate(zip(self.order, self.visits, strict=True)):
            written = bars[bar]
            notes = zip(written.note_ids, written.rhythm.after_rest, *strokes, strict=True)
            for note_id, after_rest, bow, starts, struck, retake in notes:
                over_rest = retake and (rested or after_rest)
                yield Played(note_id, index, bar, pass_number, bow, starts, struck, retake, over_rest)
                rested = False
            rested = rested or written.sounds_to == NOWHERE


def work_out(tune: Tune, bowing: Bowing, order: tuple[Visit, ...] | None = None, after: Bow | None = None) -> Strokes:
    """Work out the direction of every note on every pass.

    Args:
        tune: The tune.
        bowing: A bowing of it; ids that are not the tune's are ignored.
        order: Another playing order than the tune's own, such as two bars to practise.
        after: Direction of the stroke that was played just before, in a set of tunes; None where nothing was.
    Returns:
        The strokes. Rests take no stroke and do not change alternation (rule B7). A mark inside a stroke changes
        nothing (rule B5). A note whose written predecessor was not played just before it begins a stroke of its
        own on that pass, whatever joins or ties it (rule B11).
    """
    order = playing_order(tune) if order is None else order
    steps = _all_steps(tune, bowing, order, begun=after is not None)
    bow = after or _first_bow(tune, order, steps).turned  # the stroke that would have come before the first
    visits = []
    for of_bar in steps:
        strokes = _bowed(of_bar, bow)
        visits.append(strokes)
        if of_bar:
            bow = strokes.bows[-1]
    begins = next((visit for visit, of_bar in enumerate(steps) if of_bar), None)
    if begins is None:
        return Strokes(tune, order, tuple(visits), Bow.DOWN, comes_round=True)
    first = steps[begins][0]
    if first not in MARK_OF_STEP:
        retaken = _written(tune)[order[begins].bar].note_ids[0] in bowing.retakes
        first = Step.RETAKEN if retaken else Step.NEW
    return Strokes(tune, order, tuple(visits), bow.turned, *_round(first, visits))


@lru_cache(maxsize=4096)
def _bowed(steps: tuple[Step, ...], before: Bow) -> BarStrokes:
    """What follows from the steps of a bar and the stroke before it; most bars of a book are bowed like others."""
    bows, retakes = [], []
    for step in steps:
        bow = NEXT_BOW[before, step]
        bows.append(bow)
        retakes.append(EFFECTS[step].starts and bow is before)
        before = bow
    effects = [EFFECTS[step] for step in steps]
    return BarStrokes(
        tuple(bows),
        tuple([effect.starts for effect in effects]),
        tuple([effect.struck for effect in effects]),
        tuple(retakes),
    )


class _Said(NamedTuple):
    """What a bowing says of strokes, in mappings that are quick to look up in."""

    joins: Mapping[str, Join]
    marks: Mapping[str, Mark]
    retakes: Collection[str]


NOTHING_SAID = _Said({}, {}, ())
NOWHERE, NEVER = -1, -2  # places: of no note; of none that a bar goes on from


class _Rhythm(NamedTuple):
    """What the walk needs to know of the rhythm of a bar, rests left out."""

    held: tuple[bool, ...]
    after_rest: tuple[bool, ...]  # a rest stands before the note in its bar
    begins_with_note: bool  # with no rest before it
    unsaid: tuple[tuple[Step, ...], tuple[Step, ...]]  # the steps where a bowing says nothing: entered apart, going on


class _WrittenBar(NamedTuple):
    """What the walk needs to know of a written bar, rests left out; places are those of ``Tune.sequence``."""

    note_ids: tuple[str, ...]
    rhythm: _Rhythm
    goes_on_from: int  # place of the note whose stroke may run on into this bar, or ``NEVER``
    sounds_to: int | None  # place of its last note, ``NOWHERE`` if it ends in a rest; None for an empty bar


@once
def _written(tune: Tune) -> tuple[_WrittenBar, ...]:
    times = ticks(tune)
    rhythms = [_rhythm(rhythm) for rhythm in times.rhythms]
    bars = []
    place = 0
    for bar, kind in zip(tune.bars, times.kinds, strict=True):
        rhythm = rhythms[kind]
        bars.append(
            _WrittenBar(
                note_ids=tuple([note.id for note in bar.notes if note.pitches]),
                rhythm=rhythm,
                goes_on_from=place - 1 if place and rhythm.begins_with_note else NEVER,
                sounds_to=(place + len(bar.notes) - 1 if bar.notes[-1].pitches else NOWHERE) if bar.notes else None,
            )
        )
        place += len(bar.notes)
    return tuple(bars)


def _rhythm(times: BarTicks) -> _Rhythm:
    held = tuple([held for held, rest in zip(times.held, times.rests, strict=True) if not rest])
    before = (False, *times.rests[:-1])
    after_rest = tuple([rested for rested, rest in zip(before, times.rests, strict=False) if not rest])
    rhythm = _Rhythm(held, after_rest, bool(times.rests) and not times.rests[0], ((), ()))
    if not any(held):
        news = (Step.NEW,) * len(held)
        return rhythm._replace(unsaid=(news, news))
    nameless = [""] * len(held)
    apart, going_on = (_steps(nameless, rhythm, NOTHING_SAID, on, 1, begun=True) for on in (False, True))
    return rhythm._replace(unsaid=(apart, going_on))


def _all_steps(tune: Tune, bowing: Bowing, order: tuple[Visit, ...], *, begun: bool) -> list[tuple[Step, ...]]:
    """The steps of each visit; ``begun`` where a stroke was played before them, which a retake may repeat."""
    bars, bar_of = _written(tune), tune.bar_of
    said = _Said(dict(bowing.joins), dict(bowing.marks), bowing.retakes)
    spoken_of = {bar_of[note_id] for note_id in chain(*said) if note_id in bar_of}
    by_pass = {bar_of[id_] for id_, mark in said.marks.items() if mark.only_pass is not None and id_ in bar_of}
    known: dict[tuple[int, bool, int], tuple[Step, ...]] = {}
    sounding = NOWHERE  # place of the note played just before, without a rest between
    found = []
    for bar, pass_number in order:
        written = bars[bar]
        goes_on = sounding == written.goes_on_from
        if bar not in spoken_of:
            steps = written.rhythm.unsaid[goes_on]
        elif not begun:
            steps = _steps(written.note_ids, written.rhythm, said, goes_on, pass_number, begun=False)
        else:
            key = bar, goes_on, pass_number if bar in by_pass else 0
            if key not in known:
                known[key] = _steps(written.note_ids, written.rhythm, said, goes_on, pass_number, begun=True)
            steps = known[key]
        found.append(steps)
        begun = begun or bool(steps)
        if written.sounds_to is not None:
            sounding = written.sounds_to
    return found


def _steps(
    note_ids: Sequence[str], rhythm: _Rhythm, said: _Said, goes_on: bool, pass_number: int, *, begun: bool
) -> tuple[Step, ...]:
    """How the notes of a bar continue; ``goes_on`` where the note written before it is played just before it."""
    steps = []
    for note_id, held, after_rest in zip(note_ids, rhythm.held, rhythm.after_rest, strict=True):
        if goes_on and not after_rest and (held or note_id in said.joins):
            step = Step.HELD if held else STEP_OF_JOIN[said.joins[note_id]]
        elif note_id in said.marks and said.marks[note_id].holds_on(pass_number):
            step = STEP_OF_MARK[said.marks[note_id].bow]
        elif note_id in said.retakes and begun:
            step = Step.RETAKEN
        else:
            step = Step.NEW
        steps.append(step)
        goes_on = begun = True
    return tuple(steps)


def _first_bow(tune: Tune, order: tuple[Visit, ...], steps: list[tuple[Step, ...]]) -> Bow:
    """The direction of the first stroke (rule B6).

    A mark says it. Else a tune that starts on the beat starts down. Else alternation shall lead, without a retake, to
    the first mark that stands before the first full bar or where it begins, and otherwise to a down-bow there
    (Schroeder, Handbook of Violin Playing, about 1889: the last stroke of a pick-up is up; L. Mozart, Violinschule,
    1756, IV: begin up after a rest on the beat).
    """
    bars = _written(tune)
    if steps and steps[0] and not tune.bars[order[0].bar].is_pickup and not _begins_with_rest(bars[order[0].bar]):
        return MARK_OF_STEP.get(steps[0][0], Bow.DOWN)
    bow = Bow.UP
    for visit, of_bar in enumerate(steps):  # try down, and turn round if it leads the wrong way
        opens_bar = visit > 0 and not _begins_with_rest(bars[order[visit].bar])
        for step in of_bar:
            bow = NEXT_BOW[bow, Step.NEW if step in MARK_OF_STEP else step]
            if step in MARK_OF_STEP or opens_bar:
                return Bow.DOWN if bow is MARK_OF_STEP.get(step, Bow.DOWN) else Bow.UP
    return bow.turned  # no full bar follows: as if one did


def _begins_with_rest(bar: _WrittenBar) -> bool:
    """Whether a rest stands before the first note of a bar; False where it has no notes."""
    return any(bar.rhythm.after_rest[:1])


def _round(first: Step, visits: list[BarStrokes]) -> tuple[bool, bool]:
    """Whether the tune comes round as it began, and whether that takes a retake.

    After the first stroke everything follows from its direction, so that direction decides.

    Args:
        first: How the first note continues from the last, the tune played again.
        visits: At least one of them with a note.
    """
    sounding = [strokes.bows for strokes in visits if strokes.bows]
    last = sounding[-1][-1]
    again = NEXT_BOW[last, first]
    return again is sounding[0][0], again is last
