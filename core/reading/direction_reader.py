"""What stands over and under the notes: directions, chords, tempo, and the signs that say what is played next."""

from __future__ import annotations

import re
from fractions import Fraction

from lxml import etree

from core.harmony import is_known_kind, read_harmony
from core.musicxml_names import BASE_OF_TYPE
from core.reading.left_out import tell_left_out
from core.reading.musicxml_draft import Complaints, DraftMeasure, DraftPart
from core.reading.xml_tree import decimal_number
from core.translation import tr
from core.tune import MAX_DOTS, Jump, Tempo

MAX_TEXT = 200  # characters of words or a chord symbol in the files of others
_JUMP_WORDS = re.compile(r"\s*(d\.?\s?c\.?|da\s*capo|d\.?\s?s\.?|d[ae]l\s*segno)(\b|\s|$).*", re.IGNORECASE | re.DOTALL)
_FINE_WORDS = re.compile(r"\s*fine\.?\s*", re.IGNORECASE)
_TO_CODA_WORDS = re.compile(r"\s*to\s+coda\b.*", re.IGNORECASE | re.DOTALL)


class DirectionReader:
    """Reads the directions of one part.

    In the files of others, words that say a jump are that jump; in a lesson file only ``sound`` says it, and words
    are words.
    """

    def __init__(self, part: DraftPart, complaints: Complaints, is_ours: bool) -> None:
        self._part = part
        self._complaints = complaints
        self._is_ours = is_ours

    def harmony(self, element: etree._Element, measure: DraftMeasure, at: Fraction) -> None:
        """Read a chord symbol that stands so many quarter notes from the start of the measure."""
        text = read_harmony(element)
        if not text:
            self._once(element, tr("Chords given by scale degree were left out."))
            return
        if len(text) > MAX_TEXT:
            self._once(element, tr("A chord symbol of more than {most} characters was left out.", most=MAX_TEXT))
            return
        if not is_known_kind(element):
            self._once(element, tr("A chord of a kind without a usual name is shown by its root only."))
        measure.chords.append((at, text))

    def direction(self, element: etree._Element, measure: DraftMeasure, at: Fraction) -> None:
        """Read a direction with all that is in it."""
        texts: list[str] = []
        metronome: etree._Element | None = None
        sound = element.find("sound")
        for child in element.iterfind("direction-type/*"):
            match child.tag:
                case "words":
                    texts.append(child.text or "")
                case "metronome":
                    metronome = child
                case "rehearsal":
                    if text := self._text([child.text or ""]):
                        measure.signs.append((at, "part", text))
                case "segno":
                    measure.signs.append((at, "segno", True))
                case "coda":
                    if sound is None or not (sound.get("coda") or sound.get("tocoda")):
                        measure.coda_signs.append(child.sourceline or 0)
                case _:
                    tell_left_out(self._complaints, child)
        words = self._text(texts)
        if self._read_jumps(sound, words, measure, at):
            return
        if metronome is not None:
            if self._read_metronome(metronome, words):
                return
        elif sound is not None and self._read_played_tempo(sound, words, measure, at):
            return
        if words:
            measure.words.append((at, words, element.get("placement") != "below"))

    def sound(self, element: etree._Element, measure: DraftMeasure, at: Fraction) -> None:
        """Read a sound element that stands by itself."""
        self._read_jumps(element, "", measure, at)
        self._read_played_tempo(element, "", measure, at)

    def _once(self, element: etree._Element, text: str) -> None:
        self._complaints.once(element.sourceline or 0, text)

    def _text(self, texts: list[str]) -> str:
        """Words as they are in a lesson file; elsewhere white space means nothing, and there is a limit."""
        return "".join(texts) if self._is_ours else " ".join(" ".join(texts).split())[:MAX_TEXT]

    # jumps

    def _read_jumps(self, sound: etree._Element | None, words: str, measure: DraftMeasure, at: Fraction) -> bool:
        """Read jumps and the signs they need; whether that is all that the words say."""
        says = dict(sound.attrib) if sound is not None else {}
        meant = "" if self._is_ours else words
        measure.signs += [(at, name, True) for name in ("segno", "coda") if says.get(name)]
        measure.opens_repeat |= says.get("forward-repeat") == "yes"
        found = False
        if says.get("tocoda") or _TO_CODA_WORDS.fullmatch(meant):
            measure.to_coda = found = True
        if says.get("fine") or _FINE_WORDS.fullmatch(meant):
            measure.fine = found = True
        jump = _JUMP_WORDS.fullmatch(meant)
        if says.get("dacapo") == "yes" or says.get("dalsegno") or jump:
            to_segno = says.get("dacapo") != "yes" and (bool(says.get("dalsegno")) or (jump and "s" in jump[1].lower()))
            ends = "al Coda" if "coda" in words.lower() else "al Fine" if "fine" in words.lower() else ""
            measure.jump = Jump(f"{'D.S.' if to_segno else 'D.C.'} {ends}".strip())
            found = True
        return found

    # tempo

    def _read_metronome(self, element: etree._Element, words: str) -> bool:
        """Read a metronome mark; whether it became the tempo."""
        units = element.findall("beat-unit")
        per_minute = _per_minute(element.findtext("per-minute"))
        beat = sum((_beat(unit) for unit in [*units, *element.findall("beat-unit-tied/beat-unit")]), Fraction(0))
        if len(units) != 1 or not beat or per_minute is None:
            self._once(element, tr("A metronome mark that gives no number of beats a minute was left out."))
            return False
        return self._set_tempo(element, Tempo(beat, per_minute, words))

    def _read_played_tempo(self, element: etree._Element, words: str, measure: DraftMeasure, at: Fraction) -> bool:
        """Take a tempo that is only there to be played, in quarter notes; whether it became the tempo."""
        quarters = decimal_number(element.get("tempo"))
        if quarters is None or quarters <= 0 or self._is_ours or self._part.tempo is not None:
            return False
        if len(self._part.measures) > 1 or at > 0:
            return False  # a change that nobody sees
        beat = Fraction(3, 2) if measure.meter.is_compound else Fraction(1)
        return self._set_tempo(element, Tempo(beat, quarters / beat, words))

    def _set_tempo(self, element: etree._Element, tempo: Tempo) -> bool:
        if self._part.tempo is not None or len(self._part.measures) > 2:
            self._once(element, tr("The tempo changes inside the tune: only the one at the start is kept."))
            return False
        self._part.tempo = tempo
        return True


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
    while follower is not None and follower.tag == "beat-unit-dot" and dots < MAX_DOTS:
        dots += 1
        follower = follower.getnext()
    return BASE_OF_TYPE.get((unit.text or "").strip(), Fraction(0)) * (2 - Fraction(1, 2**dots))
