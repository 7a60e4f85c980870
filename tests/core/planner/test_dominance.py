"""Ends that are left out, against trial of every bowing of small cycles of bars."""

from __future__ import annotations

from itertools import product
from math import inf

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from core.planner.dominance import worth_keeping

COSTS = st.sampled_from([0.0, 0.0, 1.0, 2.0, 5.0, inf])
FIRSTS, LASTS = 3, 2


@st.composite
def cycles(draw):
    """Bars, and crossings between any of them."""
    bars, crossings = draw(st.integers(1, 3)), draw(st.integers(1, 4))

    def table(*shape: int) -> np.ndarray:
        size = int(np.prod(shape))
        return np.array(draw(st.lists(COSTS, min_size=size, max_size=size))).reshape(shape)

    pairs = draw(st.lists(st.tuples(*[st.integers(0, bars - 1)] * 2), min_size=crossings, max_size=crossings))
    return table(bars, FIRSTS, LASTS), table(1, crossings, LASTS, FIRSTS), np.array(pairs)


def cheapest(costs, crossings, pairs, firsts, lasts) -> float:
    found = inf
    bars = range(len(costs))
    for first in product(*(np.flatnonzero(firsts[bar]) for bar in bars)):
        for last in product(*(np.flatnonzero(lasts[bar]) for bar in bars)):
            total = sum(costs[bar, first[bar], last[bar]] for bar in bars)
            total += sum(crossings[0, at, last[one], first[other]] for at, (one, other) in enumerate(pairs))
            found = min(found, total)
    return found


@given(cycles())
def test_without_what_is_beaten_the_cheapest_costs_as_little(cycle):
    costs, crossings, pairs = cycle
    firsts, lasts = worth_keeping(costs, crossings, pairs[None, :, 0], pairs[None, :, 1])
    everything = np.ones_like(firsts), np.ones_like(lasts)
    assert cheapest(costs, crossings, pairs, firsts, lasts) == cheapest(costs, crossings, pairs, *everything)
    assert firsts.any(axis=1).all()
    assert lasts.any(axis=1).all()


def test_of_two_ends_that_are_as_good_the_first_stays():
    costs, crossings = np.zeros((1, 2, 2)), np.zeros((1, 1, 2, 2))
    firsts, lasts = worth_keeping(costs, crossings, np.zeros((1, 1), int), np.zeros((1, 1), int))
    assert firsts.tolist() == lasts.tolist() == [[True, False]]


def test_an_end_that_suits_one_neighbour_best_stays():
    costs = np.zeros((1, 2, 1))
    costs[0, 1] = 3
    crossings = np.array([[[[5.0, 0.0]]]])
    firsts, _ = worth_keeping(costs, crossings, np.zeros((1, 1), int), np.zeros((1, 1), int))
    assert firsts.tolist() == [[False, True]]
    crossings = np.array([[[[1.0, 0.0]]]])
    firsts, _ = worth_keeping(costs, crossings, np.zeros((1, 1), int), np.zeros((1, 1), int))
    assert firsts.tolist() == [[True, False]]
