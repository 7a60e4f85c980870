"""Texts of printed pages: sizes, and how they are broken into lines that fit."""

from __future__ import annotations

from app.painting import run_width
from core.engraving.picture import Run

TITLE, SMALL_TITLE, HEADING, BODY, NOTE = 7.0, 3.6, 4.4, 3.8, 3.1  # em sizes in mm, at the usual size of texts
LEADING = 1.3  # from base line to base line, in ems
BASE = 0.3  # how far the base line stands over the foot of its line, in ems


def wrapped(text: str, size: float, width: float, bold: bool = False, italic: bool = False) -> list[str]:
    """Lines of text no wider than a width, broken between words; a single word may be wider."""
    lines: list[str] = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and run_width(Run(longer, size, bold=bold, italic=italic)) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def fitted(run: Run, width: float) -> Run:
    """The run, set smaller where it is wider than a width: nothing is cut."""
    wide = run_width(run)
    return run if wide <= width else Run(run.text, run.size * width / wide, run.music, run.bold, run.italic)


def shortened(text: str, size: float, width: float, italic: bool = True) -> str:
    """The text, or as many of its first characters as fit with an ellipsis."""
    if run_width(Run(text, size, italic=italic)) <= width:
        return text
    low, high = 0, len(text)  # so many characters fit; so many do not
    while high - low > 1:
        middle = (low + high) // 2
        if run_width(Run(text[:middle] + "…", size, italic=italic)) <= width:
            low = middle
        else:
            high = middle
    return text[:low].rstrip() + "…"
