"""The sheet dialog with mouse and keys, and its preview."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QSize, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QLineEdit, QListWidget, QPlainTextEdit, QSpinBox

from app.sheet import lay_out, paint_page
from app.sheet_dialog import SheetChoice, SheetDialog, Way
from app.sheet_form import KIND_WORDS, SIZE_WORDS
from core.lesson import Lesson
from core.sheet_plan import NoteSize, SheetKind, SheetPlan, TextBlock, begin
from core.tune_set import Entry, TuneSet
from tests.core.builders import bowed


@pytest.fixture
def three(four_bars: Lesson) -> Lesson:
    """Four bars in three bowings."""
    first = four_bars.bowings[0]
    return replace(four_bars, bowings=(first, replace(first, name="Second"), replace(first, name="Third")))


@pytest.fixture
def dialog(qtbot, three: Lesson) -> Iterator[SheetDialog]:
    dialog = SheetDialog(three, SheetPlan(bowings=("Second",)), Way.PRINT)
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.waitUntil(lambda: not dialog.work.runs)
    yield dialog
    dialog.work.stop()


def choose(dialog: SheetDialog, box: QComboBox, words: str) -> None:
    """Walk down a list from its top to an entry that begins so."""
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Home)
    while not box.currentText().startswith(words):
        before = box.currentIndex()
        QTest.keyClick(box, Qt.Key.Key_Down)
        assert box.currentIndex() != before, f"no {words}"


def settled(qtbot, dialog: SheetDialog) -> None:
    qtbot.waitUntil(lambda: not dialog.work.runs, timeout=20_000)


def test_the_plan_is_shown_as_it_was_kept(qtbot, three: Lesson):
    plan = replace(
        begin(SheetKind.EXERCISE), bowings=("Third",), before=TextBlock("Listen", "One\n\ntwo"), footer="Tuesday",
        drill="pairs", from_bar=3, copies=2, landscape=True, paper="Letter", key=False, strip=True, legend=False,
    )  # fmt: skip
    dialog = SheetDialog(three, plan, Way.KEEP)
    qtbot.addWidget(dialog)
    assert dialog.choice == SheetChoice(plan, Way.KEEP)
    dialog.work.stop()


@pytest.mark.parametrize("kind", SheetKind)
def test_every_kind_is_shown_as_it_begins(qtbot, three: Lesson, kind: SheetKind):
    dialog = SheetDialog(three, begin(kind), Way.KEEP)
    qtbot.addWidget(dialog)
    assert dialog.choice.plan == begin(kind)
    dialog.work.stop()


def test_all_bowings_ticked_are_all_whatever_comes_to_them(qtbot, dialog: SheetDialog):
    for row in (0, 2):
        dialog.form.bowings.item(row).setCheckState(Qt.CheckState.Checked)
    assert dialog.choice.plan.bowings == ()
    dialog.form.bowings.item(1).setCheckState(Qt.CheckState.Unchecked)
    assert dialog.choice.plan.bowings == ("As written", "Third")


def test_a_sheet_needs_a_bowing(qtbot, dialog: SheetDialog):
    dialog.form.bowings.setFocus()
    dialog.form.bowings.setCurrentRow(1)
    QTest.keyClick(dialog.form.bowings, Qt.Key.Key_Space)
    assert not any(button.isEnabled() for button in dialog.way_buttons.values())
    assert dialog.state.text() == "Tick at least one bowing."
    QTest.keyClick(dialog.form.bowings, Qt.Key.Key_Space)
    settled(qtbot, dialog)
    assert dialog.state.text() == "1 page."
    QTest.mouseClick(dialog.way_buttons[Way.EXPORT], Qt.MouseButton.LeftButton)
    assert dialog.choice.way is Way.EXPORT
    assert dialog.result() == dialog.DialogCode.Accepted


def test_return_takes_the_way_that_was_asked_for(dialog: SheetDialog):
    QTest.keyClick(dialog.form.kind, Qt.Key.Key_Return)
    assert dialog.result() == dialog.DialogCode.Accepted
    assert dialog.choice.way is Way.PRINT


def test_another_kind_takes_what_it_begins_with_and_keeps_what_was_chosen(qtbot, dialog: SheetDialog):
    dialog.form.footer.setText("Tuesday")
    choose(dialog, dialog.form.kind, KIND_WORDS[SheetKind.TEACHER][0])
    assert dialog.choice.plan == replace(begin(SheetKind.TEACHER), footer="Tuesday")
    choose(dialog, dialog.form.kind, KIND_WORDS[SheetKind.CLASS][0])
    assert dialog.choice.plan == replace(begin(SheetKind.CLASS), footer="Tuesday", bowings=("Second",))


def test_the_fields_of_an_exercise_are_there_for_an_exercise_only(qtbot, dialog: SheetDialog):
    assert not dialog.form.drill.isVisible()
    choose(dialog, dialog.form.kind, "Exercise")
    assert dialog.form.drill.isVisible()
    assert not dialog.form.findings.isEnabled()
    settled(qtbot, dialog)
    assert dialog.state.text() == "2 pages."


def test_typed_words_reach_the_pages(qtbot, dialog: SheetDialog):
    dialog.form.tabs.setCurrentIndex(1)
    QTest.keyClicks(dialog.form.after.heading, "Homework")
    QTest.keyClicks(dialog.form.after.text, "Bars 1 and 2")
    settled(qtbot, dialog)
    assert dialog.choice.plan.after == TextBlock("Homework", "Bars 1 and 2")
    texts = [text.text for text in dialog.preview.sheet.pages[0].texts]
    assert {"Homework", "Bars 1 and 2"} <= set(texts)


def test_a_drill_without_a_place_in_the_tune_is_said_and_cannot_be_printed(qtbot):
    tune, bowing = bowed("|:G4 A4|B4 c4:|")
    dialog = SheetDialog(Lesson(tune, (bowing,)), replace(begin(SheetKind.EXERCISE), drill="pairs"), Way.PRINT)
    qtbot.addWidget(dialog)
    settled(qtbot, dialog)
    assert "too few" in dialog.state.text()
    assert dialog.preview.sheet is None
    assert not dialog.way_buttons[Way.PRINT].isEnabled()
    choose(dialog, dialog.form.drill, "None")
    settled(qtbot, dialog)
    assert dialog.way_buttons[Way.PRINT].isEnabled()
    assert dialog.preview.sheet is not None


def test_fewer_copies_than_asked_for_are_told(qtbot):
    tune, bowing = bowed("|".join(["G/4A/4B/4c/4d/4e/4f/4g/4" * 4] * 4).replace("/4", "/") + "|")
    dialog = SheetDialog(Lesson(tune, (bowing,)), SheetPlan(copies=4, size=NoteSize.LARGE), Way.PRINT)
    qtbot.addWidget(dialog)
    settled(qtbot, dialog)
    assert dialog.preview.sheet.copies < 4
    assert "4 copies do not fit on one" in dialog.state.text()


def test_the_set_in_hand_is_printed_where_there_is_one(qtbot, three: Lesson, with_pickup: Lesson):
    tune_set = TuneSet(tuple(Entry(lesson.tune, lesson.bowings[0]) for lesson in (three, with_pickup)))
    dialog = SheetDialog(three, begin(SheetKind.SET), Way.PRINT, tune_set)
    qtbot.addWidget(dialog)
    settled(qtbot, dialog)
    assert dialog.preview.sheet.title == "Gate of the Weir / Over the Sill"
    assert "The 2 tunes of the set in hand." in dialog.form.about.text()


def test_every_field_has_a_name(dialog: SheetDialog):
    """By its own accessible name, its text, or the label that it is the buddy of."""
    from PySide6.QtWidgets import QLabel

    labelled = {label.buddy() for label in dialog.findChildren(QLabel) if label.buddy() is not None}
    kinds = (QComboBox, QLineEdit, QListWidget, QPlainTextEdit, QSpinBox, QAbstractButton)
    for kind in kinds:
        for field in dialog.form.findChildren(kind):
            inside = isinstance(field.parentWidget(), (QSpinBox, QComboBox)) or not field.objectName().isidentifier()
            named = field.accessibleName() or field in labelled or (isinstance(field, QAbstractButton) and field.text())
            assert named or inside, field


def test_letters_to_reach_fields_by_are_used_once_on_each_page(dialog: SheetDialog):
    from PySide6.QtWidgets import QLabel

    buttons = [button.text() for button in dialog.way_buttons.values()]
    for page in range(dialog.form.tabs.count()):
        dialog.form.tabs.setCurrentIndex(page)
        texts = buttons + [dialog.form.tabs.tabText(other) for other in range(dialog.form.tabs.count())]
        texts += [label.text() for label in dialog.form.findChildren(QLabel) if label.isVisible()]
        texts += [box.text() for box in dialog.form.findChildren(QAbstractButton) if box.isVisible()]
        letters = [text[text.index("&") + 1].lower() for text in texts if "&" in text]
        assert len(letters) == len(set(letters)), sorted(letters)


class TestPreview:
    def test_it_shows_what_is_printed(self, qtbot, dialog: SheetDialog, three: Lesson):
        sheet = lay_out([three], dialog.choice.plan)
        preview = dialog.preview
        place = preview.page_rect(0)
        image = QImage(place.size(), QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        with QPainter(image) as painter:
            painter.scale(place.width() / sheet.paper.width_mm, place.width() / sheet.paper.width_mm)
            paint_page(painter, sheet.pages[0])
        shown = preview.viewport().grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
        part = place.intersected(preview.viewport().rect()).adjusted(1, 1, -1, -1)
        assert shown.copy(part) == image.copy(part.translated(-place.topLeft()))

    def test_a_page_is_painted_when_it_comes_into_sight(self, qtbot, dialog: SheetDialog, three: Lesson):
        many = tuple(replace(three.bowings[0], name=f"Way {number}") for number in range(40))
        preview = dialog.preview
        preview.show_sheet(lay_out([replace(three, bowings=many)]))
        QApplication.processEvents()
        assert len(preview.sheet.pages) > 3
        assert set(preview.painted) <= {0, 1}
        preview.setFocus()
        QTest.keyClick(preview, Qt.Key.Key_End)
        QApplication.processEvents()
        assert len(preview.sheet.pages) - 1 in preview.painted
        assert 2 not in preview.painted or len(preview.sheet.pages) < 5

    def test_keys_zoom_and_nothing_is_smaller_than_fits(self, dialog: SheetDialog):
        preview = dialog.preview
        fits = preview.page_rect(0).width()
        for key, width in (("+", fits * 1.25), ("0", fits), ("-", fits)):
            QTest.keyClicks(preview, key)
            assert preview.page_rect(0).width() == pytest.approx(width, abs=2)

    def test_pages_fit_whatever_the_width(self, dialog: SheetDialog):
        preview = dialog.preview
        for width in (900, 1300):
            dialog.resize(QSize(width, 600))
            QApplication.processEvents()
            place = preview.page_rect(0)
            assert preview.viewport().rect().contains(QPoint(place.right(), place.top() + 1))


def test_asking_again_drops_what_was_asked_before(qtbot, dialog: SheetDialog):
    choose(dialog, dialog.form.size_of_notes, SIZE_WORDS[NoteSize.LARGE])
    choose(dialog, dialog.form.size_of_notes, SIZE_WORDS[NoteSize.SMALL])
    shown = []
    dialog.work.done.connect(shown.append)
    settled(qtbot, dialog)
    assert len(shown) == 1
    assert shown[0].pages[0].lines[0].staff_mm < 6


def test_the_window_goes_on_while_a_long_lesson_is_laid_out(qtbot, three: Lesson):
    """Between two turns of the event loop lies a line or two, never the whole."""
    tune, bowing = bowed("GABc dedB|" * 64)
    lesson = Lesson(tune, tuple(replace(bowing, name=f"Way {number}") for number in range(6)))
    dialog = SheetDialog(lesson, begin(SheetKind.TEACHER), Way.PRINT)
    qtbot.addWidget(dialog)
    turns = 0
    while dialog.work.runs and turns < 5000:
        QTest.qWait(1)
        turns += 1
    assert turns > 20
    assert len(dialog.preview.sheet.pages) > 5
