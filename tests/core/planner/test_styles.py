"""A style as the planner's cost: values worked out by hand, and the likeliest bowing."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import compress, product
from math import exp, log

import pytest

from core.accent_plan import AccentPlan, PlanKind
from core.planner import Flow, Plan, PlannerSettings, pose, score, work_out_plan
from core.planner.join_costs import JoinCosts, by_style
from tests.core.builders import bowed, bows

ON_BEAT, NO_PLAN, BY_PHRASE = (AccentPlan(kind) for kind in (PlanKind.ON_BEAT, PlanKind.NONE, PlanKind.BY_PHRASE))


@pytest.mark.parametrize(
    ("log_odds", "costs"),
    [  # -100 ln p of joined and of apart
        (0.0, JoinCosts(69, 69)),  # ln 2 = 0.693
        (log(3), JoinCosts(29, 139)),  # ln(4/3) = 0.288, ln 4 = 1.386
        (-log(3), JoinCosts(139, 29)),
        (log(99), JoinCosts(1, 461)),  # ln(100/99) = 0.010, ln 100 = 4.605
        (500.0, JoinCosts(0, 1000)),  # as sure as log-odds of 10
        (float("-inf"), JoinCosts(1000, 0)),
    ],
)
def test_a_choice_costs_as_it_is_likely(log_odds: float, costs: JoinCosts) -> None:
    assert by_style(log_odds) == costs


def test_log_odds_that_are_no_numbers_are_turned_down() -> None:
    tune, bowing = bowed("ABcd |]")
    with pytest.raises(ValueError, match="must be numbers"):
        pose(tune, bowing, style={"b0n2": float("nan")})


def planned(text: str, style: Mapping[str, float], plan: AccentPlan = NO_PLAN, **wishes: object) -> tuple[str, Plan]:
    tune, bowing = bowed(text, accents=plan)
    found = work_out_plan(tune, bowing, style=style, **wishes)
    assert found.proven
    assert found.score == score(found.problem, found.bowing)
    return bows(tune, found.bowing), found


def every_note(text: str, log_odds: float, **others: float) -> dict[str, float]:
    tune, _ = bowed(text)
    return {note.id: log_odds for note in tune.sequence} | others


def test_without_accents_the_style_alone_decides() -> None:
    # Notes 2 and 4 are slurred three times in four, all others one time in four: six strokes come round.
    # Seven notes follow another: 29 each.
    text = "ABcd ABcd |]"
    found, plan = planned(text, every_note(text, -log(3), b0n2=log(3), b0n4=log(3)))
    assert found == "D=D U=U D U D U"
    assert plan.score == (0, 0, 7 * 29)


def test_what_is_likely_gives_way_to_coming_round() -> None:
    # One slur would be likely, but seven strokes do not come round: dropping it costs 110 more, another slur where
    # log-odds are -1/2 costs 50 more.
    text = "ABcd ABcd |]"
    found, plan = planned(text, every_note(text, -3.0, b0n2=log(3), b0n6=-0.5))
    assert found == "D=D U D U=U D U"
    assert plan.score.broken == 0


def test_accents_come_before_a_style() -> None:
    text = "ABcd ABcd |]"
    sure = every_note(text, -5.0, b0n5=5.0)
    assert planned(text, sure)[1].bowing.joins.keys() >= {"b0n5"}
    found, plan = planned(text, sure, ON_BEAT)
    assert plan.score.missed == 0
    assert found == "D U D U D U D U"


def test_what_is_fixed_stays_whatever_the_style_says() -> None:
    # A kept slur that the style would never make, and a mark that takes one more slur, or a retake for 1000.
    text = "(vAB)cd vABcd |]"
    found, _ = planned(text, every_note(text, -9.0, b0n4=-1.0))
    assert found == "D=D U=U D U D U"


def test_notes_that_a_style_does_not_know_keep_the_plain_weights() -> None:
    # Nine notes take one slur. It goes to the one note that is not known to be apart, ten times the plain 10.
    text = "ABcd ABce | a8 |]"
    style = every_note(text, -10.0)
    del style["b0n4"]
    found, plan = planned(text, style)
    assert found == "D U D=D U D U D | U"
    assert plan.score.cost == 100


def test_strokes_are_not_dear_for_their_size_beside_a_style() -> None:
    text = "ABcd ABcd |]"
    style = every_note(text, -4.0)
    few, smooth = (planned(text, style, settings=PlannerSettings(flow))[1] for flow in (Flow.FEWEST_SLURS, Flow.SMOOTH))
    assert (few.bowing, few.score) == (smooth.bowing, smooth.score)


def test_the_plan_is_the_likeliest_of_all_bowings_that_come_round() -> None:
    # Two bars that are not alike, and hardly any slur over the line between; likelihoods counted in floats.
    text = "A2 B3 c d2 | e f g2 a4 |]"
    tune, bowing = bowed(text, accents=NO_PLAN)
    inner = [note.id for note in tune.sequence][1:]
    odds = dict(zip(inner, (0.3, -1.2, 2.5, -9.0, 1.3, -0.9, 0.2), strict=True))
    limits = PlannerSettings(most_notes=16, longest=1)
    plan = work_out_plan(tune, bowing, limits, style=odds)
    likeliest = max(_come_round(inner), key=lambda joined: _log_likelihood(odds, joined))
    assert set(plan.bowing.joins) == likeliest
    assert abs(plan.score.cost + 100 * _log_likelihood(odds, likeliest)) <= 0.5 * len(inner)


def _come_round(notes: list[str]) -> list[set[str]]:
    """Which notes are joined in each bowing with an even number of strokes, none of them over the bar line."""
    every = [set(compress(notes, joined)) for joined in product((True, False), repeat=len(notes))]
    return [joined for joined in every if "b1n1" not in joined and (len(notes) + 1 - len(joined)) % 2 == 0]


def _log_likelihood(odds: Mapping[str, float], joined: set[str]) -> float:
    return sum(-log(1 + exp(-value if note_id in joined else value)) for note_id, value in odds.items())


def test_by_phrase_takes_a_style_too() -> None:
    # The slur after the first note of bar 1 takes the accents of the backbeat, or of the beat, to its end; the style
    # says which: on-beat wants it, backbeat does not.
    text = "A2Bc dcBA | A2Bc dcBA |]"
    likely, plan = planned(text, every_note(text, -4.0, b0n2=4.0, b1n2=4.0), BY_PHRASE)
    assert plan.bowing.plans(2)[0].kind is PlanKind.ON_BEAT
    assert likely == "D=D U D U D U | D=D U D U D U"
    other, plan = planned(text, every_note(text, -4.0, b0n7=4.0, b1n7=4.0), BY_PHRASE)
    assert plan.bowing.plans(2)[0].kind is PlanKind.BACKBEAT
    assert other == "U D U D U D=D | U D U D U D=D"
