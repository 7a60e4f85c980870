"""Printed pages as values, in millimetres from the top left corner of the paper, and how they are painted.

Preview, printer and PDF paint the same pages with the same function.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPen

from app.accent_painting import PEN, shape
from app.accent_painting import SIZE as MET_UNITS
from app.bow_sign_painting import bow_sign_path, paint_bow_signs
from app.page_layout import STRIP_GAP, STRIP_HEIGHT
from app.painting import PRINT_INKS, Inks, paint_picture, paint_text
from core.accents import Met
from core.engraving.bow_signs import BowSign
from core.engraving.picture import STAFF_SPACE, Picture, Text
from core.values import dataclass

STAFF_UNITS = 4 * STAFF_SPACE
PAIR_SCALE, PAIR_STEP = 0.74, 0.85  # of two accent shapes at one place, and how far apart, in their own sizes


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper size.

    Attributes:
        name: As the user knows it.
        width_mm, height_mm: As it lies.
    """

    name: str
    width_mm: float
    height_mm: float

    @property
    def turned(self) -> Paper:
        """The paper on its other side."""
        return replace(self, width_mm=self.height_mm, height_mm=self.width_mm)


A4 = Paper("A4", 210.0, 297.0)
LETTER = Paper("Letter", 215.9, 279.4)
PAPERS = {paper.name: paper for paper in (A4, LETTER)}


@dataclass(frozen=True, slots=True)
class PlacedLine:
    """A line of music on a page.

    Attributes:
        x_mm, y_mm: Its top left corner.
        scale: Millimetres to a picture unit.
        picture: The line.
        signs: Bow signs by note id.
        strip: How accents are met, each with its x in the picture; None where no strip stands under the line.
    """

    x_mm: float
    y_mm: float
    scale: float
    picture: Picture
    signs: Mapping[str, BowSign]
    strip: tuple[tuple[float, tuple[Met, ...]], ...] | None = None

    @property
    def height_mm(self) -> float:
        below = 0 if self.strip is None else STRIP_GAP + STRIP_HEIGHT
        return (self.picture.height + below) * self.scale

    @property
    def staff_mm(self) -> float:
        """Height of its staff."""
        return STAFF_UNITS * self.scale


@dataclass(frozen=True, slots=True)
class PlacedSign:
    """A bow sign beside a text.

    Attributes:
        x_mm, y_mm: Middle of its foot.
        size_mm: Em size.
        sign: What is shown.
    """

    x_mm: float
    y_mm: float
    size_mm: float
    sign: BowSign


@dataclass(frozen=True, slots=True)
class PlacedMet:
    """The shape of an accent beside a text, its middle at a place."""

    x_mm: float
    y_mm: float
    size_mm: float
    met: Met


@dataclass(frozen=True, slots=True)
class Rule:
    """A straight line from one place to another."""

    x_mm: float
    y_mm: float
    to_x_mm: float
    to_y_mm: float
    width_mm: float = 0.25
    dashed: bool = False


@dataclass(frozen=True, slots=True)
class Heading:
    """An entry of the outline: 0 a tune, 1 a bowing of it."""

    level: int
    title: str


@dataclass(frozen=True, slots=True)
class Page:
    """One page; texts are in millimetres."""

    lines: tuple[PlacedLine, ...] = ()
    texts: tuple[Text, ...] = ()
    signs: tuple[PlacedSign, ...] = ()
    mets: tuple[PlacedMet, ...] = ()
    rules: tuple[Rule, ...] = ()
    headings: tuple[Heading, ...] = ()

    def moved(self, dx: float, dy: float) -> Page:
        """The page with all that stands on it moved."""
        return replace(
            self,
            lines=tuple(replace(line, x_mm=line.x_mm + dx, y_mm=line.y_mm + dy) for line in self.lines),
            texts=tuple(replace(text, x=text.x + dx, y=text.y + dy) for text in self.texts),
            signs=tuple(replace(sign, x_mm=sign.x_mm + dx, y_mm=sign.y_mm + dy) for sign in self.signs),
            mets=tuple(replace(met, x_mm=met.x_mm + dx, y_mm=met.y_mm + dy) for met in self.mets),
            rules=tuple(
                replace(r, x_mm=r.x_mm + dx, y_mm=r.y_mm + dy, to_x_mm=r.to_x_mm + dx, to_y_mm=r.to_y_mm + dy)
                for r in self.rules
            ),
        )


@dataclass(frozen=True, slots=True)
class Sheet:
    """Pages to print.

    Attributes:
        paper: Paper size, as the pages lie.
        pages: At least one.
        title: Title for the file.
        author: Composers and arrangers, or "".
        copies: How often each page stands on its paper.
    """

    paper: Paper
    pages: tuple[Page, ...]
    title: str
    author: str
    copies: int = 1


def united(pages: Sequence[Page]) -> Page:
    """All that stands on some pages, on one; its outline is that of the first."""
    return Page(
        tuple(line for page in pages for line in page.lines),
        tuple(text for page in pages for text in page.texts),
        tuple(sign for page in pages for sign in page.signs),
        tuple(met for page in pages for met in page.mets),
        tuple(rule for page in pages for rule in page.rules),
        pages[0].headings,
    )


def paint_page(painter: QPainter, page: Page, inks: Inks = PRINT_INKS) -> None:
    """Paint a page; the painter's unit is a millimetre and its origin the corner of the paper."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for line in page.lines:
        painter.save()
        painter.translate(line.x_mm, line.y_mm)
        painter.scale(line.scale, line.scale)
        paint_picture(painter, line.picture, inks)
        paint_bow_signs(painter, line.picture, line.signs, inks)
        middle = line.picture.height + STRIP_GAP + STRIP_HEIGHT / 2
        for x, shown in line.strip or ():
            _paint_mets(painter, x, middle, MET_UNITS, shown, inks)
        painter.restore()
    for placed in page.signs:
        painter.save()
        painter.translate(placed.x_mm, placed.y_mm)
        painter.scale(placed.size_mm / STAFF_UNITS, placed.size_mm / STAFF_UNITS)
        path = bow_sign_path(placed.sign.bows[0], placed.sign.retake, STAFF_UNITS)
        painter.fillPath(path, inks.ink if placed.sign.fixed else inks.light)
        painter.restore()
    for met in page.mets:
        painter.save()
        painter.translate(met.x_mm, met.y_mm)
        painter.scale(met.size_mm / MET_UNITS, met.size_mm / MET_UNITS)
        _paint_mets(painter, 0, 0, MET_UNITS, (met.met,), inks)
        painter.restore()
    for rule in page.rules:
        pen = QPen(inks.light if rule.dashed else inks.ink, rule.width_mm)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        if rule.dashed:
            pen.setDashPattern([10, 10])
        painter.setPen(pen)
        painter.drawLine(QPointF(rule.x_mm, rule.y_mm), QPointF(rule.to_x_mm, rule.to_y_mm))
    for text in page.texts:
        paint_text(painter, text, inks.ink)


def _paint_mets(painter: QPainter, x: float, y: float, size: float, shown: Iterable[Met], inks: Inks) -> None:
    """One shape of the accent strip, or two smaller ones where passes differ; all in ink, told apart by form."""
    mets = tuple(shown)
    each = size if len(mets) == 1 else size * PAIR_SCALE
    for number, met in enumerate(mets):
        middle = QPointF(x + (number - (len(mets) - 1) / 2) * PAIR_STEP * size, y)
        filled, drawn = shape(met, each)
        painter.fillPath(filled.translated(middle), inks.ink)
        pen = QPen(inks.ink, PEN * each)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.strokePath(drawn.translated(middle), pen)
