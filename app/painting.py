"""Paints the pictures of ``core.engraving`` with a QPainter, on screen and on paper alike.

Everything is drawn in picture units; the caller scales and moves the painter. Colours are given by role, so that a
dark window and a printed page come from the same picture.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass

from PySide6.QtGui import QColor, QPainter

from core.engraving.bow_signs import BowSign
from core.engraving.picture import Picture


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
        painter: Where; its transform is left as it was.
        picture: What, without bow signs and highlights.
        inks: Colours.
        coloured: Other colours for the shapes and texts that belong to these notes, by note id.
    """


def paint_bow_signs(
    painter: QPainter, picture: Picture, signs: Mapping[str, BowSign], inks: Inks = PRINT_INKS,
    coloured: Mapping[str, QColor] | None = None,
) -> None:  # fmt: skip
    """Paint the signs that stand in the picture's bow slots; a sign whose note has no slot is left out."""


def paint_glow(painter: QPainter, picture: Picture, note_ids: Collection[str], colour: QColor) -> None:
    """Paint a soft ground behind notes; to be called before ``paint_picture``."""
