"""The search for the best bowing, under the best choice of plans where some are open."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from dataclasses import replace
from math import inf
from time import monotonic

from core.planner.exact import Exact
from core.planner.models import Model, alike, loose
from core.planner.network import TooManyCombinationsError
from core.planner.open_problem import NO_ANSWER, Answer, OpenProblem, settled
from core.planner.problem import Problem


class OutOfTimeError(Exception):
    """The time limit was reached."""


def in_time(go_on: Callable[[], None], seconds: float) -> Callable[[], None]:
    """The same, but from so many seconds on it raises ``OutOfTimeError``."""
    ends_at = monotonic() + seconds

    def go_on_in_time() -> None:
        go_on()
        if monotonic() > ends_at:
            raise OutOfTimeError

    return go_on_in_time


class Search:
    """The search.

    Attributes:
        scale: The weights of the three numbers.
        best: The best bowing so far.
        bound: None costs less.
        refused: What is kept leaves no bowing.
    """

    def __init__(
        self, problem: OpenProblem, posed: Callable[[tuple[int, ...]], Problem], go_on: Callable[[], None]
    ) -> None:
        """Prepare the search.

        Args:
            problem: The problem.
            posed: Gives it under a choice of plans, the changes of plan counted.
            go_on: Called now and then; an error that it raises is passed on, but for ``OutOfTimeError``.
        """
        self.scale = problem.scale
        self.best = NO_ANSWER
        self.bound = 0.0
        self.refused = False
        self._problem, self._posed, self._go_on = problem, posed, go_on
        self._alike = 0.0  # no bowing costs less that bows bars of one kind alike
        self._loose = 0.0  # none at all

    def run(self) -> None:
        """Search until the best is proven, or as far as time and memory allow."""
        with suppress(OutOfTimeError, TooManyCombinationsError):
            self._run()

    def _run(self) -> None:
        model = alike(self._problem)
        answer = self._solve(model)
        self._alike = answer.total
        if self._problem.groups and answer.ways and not self._is_proven():
            self._settle(answer.choice)
        each, of_each = None, NO_ANSWER
        if self.best.total >= self.scale.broken:  # else no bar of the best differs from its like
            each = loose(self._problem)
            of_each = self._solve(each, below=self.best.total)
            self._loose = of_each.total
            self.refused = self._loose == inf
        if self.refused or self._is_proven():
            return
        if self._problem.groups and model is not None and answer.ways:
            with suppress(TooManyCombinationsError):  # then the bound stays lower
                self._tie(model, answer)
        if not self._is_proven():
            each = each or loose(self._problem)
            if each is not None:
                self._go_deeper(Exact(each, of_each, self._go_on))

    def _solve(self, model: Model | None, below: float = inf) -> Answer:
        """Solve a model; its bowing is kept if it is the best so far, bars that differ from their like counted.

        Args:
            model: The model, if there is one.
            below: As for ``Model.solve``.
        """
        if model is None:
            return NO_ANSWER
        found = model.solve(self._go_on, below=below)
        self._keep(found)
        return found

    def _keep(self, found: Answer) -> None:
        real = found.total + self.scale.broken * sum(found.differing(self._problem).values())
        if real < self.best.total:
            self.best = replace(found, total=real)

    def _is_proven(self) -> bool:
        """Where bars differ from their like at least one is broken, on top of what each bar for itself costs."""
        self.bound = min(self.best.total, self._alike, self._loose + self.scale.broken)
        return self.best.total == self.bound < inf

    def _settle(self, choice: tuple[int, ...]) -> None:
        """Bow all bars of one kind alike under a choice of plans."""
        problem = self._posed(choice)
        model = alike(settled(problem, self.scale))
        if model is not None:
            changes = problem.plan_changes * problem.settings.weights.plan_change
            found = model.solve(self._go_on, below=self.best.total - changes)
            self._keep(replace(found, total=found.total + changes, choice=choice))

    def _tie(self, model: Model, answer: Answer) -> None:
        """Tie bars of one kind in different groups of phrases together, where they come apart, until none do."""
        while not self._is_proven() and self._alike == self.bound:
            tied = model.tied(answer)
            if tied is None:
                return
            model, answer = tied, self._solve(tied, below=self.best.total)
            self._alike = answer.total

    def _go_deeper(self, exact: Exact) -> None:
        """Look for a bowing near the bound, then farther and farther from it, until none can be better."""
        near, step = self.bound, self.scale.broken
        while near < self.best.total:
            near = min(near + step, self.best.total)
            step *= 2
            found = exact.under(near)
            if found.ways:
                self.best, near = found, found.total
            if exact.complete:
                self.bound = near
