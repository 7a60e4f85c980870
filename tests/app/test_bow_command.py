import json
from pathlib import Path

import pytest

from app.cli import main
from core.check import check
from core.reading import read_file

SAMPLES = Path(__file__).parents[2] / "sample_tunes"
FERRY = str(SAMPLES / "tuesday_ferry.musicxml")
BOOK = str(SAMPLES / "tuesday_class_book.abc")


def lesson_in(path: Path):
    return read_file(path.read_bytes()).lessons[0]


def test_the_lesson_written_has_its_own_bowings_and_the_one_worked_out(tmp_path, capsys):
    out = tmp_path / "out.musicxml"
    assert main(["bow", FERRY, "--accents", "on-beat", "--out", str(out)]) == 0
    assert "proven best" in capsys.readouterr().out
    before, after = lesson_in(Path(FERRY)), lesson_in(out)
    assert [b.name for b in after.bowings[:-1]] == [b.name for b in before.bowings]
    assert after.bowings[-1].name == "On the beat, fewest slurs"
    totals = check(after.tune, after.bowings[-1]).totals
    assert (totals.up, totals.buried, totals.comes_round) == (0, 0, True)


def test_json_tells_each_plan_by_its_numbers_and_notes(tmp_path, capsys):
    out = str(tmp_path / "out.musicxml")
    assert main(["bow", FERRY, "--accents", "backbeat", "--smooth", "--alternatives", "2", "--out", out, "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["format"] == "bowbench-plan/1"
    assert 1 < len(told["plans"]) <= 3
    for plan in told["plans"]:
        assert set(plan) == {"missed", "broken", "cost", "slurs", "proven", "notes"}
        assert set(plan["notes"][0]) == {"id", "bar", "at", "length", "pitches", "joined", "mark", "bows"}
    numbers = [(plan["missed"], plan["broken"], plan["cost"]) for plan in told["plans"]]
    assert numbers == sorted(numbers)
    assert told["plans"][0]["proven"]


def test_keep_keeps_the_slurs_of_the_first_bowing_and_leaving_it_out_does_not(tmp_path):
    source = tmp_path / "in.abc"
    source.write_text("X:1\nT:Kept\nM:4/4\nL:1/8\nK:G\n(GABc) d2 d2|g2 f2 e2 d2|\n")
    kept, fresh = tmp_path / "kept.musicxml", tmp_path / "fresh.musicxml"
    assert main(["bow", str(source), "--accents", "on-beat", "--keep", "--out", str(kept)]) == 0
    assert main(["bow", str(source), "--accents", "on-beat", "--out", str(fresh)]) == 0
    own = dict(lesson_in(source).bowings[0].joins)
    assert own.items() <= dict(lesson_in(kept).bowings[-1].joins).items()
    assert not own.items() <= dict(lesson_in(fresh).bowings[-1].joins).items()


def test_of_a_book_the_tune_asked_for_is_taken_and_without_asking_the_first(tmp_path, capsys):
    out = tmp_path / "out.musicxml"
    lessons = read_file(Path(BOOK).read_bytes()).lessons
    assert main(["bow", BOOK, "--tune", str(lessons[2].tune.number), "--accents", "on-beat", "--out", str(out)]) == 0
    assert lesson_in(out).tune.title == lessons[2].tune.title
    assert main(["bow", BOOK, "--accents", "on-beat", "--out", str(out)]) == 0
    assert lesson_in(out).tune.title == lessons[0].tune.title
    assert f"of {len(lessons)} tunes the first" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("words", "status", "told"),
    [
        ([BOOK, "--tune", "99", "--accents", "on-beat"], 2, "no tune number 99"),
        ([BOOK, "--accents", "sideways"], 2, "no accent plan"),
        ([BOOK, "--accents", "on-beat", "--alternatives", "0"], 2, "expected 1 to 20"),
        (["nowhere.abc", "--accents", "on-beat"], 3, "nowhere.abc"),
    ],
)
def test_what_cannot_be_done_is_said_and_nothing_is_written(tmp_path, capsys, words, status, told):
    out = tmp_path / "out.musicxml"
    assert main(["bow", *words, "--out", str(out)]) == status
    assert told in capsys.readouterr().err
    assert not out.exists()


def test_a_kept_slur_over_three_bars_is_refused_by_bar(tmp_path, capsys):
    source = tmp_path / "in.abc"
    source.write_text("X:1\nT:Long\nM:2/4\nL:1/8\nK:G\nG2 (A2|B2 c2|d2) e2|\n")
    out = tmp_path / "out.musicxml"
    assert main(["bow", str(source), "--accents", "on-beat", "--keep", "--out", str(out)]) == 2
    assert "In bar 2 one stroke runs through" in capsys.readouterr().err
    assert not out.exists()
