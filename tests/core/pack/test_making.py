"""The files of a lesson: whoever opens them elsewhere has its bows."""

from io import BytesIO

import pytest
import soundfile
from hypothesis import given, settings
from mido import MidiFile

from core.bowing import Bow
from core.lesson import Lesson, add_bowing
from core.pack.kinds import Kind
from core.pack.making import MAKERS, faults_of, sheets_of
from core.reading import read_file
from core.reading.abc import read_abc
from core.sheet_plan import SheetKind, begin
from core.strokes import work_out
from core.tempos import pace
from tests.core.builders import bowed
from tests.property.strategies import lessons


def lesson_of(text):
    tune, bowing = bowed(text)
    return Lesson(tune, (bowing,))


REEL = lesson_of("A2 (Bc) d2 e2 | (fg) a2 f2 d2")


def made(kind, lesson):
    return dict(MAKERS[kind](lesson, "Reel"))


@settings(max_examples=10, deadline=None)
@given(lessons())
def test_the_lesson_is_all_in_its_musicxml(lesson: Lesson):
    (data,) = made(Kind.MUSICXML, lesson).values()
    assert read_file(data).lessons == (lesson,)


def test_the_abc_has_a_bow_mark_on_every_stroke_and_each_bowing_as_a_tune():
    lesson = add_bowing(REEL, REEL.bowings[0])
    text = made(Kind.ABC, lesson)["Reel.abc"].decode()
    for again, bowing in zip(read_abc(text).lessons, lesson.bowings, strict=True):
        # on one stroke to each of A2 (Bc) d2 e2 (fg) a2 f2 d2
        assert [mark.bow for mark in again.bowings[0].marks.values()] == [Bow.DOWN, Bow.UP] * 4
        assert list(work_out(again.tune, again.bowings[0]).bows.values()) == list(
            work_out(lesson.tune, bowing).bows.values()
        )


def test_each_bowing_is_a_midi_file_of_its_own():
    lesson = add_bowing(REEL, REEL.bowings[0])
    files = made(Kind.MIDI, lesson)
    assert list(files) == [f"Reel, {bowing.name}.mid" for bowing in lesson.bowings]
    for data in files.values():
        notes = [m.note for m in MidiFile(file=BytesIO(data)) if m.type == "note_on" and m.velocity]
        assert notes == [69, 71, 72, 74, 76, 77, 79, 81, 77, 74]  # A B c d e f g a f d in C, A4 is 69


def test_each_bowing_is_heard_with_a_bar_counted_in():
    (data,) = made(Kind.AUDIO, REEL).values()
    heard, rate = soundfile.read(BytesIO(data))
    # a reel is played at 4 quarter notes in 60 / (2 x its half notes a minute) x 4 seconds; two bars and one counted in
    bar_s = 4 * 60 / (pace(REEL.tune, None).tempo.per_minute * pace(REEL.tune, None).tempo.beat)
    assert len(heard) / rate == pytest.approx(float(3 * bar_s), abs=2)  # the last note fades
    assert abs(heard[: int(rate * float(bar_s))]).max() > 0.01


def test_a_single_bowing_needs_no_name():
    assert list(made(Kind.MIDI, REEL)) == ["Reel.mid"]


def test_the_sheet_that_the_lesson_keeps_is_the_one():
    plan = begin(SheetKind.EXERCISE)
    assert sheets_of(Lesson(REEL.tune, REEL.bowings, sheet=plan)) == (plan,)
    assert [plan.kind for plan in sheets_of(REEL)] == [SheetKind.TEACHER, SheetKind.CLASS]


def test_faults_are_told_with_their_bowing():
    lesson = lesson_of("(vAuB) c2")
    assert [fault.startswith(f"{lesson.bowings[0].name}: ") for fault in faults_of(lesson)] == [True]
    assert not faults_of(REEL)
