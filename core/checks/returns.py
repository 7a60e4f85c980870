"""Material that is written again and bowed another way, compared as on the first pass.

What is the same binds, what is merely like suggests: the one is a warning or a note, the other a note. Bars of two
sections that lie equally far apart and differ in the same way are told together, so that a phrase is one finding; a
bar of it that comes with one note changed is told with it.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Hashable, Iterator
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
from core.translation import plural, sentence, tr, translatable
from core.tune import Bar, Note, Tune
from core.values import dataclass

LIKE = translatable({
    Likeness.ONE_NOTE: "but for one note",
    Likeness.SHAPE: "in rhythm, rises and falls",
})  # fmt: skip
LIKEWISE = re.compile(r"\b(segue|simile|sim\.)", re.IGNORECASE)
ANSWERING_DISTANCES = (1, 2, 4, 8, 16)  # bars, of a motif, a phrase, a part and a part played twice
HIGHER = translatable((
    "", "a step higher", "a third higher", "a fourth higher", "a fifth higher", "a sixth higher", "a seventh higher",
    "an octave higher",
))  # fmt: skip
LOWER = translatable((
    "", "a step lower", "a third lower", "a fourth lower", "a fifth lower", "a sixth lower", "a seventh lower",
    "an octave lower",
))  # fmt: skip


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
                text = plural(
                    "{bars} brings {first} again{changed} on the other bow ({beginnings})",
                    "{bars} bring {first} again{changed} on the other bow ({beginnings})",
                    _count(view, group), "n: bars", beginnings=_beginnings(view, group), **_brought(view, group),
                )  # fmt: skip
            else:
                text = plural(
                    "{bars} brings {first} again{changed} on the other bow, from {note} on "
                    "(there {old} in {old_bar}, {new} in {new_bar})",
                    "{bars} bring {first} again{changed} on the other bow, from {note} on "
                    "(there {old} in {old_bar}, {new} in {new_bar})",
                    _count(view, group), "n: bars", note=words.note(view.tune, new.id),
                    old=words.direction(bow), old_bar=words.bars(view.tune, group.first[:1]),
                    new=words.direction(bow.turned), new_bar=words.bars(view.tune, group.again[:1]),
                    **_brought(view, group),
                )  # fmt: skip
            in_one_run = group.again == list(range(group.again[0], group.again[-1] + 1))
            remedies = _begin_as_before(view, new.id, bow) if in_one_run else ()
            yield _finding(view, "phrase-on-other-bow", Severity.WARNING, group, text, remedies)


def other_slurs(view: View) -> Iterator[Finding]:
    """Phrases that come again with other slurs or hooks; a bar that begins on the other bow besides is named.

    Not of bars without any behind the word "segue", which in print says: slur on likewise.
    """
    for group in _groups(view, Bowed.OTHER_SLURS):
        if group.is_same:
            if view.bows(group.first[0])[0] is view.bows(group.again[0])[0]:
                text = plural(
                    "{bars} brings {first} again{changed} slurred differently",
                    "{bars} bring {first} again{changed} slurred differently",
                    _count(view, group), "n: bars", **_brought(view, group),
                )  # fmt: skip
            else:
                text = plural(
                    "{bars} brings {first} again{changed} slurred differently ({beginnings})",
                    "{bars} bring {first} again{changed} slurred differently ({beginnings})",
                    _count(view, group), "n: bars", beginnings=_beginnings(view, group), **_brought(view, group),
                )  # fmt: skip
            yield _finding(view, "phrase-slurred-differently", Severity.NOTE, group, text)


def like_on_other_bow(view: View) -> Iterator[Finding]:
    """Phrases that are like an earlier one and begin on the other bow."""
    for group in _groups(view, Bowed.OTHER_BOW):
        if group.is_telling_likeness:
            text = plural(
                "{bars} is like {first}, {how}, and comes on the other bow ({beginnings})",
                "{bars} are like {first}, {how}, and come on the other bow ({beginnings})",
                _count(view, group), "n: bars", how=_likeness(group), beginnings=_beginnings(view, group),
                bars=words.bars(view.tune, group.again), first=words.bars(view.tune, group.first),
            )  # fmt: skip
            yield _finding(view, "like-on-other-bow", Severity.NOTE, group, text)


def like_other_slurs(view: View) -> Iterator[Finding]:
    """Phrases that are an earlier one transposed and have other slurs."""
    for group in _groups(view, Bowed.OTHER_SLURS):
        if group.is_telling_likeness:
            text = plural(
                "{bars} is like {first}, {how}, and is slurred differently",
                "{bars} are like {first}, {how}, and are slurred differently",
                _count(view, group), "n: bars", how=_likeness(group),
                bars=words.bars(view.tune, group.again), first=words.bars(view.tune, group.first),
            )  # fmt: skip
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


def _count(view: View, group: _Group) -> int:
    """How many bars a group has, for the verb."""
    return len(view.numbers(group.again))


def _brought(view: View, group: _Group) -> dict[str, str]:
    """Values of the texts on what comes again: its bars, those before, and which have one note changed."""
    bars = [bar for bar, model in group.bars.items() if model.likeness is Likeness.ONE_NOTE]
    changed = (
        tr(", {bars} with one note changed,", "inside a sentence", bars=words.bars(view.tune, bars)) if bars else ""
    )
    return {
        "bars": words.bars(view.tune, group.again), "first": words.bars(view.tune, group.first), "changed": changed,
    }  # fmt: skip


def _likeness(group: _Group) -> str:
    how = LIKE.get(next(iter(group.bars.values())).likeness)
    return tr(how or (HIGHER if group.steps > 0 else LOWER)[abs(group.steps)])


def _beginnings(view: View, group: _Group) -> str:
    first, again = group.first[0], group.again[0]
    return tr(
        "{old_bar} began {old}, {new_bar} begins {new}",
        old_bar=words.bars(view.tune, [first]), old=words.direction(view.bows(first)[0]),
        new_bar=words.bars(view.tune, [again]), new=words.direction(view.bows(again)[0]),
    )  # fmt: skip


def _begin_as_before(view: View, note_id: str, bow: Bow) -> tuple[Remedy, ...]:
    """Fix the direction where the return begins, if a stroke begins there."""
    if not view.passes(note_id)[0].starts:
        return ()
    label = tr("Take {note} {direction}", note=words.note_of_bar(view.tune, note_id), direction=words.direction(bow))
    return (Remedy(label, partial(fix_bow, note_id=note_id, bow=bow)),)


def _finding(
    view: View, rule: str, severity: Severity, group: _Group, text: str, remedies: tuple[Remedy, ...] = ()
) -> Finding:
    notes = tuple(note.id for bar in group.again for note in view.sounding(bar))
    return Finding(rule, severity, view.numbers(group.again), None, notes, sentence(text), remedies)
