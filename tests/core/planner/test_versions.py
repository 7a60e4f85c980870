from dataclasses import replace
from itertools import product

import pytest

from core.accent_plan import AccentPlan, PlanKind
from core.accents import PHRASE_PLANS
from core.bowing import set_plan
from core.check import check
from core.planner import (
    VERSIONS,
    Flow,
    PlannerSettings,
    alternatives,
    changes,
    difference,
    plan_bowing,
    pose,
    score,
    sentence,
    starting_versions,
    suitability,
    work_out_plan,
)
from core.planner.phrase_plans import changes_of_plan, phrase_groups, resolved
from core.planner.score import Score
from core.planner.suitability import Suited
from core.planner.versions import with_cuts
from tests.core.builders import bowed

REEL = (
    "|: G2BG dGBG | c2ec gcec | d2Bd gdBd | edcB A2AG | G2BG dGBG | c2ec gcec | dBAc BGAF | G2BG G4 :|"
    "|: g2fg edBd | e2de cABc | B2gB a2gf | e2ef gfed | g2fg edBd | e2de cABc | B2AB c2BA | G2GA G2Bd :|"
)


def by_phrase(text, **settings):
    tune, bowing = bowed(text)
    bowing = set_plan(tune, bowing, AccentPlan(PlanKind.BY_PHRASE))
    return tune, bowing, work_out_plan(tune, bowing, PlannerSettings(**settings), keep=False)


def test_the_four_versions_are_separate_on_beat_backbeat_and_by_phrase():
    tune, bowing = bowed(REEL)
    versions = list(starting_versions(tune, bowing))
    assert [version.name for version in versions] == [version.name for version in VERSIONS]
    separate, on_beat, backbeat, smooth = versions
    assert not separate.joins
    assert not separate.marks
    for version in (on_beat, backbeat):
        totals = check(tune, version).totals
        assert (totals.up, totals.buried, totals.comes_round) == (0, 0, True)
    assert len(smooth.joins) > len(on_beat.joins)
    assert all(plan.kind in PHRASE_PLANS for plan in smooth.plans(len(tune.bars)))


def test_versions_take_over_signs_and_leave_slurs_and_marks():
    tune, bowing = bowed("(vG~A) Bc d2 d2 | g2 f2 e2 d2 |")
    for version in starting_versions(tune, bowing):
        assert bowing.signs.items() <= version.signs.items()
    separate = next(iter(starting_versions(tune, bowing)))
    assert (dict(separate.joins), dict(separate.marks)) == ({}, {})


def test_equal_notes_slurred_over_the_bar_line_are_parted_by_a_cut_and_others_are_not():
    tune, bowing = bowed("G2 A2 B2 (d2 | d2) B2 (A2 A2) | G2 A2 B2 (d2 | e2) B2 A2 G2 |")
    cut = with_cuts(tune, bowing)
    assert list(cut.signs) == [tune.bars[1].notes[0].id]
    assert cut.joins == bowing.joins
    assert with_cuts(tune, cut) == cut


@pytest.mark.parametrize("flow", Flow)
def test_no_other_choice_of_plans_by_phrase_gives_a_better_bowing(flow):
    tune, bowing, plan = by_phrase(REEL, flow=flow)
    assert plan.proven
    groups = phrase_groups(tune, bowing)
    assert len(groups) > 1
    for choice in product(PHRASE_PLANS, repeat=len(groups)):
        problem = pose(tune, resolved(tune, bowing, groups, choice), PlannerSettings(flow=flow), keep=False)
        other = plan_bowing(replace(problem, plan_changes=changes_of_plan(groups, choice)))
        assert plan.score <= other.score


def test_the_chosen_plans_stand_in_the_bowing_so_that_it_can_be_judged_again():
    _, _, plan = by_phrase(REEL)
    assert score(plan.problem, plan.bowing) == plan.score


def test_phrases_that_come_again_take_the_same_plan():
    tune, bowing = bowed(REEL)
    groups = phrase_groups(tune, set_plan(tune, bowing, AccentPlan(PlanKind.BY_PHRASE)))
    assert {0, 1} <= set(groups[0].phrases)  # bars 5 and 6 are bars 1 and 2 again


def test_alternatives_differ_in_two_bars_or_more_and_none_is_better():
    tune, bowing = bowed(REEL)
    plan = work_out_plan(tune, bowing, keep=False)
    others = alternatives(plan, 3)
    assert others
    bowings = [plan.bowing, *(other.bowing for other in others)]
    for number, one in enumerate(bowings):
        for other in bowings[:number]:
            assert len(changes(tune, one, other)) >= 2
    assert all(plan.score <= other.score == score(plan.problem, other.bowing) for other in others)
    assert [other.score for other in others] == sorted(other.score for other in others)
    assert all(difference(plan, other).endswith(".") for other in others)


def test_changes_name_the_bars_the_notes_and_what_it_is_good_for():
    tune, separate = bowed("G2 A2 c2 d2 | G AB c2 d3 | G2 A2 c2 d2 |")
    told = changes(tune, separate, work_out_plan(tune, separate).bowing)
    assert [change.bar for change in told if change.notes] == [1]
    assert "lurs notes" in next(change.text for change in told if change.notes)
    assert changes(tune, separate, separate) == ()


def test_the_plan_that_suits_is_the_one_with_the_best_numbers():
    tune, bowing = bowed("G2 AB c2 d2 | " * 4)
    found = suitability(tune, bowing)
    assert [one.plan.kind for one in found] == [PlanKind.ON_BEAT, PlanKind.BACKBEAT, PlanKind.BY_PHRASE]
    assert sentence(found).startswith("This tune lies best")
    for one in found:
        plan = work_out_plan(tune, set_plan(tune, bowing, one.plan), keep=False)
        assert plan.score == one.score


def test_it_is_said_why_a_plan_with_fewer_slurs_is_not_the_best():
    best = Suited(AccentPlan(PlanKind.BACKBEAT), Score(0, 0, 90), True, 11, 0, 0, 0, 32)
    fewer = replace(best, plan=AccentPlan(PlanKind.ON_BEAT), score=Score(0, 0, 120), slurs=10)
    assert sentence([fewer, best]).endswith(" On the beat it takes fewer slurs, but they are harder to play.")
    joining = replace(fewer, equal_pitches=1)
    assert sentence([joining, best]).endswith(" On the beat it takes fewer slurs, but one joins two equal notes.")
    worse = replace(fewer, score=Score(1, 0, 60))
    assert "fewer" not in sentence([worse, best])


def test_a_plan_that_asks_for_far_fewer_accents_is_told_to_do_so():
    """The backbeat of 6/8 is one accent a bar, on the beat are two, so that it is met more easily (table by metre)."""
    tune, bowing = bowed("|: A2B cBA | e2f gfe :|", meter="6/8")
    on_beat, backbeat, _ = suitability(tune, bowing)
    assert (on_beat.accents, backbeat.accents) == (8, 4)  # four bars as played
    best = replace(backbeat, score=Score(0, 0, 0))
    assert "It asks for 4 accents in one playing, “on the beat” for 8." in sentence([on_beat, best])
    assert "asks" not in sentence([replace(on_beat, accents=5), best])  # a rest or a long note here and there
    assert "asks" not in sentence([replace(on_beat, score=Score(0, 0, 0)), replace(backbeat, score=Score(1, 0, 0))])


def test_from_the_caret_on_nothing_before_it_changes():
    tune, bowing = bowed("(vGA) Bc d2 d2 | (GAB) c d2 d2 | G2 AB c2 d2 | G AB c2 d3 | g4 g4 |")
    later = [note.id for bar in tune.bars[2:] for note in bar.notes]
    plan = plan_bowing(pose(tune, bowing, free=later, keep_start=True))
    before = [note.id for bar in tune.bars[:2] for note in bar.notes]
    old, new = check(tune, bowing).strokes.bows, check(tune, plan.bowing).strokes.bows
    assert [plan.bowing.joins.get(note_id) for note_id in before] == [bowing.joins.get(note_id) for note_id in before]
    assert [old[note_id] for note_id in before] == [new[note_id] for note_id in before]


@pytest.mark.parametrize(
    ("before", "after", "told"),
    [
        ("vA2 B2 c2 d2 |", "A2 B2 c2 d2 |", "Drops the mark on note 1."),
        ("A2 B2 rc2 d2 |", "A2 B2 c2 d2 |", "Retakes note 3 no more; drives 2 of 2 accents, not 1."),
        ("(A2 B2) c2 d2 |", "A2 =B2 c2 d2 |", "Is joined or marked otherwise."),
    ],
)
def test_whatever_differs_is_told(before, after, told):
    tune, old = bowed(before)
    _, new = bowed(after)
    assert [change.text for change in changes(tune, old, new)] == [told]


def test_alternatives_of_one_tune_are_told_apart():
    tune, bowing = bowed("G2 AB c2 d2 | e2 dc B2 A2 | d2 cB A2 G2 | G2 G2 G4 | " * 2)
    plan = work_out_plan(tune, bowing, keep=False)
    lines = [difference(plan, other) for other in alternatives(plan, 4)]
    assert len(lines) == len(set(lines)) > 1
