"""The measures of one MusicXML part: elements in, a draft of measures out.

One method per element, found by a table; elements that say nothing about what we keep are listed as such, and all
others are left out with one sentence per kind. Nothing here raises on any document.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from fractions import Fraction

from lxml import etree

from core.bowing import Grace
from core.harmony import is_known_kind, read_harmony
from core.lesson_fields import BarFacts, TuneFields
from core.musicxml_names import (
    ALTER_OF_NAME,
    ARTICULATION_OF_NAME,
    BASE_OF_TYPE,
    BOW_OF_NAME,
    ORNAMENT_OF_NAME,
    ORNAMENT_OF_TEXT,
    OTHER_ORNAMENT,
)  # fmt: skip
from core.reading.musicxml_attributes import CLEF_G, FREE, NO_KEY, read_key, read_meter
from core.reading.musicxml_draft import (
    Complaints,
    DraftMeasure,
    DraftNote,
    DraftPart,
    DraftPitch,
    SlurEnd,
)  # fmt: skip
from core.reading.note_lengths import LONGEST
from core.tune import NOTE_BASES, STEP_SEMITONES, BarLine, Jump, Key, Meter, Pitch, Tempo, note_value

MAX_MEASURES = 2000  # in a part
MAX_NOTES = 256  # in a measure
MAX_PASSES = 64  # of a repeat or an ending
MAX_RATIO = 64

# Elements that say how the page looks or how a machine plays it, or what is told by others beside them.
SILENT = {
    "beam", "stem", "notehead", "notehead-text", "instrument", "play", "listen", "print", "bookmark", "link",
    "grouping",
    "footnote", "level", "listening", "frame", "staff", "voice", "type", "dot", "accidental", "time-modification",
    "duration", "chord", "pitch", "rest", "grace", "tie", "offset", "direction-type", "midi-device", "midi-instrument",
    "instruments", "staves", "part-symbol", "directive", "for-part", "staff-details", "divisions", "instrument-change",
}  # fmt: skip
KIND_WORDS = {
    "lyric": "lyrics", "dynamics": "dynamics", "wedge": "hairpins", "pedal": "pedal marks", "dashes": "dashed lines",
    "bracket": "brackets", "octave-shift": "octave lines", "figured-bass": "figured bass", "glissando": "glissandos",
    "slide": "slides between notes", "arpeggiate": "arpeggios", "non-arpeggiate": "arpeggio brackets",
    "wavy-line": "wavy lines", "tremolo": "tremolos", "accidental-mark": "accidentals on ornaments",
    "string": "string numbers", "fret": "frets", "delayed-turn": "delayed turns", "harp-pedals": "harp pedals",
    "soft-accent": "soft accents", "caesura": "caesuras", "other-direction": "other directions",
    "pluck": "plucking fingers", "thumb-position": "thumb positions", "principal-voice": "voice marks",
    "measure-style": "measure styles", "percussion": "percussion signs", "scoop": "scoops", "falloff": "falloffs",
    "plop": "plops", "doit": "doits", "shake": "shakes", "haydn": "Haydn signs", "bend": "bends",
    "hammer-on": "hammer-ons", "pull-off": "pull-offs", "symbol": "symbols",
}  # fmt: skip

_BAR_LINES = {
    "light-light": BarLine.DOUBLE, "light-heavy": BarLine.FINAL, "heavy-light": BarLine.DOUBLE,
    "heavy-heavy": BarLine.DOUBLE, "heavy": BarLine.DOUBLE,
}  # fmt: skip
_NUMBER = re.compile(r"[+-]?\d{1,9}(?:\.\d{1,9})?")
_JUMP_WORDS = re.compile(r"\s*(d\.?\s?c\.?|da\s*capo|d\.?\s?s\.?|d[ae]l\s*segno)(\b|\s|$).*", re.IGNORECASE | re.DOTALL)
_FINE_WORDS = re.compile(r"\s*fine\.?\s*", re.IGNORECASE)
_TO_CODA_WORDS = re.compile(r"\s*to\s+coda\b.*", re.IGNORECASE | re.DOTALL)


def number(text: str | None) -> Fraction | None:
    """A decimal number of reasonable size, or None."""
    text = (text or "").strip()
    return Fraction(text) if _NUMBER.fullmatch(text) else None


class MeasureReader:
    """Reads the measures of one part one after the other.

    Attributes:
        part: The draft so far.
    """

    def __init__(self, part: DraftPart, complaints: Complaints, fields: TuneFields, is_ours: bool) -> None:
        self.part = part
        self._complaints = complaints
        self._fields = fields
        self._is_ours = is_ours
        self._divisions = Fraction(1)
        self._meter: Meter = FREE
        self._key: Key = NO_KEY
        self._next: dict[str, object] = {}  # attributes that the measure before gives to the next one
        self._last_ending: tuple[int, ...] = ()
        self._graces: dict[str, list[tuple[Grace, list[SlurEnd], int]]] = {}
        self._signs: list[tuple[Fraction, str, object]] = []  # place, name and value of signs that a bar begins with
        self._cursor = Fraction(0)
        self._last: DraftNote | None = None
        self._measure = DraftMeasure(0, "", "", False, FREE, NO_KEY, BarFacts())
        self._music: dict[str, Callable[[etree._Element], None]] = {
            "attributes": self._read_attributes,
            "note": self._read_note,
            "backup": self._read_backup,
            "forward": self._read_forward,
            "barline": self._read_barline,
            "direction": self._read_direction,
            "harmony": self._read_harmony,
            "sound": self._read_sound,
        }
        self._notations: dict[str, Callable[[DraftNote, etree._Element], None]] = {
            "slur": self._read_slur,
            "tuplet": self._read_tuplet,
            "ornaments": self._read_ornaments,
            "technical": self._read_technical,
            "articulations": self._read_articulations,
            "fermata": self._read_fermata,
            "tied": lambda note, element: None,
        }

    def read(self, attributes: etree._Element, music: Iterable[etree._Element]) -> None:
        """Read one measure.

        Args:
            attributes: The element with the measure's attributes.
            music: Its elements (the same element's children, or those of a part inside it).
        """
        if len(self.part.measures) >= MAX_MEASURES:
            self._once(attributes, f"A part has more than {MAX_MEASURES} measures: the rest was left out.")
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
        self._last = None
        self.part.measures.append(self._measure)
        for element in music:
            read = self._music.get(element.tag)
            if read is not None:
                read(element)
            else:
                self._leave_out(element)
        self._place_signs()

    def _place_signs(self) -> None:
        """Give the signs over the measure to it, or to the next one where they stand at its end."""
        for at, name, value in self._signs:
            if 0 < self._measure.end <= at:
                self._next[name] = value
            else:
                setattr(self._measure, name, value)
        self._signs = []

    def finish(self) -> None:
        """Tell what waited for a note that never came."""
        for graces in self._graces.values():
            for _, _, line in graces[:1]:
                self._complaints.say(line, "Grace notes after the last note have none to lead to: they were left out.")

    def _say(self, element: etree._Element, text: str) -> None:
        self._complaints.say(element.sourceline or 0, text)

    def _once(self, element: etree._Element, text: str) -> None:
        self._complaints.once(element.sourceline or 0, text)

    def _leave_out(self, element: etree._Element) -> None:
        if isinstance(element.tag, str) and element.tag not in SILENT:
            kind = KIND_WORDS.get(element.tag, f"“{element.tag}”")
            self._once(element, f"Left out, since lessons have no place for it: {kind}.")

    # attributes

    def _read_attributes(self, element: etree._Element) -> None:
        for child in element:
            first_staff = child.get("number", "1") == "1"
            match child.tag:
                case "divisions":
                    value = number(child.text)
                    if value is None or value <= 0:
                        self._say(child, f"“{(child.text or '')[:20]}” is no number of divisions: it was ignored.")
                    else:
                        self._divisions = value
                case "key" if first_staff:
                    self._set_key(child)
                case "time" if first_staff:
                    self._set_meter(child)
                case "clef" if first_staff:
                    if (child.findtext("sign") or "").strip() not in CLEF_G:
                        self._once(child, "A clef other than the treble clef: the notes are shown in the treble clef.")
                case "transpose":
                    self._once(child, "A transposing part: its notes are kept as written, not as they sound.")
                case "measure-style" if child.find("multiple-rest") is None:
                    self._leave_out(child)
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
            self._once(element, "The key changes inside a bar: the new signature is shown from the next bar on.")
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
            self._once(element, "The metre changes inside a bar: it is read as changing at the next bar.")
        self._meter = meter

    # time

    def _duration(self, element: etree._Element) -> Fraction | None:
        """Quarter notes that an element takes; None where it says nothing usable."""
        value = number(element.findtext("duration"))
        if value is None or value < 0:
            return None
        return value / self._divisions

    def _read_backup(self, element: etree._Element) -> None:
        duration = self._duration(element)
        if duration is None:
            self._once(element, "A backup without a duration: it was ignored.")
            return
        self._cursor = max(self._cursor - duration, Fraction(0))
        self._last = None

    def _read_forward(self, element: etree._Element) -> None:
        duration = self._duration(element)
        if duration is None or duration > LONGEST:
            self._once(element, "A forward without a usable duration: it was ignored.")
            return
        self._move(duration)
        self._last = None

    def _move(self, duration: Fraction) -> None:
        self._cursor += duration
        self._measure.end = max(self._measure.end, self._cursor)

    # notes

    def _read_note(self, element: etree._Element) -> None:
        voice = (element.findtext("voice") or "1").strip()
        if element.find("grace") is not None:
            self._read_grace(element, voice)
            return
        if element.find("chord") is not None:
            if self._last is None:
                self._once(element, "A chord note without a note before it: it was left out.")
            elif element.find("cue") is None:
                self._add_to_chord(self._last, element)
            return
        duration = self._length_of(element)
        if duration is None:
            self._once(element, "A note without a length: it was left out.")
            return
        if sum(map(len, self._measure.voices.values())) >= 4 * MAX_NOTES:
            self._once(element, f"A measure has more than {4 * MAX_NOTES} notes: the rest was left out.")
            return
        note = DraftNote(element.sourceline or 0, self._cursor, duration, (element.findtext("staff") or "1").strip())
        note.xml_id = element.get("id") or ""
        note.hidden = element.get("print-object") == "no"
        self._read_ratio(note, element)
        if element.find("rest") is None:
            note.hidden = False
            self._read_pitch(note, element)
        self._attach_graces(note, voice, element)
        self._read_notations(note, element)
        self._measure.voices.setdefault(voice, []).append(note)
        self._last = note
        self._move(duration)

    def _length_of(self, element: etree._Element) -> Fraction | None:
        """Quarter notes of a note: what its duration says, else what its note value says."""
        duration = self._duration(element)
        if duration is None:
            duration = self._value_of(element)
            if duration is not None:
                self._once(element, "A note without a duration: its note value was taken.")
        if duration is None or duration <= 0:
            return None
        if duration > LONGEST:
            self._once(element, f"A note of more than {LONGEST} quarter notes: it was cut off there.")
            return LONGEST
        return duration

    def _value_of(self, element: etree._Element) -> Fraction | None:
        """Quarter notes of the note value, dots and tuplet that an element shows, or None."""
        base = BASE_OF_TYPE.get((element.findtext("type") or "").strip())
        if base is None:
            return None
        dots = min(len(element.findall("dot")), 3)
        ratio = _ratio(element)
        return base * (2 - Fraction(1, 2**dots)) * (Fraction(ratio[1], ratio[0]) if ratio else 1)

    def _read_ratio(self, note: DraftNote, element: etree._Element) -> None:
        note.ratio = _ratio(element)
        if note.ratio is not None:
            note.unit = BASE_OF_TYPE.get((element.findtext("time-modification/normal-type") or "").strip())

    def _add_to_chord(self, note: DraftNote, element: etree._Element) -> None:
        if note.is_rest and element.find("rest") is not None:
            return
        self._read_pitch(note, element)
        self._read_notations(note, element)

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
        courtesy = accidental is not None and any(
            accidental.get(name) == "yes" for name in ("cautionary", "editorial", "parentheses", "bracket")
        )
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
        octave = number(child.findtext("octave"))
        alter = number(child.findtext("alter") or "0")
        if step not in STEP_SEMITONES or octave is None or alter is None or not 0 <= octave <= 9:
            self._once(child, "A pitch that cannot be understood was read as a rest.")
            return None
        whole = max(-2, min(2, int(alter + Fraction(1, 2) if alter >= 0 else alter - Fraction(1, 2))))
        if whole != alter:
            self._once(child, "A pitch between the semitones, or altered by more than two, was moved to the nearest.")
        elif ALTER_OF_NAME.get(accidental, whole) != whole:
            self._once(child, "An accidental and the pitch beside it do not agree: the pitch counts.")
        return Pitch(int(octave), step, whole)

    def _read_grace(self, element: etree._Element, voice: str) -> None:
        pitch = self._pitch(element)
        if pitch is None:
            return
        graces = self._graces.setdefault(voice, [])
        slurs = [end for slur in element.findall("notations/slur") if (end := _slur_end(slur)) is not None]
        for end in slurs:
            end.on_grace = True
        if element.find("chord") is not None and graces:
            grace, ends, line = graces[-1]
            pitches = tuple(sorted((*grace.pitches, pitch), key=lambda pitch: pitch.midi))
            graces[-1] = (Grace(pitches, grace.length, grace.slashed), ends + slurs, line)
            return
        base = self._value_of(element) or Fraction(1, 2)
        length = base if note_value(base) else NOTE_BASES[-1] if base < NOTE_BASES[-1] else Fraction(1, 2)
        slashed = element.find("grace").get("slash") == "yes"
        graces.append((Grace((pitch,), length, slashed), slurs, element.sourceline or 0))
        for holder in element.findall("notations"):
            for notation in holder:
                if notation.tag not in ("slur", "tied", "tuplet"):
                    self._once(notation, "Signs on grace notes were left out.")

    def _attach_graces(self, note: DraftNote, voice: str, element: etree._Element) -> None:
        waiting = self._graces.pop(voice, [])
        if not waiting:
            return
        if note.is_rest and not self._is_ours:
            self._once(element, "Grace notes before a rest have no note to lead to: they were left out.")
            return
        if not self._measure.voices.get(voice) and waiting[0][2] < self._measure.line:
            self._once(element, "Grace notes at the end of a bar were put before the first note of the next.")
        note.graces = [grace for grace, _, _ in waiting]
        note.slurs = [end for _, ends, _ in waiting for end in ends]

    # notations

    def _read_notations(self, note: DraftNote, element: etree._Element) -> None:
        for child in element:
            if child.tag == "notations":
                for notation in child:
                    read = self._notations.get(notation.tag)
                    if read is not None:
                        read(note, notation)
                    else:
                        self._leave_out(notation)
            else:
                if child.tag in ("lyric", "figured-bass"):
                    self._leave_out(child)

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
                self._leave_out(child)

    def _read_technical(self, note: DraftNote, element: etree._Element) -> None:
        for child in element:
            if child.tag in BOW_OF_NAME:
                if note.bows and BOW_OF_NAME[child.tag] is not note.bows[0]:
                    self._say(child, "A note has both a down-bow and an up-bow: the first one counts.")
                note.bows.append(BOW_OF_NAME[child.tag])
            elif child.tag == "fingering":
                self._read_fingering(note, child)
            elif child.tag in ARTICULATION_OF_NAME:
                self._add_articulation(note, child.tag)
            else:
                self._leave_out(child)

    def _read_fingering(self, note: DraftNote, element: etree._Element) -> None:
        finger = (element.text or "").strip()
        if finger in {"0", "1", "2", "3", "4"}:
            note.fingerings.append(finger)
        else:
            self._once(element, "A fingering other than 0 to 4 was left out.")

    def _read_articulations(self, note: DraftNote, element: etree._Element) -> None:
        for child in element:
            if child.tag in ARTICULATION_OF_NAME:
                self._add_articulation(note, child.tag)
            else:
                self._leave_out(child)

    def _read_fermata(self, note: DraftNote, element: etree._Element) -> None:
        self._add_articulation(note, element.tag)

    def _add_articulation(self, note: DraftNote, name: str) -> None:
        sign = ARTICULATION_OF_NAME[name]
        if sign not in note.articulations:
            note.articulations.append(sign)

    # bar lines

    def _read_barline(self, element: etree._Element) -> None:
        for child in element:
            if child.tag not in ("bar-style", "ending", "repeat", "segno", "coda"):
                self._leave_out(child)
        location = element.get("location", "right")
        style = _BAR_LINES.get((element.findtext("bar-style") or "").strip(), BarLine.PLAIN)
        if location == "middle":
            self._read_middle_barline(element)
        elif location == "left":
            self._read_left_barline(element, style)
        else:
            self._read_right_barline(element, style)

    def _read_left_barline(self, element: etree._Element, style: BarLine) -> None:
        measures = self.part.measures
        before = measures[-2] if len(measures) > 1 else None
        self._measure.segno |= element.find("segno") is not None
        self._measure.coda |= element.find("coda") is not None
        ending, repeat = element.find("ending"), element.find("repeat")
        if ending is not None and ending.get("type") == "start":
            self._measure.opens_ending = self._ending_numbers(ending)
        elif ending is not None and before is not None:
            before.closes_ending = True
        if repeat is not None and repeat.get("direction") == "forward":
            self._measure.opens_repeat = True
        elif repeat is not None and before is not None:
            before.repeats = self._times(repeat)
        elif repeat is None and before is not None and style is BarLine.DOUBLE and before.bar_line is BarLine.PLAIN:
            before.bar_line = style

    def _read_right_barline(self, element: etree._Element, style: BarLine) -> None:
        measure = self._measure
        self._next |= {name: True for name in ("segno", "coda") if element.find(name) is not None}
        ending, repeat = element.find("ending"), element.find("repeat")
        if ending is not None and ending.get("type") == "start":
            self._next["opens_ending"] = self._ending_numbers(ending)
        elif ending is not None:
            measure.closes_ending = True
        if repeat is not None and repeat.get("direction") == "forward":
            self._next["opens_repeat"] = True
            return
        if repeat is not None:
            measure.repeats = self._times(repeat)
        if repeat is None or style is BarLine.DOUBLE:  # light-heavy is how a repeat looks anyhow
            measure.bar_line = style
        if measure.facts.line is not None and repeat is not None:
            measure.bar_line = measure.facts.line

    def _read_middle_barline(self, element: etree._Element) -> None:
        repeat = element.find("repeat")
        if repeat is not None:
            self._measure.cuts.append((self._cursor, repeat.get("direction") == "backward"))
        else:
            self._once(element, "A bar line inside a bar was left out.")

    def _times(self, element: etree._Element) -> int:
        """How often a backward repeat says that its section is played; 1 where it says nothing."""
        times = number(element.get("times"))
        if times is None:
            return 1
        if not 2 <= times <= MAX_PASSES:
            self._once(element, f"A repeat cannot be played {element.get('times')} times: it is played twice.")
            return 2
        return int(times)

    def _ending_numbers(self, element: etree._Element) -> tuple[int, ...]:
        """Passes that an ending is for; where the file names none, the one after the ending before it."""
        for text in (element.get("number") or "", element.text or ""):
            passes = sorted({int(word) for word in re.findall(r"\d{1,4}", text) if 0 < int(word) <= MAX_PASSES})
            if passes:
                self._last_ending = tuple(passes)
                return self._last_ending
        self._last_ending = (max(self._last_ending, default=0) % MAX_PASSES + 1,)
        self._say(element, f"An ending without a number: it is taken as ending {self._last_ending[0]}.")
        return self._last_ending

    # what stands over the staff

    def _place(self, element: etree._Element) -> Fraction:
        """Quarter notes from the start of the measure to a direction or harmony, its offset counted in."""
        offset = number(element.findtext("offset")) or Fraction(0)
        return min(max(self._cursor + offset / self._divisions, Fraction(0)), LONGEST)

    def _read_harmony(self, element: etree._Element) -> None:
        text = read_harmony(element)
        if not text:
            self._once(element, "Chords given by scale degree were left out.")
            return
        if not is_known_kind(element):
            self._once(element, "A chord of a kind without a usual name is shown by its root only.")
        self._measure.chords.append((self._place(element), text))

    def _read_direction(self, element: etree._Element) -> None:
        at, above = self._place(element), element.get("placement") != "below"
        texts: list[str] = []
        metronome: etree._Element | None = None
        for child in element.iterfind("direction-type/*"):
            match child.tag:
                case "words":
                    texts.append(child.text or "")
                case "metronome":
                    metronome = child
                case "rehearsal":
                    self._read_rehearsal(child, at)
                case "segno":
                    self._signs.append((at, "segno", True))
                case "coda" if element.find("sound") is None or not _names_coda(element.find("sound")):
                    self._measure.coda_signs.append(child.sourceline or 0)
                case "coda":
                    pass
                case _:
                    self._leave_out(child)
        words = "".join(texts) if self._is_ours else " ".join(" ".join(texts).split())
        sound = element.find("sound")
        if self._read_signs(sound, words, at):
            return
        if metronome is not None:
            if self._read_metronome(metronome, words):
                return
        elif sound is not None and sound.get("tempo") and self._read_sound_tempo(sound, words):
            return
        if words:
            self._measure.words.append((at, words, above))

    def _read_rehearsal(self, element: etree._Element, at: Fraction) -> None:
        text = element.text or "" if self._is_ours else " ".join((element.text or "").split())
        if text:
            self._signs.append((at, "part", text))

    def _read_sound(self, element: etree._Element) -> None:
        """A sound element by itself: its jumps and its tempo."""
        self._read_signs(element, "", self._cursor)
        if element.get("tempo"):
            self._read_sound_tempo(element, "")

    def _read_signs(self, sound: etree._Element | None, words: str, at: Fraction) -> bool:
        """Read jumps and the signs they need; whether that is what the words say, so that nothing else does."""
        get = sound.get if sound is not None else lambda name: None
        measure = self._measure
        found = False
        for name in ("segno", "coda"):
            if get(name):
                self._signs.append((at, name, True))
        if get("tocoda") or (not self._is_ours and _TO_CODA_WORDS.fullmatch(words)):
            measure.to_coda = found = True
        if get("fine") or (not self._is_ours and _FINE_WORDS.fullmatch(words)):
            measure.fine = found = True
        if get("dacapo") == "yes" or get("dalsegno") or (not self._is_ours and _JUMP_WORDS.fullmatch(words)):
            to_segno = bool(get("dalsegno")) or (get("dacapo") != "yes" and _means_segno(words))
            measure.jump = _jump(to_segno, words)
            found = True
        if get("forward-repeat") == "yes":
            measure.opens_repeat = True
        return found and (not words or self._is_ours or len(words) < 40)

    def _read_metronome(self, element: etree._Element, words: str) -> bool:
        """Read a metronome mark; whether it became the tempo."""
        units = element.findall("beat-unit")
        per_minute = _per_minute(element.findtext("per-minute"))
        beat = sum((_beat(unit) for unit in [*units, *element.findall("beat-unit-tied/beat-unit")]), Fraction(0))
        if len(units) != 1 or not beat or per_minute is None:
            self._once(element, "A metronome mark that gives no number of beats a minute was left out.")
            return False
        return self._set_tempo(element, Tempo(beat, per_minute, words))

    def _read_sound_tempo(self, element: etree._Element, words: str) -> bool:
        """Take a tempo that is only there to be played, in quarter notes; whether it became the tempo."""
        quarters = number(element.get("tempo"))
        if self.part.tempo is not None or quarters is None or quarters <= 0 or self._is_ours:
            return False
        if len(self.part.measures) > 1 or self._cursor > 0:
            return False  # a change that nobody sees
        beat = Fraction(3, 2) if self._measure.meter.is_compound else Fraction(1)
        return self._set_tempo(element, Tempo(beat, quarters / beat, words))

    def _set_tempo(self, element: etree._Element, tempo: Tempo) -> bool:
        if self.part.tempo is not None or len(self.part.measures) > 2:
            self._once(element, "The tempo changes inside the tune: only the one at the start is kept.")
            return False
        self.part.tempo = tempo
        return True


def _ratio(element: etree._Element) -> tuple[int, int] | None:
    """(actual, normal) of a note's time modification; None without one, or where it changes nothing."""
    actual = number(element.findtext("time-modification/actual-notes"))
    normal = number(element.findtext("time-modification/normal-notes"))
    if actual is None or normal is None or not 0 < actual <= MAX_RATIO or not 0 < normal <= MAX_RATIO:
        return None
    return (int(actual), int(normal)) if actual != normal else None


def _slur_end(element: etree._Element) -> SlurEnd | None:
    kind = element.get("type")
    if kind not in ("start", "stop"):
        return None
    return SlurEnd(kind, (element.get("number") or "1").strip(), element.sourceline or 0)


def _names_coda(sound: etree._Element) -> bool:
    return bool(sound.get("coda") or sound.get("tocoda"))


def _means_segno(words: str) -> bool:
    found = _JUMP_WORDS.fullmatch(words)
    return found is not None and ("s" in found[1].lower())


def _jump(to_segno: bool, words: str) -> Jump:
    """The jump that goes back to the segno or to the start, and ends as the words say."""
    text = words.lower()
    ends = "al Coda" if "coda" in text else "al Fine" if "fine" in text else ""
    return Jump(f"{'D.S.' if to_segno else 'D.C.'} {ends}".strip())


def _per_minute(text: str | None) -> Fraction | None:
    """Beats a minute: a number, a fraction (200/3), or the first number in words such as "c. 108"."""
    text = (text or "").strip()
    found = re.fullmatch(r"\d{1,9}/[1-9]\d{0,8}", text) or re.search(r"\d{1,6}(\.\d{1,6})?", text)
    value = Fraction(found[0]) if found else Fraction(0)
    return value if value > 0 else None


def _beat(unit: etree._Element) -> Fraction:
    """Quarter notes of a beat unit and the dots behind it; 0 for one that is not known."""
    dots = 0
    follower = unit.getnext()
    while follower is not None and follower.tag == "beat-unit-dot" and dots < 3:
        dots += 1
        follower = follower.getnext()
    return BASE_OF_TYPE.get((unit.text or "").strip(), Fraction(0)) * (2 - Fraction(1, 2**dots))
