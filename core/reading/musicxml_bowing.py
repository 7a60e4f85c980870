"""The bowing that a part of a MusicXML file shows: slurs, bow marks and signs on notes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import accumulate

from immutabledict import immutabledict

from core.bowing import Articulation, Bow, Bowing, Join, Mark, Signs
from core.lesson_fields import BowingFields
from core.reading.musicxml_draft import Complaints, DraftNote
from core.translation import tr
from core.tune import Tune
from core.written_bows import derived_bows, starts_stroke, struck_before

_HOOK_SIGNS = (Articulation.STACCATO, Articulation.TENUTO)
MAX_FOLLOWED = 40  # directions changed elsewhere that are followed one by one; beyond it all are taken as fixed


def read_bowing(
    tune: Tune,
    name: str,
    drafts: Sequence[tuple[DraftNote, str]],
    complaints: Complaints,
    fields: BowingFields | None,
) -> Bowing:
    """Make a bowing of what stands on the notes of a part.

    Args:
        tune: The tune that the part has.
        name: Of the bowing.
        drafts: The half-read notes in written order, each with the id of its note in the tune.
        complaints: Where problems go.
        fields: What a lesson file says of the bowing; None for the files of others.
    """
    slurs = _slurs([draft for draft, _ in drafts], complaints)
    joins = _joins(tune, drafts, slurs, complaints)
    by_id = {note_id: draft for draft, note_id in drafts}
    hooks, hook_signs = _hooks(tune, [i for i in joins if fields is None or i not in fields.slurs], by_id)
    own_dots = fields.dots if fields is not None else frozenset()
    signs = {}
    for draft, note_id in drafts:
        of_note = _signs(draft, hook_signs.get(note_id) if note_id not in own_dots else None)
        if of_note:
            signs[note_id] = of_note
    bowing = Bowing(
        name=name,
        joins=immutabledict({note_id: Join.HOOK if note_id in hooks else Join.SLUR for note_id in joins}),
        signs=immutabledict(signs),
    )
    bows = {}
    for draft, note_id in drafts:
        if draft.bows and draft.is_rest:
            complaints.once(draft.line, tr("A bow mark on a rest was left out."))
        elif draft.bows and fields is None and tune.note(note_id).held:
            complaints.once(
                draft.line, tr("A bow mark on the second note of a tie was left out: nothing is struck there.")
            )
        elif draft.bows:
            bows[note_id] = draft
    if fields is None:
        return _with_marks(bowing, {note_id: Mark(draft.bows[0]) for note_id, draft in bows.items()})
    return _apply_fields(tune, bowing, fields, bows, complaints)


# ---- slurs


def _slurs(notes: Sequence[DraftNote], complaints: Complaints) -> list[tuple[int, int, int]]:
    """First and last place of each slur, and its line, in the order in which they close."""
    opened: dict[str, tuple[int, int]] = {}
    slurs: list[tuple[int, int, int]] = []
    for place, note in enumerate(notes):
        ends = [end for end in note.slurs if end.on_grace]
        own = [end for end in note.slurs if not end.on_grace]
        ends += [end for end in own if end.type == "stop"] + [end for end in own if end.type == "start"]
        for end in ends:
            if end.type == "stop":
                if end.number in opened:
                    first, line = opened.pop(end.number)
                    slurs.append((first, place, line))
                else:
                    complaints.once(end.line, tr("A slur that ends without having begun was left out."))
            else:
                if end.number in opened:
                    complaints.once(opened[end.number][1], tr("A slur that never ends was left out."))
                opened[end.number] = (place, end.line)
    for _, line in opened.values():
        complaints.once(line, tr("A slur that never ends was left out."))
    return [slur for slur in slurs if slur[1] > slur[0]]  # one on a note and its graces joins nothing


def _joins(
    tune: Tune,
    drafts: Sequence[tuple[DraftNote, str]],
    slurs: Sequence[tuple[int, int, int]],
    complaints: Complaints,
) -> list[str]:
    """Ids of the notes that slurs join to the note before them, in written order; a slur over a rest ends before it."""
    notes = [draft for draft, _ in drafts]
    next_rest = [len(notes)] * (len(notes) + 1)
    for place in range(len(notes) - 1, -1, -1):
        next_rest[place] = place if notes[place].is_rest else next_rest[place + 1]
    lasts = {last for _, last, _ in slurs}
    change = [0] * (len(notes) + 1)  # how many slurs begin or end to cover each note
    for first, last, line in slurs:
        if first in lasts:
            complaints.once(line, tr("A slur begins on the note where another ends: both are read as one stroke."))
        if notes[first].is_rest:
            complaints.once(line, tr("A slur begins on a rest: it is read from the note after it."))
            first += 1
        stop = min(last + 1, next_rest[first])
        if stop <= last:
            complaints.once(line, tr("A slur runs over a rest: it is read as ending before the rest."))
        if stop > first + 1:
            change[first + 1] += 1
            change[stop] -= 1
    covered = zip(drafts, accumulate(change[:-1]), strict=True)
    return [note_id for (_, note_id), count in covered if count and not tune.note(note_id).held]


def _hooks(
    tune: Tune, joins: Sequence[str], drafts: Mapping[str, DraftNote]
) -> tuple[frozenset[str], dict[str, Articulation]]:
    """Ids of the joined notes that have a dot or a line, as has the note struck before them (rule B9).

    Returns:
        The ids, and by note id the sign that only says so.
    """
    hooks: set[str] = set()
    signs: dict[str, Articulation] = {}
    for note_id in joins:
        before = struck_before(tune, note_id)
        if before is None or before.id not in drafts:
            continue
        for sign in _HOOK_SIGNS:
            if sign in drafts[note_id].articulations and sign in drafts[before.id].articulations:
                hooks.add(note_id)
                signs[note_id] = signs[before.id] = sign
                break
    return frozenset(hooks), signs


# ---- signs


def _signs(draft: DraftNote, hook_sign: Articulation | None) -> Signs:
    articulations = tuple(sign for sign in draft.articulations if sign is not hook_sign)
    return Signs(tuple(draft.graces), tuple(draft.ornaments), articulations, tuple(draft.fingerings))


def _with_marks(bowing: Bowing, marks: Mapping[str, Mark]) -> Bowing:
    return replace(bowing, marks=immutabledict(marks))


# ---- files of ours


def _apply_fields(
    tune: Tune, bowing: Bowing, fields: BowingFields, bows: Mapping[str, DraftNote], complaints: Complaints
) -> Bowing:
    """Put in what a lesson file says beside the notes; where its notes say otherwise, the notes are right.

    A file that another program changed may have lost notes and marks, or have marks of its own: those that do not
    follow from the fixed ones become fixed. Where no bow mark at all is left, the program knew none: then the fixed
    ones are kept.
    """
    marks = {}
    if fields.marks and not bows:
        complaints.say(
            0, tr("“{name}”: its notes have lost all bow marks; those that were fixed are kept.", name=bowing.name[:40])
        )
    for note_id, mark in fields.marks.items():
        if note_id in bows or (not bows and note_id in tune.places and not tune.note(note_id).is_rest):
            marks[note_id] = mark
        elif note_id in tune.places:
            complaints.say(
                0,
                tr(
                    "“{name}”: the fixed bow mark of {note} is gone from the notes.",
                    name=bowing.name[:40],
                    note=_where(tune, note_id),
                ),
            )
    retakes = frozenset(i for i in fields.retakes if i in tune.places and i not in bowing.joins and i not in marks)
    changes = immutabledict({bar: plan for bar, plan in fields.accent_changes.items() if bar < len(tune.bars)})
    bowing = replace(
        bowing, marks=immutabledict(marks), retakes=retakes, accents=fields.accents, accent_changes=changes
    )
    return _fix_foreign_bows(tune, bowing, bows, complaints)


def _fix_foreign_bows(tune: Tune, bowing: Bowing, bows: Mapping[str, DraftNote], complaints: Complaints) -> Bowing:
    """Fix each shown direction that does not follow from those fixed before it in the tune."""
    places = tune.places
    shown: dict[str, Bow] = {}
    for note_id in sorted(bows, key=places.__getitem__):
        if note_id in bowing.marks or starts_stroke(bowing, tune.note(note_id)):
            shown[note_id] = bows[note_id].bows[0]
        else:
            complaints.once(bows[note_id].line, tr("A bow mark inside a stroke was left out."))
    for attempt in range(MAX_FOLLOWED + 1):
        told = derived_bows(tune, bowing) | {note_id: mark.bow for note_id, mark in bowing.marks.items()}
        new = [note_id for note_id, bow in shown.items() if told.get(note_id) is not bow]
        if not new:
            break
        for note_id in new if attempt == MAX_FOLLOWED else new[:1]:
            bow = shown[note_id]
            complaints.say(
                bows[note_id].line,
                tr(
                    "“{name}”: the down-bow of {note} does not follow from the strokes before it; it is taken as fixed."
                    if bow is Bow.DOWN
                    else "“{name}”: the up-bow of {note} does not follow from the strokes before it; it is taken as "
                    "fixed.",
                    name=bowing.name[:40],
                    note=_where(tune, note_id),
                ),
            )
            marks, retakes = bowing.marks.set(note_id, Mark(bow)), bowing.retakes - {note_id}
            bowing = replace(bowing, marks=marks, retakes=retakes)
    return bowing


def _where(tune: Tune, note_id: str) -> str:
    bar = tune.bars[tune.bar_of[note_id]]
    place = next(place for place, note in enumerate(bar.notes, start=1) if note.id == note_id)
    return tr("note {place} in bar {bar}", place=place, bar=bar.number)
