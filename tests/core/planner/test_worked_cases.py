"""Plans that can be worked out by hand: each comment is the whole argument.

A slur costs 10, into a beat 3 more, over a bar line 5 more, over equal pitches 30 more, a leap 1 more, behind a longer
note 1 more; a retake costs 100, over a rest 8 (``core.planner.settings.Weights``). Misses come first, then breaks, then
cost.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bow, Mark
from core.planner import Flow, PlannerSettings, RefusedPlanError, Score, Weights, plan_bowing, pose, score
from tests.core.builders import bowed, bows

ON_BEAT, BACKBEAT, NO_PLAN = (AccentPlan(kind) for kind in (PlanKind.ON_BEAT, PlanKind.BACKBEAT, PlanKind.NONE))


def planned(text: str, meter: str = "4/4", plan: AccentPlan = ON_BEAT, **wishes: object) -> tuple[str, Score]:
    """Directions as ``tests.core.builders.bows`` writes them, and the three numbers."""
    tune, bowing = bowed(text, meter, plan)
    problem = pose(tune, bowing, **wishes)
    found = plan_bowing(problem)
    assert found.proven
    assert found.score == score(problem, found.bowing)
    return bows(tune, found.bowing), found.score


def test_eighths_in_fours_need_no_slur() -> None:
    # An even number of strokes from accent to accent.
    assert planned("ABcd cBAG | ABcd cBAG |]") == ("D U D U D U D U | D U D U D U D U", (0, 0, 0))


def test_the_backbeat_of_eighths_needs_no_slur_either() -> None:
    # Notes 3 and 7: down again if the bar begins down.
    assert planned("ABcd cBAG | ABcd cBAG |]", plan=BACKBEAT) == ("D U D U D U D U | D U D U D U D U", (0, 0, 0))


def test_a_quarter_before_eighths_takes_one_slur_in_its_half_of_the_bar() -> None:
    # Three notes before the accent on beat 3 must be two strokes. Slurred into beat 2: 14; behind it: 10.
    assert planned("A2 Bc dcBA | A2 Bc dcBA |]") == ("D U=U D U D U | D U=U D U D U", (0, 0, 20))


def test_the_backbeat_of_a_quarter_before_eighths_begins_up_and_slurs_the_end_of_the_bar() -> None:
    # Notes 2 and 6 are a stroke of four apart, so the bar begins up. From 6 to the next 2 three notes must be two
    # strokes: 6 and 7 for 10, or over the bar line into a beat for 18.
    found = planned("A2 Bc dcBA | A2 Bc dcBA |]", plan=BACKBEAT)
    assert found == ("U D U D U D=D | U D U D U D=D", (0, 0, 20))


def test_a_first_note_that_begins_up_on_the_beat_is_marked() -> None:
    # Rule B6 would begin down.
    tune, bowing = bowed("A2 Bc dcBA | A2 Bc dcBA |]", accents=BACKBEAT)
    assert plan_bowing(pose(tune, bowing)).bowing.marks == {"b0n1": Mark(Bow.UP)}


def test_equal_pitches_are_not_slurred_where_another_slur_serves() -> None:
    # Behind beat 2 the slur would join B to B: 40; into beat 2 it costs 14.
    assert planned("A2 BB dcBA | A2 BB dcBA |]") == ("D=D U D U D U | D=D U D U D U", (0, 0, 28))


def test_equal_pitches_over_the_bar_line_are_not_slurred_where_another_slur_serves() -> None:
    # Seven notes without accents take one slur to come round: 13 inside a bar, 48 over the bar line.
    tune, bowing = bowed("A2 B2 c2 d2 | d2 c2 A4 |]", accents=NO_PLAN)
    plan = plan_bowing(pose(tune, bowing))
    assert plan.score == (0, 0, 13)
    assert "b1n1" not in plan.bowing.joins


def test_a_pickup_goes_up_and_is_not_marked() -> None:
    # Eight strokes, the first full bar begins down; rule B6 says so without a mark.
    tune, bowing = bowed("E2 | A2 c2 e2 c2 | A2 c2 e2 |]")
    plan = plan_bowing(pose(tune, bowing))
    assert (bows(tune, plan.bowing), plan.score) == ("U | D U D U | D U D", (0, 0, 0))
    assert plan.bowing == bowing


def test_an_odd_part_takes_one_slur_to_come_round() -> None:
    # Nine notes. Behind the last accent c: into beat 4 for 14, behind it for 10; twice, as it is repeated.
    found = planned("A2 B2 c2 d2 | e2 d2 c2 BA :|")
    assert found == ("D U D U | D U D U=U | D U D U | D U D U=U", (0, 0, 20))


def test_an_odd_part_that_ends_on_an_accent_lifts_the_bow_to_come_round() -> None:
    # The last note and the first must both be down: a break is less than a miss.
    assert planned("A2 B2 c2 d2 | e2 c2 A4 |]") == ("D U D U | D U D", (0, 1, 0))


def test_a_rest_lets_the_bow_come_back() -> None:
    # As before, but the bow is lifted in the rest: 8 and no break.
    assert planned("A2 B2 c2 d2 | e2 c2 A2 z2 |]") == ("D U D U | D U D -", (0, 0, 8))


def test_a_jig_slurs_two_of_three() -> None:
    # Three notes to a beat must be two strokes; the first two are a third apart (11), the last two a step (10).
    assert planned("Acd eBc | Acd eBc |]", "6/8") == ("D U=U D U=U | D U=U D U=U", (0, 0, 40))


def test_a_slip_jig_does_so_three_times() -> None:
    assert planned("Acd eBc Acd |]", "9/8") == ("D U=U D U=U D U=U", (0, 0, 30))


def test_sixteenths_in_fours_need_no_slur() -> None:
    assert planned("A/B/c/d/ c/B/A/G/ |]", "2/4") == ("D U D U D U D U", (0, 0, 0))


def test_an_eighth_and_two_sixteenths_slur_the_sixteenths() -> None:
    # Three steps, but the first of them from a longer note: 11 or 10.
    assert planned("A B/c/ e d/c/ |]", "2/4") == ("D U=U D U=U", (0, 0, 20))


def test_of_three_equal_notes_two_are_slurred_so_that_the_next_bar_comes_down() -> None:
    # L. Mozart, Violinschule (1756), IV, from memory. The third is slurred into beat 3 by a step: 13, by a third: 14.
    assert planned("A2 c2 d2 | B2 d2 e2 |]", "3/4") == ("D U=U | D U=U", (0, 0, 26))


def test_three_equal_notes_are_not_slurred_where_a_stroke_may_last_one_beat_only() -> None:
    # Two quarters last longer than a third of the bar, so one of two bars begins up.
    text, score_of = planned("A2 c2 d2 | B2 d2 e2 |]", "3/4", settings=PlannerSettings(longest=Fraction(1, 3)))
    assert score_of == (1, 0, 0)
    assert "=" not in text


def test_smooth_bowing_takes_three_in_a_stroke_or_two_where_two_are_the_most() -> None:
    # Four joins at 1 each, the bar's first note accented. In twos: two joins and two single notes at 8 each, as three
    # strokes would not come round.
    first = AccentPlan(PlanKind.PLACES, (Fraction(0),))
    cheap = PlannerSettings(Flow.SMOOTH, most_notes=3, weights=Weights(join=1))
    assert planned("ABc dcB |]", "6/8", first, settings=cheap) == ("D=D=D U=U=U", (0, 0, 4))
    assert planned("ABc dcB |]", "6/8", first, settings=replace(cheap, most_notes=2))[1] == (0, 0, 18)


def test_a_kept_slur_is_answered_by_another() -> None:
    # The slur makes three strokes before beat 3: one more slur, behind beat 2 for 10.
    assert planned("(AB)cd cBAG |]") == ("D=D U=U D U D U", (0, 0, 20))


def test_a_slur_that_is_not_kept_goes() -> None:
    assert planned("(AB)cd cBAG |]", keep=False) == ("D U D U D U D U", (0, 0, 0))


def test_a_kept_mark_beside_an_accent_forces_a_retake() -> None:
    # Beat 3 is down and so is the mark behind it: 100. One slur then serves to come round: 10 behind beat 4.
    assert planned("ABcd cvBAG |]") == ("D U D U D D U=U", (0, 0, 110))


def test_a_mark_that_agrees_changes_nothing() -> None:
    assert planned("ABvcd cBAG |]") == ("D U D U D U D U", (0, 0, 0))


def test_notes_that_were_not_chosen_stay_as_they_are() -> None:
    # With three strokes before beat 3 one accent is missed whichever way the bar begins; one slur to come round.
    free = {f"b0n{number}" for number in (5, 6, 7, 8)}
    assert planned("(AB)cd cBAG |]", keep=False, free=free)[1] == (1, 0, 20)


@pytest.mark.parametrize(
    ("text", "bar"),
    [
        ("vA4- uA4 |]", 1),  # a held note marked the other way
        ("vB8 |:rA4 uc4 :|", 2),  # A is to go the way of B the first time and of c the second
    ],
)
def test_what_is_kept_and_contradicts_itself_is_refused_in_one_sentence(text: str, bar: int) -> None:
    with pytest.raises(RefusedPlanError) as refused:
        planned(text)
    said = str(refused.value)
    assert f"bar {bar}" in said
    assert said.endswith(".")
    assert ". " not in said


def test_a_kept_slur_through_a_whole_bar_is_refused_in_one_sentence() -> None:
    with pytest.raises(RefusedPlanError, match=r"^In bar 2 one stroke runs through the whole bar[^.]*\.$"):
        planned("A4 (B4 | c8 | d4) c4 |]")


def test_a_tune_of_rests_is_refused() -> None:
    with pytest.raises(RefusedPlanError, match="nothing to bow"):
        planned("z8 |]")
