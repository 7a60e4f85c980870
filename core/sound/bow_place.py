"""Where the bow is at any moment of a playing: its direction, and its place between frog and tip.

The seconds are those of the playing, swing and speed included; the place is that of the even model of ``core.reach``.
"""

from __future__ import annotations

from bisect import bisect_right
from fractions import Fraction
from typing import NamedTuple

from core.bowing import Bow
from core.reach import ORDINARY, Move, Reach, ReachSettings, Span
from core.sound.attacks import Attack, Start
from core.sound.performance import Performance
from core.tempos import Pace
from core.tune import Tempo
from core.values import dataclass


class BowMoment(NamedTuple):
    """The bow at one moment.

    Attributes:
        bow: The direction in which it moves or, in a rest or a stop, moved last.
        cm: Centimetres from the frog; below 0 or beyond the hair where the even speed runs out of bow.
        moving: It moves; else it rests or is lifted.
    """

    bow: Bow
    cm: float
    moving: bool


@dataclass(frozen=True)
class BowPlaces:
    """The bow through a playing.

    Attributes:
        hair_cm: Length of the hair.
        begins_s, ends_s: Seconds from the beginning of the playing of each move.
        bows: Its direction.
        spans: Where it begins and ends.
    """

    hair_cm: float
    begins_s: tuple[float, ...]
    ends_s: tuple[float, ...]
    bows: tuple[Bow, ...]
    spans: tuple[Span, ...]

    def at(self, seconds: float) -> BowMoment | None:
        """The bow at a time; None before it is first set down."""
        index = bisect_right(self.begins_s, seconds) - 1
        if index < 0:
            return None
        begin, end = self.begins_s[index], self.ends_s[index]
        way = min((seconds - begin) / (end - begin), 1.0)
        span = self.spans[index]
        return BowMoment(self.bows[index], span.begin_cm + way * (span.end_cm - span.begin_cm), seconds < end)


def bow_places(performance: Performance, settings: ReachSettings = ORDINARY) -> BowPlaces:
    """Work out where the bow is through a playing."""
    strokes: list[list[Attack]] = []
    for attack in performance.attacks:
        if attack.start is Start.HOOKED and strokes and strokes[-1][-1].end == attack.begin:
            strokes[-1].append(attack)
        else:
            strokes.append([attack])
    moves = []
    ended = None
    for attacks in strokes:
        first, end = attacks[0], attacks[-1].end
        set_down = first.start is Start.RETAKEN or ended != first.begin
        down = first.bow is Bow.DOWN
        moves.append(Move(first.tones[0].note, first.visit, down, float(end - first.begin), set_down))
        ended = end
    reach = Reach(settings, Pace(Tempo(Fraction(1), 60 / performance.quarter_s)), tuple(moves))
    return BowPlaces(
        settings.hair_cm,
        tuple(float(attacks[0].begin) for attacks in strokes),
        tuple(float(attacks[-1].end) for attacks in strokes),
        tuple(attacks[0].bow for attacks in strokes),
        reach.even,
    )
