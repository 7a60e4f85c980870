"""How much bow each stroke takes, and whether the bow stays on the hair.

Down-bows go from the frog (0 cm) towards the tip (the length of the hair), up-bows back. Two models, of the same
strokes and seconds:

- *Even*: every stroke at one speed. Three notes slurred down and one up drift towards the tip, as Saunders warns
  (Self-Instructing School for the Violin, 1847): the single note needs as much bow as the three. Players do adapt, so
  this is arithmetic to look at, not a fault.
- *Evened*: each stroke at whatever speed between two limits suits best. The places that the bow can have reached after
  a stroke form an interval; the bow runs out only where that interval is empty, which no player could mend by bow
  speed.

The bow can be set down anywhere at the beginning, for a retake and after a rest (common practice, no source). Grace
notes and ornaments take their time from their note's stroke; a bowed triplet turns the bow twice within it (rule B8),
in three equal parts. Stops between hooked notes are counted as if the bow moved on. Pauses are not counted.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from functools import cached_property
from itertools import accumulate, pairwise
from typing import NamedTuple, TypeAlias

from core.bowing import Bow, Bowing, Ornament
from core.once import once
from core.strokes import Strokes
from core.tempos import Pace, pace
from core.translation import number, tr, translatable
from core.tune import Tempo, Tune
from core.values import dataclass

ROUNDING_CM = 1e-6

# Beyond these limits a setting is a slip of the pen, not a bow (ours).
HAIR_CM = (10.0, 100.0)
SPEEDS_CM_S = (0.5, 300.0)
BEATS_A_MINUTE = (5, 500)
BEAT_QUARTERS = (Fraction(1, 8), Fraction(8))


LIMITS = translatable({
    "hair": "The hair must be {least} to {most} cm, not {value}.",
    "slowest": "The slowest bow speed must be {least} to {most} cm/s, not {value}.",
    "fastest": "The fastest bow speed must be {least} to {most} cm/s, not {value}.",
    "even": "The even bow speed must be {least} to {most} cm/s, not {value}.",
    "tempo": "The tempo must be {least} to {most} beats a minute, not {value}.",
    "beat": "The beat must be {least} to {most} quarter notes, not {value}.",
})  # fmt: skip


@dataclass(frozen=True, slots=True)
class ReachSettings:
    """What is assumed of bow and player.

    Attributes:
        hair_cm: Playable hair from frog to tip (instrument handbooks, from memory).
        even_cm_s: The one bow speed of the even model.
        slowest_cm_s, fastest_cm_s: Limits of the bow speed in ordinary playing (Askenfelt, JASA 80, 1986, 1007 and 86,
            1989, 503, from memory).
        tempo: Played at this tempo, whatever the tune says; words beside it are dropped.
    Raises:
        ValueError: a value is out of its limits or at odds with another; the text is one sentence.
    """

    hair_cm: float = 65.0
    even_cm_s: float = 30.0
    slowest_cm_s: float = 5.0
    fastest_cm_s: float = 100.0
    tempo: Tempo | None = None

    def __post_init__(self) -> None:
        _must_lie(LIMITS["hair"], self.hair_cm, HAIR_CM)
        _must_lie(LIMITS["slowest"], self.slowest_cm_s, SPEEDS_CM_S)
        _must_lie(LIMITS["fastest"], self.fastest_cm_s, SPEEDS_CM_S)
        _must_lie(LIMITS["even"], self.even_cm_s, SPEEDS_CM_S)
        if self.slowest_cm_s > self.fastest_cm_s:
            raise ValueError(tr("The slowest bow speed must not be above the fastest."))
        if not self.slowest_cm_s <= self.even_cm_s <= self.fastest_cm_s:
            raise ValueError(tr("The even bow speed must lie between the slowest and the fastest."))
        if self.tempo is not None:
            _must_lie(LIMITS["tempo"], self.tempo.per_minute, BEATS_A_MINUTE)
            _must_lie(LIMITS["beat"], self.tempo.beat, BEAT_QUARTERS)
            object.__setattr__(self, "tempo", replace(self.tempo, text=""))


def _must_lie(text: str, value: float | Fraction, limits: tuple[float | Fraction, float | Fraction]) -> None:
    if not limits[0] <= value <= limits[1]:
        least, most = (number(float(limit)) for limit in limits)
        raise ValueError(tr(text, least=least, most=most, value=number(float(value))))


ORDINARY = ReachSettings()


class Move(NamedTuple):
    """The bow moving one way without a turn or a lift: a stroke, or a part of one round a bowed triplet.

    Attributes:
        first: Index in ``Strokes.played`` of the first note.
        visit: Index in the playing order of the bar where it begins.
        down: Towards the tip.
        seconds: How long it lasts.
        set_down: The bow is set down for it, wherever suits: at the beginning, for a retake, after a rest.
    """

    first: int
    visit: int
    down: bool
    seconds: float
    set_down: bool


class Span(NamedTuple):
    """Where a move begins and ends, in centimetres from the frog; below 0 or beyond the hair the bow has run out."""

    begin_cm: float
    end_cm: float


Room: TypeAlias = tuple[float, float]
"""The lowest and the highest place, in centimetres from the frog, where the bow can be; none where they cross."""


@dataclass(frozen=True)
class Reach:
    """The way of the bow through a tune played once.

    Attributes:
        settings: What is assumed.
        pace: The tempo at which the strokes were timed.
        moves: In playing order.
    """

    settings: ReachSettings
    pace: Pace
    moves: tuple[Move, ...]

    @cached_property
    def longest_s(self) -> float:
        """Seconds of the longest move; 0 where nothing is played."""
        return max((move.seconds for move in self.moves), default=0.0)

    @cached_property
    def bow_used_cm(self) -> float:
        """Bow that all moves take together at the even speed."""
        return self.settings.even_cm_s * sum(move.seconds for move in self.moves)

    @cached_property
    def runs_out_even(self) -> tuple[int, ...]:
        """Indexes of the moves that leave the hair at the even speed, wherever the bow was set down before."""
        return runs_out(self.moves, self.settings.hair_cm, self.settings.even_cm_s, self.settings.even_cm_s)

    @cached_property
    def runs_out(self) -> tuple[int, ...]:
        """Indexes of the moves that leave the hair at whatever speeds within the limits."""
        return runs_out(self.moves, self.settings.hair_cm, self.settings.slowest_cm_s, self.settings.fastest_cm_s)

    @cached_property
    def rooms(self) -> tuple[Room, ...]:
        """Where the bow can be after each move at speeds within the limits."""
        return rooms(self.moves, self.settings.hair_cm, self.settings.slowest_cm_s, self.settings.fastest_cm_s)

    @property
    def can_be_evened(self) -> bool:
        """Speeds within the limits keep the bow on the hair throughout."""
        return not self.runs_out

    @cached_property
    def even(self) -> tuple[Span, ...]:
        """Where each move begins and ends at the even speed.

        The bow is set down so that the way up to the next time it is set down lies in the middle of the hair. Where
        that way is too long for the hair, it begins at the frog or the tip, as far from the end where the bow will run
        out as can be; the move that runs out is drawn to its end beyond the hair, and the bow is set down anew.
        """
        spans: list[Span] = []
        cuts = {move + 1 for move in self.runs_out_even}
        cuts.update(index for index, move in enumerate(self.moves) if move.set_down)
        for first, stop in pairwise(sorted({0, *cuts, len(self.moves)})):
            steps = [
                self.settings.even_cm_s * (move.seconds if move.down else -move.seconds)
                for move in self.moves[first:stop]
            ]
            places = list(accumulate(steps, initial=0.0))
            low, high = min(places), max(places)
            spare = self.settings.hair_cm - (high - low)
            if spare >= 0:
                start = spare / 2 - low
            elif places.index(low) < places.index(high):
                start = -low
            else:
                start = self.settings.hair_cm - high
            spans += [Span(start + begin, start + end) for begin, end in pairwise(places)]
        return tuple(spans)

    @cached_property
    def drift_of_visits_cm(self) -> tuple[float, ...]:
        """Net way towards the tip of the moves that begin in each visit, at the even speed, up to the last such one."""
        drift = [0.0] * (self.moves[-1].visit + 1 if self.moves else 0)
        for move in self.moves:
            drift[move.visit] += drift_cm([move], self.settings.even_cm_s, self.settings.even_cm_s)
        return tuple(drift)


def work_out_reach(tune: Tune, bowing: Bowing, strokes: Strokes, settings: ReachSettings = ORDINARY) -> Reach:
    """Time every stroke.

    Args:
        tune: The tune.
        bowing: Says where bowed triplets are.
        strokes: The directions of the same bowing.
        settings: Bow, speeds and tempo.
    """
    played_at = pace(tune, settings.tempo)
    return Reach(settings, played_at, _moves(tune, bowing, strokes, played_at.seconds_a_quarter))


def runs_out(moves: Iterable[Move], hair_cm: float, slowest_cm_s: float, fastest_cm_s: float) -> tuple[int, ...]:
    """Find where no choice of speeds keeps the bow on the hair.

    Args:
        moves: In playing order.
        hair_cm: Length of the hair.
        slowest_cm_s, fastest_cm_s: Limits; each move takes one speed between them, or any mixture.
    Returns:
        Indexes of the moves that find no room, ascending. After each the bow is taken to be set down anew.
    """
    found = rooms(moves, hair_cm, slowest_cm_s, fastest_cm_s)
    return tuple(index for index, (low, high) in enumerate(found) if low > high)


def rooms(moves: Iterable[Move], hair_cm: float, slowest_cm_s: float, fastest_cm_s: float) -> tuple[Room, ...]:
    """Find where the bow can be after each move; arguments as for ``runs_out``."""
    found = []
    low, high = 0.0, hair_cm  # the bow can stand anywhere between, and nowhere else
    for _, _, down, seconds, set_down in moves:
        if set_down:
            low, high = 0.0, hair_cm
        if down:
            low += slowest_cm_s * seconds
            high += fastest_cm_s * seconds
            if high > hair_cm:
                high = hair_cm
        else:
            low -= fastest_cm_s * seconds
            high -= slowest_cm_s * seconds
            if low < 0.0:
                low = 0.0
        if low > high:
            if low > high + ROUNDING_CM:
                found.append((low, high))
                low, high = 0.0, hair_cm
                continue
            low = high
        found.append((low, high))
    return tuple(found)


def bowed_triplets(bowing: Bowing) -> frozenset[str]:
    """Ids of the notes on which the bow turns twice (rule B8)."""
    signs = bowing.signs.items()
    return frozenset([note_id for note_id, signs in signs if Ornament.BOWED_TRIPLET in signs.ornaments])


def drift_cm(moves: Iterable[Move], down_cm_s: float, up_cm_s: float) -> float:
    """Net way of the bow towards the tip, down-bows at one speed and up-bows at another."""
    return sum(down_cm_s * move.seconds if move.down else -up_cm_s * move.seconds for move in moves)


def _moves(tune: Tune, bowing: Bowing, strokes: Strokes, seconds_a_quarter: float) -> tuple[Move, ...]:
    bars = _timing(tune)
    triplets = bowed_triplets(bowing)
    down_bow = Bow.DOWN
    begun: list[tuple[int, int, bool, bool]] = []
    quarters: list[float] = []
    rested = True  # the bow is set down to begin
    index = 0
    for visit, ((bar, _), bowed) in enumerate(zip(strokes.order, strokes.visits, strict=True)):
        notes, ends_in_rest = bars[bar]
        for (note_id, length, after_rest), bow, starts, retake in zip(
            notes, bowed.bows, bowed.starts, bowed.retakes, strict=True
        ):
            down = bow is down_bow
            if starts:
                begun.append((index, visit, down, retake or rested or after_rest))
                quarters.append(length)
                rested = False
            else:
                quarters[-1] += length
            if note_id in triplets and (starts or not tune.note(note_id).held):
                third = length / 3
                quarters[-1] -= 2 * third
                begun += [(index, visit, not down, False), (index, visit, down, False)]
                quarters += [third, third]
            index += 1
        rested = rested or ends_in_rest
    return tuple(
        Move(first, visit, down, length * seconds_a_quarter, set_down)
        for (first, visit, down, set_down), length in zip(begun, quarters, strict=True)
    )


class _BarTiming(NamedTuple):
    """What the walk needs to know of a bar."""

    notes: list[tuple[str, float, bool]]  # rests left out: id, length in quarter notes, whether a rest is before it
    ends_in_rest: bool


@once
def _timing(tune: Tune) -> tuple[_BarTiming, ...]:
    return tuple(
        _BarTiming(
            [
                (note.id, float(note.length), before is not None and before.is_rest)
                for before, note in pairwise([None, *bar.notes])
                if note is not None and not note.is_rest
            ],
            bool(bar.notes) and bar.notes[-1].is_rest,
        )
        for bar in tune.bars
    )
