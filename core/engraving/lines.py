"""Which bars stand on which line of the page."""

from __future__ import annotations

from dataclasses import dataclass

from core.tune import Tune


@dataclass(frozen=True, slots=True, order=True)
class Line:
    """Bars of one line.

    Attributes:
        first: Index in ``Tune.bars`` of the first bar.
        stop: Index after the last bar.
    """

    first: int
    stop: int


def break_lines(tune: Tune, bars_a_line: int = 4) -> tuple[Line, ...]:
    """Break a tune into lines."""
    raise NotImplementedError
