"""Which accent plan suits a tune: what each costs in slurs, and what it leaves undone."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from core.accent_plan import AccentPlan, PlanKind, plan_name
from core.bowing import Bowing, set_plan
from core.planner.counts import retake_count, slur_count
from core.planner.phrase_plans import work_out_plan
from core.planner.problem import STANDARD, Problem
from core.planner.score import Score
from core.planner.settings import PlannerSettings
from core.translation import listed, plural, tr, translatable
from core.tune import Tune
from core.values import dataclass

COMPARED = (PlanKind.ON_BEAT, PlanKind.BACKBEAT, PlanKind.BY_PHRASE)
LIES_BEST = translatable({
    PlanKind.ON_BEAT: "This tune lies best on the beat: {outcome}, with {slurs}.",
    PlanKind.BACKBEAT: "This tune lies best on the backbeat: {outcome}, with {slurs}.",
    PlanKind.BY_PHRASE: "This tune lies best by phrase: {outcome}, with {slurs}.",
})  # fmt: skip
TAKES_FEWER = translatable({
    PlanKind.ON_BEAT: "On the beat it takes fewer slurs, but {why}.",
    PlanKind.BACKBEAT: "On the backbeat it takes fewer slurs, but {why}.",
    PlanKind.BY_PHRASE: "By phrase it takes fewer slurs, but {why}.",
})  # fmt: skip


FAR_FEWER = 0.75  # of the accents of another plan; a difference that rests and long notes make is less


@dataclass(frozen=True, slots=True)
class Suited:
    """What a plan asks of a tune, once it is bowed as well as can be.

    Attributes:
        plan: The plan.
        score: The three numbers.
        proven: They are proven best.
        slurs: Written strokes of two or more notes, ties counted once.
        equal_pitches: Notes slurred to an equal note before them that nothing parts.
        retakes: In one playing, the way back to the start included.
        changes: How often a phrase takes another plan than the one before.
        accents: That the plan asks for in one playing, those on rests and held notes left out.
    """

    plan: AccentPlan
    score: Score
    proven: bool
    slurs: int
    equal_pitches: int
    retakes: int
    changes: int
    accents: int


def suitability(
    tune: Tune, bowing: Bowing, settings: PlannerSettings = STANDARD, go_on: Callable[[], None] = lambda: None
) -> tuple[Suited, ...]:
    """Plan a tune from bare under each plan and tell what comes out, in the order of ``COMPARED``.

    Args:
        tune: The tune.
        bowing: Its signs stay; its slurs, marks and plans do not count.
        settings: Limits, costs and how much is slurred.
        go_on: Called now and then; an error that it raises ends the planning and is passed on.
    Raises:
        RefusedPlanError: the tune has no note.
    """
    found = []
    for kind in COMPARED:
        plan = work_out_plan(tune, set_plan(tune, bowing, AccentPlan(kind)), settings, keep=False, go_on=go_on)
        equal = sum(
            before is not None and before.pitches == tune.note(note_id).pitches
            for note_id in plan.bowing.joins
            if not plan.bowing.signs_on(note_id).parts
            for before in [tune.before(note_id)]
        )
        found.append(
            Suited(
                plan=AccentPlan(kind),
                score=plan.score,
                proven=plan.proven,
                slurs=slur_count(tune, plan.bowing),
                equal_pitches=equal,
                retakes=retake_count(tune, plan.bowing),
                changes=plan.problem.plan_changes,
                accents=_accents(plan.problem),
            )
        )
    return tuple(found)


def _accents(problem: Problem) -> int:
    return sum(
        bar.visits * sum(note.accented and not note.held for note in problem.notes_of(number))
        for number, bar in enumerate(problem.bars)
    )


def sentence(found: Sequence[Suited]) -> str:
    """Which plan lies best, and what it takes; whether it asks for less; why one with fewer slurs does not."""
    best = min(found, key=lambda one: one.score)
    missed, broken = best.score.missed, best.score.broken
    left = []
    if missed:
        left.append(plural("1 accent missed", "{n} accents missed", missed))
    if broken:
        left.append(plural("1 break", "{n} breaks", broken))
    outcome = listed(left) or tr("every accent driven and everything that comes again bowed alike")
    takes = plural("1 slur", "{n} slurs", best.slurs) if best.slurs else tr("no slur at all")
    lies = tr(LIES_BEST[best.plan.kind], outcome=outcome, slurs=takes)
    fewer = next((one for one in found if one.score[:2] == best.score[:2] and one.slurs < best.slurs), None)
    said = [lies, _asks_for_less(best, found), "" if fewer is None else _why_not(best, fewer)]
    return " ".join(filter(None, said))


def _asks_for_less(best: Suited, found: Sequence[Suited]) -> str:
    """That a plan lies well because it asks for far fewer accents, as the backbeat of 6/8 does; nothing if not."""
    most = max(found, key=lambda one: one.accents)
    if best.accents > FAR_FEWER * most.accents:
        return ""
    return plural(
        "It asks for 1 accent in one playing, “{plan}” for {more}.",
        "It asks for {n} accents in one playing, “{plan}” for {more}.",
        best.accents,
        plan=plan_name(most.plan),
        more=most.accents,
    )


def _why_not(best: Suited, fewer: Suited) -> str:
    """Why a plan is not the best although nothing tells it from the best but that it takes fewer slurs."""
    if fewer.equal_pitches > best.equal_pitches:
        why = plural("one joins two equal notes", "{n} of them join equal notes", fewer.equal_pitches)
    else:
        why = tr("they are harder to play")
    return tr(TAKES_FEWER[fewer.plan.kind], why=why)
