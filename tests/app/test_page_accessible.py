"""The page read out: note by note, as a screen reader asks for it."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest

from app.comparison import Comparison
from app.document import Document
from app.page_accessible import NoteReader, PageReader
from app.page_view import PageView
from core.lesson import Lesson
from core.reading import read_file
from tests.core.builders import bowed

NAME = QAccessible.Text.Name


@pytest.fixture
def read_out() -> Iterator[None]:
    """Assistive technology is there."""
    QAccessible.setActive(True)
    yield
    QAccessible.setActive(False)


@pytest.fixture
def page(qtbot, read_out) -> PageView:
    document = Document()
    page = PageView(document, comparison=Comparison(document))
    qtbot.addWidget(page)
    tune, bowing = bowed("(AB) cd e=fga|z4 Bc d2|")
    document.open(Lesson(tune, (bowing,)))
    page.resize(1100, 500)
    page.show()
    qtbot.waitExposed(page)
    page.setFocus()
    return page


def reader(page: PageView) -> PageReader:
    found = QAccessible.queryAccessibleInterface(page)
    assert isinstance(found, PageReader)
    return found


def names(page: PageView) -> list[str]:
    whole = reader(page)
    return [whole.child(index).text(NAME) for index in range(whole.childCount())]


def test_every_note_and_rest_is_read_with_its_bow_and_what_it_hangs_on(page):
    assert reader(page).role() is QAccessible.Role.List
    told = names(page)
    assert len(told) == 12
    assert told[0] == "Bar 1, note 1: A4, down-bow, slurred to the next; accent driven by a down-bow"
    assert told[1] == "Bar 1, note 2: B4, down-bow, slurred to the note before"
    assert told[2] == "Bar 1, note 3: C5, up-bow"
    assert told[4].startswith("Bar 1, note 5: E5, up-bow, hooked to the next")
    assert told[8].startswith("Bar 2")
    assert "rest" in told[8]


def test_what_is_read_follows_an_edit(page):
    before = names(page)
    page.focus_on("b0n3")
    page.toggle_slur()
    after = names(page)
    assert "slurred to the next" in after[2]
    assert after[-1] != before[-1], "the last stroke has turned round"


def test_arrow_keys_move_what_is_read(page):
    page.focus_on("b0n1")
    QTest.keyClick(page, Qt.Key.Key_Right)
    at = reader(page).focusChild()
    assert isinstance(at, NoteReader)
    assert at.index == 1
    assert at.text(NAME) == names(page)[1]
    assert at.state().focused
    assert not reader(page).child(0).state().focused


def test_a_note_is_where_it_stands_on_the_screen(page):
    whole = reader(page)
    place = page.mapToGlobal(page.head_point("b0n3"))
    assert whole.child(2).rect().contains(place)
    assert whole.childAt(place.x(), place.y()).index == 2
    assert whole.childAt(-5, -5) is None


def test_compared_bowings_are_read_one_after_the_other_by_name(page):
    document = page._document
    first = document.state.lesson
    document.open(Lesson(first.tune, (first.bowings[0], replace(first.bowings[0], name="Again"))))
    page._comparison.start()
    told = names(page)
    assert len(told) == 24
    assert told[0].startswith("Typed. Bar 1, note 1")
    assert told[12].startswith("Again. Bar 1, note 1")


def test_another_tune_leaves_no_item_of_the_old_one(page):
    old = [reader(page).child(index) for index in range(12)]
    page._document.open(read_file(b"X:1\nT:Short\nM:2/4\nL:1/8\nK:D\nA2 d2|\n").lessons[0])
    assert len(names(page)) == 2
    assert [item.isValid() for item in old] == [True] * 2 + [False] * 10
    assert old[11].text(NAME) == ""
    assert old[11].rect().isEmpty()


MANY_PAGES = """
import gc, sys
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication
app = QApplication(["read"])
QAccessible.setActive(True)
from app.document import Document
from app.page_view import PageView
from core.lesson import Lesson
from tests.core.builders import bowed
tune, bowing = bowed("AB cd efga|")
for turn in range(60):
    document = Document()
    page = PageView(document)
    document.open(Lesson(tune, (bowing,)))
    page.show()
    whole = QAccessible.queryAccessibleInterface(page)
    assert [whole.child(index).text(QAccessible.Text.Name) for index in range(8)]
    if turn % 2:
        page.deleteLater()
        app.sendPostedEvents(page, 52)
    del page, document, whole
    gc.collect()
    app.processEvents()
print("all read")
"""


def test_pages_come_and_go_while_they_are_read():
    done = subprocess.run([sys.executable, "-c", MANY_PAGES], capture_output=True, text=True, timeout=120)
    assert (done.returncode, done.stdout) == (0, "all read\n"), done.stderr
