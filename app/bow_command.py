"""``bowbench bow``: work out a bowing; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from app.files import FileError, lesson_path, save_lesson
from app.notes_json import notes_json
from app.tune_choice import first_taken
from core.accent_plan import AccentPlan, plan_name
from core.bowing import set_plan
from core.errors import RefusedEditError
from core.lesson import Lesson, add_bowing
from core.planner import Flow, Plan, PlannerSettings, RefusedPlanError, Score, alternatives, difference, work_out_plan
from core.planner.counts import slur_count
from core.reading import Reading
from core.strokes import work_out
from core.translation import tr

DONE, WRONG_CALL = 0, 2  # as ``app.cli`` has them
MOST_ALTERNATIVES = 20


def add_bow_parser(
    commands: argparse._SubParsersAction[argparse.ArgumentParser], plan: Callable[[str], AccentPlan]
) -> None:
    """Add the command to those of the program; ``plan`` reads an accent plan."""
    bow = commands.add_parser("bow", help=tr("work out the best bowing for an accent plan"))
    bow.add_argument("file", metavar="FILE")
    bow.add_argument("--accents", metavar="PLAN", type=plan,
                     help=tr("on-beat, backbeat, by-phrase, none, or places in quarter notes such as 0,2"))  # fmt: skip
    bow.add_argument("--style", metavar="NAME",
                     help=tr("slur in a style: one of your own, “1883 book”, or this-tune"))  # fmt: skip
    bow.add_argument("--sure", action="store_true", help=tr("with --style, slur only what is sure"))
    bow.add_argument("--smooth", action="store_true", help=tr("strokes of two and three notes, not the fewest slurs"))
    bow.add_argument(
        "--tune", type=int, metavar="N", help=tr("the tune of this number in a book; the first if left out")
    )
    bow.add_argument("--keep", action="store_true", help=tr("keep the slurs and marks of the first bowing"))
    bow.add_argument(
        "--alternatives", type=_count, default=0, metavar="K", help=tr("add up to K more that differ audibly")
    )
    bow.add_argument(
        "--out", required=True, metavar="OUT.musicxml", type=Path, help=tr("the lesson with what was found")
    )
    bow.add_argument("--json", action="store_true", help=tr("print one JSON object"))


def run_bow(options: argparse.Namespace, reading: Reading) -> int:
    """Work out a bowing of one tune of a file and write the lesson with it.

    Returns:
        Exit status.
    """
    chosen = [lesson for lesson in reading.lessons if options.tune in (None, lesson.tune.number)]
    if not chosen:
        return _refuse(tr("{file}: there is no tune number {number}", file=options.file, number=options.tune))
    lesson = chosen[0]
    if options.tune is None and len(chosen) > 1:
        _say(first_taken(options.file, len(chosen), lesson))
    if options.style is not None:
        return _carry_on(lesson, options)
    if options.accents is None:
        return _refuse(tr("Neither --accents nor --style was given: one of them says what bowing is worked out."))
    settings = PlannerSettings(Flow.SMOOTH if options.smooth else Flow.FEWEST_SLURS)
    try:
        bowing = set_plan(lesson.tune, lesson.bowings[0], options.accents)
        plan = work_out_plan(lesson.tune, bowing, settings, keep=options.keep)
    except RefusedPlanError as refusal:
        return _refuse(f"{options.file}: {refusal}")
    plans = (plan, *alternatives(plan, options.alternatives)) if options.alternatives else (plan,)
    try:
        save_lesson(_with(lesson, plans, options), lesson_path(options.out))
    except FileError as fault:
        return _refuse(str(fault))
    if options.json:
        found = {"format": "bowbench-plan/1", "plans": [_plan_json(lesson, plan) for plan in plans]}
        json.dump(found, sys.stdout, ensure_ascii=False)
        print()
    else:
        for number, each in enumerate(plans):
            print(f"{_numbers(each.score)}: {difference(plan, each)}" if number else _line(each))
    return DONE


def _carry_on(lesson: Lesson, options: argparse.Namespace) -> int:
    """Work out a bowing in a style and write the lesson with it.

    Returns:
        Exit status.
    """
    from app.carry_command import bars_json, carried, line_of, name_of  # loads numbers of its own

    if options.smooth or options.alternatives:
        return _refuse(tr("--smooth and --alternatives do not go with --style, which says what is slurred."))
    try:
        proposal = carried(lesson, options)
        added = add_bowing(lesson, replace(proposal.bowing, name=name_of(options)))
        save_lesson(added, lesson_path(options.out))
    except RefusedEditError as refusal:
        return _refuse(f"{options.file}: {refusal}")
    except FileError as fault:
        return _refuse(str(fault))
    if options.json:
        told = {**_plan_json(lesson, proposal.plan), "bars": bars_json(lesson, proposal)}
        json.dump({"format": "bowbench-plan/1", "plans": [told]}, sys.stdout, ensure_ascii=False)
        print()
    else:
        print(line_of(lesson, proposal))
    return DONE


def _with(lesson: Lesson, plans: tuple[Plan, ...], options: argparse.Namespace) -> Lesson:
    """The lesson with the plans behind its own bowings, each under a name of its own."""
    accents = plan_name(options.accents)
    name = tr(
        "{accents}, smooth" if options.smooth else "{accents}, fewest slurs", "name of a bowing",
        accents=accents[:1].upper() + accents[1:],
    )  # fmt: skip
    for plan in plans:
        lesson = add_bowing(lesson, replace(plan.bowing, name=name))
    return lesson


def _plan_json(lesson: Lesson, plan: Plan) -> dict[str, object]:
    return {
        **plan.score._asdict(),
        "slurs": slur_count(lesson.tune, plan.bowing),
        "proven": plan.proven,
        "notes": notes_json(lesson.tune, plan.bowing, work_out(lesson.tune, plan.bowing)),
    }


def _line(plan: Plan) -> str:
    if plan.proven:
        return tr("{numbers} (proven best)", numbers=_numbers(plan.score))
    return tr(
        "{numbers} (best found; none can be better than {bound})",
        numbers=_numbers(plan.score), bound=_numbers(plan.bound),
    )  # fmt: skip


def _numbers(score: Score) -> str:
    return tr("missed {missed}, broken {broken}, cost {cost}", **score._asdict())


def _count(text: str) -> int:
    if not text.isdecimal() or not 1 <= int(text) <= MOST_ALTERNATIVES:
        raise argparse.ArgumentTypeError(
            tr("“{text}” is no number of alternatives: expected 1 to {most}", text=text, most=MOST_ALTERNATIVES)
        )
    return int(text)


def _refuse(text: str) -> int:
    _say(text)
    return WRONG_CALL


def _say(text: str) -> None:
    print(text, file=sys.stderr)
