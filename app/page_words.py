"""What the page says of its notes, in sentences: for the status line, the tool tip and assistive technology. No Qt."""

from __future__ import annotations

from app.accent_strip import Place, onset, place_text
from app.difference_words import count_text, difference_text
from app.note_words import describe_note
from app.page_rows import Row, Rows
from core.translation import tr


def comparison_text(rows: Rows) -> str:
    """How much tells each bowing from the reference; "" where nothing is compared."""
    if rows.reference is None:
        return ""
    reference = rows.rows[rows.reference]
    told = (row for row in rows.rows if row is not reference)
    return " ".join(f"{row.name}: {count_text([*row.differences.values()], reference.name)}" for row in told)


def note_text(rows: Rows, index: int, note_id: str, change: str = "") -> str:
    """All there is to say of a note of a row.

    Args:
        rows: The bowings on the page.
        index: Of the row.
        note_id: The note.
        change: What a plan would change in its bar; "" for nothing.
    """
    row = rows.rows[index]
    words = describe_note(row.here, note_id)
    accent = row.accents.get(onset(row.here.tune, note_id))
    words = words if accent is None else tr("{note}; accent {how}", note=words, how=accent.says)
    words = words if len(rows.rows) == 1 else f"{row.name}. {words}"
    return ". ".join(filter(None, [words, change, apart_text(rows, index, note_id)]))


def apart_text(rows: Rows, index: int, note_id: str) -> str:
    """What tells a note of a row from that of the reference; "" for nothing."""
    row = rows.rows[index]
    if rows.reference is None or note_id not in row.differences:
        return ""
    return difference_text(row.here.tune, note_id, row.differences[note_id], rows.rows[rows.reference].name)


def accent_text(row: Row, place: Place) -> str:
    """How the accent at a place is met; "" where none is."""
    if place not in row.accents:
        return ""
    where = place_text(row.here.tune, place)
    return tr("{place}: the accent is {how}.", place=where[:1].upper() + where[1:], how=row.accents[place].says)
