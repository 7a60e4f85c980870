"""What a lesson goes through once it is read; none of it may raise on any lesson that a reader gives."""

from __future__ import annotations

from functools import cache

from core.engraving.bow_signs import MarkDensity, bow_signs, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.lines import break_lines
from core.lesson import Lesson
from core.lesson_check import check_lesson
from core.reading.abc import decode, read_abc
from core.reading.musicxml import read_musicxml, read_mxl
from core.shelf.facts import facts_of
from core.strokes import work_out
from core.writing.abc import write_abc
from core.writing.abc_losses import abc_losses
from core.writing.musicxml import write_musicxml
from core.writing.mxl import pack_mxl
from tests.property.test_spoilt_scores import check_bowing, check_tune

MOST_NOTES = 1500  # of a lesson that goes through all of it


def keeps_promises(lesson: Lesson) -> None:
    """The promises of ``core.tune`` and ``core.bowing``, and the law: what is written is read again equal."""
    check_tune(lesson.tune)
    for bowing in lesson.bowings:
        check_bowing(lesson.tune, bowing)
    if len(lesson.tune.sequence) <= MOST_NOTES:
        assert read_musicxml(write_musicxml(lesson).encode()).lessons == (lesson,), "not read again equal"


def goes_through(lesson: Lesson) -> None:
    """Strokes, check, a line engraved, every way of writing."""
    if len(lesson.tune.sequence) > MOST_NOTES:
        return
    for bowing in lesson.bowings[:2]:
        for finding in check_lesson(lesson, bowing).findings:
            assert finding.text
        strokes = work_out(lesson.tune, bowing)
        signs = bow_signs(lesson.tune, bowing, strokes, MarkDensity.EVERY)
        _engraver().engrave(lesson.tune, bowing, break_lines(lesson.tune)[0], rows_kept(lesson.tune, signs))
    assert read_mxl(pack_mxl(write_musicxml(lesson))).lessons == (lesson,)
    assert read_abc(decode(write_abc([lesson]).encode())).lessons
    abc_losses(lesson)
    facts_of(lesson)


@cache
def _engraver() -> Engraver:
    return Engraver()
