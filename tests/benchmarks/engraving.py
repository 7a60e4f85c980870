"""How long the page takes: run by hand with ``python -m tests.benchmarks.engraving``.

Prints medians and 95th percentiles in milliseconds for a tune of 32 bars on 8 lines: the first engraving of all
lines, one edit (its line is engraved, the others come back as they were), painting all lines, a PDF; and beside them
verovio's own loading and rendering of the same 32 bars as one document.
"""

from __future__ import annotations

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from collections.abc import Callable
from statistics import median
from time import perf_counter

import verovio
from PySide6.QtGui import QColor, QGuiApplication, QImage, QPainter

from app.bow_sign_painting import paint_bow_signs
from app.painting import paint_picture
from app.printing import pdf_bytes
from app.sheet import lay_out
from core.bowing import can_join, join, separate
from core.engraving.bow_signs import MarkDensity, bow_signs, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.lines import Line, break_lines
from core.engraving.mei import write_line
from core.lesson import Lesson
from core.strokes import work_out
from tests.core.builders import bowed

ROUNDS = 40
SCALE = 0.055  # pixels a picture unit: a page of about 1,000 pixels
BARS = ("(GA)Bc d2(de)|", "g(fe)d (ef)ga|", "bagf (ed)(cB)|", "A2(Bc) d2z2|")


def main() -> None:
    """Print one line for each thing measured."""
    application = QGuiApplication.instance() or QGuiApplication([])
    tune, bowing = bowed("|:" + "".join(BARS[(k + k // 8) % 4] for k in range(32))[:-1] + ":|")
    lines = break_lines(tune)
    signs = bow_signs(tune, bowing, work_out(tune, bowing), MarkDensity.EVERY)
    slots = rows_kept(tune, signs)
    warm = Engraver()
    pictures = [warm.engrave(tune, bowing, line, slots) for line in lines]

    def all_lines() -> None:
        engraver = Engraver(kept=1)
        for line in lines:
            engraver.engrave(tune, bowing, line, slots)

    edits = iter([note.id for note in tune.sequence if can_join(tune, note.id)])

    def one_edit() -> None:
        note_id = next(edits)
        changed = separate(bowing, note_id) if note_id in bowing.joins else join(tune, bowing, note_id)
        now = rows_kept(tune, bow_signs(tune, changed, work_out(tune, changed), MarkDensity.EVERY))
        for line in lines:
            warm.engrave(tune, changed, line, now)

    def nothing_changed() -> None:
        for line in lines:
            warm.engrave(tune, bowing, line, slots)

    def paint() -> None:
        image = QImage(1100, 1400, QImage.Format.Format_RGB32)
        image.fill(QColor("white"))
        painter = QPainter(image)
        painter.scale(SCALE, SCALE)
        for picture in pictures:
            paint_picture(painter, picture)
            paint_bow_signs(painter, picture, signs)
            painter.translate(0, picture.height)
        painter.end()

    document = write_line(tune, bowing, Line(0, len(tune.bars)), slots).text
    toolkit = verovio.toolkit()
    toolkit.setOptions({"breaks": "auto", "header": "none", "footer": "none", "adjustPageHeight": True})

    def verovio_whole() -> None:
        toolkit.loadData(document)
        for page in range(1, toolkit.getPageCount() + 1):
            toolkit.renderToSVG(page)

    print(f"{'':44}{'median':>8}{'p95':>8}   (ms)")
    _tell("all 8 lines engraved", all_lines)
    _tell("verovio alone: 32 bars loaded and rendered", verovio_whole)
    _tell("one edit: strokes, signs, one line engraved", one_edit)
    _tell("nothing changed: 8 lines looked up", nothing_changed)
    _tell("8 lines painted", paint)
    sheet = lay_out([Lesson(tune, (bowing,))], engraver=warm)
    _tell("one page as PDF", lambda: pdf_bytes(sheet))
    del application


def _tell(what: str, work: Callable[[], object]) -> None:
    times = []
    for _ in range(ROUNDS):
        began = perf_counter()
        work()
        times.append(1000 * (perf_counter() - began))
    print(f"{what:44}{median(times):8.1f}{sorted(times)[ROUNDS * 95 // 100]:8.1f}")


if __name__ == "__main__":
    main()
