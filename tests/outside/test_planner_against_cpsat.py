"""The planner beside CP-SAT: small tunes of every sort, and a sample of three open collections.

``python -m tests.outside.planner_by_cpsat`` compares some hundred whole tunes.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.accent_plan import AccentPlan, PlanKind, parse_plan
from core.accents import PHRASE_PLANS
from core.bowing import set_plan
from core.planner import Flow, PlannerSettings, Problem, RefusedPlanError, pose, work_out_plan
from core.planner.phrase_plans import changes_of_plan, phrase_groups, resolved
from core.planner.score import Score
from core.reading.abc import read_abc
from tests.core.builders import bowed
from tests.core.planner.by_trial import try_all
from tests.core.planner.small_cases import Case, problem_or_none, random_cases
from tests.outside import planner_by_cpsat
from tests.outside.abc_collections import FOLDERS, sources
from tests.outside.planner_by_cpsat import collected, compare, links, solve, solve_by_phrase
from tests.property.strategies import bowings, tunes

SMALL, WHOLE = 50, 16  # cases
MOST_NOTES, EFFORT = 100, 2.0  # of the whole tunes


@pytest.mark.parametrize("seed", range(2))
def test_the_solver_finds_what_trial_finds(seed: int) -> None:
    for one in random_cases(seed, SMALL):
        problem = problem_or_none(one)
        if problem is not None:
            trial, answer = try_all(problem), solve(problem)
            assert answer.status == ("none" if trial.score is None else "best"), one
            assert answer.score == trial.score, one


def best_by_phrase(case: Case) -> Score | None:
    """The best over all choices of plans for the phrases, each by trial."""
    tune, bowing = case.lesson()
    groups = phrase_groups(tune, bowing)
    found = []
    for choice in product(PHRASE_PLANS, repeat=len(groups)):
        bowing_there = resolved(tune, bowing, groups, choice)
        problem = pose(tune, bowing_there, case.settings, style=case.style(tune), keep=case.keep)
        found.append(try_all(replace(problem, plan_changes=changes_of_plan(groups, choice))).score)
    return min((score for score in found if score), default=None)


def test_plans_by_phrase_are_the_best_of_all_choices() -> None:
    by_phrase = AccentPlan(PlanKind.BY_PHRASE)
    for one in random_cases(11, SMALL // 2):
        plans = {bar: by_phrase if bar % 2 == 0 else plan for bar, plan in one.plans.items()}
        case = replace(one, plans=plans, keep_start=False, free=None)
        tune, bowing = case.lesson()
        try:
            best = best_by_phrase(case)
        except RefusedPlanError:
            continue
        style = case.style(tune)
        assert solve_by_phrase(tune, bowing, case.settings, style, keep=case.keep).score == best, case
        if best is None:
            with pytest.raises(RefusedPlanError):
                work_out_plan(tune, bowing, case.settings, style=style, keep=case.keep)
        else:
            plan = work_out_plan(tune, bowing, case.settings, style=style, keep=case.keep)
            assert (plan.score, plan.proven) == (best, True), case


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
    verdicts = [compare(case, EFFORT) for case in collected(WHOLE, seed=27, most_notes=MOST_NOTES)]
    assert [one for one in verdicts if one.verdict not in ("equal", "both refuse", "open")] == []
    assert sum(one.verdict == "equal" for one in verdicts) > WHOLE // 2


def test_the_comparison_sees_a_plan_that_is_not_the_best(monkeypatch: pytest.MonkeyPatch) -> None:
    tune, slurred = bowed("(AB)cd (AB)cd | (AB)cd (AB)cd |]")
    kept = planner_by_cpsat.Case("", tune, slurred, PlannerSettings(), keep=True)
    plan = work_out_plan(tune, slurred)
    assert compare(kept).verdict == "equal"
    monkeypatch.setattr(planner_by_cpsat, "work_out_plan", lambda *_, **__: plan)
    assert compare(replace(kept, keep=False)).verdict == "different"


@st.composite
def any_cases(draw: st.DrawFn) -> planner_by_cpsat.Case:
    """Tunes and bowings of every kind: double stops, tuplets, changes of metre, marks for one pass, plans by phrase."""
    tune = draw(tunes())
    limits = PlannerSettings(
        draw(st.sampled_from(Flow)),
        draw(st.integers(2, 6)),
        draw(st.sampled_from((Fraction(1, 2), Fraction(1), Fraction(1, 3)))),
    )
    bowing, keep = draw(bowings(tune)), draw(st.booleans())
    styles = st.dictionaries(st.sampled_from([note.id for note in tune.sequence]), st.floats(-9, 9))
    return planner_by_cpsat.Case("", tune, bowing, limits, keep, draw(st.none() | styles) if tune.sequence else None)


@given(any_cases())
@settings(deadline=None, max_examples=25, suppress_health_check=list(HealthCheck))
def test_no_bowing_of_any_tune_is_better_than_its_plan(case: planner_by_cpsat.Case) -> None:
    assert compare(case, EFFORT).verdict in ("equal", "both refuse", "open")


@pytest.mark.parametrize(
    ("place", "plan", "best"),
    [  # what the constraint solver proved of tunes that the planner once gave up, or took another choice of plans for
        ("oneills1850/1801-1850.abc X: 1846", "on-beat", Score(1, 1, 243)),
        ("oneills1850/1801-1850.abc X: 1846", "by-phrase", Score(0, 1, 261)),
    ],
)
def test_what_hangs_together_closely_is_planned_in_steps_and_proven(place: str, plan: str, best: Score) -> None:
    (source,) = (source for source in sources(place.split("/")[0]) if source.place == place)
    lesson = read_abc(source.text).lessons[0]
    planned = work_out_plan(lesson.tune, set_plan(lesson.tune, lesson.bowings[0], parse_plan(plan)), keep=False)
    assert (planned.score, planned.proven) == (best, True)
