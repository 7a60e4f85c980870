"""The way of the bow under the page: live, and each place leads to its note."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QHelpEvent, QImage, QPainter, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolTip

from app.bow_trace import BowTrace, bar_labels
from app.bow_trace_painting import TracePainter, leaves_s
from app.bow_words import pace_words, reach_sentences, tempo_words, tuning_words
from app.document import Document
from app.theme import DARK, LIGHT, scaled_font
from core.bow_way import BowWay, Leg, Out
from core.bowing import toggle_join_to_next
from core.reach import ReachSettings
from core.reading.abc import read_abc
from core.strings import TUNINGS, Tuning
from core.tempos import pace
from core.tune import Tempo

AIR = "X:1\nT:The Long Weir\nR:air\nM:4/4\nL:1/8\nQ:1/4=40\nK:D\n"
SLURS = AIR + "|".join(["(ABc)d(efg)a"] * 12) + "|A8-|(A8|B8)|]\n"  # drifts; in the end too long for any bow


@pytest.fixture
def trace(qtbot, document: Document) -> BowTrace:
    trace = BowTrace(document)
    qtbot.addWidget(trace)
    trace.resize(900, trace.sizeHint().height())
    trace.show()
    document.lesson_changed.connect(trace.catch_up)  # tests do not wait for the next frame, but for one
    return trace


def open_text(document: Document, text: str) -> None:
    document.open(read_abc(text).lessons[0])


def show_note(trace: BowTrace, note_id: str) -> None:
    trace.show_note(note_id)
    trace.catch_up()


def click(trace: BowTrace, played: int) -> None:
    QTest.mouseClick(trace.view.viewport(), Qt.MouseButton.LeftButton, pos=trace.view.point_of(played))


def picture(trace: BowTrace) -> QImage:
    return trace.view.grab().toImage()


# ------------------------------------------------------------------------------------------------- what it shows


def test_it_follows_by_itself_in_the_next_frame(qtbot, trace, document):
    document.lesson_changed.disconnect(trace.catch_up)
    legs = len(trace.view.way.legs)
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    trace.show_note("b2n1")
    assert trace.waits  # the page is painted first
    assert len(trace.view.way.legs) == legs
    qtbot.waitUntil(lambda: not trace.waits)
    assert len(trace.view.way.legs) == legs - 2
    assert document.report().strokes.played[trace.view.at].note_id == "b2n1"


def test_it_follows_every_edit(trace, document):
    before, looked = trace.view.way, picture(trace)
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    assert len(trace.view.way.legs) == len(before.legs) - 2  # once on each pass
    assert picture(trace) != looked
    document.stack.undo()
    assert trace.view.way == before
    assert picture(trace) == looked


def test_hidden_it_works_nothing_out_and_shows_what_has_become_when_it_comes_back(trace, document):
    trace.hide()
    before = trace.view.way
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    assert trace.view.way is before
    trace.show()
    assert len(trace.view.way.legs) == len(before.legs) - 2


def test_at_one_speed_all_strokes_are_equally_steep(trace):
    scale = trace.view.scale
    slopes = {
        round(abs((scale.y(leg.end_cm) - scale.y(leg.begin_cm)) / (scale.x(leg.end_s) - scale.x(leg.begin_s))), 6)
        for leg in trace.view.way.legs
    }
    assert len(slopes) == 1


def test_down_bows_go_down_from_the_frog_above_to_the_tip_below(trace):
    scale, down = trace.view.scale, trace.view.way.legs[0]
    assert down.down
    assert scale.y(down.end_cm) > scale.y(down.begin_cm)
    assert scale.y(0) == scale.frog < scale.tip == scale.y(65)


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
@pytest.mark.parametrize("times", [1, 2])
def test_where_the_bow_runs_out_shapes_differ_without_colour(qapp, theme, times):
    """Even and hopeless, at usual and at twice the size of text."""
    painter = TracePainter(scaled_font(qapp.font(), times), theme)

    def painted(out: Out) -> QImage:
        room = ((0.0, 65.0), (70.0, 65.0) if out is Out.ANYHOW else (0.0, 65.0))
        way = BowWay(4.0, 65.0, (0.0,), (0.0,), (Leg(0.0, 4.0, 0.0, 100.0, True, True, 0, out, *room),))
        image = QImage(500, painter.height, QImage.Format.Format_RGB32)
        image.fill(theme.panel)
        with QPainter(image) as on:
            painter.paint(on, way, ("1",), -1, (), painter.scale(way, 500), 0, 500)
        return image.convertToFormat(QImage.Format.Format_Mono)

    even, anyhow, none = painted(Out.EVEN), painted(Out.ANYHOW), painted(Out.NO)
    assert even != anyhow != none != even


def test_the_mark_stands_where_the_line_leaves_the_hair():
    leg = Leg(2.0, 4.0, 45.0, 85.0, True, False, 0, Out.EVEN, (0, 65), (0, 65))
    assert leaves_s(leg, 65.0) == 3.0
    assert leaves_s(leg._replace(begin_cm=20.0, end_cm=-20.0, down=False), 65.0) == 3.0
    assert leaves_s(leg._replace(end_cm=50.0), 65.0) == 4.0  # runs out only as other speeds have it


def test_the_caption_says_what_is_assumed_and_where_the_bow_runs_out(trace, document):
    assert trace.caption.text() == ("The bow stays on 65 cm of hair at 30 cm/s (half = 112, usual for this dance).")
    open_text(document, SLURS)
    assert trace.caption.text() == (
        "The bow runs out in bars 1–13 at 30 cm/s (quarter = 40, as the tune says); in bar 13 at any speeds of "
        "5 to 100 cm/s."
    )


def test_bars_are_numbered_and_passes_told_apart(document):
    labels = bar_labels(document.state.tune, document.report().strokes)
    assert labels == ("1", "2", "3", "4", "1′", "2′", "3′", "4′")


# ------------------------------------------------------------------------------------------------- going places


@pytest.mark.parametrize("played", [0, 5, 20, 40])
def test_a_click_goes_to_the_note(qtbot, trace, document, played):
    note = document.report().strokes.played[played].note_id
    with qtbot.waitSignal(trace.note_wanted) as wanted:
        click(trace, played)
    assert wanted.args == [note]
    assert trace.view.at == played


def test_the_note_of_the_page_is_marked_on_the_pass_that_is_near(trace, document):
    strokes = document.report().strokes
    show_note(trace, "b1n2")
    assert strokes.played[trace.view.at].note_id == "b1n2"
    assert strokes.played[trace.view.at].pass_number == 1
    click(trace, len(strokes.played) - 3)  # far on in the second pass
    show_note(trace, "b2n1")
    assert strokes.played[trace.view.at].pass_number == 2
    before = picture(trace)
    show_note(trace, "")
    assert trace.view.at == -1
    assert picture(trace) != before


def test_the_mark_stays_at_its_note_when_strokes_change(trace, document):
    click(trace, 9)
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    assert trace.view.at == 9


def test_keys_walk_from_stroke_to_stroke(trace, document):
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n2"))
    view, legs = trace.view, trace.view.way.legs
    for key, leg in ((Qt.Key.Key_Home, 0), (Qt.Key.Key_Right, 1), (Qt.Key.Key_Right, 2), (Qt.Key.Key_Left, 1),
                     (Qt.Key.Key_End, -1), (Qt.Key.Key_Right, -1)):  # fmt: skip
        QTest.keyClick(view, key)
        assert view.at == legs[leg].first


def test_ctrl_and_arrows_go_to_where_the_bow_runs_out(qtbot, trace, document):
    open_text(document, SLURS)
    view, ctrl = trace.view, Qt.KeyboardModifier.ControlModifier
    QTest.keyClick(view, Qt.Key.Key_Home)
    outs = [leg.first for leg in view.way.legs if leg.out is not Out.NO]
    if view.at == outs[0]:
        outs = outs[1:]
    visited = []
    for _ in outs:
        QTest.keyClick(view, Qt.Key.Key_Right, ctrl)
        visited.append(view.at)
    assert visited == outs
    with qtbot.waitSignal(trace.hinted) as hinted:
        QTest.keyClick(view, Qt.Key.Key_Right, ctrl)
    assert hinted.args == ["The bow runs out nowhere behind this."]
    assert view.at == outs[-1]


def test_a_long_tune_scrolls_to_the_note_and_by_the_wheel(trace, document):
    open_text(document, SLURS)
    view, bar = trace.view, trace.view.horizontalScrollBar()
    assert bar.maximum() > 0
    QTest.keyClick(view, Qt.Key.Key_End)
    assert bar.value() > 0
    assert 0 <= view.point_of(view.at).x() < view.viewport().width()
    before, middle = bar.value(), QPointF(view.viewport().rect().center())
    for turn in (120, -120):
        wheel = QWheelEvent(
            middle, QPointF(view.viewport().mapToGlobal(middle)), QPoint(), QPoint(0, turn), Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(view.viewport(), wheel)
        assert (bar.value() < before) if turn > 0 else (bar.value() == before)


def test_at_another_tempo_the_marked_note_stays_in_sight(trace, document):
    view, last = trace.view, len(document.report().strokes.played) - 1
    click(trace, last)
    slow = ReachSettings(tempo=Tempo(Fraction(2), Fraction(10)))
    document.change("Bow and fiddle", lambda lesson: replace(lesson, reach=slow), 0)
    assert view.at == last
    assert view.horizontalScrollBar().value() > 0
    assert 0 <= view.point_of(last).x() < view.viewport().width()


def test_a_tune_without_a_stroke_has_nothing_to_go_to(trace, document):
    open_text(document, "X:1\nM:4/4\nL:1/8\nK:D\nz8|z8|]\n")
    for key in (Qt.Key.Key_Home, Qt.Key.Key_Right):
        QTest.keyClick(trace.view, key)
    QTest.mouseClick(trace.view.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(200, 40))
    assert trace.view.at == -1
    assert trace.view.words_at(1) == ""


# ------------------------------------------------------------------------------------------------- in words


def test_the_stroke_under_the_pointer_is_said_in_words(trace, document):
    open_text(document, SLURS)
    view = trace.view
    place = view.point_of(3)
    QApplication.sendEvent(view.viewport(), QHelpEvent(QEvent.Type.ToolTip, place, view.viewport().mapToGlobal(place)))
    assert QToolTip.text().startswith("Up-bow from the fourth note of bar 1: 0.75 s, from ")
    QToolTip.hideText()


def test_a_stroke_that_runs_out_says_where(trace, document):
    open_text(document, SLURS)
    said = {leg.out: trace.view.words_at(leg.begin_s) for leg in trace.view.way.legs}
    assert said[Out.EVEN].endswith(" cm at one even speed; the bow runs out at the tip.")
    assert said[Out.ANYHOW].endswith(" at any speed.")
    assert said[Out.NO].endswith(" from the frog.")


def test_assistive_technology_hears_name_and_stroke(trace, document):
    assert trace.view.accessibleName() == "Bow from frog to tip"
    assert trace.caption.accessibleName()
    click(trace, 0)
    assert trace.view.accessibleDescription() == trace.view.words_at(0)
    assert "the first note of bar 1, the first time" in trace.view.accessibleDescription()


def test_tempos_and_tunings_in_words(document):
    tune = document.state.tune
    assert tempo_words(pace(tune).tempo) == "half = 112"
    assert pace_words(pace(tune), is_set=True) == "half = 112, as set"
    assert tuning_words(TUNINGS["standard"]) == "G3 D4 A4 E5 (standard)"
    assert tuning_words(Tuning(("A3", "E4", "A4", "C#5"))).startswith("A3 E4 A4 C♯5 (")
    assert tuning_words(Tuning(("Bb3", "E5"))) == "B♭3 E5"
    report = document.report()
    assert reach_sentences(tune, report.strokes, report.reach).endswith(".")


# ------------------------------------------------------------------------------------------------- in the window


def test_page_and_trace_share_their_note(window):
    trace, page = window.trace, window.page
    assert trace.isVisible()
    click(trace, 10)
    assert page.focus_note == window.document.report().strokes.played[10].note_id
    QTest.keyClick(page, Qt.Key.Key_Right)
    trace.catch_up()
    assert trace.view.at == 11


def test_the_menu_hides_it_and_the_choice_is_remembered(window, settings):
    action = window.actions_by_name["trace"]
    assert action.isChecked()
    action.trigger()
    assert not window.trace.isVisible()
    assert not settings.trace
    action.trigger()
    assert window.trace.isVisible()
    assert settings.trace


def test_it_takes_the_dark_look(window):
    before = picture(window.trace)
    window.actions_by_name["look_dark"].trigger()
    assert picture(window.trace) != before
