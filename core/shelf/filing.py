"""Writing what was read of one file into the catalogue: which tunes stay, move in, are new, or have left.

All functions here run within one transaction of the caller's.
"""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterable, Sequence
from pathlib import Path

from core.shelf.aside import HAS_REMARKS, write_aside
from core.shelf.facts import FACTS_VERSION, Facts
from core.shelf.folding import indexed, sort_key
from core.shelf.matching import Likeness, pair
from core.shelf.paths import to_path
from core.shelf.remarks import hand_on, index_tags
from core.values import dataclass


@dataclass(frozen=True)
class FileFacts:
    """One file as it was read.

    Attributes:
        path: Absolute, as bytes.
        size, mtime_ns: Of the file when it was read; ``mtime_ns`` None where it may still be changing.
        hash: ``core.shelf.facts.file_hash`` of its bytes; None where they were not read.
        tunes: In file order.
        problem: Why nothing could be read, or "".
    """

    path: bytes
    size: int
    mtime_ns: int | None
    hash: bytes | None
    tunes: tuple[Facts, ...] = ()
    problem: str = ""


def file_tunes(catalogue: Path, connection: sqlite3.Connection, read: FileFacts) -> bool:
    """Write all tunes of a file.

    A tune is looked for among those of the file, then among equal ones whose file is gone (it was moved or renamed),
    and only then is new.

    Returns:
        Whether the file was moved here: a tune came from a file that is gone.
    """
    connection.execute("INSERT INTO file (path) VALUES (?) ON CONFLICT DO NOTHING", (read.path,))
    file = connection.execute("SELECT id FROM file WHERE path = ?", (read.path,)).fetchone()[0]
    own = connection.execute(
        f"""SELECT id, content, sort, number, position IS NOT NULL, {HAS_REMARKS} FROM tune WHERE file = ?
        ORDER BY position IS NULL, position, id""",
        (file,),
    ).fetchall()
    pairs = pair(
        [Likeness(facts.content, sort_key(facts.title), facts.number) for facts in read.tunes],
        [Likeness(content, title, number) for _, content, title, number, *_ in own],
    )
    connection.execute("UPDATE tune SET position = NULL WHERE file = ?", (file,))
    moved = False
    for position, facts in enumerate(read.tunes):
        if position in pairs:
            tune = own[pairs[position]][0]
        else:
            found = _homeless(connection, file, read, facts)
            moved = moved or found is not None
            tune = found if found is not None else _new_tune(connection, file, facts)
        _write_tune(connection, tune, file, position, facts, read.path)
    connection.execute(
        "UPDATE file SET size = ?, mtime_ns = ?, hash = ?, facts_version = ?, problem = ?, away = 0 WHERE id = ?",
        (read.size, read.mtime_ns, read.hash, FACTS_VERSION, read.problem, file),
    )
    _write_aside_of_file(catalogue, connection, file)
    kept = set(pairs.values())
    for index, (tune, *_, stood_here, has_remarks) in enumerate(own):
        if index not in kept and stood_here and has_remarks:
            hand_on(catalogue, connection, tune)
    return moved


def move_file(catalogue: Path, connection: sqlite3.Connection, read: FileFacts) -> bool:
    """Take a file that has only another path now for what it was, with all its tunes.

    Returns:
        False where no file that is gone had the same bytes; nothing was changed then.
    """
    if connection.execute("SELECT 1 FROM file WHERE path = ?", (read.path,)).fetchone() is not None:
        return False
    name = os.path.basename(read.path)
    found = connection.execute(
        "SELECT id, path, away FROM file WHERE hash = ? AND facts_version = ?", (read.hash, FACTS_VERSION)
    ).fetchall()
    gone = [(os.path.basename(path) != name, file) for file, path, away in found if away or not os.path.lexists(path)]
    if not gone:
        return False
    file = min(gone)[1]
    connection.execute(
        "UPDATE file SET path = ?, size = ?, mtime_ns = ?, away = 0 WHERE id = ?",
        (read.path, read.size, read.mtime_ns, file),
    )
    connection.execute(
        "UPDATE words SET file = ? WHERE rowid IN (SELECT id FROM tune WHERE file = ?)", (_name_words(read.path), file)
    )
    _write_aside_of_file(catalogue, connection, file)
    return True


def put_away(catalogue: Path, connection: sqlite3.Connection, paths: Iterable[bytes]) -> None:
    """Take files that are gone off the shelf; what the teacher said of their tunes waits for them to come back."""
    for path in paths:
        connection.execute("UPDATE file SET away = 1 WHERE path = ?", (path,))
        leaving = connection.execute(
            f"""SELECT tune.id FROM tune JOIN file ON file.id = tune.file
            WHERE path = ? AND position IS NOT NULL AND {HAS_REMARKS}""",
            (path,),
        ).fetchall()
        for (tune,) in leaving:
            hand_on(catalogue, connection, tune)


def _write_aside_of_file(catalogue: Path, connection: sqlite3.Connection, file: int) -> None:
    """Write again what was said of a file's tunes, so that they are known by what they are now."""
    said = connection.execute(f"SELECT id FROM tune WHERE file = ? AND {HAS_REMARKS}", (file,)).fetchall()
    if said:
        write_aside(catalogue, connection, [tune for (tune,) in said])


def _homeless(connection: sqlite3.Connection, file: int, read: FileFacts, facts: Facts) -> int | None:
    """The tune without a place that is most like one in a file, of those that are alike enough to be it."""
    name = os.path.basename(read.path)
    rows = connection.execute(
        f"""SELECT tune.id, content, sort, number, position, {HAS_REMARKS}, path, hash, away
        FROM tune JOIN file ON file.id = tune.file
        WHERE tune.file <> ? AND (content = ? OR (sort = ? AND sort <> ''))""",
        (file, facts.content, sort_key(facts.title)),
    ).fetchall()
    title = sort_key(facts.title)
    found = []
    for tune, content, known_title, number, position, has_remarks, path, digest, away in rows:
        same_name = os.path.basename(path) == name and number == facts.number and known_title == title
        if content != facts.content and not same_name:
            continue
        if position is not None and not away and os.path.lexists(path):
            continue
        unlike = (content != facts.content, digest != read.hash, known_title != title, number != facts.number)
        found.append(((*unlike, not has_remarks), tune))
    return min(found)[1] if found else None


def _new_tune(connection: sqlite3.Connection, file: int, facts: Facts) -> int:
    row = (file, facts.content, facts.number, facts.title, sort_key(facts.title))
    added = connection.execute("INSERT INTO tune (file, content, number, title, sort) VALUES (?, ?, ?, ?, ?)", row)
    assert added.lastrowid is not None
    return added.lastrowid


def _write_tune(connection: sqlite3.Connection, tune: int, file: int, position: int, facts: Facts, path: bytes) -> None:
    connection.execute(
        """UPDATE tune SET file = ?, position = ?, content = ?, number = ?, title = ?, sort = ?, other_titles = ?,
        dance = ?, dance_words = ?, key = ?, tonic = ?, mode = ?, meter = ?, parts = ?, bars = ? WHERE id = ?""",
        (file, position, facts.content, facts.number, facts.title, sort_key(facts.title),
         json.dumps(facts.other_titles, ensure_ascii=False), facts.dance, f" {indexed(facts.dance)} ", facts.key,
         facts.tonic, facts.mode, facts.meter, facts.parts, facts.bars, tune),
    )  # fmt: skip
    for table in ("bowing", "opening"):
        connection.execute(f"DELETE FROM {table} WHERE tune = ?", (tune,))
    connection.executemany(
        "INSERT INTO bowing VALUES (?, ?, ?, ?, ?)",
        [(tune, place, one.name, one.accents, f" {indexed(one.name)} ") for place, one in enumerate(facts.bowings)],
    )
    connection.executemany(
        "INSERT INTO opening VALUES (?, ?, ?, ?, ?)",
        [(tune, place, one.contour, one.names, one.moves) for place, one in enumerate(facts.openings)],
    )
    connection.execute("DELETE FROM words WHERE rowid = ?", (tune,))
    connection.execute(
        "INSERT INTO words (rowid, title, other_titles, tags, credits, file) VALUES (?, ?, ?, '', ?, ?)",
        (tune, indexed(facts.title), _joined(facts.other_titles), _joined(facts.credits), _name_words(path)),
    )
    index_tags(connection, tune)


def _joined(texts: Sequence[str]) -> str:
    return " ".join(map(indexed, texts))


def _name_words(path: bytes) -> str:
    return indexed(to_path(path).stem)
