"""The first hour: the sample lesson at the first start, the tour, and help in place."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from app.main_window import MainWindow
from app.settings import Settings
from app.tour import STOPS
from app.tour_balloon import beside
from core.check import RULES


@pytest.fixture
def fresh(qtbot, dialogs, settings):
    """A window with no lesson."""
    window = MainWindow(settings, dialogs)
    qtbot.addWidget(window, before_close_func=lambda w: w.document.stack.setClean())
    window.resize(1200, 760)
    window.show()
    qtbot.waitExposed(window)
    return window


def press(window, key, keys=Qt.KeyboardModifier.NoModifier):
    QTest.keyClick(window.focusWidget(), key, keys)


def test_the_first_start_opens_the_sample_lesson_and_the_tour_once(fresh, qtbot, dialogs, settings, tmp_path):
    fresh.greet()
    assert fresh.document.state.tune.title == "The Tuesday Ferry"
    assert not fresh.document.is_modified
    assert fresh.helping.tour.runs
    assert Settings(tmp_path / "settings.ini").tour_seen
    fresh.helping.tour.end()
    again = MainWindow(settings, dialogs)
    qtbot.addWidget(again)
    again.greet()
    assert again.document.state is None


def test_who_has_opened_files_before_is_not_greeted(fresh, settings, tmp_path):
    settings.remember_file(tmp_path / "mine.musicxml")
    fresh.greet()
    assert fresh.document.state is None
    assert fresh.helping.tour is None


def test_the_menu_begins_it_again_on_the_lesson_that_is_open(window):
    title = window.document.state.tune.title
    for _ in range(2):
        window.actions_by_name["tour"].trigger()
        assert window.document.state.tune.title == title
        assert STOPS[0].title in window.helping.tour.balloon.accessibleName()
        press(window, Qt.Key.Key_Right)


@pytest.mark.parametrize("size", [(1366, 768), (1000, 620), (2400, 1300)])
def test_every_stop_is_beside_a_part_that_is_in_sight(qtbot, window, size):
    window.resize(*size)
    window.actions_by_name["tour"].trigger()
    tour = window.helping.tour
    for stop in STOPS:
        qtbot.wait(30)
        balloon = tour.balloon
        assert stop.title in balloon.accessibleName()
        assert balloon.isVisible()
        assert balloon.rim.isVisible()
        assert window.rect().contains(balloon.geometry())
        assert balloon.rim.width() > 20
        assert balloon.rim.height() > 10
        told = balloon.forward_button.accessibleDescription()
        assert stop.text in told, "a screen reader hears it, since this button has the keyboard"
        assert window.focusWidget() is balloon.forward_button
        press(window, Qt.Key.Key_Return)
    assert not tour.runs


def test_the_part_that_is_told_of_is_the_one_in_the_frame(qtbot, window):
    window.actions_by_name["tour"].trigger()
    tour = window.helping.tour
    parts = {"page": window.area, "bowings": window.bowings, "check": window.side_list}
    for place, stop in enumerate(STOPS):
        tour.go(place)
        qtbot.wait(30)
        part = window.plan if stop.place == "plan" else parts.get(stop.place)
        if part is not None:
            assert part.isVisible()
            middle = part.mapTo(window, part.rect().center())
            assert tour.balloon.rim.geometry().contains(middle)
            assert tour.balloon.rim.width() <= part.width() + 10


def test_keys_go_forward_back_and_out_and_the_keyboard_comes_back(window):
    window.page.setFocus()
    window.actions_by_name["tour"].trigger()
    tour = window.helping.tour
    press(window, Qt.Key.Key_Left)
    assert STOPS[0].title in tour.balloon.accessibleName()
    press(window, Qt.Key.Key_Right)
    press(window, Qt.Key.Key_Right)
    press(window, Qt.Key.Key_Left)
    assert STOPS[1].title in tour.balloon.accessibleName()
    buttons = {tour.balloon.end_button, tour.balloon.back_button, tour.balloon.forward_button}
    reached = set()
    for _ in range(3):
        press(window, Qt.Key.Key_Tab)
        reached.add(window.focusWidget())
    assert reached == buttons
    press(window, Qt.Key.Key_Escape)
    assert not tour.runs
    assert window.focusWidget() is window.page


def test_what_is_told_of_can_be_tried_meanwhile(window, hand_on):
    window.actions_by_name["tour"].trigger()
    hand_on(window.page).click_note("b0n1")
    assert window.document.stack.canUndo()
    assert window.helping.tour.runs


def test_the_panes_are_put_back_and_nothing_is_remembered_of_them(window, settings):
    assert not settings.planner
    window.actions_by_name["tour"].trigger()
    for _ in STOPS:
        window.helping.tour.balloon.forward_button.click()
    assert window.tabs.current is window.side_list
    assert not window.tabs.has(window.plan)
    assert not settings.planner


def test_a_window_that_closes_ends_it(window):
    window.actions_by_name["tour"].trigger()
    window.document.stack.setClean()
    window.close()
    assert not window.helping.tour.runs


ROOM = QRect(0, 0, 1000, 700)


@pytest.mark.parametrize(
    ("around", "place"),
    [
        (QRect(400, 10, 50, 30), "under"),
        (QRect(400, 650, 50, 30), "over"),
        (QRect(600, 0, 400, 700), "left"),
        (QRect(0, 0, 400, 700), "right"),
        (QRect(0, 0, 1000, 700), "inside"),
    ],
)
def test_a_balloon_stands_where_there_is_room(around, place):
    found = beside(around, QSize(300, 200), ROOM)
    assert ROOM.contains(found)
    claims = {
        "under": found.top() > around.bottom(),
        "over": found.bottom() < around.top(),
        "left": found.right() < around.left(),
        "right": found.left() > around.right(),
        "inside": around.contains(found),
    }
    assert claims[place]


# ------------------------------------------------------------------------------------------------------ help in place


def test_every_command_and_menu_says_what_it_does(window):
    silent = [
        action.text() or action.objectName()
        for action in window.findChildren(QAction)
        if not action.isSeparator() and not action.objectName().startswith("_q_")  # those are of Qt's text fields
        if action.text() or action.menu() is None  # else it stands for a menu under a button, and is never seen
        if not (action.statusTip() and (action.whatsThis() or action.toolTip()))
    ]
    assert not silent


def test_everything_that_takes_the_keyboard_says_what_it_is(window):
    window.show_planner(True)
    window.actions_by_name["shelf"].trigger()
    window.actions_by_name["player"].trigger()
    silent = [
        widget
        for widget in window.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and widget.isVisible() and not said(widget)
    ]
    assert not silent


def said(widget: QWidget | None) -> str:
    """What Qt shows when a widget is asked: its own text, else that of what it stands in."""
    while widget is not None and not widget.isWindow():
        if widget.whatsThis():
            return widget.whatsThis()
        widget = widget.parentWidget()
    return ""


def test_every_rule_says_why_under_the_list(window):
    assert all(rule.why for rule in RULES.values())
    window.side_list.choose(0)
    assert window.side_list._why.text()


def test_asking_is_a_command(window):
    from PySide6.QtWidgets import QWhatsThis

    window.actions_by_name["whats_this"].trigger()
    assert QWhatsThis.inWhatsThisMode()
    QWhatsThis.leaveWhatsThisMode()
    assert not QWhatsThis.inWhatsThisMode()


def test_about_and_manual_open_from_the_menu(window):
    from app.about_dialog import AboutDialog

    window.actions_by_name["about"].trigger()
    (about,) = window.findChildren(AboutDialog)
    assert about.isVisible()
    about.close()
    window.actions_by_name["manual"].trigger()
    assert window.helping.manual.isVisible()
    window.document.stack.setClean()
    window.close()
    assert not window.helping.manual.isVisible()
