"""What is asked of bars, as arrays: a row for each bar, or for some bars that are bowed alike, under one plan.

A row has a place for each note of the longest bar; shorter bars stand to the right, so that the last note of each is in
the last place. The arrays of all bars of a model are made, and worked on, at once: a bar alone is too small for arrays
to pay.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import inf
from typing import NamedTuple, TypeAlias, TypeVar

import numpy as np
from numpy.typing import NDArray

from core.bowing import Bow
from core.planner.network import Costs
from core.planner.problem import Problem, Retake

A = TypeVar("A", bound=np.generic)
Ints: TypeAlias = NDArray[np.int64]
Flags: TypeAlias = NDArray[np.bool_]

BOWS = (Bow.DOWN, Bow.UP)  # directions are 0 and 1 in arrays
PRICES = 6  # of a note: it begins a stroke down, up; it is joined down, up; it turns the bow; it is retaken
HEAD, INNER, TURN, RETAKE = slice(0, 2), slice(2, 4), 4, 5
HEAD_UP, INNER_DOWN, INNER_UP = 1, 2, 3
FORBIDDEN = {None: (0.0, 0.0), Bow.DOWN: (0.0, inf), Bow.UP: (inf, 0.0)}


class Sheet(NamedTuple):
    """All bars of a problem, whatever their accents are; bars x places, if nothing else is said.

    Attributes:
        notes: Index in ``Problem.notes``; any where no note stands.
        opens: The first note of its bar.
        counts, visits: By bar: its notes; how often it is played.
        struck, ticks: Size of each note: 1 if it is struck, and its length.
        fixed: Joined to the note before it in the bar, and that is fixed.
        prices: bars x places x prices, all playings; infinite for what may not be.
        by_down: A down-bow alone meets an accent there, else a new down-bow alone.
        longest, longest_before: By bar: ticks of a planned stroke that begins in it; in it or in the bar before.
    """

    notes: Ints
    opens: Flags
    counts: Ints
    visits: Ints
    struck: Ints
    ticks: Ints
    fixed: Flags
    prices: Costs
    by_down: Flags
    longest: Ints
    longest_before: Ints


class Rows(NamedTuple):
    """What is asked of each row; rows x places, if nothing else is said.

    Attributes:
        counts: By row: its notes.
        struck, ticks: Size of each note.
        fixed: Joined to the note before by what is fixed in all bars of the row.
        limits: Ticks that a stroke of two or more notes may last that begins there.
        most_notes: That it may hold.
        prices: rows x places x prices, all playings of all bars, accents missed among them; infinite for what may not
            be.
        sizes: rows x notes: what a stroke costs for its number of notes.
    """

    counts: Ints
    struck: Ints
    ticks: Ints
    fixed: Flags
    limits: Ints
    most_notes: int
    prices: Costs
    sizes: Costs

    @property
    def width(self) -> int:
        """How many places there are."""
        return int(self.struck.shape[1])


def sheet_of(problem: Problem) -> Sheet:
    """The sheet of a problem, made once for it and for the same problem under other accents."""
    if "sheet" not in problem.found:
        problem.found["sheet"] = _sheet(problem)
    sheet = problem.found["sheet"]
    assert isinstance(sheet, Sheet)
    return sheet


class _Asked(NamedTuple):
    """The attributes of ``PlanNote``, each for all notes."""

    note_id: tuple[str, ...]
    length: tuple[int, ...]
    joined: tuple[bool | None, ...]
    hooked: tuple[bool, ...]
    held: tuple[bool, ...]
    bow: tuple[Bow | None, ...]
    retake: tuple[Retake, ...]
    after_rest: tuple[bool, ...]
    accented: tuple[bool, ...]
    join_cost: tuple[int, ...]
    apart_cost: tuple[int, ...]
    retake_cost: tuple[int, ...]


def _sheet(problem: Problem) -> Sheet:
    asked = _Asked(*zip(*problem.notes, strict=True))
    firsts, stops, visits, longest = np.array(
        [(bar.first, bar.stop, bar.visits, bar.longest) for bar in problem.bars], np.int64
    ).T
    counts = stops - firsts
    width = int(counts.max())
    places, starts = np.arange(width), (width - counts)[:, None]
    sounds, opens = places >= starts, places == starts
    notes = np.where(sounds, places + stops[:, None] - width, 0)

    def of_notes(values: object) -> NDArray[np.float64]:
        spread: NDArray[np.float64] = np.array(values, float)[notes]
        return spread

    held = np.array(asked.held)[notes]
    fixed = np.array([joined is True for joined in asked.joined])[notes] & sounds & ~opens
    parted = np.array([joined is False for joined in asked.joined])[notes] | opens | ~sounds
    prices = np.zeros((*notes.shape, PRICES))
    prices[..., HEAD] = np.where(opens, 0, of_notes(asked.apart_cost))[..., None]
    prices[..., INNER] = np.where(held, 0, of_notes(asked.join_cost))[..., None]
    prices[..., RETAKE] = of_notes(asked.retake_cost)
    prices *= visits[:, None, None]
    prices[fixed | ~sounds, HEAD] = inf
    prices[parted, INNER] = inf
    if any(asked.bow):
        forbidden = of_notes([FORBIDDEN[bow] for bow in asked.bow])
        prices[..., HEAD] += forbidden
        prices[..., INNER] += forbidden
    prices[np.array([retake is Retake.MUST for retake in asked.retake])[notes], TURN] = inf
    prices[np.array([retake is Retake.NEVER for retake in asked.retake])[notes], RETAKE] = inf
    return Sheet(
        notes=notes,
        opens=opens,
        counts=counts,
        visits=visits,
        struck=(sounds & ~held).astype(np.int64),
        ticks=np.where(sounds, np.array(asked.length)[notes], 0),
        fixed=fixed,
        prices=prices,
        by_down=np.array(asked.hooked)[notes] | opens,
        longest=longest,
        longest_before=np.maximum(longest, np.concatenate((longest[:1], longest[:-1]))),
    )


def rows_of(
    problems: Sequence[Problem], missed: int, units: Sequence[Sequence[int]], rows: Sequence[tuple[int, int]]
) -> Rows:
    """The rows of some units of bars.

    Args:
        problems: The problem under each plan.
        missed: What a missed accent weighs.
        units: Indexes in ``Problem.bars``; bars of a unit have as many notes.
        rows: For each row a unit and its plan.
    """
    first = problems[0]
    sheet = sheet_of(first)
    order = np.array([bar for unit in units for bar in unit])
    starts = np.cumsum([0, *map(len, units[:-1])])
    heads = order[starts]

    def together(combine: np.ufunc, values: NDArray[A]) -> NDArray[A]:
        """One for each unit, of one for each bar."""
        of_units: NDArray[A] = values[order] if len(units) == len(order) else combine.reduceat(values[order], starts)
        return of_units

    unit_of, plan_of = np.array(rows).T
    prices = np.stack([together(np.add, _with_accents(problem, sheet, missed)) for problem in problems])
    longest, before = together(np.minimum, sheet.longest), together(np.maximum, sheet.longest_before)
    limits = np.where(sheet.opens[heads], before[:, None], longest[:, None])
    sizes = np.array(first.stroke_costs[: sheet.notes.shape[1] + 1], float)
    return Rows(
        counts=sheet.counts[heads][unit_of],
        struck=sheet.struck[heads][unit_of],
        ticks=sheet.ticks[heads][unit_of],
        fixed=together(np.logical_and, sheet.fixed)[unit_of],
        limits=limits[unit_of],
        most_notes=first.settings.most_notes,
        prices=prices[plan_of, unit_of],
        sizes=sizes * together(np.add, sheet.visits)[unit_of, None],
    )


def _with_accents(problem: Problem, sheet: Sheet, missed: int) -> Costs:
    """The prices of a sheet, and what accents cost that are missed."""
    accents = np.array([missed * (note.accented and not note.held) for note in problem.notes], float)[sheet.notes]
    accents *= sheet.visits[:, None]
    prices = sheet.prices.copy()
    prices[..., HEAD_UP] += accents
    prices[..., INNER_UP] += accents
    prices[..., INNER_DOWN] += np.where(sheet.by_down, 0, accents)
    return prices
