"""The tables of the catalogue, as steps from one layout to the next.

``PRAGMA user_version`` counts the steps that a catalogue has taken; a new one takes all of them. A step that was ever
released is never changed: what is new goes into a step of its own at the end of ``STEPS``.
"""

from __future__ import annotations

APPLICATION_ID = 0x426F7762  # "Bowb": tells our catalogues from other SQLite files

FIRST = (
    # What the shelf was told to hold: folders and single files, as the bytes that the system names them by.
    "CREATE TABLE place (id INTEGER PRIMARY KEY, path BLOB NOT NULL UNIQUE)",
    # Files seen. size, mtime_ns: at the last reading, NULL where it must be read again. away: it is not there now.
    """CREATE TABLE file (
        id INTEGER PRIMARY KEY, path BLOB NOT NULL UNIQUE, size INTEGER, mtime_ns INTEGER, hash BLOB,
        facts_version INTEGER NOT NULL DEFAULT 0, problem TEXT NOT NULL DEFAULT '', away INTEGER NOT NULL DEFAULT 0)""",
    "CREATE INDEX file_by_hash ON file (hash)",
    # Tunes seen; never deleted, so that what the teacher says always has a place to go. position: place in the file
    # from 0, NULL where the tune is in its file no more. status and opened (ISO 8601, UTC) are the teacher's.
    """CREATE TABLE tune (
        id INTEGER PRIMARY KEY AUTOINCREMENT, file INTEGER NOT NULL REFERENCES file (id), position INTEGER,
        content BLOB NOT NULL, number INTEGER NOT NULL, title TEXT NOT NULL, sort TEXT NOT NULL,
        other_titles TEXT NOT NULL DEFAULT '[]', dance TEXT NOT NULL DEFAULT '', dance_words TEXT NOT NULL DEFAULT '',
        key TEXT NOT NULL DEFAULT '', tonic TEXT NOT NULL DEFAULT '', mode TEXT NOT NULL DEFAULT '',
        meter TEXT NOT NULL DEFAULT '', parts INTEGER NOT NULL DEFAULT 0, bars INTEGER NOT NULL DEFAULT 0,
        status TEXT NOT NULL DEFAULT '', opened TEXT)""",
    "CREATE UNIQUE INDEX tune_by_place ON tune (file, position)",
    "CREATE INDEX tune_by_content ON tune (content)",
    "CREATE INDEX tune_by_sort ON tune (sort)",
    "CREATE TABLE tag (tune INTEGER NOT NULL REFERENCES tune (id), tag TEXT NOT NULL, PRIMARY KEY (tune, tag)) "
    "WITHOUT ROWID",
    """CREATE TABLE bowing (
        tune INTEGER NOT NULL REFERENCES tune (id), place INTEGER NOT NULL, name TEXT NOT NULL, accents TEXT NOT NULL,
        words TEXT NOT NULL, PRIMARY KEY (tune, place)) WITHOUT ROWID""",
    # First notes (core.shelf.letters); place 1 is the first full bar after a pick-up.
    """CREATE TABLE opening (
        tune INTEGER NOT NULL REFERENCES tune (id), place INTEGER NOT NULL, contour TEXT NOT NULL,
        names TEXT NOT NULL, moves TEXT NOT NULL, PRIMARY KEY (tune, place)) WITHOUT ROWID""",
    # Folded words (core.shelf.folding); rowid is the tune's id.
    "CREATE VIRTUAL TABLE words USING fts5 (title, other_titles, tags, credits, file, prefix = '1 2 3')",
    # What a planner found out about a tune (core.shelf.figures); version: of the planner.
    """CREATE TABLE figures (
        content BLOB NOT NULL, accents TEXT NOT NULL, version INTEGER NOT NULL, missed INTEGER NOT NULL,
        broken INTEGER NOT NULL, cost INTEGER NOT NULL, slurs INTEGER NOT NULL, playings INTEGER NOT NULL,
        PRIMARY KEY (content, accents)) WITHOUT ROWID""",
)

STEPS: tuple[tuple[str, ...], ...] = (FIRST,)
