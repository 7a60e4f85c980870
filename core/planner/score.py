"""The three numbers that judge a bowing, counted from its directions and its accents.

The planner finds its plans by other means; this module counts them again from what ``core.strokes`` and
``core.accents`` say of the finished bowing.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Hashable
from typing import NamedTuple

from core.accents import Met, weigh
from core.bowing import Bowing
from core.planner.problem import PlanNote, Problem
from core.strokes import Strokes, work_out
from core.tune import Tune


class Score(NamedTuple):
    """How good a bowing is, smaller is better, compared in this order (``core.planner.problem`` defines the three)."""

    missed: int
    broken: int
    cost: int


def score(problem: Problem, bowing: Bowing) -> Score:
    """Judge a bowing.

    Args:
        problem: Says which bars are alike, where the seams are and what things cost.
        bowing: Any bowing of its tune with the same accents. A planned one is the same on every pass; for others each
            playing of a bar that is turned round against the first, and not coming round, counts as broken too.
    """
    strokes = work_out(problem.tune, bowing)
    accents = weigh(problem.tune, bowing, strokes)
    notes = {note.note_id: note for note in problem.notes}
    broken, cost = _lifts(problem, notes, strokes)
    cost += problem.settings.weights.plan_change * problem.plan_changes
    for one in strokes.played:
        note = notes[one.note_id]
        cost += note.apart_cost if one.starts else note.join_cost
    cost += sum(problem.settings.stroke_cost(size) for size in _stroke_sizes(notes, strokes))
    broken += _bars_unlike_most(problem, strokes, bowing) + _turned_playings(strokes) + (not strokes.comes_round)
    return Score(accents.count(Met.UP) + accents.count(Met.BURIED), broken, cost)


def _lifts(problem: Problem, notes: dict[str, PlanNote], strokes: Strokes) -> tuple[int, int]:
    """How many retakes stand at a seam without a rest, and what the others cost."""
    seams = {problem.notes[bar.first].note_id for bar in problem.bars if bar.seam}
    lifts = [(one.note_id, one.over_rest) for one in strokes.played if one.retake]
    if strokes.round_retake:
        lifts.append((strokes.played[0].note_id, _rests_on_the_way_round(problem.tune, strokes)))
    weights = problem.settings.weights
    broken = sum(note_id in seams and not over_rest for note_id, over_rest in lifts)
    cost = sum(
        weights.retake_over_rest if over_rest else weights.retake
        for note_id, over_rest in lifts
        if over_rest or note_id not in seams
    )
    return broken, cost


def _rests_on_the_way_round(tune: Tune, strokes: Strokes) -> bool:
    """Whether a rest is played between the last note and the first."""
    first, last = strokes.played[0], strokes.played[-1]
    begins, ends = tune.bars[first.bar].notes[0], tune.bars[last.bar].notes[-1]
    return first.visit > 0 or begins.is_rest or last.visit < len(strokes.order) - 1 or ends.is_rest


def _bars_unlike_most(problem: Problem, strokes: Strokes, bowing: Bowing) -> int:
    """How many written bars are bowed otherwise than most of their kind, directions and inner joins compared."""
    ways: dict[Hashable, Counter[object]] = defaultdict(Counter)
    for bar in problem.bars:
        notes = problem.notes[bar.first : bar.stop]
        directions = tuple(strokes.bows[note.note_id][0] for note in notes)
        joins = tuple(note.held or note.note_id in bowing.joins for note in notes[1:])
        ways[bar.kind][directions, joins] += 1
    return sum(counts.total() - max(counts.values()) for counts in ways.values())


def _turned_playings(strokes: Strokes) -> int:
    """How many playings of a bar have a direction that differs from its first playing."""
    return len({(one.bar, one.pass_number) for one in strokes.played if one.bow is not strokes.bows[one.note_id][0]})


def _stroke_sizes(notes: dict[str, PlanNote], strokes: Strokes) -> list[int]:
    """Notes in each stroke played, ties counted once."""
    sizes: list[int] = []
    for one in strokes.played:
        if one.starts:
            sizes.append(1)
        elif not notes[one.note_id].held:
            sizes[-1] += 1
    return sizes
