"""The bowing that a part of a MusicXML file shows: slurs, bow marks and signs on notes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from immutabledict import immutabledict

from core.bowing import Articulation, Bowing, Join, Mark, Signs
from core.lesson_fields import BowingFields
from core.reading.musicxml_draft import Complaints, DraftNote
from core.tune import Note, Tune
from core.written_bows import derived_bows

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
    dotted = {note_id for draft, note_id in drafts if Articulation.STACCATO in draft.articulations}
    hooks = _hooks(tune, joins, dotted)
    if fields is not None:
        hooks &= fields.hooks
    sides = hooks | {before.id for note_id in hooks if (before := _sounding_before(tune, note_id, dotted))}
    dots = fields.dots if fields is not None else frozenset()
    signs = {}
    for draft, note_id in drafts:
        of_note = _signs(draft, keeps_dot=note_id not in sides or note_id in dots)
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
            complaints.once(draft.line, "A bow mark on a rest was left out.")
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
                    complaints.once(end.line, "A slur that ends without having begun was left out.")
            else:
                if end.number in opened:
                    complaints.once(opened[end.number][1], "A slur that never ends was left out.")
                opened[end.number] = (place, end.line)
    for _, line in opened.values():
        complaints.once(line, "A slur that never ends was left out.")
    return [slur for slur in slurs if slur[1] > slur[0]]  # one on a note and its graces joins nothing


def _joins(
    tune: Tune,
    drafts: Sequence[tuple[DraftNote, str]],
    slurs: Sequence[tuple[int, int, int]],
    complaints: Complaints,
) -> list[str]:
    """Ids of the notes that slurs join to the note before them, in written order."""
    lasts = {last for _, last, _ in slurs}
    joined: set[str] = set()
    for first, last, line in slurs:
        if first in lasts:
            complaints.once(line, "Two slurs meet on one note: they are read as one stroke.")
        over_rest = False
        for _, note_id in drafts[first : last + 1]:
            note, before = tune.note(note_id), tune.before(note_id)
            over_rest |= note.is_rest
            if note_id == drafts[first][1] or note.is_rest or before is None or before.is_rest or note.held:
                continue
            joined.add(note_id)
        if over_rest:
            complaints.once(line, "A slur over a rest was broken there.")
    return [note_id for _, note_id in drafts if note_id in joined]


def _hooks(tune: Tune, joins: Sequence[str], dotted: set[str]) -> frozenset[str]:
    """Ids of joined notes that have a dot, as has the note before them: a stop between, in one stroke (rule B9)."""
    return frozenset(
        note_id for note_id in joins if note_id in dotted and _sounding_before(tune, note_id, dotted) is not None
    )


def _sounding_before(tune: Tune, note_id: str, dotted: set[str]) -> Note | None:
    """The dotted note that sounds just before this one: the one written there, or the one it is held on from."""
    before = tune.before(note_id)
    while before is not None and before.id not in dotted and before.held:
        before = tune.before(before.id)
    return before if before is not None and before.id in dotted else None


# ---- signs


def _signs(draft: DraftNote, keeps_dot: bool) -> Signs:
    articulations = tuple(
        sign for sign in draft.articulations if keeps_dot or sign is not Articulation.STACCATO
    )
    return Signs(tuple(draft.graces), tuple(draft.ornaments), articulations, tuple(draft.fingerings))


def _with_marks(bowing: Bowing, marks: Mapping[str, Mark]) -> Bowing:
    return Bowing(
        bowing.name, bowing.joins, immutabledict(marks), bowing.retakes, bowing.signs, bowing.accents
    )


# ---- files of ours


def _apply_fields(
    tune: Tune, bowing: Bowing, fields: BowingFields, bows: Mapping[str, DraftNote], complaints: Complaints
) -> Bowing:
    """Put in what a lesson file says beside the notes; where its notes say otherwise, the notes are right.

    A file that another program changed may have lost notes and marks, or have marks of its own: those that do not
    follow from the fixed ones become fixed.
    """
    marks = {}
    for note_id, mark in fields.marks.items():
        if note_id in bows:
            marks[note_id] = mark
        elif note_id in tune.places:
            complaints.say(0, f"“{bowing.name}”: the fixed bow mark of {_where(tune, note_id)} is gone from the notes.")
    retakes = frozenset(i for i in fields.retakes if i in tune.places and i not in bowing.joins and i not in marks)
    bowing = Bowing(bowing.name, bowing.joins, immutabledict(marks), retakes, bowing.signs, fields.accents)
    return _fix_foreign_bows(tune, bowing, bows, complaints)


def _fix_foreign_bows(
    tune: Tune, bowing: Bowing, bows: Mapping[str, DraftNote], complaints: Complaints
) -> Bowing:
    """Fix each shown direction that does not follow from those fixed before it in the tune."""
    order = sorted(bows, key=tune.places.__getitem__)
    for attempt in range(MAX_FOLLOWED + 1):
        derived = derived_bows(tune, bowing)
        told = {note_id: mark.bow for note_id, mark in bowing.marks.items()}
        new = [note_id for note_id in order if (told | derived | told).get(note_id) is not bows[note_id].bows[0]]
        if not new:
            break
        for note_id in new if attempt == MAX_FOLLOWED else new[:1]:
            bow = bows[note_id].bows[0]
            complaints.say(
                bows[note_id].line,
                f"“{bowing.name}”: the {bow.value}-bow of {_where(tune, note_id)} does not follow from the strokes "
                "before it; it is taken as fixed.",
            )
            bowing = Bowing(
                bowing.name, bowing.joins, bowing.marks.set(note_id, Mark(bow)), bowing.retakes - {note_id},
                bowing.signs, bowing.accents,
            )  # fmt: skip
    return bowing


def _where(tune: Tune, note_id: str) -> str:
    bar = tune.bars[tune.bar_of[note_id]]
    place = next(place for place, note in enumerate(bar.notes, start=1) if note.id == note_id)
    return f"note {place} in bar {bar.number}"
