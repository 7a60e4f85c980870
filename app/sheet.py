"""Lays out printed sheets: one layout for preview, printer and PDF.

    lessons, SheetPlan ──content──▶ chapters ──blocks──▶ blocks ──flow──▶ pages ──cells──▶ Sheet ──▶ paint_page

Lines of music are never split or cut: where one would not fit it begins the next page.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

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
from app.sheet_content import Chapter, Content, Joint, Music, Opening, Printed, content_of
from app.sheet_flow import PageFlow, numbered
from app.sheet_format import SheetFormat, cells, filling_formats, format_for, paper_for, sparing_formats
from app.sheet_legend import legend, legend_block
from app.sheet_page import A4, LETTER, PAPERS, Heading, Page, Paper, Rule, Sheet, paint_page, united
from core.engraving.engraver import Engraver
from core.sheet_plan import COPIES, NoteSize, SheetPlan
from core.tune_set import Way

__all__ = ["A4", "LETTER", "PAPERS", "Page", "Paper", "Printed", "Sheet", "lay_out", "lay_out_steps", "paint_page"]

PLAIN = SheetPlan()
GROWTH_SLACK = 1.05  # lines grow a little less than their staff
MOST_LINES_TRIED = 48  # beyond, larger notes are not tried: each size engraves all of it again


def lay_out(
    given: Printed, plan: SheetPlan = PLAIN, paper: Paper | None = None, engraver: Engraver | None = None
) -> Sheet:
    """Lay out a sheet.

    Args:
        given: Lessons, at least one, each from a new page on; or a set.
        plan: What goes on it.
        paper: As it lies; that of the plan where None.
        engraver: One to share pictures with; else a new one.
    Raises:
        ValueError: nothing is given.
        RefusedEditError: the plan's drill has no place in a tune.
    """
    for step in lay_out_steps(content_of(given, plan), plan, paper, engraver or Engraver()):
        if step is not None:
            return step
    raise AssertionError("a layout ends with a sheet")


def lay_out_steps(content: Content, plan: SheetPlan, paper: Paper | None, engraver: Engraver) -> Iterator[Sheet | None]:
    """The same in steps of some milliseconds, for a window that goes on while it is done.

    Yields:
        None after each step, and at last the sheet.
    """
    paper = paper or paper_for(plan)
    for copies in [count for count in reversed(COPIES) if count <= plan.copies]:
        base = format_for(plan, paper, copies)
        pages: list[Page] = []
        fits = True
        for run in _runs(content.chapters):
            layout = _Layout(run, plan, engraver, is_first=not pages)
            yield from layout.best(base)
            pages += layout.pages
            fits = fits and layout.smallest_mm >= base.smallest_staff_mm - 0.01
        if fits or copies == 1:
            break
    whole = [numbered(page, number, len(pages), base) for number, page in enumerate(pages, 1)]
    yield Sheet(paper, tuple(_copied(page, paper, copies) for page in whole), content.title, content.author, copies)


class _Layout:
    """Chapters that share a run of pages, laid out as well as their sizes allow.

    Attributes:
        pages: Pages of the format that was found best.
        smallest_mm: Their smallest staff.
    """

    def __init__(self, run: Sequence[Chapter], plan: SheetPlan, engraver: Engraver, *, is_first: bool) -> None:
        self.pages: list[Page] = []
        self.smallest_mm = 0.0
        self._used_mm: tuple[float, ...] = ()  # of the height of each page
        self._run, self._plan, self._engraver, self._is_first = run, plan, engraver, is_first
        used = UsedSigns()
        for chapter in run:
            for item in chapter.items:
                if isinstance(item, Music):
                    used = used.and_also(used_signs(item))
        self._legend = tuple(legend(used.bows, used.hooked, used.ornaments, used.mets)) if plan.legend else ()

    def best(self, base: SheetFormat) -> Iterator[None]:
        """Lay out in the format given, or with somewhat smaller notes where that saves a page, or with larger ones
        where the plan asks for it."""
        yield from self._lay_out(base)
        first, smallest, used = self.pages, self.smallest_mm, sum(self._used_mm)
        smaller = tuple(sparing_formats(base)) if self._may_spare(base) else ()
        if smaller:
            yield from self._lay_out(smaller[-1])
            fewest = len(self.pages)
            for tried in smaller if fewest < len(first) else ():
                yield from self._lay_out(tried)
                if len(self.pages) == fewest:
                    return
        lines = sum(len(page.lines) for page in first)
        if self._plan.size is NoteSize.FILL and lines <= MOST_LINES_TRIED:
            for larger in [one for one in filling_formats(base) if _may_grow(first, used, base, one)]:
                yield from self._lay_out(larger)
                if len(self.pages) <= len(first) and self.smallest_mm >= larger.staff_mm - 0.01:
                    return
        self.pages, self.smallest_mm = first, smallest

    def _may_spare(self, base: SheetFormat) -> bool:
        """Whether the last page might find room on those before it, if the staff were smaller."""
        *others, last = self._used_mm
        free = sum(base.foot_mm - base.margin_mm - used for used in others)
        saved = 1.5 * (1 - base.sparing[-1]) * sum(self._used_mm) if base.sparing else 0.0  # with gaps and heads
        return bool(others) and last <= free + saved

    def _lay_out(self, page: SheetFormat) -> Iterator[None]:
        flow = PageFlow(page, self._run[0].title, self._plan.footer, self._is_first, legend_block(self._legend, page))
        smallest = float("inf")
        for chapter in self._run:
            units: list[_Unit] = []
            held: list[Block] = []  # what stands with the music behind it
            for item in chapter.items:
                if isinstance(item, Opening):
                    heading = Heading(chapter.level, chapter.title)
                    held += opening_blocks(item, page, heading)
                elif isinstance(item, Music):
                    for lines in engrave(item, page, self._engraver):
                        if lines is None:
                            yield None
                        else:
                            blocks = music_blocks(item, lines, page)
                            smallest = min([smallest, *(line.staff_mm for line in lines)])
                    if held:
                        blocks[0] = replace(blocks[0], gap_mm=LINE_GAP_MM / 2)
                    if chapter.level:  # the tune stands in the outline, not its only bowing
                        blocks[0] = replace(blocks[0], heading=None)
                    units.append(_Unit([*held, *blocks], is_music=True))
                    held = []
                elif isinstance(item, Joint):
                    joint = joint_blocks(item, page)
                    if item.seam.way is Way.NEXT:
                        held += kept_with_next(joint)
                    else:
                        units.append(_Unit(joint))
                else:
                    blocks = prose_blocks(item, page)
                    if item.closes and units and blocks:  # never alone on a page
                        units[-1].blocks[-1:] = kept_with_next(units[-1].blocks[-1:])
                        units[-1].blocks += blocks
                    else:
                        units.append(_Unit([*held, *blocks]))
                        held = []
            units.append(_Unit(held))
            for unit in units:
                flow.add(unit.blocks, together=unit.is_music and (chapter.together or flow.is_begun))
        self.pages, self.smallest_mm = flow.end(), smallest
        self._used_mm = tuple(flow.used_mm)


def _may_grow(pages: Sequence[Page], used_mm: float, base: SheetFormat, larger: SheetFormat) -> bool:
    """Whether what stands on some pages might find room on as many with larger notes; told from heights alone."""
    music = sum(line.height_mm for page in pages for line in page.lines)
    grown = music * larger.staff_mm / base.staff_mm * base.bars_a_line / larger.bars_a_line
    return used_mm - music + grown <= GROWTH_SLACK * len(pages) * (base.foot_mm - base.margin_mm)


@dataclass
class _Unit:
    """Blocks of one thing; those of music stand on one page where it has room for them."""

    blocks: list[Block]
    is_music: bool = False


def _runs(found: Sequence[Chapter]) -> Iterator[list[Chapter]]:
    """Chapters that share pages: each run but the first begins with one that begins a page."""
    run: list[Chapter] = []
    for chapter in found:
        if run and chapter.begins_page:
            yield run
            run = []
        run.append(chapter)
    yield run


def _copied(page: Page, paper: Paper, copies: int) -> Page:
    """The page as often as it stands on its paper, with lines to cut along."""
    if copies == 1:
        return page
    width, height, corners = cells(paper, copies)
    cuts = []
    if height < paper.height_mm:
        cuts.append(Rule(0, height, paper.width_mm, height, 0.15, dashed=True))
    if width < paper.width_mm:
        cuts.append(Rule(width, 0, width, paper.height_mm, 0.15, dashed=True))
    whole = united([page.moved(x, y) for x, y in corners])
    return replace(whole, rules=(*whole.rules, *cuts))
