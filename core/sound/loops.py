"""Bars to be played on their own and again: an excerpt of the strokes of a tune.

Each bar keeps the directions that it has in the tune, so that what is practised is what will be played; where the bars
come round with the same bow the seam is a retake.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from core.strokes import BarStrokes, Strokes
from core.translation import tr

MOST_TIMES = 100


def excerpt(strokes: Strokes, visits: Sequence[int], times: int = 1) -> Strokes:
    """The strokes of some visits, in any order.

    Args:
        strokes: Of the whole tune.
        visits: At least one index in ``strokes.order``; those that follow one another there run on as they do there.
        times: How often all of them are played, 1 to ``MOST_TIMES``.
    Returns:
        Strokes of these visits. A note whose stroke began in a bar that is not played just before begins one.
    Raises:
        ValueError: no visit, no such visit, or too many times.
    """
    if not visits or not all(0 <= visit < len(strokes.order) for visit in visits):
        raise ValueError(tr("The bars to be played must be at least one of 0 to {last}.", last=len(strokes.order) - 1))
    if not 1 <= times <= MOST_TIMES:
        raise ValueError(tr("Bars can be played 1 to {most} times in a row.", most=MOST_TIMES))
    chosen = list(visits) * times
    bowed = []
    bow = None
    for place, visit in enumerate(chosen):
        of_bar = strokes.visits[visit]
        runs_on = place > 0 and chosen[place - 1] == visit - 1
        if of_bar.bows and not runs_on:
            of_bar = _begun(of_bar, retaken=bow is of_bar.bows[0])
        bowed.append(of_bar)
        bow = of_bar.bows[-1] if of_bar.bows else bow
    sounding = [of_bar.bows for of_bar in bowed if of_bar.bows]
    return replace(
        strokes,
        order=tuple(strokes.order[visit] for visit in chosen),
        visits=tuple(bowed),
        next_bow=sounding[-1][-1].turned if sounding else strokes.next_bow,
        comes_round=True,
        round_retake=bool(sounding) and sounding[0][0] is sounding[-1][-1],
    )


def _begun(of_bar: BarStrokes, *, retaken: bool) -> BarStrokes:
    """The strokes of a bar whose first note begins a stroke."""
    return of_bar._replace(
        starts=(True, *of_bar.starts[1:]), struck=(True, *of_bar.struck[1:]), retakes=(retaken, *of_bar.retakes[1:])
    )
