"""Bars and phrases that come again, note for note.

Two bars are equal if their notes are: places, lengths, pitches, ties and rests. What belongs to a bowing (slurs, grace
notes, ornaments) does not count, nor do chords, signs and bar lines. Bars that are merely like one another are told by
``core.likeness``.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence

from core.once import once
from core.pitch_numbers import pitch_numbers
from core.ticks import ticks
from core.tune import Bar, Tune
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Return:
    """A run of bars that is written again.

    Attributes:
        first: Index in ``tune.bars`` where the run was written first.
        again: Index where it comes again, at or behind the end of the first run.
        length: Number of bars.
    """

    first: int
    again: int
    length: int


@once
def bar_classes(tune: Tune) -> tuple[int, ...]:
    """For each bar the index of the first bar that is equal to it."""
    times = ticks(tune)
    rhythms: dict[Hashable, int] = {}  # whatever the metre
    same = [rhythms.setdefault((one.start, one.lengths, one.held), index) for index, one in enumerate(times.rhythms)]
    first: dict[tuple[int, tuple[int, ...]], int] = {}
    numbered = zip(times.kinds, pitch_numbers(tune).bars, strict=True)
    return tuple([first.setdefault((same[kind], pitches), index) for index, (kind, pitches) in enumerate(numbered)])


@once
def recurring_bars(tune: Tune) -> tuple[tuple[int, ...], ...]:
    """Groups of two or more equal bars as indexes, by first bar; bars that are not material are left out."""
    groups: dict[int, list[int]] = {}
    for index, first in enumerate(bar_classes(tune)):
        if is_material(tune.bars[index]):
            groups.setdefault(first, []).append(index)
    return tuple(tuple(group) for group in groups.values() if len(group) > 1)


@once
def returns(tune: Tune) -> tuple[Return, ...]:
    """Find what comes again, at the largest scale.

    Read from the left, each bar that was heard before opens the longest run of bars written in the same order
    somewhere before; the earliest place counts. Runs do not overlap one another or what they bring again, and runs
    without any material are left out. Takes time in proportion to the number of bars.
    """
    classes = bar_classes(tune)
    heard = _Heard(classes)
    found = []
    index = 0
    while index < len(classes):
        first, length = heard.longest_before(index)
        if any(is_material(bar) for bar in tune.bars[index : index + length]):
            found.append(Return(first, index, length))
        index += max(length, 1)
    return tuple(found)


def is_material(bar: Bar) -> bool:
    """Whether a bar says something: a single pick-up note that comes again is no recurrence, nor is a rest."""
    struck = sum(not note.held and not note.is_rest for note in bar.notes)
    return struck > 1 or (struck == 1 and bar.length == bar.meter.bar_length)


class _Heard:
    """Suffix automaton of a sequence: where was the longest run of symbols from here on heard before?

    Each state stands for runs that end at the same places; ``end`` is the first of these.
    """

    def __init__(self, symbols: Sequence[int]) -> None:
        self.symbols = symbols
        self.next: list[dict[int, int]] = [{}]
        self.link = [-1]
        self.length = [0]
        self.end = [-1]
        last = 0
        for place, symbol in enumerate(symbols):
            last = self._extend(last, place, symbol)

    def longest_before(self, start: int) -> tuple[int, int]:
        """Place and length of the longest run that equals the one at ``start`` and ends before it; length 0 if none."""
        state, stop = 0, start
        while stop < len(self.symbols):
            following = self.next[state].get(self.symbols[stop])
            if following is None or self.end[following] >= start:
                break
            state, stop = following, stop + 1
        return self.end[state] - (stop - start) + 1, stop - start

    def _extend(self, last: int, place: int, symbol: int) -> int:
        state = self._add({}, self.length[last] + 1, place)
        walk = last
        while walk >= 0 and symbol not in self.next[walk]:
            self.next[walk][symbol] = state
            walk = self.link[walk]
        if walk < 0:
            self.link[state] = 0
            return state
        following = self.next[walk][symbol]
        if self.length[following] == self.length[walk] + 1:
            self.link[state] = following
            return state
        copy = self._add(dict(self.next[following]), self.length[walk] + 1, self.end[following])
        self.link[copy] = self.link[following]
        self.link[following] = self.link[state] = copy
        while walk >= 0 and self.next[walk].get(symbol) == following:
            self.next[walk][symbol] = copy
            walk = self.link[walk]
        return state

    def _add(self, following: dict[int, int], length: int, end: int) -> int:
        self.next.append(following)
        self.length.append(length)
        self.link.append(-1)
        self.end.append(end)
        return len(self.next) - 1
