"""Material that is written again and bowed another way, compared as on the first pass.

What is the same binds, what is merely like suggests: the one is a warning or a note, the other a note. Bars of two
sections that lie equally far apart and differ in the same way are told together, so that a phrase is one finding; a
bar of it that comes with one note changed is told with it.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Hashable, Iterator
from dataclasses import dataclass
from enum import Enum
from functools import partial

from core.bowing import Bow, Join, fix_bow
from core.checks import words
from core.checks.finding import Finding, Remedy, Severity
from core.checks.view import View
from core.likeness import Likeness, Model, models
from core.once import once
from core.order import sections
from core.recurrence import is_material, recurring_bars
from core.tune import Bar, Note, Tune

LIKE = {
    Likeness.ONE_NOTE: "but for one note",
    Likeness.SHAPE: "in rhythm, rises and falls",
}
LIKEWISE = re.compile(r"\b(segue|simile|sim\.)", re.IGNORECASE)
ANSWERING_DISTANCES = (1, 2, 4, 8, 16)  # bars, of a motif, a phrase, a part and a part played twice
INTERVALS = ("", "a step", "a third", "a fourth", "a fifth", "a sixth", "a seventh", "an octave")


class Bowed(Enum):
    """How a bar is bowed beside its model."""

    ALIKE = "alike"
    OTHER_BOW = "on the other bow"
    OTHER_SLURS = "slurred differently"


def other_bow(view: View) -> Iterator[Finding]:
    """Phrases with the same slurs that come again in the other direction."""
    for group in _groups(view, Bowed.OTHER_BOW):
        if group.is_same:
            new, bow = _turn(view, group)
            if new is view.sounding(group.again[0])[0]:
                where, told = "", _beginnings(view, group)
            else:
                where = f", from {words.note(view.tune, new.id)} on"
                told = (
                    f"there {bow.value} in {words.bars(view.tune, group.first[:1])}, "
                    f"{bow.turned.value} in {words.bars(view.tune, group.again[:1])}"
                )
            text = f"{_bring(view, group)} on the other bow{where} ({told})"
            in_one_run = group.again == list(range(group.again[0], group.again[-1] + 1))
            remedies = _begin_as_before(view, new.id, bow) if in_one_run else ()
            yield _finding(view, "phrase-on-other-bow", Severity.WARNING, group, text, remedies)


def other_slurs(view: View) -> Iterator[Finding]:
    """Phrases that come again with other slurs or hooks; a bar that begins on the other bow besides is named.

    Not of bars without any behind the word "segue", which in print says: slur on likewise.
    """
    for group in _groups(view, Bowed.OTHER_SLURS):
        if group.is_same:
            text = f"{_bring(view, group)} slurred differently"
            if view.bows(group.first[0])[0] is not view.bows(group.again[0])[0]:
                text += f" ({_beginnings(view, group)})"
            yield _finding(view, "phrase-slurred-differently", Severity.NOTE, group, text)


def like_on_other_bow(view: View) -> Iterator[Finding]:
    """Phrases that are like an earlier one and begin on the other bow."""
    for group in _groups(view, Bowed.OTHER_BOW):
        if group.is_telling_likeness:
            come = "comes" if len(view.numbers(group.again)) == 1 else "come"
            text = f"{_are_like(view, group)} and {come} on the other bow ({_beginnings(view, group)})"
            yield _finding(view, "like-on-other-bow", Severity.NOTE, group, text)


def like_other_slurs(view: View) -> Iterator[Finding]:
    """Phrases that are an earlier one transposed and have other slurs."""
    for group in _groups(view, Bowed.OTHER_SLURS):
        if group.is_telling_likeness:
            are = "is" if len(view.numbers(group.again)) == 1 else "are"
            text = f"{_are_like(view, group)} and {are} slurred differently"
            yield _finding(view, "like-slurred-differently", Severity.NOTE, group, text)


def consistency(view: View) -> float:
    """Share of the notes in recurring bars whose direction and join are the commonest among their recurrences.

    The first pass counts; where two are as common, the one written first. How the first note of a bar is joined to
    the bar before is left out. 1.0 where nothing recurs.
    """
    alike = total = 0
    for bars in recurring_bars(view.tune):
        played = [bar for bar in bars if view.bows(bar)]
        bowed = {(view.bows(bar), _inner_joins(view, bar)) for bar in played}
        notes = len(view.sounding(bars[0])) * len(played)
        total += notes
        if len(bowed) < 2:
            alike += notes
            continue
        copies = [zip(view.bows(bar), _inner_joins(view, bar), strict=True) for bar in played]
        alike += sum([max(Counter(of_note).values()) for of_note in zip(*copies, strict=True)])
    return alike / total if total else 1.0


def _inner_joins(view: View, bar: int) -> tuple[Join | None, ...]:
    """How the notes of a bar are joined, but for the one that opens it."""
    joins = view.joins_in.get(bar)
    if joins is None:
        return (None,) * len(view.sounding(bar))
    return joins if view.tune.bars[bar].notes[0].is_rest else (None, *joins[1:])


@dataclass(frozen=True, slots=True)
class _Group:
    """Bars that differ from their models in one way.

    Attributes:
        how: In which way.
        steps: How many steps of the scale they are transposed.
        bars: By index, ascending, with their models.
    """

    how: Bowed
    steps: int
    bars: dict[int, Model]

    @property
    def again(self) -> list[int]:
        """Indexes of the bars."""
        return list(self.bars)

    @property
    def first(self) -> list[int]:
        """Indexes of their models."""
        return [model.bar for model in self.bars.values()]

    @property
    def is_same(self) -> bool:
        """Something in it comes again note for note."""
        return any(model.likeness is Likeness.SAME for model in self.bars.values())

    @property
    def is_telling_likeness(self) -> bool:
        """Nothing in it is the same, but it lies where a phrase is answered: next to it, or so many phrases on.

        A single bar elsewhere is like another by chance, and a sequence that runs on through its own bars is no
        answer.
        """
        model = next(iter(self.bars.values()))
        answers = len(self.bars) > 1 or model.distance in ANSWERING_DISTANCES
        return not self.is_same and answers and self.bars.keys().isdisjoint(self.first)


def _groups(view: View, how: Bowed) -> Iterator[_Group]:
    """The bars that are bowed in this way, by first bar."""
    return (group for group in _all_groups(view) if group.how is how)


@once
def _all_groups(view: View) -> tuple[_Group, ...]:
    """Bars and their models, drawn together by how they differ and by what lies between them."""
    groups: dict[Hashable, _Group] = {}
    for bar, model in models(view.tune).items():
        how = _compare(view, bar, model)
        if how is not Bowed.ALIKE:
            notes_stay = model.likeness in (Likeness.SAME, Likeness.ONE_NOTE)
            key = (
                how,
                model.distance,
                view.section_of(bar),
                view.section_of(model.bar),
                notes_stay or model.likeness,
                model.steps,
            )
            groups.setdefault(key, _Group(how, model.steps, {}))
            groups[key].bars[bar] = model
    return tuple(
        sorted(
            (group for group in groups.values() if any(_says_something(view.tune.bars[bar]) for bar in group.bars)),
            key=lambda group: group.again[0],
        )
    )


def _says_something(bar: Bar) -> bool:
    """A pick-up alone, however it is bowed, is told by the phrase that it leads to."""
    return is_material(bar) and not bar.is_pickup


def _compare(view: View, bar: int, model: Model) -> Bowed:
    """Compare a bar with its model; how its first note is joined counts where the bar before has its model before."""
    old, new = view.bows(model.bar), view.bows(bar)
    if not old or not new:
        return Bowed.ALIKE  # a part that is not played
    if model.likeness is Likeness.ONE_NOTE:
        return Bowed.ALIKE if old[0] is new[0] else Bowed.OTHER_BOW
    before = models(view.tune).get(bar - 1)
    goes_on = before is not None and before.bar == model.bar - 1 and before.likeness is model.likeness
    slurs, slurs_before = (view.joins_in.get(index, (None,) * len(old)) for index in (bar, model.bar))
    if slurs[not goes_on :] != slurs_before[not goes_on :]:
        left_open = bar not in view.joins_in and bar in _goes_on_likewise(view.tune)
        return Bowed.ALIKE if model.likeness is Likeness.SHAPE or left_open else Bowed.OTHER_SLURS
    alike = old == new if model.likeness is Likeness.SAME else old[0] is new[0]
    return Bowed.ALIKE if alike else Bowed.OTHER_BOW


@once
def _goes_on_likewise(tune: Tune) -> frozenset[int]:
    """Bars (indexes) from a "segue" or "simile" to the end of the section, where slurs are left to the player."""
    found = set()
    for section in sections(tune):
        says = [bar for bar in section if any(LIKEWISE.search(said.text) for said in tune.bars[bar].words)]
        found |= set(range(says[0], section.stop)) if says else set()
    return frozenset(found)


def _turn(view: View, group: _Group) -> tuple[Note, Bow]:
    """The first note of a group that comes on the other bow, and the bow that it is compared with."""
    first, again = group.first[0], group.again[0]
    compared = zip(view.sounding(again), view.bows(first), view.bows(again), strict=False)
    if group.bars[again].likeness is not Likeness.SAME:
        note, before, _ = next(compared)
        return note, before
    return next((note, before) for note, before, now in compared if now is not before)


def _bring(view: View, group: _Group) -> str:
    verb = "brings" if len(view.numbers(group.again)) == 1 else "bring"
    changed = [bar for bar, model in group.bars.items() if model.likeness is Likeness.ONE_NOTE]
    but = f", {words.bars(view.tune, changed)} with one note changed," if changed else ""
    return f"{words.bars(view.tune, group.again)} {verb} {words.bars(view.tune, group.first)} again{but}"


def _are_like(view: View, group: _Group) -> str:
    verb = "is" if len(view.numbers(group.again)) == 1 else "are"
    how = LIKE.get(next(iter(group.bars.values())).likeness)
    if how is None:
        how = f"{INTERVALS[abs(group.steps)]} {'higher' if group.steps > 0 else 'lower'}"
    return f"{words.bars(view.tune, group.again)} {verb} like {words.bars(view.tune, group.first)}, {how},"


def _beginnings(view: View, group: _Group) -> str:
    first, again = group.first[0], group.again[0]
    bows = [view.bows(bar)[0].value for bar in (first, again)]
    old, new = (words.bars(view.tune, [bar]) for bar in (first, again))
    return f"{old} began {bows[0]}, {new} begins {bows[1]}"


def _begin_as_before(view: View, note_id: str, bow: Bow) -> tuple[Remedy, ...]:
    """Fix the direction where the return begins, if a stroke begins there."""
    if not view.passes(note_id)[0].starts:
        return ()
    label = f"Take {words.note_of_bar(view.tune, note_id)} {bow.value}"
    return (Remedy(label, partial(fix_bow, note_id=note_id, bow=bow)),)


def _finding(
    view: View, rule: str, severity: Severity, group: _Group, text: str, remedies: tuple[Remedy, ...] = ()
) -> Finding:
    notes = tuple(note.id for bar in group.again for note in view.sounding(bar))
    return Finding(rule, severity, view.numbers(group.again), None, notes, words.sentence(text), remedies)
