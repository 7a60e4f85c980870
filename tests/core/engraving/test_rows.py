"""Bow slots and obstacles typed here: a sign of size 1000 is 338 units high and 310 wide."""

from __future__ import annotations

from core.engraving.picture import BowSlot, Box
from core.engraving.rows import HIGHEST_LIFT, level_rows

LOW, HIGH = BowSlot("low", 1000, 900, 1000), BowSlot("high", 2000, 700, 1000)
SLOTS = {"low": LOW, "high": HIGH}


def heights(slots: dict[str, BowSlot]) -> dict[str, float]:
    return {note_id: slot.bottom for note_id, slot in slots.items()}


def test_the_lower_sign_of_a_beam_is_lifted_to_the_higher_one() -> None:
    assert heights(level_rows(SLOTS, [["low", "high"]], [])) == {"low": 700, "high": 700}


def test_signs_without_a_common_beam_stay() -> None:
    assert level_rows(SLOTS, [["low"], ["high"]], []) == SLOTS


def test_nothing_is_lifted_into_or_through_what_is_in_the_way() -> None:
    into, through, beside = Box(900, 300, 1100, 400), Box(900, 500, 1100, 560), Box(1400, 300, 1600, 400)
    for chord, lifted in ((into, False), (through, False), (beside, True)):
        assert heights(level_rows(SLOTS, [["low", "high"]], [chord]))["low"] == (700 if lifted else 900)


def test_a_beam_whose_signs_cannot_all_be_lifted_keeps_them_all() -> None:
    three = {**SLOTS, "third": BowSlot("third", 3000, 800, 1000)}
    assert level_rows(three, [list(three)], [Box(900, 400, 1100, 500)]) == three


def test_no_sign_is_lifted_far_from_its_note() -> None:
    far = {**SLOTS, "high": BowSlot("high", 2000, 900 - HIGHEST_LIFT - 1, 1000)}
    assert level_rows(far, [["low", "high"]], []) == far
