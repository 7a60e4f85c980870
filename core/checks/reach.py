"""Where the hair does not last: single strokes, and strokes that drift towards the tip or the frog."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import sqrt

from core.checks import words
from core.checks.finding import Finding, Severity
from core.checks.reach_bounds import may_drift, may_run_out
from core.checks.view import View, neighbours
from core.reach import Move, Reach, ReachSettings, runs_out
from core.tempos import Pace
from core.translation import number, plural, sentence, tr, translatable
from core.values import dataclass

EASY_RATIO = (
    3  # Saunders teaches a single note that takes as much bow as three slurred ones: up to there it is practice
)

BEATS = translatable({
    Fraction(1, 2): "eighth", Fraction(3, 4): "dotted eighth", Fraction(1): "quarter", Fraction(3, 2): "dotted quarter",
    Fraction(2): "half", Fraction(3): "dotted half", Fraction(4): "whole note",
}, "beat of a tempo")  # fmt: skip
ENDS = translatable({True: "tip", False: "frog"})  # where down-bows and where up-bows run out


def beyond_bow(view: View) -> Iterator[Finding]:
    """Strokes that need more than the hair at the slowest speed."""
    if not may_run_out(view):
        return
    reach = view.reach
    if reach.longest_s * reach.settings.slowest_cm_s <= reach.settings.hair_cm:
        return
    longest: dict[str, float] = {}
    for move in reach.moves:
        if _is_beyond(reach, move):
            first = view.strokes.played[move.first].note_id
            longest[first] = max(longest.get(first, 0.0), move.seconds)
    for note_id in view.in_written_order(longest):
        bar = view.tune.bar_of[note_id]
        text = tr(
            "the stroke that begins with {note} lasts {seconds} seconds ({pace}): at {speed} cm/s, about as slow as a "
            "bow speaks, it needs more than {hair}",
            note=words.note_of_bar(view.tune, note_id), seconds=number(longest[note_id], ".1f"),
            pace=_pace(reach.pace), speed=number(reach.settings.slowest_cm_s), hair=_hair(reach),
        )  # fmt: skip
        yield Finding("stroke-beyond-bow", Severity.WARNING, view.numbers([bar]), None, (note_id,), sentence(text))


def runs_out_anyhow(view: View) -> Iterator[Finding]:
    """Places where no bow speeds within the limits leave hair for a stroke."""
    if not may_run_out(view):
        return
    reach = view.reach
    failing: dict[tuple[str, bool], set[int]] = {}
    for index in reach.runs_out:
        move = reach.moves[index]
        if not _is_beyond(reach, move):
            note = view.strokes.played[move.first]
            failing.setdefault((note.note_id, move.down), set()).add(note.pass_number)
    slowest, fastest = number(reach.settings.slowest_cm_s), number(reach.settings.fastest_cm_s)
    told = sorted(failing.items(), key=lambda item: view.tune.places[item[0][0]])
    for run in neighbours(told, lambda item: view.number(item[0][0]), lambda item: item[0][1]):
        ids = tuple(note_id for (note_id, _), _ in run)
        passes = sorted(set().union(*(passes for _, passes in run)))
        every = len(passes) == len(view.passes(ids[0]))
        bars = [view.tune.bar_of[note_id] for note_id in ids]
        values = {
            "where": words.in_bars(words.bars(view.tune, bars), () if every else passes),
            "end": tr(ENDS[run[0][0][1]]), "hair": _hair(reach), "slowest": slowest, "fastest": fastest,
            "pace": _pace(reach.pace),
        }  # fmt: skip
        if len(ids) == 1:
            text = tr(
                "{where}, the bow runs out at the {end}: {note} finds no room on {hair} at any bow speeds of {slowest} "
                "to {fastest} cm/s ({pace})",
                note=words.note(view.tune, ids[0]), **values,
            )  # fmt: skip
        else:
            text = plural(
                "{where}, the bow runs out at the {end}: 1 stroke finds no room on {hair} at any bow speeds of "
                "{slowest} to {fastest} cm/s ({pace})",
                "{where}, the bow runs out at the {end}: {n} strokes find no room on {hair} at any bow speeds of "
                "{slowest} to {fastest} cm/s ({pace})",
                len(ids), **values,
            )  # fmt: skip
        told_pass = None if every else passes[0]
        yield Finding("bow-runs-out", Severity.WARNING, view.numbers(bars), told_pass, ids, sentence(text))


def drift(view: View) -> Iterator[Finding]:
    """Runs of strokes that would leave the hair unless one direction goes over three times as fast as the other."""
    if not may_drift(view, *_easy_speeds(view.reach_settings)):
        return
    reach = view.reach
    drifts: dict[bool, dict[int, list[_Drift]]] = {}
    for found in _drifts(reach):
        for index in range(found.first, found.last + 1):
            bar = view.strokes.order[reach.moves[index].visit].bar
            drifts.setdefault(found.down, {}).setdefault(bar, []).append(found)
    for down, by_bar in drifts.items():
        for bars in neighbours(sorted(by_bar), lambda bar: view.tune.bars[bar].number, lambda bar: None):
            told = {found.first: found for bar in bars for found in by_bar[bar]}.values()
            times = sum(found.along_s for found in told) / sum(found.back_s for found in told)
            ids = tuple(note.id for bar in bars for note in view.sounding(bar))
            text = tr(
                "in {bars}, down-bows together last {times} times as long as up-bows: at one bow speed of {speed} cm/s "
                "({pace}) the bow drifts to the tip and off {hair}"
                if down
                else "in {bars}, up-bows together last {times} times as long as down-bows: at one bow speed of {speed} "
                "cm/s ({pace}) the bow drifts to the frog and off {hair}",
                bars=words.bars(view.tune, bars), times=number(times, ".1f"),
                speed=number(reach.settings.even_cm_s), pace=_pace(reach.pace), hair=_hair(reach),
            )  # fmt: skip
            yield Finding("bow-drift", Severity.NOTE, view.numbers(bars), None, ids, sentence(text))


@dataclass(frozen=True, slots=True)
class _Drift:
    """Moves, indexes ``first`` to ``last``, whose drift no speeds within ``EASY_RATIO`` of one another hold back.

    Attributes:
        first, last: Indexes in ``Reach.moves``.
        down: Towards the tip.
        along_s, back_s: Seconds of the moves in that direction and against it, the last left out so that whole turns
            of the pattern are compared.
    """

    first: int
    last: int
    down: bool
    along_s: float
    back_s: float


def _drifts(reach: Reach) -> list[_Drift]:
    """Drifts in playing order; a stroke counts for one whole bow at most, since a long note is drawn slowly anyway."""
    whole_s = reach.settings.hair_cm / reach.settings.even_cm_s
    moves = reach.moves
    if reach.longest_s > whole_s:
        moves = tuple(move._replace(seconds=min(move.seconds, whole_s)) for move in moves)
    found = []
    slowest, fastest = _easy_speeds(reach.settings)
    free = 0  # from here on the bow was set down anew
    for last in runs_out(moves, reach.settings.hair_cm, slowest, fastest):
        down = moves[last].down
        first, along_s, back_s = last, 0.0, 0.0
        along, back, farthest = 0.0, 0.0, 0.0
        for index in range(last - 1, free - 1, -1):
            if moves[index + 1].set_down:
                break
            if moves[index].down is down:
                along += moves[index].seconds
            else:
                back += moves[index].seconds
            if along - back > farthest:
                first, along_s, back_s, farthest = index, along, back, along - back
        found.append(_Drift(first, last, down, along_s, back_s))
        free = last + 1
    return found


def _easy_speeds(settings: ReachSettings) -> tuple[float, float]:
    """The slowest and the fastest speed, in cm/s, to hold a drift back with."""
    return settings.even_cm_s / sqrt(EASY_RATIO), settings.even_cm_s * sqrt(EASY_RATIO)


def _is_beyond(reach: Reach, move: Move) -> bool:
    return move.seconds * reach.settings.slowest_cm_s > reach.settings.hair_cm


def _hair(reach: Reach) -> str:
    return tr("{length} cm of hair", length=number(reach.settings.hair_cm))


def _pace(pace: Pace) -> str:
    if pace.tempo.beat in BEATS:
        beat = tr(BEATS[pace.tempo.beat], "beat of a tempo")
    else:
        beat = tr("{count} quarters", count=pace.tempo.beat)
    figure = tr("{beat} = {number}", "tempo", beat=beat, number=number(float(pace.tempo.per_minute)))
    if pace.dance is None:
        return figure
    return tr("{tempo}, usual for this dance" if pace.dance else "{tempo}, assumed", tempo=figure)
