"""Every gesture on the page, by real mouse and key events at the places of real notes."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from app.document import Document
from app.page_view import PageView
from app.proposals import Preview
from core.bowing import Bow, Join, Mark
from core.check import Severity
from core.engraving.bow_signs import MarkDensity
from core.engraving.engraver import Engraver
from core.engraving.picture import Picture

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
Key = Qt.Key


@pytest.fixture
def hints(page: PageView) -> list[str]:
    heard: list[str] = []
    page.hinted.connect(heard.append)
    return heard


def joins(document: Document) -> dict[str, Join]:
    return dict(document.state.bowing.joins)


def undo_and_redo(document: Document) -> None:
    """Check that exactly one step was made and that it goes back and forth."""
    done = document.state
    assert document.stack.count() == 1
    document.stack.undo()
    assert document.state != done
    assert not document.stack.canUndo()
    document.stack.redo()
    assert document.state == done


# ------------------------------------------------------------------------------------------------- clicks on notes


def test_a_click_slurs_a_note_to_the_next(hand, document):
    hand.click_note("b0n1")
    assert joins(document) == {"b0n2": Join.SLUR}
    undo_and_redo(document)


def test_a_second_click_separates_the_two_again(hand, document):
    hand.click_note("b0n1")
    hand.click_note("b0n1")
    assert joins(document) == {}
    assert document.stack.count() == 2


def test_two_quick_clicks_are_two_clicks(hand, document, page):
    hand.click_note("b0n1")
    place = page.head_point("b0n1")
    QTest.mouseDClick(page, Qt.MouseButton.LeftButton, pos=place)
    QTest.mouseRelease(page, Qt.MouseButton.LeftButton, pos=place)
    assert document.stack.count() == 2


def test_a_click_on_the_stem_is_a_click_on_the_note(document, page):
    rect = page.note_rect("b0n3")
    QTest.mouseClick(page, Qt.MouseButton.LeftButton, pos=QPoint(rect.center().x(), rect.bottom() - 3))
    assert joins(document) == {"b0n4": Join.SLUR}


def test_a_click_beside_the_music_does_nothing(hand, document, page):
    QTest.mouseClick(page, Qt.MouseButton.LeftButton, pos=hand.beside_the_music())
    assert document.stack.count() == 0


def test_a_click_before_a_rest_is_refused_in_words_and_changes_nothing(hand, document, hints):
    hand.click_note("b3n5")
    assert joins(document) == {}
    assert document.stack.count() == 0
    assert hints[-1] == "A rest comes next: a slur cannot run over a rest."


def test_ctrl_click_hooks_a_note_to_the_next(hand, document):
    hand.click_note("b0n1", CTRL)
    assert joins(document) == {"b0n2": Join.HOOK}
    undo_and_redo(document)


def test_a_button_released_elsewhere_off_the_notes_does_nothing(hand, document, page):
    hand.press("b0n1")
    QTest.mouseRelease(page, Qt.MouseButton.LeftButton, pos=hand.beside_the_music())
    assert document.stack.count() == 0


# ------------------------------------------------------------------------------------------------- dragging


def test_dragging_over_notes_makes_one_slur_of_exactly_these(hand, document):
    hand.drag("b0n2", "b0n5")
    assert joins(document) == dict.fromkeys(["b0n3", "b0n4", "b0n5"], Join.SLUR)
    undo_and_redo(document)


def test_dragging_backwards_makes_the_same_slur(hand, document):
    hand.drag("b0n5", "b0n2")
    assert joins(document) == dict.fromkeys(["b0n3", "b0n4", "b0n5"], Join.SLUR)


def test_dragging_over_a_slur_that_is_there_cuts_what_sticks_out(hand, document):
    hand.drag("b0n1", "b0n4")
    hand.drag("b0n2", "b0n3")
    assert joins(document) == {"b0n3": Join.SLUR}


def test_dragging_over_the_bar_line_slurs_over_it(hand, document):
    hand.drag("b0n6", "b1n2")
    assert set(joins(document)) == {"b0n7", "b1n1", "b1n2"}


def test_while_dragging_the_page_shows_the_slur_that_would_come(hand, document, page, hints):
    hand.press("b0n2")
    hand.move("b0n4")
    assert page.preview.joined == ("b0n2", "b0n3", "b0n4")
    assert hints[-1] == "Let go to slur bar 1, notes 2–4."
    assert document.stack.count() == 0
    hand.release("b0n4")


def test_escape_leaves_a_drag_off(hand, document, page):
    hand.press("b0n2")
    hand.move("b0n4")
    hand.keys(Key.Key_Escape)
    hand.release("b0n4")
    assert document.stack.count() == 0
    assert not page.preview.joined


def test_dragging_back_to_where_it_began_does_nothing(hand, document):
    hand.press("b0n2")
    hand.move("b0n4")
    hand.move("b0n2")
    hand.release("b0n2")
    assert document.stack.count() == 0


def test_dragging_over_a_rest_is_refused(hand, document, hints):
    hand.drag("b3n4", "b3n6")
    assert document.stack.count() == 0
    assert hints[-1] == "A slur cannot run over a rest."


# ------------------------------------------------------------------------------------------------- bow marks


def test_a_click_on_a_bow_mark_turns_the_stroke_and_fixes_it(hand, document):
    hand.click_sign("b0n1")
    assert dict(document.state.bowing.marks) == {"b0n1": Mark(Bow.UP)}
    assert document.report().strokes.bows["b0n1"][0] is Bow.UP
    undo_and_redo(document)


def test_turning_one_stroke_turns_every_stroke_after_it(hand, document, page):
    before = {note: sign.bows for note, sign in page.signs.items()}
    hand.click_sign("b0n1")
    after = {note: sign.bows for note, sign in page.signs.items()}
    assert all(after[note][0] is before[note][0].turned for note in before)


def test_a_second_click_on_a_bow_mark_turns_it_back_and_keeps_it_fixed(hand, document):
    hand.click_sign("b0n1")
    hand.click_sign("b0n1")
    assert dict(document.state.bowing.marks) == {"b0n1": Mark(Bow.DOWN)}


def test_shift_click_on_a_fixed_bow_mark_frees_it(hand, document):
    hand.click_sign("b0n2")
    hand.click_sign("b0n2", SHIFT)
    assert dict(document.state.bowing.marks) == {}


def test_shift_click_on_a_derived_bow_mark_says_that_nothing_is_fixed(hand, document, hints):
    hand.click_sign("b0n2", SHIFT)
    assert document.stack.count() == 0
    assert hints[-1] == "Nothing is fixed here: this bow follows from the strokes before it."


def test_ctrl_click_on_a_bow_mark_retakes(hand, document):
    hand.click_sign("b0n2", CTRL)
    assert document.state.bowing.retakes == {"b0n2"}
    assert document.report().strokes.bows["b0n2"][0] is Bow.DOWN
    undo_and_redo(document)


def test_retaking_the_first_stroke_is_refused(hand, document, hints):
    hand.click_sign("b0n1", CTRL)
    assert document.stack.count() == 0
    assert hints[-1] == "The first stroke has none before it to retake."


def test_a_fixed_mark_is_shown_as_fixed_and_a_derived_one_as_not(hand, page):
    hand.click_sign("b0n2")
    assert page.signs["b0n2"].fixed
    assert not page.signs["b0n3"].fixed


def test_a_slurred_note_has_no_bow_mark_of_its_own(hand, page):
    assert "b0n2" in page.signs
    hand.click_note("b0n1")
    assert "b0n2" not in page.signs


# ------------------------------------------------------------------------------------------------- hovering


def test_the_pointer_over_a_note_shows_the_slur_that_a_click_would_make(hand, page, hints):
    hand.hover_note("b0n1")
    assert page.preview.joined == ("b0n1", "b0n2")
    assert hints[-1].startswith("Click to slur bar 1, notes 1–2.")


def test_the_pointer_over_a_slurred_note_shows_where_a_click_would_cut(hand, page, hints):
    hand.click_note("b0n1")
    hand.hover_note("b0n4")
    hand.hover_note("b0n1")
    assert page.preview.parted == (("b0n1", "b0n2"),)
    assert hints[-1].startswith("Click to separate bar 1, notes 1–2.")


def test_the_pointer_over_a_bow_mark_shows_the_turned_one(hand, page, hints):
    hand.hover_sign("b0n2")
    assert page.preview.turned == ("b0n2", Bow.DOWN)
    assert hints[-1].startswith("Click to turn bar 1, note 2 to down-bow.")


def test_the_pointer_before_a_rest_says_why_a_click_would_do_nothing(hand, page, hints):
    hand.hover_note("b3n5")
    assert page.preview.joined == ()
    assert hints[-1] == "A rest comes next: a slur cannot run over a rest."


def test_right_after_a_click_the_way_back_is_not_shown_until_the_pointer_goes_elsewhere(hand, page):
    hand.hover_note("b0n1")
    hand.click_note("b0n1")
    QTest.mouseMove(page, page.head_point("b0n1") + QPoint(1, 0))
    assert page.preview == Preview()
    hand.hover_note("b0n4")
    hand.hover_note("b0n1")
    assert page.preview.parted == (("b0n1", "b0n2"),)


def test_holding_ctrl_over_a_note_shows_the_hook_instead(hand, page, hints):
    hand.hover_note("b0n1")
    QTest.keyPress(page, Key.Key_Control)
    assert hints[-1].startswith("Click to hook bar 1, notes 1–2.")
    QTest.keyRelease(page, Key.Key_Control)
    assert hints[-1].startswith("Click to slur bar 1, notes 1–2.")


def test_a_preview_is_on_the_page_and_goes_when_the_pointer_leaves(hand, page):
    plain = page.grab().toImage()
    hand.hover_note("b1n1")
    assert page.grab().toImage() != plain
    QTest.mouseMove(page, hand.beside_the_music())
    assert page.grab().toImage() == plain


def test_hovering_changes_nothing(hand, document):
    hand.hover_note("b0n1")
    hand.hover_sign("b0n2")
    assert document.stack.count() == 0


# ------------------------------------------------------------------------------------------------- keys


def test_arrow_keys_walk_over_the_notes_and_step_over_rests(hand, page):
    assert page.focus_note == "b0n1"
    hand.keys(Key.Key_Right, Key.Key_Right)
    assert page.focus_note == "b0n3"
    hand.keys(Key.Key_Left)
    assert page.focus_note == "b0n2"
    page.focus_on("b3n5")
    hand.keys(Key.Key_Right)
    assert page.focus_note == "b3n5"  # only a rest comes after


def test_home_and_end_go_to_the_ends_of_the_line(hand, page):
    hand.keys(Key.Key_End)
    assert page.focus_note == "b3n5"
    hand.keys(Key.Key_Home)
    assert page.focus_note == "b0n1"


def test_a_key_slurs_the_focus_note_to_the_next(hand, document, page):
    hand.keys(Key.Key_Right)
    page.toggle_slur()
    assert joins(document) == {"b0n3": Join.SLUR}
    undo_and_redo(document)


def test_shift_and_arrows_select_and_one_key_slurs_the_selection(hand, document, page):
    hand.keys(Key.Key_Right)
    hand.keys(Key.Key_Right, Key.Key_Right, held=SHIFT)
    assert page.selection == ("b0n2", "b0n3", "b0n4")
    page.toggle_slur()
    assert set(joins(document)) == {"b0n3", "b0n4"}
    undo_and_redo(document)


def test_separating_a_selection_gives_each_note_its_own_bow(hand, document, page):
    hand.drag("b0n1", "b0n6")
    page.focus_on("b0n2")
    hand.keys(Key.Key_Right, Key.Key_Right, held=SHIFT)
    page.separate()
    assert set(joins(document)) == {"b0n2", "b0n5", "b0n6"}


def test_separating_one_note_takes_it_out_of_its_slur(hand, document, page):
    hand.drag("b0n1", "b0n4")
    page.focus_on("b0n2")
    page.separate()
    assert set(joins(document)) == {"b0n4"}


def test_shift_click_selects_from_the_focus_note(hand, page, document):
    page.focus_on("b0n1")
    hand.click_note("b0n4", SHIFT)
    assert page.selection == ("b0n1", "b0n2", "b0n3", "b0n4")
    assert document.stack.count() == 0


def test_an_arrow_without_shift_drops_the_selection(hand, page):
    hand.keys(Key.Key_Right, Key.Key_Right, held=SHIFT)
    hand.keys(Key.Key_Right)
    assert page.selection == ("b0n4",)


@pytest.mark.parametrize(
    ("do", "marks"),
    [
        (lambda page: page.turn(), {"b0n2": Mark(Bow.DOWN)}),
        (lambda page: page.fix(Bow.DOWN), {"b0n2": Mark(Bow.DOWN)}),
        (lambda page: page.fix(Bow.UP), {"b0n2": Mark(Bow.UP)}),
    ],
)
def test_the_bow_of_the_focus_note_can_be_fixed_by_key(hand, page, document, do, marks):
    hand.keys(Key.Key_Right)
    do(page)
    assert dict(document.state.bowing.marks) == marks
    undo_and_redo(document)


def test_a_fixed_mark_can_be_kept_to_one_pass_and_given_back_to_all(page, document):
    page.focus_on("b1n1")
    page.fix(Bow.UP)
    page.limit(2)
    assert document.state.bowing.marks["b1n1"] == Mark(Bow.UP, 2)
    page.limit(None)
    assert document.state.bowing.marks["b1n1"] == Mark(Bow.UP)


def test_a_pass_of_a_mark_that_is_not_there_is_refused(page, document, hints):
    page.limit(2)
    assert document.stack.count() == 0
    assert hints[-1].startswith("Only a fixed bow mark can be kept to one pass")


def test_the_focus_note_is_seen_and_described(hand, page):
    first = page.grab().toImage()
    hand.keys(Key.Key_Right)
    assert page.grab().toImage() != first
    assert page.accessibleDescription() == "Bar 1, note 2: F♯5, up-bow"


def test_typing_a_plain_letter_with_ctrl_is_left_to_the_window(page, document):
    QTest.keyClick(page, Key.Key_T, CTRL)
    assert document.stack.count() == 0


# ------------------------------------------------------------------------------------------------- what it shows


def test_an_edit_engraves_its_own_line_only(qtbot, hand, page, document):
    qtbot.waitUntil(lambda: not page.waits)
    before = page.pictures
    hand.click_note("b0n1")
    qtbot.waitUntil(lambda: not page.waits)
    changed = [old is not new for old, new in zip(before, page.pictures, strict=True)]
    assert changed[0]
    assert not any(changed[1:])


class CountingEngraver(Engraver):
    """Counts what is really engraved, not taken from what was kept."""

    made = 0

    def _engrave(self, *given: object) -> Picture:
        self.made += 1
        return super()._engrave(*given)


def test_what_a_click_gives_is_engraved_while_the_pointer_rests(qtbot, document):
    engraver = CountingEngraver()
    page = PageView(document, engraver)
    qtbot.addWidget(page)
    page.resize(900, 700)
    page.show()
    qtbot.waitUntil(lambda: not page.waits)
    QTest.mouseMove(page, page.head_point("b0n1"))
    made = engraver.made
    qtbot.waitUntil(lambda: engraver.made == made + 1)
    QTest.mouseClick(page, Qt.MouseButton.LeftButton, pos=page.head_point("b0n1"))
    qtbot.waitUntil(lambda: not page.waits)
    assert joins(document) == {"b0n2": Join.SLUR}
    assert engraver.made == made + 1


def test_undo_far_away_comes_into_sight(qtbot, document, page):
    from core.reading.abc import read_abc

    long = "X:1\nM:4/4\nL:1/8\nK:D\n" + "|".join(["dfaf dfaf"] * 64) + "|]\n"
    document.open(read_abc(long).lessons[0])
    page.focus_on("b0n1")
    page.toggle_slur()
    page.focus_on("b63n1")
    bar = page.area.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.value() > 500)
    document.stack.undo()
    qtbot.waitUntil(lambda: bar.value() < 500)


def test_marked_notes_are_seen_and_the_marks_can_be_taken_away(page):
    plain = page.grab().toImage()
    page.mark_notes(("b1n1", "b1n2"), Severity.WARNING)
    assert page.grab().toImage() != plain
    page.mark_notes((), Severity.NOTE)
    assert page.grab().toImage() == plain


def test_fewer_bow_marks_can_be_shown(page):
    every = len(page.signs)
    page.set_density(MarkDensity.BARS)
    assert 0 < len(page.signs) < every


def test_zooming_keeps_notes_under_the_pointer_that_is_over_them(hand, page, document):
    page.area.set_zoom(2.0)
    hand.click_note("b0n1")
    assert joins(document) == {"b0n2": Join.SLUR}


def test_zoom_has_limits(page):
    page.area.set_zoom(100)
    assert page.zoom == 5
    page.area.set_zoom(0.001)
    assert page.zoom == 0.25


def test_the_right_button_focuses_the_note_and_asks_for_its_menu(qtbot, page):
    from PySide6.QtGui import QContextMenuEvent
    from PySide6.QtWidgets import QApplication

    place = page.head_point("b1n3")
    with qtbot.waitSignal(page.menu_wanted):
        event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, place, page.mapToGlobal(place))
        QApplication.sendEvent(page, event)
    assert page.focus_note == "b1n3"
