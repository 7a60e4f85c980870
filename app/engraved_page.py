"""The lines of a tune as engraved for one bowing, engraved no sooner than needed. No Qt.

A change of bowing makes every line *stale*; engraving a stale line costs nothing where nothing on it changed, because
the engraver then hands out the picture it made before.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from math import ceil

from app.page_layout import MUSIC_WIDTH, PageLayout, lay_out
from core.bowing import Bowing
from core.engraving.bow_signs import BowSign, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.lines import break_lines
from core.engraving.picture import Picture
from core.tune import Tune


class EngravedPage:
    """One tune's lines under one another.

    Attributes:
        tune: The tune.
        layout: Where the lines stand now.
        signs: The bow signs by note id.
        stale: Indexes of the lines that wait to be engraved.
    """

    def __init__(self, engraver: Engraver, tune: Tune, heading_height: float) -> None:
        self._engraver = engraver
        self.tune = tune
        self._heading_height = heading_height
        self._lines = break_lines(tune)
        self._pictures: list[Picture | None] = [None] * len(self._lines)
        self._bowing: Bowing | None = None
        self._music_width: float = MUSIC_WIDTH
        self._strip = False
        self.signs: Mapping[str, BowSign] = {}
        self.stale: set[int] = set()
        self.layout: PageLayout = self._lay_out()

    def show_strip(self, shown: bool) -> None:
        """Keep room for the accent strip under each line, or do not; the layout is up to date then."""
        self._strip = shown
        self.layout = self._lay_out()

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
            assert self._bowing is not None, "lines are stale only once there is a bowing"
            picture = self._picture(index, self._bowing, self.signs)
            if picture.width > self._music_width + 1:  # more notes than the line has room for: wider lines for all
                self._music_width = picture.width
                self.stale = set(range(len(self._lines)))
            changed = changed or picture is not self._pictures[index]
            self._pictures[index] = picture
        if changed:
            self.layout = self._lay_out()
        return changed

    def foresee(self, note_ids: Iterable[str], bowing: Bowing, signs: Mapping[str, BowSign]) -> list[Picture]:
        """Engrave the lines of some notes as they would be in another bowing, so that they are at hand if it comes.

        Returns:
            Their pictures.
        """
        indexes = sorted({self.layout.line_of[note_id] for note_id in note_ids})
        return [self._picture(index, bowing, signs) for index in indexes]

    def _picture(self, index: int, bowing: Bowing, signs: Mapping[str, BowSign]) -> Picture:
        line = self._lines[index]
        bars = self.tune.bars[line.first : line.stop]
        rows = rows_kept(self.tune, {note.id: signs[note.id] for bar in bars for note in bar.notes if note.id in signs})
        return self._engraver.engrave(self.tune, bowing, line, rows, ceil(self._music_width))

    def _lay_out(self) -> PageLayout:
        heading, width = self._heading_height, self._music_width
        return lay_out(self.tune, self._lines, self._pictures, heading, width, strip=self._strip)
