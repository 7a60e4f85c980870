from dataclasses import replace
from fractions import Fraction

from hypothesis import given, settings

from core.ticks import ticks
from core.tune import Meter, Tune
from tests.core.builders import tune_of
from tests.property.strategies import tunes


def test_eighths_are_counted_in_eighths() -> None:
    found = ticks(tune_of("A|B2c2d2e2|"))
    assert found.per_quarter == 2
    pickup, full = found.bars
    assert (pickup.start, pickup.lengths, pickup.ends, pickup.full) == (7, (1,), (1,), 8)
    assert (full.start, full.lengths, full.ends) == (0, (2, 2, 2, 2), (2, 4, 6, 8))


def test_a_single_shorter_note_makes_all_ticks_shorter() -> None:
    assert ticks(tune_of("A8|B/3c7|")).per_quarter == 6


def test_free_metre_has_no_full_bar() -> None:
    tune = tune_of("A8|")
    free = Tune("", tuple(replace(bar, meter=Meter(())) for bar in tune.bars))
    assert ticks(free).bars[0].full is None


@given(tunes())
@settings(max_examples=40, deadline=None)
def test_ticks_are_exact(tune: Tune) -> None:
    found = ticks(tune)
    for bar, times in zip(tune.bars, found.bars, strict=True):
        assert Fraction(times.start, found.per_quarter) == bar.start
        for note, length, end in zip(bar.notes, times.lengths, times.ends, strict=True):
            assert Fraction(length, found.per_quarter) == note.length
            assert Fraction(end, found.per_quarter) == note.at + note.length
