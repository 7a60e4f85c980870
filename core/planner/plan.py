"""Plan a bowing: the best there is, proven, or the best found and how far it can be from the best."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import replace
from math import inf

from immutabledict import immutabledict

from core.bowing import Bow, Bowing, Join, Mark
from core.planner.layout import Layout
from core.planner.models import loose
from core.planner.open_problem import Answer, settled
from core.planner.problem import PlanBar, Problem, RefusedPlanError
from core.planner.rows import BOWS
from core.planner.scale import Scale, scale_of
from core.planner.score import Score
from core.planner.search import Search, in_time
from core.strokes import work_out
from core.translation import tr
from core.values import dataclass


@dataclass(frozen=True)
class Plan:
    """A planned bowing.

    Attributes:
        problem: What was planned.
        bowing: The bowing: what was kept, with slurs, marks and retakes put in.
        score: Its three numbers.
        bound: No bowing can be better than this; equal to the score where that is proven best.
    """

    problem: Problem
    bowing: Bowing
    score: Score
    bound: Score

    @property
    def proven(self) -> bool:
        """No bowing is better."""
        return self.bound == self.score


class UnfinishedPlanError(RefusedPlanError):
    """No bowing was found within the time limit; there may be one.

    Attributes:
        bound: None can be better than this.
    """

    def __init__(self, bound: Score) -> None:
        super().__init__(tr("No bowing was found in the time allowed: choose fewer bars, or allow more time."))
        self.bound = bound


def plan_bowing(problem: Problem, go_on: Callable[[], None] = lambda: None) -> Plan:
    """Plan the best bowing.

    Args:
        problem: What is to be planned.
        go_on: Called now and then; an error that it raises ends the planning and is passed on.
    Raises:
        UnfinishedPlanError: nothing was found within the time limit.
        RefusedPlanError: what is kept leaves no bowing.
    """
    go_on = in_time(go_on, problem.settings.time_limit_s)
    search = Search(settled(problem, scale_of(problem)), lambda _: problem, go_on)
    search.run()
    changes = problem.plan_changes * problem.settings.weights.plan_change
    search.best, search.bound = replace(search.best, total=search.best.total + changes), search.bound + changes
    return finished(problem, search)


def finished(problem: Problem, search: Search) -> Plan:
    """The plan that a search has found.

    Args:
        problem: What was planned, under the choice of plans that the search made.
        search: Once it has run.
    Raises:
        UnfinishedPlanError: nothing was found within the time limit.
        RefusedPlanError: what is kept leaves no bowing.
    """
    scale = search.scale
    if search.refused:
        raise _refusal(problem, scale)
    if search.best.total == inf:
        raise UnfinishedPlanError(scale.score(search.bound))
    bowing = to_bowing(problem, search.best)
    return Plan(problem, bowing, scale.score(search.best.total), scale.score(search.bound))


def to_bowing(problem: Problem, answer: Answer) -> Bowing:
    """What was kept, with the slurs, retakes and marks that a model's answer needs.

    Where nothing tells up from down it is turned so that it begins as rule B6 says.
    """
    joined, retaken, bows = _notes(problem, answer)
    bowing = _bowing(problem, joined, retaken, bows)
    if bowing.marks and all(note.bow is None and not note.accented for note in problem.notes):
        turned = _bowing(problem, joined, retaken, [bow.turned for bow in bows])
        return min(bowing, turned, key=lambda either: len(either.marks))
    return bowing


def _bowing(problem: Problem, joined: list[bool], retaken: list[bool], bows: list[Bow]) -> Bowing:
    kept, notes = problem.kept, problem.notes
    joins, marks, retakes = dict(kept.joins), dict(kept.marks), set(kept.retakes)
    ways_in = Counter(problem.notes[problem.bars[crossing.after].first].note_id for crossing in problem.crossings)
    entered_twice = {note_id for note_id, ways in ways_in.items() if ways > 1}
    for note, is_joined, is_retaken, bow in zip(notes, joined, retaken, bows, strict=True):
        if is_joined and note.joined is None:
            joins[note.note_id] = Join.SLUR
        elif is_retaken and note.note_id not in retakes and (note.bow is not None or note.note_id in entered_twice):
            marks[note.note_id] = Mark(bow)  # on every pass, whatever was kept
        elif is_retaken:
            retakes.add(note.note_id)
    for bar in _lifted(problem, bows):
        note = notes[bar.first]
        if bar.seam and note.note_id not in retakes:
            marks[note.note_id] = Mark(bows[bar.first])
    bowing = replace(kept, joins=immutabledict(joins), marks=immutabledict(marks), retakes=frozenset(retakes))
    strokes = work_out(problem.tune, bowing)
    begins = strokes.playing(next(visit for visit, its in enumerate(strokes.visits) if its.bows), 0)
    first = begins.note_id
    bow = next(bow for note, bow in zip(notes, bows, strict=True) if note.note_id == first)
    if begins.bow is not bow:  # rule B6 would begin otherwise
        bowing = replace(bowing, marks=bowing.marks.set(first, Mark(bow)), retakes=bowing.retakes - {first})
    return bowing


def _lifted(problem: Problem, bows: list[Bow]) -> list[PlanBar]:
    """The bars into which some way does not turn the bow of itself, in written order."""
    lifted = set()
    for crossing in problem.crossings:
        before, after = problem.bars[crossing.before].stop - 1, problem.bars[crossing.after].first
        if bows[before] is bows[after] and not (crossing.runs_on and problem.notes[after].joined):
            lifted.add(crossing.after)
    return [problem.bars[number] for number in sorted(lifted)]


def _notes(problem: Problem, answer: Answer) -> tuple[list[bool], list[bool], list[Bow]]:
    """For each note: joined to the one before, retaken away from seams, direction."""
    joined, retaken, bows = [], [], []
    for way in answer.ways:
        joined += [bool(join) for join in way.joins]
        retaken += [bool(retake) for retake in way.retakes]
        bows += [BOWS[bow] for bow in way.bows]
    for crossing, runs_on in zip(problem.crossings, answer.run_on, strict=True):
        bar = problem.bars[crossing.after]
        if bows[problem.bars[crossing.before].stop - 1] is bows[bar.first]:
            joined[bar.first] |= runs_on
            retaken[bar.first] |= not (bar.seam or runs_on)
    return joined, retaken, bows


def _refusal(problem: Problem, scale: Scale) -> RefusedPlanError:
    """Why nothing satisfies what is kept: the first bar up to which it cannot be satisfied."""
    each = Layout(settled(problem, scale), [[number] for number in range(len(problem.bars))])
    if each.impossible:
        return _refused_in(problem, each.impossible[0])
    low, high = 0, len(problem.crossings)  # so many crossings can be satisfied; so many cannot
    while high - low > 1:
        middle = (low + high) // 2
        some = replace(problem, crossings=problem.crossings[:middle], found={})  # tables depend on the crossings
        model = loose(settled(some, scale))
        if model is None or model.solve(lambda: None).total == inf:
            high = middle
        else:
            low = middle
    return _refused_in(problem, problem.crossings[high - 1].after)


def _refused_in(problem: Problem, number: int) -> RefusedPlanError:
    printed = problem.tune.bars[problem.bars[number].written].number
    return RefusedPlanError(
        tr(
            "The marks and slurs that are kept contradict one another in bar {printed} or in the bar before: "
            "free a mark or part a slur there.",
            printed=printed,
        )
    )
