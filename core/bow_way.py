"""The way of the bow over time: when each stroke of a tune played once begins and ends, and where on the hair.

What ``core.reach`` works out stroke by stroke is laid out here along the seconds, rests included, to be drawn: one leg
for each move at the even speed, with the room that speeds within the limits leave.
"""

from __future__ import annotations

from bisect import bisect_right
from enum import Enum
from itertools import accumulate
from typing import NamedTuple

from core.once import once
from core.order import playing_order
from core.reach import Reach, Room
from core.strokes import Strokes
from core.tune import Tune
from core.values import dataclass

ROUNDING_S = 1e-9


class Out(Enum):
    """How badly the bow runs out in a leg."""

    NO = "stays on the hair"
    EVEN = "leaves the hair at the even speed"
    ANYHOW = "leaves the hair at any speed"

    __hash__ = object.__hash__


class Leg(NamedTuple):
    """One move of the bow, drawn at the even speed.

    Attributes:
        begin_s, end_s: Seconds from the first beat of the playing order.
        begin_cm, end_cm: Centimetres from the frog; below 0 or beyond the hair where it runs out.
        down: Towards the tip.
        set_down: The bow is set down for it, so that it need not begin where the leg before it ended.
        first: Index in ``Strokes.played`` of its first note.
        out: Whether it runs out.
        begin_room, end_room: Where speeds within the limits can have brought the bow by its beginning and its end.
    """

    begin_s: float
    end_s: float
    begin_cm: float
    end_cm: float
    down: bool
    set_down: bool
    first: int
    out: Out
    begin_room: Room
    end_room: Room


@dataclass(frozen=True)
class BowWay:
    """The whole way.

    Attributes:
        seconds: How long the tune lasts, played once.
        hair_cm: Length of the hair.
        visits_s: When each visit of the playing order begins.
        notes_s: When each note of ``Strokes.played`` begins.
        legs: In playing order.
    """

    seconds: float
    hair_cm: float
    visits_s: tuple[float, ...]
    notes_s: tuple[float, ...]
    legs: tuple[Leg, ...]

    def leg_at(self, seconds: float) -> int:
        """Index of the leg that is drawn at a time, or was drawn last; the first before all."""
        return max(bisect_right(self.legs, seconds + ROUNDING_S, key=lambda leg: leg.begin_s) - 1, 0)

    def note_at(self, seconds: float) -> int:
        """Index in ``Strokes.played`` of the note that sounds at a time, or sounded last; the first before all."""
        return max(bisect_right(self.notes_s, seconds + ROUNDING_S) - 1, 0)


def bow_way(tune: Tune, strokes: Strokes, reach: Reach) -> BowWay:
    """Lay a reach out along the seconds.

    Args:
        tune: The tune.
        strokes: Directions of the bowing.
        reach: Its reach.
    """
    second = reach.pace.seconds_a_quarter
    visits, offsets = _offsets(tune)
    notes = [(visits[played.visit] + offsets[played.note_id]) * second for played in strokes.played]
    anyhow, even = set(reach.runs_out), set(reach.runs_out_even)
    anywhere = (0.0, reach.settings.hair_cm)
    legs = []
    end, room = 0.0, anywhere
    for index, (move, span, next_room) in enumerate(zip(reach.moves, reach.even, reach.rooms, strict=True)):
        begin = max(notes[move.first], end)  # a part of a bowed triplet begins where the part before it ends
        end = begin + move.seconds
        out = Out.ANYHOW if index in anyhow else Out.EVEN if index in even else Out.NO
        if move.set_down or index - 1 in anyhow:
            room = anywhere
        set_down = move.set_down or index - 1 in even
        legs.append(Leg(begin, end, *span, move.down, set_down, move.first, out, room, next_room))
        room = next_room
    return BowWay(
        visits[-1] * second,
        reach.settings.hair_cm,
        tuple(visit * second for visit in visits[:-1]),
        tuple(notes),
        tuple(legs),
    )


@once
def _offsets(tune: Tune) -> tuple[tuple[float, ...], dict[str, float]]:
    """In quarter notes: the beginning of each visit and the end of the last; the place of each note in its bar."""
    order = playing_order(tune)
    return (
        tuple(accumulate((float(tune.bars[visit.bar].length) for visit in order), initial=0.0)),
        {note.id: float(note.at) for note in tune.sequence},
    )
