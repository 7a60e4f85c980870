"""What tells two bowings of one tune apart, note by note: slurs, directions, and what else stands on a note."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypeVar

from core.bowing import Bow, Bowing, Join, Signs
from core.strokes import Strokes
from core.tune import Tune
from core.values import dataclass

V = TypeVar("V")
N = TypeVar("N")


@dataclass(frozen=True, slots=True)
class Difference:
    """What differs on one note: (in the one bowing, in the other), or None for what does not.

    Attributes:
        joins: How the note shares the stroke of the note before it; None within for a stroke of its own.
        bows: Its direction on each pass.
        signs: Grace notes, ornaments, articulation and fingers.
    """

    joins: tuple[Join | None, Join | None] | None = None
    bows: tuple[tuple[Bow, ...], tuple[Bow, ...]] | None = None
    signs: tuple[Signs, Signs] | None = None


def differences(
    tune: Tune, bowing: Bowing, strokes: Strokes, other: Bowing, other_strokes: Strokes
) -> Mapping[str, Difference]:
    """What tells a bowing from another one.

    Fixed marks and retakes count by the directions that they give. A held note goes where it was struck, and so its
    direction is not told again.

    Args:
        tune: The tune.
        bowing, other: Two of its bowings.
        strokes, other_strokes: ``core.strokes.work_out`` of each.
    Returns:
        Differences by note id, in written order; notes that do not differ are left out.
    """
    joins: dict[str, tuple[Join | None, Join | None]] = _changed(bowing.joins, other.joins, None)
    signs: dict[str, tuple[Signs, Signs]] = _changed(bowing.signs, other.signs, Signs())
    turned = _turned(tune, strokes, other_strokes)
    notes = sorted({*joins, *turned, *signs}, key=tune.places.__getitem__)
    return {note: Difference(joins.get(note), turned.get(note), signs.get(note)) for note in notes}


def _changed(one: Mapping[str, V], other: Mapping[str, V], nothing: N) -> dict[str, tuple[V | N, V | N]]:
    """The two values of each key that has another one in either, ``nothing`` for none."""
    if one is other:
        return {}
    here, there = dict(one), dict(other)
    pairs = ((key, here.get(key, nothing), there.get(key, nothing)) for key in here.keys() | there.keys())
    return {key: (was, now) for key, was, now in pairs if was != now}


def _turned(tune: Tune, strokes: Strokes, other: Strokes) -> dict[str, tuple[tuple[Bow, ...], tuple[Bow, ...]]]:
    """The directions of each struck note that goes another way on some pass; most bars are told to be alike at once."""
    found = {}
    for bar, here, there in zip(tune.bars, strokes.by_bar, other.by_bar, strict=True):
        if all(one.bows == two.bows for one, two in zip(here, there, strict=True)):
            continue
        notes = (note for note in bar.notes if not note.is_rest)
        ways = (zip(*[visit.bows for visit in visits], strict=True) for visits in (here, there))
        for note, one, two in zip(notes, *ways, strict=True):
            if one != two and not note.held:
                found[note.id] = one, two
    return found
