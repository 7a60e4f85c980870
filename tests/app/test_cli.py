"""The command line: exit statuses, the JSON contract and the sentences on stderr."""

import json
import subprocess
import sys
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from app.cli import COMMANDS, main
from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing, set_plan
from core.lesson import Lesson
from core.reach import ReachSettings
from core.reading import read_file
from core.strings import Tuning
from core.tune import Tempo
from core.writing.musicxml import write_musicxml

SEVEN = """X:7
T:Seven in the bar
R:reel
M:4/4
L:1/8
K:Edor
ef|"Em"g2fe dBGA|B2dB "D"AFDE|1 E4 E2ef:|2 E4 E2||
"""
FAULT = "X:1\nT:Against the slur\nM:2/4\nL:1/8\nK:G\nv(GuA) Bc|\n"


@pytest.fixture
def book(tmp_path):
    def write(text, name="tune.abc"):
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return str(path)

    return write


def checked(capsys, *arguments):
    status = main(["check", "--json", *arguments])
    return status, json.loads(capsys.readouterr().out)


def test_json_holds_exactly_the_keys_of_the_contract(book, capsys):
    status, found = checked(capsys, book(SEVEN))
    assert status == 0
    assert set(found) == {"format", "files"}
    assert found["format"] == "bowbench-check/1"
    (file,) = found["files"]
    assert set(file) == {"file", "problems", "tunes"}
    (tune,) = file["tunes"]
    assert set(tune) == {"number", "title", "dance", "meter", "key", "order", "bowings"}
    (bowing,) = tune["bowings"]
    assert set(bowing) == {"name", "accents", "notes", "totals", "findings"}
    assert set(bowing["notes"][0]) == {"id", "bar", "at", "length", "pitches", "joined", "mark", "bows"}
    assert set(bowing["totals"]) == {
        "strokes", "slurs", "retakes", "driven", "up", "buried", "unstruck", "consistency", "comes_round",
    }  # fmt: skip
    assert set(bowing["findings"][0]) == {"rule", "severity", "bars", "pass", "notes", "text"}


def test_json_tells_the_tune(book, capsys):
    _, found = checked(capsys, book(SEVEN))
    tune = found["files"][0]["tunes"][0]
    assert (tune["number"], tune["title"], tune["dance"]) == (7, "Seven in the bar", "reel")
    assert (tune["meter"], tune["key"]) == ("4/4", "E dorian")
    # the repeat goes back to the start (ABC 2.1, 4.8), so that the pick-up is played twice
    assert tune["order"] == [[0, 1], [1, 1], [2, 1], [3, 1], [0, 2], [1, 2], [2, 2], [4, 1]]


def test_json_tells_each_note_with_its_bows(book, capsys):
    _, found = checked(capsys, book(SEVEN))
    notes = found["files"][0]["tunes"][0]["bowings"][0]["notes"]
    assert [note["bar"] for note in notes[:3]] == [0, 0, 1]
    assert [note["at"] for note in notes[:4]] == ["3", "7/2", "0", "1"]
    assert notes[2]["length"] == "1"
    assert notes[2]["pitches"] == ["G5"]
    # two strokes before the first full bar, so D U; on separate bows the first pass has 2+7+7+4 = 20 strokes
    assert [note["bows"] for note in notes[:3]] == [["down", "down"], ["up", "up"], ["down", "down"]]


def test_a_fault_in_a_bowing_is_status_1(book, capsys):
    status, found = checked(capsys, book(FAULT))
    assert status == 1
    findings = found["files"][0]["tunes"][0]["bowings"][0]["findings"]
    assert [finding["severity"] for finding in findings].count("fault") == 1


def test_an_unreadable_file_is_status_3_and_the_rest_is_done(book, capsys):
    status, found = checked(capsys, book("no tune here", "bad.abc"), book(SEVEN))
    assert status == 3
    assert [Path(file["file"]).name for file in found["files"]] == ["tune.abc"]


def test_the_sentence_on_stderr_names_file_line_and_what_was_expected(book, capsys):
    path = book("\n\n<score-partwise><part>", "bad.xml")
    assert main(["check", path]) == 3
    said = capsys.readouterr().err
    assert said.startswith(f"{path}: line 3: ")


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="no such device here")
def test_a_device_that_never_ends_is_not_read_to_its_end(capsys, monkeypatch):
    monkeypatch.setattr("app.files.LARGEST_FILE_BYTES", 1 << 20)
    assert main(["check", "/dev/zero"]) == 3
    assert capsys.readouterr().err == "zero is larger than 1 MB and was not opened.\n"


def test_a_missing_file_is_status_3(capsys):
    assert main(["check", "/nowhere/at all.abc"]) == 3
    assert "/nowhere/at all.abc: there is no such file" in capsys.readouterr().err


@pytest.mark.parametrize(
    "words",
    [["check"], ["check", "x", "--accents", "loudly"], ["sheet", "x"], ["check", "x", "--frob"], ["--frob"]],
)
def test_a_wrong_call_is_status_2(words, capsys):
    assert main(words) == 2
    assert capsys.readouterr().err


def test_the_help_names_every_command(capsys):
    assert main(["--help"]) == 0
    said = " ".join(capsys.readouterr().out.split())
    assert [name for name in COMMANDS if f"bowbench {name} " not in said] == []


def test_a_name_that_no_bowing_has_is_a_wrong_call(book, capsys):
    assert main(["check", book(SEVEN), "--bowing", "Smooth"]) == 2
    assert "“Smooth”" in capsys.readouterr().err


def test_another_plan_is_judged_without_touching_the_file(book, capsys):
    path = book(SEVEN)
    before = Path(path).read_bytes()
    _, found = checked(capsys, path, "--accents", "backbeat")
    assert found["files"][0]["tunes"][0]["bowings"][0]["accents"] == "backbeat"
    assert Path(path).read_bytes() == before


def test_another_plan_holds_in_every_bar(tmp_path, capsys):
    tune = read_file(SEVEN.encode()).lessons[0].tune
    drawn = set_plan(tune, Bowing("Drawn"), AccentPlan(PlanKind.BACKBEAT), 1, 2)
    path = tmp_path / "lesson.musicxml"
    path.write_text(write_musicxml(Lesson(tune, (drawn,))), encoding="utf-8")
    _, as_drawn = checked(capsys, str(path))
    _, overruled = checked(capsys, str(path), "--accents", "none")

    def told(found):
        totals = found["files"][0]["tunes"][0]["bowings"][0]["totals"]
        return totals["driven"] + totals["up"] + totals["buried"] + totals["unstruck"]

    assert told(as_drawn) > 0
    assert told(overruled) == 0


OCTAVES = "X:1\nT:Octaves\nM:6/8\nL:1/8\nR:jig\nK:G\n(G3g3)|(A6|A6)|A3A3|\n"


def told(capsys, *arguments):
    _, found = checked(capsys, *arguments)
    return {finding["rule"]: finding["text"] for finding in found["files"][0]["tunes"][0]["bowings"][0]["findings"]}


def test_another_tempo_is_counted_in_beats_of_the_dance(book, capsys):
    assert "stroke-beyond-bow" not in told(capsys, book(OCTAVES))
    slow = told(capsys, book(OCTAVES), "--tempo", "15.5")
    assert "(dotted quarter = 15.5)" in slow["stroke-beyond-bow"]  # four of them last 15.5 s and need 77 cm at 5 cm/s


def test_another_tuning_has_other_leaps(book, capsys):
    assert "slur-leaps-string" in told(capsys, book(OCTAVES))
    assert "slur-leaps-string" not in told(capsys, book(OCTAVES), "--tuning", "G3 D4 G4 D5")
    assert "from the E4 string" in told(capsys, book(OCTAVES), "--tuning", "AEAE")["slur-leaps-string"]


def test_what_a_lesson_sets_is_judged_by(book, tmp_path, capsys):
    lesson = read_file(OCTAVES.encode()).lessons[0]
    path = tmp_path / "lesson.musicxml"
    slow = ReachSettings(tempo=Tempo(Fraction(1, 2), Fraction(30)))
    kept = replace(lesson, reach=slow, tuning=Tuning(("G3", "D4", "G4", "D5")))
    path.write_text(write_musicxml(kept), encoding="utf-8")
    assert told(capsys, str(path)).keys() & {"stroke-beyond-bow", "slur-leaps-string"} == {"stroke-beyond-bow"}
    overruled = told(capsys, str(path), "--tempo", "127", "--tuning", "G3 D4 A4 E5")
    assert overruled.keys() & {"stroke-beyond-bow", "slur-leaps-string"} == {"slur-leaps-string"}


@pytest.mark.parametrize(
    ("option", "value"),
    [("--tempo", "0"), ("--tempo", "fast"), ("--tempo", "1e2"), ("--tuning", "H"), ("--tuning", "")],
)
def test_a_tempo_or_tuning_without_sense_is_a_wrong_call(book, capsys, option, value):
    assert main(["check", book(OCTAVES), option, value]) == 2
    assert f"“{value}” is no {option[2:]}" in capsys.readouterr().err


def test_sheet_writes_a_pdf(book, tmp_path, qapp):
    out = tmp_path / "out.pdf"
    assert main(["sheet", book(SEVEN), "--out", str(out), "--marks", "bars", "--paper", "Letter"]) == 0
    from pypdf import PdfReader

    page = PdfReader(out).pages[0]
    assert "Seven in the bar" in " ".join(page.extract_text().split())
    assert (round(page.mediabox.width), round(page.mediabox.height)) == (612, 792)  # Letter in points


def test_sheet_refuses_a_bowing_that_is_not_there(book, tmp_path, capsys):
    assert main(["sheet", book(SEVEN), "--out", str(tmp_path / "o.pdf"), "--bowings", "Nope"]) == 2
    assert not (tmp_path / "o.pdf").exists()


def test_sheet_into_a_missing_folder_says_so(book, tmp_path, capsys, qapp):
    out = tmp_path / "none" / "o.pdf"
    assert main(["sheet", book(SEVEN), "--out", str(out)]) != 0
    assert str(out) in capsys.readouterr().err


def test_the_module_runs_as_the_command_does(book):
    done = subprocess.run(
        [sys.executable, "-m", "app", "check", book(SEVEN)],
        cwd=Path(__file__).parents[2], capture_output=True, text=True, timeout=60,
    )  # fmt: skip
    assert done.returncode == 0
    assert "Seven in the bar" in done.stdout
