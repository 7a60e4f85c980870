"""What ABC shows of strokes: slur brackets, the dots of hooked notes, and bow marks.

Hooked notes are slurred notes with dots (``core.reading.abc_bars``). Where a dot would say more than that, because a
note beside it has one of its own, the line of tenuto stands in its place.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from itertools import pairwise

from immutabledict import immutabledict

from core.bowing import Articulation, Bow, Bowing, Join, Mark
from core.engraving.bow_signs import MarkDensity, bow_signs
from core.strokes import work_out
from core.tune import Note, Tune
from core.values import dataclass
from core.written_bows import derived_bows

HOOK_SIGNS = (Articulation.STACCATO, Articulation.TENUTO)


@dataclass(frozen=True)
class WrittenStrokes:
    """What stands on notes, all by note id.

    Attributes:
        opens, closes: Notes before which a slur opens, and behind which it closes.
        ties: Notes from which a tie leads to the next one.
        hooks: Sign that a hooked note, or the one before it, has for that alone.
        bows: Bow marks.
    """

    opens: frozenset[str]
    closes: frozenset[str]
    ties: frozenset[str]
    hooks: Mapping[str, Articulation]
    bows: Mapping[str, Bow]


def written_strokes(tune: Tune, bowing: Bowing, density: MarkDensity | None) -> WrittenStrokes:
    """What is written of the strokes of a bowing.

    Args:
        tune: The tune.
        bowing: One of its bowings.
        density: Which strokes have a bow mark beside those that the player fixed; None for no others.
    """
    opens, closes = set(), set()
    ties = {before.id for before, note in pairwise(tune.sequence) if is_tied(before, note)}
    for stroke in _strokes(tune, bowing):
        if any(_joins(bowing, before, note) for before, note in pairwise(stroke)):
            opens.add(stroke[0].id)
            closes.add(stroke[-1].id)
    return WrittenStrokes(
        frozenset(opens), frozenset(closes), frozenset(ties), _hook_signs(tune, bowing), _bows(tune, bowing, density)
    )


def is_tied(before: Note, note: Note) -> bool:
    """Whether ABC can tie two notes: the second is held, and all pitches are the same (ABC 2.1, 4.11)."""
    return note.held and not note.is_rest and frozenset(note.pitches) == frozenset(before.pitches)


def _joins(bowing: Bowing, before: Note, note: Note) -> bool:
    return note.id in bowing.joins or (note.held and not is_tied(before, note))


def _strokes(tune: Tune, bowing: Bowing) -> list[list[Note]]:
    strokes: list[list[Note]] = []
    for note in tune.sequence:
        if strokes and not note.is_rest and (note.held or note.id in bowing.joins):
            strokes[-1].append(note)
        else:
            strokes.append([note])
    return strokes


def _hook_signs(tune: Tune, bowing: Bowing) -> dict[str, Articulation]:
    signs: dict[str, Articulation] = {}
    for stroke in _strokes(tune, bowing):
        struck = [note for note in stroke if not note.held]
        first = 0
        while first < len(struck):
            stop = first + 1
            while stop < len(struck) and bowing.joins.get(struck[stop].id) is Join.HOOK:
                stop += 1
            if stop - first > 1:
                beside = struck[max(first - 1, 0) : stop + 1]  # slurred to the hooked notes, or hooked themselves
                taken = {signs.get(note.id) for note in beside}
                taken.update(sign for note in beside for sign in bowing.signs_on(note.id).articulations)
                sign = next((sign for sign in HOOK_SIGNS if sign not in taken), HOOK_SIGNS[0])
                signs.update((note.id, sign) for note in struck[first:stop])
            first = stop
    return signs


def _bows(tune: Tune, bowing: Bowing, density: MarkDensity | None) -> dict[str, Bow]:
    shown = bow_signs(tune, bowing, work_out(tune, bowing), density) if density else {}
    bows = {note_id: sign.bows[0] for note_id, sign in shown.items() if len(sign.bows) == 1}
    bows |= {note_id: mark.bow for note_id, mark in bowing.marks.items() if mark.only_pass is None}
    if bowing.retakes:
        bows |= _fixed_retakes(tune, bowing)
    return bows


def _fixed_retakes(tune: Tune, bowing: Bowing) -> dict[str, Bow]:
    """Marks that say what retakes do, for ABC has no sign for them; a retake that turns with the passes has none.

    Where a mark in the opening would turn the first stroke round (rule B6), that stroke is marked too.
    """
    derived = derived_bows(tune, bowing)
    fixed = {note_id: derived[note_id] for note_id in bowing.retakes if note_id in derived}
    marks = bowing.marks | {note_id: Mark(bow) for note_id, bow in fixed.items()}
    as_written = replace(bowing, marks=immutabledict(marks), retakes=bowing.retakes - set(fixed))
    first = next((note.id for note in tune.sequence if not note.is_rest), "")
    if first in derived and work_out(tune, as_written).bows != work_out(tune, bowing).bows:
        fixed[first] = derived[first]
    return fixed
