"""Which bowings of the lesson stand on the page together, and from which of them the others are told apart.

This is no part of the lesson: it is neither saved nor undone. Bowings are kept by their names, so that one that is
deleted comes back to the page when that is undone.
"""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from app.document import Document, State
from core.lesson import Lesson


class Comparison(QObject):
    """The bowings that are compared; it follows the document.

    The page shows all of them while one of them is the document's shown bowing, and else that bowing alone.

    Signals:
        changed: Other bowings are compared, or from another one, while the lesson is as it was.
    """

    changed = Signal()

    def __init__(self, document: Document, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._names: frozenset[str] = frozenset()
        self._last: frozenset[str] = frozenset()  # compared before it ended
        self._reference = ""
        document.lesson_changed.connect(self._on_lesson_changed)

    @property
    def chosen(self) -> tuple[int, ...]:
        """Places in ``Lesson.bowings`` of the bowings that are compared; none or at least two."""
        state = self._document.state
        return () if state is None else _places(state.lesson, self._names)

    @property
    def runs(self) -> bool:
        """Whether the page shows more than one bowing."""
        state = self._document.state
        return state is not None and state.shown in self.chosen

    @property
    def places(self) -> tuple[int, ...]:
        """Places in ``Lesson.bowings`` of the bowings on the page."""
        state = self._document.state
        if state is None:
            return ()
        return self.chosen if self.runs else (state.shown,)

    @property
    def reference(self) -> int | None:
        """Place of the bowing from which the others are told apart; None where nothing is compared."""
        state = self._document.state
        if state is None or not self.runs:
            return None
        chosen = self.chosen
        return next((place for place in chosen if state.lesson.bowings[place].name == self._reference), chosen[0])

    def put(self, place: int, compared: bool) -> None:
        """Compare a bowing with what is on the page, or no more; the last two go together."""
        state = self._document.state
        if state is None:
            return
        names = [bowing.name for bowing in state.lesson.bowings]
        if compared:
            self._take(self._names | {names[place], names[state.shown]}, names[state.shown])
            return
        left = [other for other in self.chosen if other != place]
        goes = self.runs and place == state.shown
        self._take(frozenset(names[other] for other in left), self._reference)
        if goes:
            self._document.show(min(left, key=lambda other: abs(other - place)))

    def start(self) -> None:
        """Compare the shown bowing with those that were compared last, or with all."""
        state = self._document.state
        if state is not None:
            names = [bowing.name for bowing in state.lesson.bowings]
            last = self._last | {names[state.shown]}
            self._take(last if len(_places(state.lesson, last)) > 1 else frozenset(names), names[state.shown])

    def end(self) -> None:
        """Show one bowing alone again."""
        if self._names:
            self._last = self._names
            self._take(frozenset(), self._reference)

    def refer_to(self, place: int) -> None:
        """Tell the others apart from this bowing."""
        state = self._document.state
        if state is not None and place in self.chosen:
            self._take(self._names, state.lesson.bowings[place].name, anew=True)

    def _take(self, names: frozenset[str], reference: str, *, anew: bool = False) -> None:
        """Compare bowings of these names; the reference stays while it is among them, but for ``anew``."""
        before = self._names, self._reference
        if len(names) < 2:
            names = frozenset()
        if anew or self._reference not in names:
            self._reference = reference if reference in names else ""
        self._names = names
        if (names, self._reference) != before:
            self.changed.emit()

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        if before is None or before.tune is not after.tune:
            self._names, self._last, self._reference = frozenset(), frozenset(), ""
            return
        new_names = _renamed(before.lesson, after.lesson) if before.lesson is not after.lesson else {}
        if new_names:
            self._names = frozenset(new_names.get(name, name) for name in self._names)
            self._last = frozenset(new_names.get(name, name) for name in self._last)
            self._reference = new_names.get(self._reference, self._reference)


def _places(lesson: Lesson, names: frozenset[str]) -> tuple[int, ...]:
    """Places of the bowings of these names; none where there are fewer than two."""
    found = tuple(place for place, bowing in enumerate(lesson.bowings) if bowing.name in names)
    return found if len(found) > 1 else ()


def _renamed(before: Lesson, after: Lesson) -> dict[str, str]:
    """The new name of each bowing that has another one in its old place, by its old name."""
    if len(before.bowings) != len(after.bowings):
        return {}
    there = {bowing.name for bowing in after.bowings}
    pairs = zip(before.bowings, after.bowings, strict=True)
    return {old.name: new.name for old, new in pairs if old.name != new.name and old.name not in there}
