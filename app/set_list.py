"""The set of tunes that the window works on: which tunes of which files, and what the set's check says of them.

A tune of the set that is open on the page follows every edit there; the others stay as they were read. Nothing here is
saved in a lesson: which tunes they are is remembered by their names (``app.set_entries``).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.document import Document, State
from app.files import FileError
from app.set_entries import EntryError, EntryName, find_entry
from core.errors import RefusedEditError
from core.lesson import Lesson
from core.reading import Reading
from core.translation import tr
from core.tune_set import MOST_TIMES, MOST_TUNES, Entry, TuneSet
from core.values import dataclass

if TYPE_CHECKING:
    from core.set_check import SetReport


@dataclass(frozen=True)
class SetTune:
    """A tune in the set.

    Attributes:
        lesson: The lesson that it is.
        bowing: Place of its bowing in ``lesson.bowings``.
        times: How often it is played.
        path: The file that it was read from; None for pasted text and tunes that come with the program.
    """

    lesson: Lesson
    bowing: int = 0
    times: int = 1
    path: Path | None = None

    @property
    def entry(self) -> Entry:
        """What the check looks at."""
        return Entry(self.lesson.tune, self.lesson.bowings[self.bowing], self.times)

    @property
    def name(self) -> EntryName | None:
        """How it is remembered; None where it stands in no file."""
        if self.path is None:
            return None
        return EntryName(str(self.path), self.lesson.tune.number, self.times, self.lesson.bowings[self.bowing].name)


@dataclass(frozen=True)
class SetState:
    """The tunes of the set, in the order played."""

    tunes: tuple[SetTune, ...] = ()

    @cached_property
    def tune_set(self) -> TuneSet:
        return TuneSet(tuple(tune.entry for tune in self.tunes))

    @cached_property
    def report(self) -> SetReport:
        from core.set_check import check_set  # not for the start

        return check_set(self.tune_set)


class SetList(QObject):
    """The set, with edits.

    Signals:
        changed: The ``SetState`` is another.
        arranged: The user changed which tunes there are, their order, times or bowings.
    """

    changed = Signal()
    arranged = Signal()

    def __init__(self, document: Document, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._state = SetState()
        self._source: Path | None = None  # the file that the open lesson came from
        self._book: tuple[Lesson, ...] = ()  # and what else it holds
        document.lesson_changed.connect(self._follow)

    @property
    def state(self) -> SetState:
        return self._state

    @property
    def book(self) -> tuple[Lesson, ...]:
        """The tunes of the file that is open, as last known."""
        return self._book

    def book_opens(self, path: Path | None, lessons: Sequence[Lesson]) -> None:
        """Say which file the lesson comes from that the document is about to open, and what the file holds."""
        self._source, self._book = path, tuple(lessons)

    def is_open(self, place: int) -> bool:
        """Whether a tune of the set is the one on the page."""
        state = self._document.state
        return state is not None and self._state.tunes[place].lesson.tune is state.tune

    # ------------------------------------------------------------------------------------------------- edits

    def add_open_tune(self) -> int:
        """Put the open tune at the end, in the bowing on the page.

        Returns:
            Its place.
        Raises:
            RefusedEditError: no tune is open, or the set is full.
        """
        state = self._document.state
        if state is None:
            raise RefusedEditError(tr("Open a tune first."))
        return self._add([SetTune(state.lesson, state.shown, 1, self._source)])

    def add_from_book(self, index: int) -> int:
        """Put a tune of the open file at the end; as above."""
        return self._add([SetTune(self._as_open(self._book[index]), 0, 1, self._source)])

    def add(self, path: Path, lesson: Lesson) -> int:
        """Put a tune of a file at the end; as above."""
        return self._add([self._joined_to_open(SetTune(lesson, 0, 1, path))])

    def recall(self, names: Sequence[EntryName], read: Callable[[Path], Reading]) -> list[str]:
        """Take the tunes that were remembered in the place of those there are.

        Args:
            names: The tunes.
            read: Reads a file; raises ``FileError`` where it cannot.
        Returns:
            A sentence for each that is not to be had any more.
        """
        readings: dict[str, Reading | None] = {}
        tunes, lost = [], []
        for name in names:
            try:
                if name.file not in readings:
                    readings[name.file] = None  # so that a file that cannot be read is told of once
                    readings[name.file] = read(Path(name.file))
                reading = readings[name.file]
                if reading is not None:
                    lesson, bowing = find_entry(name, reading)
                    found = SetTune(lesson, lesson.index(bowing.name), name.times, Path(name.file))
                    tunes.append(self._joined_to_open(found))
            except EntryError as fault:
                lost.append(f"{fault}.")
            except FileError as fault:
                lost.append(str(fault))
        self._put(SetState(tuple(tunes[:MOST_TUNES])))
        return lost

    def remove(self, place: int) -> None:
        """Take a tune out."""
        tunes = self._state.tunes
        self._arrange(tunes[:place] + tunes[place + 1 :])

    def move(self, place: int, by: int) -> int:
        """Move a tune on, or back where ``by`` is negative, as far as there are places.

        Returns:
            Where it stands then.
        """
        tunes = list(self._state.tunes)
        to = max(0, min(place + by, len(tunes) - 1))
        tunes.insert(to, tunes.pop(place))
        self._arrange(tuple(tunes))
        return to

    def reorder(self, places: Sequence[int]) -> None:
        """Play the tunes in another order."""
        self._arrange(tuple(self._state.tunes[place] for place in places))

    def set_times(self, place: int, times: int) -> None:
        """Have a tune played so many times, within ``MOST_TIMES``."""
        self._replace(place, replace(self._state.tunes[place], times=max(1, min(times, MOST_TIMES))))

    def set_bowing(self, place: int, bowing: int) -> None:
        """Choose a bowing of a tune's lesson."""
        self._replace(place, replace(self._state.tunes[place], bowing=bowing))

    def _add(self, tunes: Sequence[SetTune]) -> int:
        if len(self._state.tunes) + len(tunes) > MOST_TUNES:
            raise RefusedEditError(tr("A set holds at most {most} tunes.", most=MOST_TUNES))
        self._arrange((*self._state.tunes, *tunes))
        return len(self._state.tunes) - 1

    def _replace(self, place: int, tune: SetTune) -> None:
        tunes = self._state.tunes
        self._arrange((*tunes[:place], tune, *tunes[place + 1 :]))

    def _arrange(self, tunes: tuple[SetTune, ...]) -> None:
        if tunes != self._state.tunes:
            self._put(SetState(tunes))
            self.arranged.emit()

    def _put(self, state: SetState) -> None:
        self._state = state
        self.changed.emit()

    # ------------------------------------------------------------------------------------------------- following

    def _follow(self, before: State | None, after: State) -> None:
        """Take over what was edited on the page, and a tune of the set that was opened there."""
        self._book = tuple(after.lesson if lesson.tune is after.tune else lesson for lesson in self._book)
        tunes = tuple(self._joined_to_open(tune) for tune in self._state.tunes)
        if any(new is not old for new, old in zip(tunes, self._state.tunes, strict=True)):
            self._put(SetState(tunes))

    def _joined_to_open(self, tune: SetTune) -> SetTune:
        """The same tune, as it stands on the page if it is open there."""
        state = self._document.state
        if state is None or tune.lesson is state.lesson:
            return tune
        same_file = tune.path is not None and self._source is not None and _same(tune.path, self._source)
        if tune.lesson.tune is state.tune or (same_file and tune.lesson.tune == state.tune):
            return replace(tune, lesson=state.lesson, bowing=_find_again(tune.lesson, tune.bowing, state.lesson))
        return tune

    def _as_open(self, lesson: Lesson) -> Lesson:
        state = self._document.state
        return state.lesson if state is not None and lesson.tune is state.tune else lesson


def _find_again(before: Lesson, place: int, after: Lesson) -> int:
    """Where a bowing stands after an edit: by its name, else (it was renamed) at its place."""
    names = [bowing.name for bowing in after.bowings]
    name = before.bowings[place].name
    return names.index(name) if name in names else min(place, len(names) - 1)


def _same(one: Path, other: Path) -> bool:
    try:
        return one.resolve() == other.resolve()
    except OSError:
        return one == other
