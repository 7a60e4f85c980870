"""Bowings under one another: what is on the page, which of them a hand touches, what tells them apart, the way back."""

from __future__ import annotations

from itertools import pairwise

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QStyle, QStyleOptionViewItem

from app.accent_strip import onset
from app.difference_painting import Lane, Shape, lane_of
from app.difference_words import count_text, difference_text
from app.main_window import MainWindow
from app.plan_preview import PlanPreview
from core.bowing import Bow, Join, Mark, Ornament
from core.lesson import Lesson, add_bowing
from core.lesson_check import check_lesson
from core.reading.abc import read_abc
from tests.golden.approve import difference

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
LEFT = Qt.MouseButton.LeftButton
TUNE = """X:1
T:The Long Sluice
R:reel
M:4/4
L:1/8
K:D
|:d2 fd Adfd|e2 ge Bege|d2 fd Adfd|egfe d2 z2:|
|:a2 fa gfed|egbg e2 ge|d2 fd A2 fd|egfe d4:|
"""
WAYS = (
    "d2 fd Adfd|e2 ge Bege|d2 fd Adfd|egfe d2 z2",
    "d2 (fd) Adfd|e2 (ge) Bege|d2 (fd) Adfd|egfe d2 z2",
    "(d2 fd) A{g}dfd|~e2 (ge) (Beg)e|d2 (fd) Adfd|(eg)fe d2 z2",
)


def lesson_of(*ways: str) -> Lesson:
    """A lesson whose bowings have the first part of the tune bowed in these ways, named A, B, C ..."""
    lesson = read_abc(TUNE).lessons[0]
    first = read_abc(TUNE.replace(WAYS[0], ways[0])).lessons[0].bowings[0]
    lesson = Lesson(lesson.tune, (named(first, "A"),))
    for name, way in zip("BCDEFG", ways[1:], strict=False):
        lesson = add_bowing(lesson, named(read_abc(TUNE.replace(WAYS[0], way)).lessons[0].bowings[0], name))
    return lesson


def named(bowing, name: str):
    return type(bowing)(name, bowing.joins, bowing.marks, bowing.retakes, bowing.signs, bowing.accents)


@pytest.fixture
def three(window: MainWindow) -> MainWindow:
    """A window with bowings A, B and C, A on the page."""
    window.document.open(lesson_of(*WAYS))
    window.page.setFocus()
    return window


@pytest.fixture
def comparing(three: MainWindow) -> MainWindow:
    """The same, A and B under one another."""
    three.comparison.put(1, True)
    return three


def names(window: MainWindow) -> list[str]:
    return [row.name for row in window.page.rows]


def active(window: MainWindow) -> str:
    return window.page.rows[window.page.active].name


def click(window: MainWindow, note: str, row: int, keys=Qt.KeyboardModifier.NoModifier) -> None:
    QTest.mouseClick(window.page, LEFT, keys, window.page.head_point(note, row))


def grab_window(window: MainWindow) -> QImage:
    """What stands on the screen now: nothing is painted for it."""
    QApplication.processEvents()
    return window.screen().grabWindow(window.winId()).toImage()


def box_of_tick(window: MainWindow, row: int) -> QPoint:
    """The middle of the tick box of a row of the list."""
    view = window.bowings.list
    index = view.model().index(row)
    option = QStyleOptionViewItem()
    view.initViewItemOption(option)
    option.rect = view.visualRect(index)
    option.features |= QStyleOptionViewItem.ViewItemFeature.HasCheckIndicator
    return view.style().subElementRect(QStyle.SubElement.SE_ItemViewItemCheckIndicator, option, view).center()


# What is compared


def test_a_tick_puts_a_bowing_under_the_one_on_the_page_which_stays_the_one_worked_on(three):
    QTest.mouseClick(three.bowings.list.viewport(), LEFT, pos=box_of_tick(three, 2))
    assert names(three) == ["A", "C"]
    assert active(three) == "A"
    assert three.document.state.shown == 0
    assert not three.document.is_modified
    QTest.mouseClick(three.bowings.list.viewport(), LEFT, pos=box_of_tick(three, 2))
    assert names(three) == ["A"]


def test_space_in_the_list_ticks_with_the_keyboard_alone(comparing):
    comparing.bowings.list.setFocus()
    QTest.keyClick(comparing.bowings.list, Qt.Key.Key_Space)
    assert names(comparing) == ["B"]  # the last two go together; what was unticked goes


def test_one_key_compares_all_and_goes_back_to_the_one_worked_on_and_then_to_those_compared_last(three):
    QTest.keyClick(three.page, Qt.Key.Key_K, CTRL)
    assert names(three) == ["A", "B", "C"]
    three.comparison.put(1, False)
    QTest.keyClick(three.page, Qt.Key.Key_PageDown, CTRL)
    assert active(three) == "C"
    QTest.keyClick(three.page, Qt.Key.Key_K, CTRL)
    assert names(three) == ["C"]
    QTest.keyClick(three.page, Qt.Key.Key_K, CTRL)
    assert names(three) == ["A", "C"]


def test_the_menu_ticks_what_is_compared(comparing):
    menu = comparing._open_menus["compare_with"]
    menu.aboutToShow.emit()
    assert [(action.text(), action.isChecked()) for action in menu.actions()] == [
        ("A", True),
        ("B", True),
        ("C", False),
    ]
    menu.actions()[2].trigger()
    assert names(comparing) == ["A", "B", "C"]


def test_a_bowing_that_is_not_compared_is_shown_alone_and_the_ticks_wait(comparing):
    comparing.document.show(2)
    assert names(comparing) == ["C"]
    comparing.document.show(1)
    assert names(comparing) == ["A", "B"]
    assert active(comparing) == "B"


def test_renaming_moving_and_deleting_are_followed_and_so_is_the_way_back(comparing):
    comparing.bowings.rename(1, "Second")
    assert names(comparing) == ["A", "Second"]
    comparing.bowings.put_at(1, 0)
    assert names(comparing) == ["Second", "A"]
    comparing.bowings.put_at(1, 0)
    comparing.document.show(1)
    comparing.bowings.delete()
    assert len(comparing.page.rows) == 1
    comparing.undo()
    assert names(comparing) == ["A", "Second"]
    comparing.document.stack.setIndex(0)
    assert names(comparing) == ["A", "B"]


def test_of_three_a_deleted_one_leaves_the_two_others_on_the_page(comparing):
    comparing.comparison.put(2, True)
    comparing.document.show(2)
    comparing.bowings.delete()
    assert names(comparing) == ["A", "B"]


def test_a_bowing_that_goes_from_under_the_pointer_is_forgotten(comparing):
    page = comparing.page
    comparing.comparison.put(2, True)
    QTest.mouseMove(page, page.head_point("b0n2", 2))
    QTest.mousePress(page, LEFT, pos=page.head_point("b0n2", 2))
    comparing.actions_by_name["bowing_delete"].trigger()
    assert len(page.rows) == 2
    QTest.keyClick(page, Qt.Key.Key_Right, SHIFT)  # looks at what a click would do with the key held
    QTest.mouseRelease(page, LEFT, pos=QPoint(3, 3))
    assert comparing.document.stack.count() == 1


def test_another_tune_is_shown_alone(comparing):
    comparing.document.open(lesson_of(*WAYS))
    assert names(comparing) == ["A"]
    assert not comparing.actions_by_name["compare"].isChecked()


def test_a_lesson_of_one_bowing_offers_no_comparison(window):
    assert not window.actions_by_name["compare"].isEnabled()
    window.comparison.start()
    assert len(window.page.rows) == 1


# Where things stand


def test_each_line_stands_under_the_same_line_of_the_bowing_above_note_under_note(three):
    three.comparison.start()
    page = three.page
    tune = three.document.state.tune
    for note in (note.id for note in tune.sequence if not note.is_rest):
        places = [page.head_point(note, row) for row in range(3)]
        assert len({place.x() for place in places}) == 1, note
        assert all(above.y() < below.y() for above, below in pairwise(places))
    assert page.head_point("b3n1", 2).y() < page.head_point("b4n1", 0).y()


def test_lines_of_all_bowings_keep_clear_of_each_other(three):
    three.comparison.start()
    three.page.head_point("b7n1", 2)
    layouts = three.page._page.layouts
    bands = [placed for line in zip(*(layout.lines for layout in layouts), strict=True) for placed in line]
    assert all(above.bottom < below.top for above, below in pairwise(bands))
    for placed in bands:
        assert placed.top < placed.name < placed.picture_top + placed.picture.staff_top
        assert placed.lane is None or placed.strip < placed.lane < placed.bottom
    assert [layout.lines[0].lane is None for layout in layouts] == [True, False, False]


SAID = (
    TUNE.replace("|:d2", 'Q:"Lively" 1/2=96\nP:A\n|:"D"d2', 1)
    .replace("|:a2", 'P:B\n|:"A7""^slowly"a2')
    .replace("d4:|", "d4!fine!:|")
)


def test_what_all_bowings_share_stands_over_the_uppermost_alone(window):
    tune = read_abc(SAID).lessons[0].tune
    bowing = read_abc(SAID).lessons[0].bowings[0]
    window.document.open(Lesson(tune, tuple(named(bowing, name) for name in "AB")))
    window.comparison.start()
    window.page.head_point("b7n1", 1)

    def said(row: int) -> list[str]:
        return [text.text for line in window.page._page.layouts[row].lines for text in line.picture.texts]

    def head_room(row: int) -> list[float]:
        return [line.picture_top + line.picture.staff_top - line.top for line in window.page._page.layouts[row].lines]

    assert [text for text in ("A", "D", "B", "5", "A7", "slowly", "Fine") if text not in said(0)] == []
    assert any(text.startswith("Lively") for text in said(0))
    assert said(1) == []
    assert all(below < above for above, below in zip(head_room(0), head_room(1), strict=True))
    window.bowings.put_at(1, 0)
    window.page.head_point("b7n1", 1)
    assert "slowly" in said(0)
    assert said(1) == []


# Whichever is touched


def test_a_click_edits_the_bowing_that_it_touches_as_one_step(comparing):
    before = comparing.document.state.lesson
    click(comparing, "b0n4", 1)
    after = comparing.document.state
    assert active(comparing) == "B"
    assert after.shown == 1
    assert after.lesson.bowings[0] is before.bowings[0]
    assert after.lesson.bowings[1].joins.get("b0n5") is Join.SLUR
    assert comparing.document.stack.count() == 1
    click(comparing, "b0n4", 0)
    assert comparing.document.state.shown == 0
    comparing.undo()
    comparing.undo()
    assert comparing.document.state.lesson == before
    assert active(comparing) == "B", "undo shows what it changed"
    comparing.document.stack.redo()
    assert comparing.document.state.lesson == after.lesson
    assert active(comparing) == "B"


def test_a_click_on_a_bow_mark_turns_that_bowings_stroke(comparing):
    place = comparing.page.sign_point("b1n1", 1)
    QTest.mouseClick(comparing.page, LEFT, pos=place)
    assert [bool(bowing.marks) for bowing in comparing.document.state.lesson.bowings] == [False, True, False]


def test_a_click_on_a_strip_accents_a_place_of_that_bowing(comparing):
    place = onset(comparing.document.state.tune, "b0n3")
    QTest.mouseClick(comparing.page, LEFT, pos=comparing.page.strip_point(place, 1))
    bowings = comparing.document.state.lesson.bowings
    assert bowings[1].accent_changes
    assert not bowings[0].accent_changes


def test_a_drag_slurs_in_the_bowing_where_it_began_wherever_the_pointer_strays(comparing):
    page = comparing.page
    QTest.mousePress(page, LEFT, pos=page.head_point("b0n4", 1))
    QTest.mouseMove(page, page.head_point("b0n6", 1))
    QTest.mouseMove(page, page.head_point("b0n7", 0))
    QTest.mouseRelease(page, LEFT, pos=page.head_point("b0n7", 0))
    joins = [set(bowing.joins) for bowing in comparing.document.state.lesson.bowings]
    assert {"b0n5", "b0n6"} <= joins[1]
    assert "b0n7" not in joins[1]
    assert not joins[0]


def test_the_pointer_previews_on_the_bowing_under_it_without_making_it_the_one_worked_on(comparing):
    page = comparing.page
    QTest.mouseMove(page, QPoint(4, 4))
    QTest.mouseMove(page, page.head_point("b0n4", 1))
    assert page.preview.joined == ("b0n4", "b0n5")
    assert page._marks(1).preview == page.preview
    assert not page._marks(0).preview.joined
    assert active(comparing) == "A"


def test_a_refused_click_still_chooses_the_bowing(comparing):
    click(comparing, "b3n6", 1)  # a rest follows
    assert active(comparing) == "B"
    assert comparing.document.state.shown == 1
    assert comparing.document.stack.count() == 0


def test_shift_and_a_click_on_another_bowing_begin_afresh_there(comparing):
    click(comparing, "b0n1", 0)
    comparing.undo()
    click(comparing, "b0n4", 1, SHIFT)
    assert comparing.page.selection == ("b0n4",)
    click(comparing, "b0n6", 1, SHIFT)
    assert comparing.page.selection == ("b0n4", "b0n5", "b0n6")


def test_up_and_down_go_through_the_bowings_and_on_to_the_next_line(comparing):
    page = comparing.page
    page.focus_on("b0n2")
    trail = []
    for _ in range(3):
        QTest.keyClick(page, Qt.Key.Key_Down)
        trail.append((active(comparing), page._page.layout.line_of[page.focus_note]))
    assert trail == [("B", 0), ("A", 1), ("B", 1)]
    QTest.keyClick(page, Qt.Key.Key_Down)
    assert (active(comparing), page._page.layout.line_of[page.focus_note]) == ("B", 1)
    for _ in range(3):
        QTest.keyClick(page, Qt.Key.Key_Up)
    assert (active(comparing), page.focus_note) == ("A", "b0n2")
    QTest.keyClick(page, Qt.Key.Key_Up)
    assert (active(comparing), page.focus_note) == ("A", "b0n2")
    QTest.keyClick(page, Qt.Key.Key_Down)
    QTest.keyClick(page, Qt.Key.Key_Space)
    assert "b0n3" not in comparing.document.state.lesson.bowings[0].joins
    assert comparing.document.state.shown == 1
    assert comparing.document.stack.count() == 1


def test_only_the_line_that_changed_is_engraved_again(comparing):
    page = comparing.page
    page.head_point("b7n1", 1)
    before = [[placed.picture for placed in layout.lines] for layout in page._page.layouts]
    click(comparing, "b0n4", 1)
    page.head_point("b7n1", 1)
    after = [[placed.picture for placed in layout.lines] for layout in page._page.layouts]
    changed = [(row, line) for row in range(2) for line in range(2) if after[row][line] is not before[row][line]]
    assert changed == [(1, 0)]


def test_an_edit_paints_only_the_lines_of_its_bowing(comparing):
    page = comparing.page
    click(comparing, "b0n4", 1)
    QApplication.processEvents()
    painted = []
    plain = page._painter.paint
    page._painter.paint = lambda *args: painted.append([bool(band.lines) for band in args[3]]) or plain(*args)
    QTest.keyClick(page, Qt.Key.Key_H)
    QApplication.processEvents()
    assert painted == [[False, True]]
    painted.clear()
    comparing.document.show(0)
    QApplication.processEvents()
    painted.clear()
    QTest.keyClick(page, Qt.Key.Key_H)  # of the reference: of the other only what is told of it
    QApplication.processEvents()
    del page._painter.paint
    assert painted == [[True, False]]


def test_what_is_painted_piece_by_piece_looks_as_if_painted_at_once(qtbot, three):
    three.comparison.start()
    page = three.page
    qtbot.waitUntil(lambda: not page.waits)
    for note, row in (("b0n4", 1), ("b0n1", 0), ("b1n4", 2), ("b2n4", 0), ("b0n1", 0)):
        click(three, note, row)
        QTest.qWait(100)  # the way back is worked out, and panes have settled
        qtbot.waitUntil(lambda: not page.waits and not three.trace.waits)
        QApplication.processEvents()
        pieces = grab_window(three)
        page.update()
        QApplication.processEvents()
        assert difference(pieces, grab_window(three)) == 0, (note, row)


def test_what_is_not_edited_is_not_checked_again(comparing):
    asked = []
    plain = comparing.document._report_on
    comparing.document._report_on = lambda lesson, bowing: asked.append(bowing) or plain(lesson, bowing)
    reports = {
        bowing.name: id(comparing.document.report(place))
        for place, bowing in enumerate(comparing.document.state.lesson.bowings)
    }
    click(comparing, "b0n4", 1)
    assert id(comparing.document.report(0)) == reports["A"]
    assert id(comparing.document.report(1)) != reports["B"]


def test_a_preview_stands_in_the_place_of_the_bowing_worked_on_and_cannot_be_left_by_a_click(comparing):
    state = comparing.document.state
    bowing = type(state.bowing)("A", marks=state.bowing.marks.set("b0n1", Mark(Bow.UP)))
    comparing.page.show_plan(PlanPreview(bowing, "A preview.", {0: "Bar 1: turned."}))
    assert comparing.page.rows[0].here.bowing is bowing
    assert comparing.page.rows[1].here.bowing is state.lesson.bowings[1]
    click(comparing, "b0n4", 1)
    assert comparing.page.plan is not None
    assert active(comparing) == "A"
    assert comparing.document.stack.count() == 0
    comparing.page.show_plan(None)
    assert comparing.page.rows[0].here.bowing is state.bowing


def test_a_finding_is_marked_on_the_bowing_that_it_is_found_in(comparing):
    comparing.side_list.choose(0)
    assert comparing.page._marks(0).found
    assert not comparing.page._marks(1).found


# What tells them apart


def test_the_reference_is_the_bowing_that_was_on_the_page_until_another_is_chosen(comparing):
    assert not comparing.page.rows[0].differences
    assert set(comparing.page.rows[1].differences) >= {"b0n3"}
    comparing.document.show(1)
    assert not comparing.page.rows[0].differences, "working on another changes no reference"
    QTest.keyClick(comparing.page, Qt.Key.Key_K, CTRL | SHIFT)
    assert not comparing.page.rows[1].differences
    assert set(comparing.page.rows[0].differences) >= {"b0n3"}


def test_an_edit_of_the_reference_tells_all_others_anew(comparing):
    before = comparing.page.rows[1].differences["b0n3"]
    assert before.joins == (Join.SLUR, None)
    click(comparing, "b0n2", 0)
    found = comparing.page.rows[1].differences.get("b0n3")
    assert found is None or found.joins is None


def test_under_the_pointer_and_at_the_focus_note_a_difference_is_said(comparing):
    said = []
    comparing.page.hinted.connect(said.append)
    QTest.mouseMove(comparing.page, QPoint(4, 4))
    QTest.mouseMove(comparing.page, comparing.page.difference_point("b0n3", 1))
    words = "Bar 1, note 3: slurred to the note before"
    assert comparing.page.toolTip().startswith(words)
    assert "on a bow of its own" in comparing.page.toolTip()
    assert "“A”" in comparing.page.toolTip()
    assert said[-1] == comparing.page.toolTip()
    QTest.mouseClick(comparing.page, LEFT, pos=comparing.page.difference_point("b0n3", 1))
    assert comparing.document.stack.count() == 0
    assert words in comparing.page.accessibleDescription()
    assert comparing.page.accessibleDescription().startswith("B. ")


def test_words_for_each_kind_of_difference(three):
    three.comparison.start()
    tune = three.document.state.tune
    row = three.page.rows[2]
    text = difference_text(tune, "b1n1", row.differences["b1n1"], "A")
    assert text.startswith("Bar 2, note 1: ")
    assert "with a roll" not in text
    assert "with roll" in text
    assert text.rstrip(".").endswith("without a sign")
    assert "with 1 grace note" in difference_text(tune, "b0n5", row.differences["b0n5"], "A")
    assert count_text([], "A") == "nothing differs from “A”."
    assert "differ from “A”" in three.page.comparison_words()


def test_each_kind_of_difference_has_a_shape_of_its_own_in_its_place(three):
    three.comparison.start()
    page, tune = three.page, three.document.state.tune
    heads = page._page.layouts[2].lines[0].heads()
    lane = lane_of(tune, heads, page.rows[2].differences)
    by_shape = {shape: [x for other, x, _ in lane.shapes if other is shape] for shape in Shape}
    assert (heads["b0n1"] + heads["b0n2"]) / 2 in by_shape[Shape.SLURRED]
    assert heads["b1n1"] in by_shape[Shape.MORE]
    assert not by_shape[Shape.LESS]
    assert all(x in heads.values() for run in lane.runs for x, _ in run)
    three.comparison.refer_to(2)
    lane = lane_of(tune, heads, page.rows[0].differences)
    assert {shape for shape, _, _ in lane.shapes} == {Shape.APART, Shape.LESS}
    assert lane_of(tune, heads, {}) == Lane((), ())


def test_an_arch_between_two_notes_answers_for_the_note_that_it_joins(three):
    three.comparison.start()
    page, tune = three.page, three.document.state.tune
    heads = page._page.layouts[2].lines[0].heads()
    lane = lane_of(tune, heads, page.rows[2].differences)
    assert lane.note_at((heads["b0n1"] + heads["b0n2"]) / 2) == "b0n2"
    assert lane.note_at(heads["b1n1"]) == "b1n1"
    assert lane.note_at(-1000) is None


def test_a_cut_in_one_bowing_leaves_every_note_under_itself(comparing):
    page = comparing.page
    page.focus_on("b0n5")
    page.toggle_ornament(Ornament.CUT)
    for note in ("b0n4", "b0n5", "b3n1"):
        assert page.head_point(note, 0).x() == page.head_point(note, 1).x()
    assert page.rows[1].differences["b0n5"].signs is not None


# The totals


def test_totals_stand_side_by_side_and_follow_every_edit(comparing):
    side = comparing.side_list
    assert side.table.isVisible()
    assert not side.totals.isVisible()
    click(comparing, "b0n4", 1)
    state = comparing.document.state
    for bowing in state.lesson.bowings[:2]:
        totals = check_lesson(state.lesson, bowing).totals
        strokes, slurs, retakes, driven, up, buried, unstruck, _, round_again, _ = side.table.totals.figures[
            bowing.name
        ]
        assert (int(strokes), int(slurs), int(retakes)) == (totals.strokes, totals.slurs, totals.retakes)
        assert (int(driven), int(up)) == (totals.driven, totals.up)
        assert (int(buried), int(unstruck)) == (totals.buried, totals.unstruck)
        assert (round_again == "Yes") is totals.comes_round
    comparing.comparison.end()
    assert not side.table.isVisible()
    assert side.totals.isVisible()


def test_a_click_tells_of_the_figures_that_it_changed_and_of_the_names_it_marked_alone(comparing):
    model = comparing.side_list.table.totals
    before, told, heads, marked = model.figures, [], [], []
    model.dataChanged.connect(lambda first, last: told.append((first.column(), first.row(), last.column(), last.row())))
    model.headerDataChanged.connect(lambda *_: heads.append(1))
    model.marked.connect(marked.append)
    click(comparing, "b0n4", 1)
    assert told == [
        (column, row, column, row)
        for column, name in enumerate(before)
        for row, pair in enumerate(zip(before[name], model.figures[name], strict=True))
        if pair[0] != pair[1]
    ]
    assert told
    assert not heads  # the whole table would be painted
    assert marked == [{0, 1}]


def test_what_comes_next_is_worked_out_once_the_edit_is_painted(qtbot, comparing):
    page, ahead = comparing.page, []
    work_out = page._foresight.work_out
    page._foresight.work_out = lambda *values: ahead.append(values) or work_out(*values)
    QTest.mousePress(page, LEFT, pos=page.head_point("b0n4", 1))
    assert page._rest.isActive()
    QTest.mouseRelease(page, LEFT, pos=page.head_point("b0n4", 1))
    assert not page._rest.isActive()
    qtbot.waitUntil(lambda: bool(ahead))
    assert page._is_painted


def test_a_click_on_a_name_in_the_table_works_on_that_bowing(comparing):
    header = comparing.side_list.table.horizontalHeader()
    place = QPoint(header.sectionViewportPosition(1) + header.sectionSize(1) // 2, header.height() // 2)
    QTest.mouseClick(header.viewport(), LEFT, pos=place)
    assert active(comparing) == "B"


def test_all_rows_of_the_table_are_in_sight(comparing):
    table = comparing.side_list.table
    last = table.visualRect(table.model().index(table.model().rowCount() - 1, 1))
    assert table.viewport().rect().contains(last)
