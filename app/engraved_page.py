"""The lines of a tune as engraved for one bowing or more, engraved no sooner than needed. No Qt.

A change of a bowing makes each of its lines *stale*; engraving a stale line costs nothing where nothing on it changed,
because the engraver then hands out the picture it made before. The lines of other bowings stay as they are.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from math import ceil

from app.page_layout import MUSIC_WIDTH, PageLayout, stack
from core.bowing import Bowing
from core.engraving.bow_signs import BowSign, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.grace_room import GraceRoom, grace_room
from core.engraving.lines import break_lines
from core.engraving.picture import Picture
from core.tune import Tune

Signed = tuple[Bowing, Mapping[str, BowSign]]
"""A bowing and its bow signs by note id."""


class EngravedPage:
    """The lines of one tune under one another, those of several bowings stacked line by line.

    Attributes:
        tune: The tune.
        layouts: For each bowing where its lines stand now.
        stale: Lines that wait to be engraved: (index of the line, index of the bowing).
    """

    def __init__(self, engraver: Engraver, tune: Tune, heading_height: float) -> None:
        self._engraver = engraver
        self.tune = tune
        self._heading_height = heading_height
        self._lines = break_lines(tune)
        self._pictures: list[list[Picture | None]] = [[None] * len(self._lines)]
        self._shown: tuple[Signed, ...] = ()
        self._reference: int | None = None
        self._room: GraceRoom = {}
        self._music_width: float = MUSIC_WIDTH
        self._strip = False
        self.stale: set[tuple[int, int]] = set()
        self.layouts: tuple[PageLayout, ...] = ()
        self.layouts = self._lay_out()

    @property
    def layout(self) -> PageLayout:
        """Where the lines of the first bowing stand."""
        return self.layouts[0]

    @property
    def waits(self) -> bool:
        """Whether lines wait to be engraved."""
        return bool(self.stale)

    def show_strip(self, shown: bool) -> None:
        """Keep room for the accent strip under each line, or do not; the layout is up to date then."""
        self._strip = shown
        self.layouts = self._lay_out()

    def set_heading_height(self, height: float) -> None:
        """Give the heading more room or less; the layout is up to date then."""
        if height != self._heading_height:
            self._heading_height = height
            self.layouts = self._lay_out()

    def take(self, *shown: Signed, reference: int | None = None) -> None:
        """Show other bowings, or the same with other bow signs; their lines are engraved when asked for.

        A bowing that is the same object with the same signs in the same place as before stays as it is.

        Args:
            shown: At least one.
            reference: Index of the one from which the others are told apart; None where nothing is compared.
        """
        before, room = self._shown, self._room
        self._shown = shown
        self._room = grace_room(bowing for bowing, _ in shown) if len(shown) > 1 else {}
        if len(shown) != len(self._pictures) or reference != self._reference:
            known = {id(bowing): of_row for (bowing, _), of_row in zip(before, self._pictures, strict=False)}
            nothing: list[Picture | None] = [None] * len(self._lines)
            self._pictures = [list(known.get(id(bowing), nothing)) for bowing, _ in shown]
            self._reference = reference
            self.stale.clear()
            self.layouts = self._lay_out()
            before = ()
        for row, (bowing, signs) in enumerate(shown):
            same = row < len(before) and before[row][0] is bowing and before[row][1] is signs
            if not same or room != self._room:
                self._make_stale(row)

    def engrave(self, indexes: Iterable[int], most: int | None = None) -> bool:
        """Engrave those of these lines that are stale, those of all bowings.

        Args:
            indexes: Of lines.
            most: Engrave no more than this many.
        Returns:
            Whether any picture changed; the layout is up to date then.
        """
        changed = False
        wanted = set(indexes)
        for index, row in sorted(place for place in self.stale if place[0] in wanted)[:most]:
            self.stale.discard((index, row))
            picture = self._picture(index, row, *self._shown[row], self._room)
            if picture.width > self._music_width + 1:  # more notes than the line has room for: wider lines for all
                self._music_width = picture.width
                for other in range(len(self._shown)):
                    self._make_stale(other)
            changed = changed or picture is not self._pictures[row][index]
            self._pictures[row][index] = picture
        if changed:
            self.layouts = self._lay_out()
        return changed

    def foresee(
        self, note_ids: Iterable[str], bowing: Bowing, signs: Mapping[str, BowSign], row: int = 0
    ) -> list[Picture]:
        """Engrave the lines of some notes as they would be in another bowing, so that they are at hand if it comes.

        Args:
            note_ids: The notes.
            bowing, signs: What may come.
            row: Which bowing on the page it would take the place of.
        Returns:
            The pictures of the lines.
        """
        indexes = sorted({self.layout.line_of[note_id] for note_id in note_ids})
        others = [bowing if place == row else other for place, (other, _) in enumerate(self._shown)]
        room = grace_room(others) if len(others) > 1 else {}
        return [self._picture(index, row, bowing, signs, room) for index in indexes]

    def lines_between(self, top: float, bottom: float) -> range:
        """Indexes of the lines of which any bowing's reaches into a strip of the page."""
        hit = [lines for layout in self.layouts if (lines := layout.lines_between(top, bottom))]
        return range(min(lines.start for lines in hit), max(lines.stop for lines in hit)) if hit else range(0)

    def row_at(self, y: float) -> int | None:
        """Index of the bowing in whose line a height lies; None between lines."""
        return next((row for row, layout in enumerate(self.layouts) if layout.line_at(y) is not None), None)

    def _make_stale(self, row: int) -> None:
        self.stale |= {(index, row) for index in range(len(self._lines))}

    def _picture(self, index: int, row: int, bowing: Bowing, signs: Mapping[str, BowSign], room: GraceRoom) -> Picture:
        """A line of a bowing; only that on top shows what all share, such as chords."""
        line = self._lines[index]
        bars = self.tune.bars[line.first : line.stop]
        rows = rows_kept(self.tune, {note.id: signs[note.id] for bar in bars for note in bar.notes if note.id in signs})
        return self._engraver.engrave(self.tune, bowing, line, rows, ceil(self._music_width), room, shared=row == 0)

    def _lay_out(self) -> tuple[PageLayout, ...]:
        pictures: Sequence[Sequence[Picture | None]] = self._pictures
        return stack(
            self.tune, self._lines, pictures, self._heading_height, self._music_width,
            strip=self._strip, reference=self._reference, known=self.layouts,
        )  # fmt: skip
