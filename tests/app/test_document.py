"""The document, without any window."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from app.document import Document, State
from core.bowing import Bow, Join, fix_bow, join, toggle_join_to_next
from core.errors import RefusedEditError
from core.lesson import Lesson, add_bowing
from core.severity import Severity, set_quiet


def slur(note_id: str):
    return lambda tune, bowing: toggle_join_to_next(tune, bowing, note_id)


def test_an_edit_replaces_the_lesson_and_announces_both(document: Document):
    heard = []
    document.lesson_changed.connect(lambda before, after: heard.append((before, after)))
    old = document.state
    assert document.edit("Slur", slur("b0n1"))
    assert heard == [(old, document.state)]
    assert dict(document.state.bowing.joins) == {"b0n2": Join.SLUR}


def test_the_old_lesson_is_untouched_by_an_edit(document: Document):
    old = document.state
    document.edit("Slur", slur("b0n1"))
    assert not old.bowing.joins


def test_do_undo_redo_walk_the_same_lessons_back_and_forth(document: Document):
    states = [document.state]
    for note_id in ("b0n1", "b1n1", "b2n2"):
        document.edit("Slur", slur(note_id))
        states.append(document.state)
    for state in reversed(states[:-1]):
        document.stack.undo()
        assert document.state == state
    for state in states[1:]:
        document.stack.redo()
        assert document.state == state


def test_an_edit_that_changes_nothing_is_not_pushed(document: Document):
    heard = []
    document.lesson_changed.connect(lambda *states: heard.append(states))
    assert not document.edit("Nothing", lambda tune, bowing: bowing)
    assert document.stack.count() == 0
    assert not heard


def test_a_refused_edit_changes_nothing(document: Document):
    before = document.state
    with pytest.raises(RefusedEditError, match="rest"):
        document.edit("Slur into a rest", lambda tune, bowing: join(tune, bowing, "b3n6"))
    assert document.state is before
    assert document.stack.count() == 0


def test_modified_means_that_the_undo_stack_is_not_at_the_saved_place(document: Document, tmp_path: Path):
    assert not document.is_modified
    document.edit("Slur", slur("b0n1"))
    assert document.is_modified
    document.mark_saved(tmp_path / "lesson.musicxml")
    assert not document.is_modified
    document.stack.undo()
    assert document.is_modified
    document.stack.redo()
    assert not document.is_modified


def test_a_pasted_lesson_is_modified_until_it_is_saved(document: Document, with_pickup: Lesson, tmp_path: Path):
    document.open(with_pickup, unsaved=True)
    assert document.is_modified
    document.mark_saved(tmp_path / "lesson.musicxml")
    assert not document.is_modified


def test_opening_another_lesson_forgets_the_steps_of_the_last(document: Document, with_pickup: Lesson):
    document.edit("Slur", slur("b0n1"))
    document.open(with_pickup)
    assert not document.stack.canUndo()
    assert document.state == State(with_pickup, 0)
    assert document.path is None


def test_undo_shows_the_bowing_that_it_changes(document: Document):
    document.change("Add", lambda lesson: add_bowing(lesson, lesson.bowings[0]), 1)
    document.edit("Slur", slur("b0n1"))
    document.show(0)
    document.stack.undo()
    assert document.state.shown == 1


def test_showing_another_bowing_is_no_undo_step(document: Document):
    document.change("Add", lambda lesson: add_bowing(lesson, lesson.bowings[0]), 1)
    document.show(0)
    assert document.stack.count() == 1
    assert document.state.shown == 0


def test_the_report_is_of_the_shown_bowing_and_follows_every_edit(document: Document):
    strokes = document.report().totals.strokes
    document.edit("Slur", slur("b0n1"))
    assert document.report().totals.strokes == strokes - 2  # the bar is played twice
    document.edit("Turn", lambda tune, bowing: fix_bow(tune, bowing, "b0n1", Bow.UP))
    assert document.report().strokes.bows["b0n1"][0] is Bow.UP


def test_a_report_is_worked_out_once_and_kept(document: Document):
    first = document.report()
    document.edit("Slur", slur("b0n1"))
    document.stack.undo()
    assert document.report() is first


def test_a_report_that_was_foreseen_is_taken_when_the_edit_comes(document: Document):
    foreseen = document.foresee(slur("b0n1")(document.state.tune, document.state.bowing))
    assert document.report() is not foreseen
    document.edit("Slur", slur("b0n1"))
    assert document.report() is foreseen


def test_a_document_without_a_lesson_has_no_report(qapp: object):
    with pytest.raises(ValueError, match="no lesson"):
        Document().report()


# ------------------------------------------------------------------------------------------------- what is told


def turn_down(document: Document, rule: str, told_as: Severity | None) -> None:
    document.change("Quiet", lambda le: replace(le, quiet=set_quiet(le.quiet, rule, told_as)), document.state.shown)


def test_the_report_keeps_to_what_the_teacher_turned_down(document: Document):
    assert "accent-up" in {finding.rule for finding in document.report().findings}
    turn_down(document, "accent-up", None)
    assert "accent-up" not in {finding.rule for finding in document.report().findings}
    turn_down(document, "accent-up", Severity.NOTE)
    told = {finding.severity for finding in document.report().findings if finding.rule == "accent-up"}
    assert told == {Severity.NOTE}


def test_undo_tells_a_rule_again(document: Document):
    before = document.report()
    turn_down(document, "accent-up", None)
    document.stack.undo()
    assert document.report() is before
