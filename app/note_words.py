"""Notes in words: where one stands, from where to where some reach, and all there is to say of one. No Qt."""

from __future__ import annotations

from app.here import Here
from core.bowing import Join, stroke_start
from core.checks.words import bow_name
from core.translation import listed, tr
from core.tune import Tune

SHARPS_AND_FLATS = {-2: "𝄫", -1: "♭", 0: "", 1: "♯", 2: "𝄪"}


def notes_between(tune: Tune, first_id: str, last_id: str) -> tuple[str, ...]:
    """Ids of all notes and rests from first to last, in written order."""
    first_id, last_id = in_order(tune, first_id, last_id)
    return tuple(note.id for note in tune.sequence[tune.places[first_id] : tune.places[last_id] + 1])


def number_in_bar(tune: Tune, note_id: str) -> int:
    """How manieth note of its bar it is, from 1; rests are not counted, held notes are."""
    bar = tune.bars[tune.bar_of[note_id]]
    notes = [note.id for note in bar.notes if not note.is_rest]
    return notes.index(note_id) + 1 if note_id in notes else 1


def place_text(tune: Tune, note_id: str) -> str:
    """Where a note stands, as "bar 3, note 2" or "pick-up, note 1"."""
    if tune.note(note_id).is_rest:
        return tr("{bar}, rest", bar=_bar_text(tune, note_id))
    return tr("{bar}, note {number}", bar=_bar_text(tune, note_id), number=number_in_bar(tune, note_id))


def span_text(tune: Tune, first_id: str, last_id: str) -> str:
    """Where a row of notes stands, as "bar 3, notes 1–2" or "bar 3, note 8 to bar 4, note 1"."""
    if first_id == last_id:
        return place_text(tune, first_id)
    if tune.bar_of[first_id] == tune.bar_of[last_id]:
        return tr(
            "{bar}, notes {first}–{last}", bar=_bar_text(tune, first_id),
            first=number_in_bar(tune, first_id), last=number_in_bar(tune, last_id),
        )  # fmt: skip
    return tr("{first} to {last}", "notes", first=place_text(tune, first_id), last=place_text(tune, last_id))


def _bar_text(tune: Tune, note_id: str) -> str:
    number = tune.bars[tune.bar_of[note_id]].number
    return tr("bar {number}", number=number) if number else tr("pick-up")


def describe_note(here: Here, note_id: str) -> str:
    """A note in words, for the status line and for screen readers."""
    note = here.tune.note(note_id)
    place, comma = place_text(here.tune, note_id), tr(", ", "between parts of a sentence")
    if note.is_rest:
        return place[:1].upper() + place[1:]
    pitches = listed([f"{p.step}{SHARPS_AND_FLATS[p.alter]}{p.octave}" for p in note.pitches])
    bows = here.strokes.bows.get(note_id, ())
    if len(set(bows)) > 1:
        bow = comma.join(
            tr("{bow} on pass {number}", bow=bow_name(b), number=number) for number, b in enumerate(bows, 1)
        )
    else:
        bow = bow_name(bows[0]) if bows else tr("never played")
    words = [pitches, bow]
    start = stroke_start(here.tune, here.bowing, note_id).id
    if note.held:
        words.append(tr("held from the note before"))
    elif note_id in here.bowing.joins:
        is_slur = here.bowing.joins[note_id] is Join.SLUR
        words.append(tr("slurred to the note before") if is_slur else tr("hooked to the note before"))
    after = here.tune.after(note_id)
    if after is not None and after.id in here.bowing.joins:
        is_slur = here.bowing.joins[after.id] is Join.SLUR
        words.append(tr("slurred to the next") if is_slur else tr("hooked to the next"))
    mark = here.bowing.marks.get(start)
    if mark is not None:
        words.append(tr("fixed") if mark.only_pass is None else tr("fixed on pass {number}", number=mark.only_pass))
    if start in here.bowing.retakes:
        words.append(tr("retaken"))
    return tr("{place}: {what}", place=place[:1].upper() + place[1:], what=comma.join(words))


def in_order(tune: Tune, first_id: str, last_id: str) -> tuple[str, str]:
    """Two notes, by id, in written order."""
    return (first_id, last_id) if tune.places[first_id] <= tune.places[last_id] else (last_id, first_id)
