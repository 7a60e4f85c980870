"""The bow check beside the page: live, and each row leads to its notes."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from app.accent_chooser import own_places, place_labels
from app.document import Document
from app.findings_model import FindingsModel, number_ranges, where_text
from app.severity_signs import WORDS
from app.side_list import NOTHING_FOUND, NOTHING_OPEN, SideList
from app.theme import scaled_font
from app.totals_view import TotalsView, figures, totals_sentence
from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bow, fix_bow, toggle_join_to_next
from core.check import Finding, Severity, Totals
from core.reach import Move, Reach, ReachSettings
from core.reading.abc import read_abc
from core.tempos import Pace
from core.tune import Meter, Tempo

SEVENS = "X:1\nM:4/4\nL:1/8\nK:D\nd2 fd Adfd|d2 fd Adfd|d2 fd Adfd|d2 f2 Adfd|d2 fd Adfd|]\n"
MOVES = (Move(0, 0, True, 2.5, True), Move(1, 0, False, 1.5, False))
REACH = Reach(ReachSettings(), Pace(Tempo(Fraction(2), Fraction(112))), MOVES)
EQUAL_NOTES = "X:1\nM:4/4\nL:1/8\nK:D\n(dd) fd Adfd|]\n"


@pytest.fixture
def side(qtbot, document: Document) -> SideList:
    side = SideList(document)
    qtbot.addWidget(side)
    side.resize(340, 700)
    side.show()
    return side


def texts(side: SideList) -> list[str]:
    return [finding.text for finding in side.model.findings]


def open_text(document: Document, text: str) -> None:
    document.open(read_abc(text).lessons[0])


def test_totals_follow_every_edit(side, document):
    before = side.totals.totals
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b0n1"))
    assert side.totals.totals.strokes == before.strokes - 2
    assert side.totals.totals.slurs == before.slurs + 1
    document.stack.undo()
    assert side.totals.totals == before


def test_totals_are_said_in_words_too(side, document):
    assert side.totals.accessibleDescription() == totals_sentence(side.totals.totals, document.report().reach)


def test_the_totals_sentence_holds_every_total():
    totals = Totals(61, 12, 1, 28, 4, 3, 2, 0.955, comes_round=False)
    assert totals_sentence(totals, REACH) == (
        "61 strokes, 12 slurs, 1 retake; accents: 28 driven, 4 on an up-bow, 3 buried, 2 unstruck; 96% consistent; "
        "does not come round; longest stroke 2.5 seconds, 1.2 m of bow at 30 cm/s."
    )


def test_bow_used_is_told_with_the_speed_that_it_rests_on():
    totals = Totals(61, 12, 1, 28, 4, 3, 2, 0.955, comes_round=True)
    assert figures(totals, REACH)[0][1] == ("2.5 s", "longest")
    assert figures(totals, REACH)[2][2] == ("1.2 m", "at 30 cm/s")
    long = replace(REACH, settings=ReachSettings(even_cm_s=45), moves=MOVES * 12)
    assert figures(totals, long)[2][2] == ("22 m", "at 45 cm/s")  # 48 s at 45 cm/s


def test_findings_follow_every_edit(side, document):
    open_text(document, SEVENS)
    before = texts(side)
    assert before == [finding.text for finding in document.report().findings]
    document.edit("Fix", lambda t, b: fix_bow(t, b, "b4n1", Bow.DOWN))
    assert texts(side) == [finding.text for finding in document.report().findings]
    assert texts(side) != before


def test_choosing_a_finding_tells_which(qtbot, side, document):
    open_text(document, SEVENS)
    with qtbot.waitSignal(side.finding_chosen) as told:
        rect = side.list.visualRect(side.model.index(0))
        QTest.mouseClick(side.list.viewport(), Qt.MouseButton.LeftButton, pos=rect.center())
    assert told.args[0] == side.model.findings[0]


def test_findings_can_be_walked_by_key(side, document):
    open_text(document, SEVENS)
    side.step(1)
    assert side.chosen == side.model.findings[0]
    side.list.setFocus()
    QTest.keyClick(side.list, Qt.Key.Key_Down)
    assert side.chosen == side.model.findings[1]
    side.choose(0)
    side.step(-1)
    assert side.chosen == side.model.findings[-1]


def test_a_note_highlights_the_findings_about_it(side, document):
    open_text(document, SEVENS)
    about = side.model.findings[0].notes[0]
    rows = side.model.show_note(about)
    assert 0 in rows
    assert all(about in side.model.findings[row].notes for row in rows)
    assert side.model.show_note("no such note") == []


def test_only_findings_that_are_about_a_note_now_or_no_more_are_painted_anew(side, document):
    open_text(document, SEVENS)
    told: list[tuple[int, int]] = []
    side.model.dataChanged.connect(lambda first, last, _: told.append((first.row(), last.row())))
    rows = side.model.show_note(side.model.findings[0].notes[0])
    assert sorted(told) == [(row, row) for row in rows]
    side.model.show_note(side.model.findings[0].notes[0])
    assert len(told) == len(rows)
    side.model.show_note("no such note")
    assert sorted(told) == sorted(2 * [(row, row) for row in rows])


def test_showing_a_note_chooses_no_finding(side, document):
    open_text(document, SEVENS)
    side.show_note(side.model.findings[0].notes[0])
    assert side.chosen is None


def test_a_remedy_is_one_undo_step(qtbot, side, document):
    open_text(document, EQUAL_NOTES)
    row = next(row for row, finding in enumerate(side.model.findings) if finding.rule == "equal-notes-slurred")
    finding = side.model.findings[row]
    side.choose(row)
    button = side.remedies.buttons[0]
    assert button.isVisible()
    assert button.text().startswith(finding.remedy.label)
    before = document.state
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert document.stack.count() == 1
    assert document.stack.undoText() == finding.remedy.label
    assert finding not in side.model.findings
    document.stack.undo()
    assert document.state == before
    assert finding in side.model.findings


def test_a_finding_without_remedy_offers_none(side, document):
    open_text(document, "X:1\nM:4/4\nL:1/8\nK:D\nd2 fd Adfd|d4 z4|d2 fd A4|]\n")
    side.choose(next(row for row, finding in enumerate(side.model.findings) if finding.rule == "accent-unstruck"))
    assert not side.remedies.isVisible()


def test_accents_on_up_bows_are_mended_by_a_slur_before_them(qtbot, side, document):
    open_text(document, SEVENS)
    side.choose(next(row for row, finding in enumerate(side.model.findings) if finding.rule == "accent-up"))
    qtbot.waitUntil(lambda: not side.waits)
    before = document.report().totals.up
    assert side.remedies.remedies
    side.apply_remedy()
    assert document.report().totals.up < before


def test_an_edit_chooses_no_other_finding(side, document):
    open_text(document, "X:1\nM:4/4\nL:1/8\nK:D\n|:d4f4|a4f2d2:|:d2 fd Adfd|d4 f4:|\n")
    turned = [row for row, finding in enumerate(side.model.findings) if finding.rule == "part-on-other-bow"]
    assert len(turned) == 2
    side.choose(turned[1])
    chosen, told = side.chosen, []
    side.finding_chosen.connect(told.append)
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b1n1"))
    assert side.chosen == chosen  # the rows before it are others now
    assert told == []
    document.stack.undo()
    side.choose(turned[0])
    document.edit("Slur", lambda t, b: toggle_join_to_next(t, b, "b1n1"))
    assert side.chosen is None  # it is told no longer, and no other takes its place
    assert told[-1] is None


def test_the_chosen_finding_says_why(side, document):
    open_text(document, SEVENS)
    side.choose(0)
    why = next(label for label in side.findChildren(QLabel) if label.accessibleName() == "Why this is found")
    assert why.isVisible()
    assert why.text()
    assert side.model.data(side.model.index(0), Qt.ItemDataRole.ToolTipRole) == why.text()


def test_nothing_found_is_said(side, document):
    open_text(document, "X:1\nM:4/4\nL:1/4\nK:D\nd f a f|d f a f|]\n")  # D U D U twice: nothing to say
    assert side.model.rowCount() == 0
    assert not side.list.isVisible()
    assert NOTHING_FOUND in [label.text() for label in side.findChildren(QLabel) if label.isVisible()]


def test_without_a_lesson_the_list_says_what_comes_here(qtbot):
    side = SideList(Document())
    qtbot.addWidget(side)
    side.show()
    assert NOTHING_OPEN in [label.text() for label in side.findChildren(QLabel) if label.isVisible()]


def test_severity_is_a_word_not_only_a_colour(side, document):
    open_text(document, SEVENS)
    for row, finding in enumerate(side.model.findings):
        assert side.model.data(side.model.index(row)).startswith(WORDS[finding.severity])


def test_each_severity_has_a_shape_of_its_own(qapp):
    from PySide6.QtCore import QRectF
    from PySide6.QtGui import QColor, QImage, QPainter

    from app.severity_signs import paint_severity

    shapes = []
    for severity in Severity:
        image = QImage(24, 24, QImage.Format.Format_ARGB32)
        image.fill(Qt.GlobalColor.white)
        painter = QPainter(image)
        paint_severity(painter, severity, QRectF(2, 2, 20, 20), QColor("black"))
        painter.end()
        shapes.append(image)
    assert shapes[0] != shapes[1] != shapes[2] != shapes[0]


def test_a_selected_row_that_stays_keeps_its_selection():
    model = FindingsModel()
    findings = [Finding("retake", Severity.NOTE, (bar,), None, (f"b{bar}n1",), f"Bar {bar}.") for bar in range(5)]
    model.show_findings(findings)
    removed, inserted = [], []
    model.rowsRemoved.connect(lambda _, first, last: removed.append((first, last)))
    model.rowsInserted.connect(lambda _, first, last: inserted.append((first, last)))
    model.show_findings([*findings[:2], findings[4]])
    assert model.findings == (*findings[:2], findings[4])
    assert (removed, inserted) == ([(2, 3)], [])
    model.show_findings(findings)
    assert inserted == [(2, 3)]


@pytest.mark.parametrize(
    ("numbers", "text"),
    [([1], "1"), ([1, 2, 3, 7], "1–3, 7"), ([4, 6], "4, 6"), ([0, 1], "0–1"), ([5, 6, 2], "5–6, 2")],
)
def test_bars_are_told_as_ranges(numbers, text):
    assert number_ranges(numbers) == text


def test_where_a_finding_is_names_bars_and_pass():
    assert where_text(Finding("retake", Severity.NOTE, (3, 4), 2, (), "")) == "bars 3–4, pass 2"
    assert where_text(Finding("retake", Severity.NOTE, (0, 1), None, (), "")) == "pick-up, bar 1"
    assert where_text(Finding("retake", Severity.NOTE, (), None, (), "")) == ""


# ------------------------------------------------------------------------------------------------- accents


def test_choosing_an_accent_plan_is_one_undo_step(side, document):
    kinds = side.accents.kinds
    kinds.setFocus()
    kinds.setCurrentIndex(kinds.findData(PlanKind.BACKBEAT))
    kinds.activated.emit(kinds.currentIndex())
    assert document.state.bowing.accents == AccentPlan(PlanKind.BACKBEAT)
    assert document.stack.undoText() == "Accents: on the backbeat"
    document.stack.undo()
    assert document.state.bowing.accents == AccentPlan(PlanKind.ON_BEAT)
    assert kinds.currentData() is PlanKind.ON_BEAT


def test_an_accent_plan_is_chosen_by_key(side, document):
    side.accents.kinds.setFocus()
    QTest.keyClick(side.accents.kinds, Qt.Key.Key_Down)
    assert document.state.bowing.accents.kind is PlanKind.BACKBEAT


def test_places_of_ones_own_begin_where_the_plan_had_its_accents(side, document):
    side.accents.plan_chosen.emit(own_places(AccentPlan(PlanKind.BACKBEAT), Meter()))
    assert document.state.bowing.accents == AccentPlan(PlanKind.PLACES, (Fraction(1), Fraction(3)))
    ticked = [place for place, button in side.accents.place_buttons.items() if button.isChecked()]
    assert ticked == [Fraction(1), Fraction(3)]


def test_every_place_shows_how_it_is_counted(side, document):
    side.accents.plan_chosen.emit(own_places(AccentPlan(), Meter()))
    shown = [button.text().replace("&&", "&") for button in side.accents.place_buttons.values()]
    assert shown == ["1", "&", "2", "&", "3", "&", "4", "&"]
    assert "&" not in [button.text() for button in side.accents.place_buttons.values()]  # Qt would hide it


def test_a_click_on_a_place_accents_it(side, document):
    side.accents.plan_chosen.emit(AccentPlan(PlanKind.PLACES, (Fraction(0),)))
    QTest.mouseClick(side.accents.place_buttons[Fraction(3, 2)], Qt.MouseButton.LeftButton)
    assert document.state.bowing.accents.places == (Fraction(0), Fraction(3, 2))
    document.stack.undo()
    assert not side.accents.place_buttons[Fraction(3, 2)].isChecked()


def test_taking_the_last_place_away_leaves_no_accents(side, document):
    side.accents.plan_chosen.emit(AccentPlan(PlanKind.PLACES, (Fraction(0),)))
    QTest.mouseClick(side.accents.place_buttons[Fraction(0)], Qt.MouseButton.LeftButton)
    assert document.state.bowing.accents.kind is PlanKind.NONE


@pytest.mark.parametrize(
    ("meter", "labels"),
    [
        (Meter((4,), 4), ["1", "&", "2", "&", "3", "&", "4", "&"]),
        (Meter((2,), 2), ["1", "e", "&", "a", "2", "e", "&", "a"]),
        (Meter((6,), 8), ["1", "2", "3", "4", "5", "6"]),
        (Meter((3,), 4), ["1", "&", "2", "&", "3", "&"]),
    ],
)
def test_the_places_of_a_bar_are_counted_as_players_count(meter, labels):
    assert list(place_labels(meter).values()) == labels


def test_a_place_finer_than_an_eighth_keeps_its_button():
    labels = place_labels(Meter((2,), 4), (Fraction(1, 4),))
    assert list(labels) == [Fraction(0), Fraction(1, 4), Fraction(1, 2), Fraction(1), Fraction(3, 2)]


@pytest.mark.parametrize("times", [1, 2, 3])
def test_no_words_of_the_totals_run_into_each_other_at_larger_text(qtbot, document, times):
    totals = TotalsView()
    qtbot.addWidget(totals)
    totals.setFont(scaled_font(totals.font(), times))
    totals.resize(320, 400)
    totals.show_report(document.report())
    room = QFontMetricsF(totals.font())
    for row in totals.rows:
        for _, word in row[:-1]:
            assert 0.9 * room.horizontalAdvance(word) <= totals.width() / len(row)
    shown = [item for row in totals.rows for item in row]
    assert shown == [item for row in figures(totals.totals, document.report().reach) for item in row]
    assert totals.height() >= len(totals.rows) * room.height() * 2
