"""Fills pages with blocks, from top to bottom.

What belongs together stands on one page where a page has room for it; a heading never ends a page; gaps between lines
of music widen to fill a page that another one follows.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import field, replace

from app.sheet_blocks import LINE_GAP_MM, Block
from app.sheet_format import SheetFormat
from app.sheet_page import Page, united
from app.sheet_text import BASE, LEADING, NOTE, SMALL_TITLE, shortened
from core.engraving.picture import Anchor, Run, Text
from core.values import dataclass

WIDEST_GAP_MM = 9.0  # between lines of music
WELL_BEGUN = 0.45  # of a page is taken before it may be left with room on it
HEAD_SHARE = 0.8  # of the width that the small title may take; its number has the rest


@dataclass
class PageFlow:
    """Pages of what begins with a page of its own.

    Args:
        page: Sizes.
        title: At the head of later pages, small.
        footer: At the foot of every page, or "".
        is_first: Nothing of the sheet stands before it; else its first page has a number.
        legend: At the foot of its first page.
    Attributes:
        pages: What is filled, not numbered yet.
    """

    page: SheetFormat
    title: str
    footer: str
    is_first: bool
    legend: Block | None = None
    pages: list[Page] = field(default_factory=list)
    _placed: list[tuple[float, Block]] = field(default_factory=list)
    _over: list[Page] = field(default_factory=list)  # the head of the page
    _under: list[Page] = field(default_factory=list)  # its foot
    _y: float = 0.0
    _foot: float = 0.0

    def __post_init__(self) -> None:
        self._begin("" if not self.is_first else None)
        if self.legend is not None:
            self._foot -= self.legend.height_mm
            self._under.insert(0, self.legend.at(self._foot))
            self._foot -= LINE_GAP_MM

    @property
    def is_begun(self) -> bool:
        """So much stands on the page that it may be left for the next."""
        return self._y - self.page.margin_mm >= WELL_BEGUN * (self._foot - self.page.margin_mm)

    def add(self, blocks: Sequence[Block], *, together: bool = False) -> None:
        """Put blocks in, one after the other.

        Args:
            blocks: What belongs to one thing.
            together: They stand on one page where a page has room for them.
        """
        if together and blocks and self._placed and not self._fits(blocks) and _height(blocks) <= self._room_of_page():
            self._turn(blocks[0])
        for chunk in _chunks(blocks):
            if not self._fits(chunk) and self._placed:
                self._turn(chunk[0])
            for block in chunk:
                if self._placed and not self._fits([block]):  # a chunk that no page has room for
                    self._turn(block)
                self._put(block)

    def end(self) -> list[Page]:
        """Close the last page; all pages, not numbered yet."""
        self._close()
        return self.pages

    def _put(self, block: Block) -> None:
        room = self._foot - self._y
        if not self._placed and block.lines and block.height_mm > room:
            block = block.shrunk(room)
        self._y += block.gap_mm if self._placed else 0.0
        self._placed.append((self._y, block))
        self._y += block.height_mm

    def _fits(self, blocks: Sequence[Block]) -> bool:
        height = _height(blocks) + (blocks[0].gap_mm if self._placed else 0.0)
        return self._y + height <= self._foot + 0.001

    def _room_of_page(self) -> float:
        head = SMALL_TITLE * self.page.text * LEADING + LINE_GAP_MM / 2
        return self._lowest() - self.page.margin_mm - head

    def _turn(self, first: Block) -> None:
        self._close()
        self._begin(first.goes_on)

    def _begin(self, goes_on: str | None) -> None:
        """Begin a page.

        Args:
            goes_on: What goes on there, for the small head; None for a page without one.
        """
        page, em = self.page, SMALL_TITLE * self.page.text
        self._y, self._foot = page.margin_mm, self._lowest()
        if self.footer:
            size = NOTE * page.text
            text = shortened(self.footer, size, page.inner_mm, italic=False)
            at = Text(page.width_mm / 2, page.foot_mm - BASE * size, Anchor.MIDDLE, (Run(text, size),))
            self._under.append(Page(texts=(at,)))
        if goes_on is None:
            return
        if self.pages:
            title = f"{self.title} · {goes_on}" if goes_on else self.title
            title = shortened(title, em, page.inner_mm * HEAD_SHARE)
            y = self._y + em * (LEADING - BASE)
            self._over.append(Page(texts=(Text(page.margin_mm, y, Anchor.START, (Run(title, em, italic=True),)),)))
        self._y += em * LEADING + LINE_GAP_MM / 2

    def _lowest(self) -> float:
        return self.page.foot_mm - (NOTE * self.page.text * LEADING + LINE_GAP_MM / 2 if self.footer else 0.0)

    def _close(self) -> None:
        page = united([Page(), *self._over, *(block.at(y) for y, block in self._spread()), *self._under])
        headings = tuple(block.heading for _, block in self._placed if block.heading is not None)
        self.pages.append(replace(page, headings=headings))
        self._placed, self._over, self._under = [], [], []

    def _spread(self) -> Iterator[tuple[float, Block]]:
        """The blocks with the gaps between lines of music as wide as there is room for."""
        loose = sum(block.loose for _, block in self._placed[1:])
        extra = min((self._foot - self._y) / loose, WIDEST_GAP_MM - LINE_GAP_MM) if loose else 0.0
        shift = 0.0
        for number, (y, block) in enumerate(self._placed):
            if number and block.loose:
                shift += max(extra, 0.0)
            yield y + shift, block


def numbered(page: Page, number: int, count: int, sizes: SheetFormat) -> Page:
    """The page with its number at the head, from the second on."""
    if number == 1:
        return page
    em = SMALL_TITLE * sizes.text
    at = Text(
        sizes.width_mm - sizes.margin_mm, sizes.margin_mm + em * (LEADING - BASE), Anchor.END,
        (Run(f"{number} / {count}", em),),
    )  # fmt: skip
    return replace(page, texts=(*page.texts, at))


def _chunks(blocks: Sequence[Block]) -> Iterator[list[Block]]:
    """The blocks in runs of which only the last may end a page."""
    chunk: list[Block] = []
    for block in blocks:
        chunk.append(block)
        if not block.keeps_next:
            yield chunk
            chunk = []
    if chunk:
        yield chunk


def _height(blocks: Sequence[Block]) -> float:
    """Height of blocks under one another, the first at the top."""
    return sum(block.height_mm for block in blocks) + sum(block.gap_mm for block in blocks[1:])
