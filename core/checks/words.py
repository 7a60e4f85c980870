"""How findings put bars, beats, passes and directions into words."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from functools import lru_cache

from core.bowing import Bow
from core.translation import listed, ordinal, plural, tr, translatable
from core.tune import Meter, Tune

BEATS = translatable(("beat {number}", "the second half of beat {number}", "the place after beat {number}"))
A_BOW = translatable({Bow.DOWN: "a down-bow", Bow.UP: "an up-bow"})
BOWS = translatable({Bow.DOWN: "down-bow", Bow.UP: "up-bow"})
DIRECTIONS = translatable({Bow.DOWN: "down", Bow.UP: "up"}, "direction of a stroke")


def a_bow(bow: Bow) -> str:
    """A direction as a noun, such as "a down-bow"."""
    return tr(A_BOW[bow])


def bow_name(bow: Bow) -> str:
    """A direction as a name, such as "down-bow"."""
    return tr(BOWS[bow])


def direction(bow: Bow) -> str:
    """A direction by itself: "down" or "up"."""
    return tr(DIRECTIONS[bow], "direction of a stroke")


def bars(tune: Tune, indexes: Iterable[int]) -> str:
    """Name bars, given by index, by their printed numbers.

    Returns:
        For example "bar 5", "bars 5–8", "bars 2, 4 and 6–8", "the pick-up and bars 1–4", "the pick-up to bar 9". A
        pick-up inside the tune is not named where the bar that it leads to is.
    """
    chosen = sorted(set(indexes))
    pickups = [index for index in chosen if tune.bars[index].is_pickup]
    numbers = sorted({tune.bars[index].number for index in chosen if index not in pickups})
    if len(numbers) == len(chosen) == 1:
        return tr("bar {number}", number=numbers[0])
    names = []
    for index in pickups:
        if index == 0:
            names.append(tr("the pick-up"))
        elif index + 1 not in chosen:
            names.append(tr("the pick-up to bar {number}", number=tune.bars[index].number + 1))
        elif index == chosen[0]:
            names.append(tr("the pick-up"))
    spans: list[list[int]] = []
    for number in numbers:
        if spans and number == spans[-1][1] + 1:
            spans[-1][1] = number
        else:
            spans.append([number, number])
    if spans:
        texts = [
            str(first) if first == last else tr("{first}–{last}", "bars", first=first, last=last)
            for first, last in spans
        ]
        names.append(plural("bar {numbers}", "bars {numbers}", len(numbers), numbers=listed(texts)))
    return listed(names)


def note(tune: Tune, note_id: str) -> str:
    """Name a note by its place among the notes of its bar, such as "the third note"; rests do not count."""
    written = [note.id for note in tune.bars[tune.bar_of[note_id]].notes if not note.is_rest]
    return tr("the {ordinal} note", ordinal=ordinal(written.index(note_id) + 1))


def times(passes: Sequence[int]) -> str:
    """Name passes, such as "the second time" or "the second and fourth time"."""
    return tr("the {ordinals} time", "passes", ordinals=listed([ordinal(number) for number in passes]))


def in_bars(bars: str, passes: Sequence[int]) -> str:
    """Where something is, at the beginning of a sentence, such as "in bar 5 the second time"; no passes are all."""
    return tr("in {bars} {times}", bars=bars, times=times(passes)) if passes else tr("in {bars}", bars=bars)


def on_passes(passes: Sequence[int], of: int) -> str:
    """Name the passes with a comma before, or nothing where they are all there are."""
    return "" if len(passes) == of else tr(", {times}", "behind a clause", times=times(passes))


def beat(place: Fraction, meter: Meter) -> str:
    """Name a place in a bar by its beat, such as "beat 2" or "the second half of beat 1".

    Args:
        place: Quarter notes from the beginning of a full bar.
        meter: Its metre.
    """
    text, number = _beat(place, meter)
    return tr(text, number=number)


@lru_cache(maxsize=1024)
def _beat(place: Fraction, meter: Meter) -> tuple[str, int]:
    """The text for a place, not yet translated, and the number of its beat."""
    length = meter.beat_length
    number, rest = int(place // length) + 1, place % length
    return BEATS[0 if not rest else 1 if 2 * rest == length else 2], number


def note_of_bar(tune: Tune, note_id: str) -> str:
    """Name a note with its bar, such as "the third note of bar 5"."""
    return tr("{note} of {bar}", note=note(tune, note_id), bar=bars(tune, [tune.bar_of[note_id]]))
