from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.reading.note_lengths import LONGEST, is_exact, split_length
from core.tune import Tuplet, note_value


@pytest.mark.parametrize(
    ("length", "tuplet", "expected"),
    [
        ("1", None, "1"),
        ("3/2", None, "3/2"),
        ("5/2", None, "2 1/2"),
        ("9/2", None, "4 1/2"),
        ("9/4", None, "2 1/4"),
        ("1/3", Tuplet(3, 2), "1/3"),
        ("5/3", Tuplet(3, 2), "4/3 1/3"),
        ("1/3", None, "1/3"),  # nobody says that it is a triplet
        ("2/5", None, "2/5"),
        ("100", None, "12 12 12 12 12 4"),  # cut off at the longest
    ],
)
def test_lengths_are_cut_into_the_largest_values(length: str, tuplet: Tuplet | None, expected: str) -> None:
    assert " ".join(str(piece) for piece, _ in split_length(Fraction(length), tuplet)) == expected


@given(
    st.fractions(min_value=Fraction(1, 5000), max_value=200, max_denominator=5000), st.none() | st.just(Tuplet(3, 2))
)
def test_every_piece_can_be_shown_and_little_is_lost(length: Fraction, tuplet: Tuplet | None) -> None:
    pieces = split_length(length, tuplet)
    assert pieces
    assert all(note_value(piece, of_piece) for piece, of_piece in pieces)
    total = sum(piece for piece, _ in pieces)
    assert abs(total - min(length, LONGEST)) <= Fraction(1, 128)
    assert is_exact(length, pieces) is (total == length)
