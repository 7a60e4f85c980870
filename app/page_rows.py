"""The bowings on the page: what is drawn of each, and what tells them apart. No Qt."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any

from app.accent_strip import Accented, Place, accented
from app.here import Here
from core.bowing import Bowing
from core.check import Report
from core.differences import Difference, differences
from core.engraving.bow_signs import BowSign, MarkDensity, bow_signs
from core.tune import Tune
from core.values import dataclass

Check = Callable[[Bowing], Report]
NOTHING: Mapping[str, Difference] = {}


@dataclass(frozen=True, eq=False)
class Row:
    """What the page shows of one bowing.

    Attributes:
        place: Its place in ``Lesson.bowings``.
        here: Tune, bowing and strokes.
        signs: Its bow signs by note id.
        accents: Its accented places.
        differences: What tells it from the reference, by note id.
        told_from: The reference; None where nothing is compared, and in its own row.
    """

    place: int
    here: Here
    signs: Mapping[str, BowSign]
    accents: Mapping[Place, Accented]
    differences: Mapping[str, Difference]
    told_from: Here | None

    @property
    def name(self) -> str:
        return self.here.bowing.name


@dataclass(frozen=True, eq=False)
class Rows:
    """All bowings on the page.

    Attributes:
        rows: From the top; one of them where nothing is compared.
        active: Index of the one that keys act on.
        reference: Index of the one from which the others are told apart; None where nothing is compared.
        density: Which strokes carry a bow sign.
    """

    rows: tuple[Row, ...]
    active: int
    reference: int | None
    density: MarkDensity


def make_row(
    tune: Tune,
    place: int,
    bowing: Bowing,
    told_from: Here | None,
    density: MarkDensity,
    check: Check,
    known: Sequence[Row] = (),
) -> Row:
    """Work out what the page shows of one bowing.

    Args:
        tune: The tune.
        place: Place of the bowing in ``Lesson.bowings``.
        bowing: The bowing.
        told_from: The reference; None where nothing is compared, and for the reference itself.
        density: Which strokes carry a bow sign.
        check: Reports on a bowing.
        known: Rows of the same density that may be of this very bowing.
    """
    same = [row for row in known if row.here.tune is tune and row.here.bowing is bowing]
    if not same:  # the same by value was foreseen
        same = [row for row in known if row.here.tune is tune and row.here.bowing == bowing]
    old = next((row for row in same if _is_told_from(row, told_from)), same[0] if same else None)
    if old is None:
        report = check(bowing)
        here = Here(tune, bowing, report.strokes)
        signs, accents = bow_signs(tune, bowing, report.strokes, density), accented(report.accents)
    else:
        here = old.here if old.here.bowing is bowing else replace(old.here, bowing=bowing)
        signs, accents = old.signs, old.accents
    if told_from is None:
        apart = NOTHING
    elif old is not None and _is_told_from(old, told_from):
        apart = old.differences
    else:
        apart = differences(tune, bowing, here.strokes, told_from.bowing, told_from.strokes)
    if old is not None and old.place == place and old.here is here and old.told_from is told_from:
        return old
    return Row(place, here, signs, accents, apart, told_from)


def make_rows(
    tune: Tune,
    bowings: Sequence[tuple[int, Bowing]],
    active: int,
    reference: int | None,
    density: MarkDensity,
    check: Check,
    known: Sequence[Row] = (),
) -> Rows:
    """Work out what the page shows; what is known is taken from there.

    Args:
        tune: The tune.
        bowings: Place in ``Lesson.bowings`` and bowing of each row.
        active, reference: Indexes of rows.
        density: Which strokes carry a bow sign.
        check: Reports on a bowing.
        known: Rows of the same density.
    """
    told_from = None
    rows = {}
    if reference is not None:
        rows[reference] = make_row(tune, *bowings[reference], None, density, check, known)
        told_from = rows[reference].here
    for index, (place, bowing) in enumerate(bowings):
        if index != reference:
            rows[index] = make_row(tune, place, bowing, told_from, density, check, known)
    return Rows(tuple(rows[index] for index in range(len(bowings))), active, reference, density)


def changed_notes(tune: Tune, old: Bowing, new: Bowing) -> tuple[str, ...]:
    """Ids of the notes on which two bowings differ, in written order; where accent plans do, all of the bar."""
    changed: set[str] = set(old.retakes ^ new.retakes)
    for was, now in ((old.joins, new.joins), (old.marks, new.marks), (old.signs, new.signs)):
        if was is not now:
            changed.update(_changed_keys(dict(was.items()), dict(now.items())))
    if old.accents is not new.accents or old.accent_changes is not new.accent_changes:
        plans = zip(tune.bars, old.plans(len(tune.bars)), new.plans(len(tune.bars)), strict=True)
        changed.update(note.id for bar, was, now in plans if was != now for note in bar.notes)
    return tuple(sorted(changed.intersection(tune.places), key=tune.places.__getitem__))


def _changed_keys(was: dict[str, Any], now: dict[str, Any]) -> list[str]:
    """Keys with another value in either, or in one of them alone; no value is hashed, which costs the most."""
    return [key for key in was.keys() | now.keys() if was.get(key) is not now.get(key) and was.get(key) != now.get(key)]


def _is_told_from(row: Row, reference: Here | None) -> bool:
    """Whether the differences of a row are those from this reference, or from one that is the same by value."""
    if row.told_from is None or reference is None or row.told_from is reference:
        return row.told_from is reference
    return row.told_from.strokes is reference.strokes and row.told_from.bowing == reference.bowing
