"""Networks against trial of every choice."""

from itertools import product
from math import inf

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.planner.network import (
    Network,
    TooManyCombinationsError,
    cheapest,
    eliminated,
)  # fmt: skip

COSTS = st.sampled_from([0, 0, 1, 2, 3, 7, inf])


def go_on() -> None:
    """Never stops."""


@st.composite
def networks(draw) -> Network:
    sizes = draw(st.lists(st.integers(1, 3), min_size=1, max_size=5))
    network = Network()
    for size in sizes:
        network.add(np.array(draw(st.lists(COSTS, min_size=size, max_size=size)), float))
    for _ in range(draw(st.integers(0, 6))):
        first, second = (draw(st.integers(0, len(sizes) - 1)) for _ in range(2))
        count = sizes[first] * sizes[second]
        table = np.array(draw(st.lists(COSTS, min_size=count, max_size=count)), float)
        network.connect(first, second, table.reshape(sizes[first], sizes[second]))
    return network


def cost_of(network: Network, values: tuple[int, ...]) -> float:
    alone = sum(costs[value] for costs, value in zip(network.alone, values, strict=True))
    return alone + sum(costs[values[first], values[second]] for (first, second), costs in network.pairs.items())


def all_choices(network: Network) -> dict[tuple[int, ...], float]:
    ranges = [range(len(costs)) for costs in network.alone]
    return {values: cost_of(network, values) for values in product(*ranges)}


@given(networks(), st.booleans())
def test_the_cheapest_choice_is_as_cheap_as_any(network, strike_out):
    choice = cheapest(network, go_on, strike_out=strike_out)
    lowest = min(all_choices(network).values())
    assert choice.cost == lowest
    assert (cost_of(network, choice.values) if choice.values else inf) == lowest


@given(networks())
def test_least_tells_what_each_two_values_cost_at_best(network):
    pairs = list(network.pairs)
    choices = all_choices(network)
    for (first, second), table in zip(pairs, eliminated(network, go_on).least(pairs, go_on), strict=True):
        for one, other in np.ndindex(table.shape):
            expected = min(cost for values, cost in choices.items() if (values[first], values[second]) == (one, other))
            assert table[one, other] == expected


def test_what_hangs_together_too_closely_is_refused_and_does_not_fill_the_memory():
    network = Network()
    for _ in range(9):
        network.add(np.zeros(8))
    for first in range(9):
        for second in range(first):
            network.connect(second, first, np.ones((8, 8)))
    with pytest.raises(TooManyCombinationsError):
        cheapest(network, go_on)


def test_an_error_of_the_caller_stops_the_search():
    network = Network()
    network.add(np.zeros(2))

    def stop() -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        cheapest(network, stop)
