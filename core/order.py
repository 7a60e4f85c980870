"""The order in which bars are played: repeats, endings, parts named in the header, D.C., D.S., Fine and Coda.

Rules kept here:

- ``:|`` without ``|:`` goes back to the last double bar, repeat end or jump, else to the start (ABC 2.1, 4.8).
- An ending is played on the passes it names (ABC 2.1, 4.9 and 4.10). A repeat whose only ending is passed over goes
  on behind it; a pass for which no ending is written, between others that have one, is not played.
- A tune whose header names the order of its parts is played in that order; the repeats inside a part are taken each
  time, jumps are not.
- A jump is taken once, after the last repeat of its bar. From there on repeats are not taken again and the last
  ending is played (common practice, no source). The playing then ends at Fine, or leaves for the coda where the sign
  says so. Bars written behind the jump that have not been heard by then follow, so that a tune with several
  "D.C. al Fine" is a rondo.

Signs that make no sense never stop the playing and never run on for ever.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import NamedTuple

from core.once import once
from core.tune import Bar, Jump, Tune
from core.values import dataclass

MAX_VISITS = 20_000  # beyond it the signs are nonsense: a tune of 2,000 bars, all repeated, with a D.C. has 6,000

LEAVES_AT_FINE = {Jump.DA_CAPO, Jump.DAL_SEGNO, Jump.DA_CAPO_AL_FINE, Jump.DAL_SEGNO_AL_FINE}
LEAVES_FOR_CODA = {Jump.DA_CAPO, Jump.DAL_SEGNO, Jump.DA_CAPO_AL_CODA, Jump.DAL_SEGNO_AL_CODA}
GOES_TO_SEGNO = {Jump.DAL_SEGNO, Jump.DAL_SEGNO_AL_FINE, Jump.DAL_SEGNO_AL_CODA}


class Visit(NamedTuple):
    """One playing of one bar.

    Attributes:
        bar: Index in ``tune.bars``.
        pass_number: How often this bar has now been played, counted from 1.
    """

    bar: int
    pass_number: int


@once
def playing_order(tune: Tune) -> tuple[Visit, ...]:
    """Work out the order in which the bars are played, once through the tune.

    Returns:
        At least one visit. Every bar is visited, except where the header's order of parts leaves its part out. If the
        signs ask for more than ``MAX_VISITS`` bars, each bar once in written order.
    """
    bars = tune.bars
    try:
        played = _Playing(_in_parts(tune) if tune.part_order else _with_jumps(bars, _repeated(bars, 0, len(bars))))
    except _TooLongError:
        played = _Playing(range(len(bars)))
    return tuple(played.visits)


@once
def sections(tune: Tune) -> tuple[range, ...]:
    """Cut the written bars at repeats, double bars, jumps and part names.

    Returns:
        Ranges of indexes in ``tune.bars``, in order, without gaps; the endings of a repeat stay in one section.
    """
    cuts = [index for index in range(1, len(tune.bars)) if _begins_section(tune.bars[index - 1], tune.bars[index])]
    return tuple(range(first, stop) for first, stop in pairwise([0, *cuts, len(tune.bars)]))


def _begins_section(before: Bar, bar: Bar) -> bool:
    if bar.opens_repeat or bar.part:
        return True
    goes_on_with_next_ending = before.ending and bar.ending and min(bar.ending) > min(before.ending)
    return before.ends_section and not goes_on_with_next_ending


@once
def endings(tune: Tune) -> tuple[tuple[range, ...], ...]:
    """Find the endings written side by side for one repeat.

    Returns:
        For each repeat that has any, its endings as ranges of indexes in ``tune.bars``, in written order.
    """
    groups = []
    index = 0
    while index < len(tune.bars):
        if tune.bars[index].ending:
            group = _ending_group(tune.bars, index, len(tune.bars))
            groups.append(tuple(range(ending.first, ending.stop) for ending in group))
            index = group[-1].stop
        else:
            index += 1
    return tuple(groups)


class _TooLongError(Exception):
    """The signs ask for more bars than any tune has."""


class _Playing:
    """Visits made so far, with their pass numbers."""

    def __init__(self, indexes: Iterable[int]) -> None:
        self.visits: list[Visit] = []
        passes: dict[int, int] = {}
        for index in indexes:
            passes[index] = passes.get(index, 0) + 1
            self.visits.append(Visit(index, passes[index]))


def _extend(order: list[int], more: Iterable[int]) -> None:
    order.extend(more)
    if len(order) > MAX_VISITS:
        raise _TooLongError


@dataclass(slots=True)
class _Ending:
    """Bars under one ending bracket: indexes ``first`` up to ``stop``."""

    numbers: tuple[int, ...]
    first: int
    stop: int


def _repeated(bars: Sequence[Bar], first: int, stop: int) -> list[int]:
    """Bar indexes from ``first`` up to ``stop`` with their repeats and endings, jumps left aside."""
    order: list[int] = []
    back, opened = first, False  # where the next repeat sign goes back to, and whether a sign says so
    index = first
    while index < stop:
        bar = bars[index]
        if bar.opens_repeat and index > back:
            _extend(order, range(back, index))  # what came before was not repeated
            back = index
        opened = opened or bar.opens_repeat
        if bar.ending:
            endings = _ending_group(bars, index, stop)
            for bracket in _passes(bars, endings):
                _extend(order, range(back, index))
                _extend(order, range(bracket.first, bracket.stop) if bracket else ())
            index = back = endings[-1].stop
            opened = False
            continue
        index += 1
        if bar.repeats:
            for _ in range(min(bar.repeats, MAX_VISITS + 1)):
                _extend(order, range(back, index))
            back, opened = index, False
        elif bar.ends_section and not opened:
            _extend(order, range(back, index))
            back = index
    _extend(order, range(back, stop))
    return order


def _ending_group(bars: Sequence[Bar], first: int, stop: int) -> list[_Ending]:
    """The endings that stand side by side from ``first`` on and belong to one repeat."""
    endings = [_Ending(bars[first].ending, first, first + 1)]
    for index in range(first + 1, stop):
        bar = bars[index]
        if not bar.ending or bar.opens_repeat or bar.part:
            break
        if bar.ending == endings[-1].numbers and not bars[index - 1].repeats:
            endings[-1].stop = index + 1
        elif min(bar.ending) > min(endings[-1].numbers):
            endings.append(_Ending(bar.ending, index, index + 1))
        else:
            break  # counts from the beginning again: another repeat's endings
    return endings


def _passes(bars: Sequence[Bar], endings: list[_Ending]) -> list[_Ending | None]:
    """For each pass through a repeat with endings, the ending it takes; None where it takes none."""
    by_number: dict[int, _Ending] = {}
    for ending in endings:
        for number in ending.numbers:
            by_number.setdefault(max(number, 1), ending)
    last = max(by_number)
    if len(endings) == 1:  # no other ending is written: the last pass goes on behind this one
        last = max(last, bars[endings[0].stop - 1].repeats)
    if last > MAX_VISITS:
        raise _TooLongError
    passes = [by_number.get(number) for number in range(1, last + 1)]
    known = [place for place, ending in enumerate(passes) if ending]
    return [ending for place, ending in enumerate(passes) if ending or place < known[0] or place > known[-1]]


def _in_parts(tune: Tune) -> list[int]:
    """Bar indexes in the header's order of parts; the k-th time a name comes, its k-th part (and round again)."""
    bars = tune.bars
    starts = [index for index, bar in enumerate(bars) if bar.part]
    parts: dict[str, list[tuple[int, int]]] = {}
    for first, stop in pairwise([*starts, len(bars)]):
        parts.setdefault(bars[first].part, []).append((first, stop))
    if not any(name in parts for name in tune.part_order):
        return _with_jumps(bars, _repeated(bars, 0, len(bars)))
    order: list[int] = list(range(starts[0]))  # a pick-up before the first part
    taken: dict[str, int] = {}
    for name in tune.part_order:
        if name in parts:
            first, stop = parts[name][taken.get(name, 0) % len(parts[name])]
            taken[name] = taken.get(name, 0) + 1
            _extend(order, _repeated(bars, first, stop))
    return order


def _with_jumps(bars: Sequence[Bar], straight: list[int]) -> list[int]:
    """Put in what D.C. and D.S. play again, each after the last visit of its bar."""
    last_visits = {index: place for place, index in enumerate(straight) if bars[index].jump}
    if not last_visits:
        return straight
    skipped = _passed_over(bars)
    unheard = set(straight)
    order: list[int] = []
    done = 0
    for place in sorted(last_visits.values()):
        again = list(_after_jump(bars, bars[straight[place]].jump, skipped))
        unheard.difference_update(straight[done : place + 1], again)
        _extend(order, [*straight[done : place + 1], *again])
        done = place + 1
        if not unheard:
            return order
    _extend(order, straight[done:])
    return order


def _after_jump(bars: Sequence[Bar], jump: Jump | None, skipped: set[int]) -> Iterable[int]:
    """Bar indexes from a jump to Fine, to the end of the coda, or to the end: no repeats, last endings."""
    coda = next((index for index, bar in enumerate(bars) if bar.coda), None) if jump in LEAVES_FOR_CODA else None
    index = next((index for index, bar in enumerate(bars) if bar.segno), 0) if jump in GOES_TO_SEGNO else 0
    while index < len(bars):
        if index not in skipped:
            yield index
            if bars[index].fine and jump in LEAVES_AT_FINE:
                return
            if bars[index].to_coda and coda is not None:
                index, coda = coda, None  # once
                continue
        index += 1


def _passed_over(bars: Sequence[Bar]) -> set[int]:
    """Indexes of bars under an ending that the last pass does not take."""
    skipped: set[int] = set()
    index = 0
    while index < len(bars):
        if not bars[index].ending:
            index += 1
            continue
        endings = _ending_group(bars, index, len(bars))
        taken = _passes(bars, endings)[-1]
        for ending in endings:
            if ending is not taken:
                skipped.update(range(ending.first, ending.stop))
        index = endings[-1].stop
    return skipped
