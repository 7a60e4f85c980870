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
from core.translation import listed, sentence
from core.tune import Tune

OWN_ACCENTS = "As this bowing has them"
ACCENTS = {
    AccentPlan(PlanKind.ON_BEAT): "On the beat",
    AccentPlan(PlanKind.BACKBEAT): "On the backbeat",
    AccentPlan(PlanKind.BY_PHRASE): "As each phrase does better",
}
FLOWS = {Flow.FEWEST_SLURS: "fewest slurs", Flow.SOME_SLURS: "some slurs", Flow.SMOOTH: "smooth"}
SPANS = {Span.ALL: "All bars", Span.SELECTED: "The selected bars", Span.ONWARD: "From the marked note on"}
LENGTHS = {
    Fraction(1, 4): "A quarter of a bar", Fraction(1, 2): "Half a bar", Fraction(3, 4): "Three quarters of a bar",
    Fraction(1): "A whole bar",
}  # fmt: skip
_BAR = re.compile(r"\bbars? (\d+)", re.IGNORECASE)


def plan_sentence(plan: Plan, best: Plan) -> str:
    """The three numbers of a plan, and whether it is the best; what is beside the best is not measured against it.

    Accents and breaks are counted as played, every repeat for itself; slurs as written.
    """
    last = distance(plan) if plan is best else "beside the best"
    return sentence(f"{met(plan)}; {_slurs_and_retakes(plan)}; {last}")


def plan_row(plan: Plan, best: Plan) -> str:
    """One line on a plan in the list of plans: how it compares with the best."""
    if plan is best:
        return f"{'Best' if plan.proven else 'Best found'}: {_slurs_and_retakes(plan)}"
    return difference(best, plan)


def met(plan: Plan) -> str:
    """What of a plan is missed and what is broken."""
    missed, broken, _ = plan.score
    bars = len(plan.problem.tune.bars)
    if not missed and all(accents.kind is PlanKind.NONE for accents in plan.bowing.plans(bars)):
        driven = "no accents asked for"
    elif not missed:
        driven = "all accents driven"
    else:
        driven = f"{_count(missed, 'accent')} not driven"
    return f"{driven}, {_count(broken, 'break') if broken else 'nothing broken'}"


def distance(plan: Plan) -> str:
    """How far a plan may be from the best."""
    score, bound = plan.score, plan.bound
    if plan.proven:
        return "proven best"
    if bound.missed < score.missed:
        least = f"the best may miss {bound.missed or 'none'}"
    elif bound.broken < score.broken:
        least = f"the best may break {bound.broken or 'none'}"
    else:
        least = f"at most {100 * (score.cost - bound.cost) / max(bound.cost, 1):.0f} % dearer than the best can be"
    return f"best found, not proven: {least}"


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
    begin = ACCENTS.get(accents, "Accents of our own" if accents.places else "No accents")
    return f"{begin}, {FLOWS[choices.flow]}"


def accents_text(plan: AccentPlan) -> str:
    """An accent plan as it stands in a list."""
    if plan.kind is PlanKind.NONE:
        return "None"
    return ACCENTS.get(plan, f"At {plan}")


def bar_named(tune: Tune, text: str) -> str:
    """Id of the first note of the first bar that a sentence names; "" where it names none."""
    found = _BAR.search(text)
    if found is None:
        return ""
    number = int(found[1])
    return next((bar.notes[0].id for bar in tune.bars if bar.number == number and bar.notes and not bar.is_pickup), "")


def added(names: Sequence[str]) -> str:
    """That bowings were added."""
    return f"Added: {listed([f'“{name}”' for name in names])}."


def changed_bars(tune: Tune, indexes: Collection[int]) -> str:
    """How much a preview changes."""
    if not indexes:
        return "Nothing changes: the bowing is so already."
    if len(indexes) == len(tune.bars):
        return "Every bar changes."
    if len(indexes) > 8:
        return f"{len(indexes)} of {len(tune.bars)} bars change."
    where = words.bars(tune, indexes)
    return sentence(f"{where} {'changes' if len(indexes) == 1 else 'change'}")


def _slurs_and_retakes(plan: Plan) -> str:
    retakes = len(plan.bowing.retakes)
    text = _count(count_slurs(plan.problem.tune, plan.bowing), "slur")
    return f"{text}, {_count(retakes, 'retake')}" if retakes else text


def _count(count: int, word: str) -> str:
    return f"no {word}s" if not count else f"1 {word}" if count == 1 else f"{count} {word}s"
