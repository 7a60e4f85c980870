"""From a half-read MusicXML part to bars: the voice that is kept, gaps filled, lengths cut into note values, ties."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from core.accidentals import BarAccidentals
from core.lesson_fields import BarFacts
from core.measures import implied_repeats, printed_number
from core.reading.bar_starts import bar_starts
from core.reading.limits import MAX_NOTES
from core.reading.musicxml_draft import Complaints, DraftMeasure, DraftNote, DraftPart
from core.reading.note_lengths import is_exact, split_length
from core.translation import plural, tr
from core.tune import Bar, BarLine, Note, Tuplet, note_value
from core.values import dataclass

_OUR_ID = re.compile(r"(?:v\d+\.)?([A-Za-z][A-Za-z0-9._-]*)")


@dataclass(frozen=True)
class PartBars:
    """A part as bars.

    Attributes:
        bars: The bars; note ids are final.
        drafts: The half-read notes in written order, with the id of the (first) note that each became.
    """

    bars: tuple[Bar, ...]
    drafts: tuple[tuple[DraftNote, str], ...]


def build_bars(part: DraftPart, complaints: Complaints, is_ours: bool) -> PartBars:
    """Make bars of a part.

    Args:
        part: The half-read part; its main voice becomes known here.
        complaints: Where problems go.
        is_ours: The file is a lesson file, whose measures are taken as they are.
    """
    _choose_voice(part, complaints)
    measures = [piece for measure in part.measures for piece in _cut(measure, part.main_voice, complaints)]
    voices = [_voice_of(measure, part, complaints, is_ours) for measure in measures]
    held = _held_notes([note for notes in voices for note in notes], complaints)
    ids = _Ids(voices, is_ours)
    _close_endings(measures, complaints)
    _read_coda_signs(measures)
    endings = _endings(measures)
    numbers = _numbers(measures)
    bars: list[Bar] = []
    drafts: list[tuple[DraftNote, str]] = []
    for index, (measure, voice) in enumerate(zip(measures, voices, strict=True)):
        notes = tuple(_notes(measure, voice, held, ids, drafts, index, complaints, is_ours))
        bars.append(
            measure.to_bar(
                numbers[index],
                notes,
                measure.bar_line,
                ending=endings[index],
                chords=sorted(measure.chords, key=lambda item: item[0]),
                words=sorted(measure.words, key=lambda item: item[0]),
                repeats=_repeats(measure, endings, index),
            )
        )
    facts = [measure.facts for measure in measures]
    return PartBars(_with_starts(bars, facts, is_ours), tuple(drafts))


# ---- voices


def _choose_voice(part: DraftPart, complaints: Complaints) -> None:
    """Keep the voice of the first pitched note on the first staff, else of the first note at all."""
    notes = [(voice, note) for m in part.measures for voice, voice_notes in m.voices.items() for note in voice_notes]
    on_first = [voice for voice, note in notes if note.staff == "1" and not note.is_rest]
    part.main_voice = next(iter(on_first or [voice for voice, _ in notes]), "1")
    others = {voice for voice, note in notes if voice != part.main_voice and not note.is_rest}
    if others:
        text = plural(
            "One other voice was left out of part “{name}”: a lesson has one melody line.",
            "{n} other voices were left out of part “{name}”: a lesson has one melody line.",
            len(others), name=part.name[:40],
        )  # fmt: skip
        complaints.say(part.line, text)


def _voice_of(measure: DraftMeasure, part: DraftPart, complaints: Complaints, is_ours: bool) -> list[DraftNote]:
    """The notes of a measure that are kept, without gaps; gaps become hidden rests."""
    notes = measure.voices.get(part.main_voice)
    if notes is None and measure.voices:
        on_first = [voice for voice in measure.voices.values() if voice[0].staff == "1"]
        notes = next(iter(on_first), None)
    notes = sorted(notes or [], key=lambda note: note.at)
    kept: list[DraftNote] = []
    place = Fraction(0)
    for note in notes:
        if note.at < place:
            complaints.once(note.line, tr("A note that begins before the one before it ends was left out."))
            continue
        if note.at > place:
            kept.append(DraftNote(note.line, place, note.at - place, hidden=True))
        kept.append(note)
        place = note.stop
    if is_ours:  # it may hold a few more than ``MAX_NOTES``, tied on from those of a bar in ABC
        return kept
    if _limit(kept):
        complaints.say(measure.line, tr("A measure has more than {most} notes: the rest was left out.", most=MAX_NOTES))
        return kept
    full = measure.meter.bar_length
    stop = measure.end if full is None else min(measure.end, full)
    if not kept:
        if full is None and not measure.end:
            return []
        if not measure.voices and not measure.end:
            complaints.once(measure.line, tr("An empty measure: a rest was put in."))
        stop = measure.end or full or stop
    if stop > place:
        kept.append(DraftNote(measure.line, place, stop - place, hidden=True))
    return kept


def _limit(notes: list[DraftNote]) -> bool:
    """Drop the notes that would make more than ``MAX_NOTES`` in a bar, tied ones counted; whether there were any."""
    count = 0
    for place, note in enumerate(notes):
        count += len(split_length(note.length, _ratio_tuplet(note)))
        if count > MAX_NOTES:
            del notes[place:]
            return True
    return False


def _ratio_tuplet(note: DraftNote) -> Tuplet | None:
    return Tuplet(*note.ratio) if note.ratio else None


def _cut(measure: DraftMeasure, voice: str, complaints: Complaints) -> Iterator[DraftMeasure]:
    """Cut a measure in two at each repeat sign inside it."""
    rest, done = measure, Fraction(0)
    for cut, backward in measure.cuts:
        at = cut - done
        kept = rest.voices.get(voice, [])
        if any(note.at < at < note.stop for note in kept):
            complaints.say(measure.line, tr("A repeat sign in the middle of a note was left out."))
        elif not any(note.at < at for note in kept) and not backward:
            rest.opens_repeat = True
        elif not any(note.at >= at for note in kept) and backward:
            rest.repeats = rest.repeats or 1
        else:
            first, rest = _halves(rest, at, backward)
            done = cut
            yield first
    yield rest


def _halves(measure: DraftMeasure, at: Fraction, backward: bool) -> tuple[DraftMeasure, DraftMeasure]:
    """What stands before a place in a measure, and what stands from there on."""
    first = replace(
        measure,
        voices={voice: [note for note in notes if note.at < at] for voice, notes in measure.voices.items()},
        end=at,
        repeats=int(backward),
        closes_ending=False,
        bar_line=BarLine.PLAIN,
        to_coda=False,
        fine=False,
        jump=None,
        chords=[chord for chord in measure.chords if chord[0] < at],
        words=[words for words in measure.words if words[0] < at],
        cuts=[],
    )
    second = replace(
        measure,
        number=f"{measure.number}X",
        implicit=True,
        facts=BarFacts(),
        voices={
            voice: [replace(note, at=note.at - at) for note in notes if note.at >= at]
            for voice, notes in measure.voices.items()
        },
        end=max(measure.end - at, Fraction(0)),
        opens_repeat=not backward,
        opens_ending=(),
        part="",
        segno=False,
        coda=False,
        chords=[(place - at, text) for place, text in measure.chords if place >= at],
        words=[(place - at, text, above) for place, text, above in measure.words if place >= at],
        coda_signs=[],
        cuts=[],
    )
    return first, second


# ---- ties


def _held_notes(notes: Sequence[DraftNote], complaints: Complaints) -> set[int]:
    """``id()`` of the notes that are tied on from the note before them."""
    held: set[int] = set()
    for before, note in pairwise([None, *notes, None]):
        starts = {drafted.pitch.midi for drafted in before.pitches if drafted.tie_starts} if before else set()
        stops = {drafted.pitch.midi for drafted in note.pitches if drafted.tie_stops} if note else set()
        if not starts and not stops:
            continue
        line = before.line if before is not None and starts else note.line if note is not None else 0
        before_keys = [drafted.pitch.midi for drafted in before.pitches] if before else []
        note_keys = [drafted.pitch.midi for drafted in note.pitches] if note else []
        before_midi, note_midi = set(before_keys), set(note_keys)
        same = sorted(before_keys) == sorted(note_keys)  # a unison of two strings counts twice
        if note is not None and same and note_midi == starts | stops:
            held.add(id(note))
            if starts != stops:
                complaints.once(line, tr("A tie that lacks one end was read as a tie, since the same note follows."))
        elif before_midi & note_midi & (starts | stops):
            complaints.once(line, tr("A tie that holds one note of a double stop only was left out."))
        else:
            complaints.once(line, tr("A tie without the same note on its other side was left out."))
    return held


# ---- notes


class _Ids:
    """Ids for notes: those of the file where it is one of ours, else ``b{bar}n{k}``, none twice."""

    def __init__(self, voices: Sequence[Sequence[DraftNote]], is_ours: bool) -> None:
        self._kept: dict[int, str] = {}
        self._taken: set[str] = set()
        for note in (note for notes in voices for note in notes) if is_ours else ():
            found = _OUR_ID.fullmatch(note.xml_id)
            if found and found[1] not in self._taken:
                self._kept[id(note)] = found[1]
                self._taken.add(found[1])

    def first(self, note: DraftNote, bar: int, place: int) -> str:
        """The id of the first note that a half-read note becomes."""
        return self._kept.get(id(note)) or self.new(bar, place)

    def new(self, bar: int, place: int) -> str:
        """An id that no note has, from the bar's index and the note's place counted from 1."""
        while (name := f"b{bar}n{place}") in self._taken:
            place += 1
        self._taken.add(name)
        return name


def _notes(
    measure: DraftMeasure,
    voice: Sequence[DraftNote],
    held: set[int],
    ids: _Ids,
    drafts: list[tuple[DraftNote, str]],
    bar: int,
    complaints: Complaints,
    is_ours: bool,
) -> Iterator[Note]:
    """The notes of one bar; adds to ``drafts`` which half-read note became which."""
    accidentals = BarAccidentals(measure.key)
    tuplets = _tuplets(voice, is_ours)
    place, count = Fraction(0), 0
    for draft, tuplet in zip(voice, tuplets, strict=True):
        pieces = split_length(draft.length, tuplet)
        if not is_exact(draft.length, pieces):
            complaints.once(draft.line, tr("A length that no note value can show was rounded."))
        elif len(pieces) > 1 and not draft.is_rest:
            complaints.once(draft.line, tr("A length that no single note value can show was written as tied notes."))
        courtesy = _is_courtesy(draft, accidentals, id(draft) in held, is_ours)
        pitches = tuple(sorted((pitch.pitch for pitch in draft.pitches), key=lambda pitch: (pitch.midi, pitch)))
        for piece, (length, of_piece) in enumerate(pieces):
            count += 1
            note_id = ids.first(draft, bar, count) if piece == 0 else ids.new(bar, count)
            if piece == 0:
                drafts.append((draft, note_id))
            yield Note(
                id=note_id,
                at=place,
                length=length,
                pitches=pitches,
                held=bool(pitches) and (piece > 0 or id(draft) in held),
                tuplet=replace(of_piece, starts=of_piece.starts and piece == 0) if of_piece else None,
                courtesy=courtesy and piece == 0,
                hidden=draft.hidden and draft.is_rest,
            )
            place += length


def _is_courtesy(draft: DraftNote, accidentals: BarAccidentals, held: bool, is_ours: bool) -> bool:
    """Whether the file shows an accidental that key and bar do not need; keeps the bar's accidentals up to date."""
    for grace in draft.graces:
        for pitch in grace.pitches:
            accidentals.write(pitch)
    courtesy = False
    for drafted in draft.pitches:
        unneeded = drafted.accidental and (held or not accidentals.needed(drafted.pitch))
        courtesy |= drafted.courtesy or (unneeded and not is_ours)
        if not held:
            accidentals.write(drafted.pitch)
    return courtesy


def _tuplets(voice: Sequence[DraftNote], is_ours: bool) -> list[Tuplet | None]:
    """The tuplet of each note of a bar; where the file marks no starts, a tuplet starts anew when one is full."""
    tuplets: list[Tuplet | None] = []
    filled = unit = Fraction(0)
    before: tuple[int, int] | None = None
    for place, note in enumerate(voice):
        if note.ratio is None:
            tuplets.append(None)
            before = None
            continue
        run = _run_from(voice, place) if note.ratio != before else []
        if run:
            marked = any(other.tuplet_starts for other in run)
            unit = min((other.unit or _base(other) for other in run), default=Fraction(0))
        opens = note.tuplet_starts if is_ours else note.tuplet_starts or bool(run)
        if not is_ours and not marked and (run or filled % (unit * note.ratio[0] or 1) == 0):
            opens = True
        if opens:
            filled = Fraction(0)
        filled += note.length * Fraction(*note.ratio)
        tuplets.append(Tuplet(*note.ratio, starts=opens))
        before = note.ratio
    return tuplets


def _run_from(voice: Sequence[DraftNote], place: int) -> list[DraftNote]:
    """Notes from this place on that have the same ratio."""
    stop = place
    while stop < len(voice) and voice[stop].ratio == voice[place].ratio:
        stop += 1
    return list(voice[place:stop])


def _base(note: DraftNote) -> Fraction:
    """Note value of a note in a tuplet, dots left aside; its written length where it has none."""
    assert note.ratio is not None
    value = note_value(note.length, Tuplet(*note.ratio))
    return value[0] if value else note.length * Fraction(*note.ratio)


# ---- bars


def _close_endings(measures: Sequence[DraftMeasure], complaints: Complaints) -> None:
    """Let an ending that the file never closes stop at the next repeat, double bar or ending (ABC 2.1, 4.9)."""
    starts = [index for index, measure in enumerate(measures) if measure.opens_ending]
    for first, stop in pairwise([*starts, len(measures)]):
        reach = measures[first:stop]
        if not any(measure.closes_ending for measure in reach):
            complaints.once(reach[0].line, tr("An ending without an end was closed at the next repeat or double bar."))
            ends = (measure for measure in reach if measure.repeats or measure.bar_line is not BarLine.PLAIN)
            next(ends, reach[-1]).closes_ending = True


def _endings(measures: Sequence[DraftMeasure]) -> list[tuple[int, ...]]:
    """``Bar.ending`` of each measure."""
    endings: list[tuple[int, ...]] = []
    current: tuple[int, ...] = ()
    for measure in measures:
        current = measure.opens_ending or current
        endings.append(current)
        if measure.closes_ending:
            current = ()
    return endings


def _repeats(measure: DraftMeasure, endings: Sequence[tuple[int, ...]], index: int) -> int:
    if not measure.repeats:
        return 0
    if measure.facts.times is not None:
        return measure.facts.times
    says_nothing = measure.repeats == 1
    implied = implied_repeats(endings, index)
    return max(measure.repeats, implied) if endings[index] or says_nothing else measure.repeats


def _read_coda_signs(measures: Sequence[DraftMeasure]) -> None:
    """Of coda signs that nothing tells the meaning of, the first says where to leave, the last where to go on."""
    signs = [measure for measure in measures for _ in measure.coda_signs]
    if len(signs) > 1 and not any(measure.to_coda for measure in measures):
        signs.pop(0).to_coda = True
    if signs and not any(measure.coda for measure in measures):
        signs[-1].coda = True


def _numbers(measures: Sequence[DraftMeasure]) -> list[int]:
    """Printed numbers: as the file has them, else counted on; a measure that prints none shares the one before it."""
    numbers: list[int] = []
    for measure in measures:
        number = printed_number(measure.shown) if not measure.implicit and measure.shown else None
        if number is None:
            number = printed_number(measure.number)
        if number is None:
            before = numbers[-1] if numbers else 0
            number = before if measure.implicit else before + 1
        numbers.append(number)
    return numbers


def _with_starts(bars: Sequence[Bar], facts: Sequence[BarFacts], is_ours: bool) -> tuple[Bar, ...]:
    """Bars with their offsets from the beginning of a full bar, which only a lesson file says."""
    starts = [fact.start or Fraction(0) for fact in facts] if is_ours else bar_starts(bars)
    return tuple(replace(bar, start=start) for bar, start in zip(bars, starts, strict=True))
