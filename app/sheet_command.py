"""``bowbench sheet``: prints bowings to a PDF file; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Container, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from app.set_entries import FORM, EntryError, find_entry, parse_entry, refuse_too_many
from core.drills import DRILLS
from core.engraving.bow_signs import MarkDensity
from core.errors import RefusedEditError
from core.file_faults import why
from core.lesson import Lesson
from core.reading import Reading
from core.sheet_plan import COPIES, PAPERS, NoteSize, SheetKind, SheetPlan, TextBlock, begin
from core.translation import listed, tr, translatable
from core.tune_set import Entry, TuneSet

DONE, WRONG_CALL, UNREADABLE = 0, 2, 3

Read = Callable[[str], Reading | None]
"""Reads a file and tells its problems; None where nothing can be read."""


def add_sheet_parser(commands: Any) -> None:
    """Say what ``bowbench sheet`` takes."""
    sheet = commands.add_parser("sheet", help=tr("print bowings to a PDF file"))
    sheet.add_argument("files", nargs="+", metavar="FILE", help=tr("with --kind set each is {form}", form=FORM))
    sheet.add_argument("--out", required=True, metavar="OUT.pdf", type=Path)
    sheet.add_argument("--bowings", metavar="NAME,NAME", help=tr("these bowings in this order; all where left out"))
    sheet.add_argument("--kind", choices=_values(SheetKind), help=tr("what the sheet is for; plain where left out"))
    sheet.add_argument("--as-kept", action="store_true", help=tr("begin with the sheet that the first lesson keeps"))
    sheet.add_argument("--marks", choices=_values(MarkDensity), help=tr("which strokes carry a bow mark"))
    sheet.add_argument("--size", choices=_values(NoteSize), help=tr("how large the music is"))
    sheet.add_argument("--paper", choices=PAPERS)
    sheet.add_argument("--landscape", action="store_true", default=None, help=tr("the paper lies on its long side"))
    sheet.add_argument("--copies", type=int, choices=COPIES, help=tr("how often each page stands on a paper"))
    sheet.add_argument(
        "--drill", choices=tuple(DRILLS), metavar="NAME", help=tr("of an exercise: {drills}", drills=", ".join(DRILLS))
    )
    sheet.add_argument("--from-bar", type=_bar, metavar="N", help=tr("leave an exercise's bowing out from bar N on"))
    sheet.add_argument("--before", type=_block, metavar="TEXT", help=tr("before the music; a heading ends in a colon"))
    sheet.add_argument("--after", type=_block, metavar="TEXT", help=tr("text after the music"))
    sheet.add_argument("--footer", metavar="TEXT", help=tr("one line at the foot of every page"))
    for name, words in SWITCHES.items():
        sheet.add_argument(f"--{name}", action=argparse.BooleanOptionalAction, default=None, help=tr(words))


SWITCHES = translatable({
    "findings": "what the check finds",
    "totals": "the totals of each bowing",
    "strip": "how accents are met, under each line",
    "legend": "what the signs mean",
    "credits": "where the tune comes from",
    "caution": "a word on resting and on pain",
    "key": "the key of an exercise",
})  # fmt: skip
NAMES = ("marks", "size", "paper", "landscape", "copies", "drill", "from_bar", "before", "after", "footer", *SWITCHES)
ENUMS = {"marks": MarkDensity, "size": NoteSize}


def run_sheet(options: argparse.Namespace, read: Read) -> int:
    """Print; the exit status."""
    if options.kind is None and (options.drill or options.from_bar):
        options.kind = SheetKind.EXERCISE.value
    kind = SheetKind(options.kind or SheetKind.PLAIN.value)
    try:
        words = [parse_entry(word) for word in options.files] if kind is SheetKind.SET else []
    except EntryError as fault:
        return _refuse(str(fault))
    files = dict.fromkeys([word.file for word in words] or options.files)
    readings = {file: read(file) for file in files}
    found = {file: reading for file, reading in readings.items() if reading is not None}
    if not found:
        return UNREADABLE
    lessons = [lesson for reading in found.values() for lesson in reading.lessons]
    names = _names(options.bowings, {bowing.name for lesson in lessons for bowing in lesson.bowings})
    kept = lessons[0].sheet if options.as_kept else None
    plan = _plan(options, kept or SheetPlan(), names)
    from app.printing import write_sheet  # Qt only where it is needed

    try:
        if plan.kind is SheetKind.SET and words and (len(words) > 1 or "#" in options.files[0] or len(lessons) == 1):
            write_sheet(_set(words, found, names), plan, options.out)
        else:
            write_sheet(_chosen(lessons, names, options.files[0]), plan, options.out)
    except (EntryError, RefusedEditError) as fault:
        return _refuse(str(fault))
    except OSError as fault:
        return _refuse(tr("{path} cannot be written: {reason}.", path=options.out, reason=why(fault, writing=True)))
    return DONE if len(found) == len(readings) else UNREADABLE


def _names(text: str | None, known: Container[str]) -> list[str]:
    """Names with commas between them; where a known name has commas itself, the longest that there is."""
    if text is None:
        return []
    words, names = text.split(","), []
    while words:
        candidates = [",".join(words[:count]).strip() for count in range(len(words), 0, -1)]
        name = next((name for name in candidates if name in known), candidates[-1])
        names.append(name)
        words = words[len(candidates) - candidates.index(name) :]
    return names


def _plan(options: argparse.Namespace, kept: SheetPlan, names: Sequence[str]) -> SheetPlan:
    """What the options say; what they do not say is as kept, or as sheets of the kind begin."""
    plan = begin(SheetKind(options.kind)) if options.kind is not None else kept
    values = {name: getattr(options, name) for name in NAMES if getattr(options, name) is not None}
    values = {name: ENUMS[name](value) if name in ENUMS else value for name, value in values.items()}
    return replace(plan, **values, **({"bowings": tuple(names)} if names else {}))


def _chosen(lessons: Sequence[Lesson], names: Sequence[str], file: str) -> list[Lesson]:
    """The lessons that have a bowing of those names; all where none is named."""
    if not names:
        return list(lessons)
    present = {bowing.name for lesson in lessons for bowing in lesson.bowings}
    missing = [name for name in names if name not in present]
    if missing:
        raise EntryError(
            tr(
                "{file}: no bowing named “{missing}”; there is {names}",
                file=file,
                missing=missing[0],
                names=listed([f"“{name}”" for name in sorted(present)]),
            )
        )
    return [lesson for lesson in lessons if any(bowing.name in names for bowing in lesson.bowings)]


def _set(words: Sequence[Any], found: dict[str, Reading], names: Sequence[str]) -> TuneSet:
    entries = []
    for word in words:
        if word.file in found:
            lesson, bowing = find_entry(word, found[word.file], names[0] if names else None)
            entries.append(Entry(lesson.tune, bowing, word.times))
    refuse_too_many(len(entries))
    return TuneSet(tuple(entries))


def _values(choices: Any) -> tuple[str, ...]:
    return tuple(choice.value for choice in choices)


def _bar(text: str) -> int:
    if not text.isdecimal() or not 0 <= int(text) < 10**6:
        raise argparse.ArgumentTypeError(tr("“{text}” is no bar number: expected 0, 1, 2 ...", text=text))
    return int(text)


def _block(text: str) -> TextBlock:
    r"""A block of text; a first line that ends in a colon is its heading.

    >>> _block("Homework:\nBars 1 to 4.")
    TextBlock(heading='Homework', text='Bars 1 to 4.')
    """
    first, _, rest = text.partition("\n")
    return TextBlock(first.strip()[:-1], rest) if first.strip().endswith(":") else TextBlock("", text)


def _refuse(text: str) -> int:
    print(text, file=sys.stderr)
    return WRONG_CALL
