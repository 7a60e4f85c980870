"""What is chosen becomes the question that the planner is asked."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from app.plan_choices import Choices, Span, pose_question
from core.accent_plan import AccentPlan, PlanKind
from core.errors import RefusedEditError
from core.lesson import Lesson
from core.planner import Flow

BACKBEAT = AccentPlan(PlanKind.BACKBEAT)


def ask(lesson: Lesson, choices: Choices, *selection: str):
    return pose_question(choices, lesson.tune, lesson.bowings[0], selection)


def test_at_first_all_bars_are_asked_for_with_what_is_there(four_bars):
    question = ask(four_bars, Choices())
    assert question.bowing == four_bars.bowings[0]
    assert (question.keep, question.free, question.keep_start) == (True, None, False)


def test_chosen_accents_hold_in_the_whole_tune(four_bars):
    assert ask(four_bars, Choices(accents=BACKBEAT)).bowing.plans(4) == (BACKBEAT,) * 4


def test_limits_and_flow_reach_the_planner(four_bars):
    settings = ask(four_bars, Choices(flow=Flow.SMOOTH, most_notes=6, longest=Fraction(1))).settings
    assert (settings.flow, settings.most_notes, settings.longest) == (Flow.SMOOTH, 6, Fraction(1))


def test_selected_bars_are_whole_bars_and_alone_take_the_accents(four_bars):
    tune = four_bars.tune
    question = ask(four_bars, Choices(accents=BACKBEAT, span=Span.SELECTED), "b1n2", "b2n1")
    assert question.free == {note.id for bar in tune.bars[1:3] for note in bar.notes}
    assert [plan.kind for plan in question.bowing.plans(4)] == [
        PlanKind.ON_BEAT, PlanKind.BACKBEAT, PlanKind.BACKBEAT, PlanKind.ON_BEAT,
    ]  # fmt: skip
    assert not question.keep_start


def test_from_a_note_on_all_before_it_stays_and_the_tune_begins_as_it_did(four_bars):
    tune = four_bars.tune
    question = ask(four_bars, Choices(span=Span.ONWARD, keep=False), "b1n3")
    place = tune.places["b1n3"]
    assert question.free == {note.id for note in tune.sequence[place:]}
    assert question.keep_start
    assert not question.keep


def test_where_some_bars_are_meant_and_none_is_chosen_that_is_said(four_bars):
    with pytest.raises(RefusedEditError, match="Choose a note on the page first"):
        ask(four_bars, replace(Choices(), span=Span.SELECTED))
