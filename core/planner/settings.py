"""What a teacher can set for the planner: limits of a stroke, and what a slur or a retake costs."""

from __future__ import annotations

from dataclasses import replace
from enum import IntEnum
from fractions import Fraction
from math import ceil

from core.tune import Meter
from core.values import dataclass

FREE_METER_LIMIT = Fraction(2)
MOST_WEIGHT = 10_000
STYLE_SCALE = 100  # what a choice costs that a style gives a chance of 1 in e
WEIGHTS_BESIDE_A_STYLE = 10  # of that scale to a point of the weights: a plain slur is then as dear as log-odds of -1


class Flow(IntEnum):
    """How much is slurred: one plain setting with two ends."""

    FEWEST_SLURS = 0
    SOME_SLURS = 1
    SMOOTH = 2  # strokes of two and three notes


@dataclass(frozen=True, slots=True)
class Weights:
    """What makes one bowing dearer than another that misses and breaks as little; whole numbers from 0 to 10,000.

    The first eight are paid for each playing of a note or stroke, ``plan_change`` where it is written. Values are
    ours, by reading the plans they give; what they express is common practice, no source.

    Attributes:
        join: A note slurred to the one before.
        equal_pitches: More, if the two are the same notes and nothing parts them.
        over_bar_line: More, if a bar line stands between.
        into_beat: More, if the note begins a beat.
        after_longer: More, if the note before is longer: of a quarter and two eighths rather the eighths are slurred.
        leap: More, if the two lie more than two semitones apart, and once again beyond a fifth.
        retake: A planned retake.
        retake_over_rest: A planned retake with a rest before it (rule B7).
        plan_change: A phrase that takes another accent plan than the phrase before it, where the planner chose both.
        stroke_of_one, stroke_of_four, each_note_more: At ``Flow.SMOOTH``, strokes of one and of four notes, and each
            note beyond four; half of that at ``Flow.SOME_SLURS``.
    """

    join: int = 10
    equal_pitches: int = 30
    over_bar_line: int = 5
    into_beat: int = 3
    after_longer: int = 1
    leap: int = 1
    retake: int = 100
    retake_over_rest: int = 8
    plan_change: int = 20
    stroke_of_one: int = 8
    stroke_of_four: int = 6
    each_note_more: int = 8

    def __post_init__(self) -> None:
        if any(not 0 <= getattr(self, name) <= MOST_WEIGHT for name in self.__dataclass_fields__):
            raise ValueError(f"each weight must be a whole number from 0 to {MOST_WEIGHT}")

    def times(self, factor: int) -> Weights:
        """Each weight so many times, as far as it may go."""
        return Weights(*(min(factor * getattr(self, name), MOST_WEIGHT) for name in self.__dataclass_fields__))


@dataclass(frozen=True, slots=True)
class PlannerSettings:
    """Settings of the planner.

    Attributes:
        flow: How much is slurred.
        most_notes: Notes that a planned stroke of two or more may hold; ties count once.
        longest: How long such a stroke may last as a share of a bar, rounded up to whole beats.
        weights: Costs.
        time_limit_s: When to stop and give the best found so far, in seconds.
    """

    flow: Flow = Flow.FEWEST_SLURS
    most_notes: int = 4
    longest: Fraction = Fraction(1, 2)
    weights: Weights = Weights()
    time_limit_s: float = 10.0

    def __post_init__(self) -> None:
        if not (2 <= self.most_notes <= 16 and 0 < self.longest <= 1 and self.time_limit_s > 0):
            raise ValueError("a stroke may hold 2 to 16 notes and last up to one bar; the time limit is above 0")

    def longest_stroke(self, meter: Meter) -> Fraction:
        """How long a planned stroke of two or more notes may last, in quarter notes.

        Rounded up to whole beats, so that in 3/4 two of three equal notes can be slurred (L. Mozart, Violinschule,
        1756, IV, from memory).
        """
        if meter.bar_length is None:
            return FREE_METER_LIMIT
        return ceil(meter.bar_length * self.longest / meter.beat_length) * meter.beat_length

    def beside_a_style(self) -> PlannerSettings:
        """The same where a style says what is slurred: the weights on its scale, and no stroke dear for its size."""
        return replace(self, flow=Flow.FEWEST_SLURS, weights=self.weights.times(WEIGHTS_BESIDE_A_STYLE))

    def stroke_cost(self, notes: int) -> int:
        """What one playing of a stroke costs for its size, ties counted once; 0 for no notes."""
        weights = self.weights
        if notes == 0:
            full = 0
        elif notes == 1:
            full = weights.stroke_of_one
        elif notes < 4:
            full = 0
        else:
            full = weights.stroke_of_four + (notes - 4) * weights.each_note_more
        return full * self.flow // Flow.SMOOTH
