"""Plans of small tunes by trial: every way to join and to turn, judged one by one.

Nothing here looks anything up in the planner's tables. A *way* says for each note of ``Problem.notes`` whether it is
joined and which direction it has; ``legal`` holds it against the rules one sentence at a time, ``bowing_of`` makes the
bowing of it, and ``core.planner.score`` alone says how good that is.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import product
from typing import NamedTuple

from immutabledict import immutabledict

from core.bowing import Bow, Bowing, Join, Mark
from core.planner.problem import Crossing, PlanNote, Problem, Retake
from core.planner.score import Score, score
from core.strokes import work_out

BOWS = (Bow.DOWN, Bow.UP)


class Way(NamedTuple):
    """One way to bow a tune, for each note of ``Problem.notes``."""

    joined: tuple[bool, ...]
    bows: tuple[Bow, ...]


@dataclass(frozen=True)
class Trial:
    """What trial found.

    Attributes:
        score: The best; None where nothing is legal.
        best: All ways with that score.
        tried: How many ways are legal.
    """

    score: Score | None
    best: frozenset[Way]
    tried: int


def try_all(problem: Problem, at_most: int = 10_000) -> Trial:
    """Judge every legal way; the time grows as two to the number of notes.

    Raises:
        OverflowError: more than ``at_most`` ways are legal.
    """
    best: set[Way] = set()
    lowest: Score | None = None
    tried = 0
    for way in legal_ways(problem):
        tried += 1
        if tried > at_most:
            raise OverflowError(f"more than {at_most} ways")
        found = score(problem, bowing_of(problem, way))
        if lowest is None or found < lowest:
            lowest, best = found, set()
        if found == lowest:
            best.add(way)
    return Trial(lowest, frozenset(best), tried)


def legal_ways(problem: Problem) -> Iterator[Way]:
    """Every way that keeps the rules."""
    choices = [(True, False) if note.joined is None else (note.joined,) for note in problem.notes]
    for joined in product(*choices):
        if strokes_fit(problem, joined) and bars_in_one_stroke_stand_alone(problem, joined):
            yield from (Way(joined, bows) for bows in _directions(problem, joined))


def _directions(problem: Problem, joined: tuple[bool, ...]) -> Iterator[tuple[Bow, ...]]:
    """Bar by bar, so that a bar that cannot follow ends the search there."""
    found: list[tuple[Bow, ...]] = [()]
    for number, bar in enumerate(problem.bars):
        within = list(_within_bar(problem.notes[bar.first : bar.stop], joined[bar.first : bar.stop]))
        met = [crossing for crossing in problem.crossings if max(crossing.before, crossing.after) == number]
        found = [
            before + bows
            for before in found
            for bows in within
            if all(may_cross(problem, joined, before + bows, crossing) for crossing in met)
        ]
    yield from found


def _within_bar(notes: tuple[PlanNote, ...], joined: tuple[bool, ...]) -> Iterator[tuple[Bow, ...]]:
    for bows in product(BOWS, repeat=len(notes)):
        if all(note.bow in (None, bow) for note, bow in zip(notes, bows, strict=True)) and all(
            may_follow(notes[place], joined[place], same=bows[place] is bows[place - 1])
            for place in range(1, len(notes))
        ):
            yield bows


def legal(problem: Problem, way: Way) -> bool:
    """Whether a way keeps all rules; the same rules as ``legal_ways``, for a way found elsewhere."""
    notes, joined, bows = problem.notes, way.joined, way.bows
    inner = [place for bar in problem.bars for place in range(bar.first + 1, bar.stop)]
    return (
        all(note.joined in (None, is_joined) for note, is_joined in zip(notes, joined, strict=True))
        and all(note.bow in (None, bow) for note, bow in zip(notes, bows, strict=True))
        and all(may_follow(notes[at], joined[at], same=bows[at] is bows[at - 1]) for at in inner)
        and all(may_cross(problem, joined, bows, crossing) for crossing in problem.crossings)
        and strokes_fit(problem, joined)
        and bars_in_one_stroke_stand_alone(problem, joined)
    )


def may_follow(note: PlanNote, joined: bool, *, same: bool) -> bool:
    """Away from seams: a joined note goes on, a stroke turns, a retake is one only where it may be."""
    if joined:
        return same
    return note.retake is not Retake.NEVER if same else note.retake is not Retake.MUST


def may_cross(problem: Problem, joined: tuple[bool, ...], bows: tuple[Bow, ...], crossing: Crossing) -> bool:
    """The same from bar to bar: where the bow cannot run on a stroke begins, and at a seam it may go either way."""
    bar = problem.bars[crossing.after]
    note, same = problem.notes[bar.first], bows[problem.bars[crossing.before].stop - 1] is bows[bar.first]
    goes_on = joined[bar.first] and crossing.runs_on
    if bar.seam and not goes_on:
        return same or note.retake is not Retake.MUST
    return may_follow(note, goes_on, same=same)


def strokes(problem: Problem, joined: tuple[bool, ...]) -> list[range]:
    """The strokes as written: places in ``Problem.notes``, cut where no crossing runs on."""
    cuts = {bar.first for bar in problem.bars} - _run_on(problem)
    starts = [place for place, is_joined in enumerate(joined) if not is_joined or place in cuts]
    return [range(*ends) for ends in zip(starts, [*starts[1:], len(joined)], strict=True)]


def _run_on(problem: Problem) -> set[int]:
    """First notes of bars into which a stroke can run on."""
    return {problem.bars[crossing.after].first for crossing in problem.crossings if crossing.runs_on}


def strokes_fit(problem: Problem, joined: tuple[bool, ...]) -> bool:
    """A stroke of two or more notes keeps to both limits, unless the player joined all of it."""
    notes = problem.notes
    for stroke in strokes(problem, joined):
        count = 1 + sum(not notes[place].held for place in stroke[1:])
        if count < 2 or all(notes[place].joined for place in stroke[1:]):
            continue
        bar = next(bar for bar in problem.bars if bar.first <= stroke.start < bar.stop)
        if count > problem.settings.most_notes or sum(notes[place].length for place in stroke) > bar.longest:
            return False
    return True


def bars_in_one_stroke_stand_alone(problem: Problem, joined: tuple[bool, ...]) -> bool:
    """The planner joins no bar that is one stroke to a neighbour, nor makes one stroke of a bar joined to both."""
    notes, run_on = problem.notes, _run_on(problem)
    for bar in problem.bars:
        inner = range(bar.first + 1, bar.stop)
        if not all(joined[place] for place in inner):
            continue
        ends = [place for place in (bar.first, bar.stop) if place in run_on and joined[place]]
        if any(notes[place].joined is None for place in ends):
            return False
        if len(ends) == 2 and any(notes[place].joined is None for place in inner):
            return False
    return True


def bowing_of(problem: Problem, way: Way) -> Bowing:
    """The bowing that is played in this way: what is kept, slurs, retakes, and marks where nothing else says it.

    Raises:
        AssertionError: ``core.strokes`` makes another way of it.
    """
    notes, kept = problem.notes, problem.kept
    joins, marks, retakes = dict(kept.joins), dict(kept.marks), set(kept.retakes)
    for place, note in enumerate(notes):
        if way.joined[place] and note.joined is None:
            joins[note.note_id] = Join.SLUR
    for place, same, goes_on in _turns(problem, way):
        note = notes[place]
        if goes_on or True not in same or note.note_id in retakes:
            continue
        if note.note_id in marks:
            marks[note.note_id] = Mark(way.bows[place])  # on every pass
        elif all(same) and not _opens_seam(problem, place):
            retakes.add(note.note_id)
        else:
            marks[note.note_id] = Mark(way.bows[place])
    bowing = replace(kept, joins=immutabledict(joins), marks=immutabledict(marks), retakes=frozenset(retakes))
    bow_of = {note.note_id: bow for note, bow in zip(notes, way.bows, strict=True)}
    first = work_out(problem.tune, bowing).played[0]
    if first.bow is not bow_of[first.note_id]:
        first_mark = bowing.marks.set(first.note_id, Mark(bow_of[first.note_id]))
        bowing = replace(bowing, marks=first_mark, retakes=bowing.retakes - {first.note_id})
    played = work_out(problem.tune, bowing)
    for note, bow in zip(notes, way.bows, strict=True):
        assert set(played.bows[note.note_id]) == {bow}, f"{note.note_id} goes {played.bows[note.note_id]}, not {bow}"
    assert played.comes_round
    return bowing


def way_of(problem: Problem, bowing: Bowing) -> Way:
    """The way that a bowing is played in.

    Raises:
        AssertionError: a note goes both ways.
    """
    strokes = work_out(problem.tune, bowing)
    assert all(len(set(strokes.bows[note.note_id])) == 1 for note in problem.notes)
    goes_on = {played.note_id for played in strokes.played if not played.starts}
    return Way(
        tuple(note.note_id in goes_on for note in problem.notes),
        tuple(strokes.bows[note.note_id][0] for note in problem.notes),
    )


def _turns(problem: Problem, way: Way) -> Iterator[tuple[int, list[bool], bool]]:
    """For each note: whether it goes the way of the note before it, at each crossing, and whether it always goes on."""
    for number, bar in enumerate(problem.bars):
        into = [crossing for crossing in problem.crossings if crossing.after == number]
        new = [crossing for crossing in into if not (crossing.runs_on and way.joined[bar.first])]
        ends = [problem.bars[crossing.before].stop - 1 for crossing in new]
        yield bar.first, [way.bows[end] is way.bows[bar.first] for end in ends], not new
        for place in range(bar.first + 1, bar.stop):
            yield place, [way.bows[place] is way.bows[place - 1]], way.joined[place]


def _opens_seam(problem: Problem, place: int) -> bool:
    return any(bar.seam and bar.first == place for bar in problem.bars)
