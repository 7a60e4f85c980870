"""How the bars of a tune follow one another as it is played, bars of nothing but rests passed over."""

from __future__ import annotations

from itertools import accumulate, pairwise
from typing import NamedTuple

from core.once import once
from core.order import playing_order, sections
from core.tune import Bar, Tune


class Walk(NamedTuple):
    """How the bars with notes follow one another as played, by index in ``Tune.bars``.

    Attributes:
        visits: How often each is played, the first played first.
        crossings: (before, after, runs on, over rest): how often.
        seams: Bars that no planned slur leads into.
    """

    visits: dict[int, int]
    crossings: dict[tuple[int, int, bool, bool], int]
    seams: frozenset[int]


@once
def walk(tune: Tune) -> Walk:
    """Walk through a tune in playing order."""
    visits: dict[int, int] = {}
    crossings: dict[tuple[int, int, bool, bool], int] = {}
    seams = {section.start for section in sections(tune)}
    seams.update(index + 1 for index, (bar, after) in enumerate(pairwise(tune.bars)) if after.ending != bar.ending)
    first_places = list(accumulate((len(bar.notes) for bar in tune.bars), initial=0))
    before: int | None = None  # the last bar played with a note in it
    played, rest = -1, False  # the last bar played; whether a rest was played since that note
    order = [visit.bar for visit in playing_order(tune)]
    start = next((place for place, bar in enumerate(order) if _sounds(tune.bars[bar])), len(order))
    for place, index in enumerate([*order, *order[: start + 1]]):
        bar = tune.bars[index]
        again = place >= len(order)
        if index != played + 1 or again:
            seams.add(index)
        played = index
        if not _sounds(bar):
            rest = rest or bool(bar.notes)
            continue
        if before is not None:
            over_rest = rest or bar.notes[0].is_rest
            runs_on = not again and not over_rest and first_places[before + 1] == first_places[index]
            crossing = (before, index, runs_on, over_rest)
            crossings[crossing] = crossings.get(crossing, 0) + 1
        if not again:
            visits[index] = visits.get(index, 0) + 1
        before, rest = index, bar.notes[-1].is_rest
    return Walk(visits, crossings, frozenset(seams))


def _sounds(bar: Bar) -> bool:
    return not all(note.is_rest for note in bar.notes)
