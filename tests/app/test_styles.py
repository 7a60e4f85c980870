"""Styles by name, learning them from the shelf, and what the command line says of both."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from app import styles
from app.cli import main
from app.files import FileError
from app.learn_dialog import LearnDialog
from app.main_window import MainWindow
from app.shelf_place import default_shelf
from app.style_dialog import StyleDialog
from app.styles import (
    BOOK,
    NoSuchStyleError,
    StyleNameError,
    forget_style,
    keep_style,
    own_styles,
    style_name,
    style_of,
)
from core.lesson import Lesson
from core.reading import read_file
from core.shelf.catalogue import Catalogue
from core.shelf.query import Query
from core.shelf.scan import add_places, scan
from core.style.style import renamed, to_bytes
from core.writing.abc import write_abc
from tests.core.style.hands import LESSONS, lesson, style

BEGUN = "X:1\nT:Begun\nR:reel\nM:4/4\nL:1/8\nK:D\n(dc)df (ed)ce|(fe)dB (AG)FA|dcdf edce|fedB AGFA|\n"


@pytest.fixture
def shelf(tmp_path: Path) -> Path:
    """The user's own shelf with as many lessons as it takes, and one without slurs."""
    folder = tmp_path / "lessons"
    folder.mkdir()
    tunes = [lesson(seed) for seed in range(LESSONS)]
    book = [Lesson(replace(tune, number=number), (bowing,)) for number, (tune, bowing) in enumerate(tunes, 1)]
    text = write_abc(book)
    (folder / "book.abc").write_text(text if isinstance(text, str) else text.decode())
    (folder / "bare.abc").write_text("X:1\nT:Bare\nM:4/4\nL:1/8\nK:D\ndcdf edce|\n")
    path = default_shelf()
    path.parent.mkdir(parents=True, exist_ok=True)
    with Catalogue(path) as catalogue:
        add_places(catalogue, [folder])
        scan(catalogue)
    return path


@pytest.fixture
def begun(tmp_path: Path) -> str:
    path = tmp_path / "begun.abc"
    path.write_text(BEGUN)
    return str(path)


@pytest.fixture
def run(capsys):
    def run(*words: str) -> tuple[int, str, str]:
        status = main(list(words))
        told = capsys.readouterr()
        return status, told.out, told.err

    return run


# ------------------------------------------------------------------------------------------------- names and files


def test_an_own_style_is_kept_listed_read_and_taken_away():
    assert own_styles() == ()
    keep_style(renamed(style(), "Aunt Elspeth"))
    assert own_styles() == ("Aunt Elspeth",)
    assert to_bytes(style_of("aunt elspeth")) == to_bytes(renamed(style(), "Aunt Elspeth"))
    forget_style("AUNT ELSPETH")
    assert own_styles() == ()
    with pytest.raises(NoSuchStyleError):
        style_of("Aunt Elspeth")


@pytest.mark.parametrize("name", ["", "///", BOOK, BOOK.upper()])
def test_names_that_no_own_style_can_have(name):
    with pytest.raises(StyleNameError):
        style_name(name)


def test_a_style_learned_anew_is_read_anew():
    keep_style(renamed(style(), "Mine"))
    assert style_of("Mine").notice == ""
    keep_style(replace(renamed(style(), "Mine"), notice="Another"))
    assert style_of("Mine").notice == "Another"


def test_a_file_that_is_no_style_is_told_by_its_name(tmp_path):
    styles.styles_folder().mkdir(parents=True)
    (styles.styles_folder() / "Odd.npz").write_bytes(b"odd")
    with pytest.raises(FileError, match=r"Odd\.npz: This is no style"):
        style_of("Odd")


# ------------------------------------------------------------------------------------------------- command line


def test_a_style_is_learned_from_the_lessons_that_are_found(run, shelf, begun, tmp_path):
    status, out, err = run("shelf", "learn", "Mine", "lesson")
    assert (status, err) == (0, "")
    assert out.startswith(f"Mine: Learned from {LESSONS} lessons: ")
    assert "  Slurred in 100% of the cases (" in out
    status, out, err = run("shelf", "styles", "--json")
    told = json.loads(out)
    assert told["format"] == "bowbench-styles/1"
    assert [(one["name"], one["own"], one["lessons"] > 0) for one in told["styles"]] == [
        ("Mine", True, True), (BOOK, False, True),
    ]  # fmt: skip
    assert set(told["styles"][0]["habits"][0]) == {"figure", "joined", "seen", "where", "text"}
    out_file = tmp_path / "out.musicxml"
    assert run("bow", begun, "--style", "mine", "--keep", "--out", str(out_file))[0] == 0
    assert read_file(out_file.read_bytes()).lessons[0].bowings[-1].name == "In the style “Mine”"
    assert run("shelf", "forget", "Mine") == (0, "", "")
    assert run("shelf", "forget", "Mine")[0] == 2


def test_what_has_no_slurs_is_passed_over_and_too_little_is_said(run, shelf):
    status, out, err = run("shelf", "learn", "Mine", "bare")
    assert (status, out) == (2, "")
    assert "There is too little to learn a style from" in err
    assert own_styles() == ()


def test_marked_bars_are_kept_and_each_other_bar_says_how_sure_it_is(run, begun, tmp_path):
    out_file = tmp_path / "out.musicxml"
    status, out, err = run("bow", begun, "--style", BOOK, "--keep", "--out", str(out_file), "--json")
    assert (status, err) == (0, "")
    (plan,) = json.loads(out)["plans"]
    assert set(plan) == {"missed", "broken", "cost", "slurs", "proven", "notes", "bars"}
    assert [one["bar"] for one in plan["bars"]] == [3, 4]
    assert all(0 <= one["sure"] <= 1 for one in plan["bars"])
    first, *_, last = read_file(out_file.read_bytes()).lessons[0].bowings
    tune = read_file(out_file.read_bytes()).lessons[0].tune
    assert {one for one in last.joins if tune.bar_of[one] < 2} == set(first.joins)


def test_without_keep_the_style_bows_all_of_it(run, begun, tmp_path):
    out = str(tmp_path / "out.musicxml")
    _, told, _ = run("bow", begun, "--style", BOOK, "--accents", "on-beat", "--out", out, "--json")
    assert [one["bar"] for one in json.loads(told)["plans"][0]["bars"]] == [1, 2, 3, 4]


def test_only_what_is_sure_is_slurred_less(run, begun, tmp_path):
    out = str(tmp_path / "out.musicxml")

    def slurs(*more: str) -> int:
        return json.loads(run("bow", begun, "--style", BOOK, "--out", out, "--json", *more)[1])["plans"][0]["slurs"]

    assert slurs("--sure") <= slurs()


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--style", "Nobody"), "There is no style “Nobody”"),
        (("--style", "this-tune"), "Nothing is slurred or marked yet"),
        (("--style", BOOK, "--smooth"), "do not go with --style"),
        ((), "Neither --accents nor --style"),
    ],
)
def test_what_makes_no_sense_is_said(run, begun, tmp_path, words, said):
    out = tmp_path / "out.musicxml"
    status, told, err = run("bow", begun, *words, "--out", str(out))
    assert (status, told) == (2, "")
    assert said in err
    assert not out.exists()


# ------------------------------------------------------------------------------------------------- in the window


@pytest.fixture
def dialog(qtbot, shelf) -> LearnDialog:
    dialog = LearnDialog(shelf, Query(), LESSONS + 1)
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog


def test_learning_shows_how_far_it_is_and_what_was_found(qtbot, dialog):
    seen = []
    dialog.progress.valueChanged.connect(seen.append)
    dialog.name.setText("Mine")
    with qtbot.waitSignal(dialog.learned, timeout=60_000) as learned:
        dialog.learn_button.click()
    assert learned.args == ["Mine"]
    assert own_styles() == ("Mine",)
    assert len(set(seen)) > 3
    assert dialog.says.text() == "The style “Mine” is kept. 1 tune has no slurs and was passed over."
    assert "Slurred in 100%" in dialog.text.toPlainText()


def test_learning_is_left_off_and_nothing_is_kept(qtbot, dialog):
    dialog.learn_button.click()
    qtbot.waitUntil(lambda: dialog.progress.value() > 0, timeout=20_000)
    dialog.close_button.click()
    assert not dialog.work.runs
    assert dialog.says.text() == "Left off; nothing was kept."
    assert dialog.learn_button.isEnabled()
    assert own_styles() == ()


def test_a_name_that_is_taken_is_told_before_it_is_replaced(qtbot, dialog):
    keep_style(renamed(style(), "Mine"))
    dialog.name.setText("mine")
    assert dialog.says.text() == "There is a style of this name: learning replaces it."
    dialog.name.setText("  ")
    dialog.learn_button.click()
    assert "is no name for a style" in dialog.says.text()


def test_what_was_learned_is_chosen_in_the_planner(window: MainWindow):
    keep_style(renamed(style(), "Mine"))
    window.shelf.learned.emit("Mine")
    assert window.plan.styles.style_name == "Mine"
    forget_style("Mine")
    window.plan.styles.fill()
    assert window.plan.styles.style_name == BOOK


def test_an_own_style_is_taken_away_when_it_is_asked_for_twice(qtbot):
    keep_style(renamed(style(), "Mine"))
    dialog = StyleDialog("Mine")
    qtbot.addWidget(dialog)
    dialog.forget_button.click()
    assert own_styles() == ("Mine",)
    with qtbot.waitSignal(dialog.forgotten):
        dialog.forget_button.click()
    assert own_styles() == ()


def test_the_shelf_offers_to_learn_from_what_is_found(qtbot, window: MainWindow, shelf):
    asked = []
    window.shelf.pane.learn_wanted.disconnect()
    window.shelf.pane.learn_wanted.connect(lambda query, tunes: asked.append((query.words, tunes)))
    window.actions_by_name["learn_style"].trigger()
    qtbot.waitUntil(lambda: bool(asked), timeout=20_000)
    assert asked == [("", LESSONS + 1)]


def test_the_window_goes_on_while_it_is_learned_and_ends_it_when_it_closes(qtbot, window: MainWindow, shelf):
    window.actions_by_name["learn_style"].trigger()
    qtbot.waitUntil(lambda: window.shelf.findChild(LearnDialog) is not None, timeout=20_000)
    dialog = window.shelf.findChild(LearnDialog)
    assert not dialog.isModal()
    dialog.learn()
    window.document.stack.setClean()
    window.close()
    assert not dialog.work.runs
    assert own_styles() == ()
