"""Saving in the window: over nothing unseen, and with a way out where it fails."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMessageBox

from app.dialogs import Answer, Clash, Dialogs
from app.files import read_path, save_lesson
from app.lesson_file import Change
from core.lesson import Lesson


@pytest.fixture
def path(window, dialogs, tmp_path: Path) -> Path:
    """The file of the open lesson, which is changed by now."""
    dialogs.answers["path_to_save"] = tmp_path / "lesson.musicxml"
    assert window.save_as()
    window.page.toggle_slur()
    dialogs.asked.clear()
    return tmp_path / "lesson.musicxml"


def asides(path: Path) -> list[Path]:
    return list(path.parent.glob("* (other, *"))


def test_a_file_changed_by_another_is_overwritten_only_when_told_to_and_kept_aside(
    window, dialogs, path, with_pickup: Lesson
):
    save_lesson(with_pickup, path)
    other = path.read_bytes()
    dialogs.answers["about_clash"] = Clash.CANCEL
    assert not window.save()
    assert path.read_bytes() == other
    assert window.isWindowModified()
    assert "lesson.musicxml has been changed by another window or program" in dialogs.sentence
    dialogs.answers["about_clash"] = Clash.OVERWRITE
    assert window.save()
    assert read_path(path).lessons == (window.document.state.lesson,)
    assert [aside.read_bytes() for aside in asides(path)] == [other]
    assert not window.isWindowModified()
    window.page.toggle_slur()
    dialogs.asked.clear()
    assert window.save()  # what is there now is ours
    assert dialogs.asked == []


def test_another_name_leaves_the_file_of_the_other(window, dialogs, path, with_pickup):
    save_lesson(with_pickup, path)
    dialogs.answers |= {"about_clash": Clash.OTHER_NAME, "path_to_save": path.with_name("mine.mxl")}
    assert window.save()
    assert read_path(path).lessons == (with_pickup,)
    assert read_path(path.with_name("mine.mxl")).lessons == (window.document.state.lesson,)
    assert window.document.path == path.with_name("mine.mxl")


def test_save_as_over_the_own_file_asks_as_well(window, dialogs, path, with_pickup):
    save_lesson(with_pickup, path)
    dialogs.answers["about_clash"] = Clash.CANCEL
    assert not window.save_as()


def test_a_file_agreed_to_in_the_dialog_is_overwritten_without_another_question(window, dialogs, path):
    path.with_name("old.musicxml").write_text("old")
    dialogs.answers["path_to_save"] = path.with_name("old.musicxml")
    assert window.save_as()
    assert dialogs.asked == ["path_to_save"]
    assert asides(path) == []


def test_a_name_that_gets_its_suffix_from_us_is_never_overwritten_unasked(window, dialogs, path):
    path.with_name("old.musicxml").write_text("old")
    dialogs.answers |= {"path_to_save": path.with_name("old"), "about_clash": Clash.CANCEL}
    assert not window.save_as()
    assert dialogs.sentence == "There is a file old.musicxml already."
    assert path.with_name("old.musicxml").read_text() == "old"


def test_a_save_that_fails_offers_another_place_and_nothing_has_changed(window, dialogs, path, monkeypatch, tmp_path):
    before, lesson = path.read_bytes(), window.document.state.lesson
    (tmp_path / "elsewhere").mkdir()
    real = Path.replace

    def read_only(part: Path, target: Path) -> Path:
        if target == path:
            raise OSError(30, "Read-only file system")
        return real(part, target)

    monkeypatch.setattr(Path, "replace", read_only)
    dialogs.answers |= {"save_elsewhere": True, "path_to_save": tmp_path / "elsewhere" / "a.musicxml"}
    assert window.save()
    assert dialogs.asked == ["save_elsewhere", "path_to_save"]
    assert dialogs.sentence == "lesson.musicxml cannot be saved: the disk can only be read."
    assert dialogs.suggestion == Path.home() / "lesson.musicxml"
    assert path.read_bytes() == before
    assert read_path(tmp_path / "elsewhere" / "a.musicxml").lessons == (lesson,)
    assert window.document.path == tmp_path / "elsewhere" / "a.musicxml"


def test_a_save_given_up_leaves_the_lesson_changed_and_says_why(window, dialogs, path, monkeypatch):
    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.fsync", full)
    dialogs.answers["save_elsewhere"] = False
    steps = window.document.stack.index()
    assert not window.save()
    assert window.notice.sentence == "lesson.musicxml cannot be saved: the disk is full."
    assert window.isWindowModified()
    assert window.document.stack.index() == steps
    assert window.document.path == path


def test_a_folder_that_is_gone_is_one_sentence(window, dialogs, path):
    path.unlink()
    path.parent.rename(path.parent.with_name("moved"))
    dialogs.answers["save_elsewhere"] = False
    assert not window.save()
    assert dialogs.sentence == "lesson.musicxml cannot be saved: its folder is not there."
    path.parent.with_name("moved").rename(path.parent)


# ------------------------------------------------------------------------------------------------- changed outside


def test_a_file_changed_outside_is_read_again_by_a_button_while_nothing_is_changed_here(
    window, dialogs, path, with_pickup
):
    window.document.stack.undo()
    save_lesson(with_pickup, path)
    window.file.changed.emit(Change.REWRITTEN)
    assert window.notice.isVisible()
    window.notice.act_button.click()
    assert window.document.state.lesson == with_pickup
    assert window.document.path == path
    assert not window.notice.isVisible()
    window.page.toggle_slur()
    assert window.save()
    assert dialogs.asked == []


def test_a_file_changed_outside_is_only_told_while_the_lesson_is_changed_here(window, path):
    window.file.changed.emit(Change.REWRITTEN)
    assert window.notice.sentence.endswith("Saving will ask which of the two to keep.")
    assert not window.notice.act_button.isVisible()


def test_a_file_that_is_gone_leaves_a_lesson_to_be_saved(window, dialogs, path):
    assert window.save()
    path.unlink()
    window.file.changed.emit(Change.GONE)
    assert window.isWindowModified()
    window.notice.act_button.click()
    assert read_path(path).lessons == (window.document.state.lesson,)
    assert not window.isWindowModified()


def test_opening_the_own_file_anew_reads_what_was_saved_on_the_way(window, dialogs, path):
    lesson = window.document.state.lesson
    dialogs.answers["about_changes"] = Answer.SAVE
    assert window.open_path(path)
    assert window.document.state.lesson == lesson
    assert dialogs.asked == ["about_changes"]


def test_a_file_that_is_open_in_another_window_is_told(window, path, settings, dialogs, qtbot):
    from app.main_window import MainWindow

    second = MainWindow(settings, dialogs)
    qtbot.addWidget(second)
    assert second.open_path(path)
    assert second.notice.sentence == (
        "lesson.musicxml is open in another window too: whoever saves second is asked which of the two to keep."
    )
    assert not window.notice.isVisible()
    second.page.toggle_slur()
    assert second.save()
    window.page.toggle_slur()
    dialogs.answers["about_clash"] = Clash.CANCEL
    assert not window.save()
    assert dialogs.asked[-1] == "about_clash"


# ------------------------------------------------------------------------------------------------- the real questions


def answer(words: str | None) -> None:
    """Press a button of the box that comes up next, or Escape."""

    def press() -> None:
        box = QApplication.activeModalWidget()
        assert isinstance(box, QMessageBox)
        if words is None:
            box.reject()
        else:
            next(button for button in box.buttons() if words in button.text().replace("&", "")).click()

    QTimer.singleShot(0, press)


@pytest.mark.parametrize(
    ("words", "meant"),
    [
        ("another name", Clash.OTHER_NAME),
        ("Overwrite", Clash.OVERWRITE),
        ("Cancel", Clash.CANCEL),
        (None, Clash.CANCEL),
    ],
)
def test_the_question_about_two_contents_has_three_answers(window, words, meant):
    answer(words)
    assert Dialogs().about_clash(window, "A sentence.") is meant


@pytest.mark.parametrize(("words", "meant"), [("elsewhere", True), ("Cancel", False), (None, False)])
def test_a_failed_save_is_answered_by_another_place_or_not(window, words, meant):
    answer(words)
    assert Dialogs().save_elsewhere(window, "A sentence.") is meant
