"""Sizes of a printed sheet: paper and its cells, staff, texts and margins, as tables and a few rules."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from app.sheet_page import PAPERS, Paper
from core.sheet_plan import NoteSize, SheetPlan
from core.values import dataclass

STAFF_MM = {
    NoteSize.SMALL: 5.4, NoteSize.NORMAL: 6.6, NoteSize.FILL: 6.6, NoteSize.LARGE: 8.2, NoteSize.SCREEN: 12.5,
}  # fmt: skip
TEXT_SCALE = {
    NoteSize.SMALL: 0.9, NoteSize.NORMAL: 1.0, NoteSize.FILL: 1.0, NoteSize.LARGE: 1.1, NoteSize.SCREEN: 1.7,
}  # fmt: skip
FILLING_MM = (11.0, 10.0, 9.2, 8.4, 7.8, 7.2)  # staves tried, the largest first, where the music is to fill its page
WIDEST_TEXT = 1.3  # how far texts grow with the staff
SPARING = {1: (0.94, 0.88, 0.82), 2: (0.94, 0.88, 0.8, 0.72), 4: (0.94, 0.88, 0.8, 0.74)}  # staves tried to save a page
MARGIN_MM = {1: 15.0, 2: 11.0, 4: 8.0}  # by copies on a page
CELL_SCALE = {1: 1.0, 2: 1.0, 4: 0.8}  # of staff and texts
SMALLEST_STAFF_MM = {1: 4.6, 2: 4.6, 4: 3.9}
FOUR_BARS = 20.5  # so many staff heights wide must a line be to hold four bars


@dataclass(frozen=True, slots=True)
class SheetFormat:
    """Sizes that a page is laid out with, in millimetres.

    Attributes:
        width_mm, height_mm: Of the page; where copies share a paper, of one of its cells.
        margin_mm: On all four sides.
        staff_mm: Height of the staff; smaller where a line has too many notes for it.
        smallest_staff_mm: What it may shrink to.
        text: Size of texts, against the usual.
        sparing: Shares of the staff that are tried where they save a page, in order.
    """

    width_mm: float
    height_mm: float
    margin_mm: float
    staff_mm: float
    smallest_staff_mm: float
    text: float
    sparing: tuple[float, ...]

    @property
    def inner_mm(self) -> float:
        """Width between the margins."""
        return self.width_mm - 2 * self.margin_mm

    @property
    def foot_mm(self) -> float:
        """Where the lower margin begins."""
        return self.height_mm - self.margin_mm

    @property
    def bars_a_line(self) -> int:
        """Full bars on a line: four, or two where four would be cramped."""
        return 4 if self.inner_mm >= FOUR_BARS * self.staff_mm else 2


def paper_for(plan: SheetPlan) -> Paper:
    """The paper as the plan lays it."""
    paper = PAPERS[plan.paper]
    return paper.turned if plan.landscape else paper


def cells(paper: Paper, copies: int) -> tuple[float, float, tuple[tuple[float, float], ...]]:
    """Divide a paper: two copies lie across its longer side, four in its corners.

    Returns:
        Width and height of a cell, and the corners of the cells, the first at 0, 0; all in millimetres.
    """
    across = 2 if copies == 4 or (copies == 2 and paper.width_mm > paper.height_mm) else 1
    down = copies // across
    width, height = paper.width_mm / across, paper.height_mm / down
    return width, height, tuple((column * width, row * height) for row in range(down) for column in range(across))


def format_for(plan: SheetPlan, paper: Paper, copies: int) -> SheetFormat:
    """The format that a plan begins with."""
    width, height, _ = cells(paper, copies)
    scale = CELL_SCALE[copies]
    smallest = min(SMALLEST_STAFF_MM[copies], STAFF_MM[plan.size] * scale)
    staff, text = STAFF_MM[plan.size] * scale, TEXT_SCALE[plan.size] * scale
    sparing = tuple(share for share in SPARING[copies] if staff * share >= smallest)
    return SheetFormat(width, height, MARGIN_MM[copies], staff, smallest, text, sparing)


def sparing_formats(base: SheetFormat) -> Iterator[SheetFormat]:
    """Formats with smaller notes, the largest first; where copies share a paper texts shrink a little too."""
    for share in base.sparing:
        text = base.text if len(base.sparing) == len(SPARING[1]) else base.text * share**0.5
        yield replace(base, staff_mm=base.staff_mm * share, text=text)


def filling_formats(base: SheetFormat) -> Iterator[SheetFormat]:
    """Formats with larger notes, the largest first."""
    for staff in FILLING_MM:
        if staff > base.staff_mm:
            growth = min((staff / base.staff_mm) ** 0.5, WIDEST_TEXT)
            yield replace(base, staff_mm=staff, text=base.text * growth)
