"""How a bowing meets its accent plan.

Each accented place of each visit is *driven* (struck on a down-bow), *up* (struck on an up-bow), *buried* (inside a
slur, without an attack) or *unstruck* (a rest or a held note stands there, or the note before sounds on). Places are
those of the plan and the notes that carry a written accent in this bowing.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import Counter
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple, TypeAlias

from core.accent_plan import AccentPlan, PlanKind, accented_places
from core.bowing import Articulation, Bow, Bowing, set_plan
from core.once import once
from core.order import sections
from core.strokes import Strokes, work_out
from core.ticks import BarTicks, ticks
from core.tune import Bar, Meter, Tune

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
        bars: Indexes in ``tune.bars`` of its bars whose plan is by phrase, in order.
        kind: On-beat or backbeat.
    """

    bars: tuple[int, ...]
    kind: PlanKind


@dataclass(frozen=True)
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
    chosen = _phrase_plans(tune, bowing, strokes)
    spots = _spots_of(tune, bowing, chosen)
    return Accents(_meet(tune, strokes, _all_spots(spots, _signed(tune, bowing))), chosen)


def _phrase_plans(tune: Tune, bowing: Bowing, strokes: Strokes) -> tuple[PhrasePlan, ...]:
    """For each phrase with bars whose plan is by phrase, what these bars take."""
    plans = (bowing.accents, *bowing.accent_changes.values())
    if all(plan.kind is not PlanKind.BY_PHRASE for plan in plans):
        return ()
    driven = {
        kind: Counter(
            accent.bar for accent in _meet(tune, strokes, _spots(tune, AccentPlan(kind))) if _counts_for_phrase(accent)
        )
        for kind in PHRASE_PLANS
    }
    in_force = bowing.plans(len(tune.bars))
    by_phrase = (tuple(bar for bar in bars if in_force[bar].kind is PlanKind.BY_PHRASE) for bars in phrases(tune))
    return tuple(
        PhrasePlan(bars, max(PHRASE_PLANS, key=lambda kind: sum(driven[kind][bar] for bar in bars)))
        for bars in by_phrase
        if bars
    )


def accented_notes(tune: Tune, bowing: Bowing) -> tuple[tuple[str, ...], ...]:
    """The notes that begin at an accented place, held notes among them, by bar and in written order.

    Args:
        tune: The tune.
        bowing: Its plans and its written accents say which places are accented.
    Raises:
        ValueError: a plan in force is ``BY_PHRASE``, which has no places before directions are known.
    """
    spots = _all_spots(_spots_of(tune, bowing, ()), _signed(tune, bowing))
    return tuple(tuple(spot.note_id for spot in bar if spot.silence in (None, Silence.HELD)) for bar in spots)


def toggle_place(tune: Tune, bowing: Bowing, bar: int, place: Fraction) -> Bowing:
    """Accent a place of one bar, or stop doing so; the bar has places of its own then.

    Where these are just the places of the bowing's main plan, the bar has that plan again.

    Args:
        tune: The tune.
        bowing: A bowing of it.
        bar: Index in ``tune.bars``.
        place: Quarter notes from the beginning of the full bar.
    """
    meter = tune.bars[bar].meter
    plan = bowing.plan_in(bar)
    if plan.kind is PlanKind.BY_PHRASE:
        chosen = _phrase_plans(tune, bowing, work_out(tune, bowing))
        plan = next(AccentPlan(phrase.kind) for phrase in chosen if bar in phrase.bars)
    places = tuple(sorted({*accented_places(plan, meter)} ^ {place}))
    own = AccentPlan(PlanKind.PLACES, places) if places else AccentPlan(PlanKind.NONE)
    main = bowing.accents
    if main.kind is not PlanKind.BY_PHRASE and accented_places(main, meter) == places:
        own = main
    return set_plan(tune, bowing, own, bar, bar + 1)


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
    times = ticks(tune)
    places = {
        meter: [(place, *divmod(place.numerator * times.per_quarter, place.denominator)) for place in found]
        for meter, found in _places(tune, plan).items()
    }
    return tuple(
        tuple(
            _spot(bar, of_bar, place, tick - of_bar.start, between_ticks=bool(rest))
            for place, tick, rest in places[bar.meter]
            if of_bar.ends and of_bar.start <= tick < of_bar.start + of_bar.ends[-1]
        )
        for bar, of_bar in zip(tune.bars, times.bars, strict=True)
    )


def _spots_of(tune: Tune, bowing: Bowing, chosen: tuple[PhrasePlan, ...]) -> _Spots:
    """The places that the plans in force accent, those by phrase as chosen."""
    if not chosen and not bowing.accent_changes:
        return _spots(tune, bowing.accents)
    plans = list(bowing.plans(len(tune.bars)))
    for phrase in chosen:
        for bar in phrase.bars:
            plans[bar] = AccentPlan(phrase.kind)
    return tuple(_spots(tune, plan)[bar] for bar, plan in enumerate(plans))


def _places(tune: Tune, plan: AccentPlan) -> dict[Meter, tuple[Fraction, ...]]:
    return {meter: accented_places(plan, meter) for meter in {bar.meter for bar in tune.bars}}


def _signed(tune: Tune, bowing: Bowing) -> dict[int, list[_Spot]]:
    """Places of the notes that carry a written accent, by bar."""
    signed: dict[int, list[_Spot]] = {}
    for note_id, signs in bowing.signs.items():
        note = tune.note(note_id)
        if not WRITTEN_ACCENTS.isdisjoint(signs.articulations) and not note.is_rest:
            index = tune.bar_of[note_id]
            bar, times = tune.bars[index], ticks(tune).bars[index]
            number = bar.notes.index(note)
            tick = times.ends[number] - times.lengths[number]
            signed.setdefault(index, []).append(_spot(bar, times, bar.start + note.at, tick, written=True))
    return signed


def _spot(
    bar: Bar, times: BarTicks, place: Fraction, tick: int, *, between_ticks: bool = False, written: bool = False
) -> _Spot:
    """What stands at a place.

    Args:
        bar: The bar.
        times: Its times.
        place: Quarter notes from the beginning of a full bar.
        tick: The same from the bar's first note, the last tick that is not behind the place.
        between_ticks: The place lies behind that tick, where no note can begin.
        written: The note carries an accent sign.
    """
    index = bisect_right(times.ends, tick)
    note = bar.notes[index]
    silence: Silence | None
    if note.is_rest:
        silence = Silence.REST
    elif between_ticks or times.ends[index] - times.lengths[index] < tick:
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
