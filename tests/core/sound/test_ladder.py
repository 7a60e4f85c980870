from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.sound.ladder import Ladder, parse_ladder


@given(st.integers(10, 150), st.integers(10, 150), st.integers(4, 20), st.integers(1, 2))
def test_a_ladder_is_read_back_from_its_name_and_leads_to_its_last_rung(first, last, step, times):
    ladder = Ladder(min(first, last), max(first, last), step, times)
    assert parse_ladder(str(ladder)) == ladder
    assert (ladder.rungs[0], ladder.rungs[-1]) == (ladder.first, ladder.last)
    assert all(0 < after - before <= step for before, after in zip(ladder.rungs, ladder.rungs[1:], strict=False))
    assert len(ladder.speeds) == times * len(ladder.rungs)


def test_what_is_left_out_is_steps_of_five_once_each():
    assert parse_ladder("60-72").speeds == (Fraction(3, 5), Fraction(13, 20), Fraction(7, 10), Fraction(18, 25))


@pytest.mark.parametrize("text", ["", "60", "60-", "x-y", "60-100/", "60-100x", "60-100/5y2", "-5-10", "60–100"])
def test_what_is_no_ladder_is_refused_in_words(text):
    with pytest.raises(ValueError, match="is no ladder: expected percents such as 60-100"):
        parse_ladder(text)


@pytest.mark.parametrize("text", ["100-60", "5-100", "60-200", "60-100/0", "60-100/5x0", "10-150/1"])
def test_a_ladder_beyond_its_limits_is_refused_in_words(text):
    with pytest.raises(ValueError, match=r"^(A ladder leads up|The ladder .* has more than 100 playings\.)"):
        parse_ladder(text)
