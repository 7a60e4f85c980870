"""PDF and printer, read back with a PDF library."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QBuffer, QIODevice, QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrinter

from app.printing import paper_of, print_sheet_of, write_sheet
from app.sheet import A4, LETTER, Paper
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson
from core.reading.abc import read_abc
from core.sheet_plan import SheetKind, SheetPlan, begin

pytestmark = pytest.mark.usefixtures("qapp")
WEIR = """X:1
T:Gate of the Wéir
C:Ada Quern
R:reel
M:4/4
L:1/8
Q:1/2=96
K:G
"G"GABc "Bb7"d2(de)|"Am7"GABc "D"d2(de)|GABc d2(de)|GABc d2(de):|
"""


@pytest.fixture
def lessons() -> tuple[Lesson, ...]:
    return read_abc(WEIR).lessons


def fonts(reader: PdfReader) -> dict[str, bool]:
    """Names of the fonts of all pages, and whether they are embedded."""
    found = {}
    for page in reader.pages:
        for font in page["/Resources"]["/Font"].values():
            inner = font.get_object()["/DescendantFonts"][0].get_object()
            found[inner["/BaseFont"]] = "/FontFile2" in inner["/FontDescriptor"].get_object()
    return found


def test_a_pdf_can_be_searched_and_carries_its_fonts(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    assert write_sheet(lessons, SheetPlan(), tmp_path / "weir.pdf") == 1
    reader = PdfReader(tmp_path / "weir.pdf")
    text = reader.pages[0].extract_text()
    for words in ("Gate of the Wéir", "Ada Quern", "Reel", "Am7", "B♭7", "= 96", "down-bow"):
        assert words in text, words
    names = fonts(reader)
    assert any("Liberation" in name for name in names)
    assert all(names.values())
    assert reader.metadata is not None
    assert reader.metadata.title == "Gate of the Wéir"
    assert reader.metadata.author == "Ada Quern"
    assert reader.metadata.creator == "Bowbench"


def test_a_pdf_holds_drawings_and_no_pictures(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    write_sheet(lessons, SheetPlan(), tmp_path / "weir.pdf")
    page = PdfReader(tmp_path / "weir.pdf").pages[0]
    assert "/XObject" not in page["/Resources"] or not page["/Resources"]["/XObject"]
    assert (tmp_path / "weir.pdf").stat().st_size < 200_000


@pytest.mark.parametrize("paper", [A4, LETTER], ids=lambda paper: paper.name)
@pytest.mark.parametrize("landscape", [False, True])
def test_pages_have_the_size_of_the_paper(
    tmp_path: Path, lessons: tuple[Lesson, ...], paper: Paper, landscape: bool
) -> None:
    write_sheet(lessons, SheetPlan(paper=paper.name, landscape=landscape), tmp_path / "weir.pdf")
    box = PdfReader(tmp_path / "weir.pdf").pages[0].mediabox
    lies = paper.turned if landscape else paper
    assert float(box.width) == pytest.approx(lies.width_mm / 25.4 * 72, abs=1)
    assert float(box.height) == pytest.approx(lies.height_mm / 25.4 * 72, abs=1)


def test_a_device_will_do_as_well(lessons: tuple[Lesson, ...]) -> None:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    write_sheet(lessons, SheetPlan(), buffer)
    assert bytes(buffer.data().data()).startswith(b"%PDF")


def test_a_file_that_cannot_be_written_is_told_and_leaves_nothing(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    with pytest.raises(OSError, match=r"."):
        write_sheet(lessons, SheetPlan(), tmp_path / "nowhere" / "weir.pdf")
    assert not (tmp_path / "nowhere").exists()


def test_fewer_marks_make_a_shorter_page(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    write_sheet(lessons, SheetPlan(paper="Letter", marks=MarkDensity.NEEDED), tmp_path / "a.pdf")
    write_sheet(lessons, SheetPlan(paper="Letter"), tmp_path / "b.pdf")
    sparse, dense = (PdfReader(tmp_path / name).pages[0] for name in ("a.pdf", "b.pdf"))
    assert float(sparse.mediabox.width) == pytest.approx(612, abs=1)
    assert len(sparse.get_contents().get_data()) < len(dense.get_contents().get_data())


def printer_to(path: Path, paper: QPageSize.PageSizeId) -> QPrinter:
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(path))
    printer.setPageLayout(QPageLayout(QPageSize(paper), QPageLayout.Orientation.Portrait, QMarginsF(12, 12, 12, 12)))
    return printer


def test_a_printer_gets_pages_for_its_own_paper(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    printer = printer_to(tmp_path / "p.pdf", QPageSize.PageSizeId.A5)
    assert paper_of(printer).width_mm == pytest.approx(148, abs=0.5)
    print_sheet_of(printer, lessons)
    page = PdfReader(tmp_path / "p.pdf").pages[0]
    assert float(page.mediabox.width) == pytest.approx(148 / 25.4 * 72, abs=1)
    assert "Gate of the Wéir" in page.extract_text()


def test_a_range_of_pages_can_be_printed(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    printer = printer_to(tmp_path / "p.pdf", QPageSize.PageSizeId.A4)
    printer.setPrintRange(QPrinter.PrintRange.PageRange)
    printer.setFromTo(2, 3)
    print_sheet_of(printer, lessons * 4)
    reader = PdfReader(tmp_path / "p.pdf")
    assert ["2 / 4" in page.extract_text() for page in reader.pages] == [True, False]
    assert "3 / 4" in reader.pages[1].extract_text()


def test_the_outline_leads_to_tunes_and_bowings(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    weir = lessons[0]
    many = replace(weir, bowings=tuple(replace(weir.bowings[0], name=f"Way {number}") for number in range(1, 8)))
    own = replace(weir, bowings=(replace(weir.bowings[0], name="My own"),))
    write_sheet([many, own, weir], SheetPlan(), tmp_path / "weir.pdf")
    reader = PdfReader(tmp_path / "weir.pdf")
    first, of_first, second, of_second, third = reader.outline  # the last has one bowing without a name of its own
    assert {first.title, second.title, third.title} == {"Gate of the Wéir"}
    assert [item.title for item in of_first] == [f"Way {number}" for number in range(1, 8)]
    assert [item.title for item in of_second] == ["My own"]
    for item in [*of_first, second, *of_second, third]:
        number = reader.get_destination_page_number(item)
        assert item.title in reader.pages[number].extract_text()
    assert reader.get_destination_page_number(third) == len(reader.pages) - 1


def test_an_exercise_and_its_key_are_two_entries(tmp_path: Path, lessons: tuple[Lesson, ...]) -> None:
    write_sheet(lessons, begin(SheetKind.EXERCISE), tmp_path / "weir.pdf")
    outline = [item.title for item in PdfReader(tmp_path / "weir.pdf").outline if not isinstance(item, list)]
    assert outline == ["Gate of the Wéir", "Key: Gate of the Wéir"]
