"""Accented places that are not driven by a down-bow."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from core.accent_plan import PlanKind
from core.accents import Accent, Met, Silence
from core.bowing import Bow
from core.checks import words
from core.checks.finding import Finding, Severity
from core.checks.view import View, neighbours

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


def up(view: View) -> Iterator[Finding]:
    """Accents on up-bows."""
    for accents, where, count in _told(view, Met.UP):
        text = f"{where} {count} on {words.A_BOW[Bow.UP]}" if len(accents) == 1 else f"{where} {count} on up-bows"
        yield _finding(view, "accent-up", Severity.WARNING, accents, text)


def buried(view: View) -> Iterator[Finding]:
    """Accents inside a slur."""
    for accents, where, count in _told(view, Met.BURIED):
        text = f"{where} {count} inside {'a slur' if len(accents) == 1 else 'slurs'}"
        yield _finding(view, "accent-buried", Severity.WARNING, accents, text)


def unstruck(view: View) -> Iterator[Finding]:
    """Accents where nothing is struck."""
    for accents, where, count in _told(view, Met.UNSTRUCK):
        silences = Counter(accent.silence for accent in accents if accent.silence)
        if len(accents) == 1:
            why = WHY[next(iter(silences))]
        else:
            why = words.listed([f"{n} {REASONS[why][n > 1]}" for why, n in silences.items()])
        yield _finding(
            view, "accent-unstruck", Severity.NOTE, accents, f"{where} {count} where nothing is struck ({why})"
        )


def phrase_plans(view: View) -> Iterator[Finding]:
    """What a plan by phrase takes."""
    phrases = view.accents.phrases
    if not phrases:
        return
    told = []
    for kind in (PlanKind.ON_BEAT, PlanKind.BACKBEAT):
        bars = [bar for phrase in phrases if phrase.kind is kind for bar in phrase.bars]
        if bars:
            told.append(
                f"{'on the beat' if kind is PlanKind.ON_BEAT else 'on the backbeat'} in {words.bars(view.tune, bars)}"
            )
    yield Finding(
        "phrase-plans", Severity.NOTE, view.numbers(range(len(view.tune.bars))), None, (),
        words.sentence(f"phrase by phrase, the accents lie {words.listed(told)}"),
    )  # fmt: skip


def _told(view: View, met: Met) -> Iterator[tuple[list[Accent], str, str]]:
    """Runs of accents met in one way that are worth telling, each with where they lie and how many they are.

    The first pass is told; a later one only where the place is met in another way although its bar is not turned
    round as a whole, for that is told of the bars already.
    """
    first_time = {(a.bar, a.place): a.met for a in view.accents.met if a.pass_number == 1}
    told = [
        accent
        for accent in view.accents.met
        if accent.met is met
        and (
            accent.pass_number == 1
            or (
                first_time.get((accent.bar, accent.place)) is not met
                and accent.pass_number not in view.turned_passes.get(accent.bar, ())
            )
        )
    ]
    told.sort(key=lambda accent: (accent.pass_number, accent.bar, accent.place))
    for run in neighbours(told, lambda accent: accent.bar, lambda accent: accent.pass_number):
        first = run[0]
        bars = words.bars(view.tune, [accent.bar for accent in run])
        again = "" if first.pass_number == 1 else f" {words.times([first.pass_number])}"
        if len(run) == 1:
            yield (
                run,
                f"in {bars}{again}, the accent on {words.beat(first.place, view.tune.bars[first.bar].meter)}",
                "falls",
            )
        else:
            yield run, f"in {bars}{again},", f"{len(run)} accents fall"


def _finding(view: View, rule: str, severity: Severity, accents: list[Accent], text: str) -> Finding:
    number = accents[0].pass_number if view.passes_of_bar(accents[0].bar) > 1 else None
    return Finding(
        rule, severity, view.numbers(accent.bar for accent in accents), number,
        tuple(dict.fromkeys(accent.note_id for accent in accents)), words.sentence(text),
    )  # fmt: skip
