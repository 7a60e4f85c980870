"""When the bars of a playing, their notes and their beats are played."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from core.sound.swing import SwungBar
from core.tune import Bar, Meter

FREE_BAR = Meter((4,), 4)  # how bars of free metre are counted in


class Click(NamedTuple):
    """A beat that can be clicked.

    Attributes:
        at: Seconds from the beginning of the playing.
        strong: The first beat of a bar.
        counting_in: Before the tune begins.
    """

    at: Fraction
    strong: bool
    counting_in: bool


class PlayedBar(NamedTuple):
    """One visit of the playing order.

    Attributes:
        begin, end: Seconds from the beginning of the playing.
        bar: Index in ``tune.bars``.
        pass_number: As in the playing order.
    """

    begin: Fraction
    end: Fraction
    bar: int
    pass_number: int


class BarTimes(NamedTuple):
    """Seconds from the beginning of a bar: of its notes and its end; of its beats, and which is the first of a bar."""

    notes: tuple[Fraction, ...]
    beats: tuple[tuple[Fraction, bool], ...]


def bar_times(bar: Bar, places: SwungBar, quarter_s: Fraction) -> BarTimes:
    """Time a written bar.

    Args:
        bar: The bar.
        places: Where its places are played.
        quarter_s: Seconds in a quarter note.
    """
    starts_at = places.at(bar.start)
    stop = bar.start + bar.length
    return BarTimes(
        tuple((places.at(bar.start + at) - starts_at) * quarter_s for at in (*(n.at for n in bar.notes), bar.length)),
        tuple(
            ((places.at(place) - starts_at) * quarter_s, place == 0)
            for place in _beats(bar)
            if bar.start <= place < stop
        ),
    )


def _beats(bar: Bar) -> Iterator[Fraction]:
    """Beats of a full bar, in quarter notes from its beginning; of free metre, of the bar as it is."""
    meter = bar.meter
    if len(meter.groups) > 1:
        place = 0
        for group in meter.groups:
            yield Fraction(4 * place, meter.unit)
            place += group
        return
    beat = meter.beat_length
    length = meter.bar_length or bar.start + bar.length
    for number in range(-(-length // beat)):
        yield number * beat


def _counted_bar(first: Bar) -> tuple[Bar, Fraction]:
    """A full bar of the first bar's metre without notes, and its length in quarter notes."""
    meter = first.meter if first.meter.groups else FREE_BAR
    length = meter.bar_length
    assert length is not None
    return Bar(0, (), meter), length


def count_in_quarters(first: Bar, count: int) -> Fraction:
    """How long it takes to count in; a pick-up falls into the last counted bar."""
    _, length = _counted_bar(first)
    return max(count * length - (length - first.start if first.start else 0), Fraction(0))


def counted_in(first: Bar, count: int, begin: Fraction, quarter_s: Fraction) -> Iterator[Click]:
    """The clicks that count a tune in, before it begins."""
    bar, length = _counted_bar(first)
    for number in range(count):
        for place in _beats(bar):
            at = (number * length + place) * quarter_s
            if at < begin:
                yield Click(at, place == 0, counting_in=True)
