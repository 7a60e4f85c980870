from fractions import Fraction

import pytest

from core.reading.bar_starts import bar_starts
from tests.core.builders import tune_of


@pytest.mark.parametrize(
    ("text", "starts"),
    [
        ("A8|B8|]", "0 0"),
        ("A2|B8|]", "3 0"),  # a pick-up
        ("A2|]", "0"),  # all there is
        ("A2|B6:|c2|d8|]", "3 0 3 0"),  # the repeat cuts a bar in two
        ("A8|B6||c2|d8|]", "0 0 3 0"),
        ("A2|B8:|c2|d8|]", "3 0 3 0"),  # a full bar before it: a pick-up of its own
        ("A8|B6|c2|d8|]", "0 0 0 0"),  # no seam: a bar too short
        ("A8|B8|c6|]", "0 0 0"),  # a short last bar starts where bars start
        ("|:A8|B6[1c2:|[2d2|]", "0 0 3 3"),  # endings that begin inside a bar
    ],
)
def test_where_short_bars_begin(text: str, starts: str) -> None:
    assert bar_starts(tune_of(text.replace("[", "|[") if "6[" in text else text).bars) == [
        Fraction(word) for word in starts.split()
    ]
