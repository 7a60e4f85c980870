"""Strokes in the direction of the stroke before them: reported, never forbidden (rules B4 and B7)."""

from __future__ import annotations

from collections.abc import Iterator

from core.bowing import Bow
from core.checks import words
from core.checks.finding import Finding, Severity
from core.checks.view import View, neighbours
from core.translation import plural, sentence, tr
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class _Kind:
    """What retakes must have in common to be told together."""

    over_rest: bool
    at_seam: bool  # where a part begins, or begins again, and the bow may well be lifted
    bow: Bow | None  # None where it differs from pass to pass
    passes: tuple[int, ...]  # empty for every pass


def planned(view: View) -> Iterator[Finding]:
    """Retakes on every pass, and those that a rest makes easy or that begin a part."""
    for kind, notes in _retakes(view):
        if not _breaks_a_phrase(kind):
            yield _finding(view, "retake", Severity.NOTE, kind, notes)


def on_some_passes(view: View) -> Iterator[Finding]:
    """Retakes that a fixed direction asks for on some passes only, inside a phrase and with no rest to make them in."""
    for kind, notes in _retakes(view):
        if _breaks_a_phrase(kind):
            yield _finding(view, "retake-on-some-passes", Severity.WARNING, kind, notes)


def _breaks_a_phrase(kind: _Kind) -> bool:
    return bool(kind.passes) and not kind.over_rest and not kind.at_seam


def _retakes(view: View) -> Iterator[tuple[_Kind, list[str]]]:
    found: list[tuple[str, _Kind]] = []
    retaken = (
        note.id
        for (bar, _), strokes in zip(view.strokes.order, view.strokes.visits, strict=True)
        if True in strokes.retakes
        for note, retake in zip(view.sounding(bar), strokes.retakes, strict=True)
        if retake
    )
    for note_id in view.in_written_order(retaken):
        every = view.passes(note_id)
        retakes = [played for played in every if played.retake]
        directions = {played.bow for played in retakes}
        passes = () if len(retakes) == len(every) else tuple(played.pass_number for played in retakes)
        over_rest = all(played.over_rest for played in retakes)
        at_seam = all(view.opens_a_section(played) for played in retakes)
        found.append((note_id, _Kind(over_rest, at_seam, directions.pop() if len(directions) == 1 else None, passes)))
    for run in neighbours(found, lambda item: view.number(item[0]), lambda item: item[1]):
        yield run[0][1], [note_id for note_id, _ in run]


def _finding(view: View, rule: str, severity: Severity, kind: _Kind, notes: list[str]) -> Finding:
    bars = [view.tune.bar_of[note_id] for note_id in notes]
    again = words.on_passes(kind.passes, 0)
    if kind.bow is None:
        way = tr("the same way as the stroke before")
    else:
        way = tr("{direction} after {direction}", direction=words.direction(kind.bow))
    if len(notes) == 1:
        where = words.note_of_bar(view.tune, notes[0])
        text = tr(
            "{note} is a retake over a rest ({way}){passes}"
            if kind.over_rest
            else "{note} is a retake ({way}){passes}",
            note=where, way=way, passes=again,
        )  # fmt: skip
    else:
        retakes = (
            plural("1 retake over a rest", "{n} retakes over a rest", len(notes))
            if kind.over_rest
            else plural("1 retake", "{n} retakes", len(notes))
        )
        text = plural(
            "{bars} holds {retakes} ({way}){passes}", "{bars} hold {retakes} ({way}){passes}",
            len(view.numbers(bars)), "n: bars",
            bars=words.bars(view.tune, bars), retakes=retakes, way=way, passes=again,
        )  # fmt: skip
    number = kind.passes[0] if kind.passes else None
    return Finding(rule, severity, view.numbers(bars), number, tuple(notes), sentence(text))
