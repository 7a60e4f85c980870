from dataclasses import replace

import pytest
from hypothesis import given

from core.bowing import Bowing
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson, rename_bowing
from core.sheet_plan import (
    BEGINS,
    NO_TEXT,
    NoteSize,
    SheetKind,
    SheetPlan,
    TextBlock,
    begin,
    for_any_lesson,
    read_plan,
    turned_into,
    write_plan,
)
from tests.core.builders import bowed
from tests.property.strategies import sheet_plans

BOWINGS = (Bowing("One"), Bowing("Two"), Bowing("Three"))


@given(sheet_plans())
def test_a_plan_comes_back_from_its_text(plan: SheetPlan) -> None:
    assert read_plan(write_plan(plan)) == plan
    assert write_plan(plan).isascii()


def test_a_plain_sheet_says_nothing() -> None:
    assert write_plan(SheetPlan()) == "{}"


def test_bowings_are_chosen_by_name_in_the_order_of_the_sheet() -> None:
    assert [bowing.name for bowing in SheetPlan(bowings=("Three", "One")).chosen(BOWINGS)] == ["Three", "One"]


def test_names_that_the_lesson_has_not_are_passed_over() -> None:
    assert SheetPlan(bowings=("Four", "Two")).chosen(BOWINGS) == (BOWINGS[1],)
    assert SheetPlan(bowings=("Four",)).chosen(BOWINGS) == BOWINGS
    assert SheetPlan().chosen(BOWINGS) == BOWINGS


@pytest.mark.parametrize("fault", [{"paper": "A9"}, {"copies": 3}, {"copies": 0}, {"from_bar": -1}])
def test_what_cannot_be_printed_is_refused(fault: dict[str, object]) -> None:
    with pytest.raises(ValueError, match=r"is no|do not"):
        SheetPlan(**fault)  # type: ignore[arg-type]


@pytest.mark.parametrize("kind", SheetKind)
@pytest.mark.parametrize("other", SheetKind)
def test_an_untouched_sheet_turned_into_another_kind_is_as_that_one_begins(kind: SheetKind, other: SheetKind) -> None:
    assert turned_into(begin(kind), other) == begin(other)


def test_what_was_chosen_stays_in_another_kind() -> None:
    chosen = replace(begin(SheetKind.CLASS), size=NoteSize.SMALL, marks=MarkDensity.NEEDED, footer="Tuesday")
    turned = turned_into(chosen, SheetKind.EXERCISE)
    assert (turned.size, turned.marks, turned.footer) == (NoteSize.SMALL, MarkDensity.NEEDED, "Tuesday")
    assert turned_into(chosen, SheetKind.TEACHER).findings


def test_every_kind_says_how_it_begins() -> None:
    assert set(BEGINS) == set(SheetKind)


def test_what_belongs_to_one_lesson_is_no_default_for_the_next() -> None:
    plan = replace(begin(SheetKind.EXERCISE), bowings=("One",), before=TextBlock("Listen"), from_bar=5, copies=2)
    assert for_any_lesson(plan) == replace(begin(SheetKind.EXERCISE), copies=2)


def test_paragraphs_are_lines_and_empty_ones_are_gaps() -> None:
    assert TextBlock("", "\n One \r\n\ntwo\n\n").paragraphs == ("One", "", "two")
    assert not TextBlock(" ", "\n")
    assert TextBlock("Homework")
    assert NO_TEXT.paragraphs == ()


def test_a_renamed_bowing_stays_on_the_sheet() -> None:
    planned = Lesson(bowed("A8|]")[0], BOWINGS, sheet=SheetPlan(bowings=("Two",)))
    renamed = rename_bowing(planned, 1, "Second")
    assert renamed.sheet == SheetPlan(bowings=("Second",))
    assert rename_bowing(planned, 0, "First").sheet == planned.sheet
