"""What the teacher says of a tune: a status, free tags, and when it was last opened.

Changes are told as changes (this tag on, that one off), never as a whole new list, so that two windows at work on the
same tune both have their way.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable
from datetime import UTC, datetime
from pathlib import Path

from core.shelf.aside import write_aside
from core.shelf.catalogue import Catalogue
from core.shelf.errors import GoneError, QueryError
from core.shelf.folding import indexed, storable
from core.shelf.paths import to_bytes
from core.translation import tr, translatable

STATUSES = translatable(("to do", "at work", "ready", "taught", "resting"))  # a tune may also have none: ""
LONGEST_TAG = 60


def set_status(catalogue: Catalogue, tune: int, status: str) -> None:
    """Give a tune a status of ``STATUSES``, or none: "".

    Raises:
        QueryError: no such status.
        GoneError: no such tune.
    """
    if status and status not in STATUSES:
        raise QueryError(
            tr("“{status}” is no status: expected {known}, or none.", status=status, known=", ".join(STATUSES))
        )

    def work(connection: sqlite3.Connection) -> None:
        if not connection.execute("UPDATE tune SET status = ? WHERE id = ?", (status, tune)).rowcount:
            raise GoneError
        write_aside(catalogue.path, connection, [tune])

    catalogue.write(work)


def change_tags(catalogue: Catalogue, tune: int, add: Iterable[str] = (), remove: Iterable[str] = ()) -> None:
    """Put tags on a tune and take others off; tags that are there, or gone, already are no mistake.

    Raises:
        GoneError: no such tune.
    """
    added = [tag for tag in map(plain_tag, add) if tag]
    removed = [plain_tag(tag) for tag in remove]

    def work(connection: sqlite3.Connection) -> None:
        if connection.execute("SELECT 1 FROM tune WHERE id = ?", (tune,)).fetchone() is None:
            raise GoneError
        connection.executemany("DELETE FROM tag WHERE tune = ? AND tag = ?", [(tune, tag) for tag in removed])
        connection.executemany("INSERT OR IGNORE INTO tag VALUES (?, ?)", [(tune, tag) for tag in added])
        index_tags(connection, tune)
        write_aside(catalogue.path, connection, [tune])

    catalogue.write(work)


def note_opened(catalogue: Catalogue, file: Path, position: int, when: datetime) -> bool:
    """Note that a tune was opened; an earlier time than the one noted is passed over.

    Args:
        file: Its file.
        position: Its place in the file, from 0.
        when: With a time zone.
    Returns:
        Whether the tune is on the shelf.
    """
    moment = when.astimezone(UTC).isoformat(timespec="seconds")

    def work(connection: sqlite3.Connection) -> bool:
        row = connection.execute(
            "SELECT tune.id FROM tune JOIN file ON file.id = tune.file WHERE path = ? AND position = ? AND NOT away",
            (to_bytes(file), position),
        ).fetchone()
        if row is None:
            return False
        connection.execute("UPDATE tune SET opened = max(coalesce(opened, ''), ?) WHERE id = ?", (moment, row[0]))
        write_aside(catalogue.path, connection, [row[0]])
        return True

    return catalogue.write(work)


def plain_tag(tag: str) -> str:
    """A tag as it is kept: one line, no commas (they part tags where they are typed), not too long.

    >>> plain_tag("  summer   school, 2nd year ")
    'summer school 2nd year'
    """
    return storable(tag.replace(",", " "))[:LONGEST_TAG].strip()


def tags_typed(text: str) -> tuple[str, ...]:
    """The tags in a typed line, parted by commas, each once.

    >>> tags_typed("class, summer school,, class")
    ('class', 'summer school')
    """
    return tuple(dict.fromkeys(filter(None, map(plain_tag, text.split(",")))))


def hand_on(catalogue: Path, connection: sqlite3.Connection, tune: int) -> None:
    """Let an equal tune that is on the shelf, and of which nothing was said yet, have the remarks of one that left.

    For when a file is copied, scanned, and only then deleted in its old place. The tune that left keeps its own, in
    case it comes back.
    """
    heir = connection.execute(
        """SELECT heir.id FROM tune AS heir JOIN file ON file.id = heir.file, tune AS left_one
        WHERE left_one.id = ? AND heir.content = left_one.content AND heir.id <> left_one.id
            AND heir.position IS NOT NULL AND NOT file.away AND heir.status = ''
            AND NOT EXISTS (SELECT 1 FROM tag WHERE tag.tune = heir.id)
        ORDER BY heir.title <> left_one.title, heir.id LIMIT 1""",
        (tune,),
    ).fetchone()
    if heir is None:
        return
    connection.execute(
        """UPDATE tune SET status = left_one.status, opened = nullif(max(coalesce(tune.opened, ''),
            coalesce(left_one.opened, '')), '') FROM tune AS left_one WHERE tune.id = ? AND left_one.id = ?""",
        (heir[0], tune),
    )
    connection.execute("INSERT INTO tag SELECT ?, tag FROM tag WHERE tune = ?", (heir[0], tune))
    index_tags(connection, heir[0])
    write_aside(catalogue, connection, heir)


def index_tags(connection: sqlite3.Connection, tune: int) -> None:
    """Let the words of a tune's tags be found."""
    tags = [tag for (tag,) in connection.execute("SELECT tag FROM tag WHERE tune = ? ORDER BY tag", (tune,))]
    connection.execute("UPDATE words SET tags = ? WHERE rowid = ?", (" ".join(map(indexed, tags)), tune))
