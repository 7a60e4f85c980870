"""A plan in plain words."""

from __future__ import annotations

from dataclasses import replace

import pytest
from immutabledict import immutabledict

from app.plan_choices import Choices
from app.plan_words import (
    bar_named,
    changed_bars,
    count_slurs,
    distance,
    plan_name,
    plan_row,
    plan_sentence,
)
from core.accent_plan import AccentPlan, PlanKind
from core.check import check
from core.planner import Flow, Plan, Score, difference, pose
from tests.core.builders import bowed

FAULTLESS = Score(0, 0, 20)


def plan(text: str, score: Score = FAULTLESS, bound: Score | None = None, **changes: object):
    tune, bowing = bowed(text)
    bowing = replace(bowing, **changes)
    return Plan(pose(tune, bowing), bowing, score, bound or score)


def test_a_faultless_plan_is_told_in_three_numbers():
    best = plan("(AB)c | (de)f")
    assert plan_sentence(best, best) == "All accents driven, nothing broken; 2 slurs; proven best."


def test_what_is_missed_and_broken_is_counted():
    best = plan("ABc | rdef", Score(1, 2, 100))
    assert plan_sentence(best, best) == "1 accent not driven, 2 breaks; no slurs, 1 retake; proven best."


def test_that_nothing_is_to_be_driven_is_said():
    best = plan("ABc | def", accents=AccentPlan(PlanKind.NONE))
    assert plan_sentence(best, best).startswith("No accents asked for, nothing broken")


@pytest.mark.parametrize(
    ("score", "bound", "text"),
    [
        (Score(2, 0, 5), Score(0, 1, 5), "best found, not proven: the best may miss none"),
        (Score(2, 4, 5), Score(2, 1, 9), "best found, not proven: the best may break 1"),
        (Score(0, 0, 110), Score(0, 0, 100), "best found, not proven: at most 10 % dearer than the best can be"),
        (Score(0, 0, 110), Score(0, 0, 110), "proven best"),
    ],
)
def test_how_far_from_the_best_it_may_be(score, bound, text):
    assert distance(plan("ABc", score, bound)) == text


@pytest.mark.parametrize("text", ["ABc | def", "(AB)c | (def)", "(AB)(cd) | e f", "A2- (A B) | (c d- d e)"])
def test_slurs_are_counted_as_the_check_counts_them(text):
    tune, bowing = bowed(text)
    assert count_slurs(tune, bowing) == check(tune, bowing).totals.slurs


def test_what_is_beside_the_best_is_told_by_how_it_differs():
    best = plan("(A4B4) | (d4e4)")
    other = replace(best, bowing=replace(best.bowing, joins=immutabledict()), score=Score(1, 0, 0))
    assert plan_row(best, best) == "Best: 2 slurs"
    assert plan_row(other, best) == difference(best, other)
    assert plan_sentence(other, best) == "1 accent not driven, nothing broken; no slurs; beside the best."


def test_a_name_says_the_accents_and_how_much_is_slurred():
    bowing = bowed("ABc")[1]
    backbeat = AccentPlan(PlanKind.BACKBEAT)
    assert plan_name(Choices(accents=backbeat, flow=Flow.SMOOTH), bowing) == "On the backbeat, smooth"
    assert plan_name(Choices(), replace(bowing, accents=backbeat)) == "On the backbeat, fewest slurs"


def test_the_bar_that_a_refusal_names_is_found():
    tune, _ = bowed("ABc | def | gab")
    second = tune.bars[1]
    assert bar_named(tune, f"In bar {second.number} one stroke runs too far.") == second.notes[0].id
    assert bar_named(tune, "There is nothing to bow.") == ""
    assert bar_named(tune, "In bar 99 there is nothing.") == ""


def test_how_much_changes_is_told_by_bars():
    tune, _ = bowed("ABc | def | gab")
    assert changed_bars(tune, []) == "Nothing changes: the bowing is so already."
    assert changed_bars(tune, [1]) == f"Bar {tune.bars[1].number} changes."
    assert changed_bars(tune, [0, 1, 2]) == "Every bar changes."
