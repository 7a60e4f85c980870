"""Plans in plain words: what a plan is like, how far from the best it may be, what to call it. No Qt."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from fractions import Fraction

from app.plan_choices import Choices, Span
from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing
from core.checks import words
from core.planner import Flow, Plan, difference
from core.translation import listed, number, plural, sentence, tr, translatable
from core.tune import Tune

OWN_ACCENTS = translatable("As this bowing has them")
ACCENTS = translatable({
    AccentPlan(PlanKind.ON_BEAT): "On the beat",
    AccentPlan(PlanKind.BACKBEAT): "On the backbeat",
    AccentPlan(PlanKind.BY_PHRASE): "As each phrase does better",
})  # fmt: skip
OTHER_ACCENTS = translatable({True: "Accents of our own", False: "No accents"})
FLOWS = translatable({Flow.FEWEST_SLURS: "fewest slurs", Flow.SOME_SLURS: "some slurs", Flow.SMOOTH: "smooth"})
SPANS = translatable({Span.ALL: "All bars", Span.SELECTED: "The selected bars", Span.ONWARD: "From the marked note on"})
LENGTHS = translatable({
    Fraction(1, 4): "A quarter of a bar", Fraction(1, 2): "Half a bar", Fraction(3, 4): "Three quarters of a bar",
    Fraction(1): "A whole bar",
})  # fmt: skip


def plan_sentence(plan: Plan, best: Plan) -> str:
    """The three numbers of a plan, and whether it is the best; what is beside the best is not measured against it.

    Accents and breaks are counted as played, every repeat for itself; slurs as written.
    """
    last = distance(plan) if plan is best else tr("beside the best")
    return sentence(tr("; ", "between clauses").join((met(plan), _slurs_and_retakes(plan), last)))


def plan_row(plan: Plan, best: Plan) -> str:
    """One line on a plan in the list of plans: how it compares with the best."""
    if plan is best:
        return tr("Best: {slurs}" if plan.proven else "Best found: {slurs}", slurs=_slurs_and_retakes(plan))
    return difference(best, plan)


def met(plan: Plan) -> str:
    """What of a plan is missed and what is broken."""
    missed, broken, _ = plan.score
    bars = len(plan.problem.tune.bars)
    if not missed and all(accents.kind is PlanKind.NONE for accents in plan.bowing.plans(bars)):
        driven = tr("no accents asked for")
    elif not missed:
        driven = tr("all accents driven")
    else:
        driven = plural("1 accent not driven", "{n} accents not driven", missed)
    breaks = plural("1 break", "{n} breaks", broken) if broken else tr("nothing broken")
    return tr(", ", "between parts of a sentence").join((driven, breaks))


def distance(plan: Plan) -> str:
    """How far a plan may be from the best."""
    score, bound = plan.score, plan.bound
    if plan.proven:
        return tr("proven best")
    if bound.missed < score.missed:
        least = tr("the best may miss {count}", count=bound.missed) if bound.missed else tr("the best may miss none")
    elif bound.broken < score.broken:
        least = tr("the best may break {count}", count=bound.broken) if bound.broken else tr("the best may break none")
    else:
        dearer = 100 * (score.cost - bound.cost) / max(bound.cost, 1)
        least = tr("at most {percent} % dearer than the best can be", percent=number(dearer, ".0f"))
    return tr("best found, not proven: {how_far}", how_far=least)


def count_slurs(tune: Tune, bowing: Bowing) -> int:
    """Written strokes of two or more notes, ties counted once."""
    count, runs = 0, False
    for note in tune.sequence:
        if note.held:
            continue
        joined = note.id in bowing.joins
        count += joined and not runs
        runs = joined
    return count


def plan_name(choices: Choices, bowing: Bowing) -> str:
    """What a new bowing is called that is planned so; ``bowing`` has the accents."""
    accents = choices.accents or bowing.accents
    begin = ACCENTS.get(accents, OTHER_ACCENTS[bool(accents.places)])
    return tr("{accents}, {flow}", "name of a bowing", accents=tr(begin), flow=tr(FLOWS[choices.flow]))


def accents_text(plan: AccentPlan) -> str:
    """An accent plan as it stands in a list."""
    if plan.kind is PlanKind.NONE:
        return tr("None", "accents")
    return tr(ACCENTS[plan]) if plan in ACCENTS else tr("At {places}", "accents", places=plan)


def bar_named(tune: Tune, text: str) -> str:
    """Id of the first note of the first bar that a sentence names; "" where it names none."""
    names = (tr("bar {number}", number="#"), plural("bar {numbers}", "bars {numbers}", 2, numbers="#"))
    pattern = "|".join(re.escape(name).replace(re.escape("#"), r"(\d+)") for name in dict.fromkeys(names))
    found = re.search(rf"\b(?:{pattern})", text, re.IGNORECASE)
    if found is None:
        return ""
    named = int(next(filter(None, found.groups())))
    return next((bar.notes[0].id for bar in tune.bars if bar.number == named and bar.notes and not bar.is_pickup), "")


def added(names: Sequence[str]) -> str:
    """That bowings were added."""
    return tr("Added: {names}.", names=listed([tr("“{name}”", name=name) for name in names]))


def changed_bars(tune: Tune, indexes: Collection[int]) -> str:
    """How much a preview changes."""
    if not indexes:
        return tr("Nothing changes: the bowing is so already.")
    if len(indexes) == len(tune.bars):
        return tr("Every bar changes.")
    if len(indexes) > 8:
        return plural("{count} of 1 bar changes.", "{count} of {n} bars change.", len(tune.bars), count=len(indexes))
    where = words.bars(tune, indexes)
    return sentence(plural("{bars} changes", "{bars} change", len(indexes), "n: bars", bars=where))


def _slurs_and_retakes(plan: Plan) -> str:
    retakes = len(plan.bowing.retakes)
    slurs = count_slurs(plan.problem.tune, plan.bowing)
    text = plural("1 slur", "{n} slurs", slurs) if slurs else tr("no slurs")
    if not retakes:
        return text
    return tr(", ", "between parts of a sentence").join((text, plural("1 retake", "{n} retakes", retakes)))
