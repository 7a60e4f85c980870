"""The planner beside the page, as a teacher uses it: work out, look, compare, take, undo."""

from __future__ import annotations

from dataclasses import replace
from threading import Event
from time import sleep

import pytest
from immutabledict import immutabledict
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QTabBar

from app.main_window import MainWindow
from app.plan_choices import Choices, Span
from app.plan_form import PlanForm
from app.plan_pane import LEFT_OFF, LESSON_CHANGED, WORKING
from app.plan_taking import NOTHING_TO_TAKE, SO_ALREADY
from app.plan_work import SLOW_MS, DroppedError
from app.settings import Settings
from core import planner
from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bow, Bowing, Join, Mark
from core.lesson import Lesson
from core.planner import Flow, pose, score
from core.reading.abc import read_abc
from core.strokes import work_out

LEFT = Qt.MouseButton.LeftButton
SHIFT = Qt.KeyboardModifier.ShiftModifier
Key = Qt.Key
BACKBEAT = AccentPlan(PlanKind.BACKBEAT)
TWO_PARTS = """X:1
T:Two Parts
R:reel
M:4/4
L:1/8
K:D
|:d2 fd Adfd|e2 ge Bege|d2 fd Adfd|egfe d2 A2:|
|:f2 af dfaf|g2 bg egbg|f2 af dfaf|gfed c2 A2:|
"""


@pytest.fixture
def bare(work_on) -> MainWindow:
    """A window on a tune of separate bows, its page with the keyboard."""
    return work_on(TWO_PARTS)


@pytest.fixture
def planned(bare: MainWindow, wait) -> MainWindow:
    """A window that previews the best plan, the next best listed."""
    QTest.keyClick(bare.page, Key.Key_F9)
    wait()
    assert bare.page.plan is not None
    return bare


@pytest.fixture
def stuck(monkeypatch):
    """A planner that comes to no end by itself; set when it was left off."""
    left_off = Event()

    def never(*args, go_on, **others):
        try:
            while True:
                go_on()
                sleep(0.001)
        except DroppedError:
            left_off.set()
            raise

    monkeypatch.setattr(planner, "work_out_plan", never)
    return left_off


def bowing(window: MainWindow) -> Bowing:
    return window.document.state.bowing


def rows(window: MainWindow) -> list[str]:
    return [window.plan.results.list.item(row).text() for row in range(window.plan.results.list.count())]


def same_way(one: Bowing, other: Bowing) -> bool:
    return replace(one, name="") == replace(other, name="")


# ------------------------------------------------------------------------------------------------- one action


def test_one_key_shows_the_best_bowing_of_a_bare_tune_on_the_page(planned):
    plan = planned.plan.plans[0]
    assert plan.proven
    assert same_way(planned.page.plan.bowing, plan.bowing)
    assert plan.bowing.joins
    assert planned.plan.results.sentence.text().endswith("proven best.")
    assert planned.banner.isVisible()
    assert planned.plan.results.sentence.text() in planned.banner.sentence


def test_its_numbers_are_those_that_the_bowing_has(planned):
    problem = pose(planned.document.state.tune, bowing(planned))
    assert score(problem, planned.page.plan.bowing) == planned.plan.plans[0].score


def test_a_preview_never_touches_the_document(planned):
    state = planned.document.state
    assert planned.document.stack.count() == 0
    assert not planned.document.is_modified
    assert not state.bowing.joins


def test_every_bar_that_changes_is_marked_with_its_reason(planned):
    assert planned.page.plan.changes
    assert all(text.strip() for text in planned.page.plan.changes.values())


def test_the_button_of_the_pane_does_the_same(bare, wait):
    bare.show_planner(True)
    QTest.mouseClick(bare.plan.work_button, LEFT)
    wait()
    assert bare.page.plan is not None


def test_the_way_of_the_bow_follows_the_preview(qtbot, planned):
    planned.trace.catch_up()
    seen = planned.trace.view.way
    planned.plan.drop()
    planned.trace.catch_up()
    assert planned.trace.view.way != seen


def test_what_was_worked_out_under_the_pointer_is_shown_at_once(qtbot, bare, wait):
    bare.show_planner(True)
    with qtbot.waitSignal(bare.plan.likely):  # it may come while the pointer moves
        QTest.mouseMove(bare.plan.work_button, QPoint(2, 2))
        QTest.mouseMove(bare.plan.work_button, bare.plan.work_button.rect().center())
    assert bare.page.plan is None
    assert not bare.plan.works
    QTest.mouseClick(bare.plan.work_button, LEFT)
    assert bare.page.plan is not None
    wait()
    assert len(bare.plan.plans) > 1


def test_what_is_still_worked_out_under_the_pointer_is_waited_for(bare, wait, monkeypatch):
    asked, work_out_plan = [], planner.work_out_plan

    def slowly(*args, **others):
        asked.append(args)
        sleep(0.1)
        return work_out_plan(*args, **others)

    monkeypatch.setattr(planner, "work_out_plan", slowly)
    bare.show_planner(True)
    bare.plan.look_ahead()
    QTest.qWait(20)
    bare.plan.work_out()
    assert bare.plan.works
    wait()
    assert bare.page.plan is not None
    assert len(asked) == 1


def test_what_was_worked_out_for_other_choices_is_not_shown(qtbot, bare, wait):
    bare.show_planner(True)
    with qtbot.waitSignal(bare.plan.likely):
        bare.plan.look_ahead()
    bare.plan.form.choose_accents(BACKBEAT)
    bare.plan.work_out()
    assert bare.page.plan is None
    wait()
    assert bare.page.plan.bowing.accents == BACKBEAT


def test_what_was_worked_out_before_an_edit_is_not_shown(qtbot, bare, wait):
    bare.show_planner(True)
    with qtbot.waitSignal(bare.plan.likely):
        bare.plan.look_ahead()
    bare.document.edit("Mark", lambda _, one: replace(one, marks=one.marks.set("b1n2", Mark(Bow.DOWN))))
    bare.plan.work_out()
    assert bare.page.plan is None
    wait()
    assert bare.page.plan.bowing.marks["b1n2"] == Mark(Bow.DOWN)


# ------------------------------------------------------------------------------------------------- taking


def test_enter_on_the_page_takes_it_as_one_undo_step(planned):
    before, plan = planned.document.state, planned.page.plan.bowing
    QTest.keyClick(planned.page, Key.Key_Return)
    assert same_way(bowing(planned), plan)
    assert bowing(planned).name == before.bowing.name
    assert planned.page.plan is None
    assert not planned.banner.isVisible()
    assert (planned.document.stack.count(), planned.document.stack.undoText()) == (1, "Plan: on the beat, fewest slurs")
    planned.document.stack.undo()
    assert planned.document.state == before
    planned.document.stack.redo()
    assert same_way(bowing(planned), plan)


def test_shift_and_enter_take_it_as_a_new_bowing(planned):
    before, plan = planned.document.state, planned.page.plan.bowing
    QTest.keyClick(planned.page, Key.Key_Return, SHIFT)
    lesson = planned.document.state.lesson
    assert [one.name for one in lesson.bowings] == [before.bowing.name, "On the beat, fewest slurs"]
    assert lesson.bowings[0] == before.bowing
    assert same_way(bowing(planned), plan)
    planned.document.stack.undo()
    assert planned.document.state == before


@pytest.mark.parametrize(("held", "bowings"), [(Qt.KeyboardModifier.NoModifier, 1), (SHIFT, 2)])
def test_enter_in_the_list_does_what_it_does_on_the_page_and_no_more(planned, held, bowings):
    planned.plan.results.list.setFocus()
    QTest.keyClick(planned.plan.results.list, Key.Key_Return, held)
    assert len(planned.document.state.lesson.bowings) == bowings
    assert planned.document.stack.count() == 1
    assert not planned.plan.works


def test_enter_in_the_name_works_nothing_out_anew(planned):
    planned.plan.results.name.setFocus()
    QTest.keyClick(planned.plan.results.name, Key.Key_Return)
    assert planned.document.stack.count() == 1
    assert not planned.plan.works


def test_a_new_bowing_takes_the_typed_name_and_names_never_collide(planned):
    planned.plan.results.name.setFocus()
    planned.plan.results.name.setText(bowing(planned).name)
    QTest.keyClick(planned.plan.results.name, Key.Key_Return)
    names = [one.name for one in planned.document.state.lesson.bowings]
    assert names == ["As written", "As written 2"]


def test_escape_on_the_page_drops_it(planned):
    before = planned.document.state
    QTest.keyClick(planned.page, Key.Key_Escape)
    assert planned.page.plan is None
    assert planned.plan.plans == ()
    assert planned.document.state is before


def test_undo_takes_back_the_preview_before_any_edit(bare, wait):
    bare.page.toggle_slur()
    edited = bare.document.state
    bare.actions_by_name["plan"].trigger()
    wait()
    assert bare.actions_by_name["undo"].text() == "&Undo “Preview”"
    bare.actions_by_name["undo"].trigger()
    assert bare.page.plan is None
    assert bare.document.state is edited


def test_the_banner_takes_and_drops(planned, wait):
    QTest.mouseClick(planned.banner.drop_button, LEFT)
    assert planned.page.plan is None
    planned.actions_by_name["plan"].trigger()
    wait()
    QTest.mouseClick(planned.banner.take_button, LEFT)
    assert bowing(planned).joins


def test_without_a_preview_enter_takes_nothing(bare):
    assert not bare.actions_by_name["plan_take"].isEnabled()
    bare.plan.take()
    bare.plan.take_as_new()
    assert bare.document.stack.count() == 0
    assert bare._hint.text() == NOTHING_TO_TAKE


def test_a_plan_that_is_there_already_changes_nothing(planned, wait):
    planned.plan.take()
    planned.plan.work_out()
    wait()
    assert "Nothing changes" in planned.banner.sentence
    planned.plan.take()
    assert planned.document.stack.count() == 1
    assert planned.page.plan is None
    assert planned._hint.text() == SO_ALREADY


# ------------------------------------------------------------------------------------------------- alternatives


def test_the_next_best_are_listed_and_shown_at_once(planned):
    assert len(rows(planned)) >= 2
    assert rows(planned)[0].startswith("Best: ")
    first = planned.page.plan.bowing
    planned.plan.results.list.setFocus()
    QTest.keyClick(planned.plan.results.list, Key.Key_Down)
    assert same_way(planned.page.plan.bowing, planned.plan.plans[1].bowing)
    assert planned.page.plan.bowing != first
    assert planned.document.stack.count() == 0


def test_enter_in_the_list_takes_the_chosen_one(planned):
    planned.plan.results.list.setFocus()
    QTest.keyClick(planned.plan.results.list, Key.Key_Down)
    second = planned.plan.plans[1].bowing
    QTest.keyClick(planned.plan.results.list, Key.Key_Return)
    assert same_way(bowing(planned), second)
    assert planned.document.stack.count() == 1


def test_the_keyboard_goes_back_to_the_page_with_the_plan(planned):
    planned.plan.results.list.setFocus()
    QTest.keyClick(planned.plan.results.list, Key.Key_Escape)
    assert planned.page.hasFocus()
    assert planned.page.plan is None


# ------------------------------------------------------------------------------------------------- choices


def test_chosen_accents_are_driven(bare, wait):
    bare.plan.form.show_choices(Choices(accents=BACKBEAT))
    bare.plan.work_out()
    wait()
    assert bare.page.plan.bowing.accents == BACKBEAT
    assert bare.plan.plans[0].score.missed == 0
    assert "On the backbeat, fewest slurs" in bare.banner.sentence


def test_with_a_plan_on_the_page_the_page_follows_the_choices(planned, wait):
    few = planned.page.plan.bowing
    planned.plan.form.flow.setFocus()
    QTest.keyClick(planned.plan.form.flow, Key.Key_End)
    assert planned.plan.form.choices.flow is Flow.SMOOTH
    wait()
    assert len(planned.page.plan.bowing.joins) > len(few.joins)
    assert planned.document.stack.count() == 0


def test_kept_slurs_and_marks_stay_and_afresh_they_may_go(bare, wait):
    bare.document.edit("Mark", lambda tune, one: replace(one, marks=one.marks.set("b1n2", Mark(Bow.DOWN))))
    bare.plan.work_out()
    wait()
    assert bare.page.plan.bowing.marks["b1n2"] == Mark(Bow.DOWN)
    bare.plan.form.keep.setFocus()
    QTest.keyClick(bare.plan.form.keep, Key.Key_Space)
    wait()
    assert not bare.plan.form.keep.isChecked()
    assert bare.page.plan.bowing.marks.get("b1n2") is None


def test_mending_from_here_keeps_all_before_and_bows_the_rest(bare, wait):
    marks = immutabledict({"b3n2": Mark(Bow.DOWN)})
    bare.document.edit("Slur", lambda _, one: replace(one, joins=one.joins.set("b0n2", Join.SLUR), marks=marks))
    before = bowing(bare)
    bare.page.focus_on("b1n1")
    QTest.keyClick(bare.page, Key.Key_F9, SHIFT)
    wait()
    tune, after = bare.document.state.tune, bare.page.plan.bowing
    early = [note.id for note in tune.sequence[: tune.places["b1n1"]]]
    assert {note_id: how for note_id, how in after.joins.items() if note_id in early} == {"b0n2": Join.SLUR}
    assert not set(early) & (after.marks.keys() | after.retakes)
    was, now = work_out(tune, before).bows, work_out(tune, after).bows
    assert [now[note_id][0] for note_id in early] == [was[note_id][0] for note_id in early]
    assert bare.plan.form.choices.span is Span.ONWARD
    assert "b1n3" in after.joins
    assert "b3n2" not in after.marks
    bare.plan.take()
    assert bare.plan.form.choices == Choices()


def test_only_the_selected_bars_change(bare, wait):
    bare.page.focus_on("b1n1")
    bare.plan.form.show_choices(Choices(span=Span.SELECTED))
    bare.plan.work_out()
    wait()
    tune, after = bare.document.state.tune, bare.page.plan.bowing
    assert {tune.bar_of[note_id] for note_id in after.joins} <= {1}


def test_choices_are_remembered_but_bars_and_accents_are_of_the_tune(qtbot, settings: Settings):
    form = PlanForm(settings)
    qtbot.addWidget(form)
    assert form.choices == Choices()
    form.choose_accents(BACKBEAT)
    form.flow.setValue(Flow.SMOOTH)
    form.keep.click()
    form.most_notes.setValue(7)
    form.longest.setCurrentIndex(3)
    form.longest.activated.emit(3)
    form.span.setCurrentIndex(1)
    form.span.activated.emit(1)
    again = PlanForm(settings)
    qtbot.addWidget(again)
    assert again.choices == replace(form.choices, span=Span.ALL, accents=None)
    assert again.choices != Choices()


# ------------------------------------------------------------------------------------------------- waiting


def test_a_long_wait_is_shown_and_escape_leaves_off(bare, stuck, qtbot):
    bare.show_planner(True)
    bare.plan.work_button.setFocus()
    QTest.keyClick(bare.plan.work_button, Key.Key_Space)
    assert not bare.plan.results.wait.isVisible()
    QTest.qWait(SLOW_MS + 50)
    assert bare.plan.results.wait.isVisible()
    assert bare.plan.results.wait_words.text() == WORKING
    QTest.keyClick(bare.plan.work_button, Key.Key_Escape)
    assert not bare.plan.works
    assert not bare.plan.results.wait.isVisible()
    assert bare.plan.results.sentence.text() == LEFT_OFF
    qtbot.waitUntil(stuck.is_set)
    assert bare.document.stack.count() == 0


def test_the_window_goes_on_while_the_planner_works(bare, stuck, hand_on):
    bare.plan.work_out()
    hand_on(bare.page).click_note("b0n1")
    assert bowing(bare).joins == {"b0n2": Join.SLUR}


def test_an_edit_meanwhile_makes_the_answer_void(bare, stuck, qtbot):
    bare.plan.work_out()
    QTest.qWait(20)
    bare.page.toggle_slur()
    assert not bare.plan.works
    assert bare.plan.results.sentence.text() == LESSON_CHANGED
    qtbot.waitUntil(stuck.is_set)
    assert bare.page.plan is None


def test_an_answer_about_the_lesson_as_it_was_is_dropped(bare, monkeypatch, qtbot):
    late, work_out_plan = Event(), planner.work_out_plan

    def stubborn(*args, go_on, **others):
        late.wait(5)
        return work_out_plan(*args, **others)

    monkeypatch.setattr(planner, "work_out_plan", stubborn)
    bare.plan.work_out()
    QTest.qWait(20)
    bare.page.toggle_slur()
    late.set()
    QTest.qWait(300)
    assert bare.page.plan is None
    assert bare.plan.plans == ()


def test_an_edit_drops_the_plans_that_are_shown(planned):
    planned.actions_by_name["bowing_copy"].trigger()
    assert planned.page.plan is None
    assert planned.plan.plans == ()
    assert not planned.banner.isVisible()


def test_another_tune_drops_what_is_worked_out(bare, stuck, qtbot, four_bars: Lesson):
    bare.plan.work_out()
    QTest.qWait(20)
    bare.document.open(four_bars)
    assert not bare.plan.works
    qtbot.waitUntil(stuck.is_set)
    assert bare.page.plan is None


def test_a_window_closed_meanwhile_leaves_nothing_running(bare, stuck, qtbot):
    bare.plan.work_out()
    QTest.qWait(20)
    bare.document.stack.setClean()
    bare.close()
    qtbot.waitUntil(stuck.is_set)
    assert not bare.plan.works


def test_closing_the_planner_drops_the_preview_and_is_remembered(planned, settings):
    assert settings.planner
    planned.actions_by_name["planner"].trigger()
    assert planned.page.plan is None
    assert not planned.plan.isVisible()
    assert not settings.planner


# ------------------------------------------------------------------------------------------------- refusals


def test_what_cannot_be_planned_is_said_with_its_bar_and_a_way_there(bare, wait):
    tune = bare.document.state.tune
    whole = [note.id for bar in tune.bars[1:4] for note in bar.notes][1:-3]
    bare.document.edit("Slur", lambda _, one: replace(one, joins=one.joins.update(dict.fromkeys(whole, Join.SLUR))))
    bare.show_planner(True)
    bare.plan.work_out()
    wait()
    assert bare.plan.results.sentence.text().startswith("In bar 3 one stroke runs through the whole bar")
    assert bare.page.plan is None
    assert bare.plan.results.go_button.text() == "Go to bar 3"
    QTest.mouseClick(bare.plan.results.go_button, LEFT)
    assert bare.page.focus_note == "b2n1"


def test_a_tune_without_notes_is_refused_in_a_sentence(bare, wait):
    bare.document.open(read_abc("X:1\nT:Nothing\nM:4/4\nL:1/4\nK:D\nz4|z4|]\n").lessons[0])
    bare.plan.work_out()
    wait()
    assert "has no notes" in bare.plan.results.sentence.text()
    assert not bare.plan.results.go_button.isVisible()


# ------------------------------------------------------------------------------------------------- the rest


def test_starting_versions_are_four_bowings_and_one_undo_step(bare, wait):
    before = bare.document.state
    bare.actions_by_name["plan_versions"].trigger()
    wait()
    lesson = bare.document.state.lesson
    assert len(lesson.bowings) == len(before.lesson.bowings) + 4
    assert len({one.name for one in lesson.bowings}) == len(lesson.bowings)
    assert bare.document.state.shown == len(before.lesson.bowings)
    assert bare.document.stack.count() == 1
    bare.document.stack.undo()
    assert bare.document.state == before


def test_starting_versions_twice_have_names_of_their_own(bare, wait):
    for _ in range(2):
        bare.plan.add_starting_versions()
        wait()
    names = [one.name for one in bare.document.state.lesson.bowings]
    assert len(set(names)) == len(names) == 9


def test_which_accents_suit_is_a_row_a_plan_and_a_row_sets_the_accents(bare, wait):
    bare.actions_by_name["plan_compare"].trigger()
    wait()
    table = bare.plan.suits
    assert table.isVisible()
    kinds = {suited.plan.kind for suited in table.rows}
    assert {PlanKind.ON_BEAT, PlanKind.BACKBEAT} <= kinds
    assert table.sentence.text()
    row = next(row for row, suited in enumerate(table.rows) if suited.plan == BACKBEAT)
    table.table.setFocus()
    table.table.setCurrentCell(row, 0)
    assert bare.plan.form.choices.accents == BACKBEAT
    assert bare.page.plan is None


def test_findings_and_planner_stand_side_by_side_only_when_it_is_open(bare):
    assert not bare.tabs.tabs.isVisible()
    bare.actions_by_name["planner"].trigger()
    assert bare.tabs.tabs.isVisible()
    assert bare.tabs.current is bare.plan
    assert bare.plan.form.accents.hasFocus()
    QTest.mouseClick(bare.tabs.tabs, LEFT, pos=bare.tabs.tabs.tabRect(0).center())
    assert bare.side_list.isVisible()
    bare.actions_by_name["planner"].trigger()  # out of sight it comes back and is not closed
    assert bare.plan.isVisible()
    QTest.mouseClick(bare.tabs.tabs.tabButton(1, QTabBar.ButtonPosition.RightSide), LEFT)
    assert not bare.tabs.tabs.isVisible()
    assert not bare.actions_by_name["planner"].isChecked()


def test_the_keyboard_reaches_every_control_of_the_planner(bare):
    bare.actions_by_name["planner"].trigger()
    bare.plan.form.limits_button.click()
    bare.page.setFocus()
    reached = set()
    for _ in range(60):
        reached.add(bare.focusWidget())
        QTest.keyClick(bare.focusWidget(), Key.Key_Tab)
    form, pane = bare.plan.form, bare.plan
    assert reached >= {
        bare.page, bare.tabs.tabs, form.accents, form.flow, form.span, form.keep, form.limits_button, form.most_notes,
        form.longest, pane.work_button, pane.suits_button, pane.versions_button,
    }  # fmt: skip
