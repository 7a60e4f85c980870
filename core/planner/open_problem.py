"""A problem with plans to choose, and what a model answers to it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Mapping, Sequence
from dataclasses import field
from math import inf

import numpy as np

from core.planner.divisions import Way
from core.planner.network import Network
from core.planner.problem import Problem
from core.planner.scale import Scale
from core.values import dataclass


@dataclass(frozen=True)
class OpenProblem:
    """A problem with plans to choose.

    Attributes:
        problems: The problem under each plan throughout.
        scale: Their weights.
        group_of: For each bar the group of phrases that it takes its plan from; -1 where its plan is settled.
        borders: By two groups, the smaller first: how often a phrase of one stands beside a phrase of the other.
        groups: How many there are.
    """

    problems: tuple[Problem, ...]
    scale: Scale
    group_of: tuple[int, ...]
    borders: Mapping[tuple[int, int], int] = field(default_factory=dict)
    groups: int = 0

    @property
    def first(self) -> Problem:
        """The problem under the first plan; under another only accents differ."""
        return self.problems[0]

    def plans_of(self, bar: int) -> range:
        """The plans that a bar can have, as indexes in ``problems``."""
        return range(len(self.problems) if self.group_of[bar] >= 0 else 1)

    def kinds(self, choice: Sequence[int]) -> dict[Hashable, list[int]]:
        """The bars of each kind under a choice of plans."""
        found: dict[Hashable, list[int]] = {}
        for bar, group in enumerate(self.group_of):
            found.setdefault(self.problems[choice[group] if group >= 0 else 0].bars[bar].kind, []).append(bar)
        return found

    def add_choices(self, network: Network) -> tuple[int, ...]:
        """Add a variable for the plan of each group, each change of plan at its price."""
        plans = len(self.problems)
        chosen = tuple(network.add(np.zeros(plans)) for _ in range(self.groups))
        change = self.first.settings.weights.plan_change
        for (one, other), times in self.borders.items():
            network.connect(chosen[one], chosen[other], times * change * (1 - np.eye(plans)))
        return chosen


def settled(problem: Problem, scale: Scale) -> OpenProblem:
    """A problem whose accents are settled."""
    return OpenProblem((problem,), scale, (-1,) * len(problem.bars))


@dataclass(frozen=True)
class Answer:
    """The cheapest bowing of a model.

    Attributes:
        total: Its cost, changes of plan included; infinite where there is none.
        ways: For each bar how it is bowed.
        run_on: For each crossing whether one stroke goes over it.
        choice: For each group of phrases its plan.
    """

    total: float
    ways: tuple[Way, ...] = ()
    run_on: tuple[bool, ...] = ()
    choice: tuple[int, ...] = ()

    def differing(self, problem: OpenProblem) -> dict[Hashable, int]:
        """By kind, how many bars are bowed otherwise than most of their like; kinds without any are left out."""
        found = {}
        for kind, bars in problem.kinds(self.choice).items() if self.ways else ():
            times = Counter([self.ways[bar].name for bar in bars])
            if len(times) > 1:
                found[kind] = len(bars) - max(times.values())
        return found


NO_ANSWER = Answer(inf)
