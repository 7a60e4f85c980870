"""A plan on the page is looked at: nothing is edited, what changes is marked and told, and every way out is clean."""

from __future__ import annotations

from dataclasses import replace

import pytest
from immutabledict import immutabledict
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.document import Document
from app.page_view import PREVIEW_SHOWN, PageView
from app.plan_preview import PlanPreview
from app.preview_painting import bar_at, bar_box
from app.theme import LIGHT
from core.bowing import Bow, Join, Mark
from core.check import Remedy, Severity

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
CHANGES = {0: "Bar 1: slurred into the beat.", 2: "Bar 3: as bar 1."}


@pytest.fixture
def preview(document: Document) -> PlanPreview:
    bowing = replace(
        document.state.bowing,
        joins=immutabledict({"b0n2": Join.SLUR, "b2n2": Join.SLUR}),
        marks=immutabledict({"b0n1": Mark(Bow.UP)}),
    )
    return PlanPreview(bowing, "On the beat, fewest slurs: 2 slurs.", CHANGES)


@pytest.fixture
def hints(page: PageView) -> list[str]:
    heard: list[str] = []
    page.hinted.connect(heard.append)
    return heard


@pytest.fixture
def previewing(page: PageView, preview: PlanPreview) -> PageView:
    page.show_plan(preview)
    return page


def count(image: QImage, colour: QColor) -> int:
    """Pixels of a colour."""
    wide, high = image.width(), image.height()
    return sum(image.pixelColor(x, y) == colour for x in range(wide) for y in range(high))


def bar_point(page: PageView, bar: int) -> QPoint:
    """A place inside a bar, over the staff and beside every note."""
    layout = page._page.layout
    box = next(box for placed in layout.lines if (box := bar_box(placed, bar)) is not None)
    return page._to_rect(box).center().toPoint() - QPoint(0, round(page._to_rect(box).height() / 2) - 3)


def test_the_page_shows_the_plan_and_the_document_keeps_its_own(previewing, document, preview):
    before = document.state
    assert previewing.plan is preview
    assert previewing.signs["b0n1"].bows[0] is Bow.UP
    assert any(picture.slurs for picture in previewing.pictures if picture is not None)
    assert document.state is before
    assert document.stack.count() == 0


def test_no_plan_shows_the_own_bowing_again(previewing):
    previewing.show_plan(None)
    assert previewing.plan is None
    assert not any(picture.slurs for picture in previewing.pictures if picture is not None)


@pytest.mark.parametrize("keys", [Qt.KeyboardModifier.NoModifier, CTRL])
def test_a_click_goes_to_the_note_and_edits_nothing(previewing, hand, document, hints, keys):
    hand.click_note("b1n3", keys)
    assert previewing.focus_note == "b1n3"
    assert document.stack.count() == 0
    assert previewing.plan is not None
    assert hints[-1] == PREVIEW_SHOWN


def test_clicks_on_bow_marks_and_drags_edit_nothing(previewing, hand, document):
    hand.click_sign("b0n1")
    hand.click_sign("b1n1", SHIFT)
    hand.drag("b0n3", "b0n6")
    assert document.stack.count() == 0
    assert previewing.preview.joined == ()


def test_editing_keys_say_that_it_is_a_preview(previewing, document, hints):
    for edit in (previewing.toggle_slur, previewing.hook, previewing.turn, previewing.free, previewing.toggle_accent):
        edit()
        assert hints[-1] == PREVIEW_SHOWN
    assert document.stack.count() == 0


def test_a_remedy_is_not_drawn_into_a_preview(previewing):
    previewing.preview_remedy(Remedy("Slur", lambda tune, bowing: bowing))
    assert previewing.preview.joined == ()


def test_an_edit_made_elsewhere_shows_the_own_bowing(previewing, document):
    document.edit("Mark", lambda tune, bowing: replace(bowing, marks=immutabledict({"b1n1": Mark(Bow.UP)})))
    assert previewing.plan is None
    assert not any(picture.slurs for picture in previewing.pictures if picture is not None)


def test_the_pointer_in_a_changed_bar_tells_what_changes(previewing, hints):
    QTest.mouseMove(previewing, QPoint(3, 3))
    QTest.mouseMove(previewing, bar_point(previewing, 0))
    assert hints[-1] == CHANGES[0]
    assert previewing.toolTip() == CHANGES[0]
    QTest.mouseMove(previewing, bar_point(previewing, 1))
    assert hints[-1] == ""
    assert previewing.toolTip() == ""


def test_the_focus_note_in_a_changed_bar_tells_the_same(previewing):
    previewing.focus_on("b2n1")
    assert previewing.accessibleDescription().endswith(CHANGES[2])
    previewing.focus_on("b1n1")
    assert CHANGES[2] not in previewing.accessibleDescription()


def test_every_place_of_a_bar_is_in_that_bar(previewing):
    layout = previewing._page.layout
    for placed in layout.lines:
        for bar in range(placed.line.first, placed.line.stop):
            box = bar_box(placed, bar)
            assert bar_at(layout, *box.centre) == bar
    assert bar_at(layout, 1, 1) is None


def test_a_preview_looks_other_than_the_same_bowing_taken(page, document, preview):
    """Frame and brackets are there beside the banner, and are gone when the plan is taken."""
    page.show_plan(preview)
    shown = page.grab().toImage()
    document.edit("Take", lambda tune, bowing: preview.bowing)
    taken = page.grab().toImage()
    tint = QColor(LIGHT.tint)
    assert count(shown, tint) > count(taken, tint) + 2000


def test_marks_of_a_finding_stay_behind_a_preview(previewing):
    previewing.mark_notes(("b0n1",), Severity.NOTE)
    assert previewing.found_notes == ("b0n1",)
    assert previewing.plan is not None


def test_the_banner_has_its_room_before_anything_is_engraved(window, preview):
    before, heights = window.area.viewport().height(), []
    show_plan = window.page.show_plan
    window.page.show_plan = lambda plan: heights.append(window.area.viewport().height()) or show_plan(plan)
    window.plan.previewed.emit(preview)
    QApplication.processEvents()
    assert heights == [window.area.viewport().height()]
    assert heights[0] < before
