"""A set played: each tune as often as it is to be played, the bow going on from each playing to the next."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from core.bowing import Bow
from core.sound.performance import Manner, Performance, perform
from core.tune_set import TuneSet, strokes_in


def perform_set(tune_set: TuneSet, manners: Sequence[Manner]) -> list[Performance]:
    """Play a set once through.

    Args:
        tune_set: The set.
        manners: How each entry is played. Bars are counted in before the first playing and before no other.
    Returns:
        The playings in their order; each is bowed on from the last stroke before it (rule B10).
    """
    strokes_of = strokes_in(tune_set)
    playings: list[Performance] = []
    bow: Bow | None = None
    for place, (entry, manner) in enumerate(zip(tune_set.entries, manners, strict=True)):
        for _ in range(entry.times):
            strokes = strokes_of(place, bow)
            goes_on = replace(manner, count_in=0) if playings else manner
            playings.append(perform(entry.tune, entry.bowing, strokes, goes_on))
            bow = strokes.played[-1].bow if strokes.played else bow
    return playings
