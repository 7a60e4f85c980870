from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.checks.reach import drift
from core.checks.reach_bounds import may_drift, may_run_out
from core.checks.view import View
from core.reach import ReachSettings, runs_out
from core.tune import Tempo
from tests.core.builders import bowed
from tests.property.strategies import bowings, tunes


def view(text: str, per_minute: int) -> View:
    return View(*bowed(text), ReachSettings(tempo=Tempo(Fraction(1), Fraction(per_minute))))


@pytest.mark.parametrize(("text", "per_minute", "expected"), [("A2B2c2d2|", 100, False), ("(A8|B8|c8)|", 50, True)])
def test_a_stroke_longer_than_the_hair_may_run_out(text: str, per_minute: int, expected: bool) -> None:
    assert may_run_out(view(text, per_minute)) is expected


def test_seven_slurred_and_one_drift_and_single_strokes_cannot() -> None:
    assert list(drift(view("(ABcdefg)a|" * 8, 100)))
    assert not may_drift(view("ABcd efga|" * 8, 100), 17.0, 52.0)


@given(st.data())
@settings(max_examples=150, deadline=None)
def test_where_the_bounds_hold_no_stroke_runs_out(data: st.DataObject) -> None:
    tune = data.draw(tunes())
    tempo = Tempo(Fraction(1), Fraction(data.draw(st.sampled_from((10, 30, 60, 120)))))
    seen = View(tune, data.draw(bowings(tune)), ReachSettings(tempo=tempo))
    moves, hair_cm = seen.reach.moves, seen.reach_settings.hair_cm
    if not may_run_out(seen):
        assert not seen.reach.runs_out
        assert seen.reach.longest_s * seen.reach_settings.slowest_cm_s <= hair_cm
    for slowest, fastest in ((17.0, 52.0), (25.0, 35.0)):
        if not may_drift(seen, slowest, fastest):
            assert not runs_out(moves, hair_cm, slowest, fastest)
