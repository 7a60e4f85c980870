import pytest

from core.engraving.picture import Anchor, BowSlot, Box, Picture, Point, Run, Text, slot_height


def picture(**given: object) -> Picture:
    nothing: dict[str, object] = {
        "width": 1000.0, "height": 500.0, "staff_top": 200.0, "staff_bottom": 400.0, "shapes": (), "texts": (),
        "boxes": {}, "heads": {}, "bow_slots": {}, "measures": {},
    }  # fmt: skip
    return Picture(**{**nothing, **given})  # type: ignore[arg-type]


def test_boxes_know_size_centre_and_what_they_hold() -> None:
    box = Box(10, 20, 40, 100)
    assert (box.width, box.height, box.centre) == (30, 80, Point(25, 60))
    assert box.contains(10, 100)
    assert not box.contains(9.9, 50)
    assert box.grown(5, 10) == Box(5, 10, 45, 110)
    assert box.united(Box(0, 50, 20, 120)) == Box(0, 20, 40, 120)


@pytest.mark.parametrize(
    ("other", "shares_area"),
    [
        (Box(40, 20, 50, 100), False),
        (Box(39, 99, 50, 200), True),
        (Box(0, 100, 50, 200), False),
        (Box(0, 0, 90, 200), True),
    ],
)
def test_boxes_that_only_touch_do_not_overlap(other: Box, shares_area: bool) -> None:
    assert Box(10, 20, 40, 100).overlaps(other) is shares_area
    assert other.overlaps(Box(10, 20, 40, 100)) is shares_area


def test_the_nearest_of_two_notes_in_reach_is_the_one_pointed_at() -> None:
    two = picture(
        boxes={"a": Box(100, 200, 140, 400), "b": Box(160, 200, 200, 400)},
        heads={"a": Point(120, 380), "b": Point(180, 220)},
    )
    assert two.note_at(149, 300, reach=30) == "a"
    assert two.note_at(151, 300, reach=30) == "b"
    assert two.note_at(151, 300, reach=0) is None
    assert two.note_at(120, 500, reach=30) is None


def test_a_bow_slot_answers_around_its_sign() -> None:
    slot = BowSlot("a", 500, 150, 720)
    one = picture(bow_slots={"a": slot})
    assert one.slot_at(500, 150 - slot_height(slot) / 2) == "a"
    assert one.slot_at(500, 300) is None
    assert one.slot_at(800, 140) is None


def test_a_slot_of_two_rows_answers_in_both() -> None:
    slot = BowSlot("a", 500, 450, 720, rows=2)
    two = picture(bow_slots={"a": slot})
    assert slot.foot(1) < slot.foot(0) - slot_height(slot)
    for row in (0, 1):
        assert two.slot_at(500, slot.foot(row) - slot_height(slot) / 2, reach=0) == "a"
    assert two.slot_at(500, slot.foot(1) - 2 * slot_height(slot), reach=0) is None
    assert slot.box(1).height < slot.box().height


def test_a_text_is_its_runs_in_a_row() -> None:
    assert Text(0, 0, Anchor.START, (Run("B", 10), Run("♭", 10, music=True), Run("7", 10))).text == "B♭7"
