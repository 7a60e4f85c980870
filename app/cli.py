"""The command line: ``bowbench [FILE]``, ``bowbench check``, ``bowbench sheet``.

Scripts of other people rely on its options, its exit statuses and the JSON of ``check --json``; DEVELOPERS.md holds
the contract. Messages go to stderr and name file, line and what was expected; stdout carries the result only.
"""

from __future__ import annotations

import argparse
import json
import re
import sys
from collections.abc import Iterable, Sequence
from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from typing import NamedTuple

from app.notes_json import notes_json
from app.set_entries import FORM, EntryError, EntryName, find_entry, parse_entry
from app.set_report import set_json, set_lines
from core.accent_plan import AccentPlan, parse_plan
from core.bowing import Bowing, set_plan
from core.check import Report, Severity
from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.lesson_check import check_lesson
from core.reach import BEATS_A_MINUTE
from core.reading import Reading, read_file
from core.strings import Tuning, parse_tuning
from core.tempos import beat_of
from core.tune import Tempo, Tune
from core.tune_set import MOST_TUNES, Entry, TuneSet

DONE, FAULTS_FOUND, WRONG_CALL, UNREADABLE = 0, 1, 2, 3


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line.

    Args:
        arguments: Without the program's name; those of the process where None.
    Returns:
        Exit status: 0 done, 1 the check found faults, 2 wrong call, 3 a file could not be read (the rest was done).
    """
    words = list(sys.argv[1:] if arguments is None else arguments)
    try:
        if words and words[0] in COMMANDS:
            options = _parser().parse_args(words)
            return COMMANDS[words[0]](options)
        return _open_window(_window_parser().parse_args(words))
    except SystemExit as leaving:  # argparse has said what is wrong, or shown the help
        return leaving.code if isinstance(leaving.code, int) else WRONG_CALL
    except BrokenPipeError:  # the reader of our output went away, as ``| head`` does
        sys.stderr.close()
        return DONE


def _window_parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="bowbench",
        description="Work out, check and print the bowings of a fiddle tune.",
        epilog="Commands: bowbench check FILE..., bowbench bow FILE --accents PLAN --out OUT, "
        "bowbench sheet FILE --out OUT.pdf, bowbench pack FOLDER --out FOLDER, bowbench shelf add FOLDER, "
        "bowbench shelf find WORDS; --help after each tells more.",
    )
    parser.add_argument("file", nargs="?", type=Path, help="lesson (.musicxml, .mxl) or tune book (.abc) to open")
    parser.add_argument("--version", action="version", version=f"bowbench {_version()}")
    return parser


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="bowbench")
    commands = parser.add_subparsers(dest="command", required=True)

    checking = commands.add_parser("check", help="tell what a player would trip over in each bowing")
    checking.add_argument("files", nargs="+", metavar="FILE")
    checking.add_argument(
        "--set", action="store_true", help=f"check the tunes as a set in this order too; each FILE is then {FORM}"
    )
    checking.add_argument("--bowing", metavar="NAME", help="check this bowing only")
    checking.add_argument("--accents", metavar="PLAN", type=_plan, help="judge every bowing by this accent plan")
    checking.add_argument(
        "--tempo", metavar="BPM", type=_beats, help="judge at this tempo, in beats of the dance (a reel's: half notes)"
    )
    checking.add_argument(
        "--tuning", metavar="STRINGS", type=_tuning, help='judge on a fiddle tuned so, low to high: "A3 E4 A4 E5"'
    )
    checking.add_argument("--json", action="store_true", help="print one JSON object")

    from app.bow_command import add_bow_parser  # not for the window's start
    from app.pack_command import add_pack_parser
    from app.sheet_command import add_sheet_parser
    from app.shelf_command import add_shelf_parser
    from app.sound_command import add_sound_parser

    add_bow_parser(commands, _plan)
    add_pack_parser(commands)
    add_shelf_parser(commands, _plan)
    add_sound_parser(commands, _beats)
    add_sheet_parser(commands)
    return parser


def _plan(text: str) -> AccentPlan:
    try:
        return parse_plan(text)
    except ValueError as fault:
        raise argparse.ArgumentTypeError(str(fault)) from None


def _beats(text: str) -> Fraction:
    least, most = BEATS_A_MINUTE
    if not re.fullmatch(r"\d{1,3}(\.\d{1,6})?", text) or not least <= Fraction(text) <= most:
        raise argparse.ArgumentTypeError(f"“{text}” is no tempo: expected {least} to {most} beats a minute")
    return Fraction(text)


def _tuning(text: str) -> Tuning:
    try:
        return parse_tuning(text)
    except ValueError as fault:
        raise argparse.ArgumentTypeError(str(fault)) from None


def _version() -> str:
    from importlib.metadata import PackageNotFoundError, version

    try:
        return version("bowbench")
    except PackageNotFoundError:  # run from a tree that was never installed
        return "(not installed)"


def _say(text: str) -> None:
    print(text, file=sys.stderr)


def _read(name: str) -> Reading | None:
    """Read a file and tell its problems; None, told as well, where nothing can be read."""
    try:
        reading = read_file(Path(name).read_bytes())
    except OSError as fault:
        _say(f"{name}: {fault.strerror or fault}")
        return None
    except UnreadableFileError as fault:
        _say(f"{name}: {fault}")
        return None
    for problem in reading.problems:
        _say(f"{name}: {problem}")
    return reading


# ------------------------------------------------------------------------------------------------------------ check


def _check(options: argparse.Namespace) -> int:
    if options.set:
        return _check_set(options)
    return _check_files(options, ((name, _read(name)) for name in options.files))


def _check_set(options: argparse.Namespace) -> int:
    """Check tunes by themselves, and how they follow each other."""
    try:
        names = [parse_entry(word) for word in options.files]
        readings = {file: _read(file) for file in dict.fromkeys(name.file for name in names)}
        tunes = []
        for name in names:
            reading = readings[name.file]
            if reading is not None:
                lesson, bowing = find_entry(name, reading, options.bowing)
                tunes.append(_SetTune(name, lesson, _planned(lesson.tune, bowing, options)))
        if len(tunes) > MOST_TUNES:
            raise EntryError(f"A set holds at most {MOST_TUNES} tunes; there are {len(tunes)}.")
    except EntryError as fault:
        _say(str(fault))
        return WRONG_CALL
    return _check_files(options, readings.items(), tunes)


class _SetTune(NamedTuple):
    """A tune of the set that was asked for, as it was found in its file."""

    name: EntryName
    lesson: Lesson
    bowing: Bowing


def _planned(tune: Tune, bowing: Bowing, options: argparse.Namespace) -> Bowing:
    """The bowing with the accent plan of the command line, if it gives one."""
    return bowing if options.accents is None else set_plan(tune, bowing, options.accents)


def _check_files(
    options: argparse.Namespace, readings: Iterable[tuple[str, Reading | None]], set_tunes: Sequence[_SetTune] = ()
) -> int:
    files, unreadable, faults, found_name = [], False, False, False
    for name, reading in readings:
        if reading is None:
            unreadable = True
            continue
        tunes = []
        for lesson in reading.lessons:
            if options.set:
                wanted = [tune.bowing.name for tune in set_tunes if tune.name.file == name and tune.lesson is lesson]
                if not wanted:
                    continue
            else:
                wanted = [b.name for b in lesson.bowings if options.bowing in (None, b.name)]
            bowings = [_planned(lesson.tune, b, options) for b in lesson.bowings if b.name in wanted]
            judging = _as_asked(lesson, options)
            reports = [check_lesson(judging, bowing) for bowing in bowings]
            found_name = found_name or bool(bowings)
            faults = faults or any(f.severity is Severity.FAULT for report in reports for f in report.findings)
            if options.json:
                tunes.append(_tune_json(lesson.tune, bowings, reports))
            else:
                _print_reports(name, lesson, bowings, reports)
        problems = [{"line": problem.line, "text": problem.text} for problem in reading.problems]
        files.append({"file": name, "problems": problems, "tunes": tunes})
    told: dict[str, object] = {"format": "bowbench-check/1", "files": files}
    if options.set:
        told["set"] = None if unreadable else _tell_set(options, set_tunes)
    if options.json:
        json.dump(told, sys.stdout, ensure_ascii=False)
        print()
    if unreadable:
        return UNREADABLE
    if options.bowing is not None and not found_name:
        _say(f"No file has a bowing named “{options.bowing}”.")
        return WRONG_CALL
    return FAULTS_FOUND if faults else DONE


def _tell_set(options: argparse.Namespace, set_tunes: Sequence[_SetTune]) -> dict[str, object] | None:
    """Print a checked set, or give it for the JSON."""
    tune_set = TuneSet(tuple(Entry(tune.lesson.tune, tune.bowing, tune.name.times) for tune in set_tunes))
    lessons = [_as_asked(tune.lesson, options) for tune in set_tunes]

    def judge(entry: int, bowing: Bowing) -> Report:
        return check_lesson(lessons[entry], bowing)

    if options.json:
        return set_json(tune_set, [tune.name.file for tune in set_tunes], judge)
    for line in set_lines(tune_set, judge):
        print(line)
    return None


def _as_asked(lesson: Lesson, options: argparse.Namespace) -> Lesson:
    """The lesson with the tempo and the tuning of the command line in the place of its own."""
    if options.tempo is not None:
        tempo = Tempo(beat_of(lesson.tune.bars[0].meter), options.tempo)
        lesson = replace(lesson, reach=replace(lesson.reach, tempo=tempo))
    return replace(lesson, tuning=options.tuning or lesson.tuning)


def _print_reports(name: str, lesson: Lesson, bowings: Sequence[Bowing], reports: Sequence[Report]) -> None:
    for bowing, report in zip(bowings, reports, strict=True):
        totals = report.totals
        print(f"{name}: {lesson.tune.title or 'untitled'} — {bowing.name} (accents {bowing.accents})")
        print(f"  {totals.strokes} strokes, {totals.slurs} slurs, {totals.retakes} retakes")
        print(f"  accents {totals.driven} driven, {totals.up} up, {totals.buried} buried, {totals.unstruck} unstruck")
        rounds = "comes round" if totals.comes_round else "does not come round"
        print(f"  consistency {totals.consistency:.0%}; {rounds}")
        for finding in report.findings:
            print(f"  {finding.severity.value}: {finding.text}")


def _tune_json(tune: Tune, bowings: Sequence[Bowing], reports: Sequence[Report]) -> dict[str, object]:
    first = tune.bars[0]
    order = reports[0].strokes.order if reports else ()
    return {
        "number": tune.number,
        "title": tune.title,
        "dance": tune.dance,
        "meter": str(first.meter),
        "key": str(first.key),
        "order": [[tune.bars[visit.bar].number, visit.pass_number] for visit in order],
        "bowings": [_bowing_json(tune, b, report) for b, report in zip(bowings, reports, strict=True)],
    }


def _bowing_json(tune: Tune, bowing: Bowing, report: Report) -> dict[str, object]:
    totals = report.totals
    return {
        "name": bowing.name,
        "accents": str(bowing.accents),
        "notes": notes_json(tune, bowing, report.strokes),
        "totals": {name: getattr(totals, name) for name in type(totals).__dataclass_fields__},
        "findings": [
            {
                "rule": finding.rule,
                "severity": finding.severity.value,
                "bars": list(finding.bars),
                "pass": finding.pass_number,
                "notes": list(finding.notes),
                "text": finding.text,
            }
            for finding in report.findings
        ],
    }


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

    reading = _read(options.file)
    return UNREADABLE if reading is None else run_sound(options, reading)


# ----------------------------------------------------------------------------------------------------------- window


def _open_window(options: argparse.Namespace) -> int:
    from app.window import run_window

    return run_window([options.file] if options.file else [])


COMMANDS = {"bow": _bow, "check": _check, "pack": _pack, "sheet": _sheet, "shelf": _shelf, "sound": _sound}
