"""``bowbench pack``: make a lesson pack; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import shutil
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from core.file_faults import why
from core.pack.kinds import Kind, in_order_text, parse_kinds
from core.translation import plural, tr

if TYPE_CHECKING:
    from app.pack_run import Progress, repaired_text

DONE, WRONG_CALL, UNREADABLE = 0, 2, 3  # as ``app.cli`` has them
INTERRUPTED = 130  # as shells have it for Ctrl+C
MOST_JOBS = 64


def add_pack_parser(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to those of the program."""
    pack = commands.add_parser("pack", help=tr("make sheets and files of many lessons in one folder, and a zip of all"))
    pack.add_argument("places", nargs="+", metavar="FILE|FOLDER", type=Path, help=tr("lessons and tune books"))
    pack.add_argument("--out", required=True, metavar="FOLDER", type=Path,
                      help=tr("a new folder, or one that holds a pack: only what is missing "
                                 "in it is made"))  # fmt: skip
    pack.add_argument(
        "--jobs", type=_jobs, metavar="N", help=tr("processes at a time; as many as processors if left out")
    )
    pack.add_argument("--only", type=_kinds, metavar="KIND,KIND",
                      help=tr("what is made of each lesson, of {kinds}; all if left out",
                              kinds=in_order_text(Kind)))  # fmt: skip


def run_pack(options: argparse.Namespace) -> int:
    """Make a pack.

    Returns:
        Exit status.
    """
    from app.pack_folder import PackFolderError  # Qt only where it is needed
    from app.pack_run import make_pack
    from app.pack_sources import find_sources

    found = find_sources(options.places)
    for problem in found.problems:
        _say(problem)
    if not found.sources:
        _say(tr("There is no lesson and no tune book to pack."))
        return UNREADABLE if found.problems else WRONG_CALL
    on_terminal = sys.stderr.isatty()
    try:
        report = make_pack(found, options.out, options.only, options.jobs, _show if on_terminal else lambda _: None)
    except PackFolderError as fault:
        _say(str(fault))
        return WRONG_CALL
    except OSError as fault:
        _say(tr("{path} cannot be written: {reason}.", path=options.out, reason=why(fault, writing=True)))
        return WRONG_CALL
    except KeyboardInterrupt:
        _wipe(on_terminal)
        _say(tr("Stopped. What is made stands; pack again to make the rest."))
        return INTERRUPTED
    _wipe(on_terminal)
    for line in [*map(str, report.problems), *report.notices]:
        _say(line)
    if report.remarks:
        _say(repaired_text(report.remarks))
    print(plural(
        "1 lesson made, {kept} up to date: {path}", "{n} lessons made, {kept} up to date: {path}",
        report.made, kept=report.kept, path=report.contents or options.out,
    ))  # fmt: skip
    return UNREADABLE if report.problems or found.problems else DONE


def _show(progress: Progress) -> None:
    text = progress.text
    width = shutil.get_terminal_size().columns - 1
    print(f"\r{text[:width]:{width}}", end="", file=sys.stderr, flush=True)


def _wipe(on_terminal: bool) -> None:
    if on_terminal:
        print(f"\r{'':{shutil.get_terminal_size().columns - 1}}\r", end="", file=sys.stderr, flush=True)


def _kinds(text: str) -> frozenset[Kind]:
    try:
        return parse_kinds(text)
    except ValueError as fault:
        raise argparse.ArgumentTypeError(str(fault)) from None


def _jobs(text: str) -> int:
    if not text.isdecimal() or not 1 <= int(text) <= MOST_JOBS:
        raise argparse.ArgumentTypeError(
            tr("“{text}” is no number of processes: expected 1 to {most}", text=text, most=MOST_JOBS)
        )
    return int(text)


def _say(text: str) -> None:
    print(text, file=sys.stderr)
