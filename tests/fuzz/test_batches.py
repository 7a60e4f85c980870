"""Commands that take many files go through a folder of nasty ones, tell each in a line, and do the rest."""

from __future__ import annotations

import os
import zipfile
from functools import cache
from pathlib import Path

import pytest

from app.cli import main
from core.errors import UnreadableFileError
from core.reading import read_file
from core.writing.musicxml import write_musicxml
from tests.core.builders import bowed
from tests.core.reading.test_xml_tree import HOSTILE
from tests.fuzz.corpus import abc_tunes, lessons
from tests.fuzz.on_lessons import pack
from tests.fuzz.readers import input_of

UNREADABLE = 3
GOOD = {"a good one.abc": abc_tunes()[0].encode(), "the last good one.musicxml": write_musicxml(lessons()[0]).encode()}


def refused(data: bytes) -> bool:
    try:
        return not read_file(data).lessons
    except UnreadableFileError:
        return True


@cache
def nasty() -> dict[str, bytes]:
    """Files of which nothing can be read."""
    by_lot = [(reader, number, input_of(reader, 11, number)) for reader in ("mxl", "abc") for number in range(40)]
    return {
        "empty.abc": b"",
        "zeros.abc": bytes(1000),
        "noise.musicxml": bytes(range(256)) * 40,
        "cut.musicxml": GOOD["the last good one.musicxml"][:-200],
        "picture.abc": b"\x89PNG\r\n\x1a\n" + bytes(200),
        "program.abc": b"\x7fELF" + bytes(range(256)),
        "no score.mxl": pack([("a.txt", b"x")], zipfile.ZIP_DEFLATED),
        "bomb.mxl": pack([("a.xml", b"<x>" + b" " * 2**20 * 70 + b"</x>")], zipfile.ZIP_DEFLATED),
        "nested.mxl": pack([("a.xml", pack([("a.xml", b"<x/>")], zipfile.ZIP_DEFLATED))], zipfile.ZIP_DEFLATED),
        "elsewhere.mxl": pack(
            [("META-INF/container.xml", b'<c><rootfile full-path="../../etc/passwd"/></c>')], zipfile.ZIP_DEFLATED
        ),
        **{
            f"hostile {place}.musicxml": text.encode()
            for place, text in enumerate(HOSTILE.values())
            if len(text) < 10**6 and refused(text.encode())
        },
        **{f"{reader} {number}.{reader}": data for reader, number, data in by_lot if refused(data)},
    }


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Nasty files, and a good one before and behind them; beside them what is no file, and one that is shut."""
    path = tmp_path / "music"
    path.mkdir()
    for name, data in (GOOD | nasty()).items():
        (path / name).write_bytes(data)
    (path / "folder.abc").mkdir()
    (path / "circle.abc").symlink_to(path / "circle.abc")
    (path / "nowhere.abc").symlink_to(path / "gone")
    os.mkfifo(path / "pipe.abc")
    return path


def files(folder: Path) -> list[Path]:
    return sorted(path for path in folder.iterdir() if path.is_file())


def told_of(error: str, names: list[str]) -> list[str]:
    """Names of which standard error does not tell in a line of its own."""
    lines = error.splitlines()
    assert not any("Traceback" in line for line in lines)
    return [name for name in names if not any(name in line and line.rstrip().endswith(".") for line in lines)]


def test_check_goes_through_a_folder_of_nasty_files(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    paths = files(folder)
    assert main(["check", *map(str, paths)]) == UNREADABLE
    out, error = capsys.readouterr()
    assert told_of(error, [path.name for path in paths if path.name not in GOOD]) == []
    assert all(name in out for name in GOOD)


def test_the_shelf_takes_what_is_good_of_a_folder_of_nasty_files(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shelf = ["--shelf", str(tmp_path / "shelf.db")]
    for _ in range(2):
        assert main(["shelf", "add", str(folder), *shelf]) == UNREADABLE
        out, error = capsys.readouterr()
        assert out.startswith("2 tunes on the shelf")
        assert told_of(error, [path.name for path in files(folder) if path.name not in GOOD]) == []
    assert main(["shelf", "rank", *shelf]) == 0
    assert len(capsys.readouterr().out.splitlines()) == 2


def test_a_sheet_is_printed_of_what_is_good_among_nasty_files(
    folder: Path, tmp_path: Path, qapp: object, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out.pdf"
    assert main(["sheet", *map(str, files(folder)), "--out", str(out)]) == UNREADABLE
    assert out.read_bytes().startswith(b"%PDF")
    assert told_of(capsys.readouterr().err, list(nasty())) == []


def test_a_pack_is_made_of_what_is_good_of_a_folder_of_nasty_files(
    folder: Path, tmp_path: Path, qapp: object, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "Class"
    assert main(["pack", str(folder), "--out", str(out), "--only", "abc,musicxml", "--jobs", "2"]) == UNREADABLE
    told, error = capsys.readouterr()
    assert told.startswith("2 lessons made")
    assert told_of(error, list(nasty())) == []
    assert len(list(out.glob("*/*.abc"))) == 2


def test_one_good_file_is_done_whatever_stands_before_it(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    tune, _ = bowed("A2B2c2d2|e8|]")
    assert tune.bars
    missing = [str(tmp_path / "x" / ("n" * 5000)), str(tmp_path), str(tmp_path / "gone.abc")]
    good = tmp_path / "good.abc"
    good.write_bytes(GOOD["a good one.abc"])
    assert main(["check", *missing, str(good)]) == UNREADABLE
    assert "good.abc" in capsys.readouterr().out
