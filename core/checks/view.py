"""What the rules look at: a tune, a bowing of it, and what follows from the two, worked out when a rule asks for it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TypeVar

from core.accents import Accents, weigh
from core.bowing import Bow, Bowing, Join
from core.once import once
from core.order import sections
from core.reach import ORDINARY, Reach, ReachSettings, work_out_reach
from core.strings import STANDARD, Tuning
from core.strokes import Played, Strokes, work_out
from core.tune import Note, Tune

Item = TypeVar("Item")


@dataclass(frozen=True)
class View:
    """A bowing under examination.

    Attributes:
        tune: The tune.
        bowing: The bowing that is checked.
        reach_settings: What is assumed of bow and tempo.
        tuning: How the fiddle is tuned.
    """

    tune: Tune
    bowing: Bowing
    reach_settings: ReachSettings = ORDINARY
    tuning: Tuning = STANDARD

    @cached_property
    def strokes(self) -> Strokes:
        """All directions."""
        return work_out(self.tune, self.bowing)

    @cached_property
    def accents(self) -> Accents:
        """How the accent plan is met."""
        return weigh(self.tune, self.bowing, self.strokes)

    @cached_property
    def reach(self) -> Reach:
        """The way of the bow."""
        return work_out_reach(self.tune, self.bowing, self.strokes, self.reach_settings)

    @cached_property
    def joins(self) -> Mapping[str, Join]:
        """The joins of the bowing as a plain mapping, which is faster to look up in."""
        return dict(self.bowing.joins)

    @cached_property
    def written_strokes(self) -> tuple[tuple[Note, ...], ...]:
        """The written notes of each stroke, held notes among them, in written order."""
        strokes: list[list[Note]] = []
        after_rest = True
        joins = self.joins
        for note in self.tune.sequence:
            if note.is_rest:
                after_rest = True
                continue
            if after_rest or not (note.held or note.id in joins):
                strokes.append([])
            strokes[-1].append(note)
            after_rest = False
        return tuple(map(tuple, strokes))

    @cached_property
    def turned_passes(self) -> Mapping[int, tuple[int, ...]]:
        """For each bar (index) that is not bowed alike on every pass: the passes that differ from the first."""
        bows = self.strokes.bows
        turned: dict[int, set[int]] = {}
        for note_id, directions in bows.items():
            if Bow.DOWN in directions and Bow.UP in directions:
                passes = turned.setdefault(self.tune.bar_of[note_id], set())
                passes.update(number for number, bow in enumerate(directions, 1) if bow is not directions[0])
        return {bar: tuple(sorted(passes)) for bar, passes in turned.items()}

    def section_of(self, bar: int) -> int:
        """First bar (index) of the section that a bar (index) stands in."""
        return _section_starts(self.tune)[bar]

    def sounding(self, bar: int) -> tuple[Note, ...]:
        """The notes of a bar (index), rests left out."""
        return _sounding(self.tune)[bar]

    def first_bow(self, note_id: str) -> Bow | None:
        """Direction on the first pass; None where the note is never played."""
        directions = self.strokes.bows[note_id]
        return directions[0] if directions else None

    def passes(self, note_id: str) -> tuple[Played, ...]:
        """Every playing of a note."""
        return self.strokes.by_note.get(note_id, ())

    def opens_a_section(self, played: Played) -> bool:
        """Whether a note is the first of a part, or of a bar that a repeat or jump leads to."""
        if self.sounding(played.bar)[0].id != played.note_id or not played.visit:
            return False
        return self.section_of(played.bar) == played.bar or self.strokes.order[played.visit - 1].bar != played.bar - 1

    def passes_of_bar(self, bar: int) -> int:
        """How often a bar (index) is played."""
        return self._times_played[bar]

    @cached_property
    def _times_played(self) -> Counter[int]:
        return Counter(visit.bar for visit in self.strokes.order)

    def numbers(self, bars: Iterable[int]) -> tuple[int, ...]:
        """Printed numbers of bars given by index, none twice."""
        return tuple(dict.fromkeys(self.tune.bars[bar].number for bar in bars))

    def number(self, note_id: str) -> int:
        """Printed number of a note's bar."""
        return self.tune.bars[self.tune.bar_of[note_id]].number

    def in_written_order(self, note_ids: Iterable[str]) -> tuple[str, ...]:
        """Note ids sorted as written, none twice."""
        return tuple(sorted(set(note_ids), key=self.tune.places.__getitem__))


def neighbours(
    items: Iterable[Item],
    number_of: Callable[[Item], int],
    kind_of: Callable[[Item], Hashable],
    section_of: Callable[[Item], Hashable] | None = None,
) -> list[list[Item]]:
    """Group items of one kind that stand in the same bar, in bars side by side, or in the same section.

    Args:
        items: In written order.
        number_of: Printed number of an item's bar (so that a pick-up between two bars does not part them).
        kind_of: Items are grouped with their own kind only; other kinds between do not part them.
        section_of: The section of an item; without it sections do not count.
    Returns:
        Groups, one kind after the other, the items of each in the order given.
    """
    kinds: dict[Hashable, list[list[Item]]] = {}
    for item in items:
        groups = kinds.setdefault(kind_of(item), [])
        near = groups and number_of(item) - number_of(groups[-1][-1]) <= 1
        if near or (groups and section_of and section_of(item) == section_of(groups[-1][-1])):
            groups[-1].append(item)
        else:
            groups.append([item])
    return [group for groups in kinds.values() for group in groups]


@once
def _section_starts(tune: Tune) -> tuple[int, ...]:
    return tuple(section.start for section in sections(tune) for _ in section)


@once
def _sounding(tune: Tune) -> tuple[tuple[Note, ...], ...]:
    return tuple(tuple(note for note in bar.notes if not note.is_rest) for bar in tune.bars)
