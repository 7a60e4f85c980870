"""``bowbench check``: what a player would trip over, as text or JSON; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import Any, NamedTuple

from app.notes_json import notes_json
from app.set_entries import FORM, EntryError, EntryName, find_entry, parse_entry, refuse_too_many
from app.set_report import set_json, set_lines
from core.accent_plan import plan_name
from core.bowing import Bowing, set_plan
from core.check import Report, Severity
from core.lesson import Lesson
from core.lesson_check import check_lesson
from core.reading import Reading
from core.severity import severity_word
from core.tempos import beat_of
from core.translation import percent, plural, tr
from core.tune import Tempo, Tune
from core.tune_set import Entry, TuneSet

DONE, FAULTS_FOUND, WRONG_CALL, UNREADABLE = 0, 1, 2, 3  # as ``app.cli`` has them

Read = Callable[[str], Reading | None]
"""Reads a file and tells its problems; None where nothing can be read."""


def add_check_parser(
    commands: Any, plan: Callable[[str], object], beats: Callable[[str], object], tuning: Callable[[str], object]
) -> None:
    """Say what ``bowbench check`` takes; ``plan``, ``beats`` and ``tuning`` read an accent plan, a tempo, strings."""
    checking = commands.add_parser("check", help=tr("tell what a player would trip over in each bowing"))
    checking.add_argument("files", nargs="+", metavar="FILE")
    checking.add_argument(
        "--set",
        action="store_true",
        help=tr("check the tunes as a set in this order too; each FILE is then {form}", form=FORM),
    )
    checking.add_argument("--bowing", metavar="NAME", help=tr("check this bowing only"))
    checking.add_argument("--accents", metavar="PLAN", type=plan, help=tr("judge every bowing by this accent plan"))
    checking.add_argument(
        "--tempo",
        metavar="BPM",
        type=beats,
        help=tr("judge at this tempo, in beats of the dance (a reel's: half notes)"),
    )
    checking.add_argument(
        "--tuning", metavar="STRINGS", type=tuning, help=tr('judge on a fiddle tuned so, low to high: "A3 E4 A4 E5"')
    )
    checking.add_argument("--json", action="store_true", help=tr("print one JSON object"))


def run_check(options: argparse.Namespace, read: Read) -> int:
    """Check files and print what is found.

    Returns:
        Exit status of the command line.
    """
    if options.set:
        return _check_set(options, read)
    return _check_files(options, ((name, read(name)) for name in options.files))


def _check_set(options: argparse.Namespace, read: Read) -> int:
    """Check tunes by themselves, and how they follow each other."""
    try:
        names = [parse_entry(word) for word in options.files]
        readings = {file: read(file) for file in dict.fromkeys(name.file for name in names)}
        tunes = []
        for name in names:
            reading = readings[name.file]
            if reading is not None:
                lesson, bowing = find_entry(name, reading, options.bowing)
                tunes.append(_SetTune(name, lesson, _planned(lesson.tune, bowing, options)))
        refuse_too_many(len(tunes))
    except EntryError as fault:
        print(fault, file=sys.stderr)
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
        print(tr("No file has a bowing named “{name}”.", name=options.bowing), file=sys.stderr)
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
        title = lesson.tune.title or tr("untitled")
        print(tr("{file}: {title} — {bowing} (accents {plan})", file=name, title=title, bowing=bowing.name,
                 plan=plan_name(bowing.accents)))  # fmt: skip
        counts = (
            plural("1 stroke", "{n} strokes", totals.strokes),
            plural("1 slur", "{n} slurs", totals.slurs),
            plural("1 retake", "{n} retakes", totals.retakes),
        )
        print("  " + tr(", ", "between parts of a sentence").join(counts))
        print("  " + tr("accents {driven} driven, {up} up, {buried} buried, {unstruck} unstruck",
                        driven=totals.driven, up=totals.up, buried=totals.buried,
                        unstruck=totals.unstruck))  # fmt: skip
        rounds = tr("comes round") if totals.comes_round else tr("does not come round")
        print("  " + tr("consistency {share}; {rounds}", share=percent(totals.consistency), rounds=rounds))
        for finding in report.findings:
            print("  " + tr("{severity}: {sentence}", severity=severity_word(finding.severity), sentence=finding.text))


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
