"""The direction of every note on every pass: bow rules B1 to B12 as a small state machine.

One walk through the playing order. For each note played, ``_step`` tells how it continues from what was played just
before, and ``NEXT_BOW`` and ``EFFECTS`` tell what follows from that; a mark on the first note of a stroke overrides the
direction (rule B4). A rule coded anywhere else than in these tables and in ``_first_bow`` would be a mistake.

Grace notes and ornaments do not appear: they belong to their note's stroke, and a bowed triplet ends as it began
(rule B8).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import Enum
from functools import cached_property
from typing import NamedTuple

from immutabledict import immutabledict

from core.bowing import Bow, Bowing, Join
from core.once import once
from core.order import Visit, playing_order
from core.tune import Tune


class Step(Enum):
    """How a note continues from the note played before it."""

    NEW = "new stroke"
    RETAKEN = "retaken"  # a new stroke, the bow lifted to go the same way again (rule B4)
    SLURRED = "slurred"
    HOOKED = "hooked"
    HELD = "held"

    __hash__ = object.__hash__  # members are singletons; Enum's own hash is slow, and tables are read for every note


NEXT_BOW = {  # a test asserts that every pair is present
    (Bow.DOWN, Step.NEW): Bow.UP,  # rule B1
    (Bow.UP, Step.NEW): Bow.DOWN,
    (Bow.DOWN, Step.RETAKEN): Bow.DOWN,  # rule B4
    (Bow.UP, Step.RETAKEN): Bow.UP,
    (Bow.DOWN, Step.SLURRED): Bow.DOWN,  # rule B2
    (Bow.UP, Step.SLURRED): Bow.UP,
    (Bow.DOWN, Step.HOOKED): Bow.DOWN,  # rule B9
    (Bow.UP, Step.HOOKED): Bow.UP,
    (Bow.DOWN, Step.HELD): Bow.DOWN,  # rule B3
    (Bow.UP, Step.HELD): Bow.UP,
}


class Effect(NamedTuple):
    """What a step does, direction apart."""

    starts: bool  # a new stroke begins: the only place where a mark sets the direction
    struck: bool  # the note has an attack of its own


EFFECTS = {
    Step.NEW: Effect(starts=True, struck=True),
    Step.RETAKEN: Effect(starts=True, struck=True),
    Step.SLURRED: Effect(starts=False, struck=False),
    Step.HOOKED: Effect(starts=False, struck=True),
    Step.HELD: Effect(starts=False, struck=False),
}
STEP_OF_JOIN = {Join.SLUR: Step.SLURRED, Join.HOOK: Step.HOOKED}


class Played(NamedTuple):
    """One note played once.

    Attributes:
        note_id: The written note.
        visit: Index in the playing order.
        bar: Index in ``tune.bars``.
        pass_number: How often the bar has now been played, counted from 1.
        bow: Direction.
        starts: A new stroke begins here.
        struck: The note has an attack: a stroke begins or the note is hooked.
        retake: A stroke begins in the direction of the stroke before it.
        over_rest: The retake has a rest before it, in which the bow can come back (rule B7); else False.
    """

    note_id: str
    visit: int
    bar: int
    pass_number: int
    bow: Bow
    starts: bool
    struck: bool
    retake: bool
    over_rest: bool


@dataclass(frozen=True)
class Strokes:
    """All directions of one bowing.

    Attributes:
        order: The bars in playing order.
        played: The notes in playing order, rests left out, held notes included.
        bows: For each written note the direction on each pass of its bar; empty for a bar that is never played.
        next_bow: What alternation gives after the last stroke; down where nothing is played.
        comes_round: Played again from the start, every direction is the same as the first time.
        round_retake: That it comes round takes a retake: the last stroke and the first go the same way.
    """

    order: tuple[Visit, ...]
    played: tuple[Played, ...]
    bows: Mapping[str, tuple[Bow, ...]]
    next_bow: Bow
    comes_round: bool
    round_retake: bool = False

    @cached_property
    def by_note(self) -> Mapping[str, tuple[Played, ...]]:
        """What is played of each written note, one for each pass of its bar; unplayed notes are left out."""
        found: dict[str, list[Played]] = {}
        for note in self.played:
            found.setdefault(note.note_id, []).append(note)
        return {note_id: tuple(passes) for note_id, passes in found.items()}


def work_out(tune: Tune, bowing: Bowing, order: tuple[Visit, ...] | None = None) -> Strokes:
    """Work out the direction of every note on every pass.

    Args:
        tune: The tune.
        bowing: A bowing of it; ids that are not the tune's are ignored.
        order: Another playing order than the tune's own, such as two bars to practise.
    Returns:
        The strokes. Rests take no stroke and do not change alternation (rule B7). A mark inside a stroke changes
        nothing (rule B5). A note whose written predecessor was not played just before it begins a stroke of its
        own on that pass, whatever joins or ties it (rule B11).
    """
    order = playing_order(tune) if order is None else order
    steps = tuple(_steps(tune, bowing, order))
    played: list[Played] = []
    bow = _first_bow(tune, order, steps).turned  # the stroke that would have come before the first
    for step in steps:
        before, bow = bow, step.mark or NEXT_BOW[bow, step.kind]
        effect = EFFECTS[step.kind]
        retake = effect.starts and bow is before and bool(played)
        played.append(
            Played(
                step.note_id, step.visit, step.bar, order[step.visit].pass_number,
                bow, effect.starts, effect.struck, retake, retake and step.over_rest,
            )
        )  # fmt: skip
    bows: dict[str, list[Bow]] = {note.id: [] for note in tune.sequence if not note.is_rest}
    for note in played:
        bows[note.note_id].append(note.bow)
    comes_round, round_retake = _round(steps, played, bowing)
    return Strokes(
        order=order,
        played=tuple(played),
        bows=immutabledict({note_id: tuple(directions) for note_id, directions in bows.items()}),
        next_bow=bow.turned if played else Bow.DOWN,
        comes_round=comes_round,
        round_retake=round_retake,
    )


class _Step(NamedTuple):
    """How one note is played once, before any direction is known; ``mark`` only where it sets the direction."""

    note_id: str
    visit: int
    bar: int
    kind: Step
    mark: Bow | None
    over_rest: bool


class _Written(NamedTuple):
    """What the walk needs to know of a written note."""

    note_id: str
    place: int
    is_rest: bool
    held: bool


@once
def _written(tune: Tune) -> tuple[tuple[_Written, ...], ...]:
    """The notes of each bar, with their places in the tune."""
    places = tune.places
    return tuple(
        tuple(_Written(note.id, places[note.id], note.is_rest, note.held) for note in bar.notes) for bar in tune.bars
    )


def _steps(tune: Tune, bowing: Bowing, order: tuple[Visit, ...]) -> Iterator[_Step]:
    """All steps in playing order."""
    joins, marks, retakes = dict(bowing.joins), dict(bowing.marks), bowing.retakes
    bars = _written(tune)
    sounding = -1  # place of the note played just before, without a rest between; -1 where there is none
    over_rest = begun = False
    for visit, (bar, pass_number) in enumerate((visit.bar, visit.pass_number) for visit in order):
        for note_id, place, is_rest, held in bars[bar]:
            if is_rest:
                sounding, over_rest = -1, True
                continue
            kind, mark = Step.NEW, None
            if sounding >= 0 and sounding == place - 1 and (held or note_id in joins):
                kind = Step.HELD if held else STEP_OF_JOIN[joins[note_id]]
            elif note_id in marks and marks[note_id].holds_on(pass_number):
                mark = marks[note_id].bow
            elif note_id in retakes and begun:
                kind = Step.RETAKEN
            yield _Step(note_id, visit, bar, kind, mark, over_rest)
            sounding, over_rest, begun = place, False, True


def _first_bow(tune: Tune, order: tuple[Visit, ...], steps: tuple[_Step, ...]) -> Bow:
    """The direction of the first stroke (rule B6).

    A mark says it. Else a tune that starts on the beat starts down. Else alternation shall lead, without a retake, to
    the first mark that stands before the first full bar or where it begins, and otherwise to a down-bow there
    (Schroeder, Handbook of Violin Playing, about 1889: the last stroke of a pick-up is up; L. Mozart, Violinschule,
    1756, IV: begin up after a rest on the beat).
    """
    if not steps:
        return Bow.DOWN
    if steps[0].mark:
        return steps[0].mark
    first_bar = tune.bars[order[0].bar]
    if not first_bar.is_pickup and steps[0].visit == 0 and first_bar.notes[0].id == steps[0].note_id:
        return Bow.DOWN
    bow = Bow.UP
    for step in steps:  # try down, and turn round if it leads the wrong way
        bow = NEXT_BOW[bow, step.kind]
        opens_bar = step.visit > 0 and step.note_id == tune.bars[step.bar].notes[0].id
        if step.mark or opens_bar:
            return Bow.DOWN if bow is (step.mark or Bow.DOWN) else Bow.UP
    return bow.turned  # no full bar follows: as if one did


def _round(steps: tuple[_Step, ...], played: list[Played], bowing: Bowing) -> tuple[bool, bool]:
    """Whether the tune comes round as it began, and whether that takes a retake.

    After the first stroke everything follows from its direction, so that direction decides.
    """
    if not played:
        return True, False
    first, last = steps[0], played[-1].bow
    kind = Step.RETAKEN if first.note_id in bowing.retakes else Step.NEW
    again = first.mark or NEXT_BOW[last, kind]
    return again is played[0].bow, again is last
