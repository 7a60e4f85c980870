"""What one MusicXML note element says: pitch, length, ties, tuplet, slurs and signs, wherever it stands."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

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
from core.reading.musicxml_draft import Complaints, DraftGrace, DraftNote, DraftPitch, SlurEnd
from core.reading.note_lengths import LONGEST
from core.reading.xml_tree import decimal_number
from core.tune import MAX_DOTS, NOTE_BASES, STEP_SEMITONES, Pitch, note_value

MAX_RATIO = 64  # notes in a tuplet
FINGERS = {"0", "1", "2", "3", "4"}
_COURTESY = ("cautionary", "editorial", "parentheses", "bracket")


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

    def note(self, element: etree._Element, at: Fraction, divisions: Fraction) -> DraftNote | None:
        """Read a note or rest; None, told, where it has no length.

        Args:
            element: The note.
            at: Quarter notes from the start of the measure.
            divisions: Of a quarter note.
        """
        length = self._length(element, divisions)
        if length is None:
            self._once(element, "A note without a length: it was left out.")
            return None
        note = DraftNote(element.sourceline or 0, at, length, (element.findtext("staff") or "1").strip())
        note.xml_id = element.get("id") or ""
        note.ratio = _ratio(element)
        if note.ratio is not None:
            note.unit = BASE_OF_TYPE.get((element.findtext("time-modification/normal-type") or "").strip())
        if element.find("rest") is None:
            self._read_pitch(note, element)
        else:
            note.hidden = element.get("print-object") == "no"
        self._read_notations(note, element)
        return note

    def add_to_chord(self, note: DraftNote, element: etree._Element) -> None:
        """Add a note that sounds together with one read before."""
        if element.find("cue") is None and element.find("rest") is None:
            self._read_pitch(note, element)
            self._read_notations(note, element)

    def grace(self, element: etree._Element) -> DraftGrace | None:
        """Read a grace note; None, told, where it has no pitch."""
        pitch = self._pitch(element)
        if pitch is None:
            return None
        shown = self._shown_length(element) or Fraction(1, 2)
        length = shown if note_value(shown) else NOTE_BASES[-1] if shown < NOTE_BASES[-1] else Fraction(1, 2)
        slashed = element.find("grace").get("slash") == "yes"
        grace = DraftGrace(Grace((pitch,), length, slashed), element.sourceline or 0)
        for notation in element.iterfind("notations/*"):
            end = _slur_end(notation, on_grace=True) if notation.tag == "slur" else None
            if end is not None:
                grace.slurs.append(end)
            elif notation.tag not in ("slur", "tied", "tuplet"):
                self._once(notation, "Signs on grace notes were left out.")
        return grace

    def _once(self, element: etree._Element, text: str) -> None:
        self._complaints.once(element.sourceline or 0, text)

    # length

    def _length(self, element: etree._Element, divisions: Fraction) -> Fraction | None:
        """Quarter notes of a note: what its duration says, else what its note value says."""
        duration = decimal_number(element.findtext("duration"))
        length = duration / divisions if duration is not None else None
        if length is None:
            length = self._shown_length(element)
            if length is not None:
                self._once(element, "A note without a duration: its note value was taken.")
        if length is None or length <= 0:
            return None
        if length > LONGEST:
            self._once(element, f"A note of more than {LONGEST} quarter notes: it was cut off there.")
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

    def _read_pitch(self, note: DraftNote, element: etree._Element) -> None:
        if element.find("cue") is not None:
            note.hidden = True
            self._once(element, "Cue notes were read as rests.")
            return
        pitch = self._pitch(element)
        if pitch is None:
            return
        ties = [tie.get("type") for tie in element.findall("tie")]
        ties += [tied.get("type") for tied in element.findall("notations/tied")]
        accidental = element.find("accidental")
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

    def _pitch(self, element: etree._Element) -> Pitch | None:
        child = element.find("pitch")
        if child is None:
            self._once(element, "Notes without a pitch were read as rests.")
            return None
        accidental = (element.findtext("accidental") or "").strip()
        step = (child.findtext("step") or "").strip().upper()
        octave = decimal_number(child.findtext("octave"))
        alter = decimal_number(child.findtext("alter") or "0")
        if step not in STEP_SEMITONES or octave is None or alter is None or not 0 <= octave <= 9:
            self._once(child, "A pitch that cannot be understood was read as a rest.")
            return None
        whole = max(-2, min(2, int(alter + Fraction(1, 2) if alter >= 0 else alter - Fraction(1, 2))))
        if whole != alter:
            self._once(child, "A pitch between the semitones, or altered by more than two, was moved to the nearest.")
        elif ALTER_OF_NAME.get(accidental, whole) != whole:
            self._once(child, "An accidental and the pitch beside it do not agree: the pitch counts.")
        return Pitch(int(octave), step, whole)

    # notations

    def _read_notations(self, note: DraftNote, element: etree._Element) -> None:
        for child in element:
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
            self._once(element, "A slur that neither starts nor stops was left out.")

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
                    self._once(child, "A note has both a down-bow and an up-bow: the first one counts.")
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
            self._once(element, "A fingering other than 0 to 4 was left out.")

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


def _ratio(element: etree._Element) -> tuple[int, int] | None:
    """(actual, normal) of a note's time modification; None without one, or where it changes nothing."""
    actual = decimal_number(element.findtext("time-modification/actual-notes"))
    normal = decimal_number(element.findtext("time-modification/normal-notes"))
    counts = [count for count in (actual, normal) if count is not None and count in range(1, MAX_RATIO + 1)]
    return (int(counts[0]), int(counts[1])) if len(counts) == 2 and actual != normal else None


def _slur_end(element: etree._Element, on_grace: bool = False) -> SlurEnd | None:
    kind = element.get("type")
    if kind not in ("start", "stop"):
        return None
    return SlurEnd(kind, (element.get("number") or "1").strip(), element.sourceline or 0, on_grace)
