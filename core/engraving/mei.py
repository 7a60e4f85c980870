"""Our own MEI for one line of one bowing: the only text that ever reaches the engraver.

The document says what is drawn, not what is played: directions of the bow are left out, and over notes that shall carry
a bow sign stands a sign of that height, or of two where there may be two rows, to keep room for it. Where a slur or tie
crosses the end of the line, the document also holds the neighbouring bar, on a page of its own.

Elements: MEI 5, as the engraver (verovio) reads them.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import field, replace
from fractions import Fraction

from core.bowing import Bowing, Grace, Join, Ornament, Signs
from core.engraving.grace_room import NO_ROOM, GraceRoom
from core.engraving.kinds import Kind
from core.engraving.line_curves import LineCurve, curves_on
from core.engraving.lines import Line
from core.engraving.note_marks import ARTICULATIONS, BESIDE_HEAD, BOW_ROOM, CONTROL_SIGNS, ORNAMENTS, ROOM_GLYPHS
from core.engraving.printed_words import BESIDE_TEXT, chord_text, clean_text, ending_text, right_aligned, tempo_text
from core.engraving.signatures import changes, has_changes, key_signature, meter_signature, warning
from core.engraving.skeleton import (
    Printed,
    accidentals,
    attributes,
    nest,
    pitch_attributes,
    spans,
    value,
)
from core.engraving.xml_text import escape, quoteattr
from core.tune import Bar, BarLine, Note, Pitch, Tune
from core.values import dataclass

_HEAD = (
    '<?xml version="1.0" encoding="UTF-8"?><mei xmlns="http://www.music-encoding.org/ns/mei" meiversion="5.1">'
    "<meiHead><fileDesc><titleStmt><title/></titleStmt><pubStmt/></fileDesc></meiHead>"
    "<music><body><mdiv><score>"
)
_FOOT = "</section></score></mdiv></body></music></mei>"


@dataclass(frozen=True, slots=True)
class Name:
    """What one of our XML ids stands for.

    Attributes:
        kind: What it is.
        note: Id of the note that it belongs to: for slurs and ties the first one; "" where it belongs to none.
        end: For slurs and ties the last note.
        bar: For bars the index in ``Tune.bars``.
    """

    kind: Kind
    note: str = ""
    end: str = ""
    bar: int = -1


@dataclass(frozen=True)
class Document:
    """An MEI document for one line.

    Attributes:
        text: The document.
        page: The page that the line is on, counted from 1; neighbouring bars have pages of their own.
        names: What our ids in it stand for.
        number: The bar number printed at the start of the line, or None.
        tempo: The tempo mark to print over the start of the line, notes as SMuFL characters, or "". It is not in the
            document, where it would push the chords up.
        changes: A new key or metre stands behind one of the line's bar lines.
    """

    text: str
    page: int
    names: Mapping[str, Name]
    number: int | None
    tempo: str = ""
    changes: bool = False


def write_line(
    tune: Tune,
    bowing: Bowing,
    line: Line,
    slots: Mapping[str, int],
    *,
    alone: bool = False,
    room: GraceRoom = NO_ROOM,
) -> Document:
    """Write the document for one line.

    Args:
        tune: The tune.
        bowing: One of its bowings.
        line: Which bars.
        slots: For how many rows of bow signs room is kept over a note, by note id.
        alone: Leave out slurs and ties that cross the ends of the line, and so all neighbouring bars.
        room: Grace notes that are never drawn and take their room before a note and its own.
    """
    curves = curves_on(tune, bowing, line)
    by_bar: dict[int, list[LineCurve]] = {}
    first, stop = line.first, line.stop
    for curve in curves:
        start, end = tune.bar_of[curve.start], tune.bar_of[curve.end]
        if not alone or line.first <= start <= end < line.stop:
            first, stop = min(first, start), max(stop, end + 1)
            by_bar.setdefault(start, []).append(curve)
    number = _first_number(tune, line)
    writer = _Writer(tune, bowing, line, slots, number, room)
    body = "".join(writer.measures(range(first, stop), by_bar))
    return Document(
        _HEAD + writer.score_definition(first) + "<section>" + body + _FOOT,
        1 if first == line.first else 2,
        writer.names,
        number,
        _tempo(tune, line),
        has_changes(tune, line),
    )


def _first_number(tune: Tune, line: Line) -> int | None:
    """The number printed where a line begins: of its first full bar; none on the first line."""
    if line.first == 0:
        return None
    bars = tune.bars[line.first : line.stop]
    return next((bar.number for bar in bars if not bar.is_pickup), bars[0].number)


@dataclass
class _Writer:
    """Writes the bars of one document; ``names`` fills on the way."""

    tune: Tune
    bowing: Bowing
    line: Line
    slots: Mapping[str, int]
    number: int | None
    room: GraceRoom
    names: dict[str, Name] = field(default_factory=dict)

    def score_definition(self, first: int) -> str:
        bar = self.tune.bars[first]
        meter = meter_signature(bar.meter, shown=self._shows_meter(first))
        return (
            f'<scoreDef><staffGrp><staffDef n="1" lines="5"><clef shape="G" line="2"/>{key_signature(bar.key)}{meter}'
            "</staffDef></staffGrp></scoreDef>"
        )

    def _shows_meter(self, index: int) -> bool:
        """On the first line, and where a line begins in another metre than the line before it ends."""
        bars = self.tune.bars
        if index < self.line.first:
            return False
        return index == 0 or bars[index - 1].meter != bars[index].meter

    def measures(self, indexes: range, curves: Mapping[int, list[LineCurve]]) -> Iterator[str]:
        bars = self.tune.bars
        ending: tuple[int, ...] = ()
        for index in indexes:
            bar = bars[index]
            if ending and (bar.ending != ending or bars[index - 1].ends_section):
                yield "</ending>"
                ending = ()
            if index in (self.line.first, self.line.stop):
                yield "<pb/>"
            if indexes.start < index < self.line.stop:
                yield changes(bars[index - 1], bar)
            if bar.ending and not ending:
                goes_on = index == self.line.first and index > 0 and bars[index - 1].ending == bar.ending
                goes_on = goes_on and not bars[index - 1].ends_section
                yield f"<ending n={quoteattr('' if goes_on else ending_text(bar.ending))}>"
                ending = bar.ending
            yield self._measure(index, curves.get(index, []))
            if index == self.line.stop - 1 and (warned := warning(self.tune, self.line)):
                yield f"</ending>{warned}" if ending else warned
                ending = ()
        if ending:
            yield "</ending>"

    def _measure(self, index: int, curves: list[LineCurve]) -> str:
        bar = self.tune.bars[index]
        bar_id = f"_bar{index}"
        self.names[bar_id] = Name(Kind.STAFF, bar=index)
        left = ' left="rptstart"' if bar.opens_repeat else ""
        partial = "" if bar.meter.bar_length in (None, bar.length) else ' metcon="false"'
        number = f"<mNum>{self.number}</mNum>" if self.number is not None and index == self.line.first else ""
        music = f'<staff n="1"><layer n="1">{self._layer(index)}</layer></staff>'
        signs = (*self._signs_at_bar(index), *self._chords(index), *self._note_signs(bar), *self._drawn(curves))
        return (
            f'<measure xml:id="{bar_id}" n="{bar.number}"{partial}{left} right="{_right(bar)}">'
            f"{number}{music}{''.join(signs)}</measure>"
        )

    # Notes

    def _layer(self, index: int) -> str:
        bar = self.tune.bars[index]
        if not bar.notes:
            return "<mSpace/>"
        if len(bar.notes) == 1 and bar.notes[0].is_rest and bar.length == bar.meter.bar_length:
            rest = bar.notes[0]
            self.names[rest.id] = Name(Kind.NOTE, rest.id)
            return f"<{'mSpace' if rest.hidden else 'mRest'} xml:id={quoteattr(rest.id)}/>"
        signs = self.bowing.signs
        graced = [note.id for note in bar.notes if note.id in signs and signs[note.id].graces]
        graces = tuple((note_id, signs[note_id].graces) for note_id in graced)
        printed = accidentals(self.tune, index, graces, again=index == self.line.first)
        music: Iterator[tuple[str, str]] = map(self._note, bar.notes, printed)
        if self.room and any(note.id in self.room for note in bar.notes):
            music = self._with_room(index, music)
        return "".join(nest(spans(self.tune, index), music))

    def _with_room(self, index: int, music: Iterator[tuple[str, str]]) -> Iterator[tuple[str, str]]:
        """Notes with the grace notes before them for which there is only room."""
        bar = self.tune.bars[index]
        given = tuple((note.id, self.room[note.id]) for note in bar.notes if note.id in self.room)
        printed = accidentals(self.tune, index, given)
        for note, accids, (graces, text) in zip(bar.notes, printed, music, strict=True):
            unseen = tuple(map(_off_ledger_lines, self.room.get(note.id, ())))
            yield self._graces(note.id, unseen, accids.graces, Kind.ROOM) + graces, text

    def _note(self, note: Note, accids: Printed) -> tuple[str, str]:
        """Graces and note as MEI."""
        self.names[note.id] = Name(Kind.NOTE, note.id)
        about = attributes(self.tune)[note.id]
        if note.is_rest:
            return "", f"<{'space' if note.hidden else 'rest'} {about}/>"
        signs = self.bowing.signs_on(note.id)
        graces = self._graces(note.id, signs.graces, accids.graces)
        if Ornament.BOWED_TRIPLET in signs.ornaments:
            about += ' stem.mod="1slash"'
        marks = "".join(self._artics(note, signs))
        if len(note.pitches) == 1:
            return graces, f"<note {about} {pitch_attributes(note.pitches[0])}>{accids.heads[0]}{marks}</note>"
        inner = []
        for place, (pitch, head) in enumerate(zip(note.pitches, accids.heads, strict=True), 1):
            head_id = f"_head{place}.{note.id}"
            self.names[head_id] = Name(Kind.NOTE, note.id)
            inner.append(f"<note xml:id={quoteattr(head_id)} {pitch_attributes(pitch)}>{head}</note>")
        return graces, f"<chord {about}>{''.join(inner)}{marks}</chord>"

    def _graces(
        self, note_id: str, graces: tuple[Grace, ...], accids: tuple[tuple[str, ...], ...], kind_of: Kind = Kind.GRACE
    ) -> str:
        if not graces:
            return ""
        written = []
        for place, (grace, signs) in enumerate(zip(graces, accids, strict=True), 1):
            grace_id = f"_{kind_of.value}{place}.{note_id}"
            self.names[grace_id] = Name(kind_of, note_id)
            kind = f'xml:id={quoteattr(grace_id)} grace="{"unacc" if grace.slashed else "acc"}" {value(grace.length)}'
            kind += ' stem.dir="up"' + (' stem.mod="1slash"' if grace.slashed and len(graces) == 1 else "")
            heads = [
                f"{pitch_attributes(pitch)}{{}}>{sign}</note>" for pitch, sign in zip(grace.pitches, signs, strict=True)
            ]
            if len(heads) == 1:
                written.append(f"<note {heads[0].format(f' {kind}')}")
            else:
                written.append(f"<chord {kind}>{''.join('<note ' + head.format('') for head in heads)}</chord>")
        text = "".join(written)
        if len(graces) == 1 or any(grace.length > Fraction(1, 2) for grace in graces):
            return text
        if kind_of is Kind.GRACE:
            return f"<beam>{text}</beam>"
        beam_id = f"_{kind_of.value}.{note_id}"
        self.names[beam_id] = Name(kind_of, note_id)
        return f"<beam xml:id={quoteattr(beam_id)}>{text}</beam>"

    def _artics(self, note: Note, signs: Signs) -> Iterator[str]:
        """Articulations from the note head outward."""
        given = signs.articulations
        if self._is_hooked(note) and not BESIDE_HEAD & set(given):
            yield '<artic artic="stacc"/>'
        for near in (True, False):
            for sign in given:
                if sign in ARTICULATIONS and (sign in BESIDE_HEAD) is near:
                    place = "" if near else ' place="above"'
                    for value in ARTICULATIONS[sign].split("-"):
                        yield f'<artic artic="{value}"{place}/>'

    def _is_hooked(self, note: Note) -> bool:
        """A stop of the bow stands before or after the note, inside its stroke (rule B9)."""
        if note.held:
            return False
        if self.bowing.joins.get(note.id) is Join.HOOK:
            return True
        after = self.tune.after(note.id)
        while after is not None and after.held:
            after = self.tune.after(after.id)
        return after is not None and self.bowing.joins.get(after.id) is Join.HOOK

    # What points at notes

    def _note_signs(self, bar: Bar) -> Iterator[str]:
        for note in bar.notes:
            signs = self.bowing.signs_on(note.id)
            at = f"startid={quoteattr('#' + note.id)}"
            if note.id in self.slots:
                glyph = ROOM_GLYPHS[self.slots[note.id] - 1]
                yield self._named(BOW_ROOM.format(at=at, glyph=glyph), Kind.BOW, note.id)
            for ornament in signs.ornaments:
                yield self._named(ORNAMENTS[ornament].format(at=at), Kind.SIGN, note.id)
            for finger in signs.fingerings:
                text = f"{BESIDE_TEXT}{escape(clean_text(finger))}{BESIDE_TEXT}"
                yield self._named(f'<fing {at} place="above">{text}</fing>', Kind.SIGN, note.id)
            for sign in signs.articulations:
                if sign in CONTROL_SIGNS:
                    yield self._named(CONTROL_SIGNS[sign].format(at=at), Kind.SIGN, note.id)

    def _named(self, element: str, kind: Kind, note_id: str) -> str:
        """The element with an id of ours."""
        element_id = f"_sign{len(self.names)}"
        self.names[element_id] = Name(kind, note_id)
        return element.replace(" ", f' xml:id="{element_id}" ', 1)

    def _drawn(self, curves: list[LineCurve]) -> Iterator[str]:
        for curve in curves:
            if curve.tie:
                yield from self._ties(curve)
                continue
            curve_id = f"_slur.{curve.of}"
            self.names[curve_id] = Name(Kind.SLUR, curve.of, curve.to)
            yield self._curve("slur", curve_id, curve.start, curve.end)

    def _ties(self, curve: LineCurve) -> Iterator[str]:
        before, note = self.tune.note(curve.start), self.tune.note(curve.end)
        for place, pitch in enumerate(before.pitches, 1):
            if pitch not in note.pitches:
                continue
            tie_id = f"_tie{place}.{before.id}"
            self.names[tie_id] = Name(Kind.TIE, before.id, note.id)
            yield self._curve("tie", tie_id, _head_id(before, pitch), _head_id(note, pitch))

    def _curve(self, element: str, curve_id: str, start: str, end: str) -> str:
        return (
            f"<{element} xml:id={quoteattr(curve_id)} startid={quoteattr('#' + start)} endid={quoteattr('#' + end)}/>"
        )

    def _chords(self, index: int) -> Iterator[str]:
        bar = self.tune.bars[index]
        for chord in bar.chords:
            text = chord_text(chord.text)
            if text:
                yield self._named(f'<harm {_at(bar, chord.at)} place="above">{escape(text)}</harm>', Kind.CHORD, "")

    def _signs_at_bar(self, index: int) -> Iterator[str]:
        bar = self.tune.bars[index]
        if bar.part:
            part = escape(clean_text(bar.part))
            yield self._named(f'<reh tstamp="0" place="above"><rend rend="box">{part}</rend></reh>', Kind.PART, "")
        for present, func in ((bar.segno, "segno"), (bar.coda, "coda")):
            if present:
                yield self._named(f'<repeatMark tstamp="1" place="above" func="{func}"/>', Kind.WORDS, "")
        for words in bar.words:
            text = escape(clean_text(words.text))
            if text:
                place = "above" if words.above else "below"
                yield self._named(
                    f'<dir {_at(bar, words.at)} place="{place}">{text}{BESIDE_TEXT * 2}</dir>', Kind.WORDS, ""
                )
        ends = [text for text in ("To \ue048" if bar.to_coda else "", "Fine" if bar.fine else "") if text]
        if bar.jump is not None:
            ends.append(bar.jump.value)
        for text in ends:
            yield self._named(f'<dir {_at_end(bar)} place="above">{right_aligned(text)}</dir>', Kind.WORDS, "")


def _right(bar: Bar) -> str:
    if bar.repeats:
        return "rptend"
    return {BarLine.PLAIN: "single", BarLine.DOUBLE: "dbl", BarLine.FINAL: "end"}[bar.line]


def _off_ledger_lines(grace: Grace) -> Grace:
    """A grace note that is not drawn, moved by octaves onto the staff: its ledger lines would be drawn there."""
    octave = 4 if grace.pitches[0].step in "EFGAB" else 5
    moved = octave - grace.pitches[0].octave
    return replace(grace, pitches=tuple(replace(pitch, octave=pitch.octave + moved) for pitch in grace.pitches))


def _head_id(note: Note, pitch: Pitch) -> str:
    return note.id if len(note.pitches) == 1 else f"_head{note.pitches.index(pitch) + 1}.{note.id}"


def _at(bar: Bar, at: Fraction) -> str:
    """Where something stands: at the note that starts there, else at its time in the bar."""
    for note in bar.notes:
        if note.at == at and not note.hidden:
            return f"startid={quoteattr('#' + note.id)}"
    return f'tstamp="{float(1 + at * bar.meter.unit / 4):g}"'


def _at_end(bar: Bar) -> str:
    return f'tstamp="{float(1 + bar.length * bar.meter.unit / 4):g}"'


def _tempo(tune: Tune, line: Line) -> str:
    return tempo_text(tune.tempo) if tune.tempo is not None and line.first == 0 else ""
