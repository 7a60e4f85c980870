"""How findings put bars, beats, passes and directions into words."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from functools import lru_cache

from core.bowing import Bow
from core.tune import Meter, Tune

ORDINALS = (
    "first", "second", "third", "fourth", "fifth", "sixth",
    "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth",
)  # fmt: skip
A_BOW = {Bow.DOWN: "a down-bow", Bow.UP: "an up-bow"}


def sentence(text: str) -> str:
    """Begin with a capital and end with a full stop."""
    return f"{text[0].upper()}{text[1:]}."


def ordinal(number: int) -> str:
    """The number as an ordinal word.

    >>> ordinal(3), ordinal(22)
    ('third', '22nd')
    """
    if number <= len(ORDINALS):
        return ORDINALS[number - 1]
    ending = "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{ending}"


def listed(words: Sequence[str]) -> str:
    """Join words by commas and "and"."""
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)


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
        return f"bar {numbers[0]}"
    names = []
    for index in pickups:
        if index == 0:
            names.append("the pick-up")
        elif index + 1 not in chosen:
            names.append(f"the pick-up to bar {tune.bars[index].number + 1}")
        elif index == chosen[0]:
            names.append("the pick-up")
    spans: list[list[int]] = []
    for number in numbers:
        if spans and number == spans[-1][1] + 1:
            spans[-1][1] = number
        else:
            spans.append([number, number])
    if spans:
        texts = [str(first) if first == last else f"{first}–{last}" for first, last in spans]
        names.append(f"{'bar' if len(numbers) == 1 else 'bars'} {listed(texts)}")
    return listed(names)


def note(tune: Tune, note_id: str) -> str:
    """Name a note by its place among the notes of its bar, such as "the third note"; rests do not count."""
    written = [note.id for note in tune.bars[tune.bar_of[note_id]].notes if not note.is_rest]
    return f"the {ordinal(written.index(note_id) + 1)} note"


def times(passes: Sequence[int]) -> str:
    """Name passes, such as "the second time" or "the second and fourth time"."""
    return f"the {listed([ordinal(number) for number in passes])} time"


def on_passes(passes: Sequence[int], of: int) -> str:
    """Name the passes with a comma before, or nothing where they are all there are."""
    return "" if len(passes) == of else f", {times(passes)}"


@lru_cache(maxsize=1024)
def beat(place: Fraction, meter: Meter) -> str:
    """Name a place in a bar by its beat, such as "beat 2" or "the second half of beat 1".

    Args:
        place: Quarter notes from the beginning of a full bar.
        meter: Its metre.
    """
    length = meter.beat_length
    number, rest = int(place // length) + 1, place % length
    if not rest:
        return f"beat {number}"
    return f"the second half of beat {number}" if 2 * rest == length else f"the place after beat {number}"


def note_of_bar(tune: Tune, note_id: str) -> str:
    """Name a note with its bar, such as "the third note of bar 5"."""
    return f"{note(tune, note_id)} of {bars(tune, [tune.bar_of[note_id]])}"
