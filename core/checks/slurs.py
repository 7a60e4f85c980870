"""Slurs that hide a note, and strokes that hold too much."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from functools import partial
from itertools import accumulate

from core.bowing import Bowing, Grace, Join, set_signs
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View, neighbours
from core.once import once
from core.ornamenting import upper_neighbour
from core.ticks import ticks
from core.tune import Tune

MOST_NOTES_IN_A_STROKE = 8  # common practice, no source: a bar of a reel
LONGEST_STROKE_IN_BARS = Fraction(3, 2)

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
            text = f"in {where}, {name} is slurred to the same note before it ({pitches}) and is not heard"
            label = f"Put a cut on {words.note_of_bar(view.tune, run[0])} ({_cut_in_words(view, run[0])})"
        else:
            text = f"in {where}, {len(run)} notes are slurred to the same note before them and are not heard"
            label = f"Put cuts on the {len(run)} notes"
        remedy = Remedy(label, partial(_with_cuts, tuple(run)))
        yield Finding(
            "equal-notes-slurred", Severity.NOTE, view.numbers(bars), None, tuple(run), words.sentence(text), (remedy,)
        )


def _cut_in_words(view: View, note_id: str) -> str:
    """Where the cut lies: a third finger has the open string above for its upper neighbour."""
    pitch = upper_neighbour(view.tune, note_id)
    return f"{pitch}, the {'open string above' if pitch.midi in view.tuning.open_keys[1:] else 'next note up'}"


def long_strokes(view: View) -> Iterator[Finding]:
    """Strokes of very many notes, or longer than a bar and a half."""
    reach = _reach(view.tune)
    for notes in view.written_strokes:
        count = sum(not note.held for note in notes)
        long = view.tune.places[notes[-1].id] > reach[view.tune.places[notes[0].id]]
        told = [f"takes {count} notes"] if count > MOST_NOTES_IN_A_STROKE else []
        told += ["lasts longer than a bar and a half"] if long else []
        if told:
            bars = [view.tune.bar_of[note.id] for note in notes]
            text = f"the stroke that begins with {words.note_of_bar(view.tune, notes[0].id)} {words.listed(told)}"
            yield Finding(
                "long-stroke", Severity.NOTE, view.numbers(bars), None,
                tuple(note.id for note in notes), words.sentence(text),
            )  # fmt: skip


def count(view: View) -> int:
    """Written strokes that hold two or more notes, tied notes counted as one."""
    return sum(sum(not note.held for note in notes) > 1 for notes in view.written_strokes)


@once
def _reach(tune: Tune) -> tuple[int, ...]:
    """For each note of ``tune.sequence`` the place of the last note that a stroke from there may hold.

    The place before the note itself where even that note is too long. Free metre sets no limit.
    """
    bars = ticks(tune).bars
    begins = [0, *accumulate(length for bar in bars for length in bar.lengths)]
    reach: list[int] = []
    for bar in bars:
        first = len(reach)
        if bar.full is None:
            reach += [len(begins)] * len(bar.lengths)
            continue
        longest = bar.full * LONGEST_STROKE_IN_BARS.numerator // LONGEST_STROKE_IN_BARS.denominator
        reach += [bisect_right(begins, begins[first + k] + longest) - 2 for k in range(len(bar.lengths))]
    return tuple(reach)


def _with_cuts(note_ids: tuple[str, ...], tune: Tune, bowing: Bowing) -> Bowing:
    for note_id in note_ids:
        signs = bowing.signs_on(note_id)
        cut = Grace((upper_neighbour(tune, note_id),), slashed=True)
        bowing = set_signs(bowing, note_id, replace(signs, graces=(*signs.graces, cut)))
    return bowing
