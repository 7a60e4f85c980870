"""Paints the pictures of ``core.engraving`` with a QPainter, on screen and on paper alike.

Everything is drawn in picture units; the caller scales and moves the painter. Colours are given by role, so that a
dark window and a printed page come from the same picture.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPen

from app.fonts import page_font
from core.engraving.glyphs import Command, glyph_outline
from core.engraving.picture import Anchor, Box, Glyph, Picture, Run, Text
from core.values import dataclass

FONT_PIXELS = 200  # texts are set at this size and scaled, so that hinting and rounding never show
CAPITALS = 0.75  # height of tall letters in ems, with some air
_WORD = re.compile(r"\S+")


@dataclass(frozen=True, slots=True)
class Inks:
    """Colours by role.

    Attributes:
        ink: Notes, staff, texts, fixed bow signs.
        light: Bow signs that follow from the strokes before.
        paper: What it is painted on.
        glow: Behind highlighted notes.
        accent: Notes and slurs that a pointer or a finding singles out.
    """

    ink: QColor
    light: QColor
    paper: QColor
    glow: QColor
    accent: QColor


PRINT_INKS = Inks(QColor("#000000"), QColor("#6e6e6e"), QColor("#ffffff"), QColor("#ffe9a8"), QColor("#0b5cad"))
DARK_INKS = Inks(QColor("#e8e6e1"), QColor("#9a9790"), QColor("#23221f"), QColor("#5a4a1c"), QColor("#7db8f0"))


def paint_picture(
    painter: QPainter, picture: Picture, inks: Inks = PRINT_INKS, coloured: Mapping[str, QColor] | None = None
) -> None:
    """Paint a picture with its top left corner at the painter's origin, in picture units.

    Args:
        painter: Where; its state is left as it was.
        picture: What, without bow signs and highlights.
        inks: Colours.
        coloured: Other colours for the shapes and texts that belong to these notes, by note id.
    """
    colours = coloured or {}
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for shape in picture.shapes:
        colour = colours.get(shape.owner, inks.ink)
        if isinstance(shape, Glyph):
            painter.fillPath(glyph_path(shape.code, shape.size).translated(shape.x, shape.y), colour)
            continue
        path = _path(shape.commands)
        if shape.filled:
            painter.fillPath(path, colour)
        if shape.pen:
            painter.strokePath(path, _pen(shape.pen, shape.dash, shape.round_ends, colour.rgba()))
    for text in texts_within(picture):
        paint_text(painter, text, colours.get(text.owner, inks.ink))
    painter.restore()


def paint_text(painter: QPainter, text: Text, colour: QColor) -> None:
    """Paint a text in picture units."""
    widths = [run_width(run) for run in text.runs]
    whole = sum(widths)
    x = text.x - {Anchor.START: 0.0, Anchor.MIDDLE: whole / 2, Anchor.END: whole}[text.anchor]
    painter.setPen(colour)
    for run, width in zip(text.runs, widths, strict=True):
        scale = run.size / FONT_PIXELS
        painter.save()
        painter.translate(x, text.y)
        painter.scale(scale, scale)
        painter.setFont(page_font(run.music, run.bold, run.italic, FONT_PIXELS))
        for at, word in _words(run):
            painter.drawText(QPointF(at, 0), word)
        painter.restore()
        x += width


@lru_cache(maxsize=2048)
def _words(run: Run) -> tuple[tuple[float, str], ...]:
    """Words of a run and where each begins, at FONT_PIXELS.

    In a PDF the font's space reads back as a tab; between words drawn one by one every reader finds a space.
    """
    metrics = QFontMetricsF(page_font(run.music, run.bold, run.italic, FONT_PIXELS))
    return tuple((metrics.horizontalAdvance(run.text[: found.start()]), found[0]) for found in _WORD.finditer(run.text))


def texts_within(picture: Picture) -> tuple[Text, ...]:
    """Texts of a picture as they are painted: none reaches beyond its right edge.

    The engraver sets words from their note on, however little of the line is left. Such a text is moved back, and
    set smaller where the whole line does not hold it.
    """
    return tuple(
        text if text_box(text).right <= picture.width else _moved_back(text, picture.width) for text in picture.texts
    )


def _moved_back(text: Text, width: float) -> Text:
    box = text_box(text)
    shrunk = min(width / (box.right - box.left), 1.0)
    runs = tuple(replace(run, size=run.size * shrunk) for run in text.runs)
    return replace(text, x=width, anchor=Anchor.END, runs=runs)


def text_box(text: Text) -> Box:
    """About what a text covers: from over its capitals to its base line."""
    width = sum(run_width(run) for run in text.runs)
    left = text.x - {Anchor.START: 0.0, Anchor.MIDDLE: width / 2, Anchor.END: width}[text.anchor]
    return Box(left, text.y - max(run.size for run in text.runs) * CAPITALS, left + width, text.y)


@lru_cache(maxsize=2048)
def run_width(run: Run) -> float:
    """Width of a piece of text in picture units."""
    metrics = QFontMetricsF(page_font(run.music, run.bold, run.italic, FONT_PIXELS))
    return metrics.horizontalAdvance(run.text) * run.size / FONT_PIXELS


@lru_cache(maxsize=1024)
def glyph_path(code: str, size: float) -> QPainterPath:
    """Outline of a glyph at an em size, y down, its origin at 0, 0."""
    scale = size / 1000
    scaled = tuple(
        Command(letter, tuple(value * (-scale if place % 2 else scale) for place, value in enumerate(numbers)))
        for letter, numbers in glyph_outline(code)
    )
    return _path(scaled)


def _path(commands: tuple[Command, ...]) -> QPainterPath:
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    for letter, values in commands:
        match letter:
            case "M":
                path.moveTo(*values)
            case "L":
                path.lineTo(*values)
            case "C":
                path.cubicTo(*values)
            case "Z":
                path.closeSubpath()
    return path


@lru_cache(maxsize=256)
def _pen(width: float, dash: tuple[float, ...], round_ends: bool, rgba: int) -> QPen:
    pen = QPen(QColor.fromRgba(rgba))
    pen.setWidthF(width)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap if round_ends else Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin if round_ends else Qt.PenJoinStyle.MiterJoin)
    if dash:
        pen.setDashPattern([length / width for length in dash])
    return pen
