"""What the bowed lessons that are found on the shelf teach about a hand.

Of each tune one bowing teaches: the first that carries a slur, or, where bowings are looked for by name or accents, the
first such one. A lesson that was only begun does not teach that the rest is bowed separately.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np

from core.bowing import Bowing
from core.lesson import Lesson
from core.shelf.catalogue import Catalogue
from core.shelf.folding import indexed, words
from core.shelf.lessons import lessons_in
from core.shelf.query import Query
from core.shelf.scan import FileProblem, Progress
from core.shelf.search import EVERYTHING, Entry, find, lesson_of
from core.style.learning import Example, example
from core.translation import tr
from core.values import dataclass

BEGUN = 0.5  # a bowing whose last slur stands before this share of the bars was only begun


@dataclass(frozen=True)
class Taught:
    """What was found to learn from.

    Attributes:
        examples: The lessons, in the order in which they were found.
        bare: How many tunes were found in which nothing is slurred.
        problems: Files that could not be read any more.
    """

    examples: tuple[Example, ...]
    bare: int
    problems: tuple[FileProblem, ...]


def bowed_lessons(
    catalogue: Catalogue, query: Query = EVERYTHING, *, watch: Callable[[Progress], None] = lambda _: None
) -> Taught:
    """Read the lessons that a query finds.

    Args:
        catalogue: The shelf.
        query: Which tunes, and by ``Query.bowing`` which of their bowings.
        watch: Called for each tune; raises to stop.
    Raises:
        QueryError: a part of the query cannot be understood.
        ShelfError: the catalogue cannot be used.
    """
    entries = find(catalogue, query).entries
    by_file: dict[Path, list[Entry]] = {}
    for entry in entries:
        by_file.setdefault(entry.file, []).append(entry)
    problems: list[FileProblem] = []
    found: dict[int, Example] = {}
    done = bare = 0
    for file, wanted in by_file.items():
        watch(Progress(done, len(entries), wanted[0].title))
        lessons = lessons_in(file, problems)
        for entry in wanted:
            watch(Progress(done, len(entries), entry.title))
            done += 1
            place = lesson_of(entry, lessons)
            if place is None:
                if lessons:
                    problems.append(
                        FileProblem(file, tr("has no tune “{title}” any more; scan it again.", title=entry.title))
                    )
                continue
            bowing = teaching_bowing(lessons[place], query.bowing)
            if bowing is None:
                bare += 1
            else:
                found[entry.id] = told(lessons[place], bowing)
    return Taught(tuple(found[entry.id] for entry in entries if entry.id in found), bare, tuple(problems))


def teaching_bowing(lesson: Lesson, looked_for: str = "") -> Bowing | None:
    """The bowing that teaches: the first with a slur, of those that are looked for; None where there is none."""
    return next((one for one in lesson.bowings if one.joins and _is_meant(one, looked_for)), None)


def _is_meant(bowing: Bowing, looked_for: str) -> bool:
    """As ``core.shelf.search`` finds bowings: by the beginnings of words of the name, or by the accents."""
    if str(bowing.accents) == looked_for.strip().lower():
        return True
    names = indexed(bowing.name).split()
    return all(any(name.startswith(word) for name in names) for word in words(looked_for))


def told(lesson: Lesson, bowing: Bowing) -> Example:
    """What a bowing teaches; of one that was only begun, what stands up to its last slur."""
    shown = example(lesson.tune, bowing)
    last = max(lesson.tune.bar_of[note_id] for note_id in bowing.joins)
    if last + 1 >= BEGUN * len(lesson.tune.bars):
        return shown
    return replace(shown, joined=np.where(shown.read.bars <= last, shown.joined, np.nan))
