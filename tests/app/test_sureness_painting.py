"""Where the page says how sure a bar of a proposal is: never over an accent, never over the next line."""

from __future__ import annotations

import pytest

from app.accent_strip import place_x
from app.document import Document
from app.page_layout import SIDE_MARGIN
from app.page_view import PageView
from app.preview_painting import bar_box
from app.sureness_painting import free_room
from core.lesson import Lesson
from tests.core.builders import bowed


@pytest.fixture
def page(qtbot) -> PageView:
    document = Document()
    page = PageView(document)
    qtbot.addWidget(page)
    tune, bowing = bowed("ABcd efga|a2 g2 f2 e2|d4 A4|d8|")
    document.open(Lesson(tune, (bowing,)))
    page.resize(1100, 500)
    page.show()
    qtbot.waitExposed(page)
    return page


@pytest.mark.parametrize("bar", range(4))
def test_it_stands_in_the_widest_room_between_the_accents_of_its_bar(page, bar):
    row, placed = page.rows[0], page._layout.lines[0]
    box = bar_box(placed, bar)
    left, right = free_room(row, placed, bar, box)
    accents = [SIDE_MARGIN + place_x(row.here.tune, placed.picture, place) for place in row.accents if place[0] == bar]
    assert accents
    assert box.left <= left < right <= box.right
    assert not any(left < x < right for x in accents)
    assert right - left > (box.right - box.left) / (len(accents) + 1) - 200


def test_without_the_strip_the_whole_bar_is_free(page):
    page.show_strip(False)
    placed = page._layout.lines[0]
    box = bar_box(placed, 0)
    assert free_room(page.rows[0], placed, 0, box) == (box.left, box.right)
