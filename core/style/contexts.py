"""What two places can have in common: from the whole bar note for note down to two lengths at a place of the beat.

``CONTEXTS`` is a table. Each row makes of a place a *key*, a tuple of whole numbers that is equal where the places are
alike in this way. How often notes were joined under each key is all that is learned by counting
(``core.style.counts``), and what a habit is told by (``core.style.habits``).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from typing import NamedTuple, TypeAlias

from core.style.places import Place, Sound

Key: TypeAlias = tuple[object, ...]  # of whole numbers, None, and tuples of them

FIRST = 0  # of a bar: the step into it counts too, else bars are alike whatever comes before
WIDE = 12  # steps: farther is as far
LAST_BARS = 3  # of a section that are told apart


class Context(NamedTuple):
    """One way in which places are alike.

    Attributes:
        name: Ours, for figures and saved styles.
        words: What is alike, to be read after "notes with ...".
        key: Of a place.
        by_dance: Whether it is counted for each dance as well.
        only_within: It says something within one tune only.
    """

    name: str
    words: str
    key: Callable[[Place], Key]
    by_dance: bool = False
    only_within: bool = False


def _sign(step: int, most: int = 1) -> int:
    return max(-most, min(most, step))


def _steps(sounds: tuple[Sound | None, ...], most: int) -> Key:
    """From note to note on the staff, no more than so many steps; None beside a rest."""
    return tuple([_sign(after.height - one.height, most) if one and after else None for one, after in pairwise(sounds)])


def _lengths(sounds: tuple[Sound | None, ...]) -> Key:
    return tuple([(sound.length, sound.tuplet > 0) if sound else None for sound in sounds])


def _in_beat(place: Place) -> int:
    return place.note.at % place.note.beat


def _in_half(place: Place) -> int:
    return place.note.at % (2 * place.note.beat)


def _half_rhythm(place: Place) -> Key:
    start = place.note.at - _in_half(place)
    return tuple([(sound.at - start, sound.length) for sound in place.group])


def _beat_rhythm(place: Place) -> Key:
    start = place.note.at - _in_beat(place)
    return tuple([(sound.at - start, sound.length) for sound in place.beat_group])


def _lead(place: Place) -> int | None:
    """How the first note of a half bar is reached."""
    return _sign(place.step) if place.note is place.group[0] else None


def _bar_contour(place: Place) -> Key:
    return tuple([_sign(step) for step in place.bar.steps])


def _exact(place: Place) -> Key:
    return place.bar.kind, place.index, _sign(place.step, WIDE) if place.index == FIRST else 0


CONTEXTS = (
    Context("bar", "the same bar", _exact, only_within=True),
    Context(
        "steps of the bar", "the rhythm and the steps of the whole bar",
        lambda place: (place.bar.rhythm, place.bar.steps, place.index, place.over_bar_line),
    ),
    Context(
        "contour of the bar", "the rhythm, the rises and the falls of the whole bar",
        lambda place: (place.bar.rhythm, _bar_contour(place), place.index, place.over_bar_line),
    ),
    Context(
        "rhythm of the bar", "the rhythm of the whole bar",
        lambda place: (place.bar.rhythm, place.index), by_dance=True,
    ),
    Context(
        "contour of the half", "the rhythm, the rises and the falls of the half bar",
        lambda place: (_in_half(place), _half_rhythm(place), _steps(place.group, 1), _lead(place)),
    ),
    Context(
        "steps of the half", "the rhythm and the steps of the half bar",
        lambda place: (_in_half(place), _half_rhythm(place), _steps(place.group, WIDE * 4), place.step),
    ),
    Context(
        "rhythm of the half", "the rhythm of the half bar",
        lambda place: (_in_half(place), _half_rhythm(place)), by_dance=True,
    ),
    Context(
        "half in the bar", "the rhythm of the half bar and the place in the bar",
        lambda place: (place.note.at, _half_rhythm(place)),
    ),
    Context(
        "rhythm of the beat", "the rhythm of the beat and the length before",
        lambda place: (_in_beat(place), _beat_rhythm(place), _lengths((place.before,)), place.over_bar_line),
        by_dance=True,
    ),
    Context(
        "five notes", "the rhythm, the rises and the falls of five notes",
        lambda place: (_in_beat(place), _lengths(place.around[1:]), _steps(place.around[1:], 1)),
    ),
    Context(
        "four notes", "the rhythm, the rises and the falls of four notes and the place in the half bar",
        lambda place: (_in_half(place), _lengths(place.around[1:5]), _steps(place.around[1:5], 1)),
    ),
    Context(
        "turn", "the two lengths, the step and the step behind",
        lambda place: (_in_beat(place), _lengths(place.around[2:4]), _steps(place.around[2:5], 2)),
    ),
    Context(
        "interval", "the two lengths and the interval",
        lambda place: (_in_half(place), _lengths(place.around[2:4]), place.step),
    ),
    Context(
        "place in the bar", "the two lengths and the place in the bar",
        lambda place: (place.note.at, place.bar.full, _lengths(place.around[2:4])), by_dance=True,
    ),
    Context(
        "place in the half", "the two lengths and the place in the half bar",
        lambda place: (_in_half(place), _lengths(place.around[2:4])), by_dance=True,
    ),
    Context(
        "rise or fall", "the two lengths, rising or falling, and the place in the beat",
        lambda place: (_in_beat(place), _lengths(place.around[2:4]), _sign(place.step)),
    ),
    Context(
        "bar of the phrase", "the two lengths, the place in the bar and the bar of the phrase",
        lambda place: (place.bar.full_bars_before % 4, place.note.at, _lengths(place.around[2:4])), by_dance=True,
    ),
    Context(
        "end of the section", "the two lengths, the place in the bar and the bar from the end",
        lambda place: (min(place.bar.full_bars_behind, LAST_BARS), place.note.at, _lengths(place.around[2:4])),
    ),
)  # fmt: skip

# How much each counts where places are compared as a whole, in the order of the table.
LIKENESS = (2.0, 1.0, 1.0, 1.0, 1.0, 1.0, 0.7, 0.5, 0.7, 0.7, 0.7, 0.5, 0.5, 0.4, 0.3, 0.3, 0.3, 0.2)
