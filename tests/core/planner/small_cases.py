"""Small tunes with something to plan, of every sort, typed as text so that one that fails can be read.

``case(choose)`` makes one; ``choose`` picks from a list, by chance (``random_cases``) or as hypothesis likes
(``cases``), which then shrinks towards the first of each list.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import TypeVar

from hypothesis import strategies as st

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing, set_plan
from core.planner.join_costs import JoinOdds
from core.planner.problem import Problem, RefusedPlanError, pose
from core.planner.settings import Flow, PlannerSettings, Weights
from core.tune import Tune
from tests.core.builders import bowed

T = TypeVar("T")
Choose = Callable[[Sequence[T]], T]

MOST_NOTES = 11
RHYTHMS = {  # eighths
    "2/4": ((2, 2), (1, 1, 2), (2, 1, 1), (1, 1, 1, 1), (3, 1), (4,)),
    "3/4": ((2, 2, 2), (4, 2), (2, 1, 1, 2), (2, 4), (1, 1, 1, 1, 2), (6,)),
    "4/4": ((2, 2, 2, 2), (4, 2, 2), (2, 2, 4), (4, 2, 1, 1), (4, 4), (8,), (6, 2)),
    "6/8": ((3, 3), (2, 1, 3), (1, 1, 1, 3), (3, 1, 1, 1), (2, 1, 2, 1), (6,)),
    "9/8": ((3, 3, 3), (3, 6), (1, 1, 1, 3, 3), (2, 1, 2, 1, 3), (9,)),
}
PLANS = (
    AccentPlan(PlanKind.ON_BEAT),
    AccentPlan(PlanKind.BACKBEAT),
    AccentPlan(PlanKind.NONE),
    AccentPlan(PlanKind.PLACES, (Fraction(0), Fraction(1))),
    AccentPlan(PlanKind.PLACES, (Fraction(1, 2), Fraction(3, 2))),
)
WEIGHTS = (
    Weights(),
    Weights(),
    Weights(join=100, retake=5),
    Weights(join=1, equal_pitches=0, retake_over_rest=0, leap=7),
    Weights(join=0, equal_pitches=0, over_bar_line=0, into_beat=0, leap=0, retake=0, retake_over_rest=0),
    Weights(join=3, retake=3, retake_over_rest=100, stroke_of_one=40),
    Weights(join=0, equal_pitches=1, over_bar_line=0, stroke_of_one=100, stroke_of_four=0, each_note_more=0),  # long
)
LOG_ODDS = (None, 0.0, -0.7, 1.1, -2.2, 0.01, 40.0, -40.0)  # of a style; None says nothing of a note
SOMETIMES, SELDOM = (False, False, False, True), (False,) * 9 + (True,)


@dataclass(frozen=True)
class Case:
    """Something to plan.

    Attributes:
        text, meter, part_order: For ``tests.core.builders.bowed``.
        plans: The plan, and others from later bars on, by index of the bar.
        settings, keep, keep_start: For ``pose``.
        free: Places in ``Tune.sequence``, or None for all.
        log_odds: Of a style, for each note and rest, or nothing where there is no style.
    """

    text: str
    meter: str = "4/4"
    part_order: str = ""
    plans: dict[int, AccentPlan] = field(default_factory=dict)
    settings: PlannerSettings = PlannerSettings()
    keep: bool = True
    keep_start: bool = False
    free: tuple[int, ...] | None = None
    log_odds: tuple[float | None, ...] = ()

    def lesson(self) -> tuple[Tune, Bowing]:
        tune, bowing = bowed(self.text, self.meter, part_order=self.part_order)
        for bar, plan in self.plans.items():
            bowing = set_plan(tune, bowing, plan, bar)
        return tune, bowing

    def problem(self) -> Problem:
        """Raises:
        RefusedPlanError: as ``pose``.
        """
        tune, bowing = self.lesson()
        free = None if self.free is None else [note.id for at, note in enumerate(tune.sequence) if at in self.free]
        return pose(
            tune, bowing, self.settings,
            style=self.style(tune), keep=self.keep, free=free, keep_start=self.keep_start,
        )  # fmt: skip

    def style(self, tune: Tune) -> JoinOdds | None:
        if not self.log_odds:
            return None
        known = zip(tune.sequence, self.log_odds, strict=True)
        return {note.id: log_odds for note, log_odds in known if log_odds is not None}


def case(choose: Choose) -> Case:
    """Make one."""
    meter = choose(list(RHYTHMS))
    text, bars, notes = _typed(choose, meter)
    plans = {0: choose(PLANS)}
    for bar in range(1, bars):
        if choose(SOMETIMES):
            plans[bar] = choose(PLANS)
    return Case(
        text,
        meter,
        choose(("", "", "", "AB", "BA", "AAB", "B")) if "{" in text else "",
        plans,
        PlannerSettings(
            flow=choose(tuple(Flow)),
            most_notes=choose((4, 4, 16, 2, 3)),
            longest=choose((Fraction(1, 2), Fraction(1), Fraction(1, 4))),
            weights=choose(WEIGHTS),
        ),
        choose((True, True, False)),
        choose(SOMETIMES),
        tuple(at for at in range(notes) if choose((True, True, False))) if choose(SOMETIMES) else None,
        tuple(choose(LOG_ODDS) for _ in range(notes)) if choose(SOMETIMES) else (),
    )


def random_cases(seed: int, count: int) -> Iterator[Case]:
    """As many as asked for, the same for the same seed."""
    chance = random.Random(seed)
    return (case(chance.choice) for _ in range(count))


@st.composite
def cases(draw: st.DrawFn) -> Case:
    return case(lambda options: draw(st.sampled_from(options)))


def problem_or_none(one: Case) -> Problem | None:
    """None where ``pose`` refuses it."""
    try:
        return one.problem()
    except RefusedPlanError:
        return None


@dataclass
class _Hand:
    """Types notes one by one, and remembers what may follow."""

    choose: Choose
    signs: bool  # slurs, hooks, marks and retakes
    tied: str = ""  # the step that is tied on
    after_note: bool = False
    begun: bool = False
    slurred: bool = False
    left: int = MOST_NOTES

    def note(self, eighths: int, step: str, rest: bool, tie: bool, last: bool) -> str:
        length = str(eighths) if eighths > 1 else ""
        if rest and not self.tied:
            self.after_note = False
            return f"z{length}"  # a slur over a rest joins nothing there
        held, step = bool(self.tied), self.tied or step
        before = "" if held else self.before(step)
        opens = self.signs and not self.slurred and not last and self.choose(SELDOM)
        self.slurred |= opens
        self.tied = step if tie and not last else ""
        self.after_note = self.begun = True
        closes = self.slurred and not opens and (last or self.choose((True, False)))
        self.slurred &= not closes
        self.left -= 1
        return ("(" if opens else "") + before + f"{step}{length}" + ("-" if self.tied else "") + ")" * closes

    def before(self, step: str) -> str:
        """What stands before a note that is not held."""
        if not self.signs:
            return "L" if self.choose(SELDOM) else ""
        retaken = self.begun and not self.slurred and self.choose(SELDOM)
        hooked = not retaken and not self.slurred and self.after_note and self.choose(SELDOM)
        mark = "" if retaken else self.choose(("",) * 8 + ("u", "v"))
        return "r" * retaken + "=" * hooked + mark + self.choose(("",) * 8 + ("L", "~"))


def _typed(choose: Choose, meter: str) -> tuple[str, int, int]:
    """Text, number of bars, number of notes and rests."""
    hand = _Hand(choose, choose((True, False)))
    count = choose((3, 2, 4, 5))
    ties, rests, steps = choose((SELDOM, SOMETIMES)), choose((SELDOM, (False,), SOMETIMES)), choose(("AB", "ABcg", "A"))
    bars: list[list[tuple[int, str, bool, bool]]] = []
    text, endings = "", 0
    whole = sum(RHYTHMS[meter][0])
    for number in range(count):
        if number == 0 and choose(SOMETIMES):
            shape = [(choose((1, 2)), choose(steps), False, choose(ties))]
        elif number and choose((False, False, True)):
            shape = choose(bars)
        elif choose(SELDOM):
            shape = [(whole, "A", not hand.tied, choose(ties))]  # a whole bar of rest, or held
        else:
            shape = [(size, choose(steps), choose(rests), choose(ties)) for size in choose(RHYTHMS[meter])]
        sounding = sum(not rest for _, _, rest, _ in shape)
        if sounding > hand.left:
            shape = [(whole, "A", True, False)]
        bars.append(shape)
        endings = choose((0,) * 7 + (1,)) if not endings and number + 1 < count else endings and endings + 1
        ended = f"[{endings} " if endings in (1, 2) else ""
        text += choose(("",) * 6 + ("|:", "{A}", "{B}")) if not endings else ""
        text += choose(("",) * 12 + ("!segno!",))
        text += ended
        for place, (size, step, rest, tie) in enumerate(shape):
            last = number + 1 == count and place + 1 == len(shape)
            text += hand.note(size, step, rest, tie, last) + " "
        text += choose(("",) * 16 + ("!fine!",))
        if number + 1 == count:
            text += choose(("",) * 6 + ("!D.C.!", "!D.C. al Fine!", "!D.S.!"))
            text += choose(("|]", ":|"))
        elif endings:
            text += ":|" if endings == 1 else "|"
        else:
            text += choose(("|",) * 6 + ("||", ":|", "::"))
        text += " "
    return text.strip(), count, sum(map(len, bars))
