"""Title and credits at the head of the page on screen."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtGui import QColor, QPainter

from app.page_layout import SIDE_MARGIN, TOP_MARGIN
from app.painting import paint_text, run_width
from core.engraving.picture import Anchor, Run, Text
from core.translation import tr
from core.tune import Tune
from core.values import dataclass

TITLE_SIZE = 640.0  # picture units, as everything here
SMALL_SIZE = 330.0
LEADING = 1.35  # from base line to base line, in sizes
SHOWN_CREDITS = ("composer", "arranger", "source", "origin")


@dataclass(frozen=True)
class Heading:
    """What stands at the head of a page.

    Attributes:
        title: In large letters, in the middle.
        subtitles: Other titles under it.
        left, right: One line each under the titles.
        foot: Height kept free under them.
    """

    title: str
    subtitles: tuple[str, ...]
    left: str
    right: str
    foot: float = 0

    @property
    def height(self) -> float:
        """Picture units from the top margin to the foot of the heading."""
        lines = len(self.subtitles) + bool(self.left or self.right)
        return TITLE_SIZE * 1.2 + SMALL_SIZE * LEADING * lines + self.foot

    def texts(self, page_width: float) -> tuple[Text, ...]:
        """Its lines as they stand on a page of some width, none over the edge."""
        room = page_width - 2 * SIDE_MARGIN
        middle, right = page_width / 2, page_width - SIDE_MARGIN
        y = TOP_MARGIN + TITLE_SIZE * 0.9
        texts = [Text(middle, y, Anchor.MIDDLE, (fitted(Run(self.title, TITLE_SIZE), room),))]
        for subtitle in self.subtitles:
            y += SMALL_SIZE * LEADING
            texts.append(Text(middle, y, Anchor.MIDDLE, (fitted(Run(subtitle, SMALL_SIZE, italic=True), room),)))
        y += SMALL_SIZE * LEADING * 1.2
        left = fitted(Run(self.left, SMALL_SIZE, italic=True), room * 0.48)
        texts.append(Text(SIDE_MARGIN, y, Anchor.START, (left,)))
        texts.append(Text(right, y, Anchor.END, (fitted(Run(self.right, SMALL_SIZE), room * 0.48),)))
        return tuple(text for text in texts if text.text)

    def paint(self, painter: QPainter, page_width: float, ink: QColor) -> None:
        """Paint it in picture units, the origin at the page's top left corner."""
        for text in self.texts(page_width):
            paint_text(painter, text, ink)


def heading_of(tune: Tune, bowing_name: str, foot: float = 0) -> Heading:
    """The heading of a tune's page on which a bowing is shown; ``foot`` is height kept free at its foot."""
    dance = tune.dance[:1].upper() + tune.dance[1:]
    left = f"{dance}, {bowing_name}" if dance else bowing_name
    credits = [credit.text for kind in SHOWN_CREDITS for credit in tune.credits if credit.kind == kind]
    return Heading(tune.title or tr("Untitled"), tune.other_titles[:2], left, ", ".join(credits[:2]), foot)


def fitted(run: Run, room: float) -> Run:
    """A text that is too wide for some room, shortened with an ellipsis."""
    text = run.text
    while len(text) > 1 and run_width(run) > room:
        text = text[:-1].rstrip()
        run = replace(run, text=text + "…")
    return run
