"""The ways of bowing a bar, listed and found note by note."""

from itertools import pairwise, product

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from core.planner.long_bars import cheapest_ways
from core.planner.problem import Retake
from core.planner.tables import Prices, accent_costs_of, plain_costs_of
from core.planner.ways import Rhythm, arranged, most_ways, ways_of


@st.composite
def rhythms(draw) -> Rhythm:
    count = draw(st.integers(1, 6))
    fixed = st.sampled_from([None, None, True, False])
    joined = [False, *draw(st.lists(fixed, min_size=count - 1, max_size=count - 1))]
    held = [draw(st.booleans()), *(draw(st.booleans()) and join is True for join in joined[1:])]
    retakes = [
        Retake.NEVER if join else draw(st.sampled_from(list(Retake))) if join is False else Retake.NEVER
        for join in joined
    ]
    return Rhythm(
        lengths=tuple(draw(st.lists(st.integers(1, 4), min_size=count, max_size=count))),
        held=tuple(held),
        joined=tuple(joined),
        kept=(False, *(join is True and draw(st.booleans()) for join in joined[1:])),
        retakes=tuple(retakes),
        most_notes=draw(st.integers(2, 4)),
        longest=draw(st.integers(2, 8)),
        longest_before=draw(st.integers(8, 10)),
    )


def prices(draw, count: int) -> Prices:
    numbers = st.lists(st.integers(0, 50), min_size=count, max_size=count)
    return Prices(
        join=tuple(draw(numbers)),
        apart=(0, *draw(numbers)[1:]),
        retake=tuple(draw(numbers)),
        unless_down=tuple(draw(numbers)),
        unless_driven=(0, *draw(numbers)[1:]),
        strokes=tuple(draw(st.lists(st.integers(0, 9), min_size=count + 1, max_size=count + 1))),
        bows=tuple(draw(st.lists(st.sampled_from([-1, -1, -1, 0, 1]), min_size=count, max_size=count))),
    )


def allowed(rhythm: Rhythm, joins: tuple[int, ...]) -> bool:
    starts = [place for place, join in enumerate(joins) if not join] + [len(joins)]
    return all(rhythm.fits(first, stop) for first, stop in pairwise(starts))


@given(rhythms())
def test_every_way_that_keeps_the_limits_is_listed_once_and_no_other(rhythm):
    options = [[(0, 0)], *(rhythm.options(place) for place in range(1, len(rhythm.lengths)))]
    expected = {
        (begins, *row)
        for row in product(*options)
        if allowed(rhythm, tuple(join for join, _ in row))
        for begins in (0, 1)
    }
    ways = ways_of(rhythm)
    found = [
        (int(ways.bows[way, 0]), *zip(ways.joins[way].tolist(), ways.retakes[way].tolist(), strict=True))
        for way in range(len(ways))
    ]
    assert len(found) == len(set(found)) <= most_ways(rhythm)
    assert set(found) == expected


@given(rhythms())
def test_directions_turn_with_each_stroke_that_is_not_retaken(rhythm):
    ways = ways_of(rhythm)
    turns = 1 - ways.joins[:, 1:] - ways.retakes[:, 1:]
    assert (ways.bows[:, 1:] == (ways.bows[:, :-1] + turns) % 2).all()
    assert (ways.first.bows[ways.begins] == ways.bows[:, 0]).all()
    assert (ways.last.bows[ways.finishes] == ways.bows[:, -1]).all()


@given(st.data())
def test_note_by_note_the_cheapest_way_for_each_two_ends_is_the_cheapest_of_those_listed(data):
    rhythm = data.draw(rhythms())
    asked = prices(data.draw, len(rhythm.lengths))
    listed = ways_of(rhythm)

    def cheapest_by_ends(ways):
        found: dict[tuple[int, ...], float] = {}
        for way, cost in enumerate(plain_costs_of(ways, asked) + accent_costs_of(ways, asked)):
            if np.isfinite(cost):
                head = int(np.argmin(np.append(ways.joins[way, 1:], 0))) + 1
                tail = int(np.argmin(np.append(ways.joins[way, :0:-1], 0))) + 1
                ends = (int(ways.bows[way, 0]), head, int(ways.bows[way, -1]), tail)
                found[ends] = min(cost, found.get(ends, np.inf))
        return found

    assert cheapest_by_ends(arranged(rhythm, *cheapest_ways(rhythm, asked))) == cheapest_by_ends(listed)
