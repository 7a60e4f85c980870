"""Learning a style from the lessons that are found on the shelf, to run in a thread or from the command line. No Qt."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from app.files import FileError
from app.plan_answers import GoOn, Tell
from app.styles import keep_style, style_name
from core.errors import BowbenchError, RefusedEditError
from core.shelf.catalogue import Catalogue
from core.shelf.query import Query
from core.shelf.scan import FileProblem, Progress
from core.translation import plural, tr
from core.values import dataclass

if TYPE_CHECKING:
    from core.style.style import Style

TURN_S = 0.001  # a thread that learns hands over to the window after this long
READING = 0.3  # share of the whole that is reading lessons, about


@dataclass(frozen=True)
class Learned:
    """What came of it.

    Attributes:
        style: The style, kept under its name.
        bare: How many of the tunes have nothing slurred.
        problems: Files that could not be read.
    """

    style: Style
    bare: int
    problems: tuple[FileProblem, ...]

    def sentence(self) -> str:
        """That the style is kept, and what was passed over."""
        told = [tr("The style “{name}” is kept.", name=self.style.name)]
        if self.bare:
            told.append(plural("1 tune has no slurs and was passed over.",
                               "{n} tunes have no slurs and were passed over.", self.bare))  # fmt: skip
        if self.problems:
            told.append(plural("1 file cannot be read.", "{n} files cannot be read.", len(self.problems)))
        return " ".join(told)


@dataclass(frozen=True)
class Step:
    """How far it is.

    Attributes:
        share: Of the whole, from 0 to 1.
        words: What is done now.
    """

    share: float
    words: str


def learn_style(path: Path, query: Query, name: str, watch: Callable[[Step], None]) -> Learned:
    """Learn a style and keep it.

    Args:
        path: The catalogue.
        query: Which lessons.
        name: Of the style; one of this name is replaced.
        watch: Told how far it is; raises to leave off, and nothing is kept then.
    Raises:
        BowbenchError: no style can have that name; the shelf cannot be used; there is too little to learn from; the
            library that learns cannot be loaded.
        FileError: the style cannot be kept.
    """
    from core.shelf.bowed import bowed_lessons
    from core.style.learning import learn  # loads numbers of its own

    name = style_name(name)

    def watch_reading(progress: Progress) -> None:
        share = READING * progress.done / max(progress.total, 1)
        watch(Step(share, tr("Reading {done} of {total} tunes …", done=progress.done, total=progress.total)))

    def watch_learning(done: int, total: int) -> None:
        watch(Step(READING + (1 - READING) * done / total, tr("Learning …")))

    with Catalogue(path) as catalogue:
        taught = bowed_lessons(catalogue, query, watch=watch_reading)
    style = learn(taught.examples, name, watch=watch_learning)
    watch(Step(1, tr("Keeping the style …")))
    keep_style(style)
    return Learned(style, taught.bare, taught.problems)


def tell_learned(path: Path, query: Query, name: str, go_on: GoOn, tell: Tell) -> None:
    """The same for a thread: tells each ``Step``, and the ``Learned`` in the end.

    Raises:
        RefusedEditError: why nothing was learned.
    """

    def watch(step: Step) -> None:
        go_on()
        tell(step)

    with _turns():
        try:
            tell(learn_style(path, query, name, watch))
        except (BowbenchError, FileError) as fault:
            raise RefusedEditError(str(fault)) from fault


@contextmanager
def _turns() -> Iterator[None]:
    """Threads take turns more often."""
    before = sys.getswitchinterval()
    sys.setswitchinterval(TURN_S)
    try:
        yield
    finally:
        sys.setswitchinterval(before)
