"""Lays out printed sheets: one layout for preview, printer and PDF.

    lessons, SheetPlan ──content──▶ chapters ──blocks──▶ blocks ──flow──▶ pages ──cells──▶ Sheet ──▶ paint_page

Lines of music are never split or cut: where one would not fit it begins the next page.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from app.sheet_content import Chapter, Content, Printed, content_of
from app.sheet_flow import numbered
from app.sheet_format import cells, format_for, paper_for
from app.sheet_layout import RunLayout
from app.sheet_page import A4, LETTER, PAPERS, Page, Paper, Rule, Sheet, paint_page, united
from core.engraving.engraver import Engraver
from core.sheet_plan import COPIES, SheetPlan

__all__ = ["A4", "LETTER", "PAPERS", "Page", "Paper", "Printed", "Sheet", "lay_out", "lay_out_steps", "paint_page"]

PLAIN = SheetPlan()


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
            layout = RunLayout(run, plan, engraver, is_first=not pages)
            yield from layout.best(base)
            pages += layout.pages
            fits = fits and layout.smallest_mm >= base.smallest_staff_mm - 0.01
        if fits or copies == 1:
            break
    whole = [numbered(page, number, len(pages), base) for number, page in enumerate(pages, 1)]
    yield Sheet(paper, tuple(_copied(page, paper, copies) for page in whole), content.title, content.author, copies)


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
