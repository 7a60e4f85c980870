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

from core.bowing import Bowing
from core.planner.settings import STYLE_SCALE, Weights
from core.tune import Note

Style: TypeAlias = Mapping[str, float]  # by note id: log of (probability of joined / probability of apart)

STEP, FIFTH = 2, 7  # semitones
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


def by_weights(kept: Bowing, weights: Weights, before: Note, note: Note, *, opens: bool, on_beat: bool) -> JoinCosts:
    """What the plain weights make of a note.

    Args:
        kept: Says what parts equal pitches.
        weights: The weights.
        before, note: The note and the one written before it.
        opens: It is the first of its bar.
        on_beat: It begins a beat.
    """
    cost = weights.join
    if before.pitches == note.pitches and not kept.signs_on(note.id).parts:
        cost += weights.equal_pitches
    cost += weights.over_bar_line * opens + weights.into_beat * on_beat
    cost += weights.after_longer * (before.length > note.length)
    if before.pitches and note.pitches:
        semitones = abs(before.pitches[-1].midi - note.pitches[-1].midi)
        cost += weights.leap * ((semitones > STEP) + (semitones > FIFTH))
    return JoinCosts(cost, 0)
