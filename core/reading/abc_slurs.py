"""Slurs and ties as they open and close while notes are read (ABC 2.1, 4.11 and 4.12)."""

from __future__ import annotations

from core.reading.abc_draft import Complaints, DraftNote
from core.reading.abc_pitches import NO_PITCHES
from core.translation import tr
from core.tune import Pitch


class Slurs:
    """Keeps account of open slurs and of the tie that leads to the next note.

    Attributes:
        found: First and last note of each slur that has ended, as places among all notes and rests, and the line.
        tie: Pitches that a tie leads from; empty where there is none.
    """

    def __init__(self, complaints: Complaints) -> None:
        self.found: list[tuple[int, int, int]] = []
        self.tie: frozenset[Pitch] = NO_PITCHES
        self._complaints = complaints
        self._open: list[tuple[int, int]] = []  # place of the first note, line
        self._opens = 0  # on the next note
        self._closes = 0  # on the next note, among its grace notes

    def open(self) -> None:
        """Begin a slur on the next note."""
        self._opens += 1

    def take_back(self) -> None:
        """Forget the slur opened last: it held grace notes only."""
        self._opens -= 1

    def close_on_next(self) -> None:
        """End a slur on the next note: its bracket closes among that note's grace notes."""
        self._closes += 1

    def close(self, place: int, note: DraftNote | None) -> None:
        """End the innermost slur on the last note.

        Where another slur begins on that very note, ``(c d (e) f g a)``, the one before it ends: both are one stroke
        of the bow, since directions could not differ on the note that they share.

        Args:
            place: Of the last note among all notes and rests.
            note: That note, None before the first.
        """
        if note is None or not self._open:
            if self._opens:
                self._opens -= 1
                self._complaints.say(tr("A slur holds no notes: it is left out."))
            else:
                self._complaints.say(tr("A slur ends here that never began: it is left out."))
            return
        first, line = self._open.pop()
        if first == place and self._open and self._open[-1][0] != place and not note.graces:
            first, line = self._open[-1]
            self._open[-1] = (place, self._complaints.line)
            self._complaints.say(tr("A slur ends on the note where the next begins: both are read as one stroke."))
        if first < place:
            self.found.append((first, place, line))
        elif not note.graces:
            self._complaints.say(tr("A slur holds one note only: it is left out."))

    def end_tie(self, place: int, note: DraftNote, before: DraftNote | None) -> None:
        """Let a new note, at its place, end the tie that leads to it."""
        tie, self.tie = self.tie, NO_PITCHES
        if before is None or not note.pitches:
            self._complaints.say(tr("A tie leads to a rest: it is left out."))
        elif tie == frozenset(note.pitches) == frozenset(before.pitches):
            note.held = True
        else:
            text = tr("A tie joins notes that are not the same: it and any like it are read as slurs.")
            self._complaints.say(text, once="tie as slur")
            self.found.append((place - 1, place, self._complaints.line))

    def take(self, place: int, note: DraftNote) -> None:
        """Begin and end on a new note, at its place, the slurs that wait for it."""
        if self._opens:
            self._open += [(place, self._complaints.line)] * self._opens
            self._opens = 0
        if self._closes:
            closes, self._closes = self._closes, 0
            for _ in range(min(closes, len(self._open))):
                self.close(place, note)

    def finish(self) -> None:
        """Tell what is still open at the end of the tune."""
        for _, line in self._open:
            self._complaints.say(tr("A slur begins here and never ends: it is left out."), line=line)
        if self._opens:
            self._complaints.say(tr("A slur begins after the last note: it is left out."))
        if self.tie:
            self._complaints.say(tr("A tie leads from the last note to nothing: it is left out."))
