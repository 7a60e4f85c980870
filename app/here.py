"""Where a gesture acts, and what the words about a note are read from. No Qt."""

from __future__ import annotations

from core.bowing import Bowing
from core.strokes import Strokes
from core.tune import Tune
from core.values import dataclass


@dataclass(frozen=True)
class Here:
    """What a gesture acts on: the tune, the bowing on the page, and the strokes that follow from them."""

    tune: Tune
    bowing: Bowing
    strokes: Strokes
