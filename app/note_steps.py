"""Where the arrow keys, Home and End take the focus note."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import Qt

from app.page_layout import PageLayout
from core.tune import Tune

Step = Callable[[PageLayout, Tune, str], str]  # from a note (by id) to a note


def _stops(layout: PageLayout, tune: Tune, line: int | None = None) -> list[str]:
    """Ids of the notes (rests left out) that the keyboard stops at, of one line or of the tune."""
    notes = [note.id for note in tune.sequence if not note.is_rest]
    return notes if line is None else [note for note in notes if layout.line_of[note] == line]


def _beside(step: int) -> Step:
    def go(layout: PageLayout, tune: Tune, note_id: str) -> str:
        stops = _stops(layout, tune)
        place = tune.places[note_id]
        if step > 0:
            return next((stop for stop in stops if tune.places[stop] > place), note_id)
        return next((stop for stop in reversed(stops) if tune.places[stop] < place), note_id)

    return go


def _over(step: int) -> Step:
    """The note of the line above or below that stands nearest; lines without notes are stepped over."""

    def go(layout: PageLayout, tune: Tune, note_id: str) -> str:
        placed = layout.lines[layout.line_of[note_id]]
        line = layout.line_of[note_id] + step
        while 0 <= line < len(layout.lines):
            stops = _stops(layout, tune, line)
            heads = layout.lines[line].heads()
            if stops and placed.picture is not None:
                x = placed.picture.heads[note_id].x
                return min(stops, key=lambda stop: abs(heads[stop] - x)) if heads else stops[0]
            line += step
        return note_id

    return go


def _end(place: int, *, of_line: bool) -> Step:
    def go(layout: PageLayout, tune: Tune, note_id: str) -> str:
        stops = _stops(layout, tune, layout.line_of[note_id] if of_line else None)
        return stops[place] if stops else note_id

    return go


STEPS: Mapping[tuple[int, bool], Step] = {  # (key, Ctrl held) -> the note to go to
    (Qt.Key.Key_Right, False): _beside(1),
    (Qt.Key.Key_Left, False): _beside(-1),
    (Qt.Key.Key_Down, False): _over(1),
    (Qt.Key.Key_Up, False): _over(-1),
    (Qt.Key.Key_Home, False): _end(0, of_line=True),
    (Qt.Key.Key_End, False): _end(-1, of_line=True),
    (Qt.Key.Key_Home, True): _end(0, of_line=False),
    (Qt.Key.Key_End, True): _end(-1, of_line=False),
}


def beside_row(key: int, layouts: Sequence[PageLayout], tune: Tune, note_id: str, row: int) -> tuple[str, int] | None:
    """Where Up and Down go from a note where bowings are stacked: the same note of the bowing above or below, and from
    the last bowing of a line to the first of the next.

    Args:
        key: The key.
        layouts: Of each bowing.
        tune: The tune.
        note_id: The note.
        row: Index of its bowing.
    Returns:
        A note and the index of its bowing; None for another key.
    """
    step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(key))
    if step is None:
        return None
    if 0 <= row + step < len(layouts):
        return note_id, row + step
    goal = _over(step)(layouts[row], tune, note_id)
    return (goal, row) if goal == note_id else (goal, 0 if step > 0 else len(layouts) - 1)
