"""What lands on the paper, told from the pixels."""

from __future__ import annotations

import gc
import sys
import weakref
from dataclasses import replace

import pytest
from PySide6.QtGui import QColor, QPainter

from app.bow_sign_painting import paint_bow_signs
from app.painting import DARK_INKS, PRINT_INKS, Inks, paint_picture, text_box, texts_within
from core.bowing import Bow, Bowing
from core.engraving.bow_signs import BowSign
from core.engraving.engraver import Engraver
from core.engraving.kinds import Kind
from core.engraving.lines import Line
from core.engraving.picture import Anchor, Picture, Run, Text
from tests.app.pixels import SCALE, darkest, painted
from tests.core.builders import bowed

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture(scope="module")
def picture() -> Picture:
    tune, bowing = bowed("(GA)Bd g2z2|")
    return Engraver().engrave(tune, bowing, Line(0, 1), dict.fromkeys(("b0n1", "b0n3", "b0n4", "b0n5"), 1), 8000)


def test_heads_and_staff_are_inked_and_the_rest_is_paper(picture: Picture) -> None:
    image = painted(picture, lambda painter: paint_picture(painter, picture))
    for head in (picture.heads[f"b0n{k}"] for k in range(1, 6)):
        assert image.pixelColor(int(head.x * SCALE), int(head.y * SCALE)).lightness() < 60
    assert darkest(image, picture.bow_slots["b0n4"].box()) == 255, "room for a bow sign is not inked by the picture"


def test_colours_follow_the_notes_they_belong_to(picture: Picture) -> None:
    red = QColor("#ff0000")
    image = painted(picture, lambda painter: paint_picture(painter, picture, coloured={"b0n1": red}))

    def colour_at(note_id: str) -> QColor:
        head = picture.heads[note_id]
        return image.pixelColor(int(head.x * SCALE), int(head.y * SCALE))

    assert colour_at("b0n1") == red
    assert colour_at("b0n2").saturation() == 0
    slur = picture.slurs[0].box
    reds = sum(
        image.pixelColor(x, y).saturation() > 200
        for x in range(int(slur.left * SCALE), int(slur.right * SCALE))
        for y in range(int(slur.top * SCALE), int(slur.bottom * SCALE))
    )
    assert reds > 20, "the slur goes with its first note"


def test_a_dark_page_has_light_ink(picture: Picture) -> None:
    image = painted(picture, lambda painter: paint_picture(painter, picture, DARK_INKS), paper=DARK_INKS.paper)
    head = picture.heads["b0n1"]
    assert image.pixelColor(int(head.x * SCALE), int(head.y * SCALE)).lightness() > 200


def test_inks_can_be_told_apart() -> None:
    def contrast(ink: QColor, paper: QColor) -> float:
        """Ratio of relative luminances, WCAG 2.2."""

        def luminance(colour: QColor) -> float:
            parts = (colour.redF(), colour.greenF(), colour.blueF())
            linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
            return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

        low, high = sorted((luminance(ink), luminance(paper)))
        return (high + 0.05) / (low + 0.05)

    for inks in (PRINT_INKS, DARK_INKS):
        assert isinstance(inks, Inks)
        assert contrast(inks.ink, inks.paper) > 12
        assert 4.5 < contrast(inks.light, inks.paper) < 0.6 * contrast(inks.ink, inks.paper)


def test_painting_leaves_the_painter_as_it_was(picture: Picture) -> None:
    image = painted(picture)
    painter = QPainter(image)
    painter.scale(SCALE, SCALE)
    before = painter.transform(), painter.pen(), painter.brush(), painter.font()
    paint_picture(painter, picture)
    paint_bow_signs(painter, picture, {"b0n1": BowSign((Bow.DOWN,), fixed=True)})
    assert (painter.transform(), painter.pen(), painter.brush(), painter.font()) == before
    painter.end()


def test_painting_again_and_again_loses_no_reference_to_none(picture: Picture) -> None:
    """PySide6 6.12.0 on Python 3.11 loses one at every void call."""
    before = sys.getrefcount(None)
    painted(picture, *[lambda painter: paint_picture(painter, picture)] * 30)
    assert sys.getrefcount(None) > before - 200


def test_a_picture_is_let_go_with_its_paths() -> None:
    tune, _ = bowed("A8|")
    pictures = [Engraver().engrave(tune, Bowing("plain"), Line(0, 1), {})]
    painted(pictures[0], lambda painter: paint_picture(painter, pictures[0]))
    gone = weakref.ref(pictures.pop())
    gc.collect()
    assert gone() is None


@pytest.mark.parametrize(("text", "smaller"), [("lean on it", False), ("lean on it " * 12, True)])
def test_a_text_that_begins_at_the_end_of_a_line_stays_on_it(picture: Picture, text: str, smaller: bool) -> None:
    engraved = Text(picture.width - 50, 1662, Anchor.START, (Run(text, 405, italic=True),), Kind.WORDS)
    assert text_box(engraved).right > picture.width
    (*others, shown) = texts_within(replace(picture, texts=(*picture.texts, engraved)))
    assert tuple(others) == picture.texts
    box = text_box(shown)
    assert -0.5 < box.left < box.right < picture.width + 0.5
    assert (shown.runs[0].size < engraved.runs[0].size) is smaller
