"""The catalogue of the shelf and the remarks beside it: cells, tables, pages and lines spoilt."""

from __future__ import annotations

import io
import json
import os
import random
import sqlite3
import zipfile
from contextlib import suppress
from datetime import UTC, datetime
from functools import cache
from pathlib import Path

from app.shelf_command import _entry_json, _line
from app.shelf_model import BOWINGS, STATUS, TAGS, _tip, cells
from core.shelf.catalogue import Catalogue
from core.shelf.errors import ShelfError
from core.shelf.figures import Figures, figures_of, put_figures
from core.shelf.query import Query
from core.shelf.rank import Ranked
from core.shelf.rebuild import rebuild
from core.shelf.remarks import change_tags, note_opened, set_status
from core.shelf.scan import add_places, drop_place, places_of, scan
from core.shelf.search import choices, count, entry, find
from tests.fuzz import corpus
from tests.fuzz.mutation import spoil_bytes, spoil_json
from tests.fuzz.on_lessons import pack
from tests.fuzz.outcomes import LAW_EACH, READ, REFUSED, Reader, must_be_a_sentence, scratch_folder, without_name


@cache
def _good_shelf() -> tuple[bytes, bytes]:
    """A small catalogue and the remarks beside it."""
    with scratch_folder() as folder:
        book, path = folder / "book.abc", folder / "shelf.db"
        book.write_text("\n".join(corpus.abc_tunes()[:6]))
        os.utime(book, (10**9, 10**9))
        with Catalogue(path) as catalogue:
            add_places(catalogue, [folder])
            scan(catalogue)
            entries = find(catalogue).entries
            set_status(catalogue, entries[0].id, "ready")
            change_tags(catalogue, entries[1].id, ["class", "summer"])
            note_opened(catalogue, book, 2, datetime(2031, 5, 4, tzinfo=UTC))
            put_figures(catalogue, entries[0].content, "on-beat", 1, Figures(0, 1, 120, 5, 32))
        with sqlite3.connect(path) as connection:
            connection.execute("PRAGMA journal_mode = DELETE")
        connection.close()
        remarks = folder / "shelf.db.remarks"
        return without_name(path.read_bytes(), folder), without_name(remarks.read_bytes(), folder)


TABLES = {
    "place": ("path",), "file": ("path", "size", "mtime_ns", "hash", "facts_version", "problem", "away"),
    "tune": ("file", "position", "content", "number", "title", "sort", "other_titles", "dance", "key", "tonic", "mode",
             "meter", "parts", "bars", "status", "opened"),
    "tag": ("tune", "tag"), "bowing": ("tune", "place", "name", "accents", "words"),
    "opening": ("tune", "place", "contour", "names", "moves"), "words": ("title", "tags"),
    "figures": ("content", "accents", "version", "missed", "broken", "cost", "slurs", "playings"),
}  # fmt: skip
CELLS = (
    "NULL", "0", "-1", "9223372036854775807", "1.5", "9e999", "''", "'x'", "x''", "x'ff00fe'", "'[1]'", "'{'", "'[[['",
    "'null'",
    "CAST(x'ff41' AS TEXT)", "CAST(x'610062' AS TEXT)", "zeroblob(5000)", "'2031-13-45'", "randomblob(16)", "'../..'",
    "x'2f6465762f6e756c6c'",
)  # fmt: skip
LAYOUT_CHANGES = (
    "DROP TABLE {table}", "ALTER TABLE {table} RENAME TO was", "ALTER TABLE {table} RENAME COLUMN {column} TO was",
    "ALTER TABLE {table} ADD COLUMN more", "DROP TABLE {table}; CREATE TABLE {table} ({column})",
    "DROP TABLE {table}; CREATE VIEW {table} AS SELECT 1 AS {column}",
    "DROP INDEX tune_by_place; CREATE INDEX tune_by_place ON tag (tag)",
    "CREATE TRIGGER t BEFORE UPDATE ON {table} BEGIN SELECT RAISE(ABORT, 'no'); END",
    "CREATE TRIGGER t AFTER INSERT ON tag BEGIN INSERT INTO tag VALUES (new.tune, new.tag || 'x'); END",
    "PRAGMA user_version = {number}", "PRAGMA application_id = {number}", "ANALYZE", "PRAGMA encoding = 'UTF-16'",
    "CREATE TABLE foreign_one (id)",
    "DELETE FROM {table}", "UPDATE sqlite_sequence SET seq = 9223372036854775807", "DELETE FROM words_data", "VACUUM",
    "PRAGMA journal_mode = WAL",
)  # fmt: skip


def shelf(chance: random.Random) -> bytes:
    """Catalogue and remarks, one of them or both spoilt, in a zip."""
    catalogue, remarks = _good_shelf()
    way = chance.randrange(10)
    if way < 4:
        catalogue = _with_sql(catalogue, [_cell_change(chance) for _ in range(chance.choice((1, 2, 5)))])
    elif way < 6:
        names = {"number": chance.choice(("0", "2", "-1", "2147483647"))}
        names["table"] = chance.choice(tuple(TABLES))
        names["column"] = chance.choice(TABLES[names["table"]])
        catalogue = _with_sql(catalogue, [chance.choice(LAYOUT_CHANGES).format(**names)])
    elif way < 8:
        catalogue = spoil_bytes(catalogue, chance)
    if way >= 7:
        lines = remarks.decode().split("\n")
        lines = [spoil_json(line, chance) if line and chance.randrange(2) else line for line in lines]
        remarks = "\n".join(lines).encode("utf-8", "surrogatepass")
        remarks = spoil_bytes(remarks, chance) if chance.randrange(4) == 0 else remarks
    if way == 9:
        catalogue = chance.choice(
            (b"", b"no catalogue", catalogue[: len(catalogue) // 2], spoil_bytes(catalogue, chance))
        )
    return pack([("shelf.db", catalogue), ("shelf.db.remarks", remarks)], zipfile.ZIP_STORED)


def _cell_change(chance: random.Random) -> str:
    table = chance.choice(tuple(TABLES))
    column = chance.choice(TABLES[table])
    where = (
        chance.choice(("", " WHERE rowid = 1", " WHERE rowid % 2"))
        if table not in ("tag", "bowing", "opening", "figures")
        else ""
    )
    return f"UPDATE OR IGNORE {table} SET {column} = {chance.choice(CELLS)}{where}"


def _with_sql(data: bytes, statements: list[str]) -> bytes:
    """A catalogue after some statements, as far as SQLite takes them."""
    with scratch_folder() as folder:
        path = folder / "shelf.db"
        path.write_bytes(data)
        connection = sqlite3.connect(path, isolation_level=None)
        for statement in statements:
            with suppress(sqlite3.Error):
                connection.executescript(statement)
        with suppress(sqlite3.Error):
            connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        connection.close()
        return path.read_bytes()


def feed_shelf(data: bytes, number: int) -> str:
    """Open and use a shelf; where that is refused, build it anew and use it."""
    with scratch_folder() as folder:
        path, music = folder / "shelf.db", folder / "music"
        with zipfile.ZipFile(io.BytesIO(data)) as kept:
            path.write_bytes(kept.read("shelf.db"))
            (folder / "shelf.db.remarks").write_bytes(kept.read("shelf.db.remarks"))
        music.mkdir()
        (music / "one.abc").write_text(corpus.abc_tunes()[number % 6])
        try:
            with Catalogue(path) as catalogue:
                _use_shelf(catalogue, music, number)
        except ShelfError as refusal:
            must_be_a_sentence(str(refusal))
            rebuild(path)
            with Catalogue(path) as catalogue:
                _use_shelf(catalogue, music, number)
            return REFUSED
        return READ


def _use_shelf(catalogue: object, music: Path, number: int) -> None:

    count(catalogue)
    choices(catalogue)
    places_of(catalogue)
    queries = (
        Query(),
        Query(words="the", tags=("class",)),
        Query(notes="uud", order="opened"),
        Query(words="a", status="ready"),
    )
    for query in queries if number % LAW_EACH == 0 else (Query(), queries[number % 4]):
        for found in find(catalogue, query).entries[:10]:
            _line(found).encode("utf-8", "replace")
            json.dumps(_entry_json(found))
            assert all(isinstance(cell, str) for cell in cells(found))
            for column in (0, STATUS, TAGS, BOWINGS):  # the others have the tip of the first
                _tip(found, column)
            figures = figures_of(catalogue, found.content, "on-beat", 1)
            if figures is not None:
                assert Ranked(found, figures).key
    some = find(catalogue).entries[: 2 if number % LAW_EACH == 0 else 1]
    for found in some:
        set_status(catalogue, found.id, "taught")
        change_tags(catalogue, found.id, ["new"], ["class"])
        note_opened(catalogue, found.file, found.place - 1, datetime(2031, 5, 5, tzinfo=UTC))
        assert entry(catalogue, found.id)
    if number % LAW_EACH == 0:
        add_places(catalogue, [music])
        scan(catalogue, [music])
        assert find(catalogue, Query()).total >= 1
        drop_place(catalogue, music)


FED = {"shelf": Reader(shelf, feed_shelf, ".zip")}
