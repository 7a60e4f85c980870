"""``bowbench sheet``: what scripts rely on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader

from app.cli import main
from core.drills import DRILLS
from core.reading import read_file
from core.reading.abc import read_abc
from core.sheet_plan import SheetKind, TextBlock, begin
from core.writing.musicxml import write_musicxml

pytestmark = pytest.mark.usefixtures("qapp")
WEIR = """X:1
T:Gate of the Weir
R:reel
M:4/4
L:1/8
K:G
|:GABc d2(de)|GABc dedB|GABc d2(de)|GABc dedB:|
"""
SILL = WEIR.replace("X:1", "X:2").replace("Gate of the Weir", "Over the Sill")


@pytest.fixture
def book(tmp_path: Path) -> Callable[..., str]:
    def write(text: str, name: str = "book.abc") -> str:
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return str(path)

    return write


@pytest.fixture
def out(tmp_path: Path) -> Path:
    return tmp_path / "out.pdf"


def text_of(path: Path) -> str:
    return " ".join(" ".join(page.extract_text() for page in PdfReader(path).pages).split())


def test_without_a_kind_the_bowings_are_printed_and_nothing_else(book, out):
    assert main(["sheet", book(WEIR), "--out", str(out)]) == 0
    said = text_of(out)
    assert "Gate of the Weir" in said
    assert "As written" not in said  # what every tune book has is no name to print
    assert "Totals" not in said
    assert "hurts" not in said


def test_bowings_are_named_with_commas_between_them_which_a_name_may_have_too(out, tmp_path, capsys):
    """The program itself names bowings so: "On the beat, fewest slurs"."""
    source, lesson = tmp_path / "lesson.musicxml", read_abc(WEIR).lessons[0]
    names = ("On the beat", "On the beat, smooth", "Last")
    named = replace(lesson, bowings=tuple(replace(lesson.bowings[0], name=name) for name in names))
    source.write_text(write_musicxml(named), encoding="utf-8")
    call = ["sheet", str(source), "--out", str(out), "--bowings"]
    assert main([*call, "On the beat, smooth, Last"]) == 0
    assert "On the beat, smooth" in text_of(out)
    assert "Last" in text_of(out)
    assert text_of(out).count("On the beat") == 1
    assert main([*call, "Last,On the beat"]) == 0
    assert "smooth" not in text_of(out)
    assert main([*call, "Last,First"]) == 2
    assert (
        "no bowing named “First”; there is “Last”, “On the beat” and “On the beat, smooth”" in capsys.readouterr().err
    )


@pytest.mark.parametrize("kind", [kind.value for kind in SheetKind])
def test_every_kind_can_be_asked_for(book, out, kind):
    assert main(["sheet", book(WEIR), "--out", str(out), "--kind", kind]) == 0
    assert "Gate of the Weir" in text_of(out)


def test_a_bar_or_a_drill_makes_an_exercise(book, out):
    assert main(["sheet", book(WEIR), "--out", str(out), "--from-bar", "3"]) == 0
    assert "Write in how the bow goes from bar 3 on." in text_of(out)
    assert main(["sheet", book(WEIR), "--out", str(out), "--drill", "three-and-one", "--no-key"]) == 0
    assert DRILLS["three-and-one"].title in text_of(out)
    assert len(PdfReader(out).pages) == 1


def test_a_drill_that_the_tune_has_no_notes_for_is_a_wrong_call(book, out, capsys):
    slow = WEIR.replace("|:GABc d2(de)|GABc dedB|GABc d2(de)|GABc dedB:|", "|:G4 A4|B4 c4:|")
    assert main(["sheet", book(slow), "--out", str(out), "--drill", "pairs"]) == 2
    assert "too few" in capsys.readouterr().err
    assert not out.exists()


def test_texts_stand_before_and_after_the_music(book, out):
    arguments = ["--before", "What to listen for:\nThe low road.", "--after", "Bars 1 to 4.", "--footer", "Tuesday"]
    named = WEIR.replace("M:4/4", "N:Bowing: Mine\nM:4/4")
    assert main(["sheet", book(named), "--out", str(out), *arguments]) == 0
    said = text_of(out)
    assert said.index("What to listen for The low road.") < said.index("Mine") < said.index("Bars 1 to 4.")
    assert "Tuesday" in said


def test_a_book_is_a_set_and_so_are_tunes_of_files(book, out):
    both = book(WEIR + "\n" + SILL)
    assert main(["sheet", both, "--out", str(out), "--kind", "set"]) == 0
    assert PdfReader(out).metadata.title == "Gate of the Weir / Over the Sill"
    assert main(["sheet", f"{both}#2x2", f"{both}#1", "--out", str(out), "--kind", "set"]) == 0
    assert PdfReader(out).metadata.title == "Over the Sill / Gate of the Weir"
    assert "Played twice." in text_of(out)


def test_a_tune_that_a_book_has_not_is_a_wrong_call(book, out, capsys):
    assert main(["sheet", book(WEIR) + "#7", "--out", str(out), "--kind", "set"]) == 2
    assert "no tune 7; there is 1" in capsys.readouterr().err


def test_several_files_are_printed_one_after_the_other(book, out):
    assert main(["sheet", book(WEIR), book(SILL, "sill.abc"), "--out", str(out)]) == 0
    said = text_of(out)
    assert said.index("Gate of the Weir") < said.index("Over the Sill")


def test_what_can_be_read_is_printed_where_a_file_cannot(book, out, capsys, tmp_path):
    assert main(["sheet", str(tmp_path / "none.abc"), book(WEIR), "--out", str(out)]) == 3
    assert "none.abc" in capsys.readouterr().err
    assert "Gate of the Weir" in text_of(out)


def test_nothing_is_written_where_nothing_can_be_read(out, tmp_path, capsys):
    assert main(["sheet", str(tmp_path / "none.abc"), "--out", str(out)]) == 3
    assert not out.exists()


def test_the_sheet_of_the_lesson_holds_where_it_is_asked_for_and_options_change_it(out, tmp_path):
    lesson = read_file(WEIR.encode()).lessons[0]
    plan = replace(begin(SheetKind.CLASS), after=TextBlock("Homework", "Bars 1 to 4"), footer="Tuesday")
    file = tmp_path / "lesson.musicxml"
    file.write_text(write_musicxml(replace(lesson, sheet=plan)), encoding="utf-8")
    assert main(["sheet", str(file), "--out", str(out)]) == 0
    assert "Homework" not in text_of(out)
    assert main(["sheet", str(file), "--out", str(out), "--as-kept", "--footer", "Friday", "--landscape"]) == 0
    said = text_of(out)
    assert "Homework" in said
    assert "Friday" in said
    assert "Tuesday" not in said
    box = PdfReader(out).pages[0].mediabox
    assert box.width > box.height


@pytest.mark.parametrize(
    "wrong", [["--kind", "poster"], ["--copies", "3"], ["--drill", "polish"], ["--from-bar", "-1"], ["--size", "huge"]]
)
def test_what_there_is_not_is_a_wrong_call(book, out, wrong, capsys):
    assert main(["sheet", book(WEIR), "--out", str(out), *wrong]) == 2
    assert wrong[0] in capsys.readouterr().err
