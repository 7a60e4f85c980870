"""The way out when a catalogue is damaged or of a later version: set it aside and build a new one.

Nothing is deleted: the old file stays beside the new one under another name. The new catalogue begins with the same
folders and with what the teacher said, from the lines written aside (``core.shelf.aside``) and from the old one as far
as it can still be read; a scan then gives it back to the tunes.
"""

from __future__ import annotations

import os
import sqlite3
from pathlib import Path

from core.file_faults import why
from core.shelf.aside import (
    Remarks,
    path_aside,
    read_aside,
    read_places_aside,
    salvaged,
    write_aside,
    write_places_aside,
)
from core.shelf.catalogue import Catalogue
from core.shelf.errors import ShelfError
from core.shelf.folding import sort_key
from core.translation import tr
from core.values import dataclass

COMPANIONS = ("", "-wal", "-shm", ".remarks")  # what SQLite and we name after a catalogue


@dataclass(frozen=True)
class Rebuilt:
    """What came of it.

    Attributes:
        old: Where the old catalogue is now; None where there was none.
        remarks: Tunes of which the teacher had said something.
        places: Folders and files that the new catalogue holds, to be scanned.
    """

    old: Path | None
    remarks: int
    places: int


def rebuild(path: Path) -> Rebuilt:
    """Set a catalogue aside and put a new one in its place; end other programs that use it first.

    Raises:
        ShelfError: the old file cannot be renamed, or the new one cannot be made.
    """
    aside = path_aside(path)
    places, in_tables = _salvaged(path)
    places = list(dict.fromkeys([*places, *read_places_aside(aside)]))
    kept = {remarks.tune: remarks for remarks in (*read_aside(aside), *in_tables)}  # a later one takes the place
    old = _set_aside(path)
    with Catalogue(path) as catalogue:
        catalogue.write(lambda db: _begin_with(path, db, places, list(kept.values())))
    return Rebuilt(old, len(kept), len(places))


def _salvaged(path: Path) -> tuple[list[bytes], list[Remarks]]:
    """Places and remarks that the tables of an old catalogue still give."""
    if not path.is_file():
        return [], []
    try:
        connection = sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)
    except sqlite3.Error:
        return [], []
    try:
        return salvaged(connection)
    finally:
        connection.close()


def _set_aside(path: Path) -> Path | None:
    if not os.path.lexists(path):
        return None
    number = 1
    while os.path.lexists(aside := path.with_name(f"{path.name}.old-{number}")):
        number += 1
    try:
        for ending in COMPANIONS:
            one = path.with_name(path.name + ending)
            if os.path.lexists(one):
                one.rename(aside.with_name(aside.name + ending))
    except OSError as fault:
        raise ShelfError(
            tr("The shelf {path} cannot be set aside: {reason}.", path=path, reason=why(fault, writing=True))
        ) from fault
    return aside


def _begin_with(path: Path, connection: sqlite3.Connection, places: list[bytes], kept: list[Remarks]) -> None:
    """Write remarks as those of tunes that have left their files, so that the next scan gives them back."""
    connection.executemany("INSERT OR IGNORE INTO place (path) VALUES (?)", [(place,) for place in places])
    write_places_aside(path, connection)
    for remarks in kept:
        connection.execute("INSERT OR IGNORE INTO file (path, away) VALUES (?, 1)", (remarks.file,))
        added = connection.execute(
            """INSERT INTO tune (file, content, number, title, sort, status, opened)
            SELECT id, ?, ?, ?, ?, ?, ? FROM file WHERE path = ?""",
            (remarks.content, remarks.number, remarks.title, sort_key(remarks.title), remarks.status, remarks.opened,
             remarks.file),
        )  # fmt: skip
        assert added.lastrowid is not None
        tune = added.lastrowid
        connection.executemany("INSERT OR IGNORE INTO tag VALUES (?, ?)", [(tune, tag) for tag in remarks.tags])
        write_aside(path, connection, [tune])
