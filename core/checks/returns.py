"""Material that is written again and bowed another way, compared as on the first pass."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from enum import Enum
from functools import partial

from core.bowing import Bow, Join, fix_bow
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View
from core.once import once
from core.recurrence import Return, is_material, recurring_bars, returns


class Likeness(Enum):
    """How a bar that comes again is bowed, beside its first appearance."""

    ALIKE = "alike"
    OTHER_BOW = "on the other bow"
    OTHER_SLURS = "slurred differently"


def other_bow(view: View) -> Iterator[Finding]:
    """Phrases with the same slurs that come again in the other direction."""
    for first, again in _differing(view, Likeness.OTHER_BOW):
        old, new = next(
            (old, new)
            for old, new in zip(view.sounding(first[0]), view.sounding(again[0]), strict=True)
            if view.first_bow(old.id) is not view.first_bow(new.id)
        )
        bow = view.strokes.bows[old.id][0]
        if new is view.sounding(again[0])[0]:
            where, told = "", _beginnings(view, first[0], again[0])
        else:
            where = f", from {words.note(view.tune, new.id)} on"
            told = (
                f"there {bow.value} in {words.bars(view.tune, first[:1])}, "
                f"{bow.turned.value} in {words.bars(view.tune, again[:1])}"
            )
        text = f"{_bring(view, first, again)} on the other bow{where} ({told})"
        in_one_run = again == list(range(again[0], again[-1] + 1))
        remedy = _begin_as_before(view, new.id, bow) if in_one_run else None
        yield _finding(view, "phrase-on-other-bow", Severity.WARNING, again, text, remedy)


def other_slurs(view: View) -> Iterator[Finding]:
    """Phrases that come again with other slurs or hooks; a bar that begins on the other bow besides is named."""
    for first, again in _differing(view, Likeness.OTHER_SLURS):
        text = f"{_bring(view, first, again)} slurred differently"
        old, new = view.sounding(first[0])[0].id, view.sounding(again[0])[0].id
        if view.first_bow(old) is not view.first_bow(new):
            text += f" ({_beginnings(view, first[0], again[0])})"
        yield _finding(view, "phrase-slurred-differently", Severity.NOTE, again, text, None)


def consistency(view: View) -> float:
    """Share of the notes in recurring bars whose direction and join are the commonest among their recurrences.

    The first pass counts; where two are as common, the one written first. How the first note of a bar is joined to
    the bar before is left out. 1.0 where nothing recurs.
    """
    alike = total = 0
    joins = dict(view.bowing.joins)
    for group in recurring_bars(view.tune):
        for copies in zip(*(view.sounding(bar) for bar in group), strict=True):
            opens_bar = copies[0].at == 0
            bowed = Counter(
                (bow, None if opens_bar else joins.get(note.id))
                for note in copies
                if (bow := view.first_bow(note.id)) is not None
            )
            alike += max(bowed.values(), default=0)
            total += bowed.total()
    return alike / total if total else 1.0


def _differing(view: View, likeness: Likeness) -> Iterator[tuple[list[int], list[int]]]:
    """The bars of each return that are bowed in this way: indexes of the first bars and of those that come again."""
    for found, likenesses in zip(returns(view.tune), _likenesses(view), strict=True):
        offsets = [offset for offset, other in enumerate(likenesses) if other is likeness]
        again = [found.again + offset for offset in offsets]
        if any(is_material(view.tune.bars[bar]) for bar in again):
            yield [found.first + offset for offset in offsets], again


@once
def _likenesses(view: View) -> tuple[list[Likeness], ...]:
    """How each bar of each return is bowed."""
    joins = dict(view.bowing.joins)
    bows = dict(view.strokes.bows)
    return tuple(
        [_compare(view, joins, bows, found, offset) for offset in range(found.length)] for found in returns(view.tune)
    )


def _compare(
    view: View, joins: dict[str, Join], bows: dict[str, tuple[Bow, ...]], found: Return, offset: int
) -> Likeness:
    """Compare one bar of a return; how its first note is joined counts inside the run only."""
    likeness = Likeness.ALIKE
    copies = zip(view.sounding(found.first + offset), view.sounding(found.again + offset), strict=True)
    for place, (old, new) in enumerate(copies):
        if not bows[old.id] or not bows[new.id]:
            return Likeness.ALIKE  # a part that is not played
        if (place or offset) and joins.get(old.id) is not joins.get(new.id):
            return Likeness.OTHER_SLURS
        if bows[old.id][0] is not bows[new.id][0]:
            likeness = Likeness.OTHER_BOW
    return likeness


def _bring(view: View, first: list[int], again: list[int]) -> str:
    verb = "brings" if len(view.numbers(again)) == 1 else "bring"
    return f"{words.bars(view.tune, again)} {verb} {words.bars(view.tune, first)} again"


def _beginnings(view: View, first: int, again: int) -> str:
    bows = [view.strokes.bows[view.sounding(bar)[0].id][0].value for bar in (first, again)]
    old, new = (words.bars(view.tune, [bar]) for bar in (first, again))
    return f"{old} began {bows[0]}, {new} begins {bows[1]}"


def _begin_as_before(view: View, note_id: str, bow: Bow) -> Remedy | None:
    """Fix the direction where the return begins, if a stroke begins there."""
    if not view.passes(note_id)[0].starts:
        return None
    return Remedy(
        f"Take {words.note_of_bar(view.tune, note_id)} {bow.value}", partial(fix_bow, note_id=note_id, bow=bow)
    )


def _finding(view: View, rule: str, severity: Severity, bars: list[int], text: str, remedy: Remedy | None) -> Finding:
    notes = tuple(note.id for bar in bars for note in view.sounding(bar))
    return Finding(rule, severity, view.numbers(bars), None, notes, words.sentence(text), remedy)
