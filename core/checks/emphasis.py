"""Accented places that are not driven by a down-bow."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Container, Iterator, Mapping
from dataclasses import dataclass
from itertools import takewhile
from typing import NamedTuple

from core.accent_plan import PlanKind
from core.accents import FULL_BARS_IN_A_PHRASE, Met, Silence, Spot, phrases
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
    for told in _told(view, Met.UP, _pickups):
        falls = "falls on an up-bow" if told.on_one_beat else "fall on up-bows"
        yield _finding(view, "accent-up", Severity.WARNING, told, f"{told.subject} {falls}")


def buried(view: View) -> Iterator[Finding]:
    """Accents inside a slur."""
    for told in _told(view, Met.BURIED):
        lies = "is buried inside a slur" if told.on_one_beat else "are buried inside slurs"
        yield _finding(view, "accent-buried", Severity.WARNING, told, f"{told.subject} {lies}")


def unstruck(view: View) -> Iterator[Finding]:
    """Accents where nothing is struck, but for what closes a phrase of four bars and the rest that opens a pick-up."""
    for told in _told(view, Met.UNSTRUCK, lambda tune: _closings(tune) | _opening_rests(tune)):
        reasons = Counter(accent.spot.silence for accent in told.accents if accent.spot.silence)
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


class _Accented(NamedTuple):
    """An accented place of a bar (index), met in one way: on one pass, or where that is None on every pass."""

    bar: int
    spot: Spot
    pass_number: int | None

    def note_id(self, tune: Tune) -> str:
        """The note or rest that stands there."""
        return tune.bars[self.bar].notes[self.spot.note_index].id


@dataclass(frozen=True, slots=True)
class _Told:
    """Accents that are told in one finding.

    Attributes:
        accents: In written order.
        pass_number: The pass on which they are met so; None for every pass, or the first.
        subject: The words that name them.
        on_one_beat: All stand on the same beat of their bars, and the words say "the accent", not "accents".
    """

    accents: list[_Accented]
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


def _nothing(tune: Tune) -> Container[str]:
    return ()


def _told(view: View, met: Met, left_out: Callable[[Tune], Container[str]] = _nothing) -> Iterator[_Told]:
    """Runs of accents met in one way, but for those of the plan at notes and rests (ids) left out."""
    found = _by_met(view).get(met)
    if not found:
        return
    tune = view.tune
    silent = left_out(tune)
    told = [accent for accent in found if accent.spot.written or accent.note_id(tune) not in silent]
    for run in neighbours(
        told, lambda accent: tune.bars[accent.bar].number, lambda accent: accent.pass_number,
        lambda accent: view.section_of(accent.bar),
    ):  # fmt: skip
        number = run[0].pass_number
        where = words.bars(tune, [accent.bar for accent in run])
        when = "" if number is None else f" {words.times([number])}"
        spots = {id(accent.spot): accent for accent in run}.values()  # bars of one rhythm have the very same
        beats = {words.beat(accent.spot.place, tune.bars[accent.bar].meter) for accent in spots}
        on_one_beat = len(beats) == 1
        what = f"the accent on {beats.pop()}" if on_one_beat else f"{len(run)} accents"
        yield _Told(run, number, f"in {where}{when}, {what}", on_one_beat)


@once
def _by_met(view: View) -> Mapping[Met, list[_Accented]]:
    """What there is to tell of each way to meet an accent, in written order.

    The first pass is told; a later one only where the place is met in another way although its bar is not turned
    round, for that is told of the bars already.
    """
    found: dict[Met, list[_Accented]] = {}
    for bar, (spots, passes) in enumerate(zip(view.accents.spots, view.accents.by_bar, strict=True)):
        turned = view.turned_passes.get(bar, ())
        for spot, *mets in zip(spots, *passes, strict=True) if passes else ():
            if mets.count(mets[0]) == len(mets):
                found.setdefault(mets[0], []).append(_Accented(bar, spot, None))
                continue
            for number, met in enumerate(mets, start=1):
                if number not in turned:
                    found.setdefault(met, []).append(_Accented(bar, spot, number))
    return found


def _finding(view: View, rule: str, severity: Severity, told: _Told, text: str) -> Finding:
    notes = tuple(dict.fromkeys([accent.note_id(view.tune) for accent in told.accents]))
    bars = view.numbers([accent.bar for accent in told.accents])
    return Finding(rule, severity, bars, told.pass_number, notes, words.sentence(text))
