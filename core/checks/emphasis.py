"""Accented places that are not driven by a down-bow."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Container, Iterator, Mapping
from itertools import takewhile
from typing import NamedTuple

from core.accent_plan import PlanKind
from core.accents import FULL_BARS_IN_A_PHRASE, Met, Silence, Spot, phrases
from core.checks import words
from core.checks.finding import Finding, Severity
from core.checks.view import View, neighbours
from core.once import once
from core.translation import listed, plural, sentence, tr, translatable
from core.tune import Note, Tune
from core.values import dataclass

WHY = translatable({
    Silence.REST: "{where}, the accent on {beat} is not struck: a rest stands there",
    Silence.HELD: "{where}, the accent on {beat} is not struck: a held note stands there",
    Silence.SOUNDING: "{where}, the accent on {beat} is not struck: a note sounds on there",
})  # fmt: skip
PHRASE_PLANS = translatable({
    PlanKind.ON_BEAT: "on the beat in {bars}",
    PlanKind.BACKBEAT: "on the backbeat in {bars}",
})  # fmt: skip


def up(view: View) -> Iterator[Finding]:
    """Accents on up-bows; a pick-up is taken up so that the bar begins down (rule B6), and is not told."""
    for told in _told(view, Met.UP, _pickups):
        if told.beat:
            text = tr("{where}, the accent on {beat} falls on an up-bow", where=told.where, beat=told.beat)
        else:
            text = plural(
                "{where}, 1 accent falls on an up-bow", "{where}, {n} accents fall on up-bows",
                len(told.accents), where=told.where,
            )  # fmt: skip
        yield _finding(view, "accent-up", Severity.WARNING, told, text)


def buried(view: View) -> Iterator[Finding]:
    """Accents inside a slur."""
    for told in _told(view, Met.BURIED):
        if told.beat:
            text = tr("{where}, the accent on {beat} is buried inside a slur", where=told.where, beat=told.beat)
        else:
            text = plural(
                "{where}, 1 accent is buried inside a slur", "{where}, {n} accents are buried inside slurs",
                len(told.accents), where=told.where,
            )  # fmt: skip
        yield _finding(view, "accent-buried", Severity.WARNING, told, text)


def unstruck(view: View) -> Iterator[Finding]:
    """Accents where nothing is struck, but for what closes a phrase of four bars and the rest that opens a pick-up."""
    for told in _told(view, Met.UNSTRUCK, lambda tune: _closings(tune) | _opening_rests(tune)):
        reasons = Counter(accent.spot.silence for accent in told.accents if accent.spot.silence)
        counted = listed([_silences(why, number) for why, number in reasons.items()])
        if len(told.accents) == 1:
            text = tr(WHY[next(iter(reasons))], where=told.where, beat=told.beat)
        elif told.beat:
            text = tr(
                "{where}, the accent on {beat} is not struck ({reasons})",
                where=told.where, beat=told.beat, reasons=counted,
            )  # fmt: skip
        else:
            text = plural(
                "{where}, 1 accent is not struck ({reasons})", "{where}, {n} accents are not struck ({reasons})",
                len(told.accents), where=told.where, reasons=counted,
            )  # fmt: skip
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
            told.append(tr(where, bars=words.bars(view.tune, bars)))
    yield Finding(
        "phrase-plans", Severity.NOTE, view.numbers(bar for phrase in phrases for bar in phrase.bars), None, (),
        sentence(tr("phrase by phrase, the accents lie {places}", places=listed(told))),
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
        where: In words the bars, and the pass where it is not every one.
        beat: In words the beat on which all stand in their bars, told as one accent; "" where they stand on several.
    """

    accents: list[_Accented]
    pass_number: int | None
    where: str
    beat: str


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


def _silences(why: Silence, n: int) -> str:
    """How many accents are not struck for one reason."""
    if why is Silence.REST:
        return plural("1 rest", "{n} rests", n)
    if why is Silence.HELD:
        return plural("1 held note", "{n} held notes", n)
    return plural("1 note that sounds on", "{n} notes that sound on", n)


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
        spots = {id(accent.spot): accent for accent in run}.values()  # bars of one rhythm have the very same
        beats = {words.beat(accent.spot.place, tune.bars[accent.bar].meter) for accent in spots}
        yield _Told(
            run,
            number,
            words.in_bars(where, () if number is None else [number]),
            beats.pop() if len(beats) == 1 else "",
        )


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
    return Finding(rule, severity, bars, told.pass_number, notes, sentence(text))
