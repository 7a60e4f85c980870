"""A lesson: a tune with its bowings, and what a teacher set for it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from immutabledict import immutabledict

from core.bowing import Bowing
from core.errors import RefusedEditError
from core.reach import ORDINARY, ReachSettings
from core.severity import NOTHING_QUIET, Quiet
from core.sheet_plan import SheetPlan, with_renamed
from core.strings import STANDARD, Tuning
from core.translation import tr
from core.tune import Tune
from core.values import dataclass

AS_WRITTEN = "As written"


@dataclass(frozen=True)
class Lesson:
    """A tune with its bowings.

    Attributes:
        tune: The tune.
        bowings: At least one, in the order shown; names are unique.
        fields: Miscellaneous fields of the file that are not ours, by name, kept from opening to saving.
        quiet: Rules of the check that the teacher turned down.
        reach: What the check assumes of bow and tempo.
        tuning: How the fiddle is tuned.
        sheet: What is printed of it; None where nobody has said.
    """

    tune: Tune
    bowings: tuple[Bowing, ...]
    fields: immutabledict[str, str] = immutabledict()
    quiet: Quiet = NOTHING_QUIET
    reach: ReachSettings = ORDINARY
    tuning: Tuning = STANDARD
    sheet: SheetPlan | None = None

    def named(self, name: str) -> Bowing:
        """The bowing of this name.

        Raises:
            KeyError: there is none.
        """
        return self.bowings[self.index(name)]

    def index(self, name: str) -> int:
        """Place of the bowing of this name.

        Raises:
            KeyError: there is none.
        """
        for index, bowing in enumerate(self.bowings):
            if bowing.name == name:
                return index
        raise KeyError(name)


def edit_bowing(lesson: Lesson, index: int, edit: Callable[[Tune, Bowing], Bowing]) -> Lesson:
    """Replace one bowing by what an edit makes of it.

    Raises:
        RefusedEditError: the edit has no meaning there.
    """
    return with_bowing(lesson, index, edit(lesson.tune, lesson.bowings[index]))


def with_bowing(lesson: Lesson, index: int, bowing: Bowing) -> Lesson:
    """Put a bowing in the place of another."""
    bowings = lesson.bowings
    return replace(lesson, bowings=(*bowings[:index], bowing, *bowings[index + 1 :]))


def add_bowing(lesson: Lesson, bowing: Bowing, index: int | None = None) -> Lesson:
    """Insert a bowing (at the end where no index is given); its name is made unique."""
    place = len(lesson.bowings) if index is None else index
    named = replace(bowing, name=free_name(lesson, bowing.name))
    return replace(lesson, bowings=(*lesson.bowings[:place], named, *lesson.bowings[place:]))


def rename_bowing(lesson: Lesson, index: int, name: str) -> Lesson:
    """Give a bowing another name.

    Raises:
        RefusedEditError: the name is empty or another bowing has it.
    """
    name = " ".join(name.split())
    if not name:
        raise RefusedEditError(tr("A bowing needs a name."))
    if any(other.name == name for place, other in enumerate(lesson.bowings) if place != index):
        raise RefusedEditError(tr("There is a bowing named “{name}” already.", name=name))
    if lesson.sheet is not None:
        lesson = replace(lesson, sheet=with_renamed(lesson.sheet, lesson.bowings[index].name, name))
    return with_bowing(lesson, index, replace(lesson.bowings[index], name=name))


def move_bowing(lesson: Lesson, index: int, to: int) -> Lesson:
    """Move a bowing to another place (0 to number of bowings - 1) in the order shown."""
    rest = [*lesson.bowings[:index], *lesson.bowings[index + 1 :]]
    rest.insert(max(0, min(to, len(rest))), lesson.bowings[index])
    return replace(lesson, bowings=tuple(rest))


def delete_bowing(lesson: Lesson, index: int) -> Lesson:
    """Take a bowing out of the lesson.

    Raises:
        RefusedEditError: it is the only one.
    """
    if len(lesson.bowings) == 1:
        raise RefusedEditError(tr("A lesson keeps at least one bowing."))
    return replace(lesson, bowings=lesson.bowings[:index] + lesson.bowings[index + 1 :])


def free_name(lesson: Lesson, name: str) -> str:
    """The name itself, or with the first number (2, 3 ...) that no bowing of the lesson has yet."""
    taken = {bowing.name for bowing in lesson.bowings}
    candidate, count = name, 1
    while candidate in taken:
        count += 1
        candidate = f"{name} {count}"
    return candidate
