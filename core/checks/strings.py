"""Slurs that leap over a string."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from core.bowing import Bowing, Join, join
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View, neighbours
from core.strings import Leap, leaps
from core.translation import plural, sentence, tr
from core.tune import Tune


def slur_leaps(view: View) -> Iterator[Finding]:
    """Slurs between strings that do not lie side by side, whatever first-position fingering is chosen."""
    found = leaps(view.tune, view.bowing, view.tuning)
    for run in neighbours(found, lambda leap: view.number(leap.note_id), lambda leap: None):
        ids = tuple(leap.note_id for leap in run)
        bars = [view.tune.bar_of[note_id] for note_id in ids]
        where = words.bars(view.tune, bars)
        if len(run) == 1:
            name = words.note(view.tune, ids[0])
            text = tr("in {bar}, the slur to {note} leaps {way}", bar=where, note=name, way=_way(view, run[0]))
            label = tr("Hook {note}: the bow stops before it", note=name)
        else:
            text = plural(
                "in {bars}, 1 slur leaps over a string (the first, {way})",
                "in {bars}, {n} slurs leap over a string (the first, {way})",
                len(run), bars=where, way=_way(view, run[0]),
            )  # fmt: skip
            label = plural(
                "Hook the note: the bow stops before it", "Hook the {n} notes: the bow stops before each", len(run)
            )
        yield Finding(
            "slur-leaps-string", Severity.WARNING, view.numbers(bars), None, ids, sentence(text),
            (Remedy(label, partial(_hooked, ids)),),
        )  # fmt: skip


def _way(view: View, leap: Leap) -> str:
    start, end = (view.tuning.name(string) for string in (leap.from_string, leap.to_string))
    return tr("from the {start} string to the {end} string", start=start, end=end)


def _hooked(note_ids: tuple[str, ...], tune: Tune, bowing: Bowing) -> Bowing:
    for note_id in note_ids:
        bowing = join(tune, bowing, note_id, Join.HOOK)
    return bowing
