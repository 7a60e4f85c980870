"""The three numbers of a bowing added up into one.

A missed accent outweighs all that may be broken, and that outweighs all that anything may cost.
"""

from __future__ import annotations

from typing import NamedTuple

from core.planner.problem import Problem, RefusedPlanError
from core.planner.score import Score
from core.translation import tr

MOST_EXACT = 2**53  # whole numbers up to here are exact as floats


class Scale(NamedTuple):
    """What the three numbers weigh in one.

    Attributes:
        missed, broken: Weight of one missed accent and of one thing broken; a cost of 1 weighs 1.
    """

    missed: int
    broken: int

    def total(self, score: Score) -> int:
        """The three numbers in one."""
        return score.missed * self.missed + score.broken * self.broken + score.cost

    def score(self, total: float) -> Score:
        """The three numbers again."""
        missed, rest = divmod(int(total), self.missed)
        return Score(missed, *divmod(rest, self.broken))


def scale_of(problem: Problem) -> Scale:
    """The weights for a problem: each just above all that what is weighed less can add up to.

    Raises:
        RefusedPlanError: the tune is so long that the numbers would not be exact.
    """
    weights, settings = problem.settings.weights, problem.settings
    playings = sum(bar.visits * (bar.stop - bar.first) for bar in problem.bars)
    dearest = max(max(note.join_cost, note.apart_cost) for note in problem.notes)
    dearest += weights.retake + weights.retake_over_rest
    dearest += settings.stroke_cost(1) + settings.stroke_cost(4) + weights.each_note_more
    broken = 1 + playings * dearest + weights.plan_change * len(problem.bars)
    crossings = sum(crossing.times for crossing in problem.crossings)
    missed = broken * (1 + crossings + len(problem.bars))
    if missed * (playings + 1) > MOST_EXACT:
        raise RefusedPlanError(tr("The tune is too long to work out a bowing for all of it at once: choose some bars."))
    return Scale(missed, broken)
