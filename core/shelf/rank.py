"""Tunes in the order in which they lie best under an accent plan.

What the planner finds is kept (``core.shelf.figures``), so that a tune is planned once. A tune lies better than another
if it misses fewer accents, then breaks less, then costs fewer slurs, each by the bar played.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from pathlib import Path

from core.accent_plan import AccentPlan
from core.bowing import set_plan
from core.lesson import Lesson
from core.order import playing_order
from core.planner import RefusedPlanError, work_out_plan
from core.planner.counts import slur_count
from core.shelf.catalogue import Catalogue
from core.shelf.figures import Figures, figures_of, put_figures
from core.shelf.lessons import lessons_in
from core.shelf.query import Query
from core.shelf.scan import FileProblem, Progress
from core.shelf.search import EVERYTHING, Entry, find, lesson_of
from core.translation import tr
from core.values import dataclass

FIGURES_VERSION = 3  # one more whenever the planner would find other figures


@dataclass(frozen=True, slots=True)
class Ranked:
    """A tune with what the planner found."""

    entry: Entry
    figures: Figures

    @property
    def key(self) -> tuple[Fraction, Fraction, Fraction]:
        """Missed, broken and cost by the bar played; smaller is better."""
        figures = self.figures
        return (
            Fraction(figures.missed, figures.playings),
            Fraction(figures.broken, figures.playings),
            Fraction(figures.cost, figures.playings),
        )


@dataclass(frozen=True, slots=True)
class Ranking:
    """Tunes in order, the one that lies best first.

    Attributes:
        tunes: The tunes.
        problems: Files that could not be read any more, and tunes that have no bowing.
    """

    tunes: tuple[Ranked, ...]
    problems: tuple[FileProblem, ...]


def rank(
    catalogue: Catalogue,
    plan: AccentPlan,
    query: Query = EVERYTHING,
    *,
    watch: Callable[[Progress], None] = lambda _: None,
) -> Ranking:
    """Put the tunes that a query finds in order.

    Args:
        catalogue: Keeps the figures of tunes planned before and gets those of the others, one by one.
        plan: The accents to drive, with the fewest slurs, from bare.
        query: Which tunes; its own order counts between equals.
        watch: Called for each tune to be planned; raises to stop, and nothing found so far is lost.
    Raises:
        QueryError: a part of the query cannot be understood.
        ShelfError: the catalogue cannot be used.
    """
    entries = find(catalogue, query).entries
    known = {entry.id: figures_of(catalogue, entry.content, str(plan), FIGURES_VERSION) for entry in entries}
    problems: list[FileProblem] = []
    missing: dict[Path, list[Entry]] = {}
    for entry in entries:
        if known[entry.id] is None:
            missing.setdefault(entry.file, []).append(entry)
    total, done = sum(map(len, missing.values())), 0
    for file, waiting in missing.items():
        lessons = lessons_in(file, problems)
        for entry in waiting:
            watch(Progress(done, total, entry.title))
            done += 1
            place = lesson_of(entry, lessons)
            if place is None:
                if lessons:
                    problems.append(
                        FileProblem(file, tr("has no tune “{title}” any more; scan it again.", title=entry.title))
                    )
                continue
            try:
                planned = plan_figures(lessons[place], plan)
            except RefusedPlanError as refusal:
                problems.append(FileProblem(file, f"“{entry.title}”: {refusal}"))
            else:
                known[entry.id] = planned
                put_figures(catalogue, entry.content, str(plan), FIGURES_VERSION, planned)
    ranked = [Ranked(entry, figures) for entry in entries if (figures := known[entry.id]) is not None]
    return Ranking(tuple(sorted(ranked, key=lambda one: one.key)), tuple(problems))


def plan_figures(lesson: Lesson, plan: AccentPlan) -> Figures:
    """What the best bowing of a tune for a plan misses, breaks and costs; kept slurs and marks do not count.

    Raises:
        RefusedPlanError: the tune has no note.
    """
    tune = lesson.tune
    found = work_out_plan(tune, set_plan(tune, lesson.bowings[0], plan), keep=False)
    return Figures(*found.score, slurs=slur_count(tune, found.bowing), playings=len(playing_order(tune)))
