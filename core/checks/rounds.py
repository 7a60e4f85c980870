"""Parts, endings and whole tunes that come round on the other bow."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from core.bowing import Bow, fix_bow
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View
from core.order import endings, sections
from core.recurrence import is_material
from core.strokes import Played
from core.translation import ordinal, plural, sentence, tr


def part(view: View) -> Iterator[Finding]:
    """Parts, or bars of them, that are not bowed on a later pass as on the first."""
    for section in sections(view.tune):
        played_again = [bar for bar in section if view.passes_of_bar(bar) > 1]
        for bars in _runs(view, section):
            if not any(is_material(view.tune.bars[bar]) for bar in bars):
                continue
            passes = view.turned_passes[bars[0]]
            notes = [note.id for bar in bars for note in view.sounding(bar)]
            compared = zip(view.sounding(bars[0]), view.bows(bars[0]), view.bows(bars[0], passes[0]), strict=True)
            turned, first = next((note.id, first) for note, first, later in compared if later is not first)
            name = view.tune.bars[section.start].part
            subject, count = words.bars(view.tune, bars), len(view.numbers(bars))
            if name and bars == played_again:
                subject, count = tr("part {name} ({bars})", name=name, bars=subject), 1
            values = {
                "bars": subject, "times": words.times(passes), "note": words.note_of_bar(view.tune, turned),
                "direction": words.direction(first),
            }  # fmt: skip
            if turned == notes[0]:
                text = plural(
                    "{bars} comes round on the other bow {times} ({note} is {direction} the first time)",
                    "{bars} come round on the other bow {times} ({note} is {direction} the first time)",
                    count, "n: bars", **values,
                )  # fmt: skip
            else:
                text = plural(
                    "{bars} comes round on the other bow from {note} on {times} ({note} is {direction} the first time)",
                    "{bars} come round on the other bow from {note} on {times} ({note} is {direction} the first time)",
                    count, "n: bars", **values,
                )  # fmt: skip
            yield Finding(
                "part-on-other-bow", Severity.WARNING, view.numbers(bars), passes[0], tuple(notes),
                sentence(text), _always(view, turned, first),
            )  # fmt: skip


def ending(view: View) -> Iterator[Finding]:
    """Endings that begin on the other bow than the first ending of their repeat.

    Where the bow already differs before them, that is told of the part, and this is only what follows from it.
    """
    for first, *later in endings(view.tune):
        model = _opening(view, first)
        for place, bars in enumerate(later, start=2):
            opening = _opening(view, bars)
            if model is None or opening is None or opening.bow is model.bow:
                continue
            follows = opening.visit > 0 and opening.starts and _is_turned(view, opening.visit - 1)
            text = tr(
                "the {ordinal} ending ({bars}) begins {direction}, the first ({first}) {other}, "
                "for its part comes round on the other bow"
                if follows
                else "the {ordinal} ending ({bars}) begins {direction}, the first ({first}) {other}",
                ordinal=ordinal(place), bars=words.bars(view.tune, bars), direction=words.direction(opening.bow),
                first=words.bars(view.tune, first), other=words.direction(model.bow),
            )  # fmt: skip
            notes = tuple(note.id for bar in bars for note in view.sounding(bar))
            yield Finding(
                "ending-on-other-bow", Severity.NOTE if follows else Severity.WARNING, view.numbers(bars), None,
                notes, sentence(text), _always(view, opening.note_id, model.bow),
            )  # fmt: skip


def tune(view: View) -> Iterator[Finding]:
    """A tune that, played again from the start, begins on the other bow."""
    if not view.strokes.comes_round:
        first = view.first_note
        text = tr(
            "played again from the start, the tune begins {direction} (the first time {other})",
            direction=words.direction(first.bow.turned), other=words.direction(first.bow),
        )  # fmt: skip
        yield Finding(
            "tune-on-other-bow", Severity.WARNING, view.numbers([first.bar]), None, (first.note_id,),
            sentence(text), _always(view, first.note_id, first.bow),
        )  # fmt: skip


def retake(view: View) -> Iterator[Finding]:
    """A tune that comes round by a retake."""
    if view.strokes.round_retake:
        first, last = view.first_note, view.strokes.next_bow.turned
        text = tr(
            "played again from the start, the tune takes a retake: it ends on {bow} and begins with another",
            bow=words.a_bow(last),
        )
        yield Finding("round-retake", Severity.NOTE, view.numbers([first.bar]), None, (first.note_id,), sentence(text))


def _opening(view: View, bars: range) -> Played | None:
    """The first note played of an ending; None where nothing sounds or is played."""
    visits = (view.strokes.visits_of[bar][0] for bar in bars if view.sounding(bar) and view.passes_of_bar(bar))
    return next((view.strokes.playing(visit, 0) for visit in visits), None)


def _is_turned(view: View, visit: int) -> bool:
    """Whether the bar of a visit ends on the other bow than on its first pass."""
    bar, pass_number = view.strokes.order[visit].bar, view.strokes.order[visit].pass_number
    return view.bows(bar, pass_number)[-1:] != view.bows(bar)[-1:]


def _runs(view: View, section: range) -> list[list[int]]:
    """Neighbouring bars of a section that differ from the first pass on the same later passes."""
    runs: list[list[int]] = []
    for bar in section:
        passes = view.turned_passes.get(bar)
        if passes and runs and runs[-1][-1] == bar - 1 and view.turned_passes[bar - 1] == passes:
            runs[-1].append(bar)
        elif passes:
            runs.append([bar])
    return runs


def _always(view: View, note_id: str, bow: Bow) -> tuple[Remedy, ...]:
    """Fix a direction on every pass, if a stroke begins there on every pass."""
    if not all(played.starts for played in view.passes(note_id)):
        return ()
    label = tr(
        "Take {note} {direction} every time",
        note=words.note_of_bar(view.tune, note_id), direction=words.direction(bow),
    )  # fmt: skip
    return (Remedy(label, partial(fix_bow, note_id=note_id, bow=bow)),)
