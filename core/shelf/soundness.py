"""Whether a file that SQLite finds whole is a catalogue of ours: its tables, and what stands in their cells.

SQLite itself (``PRAGMA quick_check``) looks at pages. A bit that tips inside a cell, or another program that writes
into the file, is noticed here, before anything relies on it.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from functools import cache
from typing import TypeAlias

Layout: TypeAlias = frozenset[tuple[str, str, str]]
"""Kind, name and SQL of all that was made in a catalogue."""

TEXT, WHOLE, BYTES = "typeof({0}) = 'text'", "typeof({0}) = 'integer'", "typeof({0}) = 'blob'"
PATH = f"{BYTES} AND length({{0}}) > 0 AND instr({{0}}, x'00') = 0"
TEXTS = (
    f"{TEXT} AND ({{0}} = '[]' OR CASE WHEN json_valid({{0}}) THEN json_type({{0}}) = 'array' "
    "AND NOT EXISTS (SELECT 1 FROM json_each({0}) WHERE type <> 'text') ELSE 0 END)"
)
ABOVE_NOTHING = f"{WHOLE} AND {{0}} > 0"


def or_null(condition: str) -> str:
    """The condition, or nothing there."""
    return f"({{0}} IS NULL OR {condition})"


# What the cells of each column hold; a table's rows are told by its first column.
CELLS: dict[str, dict[str, str]] = {
    "place": {"path": PATH},
    "file": {
        "path": PATH, "size": or_null(WHOLE), "mtime_ns": or_null(WHOLE), "hash": or_null(BYTES),
        "facts_version": WHOLE, "problem": TEXT, "away": WHOLE,
    },
    "tune": {
        "file": WHOLE, "position": or_null(f"{WHOLE} AND {{0}} >= 0"), "content": BYTES, "number": WHOLE,
        "title": TEXT, "sort": TEXT, "other_titles": TEXTS, "dance": TEXT, "dance_words": TEXT, "key": TEXT,
        "tonic": TEXT, "mode": TEXT, "meter": TEXT, "parts": WHOLE, "bars": WHOLE, "status": TEXT,
        "opened": or_null(TEXT),
    },
    "tag": {"tune": WHOLE, "tag": TEXT},
    "bowing": {"tune": WHOLE, "place": WHOLE, "name": TEXT, "accents": TEXT, "words": TEXT},
    "opening": {"tune": WHOLE, "place": WHOLE, "contour": TEXT, "names": TEXT, "moves": TEXT},
    "figures": {
        "content": BYTES, "accents": TEXT, "version": WHOLE, "missed": WHOLE, "broken": WHOLE, "cost": WHOLE,
        "slurs": WHOLE, "playings": ABOVE_NOTHING,
    },
}  # fmt: skip


def layout_of(connection: sqlite3.Connection) -> Layout:
    """What was made in a catalogue, what SQLite makes for itself left out."""
    rows = connection.execute(
        "SELECT type, name, coalesce(sql, '') FROM sqlite_master WHERE name NOT LIKE 'sqlite!_%' ESCAPE '!'"
    )
    return frozenset(rows.fetchall())


@cache
def layout_after(steps: tuple[tuple[str, ...], ...]) -> Layout:
    """What stands in a catalogue that has taken these steps."""
    connection = sqlite3.connect(":memory:")
    try:
        for step in steps:
            for statement in step:
                connection.execute(statement)
        return layout_of(connection)
    finally:
        connection.close()


def unsound(connection: sqlite3.Connection) -> Iterator[str]:
    """Names of tables that have a cell which holds something else than it should."""
    for table, columns in CELLS.items():
        conditions = " AND ".join(f"({condition.format(name)})" for name, condition in columns.items())
        if connection.execute(f"SELECT 1 FROM {table} WHERE NOT ({conditions}) LIMIT 1").fetchone() is not None:
            yield table
