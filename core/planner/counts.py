"""What a bowing takes: slurs and retakes."""

from __future__ import annotations

from core.bowing import Bowing
from core.checks import slurs
from core.checks.view import View
from core.strokes import work_out
from core.tune import Tune


def slur_count(tune: Tune, bowing: Bowing) -> int:
    """Written strokes of two or more notes, ties counted once, as the totals of the check count them."""
    return slurs.count(View(tune, bowing))


def retake_count(tune: Tune, bowing: Bowing) -> int:
    """Retakes in one playing, the way back to the start included."""
    strokes = work_out(tune, bowing)
    return sum(one.retake for one in strokes.played) + strokes.round_retake
