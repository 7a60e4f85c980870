"""The bowings on the page: what is drawn of each, and what tells them apart. No Qt."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from app.accent_strip import Accented, Place, accented
from app.proposals import Here
from core.bowing import Bowing
from core.check import Report
from core.differences import Difference, differences
from core.engraving.bow_signs import BowSign, MarkDensity, bow_signs
from core.tune import Tune

Check = Callable[[Bowing], Report]


@dataclass(frozen=True, eq=False)
class Row:
    """What the page shows of one bowing.

    Attributes:
        place: Its place in ``Lesson.bowings``.
        here: Tune, bowing and strokes.
        signs: Its bow signs by note id.
        accents: Its accented places.
        differences: What tells it from the reference, by note id.
    """

    place: int
    here: Here
    signs: Mapping[str, BowSign]
    accents: Mapping[Place, Accented]
    differences: Mapping[str, Difference]

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

    def of(self, place: int) -> int | None:
        """Index of the row with this place in ``Lesson.bowings``."""
        return next((index for index, row in enumerate(self.rows) if row.place == place), None)


def make_rows(
    tune: Tune,
    bowings: Sequence[tuple[int, Bowing]],
    active: int,
    reference: int | None,
    density: MarkDensity,
    check: Check,
    before: Rows | None = None,
) -> Rows:
    """Work out what the page shows; what is as it was before is taken from there.

    Args:
        tune: The tune.
        bowings: Place in ``Lesson.bowings`` and bowing of each row.
        active, reference: Indexes of rows.
        density: Which strokes carry a bow sign.
        check: Reports on a bowing.
        before: What was shown before, of this tune or another.
    """
    known: dict[tuple[int, int], Row] = {}
    if before is not None and before.density is density:
        known = {(id(row.here.tune), id(row.here.bowing)): row for row in before.rows}

    def fresh(place: int, bowing: Bowing, told_from: Row | None) -> Row:
        old = known.get((id(tune), id(bowing)))
        if old is not None:
            here, signs, accents = old.here, old.signs, old.accents
        else:
            report = check(bowing)
            here = Here(tune, bowing, report.strokes)
            signs, accents = bow_signs(tune, bowing, report.strokes, density), accented(report.accents)
        apart = _apart(here, told_from, old, before)
        if old is not None and old.place == place and old.differences is apart:
            return old
        return Row(place, here, signs, accents, apart)

    told_from = fresh(*bowings[reference], None) if reference is not None else None
    rows = (
        told_from if index == reference and told_from is not None else fresh(place, bowing, told_from)
        for index, (place, bowing) in enumerate(bowings)
    )
    return Rows(tuple(rows), active, reference, density)


NOTHING: Mapping[str, Difference] = {}


def _apart(here: Here, told_from: Row | None, old: Row | None, before: Rows | None) -> Mapping[str, Difference]:
    if told_from is None:
        return NOTHING
    if old is not None and before is not None and before.reference is not None:
        was = before.rows[before.reference]
        if was is not old and was.here is told_from.here:
            return old.differences
    other = told_from.here
    return differences(here.tune, here.bowing, here.strokes, other.bowing, other.strokes)
