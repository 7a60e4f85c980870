"""The player in the window, with real keys and a real mouse."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractSpinBox, QCheckBox, QSlider, QSpinBox, QToolButton, QWidget

from app.main_window import MainWindow
from app.player_bar import PlayerBar
from app.player_choice import read_choice
from core.sound.mix import Part
from tests.app.player.conftest import FakeDevices


@pytest.fixture
def silent(monkeypatch) -> None:
    """No window of these tests makes a sound."""

    def without_sound(parent):
        devices = FakeDevices(parent)
        devices.fault = "No sound device was found."
        return devices

    monkeypatch.setattr("app.player_device.Devices", without_sound)


@pytest.fixture
def quiet_window(silent, window) -> Iterator[MainWindow]:
    window.page.setFocus()
    yield window
    window.playing.close_down()


@pytest.fixture
def bar(quiet_window) -> PlayerBar:
    return quiet_window.playing.bar


def press(widget: QWidget, key: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(widget, key, held)


def click(button: QWidget) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton, pos=QPoint(6, button.height() // 2))


def type_in(spin: QSpinBox, text: str) -> None:
    spin.setFocus()
    spin.selectAll()
    QTest.keyClicks(spin, text)
    QTest.keyClick(spin, Qt.Key.Key_Return)


def test_the_bar_is_out_of_the_way_until_the_player_is_used(quiet_window, bar, qtbot):
    assert not bar.isVisible()
    press(quiet_window.page, Qt.Key.Key_F5)
    assert bar.isVisible()
    assert bar.player.plays
    assert bar.play_button.text() == "Stop"
    press(quiet_window.page, Qt.Key.Key_F5)
    assert not bar.player.plays
    assert bar.play_button.text() == "Play"


def test_the_page_marks_what_is_heard_and_the_bow_goes_with_it(quiet_window, bar, qtbot):
    bar.player.choose(count_in=0)
    seen: list[str] = []
    bar.player.moved.connect(lambda moment: seen.append(quiet_window.page.played_note))
    press(quiet_window.page, Qt.Key.Key_F5)
    qtbot.waitUntil(lambda: "b0n2" in seen, timeout=20_000)
    assert seen[: seen.index("b0n2")].count("b0n1") > 1
    assert "up-bow" in bar.bow.words
    assert bar.words.text().startswith("Bar 1")
    press(quiet_window.page, Qt.Key.Key_F5)
    assert quiet_window.page.played_note == ""


def test_keys_change_the_speed_and_the_bar_shows_it(quiet_window, bar):
    for _ in range(3):
        press(quiet_window.page, Qt.Key.Key_F6)
    press(quiet_window.page, Qt.Key.Key_F7)
    assert bar.player.choice.speed == 90
    assert bar.speed.value() == 90
    type_in(bar.speed, "65")
    assert bar.player.choice.speed == 65


def test_bars_are_typed_and_all_goes_back_to_the_whole_tune(quiet_window, bar):
    press(quiet_window.page, Qt.Key.Key_F7)
    type_in(bar.first, "2")
    assert bar.player.choice.bars == (2, 4)
    type_in(bar.last, "3")
    assert bar.player.choice.bars == (2, 3)
    assert not bar.all_button.isChecked()
    type_in(bar.first, "4")
    assert bar.player.choice.bars == (4, 4)
    click(bar.all_button)
    assert bar.player.choice.bars is None
    assert (bar.first.value(), bar.last.value()) == (1, 4)


def test_the_mouse_turns_round_and_ladder_on_and_off(quiet_window, bar):
    press(quiet_window.page, Qt.Key.Key_F7)
    click(bar.round_button)
    assert bar.player.choice.loops
    click(bar.round_button)
    assert not bar.player.choice.loops
    click(bar.ladder_button)
    assert bar.player.choice.climbs
    assert bar.speed.value() == bar.player.choice.ladder.first
    assert quiet_window.actions_by_name["ladder"].isChecked()


def test_selected_bars_are_played_round_and_round_by_a_key(quiet_window, bar):
    quiet_window.page.focus_on("b1n1")
    press(quiet_window.page, Qt.Key.Key_F5, Qt.KeyboardModifier.ControlModifier)
    assert bar.player.choice.bars == (2, 2)
    assert bar.player.choice.loops
    assert bar.round_button.isChecked()


def test_parts_are_muted_by_keys_and_in_the_panel(quiet_window, bar, qtbot):
    press(quiet_window.page, Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert Part.BACKING in bar.player.choice.muted
    click(bar.levels_button)
    qtbot.waitUntil(bar.levels.isVisible)
    assert not bar.levels.switches[Part.BACKING].isChecked()
    click_box(bar.levels.switches[Part.CLICK])
    assert Part.CLICK not in bar.player.choice.muted
    slider = bar.levels.sliders[Part.FIDDLE]
    slider.setFocus()
    press(slider, Qt.Key.Key_Left)
    assert bar.player.choice.levels[Part.FIDDLE] == -1
    press(bar.levels, Qt.Key.Key_Escape)
    assert not bar.levels.isVisible()


def click_box(box: QCheckBox) -> None:
    QTest.mouseClick(box, Qt.MouseButton.LeftButton, pos=QPoint(8, box.height() // 2))


def test_the_ladder_is_set_in_its_panel_and_one_end_gives_way_to_the_other(quiet_window, bar, qtbot):
    press(quiet_window.page, Qt.Key.Key_F7)
    click(bar.ladder_set)
    qtbot.waitUntil(bar.ladder.isVisible)
    type_in(bar.ladder.last, "50")
    assert (bar.player.choice.ladder.first, bar.player.choice.ladder.last) == (50, 50)
    type_in(bar.ladder.last, "90")
    type_in(bar.ladder.step, "20")
    assert bar.player.choice.ladder.rungs == (50, 70, 90)
    bar.ladder.close()


def test_hiding_the_bar_stops_and_gives_the_keyboard_back(quiet_window, bar):
    press(quiet_window.page, Qt.Key.Key_F5)
    bar.speed.setFocus()
    click(bar.close_button)
    assert not bar.isVisible()
    assert not bar.player.plays
    assert quiet_window.focusWidget() is quiet_window.page


def test_why_nothing_is_heard_stands_in_the_bar(quiet_window, bar, qtbot):
    press(quiet_window.page, Qt.Key.Key_F5)
    qtbot.waitUntil(lambda: "(silent)" in bar.words.text(), timeout=20_000)
    assert bar.words.toolTip() == "No sound device was found."
    press(quiet_window.page, Qt.Key.Key_F5)
    assert bar.words.text() == "No sound device was found."


def test_another_bowing_is_chosen_by_key_while_it_plays(quiet_window, bar, qtbot):
    quiet_window.bowings.copy()
    quiet_window.page.setFocus()
    press(quiet_window.page, Qt.Key.Key_F5)
    qtbot.waitUntil(lambda: bar.player.moment is not None, timeout=20_000)
    press(quiet_window.page, Qt.Key.Key_PageUp, Qt.KeyboardModifier.ControlModifier)
    shown = quiet_window.document.state.bowing
    qtbot.waitUntil(lambda: bar.player.moment.recipe.passage.bowing is shown, timeout=20_000)
    assert bar.player.plays


def test_whatever_takes_the_keyboard_has_a_name(quiet_window, bar):
    press(quiet_window.page, Qt.Key.Key_F7)
    for place in (bar, bar.levels, bar.ladder):
        for kind in (QToolButton, QSpinBox, QSlider, QCheckBox):
            for widget in place.findChildren(kind):
                if not isinstance(widget.parent(), QAbstractSpinBox):
                    assert widget.accessibleName() or (isinstance(widget, QToolButton) and len(widget.text()) > 2)
                    assert widget.focusPolicy() != Qt.FocusPolicy.NoFocus


def test_levels_are_remembered(quiet_window, bar, settings):
    bar.player.set_level(Part.BACKING, -9)
    assert read_choice(settings.player).levels[Part.BACKING] == -9
