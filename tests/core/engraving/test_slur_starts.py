"""One slur from a note at 1000 to one at 2000, typed here; a sign of size 1000 is 310 wide and 338 high."""

from __future__ import annotations

from core.engraving.glyphs import Command
from core.engraving.kinds import Kind
from core.engraving.picture import BowSlot, Box, Curve, Outline
from core.engraving.slur_starts import start_beside

TWO = BowSlot("a", 1000, 1500, 1000, rows=2)  # its rows reach from 1500 up to about 700
SLUR = Outline(
    (
        Command("M", (1000, 650)), Command("C", (1300, 400, 1700, 900, 2000, 1500)),
        Command("C", (1700, 930, 1300, 430, 1000, 650)), Command("Z"),
    ),
    True, pen=10, kind=Kind.SLUR, owner="a",
)  # fmt: skip
CURVE = Curve("a", "c", False, SLUR.box, 0)
BOXES = {"a": Box(900, 1600, 1100, 2000), "b": Box(1450, 1600, 1600, 2000), "c": Box(1900, 1550, 2100, 2000)}


def pulled(slot: BowSlot = TWO, **boxes: Box) -> Outline | None:
    return start_beside(CURVE, SLUR, {slot.note_id: slot}, {**BOXES, **boxes})


def test_the_slur_begins_beside_the_first_row_and_ends_where_it_did() -> None:
    now = pulled()
    assert now is not None
    left, top = now.commands[0].numbers
    assert left > TWO.box().right
    assert TWO.foot(1) < top < TWO.foot(0)
    assert now.commands[1].numbers[-2:] == (2000, 1500)
    assert now.commands[2].numbers[-2:] == now.commands[0].numbers


def test_it_meets_neither_row_of_signs() -> None:
    now = pulled()
    assert now is not None
    assert now.box.left > TWO.box().right


def test_it_stays_where_there_is_one_row_or_no_sign() -> None:
    assert pulled(BowSlot("a", 1000, 1500, 1000)) is None
    assert pulled(BowSlot("other", 1000, 1500, 1000, rows=2)) is None


def test_it_stays_where_a_note_would_be_in_its_way() -> None:
    assert pulled(b=Box(1450, 900, 1600, 2000)) is None


def test_it_stays_where_it_would_become_too_short() -> None:
    near = Outline((Command("M", (1000, 650)), Command("C", (1100, 500, 1200, 900, 1300, 1500))), True)
    assert start_beside(CURVE, near, {"a": TWO}, BOXES) is None
