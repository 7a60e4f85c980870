"""What the start of the program waits for, and what is loaded and made only when it is wanted."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from app.files import is_slow_to_read

TOP = Path(__file__).parents[2]
LESSON = TOP / "sample_tunes" / "tuesday_ferry.musicxml"
NEVER_AT_START = {
    "music21", "numpy", "sqlite3", "soundfile", "mido", "pypdf", "multiprocessing", "urllib.request",
    "concurrent.futures", "subprocess", "pickle", "secrets",
    "PySide6.QtPrintSupport", "PySide6.QtMultimedia",
    "core.planner", "core.shelf", "core.sound.mix", "core.sound.performance", "core.writing.abc", "core.reading.abc",
    "core.pack", "core.drills", "core.exercise",
    "app.plan_pane", "app.player", "app.player_bar", "app.shelf_pane", "app.set_window", "app.sheet_dialog",
    "app.sheet", "app.printing", "app.pack_dialog", "app.bow_fiddle_dialog", "app.recovery_dialog", "app.tune_chooser",
    "app.check_command", "app.comparison_table", "app.recovery_writer", "core.set_check", "core.remedies",
}  # fmt: skip
SHOW = """
import sys
from tests.benchmarks import start_runner

def told(what):
    if what == "painted":
        print(*sorted(sys.modules), *sys.modules["linecache"].cache)

start_runner.tell = told
start_runner.show_bowbench(sys.argv[1])
"""


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> str:
    return str(tmp_path_factory.mktemp("home"))


@pytest.fixture(scope="module")
def loaded(home: str) -> set[str]:
    """The modules that a window has loaded when its lesson is painted, and the files whose source was read."""
    return show(home)


def show(home: str) -> set[str]:
    places = dict.fromkeys(("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"), home)
    shown = subprocess.run(
        [sys.executable, "-c", SHOW, str(LESSON)],
        cwd=TOP, env=os.environ | places | {"QT_QPA_PLATFORM": "offscreen"}, stdout=subprocess.PIPE, text=True,
        timeout=120, check=True,
    )  # fmt: skip
    return set(shown.stdout.split())


def test_the_lesson_is_painted_before_anything_is_loaded_that_it_does_not_need(loaded):
    assert {"app.main_window", "app.page_canvas", "verovio", "core.reading.musicxml"} <= loaded
    assert not NEVER_AT_START & loaded


def test_a_lesson_that_was_open_before_is_painted_before_the_engraver_is_loaded(home, loaded):
    again = show(home)
    assert {"app.page_canvas", "core.engraving.picture", "core.reading.musicxml"} <= again
    assert not {"verovio", "core.engraving.mei", "core.engraving.svg", "importlib.resources"} & again


def test_no_source_of_ours_is_read_at_the_start(loaded):
    assert not [name for name in loaded if name.startswith((str(TOP / "app"), str(TOP / "core")))]


def test_a_window_without_a_lesson_loads_no_engraver_and_no_reader(qtbot, tmp_path):
    code = (
        "import sys; from PySide6.QtWidgets import QApplication; app = QApplication([])\n"
        "from app.main_window import MainWindow; from app.settings import Settings; from pathlib import Path\n"
        "window = MainWindow(Settings(Path(sys.argv[1]))); window.show(); app.processEvents()\n"
        "print(*(name for name in ('verovio', 'lxml', 'numpy', 'core.reading.abc') if name in sys.modules))\n"
        "window.close()\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", code, str(tmp_path / "settings.ini")],
        cwd=TOP,
        capture_output=True,
        text=True,
        timeout=60,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.split() == []


def test_lessons_left_behind_are_offered_though_the_icon_cannot_be_drawn(home):
    code = (
        "import app.plain_import, gc, sys; from app import desktop_entry, recovery_offer, window\n"
        "from PySide6.QtCore import QCoreApplication\n"
        "def offer(self): print('offered', gc.isenabled()); QCoreApplication.quit()\n"
        "recovery_offer.RecoveryOffer.offer = offer; del desktop_entry.program_icon\n"
        "sys.exit(window.run_window())\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=TOP,
        env=os.environ | dict.fromkeys(("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"), home),
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert done.stdout.split() == ["offered", "True"], done.stderr
    assert "program_icon" in done.stderr


def test_planner_player_and_shelf_are_made_when_they_are_first_wanted(window):
    assert not {"pane", "player", "bar"} & (
        set(vars(window.planning)) | set(vars(window.playing)) | set(vars(window.shelf))
    )
    window.actions_by_name["planner"].trigger()
    window.actions_by_name["player"].trigger()
    window.actions_by_name["shelf"].trigger()
    assert window.plan.isVisible()
    assert window.playing.bar.isVisible()
    assert window.shelf.pane.isVisible()
    window.playing.close_down()


def test_a_lesson_of_the_size_of_ours_is_read_at_once_and_a_large_book_beside_the_window(tmp_path):
    assert not is_slow_to_read(LESSON)
    book, packed = tmp_path / "book.abc", tmp_path / "LESSON.MXL"
    for path in (book, packed):
        path.write_bytes(bytes(LESSON.stat().st_size))
        assert is_slow_to_read(path)
