"""Files: all or nothing, and one sentence where it fails."""

from __future__ import annotations

import os
import stat
from dataclasses import replace
from pathlib import Path

import pytest

from app.files import FileError, lesson_path, read_path, save_abc, save_lesson, suggested_name, write_atomically
from core.lesson import Lesson


@pytest.mark.parametrize("name", ["lesson.musicxml", "lesson.mxl", "LESSON.MXL"])
def test_a_saved_lesson_opens_equal(tmp_path: Path, four_bars: Lesson, name: str):
    save_lesson(four_bars, tmp_path / name)
    reading = read_path(tmp_path / name)
    assert reading.is_lesson_file
    assert reading.lessons == (four_bars,)


def test_a_lesson_written_as_abc_opens_as_a_tune_book_and_what_it_loses_is_told(tmp_path: Path, four_bars: Lesson):
    reach = replace(four_bars.reach, hair_cm=60.0)
    assert "What is set for reach and tuning is left out." in save_abc(
        replace(four_bars, reach=reach), tmp_path / "a.abc"
    )
    reading = read_path(tmp_path / "a.abc")
    assert [lesson.bowings[0].name for lesson in reading.lessons] == [bowing.name for bowing in four_bars.bowings]
    assert not reading.is_lesson_file


def test_mxl_is_packed_and_musicxml_is_not(tmp_path: Path, four_bars: Lesson):
    save_lesson(four_bars, tmp_path / "a.mxl")
    save_lesson(four_bars, tmp_path / "a.musicxml")
    assert (tmp_path / "a.mxl").read_bytes()[:2] == b"PK"
    assert (tmp_path / "a.musicxml").read_bytes()[:5] == b"<?xml"


def test_saving_leaves_nothing_but_the_file(tmp_path: Path):
    write_atomically(tmp_path / "a.txt", b"one")
    write_atomically(tmp_path / "a.txt", b"two")
    assert [path.name for path in tmp_path.iterdir()] == ["a.txt"]
    assert (tmp_path / "a.txt").read_bytes() == b"two"


@pytest.mark.parametrize("step", ["fsync", "replace"])
def test_a_save_that_fails_leaves_the_old_file_and_no_other(tmp_path: Path, monkeypatch, step: str):
    target = tmp_path / "a.txt"
    target.write_bytes(b"old")

    def fail(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os if step == "fsync" else Path, step, fail)
    with pytest.raises(OSError, match="No space"):
        write_atomically(target, b"new")
    monkeypatch.undo()
    assert target.read_bytes() == b"old"
    assert [path.name for path in tmp_path.iterdir()] == ["a.txt"]


def test_a_failed_save_is_one_sentence_that_names_the_file(tmp_path: Path, four_bars: Lesson):
    with pytest.raises(FileError) as failed:
        save_lesson(four_bars, tmp_path / "no such folder" / "lesson.musicxml")
    assert str(failed.value) == "lesson.musicxml cannot be saved: its folder is not there."


def test_the_permissions_of_a_file_outlive_a_save(tmp_path: Path):
    target = tmp_path / "a.txt"
    target.write_bytes(b"old")
    target.chmod(0o640)
    write_atomically(target, b"new")
    assert stat.S_IMODE(target.stat().st_mode) == 0o640


def test_a_new_file_has_the_permissions_of_any_new_file(tmp_path: Path):
    write_atomically(tmp_path / "a.txt", b"new")
    (tmp_path / "b.txt").write_bytes(b"plain")
    assert (tmp_path / "a.txt").stat().st_mode == (tmp_path / "b.txt").stat().st_mode


def test_saving_through_a_link_keeps_the_link(tmp_path: Path):
    (tmp_path / "real.txt").write_bytes(b"old")
    (tmp_path / "link.txt").symlink_to(tmp_path / "real.txt")
    write_atomically(tmp_path / "link.txt", b"new")
    assert (tmp_path / "link.txt").is_symlink()
    assert (tmp_path / "real.txt").read_bytes() == b"new"


def test_a_file_that_is_not_there_is_one_sentence(tmp_path: Path):
    with pytest.raises(FileError) as failed:
        read_path(tmp_path / "gone.abc")
    assert str(failed.value) == "gone.abc cannot be opened: there is no such file."


def test_a_folder_is_one_sentence(tmp_path: Path):
    with pytest.raises(FileError, match=f"^{tmp_path.name} cannot be opened: a folder has that name.$"):
        read_path(tmp_path)


def test_a_broken_file_names_file_and_line(tmp_path: Path):
    bad = tmp_path / "bad.musicxml"
    bad.write_text('<?xml version="1.0"?>\n<score-partwise>\n<part-list>\n</score-partwise>\n')
    with pytest.raises(FileError, match=r"^bad\.musicxml, line [34]: "):
        read_path(bad)


def test_a_very_large_file_is_refused(tmp_path: Path, monkeypatch):
    monkeypatch.setattr("app.files.LARGEST_FILE_BYTES", 10)
    (tmp_path / "large.abc").write_text("X:1\nK:D\n" + "d" * 100)
    with pytest.raises(FileError, match="larger than"):
        read_path(tmp_path / "large.abc")


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="no such device here")
def test_a_device_that_never_ends_is_not_read_to_its_end(monkeypatch):
    monkeypatch.setattr("app.files.LARGEST_FILE_BYTES", 1 << 20)
    with pytest.raises(FileError, match="zero is larger than 1 MB"):
        read_path(Path("/dev/zero"))


@pytest.mark.parametrize(
    ("chosen", "saved"),
    [
        ("a", "a.musicxml"),
        ("a.mxl", "a.mxl"),
        ("a.musicxml", "a.musicxml"),
        ("a.abc", "a.abc.musicxml"),
        ("v1.2", "v1.2.musicxml"),
    ],
)
def test_a_lesson_is_never_saved_under_the_name_of_another_kind_of_file(chosen: str, saved: str):
    assert lesson_path(Path(chosen)).name == saved


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("The Tuesday Ferry", "The Tuesday Ferry.musicxml"),
        ("../../etc/passwd", "etc passwd.musicxml"),
        ('A/B: "C"?', "A B C.musicxml"),
        ("", "Lesson.musicxml"),
        ("Sruthán’s", "Sruthán’s.musicxml"),
        ("Aux", "Aux tune.musicxml"),
    ],
)
def test_a_title_makes_a_safe_file_name(title: str, name: str):
    assert suggested_name(title) == name
