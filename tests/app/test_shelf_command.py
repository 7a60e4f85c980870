"""``bowbench shelf``: what scripts rely on."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import pytest

from app.cli import main
from app.shelf_place import default_shelf
from core.shelf.catalogue import Catalogue
from core.shelf.remarks import change_tags, set_status

BOOK = """X:7
T:Gate of the Weir
T:The Keeper's Delight
R:reel
M:4/4
L:1/8
K:D
d2fd Adfd|e2ge Bege|]

X:8
T:Over the Sill
R:jig
M:6/8
L:1/8
K:Gmix
GAB c2d|e3 d3|]
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    folder = tmp_path / "music"
    folder.mkdir()
    (folder / "book.abc").write_text(BOOK, "utf-8")
    return folder


@pytest.fixture
def run(capsys):
    def run(*words: str) -> tuple[int, list[str], list[str]]:
        status = main(["shelf", *words])
        told = capsys.readouterr()
        return status, told.out.splitlines(), told.err.splitlines()

    return run


def found(run, *words: str) -> list[str]:
    status, out, err = run("find", "--json", *words)
    assert (status, err) == (0, [])
    return [tune["title"] for tune in json.loads("".join(out))["tunes"]]


def test_folders_are_added_and_tunes_are_found(run, folder):
    status, out, err = run("add", str(folder))
    assert (status, err) == (0, [])
    assert out == ["2 tunes on the shelf; 1 file: 1 new, 0 changed, 0 moved, 0 back, 0 gone."]
    status, out, err = run("find", "gate")
    assert (status, err) == (0, [])
    assert out == [f"Gate of the Weir — reel, D major, 4/4 — {folder / 'book.abc'}, tune 1"]


def test_json_holds_exactly_the_keys_of_the_contract(run, folder):
    run("add", str(folder))
    with Catalogue(default_shelf()) as catalogue:
        set_status(catalogue, 2, "to do")
        change_tags(catalogue, 2, ["class"])
    _, out, _ = run("find", "sill", "--json")
    assert json.loads("".join(out)) == {
        "format": "bowbench-shelf/1",
        "tunes": [{
            "file": str(folder / "book.abc"), "place": 2, "number": 8, "title": "Over the Sill", "other_titles": [],
            "dance": "jig", "key": "G mixolydian", "meter": "6/8", "parts": 1, "bars": 2, "notes": "GABCDED",
            "bowings": [{"name": "As written", "accents": "on-beat"}], "status": "to do", "tags": ["class"],
            "opened": None,
        }],
    }  # fmt: skip


@pytest.mark.parametrize(
    ("options", "titles"),
    [
        (["--dance", "jig"], ["Over the Sill"]),
        (["--key", "Gmix"], ["Over the Sill"]),
        (["--meter", "C"], ["Gate of the Weir"]),
        (["--notes", "dfd"], ["Gate of the Weir"]),
        (["--notes", "u u u"], ["Over the Sill"]),
        (["--notes", "def"], []),
        (["--notes", "def", "--any-key"], ["Over the Sill"]),
        (["--status", "none"], ["Gate of the Weir", "Over the Sill"]),
        (["--status", "ready"], []),
        (["--tag", "class"], []),
        (["--bowing", "on-beat"], ["Gate of the Weir", "Over the Sill"]),
        (["keepers", "del"], ["Gate of the Weir"]),
    ],
)
def test_each_option_finds_its_tunes(run, folder, options, titles):
    run("add", str(folder))
    assert found(run, *options) == titles


def test_a_file_that_cannot_be_read_gives_status_3_and_the_rest_is_done(run, folder):
    (folder / "bad.abc").write_bytes(b"")
    status, out, err = run("add", str(folder), str(folder / "missing"))
    assert status == 3
    assert err[0] == f"{folder / 'missing'}: there is no such file or folder."
    assert err[1].startswith(f"{folder / 'bad.abc'}: ")
    assert len(err) == 2
    assert out[0].startswith("2 tunes on the shelf; 2 files")


def test_what_is_on_the_shelf_is_looked_through_again_where_nothing_is_named(run, folder):
    run("add", str(folder))
    (folder / "book.abc").rename(folder / "moved.abc")
    assert run("add")[1] == ["2 tunes on the shelf; 1 file: 0 new, 0 changed, 1 moved, 0 back, 0 gone."]


@pytest.mark.parametrize(
    "words",
    [("find", "--key", "H"), ("find", "--notes", "xyz"), ("find", "--status", "sold"), ("find", "--meter", "six"),
     ("add",), ("sort",), ()],
)  # fmt: skip
def test_a_wrong_call_gives_status_2(run, words):
    status, out, err = run(*words)
    assert (status, out) == (2, [])
    assert err


def test_an_empty_shelf_says_what_to_do(run):
    assert run("find", "gate") == (0, [], ["The shelf is empty: “bowbench shelf add FOLDER” puts tunes on it."])


def test_another_catalogue_can_be_named(run, folder, tmp_path):
    other = str(tmp_path / "other.db")
    run("add", str(folder), "--shelf", other)
    assert found(run) == []
    assert len(found(run, "--shelf", other)) == 2


def test_a_damaged_shelf_is_one_sentence_with_the_way_out(run, folder):
    run("add", str(folder))
    with Catalogue(default_shelf()) as catalogue:
        set_status(catalogue, 1, "taught")
    default_shelf().write_bytes(b"no catalogue" * 1000)
    status, out, err = run("find")
    assert (status, out, len(err)) == (3, [], 1)
    assert "“bowbench shelf add --rebuild”" in err[0]
    status, out, err = run("add", "--rebuild")
    assert (status, len(err)) == (0, 1)
    assert "what you noted of 1 tune is kept" in err[0]
    assert found(run, "--status", "taught") == ["Gate of the Weir"]


def test_progress_is_shown_on_a_terminal_only(run, folder, monkeypatch):
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True)
    _, out, err = run("add", str(folder))
    assert "0 of 1 files" in "".join(err)
    assert len(out) == 1


def test_the_shelf_stands_in_the_users_data_folder(monkeypatch, tmp_path):
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setenv("XDG_DATA_HOME", "relative")
    assert default_shelf() == tmp_path / ".local" / "share" / "Bowbench" / "shelf.db"
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    assert default_shelf() == tmp_path / "data" / "Bowbench" / "shelf.db"
    monkeypatch.setattr(sys, "platform", "darwin")
    assert default_shelf() == tmp_path / "Library" / "Application Support" / "Bowbench" / "shelf.db"
    monkeypatch.setattr(sys, "platform", "win32")
    monkeypatch.setenv("LOCALAPPDATA", str(tmp_path / "local"))
    assert default_shelf() == tmp_path / "local" / "Bowbench" / "shelf.db"


def test_rank_puts_tunes_in_order_and_tells_the_figures(tmp_path, capsys):
    samples = Path(__file__).parents[2] / "sample_tunes"
    catalogue = str(tmp_path / "shelf.db")
    assert main(["shelf", "add", str(samples), "--shelf", catalogue]) == 0
    capsys.readouterr()
    assert main(["shelf", "rank", "--accents", "backbeat", "--at-most", "3", "--json", "--shelf", catalogue]) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["format"], told["accents"], len(told["tunes"])) == ("bowbench-rank/1", "backbeat", 3)
    missed = [tune["figures"]["missed"] / tune["figures"]["playings"] for tune in told["tunes"]]
    assert missed == sorted(missed)
    assert main(["shelf", "rank", "--dance", "reel", "--shelf", catalogue]) == 0
    assert "missed 0, broken 0" in capsys.readouterr().out.splitlines()[0]
    assert main(["shelf", "rank", "--accents", "sideways", "--shelf", catalogue]) == 2
