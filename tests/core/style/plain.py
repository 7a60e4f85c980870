"""What a style reads of places, worked out once more: place by place, in fractions, as the words of the tables say.

Slow and plain; nothing of ``core.style`` is used.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import nan

from core.order import sections
from core.tune import Bar, Note, Pitch, Tune

DANCES = ("reel", "strathspey", "hornpipe", "jig", "highland fling", "clog", "slip jig")
OPEN_STRINGS = (55, 62, 69, 76)  # key numbers of G3 D4 A4 E5
FREE_BAR = Fraction(4)  # taken for the length of a bar in free metre


@dataclass(frozen=True)
class Struck:
    """A note with what is tied to it; ``at`` from the beginning of a full bar."""

    note: Note
    bar: int
    at: Fraction
    length: Fraction
    beat: Fraction
    tuplet: int

    @property
    def top(self) -> Pitch:
        return self.note.pitches[-1]


def sounding(tune: Tune) -> list[Struck | None]:
    """The notes as they sound; None for a rest."""
    found: list[Struck | None] = []
    tuplets = 0
    for index, bar in enumerate(tune.bars):
        for note in bar.notes:
            tuplets += note.tuplet is not None and note.tuplet.starts
            last = found[-1] if found else None
            if note.is_rest:
                found.append(None)
            elif note.held and last:
                found[-1] = Struck(last.note, last.bar, last.at, last.length + note.length, last.beat, last.tuplet)
            else:
                tuplet = tuplets if note.tuplet else 0
                found.append(Struck(note, index, bar.start + note.at, note.length, bar.meter.beat_length, tuplet))
    return found


class Plain:
    """One place.

    Attributes:
        three, two, one, note, next, second: The notes around it; None for a rest and outside the tune.
        inside: The notes of its bar.
    """

    def __init__(self, tune: Tune, notes: list[Struck | None], number: int) -> None:
        around = [notes[place] if 0 <= place < len(notes) else None for place in range(number - 3, number + 3)]
        self.three, self.two, one, note, self.next, self.second = around
        assert one is not None
        assert note is not None
        self.one, self.note = one, note
        self.tune, self.bar = tune, tune.bars[note.bar]
        self.inside = [each for each in notes if each and each.bar == note.bar]
        self.index = self.inside.index(note)
        self.half = [each for each in self.inside if each.at // (2 * each.beat) == note.at // (2 * note.beat)]
        self.beat = [each for each in self.inside if each.at // each.beat == note.at // note.beat]
        self.step = note.top.height - one.top.height
        self.over = one.bar != note.bar
        self.full = self.bar.meter.bar_length or FREE_BAR
        self.in_beat = note.at % note.beat
        self.in_half = note.at % (2 * note.beat)
        self.section = next(each for each in sections(tune) if note.bar in each)
        self.before = sum(not tune.bars[index].is_pickup for index in self.section if index < note.bar)
        self.behind = sum(not tune.bars[index].is_pickup for index in self.section) - 1 - self.before
        self.equal = [index for index, bar in enumerate(tune.bars) if _is(bar, self.bar)]


def plain_places(tune: Tune) -> list[Plain]:
    """The places of a tune, in written order."""
    notes = sounding(tune)
    found = []
    for number, note in enumerate(notes):
        if note and number and notes[number - 1]:
            place = Plain(tune, notes, number)
            if place.index or note.bar != place.section.start:
                found.append(place)
    return found


def _is(bar: Bar, other: Bar) -> bool:
    """Equal note for note."""
    one, two = (
        [(each.start + note.at, note.length, note.pitches, note.held) for note in each.notes] for each in (bar, other)
    )
    return one == two


def _steps(notes: list[Struck | None], most: int = 10**6) -> list[int | None]:
    return [
        max(-most, min(most, other.top.height - one.top.height)) if one and other else None
        for one, other in pairwise(notes)
    ]


def _lengths(*notes: Struck | None) -> list[tuple[Fraction, bool] | None]:
    return [(each.length, each.tuplet > 0) if each else None for each in notes]


def _rhythm(notes: list[Struck]) -> list[tuple[Fraction, Fraction]]:
    return [(each.at, each.length) for each in notes]


def _from(start: Fraction, notes: list[Struck]) -> list[tuple[Fraction, Fraction]]:
    return [(each.at - start, each.length) for each in notes]


def _half(at: Plain) -> list[tuple[Fraction, Fraction]]:
    return _from(at.note.at - at.in_half, at.half)


def _sign(number: int) -> int:
    return (number > 0) - (number < 0)


KEYS: dict[str, Callable[[Plain], object]] = {
    "bar": lambda at: (at.equal, at.index, max(-12, min(12, at.step)) if at.index == 0 else 0),
    "steps of the bar": lambda at: (_rhythm(at.inside), _steps([*at.inside]), at.index, at.over),
    "contour of the bar": lambda at: (_rhythm(at.inside), _steps([*at.inside], 1), at.index, at.over),
    "rhythm of the bar": lambda at: (_rhythm(at.inside), at.index),
    "contour of the half": lambda at: (
        at.in_half, _half(at), _steps([*at.half], 1), _sign(at.step) if at.note is at.half[0] else None
    ),
    "steps of the half": lambda at: (at.in_half, _half(at), _steps([*at.half], 48), at.step),
    "rhythm of the half": lambda at: (at.in_half, _half(at)),
    "half in the bar": lambda at: (at.note.at, _half(at)),
    "rhythm of the beat": lambda at: (
        at.in_beat, _from(at.note.at - at.in_beat, at.beat), _lengths(at.one), at.over
    ),
    "five notes": lambda at: (
        at.in_beat, _lengths(at.two, at.one, at.note, at.next, at.second),
        _steps([at.two, at.one, at.note, at.next, at.second], 1),
    ),
    "four notes": lambda at: (
        at.in_half, _lengths(at.two, at.one, at.note, at.next), _steps([at.two, at.one, at.note, at.next], 1)
    ),
    "turn": lambda at: (at.in_beat, _lengths(at.one, at.note), _steps([at.one, at.note, at.next], 2)),
    "interval": lambda at: (at.in_half, _lengths(at.one, at.note), at.step),
    "place in the bar": lambda at: (at.note.at, at.full, _lengths(at.one, at.note)),
    "place in the half": lambda at: (at.in_half, _lengths(at.one, at.note)),
    "rise or fall": lambda at: (at.in_beat, _lengths(at.one, at.note), _sign(at.step)),
    "bar of the phrase": lambda at: (at.before % 4, at.note.at, _lengths(at.one, at.note)),
    "end of the section": lambda at: (min(at.behind, 3), at.note.at, _lengths(at.one, at.note)),
}  # fmt: skip


def _string(note: Struck) -> int:
    return max([index for index, lowest in enumerate(OPEN_STRINGS) if lowest <= note.top.midi], default=0)


def _beats(note: Struck | None) -> float:
    return float(note.length / note.beat) if note else nan


def _clipped(one: Struck | None, other: Struck | None) -> float:
    return max(-12, min(12, other.top.height - one.top.height)) if one and other else nan


def _turn(at: Plain, one: Struck | None, other: Struck | None) -> float:
    return _sign(at.step) * _sign(other.top.height - one.top.height) if one and other else nan


UNITS = 20160  # of a quarter note, in what is told of whole bars

MEASURES: dict[str, Callable[[Plain], Fraction | float]] = {
    "bar length": lambda at: at.full * UNITS,
    "compound": lambda at: at.bar.meter.is_compound,
    "beats into the bar": lambda at: at.note.at / at.note.beat,
    "place in the beat": lambda at: at.in_beat / at.note.beat,
    "place in the half": lambda at: at.in_half / at.note.beat,
    "share of the bar": lambda at: at.note.at / at.full,
    "length before": lambda at: _beats(at.one),
    "length": lambda at: _beats(at.note),
    "length behind": lambda at: _beats(at.next),
    "length two before": lambda at: _beats(at.two),
    "length two behind": lambda at: _beats(at.second),
    "length three before": lambda at: _beats(at.three),
    "place of the note before": lambda at: at.one.at % at.one.beat / at.one.beat,
    "step": lambda at: _clipped(at.one, at.note),
    "step before": lambda at: _clipped(at.two, at.one),
    "step behind": lambda at: _clipped(at.note, at.next),
    "step two behind": lambda at: _clipped(at.next, at.second),
    "size of the step": lambda at: min(abs(at.step), 12),
    "semitones": lambda at: at.note.top.midi - at.one.top.midi,
    "pitch": lambda at: at.note.top.midi,
    "pitch before": lambda at: at.one.top.midi,
    "inside a tuplet": lambda at: at.one.tuplet == at.note.tuplet > 0,
    "in a tuplet": lambda at: at.note.note.tuplet is not None,
    "before in a tuplet": lambda at: at.one.note.tuplet is not None,
    "opens a tuplet": lambda at: _opens(at.note),
    "tuplet behind": lambda at: at.next is not None and _opens(at.next),
    "tuplet goes on": lambda at: at.next is not None and at.note.tuplet == at.next.tuplet > 0,
    "over a bar line": lambda at: at.over,
    "note of the bar": lambda at: at.index,
    "notes to the bar line": lambda at: len(at.inside) - at.index,
    "notes of the bar": lambda at: len(at.inside),
    "bars before": lambda at: at.before,
    "bars behind": lambda at: at.behind,
    "bar of four": lambda at: at.before % 4,
    "bar of two": lambda at: at.before % 2,
    "section": lambda at: sections(at.tune).index(at.section),
    "strings crossed": lambda at: _string(at.note) - _string(at.one),
    "open string": lambda at: at.note.top.midi in OPEN_STRINGS,
    "open string before": lambda at: at.one.top.midi in OPEN_STRINGS,
    "goes on": lambda at: _turn(at, at.two, at.one),
    "will go on": lambda at: _turn(at, at.note, at.next),
    "bar came before": lambda at: at.equal[0] < at.note.bar,
    "equal bars": lambda at: len(at.equal),
    "rest behind": lambda at: at.next is None,
    "rest before": lambda at: at.two is None,
    "double stop": lambda at: len(at.note.note.pitches) > 1 or len(at.one.note.pitches) > 1,
    "shortest of the bar": lambda at: min(each.length for each in at.inside) * UNITS,
    "lengths of the bar": lambda at: len({each.length for each in at.inside}),
    "tuplet notes of the bar": lambda at: sum(each.tuplet > 0 for each in at.inside),
    "step over the note before": lambda at: _clipped(at.two, at.note),
    "step over the note": lambda at: _clipped(at.one, at.next),
    "in one beat": lambda at: at.one in at.beat,
    "in one half": lambda at: at.one in at.half,
    "equal pitch": lambda at: at.step == 0,
}


def _opens(struck: Struck) -> bool:
    return struck.note.tuplet is not None and struck.note.tuplet.starts


def plain_dance(tune: Tune) -> int:
    """The first column: which dance it is."""
    name = {"fling": "highland fling", "slipjig": "slip jig"}.get(tune.dance, tune.dance)
    return DANCES.index(name) if name in DANCES else len(DANCES)
