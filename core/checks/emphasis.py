"""Accented places that are not driven by a down-bow."""

from __future__ import annotations

from collections import Counter
from collections.abc import Container, Iterator
from dataclasses import dataclass
from itertools import takewhile

from core.accent_plan import PlanKind
from core.accents import FULL_BARS_IN_A_PHRASE, Accent, Met, Silence, phrases
from core.checks import words
from core.checks.finding import Finding, Severity
from core.checks.view import View, neighbours
from core.once import once
from core.tune import Note, Tune

WHY = {
    Silence.REST: "a rest stands there",
    Silence.HELD: "a held note stands there",
    Silence.SOUNDING: "a note sounds on there",
}
REASONS = {
    Silence.REST: ("rest", "rests"),
    Silence.HELD: ("held note", "held notes"),
    Silence.SOUNDING: ("note that sounds on", "notes that sound on"),
}

PHRASE_PLANS = {PlanKind.ON_BEAT: "on the beat", PlanKind.BACKBEAT: "on the backbeat"}


def up(view: View) -> Iterator[Finding]:
    """Accents on up-bows; a pick-up is taken up so that the bar begins down (rule B6), and is not told."""
    for told in _told(view, Met.UP, _pickups(view.tune)):
        falls = "falls on an up-bow" if told.on_one_beat else "fall on up-bows"
        yield _finding(view, "accent-up", Severity.WARNING, told, f"{told.subject} {falls}")


def buried(view: View) -> Iterator[Finding]:
    """Accents inside a slur."""
    for told in _told(view, Met.BURIED):
        lies = "is buried inside a slur" if told.on_one_beat else "are buried inside slurs"
        yield _finding(view, "accent-buried", Severity.WARNING, told, f"{told.subject} {lies}")


def unstruck(view: View) -> Iterator[Finding]:
    """Accents where nothing is struck, but for what closes a phrase of four bars and the rest that opens a pick-up."""
    for told in _told(view, Met.UNSTRUCK, _closings(view.tune) | _opening_rests(view.tune)):
        reasons = Counter(accent.silence for accent in told.accents if accent.silence)
        if len(told.accents) == 1:
            text = f"{told.subject} is not struck: {WHY[next(iter(reasons))]}"
        else:
            are = "is" if told.on_one_beat else "are"
            counted = [f"{number} {REASONS[why][number > 1]}" for why, number in reasons.items()]
            text = f"{told.subject} {are} not struck ({words.listed(counted)})"
        yield _finding(view, "accent-unstruck", Severity.NOTE, told, text)


def phrase_plans(view: View) -> Iterator[Finding]:
    """What a plan by phrase takes."""
    phrases = view.accents.phrases
    if not phrases:
        return
    told = []
    for kind, where in PHRASE_PLANS.items():
        bars = [bar for phrase in phrases if phrase.kind is kind for bar in phrase.bars]
        if bars:
            told.append(f"{where} in {words.bars(view.tune, bars)}")
    yield Finding(
        "phrase-plans", Severity.NOTE, view.numbers(bar for phrase in phrases for bar in phrase.bars), None, (),
        words.sentence(f"phrase by phrase, the accents lie {words.listed(told)}"),
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Told:
    """Accents that are told in one finding.

    Attributes:
        accents: In written order.
        pass_number: The pass on which they are met so; None for every pass, or the first.
        subject: The words that name them.
        on_one_beat: All stand on the same beat of their bars, and the words say "the accent", not "accents".
    """

    accents: list[Accent]
    pass_number: int | None
    subject: str
    on_one_beat: bool


@once
def _closings(tune: Tune) -> frozenset[str]:
    """Notes and rests of the last bars of whole phrases, and what is tied into them."""
    closing = []
    for bars in phrases(tune):
        full = [bar for bar in bars if not tune.bars[bar].is_pickup]
        if len(full) >= FULL_BARS_IN_A_PHRASE:
            last = [bar for bar in full if tune.bars[bar].ending] or full[-1:]
            closing += [note for bar in last for note in tune.bars[bar].notes]
    ids = {note.id for note in closing}
    for note in closing:
        sounding: Note | None = note
        while sounding is not None and sounding.held:
            sounding = tune.before(sounding.id)
            if sounding is not None:
                ids.add(sounding.id)
    return frozenset(ids)


@once
def _pickups(tune: Tune) -> frozenset[str]:
    """Notes and rests of the pick-ups."""
    return frozenset(note.id for bar in tune.bars if bar.is_pickup for note in bar.notes)


@once
def _opening_rests(tune: Tune) -> frozenset[str]:
    """Rests of the pick-ups before their first note, which fill up the bar and are no part of the tune."""
    rests = [takewhile(lambda note: note.is_rest, bar.notes) for bar in tune.bars if bar.is_pickup]
    return frozenset(rest.id for opening in rests for rest in opening)


def _told(view: View, met: Met, left_out: Container[str] = ()) -> Iterator[_Told]:
    """Runs of accents met in one way, but for those of the plan at notes and rests (ids) left out.

    The first pass is told; a later one only where the place is met in another way although its bar is not turned
    round, for that is told of the bars already.
    """
    told: list[tuple[Accent, int | None]] = []
    for passes in _by_place(view):
        bar = passes[0].bar
        if passes[0].note_id in left_out and not passes[0].written:
            continue
        if all(accent.met is met for accent in passes):
            told.append((passes[0], None))
            continue
        turned = view.turned_passes.get(bar, ())
        told += [
            (accent, accent.pass_number) for accent in passes if accent.met is met and accent.pass_number not in turned
        ]
    bars = view.tune.bars
    for run in neighbours(
        told, lambda item: bars[item[0].bar].number, lambda item: item[1], lambda item: view.section_of(item[0].bar)
    ):
        accents, number = [accent for accent, _ in run], run[0][1]
        where = words.bars(view.tune, [accent.bar for accent in accents])
        when = "" if number is None else f" {words.times([number])}"
        beats = {words.beat(accent.place, bars[accent.bar].meter) for accent in accents}
        on_one_beat = len(beats) == 1
        what = f"the accent on {beats.pop()}" if on_one_beat else f"{len(run)} accents"
        yield _Told(accents, number, f"in {where}{when}, {what}", on_one_beat)


@once
def _by_place(view: View) -> tuple[list[Accent], ...]:
    """The accents of each written place, one for each pass, in written order."""
    by_place: dict[tuple[int, int], list[Accent]] = {}
    visit = place = -1
    for accent in view.accents.met:
        place = place + 1 if accent.visit == visit else 0  # every visit of a bar has the same places
        visit = accent.visit
        by_place.setdefault((accent.bar, place), []).append(accent)
    return tuple(by_place[key] for key in sorted(by_place))


def _finding(view: View, rule: str, severity: Severity, told: _Told, text: str) -> Finding:
    notes = tuple(dict.fromkeys(accent.note_id for accent in told.accents))
    bars = view.numbers(accent.bar for accent in told.accents)
    return Finding(rule, severity, bars, told.pass_number, notes, words.sentence(text))
