"""The note elements of one part: a tune's notes with the slurs, bow marks and signs of one bowing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from lxml import etree

from core.accidentals import BarAccidentals
from core.bowing import Articulation, Bowing, Grace, Join, Ornament
from core.musicxml_names import (
    ARTICULATION_HOLDERS,
    BOW_NAMES,
    NAME_OF_ALTER,
    NAME_OF_TYPE,
    ORNAMENT_NAMES,
    OTHER_ORNAMENT,
)
from core.tune import Bar, Note, Pitch, Tune, note_value
from core.values import dataclass
from core.writing.beam_values import bar_beams, grace_beams
from core.writing.grid import Grid
from core.writing.xml_tree import add
from core.written_bows import hook_sides, written_bows
from core.xml_characters import with_xml_characters

_VOICE = "1"


@dataclass(frozen=True, slots=True)
class _Stroke:
    """What one note shows of slurs, ties and tuplets."""

    slur: str = ""
    tied_on: bool = False  # to the note after it
    tuplet_stops: bool = False


class NoteWriter:
    """Writes the notes of one bowing, bar by bar.

    Args:
        tune: The tune.
        bowing: What stands on its notes.
        grid: Of the tune.
        prefix: Put before note ids, so that they are unique in the document.
    """

    def __init__(self, tune: Tune, bowing: Bowing, grid: Grid, prefix: str) -> None:
        self._bowing, self._grid, self._prefix = bowing, grid, prefix
        self._links = _links(tune, bowing)
        self._dotted = hook_sides(tune, (i for i, how in bowing.joins.items() if how is Join.HOOK))
        self._bows = written_bows(tune, bowing)

    def elements(self, bar: Bar) -> list[list[etree._Element]]:
        """The elements of each note of a bar: its grace notes, then one for each pitch."""
        accidentals, beams = BarAccidentals(bar.key), bar_beams(bar)
        return [list(self._note(bar, note, accidentals, beams.get(place, ()))) for place, note in enumerate(bar.notes)]

    def _note(
        self, bar: Bar, note: Note, accidentals: BarAccidentals, beams: Sequence[str]
    ) -> Iterator[etree._Element]:
        graces = self._bowing.signs_on(note.id).graces
        beams_of_graces = grace_beams(graces)
        for place, grace in enumerate(graces):
            yield from _grace(grace, accidentals, beams_of_graces.get(place, ()))
        for place, pitch in enumerate(note.pitches or (None,)):
            element = etree.Element("note")
            if place == 0:
                element.set("id", with_xml_characters(self._prefix + note.id))
                if note.hidden:
                    element.set("print-object", "no")
            else:
                add(element, "chord")
            self._fill_note(element, bar, note, pitch, accidentals)
            for level, beam in enumerate(beams if place == 0 else (), start=1):
                add(element, "beam", beam, number=str(level))
            self._add_notations(element, note, first=place == 0)
            yield element

    def _fill_note(
        self, element: etree._Element, bar: Bar, note: Note, pitch: Pitch | None, accidentals: BarAccidentals
    ) -> None:
        links = self._links[note.id]
        if pitch is None:
            rest = add(element, "rest")
            if note.length == bar.meter.bar_length and len(bar.notes) == 1:
                rest.set("measure", "yes")
        else:
            _add_pitch(element, pitch)
        add(element, "duration", self._grid(note.length))
        if pitch is not None and note.held:
            add(element, "tie", type="stop")
        if pitch is not None and links.tied_on:
            add(element, "tie", type="start")
        add(element, "voice", _VOICE)
        _add_type(element, note.length, note)
        if pitch is not None:
            _add_accidental(element, pitch, accidentals, needed=not note.held, courtesy=note.courtesy)
        if note.tuplet:
            modification = add(element, "time-modification")
            add(modification, "actual-notes", note.tuplet.actual)
            add(modification, "normal-notes", note.tuplet.normal)

    def _add_notations(self, element: etree._Element, note: Note, first: bool) -> None:
        """Append the ``notations``: ties on every pitch, all else on the first."""
        links, signs = self._links[note.id], self._bowing.signs_on(note.id)
        notations = etree.Element("notations")
        if not note.is_rest and note.held:
            add(notations, "tied", type="stop")
        if not note.is_rest and links.tied_on:
            add(notations, "tied", type="start")
        if first:
            if note.tuplet and note.tuplet.starts:
                add(notations, "tuplet", type="start", bracket="no" if self._is_beamed(note) else "yes")
            if links.tuplet_stops:
                add(notations, "tuplet", type="stop")
            if links.slur:
                add(notations, "slur", type=links.slur, number="1")
            _add_ornaments(notations, signs.ornaments)
            if note.id in self._bows or signs.fingerings:
                technical = add(notations, "technical")
                if note.id in self._bows:
                    add(technical, BOW_NAMES[self._bows[note.id]])
                for finger in signs.fingerings:
                    add(technical, "fingering", finger)
            articulations = signs.articulations
            if note.id in self._dotted and Articulation.STACCATO not in articulations:
                articulations = (*articulations, Articulation.STACCATO)
            _add_articulations(notations, articulations)
        if len(notations):
            element.append(notations)

    def _is_beamed(self, note: Note) -> bool:
        value = note_value(note.length, note.tuplet)
        return value is not None and value[0] < 1


def _links(tune: Tune, bowing: Bowing) -> dict[str, _Stroke]:
    """Slurs, ties and tuplet ends by note id; each stroke of more than one attack is one slur."""
    sequence = tune.sequence
    links = {}
    joined = [note.held or note.id in bowing.joins for note in sequence]
    first = 0  # of the stroke
    for place, note in enumerate(sequence):
        if not joined[place]:
            first = place
        after = sequence[place + 1] if place + 1 < len(sequence) else None
        goes_on = after is not None and joined[place + 1]
        slur = ""
        if goes_on and place == first and _is_slurred(tune, bowing, place):
            slur = "start"
        elif not goes_on and any(other.id in bowing.joins for other in sequence[first + 1 : place + 1]):
            slur = "stop"
        in_tuplet = after is not None and after.tuplet is not None and not after.tuplet.starts
        links[note.id] = _Stroke(slur, after is not None and after.held, note.tuplet is not None and not in_tuplet)
    return links


def _is_slurred(tune: Tune, bowing: Bowing, first: int) -> bool:
    """Whether the stroke that begins at this place joins another note, and not only holds its own."""
    for note in tune.sequence[first + 1 :]:
        if note.id in bowing.joins:
            return True
        if not note.held:
            return False
    return False


def _add_pitch(element: etree._Element, pitch: Pitch) -> None:
    child = add(element, "pitch")
    add(child, "step", pitch.step)
    if pitch.alter:
        add(child, "alter", pitch.alter)
    add(child, "octave", pitch.octave)


def _add_type(element: etree._Element, length: Fraction, note: Note | None = None) -> None:
    value = note_value(length, note.tuplet if note else None)
    if value is not None:
        base, dots = value
        add(element, "type", NAME_OF_TYPE[base])
        for _ in range(dots):
            add(element, "dot")


def _add_accidental(
    element: etree._Element, pitch: Pitch, accidentals: BarAccidentals, needed: bool = True, courtesy: bool = False
) -> None:
    if courtesy:
        add(element, "accidental", NAME_OF_ALTER[pitch.alter], cautionary="yes")
    elif needed and accidentals.needed(pitch):
        add(element, "accidental", NAME_OF_ALTER[pitch.alter])
    if needed:
        accidentals.write(pitch)


def _grace(grace: Grace, accidentals: BarAccidentals, beams: Sequence[str]) -> Iterator[etree._Element]:
    for place, pitch in enumerate(grace.pitches):
        element = etree.Element("note")
        add(element, "grace", slash="yes" if grace.slashed else "no")
        if place:
            add(element, "chord")
        _add_pitch(element, pitch)
        add(element, "voice", _VOICE)
        _add_type(element, grace.length)
        _add_accidental(element, pitch, accidentals)
        for level, beam in enumerate(beams if place == 0 else (), start=1):
            add(element, "beam", beam, number=str(level))
        yield element


def _add_ornaments(notations: etree._Element, signs: Sequence[Ornament]) -> None:
    if signs:
        ornaments = add(notations, "ornaments")
        for sign in signs:
            name = ORNAMENT_NAMES[sign]
            add(ornaments, name, sign.value if name == OTHER_ORNAMENT else None)


def _add_articulations(notations: etree._Element, signs: Sequence[Articulation]) -> None:
    """One holder after the other, a new one where the kind changes, so that file order is their order."""
    holder, name = notations, ""
    for sign in signs:
        if ARTICULATION_HOLDERS[sign] != name:
            name = ARTICULATION_HOLDERS[sign]
            holder = add(notations, name) if name else notations
        add(holder, sign.value)
