"""In which order the tunes of a set follow each other best."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import permutations

from core.bowing import Bow
from core.tune_set import TuneSet, begins_with_rest, ends_with_rest, strokes_in
from core.values import dataclass

MOST_ORDERED = 7  # tunes; 5,040 orders


@dataclass(frozen=True, slots=True)
class Order:
    """One order of the tunes of a set.

    Attributes:
        places: Indexes in ``TuneSet.entries``, in the order played.
        turned: Seams after which a tune is turned round, the way back to the start left out.
        retakes: Seams that take a retake with no rest to make it in, likewise.
        comes_round: Played again from the start, the set is bowed as the first time.
    """

    places: tuple[int, ...]
    turned: int
    retakes: int
    comes_round: bool


def orders(tune_set: TuneSet) -> tuple[Order, ...]:
    """Compare all orders of the tunes, each with its number of times.

    Returns:
        Best first: fewest turned seams, then fewest retakes, then those that come round, then as few of the first
        tunes moved as can be. Of a set of more than ``MOST_ORDERED`` tunes only the order as it stands.
    """
    passages = _passages(tune_set)
    places = range(len(tune_set.entries))
    every = permutations(places) if len(places) <= MOST_ORDERED else iter([tuple(places)])
    found = [_count(order, passages) for order in every]
    return tuple(sorted(found, key=lambda order: (order.turned, order.retakes, not order.comes_round)))


@dataclass(frozen=True, slots=True)
class _Passage:
    """One entry, all its times through, entered from one direction; ``sounds`` is False where it holds but rests."""

    sounds: bool
    turned: bool = False  # at its beginning, as the next two
    retake: bool = False
    rest_before: bool = False
    inner_turned: int = 0
    inner_retakes: int = 0
    last: Bow = Bow.DOWN
    rest_after: bool = False


Passages = Mapping[tuple[int, Bow | None], _Passage]


def _passages(tune_set: TuneSet) -> Passages:
    strokes_of = strokes_in(tune_set)

    def pass_through(index: int, after: Bow | None) -> Iterator[tuple[bool, bool, Bow]]:
        """Of each time through: whether it is turned, whether it begins with a retake, and the last stroke."""
        alone = strokes_of(index, None).played[0].bow
        for _ in range(tune_set.entries[index].times):
            played = strokes_of(index, after).played
            yield played[0].bow is not alone, played[0].bow is after, played[-1].bow
            after = played[-1].bow

    def passage(index: int, after: Bow | None) -> _Passage:
        tune, strokes = tune_set.entries[index].tune, strokes_of(index, None)
        if not strokes.played:
            return _Passage(sounds=False)
        first, *later = pass_through(index, after)
        rest_before, rest_after = begins_with_rest(tune, strokes), ends_with_rest(tune, strokes)
        return _Passage(
            True, first[0], first[1], rest_before,
            sum(turned for turned, _, _ in later),
            0 if rest_before or rest_after else sum(retake for _, retake, _ in later),
            (first, *later)[-1][2], rest_after,
        )  # fmt: skip

    befores: tuple[Bow | None, ...] = (None, *Bow)
    return {(index, after): passage(index, after) for index in range(len(tune_set.entries)) for after in befores}


def _count(order: tuple[int, ...], passages: Passages) -> Order:
    turned = retakes = 0
    bow: Bow | None = None
    rest = False
    for index in order:
        passage = passages[index, bow]
        if not passage.sounds:
            rest = True
            continue
        if bow is not None:
            turned += passage.turned
            retakes += passage.retake and not (rest or passage.rest_before)
        turned += passage.inner_turned
        retakes += passage.inner_retakes
        bow, rest = passage.last, passage.rest_after
    first = next((index for index in order if passages[index, None].sounds), None)
    round_turned = first is not None and passages[first, bow].turned
    return Order(order, turned, retakes, not round_turned)
