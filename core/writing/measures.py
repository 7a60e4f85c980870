"""The measures of one part: a tune's bars with the slurs, bow marks and signs of one bowing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from lxml import etree

from core.accidentals import BarAccidentals
from core.bowing import Articulation, Bowing, Grace, Join, Ornament
from core.engraving.beams import beam_groups
from core.harmony import write_harmony
from core.measures import measure_numbers
from core.musicxml_names import (
    ARTICULATION_HOLDERS,
    BOW_NAMES,
    JUMP_SOUNDS,
    NAME_OF_ALTER,
    NAME_OF_TYPE,
    ORNAMENT_NAMES,
    OTHER_ORNAMENT,
)  # fmt: skip
from core.tune import SHARP_ORDER, Bar, BarLine, Key, Meter, Note, Pitch, Tempo, Tune, note_value
from core.writing.xml_tree import add, xml_text
from core.written_bows import hook_sides, written_bows

_VOICE = "1"
_BAR_STYLES = {BarLine.DOUBLE: "light-light", BarLine.FINAL: "light-heavy"}


class Grid:
    """Divisions of a quarter note in which everything in a tune falls on whole numbers."""

    def __init__(self, tune: Tune) -> None:
        times = {note.length for note in tune.sequence}
        times |= {chord.at for bar in tune.bars for chord in bar.chords}
        times |= {words.at for bar in tune.bars for words in bar.words}
        self.divisions = lcm(*(time.denominator for time in times))

    def __call__(self, time: Fraction) -> str:
        return str(int(time * self.divisions))


def hides_tonic(key: Key) -> bool:
    """Whether a key is written by its altered steps alone, which do not tell fifths and mode."""
    return bool(key.altered) and key != Key(0, "none", key.altered)


@dataclass(frozen=True, slots=True)
class _Stroke:
    """What one note shows of slurs, ties and tuplets."""

    slur: str = ""
    tied_on: bool = False  # to the note after it
    tuplet_stops: bool = False


def add_measures(part: etree._Element, tune: Tune, bowing: Bowing, grid: Grid, prefix: str, leads: bool) -> None:
    """Append the measures of a bowing's part.

    Args:
        part: The part element.
        tune: The tune.
        bowing: What stands on its notes.
        grid: Of the tune.
        prefix: Put before note ids, so that they are unique in the document.
        leads: This part carries what belongs to the tune as a whole.
    """
    _MeasureWriter(tune, bowing, grid, prefix, leads).write(part)


class _MeasureWriter:
    def __init__(self, tune: Tune, bowing: Bowing, grid: Grid, prefix: str, leads: bool) -> None:
        self._tune, self._bowing, self._grid, self._prefix, self._leads = tune, bowing, grid, prefix, leads
        self._links = _links(tune, bowing)
        self._dotted = hook_sides(tune, (i for i, how in bowing.joins.items() if how is Join.HOOK))
        self._bows = written_bows(tune, bowing)

    def write(self, part: etree._Element) -> None:
        bars = self._tune.bars
        opens, closes = _ending_brackets(bars)
        for index, (bar, number) in enumerate(zip(bars, measure_numbers([bar.number for bar in bars]), strict=True)):
            measure = add(part, "measure", number=number.text)
            if number.implicit:
                measure.set("implicit", "yes")
            _add_left_barline(measure, bar, index in opens)
            self._add_attributes(measure, bar, bars[index - 1] if index else None)
            if self._leads:
                _add_opening(measure, bar, self._tune.tempo if index == 0 else None)
            self._add_music(measure, bar)
            if self._leads:
                _add_closing(measure, bar)
            _add_right_barline(measure, bar, index in closes, is_last=index == len(bars) - 1)

    def _add_attributes(self, measure: etree._Element, bar: Bar, before: Bar | None) -> None:
        if before is not None and (before.key, before.meter) == (bar.key, bar.meter):
            return
        attributes = add(measure, "attributes")
        if before is None:
            add(attributes, "divisions", self._grid.divisions)
        if before is None or before.key != bar.key:
            _add_key(attributes, bar.key)
        if before is None or before.meter != bar.meter:
            _add_time(attributes, bar.meter)
        if before is None:
            clef = add(attributes, "clef")
            add(clef, "sign", "G")
            add(clef, "line", 2)

    def _add_music(self, measure: etree._Element, bar: Bar) -> None:
        timed = self._timed(bar) if self._leads else []
        accidentals = BarAccidentals(bar.key)
        beams = _beams(bar)
        starts = [note.at for note in bar.notes] or [Fraction(0)]
        for place, start in enumerate(starts):
            stop = starts[place + 1] if place + 1 < len(starts) else None
            for at, element in timed:
                if (place == 0 or at >= start) and (stop is None or at < stop):
                    if at != start:
                        _set_offset(element, self._grid(at - start))
                    measure.append(element)
            if bar.notes:
                self._add_note(measure, bar, bar.notes[place], accidentals, beams.get(place, ()))

    def _timed(self, bar: Bar) -> list[tuple[Fraction, etree._Element]]:
        """Chords and words with their places in the bar."""
        chords = [(chord.at, write_harmony(chord.text)) for chord in bar.chords]
        texts = []
        for words in bar.words:
            direction = etree.Element("direction", placement="above" if words.above else "below")
            add(add(direction, "direction-type"), "words", words.text)
            texts.append((words.at, direction))
        return chords + texts

    def _add_note(
        self, measure: etree._Element, bar: Bar, note: Note, accidentals: BarAccidentals, beams: Sequence[str]
    ) -> None:
        graces = self._bowing.signs_on(note.id).graces
        grace_beams = _beam_levels([_flags(grace.length) for grace in graces]) if len(graces) > 1 else {}
        for place, grace in enumerate(graces):
            _add_grace(measure, grace, accidentals, grace_beams.get(place, ()))
        for place, pitch in enumerate(note.pitches or (None,)):
            element = add(measure, "note")
            if place == 0:
                element.set("id", xml_text(self._prefix + note.id))
                if note.hidden:
                    element.set("print-object", "no")
            else:
                add(element, "chord")
            self._fill_note(element, bar, note, pitch, accidentals)
            for level, beam in enumerate(beams if place == 0 else (), start=1):
                add(element, "beam", beam, number=str(level))
            self._add_notations(element, note, first=place == 0)

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


# ---- what one note shows of its neighbours


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


def _beams(bar: Bar) -> dict[int, tuple[str, ...]]:
    """Beam values by place in the bar, first level first."""
    beams: dict[int, tuple[str, ...]] = {}
    for group in beam_groups(bar):
        levels = _beam_levels([_flags(bar.notes[place].length, bar.notes[place]) for place in group])
        beams.update({group[inner]: values for inner, values in levels.items()})
    return beams


def _beam_levels(flags: Sequence[int]) -> dict[int, tuple[str, ...]]:
    """Beam values of notes under one beam.

    Args:
        flags: Flags that each note would have alone (1 for an eighth).
    Returns:
        For each place the values of level 1, 2 ...: begin, continue, end, forward hook or backward hook.
    """
    if not flags or min(flags) < 1:
        return {}
    last = len(flags) - 1
    values: dict[int, tuple[str, ...]] = {}
    for place, count in enumerate(flags):
        of_note = []
        for level in range(1, count + 1):
            before = place > 0 and flags[place - 1] >= level
            after = place < last and flags[place + 1] >= level
            value = {(True, True): "continue", (True, False): "end", (False, True): "begin"}.get((before, after))
            of_note.append(value or ("forward hook" if place == 0 else "backward hook"))
        values[place] = tuple(of_note)
    return values


def _flags(length: Fraction, note: Note | None = None) -> int:
    """Flags of a note value: 1 for an eighth, 0 from a quarter up."""
    value = note_value(length, note.tuplet if note else None)
    flags = 0
    while value is not None and value[0] * 2**flags < 1:
        flags += 1
    return flags


# ---- elements of a note


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


def _add_grace(measure: etree._Element, grace: Grace, accidentals: BarAccidentals, beams: Sequence[str]) -> None:
    for place, pitch in enumerate(grace.pitches):
        element = add(measure, "note")
        add(element, "grace", slash="yes" if grace.slashed else "no")
        if place:
            add(element, "chord")
        _add_pitch(element, pitch)
        add(element, "voice", _VOICE)
        _add_type(element, grace.length)
        _add_accidental(element, pitch, accidentals)
        for level, beam in enumerate(beams if place == 0 else (), start=1):
            add(element, "beam", beam, number=str(level))


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


# ---- attributes, bar lines, directions


def _add_key(attributes: etree._Element, key: Key) -> None:
    element = add(attributes, "key")
    if not key.altered:
        add(element, "fifths", key.fifths)
        add(element, "mode", key.mode)
        return
    alters = key.alters()
    steps = [step for step in SHARP_ORDER if alters[step] or step in dict(key.altered)]
    for step in steps if hides_tonic(key) else [step for step, _ in key.altered]:
        add(element, "key-step", step)
        add(element, "key-alter", alters[step])


def _add_time(attributes: etree._Element, meter: Meter) -> None:
    time = add(attributes, "time")
    if not meter.groups:
        add(time, "senza-misura")
        return
    if meter.sign:
        time.set("symbol", meter.sign)
    add(time, "beats", "+".join(map(str, meter.groups)))
    add(time, "beat-type", meter.unit)


def _ending_brackets(bars: Sequence[Bar]) -> tuple[set[int], set[int]]:
    """Indexes of the bars where an ending's bracket opens, and of those where it closes."""
    opens = {
        index
        for index, bar in enumerate(bars)
        if bar.ending
        and (index == 0 or bars[index - 1].ending != bar.ending or bars[index - 1].repeats or bar.opens_repeat)
    }
    closes = {
        index
        for index, bar in enumerate(bars)
        if bar.ending and (index + 1 == len(bars) or index + 1 in opens or not bars[index + 1].ending)
    }
    return opens, closes


def _ending_number(bar: Bar) -> str:
    return ", ".join(map(str, bar.ending))


def _add_left_barline(measure: etree._Element, bar: Bar, opens_ending: bool) -> None:
    if not bar.opens_repeat and not opens_ending:
        return
    barline = add(measure, "barline", location="left")
    if bar.opens_repeat:
        add(barline, "bar-style", "heavy-light")
    if opens_ending:
        add(barline, "ending", number=_ending_number(bar), type="start")
    if bar.opens_repeat:
        add(barline, "repeat", direction="forward")


def _add_right_barline(measure: etree._Element, bar: Bar, closes_ending: bool, is_last: bool) -> None:
    if not closes_ending and not bar.repeats and bar.line is BarLine.PLAIN:
        return
    barline = add(measure, "barline", location="right")
    style = _BAR_STYLES.get(bar.line, "light-heavy" if bar.repeats else "")
    if style:
        add(barline, "bar-style", style)
    if closes_ending:
        concludes = bar.repeats or bar.line is BarLine.FINAL or is_last
        add(barline, "ending", number=_ending_number(bar), type="stop" if concludes else "discontinue")
    if bar.repeats:
        repeat = add(barline, "repeat", direction="backward")
        if bar.repeats != 2 and not bar.ending:  # the standard keeps times out of endings
            repeat.set("times", str(bar.repeats))


def _direction(measure: etree._Element, name: str, text: str | None = None, /, **sound: str) -> etree._Element:
    direction = add(measure, "direction", placement="above")
    add(add(direction, "direction-type"), name, text)
    if sound:
        add(direction, "sound", **sound)
    return direction


def _set_offset(element: etree._Element, divisions: str) -> None:
    """Give a harmony or direction its offset, which follows its chord or its direction types."""
    offset = etree.Element("offset")
    offset.text = divisions
    element.append(offset)


def _add_opening(measure: etree._Element, bar: Bar, tempo: Tempo | None) -> None:
    """What stands over the beginning of a bar."""
    if tempo is not None:
        _add_tempo(measure, tempo)
    if bar.part:
        _direction(measure, "rehearsal", bar.part)
    if bar.segno:
        _direction(measure, "segno", segno="segno")
    if bar.coda:
        _direction(measure, "coda", coda="coda")


def _add_closing(measure: etree._Element, bar: Bar) -> None:
    """What stands over the end of a bar."""
    if bar.to_coda:
        _direction(measure, "words", "To Coda", tocoda="coda")
    if bar.fine:
        _direction(measure, "words", "Fine", fine="yes")
    if bar.jump:
        name, value = JUMP_SOUNDS[bar.jump]
        _direction(measure, "words", bar.jump.value, **{name: value})


def _add_tempo(measure: etree._Element, tempo: Tempo) -> None:
    direction = add(measure, "direction", placement="above")
    if tempo.text:
        add(add(direction, "direction-type"), "words", tempo.text)
    metronome = add(add(direction, "direction-type"), "metronome")
    first, *tied = _note_values(tempo.beat)
    _add_beat_unit(metronome, first)
    for value in tied:
        _add_beat_unit(add(metronome, "beat-unit-tied"), value)
    add(metronome, "per-minute", _decimal(tempo.per_minute) or str(tempo.per_minute))
    add(direction, "sound", tempo=f"{float(tempo.beat * tempo.per_minute):.4f}".rstrip("0").rstrip("."))


def _add_beat_unit(parent: etree._Element, value: tuple[Fraction, int]) -> None:
    base, dots = value
    add(parent, "beat-unit", NAME_OF_TYPE[base])
    for _ in range(dots):
        add(parent, "beat-unit-dot")


def _note_values(length: Fraction) -> Iterator[tuple[Fraction, int]]:
    """Note values, longest first, that make up a length."""
    while length > 0:
        value = note_value(length)
        if value is not None:
            yield value
            return
        base = max((base for base in NAME_OF_TYPE if base <= length), default=None)
        if base is None:
            return
        yield base, 0
        length -= base


def _decimal(number: Fraction) -> str:
    """The number as an exact decimal of at most six places, or empty where it has none."""
    scaled = number * 10**6
    if scaled.denominator != 1:
        return ""
    return f"{float(number):.6f}".rstrip("0").rstrip(".")
