"""From the half-read tune to values: note values, bar numbers, pick-ups, and the joins that the slurs mean.

Hooked notes: ABC has no sign of its own for two notes in one bow with a stop between; the 1883 books write a slur over
dots. So two notes that follow each other under a slur and both carry a staccato dot (or both a tenuto line) are read
as ``Join.HOOK``, and the dots are not kept as articulations: they are what the hook looks like.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from itertools import accumulate, pairwise

from immutabledict import immutabledict

from core.bowing import Articulation, Bowing, Join, Mark, Signs
from core.lesson import AS_WRITTEN
from core.reading.abc_draft import Complaints, DraftBar, DraftNote, DraftTune
from core.reading.bar_starts import bar_starts, is_seam
from core.reading.note_lengths import is_exact, split_length
from core.translation import plural, tr
from core.tune import Bar, Note, Tuplet, note_value

Pieces = tuple[tuple[Fraction, Tuplet | None], ...]

MAX_BARS_TOLD = 6  # bars that do not fill the metre and are told one by one
_HOOK_SIGNS = (Articulation.STACCATO, Articulation.TENUTO)


@lru_cache(maxsize=8192)
def _sum(top: int, bottom: int, other_top: int, other_bottom: int) -> Fraction:
    """Sum of two fractions; the few sums that occur in bars are worth remembering."""
    return Fraction(top, bottom) + Fraction(other_top, other_bottom)


@lru_cache(maxsize=4096)
def _has_value(length: Fraction, tuplet: Tuplet | None) -> bool:
    return note_value(length, tuplet) is not None


def build(draft: DraftTune, complaints: Complaints) -> tuple[tuple[Bar, ...], Bowing]:
    """Make the bars and the bowing that the file says.

    Args:
        draft: With at least one bar, none without notes.
        complaints: Told of every bar that does not fill its metre, and every slur that is cut short.
    """
    ids: list[str] = []  # of the first piece of each note of the draft
    notes: list[tuple[Note, ...]] = []
    places: list[list[Fraction]] = []
    for index, bar in enumerate(draft.bars):
        made, starts = _notes(index, bar, ids, complaints)
        notes.append(made)
        places.append(starts)
        bar.length = starts[-1]
    begins = bar_starts(draft.bars)
    numbers = _numbers(draft.bars, begins)
    _tell_lengths(draft.bars, numbers, begins, complaints)
    bars = tuple(
        bar.to_bar(
            number,
            made,
            bar.line,
            ending=bar.ending,
            chords=((starts[at], text) for at, text in bar.chords),
            words=((starts[at], text, above) for at, text, above in bar.words),
            start=begin,
        )
        for bar, made, starts, number, begin in zip(draft.bars, notes, places, numbers, begins, strict=True)
    )
    return bars, _bowing(draft, ids, complaints)


def _notes(
    index: int, bar: DraftBar, ids: list[str], complaints: Complaints
) -> tuple[tuple[Note, ...], list[Fraction]]:
    """Notes of a bar, and where each note of the draft starts, the end of the bar at last."""
    made: list[Note] = []
    places: list[Fraction] = []
    at = Fraction(0)
    filled = Fraction(0)  # of a triplet that the file writes as fractions, A2/3 B2/3 c2/3
    for note in bar.notes:
        places.append(at)
        ids.append(f"b{index}n{len(made) + 1}")
        pieces: Pieces = ((note.length, note.tuplet),)
        if note.doubtful and not _has_value(note.length, note.tuplet):
            pieces = split_length(note.length, note.tuplet)
            if not is_exact(note.length, pieces):
                text = tr(
                    "No note values show a length of {length} of a whole note: it is rounded.", length=note.length / 4
                )
                complaints.say(text, line=note.line)
            if note.tuplet is None and (tuplet := pieces[0][1]) is not None:
                if not filled:
                    pieces = ((pieces[0][0], replace(tuplet, starts=True)), *pieces[1:])
                filled += note.length
                if filled.denominator % tuplet.actual:
                    filled = Fraction(0)
        for piece, (length, tuplet) in enumerate(pieces):
            made.append(
                Note(
                    f"b{index}n{len(made) + 1}",
                    at,
                    length,
                    note.pitches,
                    note.held or (piece > 0 and bool(note.pitches)),
                    tuplet if not piece or tuplet is None else replace(tuplet, starts=False),
                    note.courtesy and not piece,
                    note.hidden,
                )
            )
            at = _sum(at.numerator, at.denominator, length.numerator, length.denominator)
    places.append(at)
    return tuple(made), places


def _numbers(bars: list[DraftBar], begins: list[Fraction]) -> list[int]:
    """Printed numbers by the rules of ``core.tune.Bar``.

    A pick-up at the very start is 0. A bar that begins inside the bar before it, or, as a later ending, inside the bar
    that the first ending follows, shares that bar's number.
    """
    numbers: list[int] = []
    parted = -1
    last = -1 if begins[0] else 0
    for index, (bar, begin) in enumerate(zip(bars, begins, strict=True)):
        before = index - 1
        if bar.ending and index and bars[before].ending != bar.ending:
            if not bars[before].ending:
                parted = before
            elif parted >= 0:
                before = parted
        if index and begin and begins[before] + bars[before].length == begin:
            numbers.append(numbers[before])
        else:
            last += 1
            numbers.append(last)
    return numbers


def _tell_lengths(bars: list[DraftBar], numbers: list[int], begins: list[Fraction], complaints: Complaints) -> None:
    """Say which bars do not fill their metre, pick-ups and the short bars that belong to them apart."""
    completing = {begin for begin in begins if begin}
    odd: list[int] = []
    for index, bar in enumerate(bars):
        full = bar.meter.bar_length
        end = begins[index] + bar.length
        if full is None or end == full:
            continue
        is_last = index + 1 == len(bars) or is_seam(bar, bars[index + 1])
        if end > full or not (is_last and end in completing):
            odd.append(index)
    if len(odd) > MAX_BARS_TOLD:
        metre = bars[odd[0]].meter
        complaints.say(
            plural(
                "{odd} of 1 bar does not fill the metre {metre}, bar {bar} the first: kept.",
                "{odd} of {n} bars do not fill the metre {metre}, bar {bar} the first: kept.",
                len(bars),
                odd=len(odd),
                metre=metre,
                bar=numbers[odd[0]],
            ),
            line=bars[odd[0]].file_line,
        )
        return
    for index in odd:
        bar, full = bars[index], bars[index].meter.bar_length or Fraction(0)
        complaints.say(
            tr(
                "Bar {bar} is longer than {meter}: it holds {length} of a whole note, not {full}; kept as it stands."
                if begins[index] + bar.length > full
                else "Bar {bar} is shorter than {meter}: it holds {length} of a whole note, not {full}; kept as it "
                "stands.",
                bar=numbers[index],
                meter=bar.meter,
                length=bar.length / 4,
                full=(full - begins[index]) / 4,
            ),
            line=bar.file_line,
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
            complaints.say(tr("A slur begins on a rest: it is read from the note after it."), line=line)
            first += 1
        stop = min(last + 1, next_rest[first])
        if stop <= last and first <= last:
            complaints.say(tr("A slur runs over a rest: it is read as ending before the rest."), line=line)
        if stop > first + 1:
            change[first + 1] += 1
            change[stop] -= 1
    covered = list(accumulate(change[:-1]))
    joined = [False] * len(notes)
    for (place, before), (_, note) in pairwise(enumerate(notes)):
        joined[place + 1] = bool(covered[place + 1] and before.pitches and note.pitches and not note.held)
    return joined
