"""Which bow signs stand over which notes, for three densities of marking.

Directions come from ``core.strokes``; this module only decides where a reader is told.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from core.bowing import Bow, Bowing
from core.tune import Tune

if TYPE_CHECKING:
    from core.strokes import Strokes


class MarkDensity(Enum):
    """How many strokes carry a sign."""

    EVERY = "every"  # every stroke
    BARS = "bars"  # the first stroke that begins in each bar, and what the player fixed
    NEEDED = "needed"  # only where the rest could not be read without it


@dataclass(frozen=True, slots=True)
class BowSign:
    """The sign over one note.

    Attributes:
        bows: One direction, or that of the first pass and then the other one where passes differ.
        fixed: The player fixed it, by a mark or a retake; else it follows from the strokes before.
        retake: The bow is lifted before the note to take the same direction again.
    """

    bows: tuple[Bow, ...]
    fixed: bool
    retake: bool = False


def bow_signs(tune: Tune, bowing: Bowing, strokes: Strokes, density: MarkDensity) -> Mapping[str, BowSign]:
    """The signs that a density shows.

    Args:
        tune: The tune.
        bowing: One of its bowings.
        strokes: ``core.strokes.work_out`` of the two.
        density: How many strokes carry a sign.
    Returns:
        Signs by note id; only notes that begin a stroke are listed, in written order.
    """
    raise NotImplementedError
