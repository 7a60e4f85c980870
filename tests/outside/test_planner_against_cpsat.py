"""The planner beside CP-SAT: small tunes of every sort, and a sample of three open collections.

``python -m tests.outside.planner_by_cpsat`` compares some hundred whole tunes.
"""

from __future__ import annotations

import pytest

from core.planner import Problem
from tests.core.planner.by_trial import try_all
from tests.core.planner.small_cases import Case, problem_or_none, random_cases
from tests.outside.abc_collections import FOLDERS, sources
from tests.outside.planner_by_cpsat import collected, compare, links, solve

SMALL, WHOLE = 60, 12
TIME_LIMIT_S = 20.0


@pytest.mark.parametrize("seed", range(2))
def test_the_solver_finds_what_trial_finds(seed: int) -> None:
    for one in random_cases(seed, SMALL):
        problem = problem_or_none(one)
        if problem is not None:
            trial, answer = try_all(problem), solve(problem)
            assert answer.status == ("none" if trial.score is None else "best"), one
            assert answer.score == trial.score, one


def test_the_solver_counts_each_way_from_note_to_note_as_the_problem_does() -> None:
    for one in random_cases(7, SMALL):
        problem = problem_or_none(one)
        if problem is not None:
            counted = {}
            for before, after, runs_on, over_rest, times in problem.crossings:
                ends = problem.bars[before].stop - 1, problem.bars[after].first
                counted[(*ends, runs_on, over_rest)] = times
            assert crossings_by_links(problem) == counted


def crossings_by_links(problem: Problem) -> dict[tuple[int, int, bool, bool], int]:
    """The links that lead into a bar's first note, and how often."""
    firsts = {bar.first for bar in problem.bars}
    found: dict[tuple[int, int, bool, bool], int] = {}
    for link in links(problem):
        if link.note in firsts:
            found[tuple(link)] = found.get(tuple(link), 0) + 1
    return found


@pytest.mark.skipif(not sources(*FOLDERS), reason="this music21 comes without the ABC collections")
def test_no_bowing_of_a_printed_tune_is_better_than_its_plan() -> None:
    verdicts = [compare(case, problem, TIME_LIMIT_S) for case, problem in collected(WHOLE, seed=27)]
    assert [one for one in verdicts if one.verdict not in ("equal", "open")] == []
    assert sum(one.verdict == "equal" for one in verdicts) > WHOLE // 2


def test_the_comparison_sees_a_plan_that_is_not_the_best(monkeypatch: pytest.MonkeyPatch) -> None:
    from tests.outside import planner_by_cpsat

    dear = Case("(AB)cd (AB)cd | (AB)cd (AB)cd |]").problem()
    plan = planner_by_cpsat.plan_bowing(dear)  # with slurs that nothing asks for
    monkeypatch.setattr(planner_by_cpsat, "plan_bowing", lambda problem: plan)
    assert compare("", dear).verdict == "equal"
    assert compare("", Case("ABcd ABcd | ABcd ABcd |]").problem()).verdict == "different"
