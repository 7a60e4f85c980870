"""``bowbench shelf``: the catalogue, and what is learned from its lessons; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import json
import os
import shutil
import sys
from collections.abc import Callable
from dataclasses import asdict
from functools import partial
from pathlib import Path

from app.learn_command import add_learn_parsers, forget, learn_from_shelf, list_styles
from app.shelf_place import default_shelf
from core.accent_plan import AccentPlan
from core.shelf.catalogue import Catalogue
from core.shelf.errors import QueryError, ShelfError, UnusableShelfError
from core.shelf.paths import to_text
from core.shelf.query import Query
from core.shelf.rebuild import rebuild
from core.shelf.remarks import STATUSES
from core.shelf.scan import Progress, ScanReport, add_places, places_of, scan
from core.shelf.search import Entry, count, find
from core.translation import plural, tr

DONE, WRONG_CALL, UNREADABLE = 0, 2, 3  # as ``app.cli`` has them


def add_shelf_parser(
    commands: argparse._SubParsersAction[argparse.ArgumentParser], plan: Callable[[str], AccentPlan]
) -> None:
    """Add the command with its own commands to those of the program; ``plan`` reads an accent plan."""
    shelf = commands.add_parser("shelf", help=tr("keep a catalogue of lessons and tune books, and find tunes in it"))
    actions = shelf.add_subparsers(dest="action", required=True)

    adding = actions.add_parser("add", help=tr("put folders or files on the shelf and read what is new in them"))
    adding.add_argument("places", nargs="*", metavar="FOLDER|FILE", type=Path,
                        help=tr("where none is given, all that is on the shelf is looked through again"))  # fmt: skip
    adding.add_argument("--rebuild", action="store_true",
                        help=tr("first set the catalogue aside and begin a new one; what you "
                                 "noted is kept"))  # fmt: skip

    finding = actions.add_parser("find", help=tr("find tunes by words, dance, key, metre or first notes"))
    ranking = actions.add_parser("rank", help=tr("put tunes in the order in which they lie best under an accent plan"))
    ranking.add_argument("--accents", type=plan, default=AccentPlan(), metavar="PLAN",
                         help=tr("on-beat (where left out), backbeat, by-phrase, or places such as 0,2"))  # fmt: skip
    ranking.add_argument("--at-most", type=_at_most, metavar="N", help=tr("show the best N only"))
    for parser in (finding, ranking):
        _add_query(parser)
    add_learn_parsers(actions, _add_query)
    for parser in (adding, finding, ranking):
        parser.add_argument("--shelf", type=Path, metavar="PATH", help=tr("another catalogue than your own"))


def _add_query(finding: argparse.ArgumentParser) -> None:
    """Add what says which tunes are meant."""
    finding.add_argument(
        "words", nargs="*", metavar="WORDS", help=tr("beginnings of words in titles, tags and credits")
    )
    finding.add_argument("--dance", default="", help=tr("such as reel, or jig for slip jigs too"))
    finding.add_argument("--key", default="", help=tr("D for any mode on D, or D major, Edor, F#m"))
    finding.add_argument("--meter", default="", help="6/8, C, C|")
    finding.add_argument("--notes", default="", metavar="LETTERS",
                         help=tr("how it begins: u, d, s for up, down, same, or note names such as dBAF"))  # fmt: skip
    finding.add_argument("--any-key", action="store_true", help=tr("find the note names in every key"))
    finding.add_argument("--tag", action="append", default=[], help=tr("may be given more than once"))
    finding.add_argument("--status", choices=(*STATUSES, "none"), default="")
    finding.add_argument(
        "--bowing", default="", metavar="NAME", help=tr("words of a bowing's name, or its accent plan")
    )
    finding.add_argument("--json", action="store_true", help=tr("print one JSON object"))


def run_shelf(options: argparse.Namespace) -> int:
    """Run a command of the shelf.

    Returns:
        Exit status.
    """
    if options.action in OF_STYLES:
        return OF_STYLES[options.action](options)
    path = options.shelf or default_shelf()
    try:
        return ACTIONS[options.action](path, options)
    except UnusableShelfError as fault:
        _say(tr("{fault} “bowbench shelf add --rebuild” does that.", fault=fault))
    except ShelfError as fault:
        _say(str(fault))
    return UNREADABLE


def _add(path: Path, options: argparse.Namespace) -> int:
    if options.rebuild:
        rebuilt = rebuild(path)
        if rebuilt.old is not None:
            _say(plural(
                "The old catalogue is now {old}; what you noted of 1 tune is kept.",
                "The old catalogue is now {old}; what you noted of {n} tunes is kept.",
                rebuilt.remarks, old=rebuilt.old,
            ))  # fmt: skip
    with Catalogue(path) as catalogue:
        missing = [place for place in options.places if not os.path.exists(place)]
        for place in missing:
            _say(tr("{file}: there is no such file or folder.", file=to_text(place)))
        places = [place for place in options.places if place not in missing]
        add_places(catalogue, places)
        if not options.places and not places_of(catalogue):
            _say(tr("The shelf is empty: name a folder or a file to put on it."))
            return WRONG_CALL
        report = _scan(catalogue, places if options.places else None)
        print(plural("1 tune on the shelf; {scan}.", "{n} tunes on the shelf; {scan}.", count(catalogue),
                     scan=_told(report)))  # fmt: skip
    return UNREADABLE if missing or report.problems else DONE


def _scan(catalogue: Catalogue, places: list[Path] | None) -> ScanReport:
    on_terminal = sys.stderr.isatty()
    report = scan(catalogue, places, watch=_show if on_terminal else lambda _: None)
    if on_terminal:
        _wipe()
    for problem in report.problems:
        _say(str(problem))
    return report


def _query(options: argparse.Namespace) -> Query:
    return Query(
        " ".join(options.words), options.dance, options.key, options.meter, options.notes, options.any_key,
        options.status, tuple(options.tag), options.bowing,
    )  # fmt: skip


def _rank(path: Path, options: argparse.Namespace) -> int:
    from core.shelf.rank import rank  # loads the planner

    on_terminal = sys.stderr.isatty()
    watch = partial(_show, of_tunes=True) if on_terminal else lambda _: None
    with Catalogue(path) as catalogue:
        try:
            found = rank(catalogue, options.accents, _query(options), watch=watch)
        except QueryError as fault:
            _say(str(fault))
            return WRONG_CALL
    if on_terminal:
        _wipe()
    for problem in found.problems:
        _say(str(problem))
    tunes = found.tunes[: options.at_most]
    if options.json:
        told = [{**_entry_json(one.entry), "figures": asdict(one.figures)} for one in tunes]
        print(json.dumps({"format": "bowbench-rank/1", "accents": str(options.accents), "tunes": told}))
        return UNREADABLE if found.problems else DONE
    for one in tunes:
        figures = one.figures
        print(plural(
            "missed {missed}, broken {broken}, {slurs} in 1 bar played — {tune}",
            "missed {missed}, broken {broken}, {slurs} in {n} bars played — {tune}",
            figures.playings, missed=figures.missed, broken=figures.broken,
            slurs=plural("1 slur", "{n} slurs", figures.slurs), tune=_line(one.entry),
        ))  # fmt: skip
    return UNREADABLE if found.problems else DONE


def _learn(path: Path, options: argparse.Namespace) -> int:
    return learn_from_shelf(path, _query(options), options)


def _find(path: Path, options: argparse.Namespace) -> int:
    with Catalogue(path) as catalogue:
        try:
            entries = find(catalogue, _query(options)).entries
        except QueryError as fault:
            _say(str(fault))
            return WRONG_CALL
        if options.json:  # in ASCII, so that file names that are no text survive
            print(json.dumps({"format": "bowbench-shelf/1", "tunes": list(map(_entry_json, entries))}))
            return DONE
        for entry in entries:
            print(_line(entry))
        if not entries:
            _say(tr("No such tune on the shelf.") if places_of(catalogue) else
                 tr("The shelf is empty: “bowbench shelf add FOLDER” puts tunes on it."))  # fmt: skip
    return DONE


def _line(entry: Entry) -> str:
    status = tr(entry.status) if entry.status else ""
    facts = [entry.dance, entry.key, entry.meter, status, *(f"#{tag}" for tag in entry.tags)]
    where = tr("{file}, tune {number}", file=to_text(entry.file), number=entry.place)
    return f"{entry.title or tr('Untitled')} — {', '.join(filter(None, facts))} — {where}"


def _entry_json(entry: Entry) -> dict[str, object]:
    return {
        "file": str(entry.file),
        "place": entry.place,
        "number": entry.number,
        "title": entry.title,
        "other_titles": list(entry.other_titles),
        "dance": entry.dance,
        "key": entry.key,
        "meter": entry.meter,
        "parts": entry.parts,
        "bars": entry.bars,
        "notes": entry.notes,
        "bowings": [{"name": bowing.name, "accents": bowing.accents} for bowing in entry.bowings],
        "status": entry.status,
        "tags": list(entry.tags),
        "opened": entry.opened,
    }


def _told(report: ScanReport) -> str:
    return plural(
        "1 file: {new} new, {changed} changed, {moved} moved, {back} back, {gone} gone",
        "{n} files: {new} new, {changed} changed, {moved} moved, {back} back, {gone} gone",
        report.files, new=report.new, changed=report.changed, moved=report.moved, back=report.back, gone=report.gone,
    )  # fmt: skip


def _show(progress: Progress, *, of_tunes: bool = False) -> None:
    if progress.total:
        text = tr("{done} of {total} tunes  {name}" if of_tunes else "{done} of {total} files  {name}",
                  done=progress.done, total=progress.total, name=progress.name)  # fmt: skip
    else:
        text = tr("Looking ...")
    width = shutil.get_terminal_size().columns - 1
    print(f"\r{text[:width]:{width}}", end="", file=sys.stderr, flush=True)


def _wipe() -> None:
    print(f"\r{'':{shutil.get_terminal_size().columns - 1}}\r", end="", file=sys.stderr, flush=True)


def _say(text: str) -> None:
    print(text, file=sys.stderr)


def _at_most(text: str) -> int:
    if not text.isdecimal() or not int(text):
        raise argparse.ArgumentTypeError(tr("“{text}” is no number of tunes: expected 1 or more", text=text))
    return int(text)


ACTIONS = {"add": _add, "find": _find, "learn": _learn, "rank": _rank}
OF_STYLES = {"forget": forget, "styles": list_styles}
