"""Marks that stand inside a stroke (rule B5): against it, or saying what is clear without them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import partial

from core.bowing import Bowing
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View
from core.translation import sentence, tr
from core.tune import Tune


def against_slur(view: View) -> Iterator[Finding]:
    """Marks inside a stroke that goes the other way."""
    for note_id, inside, passes in _marks_inside(view):
        wrong = [number for number, agrees in inside if not agrees]
        if wrong:
            mark = view.bowing.marks[note_id].bow
            text = tr(
                "in {bar}, {note} is marked {direction} inside {bow}{passes}",
                bar=_bar(view, note_id), note=words.note(view.tune, note_id), direction=words.direction(mark),
                bow=words.a_bow(mark.turned), passes=words.on_passes(wrong, passes),
            )  # fmt: skip
            number = None if len(wrong) == passes else wrong[0]
            yield _finding(view, "mark-against-slur", Severity.FAULT, note_id, text, number)


def redundant(view: View) -> Iterator[Finding]:
    """Marks inside a stroke that goes the same way on every pass."""
    for note_id, inside, passes in _marks_inside(view):
        if len(inside) == passes and all(agrees for _, agrees in inside):
            mark = view.bowing.marks[note_id].bow
            text = tr(
                "in {bar}, {note} is marked {direction} inside {bow}, which says nothing new",
                bar=_bar(view, note_id), note=words.note(view.tune, note_id), direction=words.direction(mark),
                bow=words.a_bow(mark),
            )  # fmt: skip
            yield _finding(view, "redundant-mark", Severity.NOTE, note_id, text, None)


def _marks_inside(view: View) -> Iterator[tuple[str, list[tuple[int, bool]], int]]:
    """Marked notes that begin no stroke on some pass where the mark holds.

    Yields:
        The note's id; for each such pass its number and whether the mark agrees; and on how many passes it holds.
    """
    for note_id in view.in_written_order(id_ for id_ in view.bowing.marks if id_ in view.tune.places):
        mark = view.bowing.marks[note_id]
        held = [played for played in view.passes(note_id) if mark.holds_on(played.pass_number)]
        inside = [(played.pass_number, played.bow is mark.bow) for played in held if not played.starts]
        if inside:
            yield note_id, inside, len(held)


def _finding(view: View, rule: str, severity: Severity, note_id: str, text: str, pass_number: int | None) -> Finding:
    bar = view.tune.bar_of[note_id]
    remedy = Remedy(tr("Take the mark away"), partial(_without_mark, note_id))
    return Finding(rule, severity, view.numbers([bar]), pass_number, (note_id,), sentence(text), (remedy,))


def _bar(view: View, note_id: str) -> str:
    return words.bars(view.tune, [view.tune.bar_of[note_id]])


def _without_mark(note_id: str, tune: Tune, bowing: Bowing) -> Bowing:
    return replace(bowing, marks=bowing.marks.discard(note_id))
