"""Bow signs, told from their outlines and from the pixels that land on the paper."""

from __future__ import annotations

from functools import partial
from itertools import pairwise

import pytest
from PySide6.QtGui import QImage, QPainter

from app.bow_sign_painting import ROW_LABELS, Room, bow_sign_path, paint_bow_signs, row_labels
from app.painting import PRINT_INKS, paint_picture, text_box
from core.bowing import Bow
from core.engraving.bow_signs import BowSign, MarkDensity, bow_signs, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.lines import Line
from core.engraving.picture import Box, Picture
from core.reading.abc import read_abc
from core.strokes import work_out
from tests.app.pixels import SCALE, darkest, painted
from tests.core.builders import bowed

pytestmark = pytest.mark.usefixtures("qapp")
DOWN, UP = (Bow.DOWN,), (Bow.UP,)


@pytest.fixture(scope="module")
def picture() -> Picture:
    tune, bowing = bowed("(GA)Bd g2z2|")
    return Engraver().engrave(tune, bowing, Line(0, 1), dict.fromkeys(("b0n1", "b0n3", "b0n4", "b0n5"), 1), 8000)


def two_rows(text: str) -> tuple[Picture, dict[str, BowSign]]:
    """A line of a tune and its signs, with room for two rows where a bar is played twice."""
    tune, bowing = bowed(text)
    signs = bow_signs(tune, bowing, work_out(tune, bowing), MarkDensity.EVERY)
    return Engraver().engrave(tune, bowing, Line(0, len(tune.bars)), rows_kept(tune, signs)), dict(signs)


def signs_only(picture: Picture, signs: dict[str, BowSign]) -> QImage:
    return painted(picture, lambda painter: paint_bow_signs(painter, picture, signs))


def test_a_fixed_sign_is_dark_and_one_that_follows_is_lighter(picture: Picture) -> None:
    image = signs_only(picture, {"b0n1": BowSign(DOWN, fixed=True), "b0n3": BowSign(DOWN, fixed=False)})
    assert darkest(image, picture.bow_slots["b0n1"].box()) < 30
    assert 60 < darkest(image, picture.bow_slots["b0n3"].box()) < 150
    assert darkest(image, picture.bow_slots["b0n4"].box()) == 255


def test_a_sign_without_a_slot_is_left_out(picture: Picture) -> None:
    assert signs_only(picture, {"b0n2": BowSign(DOWN, fixed=True)}) == signs_only(picture, {})


def test_signs_stay_in_their_slots(picture: Picture) -> None:
    image = signs_only(picture, dict.fromkeys(picture.bow_slots, BowSign(UP, fixed=True)))
    for note_id in picture.bow_slots:
        assert darkest(image, picture.bow_slots[note_id].box()) < 60
    painter = QPainter(image)
    painter.scale(SCALE, SCALE)
    for note_id in picture.bow_slots:
        box = picture.bow_slots[note_id].box().grown(15, 15)
        painter.fillRect(int(box.left), int(box.top), int(box.width), int(box.height), PRINT_INKS.paper)
    painter.end()
    assert image == signs_only(picture, {})


def test_the_first_pass_stands_next_to_the_staff_and_the_next_one_over_it() -> None:
    picture, signs = two_rows("|:A4 B2c2:|")
    assert signs["b0n1"].bows == (Bow.DOWN, Bow.UP)
    slot = picture.bow_slots["b0n1"]
    image = signs_only(picture, {"b0n1": signs["b0n1"]})
    for row, bow in enumerate(signs["b0n1"].bows):
        corner = bow_sign_path(bow, False, slot.size).boundingRect()
        left, right = slot.x + corner.left(), slot.x + corner.right()
        foot = slot.foot(row)
        legs = [darkest(image, Box(x - 25, foot - 60, x + 25, foot - 30)) for x in (left + 10, right - 10)]
        assert [grey < 200 for grey in legs] == [bow is Bow.DOWN] * 2, (
            "a down-bow stands on two legs, an up-bow on none"
        )


def test_a_line_with_two_rows_says_once_what_they_are() -> None:
    picture, signs = two_rows("|:A4 B2c2|A4 B2c2|d8:|")
    labels = row_labels(picture, signs)
    first = picture.bow_slots["b0n1"]
    assert [label.text for label in labels] == list(ROW_LABELS)
    assert labels[0].y - labels[1].y == pytest.approx(first.foot(0) - first.foot(1))
    assert all(text_box(label).right < first.box().left for label in labels)


def test_one_row_needs_no_label_although_two_have_room() -> None:
    picture, signs = two_rows("|:A4 B4|c4 d4:|")
    assert picture.bow_slots["b0n1"].rows == 2
    assert row_labels(picture, signs) == ()


@pytest.mark.parametrize("key", ["C", "G", "E", "Eb"])
def test_labels_stand_where_nothing_else_is(key: str) -> None:
    """Signs of the key reach over the staff, where the first notes' signs are; chord symbols and endings are above."""
    lesson = read_abc(f'X:1\nM:4/4\nL:1/8\nK:{key}\n|:"D"gfed c2B2|"A"A4 "G"B4|[1 d8:|[2 e8||\n').lessons[0]
    tune, bowing = lesson.tune, lesson.bowings[0]
    for first in (0, 1):
        signs = bow_signs(tune, bowing, work_out(tune, bowing), MarkDensity.EVERY)
        picture = Engraver().engrave(tune, bowing, Line(first, 4), rows_kept(tune, signs))
        labels = row_labels(picture, signs)
        assert len(labels) == 2
        image = painted(picture, partial(paint_picture, picture=picture))
        assert all(darkest(image, text_box(label)) == 255 for label in labels)
        assert not any(text_box(label).overlaps(slot.box()) for label in labels for slot in picture.bow_slots.values())


def test_a_sign_shrinks_to_the_room_it_has_but_stays_legible() -> None:
    whole, tight, none = (
        bow_sign_path(Bow.UP, False, 720, Room(room, room)).boundingRect().width() for room in (500, 90, 10)
    )
    assert tight == pytest.approx(180, rel=0.01)
    assert 0.5 * whole < none < tight < whole


def test_a_lift_comma_stands_before_the_sign_and_needs_room_on_its_side_only() -> None:
    plain, lifted = (bow_sign_path(Bow.DOWN, retake, 720).boundingRect() for retake in (False, True))
    assert lifted.left() < plain.left() - 60
    assert lifted.right() == pytest.approx(plain.right())
    half = plain.right() + 1
    assert bow_sign_path(Bow.DOWN, True, 720, Room(500, half)).boundingRect() == lifted
    assert bow_sign_path(Bow.DOWN, True, 720, Room(half, 500)).boundingRect().width() < lifted.width()


def test_neighbouring_signs_keep_apart_however_close_their_notes() -> None:
    tune, bowing = bowed("A/4B/4c/4d/4e/4f/4g/4a/4 A/4B/4c/4d/4e/4f/4g/4a/4 A4|")
    signs = bow_signs(tune, bowing, work_out(tune, bowing), MarkDensity.EVERY)
    picture = Engraver().engrave(tune, bowing, Line(0, 1), rows_kept(tune, signs), 6000)
    image = signs_only(picture, dict(signs))
    slots = [picture.bow_slots[note.id] for note in tune.sequence]
    for slot, after in pairwise(slots):
        middle = (slot.x + after.x) / 2
        assert darkest(image, Box(middle, 0, middle + 1 / SCALE, picture.staff_top)) > 180
