"""``bowbench check --set``: what is printed, the JSON contract, and exit statuses."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from app.cli import main

ODD = "X:1\nT:Five Strokes\nM:4/4\nL:1/4\nK:D\nd2 f2|a2 f d|]\n"
BOOK = "X:1\nT:Four\nM:4/4\nL:1/4\nK:D\nd2 f2|a2 d2|]\n\nX:2\nT:Fixed\nM:4/4\nL:1/4\nK:D\nvd2 f2|a2 d2|]\n"
FAULT = "X:1\nT:Against the slur\nM:2/4\nL:1/8\nK:G\nv(GuA) Bc|\n"


@pytest.fixture
def files(tmp_path, monkeypatch) -> Path:
    monkeypatch.chdir(tmp_path)
    for name, text in (("odd.abc", ODD), ("book.abc", BOOK), ("fault.abc", FAULT)):
        (tmp_path / name).write_text(text, encoding="utf-8")
    return tmp_path


def lines_of_set(capsys, *words: str) -> list[str]:
    main(["check", "--set", *words])
    lines = capsys.readouterr().out.splitlines()
    return [line.strip() for line in lines[next(k for k, line in enumerate(lines) if line.startswith("Set of")) :]]


def json_of_set(capsys, *words: str) -> dict:
    assert main(["check", "--json", "--set", *words]) == 0
    return json.loads(capsys.readouterr().out)


def test_the_set_is_told_behind_its_tunes(files, capsys) -> None:
    assert lines_of_set(capsys, "odd.abc", "book.abc#1x2") == [
        "Set of 2 tunes",
        "1. Five Strokes — As written, once",
        "2. Four — As written, twice",
        "“Five Strokes” ends down, “Four” begins up: turned round to its end (alone it begins down).",
        "“Four” ends down and begins up the second time: turned round to its end (alone it begins down).",
        "Back to the start: “Four” ends down, “Five Strokes” begins up: turned round to its end "
        "(alone it begins down).",
        "the set does not come round",
        "warning: “Four” begins up after “Five Strokes”, every time, and is turned round to its end "
        "(alone it begins down).",
        "mended in “Five Strokes”: Slur notes 2 and 3 of bar 2 · 1 slur more",
        "mended in “Four”: Take the first note of bar 1 down every time",
        "mended in “Five Strokes”: Slur notes 1 and 2 of bar 2 · 1 slur more",
        "note: Played again from the start, the set begins up (the first time down).",
        "mended in “Five Strokes”: Take the first note of bar 1 down every time",
        "As it stands: 2 turned joins, no retakes; in the order 2, 1: no turned joins, no retakes.",
    ]


def test_only_the_tunes_of_the_set_are_checked_by_themselves(files, capsys) -> None:
    found = json_of_set(capsys, "book.abc#2", "odd.abc", "book.abc#2x2")
    told = [(file["file"], [tune["number"] for tune in file["tunes"]]) for file in found["files"]]
    assert told == [("book.abc", [2]), ("odd.abc", [1])]


def test_json_holds_exactly_the_keys_of_the_contract(files, capsys) -> None:
    found = json_of_set(capsys, "odd.abc", "book.abc#2x2")
    assert set(found) == {"format", "files", "set"}
    assert set(found["set"]) == {"entries", "joins", "comes_round", "findings", "orders"}
    assert found["set"]["entries"][1] == {
        "file": "book.abc", "number": 2, "title": "Fixed", "bowing": "As written", "times": 2,
    }  # fmt: skip
    first, again, back = found["set"]["joins"]
    assert first == {
        "way": "next", "before": {"tune": 1, "time": 1}, "after": {"tune": 2, "time": 1},
        "last": "down", "first": "down", "alone": "down", "retake": True, "turned": False, "rest": False,
        "text": "“Five Strokes” ends down, “Fixed” begins down: by a retake.",
    }  # fmt: skip
    assert (again["way"], back["way"], found["set"]["comes_round"]) == ("again", "round", True)
    (finding,) = found["set"]["findings"]
    assert set(finding) == {"rule", "severity", "tune", "bars", "notes", "text", "remedies"}
    assert (finding["rule"], finding["severity"], finding["tune"]) == ("next-tune-retake", "note", 2)
    assert finding["remedies"][0] == {"tune": 1, "text": "Slur notes 2 and 3 of bar 2", "slurs": 1}
    assert found["set"]["orders"] == [
        {"tunes": [2, 1], "turned": 0, "retakes": 0, "comes_round": True},
        {"tunes": [1, 2], "turned": 0, "retakes": 1, "comes_round": True},
    ]


def test_without_it_the_json_has_no_set(files, capsys) -> None:
    main(["check", "--json", "odd.abc"])
    assert set(json.loads(capsys.readouterr().out)) == {"format", "files"}


@pytest.mark.parametrize("word", ["book.abc", "book.abc#7", "book.abc#two", "odd.abc#/Smooth", "odd.abc#x99"])
def test_a_tune_that_cannot_be_meant_is_a_wrong_call(files, capsys, word: str) -> None:
    assert main(["check", "--set", "odd.abc", word]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1
    assert err.startswith(word.partition("#")[0])


def test_too_many_tunes_are_a_wrong_call(files, capsys) -> None:
    assert main(["check", "--set", *["odd.abc"] * 25]) == 2
    assert "at most 24 tunes; there are 25" in capsys.readouterr().err


def test_a_file_that_cannot_be_read_leaves_no_set_but_the_other_tunes(files, capsys) -> None:
    assert main(["check", "--json", "--set", "odd.abc", "gone.abc"]) == 3
    out, err = capsys.readouterr()
    found = json.loads(out)
    assert found["set"] is None
    assert [file["file"] for file in found["files"]] == ["odd.abc"]
    assert "gone.abc" in err


def test_faults_of_a_tune_in_the_set_are_found(files, capsys) -> None:
    assert main(["check", "--set", "fault.abc", "odd.abc"]) == 1
