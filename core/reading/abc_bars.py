"""From the half-read tune to values: note values, bar numbers, pick-ups, and the joins that the slurs mean.

Hooked notes: ABC has no sign of its own for two notes in one bow with a stop between; the 1883 books write a slur over
dots. So two notes that follow each other under a slur and both carry a staccato dot (or both a tenuto line) are read
as ``Join.HOOK``, and the dots are not kept as articulations: they are what the hook looks like.
"""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from itertools import accumulate, pairwise

from immutabledict import immutabledict

from core.bowing import Articulation, Bowing, Join, Mark, Signs
from core.lesson import AS_WRITTEN
from core.reading.abc_draft import Complaints, DraftBar, DraftNote, DraftTune
from core.tune import NOTE_BASES, Bar, BarLine, ChordSymbol, Note, Tuplet, Words, note_value

SHORTEST = NOTE_BASES[-1]  # quarter notes
MAX_BARS_TOLD = 6  # bars that do not fill the metre and are told one by one
_HOOK_SIGNS = (Articulation.STACCATO, Articulation.TENUTO)
_PIECES = tuple(sorted((base * (2 - Fraction(1, 2**dots)) for base in NOTE_BASES for dots in (0, 1)), reverse=True))
_LONGEST_PIECE = _PIECES[0]


@lru_cache(maxsize=4096)
def _has_value(length: Fraction, tuplet: Tuplet | None) -> bool:
    return note_value(length, tuplet) is not None


def build(draft: DraftTune, complaints: Complaints) -> tuple[tuple[Bar, ...], Bowing]:
    """Make the bars and the bowing that the file says.

    Args:
        draft: With at least one bar, none without notes.
        complaints: Told of every bar that does not fill its metre, and every slur that is cut short.
    """
    ids: list[str] = []  # first piece of each note of the draft
    notes: list[tuple[Note, ...]] = []
    starts: list[list[Fraction]] = []
    for index, draft_bar in enumerate(draft.bars):
        made, places = _notes(index, draft_bar, ids, complaints)
        notes.append(made)
        starts.append(places)
    lengths = [places[-1] for places in starts]
    numbers, begins = _number(draft.bars, lengths)
    _tell_lengths(draft.bars, lengths, numbers, begins, complaints)
    bars = tuple(
        Bar(
            number=number,
            notes=made,
            meter=bar.meter,
            key=bar.key,
            start=begin,
            opens_repeat=bar.opens_repeat,
            repeats=bar.repeats,
            ending=bar.ending,
            line=bar.bar_line,
            part=bar.part,
            segno=bar.segno,
            coda=bar.coda,
            to_coda=bar.to_coda,
            fine=bar.fine,
            jump=bar.jump,
            chords=tuple(ChordSymbol(places[at], text) for at, text in bar.chords),
            words=tuple(Words(places[at], text, above) for at, text, above in bar.words),
        )
        for bar, made, places, number, begin in zip(draft.bars, notes, starts, numbers, begins, strict=True)
    )
    return bars, _bowing(draft, ids, complaints)


def _notes(
    index: int, bar: DraftBar, ids: list[str], complaints: Complaints
) -> tuple[tuple[Note, ...], list[Fraction]]:
    """Notes of a bar, and where each note of the draft starts, the end of the bar at last."""
    made: list[Note] = []
    places: list[Fraction] = []
    at = Fraction(0)
    group: tuple[Tuplet, Fraction] | None = None  # triplet written as fractions: what is filled so far
    for note in bar.notes:
        places.append(at)
        ids.append(f"b{index}n{len(made) + 1}")
        if not note.doubtful or _has_value(note.length, note.tuplet):
            pieces: tuple[Fraction, ...] = (note.length,)
            tuplet = note.tuplet
        else:
            tuplet = note.tuplet
            if tuplet is None and note.length.denominator % 3 == 0:
                tuplet = Tuplet(3, 2, starts=group is None)
                filled = (group[1] if group else 0) + note.length
                group = (tuplet, filled) if filled.denominator % 3 == 0 else None
            pieces = _pieces(note, tuplet, complaints)
        for piece, length in enumerate(pieces):
            made.append(
                Note(
                    f"b{index}n{len(made) + 1}",
                    at,
                    length,
                    note.pitches,
                    note.held or (piece > 0 and bool(note.pitches)),
                    tuplet if piece == 0 or tuplet is None else Tuplet(tuplet.actual, tuplet.normal),
                    note.courtesy and piece == 0,
                    note.hidden,
                )
            )
            at += length
    places.append(at)
    return tuple(made), places


def _pieces(note: DraftNote, tuplet: Tuplet | None, complaints: Complaints) -> tuple[Fraction, ...]:
    """Lengths of the tied notes that show a length which no single note value shows (ABC 2.1, 4.3: undefined)."""
    ratio = Fraction(tuplet.actual, tuplet.normal) if tuplet else Fraction(1)
    written = note.length * ratio
    rest = max(round(written / SHORTEST), 1) * SHORTEST
    if rest != written:
        complaints.say(note.line, f"No note values show a length of {note.length / 4} of a whole note: it is rounded.")
    if note_value(rest) is not None:
        return (rest / ratio,)
    pieces = []
    while rest:
        piece = _LONGEST_PIECE if rest >= _LONGEST_PIECE else next(size for size in _PIECES if size <= rest)
        pieces.append(piece / ratio)
        rest -= piece
    return tuple(pieces)


def _is_seam(before: DraftBar, bar: DraftBar) -> bool:
    """Whether a section ends between two bars: a repeat, a double bar, a jump, an ending."""
    return bool(
        before.repeats
        or before.bar_line is not BarLine.PLAIN
        or before.jump
        or bar.opens_repeat
        or bar.begins_ending
        or before.ending != bar.ending
        or bar.part
    )


def _number(bars: list[DraftBar], lengths: list[Fraction]) -> tuple[list[int], list[Fraction]]:
    """Printed numbers, and where in the full bar each bar begins, by the rules of ``core.tune.Bar``."""
    numbers: list[int] = []
    begins: list[Fraction] = []
    parted = -1  # the bar that every ending of the group follows
    inside = False  # the endings of the group begin inside that bar
    last = 0
    for index, (bar, length) in enumerate(zip(bars, lengths, strict=True)):
        full = bar.meter.bar_length
        number, begin = last + 1, Fraction(0)
        before = index - 1
        if bar.begins_ending and index:
            if bar.continues or not bars[before].ending:
                parted, inside = before, bar.continues
            before = parted
        if full is None or length >= full:
            pass
        elif index == 0:
            if len(bars) > 1 and not bar.repeats:
                number, begin = 0, full - length
        elif _is_seam(bars[index - 1], bar):
            filled = begins[before] + lengths[before]
            completes = filled + length == full or (bar.begins_ending and inside and filled + length < full)
            if completes and bars[before].meter == bar.meter:
                number, begin = numbers[before], filled
            elif not bar.begins_ending and index + 1 < len(bars) and not _is_seam(bar, bars[index + 1]):
                begin = full - length
        numbers.append(number)
        begins.append(begin)
        last = max(last, number)
    return numbers, begins


def _tell_lengths(
    bars: list[DraftBar], lengths: list[Fraction], numbers: list[int], begins: list[Fraction], complaints: Complaints
) -> None:
    """Say which bars do not fill their metre, pick-ups and the short bars that belong to them apart."""
    completing = {begin for begin in begins if begin}
    odd: list[int] = []
    for index, (bar, length) in enumerate(zip(bars, lengths, strict=True)):
        full = bar.meter.bar_length
        end = begins[index] + length
        if full is None or end == full:
            continue
        is_last = index + 1 == len(bars) or _is_seam(bar, bars[index + 1])
        if end > full or not (is_last and end in completing):
            odd.append(index)
    if len(odd) > MAX_BARS_TOLD:
        metre = bars[odd[0]].meter
        complaints.say(
            bars[odd[0]].line,
            f"{len(odd)} of {len(bars)} bars do not fill the metre {metre}, bar {numbers[odd[0]]} the first: kept.",
        )
        return
    for index in odd:
        bar, full = bars[index], bars[index].meter.bar_length or Fraction(0)
        size = "longer" if begins[index] + lengths[index] > full else "shorter"
        complaints.say(
            bar.line,
            f"Bar {numbers[index]} is {size} than {bar.meter}: it holds {lengths[index] / 4} of a whole note, "
            f"not {(full - begins[index]) / 4}; kept as it stands.",
        )


def _bowing(draft: DraftTune, ids: list[str], complaints: Complaints) -> Bowing:
    notes = [note for bar in draft.bars for note in bar.notes]
    joined = _joined(draft, notes, complaints)
    joins: dict[str, Join] = {}
    dotted: dict[int, Articulation] = {}  # notes whose dot or line only says that they are hooked
    struck = 0
    for place, note in enumerate(notes):
        if not note.pitches or note.held:
            continue
        if joined[place]:
            sign = _common_hook_sign(notes[struck], note)
            joins[ids[place]] = Join.HOOK if sign else Join.SLUR
            if sign:
                dotted[struck] = dotted[place] = sign
        struck = place
    signs: dict[str, Signs] = {}
    marks: dict[str, Mark] = {}
    for place, note in enumerate(notes):
        if note.bow is not None:
            marks[ids[place]] = Mark(note.bow)
        if note.graces or note.ornaments or note.articulations or note.fingerings:
            kept = tuple(sign for sign in note.articulations or () if sign is not dotted.get(place))
            on_note = Signs(note.graces, tuple(note.ornaments or ()), kept, tuple(note.fingerings or ()))
            if on_note:
                signs[ids[place]] = on_note
    return Bowing(AS_WRITTEN, immutabledict(joins), immutabledict(marks), signs=immutabledict(signs))


def _common_hook_sign(first: DraftNote, second: DraftNote) -> Articulation | None:
    for sign in _HOOK_SIGNS:
        if sign in (first.articulations or ()) and sign in (second.articulations or ()):
            return sign
    return None


def _joined(draft: DraftTune, notes: list[DraftNote], complaints: Complaints) -> list[bool]:
    """Which notes share the stroke of the note before them; a slur over a rest ends before the rest."""
    next_rest = [len(notes)] * (len(notes) + 1)
    for place in range(len(notes) - 1, -1, -1):
        next_rest[place] = next_rest[place + 1] if notes[place].pitches else place
    change = [0] * (len(notes) + 1)
    for first, last, line in draft.slurs:
        if not notes[first].pitches:
            complaints.say(line, "A slur begins on a rest: it is read from the note after it.")
            first += 1
        stop = min(last + 1, next_rest[first])
        if stop <= last and first <= last:
            complaints.say(line, "A slur runs over a rest: it is read as ending before the rest.")
        if stop > first + 1:
            change[first + 1] += 1
            change[stop] -= 1
    covered = list(accumulate(change[:-1]))
    joined = [False] * len(notes)
    for (place, before), (_, note) in pairwise(enumerate(notes)):
        joined[place + 1] = bool(covered[place + 1] and before.pitches and note.pitches and not note.held)
    return joined
