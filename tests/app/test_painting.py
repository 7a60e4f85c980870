"""What lands on the paper, told from the pixels."""

from __future__ import annotations

import gc
import sys
import weakref

import pytest
from PySide6.QtCore import QRect
from PySide6.QtGui import QColor, QImage, QPainter

from app.painting import DARK_INKS, PRINT_INKS, Inks, bow_sign_path, paint_bow_signs, paint_glow, paint_picture
from core.bowing import Bow, Bowing
from core.engraving.bow_signs import BowSign
from core.engraving.engraver import Engraver
from core.engraving.lines import Line
from core.engraving.picture import Box, Picture, slot_height
from tests.core.builders import bowed

pytestmark = pytest.mark.usefixtures("qapp")
SCALE = 0.1  # pixels a picture unit
DOWN, UP = (Bow.DOWN,), (Bow.UP,)


@pytest.fixture(scope="module")
def picture() -> Picture:
    tune, bowing = bowed("(GA)Bd g2z2|")
    return Engraver().engrave(tune, bowing, Line(0, 1), frozenset({"b0n1", "b0n3", "b0n4", "b0n5"}), 8000)


def painted(picture: Picture, *paints: object, paper: QColor = PRINT_INKS.paper) -> QImage:
    image = QImage(int(picture.width * SCALE) + 1, int(picture.height * SCALE) + 1, QImage.Format.Format_RGB32)
    image.fill(paper)
    painter = QPainter(image)
    painter.scale(SCALE, SCALE)
    for paint in paints:
        paint(painter)  # type: ignore[operator]
    painter.end()
    return image


def signs_only(picture: Picture, signs: dict[str, BowSign]) -> QImage:
    return painted(picture, lambda painter: paint_bow_signs(painter, picture, signs))


def darkest(image: QImage, box: Box) -> int:
    """Darkest grey, 0 to 255, in a box of picture units."""
    place = QRect(int(box.left * SCALE), int(box.top * SCALE), int(box.width * SCALE), int(box.height * SCALE))
    return min(
        image.pixelColor(x, y).lightness()
        for x in range(max(place.left(), 0), min(place.right() + 1, image.width()))
        for y in range(max(place.top(), 0), min(place.bottom() + 1, image.height()))
    )


def over(picture: Picture, note_id: str, grow: float = 0) -> Box:
    slot = picture.bow_slots[note_id]
    return Box(slot.x - 110, slot.bottom - slot_height(slot), slot.x + 110, slot.bottom).grown(grow, grow)


def test_heads_and_staff_are_inked_and_the_rest_is_paper(picture: Picture) -> None:
    image = painted(picture, lambda painter: paint_picture(painter, picture))
    for head in (picture.heads[f"b0n{k}"] for k in range(1, 6)):
        assert image.pixelColor(int(head.x * SCALE), int(head.y * SCALE)).lightness() < 60
    assert darkest(image, over(picture, "b0n4")) == 255, "room for a bow sign is not inked by the picture"


def test_a_fixed_sign_is_dark_and_one_that_follows_is_lighter(picture: Picture) -> None:
    image = signs_only(picture, {"b0n1": BowSign(DOWN, fixed=True), "b0n3": BowSign(DOWN, fixed=False)})
    assert darkest(image, over(picture, "b0n1")) < 30
    assert 60 < darkest(image, over(picture, "b0n3")) < 150
    assert darkest(image, over(picture, "b0n4")) == 255


def test_a_sign_without_a_slot_is_left_out(picture: Picture) -> None:
    assert signs_only(picture, {"b0n2": BowSign(DOWN, fixed=True)}) == signs_only(picture, {})


def test_signs_stay_in_their_slots(picture: Picture) -> None:
    image = signs_only(picture, dict.fromkeys(picture.bow_slots, BowSign(UP, fixed=True)))
    for note_id in picture.bow_slots:
        assert darkest(image, over(picture, note_id)) < 60
    painter = QPainter(image)
    painter.scale(SCALE, SCALE)
    for note_id in picture.bow_slots:
        box = over(picture, note_id, grow=15)
        painter.fillRect(int(box.left), int(box.top), int(box.width), int(box.height), PRINT_INKS.paper)
    painter.end()
    assert image == signs_only(picture, {})


@pytest.mark.parametrize(("bows", "feet"), [((Bow.UP, Bow.DOWN), 1), ((Bow.DOWN, Bow.UP), 4)])
def test_the_sign_of_the_first_pass_stands_left_of_the_other(bows: tuple[Bow, ...], feet: int) -> None:
    path = bow_sign_path(bows, False, 720)
    corners = [path.elementAt(place) for place in range(path.elementCount())]
    on_foot = {round(corner.x) for corner in corners if abs(corner.y) < 1 and corner.x < 0}
    assert len(on_foot) == feet  # an up-bow stands on its point, a down-bow on two legs


def test_two_signs_shrink_to_the_room_they_have_but_stay_legible() -> None:
    wide = bow_sign_path((Bow.UP, Bow.DOWN), False, 720).boundingRect().width()
    tight = bow_sign_path((Bow.UP, Bow.DOWN), False, 720, room=0.9 * wide).boundingRect().width()
    none = bow_sign_path((Bow.UP, Bow.DOWN), False, 720, room=10).boundingRect().width()
    assert tight == pytest.approx(0.9 * wide, rel=0.01)
    assert none > 0.55 * wide


def test_a_lift_comma_stands_before_the_sign() -> None:
    plain, lifted = (bow_sign_path(DOWN, retake, 720).boundingRect() for retake in (False, True))
    assert lifted.left() < plain.left() - 60
    assert lifted.right() == pytest.approx(plain.right())


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


def test_a_glow_lies_behind_its_notes_only(picture: Picture) -> None:
    image = painted(picture, lambda painter: paint_glow(painter, picture, ["b0n1", "unknown"], PRINT_INKS.glow))
    head, other = picture.heads["b0n1"], picture.heads["b0n4"]
    assert image.pixelColor(int(head.x * SCALE), int(head.y * SCALE)) == PRINT_INKS.glow
    assert image.pixelColor(int(other.x * SCALE), int(other.y * SCALE)) == PRINT_INKS.paper


def test_painting_leaves_the_painter_as_it_was(picture: Picture) -> None:
    image = painted(picture)
    painter = QPainter(image)
    painter.scale(SCALE, SCALE)
    before = painter.transform(), painter.pen(), painter.brush(), painter.font()
    paint_picture(painter, picture)
    paint_bow_signs(painter, picture, {"b0n1": BowSign(DOWN, fixed=True)})
    assert (painter.transform(), painter.pen(), painter.brush(), painter.font()) == before
    painter.end()


def test_painting_again_and_again_loses_no_reference_to_none(picture: Picture) -> None:
    """PySide6 6.12.0 on Python 3.11 loses one at every void call."""
    before = sys.getrefcount(None)
    painted(picture, *[lambda painter: paint_picture(painter, picture)] * 30)
    assert sys.getrefcount(None) > before - 200


def test_a_picture_is_let_go_with_its_paths() -> None:
    tune, _ = bowed("A8|")
    pictures = [Engraver().engrave(tune, Bowing("plain"), Line(0, 1), frozenset())]
    painted(pictures[0], lambda painter: paint_picture(painter, pictures[0]))
    gone = weakref.ref(pictures.pop())
    gc.collect()
    assert gone() is None
