"""What it costs to slur a note to the one before, and what it costs not to: by the plain weights, or by a style.

A *style* says of notes how likely they are to be joined. What is likely is cheap: a choice costs ``STYLE_SCALE`` times
minus the natural logarithm of its probability, so that the cheapest bowing is the likeliest one, the choices taken one
by one. Notes that a style says nothing of keep the plain weights, a point of which then weighs a tenth
(``core.planner.settings.PlannerSettings.beside_a_style``).
"""

from __future__ import annotations

from collections.abc import Mapping
from math import exp, isnan, log1p
from typing import NamedTuple, TypeAlias

from core.once import once
from core.pitch_numbers import REST, pitch_numbers
from core.planner.settings import STYLE_SCALE, Weights
from core.ticks import BarTicks, ticks
from core.tune import Tune

JoinOdds: TypeAlias = Mapping[str, float]  # by note id: log of (probability of joined / probability of apart)

A_STEP, A_FIFTH = 2, 7  # semitones
SUREST = 10.0  # log-odds farther from 0 count as this: one in 22,000


class JoinCosts(NamedTuple):
    """What one playing of a note costs; both at least 0.

    Attributes:
        joined: If it is joined to the note before.
        apart: If it begins a stroke.
    """

    joined: int
    apart: int


FREE = JoinCosts(0, 0)


def by_style(log_odds: float) -> JoinCosts:
    """What a style makes of a note.

    Raises:
        ValueError: the log-odds are not a number.
    """
    if isnan(log_odds):
        raise ValueError("the log-odds of a style must be numbers")
    sure = max(-SUREST, min(SUREST, log_odds))
    return JoinCosts(_surprise(sure), _surprise(-sure))


def _surprise(log_odds: float) -> int:
    return round(STYLE_SCALE * log1p(exp(-log_odds)))


class Step(NamedTuple):
    """How a note follows the note or rest that is written before it.

    Attributes:
        after_rest: A rest stands before it.
        equal: The two are the same notes.
        shorter: The one before is longer.
        leaps: 1 if the two lie more than two semitones apart, 2 beyond a fifth, else 0.
        opens: It is the first of its bar, rests left out.
        on_beat: It begins a beat.
    """

    after_rest: bool
    equal: bool
    shorter: bool
    leaps: int
    opens: bool
    on_beat: bool


@once
def steps(tune: Tune) -> tuple[tuple[Step | None, ...], ...]:
    """For each bar the step to each of its notes and rests; None to the tune's first, and to rests."""
    times, pitches = ticks(tune), pitch_numbers(tune)
    on_beat = [_begin_beats(rhythm, times.per_quarter) for rhythm in times.rhythms]
    before, length_before = REST, 0
    started = False
    found = []
    for numbers, kind in zip(pitches.bars, times.kinds, strict=True):
        of_bar: list[Step | None] = []
        opens = True
        for number, length, on in zip(numbers, times.rhythms[kind].lengths, on_beat[kind], strict=True):
            if number == REST or not started:
                of_bar.append(None)
            else:
                semitones = abs(pitches.keys[number] - pitches.keys[before]) if before != REST else 0
                leaps = (semitones > A_STEP) + (semitones > A_FIFTH)
                of_bar.append(Step(before == REST, number == before, length_before > length, leaps, opens, on))
            opens = opens and number == REST
            before, length_before, started = number, length, True
        found.append(tuple(of_bar))
    return tuple(found)


def _begin_beats(rhythm: BarTicks, per_quarter: int) -> list[bool]:
    """Whether each note begins a beat."""
    beat = rhythm.meter.beat_length
    begins = [rhythm.start + end - length for end, length in zip(rhythm.ends, rhythm.lengths, strict=True)]
    return [not at * beat.denominator % (beat.numerator * per_quarter) for at in begins]


def by_weights(weights: Weights, step: Step, *, parted: bool) -> JoinCosts:
    """What the plain weights make of a note.

    Args:
        weights: The weights.
        step: To the note.
        parted: Signs part it from an equal one before it.
    """
    cost = weights.join
    if step.equal and not parted:
        cost += weights.equal_pitches
    cost += weights.over_bar_line * step.opens + weights.into_beat * step.on_beat
    cost += weights.after_longer * step.shorter + weights.leap * step.leaps
    return JoinCosts(cost, 0)
