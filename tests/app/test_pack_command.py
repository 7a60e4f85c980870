"""``bowbench pack``: what scripts rely on, and what a pack is after any end of it."""

from __future__ import annotations

import hashlib
import json
import os
import signal
import subprocess
import sys
import time
import zipfile
from pathlib import Path

import pytest
from pypdf import PdfReader

from app.cli import main
from app.pack_folder import CONTENTS, LOCK, MANIFEST
from core.reading import read_file

TOP = Path(__file__).resolve().parents[2]
TUNE = 'X:{n}\nT:{title}\nR:reel\nM:4/4\nL:1/8\nK:D\n"D"d2fd Adfd|"G"e2ge "A"Bege|]\n'
QUICK = ("--only", "musicxml,abc", "--jobs", "1")


def book(*titles: str) -> str:
    return "\n".join(TUNE.format(n=n, title=title) for n, title in enumerate(titles, 1))


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    folder = tmp_path / "music"
    folder.mkdir()
    (folder / "book.abc").write_text(book("Gate of the Weir", "Over the Sill"), "utf-8")
    return folder


@pytest.fixture
def pack(tmp_path: Path, capsys):
    """Packs into ``tmp_path/Class``, and gives status, stdout and lines of stderr."""

    def pack(*words: object) -> tuple[int, str, list[str]]:
        status = main(["pack", *map(str, words), "--out", str(tmp_path / "Class")])
        told = capsys.readouterr()
        return status, told.out, told.err.splitlines()

    return pack


def files(out: Path) -> dict[str, int]:
    """All files of a pack, with the time of their last change."""
    return {
        str(path.relative_to(out)): path.stat().st_mtime_ns
        for path in out.rglob("*")
        if path.is_file() and path.name not in (MANIFEST, LOCK)
    }


def test_a_pack_holds_every_kind_of_file(tmp_path, folder, pack):
    (folder / "book.abc").write_text(book("Gate of the Weir"), "utf-8")
    status, out, err = pack(folder, "--jobs", "1")
    assert (status, err) == (0, [])
    made = tmp_path / "Class"
    assert out == f"1 lesson made, 0 up to date: {made / CONTENTS}\n"
    name = "Gate of the Weir"
    endings = (", teacher.pdf", ", class.pdf", ".musicxml", ".abc", ".mid", ".mp3")
    assert set(files(made)) == {CONTENTS, "Class.zip", *(f"{name}/{name}{ending}" for ending in endings)}
    with zipfile.ZipFile(made / "Class.zip") as archive:
        assert {f"Class/{path}" for path in files(made)} - {"Class/Class.zip"} == set(archive.namelist())
    text = PdfReader(made / name / f"{name}, teacher.pdf").pages[0].extract_text()
    assert name in " ".join(text.split())
    lesson = read_file((folder / "book.abc").read_bytes()).lessons[0]
    assert read_file((made / name / f"{name}.musicxml").read_bytes()).lessons == (lesson,)


def test_nothing_is_made_twice(tmp_path, folder, pack):
    pack(folder, *QUICK)
    before = files(tmp_path / "Class")
    assert pack(folder, *QUICK)[1].startswith("0 lessons made, 2 up to date")
    assert files(tmp_path / "Class") == before


def test_what_changed_is_made_again_and_what_is_gone_goes(tmp_path, folder, pack):
    pack(folder, *QUICK)
    before = files(tmp_path / "Class")
    (folder / "book.abc").write_text(book("Gate of the Weir", "Frost"), "utf-8")
    assert pack(folder, *QUICK)[1].startswith("1 lesson made, 1 up to date")
    after = files(tmp_path / "Class")
    assert {path.split("/")[0] for path in after} == {"Gate of the Weir", "Frost", CONTENTS, "Class.zip"}
    kept = "Gate of the Weir/Gate of the Weir.abc"
    assert after[kept] == before[kept]
    assert "Over the Sill" not in (tmp_path / "Class" / CONTENTS).read_text("utf-8")


def test_a_bad_file_costs_one_line_and_the_rest_is_made(tmp_path, folder, pack):
    (folder / "bad.musicxml").write_text("\n\n<score-partwise><part>", "utf-8")
    status, out, err = pack(folder, folder / "nowhere.abc", *QUICK)
    assert status == 3
    assert out.startswith("2 lessons made")
    assert [line.split(": ")[0] for line in err] == [str(folder / "nowhere.abc"), str(folder / "bad.musicxml")]
    assert ": line 3: " in err[1]
    page = (tmp_path / "Class" / CONTENTS).read_text("utf-8")
    assert "bad.musicxml: line 3: " in page
    assert str(folder) not in page


def test_what_was_packed_of_a_file_that_cannot_be_read_any_more_stays(tmp_path, folder, pack):
    other = tmp_path / "other.abc"
    other.write_text(book("Frost"), "utf-8")
    pack(folder, other, *QUICK)
    other.write_text("spoilt", "utf-8")
    status, _, err = pack(folder, other, *QUICK)
    assert status == 3
    assert err[0].startswith(f"{other}: ")
    assert err[1:] == ["Not read again, so left as packed before, off the contents page: Frost."]
    other.unlink()
    assert pack(folder, other, *QUICK)[0] == 3
    assert (tmp_path / "Class" / "Frost" / "Frost.abc").exists()
    assert pack(folder, *QUICK)[0] == 0  # not asked for any more
    assert not (tmp_path / "Class" / "Frost").exists()


def test_a_lesson_that_cannot_be_made_costs_one_line(tmp_path, folder, pack):
    (tmp_path / "Class").mkdir()
    (tmp_path / "Class" / MANIFEST).write_text('{"format": "bowbench-pack/1", "lessons": [], "archive": null, '
                                               '"archive_of": ""}')  # fmt: skip
    (tmp_path / "Class" / "Over the Sill").write_text("a file where a folder should be")
    status, out, err = pack(folder, *QUICK)
    assert status == 3
    assert out.startswith("1 lesson made")
    assert len(err) == 1
    assert err[0].startswith(f"{folder / 'book.abc'}, tune 2, “Over the Sill”: ")


def test_what_is_asked_for_and_cannot_be_made_here_is_told(tmp_path, folder, pack, monkeypatch):
    monkeypatch.setitem(sys.modules, "soundfile", None)  # importing it fails
    pack(folder, "--only", "abc,audio", "--jobs", "1")
    assert "cannot make it: Sound" in (tmp_path / "Class" / CONTENTS).read_text("utf-8")
    pack(folder, *QUICK)
    assert "cannot make it" not in (tmp_path / "Class" / CONTENTS).read_text("utf-8")


def test_a_pack_inside_the_folder_is_not_packed_again(folder, capsys):
    for _ in range(2):
        assert main(["pack", str(folder), "--out", str(folder / "Class"), *QUICK]) == 0
    assert capsys.readouterr().out.splitlines()[1].startswith("0 lessons made, 2 up to date")


@pytest.mark.parametrize("words", [["--jobs", "0"], ["--only", "gold"], []])
def test_a_wrong_call_is_status_2(words, capsys):
    assert main(["pack", *words]) == 2
    assert capsys.readouterr().err


def test_a_folder_with_other_files_is_a_wrong_call(tmp_path, folder, pack):
    (tmp_path / "Class").mkdir()
    (tmp_path / "Class" / "letters.txt").write_text("mine")
    status, _, err = pack(folder, *QUICK)
    assert status == 2
    assert len(err) == 1
    assert files(tmp_path / "Class").keys() == {"letters.txt"}


def test_killed_at_half_nothing_is_half_written_and_only_the_missing_is_made(tmp_path, folder, pack):
    titles = [f"Tune {word}" for word in "abcdefghijklmnopqrstuvwxyz"]
    (folder / "book.abc").write_text(book(*titles), "utf-8")
    out = tmp_path / "Class"
    run = subprocess.Popen(
        [sys.executable, "-m", "app", "pack", str(folder), "--out", str(out), *QUICK], cwd=TOP, start_new_session=True
    )
    deadline = time.monotonic() + 120
    while len(recorded(out)) < 3:
        assert run.poll() is None, "it ended before it could be killed"
        assert time.monotonic() < deadline, "it made nothing"
        time.sleep(0.002)
    os.killpg(run.pid, signal.SIGKILL)
    run.wait()
    before = recorded(out)
    assert 3 <= len(before) < len(titles)
    assert_whole(out)
    assert not (out / CONTENTS).exists()
    times = files(out)

    status, told, err = pack(folder, *QUICK)
    assert (status, err) == (0, [])
    assert told.startswith(f"{len(titles) - len(before)} lessons made, {len(before)} up to date")
    assert_whole(out)
    after = files(out)
    assert all(after[path] == times[path] for lesson in before for path, _, _ in lesson["files"])
    assert set(after) == {CONTENTS, "Class.zip", *(f"{t}/{t}{end}" for t in titles for end in (".abc", ".musicxml"))}


def recorded(out: Path) -> list[dict]:
    """Lessons in the manifest, read at any moment while it is written."""
    try:
        return json.loads((out / MANIFEST).read_text("utf-8"))["lessons"]
    except FileNotFoundError:
        return []


def assert_whole(out: Path) -> None:
    """Every file under a name of its own can be read, and is what the manifest says of it."""
    for path in out.rglob("*.*"):
        if path.suffix in (".abc", ".musicxml"):
            assert len(read_file(path.read_bytes()).lessons) == 1
    for lesson in recorded(out):
        for path, size, digest in lesson["files"]:
            data = (out / path).read_bytes()
            assert (len(data), hashlib.sha256(data).hexdigest()) == (size, digest)
