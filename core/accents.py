"""How a bowing meets its accent plan.

Each accented place of each visit is *driven* (struck on a down-bow), *up* (struck on an up-bow), *buried* (inside a
slur, without an attack) or *unstruck* (a rest or a held note stands there, or the note before sounds on). Places are
those of the plan and the notes that carry a written accent in this bowing.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import Counter
from collections.abc import Iterator
from enum import Enum
from fractions import Fraction
from functools import cached_property
from itertools import chain, pairwise
from typing import NamedTuple, TypeAlias

from core.accent_plan import AccentPlan, PlanKind, accented_places
from core.bowing import Articulation, Bow, Bowing, set_plan
from core.once import lately, once
from core.order import sections
from core.strokes import BarStrokes, Strokes, work_out
from core.ticks import BarTicks, ticks
from core.tune import Tune
from core.values import dataclass

FULL_BARS_IN_A_PHRASE = 4
WRITTEN_ACCENTS = {Articulation.ACCENT, Articulation.STRONG_ACCENT}
SPOTS_KEPT = 256  # of a tune, each for another plan: one for each phrase of a long bowing
PHRASE_PLANS = (PlanKind.ON_BEAT, PlanKind.BACKBEAT)  # the first wins where both drive as many


class Met(Enum):
    """How an accented place is met."""

    DRIVEN = "driven"
    UP = "up"
    BURIED = "buried"
    UNSTRUCK = "unstruck"

    __hash__ = object.__hash__  # members are singletons; Enum's own hash is slow, and every place is counted


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


class Spot(NamedTuple):
    """An accented place of a written bar.

    Attributes:
        place: Quarter notes from the beginning of a full bar.
        note_index: In the bar's notes, of the note or rest that begins there or sounds there.
        sounding: Notes of the bar before this one, rests left out.
        silence: Why it may be unstruck; ``HELD`` only where the note is not struck on that pass; None for no reason.
        written: The note carries an accent sign, and the plan names no accent there.
    """

    place: Fraction
    note_index: int
    sounding: int
    silence: Silence | None
    written: bool

    def met_by(self, strokes: BarStrokes) -> Met:
        """How the place is met where the bar is bowed so."""
        if self.silence is None or self.silence is Silence.HELD:
            if strokes.struck[self.sounding]:
                return Met.DRIVEN if strokes.bows[self.sounding] is Bow.DOWN else Met.UP
            if self.silence is None:
                return Met.BURIED
        return Met.UNSTRUCK


Spots: TypeAlias = tuple[tuple[Spot, ...], ...]
"""The accented places of each written bar, by place."""


@dataclass(frozen=True)
class Accents:
    """All accented places.

    Attributes:
        strokes: The directions that meet them.
        spots: The places of each written bar, the same on every pass.
        phrases: For a plan by phrase, what each phrase takes, in written order; else empty.
    """

    strokes: Strokes
    spots: Spots
    phrases: tuple[PhrasePlan, ...] = ()

    @cached_property
    def by_bar(self) -> tuple[tuple[tuple[Met, ...], ...], ...]:
        """For each written bar and each time that it is played: how its spots are met."""
        found = []
        for spots, passes in zip(self.spots, self.strokes.by_bar, strict=True):
            all_alike = len(passes) > 1 and passes.count(passes[0]) == len(passes)
            told = passes[:1] if all_alike else passes
            met = tuple([tuple([spot.met_by(strokes) for spot in spots]) for strokes in told])
            found.append(met * len(passes) if all_alike else met)
        return tuple(found)

    @cached_property
    def met(self) -> tuple[Accent, ...]:
        """In playing order, then by place."""
        return tuple(self._met())

    def count(self, met: Met) -> int:
        """How many places are met in this way, every pass for itself."""
        return self._counts[met]

    @cached_property
    def _counts(self) -> Counter[Met]:
        return Counter(chain.from_iterable(chain.from_iterable(self.by_bar)))

    def _met(self) -> Iterator[Accent]:
        bars = self.strokes.tune.bars
        passes = [iter(of_bar) for of_bar in self.by_bar]
        for visit, (bar, pass_number) in enumerate(self.strokes.order):
            for spot, met in zip(self.spots[bar], next(passes[bar]), strict=True):
                silence = spot.silence if met is Met.UNSTRUCK else None
                note_id = bars[bar].notes[spot.note_index].id
                yield Accent(visit, bar, pass_number, spot.place, note_id, met, silence, spot.written)


def weigh(tune: Tune, bowing: Bowing, strokes: Strokes) -> Accents:
    """Tell how each accented place is met.

    Args:
        tune: The tune.
        bowing: Its plan and its written accents say which places are accented.
        strokes: The directions of the same bowing.
    """
    chosen = _phrase_plans(tune, bowing, strokes)
    spots = _spots_of(tune, bowing, chosen)
    return Accents(strokes, _all_spots(spots, _signed(tune, bowing)), chosen)


def _phrase_plans(tune: Tune, bowing: Bowing, strokes: Strokes) -> tuple[PhrasePlan, ...]:
    """For each phrase with bars whose plan is by phrase, what these bars take."""
    plans = (bowing.accents, *bowing.accent_changes.values())
    if all(plan.kind is not PlanKind.BY_PHRASE for plan in plans):
        return ()
    driven = {
        kind: [
            sum(spot.met_by(passes[0]) is Met.DRIVEN for spot in spots) if passes else 0
            for spots, passes in zip(_spots(tune, AccentPlan(kind)), strokes.by_bar, strict=True)
        ]
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
    return tuple(
        tuple(bar.notes[spot.note_index].id for spot in of_bar if spot.silence in (None, Silence.HELD))
        for bar, of_bar in zip(tune.bars, spots, strict=True)
    )


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


@lately(SPOTS_KEPT)
def _spots(tune: Tune, plan: AccentPlan) -> Spots:
    """The places that a plan accents in each bar."""
    times = ticks(tune)
    places = {meter: accented_places(plan, meter) for meter in {rhythm.meter for rhythm in times.rhythms}}
    by_rhythm = [_planned(rhythm, times.per_quarter, places[rhythm.meter]) for rhythm in times.rhythms]
    return tuple([by_rhythm[kind] for kind in times.kinds])


def _planned(rhythm: BarTicks, per_quarter: int, places: tuple[Fraction, ...]) -> tuple[Spot, ...]:
    """The accented places of bars of a rhythm, of all those that the plan has for their metre."""
    found = []
    for place in places:
        tick, rest = divmod(place.numerator * per_quarter, place.denominator)
        tick -= rhythm.start
        if rhythm.ends and 0 <= tick < rhythm.ends[-1]:
            found.append(_spot(rhythm, place, tick, between_ticks=bool(rest)))
    return tuple(found)


def _spots_of(tune: Tune, bowing: Bowing, chosen: tuple[PhrasePlan, ...]) -> Spots:
    """The places that the plans in force accent, those by phrase as chosen."""
    if not chosen and not bowing.accent_changes:
        return _spots(tune, bowing.accents)
    plans = list(bowing.plans(len(tune.bars)))
    for phrase in chosen:
        for bar in phrase.bars:
            plans[bar] = AccentPlan(phrase.kind)
    return tuple(_spots(tune, plan)[bar] for bar, plan in enumerate(plans))


def _signed(tune: Tune, bowing: Bowing) -> dict[int, list[Spot]]:
    """Places of the notes that carry a written accent, by bar."""
    signed: dict[int, list[Spot]] = {}
    for note_id, signs in bowing.signs.items():
        if WRITTEN_ACCENTS.isdisjoint(signs.articulations) or tune.note(note_id).is_rest:
            continue
        bar = tune.bar_of[note_id]
        note, rhythm = tune.note(note_id), ticks(tune).bars[bar]
        index = tune.bars[bar].notes.index(note)
        tick = rhythm.ends[index] - rhythm.lengths[index]
        spot = _spot(rhythm, tune.bars[bar].start + note.at, tick, written=True)
        signed.setdefault(bar, []).append(spot)
    return signed


def _spot(rhythm: BarTicks, place: Fraction, tick: int, *, between_ticks: bool = False, written: bool = False) -> Spot:
    """What stands at a place.

    Args:
        rhythm: The rhythm of its bar.
        place: Quarter notes from the beginning of a full bar.
        tick: The same from the bar's first note, the last tick that is not behind the place.
        between_ticks: The place lies behind that tick, where no note can begin.
        written: The note carries an accent sign.
    """
    index = bisect_right(rhythm.ends, tick)
    silence: Silence | None
    if rhythm.rests[index]:
        silence = Silence.REST
    elif between_ticks or rhythm.ends[index] - rhythm.lengths[index] < tick:
        silence = Silence.SOUNDING
    else:
        silence = Silence.HELD if rhythm.held[index] else None
    return Spot(place, index, index - sum(rhythm.rests[:index]), silence, written)


def _all_spots(planned: Spots, signed: dict[int, list[Spot]]) -> Spots:
    """Places of the plan with the written accents that the plan does not name, by place."""
    if not signed:
        return planned
    found = list(planned)
    for bar, spots in signed.items():
        places = {spot.place for spot in planned[bar]}
        added = [spot for spot in spots if spot.place not in places]
        found[bar] = tuple(sorted([*planned[bar], *added], key=lambda spot: spot.place))
    return tuple(found)
