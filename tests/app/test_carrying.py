"""Carrying on a bowing in the window: one key, a preview with how sure it is, taken whole or bar by bar."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog

from app.carrying import THIS_TUNE, pose_carrying, proposal_for
from app.main_window import MainWindow
from app.plan_taking import NO_BARS_TO_TAKE, NO_STYLE, NOT_PROPOSED
from app.styles import BOOK
from app.sureness import Sureness, count_sure, sure_sentence, sure_word, sureness
from app.sureness_painting import sure_shape
from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing
from core.errors import RefusedEditError
from core.reading.abc import read_abc

Key = Qt.Key
BEGUN = """X:1
T:Begun
R:reel
M:4/4
L:1/8
K:D
|:d2 (fd) (Ad)fd|e2 (ge) (Be)ge|d2 (fd) (Ad)fd|(eg)(fe) d2 A2|d2 fd Adfd|e2 ge Bege|fedf edBd|AFEF D4:|
"""
MARKED = range(4)


@pytest.fixture
def begun(work_on) -> MainWindow:
    """A window on a tune of eight bars, the first four slurred; bars 5 and 6 are bars 1 and 2 again."""
    return work_on(BEGUN)


@pytest.fixture
def carried(begun: MainWindow, wait) -> MainWindow:
    """A window that previews how the bowing goes on."""
    QTest.keyClick(begun.page, Key.Key_G, Qt.KeyboardModifier.ControlModifier)
    wait()
    assert begun.page.plan is not None
    return begun


def bowing(window: MainWindow) -> Bowing:
    return window.document.state.bowing


def joins_in(window: MainWindow, own: Bowing, bars) -> set[str]:
    bar_of = window.document.state.tune.bar_of
    return {note_id for note_id in own.joins if bar_of[note_id] in bars}


# ------------------------------------------------------------------------------------------------- the preview


def test_one_key_proposes_the_rest_and_leaves_the_lesson_as_it_is(carried):
    shown, own = carried.page.plan.bowing, bowing(carried)
    assert joins_in(carried, shown, MARKED) == set(own.joins)
    assert shown.joins != own.joins
    assert carried.document.stack.count() == 0
    assert (shown.accents, shown.accent_changes) == (own.accents, own.accent_changes)


def test_equal_bars_come_as_they_are_marked(carried):
    tune, shown = carried.document.state.tune, carried.page.plan.bowing
    for first, again in ((0, 4), (1, 5)):
        inner = zip(tune.bars[first].notes[1:], tune.bars[again].notes[1:], strict=True)
        assert all((one.id in shown.joins) == (other.id in shown.joins) for one, other in inner)


def test_every_proposed_bar_is_told_how_sure_it_is(carried):
    plan = carried.page.plan
    assert set(plan.sure) == {4, 5, 6, 7}
    assert sureness(plan.sure[5]) is Sureness.SURE
    assert "sure" in carried.banner.sentence
    assert "From bars 1–4: " in carried.banner.sentence
    for bar in plan.sure:
        assert plan.tell(bar).endswith(sure_sentence(plan.sure[bar]))
    assert plan.tell(0) == plan.changes.get(0, "")


def test_the_bar_of_the_marked_note_is_told_in_words(carried, hand_on):
    hand_on(carried.page).click_note("b5n2")
    assert sure_sentence(carried.page.plan.sure[5]) in carried._hint.text()
    assert sure_sentence(carried.page.plan.sure[5]) in carried.page.accessibleDescription()


def test_only_what_is_sure_is_listed_beside_it_where_it_differs(carried):
    plans = carried.plan.plans
    assert len(plans) <= 2
    assert all(len(plan.bowing.joins) <= len(plans[0].bowing.joins) for plan in plans)


def test_shapes_and_words_tell_the_steps_apart():
    steps = list(Sureness)
    assert len({sure_word(step.value) for step in steps}) == len(steps)
    images = set()
    for step in steps:
        image = QImage(20, 20, QImage.Format.Format_Grayscale8)
        image.fill(Qt.GlobalColor.white)
        painter = QPainter(image)
        filled, ring = sure_shape(step, QPointF(10, 10), 14)
        painter.fillPath(filled, Qt.GlobalColor.black)
        painter.strokePath(ring, painter.pen())
        painter.end()
        images.add(bytes(image.constBits()))
    assert len(images) == len(steps)
    assert count_sure([0.9, 0.8, 0.5, 0.1]) == "2 bars sure, 1 likely and 1 a guess"


# ------------------------------------------------------------------------------------------------- taking


def test_it_is_taken_whole_as_one_step(carried):
    before, shown = bowing(carried), carried.page.plan.bowing
    QTest.keyClick(carried.page, Key.Key_Return)
    assert bowing(carried) == replace(shown, name=before.name)
    assert carried.document.stack.count() == 1
    carried.undo()
    assert bowing(carried) == before


def test_one_bar_is_taken_and_the_others_are_dropped(carried, hand_on):
    before, shown = bowing(carried), carried.page.plan.bowing
    hand_on(carried.page).click_note("b5n2")
    QTest.keyClick(carried.page, Key.Key_Return, Qt.KeyboardModifier.AltModifier)
    after = bowing(carried)
    assert joins_in(carried, after, {5}) == joins_in(carried, shown, {5})
    assert set(after.joins) == set(before.joins) | joins_in(carried, shown, {5})
    assert carried.page.plan is None
    assert carried.document.stack.count() == 1
    assert carried.document.stack.undoText() == "Carry on in bar 6"
    carried.undo()
    assert bowing(carried) == before


def test_the_bars_of_a_selection_are_taken(carried, hand_on):
    shown, hand = carried.page.plan.bowing, hand_on(carried.page)
    hand.click_note("b4n2")
    QTest.mouseClick(carried.page, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ShiftModifier,
                     carried.page.head_point("b5n3"))  # fmt: skip
    carried.banner.bars_button.click()
    assert joins_in(carried, bowing(carried), {4, 5}) == joins_in(carried, shown, {4, 5})
    assert joins_in(carried, bowing(carried), {6, 7}) == set()


def test_a_bar_that_was_given_is_not_taken(carried, hand_on):
    hand_on(carried.page).click_note("b0n2")
    carried.actions_by_name["plan_take_bars"].trigger()
    assert carried.page.plan is not None
    assert carried.document.stack.count() == 0
    assert carried._hint.text() == NOT_PROPOSED


def test_bars_of_a_plan_are_not_taken(begun, wait):
    QTest.keyClick(begun.page, Key.Key_F9)
    wait()
    assert not begun.actions_by_name["plan_take_bars"].isEnabled()
    assert begun.banner.bars_button.isHidden()
    begun.plan.take_bars()
    assert begun._hint.text() == NO_BARS_TO_TAKE
    assert begun.document.stack.count() == 0


def test_taken_bars_are_marked_the_next_time_but_not_what_lies_between(carried, hand_on, wait):
    hand_on(carried.page).click_note("b6n2")
    taken = joins_in(carried, carried.page.plan.bowing, {6})
    carried.plan.take_bars()
    carried.plan.carry_on(())
    wait()
    expected = {4, 5, 7} if taken else {4, 5, 6, 7}
    assert set(carried.page.plan.sure) >= expected - {5}
    assert 0 not in carried.page.plan.sure


def test_a_preview_refuses_edits(carried, hand_on):
    hand_on(carried.page).click_note("b4n2")
    hand_on(carried.page).drag("b4n2", "b4n5")
    QTest.keyClick(carried.page, Key.Key_Space)
    assert carried.document.stack.count() == 0


# ------------------------------------------------------------------------------------------------- what is asked


def test_a_selection_says_what_is_marked(begun, wait, hand_on):
    hand_on(begun.page).click_note("b0n1")
    begun.undo()  # the click slurred
    QTest.mouseClick(begun.page, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ShiftModifier,
                     begun.page.head_point("b1n3"))  # fmt: skip
    begun.plan.carry_on()
    wait()
    assert set(begun.page.plan.sure) == {2, 3, 4, 5, 6, 7}


def test_the_style_is_chosen_beside_the_plans_and_the_page_follows(carried, wait):
    box = carried.plan.styles.styles
    first = carried.page.plan
    box.setCurrentIndex(box.findData(THIS_TUNE))
    box.activated.emit(box.currentIndex())
    wait()
    assert carried.page.plan is not None
    assert carried.page.plan.sentence != first.sentence
    assert carried.plan.styles.style_name == THIS_TUNE
    assert not carried.plan.styles.words_button.isEnabled()
    carried.plan.tell_style()
    assert carried._hint.text() == NO_STYLE


def test_too_little_is_said_in_a_sentence(qtbot, begun, wait):
    begun.plan.styles.choose(THIS_TUNE)
    begun.document.open(read_abc(BEGUN.replace("(", "").replace(")", "")).lessons[0])
    begun.plan.carry_on()
    wait()
    assert begun.page.plan is None
    assert begun.plan.results.sentence.text().startswith("Nothing is slurred or marked yet")


def test_the_style_alone_bows_a_bare_tune():
    lesson = read_abc(BEGUN.replace("(", "").replace(")", "")).lessons[0]
    proposal = proposal_for(pose_carrying(lesson.tune, lesson.bowings[0], BOOK), lambda: None)
    assert proposal.marked == frozenset()
    assert set(proposal.bar_chances) == set(range(8))


def test_accents_are_driven_where_they_are_asked_for():
    lesson = read_abc(BEGUN).lessons[0]
    tune, own = lesson.tune, lesson.bowings[0]
    backbeat = AccentPlan(PlanKind.BACKBEAT)
    free = proposal_for(pose_carrying(tune, own, BOOK), lambda: None)
    asked = proposal_for(pose_carrying(tune, own, BOOK, accents=backbeat), lambda: None)
    assert not any(note.accented for note in free.plan.problem.notes)  # the marked bars pass the accents by
    assert any(note.accented for note in asked.plan.problem.notes)
    assert (free.bowing.accents, asked.bowing.accents) == (own.accents, backbeat)


def test_a_style_that_is_gone_is_told():
    lesson = read_abc(BEGUN).lessons[0]
    with pytest.raises(RefusedEditError, match="There is no style “Nobody”"):
        proposal_for(pose_carrying(lesson.tune, lesson.bowings[0], "Nobody"), lambda: None)


def test_what_the_style_does_stands_in_a_window(begun, qtbot):
    begun.actions_by_name["style_words"].trigger()
    dialog = next(one for one in begun.findChildren(QDialog) if one.isVisible())
    assert "Slurred in " in dialog.text.toPlainText()
    assert "1883" in dialog.windowTitle()
    assert dialog.forget_button.isHidden()
    dialog.accept()
