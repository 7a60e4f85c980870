"""The files of a lesson that need no painting: names and bytes."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import partial
from io import BytesIO

from core.bowing import Bowing
from core.check import Severity
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson
from core.lesson_check import check_lesson
from core.pack.kinds import Kind
from core.pack.names import free_name, safe_name
from core.sheet_plan import SheetKind, SheetPlan, begin

Files = Iterator[tuple[str, bytes]]


def sheets_of(lesson: Lesson) -> tuple[SheetPlan, ...]:
    """The sheets of a lesson: what the teacher set for it, else one for the teacher and one for the class."""
    return (lesson.sheet,) if lesson.sheet is not None else (begin(SheetKind.TEACHER), begin(SheetKind.CLASS))


def faults_of(lesson: Lesson) -> tuple[str, ...]:
    """What contradicts itself in the bowings, a sentence each."""
    return tuple(
        f"{bowing.name}: {finding.text}"
        for bowing in lesson.bowings
        for finding in check_lesson(lesson, bowing).findings
        if finding.severity is Severity.FAULT
    )


def _musicxml(lesson: Lesson, name: str) -> Files:
    from core.writing.musicxml import write_musicxml

    yield f"{name}.musicxml", write_musicxml(lesson).encode()


def _abc(lesson: Lesson, name: str) -> Files:
    """Every stroke is marked, since other programs do not work bows out."""
    from core.writing.abc import write_abc

    yield f"{name}.abc", write_abc([lesson], MarkDensity.EVERY).encode()


def _for_each_bowing(suffix: str, write: Callable[[Lesson, Bowing], bytes], lesson: Lesson, name: str) -> Files:
    taken: set[str] = set()
    for bowing in lesson.bowings:
        if len(lesson.bowings) == 1:
            yield f"{name}{suffix}", write(lesson, bowing)
        else:
            yield f"{name}, {free_name(safe_name(bowing.name), taken)}{suffix}", write(lesson, bowing)


def _sound(suffix: str, count_in: int, lesson: Lesson, bowing: Bowing) -> bytes:
    """Once through, at the tempo of the lesson, with so many bars counted in."""
    from core.sound.files import write_sound
    from core.sound.performance import Manner, perform
    from core.sound.tags import tags_of

    playing = perform(lesson.tune, bowing, manner=Manner(lesson.reach.tempo, count_in=count_in))
    out = BytesIO()
    write_sound(out, suffix, [playing], tags_of(lesson, bowing.name, [playing]))
    return out.getvalue()


MAKERS: Mapping[Kind, Callable[[Lesson, str], Files]] = {
    Kind.MUSICXML: _musicxml,
    Kind.ABC: _abc,
    Kind.MIDI: partial(_for_each_bowing, ".mid", partial(_sound, ".mid", 0)),
    Kind.AUDIO: partial(_for_each_bowing, ".mp3", partial(_sound, ".mp3", 1)),
}
"""From a lesson and its name in the pack to names and bytes; sheets are ``app.pack_sheets``' business."""
