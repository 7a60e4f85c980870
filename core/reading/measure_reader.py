"""The measures of one MusicXML part: elements in, a draft of measures out.

This module keeps the time: divisions, the place reached in the measure, voices, and what one measure hands on to the
next. What a note, a direction or a bar line says is read by modules of their own. Nothing here raises on any document.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction

from lxml import etree

from core.lesson_fields import BarFacts, TuneFields
from core.reading.barline_reader import BarlineReader
from core.reading.direction_reader import DirectionReader
from core.reading.left_out import tell_left_out
from core.reading.limits import MAX_BARS, MAX_DIGITS, MAX_GRACES, MAX_NOTES, MAX_NOTES_IN_SCORE, MAX_PLACES
from core.reading.musicxml_attributes import CLEF_G, FREE, NO_KEY, read_key, read_meter
from core.reading.musicxml_draft import Complaints, DraftGrace, DraftMeasure, DraftNote, DraftPart
from core.reading.note_lengths import LONGEST, SHORTEST
from core.reading.note_reader import Children, NoteReader
from core.reading.xml_tree import decimal_number, first_children, text_of
from core.translation import tr
from core.tune import Key, Meter

_MAX_READ = 4 * MAX_NOTES  # in all voices of a measure


class Budget:
    """How many more notes are read of a score."""

    def __init__(self, notes: int = MAX_NOTES_IN_SCORE) -> None:
        self.notes = notes


class MeasureReader:
    """Reads the measures of one part one after the other.

    Attributes:
        part: The draft so far.
    """

    def __init__(
        self, part: DraftPart, complaints: Complaints, fields: TuneFields, is_ours: bool, budget: Budget
    ) -> None:
        self.part = part
        self._budget = budget
        self._complaints = complaints
        self._fields = fields
        self._is_ours = is_ours
        self._notes = NoteReader(complaints)
        self._directions = DirectionReader(part, complaints, is_ours)
        self._barlines = BarlineReader(complaints)
        self._divisions = Fraction(1)
        self._meter: Meter = FREE
        self._key: Key = NO_KEY
        self._next: dict[str, object] = {}  # attributes that the measure before gives to the next one
        self._graces: dict[str, list[DraftGrace]] = {}  # by voice, waiting for their note
        self._cursor = Fraction(0)
        self._count = 0  # notes in the measure
        self._last: DraftNote | None = None
        self._measure = DraftMeasure(0, "", "", False, BarFacts(), meter=FREE, key=NO_KEY)
        self._music: dict[str, Callable[[etree._Element], None]] = {
            "attributes": self._read_attributes,
            "note": self._read_note,
            "backup": self._read_backup,
            "forward": self._read_forward,
            "barline": self._read_barline,
            "direction": lambda element: self._directions.direction(element, self._measure, self._place(element)),
            "harmony": lambda element: self._directions.harmony(element, self._measure, self._place(element)),
            "sound": lambda element: self._directions.sound(element, self._measure, self._place(element)),
        }

    def read(self, attributes: etree._Element, music: Iterable[etree._Element]) -> None:
        """Read one measure.

        Args:
            attributes: The element with the measure's attributes.
            music: Its elements (the same element's children, or those of a part inside it).
        """
        if len(self.part.measures) >= MAX_BARS:
            self._once(attributes, tr("A part has more than {most} measures: the rest was left out.", most=MAX_BARS))
            return
        if self._budget.notes <= 0:
            self._once(
                attributes, tr("The score has more than {most} notes: the rest was left out.", most=MAX_NOTES_IN_SCORE)
            )
            return
        text = attributes.get("number") or ""
        self._measure = DraftMeasure(
            line=attributes.sourceline or 0,
            number=text.strip(),
            shown=(attributes.get("text") or "").strip(),
            implicit=attributes.get("implicit") == "yes",
            meter=self._meter,
            key=self._key,
            facts=self._fields.bars.get(text, BarFacts()),
        )
        for name, value in self._next.items():
            setattr(self._measure, name, value)
        self._next = {}
        self._cursor = Fraction(0)
        self._count, self._last = 0, None
        self.part.measures.append(self._measure)
        for element in music:
            read = self._music.get(element.tag)
            if read is not None:
                read(element)
            else:
                tell_left_out(self._complaints, element)
        self._place_signs()

    def _place_signs(self) -> None:
        """Give the signs over the measure to it, or to the next one where they stand at its end."""
        for at, name, value in self._measure.signs:
            if 0 < self._measure.end <= at:
                self._next[name] = value
            else:
                setattr(self._measure, name, value)

    def finish(self) -> None:
        """Tell what waited for a note that never came."""
        for graces in self._graces.values():
            for grace in graces[:1]:
                text = tr("Grace notes after the last note have none to lead to: they were left out.")
                self._complaints.once(grace.line, text)

    def _once(self, element: etree._Element, text: str) -> None:
        self._complaints.once(element.sourceline or 0, text)

    # attributes

    def _read_attributes(self, element: etree._Element) -> None:
        for child in element:
            first_staff = child.get("number", "1") == "1"
            match child.tag:
                case "divisions":
                    value = decimal_number(child.text, MAX_DIGITS)
                    if value is None or value <= 0:
                        self._once(
                            child,
                            tr("“{text}” is no number of divisions: it was ignored.", text=(child.text or "")[:20]),
                        )
                    else:
                        self._divisions = value
                case "key" if first_staff:
                    self._set_key(child)
                case "time" if first_staff:
                    self._set_meter(child)
                case "clef" if first_staff:
                    if (child.findtext("sign") or "").strip() not in CLEF_G:
                        self._once(
                            child, tr("A clef other than the treble clef: the notes are shown in the treble clef.")
                        )
                case "transpose":
                    self._once(child, tr("A transposing part: its notes are kept as written, not as they sound."))
                case "measure-style" if child.find("multiple-rest") is None:
                    tell_left_out(self._complaints, child)
                case _:
                    pass

    def _set_key(self, element: etree._Element) -> None:
        key, complaint = read_key(element)
        if complaint:
            self._once(element, complaint)
        known = self._measure.facts.key
        if known is not None and known.alters() == key.alters():
            key = known
        if self._cursor == 0:
            self._measure.key = key
        elif key != self._key:
            self._once(element, tr("The key changes inside a bar: the new signature is shown from the next bar on."))
        self._key = key

    def _set_meter(self, element: etree._Element) -> None:
        meter, complaint = read_meter(element)
        if complaint:
            self._once(element, complaint)
        if meter is None:
            return
        if self._cursor == 0:
            self._measure.meter = meter
        elif meter != self._meter:
            self._once(element, tr("The metre changes inside a bar: it is read as changing at the next bar."))
        self._meter = meter

    # time

    def _place(self, element: etree._Element) -> Fraction:
        """Quarter notes from the start of the measure to what stands over it, its offset counted in."""
        offset = decimal_number(element.findtext("offset")) or Fraction(0)
        return max(self._cursor + min(offset / self._divisions, LONGEST), Fraction(0))

    def _duration(self, element: etree._Element) -> Fraction | None:
        """Quarter notes that an element takes; None where it says nothing usable."""
        value = decimal_number(element.findtext("duration"), MAX_DIGITS)
        return value / self._divisions if value is not None and value >= 0 else None

    def _read_backup(self, element: etree._Element) -> None:
        duration = self._duration(element)
        if duration is None:
            self._once(element, tr("A backup without a duration: it was ignored."))
            return
        self._cursor = max(self._cursor - duration, Fraction(0))
        self._last = None

    def _read_forward(self, element: etree._Element) -> None:
        duration = self._duration(element)
        if duration is None or duration > LONGEST:
            self._once(element, tr("A forward without a usable duration: it was ignored."))
            return
        self._move(duration)
        self._last = None

    def _move(self, duration: Fraction) -> None:
        self._cursor += duration
        if self._cursor.denominator > MAX_PLACES:
            self._cursor = Fraction(round(self._cursor / SHORTEST)) * SHORTEST
        self._measure.end = max(self._measure.end, self._cursor)

    # notes

    def _read_note(self, element: etree._Element) -> None:
        children = first_children(element)
        voice = text_of(children, "voice") or "1"
        if "grace" in children:
            self._read_grace(element, children, voice)
            return
        if "chord" in children:
            if self._last is not None:
                self._notes.add_to_chord(self._last, element, children)
            else:
                self._once(element, tr("A chord note without a note before it: it was left out."))
            return
        if self._count >= _MAX_READ:
            self._once(element, tr("A measure has more than {most} notes: the rest was left out.", most=_MAX_READ))
            return
        note = self._notes.note(element, children, self._cursor, self._divisions)
        if note is None:
            return
        self._attach_graces(note, voice)
        self._measure.voices.setdefault(voice, []).append(note)
        self._count += 1
        self._budget.notes -= 1
        self._last = note
        self._move(note.length)

    def _read_grace(self, element: etree._Element, children: Children, voice: str) -> None:
        grace = self._notes.grace(element, children)
        if grace is None:
            return
        waiting = self._graces.setdefault(voice, [])
        grace.measure = len(self.part.measures)
        if "chord" in children and waiting:
            waiting[-1].add(grace)
        elif len(waiting) < MAX_GRACES:
            waiting.append(grace)
        else:
            self._once(
                element, tr("More than {most} grace notes before one note: the others were left out.", most=MAX_GRACES)
            )

    def _attach_graces(self, note: DraftNote, voice: str) -> None:
        """Give a note the grace notes that wait for it."""
        waiting = self._graces.pop(voice, [])
        if not waiting:
            return
        line = waiting[0].line
        if note.is_rest and not self._is_ours:
            self._complaints.once(line, tr("Grace notes before a rest have no note to lead to: they were left out."))
            return
        if waiting[0].measure < len(self.part.measures):
            text = tr("Grace notes at the end of a bar were put before the first note of the next.")
            self._complaints.once(line, text)
        note.graces = [grace.grace for grace in waiting]
        note.slurs = [end for grace in waiting for end in grace.slurs] + note.slurs

    # bar lines

    def _read_barline(self, element: etree._Element) -> None:
        measures = self.part.measures
        before = measures[-2] if len(measures) > 1 else None
        self._next |= self._barlines.read(element, self._cursor, before, self._measure)
