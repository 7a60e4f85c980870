"""The lines of a tune as engraved for one bowing, engraved no sooner than needed. No Qt.

A change of bowing makes every line *stale*; engraving a stale line costs nothing where nothing on it changed, because
the engraver then hands out the picture it made before.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from app.page_layout import PageLayout, lay_out
from core.bowing import Bowing
from core.engraving.bow_signs import BowSign
from core.engraving.engraver import Engraver
from core.engraving.lines import break_lines
from core.engraving.picture import Picture
from core.tune import Tune


class EngravedPage:
    """One tune's lines under one another.

    Attributes:
        layout: Where the lines stand now.
        signs: The bow signs by note id.
        stale: Indexes of the lines that wait to be engraved.
    """

    def __init__(self, engraver: Engraver, tune: Tune, heading_height: float) -> None:
        self._engraver = engraver
        self._tune = tune
        self._heading_height = heading_height
        self._lines = break_lines(tune)
        self._pictures: list[Picture | None] = [None] * len(self._lines)
        self._bowing: Bowing | None = None
        self.signs: Mapping[str, BowSign] = {}
        self.stale: set[int] = set()
        self.layout: PageLayout = self._lay_out()

    def take(self, bowing: Bowing, signs: Mapping[str, BowSign]) -> None:
        """Show another bowing, or the same with other bow signs; its lines are engraved when asked for."""
        self._bowing = bowing
        self.signs = signs
        self.stale = set(range(len(self._lines)))

    def engrave(self, indexes: Iterable[int]) -> bool:
        """Engrave those of these lines that are stale.

        Returns:
            Whether any picture changed; the layout is up to date then.
        """
        changed = False
        for index in self.stale.intersection(indexes):
            self.stale.discard(index)
            line = self._lines[index]
            bars = self._tune.bars[line.first : line.stop]
            slots = frozenset(note.id for bar in bars for note in bar.notes if note.id in self.signs)
            assert self._bowing is not None, "lines are stale only once there is a bowing"
            picture = self._engraver.engrave(self._tune, self._bowing, line, slots)
            changed = changed or picture is not self._pictures[index]
            self._pictures[index] = picture
        if changed:
            self.layout = self._lay_out()
        return changed

    def _lay_out(self) -> PageLayout:
        return lay_out(self._tune, self._lines, self._pictures, self._heading_height)
