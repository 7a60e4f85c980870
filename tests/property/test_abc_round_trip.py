"""Laws of ABC written from our values: what ABC can say is read back equal, and what it cannot say is told."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.bowing import Articulation, Bowing, Ornament, Signs
from core.chords import parse_chord
from core.engraving.bow_signs import MarkDensity
from core.lesson import AS_WRITTEN, Lesson
from core.reading.abc import read_abc
from core.strokes import work_out
from core.tune import Bar, BarLine, ChordSymbol, Credit, Key, Tune, Words
from core.writing.abc import write_abc
from core.writing.abc_losses import abc_losses
from core.written_bows import derived_bows
from tests.property.strategies import AWKWARD, bowings, examples, lessons, tunes

UNHURRIED = settings(
    max_examples=examples(25), deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large]
)
READ_AS_SIGNS = {"dcalfine", "fine"}  # of the words that the strategies draw


def read_back(lesson: Lesson, density: MarkDensity | None = None) -> Lesson:
    return read_abc(write_abc([lesson], density)).lessons[0]


def plain(tune: Tune) -> Lesson:
    return Lesson(tune, (Bowing(AS_WRITTEN),))


# ------------------------------------------------------------------------------------- what ABC can say of a tune


def tidy(text: str) -> str:
    """A text on one line; the strategies draw no control characters but the line break."""
    return " ".join(text.split())


def carried(tune: Tune) -> Tune:
    """A tune with what ABC has no words for said otherwise or left out; numbers and starts of bars set to 0."""
    coda = next((index for index, bar in enumerate(tune.bars) if bar.coda), None)
    bars = [replace(_carried_bar(bar), coda=index == coda) for index, bar in enumerate(tune.bars)]
    for index, (bar, after) in enumerate(pairwise(bars)):
        if bar.ending and not after.ending and not (bar.repeats or after.opens_repeat) and bar.line is BarLine.PLAIN:
            bars[index] = replace(bar, line=BarLine.DOUBLE)
    named = {bar.part for bar in bars}
    tempo = tune.tempo
    return replace(
        tune,
        title=tidy(tune.title),
        bars=tuple(bars),
        other_titles=tuple(map(tidy, tune.other_titles)),
        tempo=tempo and replace(tempo, per_minute=round(tempo.per_minute, 3), text=tidy(tempo.text)),
        credits=tuple(map(_carried_credit, tune.credits)),
        part_order=tune.part_order if set(tune.part_order) <= named else (),
    )


def _carried_credit(credit: Credit) -> Credit:
    if credit.kind in ("arranger", "rights", "poet"):
        return Credit("notes", tidy(f"{credit.kind.capitalize()}: {credit.text}"))
    return replace(credit, text=tidy(credit.text))


def _carried_bar(bar: Bar) -> Bar:
    places = [max(note.at for note in bar.notes if note.at <= item.at) for item in (*bar.chords, *bar.words)]
    chords, words = [], []
    for at, item in zip(places, (*bar.chords, *bar.words), strict=True):
        text = tidy(item.text)
        if isinstance(item, ChordSymbol) and parse_chord(text):
            chords.append(ChordSymbol(at, text))
        elif text and "".join(text.lower().replace(".", "").split()) not in READ_AS_SIGNS:
            words.append(Words(at, text, item.above if isinstance(item, Words) else True))
    return replace(
        bar,
        number=0,
        start=0,
        key=Key(0, bar.key.mode, tuple(bar.key.alters().items())),
        notes=tuple(replace(note, courtesy=False) for note in bar.notes),
        chords=tuple(chords),
        words=tuple(sorted(words, key=lambda words: words.at)),
    )


@given(tunes())
@UNHURRIED
def test_a_tune_comes_back_with_all_that_abc_can_say(tune: Tune) -> None:
    again = read_back(plain(tune)).tune
    same = carried(again) == carried(tune)  # compared here: pytest would spend minutes on showing the difference
    assert same


@given(lessons())
@settings(UNHURRIED, max_examples=examples(15))
def test_what_has_been_through_abc_once_loses_nothing_more(lesson: Lesson) -> None:
    once = read_back(lesson)
    assert abc_losses(once) == ()
    same = read_back(once) == once
    assert same


@given(lessons())
@settings(UNHURRIED, max_examples=examples(10))
def test_writing_what_was_read_gives_the_same_text(lesson: Lesson) -> None:
    once = read_abc(write_abc([lesson])).lessons
    text = write_abc(once)
    assert write_abc(read_abc(text).lessons) == text


@given(lessons())
@settings(UNHURRIED, max_examples=examples(15))
def test_reading_tells_of_nothing_but_bars_that_do_not_fill_their_metre(lesson: Lesson) -> None:
    told = [problem.text for problem in read_abc(write_abc([lesson])).problems]
    assert [text for text in told if not ("Bar " in text and "kept" in text) and "do not fill" not in text] == []


@given(lessons())
@UNHURRIED
def test_a_lesson_that_loses_nothing_comes_back_equal(lesson: Lesson) -> None:
    lesson = replace(lesson, bowings=lesson.bowings[:1])
    again = read_back(lesson)
    told = abc_losses(lesson)
    tune = replace(carried(lesson.tune), bars=()) == replace(carried(again.tune), bars=())
    assert told or (tune and replace(again.bowings[0], accents=lesson.bowings[0].accents) == lesson.bowings[0])


# ----------------------------------------------------------------------------------- what ABC can say of a bowing


def without(signs: Signs) -> Signs:
    """Signs without those that look like hooks, and the bowed triplet, and none twice."""
    kept = set(Articulation) - {Articulation.STACCATO, Articulation.TENUTO, Articulation.DETACHED_LEGATO}
    return Signs(
        signs.graces,
        tuple(dict.fromkeys(sign for sign in signs.ornaments if sign is not Ornament.BOWED_TRIPLET)),
        tuple(sign for sign in signs.articulations if sign in kept),
        tuple(dict.fromkeys(signs.fingerings)),
    )


@st.composite
def bowed_tunes(draw: st.DrawFn) -> tuple[Tune, Bowing]:
    """A tune as ABC has it, with any bowing of it."""
    tune = read_back(plain(draw(tunes()))).tune
    return tune, draw(bowings(tune))


@given(bowed_tunes())
@UNHURRIED
def test_joins_and_fixed_bows_and_signs_come_back(bowed: tuple[Tune, Bowing]) -> None:
    tune, bowing = bowed
    signs = {note_id: kept for note_id, found in bowing.signs.items() if (kept := without(found))}
    bowing = replace(bowing, signs=immutabledict(signs), retakes=frozenset())
    again = read_back(Lesson(tune, (bowing,))).bowings[0]
    marks = {
        note_id: mark
        for note_id, mark in bowing.marks.items()
        if mark.only_pass is None and not tune.note(note_id).held
    }
    assert again.joins == bowing.joins
    assert again.signs == bowing.signs
    assert again.marks == marks


@given(bowed_tunes())
@UNHURRIED
def test_notes_share_strokes_as_before_whatever_dots_stand_on_them(bowed: tuple[Tune, Bowing]) -> None:
    tune, bowing = bowed
    assert set(read_back(Lesson(tune, (bowing,))).bowings[0].joins) == set(bowing.joins)


@given(bowed_tunes())
@UNHURRIED
def test_every_stroke_goes_its_way_where_abc_can_say_so(bowed: tuple[Tune, Bowing]) -> None:
    tune, bowing = bowed
    marks = {
        note_id: replace(mark, only_pass=None) for note_id, mark in bowing.marks.items() if not tune.note(note_id).held
    }
    bowing = replace(bowing, marks=immutabledict(marks))
    if bowing.retakes <= derived_bows(tune, bowing).keys():
        again = read_back(Lesson(tune, (bowing,))).bowings[0]
        told = "Some strokes go another way when the text is read again." in abc_losses(Lesson(tune, (bowing,)))
        assert told == (work_out(tune, again).bows != work_out(tune, bowing).bows)
        assert not told or bowing.retakes


@given(bowed_tunes(), st.sampled_from(MarkDensity))
@UNHURRIED
def test_marks_for_other_programs_turn_no_stroke_round(bowed: tuple[Tune, Bowing], density: MarkDensity) -> None:
    tune, bowing = bowed
    again = read_back(Lesson(tune, (bowing,)), density).bowings[0]
    bows = work_out(tune, bowing).bows
    marked = {i: mark.bow for i, mark in again.marks.items() if i in derived_bows(tune, bowing)}
    fixed = {i: mark.bow for i, mark in bowing.marks.items() if mark.only_pass is None}
    assert marked | fixed == {i: bows[i][0] for i in marked} | fixed


@pytest.mark.parametrize("lesson", AWKWARD, ids=range(len(AWKWARD)))
def test_awkward_lessons_come_back(lesson: Lesson) -> None:
    again = read_back(lesson)
    assert carried(again.tune) == carried(lesson.tune)
    assert again.bowings[0].joins == lesson.bowings[0].joins
