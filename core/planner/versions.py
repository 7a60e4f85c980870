"""The versions of a bowing that a lesson begins with."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing, Grace, Join, separate_bows, set_plan, set_signs
from core.ornamenting import upper_neighbour
from core.planner.phrase_plans import work_out_plan
from core.planner.problem import STANDARD
from core.planner.settings import Flow, PlannerSettings
from core.translation import tr
from core.tune import Tune
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Version:
    """One version.

    Attributes:
        name: Of the bowing, in English.
        plan: The accents that it drives; None for those that the bowing has.
        flow: How much is slurred; None for nothing.
        cuts: Equal notes that are slurred over a bar line are parted by a cut.
    """

    name: str
    plan: PlanKind | None
    flow: Flow | None
    cuts: bool = False


VERSIONS = (
    Version("Separate bows", None, None),
    Version("On the beat, fewest slurs", PlanKind.ON_BEAT, Flow.FEWEST_SLURS),
    Version("Backbeat, fewest slurs", PlanKind.BACKBEAT, Flow.FEWEST_SLURS, cuts=True),
    Version("By phrase, smooth", PlanKind.BY_PHRASE, Flow.SMOOTH),
)


def starting_versions(
    tune: Tune, bowing: Bowing, settings: PlannerSettings = STANDARD, go_on: Callable[[], None] = lambda: None
) -> Iterator[Bowing]:
    """Plan the versions that a lesson begins with, one after the other.

    Args:
        tune: The tune.
        bowing: Its signs (ornaments, fingering ...) are taken over, its slurs and marks are not.
        settings: Limits and costs; how much is slurred is the version's own.
        go_on: Called now and then; an error that it raises ends the planning and is passed on.
    Yields:
        Ordinary bowings, named as in ``VERSIONS``.
    Raises:
        RefusedPlanError: the tune has no note.
    """
    for version in VERSIONS:
        planned = separate_bows(bowing, tr(version.name))
        if version.plan is not None:
            planned = set_plan(tune, planned, AccentPlan(version.plan))
        if version.flow is not None:
            own = replace(settings, flow=version.flow)
            planned = work_out_plan(tune, planned, own, keep=False, go_on=go_on).bowing
        yield with_cuts(tune, planned) if version.cuts else planned


def with_cuts(tune: Tune, bowing: Bowing) -> Bowing:
    """Part equal notes that are slurred over a bar line by a cut on the second (common practice, no source)."""
    for bar in tune.bars:
        first = bar.notes[0] if bar.notes else None
        if first is None or bowing.joins.get(first.id) is not Join.SLUR:
            continue
        before, signs = tune.before(first.id), bowing.signs_on(first.id)
        if before is not None and before.pitches == first.pitches and not signs.parts:
            cut = Grace((upper_neighbour(tune, first.id),), slashed=True)
            bowing = set_signs(bowing, first.id, replace(signs, graces=(*signs.graces, cut)))
    return bowing
