"""Slurs that hide a note, and strokes that hold too much."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import partial

from core.bowing import Bowing, Grace, Join, set_signs
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View, neighbours
from core.once import once
from core.ornamenting import upper_neighbour
from core.ticks import ticks
from core.translation import plural, sentence, tr, translatable
from core.tune import Note, Tune

MOST_NOTES_IN_A_STROKE = 8  # common practice, no source: a bar of a reel
LONGEST_STROKE_IN_BARS = Fraction(3, 2)
LONG_STROKE = translatable({  # whether it takes too many notes, whether it lasts too long
    (True, False): "the stroke that begins with {note} takes {notes}",
    (False, True): "the stroke that begins with {note} lasts longer than a bar and a half",
    (True, True): "the stroke that begins with {note} takes {notes} and lasts longer than a bar and a half",
})  # fmt: skip


def equal_pitches(view: View) -> Iterator[Finding]:
    """Slurs over two equal notes with nothing between them that would part them."""
    hidden = []
    for note_id in view.in_written_order(
        note_id for note_id, how in view.bowing.joins.items() if how is Join.SLUR and note_id in view.tune.places
    ):
        before = view.tune.before(note_id)
        same = before is not None and before.pitches == view.tune.note(note_id).pitches
        if same and not view.bowing.signs_on(note_id).parts:
            hidden.append(note_id)
    for run in neighbours(hidden, view.number, lambda note_id: None):
        bars = [view.tune.bar_of[note_id] for note_id in run]
        where = words.bars(view.tune, bars)
        if len(run) == 1:
            pitches = "".join(map(str, view.tune.note(run[0]).pitches))
            name = words.note(view.tune, run[0])
            text = tr(
                "in {bar}, {note} is slurred to the same note before it ({pitch}) and is not heard",
                bar=where, note=name, pitch=pitches,
            )  # fmt: skip
            label = tr(
                "Put a cut on {note} ({cut})",
                note=words.note_of_bar(view.tune, run[0]), cut=_cut_in_words(view, run[0]),
            )  # fmt: skip
        else:
            text = plural(
                "in {bars}, 1 note is slurred to the same note before it and is not heard",
                "in {bars}, {n} notes are slurred to the same note before them and are not heard",
                len(run), bars=where,
            )  # fmt: skip
            label = plural("Put a cut on the note", "Put cuts on the {n} notes", len(run))
        remedy = Remedy(label, partial(_with_cuts, tuple(run)))
        yield Finding(
            "equal-notes-slurred", Severity.NOTE, view.numbers(bars), None, tuple(run), sentence(text), (remedy,)
        )


def _cut_in_words(view: View, note_id: str) -> str:
    """Where the cut lies: a third finger has the open string above for its upper neighbour."""
    pitch = upper_neighbour(view.tune, note_id)
    is_open = pitch.midi in view.tuning.open_keys[1:]
    return tr("{pitch}, the open string above" if is_open else "{pitch}, the next note up", pitch=pitch)


def long_strokes(view: View) -> Iterator[Finding]:
    """Strokes of very many notes, or longer than a bar and a half."""
    places = view.tune.places
    shared = {note.id for notes in view.shared_strokes for note in notes}
    alone = [(note,) for note in _long_notes(view.tune) if note.id not in shared]
    for notes in sorted((*view.shared_strokes, *alone), key=lambda notes: places[notes[0].id]):
        count = sum(not note.held for note in notes)
        is_full, is_long = count > MOST_NOTES_IN_A_STROKE, _is_long(view.tune, notes)
        if is_full or is_long:
            bars = [view.tune.bar_of[note.id] for note in notes]
            text = tr(
                LONG_STROKE[is_full, is_long],
                note=words.note_of_bar(view.tune, notes[0].id), notes=plural("1 note", "{n} notes", count),
            )  # fmt: skip
            yield Finding(
                "long-stroke", Severity.NOTE, view.numbers(bars), None,
                tuple(note.id for note in notes), sentence(text),
            )  # fmt: skip


def count(view: View) -> int:
    """Written strokes that hold two or more notes, tied notes counted as one."""
    return sum(sum(not note.held for note in notes) > 1 for notes in view.shared_strokes)


def _is_long(tune: Tune, notes: Sequence[Note]) -> bool:
    """Whether a stroke lasts longer than a bar and a half of the metre where it begins; free metre sets no limit."""
    first, stop = tune.places[notes[0].id], tune.places[notes[-1].id] + 1
    limit = _limits(tune)[ticks(tune).kinds[tune.bar_of[notes[0].id]]]
    return limit is not None and sum(ticks(tune).lengths[first:stop]) > limit


@once
def _limits(tune: Tune) -> tuple[int | None, ...]:
    """For each rhythm of ``ticks(tune)`` the most ticks of a stroke that begins in it."""
    top, bottom = LONGEST_STROKE_IN_BARS.as_integer_ratio()
    return tuple([None if rhythm.full is None else rhythm.full * top // bottom for rhythm in ticks(tune).rhythms])


@once
def _long_notes(tune: Tune) -> tuple[Note, ...]:
    """Notes that alone last longer than a stroke should; hardly any tune has one."""
    rhythms = zip(ticks(tune).rhythms, _limits(tune), strict=True)
    if all(limit is None or limit >= max(rhythm.lengths, default=0) for rhythm, limit in rhythms):
        return ()
    return tuple([note for note in tune.sequence if not note.is_rest and _is_long(tune, [note])])


def _with_cuts(note_ids: tuple[str, ...], tune: Tune, bowing: Bowing) -> Bowing:
    for note_id in note_ids:
        signs = bowing.signs_on(note_id)
        cut = Grace((upper_neighbour(tune, note_id),), slashed=True)
        bowing = set_signs(bowing, note_id, replace(signs, graces=(*signs.graces, cut)))
    return bowing
