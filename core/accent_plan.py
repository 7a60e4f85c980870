"""Which places of a bar a bowing is meant to drive: the accent plans, as tables by metre.

Places are quarter notes from the beginning of a full bar. How a bowing meets a plan is told by ``core.accents``.
"""

from __future__ import annotations

import re
from enum import Enum
from fractions import Fraction

from core.translation import tr, translatable
from core.tune import Meter
from core.values import dataclass


class PlanKind(Enum):
    """The plans that can be named."""

    ON_BEAT = "on-beat"
    BACKBEAT = "backbeat"
    BY_PHRASE = "by-phrase"
    NONE = "none"
    PLACES = "places"


MAX_PLACES = 64  # of a plan
_OFFSET = re.compile(r"[0-9]{1,9}(?:/[1-9][0-9]{0,8}|\.[0-9]{1,6})?")  # in full: "1e9999999" would be counted out


@dataclass(frozen=True, slots=True)
class AccentPlan:
    """An accent plan.

    Attributes:
        kind: Which plan; ``BY_PHRASE`` takes, phrase by phrase, the one of on-beat and backbeat that is met better.
        places: For ``PLACES`` only: accented offsets in quarter notes from the beginning of a full bar, ascending.
    """

    kind: PlanKind = PlanKind.ON_BEAT
    places: tuple[Fraction, ...] = ()

    def __str__(self) -> str:
        return ",".join(map(str, self.places)) if self.kind is PlanKind.PLACES else self.kind.value


PLAN_NAMES = translatable({
    "on-beat": "on the beat", "backbeat": "backbeat", "by-phrase": "by phrase", "none": "none",
}, "accent plan")  # fmt: skip


def plan_name(plan: AccentPlan | str) -> str:
    """What a plan, or one as it stands in files, is called in the language of the reader."""
    name = str(plan)
    return tr(PLAN_NAMES[name], "accent plan") if name in PLAN_NAMES else name


def parse_plan(text: str) -> AccentPlan:
    """Read a plan from its name or its places.

    Args:
        text: ``on-beat``, ``backbeat``, ``by-phrase``, ``none``, or offsets such as ``0,3/2``.
    Raises:
        ValueError: with one sentence that says what was expected.

    >>> str(parse_plan("3/2, 0"))
    '0,3/2'
    """
    name = text.strip().lower()
    for kind in PlanKind:
        if kind is not PlanKind.PLACES and name == kind.value:
            return AccentPlan(kind)
    offsets = [part.strip() for part in name.split(",")]
    places = tuple(sorted(set(map(Fraction, offsets)))) if all(map(_OFFSET.fullmatch, offsets)) else ()
    if not 0 < len(places) <= MAX_PLACES:
        raise ValueError(
            tr(
                "“{text}” is no accent plan: expected on-beat, backbeat, by-phrase, none, or places in quarter "
                "notes from the start of the bar such as 0,2",
                text=text,
            )
        )
    return AccentPlan(PlanKind.PLACES, places)


def _beats(*eighths: int) -> tuple[Fraction, ...]:
    return tuple(Fraction(eighth, 2) for eighth in eighths)


# Offsets counted in eighth notes. On-beat: L. Mozart, Violinschule (1756), XII §9 (4/4 quarters 1 and 3; 6/8 notes 1
# and 4; 12/8 notes 1, 4, 7, 10; in every bar the first). Backbeat: common practice, no source.
ON_BEAT = {
    "4/4": _beats(0, 4), "2/2": _beats(0, 4), "2/4": _beats(0, 2), "3/4": _beats(0), "3/8": _beats(0),
    "3/2": _beats(0), "6/4": _beats(0, 6), "6/8": _beats(0, 3), "9/8": _beats(0, 3, 6), "12/8": _beats(0, 3, 6, 9),
}  # fmt: skip
BACKBEAT = {
    "4/4": _beats(2, 6), "2/2": _beats(2, 6), "2/4": _beats(1, 3), "3/4": _beats(2, 4), "3/8": _beats(1, 2),
    "3/2": _beats(4, 8), "6/4": _beats(6), "6/8": _beats(3), "9/8": _beats(3, 6), "12/8": _beats(3, 9),
}  # fmt: skip


# Where each dance is accented in the metres that it is written in, offsets counted in eighth notes. Reel, jigs, slide,
# polka and waltz: common practice, no source; march and barndance as L. Mozart XII §9 has their metres; strathspey:
# quarters 1 (most) and 3, dance teachers' descriptions, second-hand; polska: quarters 1 and 3, from memory.
DANCE_PLACES = {
    "reel": {"4/4": _beats(0, 4), "2/2": _beats(0, 4), "2/4": _beats(0, 2)},
    "hornpipe": {"4/4": _beats(0, 4), "2/2": _beats(0, 4), "2/4": _beats(0, 2)},
    "jig": {"6/8": _beats(0, 3), "9/8": _beats(0, 3, 6), "12/8": _beats(0, 3, 6, 9)},
    "slide": {"6/8": _beats(0, 3), "12/8": _beats(0, 3, 6, 9)},
    "polka": {"2/4": _beats(0, 2)},
    "strathspey": {"4/4": _beats(0, 4), "2/2": _beats(0, 4)},
    "waltz": {"3/4": _beats(0), "3/8": _beats(0)},
    "march": {"2/4": _beats(0, 2), "6/8": _beats(0, 3), "4/4": _beats(0, 4)},
    "barndance": {"4/4": _beats(0, 4)},
    "polska": {"3/4": _beats(0, 4)},
}


def plan_of_dance(dance: str, meter: Meter) -> AccentPlan:
    """The plan that a new bowing begins with.

    Args:
        dance: The dance as the tune's source names it, perhaps among other words ("Slow waltz").
        meter: Metre of the first bar.
    Returns:
        On-beat, unless ``DANCE_PLACES`` has other places for the dance in this metre: then those.

    >>> str(plan_of_dance("Swedish polska", Meter((3,), 4)))
    '0,2'
    """
    for word in re.findall(r"[a-z]+", dance.lower()):
        places = DANCE_PLACES.get(word, {}).get(str(meter))
        if places is not None and places != accented_places(AccentPlan(), meter):
            return AccentPlan(PlanKind.PLACES, places)
    return AccentPlan()


def accented_places(plan: AccentPlan, meter: Meter) -> tuple[Fraction, ...]:
    """Places of a full bar that a plan accents.

    Args:
        plan: Any plan but ``BY_PHRASE``, which has no places of its own.
        meter: Metre of the bar.
    Returns:
        Ascending offsets in quarter notes from the beginning of a full bar, none past its end.
    Raises:
        ValueError: the plan is ``BY_PHRASE``.
    """
    length = meter.bar_length
    match plan.kind:
        case PlanKind.BY_PHRASE:
            raise ValueError("a plan by phrase has no places of its own; resolve it phrase by phrase first")
        case PlanKind.NONE:
            return ()
        case PlanKind.PLACES:
            return tuple(place for place in plan.places if length is None or place < length)
    if length is None:
        return ()
    table = ON_BEAT if plan.kind is PlanKind.ON_BEAT else BACKBEAT
    if str(meter) in table:
        return table[str(meter)]
    starts = _group_starts(meter)
    return starts if plan.kind is PlanKind.ON_BEAT else starts[1::2]


def _group_starts(meter: Meter) -> tuple[Fraction, ...]:
    """Beginnings of the groups in a metre that no table lists: as written (2+3+2), by threes, or by twos."""
    groups = meter.groups
    if len(groups) == 1:
        size = 3 if meter.is_compound else 2
        groups = (size,) * (meter.count // size) + ((meter.count % size,) if meter.count % size else ())
    starts, place = [], 0
    for group in groups:
        starts.append(Fraction(4 * place, meter.unit))
        place += group
    return tuple(starts)
