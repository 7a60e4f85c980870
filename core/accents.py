"""How a bowing meets its accent plan.

Each accented place of each visit is *driven* (struck on a down-bow), *up* (struck on an up-bow), *buried* (inside a
slur, without an attack) or *unstruck* (a rest or a held note stands there, or the note before sounds on). Places are
those of the plan and the notes that carry a written accent in this bowing.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple, TypeAlias

from core.accent_plan import AccentPlan, PlanKind, accented_places
from core.bowing import Articulation, Bow, Bowing
from core.once import once
from core.order import sections
from core.strokes import Strokes
from core.tune import Bar, Tune

FULL_BARS_IN_A_PHRASE = 4
WRITTEN_ACCENTS = {Articulation.ACCENT, Articulation.STRONG_ACCENT}
PHRASE_PLANS = (PlanKind.ON_BEAT, PlanKind.BACKBEAT)  # the first wins where both drive as many


class Met(Enum):
    """How an accented place is met."""

    DRIVEN = "driven"
    UP = "up"
    BURIED = "buried"
    UNSTRUCK = "unstruck"


class Silence(Enum):
    """Why a place is unstruck."""

    REST = "a rest"
    HELD = "a held note"  # tied on from the note before
    SOUNDING = "a note that sounds on"  # no note begins there


@dataclass(frozen=True, slots=True)
class Accent:
    """One accented place of one visit.

    Attributes:
        visit: Index in the playing order.
        bar: Index in ``tune.bars``.
        pass_number: How often the bar has now been played, counted from 1.
        place: Quarter notes from the beginning of a full bar.
        note_id: The note or rest that begins there or sounds there.
        met: How the place is met.
        silence: Why it is unstruck; None where it is not.
        written: The note carries an accent sign, and the plan names no accent there.
    """

    visit: int
    bar: int
    pass_number: int
    place: Fraction
    note_id: str
    met: Met
    silence: Silence | None = None
    written: bool = False


@dataclass(frozen=True, slots=True)
class PhrasePlan:
    """What a plan by phrase takes for one phrase.

    Attributes:
        bars: Indexes in ``tune.bars``.
        kind: On-beat or backbeat.
    """

    bars: range
    kind: PlanKind


@dataclass(frozen=True, slots=True)
class Accents:
    """All accented places.

    Attributes:
        met: In playing order, then by place.
        phrases: For a plan by phrase, what each phrase takes, in written order; else empty.
    """

    met: tuple[Accent, ...]
    phrases: tuple[PhrasePlan, ...] = ()

    def count(self, met: Met) -> int:
        """How many places are met in this way, every pass for itself."""
        return sum(accent.met is met for accent in self.met)


def weigh(tune: Tune, bowing: Bowing, strokes: Strokes) -> Accents:
    """Tell how each accented place is met.

    Args:
        tune: The tune.
        bowing: Its plan and its written accents say which places are accented.
        strokes: The directions of the same bowing.
    """
    plan = bowing.accents
    signed = _signed(tune, bowing)
    if plan.kind is not PlanKind.BY_PHRASE:
        return Accents(_meet(tune, strokes, _all_spots(_spots(tune, plan), signed)))
    spots = {kind: _spots(tune, AccentPlan(kind)) for kind in PHRASE_PLANS}
    driven = {
        kind: Counter(accent.bar for accent in _meet(tune, strokes, spots[kind]) if _counts_for_phrase(accent))
        for kind in PHRASE_PLANS
    }
    chosen = tuple(
        PhrasePlan(bars, max(PHRASE_PLANS, key=lambda kind: sum(driven[kind][bar] for bar in bars)))
        for bars in phrases(tune)
    )
    mixed = tuple(spots[phrase.kind][bar] for phrase in chosen for bar in phrase.bars)
    return Accents(_meet(tune, strokes, _all_spots(mixed, signed)), chosen)


@once
def phrases(tune: Tune) -> tuple[range, ...]:
    """Cut the written bars into phrases of four full bars within each section.

    Returns:
        Ranges of indexes in ``tune.bars``, in order, without gaps. A pick-up goes with the phrase that it leads into; a
        second ending stands for the same bars as the first and shares their phrase unless it is a phrase of its own.
    """
    cuts = [0]
    count = 0  # full bars so far, since the last section began
    for section in sections(tune):
        if count:  # else there was nothing but a pick-up yet
            cuts.append(section.start)
            count = 0
        ending: tuple[int, ...] = ()
        count_at_ending = 0
        for index in section:
            bar = tune.bars[index]
            if bar.ending and not ending:
                count_at_ending = count
            elif bar.ending != ending:
                count = count_at_ending
            ending = bar.ending
            if count and count % FULL_BARS_IN_A_PHRASE == 0 and not bar.is_pickup:
                cuts.append(index)
            count += not bar.is_pickup
    return tuple(range(first, stop) for first, stop in pairwise([*cuts, len(tune.bars)]))


class _Spot(NamedTuple):
    """An accented place of a written bar, and what the walk needs to know of it."""

    place: Fraction
    note_id: str
    sounding: int  # notes of the bar before this one, rests left out
    silence: Silence | None  # HELD only where the note is not struck on that pass
    written: bool


_Spots: TypeAlias = tuple[tuple[_Spot, ...], ...]


@once
def _spots(tune: Tune, plan: AccentPlan) -> _Spots:
    """The places that a plan accents in each bar."""
    return tuple(
        tuple(
            _spot(bar, place, place - bar.start, written=False)
            for place in accented_places(plan, bar.meter)
            if 0 <= place - bar.start < bar.length
        )
        for bar in tune.bars
    )


def _signed(tune: Tune, bowing: Bowing) -> dict[int, list[_Spot]]:
    """Places of the notes that carry a written accent, by bar."""
    signed: dict[int, list[_Spot]] = {}
    for note_id, signs in bowing.signs.items():
        if not WRITTEN_ACCENTS.isdisjoint(signs.articulations) and not tune.note(note_id).is_rest:
            bar = tune.bar_of[note_id]
            at = tune.note(note_id).at
            signed.setdefault(bar, []).append(_spot(tune.bars[bar], tune.bars[bar].start + at, at, written=True))
    return signed


def _spot(bar: Bar, place: Fraction, at: Fraction, *, written: bool) -> _Spot:
    index = max(index for index, note in enumerate(bar.notes) if note.at <= at)
    note = bar.notes[index]
    silence: Silence | None
    if note.is_rest:
        silence = Silence.REST
    elif note.at < at:
        silence = Silence.SOUNDING
    else:
        silence = Silence.HELD if note.held else None
    return _Spot(place, note.id, sum(not before.is_rest for before in bar.notes[:index]), silence, written)


def _all_spots(planned: _Spots, signed: dict[int, list[_Spot]]) -> _Spots:
    """Places of the plan with the written accents that the plan does not name, by place."""
    if not signed:
        return planned
    found = list(planned)
    for bar, spots in signed.items():
        places = {spot.place for spot in planned[bar]}
        found[bar] = tuple(sorted([*planned[bar], *(spot for spot in spots if spot.place not in places)]))
    return tuple(found)


def _meet(tune: Tune, strokes: Strokes, spots: _Spots) -> tuple[Accent, ...]:
    """How each place of each visit is met."""
    accents = []
    sounding = _sounding(tune)
    first = 0  # index of the visit's first note among those played
    for index, visit in enumerate(strokes.order):
        for spot in spots[visit.bar]:
            met, silence = Met.UNSTRUCK, spot.silence
            if silence is None or silence is Silence.HELD:
                note = strokes.played[first + spot.sounding]
                if note.struck:
                    met, silence = Met.DRIVEN if note.bow is Bow.DOWN else Met.UP, None
                elif silence is None:
                    met = Met.BURIED
            accents.append(
                Accent(index, visit.bar, visit.pass_number, spot.place, spot.note_id, met, silence, spot.written)
            )
        first += sounding[visit.bar]
    return tuple(accents)


@once
def _sounding(tune: Tune) -> tuple[int, ...]:
    """Notes in each bar, rests left out."""
    return tuple(sum(not note.is_rest for note in bar.notes) for bar in tune.bars)


def _counts_for_phrase(accent: Accent) -> bool:
    return accent.met is Met.DRIVEN and accent.pass_number == 1
