"""The file of the open lesson: changed or taken away by others, and open in two windows."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from app.document import Document
from app.files import save_lesson
from app.lesson_file import Change, LessonFile
from core.lesson import Lesson

OPEN_IT = """
import sys; from pathlib import Path; from app.hold import hold_on
print(hold_on(Path(sys.argv[1]), Path(sys.argv[2])).take(), flush=True); sys.stdin.read()
"""


@pytest.fixture
def claims(tmp_path: Path) -> Path:
    return tmp_path / "claims"


@pytest.fixture
def path(tmp_path: Path, four_bars: Lesson) -> Path:
    save_lesson(four_bars, tmp_path / "a.musicxml")
    return tmp_path / "a.musicxml"


@pytest.fixture
def file(document: Document, path: Path, four_bars: Lesson, claims: Path):
    file = LessonFile(document, claims)
    document.open(four_bars, path)
    file.know(path, save_lesson(four_bars, path))
    yield file
    file.end()


@pytest.fixture
def told(file: LessonFile) -> list[Change]:
    told: list[Change] = []
    file.changed.connect(told.append)
    return told


def look(qtbot, file: LessonFile, times: int = 1) -> None:
    """Look, and take what was seen."""
    for _ in range(times):
        file.look()
        if file._look is not None:
            qtbot.waitUntil(file._look.done, timeout=5000)
        file.look()
        if file._look is not None:
            qtbot.waitUntil(file._look.done, timeout=5000)


def test_a_file_that_stays_as_it_is_is_no_news(qtbot, file, told, path):
    look(qtbot, file, 5)
    os.utime(path, (0, 0))
    path.write_bytes(path.read_bytes())
    look(qtbot, file, 2)
    assert told == []


def test_a_changed_file_is_told_once_for_each_change(qtbot, file, told, path):
    for number in range(2):
        path.write_text(f"other {number}")
        look(qtbot, file, 3)
    assert told == [Change.REWRITTEN, Change.REWRITTEN]


def test_a_file_changed_back_is_no_news(qtbot, file, told, path):
    before = path.read_bytes()
    path.write_text("other")
    look(qtbot, file, 2)
    path.write_bytes(before)
    look(qtbot, file, 2)
    assert told == [Change.REWRITTEN]


def test_what_we_save_ourselves_is_no_news(qtbot, file, told, path, document, with_pickup):
    look(qtbot, file)
    file.know(path, save_lesson(with_pickup, path))
    look(qtbot, file, 3)
    assert told == []


def test_a_file_that_is_gone_is_told_once_and_one_that_is_written_anew_is_not_gone(qtbot, file, told, path):
    data = path.read_bytes()
    path.unlink()
    look(qtbot, file)
    path.write_bytes(data)
    look(qtbot, file, 2)
    assert told == []
    path.unlink()
    look(qtbot, file, 6)
    assert told == [Change.GONE]


def test_a_folder_that_cannot_be_reached_is_no_news(qtbot, file, told, monkeypatch):
    def far(*_: object) -> None:
        raise OSError(112, "Host is down")

    monkeypatch.setattr("app.lesson_file._see", far)
    look(qtbot, file, 5)
    assert told == []


def test_the_file_is_watched_without_being_asked(qtbot, file, path):
    path.write_text("other")
    with qtbot.waitSignal(file.changed, timeout=10_000):
        pass


def test_a_document_without_a_file_has_nothing_to_watch(qtbot, document, four_bars, claims):
    file = LessonFile(document, claims)
    document.open(four_bars)
    file.know(None, None)
    file.look()
    assert not file.is_open_elsewhere
    assert not claims.exists()


def test_another_window_is_noticed_until_it_ends(qtbot, document, path, four_bars, claims):
    with subprocess.Popen(
        [sys.executable, "-c", OPEN_IT, str(claims), str(path)], stdin=subprocess.PIPE, stdout=subprocess.PIPE
    ) as other:
        assert other.stdout is not None
        assert other.stdout.readline() == b"True\n"
        file = LessonFile(document, claims)
        document.open(four_bars, path)
        assert file.is_open_elsewhere
        other.kill()
        other.wait()
    file.look()
    assert not file.is_open_elsewhere
    file.end()
    assert list(claims.iterdir()) == []


def test_going_to_another_file_frees_the_first(qtbot, document, file, path, tmp_path, four_bars, claims):
    other = Document()
    second = LessonFile(other, claims)
    other.open(four_bars, path)
    assert second.is_open_elsewhere
    document.mark_saved(tmp_path / "b.musicxml")
    second.look()
    assert not second.is_open_elsewhere
    second.end()
