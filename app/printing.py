"""Puts sheets on paper and into PDF files; both go through the same painter."""

from __future__ import annotations

import os
from collections.abc import Iterable
from functools import cache
from io import BytesIO
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QSaveFile, QSizeF
from PySide6.QtGui import QGuiApplication, QPagedPaintDevice, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtPrintSupport import QPrinter

from app.sheet import PLAIN, Paper, Printed, Sheet, lay_out, paint_page
from core.lesson import Lesson
from core.sheet_plan import SheetPlan
from core.translation import tr

MM_PER_INCH = 25.4
PDF_DPI = 1200


def write_sheet(given: Lesson | Printed, plan: SheetPlan, target: Path | QIODevice) -> int:
    """Lay out a sheet and write it as PDF; needs no window and no display.

    Args:
        given: A lesson, lessons, or a set.
        plan: What goes on the sheet.
        target: A file, which is replaced only when the whole PDF is written, or a device open for writing.
    Returns:
        Number of pages.
    Raises:
        OSError: the file cannot be written.
        RefusedEditError: the plan's drill has no place in a tune.
    """
    need_application()
    sheet = lay_out([given] if isinstance(given, Lesson) else given, plan)
    data = pdf_bytes(sheet)
    if isinstance(target, QIODevice):
        if target.write(data) != len(data):
            raise OSError(0, target.errorString())
    else:
        replace_file(target, data)
    return len(sheet.pages)


def pdf_bytes(sheet: Sheet) -> bytes:
    """A sheet as PDF: vectors, fonts embedded, text that can be searched, an outline of tunes and bowings."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(PDF_DPI)
    writer.setTitle(sheet.title)
    writer.setCreator("Bowbench")
    set_paper(writer, sheet.paper)
    print_sheet(writer, sheet)
    buffer.close()
    return _with_outline(bytes(buffer.data().data()), sheet)


def _with_outline(data: bytes, sheet: Sheet) -> bytes:
    """The PDF with its author and an outline; Qt writes no outline, and an author from 6.9 on only."""
    from pypdf import PdfWriter  # not for the window's start

    writer = PdfWriter(clone_from=BytesIO(data))
    if sheet.author:
        writer.add_metadata({"/Author": sheet.author})
    parent = None
    for number, page in enumerate(sheet.pages):
        for heading in page.headings:
            over = parent if heading.level else None
            item = writer.add_outline_item(title=heading.title, page_number=number, parent=over)
            if heading.level == 0:
                parent = item
    out = BytesIO()
    writer.write(out)
    return out.getvalue()


def replace_file(path: Path, data: bytes) -> None:
    """Write a file that is replaced only when all of it is written.

    Raises:
        OSError: it cannot be written.
    """
    file = QSaveFile(str(path))
    if not file.open(QIODevice.OpenModeFlag.WriteOnly) or file.write(data) != len(data) or not file.commit():
        raise OSError(0, file.errorString())


def set_paper(device: QPagedPaintDevice, paper: Paper) -> None:
    """Make a device's pages this paper, as it lies, without margins: the sheet has its own."""
    size = QPageSize(QSizeF(paper.width_mm, paper.height_mm), QPageSize.Unit.Millimeter, paper.name)
    layout = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    device.setPageLayout(layout)


def paper_of(printer: QPrinter) -> Paper:
    """The paper that a printer is set to, as it lies in the chosen orientation."""
    page = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    return Paper(printer.pageLayout().pageSize().name(), page.width(), page.height())


def print_sheet(device: QPagedPaintDevice, sheet: Sheet, pages: Iterable[int] | None = None) -> None:
    """Paint pages on a printer or a PDF.

    Args:
        device: Its pages show the whole paper (``set_paper``, or a printer in full page mode).
        sheet: Laid out for the device's paper.
        pages: Page numbers from 1; all where left out.
    Raises:
        OSError: the device cannot be painted on.
    """
    painter = QPainter()
    if not painter.begin(device):
        raise OSError(0, tr("The printer cannot be used."))
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


def print_sheet_of(printer: QPrinter, given: Printed, plan: SheetPlan = PLAIN) -> None:
    """Lay out a sheet for the printer's own paper and print the pages that its dialog asks for.

    Raises:
        OSError: the printer cannot be used.
        RefusedEditError: the plan's drill has no place in a tune.
    """
    printer.setFullPage(True)
    sheet = lay_out(given, plan, paper_of(printer))
    wanted = None
    if printer.printRange() is QPrinter.PrintRange.PageRange and printer.fromPage():
        wanted = range(printer.fromPage(), printer.toPage() + 1)
    printer.setDocName(sheet.title)
    print_sheet(printer, sheet, wanted)


@cache
def need_application() -> QGuiApplication | None:
    """Make an application without a display where there is none: fonts and painting need one, as long as we run."""
    if QGuiApplication.instance() is not None:
        return None
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    return QGuiApplication([])
