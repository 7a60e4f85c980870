"""Bar lines, endings, signs of playing order and lines of bars in ABC (ABC 2.1, 4.8 to 4.10)."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from core.engraving.lines import break_lines
from core.tune import Bar, BarLine, Jump, Tune
from core.writing.abc_fields import key_text, meter_text
from core.writing.abc_notes import NoteWriter
from core.writing.abc_text import field, inline_text, one_line

# ABC 2.1, 4.14; the longer names are common additions (from memory).
JUMPS = {
    Jump.DA_CAPO: "!D.C.!", Jump.DA_CAPO_AL_FINE: "!D.C.alfine!", Jump.DA_CAPO_AL_CODA: "!D.C.alcoda!",
    Jump.DAL_SEGNO: "!D.S.!", Jump.DAL_SEGNO_AL_FINE: "!D.S.alfine!", Jump.DAL_SEGNO_AL_CODA: "!D.S.alcoda!",
}  # fmt: skip


def tune_lines(tune: Tune, notes: NoteWriter) -> list[str]:
    """The lines of a tune's body: each line of bars ends at a bar line, and fields before it have lines of their own.

    Args:
        tune: The tune.
        notes: Writes the notes of its bars.
    """
    bars = tune.bars
    starts = {line.first for line in break_lines(tune)}
    coda = next((index for index, bar in enumerate(bars) if bar.coda), None)  # readers know one place to jump to
    lines: list[str] = []
    for index, bar in enumerate(bars):
        before = bars[index - 1] if index else None
        opening = _opening(bars, index)
        closing = _closing(before, bar) if before else ""
        ending = _ending_text(bar) if bar.ending and bar.ending != _carried_ending(before, bar) else ""
        fields = _fields(before, bar)
        if index in starts:
            if lines:
                lines[-1] += closing
            lines += [field(letter, value) for letter, value in fields]
            lines.append(_with_ending(opening, ending))
        else:
            inline = "".join(f"[{letter}:{inline_text(value)}]" for letter, value in fields)
            lines[-1] += _with_ending(_meeting(closing, opening), ending) + inline
        lines[-1] += "!segno!" * bar.segno + "!coda!" * (index == coda) + notes.bar(bar) + _closing_signs(bar)
    lines[-1] += _closing(bars[-1], None)
    return lines


def _fields(before: Bar | None, bar: Bar) -> list[tuple[str, str]]:
    """Fields that stand before a bar; the metre and key of the first one are in the header."""
    fields = [("P", bar.part)] if one_line(bar.part) else []
    if before is not None and before.meter != bar.meter:
        fields.append(("M", meter_text(bar.meter)))
    if before is not None and before.key != bar.key:
        fields.append(("K", key_text(bar.key)))
    return fields


def _opening(bars: Sequence[Bar], index: int) -> str:
    """The sign of a repeat that starts with a bar: a colon fewer than the section is played, as where it ends."""
    if not bars[index].opens_repeat:
        return ""
    stop = index + 1
    while not bars[stop - 1].repeats and stop < len(bars) and not bars[stop].opens_repeat:
        stop += 1
    has_endings = any(bar.ending for bar in bars[index:stop])  # which then say how often
    return "|" + ":" * (1 if has_endings else max(bars[stop - 1].repeats - 1, 1))


def _closing(bar: Bar, after: Bar | None) -> str:
    """The bar line after a bar. An ending stops at no plain bar line (4.9): a double one stands there."""
    colons = ":" * (bar.repeats - 1)
    if bar.line is BarLine.FINAL:
        return colons + "|]"
    if bar.line is BarLine.DOUBLE:
        return f"{colons}| ||" if colons else "||"
    stops = bar.ending and after is not None and not after.ending and not after.opens_repeat and not colons
    return "||" if stops else colons + "|"


def _meeting(closing: str, opening: str) -> str:
    """One bar line that ends a bar and opens the next one on the same line."""
    if not opening or closing == "|":
        return opening or closing
    return closing + opening if closing.endswith(":|") else f"{closing} {opening}"


def _carried_ending(before: Bar | None, bar: Bar) -> tuple[int, ...]:
    """Passes of the ending that goes on over the bar line before a bar: over a plain one only."""
    if before is None or before.repeats > 1 or before.line is not BarLine.PLAIN or bar.opens_repeat:
        return ()
    return before.ending


def _ending_text(bar: Bar) -> str:
    """Passes as ``1``, ``1,3`` or ``1-3,5`` (4.10)."""
    runs = [list(run) for _, run in groupby(enumerate(bar.ending), key=lambda item: item[1] - item[0])]
    numbers = [[number for _, number in run] for run in runs]
    return ",".join(f"{run[0]}-{run[-1]}" if len(run) > 2 else ",".join(map(str, run)) for run in numbers)


def _with_ending(bar_line: str, ending: str) -> str:
    """A bar line with the ending that begins there: touching a plain line, else in brackets (4.9)."""
    if not ending:
        return bar_line
    if bar_line in ("|", ":|"):
        return f"{bar_line}{ending} "
    return f"{bar_line} [{ending} ".lstrip()


def _closing_signs(bar: Bar) -> str:
    signs = "!dacoda!" * bar.to_coda + "!fine!" * bar.fine + (JUMPS[bar.jump] if bar.jump else "")
    return f" {signs}" if signs else ""
