from fractions import Fraction

import pytest

from core.checks import words
from core.translation import ordinal
from core.tune import Meter
from tests.core.builders import tune_of

TUNE = tune_of("A|" + "A8|" * 3 + "A7||A|" + "A8|" * 4)  # indexes: 0 pick-up, 1-4, 5 pick-up, 6-9 (bars 5-8)


@pytest.mark.parametrize(
    ("indexes", "expected"),
    [
        ([1], "bar 1"),
        ([2, 1], "bars 1–2"),
        ([1, 3, 6, 7, 8], "bars 1, 3 and 5–7"),
        ([0], "the pick-up"),
        ([0, 1, 2], "the pick-up and bars 1–2"),
        ([5], "the pick-up to bar 5"),
        ([5, 6, 7], "the pick-up and bars 5–6"),
        ([4, 5, 6], "bars 4–5"),
        ([1, 5], "the pick-up to bar 5 and bar 1"),
    ],
)
def test_bars(indexes: list[int], expected: str) -> None:
    assert words.bars(TUNE, indexes) == expected


def test_notes_are_counted_without_rests() -> None:
    assert words.note_of_bar(tune_of("z2A2z2B2|"), "b0n4") == "the second note of bar 1"


@pytest.mark.parametrize(
    ("number", "expected"), [(1, "first"), (12, "twelfth"), (13, "13th"), (21, "21st"), (22, "22nd"), (111, "111th")]
)
def test_ordinals(number: int, expected: str) -> None:
    assert ordinal(number) == expected


def test_times() -> None:
    assert words.times([2]) == "the second time"
    assert words.times([2, 3, 4]) == "the second, third and fourth time"


@pytest.mark.parametrize(
    ("place", "meter", "expected"),
    [
        (Fraction(3, 2), Meter((9,), 8), "beat 2"),
        (Fraction(2), Meter((2,), 2), "beat 2"),
        (Fraction(5, 2), Meter((4,), 4), "the second half of beat 3"),
        (Fraction(1, 2), Meter((6,), 8), "the place after beat 1"),
    ],
)
def test_beats(place: Fraction, meter: Meter, expected: str) -> None:
    assert words.beat(place, meter) == expected
