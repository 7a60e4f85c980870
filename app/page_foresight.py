"""Bowings that may be shown next, worked out before they are asked for. No Qt."""

from __future__ import annotations

from app.page_rows import Check, Row, Rows, make_row
from core.bowing import Bowing


class PageForesight:
    """What was worked out ahead last.

    Args:
        check: Reports on a bowing, and remembers what it reported.

    Attributes:
        rows: Rows of a bowing that may be shown next; if it is the reference, all others as told from it as well.
    """

    def __init__(self, check: Check) -> None:
        self._check = check
        self.rows: tuple[Row, ...] = ()

    def work_out(self, shown: Rows, index: int, bowing: Bowing) -> Row:
        """Work out a row with another bowing, to be kept in place of what was worked out before."""
        old = shown.rows[index]
        row = make_row(old.here.tune, old.place, bowing, old.told_from, shown.density, self._check, self.rows)
        self.rows = (row, *(self._others(shown, row, index) if index == shown.reference else ()))
        return row

    def drop(self) -> None:
        """Forget it."""
        self.rows = ()

    def _others(self, shown: Rows, row: Row, index: int) -> tuple[Row, ...]:
        """The other rows as they would be told from this one in the place of the reference."""
        return tuple(
            make_row(row.here.tune, other.place, other.here.bowing, row.here, shown.density, self._check, shown.rows)
            for place, other in enumerate(shown.rows)
            if place != index
        )
