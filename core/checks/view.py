"""What the rules look at: a tune, a bowing of it, and what follows from the two, worked out when a rule asks for it."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Mapping
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
from core.values import dataclass

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
    def joins_in(self) -> Mapping[int, tuple[Join | None, ...]]:
        """For each bar (index) with a join: how each of its notes is joined, rests left out."""
        places = self.tune.bar_of
        bars = {places[note_id] for note_id in self.joins if note_id in places}
        return {bar: tuple([self.joins.get(note.id) for note in self.sounding(bar)]) for bar in bars}

    @cached_property
    def shared_strokes(self) -> tuple[tuple[Note, ...], ...]:
        """The notes of each written stroke that holds two or more, held notes among them, in written order."""
        sequence, places = self.tune.sequence, self.tune.places
        strokes: list[list[Note]] = []
        last = -1
        for place in sorted(_held(self.tune).union([places[note_id] for note_id in self.joins if note_id in places])):
            before, note = sequence[place - 1], sequence[place]
            if place == 0 or before.is_rest or note.is_rest:
                continue
            if place - 1 == last:
                strokes[-1].append(note)
            else:
                strokes.append([before, note])
            last = place
        return tuple(map(tuple, strokes))

    @cached_property
    def turned_passes(self) -> Mapping[int, tuple[int, ...]]:
        """For each bar (index) that is not bowed alike on every pass: the passes that differ from the first."""
        turned = {}
        for bar, passes in enumerate(self.strokes.by_bar):
            if len(passes) > 1:
                first = passes[0].bows
                differing = tuple([number for number, other in enumerate(passes, 1) if other.bows != first])
                if differing:
                    turned[bar] = differing
        return turned

    def section_of(self, bar: int) -> int:
        """First bar (index) of the section that a bar (index) stands in."""
        return self._section_starts[bar]

    def sounding(self, bar: int) -> tuple[Note, ...]:
        """The notes of a bar (index), rests left out."""
        return self._sounding[bar]

    @cached_property
    def _sounding(self) -> tuple[tuple[Note, ...], ...]:
        return _sounding(self.tune)

    @cached_property
    def _section_starts(self) -> tuple[int, ...]:
        return _section_starts(self.tune)

    def bows(self, bar: int, pass_number: int = 1) -> tuple[Bow, ...]:
        """Directions of the notes of a bar (index) on one pass; empty where it is never played."""
        if pass_number == 1:
            return self._first_bows[bar]
        return self.strokes.by_bar[bar][pass_number - 1].bows

    @cached_property
    def _first_bows(self) -> list[tuple[Bow, ...]]:
        return [passes[0].bows if passes else () for passes in self.strokes.by_bar]

    def passes(self, note_id: str) -> tuple[Played, ...]:
        """Every playing of a note."""
        bar = self.tune.bar_of[note_id]
        number = [note.id for note in self.sounding(bar)].index(note_id)
        return tuple([self.strokes.playing(visit, number) for visit in self.strokes.visits_of[bar]])

    @property
    def first_note(self) -> Played:
        """The first note played.

        Raises:
            StopIteration: nothing is.
        """
        strokes = self.strokes
        return strokes.playing(next(visit for visit, of_bar in enumerate(strokes.visits) if of_bar.bows), 0)

    def opens_a_section(self, played: Played) -> bool:
        """Whether a note is the first of a part, or of a bar that a repeat or jump leads to."""
        if self.sounding(played.bar)[0].id != played.note_id or not played.visit:
            return False
        return self.section_of(played.bar) == played.bar or self.strokes.order[played.visit - 1].bar != played.bar - 1

    def passes_of_bar(self, bar: int) -> int:
        """How often a bar (index) is played."""
        return len(self.strokes.visits_of[bar])

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
def _held(tune: Tune) -> frozenset[int]:
    """Places of the held notes."""
    return frozenset([place for place, note in enumerate(tune.sequence) if note.held])


@once
def _section_starts(tune: Tune) -> tuple[int, ...]:
    return tuple(section.start for section in sections(tune) for _ in section)


@once
def _sounding(tune: Tune) -> tuple[tuple[Note, ...], ...]:
    return tuple([tuple([note for note in bar.notes if note.pitches]) for bar in tune.bars])
