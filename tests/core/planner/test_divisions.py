"""Bars divided into strokes, against trial of every way of their notes."""

from __future__ import annotations

from itertools import pairwise, product
from math import inf
from typing import NamedTuple

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from core.planner.divisions import Divisions, Way
from core.planner.listing import cheapest_ways, every_way
from core.planner.rows import PRICES, Rows


class Asked(NamedTuple):
    """What is asked of one bar, note by note; costs of a stroke that may not be are infinite."""

    struck: list[int]
    ticks: list[int]
    joined: list[bool | None]  # of the first False
    kept: list[bool]
    may_turn: list[bool]
    may_retake: list[bool]
    retake: list[int]
    head: list[tuple[float, float]]
    inner: list[tuple[float, float]]
    sizes: list[int]
    longest: int
    longest_before: int
    most_notes: int

    def ways(self) -> dict[Way, float]:
        """Every way with its cost, found by trial."""
        count = len(self.struck)
        options = [[(0, 0)]] + [
            ([(1, 0)] if self.joined[place] is not False else [])
            + ([(0, 0)] if self.joined[place] is not True and self.may_turn[place] else [])
            + ([(0, 1)] if self.joined[place] is not True and self.may_retake[place] else [])
            for place in range(1, count)
        ]
        found = {}
        for begins, row in product((0, 1), product(*options)):
            joins, retakes = tuple(join for join, _ in row), tuple(retake for _, retake in row)
            bows = [begins]
            for join, retake in row[1:]:
                bows.append(bows[-1] if join or retake else 1 - bows[-1])
            cost = self.cost(bows, joins, retakes)
            if cost < inf:
                found[Way(tuple(bows), joins, retakes)] = cost
        return found

    def cost(self, bows: list[int], joins: tuple[int, ...], retakes: tuple[int, ...]) -> float:
        starts = [place for place, join in enumerate(joins) if not join] + [len(joins)]
        total = 0.0
        for first, stop in pairwise(starts):
            struck, ticks = sum(self.struck[first:stop]), sum(self.ticks[first:stop])
            limit = self.longest if first else self.longest_before
            if not (struck < 2 or all(self.kept[first + 1 : stop]) or (struck <= self.most_notes and ticks <= limit)):
                return inf
            total += self.sizes[struck] + self.head[first][bows[first]] + self.retake[first] * retakes[first]
            total += sum(self.inner[place][bows[place]] for place in range(first + 1, stop))
        return total


@st.composite
def bars(draw, most_notes: int) -> Asked:
    count = draw(st.integers(1, 6))

    def each(choice) -> list:
        return draw(st.lists(choice, min_size=count, max_size=count))

    joined = [False, *each(st.sampled_from([None, None, None, True, False]))[1:]]
    held = [draw(st.booleans()), *(join is True and draw(st.booleans()) for join in joined[1:])]
    price = st.integers(0, 30)
    costs = st.tuples(*[st.sampled_from([0.0, 3.0, 20.0, 20.0, 500.0, inf])] * 2)
    return Asked(
        struck=[1 - own for own in held],
        ticks=each(st.integers(1, 4)),
        joined=joined,
        kept=[False, *(join is True and draw(st.booleans()) for join in joined[1:])],
        may_turn=each(st.sampled_from([True, True, True, False])),
        may_retake=each(st.sampled_from([True, False, False])),
        retake=each(price),
        head=each(costs),
        inner=each(costs),
        sizes=draw(st.lists(price, min_size=7, max_size=7)),
        longest=draw(st.integers(2, 8)),
        longest_before=draw(st.integers(4, 10)),
        most_notes=most_notes,
    )


def rows_of(asked: list[Asked]) -> Rows:
    """The bars as rows, notes to the right."""
    width = max(len(one.struck) for one in asked)
    counts = np.array([len(one.struck) for one in asked])

    def spread(values: list[list], nothing: object) -> np.ndarray:
        return np.array([[nothing] * (width - len(own)) + list(own) for own in values])

    def prices(one: Asked) -> list[list[float]]:
        return [
            [
                *([inf, inf] if one.joined[place] else one.head[place]),
                *([inf, inf] if one.joined[place] is False else one.inner[place]),
                0.0 if one.may_turn[place] else inf,
                one.retake[place] if one.may_retake[place] else inf,
            ]
            for place in range(len(one.struck))
        ]

    return Rows(
        counts=counts,
        struck=spread([one.struck for one in asked], 0),
        ticks=spread([one.ticks for one in asked], 0),
        fixed=spread([one.kept for one in asked], False),
        limits=spread([[one.longest_before] + [one.longest] * (len(one.struck) - 1) for one in asked], 0),
        most_notes=asked[0].most_notes,
        prices=spread([prices(one) for one in asked], [inf] * PRICES).astype(float),
        sizes=np.array([one.sizes for one in asked], float),
    )


several = st.integers(2, 4).flatmap(lambda most: st.lists(bars(most), min_size=1, max_size=4))


def ends(way: Way) -> tuple[int, int, int, int]:
    return way.bows[0], way.head, way.bows[-1], way.tail


@given(several)
@settings(max_examples=40)
def test_the_cheapest_way_with_each_two_ends_is_as_cheap_as_any(asked):
    divisions = Divisions(rows_of(asked))
    for row, one in enumerate(asked):
        expected: dict[tuple[int, ...], float] = {}
        for way, cost in one.ways().items():
            expected[ends(way)] = min(cost, expected.get(ends(way), inf))
        found = {}
        for first, last in np.argwhere(np.isfinite(divisions.costs[row])).tolist():
            begins = first % 2, divisions.firsts.sizes[first // 2]
            finishes = last % 2, divisions.lasts.sizes[last // 2]
            found[*begins, *finishes] = divisions.costs[row, first, last]
        assert found == expected


@given(several)
@settings(max_examples=40)
def test_the_way_with_two_ends_costs_what_is_said_and_has_early_slurs(asked):
    divisions = Divisions(rows_of(asked))
    for row, one in enumerate(asked):
        ways = one.ways()
        listing = cheapest_ways(divisions, row)
        for number, cost in enumerate(listing.costs.tolist()):
            way = listing.way(number)
            assert ways[way] == cost
            as_good = [other for other, its in ways.items() if ends(other) == ends(way) and its == cost]
            steps = {other: [(-j, r) for j, r in zip(other.joins, other.retakes, strict=True)] for other in as_good}
            assert way == min(as_good, key=steps.__getitem__)
            assert divisions.firsts.number(way.head, way.bows[0]) == listing.firsts[number]
            assert divisions.lasts.number(way.tail, way.bows[-1]) == listing.lasts[number]


@given(several)
@settings(max_examples=40)
def test_every_way_that_keeps_the_limits_is_listed_once_and_no_other(asked):
    divisions = Divisions(rows_of(asked))
    for row, one in enumerate(asked):
        listing = every_way(divisions, row)
        ways = [listing.way(number) for number in range(len(listing.costs))]
        assert dict(zip(ways, listing.costs.tolist(), strict=True)) == one.ways()
        assert len(ways) == len(set(ways))
        assert listing.names(np.arange(len(ways))) == [way.name for way in ways]
        for way, first, last in zip(ways, listing.firsts, listing.lasts, strict=True):
            assert divisions.firsts.number(way.head, way.bows[0]) == first
            assert divisions.lasts.number(way.tail, way.bows[-1]) == last


def test_a_bar_with_more_ways_than_can_be_listed_has_none_listed(monkeypatch):
    notes = 8
    free = Asked(
        [1] * notes, [1] * notes, [False] + [None] * (notes - 1), [False] * notes, [True] * notes, [False] * notes,
        [0] * notes, [(0.0, 0.0)] * notes, [(1.0, 1.0)] * notes, [0] * (notes + 1), 4, 4, 4,
    )  # fmt: skip
    divisions = Divisions(rows_of([free]))
    assert len(every_way(divisions, 0).costs) == len(free.ways()) > 100
    monkeypatch.setattr("core.planner.listing.MOST_WAYS", 100)
    assert every_way(divisions, 0) is None
