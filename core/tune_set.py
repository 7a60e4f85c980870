"""A set: tunes played one after another, each a number of times, and how the bow comes from each to the next.

Strokes alternate on from the last stroke of one playing to the first of the next (rule B10), unless a mark or a retake
on the first note says otherwise (rule B4); a rest between them changes nothing but makes a retake cheap (rule B7). Only
the first playing of all begins as the tune does alone (rule B6). Marks that hold on one pass hold on that pass of each
playing (rule B12).

A *playing* is one time through one tune; a *seam* is where one playing ends and the next begins.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from enum import Enum
from functools import cache
from itertools import chain, takewhile

from core.bowing import Bow, Bowing
from core.strokes import Strokes, work_out
from core.tune import Tune
from core.values import dataclass

MOST_TIMES = 12
MOST_TUNES = 24


@dataclass(frozen=True)
class Entry:
    """A tune of a set.

    Attributes:
        tune: The tune.
        bowing: How it is bowed.
        times: How often it is played before the next tune, at least once.
    """

    tune: Tune
    bowing: Bowing
    times: int = 1


@dataclass(frozen=True)
class TuneSet:
    """Tunes in the order in which they are played; the same one may come more than once."""

    entries: tuple[Entry, ...]


class Way(Enum):
    """Where a seam leads."""

    AGAIN = "again"  # to the same tune once more
    NEXT = "next"  # to the next tune
    ROUND = "round"  # from the end of the set to its start

    __hash__ = object.__hash__


@dataclass(frozen=True, slots=True)
class Playing:
    """One time through one tune of a set.

    Attributes:
        entry: Index in ``TuneSet.entries``.
        time: Which time through it is, counted from 1.
    """

    entry: int
    time: int


@dataclass(frozen=True, slots=True)
class Seam:
    """Where one playing ends and the next begins; playings in which nothing sounds are passed over as rests.

    Attributes:
        way: Where it leads.
        before, after: The playings that it lies between.
        last: Direction of the last stroke before.
        first: Direction of the first stroke after.
        alone: Direction with which that tune begins when it is played alone.
        first_note: Id of the note that it begins with.
        over_rest: A rest lies between, in which the bow can come back.
        right_from: For a tune that begins turned round: the note from which on it is bowed as alone, for a mark says
            so; None where it stays turned round to its end, or never was.
    """

    way: Way
    before: Playing
    after: Playing
    last: Bow
    first: Bow
    alone: Bow
    first_note: str
    over_rest: bool
    right_from: str | None = None

    @property
    def is_turned(self) -> bool:
        """From here on the tune is turned round against how it is played alone."""
        return self.first is not self.alone

    @property
    def is_retake(self) -> bool:
        """The bow is lifted and goes the same way again."""
        return self.first is self.last

    @property
    def alternates(self) -> bool:
        """The bow goes on by itself, and the tune is bowed as alone."""
        return not self.is_turned and not self.is_retake


StrokesOf = Callable[[int, Bow | None], Strokes]
"""From an entry (index) and the stroke before it (None for none) to its strokes."""


def seams(tune_set: TuneSet, strokes_of: StrokesOf | None = None) -> tuple[Seam, ...]:
    """Work out how the bow comes from each playing to the next.

    Args:
        tune_set: The set.
        strokes_of: Its strokes, where they are known already.
    Returns:
        The seams in the order played, that from the end of the set to its start last; none where nothing sounds.
    """
    return tuple(_walk(tune_set, strokes_of or strokes_in(tune_set)))


def comes_round(found: tuple[Seam, ...]) -> bool:
    """Whether a set with these seams, played again from the start, is bowed as the first time."""
    return not any(seam.is_turned for seam in found if seam.way is Way.ROUND)


def strokes_in(tune_set: TuneSet) -> StrokesOf:
    """The strokes of the tunes of a set, each worked out when it is first asked for."""

    @cache
    def strokes_of(entry: int, after: Bow | None) -> Strokes:
        chosen = tune_set.entries[entry]
        return work_out(chosen.tune, chosen.bowing, after=after)

    return strokes_of


def begins_with_rest(tune: Tune, strokes: Strokes) -> bool:
    """Whether a rest is played before the first stroke."""
    first = strokes.played[0]
    return first.visit > 0 or tune.bars[first.bar].notes[0].is_rest


def ends_with_rest(tune: Tune, strokes: Strokes) -> bool:
    """Whether a rest is played after the last stroke."""
    last = strokes.played[-1]
    return last.visit < len(strokes.order) - 1 or tune.bars[last.bar].notes[-1].is_rest


def _walk(tune_set: TuneSet, strokes_of: StrokesOf) -> Iterator[Seam]:
    playings = [
        Playing(index, time) for index, entry in enumerate(tune_set.entries) for time in range(1, entry.times + 1)
    ]
    silent = list(takewhile(lambda playing: not strokes_of(playing.entry, None).played, playings))
    if len(silent) == len(playings):
        return
    before: Playing | None = None
    bow: Bow | None = None
    over_rest = False
    for place, playing in enumerate(chain(playings, silent, playings[len(silent) : len(silent) + 1])):
        strokes = strokes_of(playing.entry, bow)
        if not strokes.played:
            over_rest = True
            continue
        tune = tune_set.entries[playing.entry].tune
        if before is not None and bow is not None:
            alone = strokes_of(playing.entry, None)
            way = Way.AGAIN if playing.entry == before.entry else Way.NEXT
            yield Seam(
                way if place < len(playings) else Way.ROUND, before, playing, bow,
                strokes.played[0].bow, alone.played[0].bow, strokes.played[0].note_id,
                over_rest or begins_with_rest(tune, strokes), _right_from(strokes, alone),
            )  # fmt: skip
        before, bow, over_rest = playing, strokes.played[-1].bow, ends_with_rest(tune, strokes)


def _right_from(strokes: Strokes, alone: Strokes) -> str | None:
    """The note from which on strokes that begin turned round are as alone."""
    pairs = zip(strokes.played, alone.played, strict=True)
    place = next((place for place, (here, there) in enumerate(pairs) if here.bow is there.bow), None)
    return strokes.played[place].note_id if place else None


def set_bowing(tune_set: TuneSet, place: int, bowing: Bowing) -> TuneSet:
    """Have a tune bowed in another way."""
    return _with(tune_set, place, replace(tune_set.entries[place], bowing=bowing))


def _with(tune_set: TuneSet, place: int, entry: Entry) -> TuneSet:
    entries = tune_set.entries
    return TuneSet((*entries[:place], entry, *entries[place + 1 :]))
