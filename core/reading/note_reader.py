"""What one MusicXML note element says: pitch, length, ties, tuplet, slurs and signs, wherever it stands."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from functools import lru_cache

from lxml import etree

from core.bowing import Grace
from core.musicxml_names import (
    ALTER_OF_NAME,
    ARTICULATION_OF_NAME,
    BASE_OF_TYPE,
    BOW_OF_NAME,
    ORNAMENT_OF_NAME,
    ORNAMENT_OF_TEXT,
    OTHER_ORNAMENT,
)
from core.reading.left_out import tell_left_out
from core.reading.limits import MAX_DIGITS, MAX_TUPLET
from core.reading.musicxml_draft import Complaints, DraftGrace, DraftNote, DraftPitch, SlurEnd
from core.reading.note_lengths import LONGEST
from core.reading.xml_tree import decimal_number, first_children, text_of
from core.translation import tr
from core.tune import MAX_DOTS, NOTE_BASES, STEP_SEMITONES, Pitch, note_value

FINGERS = {"0", "1", "2", "3", "4"}
_COURTESY = ("cautionary", "editorial", "parentheses", "bracket")

Children = Mapping[str, etree._Element]
"""``first_children`` of a note."""


class NoteReader:
    """Reads note elements one by one; knows nothing of voices and measures."""

    def __init__(self, complaints: Complaints) -> None:
        self._complaints = complaints
        self._notations: dict[str, Callable[[DraftNote, etree._Element], None]] = {
            "slur": self._read_slur,
            "tuplet": self._read_tuplet,
            "ornaments": self._read_ornaments,
            "technical": self._read_technical,
            "articulations": self._read_articulations,
            "fermata": self._read_fermata,
            "tied": lambda note, element: None,  # read with the pitch
        }

    def note(self, element: etree._Element, children: Children, at: Fraction, divisions: Fraction) -> DraftNote | None:
        """Read a note or rest; None, told, where it has no length.

        Args:
            element: The note.
            children: Its ``first_children``, as below.
            at: Quarter notes from the start of the measure.
            divisions: Of a quarter note.
        """
        length = self._length(element, children, divisions)
        if length is None:
            self._once(element, tr("A note without a length: it was left out."))
            return None
        note = DraftNote(element.sourceline or 0, at, length, text_of(children, "staff") or "1")
        note.xml_id = element.get("id") or ""
        if "time-modification" in children:
            note.ratio = _ratio(element)
            if note.ratio is not None:
                note.unit = BASE_OF_TYPE.get((element.findtext("time-modification/normal-type") or "").strip())
        if "rest" not in children:
            self._read_pitch(note, element, children)
        else:
            note.hidden = element.get("print-object") == "no"
        self._read_notations(note, element, children)
        return note

    def add_to_chord(self, note: DraftNote, element: etree._Element, children: Children) -> None:
        """Add a note that sounds together with one read before."""
        if "cue" not in children and "rest" not in children:
            self._read_pitch(note, element, children)
            self._read_notations(note, element, children)

    def grace(self, element: etree._Element, children: Children) -> DraftGrace | None:
        """Read a grace note; None, told, where it has no pitch."""
        pitch = self._pitch(element, children)
        if pitch is None:
            return None
        shown = self._shown_length(element) or Fraction(1, 2)
        length = shown if note_value(shown) else NOTE_BASES[-1] if shown < NOTE_BASES[-1] else Fraction(1, 2)
        slashed = children["grace"].get("slash") == "yes"
        grace = DraftGrace(Grace((pitch,), length, slashed), element.sourceline or 0)
        for notation in element.iterfind("notations/*"):
            end = _slur_end(notation, on_grace=True) if notation.tag == "slur" else None
            if end is not None:
                grace.slurs.append(end)
            elif notation.tag not in ("slur", "tied", "tuplet"):
                self._once(notation, tr("Signs on grace notes were left out."))
        return grace

    def _once(self, element: etree._Element, text: str) -> None:
        self._complaints.once(element.sourceline or 0, text)

    # length

    def _length(self, element: etree._Element, children: Children, divisions: Fraction) -> Fraction | None:
        """Quarter notes of a note: what its duration says, else what its note value says."""
        duration = decimal_number(text_of(children, "duration"), MAX_DIGITS)
        length = duration / divisions if duration is not None else None
        if length is None:
            length = self._shown_length(element)
            if length is not None:
                self._once(element, tr("A note without a duration: its note value was taken."))
        if length is None or length <= 0:
            return None
        if length > LONGEST:
            self._once(element, tr("A note of more than {most} quarter notes: it was cut off there.", most=LONGEST))
            return LONGEST
        return length

    def _shown_length(self, element: etree._Element) -> Fraction | None:
        """Quarter notes of the note value, dots and tuplet that an element shows, or None."""
        base = BASE_OF_TYPE.get((element.findtext("type") or "").strip())
        if base is None:
            return None
        dots = min(len(element.findall("dot")), MAX_DOTS)
        ratio = _ratio(element)
        return base * (2 - Fraction(1, 2**dots)) * (Fraction(ratio[1], ratio[0]) if ratio else 1)

    # pitch

    def _read_pitch(self, note: DraftNote, element: etree._Element, children: Children) -> None:
        if "cue" in children:
            note.hidden = True
            self._once(element, tr("Cue notes were read as rests."))
            return
        pitch = self._pitch(element, children)
        if pitch is None:
            return
        ties = [tie.get("type") for tie in element.iterchildren("tie")] if "tie" in children else []
        if "notations" in children:
            ties += [tied.get("type") for tied in element.iterfind("notations/tied")]
        accidental = children.get("accidental")
        courtesy = accidental is not None and any(accidental.get(name) == "yes" for name in _COURTESY)
        note.pitches.append(
            DraftPitch(
                pitch,
                "start" in ties or "continue" in ties,
                "stop" in ties or "continue" in ties,
                accidental is not None,
                courtesy,
            )
        )

    def _pitch(self, element: etree._Element, children: Children) -> Pitch | None:
        child = children.get("pitch")
        if child is None:
            self._once(element, tr("Notes without a pitch were read as rests."))
            return None
        parts = first_children(child)
        sounds = _pitch_of(text_of(parts, "step"), text_of(parts, "octave"), text_of(parts, "alter"))
        if sounds is None:
            self._once(child, tr("A pitch that cannot be understood was read as a rest."))
            return None
        pitch, is_exact = sounds
        if not is_exact:
            self._once(
                child, tr("A pitch between the semitones, or altered by more than two, was moved to the nearest.")
            )
        elif ALTER_OF_NAME.get(text_of(children, "accidental"), pitch.alter) != pitch.alter:
            self._once(child, tr("An accidental and the pitch beside it do not agree: the pitch counts."))
        return pitch

    # notations

    def _read_notations(self, note: DraftNote, element: etree._Element, children: Children) -> None:
        for child in element if "notations" in children or "lyric" in children else ():
            if child.tag == "notations":
                for notation in child:
                    read = self._notations.get(notation.tag)
                    if read is not None:
                        read(note, notation)
                    else:
                        tell_left_out(self._complaints, notation)
            elif child.tag == "lyric":
                tell_left_out(self._complaints, child)

    def _read_slur(self, note: DraftNote, element: etree._Element) -> None:
        end = _slur_end(element)
        if end is not None:
            note.slurs.append(end)
        elif element.get("type") != "continue":
            self._once(element, tr("A slur that neither starts nor stops was left out."))

    def _read_tuplet(self, note: DraftNote, element: etree._Element) -> None:
        if element.get("type") == "start":
            note.tuplet_starts = True

    def _read_ornaments(self, note: DraftNote, element: etree._Element) -> None:
        for child in element:
            sign = ORNAMENT_OF_NAME.get(child.tag)
            if child.tag == OTHER_ORNAMENT:
                sign = ORNAMENT_OF_TEXT.get((child.text or "").strip())
            if sign is not None:
                note.ornaments.append(sign)
            else:
                tell_left_out(self._complaints, child)

    def _read_technical(self, note: DraftNote, element: etree._Element) -> None:
        for child in element:
            if child.tag in BOW_OF_NAME:
                if note.bows and BOW_OF_NAME[child.tag] is not note.bows[0]:
                    self._once(child, tr("A note has both a down-bow and an up-bow: the first one counts."))
                note.bows.append(BOW_OF_NAME[child.tag])
            elif child.tag == "fingering":
                self._read_fingering(note, child)
            elif child.tag in ARTICULATION_OF_NAME:
                self._add_articulation(note, child.tag)
            else:
                tell_left_out(self._complaints, child)

    def _read_fingering(self, note: DraftNote, element: etree._Element) -> None:
        finger = (element.text or "").strip()
        if finger in FINGERS:
            note.fingerings.append(finger)
        else:
            self._once(element, tr("A fingering other than 0 to 4 was left out."))

    def _read_articulations(self, note: DraftNote, element: etree._Element) -> None:
        for child in element:
            if child.tag in ARTICULATION_OF_NAME:
                self._add_articulation(note, child.tag)
            else:
                tell_left_out(self._complaints, child)

    def _read_fermata(self, note: DraftNote, element: etree._Element) -> None:
        self._add_articulation(note, element.tag)

    def _add_articulation(self, note: DraftNote, name: str) -> None:
        sign = ARTICULATION_OF_NAME[name]
        if sign not in note.articulations:
            note.articulations.append(sign)


@lru_cache(maxsize=1024)
def _pitch_of(step: str, octave: str, alter: str) -> tuple[Pitch, bool] | None:
    """The pitch of what an element says, and whether it is just that; None where it cannot be understood."""
    height, altered = decimal_number(octave), decimal_number(alter or "0")
    name = step.upper()
    if name not in STEP_SEMITONES or height is None or altered is None or not 0 <= height <= 9:
        return None
    whole = max(-2, min(2, int(altered + Fraction(1, 2) if altered >= 0 else altered - Fraction(1, 2))))
    return Pitch(int(height), name, whole), whole == altered


def _ratio(element: etree._Element) -> tuple[int, int] | None:
    """(actual, normal) of a note's time modification; None without one, or where it changes nothing."""
    actual = decimal_number(element.findtext("time-modification/actual-notes"))
    normal = decimal_number(element.findtext("time-modification/normal-notes"))
    counts = [count for count in (actual, normal) if count is not None and count in range(1, MAX_TUPLET + 1)]
    return (int(counts[0]), int(counts[1])) if len(counts) == 2 and actual != normal else None


def _slur_end(element: etree._Element, on_grace: bool = False) -> SlurEnd | None:
    kind = element.get("type")
    if kind not in ("start", "stop"):
        return None
    return SlurEnd(kind, (element.get("number") or "1").strip(), element.sourceline or 0, on_grace)
