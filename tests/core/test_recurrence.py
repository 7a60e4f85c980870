import random
from dataclasses import replace
from time import perf_counter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.recurrence import Return, _Heard, bar_classes, recurring_bars, returns
from core.tune import ChordSymbol, Tune
from tests.core.builders import tune_of

FOUR = "A2B2c2d2|e2f2g2a2|g2f2e2d2|c8|"
OTHER = "b2g2b2g2|d2e2f2g2|b8|a4g4|"


def found(text: str) -> list[tuple[int, int, int]]:
    return [(run.first, run.again, run.length) for run in returns(tune_of(text))]


def test_a_phrase_that_comes_again_is_one_run() -> None:
    assert found(FOUR + FOUR) == [(0, 4, 4)]
    assert found(FOUR + OTHER + FOUR) == [(0, 8, 4)]
    assert found(FOUR + OTHER) == []


def test_a_run_that_comes_three_times_is_told_twice() -> None:
    assert found(FOUR + "b8|" + FOUR + "a8|" + FOUR) == [(0, 5, 4), (0, 10, 4)]


def test_a_part_written_out_again_is_not_cut_into_phrases() -> None:
    assert found(FOUR + OTHER + "||" + FOUR + OTHER) == [(0, 8, 8)]


def test_the_longest_run_is_taken() -> None:
    # the first two bars stand alone first, then with the third bar, then all three come again
    assert found("A8|B8|z8|A8|B8|c8|d8|A8|B8|c8|") == [(0, 3, 2), (3, 7, 3)]


def test_one_bar_over_and_over() -> None:
    assert found("A2B2c2d2|" * 5) == [(0, 1, 1), (0, 2, 2), (0, 4, 1)]


@pytest.mark.parametrize("other", ["A2B2c2e2|", "A2B2c4|", "A2B2c2z2|", "a2B2c2d2|", "A2B2c2-c2|"])
def test_other_notes_are_no_return(other: str) -> None:
    assert found("A2B2c2d2|g8|" + other) == []


def test_a_held_first_note_makes_another_bar() -> None:
    assert found("d2B2c2d2|e4d4-|d2B2c2d2|") == []


def test_what_belongs_to_no_note_does_not_count() -> None:
    tune = tune_of("A2B2c2d2|A2B2c2d2|")
    second = replace(tune.bars[1], chords=(ChordSymbol(tune.bars[0].notes[0].at, "Am"),), part="B")
    assert returns(Tune("", (tune.bars[0], second))) == (Return(0, 1, 1),)


def test_a_single_pickup_note_is_no_material_and_a_full_bar_is() -> None:
    assert found("A|B2c2d2e2|f4g2a:|A|g2f2e2d2|") == []
    assert found("AB|c2d2e2f2|g4a2:|AB|g2f2e2d2|") == [(0, 3, 1)]
    assert found("A8|B2c2d2e2|A8|") == [(0, 2, 1)]
    assert found("z8|B8|z8|") == []


def test_classes_and_groups() -> None:
    tune = tune_of("A8|B8|A8|c8|B8|A8|")
    assert bar_classes(tune) == (0, 1, 0, 3, 1, 0)
    assert recurring_bars(tune) == ((0, 2, 5), (1, 4))


@given(st.lists(st.integers(0, 3), max_size=30))
def test_the_automaton_agrees_with_looking_everywhere(symbols: list[int]) -> None:
    heard = _Heard(symbols)
    for start in range(len(symbols)):
        best = (start, 0)
        for first in range(start):
            length = 0
            while first + length < start and start + length < len(symbols) and (
                symbols[first + length] == symbols[start + length]
            ):  # fmt: skip
                length += 1
            if length > best[1]:
                best = (first, length)
        place, length = heard.longest_before(start)
        assert length == best[1]
        assert length == 0 or place == best[0]


def test_two_thousand_bars_take_a_moment() -> None:
    choice = random.Random(1)
    bars = "".join(choice.choice(["A8|", "B8|", "c4d4|"]) for _ in range(2000))
    tune = tune_of(bars)
    began = perf_counter()
    assert returns(tune)
    assert perf_counter() - began < 2
