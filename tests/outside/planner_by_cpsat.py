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
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from statistics import median, quantiles
from time import perf_counter
from typing import NamedTuple, TypeAlias

from ortools.sat.python import cp_model

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bow, Bowing
from core.order import playing_order
from core.planner import Flow, PlannerSettings, RefusedPlanError, plan_bowing, pose
from core.planner.problem import PlanNote, Problem, Retake
from core.planner.score import Score, score
from core.reading.abc import read_abc
from tests.core.planner.by_trial import Way, bowing_of
from tests.outside.abc_collections import FOLDERS, sources

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


def solve(problem: Problem, time_limit_s: float = 60.0) -> Answer:
    """Find the best bowing: least missed and broken first, then with these fixed the least cost.

    Raises:
        AssertionError: the solver's three numbers are not what ``core.planner.score`` counts.
    """
    began = perf_counter()
    model = _Model(problem)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = time_limit_s
    bound = Score(0, 0, 0)
    for fix in (model.aim_at_misses_and_breaks, model.aim_at_cost):
        fix()
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
    """Variables, rules and the three numbers of one problem."""

    def __init__(self, problem: Problem) -> None:
        self.problem, self.notes = problem, problem.notes
        self.model = cp_model.CpModel()
        self.played = links(problem)
        self.links = Counter(self.played)
        self.run_on = {link.note for link in self.links if link.runs_on}
        self.seams = {bar.first for bar in problem.bars if bar.seam}
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
        self.least = (0, 0)

    # what is sought

    def aim_at_misses_and_breaks(self) -> None:
        """No breaks outweigh a miss."""
        self.a_miss = sum(times for times, _ in self.broken) + 1
        self.model.minimize(self.a_miss * _total(self.missed) + _total(self.broken))
        self.bound_of = lambda total: Score(*divmod(total, self.a_miss), 0)

    def aim_at_cost(self) -> None:
        """With as few misses and breaks as were found."""
        plan_changes = self.problem.settings.weights.plan_change * self.problem.plan_changes
        self.model.minimize(_total(self.cost))
        self.bound_of = lambda total: Score(*self.least, total + plan_changes)

    def keep(self, solver: cp_model.CpSolver) -> None:
        """Hold what was found, so that the next solution has no more misses and breaks."""
        self.least = (solver.value(_total(self.missed)), solver.value(_total(self.broken)))
        self.model.add(_total(self.missed) == self.least[0])
        self.model.add(_total(self.broken) == self.least[1])
        for literal in {literal.index: literal for literal in (*self.joined, *self.up)}.values():  # constants are one
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
        for link, times in self.links.items():
            note = self.notes[link.note]
            if note.accented:
                self.missed.append((times, self._is_missed(note, link)))

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
            if link.runs_on:
                self.cost.append((self.notes[link.note].join_cost * times, self.joined[link.note]))

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
        """For each kind one way is the model; a bar that has another is broken."""
        kinds: dict[int, list[range]] = defaultdict(list)
        for bar in self.problem.bars:
            kinds[bar.kind].append(range(bar.first, bar.stop))
        for bars in kinds.values():
            if len(bars) > 1:
                self._take_after(self._pattern(len(bars[0])), bars)

    def _pattern(self, count: int) -> list[Literal]:
        """Directions and inner joins of a bar."""
        return [self.model.new_bool_var("") for _ in range(2 * count - 1)]

    def _take_after(self, pattern: list[Literal], bars: Sequence[range]) -> None:
        for bar in bars:
            differs = self.model.new_bool_var("")
            own = [*self.up[bar.start : bar.stop], *self.joined[bar.start + 1 : bar.stop]]
            for one, other in zip(own, pattern, strict=True):
                self.model.add(one == other).only_enforce_if(~differs)
            self.broken.append((1, differs))

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

    def __str__(self) -> str:
        return f"{self.kind.value}, {self.flow.name.lower()}, {'kept' if self.keep else 'free'}"


WISHES = (
    Wish(PlanKind.ON_BEAT, Flow.FEWEST_SLURS, keep=False),
    Wish(PlanKind.BACKBEAT, Flow.FEWEST_SLURS, keep=False),
    Wish(PlanKind.ON_BEAT, Flow.FEWEST_SLURS, keep=True),
    Wish(PlanKind.BACKBEAT, Flow.SOME_SLURS, keep=True),
    Wish(PlanKind.ON_BEAT, Flow.SMOOTH, keep=False),
    Wish(PlanKind.ON_BEAT, Flow.SMOOTH, keep=True),
)


@dataclass(frozen=True)
class Comparison:
    """A case planned in both ways.

    Attributes:
        case: Which tune and which wish.
        verdict: "equal", "open" (the solver did not finish and has found nothing better), "both refuse", or
            "different".
        ours, theirs: What was found.
        our_seconds, their_seconds: How long that took.
    """

    case: str
    verdict: str
    ours: Score | None
    theirs: Score | None
    our_seconds: float
    their_seconds: float


def compare(case: str, problem: Problem, time_limit_s: float = 60.0) -> Comparison:
    """Plan in both ways."""
    began = perf_counter()
    try:
        plan = plan_bowing(problem)
    except RefusedPlanError:
        plan = None
    our_seconds = perf_counter() - began
    answer = solve(problem, time_limit_s)
    if plan is None:
        verdict = "both refuse" if answer.status == "none" else "different"
        return Comparison(case, verdict, None, answer.score, our_seconds, answer.seconds)
    ours = score(problem, plan.bowing)
    agrees = ours == plan.score and plan.proven
    if answer.status == "best":
        verdict = "equal" if agrees and ours == answer.score else "different"
    else:
        no_better = answer.score is None or ours <= answer.score
        verdict = "open" if agrees and no_better and answer.status != "none" else "different"
    return Comparison(case, verdict, ours, answer.score, our_seconds, answer.seconds)


def collected(count: int, seed: int = 1883) -> Iterator[tuple[str, Problem]]:
    """Cases from the open collections, the same for the same seed; what cannot be posed is passed over."""
    chosen = random.Random(seed).sample(sources(*FOLDERS), k=-(-count // len(WISHES)) * 2)
    made = 0
    for source in chosen:
        lesson = read_abc(source.text).lessons[0]
        for wish in WISHES:
            if made == count:
                return
            bowing = replace(lesson.bowings[0], accents=AccentPlan(wish.kind))
            try:
                problem = pose(lesson.tune, bowing, PlannerSettings(flow=wish.flow), keep=wish.keep)
            except RefusedPlanError:
                continue
            made += 1
            yield f"{source.place} ({wish})", problem


def _report(comparisons: Iterator[Comparison]) -> None:
    done = []
    for one in comparisons:
        done.append(one)
        if one.verdict != "equal":
            print(f"{one.verdict}: {one.case}: ours {one.ours}, theirs {one.theirs}", flush=True)
    for verdict, times in Counter(one.verdict for one in done).most_common():
        print(f"{times:5} {verdict}")
    for name, seconds in (("ours", [one.our_seconds for one in done]), ("theirs", [one.their_seconds for one in done])):
        print(f"{name}: median {1000 * median(seconds):.1f} ms, p95 {1000 * quantiles(seconds, n=20)[-1]:.1f} ms")


if __name__ == "__main__":
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 480
    _report(compare(case, problem) for case, problem in collected(count))
