"""``bowbench shelf learn``, ``shelf styles`` and ``shelf forget``; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from app.files import FileError
from app.style_words import found_in, learned_from
from app.styles import BOOK, forget_style, own_styles, shown_name, style_of
from core.errors import RefusedEditError
from core.shelf.errors import QueryError
from core.translation import plural, tr

if TYPE_CHECKING:
    from app.style_learning import Step
    from core.shelf.query import Query
    from core.style.style import Style

DONE, WRONG_CALL, UNREADABLE = 0, 2, 3  # as ``app.cli`` has them


def add_learn_parsers(
    actions: argparse._SubParsersAction[argparse.ArgumentParser],
    add_query: Callable[[argparse.ArgumentParser], None],
) -> None:
    """Add the commands to those of the shelf; ``add_query`` adds what says which tunes are meant."""
    learning = actions.add_parser("learn", help=tr("learn a style from the bowings of the lessons that are found"))
    learning.add_argument("style", metavar="NAME", help=tr("of the style; an own one of this name is replaced"))
    add_query(learning)
    learning.add_argument("--shelf", type=Path, metavar="PATH", help=tr("another catalogue than your own"))
    listing = actions.add_parser("styles", help=tr("list the styles, and what was found in their lessons"))
    listing.add_argument("--json", action="store_true", help=tr("print one JSON object"))
    forgetting = actions.add_parser("forget", help=tr("take an own style away"))
    forgetting.add_argument("style", metavar="NAME")


def learn_from_shelf(path: Path, query: Query, options: argparse.Namespace) -> int:
    """Learn a style, keep it and tell what was found.

    Returns:
        Exit status.
    Raises:
        ShelfError: the catalogue cannot be used.
    """
    from app.style_learning import learn_style  # loads numbers of its own
    from core.style.forest import MissingLibraryError

    on_terminal = sys.stderr.isatty()
    try:
        learned = learn_style(path, query, options.style, _show if on_terminal else lambda _: None)
    except (QueryError, RefusedEditError, FileError, MissingLibraryError) as refusal:
        _wipe(on_terminal)
        _say(str(refusal))
        return WRONG_CALL
    _wipe(on_terminal)
    for problem in learned.problems:
        _say(str(problem))
    if learned.bare:
        _say(plural("1 tune has no slurs and was passed over.", "{n} tunes have no slurs and were passed over.",
                    learned.bare))  # fmt: skip
    _tell([learned.style], options.json)
    return UNREADABLE if learned.problems else DONE


def list_styles(options: argparse.Namespace) -> int:
    """Tell of each style what was found in its lessons.

    Returns:
        Exit status.
    """
    styles, faults = [], []
    for name in (*own_styles(), BOOK):
        try:
            styles.append(style_of(name))
        except FileError as fault:
            faults.append(str(fault))
    for sentence in faults:
        _say(sentence)
    _tell(styles, options.json)
    return UNREADABLE if faults else DONE


def forget(options: argparse.Namespace) -> int:
    """Take an own style away.

    Returns:
        Exit status.
    """
    try:
        forget_style(options.style)
    except FileError as fault:
        _say(str(fault))
        return WRONG_CALL
    return DONE


def _tell(styles: list[Style], as_json: bool) -> None:
    if as_json:
        told = {"format": "bowbench-styles/1", "styles": [_style_json(style) for style in styles]}
        print(json.dumps(told, ensure_ascii=False))
        return
    for style in styles:
        print(f"{_name(style)}: {learned_from(style)}")
        for words in found_in(style):
            print(f"  {words}")


def _name(style: Style) -> str:
    return style.name if style.name in own_styles() else shown_name(BOOK)


def _style_json(style: Style) -> dict[str, object]:
    return {
        "name": style.name if style.name in own_styles() else BOOK,
        "own": style.name in own_styles(),
        **style.figures.__dict__,
        "habits": [
            {
                "figure": list(habit.figure),
                "joined": habit.joined,
                "seen": habit.seen,
                "where": [{"title": title, "bar": bar} for title, bar in habit.where],
                "text": habit.sentence(),
            }
            for habit in style.habits
        ],
    }


def _show(step: Step) -> None:
    print(f"\r{100 * step.share:3.0f} %  {step.words:40}", end="", file=sys.stderr, flush=True)


def _wipe(on_terminal: bool) -> None:
    if on_terminal:
        print(f"\r{'':50}\r", end="", file=sys.stderr, flush=True)


def _say(text: str) -> None:
    print(text, file=sys.stderr)
