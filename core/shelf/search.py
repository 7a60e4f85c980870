"""Finding tunes on the shelf."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator, Sequence
from pathlib import Path

from core.lesson import Lesson
from core.shelf.catalogue import Catalogue
from core.shelf.errors import QueryError
from core.shelf.facts import BowingFacts, content_hash
from core.shelf.folding import folded, sort_key, storable, words
from core.shelf.letters import parse_letters
from core.shelf.matching import Likeness, pair
from core.shelf.paths import to_path
from core.shelf.query import SAME_MODES, Query, parse_key, parse_meter
from core.shelf.remarks import STATUSES
from core.translation import tr
from core.values import dataclass

# bm25 weighs a word by the column that it stands in: title, other titles, tags, credits, file
BEST = "bm25(words, 8.0, 4.0, 4.0, 1.0, 1.0), sort, tune.id"
BY_TITLE = "sort, tune.id"
ORDERS = {
    "best": BY_TITLE,  # where words are asked for, BEST
    "title": BY_TITLE,
    "dance": f"dance = '', dance, {BY_TITLE}",
    "key": f"key = 'no key', key, {BY_TITLE}",
    "meter": f"meter, {BY_TITLE}",
    "status": f"status = '', status, {BY_TITLE}",
    "opened": f"opened IS NULL, opened DESC, {BY_TITLE}",
}
EVERYTHING = Query()
AT_ONCE = 500  # SQLite takes so many values in one question, and more
ENTRIES = """
    SELECT tune.id, path, position, number, title, other_titles, dance, key, meter, parts, bars, content,
        (SELECT names FROM opening WHERE opening.tune = tune.id AND place = 0),
        (SELECT json_group_array(json_array(name, accents))
            FROM (SELECT name, accents FROM bowing WHERE bowing.tune = tune.id ORDER BY place)),
        status, (SELECT json_group_array(tag) FROM (SELECT tag FROM tag WHERE tag.tune = tune.id ORDER BY tag)), opened
    FROM tune JOIN file ON file.id = tune.file"""
ON_SHELF = "tune.position IS NOT NULL AND NOT file.away"


@dataclass(frozen=True, slots=True)
class Entry:
    """A tune on the shelf.

    Attributes:
        id: Of the tune in this catalogue, for as long as that lasts.
        file: Its file.
        place: Its place in the file, from 1.
        number, title, other_titles, dance, key, meter, parts, bars: See ``core.shelf.facts.Facts``.
        content: See ``core.shelf.facts.content_hash``.
        notes: Names of the first notes.
        bowings: In the order of the lesson.
        status, tags, opened: What the teacher said; ``opened`` in ISO 8601, UTC, None where never.
    """

    id: int
    file: Path
    place: int
    number: int
    title: str
    other_titles: tuple[str, ...]
    dance: str
    key: str
    meter: str
    parts: int
    bars: int
    content: bytes
    notes: str
    bowings: tuple[BowingFacts, ...]
    status: str
    tags: tuple[str, ...]
    opened: str | None


@dataclass(frozen=True, slots=True)
class Found:
    """What a search found: the first tunes, and how many there are in all."""

    entries: tuple[Entry, ...]
    total: int


@dataclass(frozen=True, slots=True)
class Choices:
    """What can be filtered by: the values that the tunes on the shelf have, the commonest first."""

    dances: tuple[str, ...]
    keys: tuple[str, ...]
    meters: tuple[str, ...]


def find(catalogue: Catalogue, query: Query = EVERYTHING, limit: int | None = None) -> Found:
    """Find tunes.

    Args:
        limit: Tunes returned at most; all where None.
    Raises:
        QueryError: a part of the query cannot be understood.
        ShelfError: the catalogue cannot be used.
    """
    conditions, values = _conditions(query)
    if query.order not in ORDERS:
        raise QueryError(tr("“{order}” is no order: expected {known}", order=query.order, known=", ".join(ORDERS)))
    tables = "tune JOIN file ON file.id = tune.file"
    order = ORDERS[query.order]
    if words(query.words):
        tables = "words JOIN tune ON tune.id = words.rowid JOIN file ON file.id = tune.file"
        order = BEST if query.order == "best" else order
    where = " AND ".join((ON_SHELF, *conditions))

    def work(connection: sqlite3.Connection) -> Found:
        ids = connection.execute(f"SELECT tune.id FROM {tables} WHERE {where} ORDER BY {order}", values).fetchall()
        return Found(_entries(connection, [tune for (tune,) in ids[:limit]]), len(ids))

    return catalogue.read(work)


def entry(catalogue: Catalogue, tune: int) -> Entry | None:
    """One tune by its id; None where it is not on the shelf."""

    def work(connection: sqlite3.Connection) -> Entry | None:
        on_shelf = f"SELECT 1 FROM tune JOIN file ON file.id = tune.file WHERE tune.id = ? AND {ON_SHELF}"
        return _entries(connection, [tune])[0] if connection.execute(on_shelf, (tune,)).fetchone() else None

    return catalogue.read(work)


def lesson_of(entry: Entry, lessons: Sequence[Lesson]) -> int | None:
    """Which of the lessons that its file now holds a tune of the shelf is; None where it is none of them.

    The file may have changed since it was last scanned.
    """
    place = entry.place - 1
    if place < len(lessons) and content_hash(lessons[place].tune) == entry.content:
        return place
    looked_for = Likeness(entry.content, sort_key(entry.title), entry.number)
    there = [Likeness(content_hash(one.tune), sort_key(storable(one.tune.title)), one.tune.number) for one in lessons]
    return pair([looked_for], there).get(0)


def choices(catalogue: Catalogue) -> Choices:
    """What dances, keys and metres there are."""

    def work(connection: sqlite3.Connection) -> Choices:
        def column(name: str) -> tuple[str, ...]:
            rows = connection.execute(
                f"""SELECT {name} FROM tune JOIN file ON file.id = tune.file WHERE {ON_SHELF} AND {name} <> ''
                GROUP BY {name} ORDER BY count(*) DESC, {name}"""
            )
            return tuple(value for (value,) in rows)

        return Choices(column("dance"), column("key"), column("meter"))

    return catalogue.read(work)


def count(catalogue: Catalogue) -> int:
    """How many tunes are on the shelf."""
    question = f"SELECT count(*) FROM tune JOIN file ON file.id = tune.file WHERE {ON_SHELF}"
    return int(catalogue.read(lambda db: db.execute(question).fetchone()[0]))


def _conditions(query: Query) -> tuple[list[str], list[object]]:
    conditions: list[str] = []
    values: list[object] = []
    for condition, found in _parts(query):
        conditions.append(condition)
        values += found
    return conditions, values


def _parts(query: Query) -> Iterator[tuple[str, tuple[object, ...]]]:
    """Each part of a query as a condition with its values."""
    if looked_for := words(query.words):
        yield "words MATCH ?", (" ".join(f'"{word}"*' for word in looked_for),)
    for word in words(query.dance):
        yield "dance_words LIKE ?", (f"% {word}%",)
    if query.key.strip():
        tonic, mode = parse_key(query.key)
        yield "tonic = ?", (tonic,)
        if mode:
            modes = [mode, *(other for other, same in SAME_MODES.items() if same == mode)]
            yield f"mode IN ({', '.join('?' * len(modes))})", tuple(modes)
    if query.meter.strip():
        yield "meter = ?", (parse_meter(query.meter),)
    if query.notes.strip():
        pattern = parse_letters(query.notes, query.any_key)
        yield (
            f"EXISTS (SELECT 1 FROM opening WHERE opening.tune = tune.id AND {pattern.way.value} GLOB ?)",
            (f"{pattern.letters}*",),
        )
    if status := query.status.strip():
        if status not in (*STATUSES, "none"):
            raise QueryError(
                tr("“{status}” is no status: expected {known} or none", status=status, known=", ".join(STATUSES))
            )
        yield "status = ?", ("" if status == "none" else status,)
    for tag in filter(None, map(folded, query.tags)):
        yield "EXISTS (SELECT 1 FROM tag WHERE tag.tune = tune.id AND folded(tag) = ?)", (tag.strip(),)
    if query.bowing.strip():
        names = " AND ".join("words LIKE ?" for _ in words(query.bowing)) or "0"
        yield (
            f"EXISTS (SELECT 1 FROM bowing WHERE bowing.tune = tune.id AND (accents = ? OR ({names})))",
            (query.bowing.strip().lower(), *(f"% {word}%" for word in words(query.bowing))),
        )


def _entries(connection: sqlite3.Connection, tunes: Sequence[int]) -> tuple[Entry, ...]:
    """Tunes by their ids, in that order."""
    found: dict[int, Entry] = {}
    for first in range(0, len(tunes), AT_ONCE):
        some = tunes[first : first + AT_ONCE]
        rows = connection.execute(f"{ENTRIES} WHERE tune.id IN ({', '.join('?' * len(some))})", some)
        found.update((row[0], _entry(*row)) for row in rows)
    return tuple(found[tune] for tune in tunes)


def _entry(
    tune: int, path: bytes, position: int, number: int, title: str, others: str, dance: str, key: str, meter: str,
    parts: int, bars: int, content: bytes, notes: str | None, bowings: str, status: str, tags: str, opened: str | None,
) -> Entry:  # fmt: skip
    return Entry(
        tune, to_path(path), position + 1, number, title, _texts(others), dance, key, meter, parts, bars, content,
        notes or "", tuple(BowingFacts(*one) for one in json.loads(bowings)), status, _texts(tags), opened,
    )  # fmt: skip


def _texts(stored: str) -> tuple[str, ...]:
    return () if stored == "[]" else tuple(json.loads(stored))
