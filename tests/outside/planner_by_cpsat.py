"""The planner's problem given to CP-SAT, the constraint solver of OR-tools, note by note.

A second way to the best bowing that shares neither tables nor search with ``core.planner``: one variable says of each
note whether it is joined, one which way it goes. The links from note to note are counted afresh from the playing order.

``python -m tests.outside.planner_by_cpsat [count]`` plans so many cases from the open tune collections in both ways
(480 unless said otherwise; minutes), prints each that differs, and ends with the counts and both times.
"""

from __future__ import annotations

import random
import sys
from collections import Counter, defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import islice, pairwise, product
from statistics import median, quantiles
from time import perf_counter
from typing import NamedTuple, TypeAlias

from ortools.sat.python import cp_model

from core.accent_plan import AccentPlan, PlanKind
from core.accents import PHRASE_PLANS
from core.bowing import Bow, Bowing
from core.order import playing_order
from core.planner import Flow, JoinOdds, PlannerSettings, RefusedPlanError, pose, work_out_plan
from core.planner.phrase_plans import PhraseGroup, changes_of_plan, phrase_groups, resolved
from core.planner.problem import PlanBar, PlanNote, Problem, Retake
from core.planner.score import Score, score
from core.reading.abc import read_abc
from core.recurrence import bar_classes
from core.tune import Tune
from tests.core.planner.by_trial import Way, bowing_of
from tests.outside.abc_collections import FOLDERS, sources

EFFORT = 3.0  # when to give up, in the solver's own measure of time, some seconds on a quiet machine
Literal: TypeAlias = cp_model.LiteralT
STATUS = {
    cp_model.OPTIMAL: "best",
    cp_model.FEASIBLE: "open",
    cp_model.INFEASIBLE: "none",
    cp_model.UNKNOWN: "unknown",
}


class Link(NamedTuple):
    """Two notes played one after the other, by place in ``Problem.notes``.

    Attributes:
        before, note: The notes.
        runs_on: Written one after the other too, with no rest between: one stroke can play both.
        over_rest: A rest is played between.
    """

    before: int
    note: int
    runs_on: bool
    over_rest: bool


@dataclass(frozen=True)
class Answer:
    """What the solver says.

    Attributes:
        status: "best", "open" (good, perhaps not the best), "none" (there is no legal bowing) or "unknown".
        score, bowing: The best found.
        bound: Nothing can be better.
        seconds: Time to pose and to solve.
    """

    status: str
    score: Score | None
    bound: Score | None
    bowing: Bowing | None
    seconds: float


def solve(problem: Problem, effort: float = EFFORT) -> Answer:
    """Find the best bowing."""
    return _solve(_Model([problem]), lambda _: problem, effort)


def solve_by_phrase(
    tune: Tune,
    bowing: Bowing,
    settings: PlannerSettings,
    style: JoinOdds | None = None,
    *,
    keep: bool = True,
    effort: float = EFFORT,
) -> Answer:
    """Find the best bowing under the best choice of on-beat or backbeat for each group of phrases.

    Raises:
        RefusedPlanError: as ``pose``.
    """
    groups = phrase_groups(tune, bowing)

    def posed(choice: Sequence[PlanKind]) -> Problem:
        problem = pose(tune, resolved(tune, bowing, groups, choice), settings, style=style, keep=keep)
        return replace(problem, plan_changes=changes_of_plan(groups, choice))

    problems = [posed([kind] * len(groups)) for kind in PHRASE_PLANS] if groups else [posed([])]
    return _solve(_Model(problems, groups), posed, effort)


def _solve(model: _Model, posed: Callable[[Sequence[PlanKind]], Problem], effort: float) -> Answer:
    """Least missed and broken first, then with these fixed the least cost.

    Raises:
        AssertionError: the solver's three numbers are not what ``core.planner.score`` counts.
    """
    began = perf_counter()
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_deterministic_time = effort
    bound = Score(0, 0, 0)
    for aim in (model.aim_at_misses_and_breaks, model.aim_at_cost):
        aim()
        status = STATUS[solver.solve(model.model)]
        if status not in ("best", "open"):
            return Answer(status, None, None, None, perf_counter() - began)
        bound = model.bound_of(round(solver.best_objective_bound))
        if status == "open":
            break
        model.keep(solver)
    seconds = perf_counter() - began
    way = Way(
        tuple(bool(solver.value(joined)) for joined in model.joined),
        tuple(Bow.UP if solver.value(up) else Bow.DOWN for up in model.up),
    )
    problem = posed([PHRASE_PLANS[solver.value(chosen)] for chosen in model.chosen])
    bowing = bowing_of(problem, way)
    found = score(problem, bowing)
    assert found == bound if status == "best" else found >= bound
    return Answer(status, found, bound, bowing, seconds)


def links(problem: Problem) -> list[Link]:
    """From note to note through one playing, the way from the last back to the first put first."""
    tune = problem.tune
    place_of = {note.note_id: place for place, note in enumerate(problem.notes)}
    played = [note for visit in playing_order(tune) for note in tune.bars[visit.bar].notes]
    found = []
    sounding = [at for at, note in enumerate(played) if not note.is_rest]
    first, last = sounding[0], sounding[-1]
    over_rest = last + 1 < len(played) or first > 0
    found.append(Link(place_of[played[last].id], place_of[played[first].id], False, over_rest))
    for at, next_at in pairwise(sounding):
        before, note = played[at], played[next_at]
        runs_on = next_at == at + 1 and tune.places[note.id] == tune.places[before.id] + 1
        found.append(Link(place_of[before.id], place_of[note.id], runs_on, next_at > at + 1))
    return found


def _total(terms: list[tuple[int, Literal]]) -> cp_model.LinearExprT:
    return cp_model.LinearExpr.weighted_sum([literal for _, literal in terms], [times for times, _ in terms])


class _Model:
    """Variables, rules and the three numbers of one problem.

    Args:
        problems: The problem; or, where plans are chosen by phrase, the problem under each of ``PHRASE_PLANS``.
        groups: The phrases that a plan is chosen for.
    """

    def __init__(self, problems: Sequence[Problem], groups: Sequence[PhraseGroup] = ()) -> None:
        self.problems, self.problem = problems, problems[0]
        self.notes = self.problem.notes
        self.model = cp_model.CpModel()
        self.chosen = [self.model.new_bool_var("") for _ in groups]  # the second plan
        group_of = {bar: chosen for group, chosen in zip(groups, self.chosen, strict=True) for bar in group.bars}
        self.plan_of = [group_of.get(bar.written) for bar in self.problem.bars]
        self.played = links(self.problem)
        self.links = Counter(self.played)
        self.run_on = {link.note for link in self.links if link.runs_on}
        self.seams = {bar.first for bar in self.problem.bars if bar.seam}
        self.joined: list[Literal] = [self._bool(note.joined) for note in self.notes]
        self.up: list[Literal] = [self._bool(None if note.bow is None else note.bow is Bow.UP) for note in self.notes]
        self.missed: list[tuple[int, Literal]] = []
        self.broken: list[tuple[int, Literal]] = []
        self.cost: list[tuple[int, Literal]] = []
        self._directions()
        self._limits()
        self._bars_in_one_stroke()
        self._accents()
        self._slurs()
        self._stroke_sizes()
        self._bars_alike()
        self._changes_of_plan(groups)
        self.least = (0, 0)

    # what is sought

    def aim_at_misses_and_breaks(self) -> None:
        """No breaks outweigh a miss."""
        self.a_miss = sum(times for times, _ in self.broken) + 1
        self.model.minimize(self.a_miss * _total(self.missed) + _total(self.broken))
        self.bound_of = lambda total: Score(*divmod(total, self.a_miss), 0)

    def aim_at_cost(self) -> None:
        """With as few misses and breaks as were found."""
        self.model.minimize(_total(self.cost))
        self.bound_of = lambda total: Score(*self.least, total)

    def keep(self, solver: cp_model.CpSolver) -> None:
        """Hold what was found, so that the next solution has no more misses and breaks."""
        self.least = (solver.value(_total(self.missed)), solver.value(_total(self.broken)))
        self.model.add(_total(self.missed) == self.least[0])
        self.model.add(_total(self.broken) == self.least[1])
        literals = {literal.index: literal for literal in (*self.joined, *self.up, *self.chosen)}  # constants are one
        for literal in literals.values():
            self.model.add_hint(literal, solver.value(literal))

    # rules

    def _directions(self) -> None:
        """A joined note goes on, a stroke turns, a retake is one only where it may be; at a seam anything goes."""
        weights = self.problem.settings.weights
        for link, times in self.links.items():
            note, joined = self.notes[link.note], self.joined[link.note] if link.runs_on else self.model.new_constant(0)
            same = self._same(link.before, link.note)
            lifted = self.model.new_bool_var("")
            self.model.add(same == joined + lifted)
            at_seam = link.note in self.seams
            if note.retake is Retake.NEVER and not at_seam:
                self.model.add(lifted == 0)
            if note.retake is Retake.MUST:
                self.model.add(joined + lifted == 1)
            if link.over_rest:
                self.cost.append((weights.retake_over_rest * times, lifted))
            elif at_seam:
                self.broken.append((times, lifted))
            else:
                self.cost.append((weights.retake * times, lifted))

    def _limits(self) -> None:
        """No stroke of several notes is longer than it may be, unless the player joined all of it."""
        settings = self.problem.settings
        for bar in self.problem.bars:
            for first in range(bar.first, bar.stop):
                count, length, fixed = 1, self.notes[first].length, True
                for last in range(first + 1, len(self.notes)):
                    note = self.notes[last]
                    if not self._may_go_on(last):
                        break
                    count, length, fixed = count + (not note.held), length + note.length, fixed and note.joined is True
                    too_much = count > 1 and (count > settings.most_notes or length > bar.longest)
                    if too_much and not fixed:
                        begins = [~self.joined[first]] if first in self.run_on or not self._opens_bar(first) else []
                        self._not_all([*begins, *self.joined[first + 1 : last + 1]])
                        break

    def _bars_in_one_stroke(self) -> None:
        """The planner joins none to a neighbour, and makes none of a bar that the player joined to both."""
        for bar in self.problem.bars:
            inner = self.joined[bar.first + 1 : bar.stop]
            fixed_ends = 0
            for end in (bar.first, bar.stop):
                if end in self.run_on:
                    if self.notes[end].joined is None:
                        self._not_all([*inner, self.joined[end]])
                    fixed_ends += self.notes[end].joined is True
            if fixed_ends == 2 and any(note.joined is None for note in self.notes[bar.first + 1 : bar.stop]):
                self._not_all(inner)

    # the three numbers

    def _accents(self) -> None:
        bar_of = {place: number for number, bar in enumerate(self.problem.bars) for place in range(bar.first, bar.stop)}
        for link, times in self.links.items():
            under = [number for number, problem in enumerate(self.problems) if problem.notes[link.note].accented]
            if under:
                missed = self._is_missed(self.notes[link.note], link)
                if len(under) < len(self.problems):
                    missed = self._all([missed, *self._under(under[0], bar_of[link.note])])
                self.missed.append((times, missed))

    def _under(self, plan: int, bar: int) -> list[Literal]:
        """That a plan holds in a bar; nothing where no plan is chosen for it."""
        chosen = self.plan_of[bar]
        return [] if chosen is None else [chosen if plan else ~chosen]

    def _is_missed(self, note: PlanNote, link: Link) -> Literal:
        """An attack that is no down-bow, or none at all but for a note that is held."""
        up, joined = self.up[link.note], self.joined[link.note]
        if not link.runs_on or note.hooked:
            return up
        if note.held:
            return self.model.new_constant(0)
        missed = self.model.new_bool_var("")
        self.model.add_max_equality(missed, [up, joined])
        return missed

    def _slurs(self) -> None:
        for link, times in self.links.items():
            note = self.notes[link.note]
            joined = self.joined[link.note] if link.runs_on else self.model.new_constant(0)
            self.cost.append((note.join_cost * times, joined))
            self.cost.append((note.apart_cost * times, ~joined))

    def _stroke_sizes(self) -> None:
        """Every stroke that can be: it begins, nothing in it begins another, and what comes next does."""
        for (stroke, can_begin, can_end), times in self._possible_strokes().items():
            size = 1 + sum(not self.notes[place].held for place in stroke[1:])
            cost = self.problem.settings.stroke_cost(size) * times
            if cost:
                parted = [place for place, may_join in ((stroke.start, can_begin), (stroke.stop, can_end)) if may_join]
                inner = self.joined[stroke.start + 1 : stroke.stop]
                self.cost.append((cost, self._all([*inner, *(~self.joined[place] for place in parted)])))

    def _possible_strokes(self) -> Counter[tuple[range, bool, bool]]:
        """Notes, whether the first may as well go on from the note before, and the last into the next: how often."""
        found: Counter[tuple[range, bool, bool]] = Counter()
        if not self.problem.settings.flow:
            return found
        for at, link in enumerate(self.played):
            begins_anyhow = not link.runs_on
            if not begins_anyhow and self.notes[link.note].joined:
                continue
            for stroke, ends_anyhow in self._strokes_from(at):
                found[stroke, not begins_anyhow, not ends_anyhow] += 1
        return found

    def _strokes_from(self, at: int) -> Iterator[tuple[range, bool]]:
        first, last, fixed, count = self.played[at].note, self.played[at].note, True, 1
        for link in self.played[at + 1 :]:
            note = self.notes[link.note]
            if not link.runs_on or note.joined is False:
                break
            if note.joined is None:
                yield range(first, last + 1), False
            last, count, fixed = link.note, count + (not note.held), fixed and note.joined is True
            if count > self.problem.settings.most_notes and not fixed:
                return
        yield range(first, last + 1), True

    def _bars_alike(self) -> None:
        """For each kind one way is the model; a bar of that kind that has another is broken."""
        classes = bar_classes(self.problem.tune)
        kinds: dict[tuple[object, ...], dict[int, set[int]]] = defaultdict(lambda: defaultdict(set))
        for plan, problem in enumerate(self.problems):
            for number, bar in enumerate(problem.bars):
                notes = problem.notes[bar.first : bar.stop]
                kind = (classes[bar.written], notes[0].held, *(note.accented for note in notes))
                kinds[kind][number].add(plan)
        differs: dict[int, Literal] = defaultdict(lambda: self.model.new_bool_var(""))
        for bars in kinds.values():
            if len(bars) > 1:
                size = self.problem.bars[next(iter(bars))]
                pattern = [self.model.new_bool_var("") for _ in range(2 * (size.stop - size.first) - 1)]
                for number, plans in bars.items():
                    always = len(plans) == len(self.problems)
                    under = [] if always else self._under(min(plans), number)
                    self._take_after(pattern, self.problem.bars[number], [*under, ~differs[number]])
        self.broken.extend((1, differing) for differing in differs.values())

    def _take_after(self, pattern: list[Literal], bar: PlanBar, where: list[Literal]) -> None:
        own = [*self.up[bar.first : bar.stop], *self.joined[bar.first + 1 : bar.stop]]
        for one, other in zip(own, pattern, strict=True):
            self.model.add(one == other).only_enforce_if(where)

    def _changes_of_plan(self, groups: Sequence[PhraseGroup]) -> None:
        """A phrase with another plan than the phrase before it, where both are chosen."""
        chosen = {number: mine for group, mine in zip(groups, self.chosen, strict=True) for number in group.phrases}
        for number in chosen.keys() & {number + 1 for number in chosen}:
            changes = self.model.new_bool_var("")
            self.model.add_bool_xor([chosen[number - 1], chosen[number], ~changes])
            self.cost.append((self.problem.settings.weights.plan_change, changes))

    # helps

    def _bool(self, value: bool | None) -> Literal:
        return self.model.new_bool_var("") if value is None else self.model.new_constant(int(value))

    def _same(self, before: int, note: int) -> Literal:
        """Whether two notes go the same way."""
        same = self.model.new_bool_var("")
        self.model.add_bool_xor([self.up[before], self.up[note], same])
        return same

    def _not_all(self, literals: Sequence[Literal]) -> None:
        self.model.add_bool_or([~literal for literal in literals])

    def _all(self, literals: Sequence[Literal]) -> Literal:
        both = self.model.new_bool_var("")
        self.model.add_bool_or([*(~literal for literal in literals), both])
        return both

    def _may_go_on(self, place: int) -> bool:
        """Whether a note can be in the stroke of the note before it."""
        return self.notes[place].joined is not False and (place in self.run_on or not self._opens_bar(place))

    def _opens_bar(self, place: int) -> bool:
        return any(bar.first == place for bar in self.problem.bars)


# Plans of tunes in the open collections, in both ways


class Wish(NamedTuple):
    """How a tune of the collections is to be planned."""

    kind: PlanKind
    flow: Flow
    keep: bool
    styled: bool = False

    def __str__(self) -> str:
        flow = "in a style" if self.styled else self.flow.name.lower()
        return f"{self.kind.value}, {flow}, {'kept' if self.keep else 'free'}"


WISHES = (
    Wish(PlanKind.ON_BEAT, Flow.FEWEST_SLURS, keep=False),
    Wish(PlanKind.BACKBEAT, Flow.FEWEST_SLURS, keep=False),
    Wish(PlanKind.BY_PHRASE, Flow.FEWEST_SLURS, keep=False),
    Wish(PlanKind.ON_BEAT, Flow.FEWEST_SLURS, keep=True),
    Wish(PlanKind.BACKBEAT, Flow.SOME_SLURS, keep=True),
    Wish(PlanKind.BY_PHRASE, Flow.SOME_SLURS, keep=True),
    Wish(PlanKind.ON_BEAT, Flow.SMOOTH, keep=False),
    Wish(PlanKind.ON_BEAT, Flow.SMOOTH, keep=True),
    Wish(PlanKind.NONE, Flow.FEWEST_SLURS, keep=False, styled=True),
    Wish(PlanKind.ON_BEAT, Flow.FEWEST_SLURS, keep=False, styled=True),
    Wish(PlanKind.BY_PHRASE, Flow.SMOOTH, keep=True, styled=True),
)


@dataclass(frozen=True)
class Case:
    """A tune, and how it is to be planned."""

    name: str
    tune: Tune
    bowing: Bowing
    settings: PlannerSettings
    keep: bool
    style: JoinOdds | None = None


@dataclass(frozen=True)
class Comparison:
    """A case planned in both ways.

    Attributes:
        case: Its name.
        verdict: "equal"; "open" (the solver did not finish and has found nothing better); "unproven" (our planner did
            not finish); "both refuse"; or "different".
        ours, theirs: What was found.
        our_seconds, their_seconds: How long that took, posing it included.
    """

    case: str
    verdict: str
    ours: Score | None
    theirs: Score | None
    our_seconds: float
    their_seconds: float


def compare(case: Case, effort: float = EFFORT) -> Comparison:
    """Plan in both ways."""
    began = perf_counter()
    try:
        plan = work_out_plan(case.tune, case.bowing, case.settings, style=case.style, keep=case.keep)
    except RefusedPlanError:
        plan = None
    our_seconds = perf_counter() - began
    answer = _answer(case, effort)
    verdict = "different"
    if plan is None:
        verdict = "both refuse" if answer.status == "none" else "different"
    elif answer.score is None:
        verdict = "open" if answer.status == "unknown" else "different"
    elif plan.score == answer.score and answer.status == "best":
        verdict = "equal"
    elif plan.score <= answer.score and answer.status == "open":
        verdict = "open"
    elif plan.score > answer.score and not plan.proven:
        verdict = "unproven"
    ours = plan.score if plan else None
    return Comparison(case.name, verdict, ours, answer.score, our_seconds, answer.seconds)


def _answer(case: Case, effort: float) -> Answer:
    try:
        return solve_by_phrase(case.tune, case.bowing, case.settings, case.style, keep=case.keep, effort=effort)
    except RefusedPlanError:
        return Answer("none", None, None, None, 0.0)


def collected(count: int, seed: int = 1883, most_notes: int = 10_000) -> Iterator[Case]:
    """Cases from the open collections, the same for the same seed; tunes with too many notes are passed over."""
    found = sources(*FOLDERS)
    lessons = ((source, read_abc(source.text).lessons[0]) for source in random.Random(seed).sample(found, len(found)))
    short = ((source, lesson) for source, lesson in lessons if len(lesson.tune.sequence) <= most_notes)
    for (source, lesson), wish in islice(product(islice(short, -(-count // len(WISHES))), WISHES), count):
        bowing = replace(lesson.bowings[0], accents=AccentPlan(wish.kind))
        style = _any_style(lesson.tune, random.Random(f"{seed} {source.place}")) if wish.styled else None
        yield Case(f"{source.place} ({wish})", lesson.tune, bowing, PlannerSettings(flow=wish.flow), wish.keep, style)


def _any_style(tune: Tune, chance: random.Random) -> JoinOdds:
    """Slurs a third of the notes likely, leaves a tenth of them open."""
    return {note.id: chance.gauss(-1, 2) for note in tune.sequence if chance.random() < 0.9}


def _report(comparisons: Iterator[Comparison]) -> None:
    done = []
    for one in comparisons:
        done.append(one)
        if one.verdict not in ("equal", "both refuse"):
            print(f"{one.verdict}: {one.case}: ours {one.ours}, theirs {one.theirs}", flush=True)
    for verdict, times in Counter(one.verdict for one in done).most_common():
        print(f"{times:5} {verdict}")
    for name, seconds in (("ours", [one.our_seconds for one in done]), ("theirs", [one.their_seconds for one in done])):
        print(f"{name}: median {1000 * median(seconds):.1f} ms, p95 {1000 * quantiles(seconds, n=20)[-1]:.1f} ms")


if __name__ == "__main__":
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 480
    _report(compare(case) for case in collected(count))
