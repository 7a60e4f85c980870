"""Units of bars that are bowed alike, and all that they and the crossings between them cost, worked out at once."""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from functools import cached_property
from itertools import pairwise
from math import inf
from typing import NamedTuple

import numpy as np

from core.planner.crossings import fits_here, meetings
from core.planner.divisions import Divisions
from core.planner.dominance import worth_keeping
from core.planner.open_problem import OpenProblem
from core.planner.problem import Problem
from core.planner.rows import Flags, rows_of


class Unit(NamedTuple):
    """Bars that are bowed alike.

    Attributes:
        bars: Indexes in ``Problem.bars``.
        group: The group of phrases that they take their plan from; -1 where it is settled.
        kinds: Their kind under each plan.
        rows: Their row under each plan.
    """

    bars: tuple[int, ...]
    group: int
    kinds: tuple[Hashable, ...]
    rows: tuple[int, ...]


class Layout:
    """Units, divided into strokes, and crossings.

    Attributes:
        problem: Of what.
        units: The units.
        plan_of_row: The plan of each row; those of a unit stand together.
        divisions: Of the rows.
        before, after: For each crossing the unit of the one bar and that of the next.
        crossings: plans x crossings x last ends of the one bar x first ends of the next: what they cost under the plan
            of the next.
        run_on: The same: where both strokes go one way, they are one.
        possible: rows x first ends, and rows x last ends: what there can be.
    """

    def __init__(self, problem: OpenProblem, groups: Sequence[Sequence[int]]) -> None:
        """Work it out.

        Args:
            problem: Of what.
            groups: The bars of each unit, of one kind under each plan and of one group of phrases.
        """
        self.problem = problem
        self.units = tuple(_units(problem, groups))
        of_rows = [(number, plan) for number, unit in enumerate(self.units) for plan in range(len(unit.rows))]
        self.plan_of_row = np.array([plan for _, plan in of_rows])
        spread = rows_of(problem.problems, problem.scale.missed, [unit.bars for unit in self.units], of_rows)
        self.divisions = Divisions(spread)
        unit_of = {bar: number for number, unit in enumerate(self.units) for bar in unit.bars}
        self._fit_to_surroundings(unit_of)
        self.possible = at_either_end(np.isfinite(self.divisions.costs))
        self.before = [unit_of[crossing.before] for crossing in problem.first.crossings]
        self.after = [unit_of[crossing.after] for crossing in problem.first.crossings]
        row_of = np.array([unit.rows[0] for unit in self.units])  # sizes of strokes are the same under each plan
        lasts, firsts = self.divisions.lasts.of(row_of[self.before]), self.divisions.firsts.of(row_of[self.after])
        self.crossings, self.run_on = meetings(problem.problems, problem.scale, lasts, firsts)

    @property
    def impossible(self) -> list[int]:
        """The units that what is fixed leaves no way."""
        possible = [bool(firsts.any()) for firsts in self.possible[0]]
        return [number for number, unit in enumerate(self.units) if not all(possible[row] for row in unit.rows)]

    @cached_property
    def worth_keeping(self) -> tuple[Flags, Flags]:
        """The same as ``possible`` without what is never needed for the cheapest bowing."""
        plans = range(len(self.problem.problems))
        rows = np.array([[*unit.rows, *(-1 for _ in plans[len(unit.rows) :])] for unit in self.units]).T
        firsts, lasts = worth_keeping(self.divisions.costs, self.crossings, rows[:, self.before], rows[:, self.after])
        return self.possible[0] & firsts, self.possible[1] & lasts

    def _fit_to_surroundings(self, unit_of: Mapping[int, int]) -> None:
        """Leave out ends that do not suit what stands around the bars, however that is bowed."""
        problem, divisions, costs = self.problem.first, self.divisions, self.divisions.costs
        rows_of_bar = [self.units[unit_of[bar]].rows for bar in range(len(problem.bars))]
        entered = [_is_entered_by_a_join(problem, number) for number in range(len(problem.bars) + 1)]
        begins = [bar.seam and not joined for bar, joined in zip(problem.bars, entered, strict=False)]
        firsts = divisions.firsts.of([rows[0] for rows in rows_of_bar])
        fits = fits_here(problem, [bar.longest for bar in problem.bars], firsts)
        for bar, begun in enumerate(begins):
            if begun and not fits[bar].all():
                for row in rows_of_bar[bar]:
                    costs[row, np.repeat(~fits[bar], 2)] = inf
        for bar, after in pairwise(range(len(entered))):
            if entered[bar] and entered[after] and not _is_held_through(problem, bar):
                for row in rows_of_bar[bar]:
                    costs[row, np.repeat(divisions.firsts.whole[row], 2)] = inf
                    costs[row, :, np.repeat(divisions.lasts.whole[row], 2)] = inf


def at_either_end(flags: Flags) -> tuple[Flags, Flags]:
    """Of rows x first ends x last ends: for which first ends, and for which last ends, any is set."""
    return np.logical_or.reduce(flags, axis=2), np.logical_or.reduce(flags, axis=1)


def _units(problem: OpenProblem, groups: Sequence[Sequence[int]]) -> list[Unit]:
    units, rows = [], 0
    for bars in groups:
        kinds = tuple([problem.problems[plan].bars[bars[0]].kind for plan in problem.plans_of(bars[0])])
        units.append(Unit(tuple(bars), problem.group_of[bars[0]], kinds, tuple(range(rows, rows + len(kinds)))))
        rows += len(kinds)
    return units


def _is_held_through(problem: Problem, number: int) -> bool:
    """Whether a bar is one note that is tied on."""
    bar = problem.bars[number]
    return bar.stop - bar.first == 1 and problem.notes[bar.first].held


def _is_entered_by_a_join(problem: Problem, number: int) -> bool:
    """Whether a fixed join or a tie leads into a bar."""
    return number in problem.run_into and bool(problem.notes[problem.bars[number].first].joined)
