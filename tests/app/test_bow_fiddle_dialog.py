"""What a lesson is checked by is set in a dialog, and nonsense is refused where it is typed."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialogButtonBox, QLabel, QWidget

from app.bow_fiddle_dialog import BowFiddleDialog
from app.dialogs import Dialogs
from app.theme import scaled_font
from core.bowing import toggle_join_to_next
from core.lesson import Lesson
from core.reach import ORDINARY, ReachSettings
from core.strings import STANDARD, TUNINGS, Tuning
from core.tune import Tempo

OWN = replace(ORDINARY, hair_cm=62.125, tempo=Tempo(Fraction(9, 4), Fraction(200, 3)))


@pytest.fixture
def dialog(qtbot, four_bars: Lesson) -> BowFiddleDialog:
    dialog = BowFiddleDialog(four_bars)
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog


def button(dialog: BowFiddleDialog, which: QDialogButtonBox.StandardButton) -> QWidget:
    return dialog.buttons.button(which)


def type_into(widget: QWidget, text: str) -> None:
    QTest.keyClick(widget, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClicks(widget, text)


def test_what_is_shown_unchanged_is_what_the_lesson_had_to_the_last_figure(qtbot, four_bars):
    for reach in (ORDINARY, OWN):
        for tuning in (*TUNINGS.values(), Tuning(("E3", "D4", "A4", "E5"))):
            dialog = BowFiddleDialog(replace(four_bars, reach=reach, tuning=tuning))
            qtbot.addWidget(dialog)
            assert dialog.choice == (reach, tuning)


def test_figures_are_typed(dialog):
    type_into(dialog.hair, "58.5")
    type_into(dialog.even, "25")
    QTest.mouseClick(dialog.sets_tempo, Qt.MouseButton.LeftButton, pos=dialog.sets_tempo.rect().center())
    dialog.sets_tempo.setChecked(True)
    type_into(dialog.per_minute, "84")
    QTest.keyClick(dialog.beat, Qt.Key.Key_Home)
    assert dialog.choice[0] == ReachSettings(58.5, 25, tempo=Tempo(Fraction(1, 2), Fraction(84)))


def test_a_tempo_begins_with_that_of_the_dance_and_is_left_to_it_unless_it_is_asked_for(dialog):
    assert not dialog.sets_tempo.isChecked()
    assert not dialog.per_minute.isEnabled()
    assert dialog.choice[0].tempo is None
    dialog.sets_tempo.setChecked(True)
    assert dialog.per_minute.isEnabled()
    assert dialog.choice[0].tempo == Tempo(Fraction(2), Fraction(112))
    labels = [label.text() for label in dialog.findChildren(QLabel)]
    assert "Otherwise half = 112, usual for this dance." in labels


def test_a_tuning_is_chosen_by_key_or_typed(dialog):
    dialog.tuning.setFocus()
    QTest.keyClick(dialog.tuning, Qt.Key.Key_Down)
    assert dialog.choice[1] == list(TUNINGS.values())[1]
    assert dialog.strings.text() == str(dialog.choice[1])
    assert not dialog.strings.isEnabled()
    QTest.keyClick(dialog.tuning, Qt.Key.Key_End)
    assert dialog.strings.isEnabled()
    type_into(dialog.strings, "E3 D4 A4 E5")
    assert dialog.choice[1] == Tuning(("E3", "D4", "A4", "E5"))


@pytest.mark.parametrize(
    ("box", "typed", "sentence"),
    [
        ("strings", "A E H", "“A E H” is no tuning: expected open strings from low to high, such as G3 D4 A4 E5."),
        ("strings", "E5 A4", "A tuning names two or more strings from low to high, not E5, A4."),
        ("slowest", "120", "The slowest bow speed must not be above the fastest."),
        ("even", "3", "The even bow speed must lie between the slowest and the fastest."),
    ],
)
def test_nonsense_is_refused_in_place_with_one_sentence(dialog, box, typed, sentence):
    dialog.tuning.setCurrentIndex(dialog.tuning.count() - 1)
    before = getattr(dialog, box).text()
    type_into(getattr(dialog, box), typed)
    ok = button(dialog, QDialogButtonBox.StandardButton.Ok)
    assert dialog.complaint.isVisible()
    assert dialog.complaint.text() == sentence
    assert not ok.isEnabled()
    type_into(getattr(dialog, box), before.split()[0] if box != "strings" else before)
    assert not dialog.complaint.isVisible()
    assert ok.isEnabled()


def test_usual_values_come_back(qtbot, four_bars):
    dialog = BowFiddleDialog(replace(four_bars, reach=OWN, tuning=TUNINGS["cross tuning"]))
    qtbot.addWidget(dialog)
    dialog.show()
    usual = button(dialog, QDialogButtonBox.StandardButton.RestoreDefaults)
    QTest.mouseClick(usual, Qt.MouseButton.LeftButton)
    assert dialog.choice == (ORDINARY, STANDARD)


@pytest.mark.parametrize("times", [1, 2])
def test_no_field_is_squeezed_at_larger_text(qtbot, qapp, four_bars, times):
    before = qapp.font()
    qapp.setFont(scaled_font(before, times))
    dialog = BowFiddleDialog(four_bars)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.slowest.setValue(120)
    QApplication.processEvents()
    for field in (dialog.hair, dialog.per_minute, dialog.tuning, dialog.strings):
        assert field.height() >= field.sizeHint().height()
    assert dialog.complaint.height() >= dialog.complaint.heightForWidth(dialog.complaint.width())
    qapp.setFont(before)


def test_every_field_has_a_name_for_assistive_technology(dialog):
    for field in (dialog.hair, dialog.even, dialog.slowest, dialog.fastest, dialog.beat, dialog.per_minute,
                  dialog.tuning, dialog.strings):  # fmt: skip
        buddies = [label for label in dialog.findChildren(QLabel) if label.buddy() is field]
        assert field.accessibleName() or buddies


# ------------------------------------------------------------------------------------------------- in the window


def test_the_menu_sets_them_as_one_undo_step_and_findings_follow(window, dialogs):
    for note_id in ("b0n1", "b0n2", "b0n3"):
        window.document.edit("Slur", lambda t, b, n=note_id: toggle_join_to_next(t, b, n))
    before = window.document.state
    found = window.side_list.model.findings
    rules = {finding.rule for finding in found}
    slow = replace(ORDINARY, tempo=Tempo(Fraction(2), Fraction(5)))  # a quarter lasts six seconds
    dialogs.answers["bow_and_fiddle"] = (slow, TUNINGS["cross tuning"])
    window.actions_by_name["bow_and_fiddle"].trigger()
    lesson = window.document.state.lesson
    assert (lesson.reach, lesson.tuning) == (slow, TUNINGS["cross tuning"])
    assert window.document.stack.undoText() == "Bow and fiddle"
    assert "stroke-beyond-bow" in {finding.rule for finding in window.side_list.model.findings} - rules
    assert "longest stroke 15.0 seconds" in window.side_list.totals.accessibleDescription()
    window.document.stack.undo()
    assert window.document.state == before
    assert window.side_list.model.findings == found


def test_left_as_it_was_it_is_no_undo_step(window, dialogs):
    dialogs.answers["bow_and_fiddle"] = (ORDINARY, STANDARD)
    window.actions_by_name["bow_and_fiddle"].trigger()
    dialogs.answers["bow_and_fiddle"] = None
    window.actions_by_name["bow_and_fiddle"].trigger()
    assert window.document.stack.count() == 0


def test_they_are_saved_with_the_lesson_and_come_back(window, dialogs, tmp_path: Path):
    chosen = (OWN, Tuning(("E3", "D4", "A4", "E5")))
    dialogs.answers |= {"bow_and_fiddle": chosen, "path_to_save": tmp_path / "weir.musicxml"}
    window.actions_by_name["bow_and_fiddle"].trigger()
    assert window.save()
    window.document.stack.undo()
    window.document.stack.setClean()
    assert window.open_path(tmp_path / "weir.musicxml")
    assert (window.document.state.lesson.reach, window.document.state.lesson.tuning) == chosen


def test_the_real_dialog_answers_with_what_was_set(qtbot, window, four_bars):
    def set_and_accept() -> None:
        dialog = QApplication.activeModalWidget()
        assert isinstance(dialog, BowFiddleDialog)
        type_into(dialog.hair, "60")
        QTest.keyClick(dialog, Qt.Key.Key_Return)

    QTimer.singleShot(0, set_and_accept)
    assert Dialogs().bow_and_fiddle(window, four_bars) == (replace(ORDINARY, hair_cm=60.0), STANDARD)

    QTimer.singleShot(0, lambda: QTest.keyClick(QApplication.activeModalWidget(), Qt.Key.Key_Escape))
    assert Dialogs().bow_and_fiddle(window, four_bars) is None
