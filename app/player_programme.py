"""What is to be played: passages one after another, round and round, at the speeds of a ladder.

Values and pure functions; nothing here sounds.
"""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from core.bowing import Bow, Bowing
from core.reach import ORDINARY, ReachSettings
from core.sound.ladder import Ladder
from core.sound.loops import excerpt
from core.strokes import Strokes, work_out
from core.tune import Tune
from core.values import dataclass


@dataclass(frozen=True)
class Passage:
    """Bars of a tune that are played in a row.

    Attributes:
        tune, bowing: What is played.
        bars: Indexes in ``tune.bars`` of its first and last bar, each bar played as on its first pass; None for the
            whole tune in its playing order, which is played too where that leaves all these bars out.
        reach: Bow and tempo.
    """

    tune: Tune
    bowing: Bowing
    bars: tuple[int, int] | None = None
    reach: ReachSettings = ORDINARY

    def strokes(self, after: Bow | None = None, first_bar: int | None = None) -> Strokes:
        """How it is bowed.

        Args:
            after: The stroke played before it, to which the whole tune goes on (rule B10); bars on their own are
                bowed as in the tune.
            first_bar: The bar, by index, with which it begins this time; its first where None or not among its bars.
        """
        if self.bars is not None:
            strokes = work_out(self.tune, self.bowing)
            first, last = self.bars
            if first_bar is not None and first <= first_bar <= last:
                first = first_bar
            visits = [
                place for place, (bar, number) in enumerate(strokes.order) if number == 1 and first <= bar <= last
            ]
            return excerpt(strokes, visits) if visits else strokes
        strokes = work_out(self.tune, self.bowing, after=after)
        if first_bar is None:
            return strokes
        start = next((place for place, visit in enumerate(strokes.order) if visit.bar == first_bar), 0)
        return excerpt(strokes, range(start, len(strokes.order))) if start else strokes


class Step(NamedTuple):
    """A place in a programme: which time through it all, and which passage."""

    round: int = 0
    passage: int = 0


@dataclass(frozen=True)
class Programme:
    """Passages to be played in this order.

    Attributes:
        passages: At least one.
        loops: All begins again at the end.
        speed: Share of the tempo.
        ladder: Speeds one round after another, in the place of ``speed``; it ends with its last rung.
        count_in: Bars counted before the beginning, and before each new speed.
    """

    passages: tuple[Passage, ...]
    loops: bool = False
    speed: Fraction = Fraction(1)
    ladder: Ladder | None = None
    count_in: int = 0

    def step_after(self, step: Step) -> Step | None:
        """What comes next; None at the end."""
        if step.passage + 1 < len(self.passages):
            return Step(step.round, step.passage + 1)
        goes_on = step.round + 1 < len(self.ladder.speeds) if self.ladder else self.loops
        return Step(step.round + 1, 0) if goes_on else None

    def speed_at(self, step: Step) -> Fraction:
        """Share of the tempo in a round."""
        if self.ladder is None:
            return self.speed
        speeds = self.ladder.speeds
        return speeds[min(step.round, len(speeds) - 1)]

    def counts_in(self, step: Step) -> bool:
        """Whether bars are counted before a step."""
        if step.passage or not self.count_in:
            return False
        return not step.round or self.speed_at(step) != self.speed_at(Step(step.round - 1))

    def passage_at(self, step: Step) -> Passage:
        """What is played in a step; the last passage where there are fewer now."""
        return self.passages[min(step.passage, len(self.passages) - 1)]


@dataclass(frozen=True)
class Recipe:
    """All that the notes of one step depend on.

    Attributes:
        step: The place in the programme.
        passage: What is played.
        speed: Share of the tempo.
        count_in: Bars counted before it.
        counts: They are heard this time.
        after: The stroke before it.
        first_bar: The bar, by index, with which it begins this time; None for its first.
    """

    step: Step
    passage: Passage
    speed: Fraction
    count_in: int = 0
    counts: bool = False
    after: Bow | None = None
    first_bar: int | None = None


def recipe_of(
    programme: Programme, step: Step, after: Bow | None = None, first_bar: int | None = None
) -> Recipe:  # fmt: skip
    """What is needed to play a step."""
    return Recipe(
        step,
        programme.passage_at(step),
        programme.speed_at(step),
        programme.count_in,
        programme.counts_in(step),
        after,
        first_bar,
    )
