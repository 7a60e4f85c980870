"""What the teacher said, written aside in plain text beside the catalogue, for the day when that cannot be read.

``SHELF.remarks`` has one JSON object a line, one line for every change of what was said and of the tune it was said of;
the last line of a tune, and the last with the places of the shelf, count. Each is written within the transaction that
makes the change, so that processes take turns here too. A line that is half there (a process died, a disk was full) is
passed over.

    {"places": ["/home/ada/tunes"]}
    {"tune": 12, "content": "9f...", "title": "...", "number": 1, "file": "...", "status": "ready", "tags": ["..."],
     "opened": "2031-05-04T17:30:00+00:00"}
"""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterable, Iterator
from pathlib import Path

from core.shelf.folding import storable
from core.values import dataclass

MOST_NUMBER = 10**9  # that a tune has in its book
LARGEST_BYTES = 4 * 1024 * 1024  # then only what still counts is written anew

HAS_REMARKS = "(status <> '' OR opened IS NOT NULL OR EXISTS (SELECT 1 FROM tag WHERE tag.tune = tune.id))"
REMARKS = """
    SELECT tune.id, content, title, number, file.path, status, opened,
        (SELECT json_group_array(tag) FROM (SELECT tag FROM tag WHERE tag.tune = tune.id ORDER BY tag))
    FROM tune JOIN file ON file.id = tune.file"""


@dataclass(frozen=True)
class Remarks:
    """What the teacher said of one tune, and how that tune is known again.

    Attributes:
        tune: Its id in the catalogue that wrote the line.
        content, title, number: As ``core.shelf.facts.Facts`` has them.
        file: Path of the file that it stood in, as the bytes that the system names it by.
        status, tags: As set; "" and none where there are none.
        opened: ISO 8601 in UTC, or None.
    """

    tune: int
    content: bytes
    title: str
    number: int
    file: bytes
    status: str
    tags: tuple[str, ...]
    opened: str | None

    @property
    def line(self) -> bytes:
        """The line as it is written; it begins and ends a line, whatever stands before."""
        values = {
            "tune": self.tune, "content": self.content.hex(), "title": self.title, "number": self.number,
            "file": os.fsdecode(self.file), "status": self.status, "tags": list(self.tags), "opened": self.opened,
        }  # fmt: skip
        return b"\n" + json.dumps(values).encode() + b"\n"  # ASCII, so names that are no text survive as well


def path_aside(catalogue: Path) -> Path:
    """Where the remarks of a catalogue are written."""
    return catalogue.with_name(catalogue.name + ".remarks")


def write_aside(catalogue: Path, connection: sqlite3.Connection, tunes: Iterable[int]) -> None:
    """Write what is now said of some tunes; call it within the transaction that changed them.

    A disk that refuses does not stop the change itself.
    """
    question = f"{REMARKS} WHERE tune.id = ?"
    lines = [_remarks(row).line for tune in tunes for row in connection.execute(question, (tune,))]
    _append(path_aside(catalogue), connection, b"".join(lines))


def write_places_aside(catalogue: Path, connection: sqlite3.Connection) -> None:
    """Write which places the shelf now has; otherwise as ``write_aside``."""
    _append(path_aside(catalogue), connection, _places_line(connection))


def remarks_in(connection: sqlite3.Connection) -> list[Remarks]:
    """All that the catalogue itself holds."""
    return [_remarks(row) for row in connection.execute(f"{REMARKS} WHERE {HAS_REMARKS}")]


def salvaged(connection: sqlite3.Connection) -> tuple[list[bytes], list[Remarks]]:
    """Places and remarks that even a damaged catalogue still gives; rows that are not whole are passed over."""
    places: list[bytes] = []
    remarks: list[Remarks] = []
    try:
        for (place,) in connection.execute("SELECT path FROM place"):
            if isinstance(place, bytes) and _path(os.fsdecode(place)):
                places.append(place)
        for row in connection.execute(f"{REMARKS} WHERE {HAS_REMARKS}"):
            try:
                remarks.append(_parsed(json.loads(_remarks(row).line)))
            except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
                continue
    except (sqlite3.Error, UnicodeDecodeError):  # SQLite quotes in its message what is no text
        pass  # what was read so far counts
    return places, remarks


def read_aside(path: Path) -> list[Remarks]:
    """What was last said of each tune; nothing where there is no file."""
    found = {}
    for values in _objects(path):
        try:
            remarks = _parsed(values)
        except (ValueError, KeyError, TypeError):
            continue
        found[remarks.tune] = remarks
    return [remarks for remarks in found.values() if remarks.status or remarks.tags or remarks.opened]


def read_places_aside(path: Path) -> list[bytes]:
    """The places of the shelf, as the bytes that the system names them by; none where there is no file."""
    found: list[bytes] = []
    for values in _objects(path):
        places = values.get("places")
        if isinstance(places, list):
            found = list(filter(None, (_path(place) for place in places if isinstance(place, str))))
    return found


def _objects(path: Path) -> Iterator[dict[str, object]]:
    try:
        lines = path.read_bytes().split(b"\n")
    except OSError:
        return
    for line in filter(None, lines):
        try:
            values = json.loads(line)
        except (ValueError, RecursionError):
            continue
        if isinstance(values, dict):
            yield values


def _append(path: Path, connection: sqlite3.Connection, lines: bytes) -> None:
    try:
        with path.open("ab") as file:
            file.write(lines)
            too_large = file.tell() > LARGEST_BYTES
        if too_large:
            _write_anew(path, connection)
    except OSError:
        pass


def _places_line(connection: sqlite3.Connection) -> bytes:
    places = [os.fsdecode(place) for (place,) in connection.execute("SELECT path FROM place ORDER BY id")]
    return b"\n" + json.dumps({"places": places}).encode() + b"\n"


def _write_anew(path: Path, connection: sqlite3.Connection) -> None:
    part = path.with_name(path.name + ".part")
    with part.open("wb") as file:
        file.write(_places_line(connection) + b"".join(remarks.line for remarks in remarks_in(connection)))
        file.flush()
        os.fsync(file.fileno())
    part.replace(path)


def _remarks(row: tuple[int, bytes, str, int, bytes, str, str | None, str]) -> Remarks:
    tune, content, title, number, file, status, opened, tags = row
    return Remarks(tune, content, title, number, file, status, tuple(json.loads(tags)), opened)


def _parsed(values: dict[str, object]) -> Remarks:
    def text(name: str) -> str:
        value = values.get(name) or ""
        if not isinstance(value, str):
            raise TypeError(name)
        return value

    tune, number, tags = values["tune"], values.get("number", 1), values.get("tags", [])
    if type(tune) is not int or type(number) is not int or not isinstance(tags, list):
        raise TypeError("tune, number, tags")
    file = _path(text("file"))
    if file is None or abs(number) > MOST_NUMBER:
        raise ValueError("file, number")
    return Remarks(
        tune, bytes.fromhex(text("content")), storable(text("title")), number, file, storable(text("status")),
        tuple(storable(tag) for tag in tags if isinstance(tag, str)), storable(text("opened")) or None,
    )  # fmt: skip


def _path(text: str) -> bytes | None:
    """A path as bytes; None where the text is none."""
    try:
        path = os.fsencode(text)
    except UnicodeEncodeError:
        return None
    return path if os.path.isabs(path) and b"\0" not in path else None
