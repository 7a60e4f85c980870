"""What music21 and verovio make of a MusicXML text of ours, told in the same words as the lesson itself.

For each part: pitches and lengths, slurs as (first, last) places, bows and graces by place, endings and repeats by
bar. Places count all notes and rests of the part in written order, grace notes left aside.
"""

from __future__ import annotations

import warnings
from dataclasses import dataclass
from fractions import Fraction

import verovio
from lxml import etree

from core.bowing import Bow, Bowing
from core.lesson import Lesson
from core.written_bows import written_bows

MEI = {"mei": "http://www.music-encoding.org/ns/mei"}
ID = "{http://www.w3.org/XML/1998/namespace}id"


@dataclass(frozen=True)
class Shown:
    """What stands in one part.

    Attributes:
        pitches: MIDI keys of each note, low to high; empty for a rest.
        lengths: Of each note and rest, in quarter notes.
        slurs: (place of the first note, place of the last note).
        bows: (place, direction).
        graces: (place of the main note, MIDI keys of the grace, low to high) in the order played.
        endings: Passes of each bar, empty outside endings.
        repeats: Of each bar, whether a repeat opens there, and whether one closes.
    """

    pitches: tuple[tuple[int, ...], ...]
    lengths: tuple[Fraction, ...]
    slurs: frozenset[tuple[int, int]]
    bows: frozenset[tuple[int, Bow]]
    graces: tuple[tuple[int, tuple[int, ...]], ...]
    endings: tuple[tuple[int, ...], ...]
    repeats: tuple[tuple[bool, bool], ...]


def shown_by(lesson: Lesson, bowing: Bowing) -> Shown:
    """What the file of a lesson has to show in the part of a bowing."""
    tune = lesson.tune
    places = tune.places
    slurs, first = set(), 0
    for place, note in enumerate(tune.sequence):
        if not note.held and note.id not in bowing.joins:
            first = place
        goes_on = place + 1 < len(tune.sequence) and (
            tune.sequence[place + 1].held or tune.sequence[place + 1].id in bowing.joins
        )
        if not goes_on and any(other.id in bowing.joins for other in tune.sequence[first + 1 : place + 1]):
            slurs.add((first, place))
    return Shown(
        tuple(tuple(sorted(pitch.midi for pitch in note.pitches)) for note in tune.sequence),
        tuple(note.length for note in tune.sequence),
        frozenset(slurs),
        frozenset((places[note_id], bow) for note_id, bow in written_bows(tune, bowing).items()),
        tuple(
            (place, tuple(sorted(pitch.midi for pitch in grace.pitches)))
            for place, note in enumerate(tune.sequence)
            for grace in bowing.signs_on(note.id).graces
        ),
        tuple(bar.ending for bar in tune.bars),
        tuple((bar.opens_repeat, bar.repeats > 0) for bar in tune.bars),
    )


def read_by_music21(text: str) -> list[Shown]:
    """Each part as music21 reads it."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        from music21 import articulations, converter, spanner

        score = converter.parse(text, format="musicxml")
    shown = []
    for part in score.parts:
        notes = [note for note in part.flatten().notesAndRests if "ChordSymbol" not in note.classes]
        places, graces, place, waiting = {}, [], 0, []
        for note in notes:
            if note.duration.isGrace:
                waiting.append(_midi(note))
                continue
            places[id(note)] = place
            graces += [(place, keys) for keys in waiting]
            waiting = []
            place += 1
        real = [note for note in notes if id(note) in places]
        measures = list(part.getElementsByClass("Measure"))
        endings: list[tuple[int, ...]] = [()] * len(measures)
        for bracket in part.recurse().getElementsByClass(spanner.RepeatBracket):
            numbers = tuple(int(word) for word in str(bracket.number).replace(",", " ").split())
            first, last = (measures.index(measure) for measure in (bracket.getFirst(), bracket.getLast()))
            endings[first : last + 1] = [numbers] * (last + 1 - first)
        shown.append(
            Shown(
                tuple(() if note.isRest else _midi(note) for note in real),
                tuple(Fraction(note.duration.quarterLength) for note in real),
                frozenset(
                    (places[id(slur.getFirst())], places[id(slur.getLast())])
                    for slur in part.recurse().getElementsByClass(spanner.Slur)
                ),
                frozenset(
                    (places[id(note)], Bow.UP if isinstance(sign, articulations.UpBow) else Bow.DOWN)
                    for note in real
                    for sign in note.articulations
                    if isinstance(sign, articulations.UpBow | articulations.DownBow)
                ),
                tuple(graces),
                tuple(endings),
                tuple((_repeats(bar.leftBarline), _repeats(bar.rightBarline)) for bar in measures),
            )
        )
    return shown


def _repeats(bar_line: object) -> bool:
    return getattr(bar_line, "direction", None) is not None


def _midi(note: object) -> tuple[int, ...]:
    return tuple(sorted(int(pitch.ps) for pitch in note.pitches))  # type: ignore[attr-defined]


def read_by_verovio(text: str) -> list[Shown]:
    """Each part as verovio's MEI has it."""
    verovio.enableLog(verovio.LOG_OFF)
    toolkit = verovio.toolkit()
    toolkit.setOptions({"inputFrom": "musicxml"})
    assert toolkit.loadData(text)
    root = etree.fromstring(toolkit.getMEI({"removeIds": False}).encode())
    numbers = sorted({int(staff.get("n")) for staff in root.iterfind(".//mei:staff", MEI)})
    return [_from_mei(root, number) for number in numbers]


def _from_mei(root: etree._Element, staff_number: int) -> Shown:
    pitches, lengths, graces, endings, repeats, bows = [], [], [], [], [], set()
    places: dict[str, int] = {}
    waiting: list[tuple[int, ...]] = []
    quarter = int(root.find(f".//mei:staffDef[@n='{staff_number}']", MEI).get("ppq"))
    whole_bar = Fraction(4)
    for measure in root.iter(*(f"{{{MEI['mei']}}}{name}" for name in ("meterSig", "measure"))):
        if etree.QName(measure).localname == "meterSig":
            whole_bar = Fraction(4 * sum(map(int, measure.get("count", "4").split("+"))), int(measure.get("unit", "4")))
            continue
        bar_lines = [measure.get(side, "") for side in ("left", "right")]
        repeats.append(("start" in bar_lines[0], "end" in bar_lines[1] and bar_lines[1].startswith("rpt")))
        ending = measure.getparent()
        passes = ending.get("n", "") if etree.QName(ending).localname == "ending" else ""
        endings.append(tuple(int(word) for word in passes.replace(",", " ").split()))
        for element in measure.iterfind(f"mei:staff[@n='{staff_number}']//*", MEI):
            name = etree.QName(element).localname
            inside_chord = etree.QName(element.getparent()).localname == "chord"
            if name not in ("note", "chord", "rest", "mRest", "space", "mSpace") or inside_chord:
                continue
            keys = tuple(sorted(_key(note) for note in element.iter(f"{{{MEI['mei']}}}note")))
            if element.get("grace") or any(note.get("grace") for note in element):
                waiting.append(keys)
                continue
            place = len(pitches)
            for child in element.iter():
                if child.get(ID):
                    places[child.get(ID)] = place
            graces += [(place, grace) for grace in waiting]
            waiting = []
            pitches.append(keys)
            length = element.get("dur.ppq")
            lengths.append(whole_bar if length is None else Fraction(int(length), quarter))
            for sign in element.iter(f"{{{MEI['mei']}}}artic"):
                bows |= {
                    (place, Bow.UP if word == "upbow" else Bow.DOWN)
                    for word in sign.get("artic", "").split()
                    if word in ("upbow", "dnbow")
                }
    slurs = {
        (places[slur.get("startid")[1:]], places[slur.get("endid")[1:]])
        for slur in root.iterfind(".//mei:slur", MEI)
        if slur.get("startid", "")[1:] in places
    }
    return Shown(
        tuple(pitches),
        tuple(lengths),
        frozenset(slurs),
        frozenset(bows),
        tuple(graces),
        tuple(endings),
        tuple(repeats),
    )


def _key(note: etree._Element) -> int:
    steps = {"c": 0, "d": 2, "e": 4, "f": 5, "g": 7, "a": 9, "b": 11}
    alters = {"s": 1, "ss": 2, "x": 2, "f": -1, "ff": -2, "n": 0}
    children = [child.get("accid") or child.get("accid.ges") for child in note.iterfind("mei:accid", MEI)]
    sign = next(filter(None, [note.get("accid"), note.get("accid.ges"), *children]), "n")
    return 12 * (int(note.get("oct")) + 1) + steps[note.get("pname")] + alters[sign]
