"""What is remembered, and what becomes of values that make no sense."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray

from app.settings import RECENT_LIMIT, Look, Settings
from core.sheet_plan import SheetKind, SheetPlan, TextBlock


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "settings.ini"


def test_settings_are_read_back_by_the_next_start(path: Path, tmp_path: Path):
    first = Settings(path)
    first.look, first.zoom, first.marks = Look.DARK, 1.5, "bars"
    first.sheet = SheetPlan(SheetKind.CLASS, bowings=("One",), paper="Letter", before=TextBlock("Listen"))
    first.strip = False
    first.set_window("split", QByteArray(b"abc"))
    first.folder = tmp_path
    del first
    again = Settings(path)
    assert (again.look, again.zoom, again.marks) == (Look.DARK, 1.5, "bars")
    assert again.strip is False
    assert again.folder == tmp_path
    assert again.sheet == SheetPlan(SheetKind.CLASS, paper="Letter"), "what belongs to one lesson is left out"
    assert again.window("split") == b"abc"


def test_values_that_make_no_sense_fall_back(path: Path):
    path.write_text("[General]\nlook=purple\nzoom=1e9\nmarks=all\nfolder=/no/such/folder\n[sheet]\nplan=A9\n")
    settings = Settings(path)
    assert (settings.look, settings.zoom, settings.marks, settings.sheet) == (Look.SYSTEM, None, "every", SheetPlan())
    assert settings.folder == Path.home()


def test_recent_files_are_the_latest_first_once_each_and_not_too_many(path: Path, tmp_path: Path):
    settings = Settings(path)
    files = [tmp_path / f"{number}.abc" for number in range(RECENT_LIMIT + 2)]
    for file in [*files, files[4]]:
        settings.remember_file(file)
    recent = settings.recent_files
    assert len(recent) == RECENT_LIMIT
    assert recent[:2] == (files[4], files[-1])
    assert len(set(recent)) == len(recent)
    settings.forget_file(files[4])
    assert settings.recent_files[0] == files[-1]
