"""Notes in words: where one stands, from where to where some reach, and all there is to say of one. No Qt."""

from __future__ import annotations

from app.here import Here
from core.bowing import Join, stroke_start
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
    what = "rest" if tune.note(note_id).is_rest else f"note {number_in_bar(tune, note_id)}"
    return f"{_bar_text(tune, note_id)}, {what}"


def span_text(tune: Tune, first_id: str, last_id: str) -> str:
    """Where a row of notes stands, as "bar 3, notes 1–2" or "bar 3, note 8 to bar 4, note 1"."""
    if first_id == last_id:
        return place_text(tune, first_id)
    if tune.bar_of[first_id] == tune.bar_of[last_id]:
        numbers = f"{number_in_bar(tune, first_id)}–{number_in_bar(tune, last_id)}"
        return f"{_bar_text(tune, first_id)}, notes {numbers}"
    return f"{place_text(tune, first_id)} to {place_text(tune, last_id)}"


def _bar_text(tune: Tune, note_id: str) -> str:
    number = tune.bars[tune.bar_of[note_id]].number
    return f"bar {number}" if number else "pick-up"


def describe_note(here: Here, note_id: str) -> str:
    """A note in words, for the status line and for screen readers."""
    note = here.tune.note(note_id)
    place = place_text(here.tune, note_id)
    if note.is_rest:
        return place.capitalize()
    pitches = " and ".join(f"{p.step}{SHARPS_AND_FLATS[p.alter]}{p.octave}" for p in note.pitches)
    bows = here.strokes.bows.get(note_id, ())
    if len(set(bows)) > 1:
        bow = ", ".join(f"{b.value}-bow on pass {number}" for number, b in enumerate(bows, 1))
    else:
        bow = f"{bows[0].value}-bow" if bows else "never played"
    words = [f"{pitches}, {bow}"]
    start = stroke_start(here.tune, here.bowing, note_id).id
    if note.held:
        words.append("held from the note before")
    elif note_id in here.bowing.joins:
        how = "slurred" if here.bowing.joins[note_id] is Join.SLUR else "hooked"
        words.append(f"{how} to the note before")
    after = here.tune.after(note_id)
    if after is not None and after.id in here.bowing.joins:
        words.append("slurred to the next" if here.bowing.joins[after.id] is Join.SLUR else "hooked to the next")
    mark = here.bowing.marks.get(start)
    if mark is not None:
        words.append("fixed" if mark.only_pass is None else f"fixed on pass {mark.only_pass}")
    if start in here.bowing.retakes:
        words.append("retaken")
    return f"{place.capitalize()}: {', '.join(words)}"


def in_order(tune: Tune, first_id: str, last_id: str) -> tuple[str, str]:
    """Two notes, by id, in written order."""
    return (first_id, last_id) if tune.places[first_id] <= tune.places[last_id] else (last_id, first_id)
