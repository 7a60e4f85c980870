"""Puts sheets on paper and into PDF files; both go through the same painter."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from dataclasses import replace
from functools import cache
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QSaveFile, QSizeF
from PySide6.QtGui import QGuiApplication, QPagedPaintDevice, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtPrintSupport import QPrinter

from app.sheet import PAPERS, Paper, Sheet, SheetSettings, lay_out, paint_page
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson

MM_PER_INCH = 25.4
PDF_DPI = 1200


def write_pdf(target: str | Path | QIODevice, lessons: Sequence[Lesson], settings: SheetSettings | None = None) -> int:
    """Write lessons to a PDF file.

    Args:
        target: A file, which is replaced only when the whole PDF is written, or a device open for writing.
        lessons: At least one, with the bowings to print.
        settings: Paper, marks and sizes.
    Returns:
        Number of pages.
    Raises:
        OSError: the file cannot be written.
    """
    sheet = lay_out(lessons, settings)
    data = pdf_bytes(sheet)
    if isinstance(target, QIODevice):
        if target.write(data) != data.size():
            raise OSError(0, target.errorString())
    else:
        _replace_file(Path(target), data)
    return len(sheet.pages)


def export_pdf(lessons: Sequence[Lesson], path: Path, *, paper: str = "A4", marks: str = "every") -> None:
    """Write lessons to a PDF file from the command line; needs no window and no display.

    Raises:
        OSError: the file cannot be written.
    """
    _need_application()
    write_pdf(path, lessons, SheetSettings(paper=PAPERS[paper], marks=MarkDensity(marks)))


def pdf_bytes(sheet: Sheet) -> QByteArray:
    """A sheet as PDF: vectors, fonts embedded, text that can be searched."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(PDF_DPI)
    writer.setTitle(sheet.title)
    writer.setCreator("Bowbench")
    if sheet.author and hasattr(writer, "setAuthor"):  # from Qt 6.9 on
        writer.setAuthor(sheet.author)
    set_paper(writer, sheet.paper)
    print_sheet(writer, sheet)
    buffer.close()
    return buffer.data()


def set_paper(device: QPagedPaintDevice, paper: Paper) -> None:
    """Make a device's pages this paper, upright, without margins: the sheet has its own."""
    size = QPageSize(QSizeF(paper.width_mm, paper.height_mm), QPageSize.Unit.Millimeter, paper.name)
    layout = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    device.setPageLayout(layout)


def paper_of(printer: QPrinter) -> Paper:
    """The paper that a printer is set to, as it lies in the chosen orientation."""
    page = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    return Paper(printer.pageLayout().pageSize().name(), page.width(), page.height())


def print_sheet(device: QPagedPaintDevice, sheet: Sheet, pages: Iterable[int] | None = None) -> None:
    """Paint pages on a printer, a preview or a PDF.

    Args:
        device: Its pages show the whole paper (``set_paper``, or a printer in full page mode).
        sheet: Laid out for the device's paper.
        pages: Page numbers from 1; all where left out.
    Raises:
        OSError: the device cannot be painted on.
    """
    painter = QPainter()
    if not painter.begin(device):
        raise OSError(0, "The printer cannot be used.")
    try:
        chosen = range(1, len(sheet.pages) + 1) if pages is None else [p for p in pages if 1 <= p <= len(sheet.pages)]
        for place, number in enumerate(chosen):
            if place:
                device.newPage()
            painter.save()
            painter.scale(device.logicalDpiX() / MM_PER_INCH, device.logicalDpiY() / MM_PER_INCH)
            paint_page(painter, sheet.pages[number - 1])
            painter.restore()
    finally:
        painter.end()


def print_lessons(printer: QPrinter, lessons: Sequence[Lesson], settings: SheetSettings | None = None) -> None:
    """Lay out lessons for the printer's own paper and print the pages that its dialog asks for.

    Also what a print preview calls when it wants its pages painted.

    Raises:
        OSError: the printer cannot be used.
    """
    printer.setFullPage(True)
    sheet = lay_out(lessons, replace(settings or SheetSettings(), paper=paper_of(printer)))
    wanted = None
    if printer.printRange() is QPrinter.PrintRange.PageRange and printer.fromPage():
        wanted = range(printer.fromPage(), printer.toPage() + 1)
    printer.setDocName(sheet.title)
    print_sheet(printer, sheet, wanted)


def _replace_file(path: Path, data: QByteArray) -> None:
    file = QSaveFile(str(path))
    if not file.open(QIODevice.OpenModeFlag.WriteOnly) or file.write(data) != data.size() or not file.commit():
        raise OSError(0, file.errorString())


@cache
def _need_application() -> QGuiApplication | None:
    """Make an application without a display where there is none: fonts and painting need one, as long as we run."""
    if QGuiApplication.instance() is not None:
        return None
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    return QGuiApplication([])
