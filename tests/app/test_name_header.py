"""The heads of the table of compared bowings: upright where there is room, else turned, and never scrolled for them."""

from __future__ import annotations

from pathlib import Path

import pytest

from app.comparison import Comparison
from app.files import read_path
from app.side_list import SideList

NARROW, WIDE = 336, 700
SAMPLE = Path(__file__).parents[2] / "sample_tunes" / "tuesday_ferry.musicxml"


@pytest.fixture
def side(qtbot, document) -> SideList:
    comparison = Comparison(document)
    side = SideList(document, comparison=comparison)
    qtbot.addWidget(side)
    document.open(read_path(SAMPLE).lessons[0])
    comparison.start()
    side.show()
    return side


@pytest.mark.parametrize(("width", "turned"), [(NARROW, True), (WIDE, False)])
def test_names_are_turned_where_they_need_more_width_than_there_is(qtbot, side, width, turned):
    side.resize(width, 700)
    qtbot.waitUntil(lambda: side.table.names.turned is turned)
    assert side.table.horizontalScrollBar().maximum() == 0
    assert side.table.names.count() == 5


def test_turned_names_have_room_to_their_ends(qtbot, side):
    side.resize(NARROW, 700)
    qtbot.waitUntil(lambda: side.table.names.turned)
    names, letters = side.table.names, side.table.fontMetrics()
    longest = max(names.texts, key=letters.horizontalAdvance)
    lines = names.sectionSize(0) // letters.lineSpacing()
    assert lines >= 1
    assert names.height() * lines > letters.horizontalAdvance(longest)


def test_turned_names_are_painted(qtbot, side):
    side.resize(NARROW, 700)
    qtbot.waitUntil(lambda: side.table.names.turned)
    picture = side.table.names.viewport().grab().toImage()
    inks = {picture.pixel(x, y) for x in range(picture.width()) for y in range(picture.height())}
    assert len(inks) > 10  # letters have soft edges, an empty head has none
