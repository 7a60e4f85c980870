"""The planner beside trial of every way, on small tunes of every sort.

``BOWBENCH_PLANNER_CASES=5000`` tries as many random tunes (minutes).
"""

from __future__ import annotations

import os
from itertools import product

import pytest
from hypothesis import HealthCheck, given, settings

from core.bowing import Bow, Bowing
from core.planner import Problem, RefusedPlanError, plan_bowing, score
from tests.core.planner.by_trial import Trial, Way, bowing_of, legal, legal_ways, try_all, way_of
from tests.core.planner.small_cases import Case, cases, problem_or_none, random_cases

SEED, AT_ONCE = 1883, 40
COUNT = int(os.environ.get("BOWBENCH_PLANNER_CASES", "240"))


def compare(problem: Problem, trial: Trial) -> None:
    """Hold the plan against what trial found.

    Raises:
        AssertionError: it is not the best, not legal, or drops what was to be kept.
    """
    if trial.score is None:
        with pytest.raises(RefusedPlanError):
            plan_bowing(problem)
        return
    plan = plan_bowing(problem)
    assert plan.score == trial.score
    assert plan.proven
    assert plan.bound == plan.score
    assert score(problem, plan.bowing) == plan.score
    assert_keeps_what_is_kept(problem, plan.bowing)
    way = way_of(problem, plan.bowing)
    assert legal(problem, way)
    assert way in trial.best


def assert_keeps_what_is_kept(problem: Problem, bowing: Bowing) -> None:
    kept = problem.kept
    assert kept.joins.items() <= bowing.joins.items()
    assert {note_id: mark.bow for note_id, mark in kept.marks.items()}.items() <= {
        note_id: mark.bow for note_id, mark in bowing.marks.items()
    }.items()
    assert bowing.retakes.isdisjoint([*bowing.joins, *bowing.marks])
    assert (bowing.name, bowing.signs, bowing.plans(99)) == (kept.name, kept.signs, kept.plans(99))


@pytest.mark.parametrize("batch", range(-(-COUNT // AT_ONCE)))
def test_no_way_of_a_random_small_tune_is_better_than_its_plan(batch: int) -> None:
    for number, one in enumerate(random_cases(SEED + batch, AT_ONCE)):
        problem = problem_or_none(one)
        if problem is not None:
            try:
                compare(problem, try_all(problem))
            except Exception as error:
                error.add_note(f"batch {batch}, number {number}: {one}")
                raise


@given(cases())
@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
def test_no_way_of_a_small_tune_is_better_than_its_plan(one: Case) -> None:
    problem = problem_or_none(one)
    if problem is not None:
        compare(problem, try_all(problem))


def test_trial_leaves_no_legal_way_out() -> None:
    """The search bar by bar against all ways there are."""
    seen = 0
    for one in random_cases(SEED, 120):
        problem = problem_or_none(one)
        if problem is None or len(problem.notes) > 5:
            continue
        count = len(problem.notes)
        every = {
            Way(joined, bows) for joined in product((True, False), repeat=count) for bows in product(Bow, repeat=count)
        }
        found = list(legal_ways(problem))
        assert set(found) == {way for way in every if legal(problem, way)}
        assert len(found) == len(set(found))
        seen += 1
    assert seen > 20


def test_a_bowing_is_the_way_it_was_made_from() -> None:
    for one in random_cases(SEED, 40):
        problem = problem_or_none(one)
        for way in legal_ways(problem) if problem else ():
            assert way_of(problem, bowing_of(problem, way)) == way
