"""Whether marked bars drive their accents."""

import pytest

from core.accent_plan import AccentPlan, PlanKind
from core.style.driving import drives_accents, with_plan_of, without_plan
from tests.core.builders import bowed


@pytest.mark.parametrize(
    ("text", "marked", "drives"),
    [
        ("GABG dBdB | GABG dBdB", {0, 1}, True),  # every beat on a down-bow
        ("(GAB)G dBdB | (GAB)G dBdB", {0, 1}, True),
        ("(GA)BG dBdB | GABG dBdB", {0}, False),  # the second beat on an up-bow
        ("(GA)BG dBdB | GABG dBdB", {1}, True),  # the other way round, which the bar before decides
        ("GAB(G d)BdB | GABG dBdB", {0}, False),  # buried
        ("(GA)BG dBdB | GABG dBdB", set(), True),
    ],
)
def test_accents_in_marked_bars_are_driven_or_not(text, marked, drives):
    tune, bowing = bowed(text)
    assert drives_accents(tune, bowing, marked) is drives


def test_a_plan_is_taken_off_and_put_back():
    _, bowing = bowed("GABG dBdB", accents=AccentPlan(PlanKind.BACKBEAT))
    assert without_plan(bowing).accents.kind is PlanKind.NONE
    assert with_plan_of(without_plan(bowing), bowing) == bowing
