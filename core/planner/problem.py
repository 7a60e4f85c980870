"""A tune, its accents and what the player fixed, as the planner sees them.

One direction and one way of joining is sought for each written note, so that every pass is bowed alike. What the bow
does from bar to bar is listed as *crossings*, each with how often it happens in one playing, the way from the end back
to the start among them. A bar that opens a section or an ending, or that is ever entered from another bar than the one
written before it, is a *seam*: no slur is planned over its beginning (rule B11), and a bow that does not alternate
there of itself is lifted.

Three numbers judge a bowing, in this order, smaller is better; ``core.planner.score`` counts them:

1. *missed*: accented places with an attack that are not driven, each playing for itself;
2. *broken*: crossings of a seam, without a rest, where the bow does not alternate, each playing for itself; and written
   bars that are bowed otherwise than most of their like (``PlanBar.kind``), by directions and inner joins;
3. *cost*: by ``core.planner.settings.Weights``; where there is a style, by how likely
   it makes the bowing (``core.planner.join_costs``).
"""

from __future__ import annotations

from collections.abc import Collection, Hashable, Mapping
from dataclasses import field, replace
from enum import Enum
from functools import cached_property
from itertools import pairwise
from typing import NamedTuple

from immutabledict import immutabledict

from core.accents import accented_notes
from core.bowing import Bow, Bowing, Join, Mark, Signs, separate_bows
from core.errors import RefusedEditError
from core.planner.join_costs import FREE, JoinOdds, Step, by_style, by_weights, steps
from core.planner.settings import PlannerSettings, Weights
from core.planner.walk import walk
from core.recurrence import bar_classes
from core.strokes import work_out
from core.ticks import ticks
from core.translation import tr
from core.tune import Note, Tune
from core.values import dataclass


class Retake(Enum):
    """Whether a stroke that begins here, away from seams, may go the same way as the one before."""

    NEVER = "never"
    MAY = "may"
    MUST = "must"

    __hash__ = object.__hash__


class PlanNote(NamedTuple):
    """A written note that is played.

    Attributes:
        note_id: The tune's.
        length: In ticks.
        joined: With the note before it; None where the planner may choose.
        hooked: Where it is joined: by a hook, so that it has an attack of its own (rule B9).
        held: Tied on (rule B3); struck only where a crossing leads here from elsewhere than as written.
        bow: Fixed direction.
        retake: Whether it may be taken the way of the stroke before.
        after_rest: A rest is written before it.
        accented: It begins at an accented place.
        join_cost: For each playing in which it is joined.
        apart_cost: For each playing in which it begins a stroke.
        retake_cost: For each playing in which it is retaken.
    """

    note_id: str
    length: int
    joined: bool | None
    hooked: bool
    held: bool
    bow: Bow | None
    retake: Retake
    after_rest: bool
    accented: bool
    join_cost: int
    apart_cost: int
    retake_cost: int


class PlanBar(NamedTuple):
    """A written bar with at least one note that is played.

    Attributes:
        written: Index in ``Tune.bars``.
        first, stop: Its notes in ``Problem.notes``.
        visits: How often it is played.
        kind: The same for bars with the same notes, rests and accents, the first note tied on or not; else another.
        longest: Ticks that a planned stroke of two or more notes may last that begins here.
        seam: No slur is planned over its beginning.
    """

    written: int
    first: int
    stop: int
    visits: int
    kind: Hashable
    longest: int
    seam: bool


class Crossing(NamedTuple):
    """Two bars played one after the other, bars of nothing but rests passed over.

    Attributes:
        before, after: Indexes in ``Problem.bars``.
        runs_on: The second is written after the first and no rest stands between: a stroke can run on.
        over_rest: A rest is played between.
        times: How often it happens in one playing.
    """

    before: int
    after: int
    runs_on: bool
    over_rest: bool
    times: int


@dataclass(frozen=True)
class Problem:
    """What is to be planned.

    Attributes:
        tune: The tune.
        kept: The bowing whose signs and accents hold, and of whose slurs, marks and retakes those that are kept.
        settings: Limits and costs.
        notes: In written order.
        bars: In written order; at least one.
        crossings: In the order in which they first happen, the way back to the start included.
        plan_changes: How often the planner itself changes the accent plan.
        found: Tables worked out once for this problem and for the same one under other accents, by what they depend on.
    """

    tune: Tune
    kept: Bowing
    settings: PlannerSettings
    notes: tuple[PlanNote, ...]
    bars: tuple[PlanBar, ...]
    crossings: tuple[Crossing, ...]
    plan_changes: int = 0
    found: dict[Hashable, object] = field(default_factory=dict, compare=False, repr=False)

    @cached_property
    def run_into(self) -> frozenset[int]:
        """Indexes of the bars that a stroke of the bar before can run into."""
        return frozenset(crossing.after for crossing in self.crossings if crossing.runs_on)

    @cached_property
    def stroke_costs(self) -> tuple[int, ...]:
        """What one playing of a stroke costs by its number of notes, as far as any stroke here can count."""
        longest = 2 * max(bar.stop - bar.first for bar in self.bars) + 1
        return tuple(self.settings.stroke_cost(notes) for notes in range(longest + 1))

    def notes_of(self, number: int) -> tuple[PlanNote, ...]:
        """The notes of a bar, by index in ``bars``."""
        bar = self.bars[number]
        return self.notes[bar.first : bar.stop]


class RefusedPlanError(RefusedEditError):
    """What the player fixed leaves no bowing; the text says why in one sentence."""


STANDARD = PlannerSettings()


def pose(
    tune: Tune,
    bowing: Bowing,
    settings: PlannerSettings = STANDARD,
    *,
    style: JoinOdds | None = None,
    keep: bool = True,
    free: Collection[str] | None = None,
    keep_start: bool = False,
) -> Problem:
    """Say what is to be planned.

    Args:
        tune: The tune.
        bowing: Its accents (none of them by phrase) are aimed at, its signs stay.
        settings: Limits and costs.
        style: Log-odds by note id that a note is joined to the one before it; takes the place of the weights of slurs
            for these notes, and of the weights of sizes of strokes for all. None: the weights alone count.
        keep: Keep the slurs, hooks, marks and retakes of the bowing; else only its signs.
        free: Ids of the notes whose slurs, marks and retakes may change; all others stay as they are. None: all may,
            but for what is kept.
        keep_start: The tune begins in the direction in which the bowing begins.
    Raises:
        RefusedPlanError: the tune has no note, or what is kept makes one stroke of three bars.
        ValueError: a style with log-odds that are not numbers.
    """
    if style is not None:
        settings = settings.beside_a_style()
    way = walk(tune)
    if not way.visits:
        raise RefusedPlanError(tr("There is nothing to bow: the tune has no notes."))
    kept = bowing if keep else _stripped(bowing, free)
    said = _Said(dict(kept.joins), dict(kept.marks), kept.retakes, dict(kept.signs), style or {}, settings.weights)
    notes: list[PlanNote] = []
    bars: list[PlanBar] = []
    numbers: dict[int, int] = {}
    clock, steps_of = ticks(tune), steps(tune)
    longest_strokes = {
        meter: int(settings.longest_stroke(meter) * clock.per_quarter) for meter in {bar.meter for bar in tune.bars}
    }
    start = next(iter(way.visits))
    run_into = {after for _, after, runs_on, _ in way.crossings if runs_on}
    for index in sorted(way.visits):
        bar, first = tune.bars[index], len(notes)
        seam = index in way.seams
        entered, may_join = index in run_into, not seam
        for note, length, step in zip(bar.notes, clock.bars[index].lengths, steps_of[index], strict=True):
            if note.pitches:
                locked = free is not None and note.id not in free
                notes.append(_plan_note(said, note, length, step, entered=entered, may_join=may_join, locked=locked))
                entered = may_join = True
        numbers[index] = len(bars)
        visits, longest = way.visits[index], longest_strokes[bar.meter]
        bars.append(PlanBar(index, first, len(notes), visits, (), longest, seam))
    if keep_start:
        first = bars[numbers[start]].first
        bow = work_out(tune, bowing).bows[notes[first].note_id][0]
        notes[first] = notes[first]._replace(bow=bow)
    crossings = tuple(
        Crossing(numbers[before], numbers[after], runs_on, over_rest, times)
        for (before, after, runs_on, over_rest), times in way.crossings.items()
    )
    _part_whole_bars_held(notes, bars, crossings)
    _heed_marks_behind_jumps(kept, notes, bars, crossings)
    problem = Problem(tune, kept, settings, tuple(notes), tuple(bars), crossings)
    _refuse_strokes_of_three_bars(problem)
    return with_accents(problem, bowing)


def with_accents(problem: Problem, bowing: Bowing) -> Problem:
    """The same problem under the accents of another bowing of its tune, none of them by phrase, with the same signs."""
    accented = accented_notes(problem.tune, bowing)
    classes = bar_classes(problem.tune)
    notes = list(problem.notes)
    bars = []
    for bar in problem.bars:
        ids = accented[bar.written]
        places = []
        for place in range(bar.first, bar.stop):
            note = notes[place]
            here = note.note_id in ids
            if here:
                places.append(place - bar.first)
            if here is not note.accented:
                notes[place] = note._replace(accented=here)
        bars.append(bar._replace(kind=(classes[bar.written], notes[bar.first].held, tuple(places))))
    kept = replace(problem.kept, accents=bowing.accents, accent_changes=bowing.accent_changes)
    return replace(problem, kept=kept, notes=tuple(notes), bars=tuple(bars))


def _stripped(bowing: Bowing, free: Collection[str] | None) -> Bowing:
    """Without slurs, marks and retakes where they may change."""
    if free is None:
        return separate_bows(bowing, bowing.name)
    return replace(
        bowing,
        joins=immutabledict({note_id: how for note_id, how in bowing.joins.items() if note_id not in free}),
        marks=immutabledict({note_id: mark for note_id, mark in bowing.marks.items() if note_id not in free}),
        retakes=bowing.retakes.difference(free),
    )


class _Said(NamedTuple):
    """What is said of notes, by their ids, in mappings that are quick to look up in.

    Attributes:
        joins, marks, retakes: What is kept.
        signs: Signs, which part notes.
        style: Log-odds.
        weights: What the rest costs.
    """

    joins: Mapping[str, Join]
    marks: Mapping[str, Mark]
    retakes: Collection[str]
    signs: Mapping[str, Signs]
    style: JoinOdds
    weights: Weights


def _plan_note(
    said: _Said, note: Note, length: int, step: Step | None, *, entered: bool, may_join: bool, locked: bool
) -> PlanNote:
    """A note of the problem, not accented.

    Args:
        said: What is said of notes.
        note: The note.
        length: In ticks.
        step: To it from what is written before it, if anything is.
        entered: It is ever played after the note that is written before it.
        may_join: No seam stands before it.
        locked: It may not change.
    """
    note_id = note.id
    after_rest = step is not None and step.after_rest
    runs_on = step is not None and not after_rest and entered
    held = note.held and runs_on
    how = said.joins.get(note_id)
    joined: bool | None = None
    if held or (runs_on and how is not None):
        joined = True
    elif not may_join or not runs_on or locked or note_id in said.marks or note_id in said.retakes:
        joined = False
    bow = said.marks[note_id].bow if note_id in said.marks and not (joined and not held) else None
    retake = Retake.NEVER
    if note_id in said.retakes and not joined:
        retake = Retake.MUST
    elif not joined and (bow is not None or (after_rest and not locked)):
        retake = Retake.MAY
    costs = FREE
    if runs_on and not held and note_id in said.style:
        costs = by_style(said.style[note_id])
    elif step is not None and not held:
        costs = by_weights(said.weights, step, parted=note_id in said.signs and said.signs[note_id].parts)
    return PlanNote(
        note_id, length, joined, how is Join.HOOK, held, bow, retake, after_rest, False, costs.joined, costs.apart,
        said.weights.retake_over_rest if after_rest else said.weights.retake,
    )  # fmt: skip


def _part_whole_bars_held(notes: list[PlanNote], bars: list[PlanBar], crossings: tuple[Crossing, ...]) -> None:
    """Give a note that is tied through a whole bar a stroke of its own, where nothing kept joins it to another."""
    openings = {bar.first for bar in bars}
    runs_on = {bars[crossing.after].first for crossing in crossings if crossing.runs_on}
    goes_on = [note.held and (place not in openings or place in runs_on) for place, note in enumerate(notes)]
    for bar, after in pairwise(bars):
        if bar.stop - bar.first == 1 and goes_on[bar.first] and goes_on[after.first]:
            begin = bar.first
            while goes_on[begin]:
                begin -= 1
            end = after.first
            while end < len(notes) and goes_on[end]:
                end += 1
            for place in (begin, end):
                if place < len(notes) and notes[place].joined is None:
                    notes[place] = notes[place]._replace(joined=False)


def _heed_marks_behind_jumps(
    kept: Bowing, notes: list[PlanNote], bars: list[PlanBar], crossings: tuple[Crossing, ...]
) -> None:
    """A mark inside a slur says nothing (rule B5), but where a jump leads to it a stroke begins that it holds for."""
    for crossing in crossings:
        place = bars[crossing.after].first
        mark = kept.marks.get(notes[place].note_id)
        if mark and not crossing.runs_on:
            notes[place] = notes[place]._replace(bow=mark.bow)


def _refuse_strokes_of_three_bars(problem: Problem) -> None:
    """Strokes are planned over one bar line at most; what is kept must not ask for more."""
    notes = problem.notes
    for number, bar in enumerate(problem.bars[1:-1], 1):
        after = problem.bars[number + 1]
        through = all(note.joined for note in notes[bar.first : bar.stop]) and notes[after.first].joined
        held = notes[bar.first].held and bar.stop - bar.first == 1 and notes[after.first].held
        behind = next((note for note in notes[after.first :] if not note.held), None)
        alone = held and not (behind and behind.joined)  # a tied note through a whole bar is a stroke of its own
        if through and not alone and {number, number + 1} <= problem.run_into:
            raise RefusedPlanError(
                tr(
                    "In bar {number} one stroke runs through the whole bar from the bar before into the bar behind: "
                    "part it there first.",
                    number=problem.tune.bars[bar.written].number,
                )
            )
