"""Generators of tunes, bowings and lessons that keep every promise of ``core.tune`` and ``core.bowing``.

``tunes()``, ``bowings(tune)`` and ``lessons()`` are what tests draw from; ``AWKWARD`` holds typed lessons that are
known to be difficult, and ``lessons()`` draws one of them now and then.

``BOWBENCH_EXAMPLES=300`` has the laws of sheets and of written lessons tried on so many each, by hand.
"""

from __future__ import annotations

import os
from dataclasses import replace
from fractions import Fraction

from hypothesis import strategies as st
from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Articulation, Bow, Bowing, Grace, Join, Mark, Ornament, Signs, can_join
from core.check import RULES
from core.lesson import Lesson
from core.reach import HAIR_CM, ORDINARY, SPEEDS_CM_S, ReachSettings
from core.severity import Severity
from core.sheet_plan import COPIES, PAPERS, NoteSize, SheetKind, SheetPlan, TextBlock
from core.strings import MOST_STRINGS, STANDARD, Tuning
from core.tune import (
    MODE_FIFTHS,
    SHARP_ORDER,
    Bar,
    BarLine,
    ChordSymbol,
    Credit,
    Jump,
    Key,
    Meter,
    Note,
    Pitch,
    Tempo,
    Tune,
    Tuplet,
    Words,
)
from tests.core.builders import bowed


def examples(few: int) -> int:
    """How many examples a law is tried on: few in the suite, as many as are asked for by hand."""
    return int(os.environ.get("BOWBENCH_EXAMPLES", few))


MAX_BARS = 6
EIGHTH, QUARTER = Fraction(1, 2), Fraction(1)

METERS = (
    Meter((4,), 4), Meter((4,), 4, "common"), Meter((2,), 2, "cut"), Meter((2,), 4), Meter((3,), 4), Meter((6,), 8),
    Meter((9,), 8), Meter((2, 3, 2), 8), Meter((5,), 16), Meter(()),
)  # fmt: skip
# Rhythm cells: (length of each note, tuplet ratio). Their sums are what bars are filled with.
CELLS: tuple[tuple[tuple[Fraction, ...], tuple[int, int] | None], ...] = (
    ((EIGHTH,), None),
    ((EIGHTH, EIGHTH), None),
    ((QUARTER,), None),
    ((Fraction(3, 4), Fraction(1, 4)), None),
    ((Fraction(1, 4), Fraction(1, 4)), None),
    ((Fraction(3, 2),), None),
    ((Fraction(7, 4), Fraction(1, 4)), None),
    ((Fraction(1, 8), Fraction(3, 8)), None),
    ((Fraction(1, 3),) * 3, (3, 2)),
    ((Fraction(2, 3), Fraction(1, 3)), (3, 2)),
    ((Fraction(1, 6),) * 3, (3, 2)),
    ((Fraction(1, 5),) * 5, (5, 4)),
    ((Fraction(3, 4),) * 2, (2, 3)),
    ((Fraction(2),), None),
)
TEXTS = (
    "The Frost & the Sluice", "a <b> “c”", "line\nbreak", "  spaces  kept ", "]]>", "Nørre 🎻", "'\"", "D.C. al Fine",
)  # fmt: skip
CHORDS = (
    "G", "Am7", "C#m/G#", "G(Em)", "N.C.", "Bb7", "C♯", "G/B(Em)", "D7sus4", "F°", "?", "Fine", "A7b9", "(A)", "e",
    "B/B",
)  # fmt: skip

legal_text = st.one_of(
    st.sampled_from(TEXTS),
    st.text(st.characters(exclude_categories=("Cs", "Cc"), exclude_characters="\ufffe\uffff"), min_size=1, max_size=12),
)
pitches = st.builds(Pitch, st.integers(3, 6), st.sampled_from("ABCDEFG"), st.sampled_from((0, 0, 0, 0, 1, -1, 2, -2)))
chords_of_pitches = st.lists(pitches, min_size=1, max_size=2, unique_by=lambda pitch: pitch.midi).map(
    lambda found: tuple(sorted(found, key=lambda pitch: pitch.midi))
)


def keys() -> st.SearchStrategy[Key]:
    """Key signatures, plain and with accidentals of their own."""
    altered = st.lists(
        st.tuples(st.sampled_from(SHARP_ORDER), st.integers(-2, 2)), max_size=2, unique_by=lambda item: item[0]
    )
    plain = st.builds(Key, st.integers(-7, 7), st.sampled_from([*MODE_FIFTHS, "none"]))
    return st.one_of(plain, plain, st.builds(lambda key, steps: replace(key, altered=tuple(steps)), plain, altered))


@st.composite
def rhythms(draw: st.DrawFn, length: Fraction) -> list[tuple[Fraction, Tuplet | None]]:
    """Lengths with their tuplets that fill a length exactly, a multiple of a sixteenth."""
    filled: list[tuple[Fraction, Tuplet | None]] = []
    rest = length
    while rest > 0:
        fitting = [cell for cell in CELLS if sum(cell[0]) <= rest]
        lengths, ratio = draw(st.sampled_from(fitting)) if fitting else ((Fraction(1, 4),), None)
        for place, value in enumerate(lengths):
            filled.append((value, Tuplet(*ratio, starts=place == 0) if ratio else None))
        rest -= sum(lengths)
    return filled


@st.composite
def tunes(draw: st.DrawFn) -> Tune:
    """Tunes of one to ``MAX_BARS`` bars: pick-ups, ties, double stops, rests, tuplets, and every sign of structure."""
    meter, key = draw(st.sampled_from(METERS)), draw(keys())
    bars: list[Bar] = []
    number = 0
    for index in range(draw(st.integers(1, MAX_BARS))):
        if index and draw(st.integers(0, 5)) == 0:
            meter, key = draw(st.sampled_from(METERS)), draw(keys())
        full = meter.bar_length or draw(st.sampled_from((Fraction(1), Fraction(5, 2))))
        length, start = full, Fraction(0)
        if draw(st.integers(0, 4)) == 0:
            length = draw(st.sampled_from([size for size in (Fraction(1, 4), EIGHTH, QUARTER) if size <= full]))
            start = draw(st.sampled_from((Fraction(0), full - length)))
        shares_number = start > 0 if index == 0 else draw(st.integers(0, 5)) == 0
        number += not shares_number
        notes = draw(_notes(index, length, bars[-1].notes[-1] if bars else None))
        bars.append(draw(_bars(number, notes, meter, key, start)))
    return Tune(
        title=draw(st.one_of(st.just(""), legal_text)),
        bars=tuple(bars),
        other_titles=tuple(draw(st.lists(legal_text, max_size=2))),
        dance=draw(st.sampled_from(("", "reel", "jig"))),
        tempo=draw(st.none() | _tempos()),
        credits=tuple(draw(st.lists(_credits(), max_size=4))),
        part_order=tuple(draw(st.sampled_from(("", "AAB", "BA")))),
        number=draw(st.integers(1, 3)),
    )


@st.composite
def _notes(draw: st.DrawFn, bar: int, length: Fraction, before: Note | None) -> tuple[Note, ...]:
    notes: list[Note] = []
    at = Fraction(0)
    for place, (value, tuplet) in enumerate(draw(rhythms(length)), start=1):
        kind = draw(st.sampled_from(("note",) * 7 + ("stop", "rest", "hidden", "held")))
        held = kind == "held" and before is not None and not before.is_rest
        if held:
            assert before is not None
            sounding = before.pitches
        elif kind in ("rest", "hidden"):
            sounding = ()
        else:
            sounding = draw(chords_of_pitches) if kind == "stop" else (draw(pitches),)
        courtesy = bool(sounding) and not held and draw(st.integers(0, 9)) == 0
        before = Note(f"b{bar}n{place}", at, value, sounding, held, tuplet, courtesy, kind == "hidden")
        notes.append(before)
        at += value
    return tuple(notes)


@st.composite
def _bars(draw: st.DrawFn, number: int, notes: tuple[Note, ...], meter: Meter, key: Key, start: Fraction) -> Bar:
    rarely = st.integers(0, 7).map(lambda value: value == 0)
    length = notes[-1].at + notes[-1].length
    places = st.sampled_from([*(note.at for note in notes), length / 3, length])
    return Bar(
        number=number,
        notes=notes,
        meter=meter,
        key=key,
        start=start,
        opens_repeat=draw(rarely),
        repeats=draw(st.sampled_from((0, 0, 0, 2, 3))),
        ending=draw(st.sampled_from(((), (), (), (1,), (2,), (1, 3)))),
        line=draw(st.sampled_from(BarLine)),
        part=draw(st.sampled_from(("", "", "A", "B", "Trio"))),
        segno=draw(rarely),
        coda=draw(rarely),
        to_coda=draw(rarely),
        fine=draw(rarely),
        jump=draw(st.sampled_from((None,) * 6 + tuple(Jump))),
        chords=tuple(
            ChordSymbol(at, text)
            for at, text in sorted(draw(st.lists(st.tuples(places, st.sampled_from(CHORDS)), max_size=2)))
        ),
        words=tuple(
            Words(at, text, above)
            for at, text, above in sorted(draw(st.lists(st.tuples(places, legal_text, st.booleans()), max_size=2)))
        ),
    )


def _tempos() -> st.SearchStrategy[Tempo]:
    beats = st.sampled_from((Fraction(1, 2), QUARTER, Fraction(3, 2), Fraction(2), Fraction(5, 2), Fraction(9, 2)))
    per_minute = st.sampled_from((Fraction(112), Fraction(90, 1), Fraction(225, 2), Fraction(200, 3)))
    return st.builds(Tempo, beats, per_minute, st.one_of(st.just(""), legal_text))


def _credits() -> st.SearchStrategy[Credit]:
    kinds = ("composer", "arranger", "transcriber", "rights", "source", "origin", "notes", "history", "poet")
    return st.builds(Credit, st.sampled_from(kinds), legal_text)


def _signs() -> st.SearchStrategy[Signs]:
    graces = st.builds(
        Grace, chords_of_pitches, st.sampled_from((EIGHTH, Fraction(1, 4), Fraction(3, 4), QUARTER)), st.booleans()
    )
    return st.builds(
        Signs,
        st.lists(graces, max_size=2).map(tuple),
        st.lists(st.sampled_from(Ornament), max_size=2).map(tuple),
        st.lists(st.sampled_from(Articulation), max_size=3, unique=True).map(tuple),
        st.lists(st.sampled_from("01234"), max_size=2).map(tuple),
    )


def accent_plans() -> st.SearchStrategy[AccentPlan]:
    """All kinds of plan."""
    named = st.sampled_from([AccentPlan(kind) for kind in PlanKind])
    places = st.lists(st.fractions(0, 4, max_denominator=8), min_size=1, max_size=3, unique=True)
    return named | places.map(lambda found: AccentPlan(PlanKind.PLACES, tuple(sorted(found))))


@st.composite
def bowings(draw: st.DrawFn, tune: Tune, name: str = "As written") -> Bowing:
    """Bowings of a tune: slurs, hooks, fixed bows (some on one pass only), retakes and signs on any note."""
    joins, marks, retakes, signs = {}, {}, set(), {}
    struck_before = False
    for note in tune.sequence:
        if note.is_rest:
            if draw(st.integers(0, 5)) == 0:
                signs[note.id] = Signs(articulations=(Articulation.FERMATA,))
            continue
        if can_join(tune, note.id):
            how = draw(st.sampled_from((None, None, Join.SLUR, Join.SLUR, Join.HOOK)))
            if how:
                joins[note.id] = how
        if draw(st.integers(0, 7)) == 0:
            marks[note.id] = Mark(draw(st.sampled_from(Bow)), draw(st.sampled_from((None, None, 1, 2))))
        elif struck_before and not note.held and note.id not in joins and draw(st.integers(0, 7)) == 0:
            retakes.add(note.id)
        if draw(st.integers(0, 3)) == 0 and (found := draw(_signs())):
            signs[note.id] = found
        struck_before = True
    changes = draw(st.dictionaries(st.integers(0, len(tune.bars) - 1), accent_plans(), max_size=3))
    return Bowing(
        name,
        immutabledict(joins),
        immutabledict(marks),
        frozenset(retakes),
        immutabledict(signs),
        draw(accent_plans()),
        immutabledict(changes),
    )


@st.composite
def lessons(draw: st.DrawFn) -> Lesson:
    """Lessons of one to three bowings; one in ten is a known awkward one."""
    if draw(st.integers(0, 9)) == 0:
        return draw(st.sampled_from(AWKWARD))
    tune = draw(tunes())
    names = draw(st.lists(legal_text, min_size=1, max_size=3, unique=True))
    names_of_others = st.sampled_from(("description", "scenario", "bowbench:of-a-later-version", "other:format"))
    return Lesson(
        tune,
        tuple(draw(bowings(tune, name)) for name in names),
        immutabledict(draw(st.dictionaries(names_of_others, legal_text, max_size=2))),
        immutabledict(draw(st.dictionaries(st.sampled_from(tuple(RULES)), st.sampled_from((Severity.NOTE, None))))),
        draw(st.just(ORDINARY) | reach_settings()),
        draw(st.just(STANDARD) | tunings()),
        draw(st.none() | sheet_plans()),
    )


@st.composite
def reach_settings(draw: st.DrawFn) -> ReachSettings:
    """Bow, speeds and tempo within their limits."""
    slowest, even, fastest = sorted(draw(st.tuples(*[st.floats(*SPEEDS_CM_S)] * 3)))
    return ReachSettings(draw(st.floats(*HAIR_CM)), even, slowest, fastest, draw(st.none() | _tempos()))


def sheet_plans() -> st.SearchStrategy[SheetPlan]:
    """Printed sheets of every kind, with any text."""
    words = st.text(max_size=20)
    blocks = st.builds(TextBlock, words, words)
    return st.builds(
        SheetPlan,
        st.sampled_from(SheetKind),
        bowings=st.lists(words, max_size=2).map(tuple),
        size=st.sampled_from(NoteSize),
        before=blocks,
        after=blocks,
        footer=words,
        findings=st.booleans(),
        paper=st.sampled_from(PAPERS),
        copies=st.sampled_from(COPIES),
        from_bar=st.integers(0, 99),
    )


def tunings() -> st.SearchStrategy[Tuning]:
    """Two to eight open strings."""
    strings = st.lists(pitches, min_size=2, max_size=MOST_STRINGS, unique_by=lambda pitch: pitch.midi)
    return strings.map(lambda found: Tuning(tuple(map(str, sorted(found, key=lambda pitch: pitch.midi)))))


def _typed(text: str, meter: str = "4/4", part_order: str = "") -> Lesson:
    tune, bowing = bowed(text, meter, part_order=part_order)
    return Lesson(tune, (bowing,))


def _twice(lesson: Lesson) -> Lesson:
    return replace(lesson, bowings=(*lesson.bowings, replace(lesson.bowings[0], name="Another")))


AWKWARD = (
    _typed("A"),  # a lone note
    _twice(_typed("z8")),  # nothing to bow, in two versions
    _typed("A2|B8|c8|]"),  # a pick-up
    _typed("zA|B8|c8|]"),  # a pick-up that begins with a rest
    _typed("A4 B4-|B4 c4|]"),  # a tie over the bar line
    _typed("A8-|A8-|A8|]"),  # nothing but a tie
    _typed("(A2 B2-|B2 c2) d2 e2|]"),  # a slur over a tie over the bar line
    _typed("(A2=B2c2=d2)|=e8|]"),  # hooks and slurs in one stroke, and a hook over the bar line
    _typed("A2-A2=B2 c2|]"),  # a hook from a held note
    _typed("|:A8|[1B8:|[2c8|]"),  # endings
    _typed("|:A8|[1,3B8:|[2c8:|d8|]"),
    _typed("A|:B7:|c|:d7:|"),  # bars cut in two by repeats
    _typed("{A}A8||{B}B8|]", part_order="ABA"),
    _typed("A8|!segno!B8!tocoda!|c8!D.S. al Coda!|!coda!d8|]"),
    _typed("uA vB rA=B z uc|vd8|]"),
)
