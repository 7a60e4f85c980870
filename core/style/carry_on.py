"""Carry on a bowing: from the bars that are marked, propose the others in the same hand.

A style says how likely each note is joined; equal bars are answered alike, and like the marked ones where these agree.
The planner then finds the likeliest bowing that keeps what is marked, drives the accents of the bowing's plan, bows
equal bars alike and comes round (``core.planner``).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Collection, Mapping
from dataclasses import replace
from fractions import Fraction
from math import exp, log, prod
from typing import TypeVar

from immutabledict import immutabledict

from core.bowing import Bowing
from core.errors import RefusedEditError
from core.planner import Plan, PlannerSettings, work_out_plan
from core.recurrence import bar_classes, is_material
from core.style.style import Style, log_odds
from core.style.within import log_odds_within
from core.translation import tr
from core.tune import Tune
from core.values import dataclass

V = TypeVar("V")

LIKELY = 0.34  # joined from this probability on: the best balance of missed and wrong (measured on 1883)
SURE = 0.75  # ... where only what is sure shall be joined: nine in ten are then right (measured on 1883)
FEWEST_BARS = 2  # full bars with slurs or without that show a hand at all
SETTINGS = PlannerSettings(most_notes=8, longest=Fraction(1))  # the style says how long strokes are


@dataclass(frozen=True)
class Proposal:
    """How a bowing can go on.

    Attributes:
        plan: The planned bowing and its three numbers.
        marked: Indexes in ``Tune.bars`` of the bars that were given; they are as they were.
        chances: By note id: the probability that the note is joined to the one before, as the style has it, for the
            notes of all other bars that can be joined.
        bar_chances: By index in ``Tune.bars`` of every other bar with such notes: the probability that all of it is as
            proposed, the notes taken one by one.
        contradictions: Groups of equal bars among the marked ones that are slurred differently, as indexes.
        joined_from: Probability from which on a note was rather to be joined.
    """

    plan: Plan
    marked: frozenset[int]
    chances: Mapping[str, float]
    bar_chances: Mapping[int, float]
    contradictions: tuple[tuple[int, ...], ...]
    joined_from: float = LIKELY

    @property
    def against_the_hand(self) -> frozenset[str]:
        """Notes that are joined or apart against what is likely.

        They are so that accents are driven, equal bars agree and the bow comes round, or because a stroke would be too
        long; a teacher wants to look at them first.
        """
        joins = self.bowing.joins
        return frozenset(
            note_id for note_id, joined in self.chances.items() if (note_id in joins) != (joined >= self.joined_from)
        )

    @property
    def bowing(self) -> Bowing:
        """The proposed bowing, all of it."""
        return self.plan.bowing


def marked_bars(tune: Tune, bowing: Bowing) -> frozenset[int]:
    """The bars that a bowing seems to be marked in.

    Those with a slur, a mark or a retake; a bare one alone between two such, or before the first, is taken to be meant
    so, and a pick-up beside one.
    """
    signed = {tune.bar_of[note_id] for note_id in (*bowing.joins, *bowing.marks, *bowing.retakes)}
    signed |= {tune.bar_of[tune.sequence[tune.places[note_id] - 1].id] for note_id in bowing.joins}
    full = [index for index, bar in enumerate(tune.bars) if not bar.is_pickup]
    beside = zip([None, *full], full, full[1:], strict=False)
    alone = {bar for before, bar, after in beside if after in signed and (before is None or before in signed)}
    pickups = {index for index, bar in enumerate(tune.bars) if bar.is_pickup and index + 1 in signed | alone}
    return frozenset(signed | alone | pickups)


def carry_on(
    tune: Tune,
    bowing: Bowing,
    marked: Collection[int],
    style: Style | None,
    *,
    joined_from: float = LIKELY,
    settings: PlannerSettings = SETTINGS,
    go_on: Callable[[], None] = lambda: None,
) -> Proposal:
    """Propose the bars that are not marked.

    Args:
        tune: The tune.
        bowing: As far as it is marked, with its accent plan; bow marks and retakes elsewhere are kept as well.
        marked: Indexes in ``Tune.bars`` of the bars that are as the player wants them.
        style: What was learned elsewhere; None to go by the marked bars alone.
        joined_from: Probability from which on a note is rather joined; ``SURE`` proposes only what is sure.
        settings: Of the planner.
        go_on: As for ``core.planner.plan_bowing``.
    Raises:
        RefusedEditError: too little is marked, or everything.
        RefusedPlanError: what is fixed leaves no bowing.
    """
    given = frozenset(marked)
    _refuse(tune, given, style)
    kept = _bare_elsewhere(tune, bowing, given)
    odds = log_odds(style, tune, kept, given) if style is not None else log_odds_within(tune, kept, given)
    return decode(tune, bowing, given, odds, joined_from=joined_from, settings=settings, go_on=go_on)


def decode(
    tune: Tune,
    bowing: Bowing,
    marked: frozenset[int],
    odds: Mapping[str, float],
    *,
    joined_from: float = LIKELY,
    settings: PlannerSettings = SETTINGS,
    go_on: Callable[[], None] = lambda: None,
) -> Proposal:
    """Make of log-odds for each note the likeliest bowing under the rules of the planner; the rest as in ``carry_on``.

    Raises:
        RefusedPlanError: what is fixed leaves no bowing.
    """
    free = _ids_elsewhere(tune, marked)
    line = log(joined_from / (1 - joined_from))
    leaning = {note_id: said - line for note_id, said in odds.items()}
    kept = _bare_elsewhere(tune, bowing, marked)
    plan = work_out_plan(tune, kept, settings, style=leaning, free=free, go_on=go_on)
    chances = {note_id: 1 / (1 + exp(-said)) for note_id, said in odds.items() if note_id in free}
    return Proposal(
        plan, marked, immutabledict(chances), immutabledict(_by_bar(tune, plan.bowing, chances)),
        contradictions(tune, bowing, marked), joined_from,
    )  # fmt: skip


def take_bars(tune: Tune, bowing: Bowing, proposal: Proposal, bars: Collection[int]) -> Bowing:
    """Take some bars of a proposal into a bowing: slurs, marks and retakes of these bars, nothing else."""
    ids = {note.id for index in bars if index not in proposal.marked for note in tune.bars[index].notes}
    proposed = proposal.bowing
    return replace(
        bowing,
        joins=_mixed(bowing.joins, proposed.joins, ids),
        marks=_mixed(bowing.marks, proposed.marks, ids),
        retakes=(bowing.retakes - ids) | (proposed.retakes & ids),
    )


def contradictions(tune: Tune, bowing: Bowing, marked: Collection[int]) -> tuple[tuple[int, ...], ...]:
    """Groups of equal bars among the marked ones, in written order, that are not slurred alike inside the bar."""
    groups: dict[int, list[int]] = defaultdict(list)
    classes = bar_classes(tune)
    for index in sorted(marked):
        if is_material(tune.bars[index]):
            groups[classes[index]].append(index)
    return tuple(
        tuple(group)
        for group in groups.values()
        if len({tuple(note.id in bowing.joins for note in tune.bars[index].notes[1:]) for index in group}) > 1
    )


def _ids_elsewhere(tune: Tune, marked: frozenset[int]) -> set[str]:
    return {note.id for index, bar in enumerate(tune.bars) if index not in marked for note in bar.notes}


def _bare_elsewhere(tune: Tune, bowing: Bowing, marked: frozenset[int]) -> Bowing:
    """The bowing without slurs outside the marked bars."""
    free = _ids_elsewhere(tune, marked)
    return replace(
        bowing, joins=immutabledict({note_id: how for note_id, how in bowing.joins.items() if note_id not in free})
    )


def _mixed(own: Mapping[str, V], other: Mapping[str, V], ids: Collection[str]) -> immutabledict[str, V]:
    """The other's entries under these ids, the own ones elsewhere."""
    entries = {key: value for key, value in own.items() if key not in ids}
    return immutabledict(entries | {key: value for key, value in other.items() if key in ids})


def _refuse(tune: Tune, marked: frozenset[int], style: Style | None) -> None:
    if not marked and style is None:
        raise RefusedEditError(tr("Nothing is slurred or marked yet: slur some bars first, or choose a style."))
    full = sum(not tune.bars[index].is_pickup for index in marked)
    if 0 < full < FEWEST_BARS:
        raise RefusedEditError(
            tr("One marked bar is too little to tell a hand by: mark two or more, or let the style propose the tune.")
        )
    if all(index in marked for index, bar in enumerate(tune.bars) if bar.notes):
        raise RefusedEditError(tr("Every bar is marked already: there is nothing to carry on."))


def _by_bar(tune: Tune, proposed: Bowing, chances: Mapping[str, float]) -> dict[int, float]:
    by_bar: dict[int, list[float]] = defaultdict(list)
    for note_id, joined in chances.items():
        by_bar[tune.bar_of[note_id]].append(joined if note_id in proposed.joins else 1 - joined)
    return {index: prod(of_bar) for index, of_bar in by_bar.items()}
