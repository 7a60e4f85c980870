"""What the disk refuses: one sentence, and everything as it was; truly full disks where they can be made."""

from __future__ import annotations

import errno
import os
import subprocess
import sys
from contextlib import suppress
from dataclasses import replace
from pathlib import Path

import pytest

import app.files
from app.files import ChangedFileError, FileError, keep_aside, read_path, save_lesson, save_over, write_atomically
from app.imprint import imprint_of
from core.file_faults import BY_NAME, why
from core.lesson import Lesson

SAVE_LIMITED = """
import resource, signal, sys
from pathlib import Path
from app.files import FileError, save_lesson
from core.reading.abc import read_abc
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
lesson = read_abc("X:1\\nT:Limited\\nM:4/4\\nL:1/8\\nK:D\\nd2fd Adfd|]\\n").lessons[0]
resource.setrlimit(resource.RLIMIT_FSIZE, (500, 500))
try:
    save_lesson(lesson, Path(sys.argv[1]))
except FileError as fault:
    print(fault)
"""

COUNT_ON = """
import sys
from dataclasses import replace
from pathlib import Path
from app.files import ChangedFileError, read_known, save_over
path, rounds = Path(sys.argv[1]), int(sys.argv[2])
while rounds:
    reading, known = read_known(path)
    lesson = reading.lessons[0]
    tune = replace(lesson.tune, title=str(int(lesson.tune.title) + 1))
    try:
        save_over(replace(lesson, tune=tune), path, known)
    except ChangedFileError:
        continue
    rounds -= 1
"""


def everything(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}


@pytest.mark.parametrize("step", ["fsync", "replace", "mkstemp"])
@pytest.mark.parametrize("name", sorted(BY_NAME))
def test_whatever_the_system_says_the_old_file_stays_and_the_sentence_names_it(
    tmp_path: Path, four_bars: Lesson, monkeypatch, name: str, step: str
):
    target = tmp_path / "a.musicxml"
    target.write_bytes(b"old")

    def fail(*_: object, **__: object) -> None:
        raise OSError(getattr(errno, name), "in the words of the system")

    where, what = {
        "fsync": (os, "fsync"),
        "replace": (Path, "replace"),
        "mkstemp": (app.files.tempfile, "mkstemp"),
    }[step]
    monkeypatch.setattr(where, what, fail)
    with pytest.raises(FileError) as failed:
        save_lesson(four_bars, target)
    monkeypatch.undo()
    assert str(failed.value) == f"a.musicxml cannot be saved: {BY_NAME[name]}."
    assert everything(tmp_path) == {"a.musicxml": b"old"}


def test_an_unheard_of_fault_keeps_the_words_of_the_system():
    assert why(OSError(9999, "Strange trouble")) == "strange trouble"
    assert why(OSError()) == "the system does not say why"


def test_a_fault_of_windows_is_known_by_its_own_number():
    fault = OSError(errno.EACCES, "Zugriff verweigert")
    fault.winerror = 32
    assert why(fault) == "another program has it in use"


@pytest.mark.skipif(sys.platform == "win32", reason="no limits of file size")
def test_a_disk_that_takes_half_a_file_keeps_the_old_one(tmp_path: Path):
    target = tmp_path / "a.musicxml"
    target.write_bytes(b"old")
    run = subprocess.run([sys.executable, "-c", SAVE_LIMITED, str(target)], capture_output=True, text=True, check=True)
    assert run.stdout == "a.musicxml cannot be saved: it is larger than a file may be there.\n"
    assert everything(tmp_path) == {"a.musicxml": b"old"}


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="mounts a disk of 64 kB")
def test_a_full_disk_keeps_the_old_file(tmp_path: Path, four_bars: Lesson):
    mounted = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=64k", "none", str(tmp_path)], capture_output=True, check=False
    )
    if mounted.returncode:
        pytest.skip("not allowed to mount a disk")
    try:
        save_lesson(four_bars, tmp_path / "a.musicxml")
        old = (tmp_path / "a.musicxml").read_bytes()
        with open(tmp_path / "filler", "wb", buffering=0) as filler, suppress(OSError):
            while True:
                filler.write(b"x" * 1024)
        with pytest.raises(FileError, match=r"^a\.musicxml cannot be saved: the disk is full\.$"):
            save_lesson(four_bars, tmp_path / "a.musicxml")
        assert (tmp_path / "a.musicxml").read_bytes() == old
        assert sorted(everything(tmp_path)) == ["a.musicxml", "filler"]
    finally:
        subprocess.run(["umount", str(tmp_path)], check=True)


# ------------------------------------------------------------------------------------------------- names and links


def test_a_name_as_long_as_the_system_takes_can_be_saved(tmp_path: Path):
    name = "n" * (255 - len(".musicxml")) + ".musicxml"
    write_atomically(tmp_path / name, b"new")
    assert everything(tmp_path) == {name: b"new"}


@pytest.mark.parametrize(
    ("name", "reason"),
    [("n" * 300 + ".musicxml", "its name is too long"), ("a\0b.musicxml", "the system takes no file of that name")],
)
def test_a_name_that_is_refused_is_one_sentence(tmp_path: Path, four_bars: Lesson, name: str, reason: str):
    with pytest.raises(FileError) as failed:
        save_lesson(four_bars, tmp_path / name)
    assert str(failed.value) == f"{name} cannot be saved: {reason}."


def test_a_link_that_points_nowhere_is_filled_where_it_points(tmp_path: Path):
    (tmp_path / "link").symlink_to(tmp_path / "gone")
    write_atomically(tmp_path / "link", b"new")
    assert (tmp_path / "gone").read_bytes() == b"new"
    assert (tmp_path / "link").is_symlink()


def test_a_link_into_a_folder_that_is_not_there_is_one_sentence(tmp_path: Path, four_bars: Lesson):
    (tmp_path / "link.mxl").symlink_to(tmp_path / "gone" / "a.mxl")
    with pytest.raises(FileError, match=r"^link\.mxl cannot be saved: its folder is not there\.$"):
        save_lesson(four_bars, tmp_path / "link.mxl")


def test_links_in_a_circle_are_one_sentence(tmp_path: Path, four_bars: Lesson):
    (tmp_path / "a.mxl").symlink_to(tmp_path / "b.mxl")
    (tmp_path / "b.mxl").symlink_to(tmp_path / "a.mxl")
    with pytest.raises(FileError, match=r"^a\.mxl cannot be saved: its links lead round in a circle\.$"):
        save_lesson(four_bars, tmp_path / "a.mxl")


def test_a_folder_or_a_device_is_never_replaced(tmp_path: Path):
    (tmp_path / "folder").mkdir()
    os.mkfifo(tmp_path / "pipe")
    for name in ("folder", "pipe"):
        with pytest.raises(OSError, match=r"directory|argument"):
            write_atomically(tmp_path / name, b"new")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["folder", "pipe"]


def test_a_file_protected_against_writing_is_not_replaced(tmp_path: Path, four_bars: Lesson, monkeypatch):
    target = tmp_path / "a.mxl"
    target.write_bytes(b"old")
    target.chmod(0o444)
    monkeypatch.setattr(os, "access", lambda path, mode: bool(Path(path).stat().st_mode & 0o222))  # root may all
    with pytest.raises(FileError, match="you have no permission there"):
        save_lesson(four_bars, target)
    assert target.read_bytes() == b"old"


def test_what_a_killed_save_left_long_ago_goes_with_the_next_save_and_what_is_new_stays(tmp_path: Path):
    old, new = tmp_path / ".bowbench-old.part", tmp_path / ".bowbench-new.part"
    for part in (old, new):
        part.write_bytes(b"half")
    os.utime(old, (0, 0))
    write_atomically(tmp_path / "a", b"new")
    assert sorted(everything(tmp_path)) == [".bowbench-new.part", "a"]


# ------------------------------------------------------------------------------------------------- over another's work


def test_a_file_as_it_is_known_is_saved_over(tmp_path: Path, four_bars: Lesson):
    known = save_lesson(four_bars, tmp_path / "a.mxl")
    saved = save_over(four_bars, tmp_path / "a.mxl", known)
    assert saved.aside is None
    assert imprint_of(tmp_path / "a.mxl") == saved.imprint


def test_a_file_that_is_gone_is_written_anew(tmp_path: Path, four_bars: Lesson):
    known = save_lesson(four_bars, tmp_path / "a.mxl")
    (tmp_path / "a.mxl").unlink()
    save_over(four_bars, tmp_path / "a.mxl", known)
    assert (tmp_path / "a.mxl").exists()


def test_another_content_of_the_same_size_and_time_is_noticed(tmp_path: Path, four_bars: Lesson):
    target = tmp_path / "a.musicxml"
    known = save_lesson(four_bars, target)
    before = target.stat()
    other = target.read_bytes().replace(b"Gate", b"Sill")
    target.write_bytes(other)
    os.utime(target, ns=(before.st_atime_ns, before.st_mtime_ns))
    with pytest.raises(ChangedFileError):
        save_over(four_bars, target, known)
    assert everything(tmp_path) == {"a.musicxml": other}


@pytest.mark.parametrize("times", [1, 3])
def test_the_other_content_is_kept_aside_each_time_under_its_own_name(tmp_path: Path, four_bars: Lesson, times: int):
    target = tmp_path / "a.musicxml"
    for number in range(times):
        target.write_bytes(b"other %d" % number)
        os.utime(target, (1_000_000_000, 1_000_000_000))
        aside = save_over(four_bars, target, None, set_aside=True).aside
        assert aside is not None
        assert aside.read_bytes() == b"other %d" % number
        assert aside.name.startswith("a (other, 2001-09-0")
    assert len(everything(tmp_path)) == times + 1


def test_what_cannot_be_kept_aside_is_not_overwritten(tmp_path: Path, four_bars: Lesson, monkeypatch):
    target = tmp_path / "a.musicxml"
    target.write_bytes(b"other")

    def full(_: Path) -> Path:
        raise OSError(errno.ENOSPC, "")

    monkeypatch.setattr(app.files, "keep_aside", full)
    with pytest.raises(FileError, match="the disk is full"):
        save_over(four_bars, target, None, set_aside=True)
    assert everything(tmp_path) == {"a.musicxml": b"other"}


def test_a_save_that_fails_behind_keeping_aside_leaves_everything_as_it_was(tmp_path: Path, four_bars, monkeypatch):
    target = tmp_path / "a.musicxml"
    target.write_bytes(b"other")
    real = Path.replace

    def in_use(part: Path, at: Path) -> Path:
        if at == target:
            raise OSError(errno.EBUSY, "")
        return real(part, at)

    monkeypatch.setattr(Path, "replace", in_use)
    with pytest.raises(FileError, match="another program has it in use"):
        save_over(four_bars, target, None, set_aside=True)
    assert everything(tmp_path) == {"a.musicxml": b"other"}


def test_a_copy_kept_aside_that_fails_leaves_no_empty_file(tmp_path: Path, monkeypatch):
    (tmp_path / "a").write_bytes(b"other")

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(OSError):  # noqa: PT011
        keep_aside(tmp_path / "a")
    assert everything(tmp_path) == {"a": b"other"}


def test_windows_that_save_one_file_at_the_same_time_never_lose_what_the_other_saved(tmp_path: Path, four_bars: Lesson):
    path = tmp_path / "a.musicxml"
    save_lesson(replace(four_bars, tune=replace(four_bars.tune, title="0")), path)
    windows = [subprocess.Popen([sys.executable, "-c", COUNT_ON, str(path), "8"]) for _ in range(3)]
    assert [window.wait() for window in windows] == [0, 0, 0]
    assert read_path(path).lessons[0].tune.title == "24"
    assert sorted(everything(tmp_path)) == ["a.musicxml"]
