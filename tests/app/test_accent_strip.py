"""The accent strip: what it shows, and every gesture on it, by real mouse and key events."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QContextMenuEvent, QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from app.accent_painting import SIZE, paint_met
from app.accent_strip import accented, onset, place_at, place_text, place_x
from app.theme import DARK, LIGHT
from core.accent_plan import AccentPlan, PlanKind
from core.accents import Met, weigh
from core.bowing import Articulation, Signs, set_signs
from core.engraving.engraver import Engraver
from core.engraving.lines import break_lines
from core.reading.abc import read_abc
from core.strokes import work_out

ALL_FOUR = "X:1\nM:4/4\nL:1/8\nK:D\nd2fd A4|d4 (Ad f2)|(dfAd fd A2)|d6 z2|]\n"
BACKBEAT = AccentPlan(PlanKind.BACKBEAT)
TWO_PARTS = "X:1\nM:4/4\nL:1/8\nK:D\n" + "|:" + "d2fd Adfd|" * 7 + "d4A4:|\n|:" + "a2fa defd|" * 7 + "d4A4:|\n"


def places(text: str):
    lesson = read_abc(text).lessons[0]
    tune, bowing = lesson.tune, lesson.bowings[0]
    return accented(weigh(tune, bowing, work_out(tune, bowing)))


def click_strip(page, place, keys=Qt.KeyboardModifier.NoModifier) -> None:
    QTest.mouseClick(page, Qt.MouseButton.LeftButton, keys, page.strip_point(place))


def plans(document) -> list[str]:
    state = document.state
    return [str(plan) for plan in state.bowing.plans(len(state.tune.bars))]


# ------------------------------------------------------------------------------------------------- what it shows


def test_each_accented_place_tells_how_it_is_met():
    told = {place: found.met for place, found in places(ALL_FOUR).items()}
    assert told == {
        (0, 0): (Met.DRIVEN,), (0, 2): (Met.UP,), (1, 0): (Met.DRIVEN,), (1, 2): (Met.UP,),
        (2, 0): (Met.DRIVEN,), (2, 2): (Met.BURIED,), (3, 0): (Met.UP,), (3, 2): (Met.UNSTRUCK,),
    }  # fmt: skip


def test_words_tell_why_a_place_is_not_struck():
    assert places(ALL_FOUR)[3, 2].says == "not struck (a note that sounds on)"


def test_one_shape_is_shown_where_the_passes_agree():
    same = places("X:1\nM:4/4\nL:1/8\nK:D\n|:d2fd A4:|\n")[0, 0]
    assert (same.met, same.shown, same.says) == ((Met.DRIVEN, Met.DRIVEN), (Met.DRIVEN,), "driven by a down-bow")


def test_two_shapes_are_shown_where_passes_differ():
    differing = places("X:1\nM:4/4\nL:1/8\nK:D\n|:d4 A2f2:|\n")[0, 0]
    assert (differing.met, differing.shown) == ((Met.DRIVEN, Met.UP), (Met.DRIVEN, Met.UP))
    assert differing.says == "driven by a down-bow on pass 1, on an up-bow on pass 2"


def grey(met: Met, theme) -> list[int]:
    image = QImage(40, 40, QImage.Format.Format_ARGB32)
    image.fill(QColor(theme.paper))
    with QPainter(image) as painter:
        painter.scale(30 / SIZE, 30 / SIZE)
        paint_met(painter, 20 * SIZE / 30, 20 * SIZE / 30, (met,), theme)
    image = image.convertToFormat(QImage.Format.Format_Grayscale8)
    paper = image.pixelColor(0, 0).red()
    return [abs(image.pixelColor(x, y).red() - paper) > 60 for y in range(40) for x in range(40)]


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_shapes_differ_in_grey_by_form(theme):
    for one, other in combinations(Met, 2):
        first, second = grey(one, theme), grey(other, theme)
        inked = min(sum(first), sum(second))
        assert inked > 60  # plainly seen on the paper
        assert sum(a != b for a, b in zip(first, second, strict=True)) > inked / 2


def test_a_place_inside_a_note_stands_between_its_neighbours():
    lesson = read_abc("X:1\nM:4/4\nL:1/8\nK:D\nd6 A2|]\n").lessons[0]
    tune, bowing = lesson.tune, lesson.bowings[0]
    (line,) = break_lines(tune)
    picture = Engraver().engrave(tune, bowing, line, {})
    first, last = (picture.heads[note].x for note in ("b0n1", "b0n2"))
    assert place_x(tune, picture, (0, Fraction(0))) == first
    assert place_x(tune, picture, (0, Fraction(2))) == pytest.approx(first + (last - first) * 2 / 3)
    assert last < place_x(tune, picture, (0, Fraction(7, 2))) < picture.measures[0].right
    assert place_x(tune, picture, (7, Fraction(0))) is None


def test_a_place_answers_near_its_note_and_not_far_from_all():
    lesson = read_abc("X:1\nM:4/4\nL:1/8\nK:D\nd4 A4|]\n").lessons[0]
    (line,) = break_lines(lesson.tune)
    picture = Engraver().engrave(lesson.tune, lesson.bowings[0], line, {})
    x = picture.heads["b0n2"].x
    assert place_at(lesson.tune, picture, line, {}, x + 90) == ((0, 2), "b0n2")
    assert place_at(lesson.tune, picture, line, {}, x + 700) is None


def test_a_pick_up_counts_from_the_full_bar():
    tune = read_abc("X:1\nM:4/4\nL:1/8\nK:D\nA2|d4A4|]\n").lessons[0].tune
    assert onset(tune, "b0n1") == (0, 3)
    assert place_text(tune, (0, Fraction(3))) == "pick-up, beat 4"
    assert place_text(tune, (1, Fraction(2))) == "bar 1, beat 3"


# ------------------------------------------------------------------------------------------------- mouse


def test_a_click_under_a_note_accents_it_in_its_bar_alone(page, document):
    click_strip(page, (1, Fraction(1)))
    assert plans(document) == ["on-beat", "0,1,2", "on-beat", "on-beat"]
    assert (1, 1) in page.accents
    assert (0, 1) not in page.accents
    document.stack.undo()
    assert plans(document) == ["on-beat"] * 4
    assert not document.stack.canUndo()


def test_a_click_on_a_shape_takes_the_accent_away_and_a_second_brings_it_back(page, document):
    before = document.state.bowing
    click_strip(page, (1, Fraction(2)))
    assert plans(document)[1] == "0"
    click_strip(page, (1, Fraction(2)))
    assert document.state.bowing == before


def test_a_click_on_the_strip_leaves_slurs_and_marks_alone(page, document):
    click_strip(page, (0, Fraction(0)))
    assert not document.state.bowing.joins
    assert not document.state.bowing.marks
    assert page.focus_note == "b0n1"


def test_the_pointer_says_how_an_accent_is_met_and_what_a_click_does(page, hand):
    heard = []
    page.hinted.connect(heard.append)
    QTest.mouseMove(page, hand.beside_the_music())
    QTest.mouseMove(page, page.strip_point((1, Fraction(2))))
    assert heard[-1].startswith(
        f"Bar 2, beat 3: the accent is {page.accents[1, 2].says}. Click to take the accent from bar 2, beat 3."
    )
    assert page.preview.place == (1, 2)
    QTest.mouseMove(page, page.strip_point((1, Fraction(1))))
    assert heard[-1].startswith("Click to accent bar 2, beat 2.")


def test_the_tool_tip_says_the_word(page, hand):
    QTest.mouseMove(page, hand.beside_the_music())
    QTest.mouseMove(page, page.strip_point((1, Fraction(2))))
    assert page.toolTip() == f"Bar 2, beat 3: the accent is {page.accents[1, 2].says}."
    QTest.mouseMove(page, hand.beside_the_music())
    assert page.toolTip() == ""


def test_a_written_accent_is_shown_and_not_taken_away_by_a_click(page, document):
    signs = Signs(articulations=(Articulation.ACCENT,))
    document.edit("Accent", lambda tune, bowing: set_signs(bowing, "b1n2", signs))
    assert page.accents[1, 1].written
    heard = []
    page.hinted.connect(heard.append)
    before = document.state
    click_strip(page, (1, Fraction(1)))
    assert document.state == before
    assert heard[-1] == "An accent sign on the note accents this place, whatever the plan."


def strip_menu(window, place) -> QMenu:
    point = window.page.strip_point(place)
    window.page.setFocus()
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, point, window.page.mapToGlobal(point))
    QApplication.sendEvent(window.page, event)
    return next(menu for menu in window.findChildren(QMenu) if menu.isVisible() and menu.parent() is window)


@pytest.mark.parametrize(
    ("words", "bars"),
    [("In this &bar", range(5, 6)), ("In this &phrase", range(4, 8)), ("In this pa&rt", range(8)),
     ("In the whole &tune", range(16))],
)  # fmt: skip
def test_the_menu_of_the_strip_sets_a_plan_near_and_far(window, words, bars):
    window.document.open(read_abc(TWO_PARTS).lessons[0])
    menu = strip_menu(window, (5, Fraction(0)))
    inner = next(action.menu() for action in menu.actions() if action.text() == words)
    next(action for action in inner.actions() if action.text() == "On the b&ackbeat").trigger()
    menu.close()
    assert [bar for bar, plan in enumerate(plans(window.document)) if plan == "backbeat"] == list(bars)
    window.document.stack.undo()
    assert plans(window.document) == ["on-beat"] * 16


def test_a_plan_drawn_in_one_bar_is_taken_for_its_phrase(window):
    window.document.open(read_abc(TWO_PARTS).lessons[0])
    click_strip(window.page, (1, Fraction(3)))
    window.actions_by_name["plan_phrase_drawn"].trigger()
    assert plans(window.document) == ["0,2,3"] * 4 + ["on-beat"] * 12


def test_an_undo_far_away_brings_its_bar_into_sight(window, qtbot):
    window.document.open(read_abc(TWO_PARTS.replace("|:a2", "|\n|:a2")).lessons[0])
    window.area.set_zoom(3.0)
    page = window.page
    page.focus_on("b15n1")
    page.toggle_accent()
    page.focus_on("b0n1")
    assert not page.visibleRegion().contains(page.strip_point((15, Fraction(2))))
    window.document.stack.undo()
    assert page.visibleRegion().intersects(page.note_rect("b15n1"))


# ------------------------------------------------------------------------------------------------- keys


def test_a_key_accents_the_focus_note_and_back(window):
    page, document = window.page, window.document
    page.setFocus()
    page.focus_on("b1n2")
    QTest.keyClick(page, Qt.Key.Key_A)
    assert plans(document) == ["on-beat", "0,1,2", "on-beat", "on-beat"]
    assert page.accessibleDescription().endswith("; accent driven by a down-bow")
    QTest.keyClick(page, Qt.Key.Key_A)
    assert plans(document) == ["on-beat"] * 4
    assert "accent" not in page.accessibleDescription()


# ------------------------------------------------------------------------------------------------- hiding, the chooser


def test_the_strip_is_hidden_from_the_view_menu_and_that_is_remembered(window, settings):
    shown = window.page.sizeHint().height()
    window.actions_by_name["strip"].trigger()
    assert window.page.sizeHint().height() < shown
    assert settings.strip is False
    point = window.page.head_point("b1n1") + QPoint(0, 60)
    QTest.mouseMove(window.page, point)
    assert window.page.preview.place is None
    window.actions_by_name["strip"].trigger()
    assert window.page.sizeHint().height() == shown
    assert settings.strip is True


def test_the_chooser_sets_the_whole_tune_and_says_so_before(window):
    chooser, document = window.side_list.accents, window.document
    assert not chooser.changes.isVisible()
    click_strip(window.page, (1, Fraction(1)))
    assert chooser.changes.isVisible()
    assert chooser.changes.text() == "Bar 2 has accents of its own. A choice here is for the whole tune."
    chooser.kinds.activated.emit(chooser.kinds.findData(PlanKind.ON_BEAT))
    assert plans(document) == ["on-beat"] * 4
    assert not chooser.changes.isVisible()
    document.stack.undo()
    assert plans(document)[1] == "0,1,2"
