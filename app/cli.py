"""The command line: ``bowbench [FILE]``, ``bowbench check``, ``bowbench sheet``.

Scripts of other people rely on its options, its exit statuses and the JSON of ``check --json``; DEVELOPERS.md holds
the contract. Messages go to stderr and name file, line and what was expected; stdout carries the result only. Each
command loads what it needs when it runs, so that the start of the window waits for none of them.
"""

from __future__ import annotations

import argparse
import gc
import re
import sys
from collections.abc import Sequence
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING

from app.call_words import translate_calls
from app.language import ENGLISH, system_language, use_language
from core.translation import tr

if TYPE_CHECKING:
    from core.accent_plan import AccentPlan
    from core.reading import Reading
    from core.strings import Tuning

DONE, WRONG_CALL, UNREADABLE = 0, 2, 3
EXAMPLES = (
    "bowbench check FILE..., bowbench bow FILE --accents PLAN --out OUT, bowbench sheet FILE --out OUT.pdf, "
    "bowbench sound FILE --out OUT.ogg, bowbench pack FOLDER --out FOLDER, bowbench shelf add FOLDER, "
    "bowbench shelf find WORDS, bowbench desktop install"
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line.

    Args:
        arguments: Without the program's name; those of the process where None.
    Returns:
        Exit status: 0 done, 1 the check found faults, 2 wrong call, 3 a file could not be read (the rest was done).
    """
    words = list(sys.argv[1:] if arguments is None else arguments)
    use_language(ENGLISH if "--json" in words else system_language())  # scripts read JSON
    translate_calls()
    try:
        if words and words[0] in COMMANDS:
            options = _parser().parse_args(words)
            return COMMANDS[words[0]](options)
        if _name_at_most_a_file(words):
            return _open_window([Path(word) for word in words])
        options = _window_parser().parse_args(words)
        return _open_window([options.file] if options.file else [])
    except SystemExit as leaving:  # argparse has said what is wrong, or shown the help
        return leaving.code if isinstance(leaving.code, int) else WRONG_CALL
    except BrokenPipeError:  # the reader of our output went away, as ``| head`` does
        sys.stderr.close()
        return DONE


def _window_parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="bowbench",
        description=tr("Work out, check and print the bowings of a fiddle tune."),
        epilog=tr("Commands: {commands}; --help after each tells more.", commands=EXAMPLES),
    )
    parser.add_argument("file", nargs="?", type=Path, help=tr("lesson (.musicxml, .mxl) or tune book (.abc) to open"))
    parser.add_argument(
        "--version", action=_Version, nargs=0, help=tr("tell the versions of the program and its parts")
    )
    return parser


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="bowbench")
    commands = parser.add_subparsers(dest="command", required=True)

    from app.bow_command import add_bow_parser  # not for the window's start
    from app.check_command import add_check_parser
    from app.desktop_command import add_desktop_parser
    from app.pack_command import add_pack_parser
    from app.sheet_command import add_sheet_parser
    from app.shelf_command import add_shelf_parser
    from app.sound_command import add_sound_parser

    add_check_parser(commands, _plan, _beats, _tuning)
    add_bow_parser(commands, _plan)
    add_desktop_parser(commands)
    add_pack_parser(commands)
    add_shelf_parser(commands, _plan)
    add_sound_parser(commands, _beats)
    add_sheet_parser(commands)
    return parser


def _plan(text: str) -> AccentPlan:
    from core.accent_plan import parse_plan

    try:
        return parse_plan(text)
    except ValueError as fault:
        raise argparse.ArgumentTypeError(str(fault)) from None


def _beats(text: str) -> Fraction:
    from core.reach import BEATS_A_MINUTE

    least, most = BEATS_A_MINUTE
    if not re.fullmatch(r"\d{1,3}(\.\d{1,6})?", text) or not least <= Fraction(text) <= most:
        raise argparse.ArgumentTypeError(
            tr("“{text}” is no tempo: expected {least} to {most} beats a minute", text=text, least=least, most=most)
        )
    return Fraction(text)


def _tuning(text: str) -> Tuning:
    from core.strings import parse_tuning

    try:
        return parse_tuning(text)
    except ValueError as fault:
        raise argparse.ArgumentTypeError(str(fault)) from None


class _Version(argparse.Action):
    """Tells the versions; the window's start does not wait for them."""

    def __call__(self, parser: argparse.ArgumentParser, *_: object) -> None:
        from app.licences import version_lines

        print("\n".join(version_lines()))
        parser.exit()


def _say(text: str) -> None:
    print(text, file=sys.stderr)


def _read(name: str) -> Reading | None:
    """Read a file and tell its problems; None, told as well, where nothing can be read."""
    from app.files import FileError, limited_bytes
    from core.errors import UnreadableFileError
    from core.file_faults import why
    from core.reading import read_file

    try:
        reading = read_file(limited_bytes(Path(name)))
    except (OSError, ValueError) as fault:
        _say(f"{name}: {why(fault)}.")
        return None
    except FileError as fault:
        _say(str(fault))
        return None
    except UnreadableFileError as fault:
        _say(f"{name}: {fault}")
        return None
    for problem in reading.problems:
        _say(f"{name}: {problem}")
    return reading


# ------------------------------------------------------------------------------------------------------------ check


def _check(options: argparse.Namespace) -> int:
    from app.check_command import run_check

    return run_check(options, _read)


# ------------------------------------------------------------------------------------------------------------ sheet


def _sheet(options: argparse.Namespace) -> int:
    from app.sheet_command import run_sheet

    return run_sheet(options, _read)


# -------------------------------------------------------------------------------------------------------------- bow


def _bow(options: argparse.Namespace) -> int:
    from app.bow_command import run_bow

    reading = _read(options.file)
    return UNREADABLE if reading is None else run_bow(options, reading)


# ------------------------------------------------------------------------------------------------------------- pack


def _pack(options: argparse.Namespace) -> int:
    from app.pack_command import run_pack

    return run_pack(options)


# ------------------------------------------------------------------------------------------------------------ shelf


def _shelf(options: argparse.Namespace) -> int:
    from app.shelf_command import run_shelf

    return run_shelf(options)


# ------------------------------------------------------------------------------------------------------------ sound


def _sound(options: argparse.Namespace) -> int:
    from app.sound_command import run_sound

    return run_sound(options, _read)


# ---------------------------------------------------------------------------------------------------------- desktop


def _desktop(options: argparse.Namespace) -> int:
    from app.desktop_command import run_desktop

    return run_desktop(options)


# ----------------------------------------------------------------------------------------------------------- window


def _name_at_most_a_file(words: Sequence[str]) -> bool:
    """Whether there is nothing to parse, as at every start from a desktop: the window's start waits for no parser."""
    return len(words) < 2 and not any(word.startswith("-") for word in words)


def _open_window(paths: Sequence[Path]) -> int:
    gc.disable()  # what is made from now on stays; ``run_window`` ends this
    import app.plain_import  # noqa: F401  before all that the window imports
    from app.window import run_window

    return run_window(paths)


COMMANDS = {
    "bow": _bow,
    "check": _check,
    "desktop": _desktop,
    "pack": _pack,
    "sheet": _sheet,
    "shelf": _shelf,
    "sound": _sound,
}
