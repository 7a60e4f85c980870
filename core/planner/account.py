"""What one bowing does otherwise than another, in words: bar by bar, and in one line."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from core.accents import Accent, Met, weigh
from core.bowing import Bowing
from core.checks import words
from core.planner.counts import retake_count, slur_count
from core.planner.plan import Plan
from core.strokes import Strokes, work_out
from core.translation import listed, plural, sentence, tr
from core.tune import Note, Tune
from core.values import dataclass

MISSED = {Met.UP, Met.BURIED}
MOST_TOLD = 2  # differences in slurs


@dataclass(frozen=True, slots=True)
class Change:
    """What is otherwise in one bar.

    Attributes:
        bar: Index in ``Tune.bars``.
        notes: Ids of the notes whose slur, mark or retake differs; empty where only directions do.
        text: What and to what end.
    """

    bar: int
    notes: tuple[str, ...]
    text: str


def changes(tune: Tune, before: Bowing, after: Bowing) -> tuple[Change, ...]:
    """What the second bowing does otherwise than the first, for each bar where it does, in written order.

    Accents are told by the plan of the second; none of it may be by phrase.
    """
    before = replace(before, accents=after.accents, accent_changes=after.accent_changes)
    old, new = work_out(tune, before), work_out(tune, after)
    old_accents, new_accents = (weigh(tune, bowing, strokes).met for bowing, strokes in ((before, old), (after, new)))
    found = []
    for index, bar in enumerate(tune.bars):
        notes = [note for note in bar.notes if not note.is_rest]
        differing = tuple(note.id for note in notes if _choice(before, note) != _choice(after, note))
        turned = [note for note in notes if old.bows[note.id] != new.bows[note.id]]
        if differing or turned:
            told = _slurs(notes, before, after) + _lifts(notes, before, after)
            told += _direction(old, new, notes)
            told += _effect(
                [one for one in old_accents if one.bar == index], [one for one in new_accents if one.bar == index]
            )
            found.append(Change(index, differing, _told(told or [tr("is joined or marked otherwise")])))
    return tuple(found)


def difference(best: Plan, other: Plan) -> str:
    """One line on how another plan differs from the best: "2 slurs more; slurs notes 3–4 in bars 1 and 5."."""
    tune = best.problem.tune
    told = []
    first_bows = [work_out(tune, plan.bowing).played[0].bow for plan in (best, other)]
    if first_bows[0] is not first_bows[1]:
        told.append(tr("begins on {bow}", bow=words.a_bow(first_bows[1])))
    told += _counted(
        missed=other.score.missed - best.score.missed,
        broken=other.score.broken - best.score.broken,
        slurs=slur_count(tune, other.bowing) - slur_count(tune, best.bowing),
        retakes=retake_count(tune, other.bowing) - retake_count(tune, best.bowing),
    )
    slurs = {
        index: tr(", ", "between parts of a sentence").join(told_here)
        for index, bar in enumerate(tune.bars)
        if (told_here := _slurs([note for note in bar.notes if not note.is_rest], best.bowing, other.bowing))
    }
    by_text: dict[str, list[int]] = {}
    for index, text in slurs.items():
        by_text.setdefault(text, []).append(index)
    told += [
        tr("{change} in {bars}", change=text, bars=words.bars(tune, where))
        for text, where in list(by_text.items())[:MOST_TOLD]
    ]
    if len(by_text) > MOST_TOLD:
        told.append(tr("and more"))
    return _told(told or [tr("the other bow throughout")])


def _told(clauses: Sequence[str]) -> str:
    """Clauses as one sentence."""
    return sentence(tr("; ", "between clauses").join(clauses))


def _counted(missed: int, broken: int, slurs: int, retakes: int) -> list[str]:
    """How much more (positive) or less of each there is, where that is otherwise."""
    return [
        text
        for count, text in (
            (missed, plural("1 accent more missed", "{n} accents more missed", missed)),
            (-missed, plural("1 accent fewer missed", "{n} accents fewer missed", -missed)),
            (broken, plural("1 thing more broken", "{n} things more broken", broken)),
            (-broken, plural("1 thing fewer broken", "{n} things fewer broken", -broken)),
            (slurs, plural("1 slur more", "{n} slurs more", slurs)),
            (-slurs, plural("1 slur fewer", "{n} slurs fewer", -slurs)),
            (retakes, plural("1 retake more", "{n} retakes more", retakes)),
            (-retakes, plural("1 retake fewer", "{n} retakes fewer", -retakes)),
        )
        if count > 0
    ]


def _choice(bowing: Bowing, note: Note) -> object:
    return bowing.joins.get(note.id), bowing.marks.get(note.id), note.id in bowing.retakes


def _slurs(notes: Sequence[Note], before: Bowing, after: Bowing) -> list[str]:
    """Which notes are slurred now, and which are no longer."""
    numbers = {note.id: number for number, note in enumerate(notes, 1)}
    told = []
    for here, there, slurred in ((after, before, True), (before, after, False)):
        new = [note.id for note in notes if note.id in here.joins and note.id not in there.joins]
        runs: list[list[int]] = []
        for note_id in new:
            number = numbers[note_id]
            if runs and runs[-1][1] == number - 1:
                runs[-1][1] = number
            else:
                runs.append([number - 1, number])
        names = [
            tr("note {last} with the bar before", last=last) if not first and last == 1
            else tr("notes 1–{last} with the bar before", last=last) if not first
            else tr("notes {first}–{last}", first=first, last=last)
            for first, last in runs
        ]  # fmt: skip
        if names:
            told.append(tr("slurs {notes}" if slurred else "parts {notes}", notes=listed(names)))
    return told


def _lifts(notes: Sequence[Note], before: Bowing, after: Bowing) -> list[str]:
    told = []
    for number, note in enumerate(notes, 1):
        mark, old = after.marks.get(note.id), before.marks.get(note.id)
        if note.id in after.retakes and note.id not in before.retakes:
            told.append(tr("retakes note {number}", number=number))
        elif mark is not None and mark != old:
            told.append(tr("takes note {number} on {bow}", number=number, bow=words.a_bow(mark.bow)))
        elif note.id in before.retakes and note.id not in after.retakes:
            told.append(tr("retakes note {number} no more", number=number))
        elif old is not None and mark is None:
            told.append(tr("drops the mark on note {number}", number=number))
    return told


def _direction(old: Strokes, new: Strokes, notes: Sequence[Note]) -> list[str]:
    """How the bar begins, where that is otherwise."""
    first = notes[0].id
    bows, now = set(old.bows[first]), set(new.bows[first])
    if bows == now or len(now) != 1:
        return []
    bow = words.a_bow(now.pop())
    if len(bows) == 1:
        return [tr("begins on {bow}, not {other}", bow=bow, other=words.a_bow(bows.pop()))]
    return [tr("begins on {bow} every time", bow=bow)]


def _effect(old: Sequence[Accent], new: Sequence[Accent]) -> list[str]:
    """How many accents are driven, where that is otherwise; every playing for itself."""
    driven, now = (sum(one.met is Met.DRIVEN for one in accents) for accents in (old, new))
    attacked = now + sum(one.met in MISSED for one in new)
    if driven == now or not attacked:
        return []
    return [
        plural(
            "drives {now} of 1 accent, not {driven}",
            "drives {now} of {n} accents, not {driven}",
            attacked,
            now=now,
            driven=driven,
        )
    ]
