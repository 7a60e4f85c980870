"""The whole window: keys, menus, files and what the parts say to each other."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QTimer, QUrl
from PySide6.QtGui import QDropEvent, QGuiApplication, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QLabel,
    QLineEdit,
    QMenu,
    QProgressDialog,
    QPushButton,
)

from app.actions import ACTIONS, MENUS, NOTE_ITEMS, TOOL_BAR
from app.dialogs import Answer
from app.files import read_path
from app.main_window import MainWindow
from app.page_view import PageView
from app.samples import sample_files
from app.settings import Look
from app.sheet_dialog import SheetChoice, Way
from app.theme import DARK, LIGHT, mix
from app.tune_chooser import TuneChooser
from core.bowing import Bow, Join, Mark
from core.check import Severity
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson
from core.reading import read_file
from core.sheet_plan import SheetKind, SheetPlan, TextBlock, begin
from tests.core.builders import bowed

NO_KEYS = Qt.KeyboardModifier.NoModifier
ONE_TUNE = "X:1\nT:The Late Boat\nM:6/8\nL:1/8\nK:G\nGAB BAG|ABA AGE|]\n"
BOOK = ONE_TUNE + "\nX:2\nT:The Early Boat\nR:reel\nM:4/4\nL:1/8\nK:Em\nE2 BE GABe|]\n"
SEVENS = "X:1\nT:Sevens\nM:4/4\nL:1/8\nK:D\nd2 fd Adfd|d2 fd Adfd|d2 fd Adfd|d2 f2 Adfd|d2 fd Adfd|]\n"


def title(window: MainWindow) -> str:
    return window.document.state.tune.title


def edit(window: MainWindow) -> None:
    window.page.toggle_slur()


def write(folder: Path, text: str, name: str = "book.abc") -> Path:
    path = folder / name
    path.write_text(text)
    return path


# ------------------------------------------------------------------------------------------------- keys and menus


@pytest.mark.parametrize(
    ("key", "marks", "joins", "retakes"),
    [
        (Qt.Key.Key_Space, {}, {"b0n3": Join.SLUR}, set()),
        (Qt.Key.Key_H, {}, {"b0n3": Join.HOOK}, set()),
        (Qt.Key.Key_T, {"b0n2": Mark(Bow.DOWN)}, {}, set()),
        (Qt.Key.Key_D, {"b0n2": Mark(Bow.DOWN)}, {}, set()),
        (Qt.Key.Key_U, {"b0n2": Mark(Bow.UP)}, {}, set()),
        (Qt.Key.Key_R, {}, {}, {"b0n2"}),
    ],
)
def test_every_edit_of_a_note_has_a_key(window, key, marks, joins, retakes):
    window.page.setFocus()
    QTest.keyClick(window.page, Qt.Key.Key_Right)
    before = window.document.state
    QTest.keyClick(window.page, key)
    bowing = window.document.state.bowing
    assert (dict(bowing.marks), dict(bowing.joins), set(bowing.retakes)) == (marks, joins, retakes)
    assert window.document.stack.count() == 1
    QTest.keySequence(window, QKeySequence(QKeySequence.StandardKey.Undo))
    assert window.document.state == before
    QTest.keySequence(window, QKeySequence(QKeySequence.StandardKey.Redo))
    assert window.document.state.bowing == bowing


def test_freeing_separating_and_passes_have_keys(window):
    page = window.page
    page.setFocus()
    QTest.keyClick(page, Qt.Key.Key_Space)
    QTest.keyClick(page, Qt.Key.Key_S)
    assert not window.document.state.bowing.joins
    QTest.keyClick(page, Qt.Key.Key_U)
    QTest.keyClick(page, Qt.Key.Key_2)
    assert window.document.state.bowing.marks["b0n1"] == Mark(Bow.UP, 2)
    QTest.keyClick(page, Qt.Key.Key_0)
    assert window.document.state.bowing.marks["b0n1"] == Mark(Bow.UP)
    QTest.keyClick(page, Qt.Key.Key_F)
    assert not window.document.state.bowing.marks


def test_a_selection_made_by_keys_becomes_one_slur_by_a_key(window):
    window.page.setFocus()
    for _ in range(3):
        QTest.keyClick(window.page, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(window.page, Qt.Key.Key_Space)
    assert set(window.document.state.bowing.joins) == {"b0n2", "b0n3", "b0n4"}


def test_letters_typed_outside_the_page_edit_nothing(window):
    window.bowings.list.setFocus()
    QTest.keyClick(window.bowings.list, Qt.Key.Key_T)
    QTest.keyClick(window.bowings.list, Qt.Key.Key_Space)
    assert window.document.stack.count() == 0


def test_do_undo_redo_in_one_story(window, hand_on):
    page, document = window.page, window.document
    start = document.state
    hand_on(page).click_note("b0n1")
    hand_on(page).drag("b0n3", "b0n6")
    hand_on(page).click_sign("b1n1")
    window.bowings.copy()
    hand_on(page).click_note("b2n1")
    end = document.state
    labels = []
    while document.stack.canUndo():
        labels.append(document.stack.undoText())
        window.actions_by_name["undo"].trigger()
    assert document.state == start
    assert labels == [
        "Slur bar 3, notes 1–2",
        "Copy “As written”",
        "Turn bar 2, note 1 to down-bow",  # bar 1 has three strokes by then, so bar 2 began up
        "Slur bar 1, notes 3–6",
        "Slur bar 1, notes 1–2",
    ]
    while document.stack.canRedo():
        window.actions_by_name["redo"].trigger()
    assert document.state == end


def test_the_menu_names_what_undo_takes_back(window):
    edit(window)
    assert window.actions_by_name["undo"].text() == "&Undo “Slur bar 1, notes 1–2”"
    window.actions_by_name["undo"].trigger()
    assert not window.actions_by_name["undo"].isEnabled()
    assert window.actions_by_name["redo"].text() == "&Redo “Slur bar 1, notes 1–2”"


def test_no_two_actions_share_a_key(window):
    keys = [key.toString() for action in window.actions_by_name.values() for key in set(action.shortcuts())]
    assert len(keys) == len(set(keys))


def test_every_action_stands_in_a_menu(window):
    def names(items):
        for item in items:
            yield from names(item[1]) if isinstance(item, tuple) else [item]

    assert {spec.name for spec in ACTIONS} == set(names(MENUS)) - {"-", "recent", "compare_with"}
    assert {*TOOL_BAR, *names(NOTE_ITEMS)} - {"-"} <= {spec.name for spec in ACTIONS}


def test_standard_actions_have_the_standard_keys(window):
    for name, standard in (
        ("open", QKeySequence.StandardKey.Open),
        ("save", QKeySequence.StandardKey.Save),
        ("undo", QKeySequence.StandardKey.Undo),
        ("print", QKeySequence.StandardKey.Print),
        ("paste", QKeySequence.StandardKey.Paste),
        ("close", QKeySequence.StandardKey.Close),
    ):
        assert window.actions_by_name[name].shortcuts()[0] in QKeySequence.keyBindings(standard)


def test_the_menu_of_a_note_offers_every_edit_and_only_passes_that_there_are(qtbot, window):
    window.page.focus_on("b0n2")
    QTest.keyClick(window.page, Qt.Key.Key_Menu)
    menu = next(menu for menu in window.findChildren(QMenu) if menu.isVisible() and menu.parent() is window)
    offered = [action.objectName() or action.text() for action in menu.actions() if not action.isSeparator()]
    assert offered == [
        "slur", "hook", "separate", "turn", "down", "up", "free", "retake", "pass_all", "pass_1", "pass_2",
        "&Ornaments", "&Accents",
    ]  # fmt: skip
    next(action for action in menu.actions() if action.objectName() == "turn").trigger()
    assert window.document.state.bowing.marks == {"b0n2": Mark(Bow.DOWN)}
    menu.close()


def test_what_is_said_of_a_bowing_goes_with_it(window):
    window.bowings.add()
    window.page.hinted.emit("Done: a thing.")
    window.document.show(0)
    assert window._hint.text() == window.page.accessibleDescription() != ""


def test_a_long_hint_does_not_widen_the_window(window):
    least = window.minimumSizeHint().width()
    window.page.hinted.emit("Bar 2, beat 3: a hint that has more to say than fits under any page. " * 5)
    QTest.qWait(10)
    assert window.minimumSizeHint().width() == least
    assert window.width() == 1200


# ------------------------------------------------------------------------------------------------- parts to parts


def test_choosing_a_finding_marks_its_notes_on_the_page(window):
    window.document.open(read_file(SEVENS.encode()).lessons[0])
    row = window.side_list.list.visualRect(window.side_list.model.index(0))
    QTest.mouseClick(window.side_list.list.viewport(), Qt.MouseButton.LeftButton, pos=row.center())
    assert window.page.found_notes == window.side_list.model.findings[0].notes
    window.side_list.list.clearSelection()
    assert window.page.found_notes == ()


def test_the_focus_note_highlights_its_findings(window):
    window.document.open(read_file(SEVENS.encode()).lessons[0])
    note = window.side_list.model.findings[0].notes[0]
    window.page.focus_on(note)
    from app.findings_model import Role

    assert window.side_list.model.data(window.side_list.model.index(0), Role.IS_OF_NOTE)


def test_a_finding_is_walked_to_and_mended_by_key(window):
    window.document.open(read_file(b"X:1\nM:4/4\nL:1/8\nK:D\n(dd) fd Adfd|]\n").lessons[0])
    before = window.document.state
    for _ in window.side_list.model.findings:
        QTest.keyClick(window, Qt.Key.Key_F8)
        if window.side_list.chosen.rule == "equal-notes-slurred":
            break
    QTest.keyClick(window, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert window.document.state != before
    assert window.document.stack.count() == 1


def test_a_refused_edit_is_said_in_the_status_line(window):
    window.page.focus_on("b3n5")
    QTest.keyClick(window.page, Qt.Key.Key_Space)
    assert "A rest comes next: a slur cannot run over a rest." in status(window)
    assert window.document.stack.count() == 0


def test_hovering_is_said_in_the_status_line(window):
    QTest.mouseMove(window.page, window.page.head_point("b0n1"))
    assert any(text.startswith("Click to slur bar 1, notes 1–2.") for text in status(window))


def status(window: MainWindow) -> list[str]:
    return [label.text() for label in window.statusBar().findChildren(QLabel)]


def test_page_and_list_show_the_chosen_bowing(window):
    edit(window)
    slurs = window.side_list.totals.totals.slurs
    window.bowings.add()
    assert window.side_list.totals.totals.slurs == slurs - 1
    QTest.keySequence(window, QKeySequence("Ctrl+PgUp"))
    assert window.side_list.totals.totals.slurs == slurs


# ------------------------------------------------------------------------------------------------- opening


def test_a_tune_book_opens_at_the_chosen_tune(window, dialogs, tmp_path):
    dialogs.answers["tune_of_book"] = 1
    assert window.open_path(write(tmp_path, BOOK))
    assert title(window) == "The Early Boat"
    assert window.windowTitle() == "The Early Boat[*] – Bowbench"


def test_a_book_with_one_tune_opens_without_a_question(window, dialogs, tmp_path):
    assert window.open_path(write(tmp_path, ONE_TUNE))
    assert dialogs.asked == []
    assert title(window) == "The Late Boat"


def test_choosing_no_tune_keeps_the_open_lesson(window, dialogs, tmp_path):
    dialogs.answers["tune_of_book"] = None
    assert not window.open_path(write(tmp_path, BOOK))
    assert title(window) == "Gate of the Weir"


def test_a_large_book_is_read_beside_the_window_and_opens_all_the_same(window, dialogs, tmp_path):
    tunes = [ONE_TUNE.replace("X:1", f"X:{number}") for number in range(1, 4001)]
    dialogs.answers["tune_of_book"] = 3999
    beats = []
    timer = QTimer()
    timer.timeout.connect(lambda: beats.append(1))
    timer.start(20)
    assert window.open_path(write(tmp_path, "\n".join(tunes)))
    assert window.document.state.tune.number == 4000
    assert len(beats) > 5  # the window went on living meanwhile


def test_leaving_off_a_large_book_keeps_the_open_lesson(window, tmp_path):
    tunes = [ONE_TUNE.replace("X:1", f"X:{number}") for number in range(1, 4001)]

    def leave_off() -> None:
        window.findChild(QProgressDialog).findChild(QPushButton).click()

    QTimer.singleShot(30, leave_off)
    assert not window.open_path(write(tmp_path, "\n".join(tunes)))
    assert title(window) == "Gate of the Weir"


def test_a_large_file_that_is_no_tune_is_one_sentence_too(window, tmp_path):
    assert not window.open_path(write(tmp_path, "<score" + " " * 300_000, "large.musicxml"))
    assert window.notice.sentence.startswith("large.musicxml, line 1: ")


def test_open_asks_where_and_remembers_the_folder(window, dialogs, settings, tmp_path):
    (tmp_path / "sub").mkdir()
    dialogs.answers["path_to_open"] = write(tmp_path / "sub", ONE_TUNE)
    window.actions_by_name["open"].trigger()
    assert title(window) == "The Late Boat"
    assert settings.folder == tmp_path / "sub"
    assert settings.recent_files == (tmp_path / "sub" / "book.abc",)


def test_a_bad_file_is_one_sentence_and_the_open_lesson_stays(window, tmp_path):
    edit(window)
    before = window.document.state
    assert not window.open_path(write(tmp_path, "<score-partwise><part-list>", "bad.musicxml"))
    assert window.document.state is before
    assert window.document.stack.canUndo()
    assert window.notice.isVisible()
    assert window.notice.sentence.startswith("bad.musicxml, line 1: ")


def test_what_was_repaired_on_opening_is_listed_and_can_be_closed(window, tmp_path):
    assert window.open_path(write(tmp_path, "X:1\nT:Bent\nM:4/4\nL:1/8\nK:D\nd2 f2 (A2 d2|d8|]\n"))
    assert title(window) == "Bent"
    assert window.notice.isVisible()
    assert len(window.notice.lines) >= 1
    assert all(line.startswith("Line ") for line in window.notice.lines)
    QTest.mouseClick(window.notice.close_button, Qt.MouseButton.LeftButton)
    assert not window.notice.isVisible()


def test_a_clean_file_takes_the_old_notice_away(window, tmp_path):
    window.notice.say("Something.")
    window.open_path(write(tmp_path, ONE_TUNE))
    assert not window.notice.isVisible()


def test_a_dropped_file_opens(window, tmp_path):
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(write(tmp_path, ONE_TUNE)))])
    event = QDropEvent(QPointF(50, 50), Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton, NO_KEYS)
    window.dropEvent(event)
    assert title(window) == "The Late Boat"


def test_a_pasted_tune_opens_and_has_to_be_saved(window, dialogs):
    QGuiApplication.clipboard().setText(ONE_TUNE)
    window.page.setFocus()
    QTest.keySequence(window, QKeySequence(QKeySequence.StandardKey.Paste))
    assert title(window) == "The Late Boat"
    assert window.isWindowModified()
    assert window.document.path is None


def test_pasting_no_tune_says_so_and_keeps_the_lesson(window):
    QGuiApplication.clipboard().setText("Dear Orrick, the ferry is late.")
    assert not window.open_pasted()
    assert title(window) == "Gate of the Weir"
    assert window.notice.sentence.startswith("The pasted text is no tune that can be read")


def test_recent_files_open_from_their_menu(window, tmp_path):
    window.open_path(write(tmp_path, ONE_TUNE, "late.abc"))
    window.open_path(write(tmp_path, BOOK.split("\n\n")[1], "early.abc"))
    menu = next(menu for menu in window.findChildren(QMenu) if menu.title() == "Open &recent")
    menu.aboutToShow.emit()
    assert [action.text().split()[0] for action in menu.actions()] == ["early.abc", "late.abc"]
    menu.actions()[1].trigger()
    assert title(window) == "The Late Boat"


def test_a_file_that_is_gone_leaves_the_recent_files(window, settings, tmp_path):
    path = write(tmp_path, ONE_TUNE)
    window.open_path(path)
    path.unlink()
    assert not window.open_path(path)
    assert settings.recent_files == ()


@pytest.mark.parametrize("path", sample_files(), ids=lambda path: path.stem)
def test_every_sample_opens_from_the_first_screen(window, dialogs, path):
    dialogs.answers["tune_of_book"] = 0
    window.welcome.sample_chosen.emit(path)
    assert window.document.state.tune in [lesson.tune for lesson in read_path(path).lessons]
    assert window.document.path is None  # saving never writes into the program's own files


# ------------------------------------------------------------------------------------------------- saving


def test_the_first_save_of_a_tune_asks_for_a_lesson_file(window, dialogs, tmp_path):
    window.open_path(write(tmp_path, ONE_TUNE))
    edit(window)
    dialogs.answers["path_to_save"] = tmp_path / "late"
    QTest.keySequence(window, QKeySequence(QKeySequence.StandardKey.Save))
    assert dialogs.suggestion == tmp_path / "The Late Boat.musicxml"
    assert read_path(tmp_path / "late.musicxml").lessons == (window.document.state.lesson,)
    assert (tmp_path / "book.abc").read_text() == ONE_TUNE
    assert not window.isWindowModified()


def test_a_mistake_while_leaving_is_asked_for_closes_nothing(qtbot, window, monkeypatch):
    edit(window)
    with qtbot.captureExceptions() as mistakes, monkeypatch.context() as broken:
        broken.setattr(window.saving, "may_leave", lambda: [][0])
        assert not window.close()
    assert window.isVisible()
    assert [kind for kind, *_ in mistakes] == [IndexError]


def test_a_lesson_file_is_saved_in_place_without_a_question(window, dialogs, tmp_path):
    dialogs.answers["path_to_save"] = tmp_path / "lesson.musicxml"
    window.save_as()
    window.open_path(tmp_path / "lesson.musicxml")
    assert window.document.path == tmp_path / "lesson.musicxml"
    edit(window)
    dialogs.asked.clear()
    assert window.save()
    assert dialogs.asked == []
    assert read_path(tmp_path / "lesson.musicxml").lessons == (window.document.state.lesson,)


def test_a_score_of_another_program_is_not_overwritten(window, dialogs, tmp_path):
    from core.writing.musicxml import write_musicxml

    text = write_musicxml(window.document.state.lesson)
    foreign = "\n".join(line for line in text.splitlines() if "bowbench" not in line.lower())
    path = write(tmp_path, foreign, "score.musicxml")
    window.open_path(path)
    assert window.document.path is None
    dialogs.answers["path_to_save"] = None
    assert not window.save()
    assert path.read_text() == foreign


def test_a_failed_save_says_why_and_the_lesson_stays_modified(window, dialogs, tmp_path):
    edit(window)
    dialogs.answers |= {"path_to_save": tmp_path / "no such folder" / "lesson.musicxml", "save_elsewhere": False}
    assert not window.save()
    assert dialogs.sentence == window.notice.sentence
    assert window.notice.sentence == "lesson.musicxml cannot be saved: its folder is not there."
    assert window.isWindowModified()
    assert window.document.path is None


def test_undoing_back_to_the_saved_lesson_takes_the_mark_away(window, dialogs, tmp_path):
    dialogs.answers["path_to_save"] = tmp_path / "lesson.musicxml"
    window.save()
    edit(window)
    assert window.isWindowModified()
    window.document.stack.undo()
    assert not window.isWindowModified()


@pytest.mark.parametrize(
    ("answer", "save_to", "goes", "saved"),
    [
        (Answer.STAY, None, False, False),
        (Answer.DROP, None, True, False),
        (Answer.SAVE, "lesson.musicxml", True, True),
        (Answer.SAVE, None, False, False),
    ],
)
@pytest.mark.parametrize("leave", ["close", "open", "paste"])
def test_unsaved_changes_are_guarded(window, dialogs, tmp_path, leave, answer, save_to, goes, saved):
    edit(window)
    dialogs.answers = {"about_changes": answer, "path_to_save": save_to and tmp_path / save_to}
    if leave == "close":
        left = window.close()
    elif leave == "open":
        left = window.open_path(write(tmp_path, ONE_TUNE))
    else:
        QGuiApplication.clipboard().setText(ONE_TUNE)
        left = window.open_pasted()
    assert left is goes
    assert dialogs.asked[0] == "about_changes"
    assert (tmp_path / "lesson.musicxml").exists() is saved
    if not goes:
        assert title(window) == "Gate of the Weir"
        assert window.document.stack.canUndo()


def test_nothing_is_asked_where_nothing_is_unsaved(window, dialogs):
    assert window.close()
    assert dialogs.asked == []


# ------------------------------------------------------------------------------------------------- tune chooser


@pytest.fixture
def chooser(qtbot) -> TuneChooser:
    lessons = read_file((BOOK + "\nX:7\nT:The Late Goose\nM:6/8\nL:1/8\nK:A\nABA ABA|]\n").encode()).lessons
    chooser = TuneChooser("book.abc", lessons)
    qtbot.addWidget(chooser)
    chooser.show()
    return chooser


def test_bowings_of_one_tune_are_told_apart_by_name(qtbot):
    lessons = read_file((ONE_TUNE + "\n" + ONE_TUNE.replace("M:", "N:Bowing: Long slurs\nM:")).encode()).lessons
    chooser = TuneChooser("book.abc", lessons)
    qtbot.addWidget(chooser)
    QTest.keyClicks(chooser.filter, "long slurs")
    assert chooser.chosen == 1


@pytest.mark.parametrize(
    ("typed", "chosen"),
    [("early", 1), ("REEL", 1), ("late goose", 2), ("goose late", 2), ("7", 2), ("e minor", 1), ("", 0)],
)
def test_tunes_are_found_by_title_number_dance_and_key(chooser, typed, chosen):
    QTest.keyClicks(chooser.filter, typed)
    assert chooser.chosen == chosen


def test_a_tune_that_is_not_there_leaves_nothing_to_open(chooser):
    QTest.keyClicks(chooser.filter, "strathspey")
    assert chooser.chosen is None
    assert not chooser.buttons.button(chooser.buttons.StandardButton.Open).isEnabled()


def test_arrow_keys_walk_the_tunes_while_typing(chooser):
    QTest.keyClicks(chooser.filter, "late")
    QTest.keyClick(chooser.filter, Qt.Key.Key_Down)
    assert chooser.chosen == 2
    QTest.keyClick(chooser.filter, Qt.Key.Key_Up)
    assert chooser.chosen == 0


def test_a_double_click_chooses_the_tune(qtbot, chooser):
    index = chooser.table.model().index(1, 1)
    place = chooser.table.visualRect(index).center()
    with qtbot.waitSignal(chooser.accepted):
        QTest.mouseClick(chooser.table.viewport(), Qt.MouseButton.LeftButton, pos=place)
        QTest.mouseDClick(chooser.table.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert chooser.chosen == 1


# ------------------------------------------------------------------------------------------------- printing


def test_a_pdf_is_written_with_the_chosen_bowings(window, dialogs, tmp_path, settings):
    window.bowings.copy()
    plan = SheetPlan(paper="Letter", marks=MarkDensity.BARS)
    dialogs.answers["sheet"] = SheetChoice(plan, Way.EXPORT)
    dialogs.answers["path_to_export"] = tmp_path / "sheet"
    window.actions_by_name["export_pdf"].trigger()
    assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF-")
    assert settings.sheet == plan


def test_a_sheet_is_kept_in_the_lesson_as_one_undo_step_and_is_the_next_default(window, dialogs, settings):
    plan = replace(begin(SheetKind.CLASS), after=TextBlock("Homework", "Bars 1 and 2"), copies=2)
    dialogs.answers["sheet"] = SheetChoice(plan, Way.KEEP)
    window.actions_by_name["preview"].trigger()
    assert window.document.state.lesson.sheet == plan
    assert settings.sheet == replace(plan, after=TextBlock())
    window.document.stack.undo()
    assert window.document.state.lesson.sheet is None
    assert not window.document.is_modified


def test_printing_as_shown_is_no_edit(window, dialogs, tmp_path):
    dialogs.answers["sheet"] = SheetChoice(SheetPlan(bowings=("As written",)), Way.EXPORT)
    dialogs.answers["path_to_export"] = None
    window.print_lesson(Way.EXPORT)
    assert not window.document.is_modified


def test_a_drill_that_has_no_place_in_the_tune_is_said(window, dialogs, tmp_path):
    window.document.open(Lesson(*_long_notes()))
    dialogs.answers["sheet"] = SheetChoice(replace(begin(SheetKind.EXERCISE), drill="three-and-one"), Way.EXPORT)
    dialogs.answers["path_to_export"] = tmp_path / "sheet.pdf"
    window.print_lesson(Way.EXPORT)
    assert "Three and one" in window.notice.sentence
    assert not (tmp_path / "sheet.pdf").exists()


def _long_notes():
    tune, bowing = bowed("|:G4 A4|B4 c4:|")
    return tune, (bowing,)


def test_a_lesson_is_exported_as_abc_and_stays_as_unsaved_as_it_was(window, dialogs, tmp_path):
    edit(window)
    dialogs.answers["path_to_export"] = tmp_path / "tune"
    window.actions_by_name["export_abc"].trigger()
    reading = read_path(tmp_path / "tune.abc")
    assert reading.lessons[0].bowings[0].joins == window.document.state.bowing.joins
    assert window.isWindowModified()
    assert window.document.path is None


def test_what_abc_has_no_place_for_is_told(window, dialogs, tmp_path):
    window.actions_by_name["plan_tune_none"].trigger()
    dialogs.answers["path_to_export"] = tmp_path / "tune.abc"
    window.actions_by_name["export_abc"].trigger()
    assert window.notice.sentence == "tune.abc is written; ABC has no place for all that the lesson holds."
    assert "Accent plans are left out." in window.notice.lines


def test_an_abc_file_that_cannot_be_written_is_told(window, dialogs, tmp_path):
    dialogs.answers["path_to_export"] = tmp_path / "no such folder" / "tune.abc"
    window.actions_by_name["export_abc"].trigger()
    assert window.notice.sentence == "tune.abc cannot be written: its folder is not there."


def test_a_printer_gets_the_pages(window, dialogs, tmp_path):
    from PySide6.QtPrintSupport import QPrinter

    def printer_to(name: str) -> QPrinter:
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        printer.setOutputFileName(str(tmp_path / name))
        return printer

    dialogs.answers["printer"] = printer_to("printer.pdf")
    dialogs.answers["sheet"] = SheetChoice(SheetPlan(), Way.PRINT)
    window.actions_by_name["print"].trigger()
    assert (tmp_path / "printer.pdf").stat().st_size > 5000


def test_a_pdf_that_cannot_be_written_is_said(window, dialogs, tmp_path):
    dialogs.answers["sheet"] = SheetChoice(SheetPlan(), Way.EXPORT)
    dialogs.answers["path_to_export"] = tmp_path / "no such folder" / "sheet.pdf"
    window.print_lesson(Way.EXPORT)
    assert window.notice.sentence.startswith("The sheet cannot be printed: ")


# ------------------------------------------------------------------------------------------------- looks


def test_light_and_dark_reach_the_page_and_are_remembered(window, settings):
    def paper() -> str:
        page = window.page
        return page.grab().toImage().pixelColor(page.rect().center().x(), 30).name()

    assert paper() == LIGHT.paper
    window.actions_by_name["look_dark"].trigger()
    assert paper() == DARK.paper
    assert settings.look is Look.DARK
    window.actions_by_name["look_light"].trigger()
    assert paper() == LIGHT.paper


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_words_and_ink_stand_out_from_what_they_stand_on(theme):
    pairs = [
        (theme.text, theme.panel), (theme.text, theme.field), (theme.quiet, theme.panel), (theme.quiet, theme.field),
        (theme.ink, theme.paper), (theme.on_tint, theme.tint), (theme.text, theme.tint_soft),
        *((theme.severities[severity], ground) for severity in Severity for ground in (theme.field, theme.tint_soft)),
        *((theme.quiet, ground) for ground in (theme.tint_soft, mix(theme.tint_soft, theme.field, 0.5).name())),
        *((theme.tint, ground) for ground in (theme.panel, theme.field, theme.tint_soft)),  # links, the banner's word
        *((theme.severities[severity], ground) for severity in Severity for ground in (theme.panel, theme.paper)),
    ]  # fmt: skip
    for fore, ground in pairs:
        assert contrast(fore, ground) >= 4.5, (fore, ground)  # WCAG 2.1, 1.4.3
    assert contrast(theme.faint_ink, theme.paper) >= 4.5  # signs, and the numbers of their rows


def contrast(one: str, other: str) -> float:
    """Contrast ratio as WCAG 2.1 defines it."""

    def luminance(colour: str) -> float:
        parts = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
        linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_zoom_keys_and_the_wheel_zoom_and_one_key_fits_again(window):
    from PySide6.QtGui import QWheelEvent
    from PySide6.QtWidgets import QApplication

    fitted = window.page.zoom
    QTest.keySequence(window, QKeySequence("Ctrl+="))
    assert window.page.zoom > fitted
    QTest.keySequence(window, QKeySequence("Ctrl+-"))
    assert window.page.zoom == pytest.approx(fitted)
    ctrl = Qt.KeyboardModifier.ControlModifier
    wheel = QWheelEvent(
        QPointF(50, 50), QPointF(50, 50), QPoint(), QPoint(0, 120), Qt.MouseButton.NoButton, ctrl,
        Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(window.area.viewport(), wheel)
    assert window.page.zoom > fitted
    QTest.keySequence(window, QKeySequence("Ctrl+0"))
    assert window.page.zoom == pytest.approx(fitted)


def test_a_fitted_page_follows_the_width_of_the_window(qtbot, window):
    before = window.page.zoom
    window.resize(1000, 700)
    qtbot.waitUntil(lambda: window.page.zoom < before)
    assert window.area.horizontalScrollBar().maximum() == 0


def test_settings_outlive_the_window(qtbot, window, dialogs, settings):
    window.actions_by_name["marks_bars"].trigger()
    window.area.set_zoom(1.5)
    window.close()
    again = MainWindow(settings, dialogs)
    qtbot.addWidget(again)
    again.document.open(window.document.state.lesson)
    assert again.page.zoom == 1.5
    assert again.actions_by_name["marks_bars"].isChecked()
    assert len(again.page.signs) < len(again.document.report().strokes.bows)


def test_the_window_fits_a_small_screen(window):
    assert window.minimumSizeHint().width() <= 1366
    assert window.minimumSizeHint().height() <= 768
    window.resize(1366, 768)
    for label in window.findChildren(QLabel):
        if label.isVisible() and not label.wordWrap():
            assert label.width() >= label.sizeHint().width(), label.text()


# ------------------------------------------------------------------------------------------------- accessibility


def test_every_control_has_a_name_that_can_be_read_out(window):
    kinds = (QAbstractButton, QComboBox, QAbstractItemView, QLineEdit, PageView)
    for kind in kinds:
        for widget in window.findChildren(kind):
            if not widget.isVisible() or widget.objectName().startswith("qt_"):
                continue
            name = widget.accessibleName() or (widget.text() if isinstance(widget, QAbstractButton) else "")
            assert name, widget


def test_the_keyboard_reaches_page_bowings_accents_and_findings(window):
    window.document.open(read_file(SEVENS.encode()).lessons[0])
    window.page.setFocus()
    reached = set()
    for _ in range(40):
        QTest.keyClick(window.focusWidget(), Qt.Key.Key_Tab)
        reached.add(window.focusWidget())
    assert {window.page, window.bowings.list, window.side_list.accents.kinds, window.side_list.list} <= reached


def test_keys_and_gestures_are_told(window, dialogs):
    dialogs.answers["tell"] = None
    QTest.keyClick(window, Qt.Key.Key_F1, Qt.KeyboardModifier.ControlModifier)
    for spec in ACTIONS:
        if spec.page_only:
            assert spec.tip in dialogs.told
