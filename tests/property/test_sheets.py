"""Laws of printed sheets, for lessons and settings of any kind."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from app.sheet import Sheet, lay_out
from core.drills import DRILLS
from core.errors import RefusedEditError
from core.lesson import Lesson
from core.sheet_plan import NoteSize, SheetKind, SheetPlan
from tests.app.test_sheet_pages import assert_all_in_place
from tests.core.builders import bowed
from tests.property.strategies import examples, lessons, sheet_plans

pytestmark = pytest.mark.usefixtures("qapp")
FEW = settings(max_examples=examples(8), deadline=None, suppress_health_check=[HealthCheck.too_slow])


def bars_printed(sheet: Sheet) -> list[int]:
    return [bar for page in sheet.pages for line in page.lines for bar in line.picture.measures]


@FEW
@given(lessons(), sheet_plans(), st.sampled_from(["", *DRILLS]), st.booleans())
def test_nothing_stands_where_it_should_not(lesson: Lesson, plan: SheetPlan, drill: str, strip: bool) -> None:
    try:
        sheet = lay_out([lesson], replace(plan, drill=drill, strip=strip))
    except RefusedEditError:
        return
    assert_all_in_place(sheet)


def test_a_footer_that_shows_nothing_harms_nothing() -> None:
    tune, bowing = bowed("A2 B2 c2 d2|")
    assert_all_in_place(lay_out([Lesson(tune, (bowing,))], SheetPlan(SheetKind.CLASS, footer="\u00ad")))


@FEW
@given(lessons(), st.sampled_from(NoteSize))
def test_every_bar_of_every_bowing_is_printed_once_and_in_order(lesson: Lesson, size: NoteSize) -> None:
    sheet = lay_out([lesson], SheetPlan(SheetKind.TEACHER, size=size))
    assert bars_printed(sheet) == list(range(len(lesson.tune.bars))) * len(lesson.bowings)
