"""Whether the hair may not last somewhere, told from bars and bounds: most tunes need not be timed stroke by stroke.

A bound may say that the hair may not last where it does, never the other way round.
"""

from __future__ import annotations

from typing import NamedTuple

from core.bowing import Bow
from core.checks.view import View
from core.once import once
from core.reach import bowed_triplets
from core.tempos import pace
from core.ticks import ticks
from core.tune import Tune


class Extremes(NamedTuple):
    """Seconds between which all strokes last."""

    shortest_s: float
    longest_s: float


def may_run_out(view: View) -> bool:
    """Whether a stroke may find no room at whatever speeds within the limits.

    Unless the bow is set down anew, strokes go to and fro. Where the longest, drawn as slowly as can be, takes no more
    than there is of hair, and no more than the shortest gives back drawn as fast as can be, each has room.
    """
    settings = view.reach_settings
    shortest_s, longest_s = _extremes(view)
    return settings.slowest_cm_s * longest_s > min(settings.hair_cm, settings.fastest_cm_s * shortest_s)


def may_drift(view: View, slowest_cm_s: float, fastest_cm_s: float) -> bool:
    """Whether strokes may drift off the hair though one direction is as slow and the other as fast as given.

    Bars are taken whole, but for the one where a drift begins and the one where it ends: of them only what drifts.
    """
    settings = view.reach_settings
    if _extremes(view).longest_s * settings.even_cm_s > settings.hair_cm or bowed_triplets(view.bowing):
        return True
    hair = settings.hair_cm / _seconds_a_tick(view)  # in ticks at 1 cm/s, as what follows
    ways = _ticks_each_way(view)
    for there in (ways, [(up, down) for down, up in ways]):
        drifted = 0.0  # the most by which any run of strokes up to here has drifted this way
        for along, back in there:
            if drifted + slowest_cm_s * along > hair:
                return True
            drifted = slowest_cm_s * along + max(0.0, drifted - fastest_cm_s * back)
    return False


@once
def _extremes(view: View) -> Extremes:
    tune = view.tune
    shortest, longest = _note_extremes(tune)
    lengths, places = ticks(tune).lengths, tune.places
    for notes in view.shared_strokes:  # as written: played over a jump they are shorter
        first = places[notes[0].id]
        longest = max(longest, sum(lengths[first : first + len(notes)]))
    second = _seconds_a_tick(view)
    parts = 3 if bowed_triplets(view.bowing) else 1
    return Extremes(second * shortest / parts, second * longest)


@once
def _note_extremes(tune: Tune) -> tuple[int, int]:
    """Ticks of the shortest and the longest note; 1 and 0 where there is none."""
    lengths = [length for rhythm in ticks(tune).rhythms for length in rhythm.sounding]
    return min(lengths, default=1), max(lengths, default=0)


@once
def _seconds_a_tick(view: View) -> float:
    return pace(view.tune, view.reach_settings.tempo).seconds_a_quarter / ticks(view.tune).per_quarter


def _ticks_each_way(view: View) -> list[tuple[int, int]]:
    """For each visit the ticks bowed down, and those bowed up."""
    times = ticks(view.tune)
    known: dict[tuple[int, tuple[Bow, ...]], tuple[int, int]] = {}
    found = []
    for (bar, _), strokes in zip(view.strokes.order, view.strokes.visits, strict=True):
        key = times.kinds[bar], strokes.bows
        if key not in known:
            lengths = times.bars[bar].sounding
            down = sum([length for length, bow in zip(lengths, strokes.bows, strict=True) if bow is Bow.DOWN])
            known[key] = down, sum(lengths) - down
        found.append(known[key])
    return found
