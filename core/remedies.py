"""What single change to a bowing mends a finding: found by trying, told best first.

A section that comes round on the other bow holds an odd number of strokes too many or too few. One slur more, one
slur parted, or one retake where the section begins again puts that right, and a player would choose by what is easy to
play and what the rest of the tune does. So every such change in the bars that lead to the turn is listed with its
cost, and tried in order of cost: it counts only if the finding is gone, nothing new is warned of, and no more accents
miss their down-bow than before.

An accent that is reached on an up-bow, or inside a slur, is mended in the same way, between the accent before it that
is driven and itself. There fewer accents must miss their down-bow than before; that a part is turned round by it may be
told, at a cost, for the next change mends that in its turn. Where every such change loses more than it gains, for all
that is played after it is turned, two are offered as one: the second mends the turn that the first brings.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from fractions import Fraction
from functools import lru_cache, partial
from math import inf

from core.accent_plan import AccentPlan, PlanKind, accented_places
from core.accents import Accents, Met
from core.bowing import Bowing, Join, can_join, join, next_struck, separate, stroke_notes
from core.check import RULES, Report, check
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View
from core.likeness import models
from core.order import endings
from core.recurrence import recurring_bars
from core.strokes import Strokes
from core.translation import inside, tr
from core.tune import Meter, Note, Tune
from core.values import dataclass

AT_MOST = 3
PAIRED = 6  # changes, the cheapest, for which a second one is looked for
MOST_TRIED = 400  # changes; beyond it, in tunes of hundreds of bars, only the cheapest are tried
TURNING = {
    "part-on-other-bow", "tune-on-other-bow", "round-retake", "phrase-on-other-bow", "like-on-other-bow",
    "ending-on-other-bow", "retake-on-some-passes",
}  # fmt: skip
ACCENT_RULES = {"accent-up", "accent-buried"}  # told by how many are missed, for each change moves them about
SEARCHED = TURNING | ACCENT_RULES
"""Rules whose remedies are found by trying; those of the others are at hand."""
WITH_MODEL: Mapping[str, Callable[[Tune, int], int]] = {  # rule, first bar told of -> the bar that it is compared with
    "phrase-on-other-bow": lambda tune, bar: models(tune)[bar].bar,
    "like-on-other-bow": lambda tune, bar: models(tune)[bar].bar,
    "ending-on-other-bow": lambda tune, bar: next(
        group[0].start for group in endings(tune) if any(bar in ending for ending in group)
    ),
}


@dataclass(frozen=True, slots=True)
class Costs:
    """What weighs against a change; the unit is a tenth of a slur."""

    slur: int = 10
    split: int = 12  # a slur that is there is meant
    retake: int = 25
    retake_over_rest: int = 4
    only_here: int = 15  # in a bar that comes again, which then is slurred in two ways
    on_the_accent: int = 2  # a slur that begins on the accent, not after it
    onto_an_accent: int = 8  # which then is buried, if the plan does not forbid it anyhow
    over_a_beat: int = 6
    in_a_tuplet: int = 8
    by_leap: int = 1  # for each step of the scale beyond the first
    highest_leap: int = 5
    long_note: int = 2  # for each quarter note in the stroke beyond the first
    missed: int = 3  # for each accent more that misses its down-bow; fewer are gained
    told: int = 4  # for each note more that the check tells
    turned: int = 10  # for each rule more that warns of a turn, where that may be


COSTS = Costs()


def remedies(
    tune: Tune,
    bowing: Bowing,
    finding: Finding,
    judge: Callable[[Tune, Bowing], Report] = check,
    at_most: int = AT_MOST,
) -> tuple[Remedy, ...]:
    """Find what single changes mend a finding.

    Args:
        tune: The tune.
        bowing: The bowing that was checked.
        finding: What the check found.
        judge: The check, with the settings that are in force.
        at_most: How many to offer.
    Returns:
        The best changes, cheapest first. Where none mends it without cost to the accents, those of the finding's own
        remedies that mend it all the same. For rules that no change of strokes mends, the finding's own remedies.
    """
    if finding.rule not in SEARCHED:
        return finding.remedies[:at_most]
    before = judge(tune, bowing)
    changes = sorted(_changes(tune, bowing, finding, before.accents), key=lambda change: change.cost)
    found: list[tuple[int, Remedy]] = []  # the best up to now
    own: list[Remedy] = []
    for change in changes[:MOST_TRIED]:
        enough = found[-1][0] if len(found) >= at_most > 0 else inf
        if change.cost + _least_gain(before) >= enough:
            break
        after = judge(tune, change.remedy.edit(tune, bowing))
        if not _is_mended(finding, before, after):
            continue
        if misses_more(before, after):
            if change.remedy in finding.remedies and not found and not warns_of_more(before, after):
                own.append(change.remedy)
            continue
        if change.cost + _least_gain(before, after) >= enough:
            continue
        worse = new_warnings(before, after)
        if not worse or (finding.rule in ACCENT_RULES and worse <= TURNING):
            found.append((change.cost + gain(before, after) + COSTS.turned * len(worse), change.remedy))
            found.sort(key=lambda item: item[0])
            del found[at_most:]
    best = tuple(remedy for _, remedy in found) or tuple(own)
    if best or finding.rule not in ACCENT_RULES:
        return best
    pairs = sorted(_pairs(tune, bowing, finding, before, changes[:PAIRED], judge), key=lambda change: change.cost)
    return tuple(change.remedy for change in pairs[:at_most])


@dataclass(frozen=True, slots=True)
class Change:
    """One change that could be made, and what weighs against it whatever it mends (in tenths of a slur)."""

    cost: int
    remedy: Remedy


def _pairs(
    tune: Tune, bowing: Bowing, finding: Finding, before: Report, changes: Iterable[Change],
    judge: Callable[[Tune, Bowing], Report],
) -> Iterator[Change]:  # fmt: skip
    """Each change with the best one that mends the turn which it brings, where both mend the finding."""
    for change in changes:
        halfway = change.remedy.edit(tune, bowing)
        report = judge(tune, halfway)
        brought = new_warnings(before, report) & TURNING
        turn = next((other for other in report.findings if other.rule in brought), None)
        if turn is None:
            continue
        for second in remedies(tune, halfway, turn, judge, at_most=1):
            after = judge(tune, second.edit(tune, halfway))
            if _is_mended(finding, before, after) and not warns_of_more(before, after):
                label = tr("{first}, and {second}", "two edits", first=change.remedy.label, second=inside(second.label))
                both = Remedy(label, partial(_both, change.remedy, second), change.remedy.slurs + second.slurs)
                yield Change(change.cost + COSTS.slur * abs(second.slurs) + gain(before, after), both)


def warns_of_more(before: Report, after: Report) -> bool:
    """Whether anything is warned of that was not before, accents apart."""
    return bool(new_warnings(before, after))


def new_warnings(before: Report, after: Report) -> set[str]:
    """The rules that warn of notes of which they did not before, accents apart."""
    return {rule for rule, _ in _warned(after) - _warned(before)}


def misses_more(before: Report, after: Report) -> bool:
    """Whether more accents miss their down-bow than before."""
    return _missed(after) > _missed(before)


def _is_mended(finding: Finding, before: Report, after: Report) -> bool:
    """Whether a finding is gone; of accents the first one, where that leaves fewer missed."""
    if finding.rule in ACCENT_RULES:
        return misses_more(after, before) and not _is_told(finding, finding.notes[:1], after.view)
    return not _is_told(finding, finding.notes, after.view)


def _is_told(finding: Finding, note_ids: Iterable[str], view: View) -> bool:
    """Whether the rule still finds something at these notes."""
    notes = set(note_ids)
    return any(not notes.isdisjoint(other.notes) for other in RULES[finding.rule].function(view))


def gain(before: Report, after: Report) -> int:
    """What else a change costs (positive) or gains (negative)."""
    notes = _notes(after) - _notes(before)
    return COSTS.missed * (_missed(after) - _missed(before)) + COSTS.told * notes


def _least_gain(before: Report, after: Report | None = None) -> int:
    """What a change costs or gains at the least, before its findings (or, without a report, anything) are known."""
    missed = _missed(after) if after is not None else 0
    return COSTS.missed * (missed - _missed(before)) - COSTS.told * _notes(before)


def _notes(report: Report) -> int:
    return sum(finding.severity is Severity.NOTE for finding in report.findings)


def _missed(report: Report) -> int:
    return report.accents.count(Met.UP) + report.accents.count(Met.BURIED)


def _warned(report: Report) -> set[tuple[str, str]]:
    return {
        (finding.rule, note_id)
        for finding in report.findings
        if finding.severity is not Severity.NOTE and finding.rule not in ACCENT_RULES
        for note_id in finding.notes
    }


# ---- what could be changed


def _changes(tune: Tune, bowing: Bowing, finding: Finding, accents: Accents) -> Iterator[Change]:
    """Every single change that could mend the finding, in written order."""
    yield from _retake(tune, bowing, finding, accents.strokes)
    yield from changes_in(tune, bowing, _leading_bars(tune, finding, accents))


def changes_in(tune: Tune, bowing: Bowing, bars: Iterable[int]) -> Iterator[Change]:
    """Every slur of two single notes and every parted slur in bars (indexes), also in all bars alike at once."""
    equal = {bar: group for group in recurring_bars(tune) for bar in group}
    done = set()
    for bar in bars:
        for place, note in enumerate(tune.bars[bar].notes):
            for kind in (_slur, _split):
                change = kind(tune, bowing, [note])
                if change is None:
                    continue
                copies = [tune.bars[other].notes[place] for other in equal.get(bar, ())]
                everywhere = kind(tune, bowing, copies) if copies else None
                if everywhere is None:
                    yield change
                    continue
                yield Change(change.cost + COSTS.only_here, change.remedy)
                if copies[0].id not in done:
                    done.add(copies[0].id)
                    yield everywhere


def _leading_bars(tune: Tune, finding: Finding, accents: Accents) -> list[int]:
    """Bars (indexes) that are played between where it is bowed one way and where the other, in written order."""
    order = accents.strokes.order
    first = tune.bar_of[finding.notes[0]]
    visits = [index for index, visit in enumerate(order) if visit.bar == first]
    if finding.rule in WITH_MODEL:
        model = WITH_MODEL[finding.rule](tune, first)
        start, stop = sorted((next(index for index, visit in enumerate(order) if visit.bar == model), visits[0]))
    elif finding.rule in ACCENT_RULES:
        stop = visits[(finding.pass_number or 1) - 1]
        start = _last_driven(accents, stop, tune.places[finding.notes[0]])
    elif finding.pass_number is not None:
        stop = visits[finding.pass_number - 1]
        start = visits[finding.pass_number - 2] if finding.pass_number > 1 else 0
    else:
        start, stop = 0, len(order)
    return sorted({visit.bar for visit in order[start : stop + 1]})


def _last_driven(accents: Accents, visit: int, place: int) -> int:
    """The visit of the last accent that is driven before a note (by its place in the tune) in a visit; else 0."""
    tune, order = accents.strokes.tune, accents.strokes.order
    for index in range(visit, -1, -1):
        bar, pass_number = order[index]
        for spot, met in zip(accents.spots[bar], accents.by_bar[bar][pass_number - 1], strict=True):
            before = index < visit or tune.places[tune.bars[bar].notes[spot.note_index].id] < place
            if before and met is Met.DRIVEN:
                return index
    return 0


def _retake(tune: Tune, bowing: Bowing, finding: Finding, strokes: Strokes) -> Iterator[Change]:
    """The finding's own remedies, which fix a direction where the turn begins."""
    cost = COSTS.retake_over_rest if _comes_after_a_rest(tune, strokes, finding.notes[0]) else COSTS.retake
    for remedy in finding.remedies:
        yield Change(cost, remedy)


def _comes_after_a_rest(tune: Tune, strokes: Strokes, note_id: str) -> bool:
    """Whether a rest is played before a note on some pass, in which the bow can come back."""
    bar = tune.bar_of[note_id]
    place = next(place for place, note in enumerate(tune.bars[bar].notes) if note.id == note_id)
    if place:
        return tune.bars[bar].notes[place - 1].is_rest
    before = [strokes.order[played.visit - 1].bar for played in strokes.by_note[note_id] if played.visit]
    return any(tune.bars[other].notes and tune.bars[other].notes[-1].is_rest for other in before)


def _slur(tune: Tune, bowing: Bowing, notes: list[Note]) -> Change | None:
    """Slur each note to the one before it, if both are strokes of their own in one bar and differ in pitch."""
    befores = []
    for note in notes:
        before = _separate_before(tune, bowing, note)
        if before is None:
            return None
        befores.append(before)
    ids = tuple(note.id for note in notes)
    bars = [tune.bar_of[note_id] for note_id in ids]
    label = tr(
        "Slur notes {first} and {second} of {bars}",
        first=_number(tune, befores[0].id), second=_number(tune, ids[0]), bars=words.bars(tune, bars),
    )  # fmt: skip
    cost = COSTS.slur * len(ids) + _place_cost(tune, bowing, befores[0], notes[0])
    return Change(cost, Remedy(label, partial(_joined, ids), len(ids)))


def _split(tune: Tune, bowing: Bowing, notes: list[Note]) -> Change | None:
    """Begin a new stroke on each note, if it is slurred now."""
    if any(bowing.joins.get(note.id) is not Join.SLUR for note in notes):
        return None
    ids = tuple(note.id for note in notes)
    where = words.bars(tune, [tune.bar_of[note_id] for note_id in ids])
    number = _number(tune, ids[0])
    if number > 1:
        label = tr(
            "Part the slur between notes {first} and {second} of {bars}", first=number - 1, second=number, bars=where
        )
    else:
        label = tr("Part the slur into {bars}", bars=where)
    slurs = sum(_slurs_more(tune, bowing, note_id) for note_id in ids)
    return Change(COSTS.split * len(ids), Remedy(label, partial(_parted, ids), slurs))


def _separate_before(tune: Tune, bowing: Bowing, note: Note) -> Note | None:
    """The note struck before this one, if both are strokes of their own in one bar, nothing fixed, and not equal."""
    if note.id in bowing.joins or note.id in bowing.marks or note.id in bowing.retakes or not can_join(tune, note.id):
        return None
    before = tune.before(note.id)
    while before is not None and before.held:
        before = tune.before(before.id)
    after = next_struck(tune, note.id)
    if before is None or before.id in bowing.joins or (after is not None and after.id in bowing.joins):
        return None
    in_one_bar = tune.bar_of[before.id] == tune.bar_of[note.id]
    return before if in_one_bar and before.pitches != note.pitches else None


def _place_cost(tune: Tune, bowing: Bowing, before: Note, note: Note) -> int:
    """What weighs against a slur of two notes at this place."""
    index = tune.bar_of[note.id]
    bar = tune.bars[index]
    places, beat = _grid(bowing.plan_in(index), bar.meter)
    cost = COSTS.on_the_accent * (bar.start + before.at in places)
    cost += COSTS.onto_an_accent * (bar.start + note.at in places)
    cost += COSTS.over_a_beat * ((bar.start + note.at) % beat == 0)
    cost += COSTS.in_a_tuplet * bool(before.tuplet or note.tuplet)
    leap = abs(before.pitches[-1].height - note.pitches[-1].height) - 1
    cost += min(COSTS.by_leap * max(leap, 0), COSTS.highest_leap)
    beyond_a_quarter = max(before.length + note.length - 1, Fraction(0))
    return cost + int(COSTS.long_note * beyond_a_quarter)


@lru_cache(maxsize=256)
def _grid(plan: AccentPlan, meter: Meter) -> tuple[frozenset[Fraction], Fraction]:
    """The accented places of a bar, those on the beat where a plan has none of its own, and the length of a beat."""
    own = plan.kind in (PlanKind.PLACES, PlanKind.BACKBEAT)
    return frozenset(accented_places(plan if own else AccentPlan(), meter)), meter.beat_length


def _number(tune: Tune, note_id: str) -> int:
    """Place of a note among the notes of its bar, from 1; rests do not count."""
    notes = [note.id for note in tune.bars[tune.bar_of[note_id]].notes if not note.is_rest]
    return notes.index(note_id) + 1


def _slurs_more(tune: Tune, bowing: Bowing, note_id: str) -> int:
    """How many slurs more there are (or -1) if a stroke is parted before a note."""
    struck = [note.id for note in stroke_notes(tune, bowing, note_id) if not note.held]
    first = struck.index(note_id)
    return (first > 1) + (len(struck) - first > 1) - 1


def _joined(note_ids: Iterable[str], tune: Tune, bowing: Bowing) -> Bowing:
    for note_id in note_ids:
        bowing = join(tune, bowing, note_id)
    return bowing


def _both(first: Remedy, second: Remedy, tune: Tune, bowing: Bowing) -> Bowing:
    return second.edit(tune, first.edit(tune, bowing))


def _parted(note_ids: Iterable[str], tune: Tune, bowing: Bowing) -> Bowing:
    for note_id in note_ids:
        bowing = separate(bowing, note_id)
    return bowing
