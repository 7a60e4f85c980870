"""Chapters that share a run of pages, laid out as well as their sizes allow.

Engraving is what takes time, so other sizes are foretold first: the lines as they were engraved are taken larger or
smaller, which tells nearly how many pages they need, and only sizes that promise something are engraved.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from app.sheet_blocks import (
    LINE_GAP_MM,
    Block,
    UsedSigns,
    engrave,
    joint_blocks,
    kept_with_next,
    music_blocks,
    opening_blocks,
    prose_blocks,
    used_signs,
)
from app.sheet_content import Chapter, Joint, Music, Opening
from app.sheet_flow import PageFlow
from app.sheet_format import SheetFormat, filling_formats, sparing_formats
from app.sheet_legend import legend, legend_block
from app.sheet_page import Heading, Page, PlacedLine
from core.engraving.engraver import Engraver
from core.sheet_plan import NoteSize, SheetPlan
from core.tune_set import Way
from core.values import dataclass

EXACT_MM = 0.01

Lines = list[list[PlacedLine]]
"""The lines of each piece of music, in order."""


@dataclass
class _Unit:
    """Blocks of one thing; those of music stand on one page where it has room for them."""

    blocks: list[Block]
    is_music: bool = False


class RunLayout:
    """The layout of one run.

    Args:
        run: The chapters; the first begins a page, no other does.
        plan: What goes on the sheet.
        engraver: Engraves the lines.
        is_first: Nothing of the sheet stands before them.
    Attributes:
        pages: Pages of the format that was found best.
        smallest_mm: Their smallest staff; infinite without music.
    """

    def __init__(self, run: Sequence[Chapter], plan: SheetPlan, engraver: Engraver, *, is_first: bool) -> None:
        self.pages: list[Page] = []
        self.smallest_mm = float("inf")
        self._run, self._plan, self._engraver, self._is_first = run, plan, engraver, is_first
        self._music = [item for chapter in run for item in chapter.items if isinstance(item, Music)]
        self._lines: Lines = []
        used = UsedSigns()
        for music in self._music:
            used = used.and_also(used_signs(music))
        self._legend = tuple(legend(used.bows, used.hooked, used.ornaments, used.mets)) if plan.legend else ()

    def best(self, base: SheetFormat) -> Iterator[None]:
        """Lay out in the format given, or with somewhat smaller notes where that saves a page, or with larger ones
        where the plan asks for it. Yields after each step of some milliseconds."""
        yield from self._lay_out(base)
        first, count = (self.pages, self.smallest_mm), len(self.pages)
        foretold = []
        for page in sparing_formats(base) if count > 1 else ():
            foretold.append((self._foretell(base, page), page))
            yield None
        fewest = min((pages for pages, _ in foretold), default=count)
        base_lines = self._lines
        for pages, page in foretold:
            if pages == fewest < count:
                yield from self._lay_out(page)
                if len(self.pages) < count:
                    return
        self._lines = base_lines
        is_dense = self.smallest_mm < base.staff_mm - EXACT_MM
        for page in filling_formats(base) if self._plan.size is NoteSize.FILL else ():
            yield None
            if is_dense and page.bars_a_line == base.bars_a_line:
                continue
            if self._foretell(base, page) <= count:
                yield from self._lay_out(page)
                if len(self.pages) <= count and self.smallest_mm >= page.staff_mm - EXACT_MM:
                    return
                self._lines = base_lines
        self.pages, self.smallest_mm = first

    def _lay_out(self, page: SheetFormat) -> Iterator[None]:
        """Engrave in a format and fill pages."""
        self._lines = []
        for music in self._music:
            for lines in engrave(music, page, self._engraver):
                if lines is None:
                    yield None
                else:
                    self._lines.append(lines)
        self.smallest_mm = min((line.staff_mm for lines in self._lines for line in lines), default=float("inf"))
        self.pages = self._filled(page, self._lines)

    def _foretell(self, base: SheetFormat, page: SheetFormat) -> int:
        """Nearly how many pages another format needs."""
        share, parts = page.staff_mm / base.staff_mm, max(base.bars_a_line // page.bars_a_line, 1)
        lines = [
            [replace(line, scale=line.scale * share) for line in lines for _ in range(parts)] for lines in self._lines
        ]
        return len(self._filled(page, lines))

    def _filled(self, page: SheetFormat, lines: Lines) -> list[Page]:
        """Pages filled with lines of music and all that stands around them."""
        flow = PageFlow(page, self._run[0].title, self._plan.footer, self._is_first, legend_block(self._legend, page))
        left = iter(lines)
        for chapter in self._run:
            for unit in _units(chapter, page, left):
                flow.add(unit.blocks, together=unit.is_music and (chapter.together or flow.is_begun))
        return flow.end()


def _units(chapter: Chapter, page: SheetFormat, lines: Iterator[list[PlacedLine]]) -> list[_Unit]:
    """What stands together in a chapter, in order."""
    units: list[_Unit] = []
    held: list[Block] = []  # what stands with the music behind it
    for item in chapter.items:
        if isinstance(item, Opening):
            held += opening_blocks(item, page, Heading(chapter.level, chapter.title))
        elif isinstance(item, Music):
            blocks = music_blocks(item, next(lines), page)
            if held:
                blocks[0] = replace(blocks[0], gap_mm=LINE_GAP_MM / 2)
            if chapter.level:  # the tune stands in the outline, not its only bowing
                blocks[0] = replace(blocks[0], heading=None)
            units.append(_Unit([*held, *blocks], is_music=True))
            held = []
        elif isinstance(item, Joint):
            blocks = joint_blocks(item, page)
            if item.seam.way is Way.NEXT:
                held += kept_with_next(blocks)
            else:
                units.append(_Unit(blocks))
        else:
            blocks = prose_blocks(item, page)
            if item.closes and units:
                units[-1].blocks[-1:] = kept_with_next(units[-1].blocks[-1:])
                units[-1].blocks += [*kept_with_next(blocks[:-1]), *blocks[-1:]]
            else:
                units.append(_Unit([*held, *blocks]))
                held = []
    return [*units, _Unit(held)]
