"""Where lines stand; no window."""

from __future__ import annotations

from itertools import pairwise

import pytest
from PySide6.QtCore import Qt

from app.engraved_page import EngravedPage
from app.note_steps import STEPS
from app.page_layout import BOTTOM_MARGIN, MUSIC_WIDTH, SIDE_MARGIN, STRIP_HEIGHT, TOP_MARGIN, lay_out
from core.bowing import slur_span
from core.engraving.bow_signs import MarkDensity, bow_signs
from core.engraving.engraver import Engraver
from core.lesson import Lesson
from core.reading.abc import read_abc
from core.strokes import work_out

LONG = "X:1\nM:4/4\nL:1/8\nK:D\n" + "|".join(["dfaf dfaf", "d2f2 a2f2"] * 8) + "|]\n"


@pytest.fixture(scope="module")
def lesson() -> Lesson:
    return read_abc(LONG).lessons[0]


@pytest.fixture
def page(lesson: Lesson) -> EngravedPage:
    page = EngravedPage(Engraver(), lesson.tune, heading_height=500)
    take(page, lesson, lesson.bowings[0])
    return page


def take(page: EngravedPage, lesson: Lesson, bowing) -> None:
    page.take((bowing, bow_signs(lesson.tune, bowing, work_out(lesson.tune, bowing), MarkDensity.EVERY)))


def test_nothing_is_engraved_before_it_is_asked_for(page):
    assert [line.picture for line in page.layout.lines] == [None] * 4
    assert page.engrave([1])
    assert [line.picture is None for line in page.layout.lines] == [True, False, True, True]


def test_lines_follow_one_another_without_overlap_inside_the_margins(page):
    page.engrave(range(4))
    lines = page.layout.lines
    assert lines[0].top >= TOP_MARGIN + 500
    assert all(above.bottom <= below.top for above, below in pairwise(lines))
    assert lines[-1].bottom == page.layout.height - BOTTOM_MARGIN
    for line in lines:
        assert line.top <= line.picture_top
        assert line.picture_top + line.picture.height <= line.bottom + 1
        assert SIDE_MARGIN + line.picture.width <= page.layout.width - SIDE_MARGIN + 1


def test_a_height_on_the_page_leads_to_its_line(page):
    page.engrave(range(4))
    for index, line in enumerate(page.layout.lines):
        assert page.layout.line_at((line.top + line.bottom) / 2) == index
    assert page.layout.line_at(0) is None


def test_an_edit_leaves_the_other_lines_where_they_are(page, lesson):
    page.engrave(range(4))
    before = page.layout.lines
    take(page, lesson, slur_span(lesson.tune, lesson.bowings[0], "b4n1", "b4n4"))
    assert page.engrave(range(4))
    after = page.layout.lines
    assert after[1].picture is not before[1].picture
    assert [after[i].picture is before[i].picture for i in (0, 2, 3)] == [True] * 3
    assert [after[i].top for i in range(4)] == [before[i].top for i in range(4)]


def test_lines_that_stood_there_before_stand_as_if_laid_out_afresh(page, lesson):
    slurred = slur_span(lesson.tune, lesson.bowings[0], "b4n1", "b4n4")
    changes = (
        lambda: page.engrave([0, 1]),
        lambda: page.show_strip(True),
        lambda: page.engrave(range(4)),
        lambda: page.set_heading_height(900),
        lambda: take(page, lesson, slurred),
        lambda: page.engrave(range(4)),
        lambda: page.show_strip(False),
    )
    for change in changes:
        change()
        strip = page.layout.lines[0].strip is not None
        lines = [placed.line for placed in page.layout.lines]
        pictures = [placed.picture for placed in page.layout.lines]
        assert page.layout == lay_out(lesson.tune, lines, pictures, page.layout.heading, MUSIC_WIDTH, strip=strip)


def test_going_back_engraves_nothing_anew(page, lesson):
    page.engrave(range(4))
    pictures = [line.picture for line in page.layout.lines]
    take(page, lesson, slur_span(lesson.tune, lesson.bowings[0], "b4n1", "b4n4"))
    page.engrave(range(4))
    take(page, lesson, lesson.bowings[0])
    page.engrave(range(4))
    assert all(line.picture is picture for line, picture in zip(page.layout.lines, pictures, strict=True))


def test_a_bar_with_more_notes_than_fit_makes_every_line_as_wide():
    crowded = read_abc("X:1\nM:none\nL:1/16\nK:D\n" + "dfaf" * 40 + "|" + "d4f4|]\n").lessons[0]
    page = EngravedPage(Engraver(), crowded.tune, heading_height=0)
    take(page, crowded, crowded.bowings[0])
    while page.engrave(range(len(page.layout.lines))):
        pass
    widths = {round(line.picture.width) for line in page.layout.lines}
    assert len(widths) == 1
    assert page.layout.width == pytest.approx(widths.pop() + 2 * SIDE_MARGIN, abs=1)


LOW = "X:1\nM:4/4\nL:1/8\nK:D\n" + "|".join(["(G,A,B,G,) .G,4", "{A}~d2f2 (A,,2G,2)"] * 8) + "|]\n"


@pytest.mark.parametrize("text", [LONG, LOW])
def test_the_strip_lies_below_all_that_a_line_holds_and_inside_its_band(text):
    lesson = read_abc(text).lessons[0]
    page = EngravedPage(Engraver(), lesson.tune, heading_height=500)
    page.show_strip(True)
    take(page, lesson, lesson.bowings[0])
    page.engrave(range(4))
    assert all(above.bottom <= below.top for above, below in pairwise(page.layout.lines))
    for line in page.layout.lines:
        lowest = max(
            *(shape.box.bottom for shape in line.picture.shapes),
            *(curve.box.bottom for curve in line.picture.curves),
        )  # fmt: skip
        assert line.picture_top + lowest <= line.strip - STRIP_HEIGHT / 2
        assert line.strip + STRIP_HEIGHT / 2 <= line.bottom


def test_a_strip_that_is_hidden_takes_no_room(page):
    page.engrave(range(4))
    before = page.layout
    page.show_strip(True)
    assert page.layout.height > before.height
    page.show_strip(False)
    assert page.layout == before


def step(page, lesson, key: Qt.Key, note: str, *, ctrl: bool = False) -> str:
    return STEPS[key, ctrl](page.layout, lesson.tune, note)


def test_up_and_down_go_to_the_nearest_note_of_the_next_line(page, lesson):
    page.engrave(range(4))
    down = step(page, lesson, Qt.Key.Key_Down, "b0n3")
    assert page.layout.line_of[down] == 1
    heads = page.layout.lines[1].heads()
    x = page.layout.lines[0].heads()["b0n3"]
    assert abs(heads[down] - x) == min(abs(head - x) for head in heads.values())
    assert step(page, lesson, Qt.Key.Key_Up, "b0n3") == "b0n3"
    assert page.layout.line_of[step(page, lesson, Qt.Key.Key_Up, down)] == 0


def test_home_and_end_stay_in_the_line_and_with_ctrl_go_to_the_ends_of_the_tune(page, lesson):
    assert step(page, lesson, Qt.Key.Key_Home, "b5n2") == "b4n1"
    assert step(page, lesson, Qt.Key.Key_End, "b5n2") == "b7n4"
    assert step(page, lesson, Qt.Key.Key_Home, "b5n2", ctrl=True) == "b0n1"
    assert step(page, lesson, Qt.Key.Key_End, "b5n2", ctrl=True) == "b15n4"
