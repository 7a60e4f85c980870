"""The engraver: one line of one bowing in, a picture out."""

from __future__ import annotations

from core.bowing import Bowing
from core.engraving.lines import Line
from core.engraving.picture import Picture
from core.tune import Tune


class Engraver:
    """Engraves lines; keeps the pictures it made last.

    One engraver may serve any number of tunes. It is not to be used from two threads at a time.
    """

    def __init__(self, kept: int = 256) -> None:
        """Args: kept: How many pictures are kept for the next time."""

    def engrave(self, tune: Tune, bowing: Bowing, line: Line, slots: frozenset[str], width_units: int = 18000) -> Picture:
        """Engrave one line.

        Args:
            tune: The tune.
            bowing: The bowing: its joins and signs are drawn; its directions are not.
            line: Which bars.
            slots: Ids of notes over which room for a bow sign is kept.
            width_units: Width of the picture in 1/100 mm at natural size (staff 7.2 mm high).
        Returns:
            The picture. The same object comes back while nothing on the line changes.
        """
        raise NotImplementedError
