"""Lengths of ABC notes: the unit note length, broken rhythm and tuplets (ABC 2.1, 4.3, 4.4 and 4.13)."""

from __future__ import annotations

from fractions import Fraction

from core.reading.abc_draft import Complaints, DraftNote
from core.reading.abc_tokens import multiplier
from core.reading.limits import MAX_TUPLET
from core.translation import tr
from core.tune import Meter, Tuplet, note_value

LONGEST = Fraction(64)  # quarter notes in one note
_NORMAL = {2: 3, 3: 2, 4: 3, 6: 2, 8: 3}  # notes in the time of; for 5, 7 and 9 it depends on the metre


class Rhythm:
    """Gives notes their lengths.

    Attributes:
        unit: Unit note length in quarter notes; set it by ``set_unit``.
    """

    def __init__(self, complaints: Complaints) -> None:
        self._complaints = complaints
        self._broken: Fraction | None = None  # what the next note's length is multiplied by
        self._tuplet = (1, 1)
        self._tuplet_left = 0
        self._tuplet_opens = False
        self.set_unit(Fraction(1, 2))

    def set_unit(self, unit: Fraction) -> None:
        """Set the unit note length, in quarter notes."""
        self.unit = unit
        self._lengths: dict[str, tuple[Fraction, bool]] = {}

    def read(self, text: str) -> tuple[Fraction, bool]:
        """Length in quarter notes that a text such as ``3/2`` stands for, and whether no one note value may show it."""
        known = self._lengths.get(text)
        if known is None:
            times = multiplier(text)
            if times is None or times * self.unit > LONGEST:
                problem = tr("“{text}” is no length of a note: read as the unit note length.", text=text[:12])
                self._complaints.say(problem, once=f"length {text}")
                times = Fraction(1)
            length = times * self.unit
            known = self._lengths[text] = (length, note_value(length) is None)
        return known

    def begin_tuplet(self, actual: str, normal: str | None, count: str | None, meter: Meter) -> bool:
        """Begin a tuplet ``(p:q:r``; False where the numbers make none."""
        if any(len(number or "") > 2 for number in (actual, normal, count)):
            return False
        p = int(actual)
        q = int(normal) if normal else _NORMAL.get(p, 3 if meter.is_compound else 2)
        r = int(count) if count else p
        if not 2 <= p <= MAX_TUPLET or not 1 <= q <= MAX_TUPLET or r < 1:
            return False
        if self._tuplet_left:
            self._complaints.say(tr("A tuplet begins before the last one is full: the earlier one ends there."))
        self._tuplet, self._tuplet_left, self._tuplet_opens = (p, q), r if p != q else 0, True
        return True

    def break_rhythm(self, signs: str, before: DraftNote | None) -> bool:
        """Lengthen or shorten the note before ``>`` or ``<``, and keep the counterpart for the next one.

        Returns:
            False, and nothing changed, where the signs do not stand after a note.
        """
        if before is None or self._broken is not None or len(signs) > 3:
            return False
        short = Fraction(1, 2 ** len(signs))
        first, self._broken = (2 - short, short) if signs[0] == ">" else (short, 2 - short)
        before.length *= first
        before.doubtful = True
        return True

    def shape(self, note: DraftNote) -> None:
        """Fit a new note into the tuplet and the broken rhythm that wait for it."""
        if self._tuplet_left:
            actual, normal = self._tuplet
            note.tuplet = Tuplet(actual, normal, self._tuplet_opens)
            note.length = note.length * normal / actual
            note.doubtful = True
            self._tuplet_opens = False
            self._tuplet_left -= 1
        if self._broken is not None:
            note.length *= self._broken
            note.doubtful = True
            self._broken = None

    def end_bar(self, last: DraftNote | None) -> None:
        """Give up a tuplet that is not full, and a broken rhythm that lacks its second note."""
        if self._tuplet_left:
            self._complaints.say(tr("A tuplet has too few notes before the bar line: it ends there."))
            self._tuplet_left = 0
        if self._broken is not None and last is not None:
            self._complaints.say(tr("A broken rhythm has no second note before the bar line: it is ignored."))
            last.length /= 2 - self._broken
            self._broken = None
