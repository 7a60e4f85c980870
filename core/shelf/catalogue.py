"""The file of the catalogue: opening it, and reading and writing it beside other processes.

Any number of processes may have the same catalogue open. Writers take turns: a write is one short transaction that
waits for its turn and is tried again from its beginning when it does not get it, so that nothing is written over what
another has just written. Readers see the state before or after a write, never half of it. A process that is killed
leaves nothing half-written (SQLite's write-ahead log).
"""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Callable
from pathlib import Path
from types import TracebackType
from typing import TypeVar

from core.file_faults import why
from core.shelf.aside import path_aside
from core.shelf.errors import DamagedShelfError, NewerShelfError, ShelfBusyError, ShelfError
from core.shelf.folding import folded, storable
from core.shelf.layout import APPLICATION_ID, STEPS
from core.shelf.soundness import layout_after, layout_of, unsound
from core.translation import tr

T = TypeVar("T")

PATIENCE_S = 30.0  # for another writer; their transactions take some tenths of a second
ONE_WAIT_MS = 2000
PAUSE_S = 0.02
BUSY = {sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED}
BROKEN = {sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB}
OUTSIDE = {  # what the disk or the system refuses; all else is a mistake of ours and surfaces
    sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_FULL, sqlite3.SQLITE_IOERR, sqlite3.SQLITE_NOMEM, sqlite3.SQLITE_PERM,
    sqlite3.SQLITE_READONLY,
}  # fmt: skip


class Catalogue:
    """One connection to the catalogue; it belongs to the thread that opened it.

    Args:
        path: The file; made with its folder where it is not there.
    Raises:
        UnusableShelfError: it is damaged, or of a later version.
        ShelfError: it cannot be opened or made.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            raise ShelfError(
                tr(
                    "The folder of the shelf {path} cannot be made: {reason}.",
                    path=path,
                    reason=why(fault, writing=True),
                )
            ) from fault
        self._connection = self._tried(lambda: sqlite3.connect(path, ONE_WAIT_MS / 1000, isolation_level=None))
        try:
            self._tried(self._set_up)
        except BaseException:
            self._connection.close()
            raise

    def __enter__(self) -> Catalogue:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, fault: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def close(self) -> None:
        """End the connection; further calls are mistakes."""
        self._connection.close()

    def read(self, work: Callable[[sqlite3.Connection], T]) -> T:
        """Do all reading of ``work`` on one state of the catalogue.

        Raises:
            ShelfError: as the class says.
        """
        return self._tried(lambda: self._in_transaction("BEGIN", work))

    def write(self, work: Callable[[sqlite3.Connection], T]) -> T:
        """Do all of ``work`` or nothing, and nobody else's writing between.

        Args:
            work: Keep it short; it may be called more than once, each time from the state that is then there.
        Raises:
            ShelfBusyError: others kept writing for ``PATIENCE_S``.
            ShelfError: as the class says.
        """
        return self._tried(lambda: self._in_transaction("BEGIN IMMEDIATE", work))

    def flush_rarely(self, rarely: bool) -> None:
        """Whether the end of a write waits until the disk has it.

        A scan need not: what it writes can be read again. What the teacher says must.
        """
        self._connection.execute(f"PRAGMA synchronous = {'NORMAL' if rarely else 'FULL'}")

    # ------------------------------------------------------------------------------------------------- opening

    def _set_up(self) -> None:
        connection = self._connection
        connection.create_function("folded", 1, folded, deterministic=True)
        try:
            connection.execute("SELECT count(*) FROM sqlite_master")  # reads the tables' layout for the first time
            is_ours = connection.execute("PRAGMA application_id").fetchone()[0] == APPLICATION_ID
        except sqlite3.OperationalError as fault:
            if _kind(fault) != sqlite3.SQLITE_ERROR:
                raise
            raise DamagedShelfError(self.path, storable(str(fault))) from fault  # a format that is none
        if not is_ours:
            self._claim()
        connection.execute("PRAGMA journal_mode = WAL")  # where the disk cannot do that, it stays as it was: as safe
        connection.execute("PRAGMA synchronous = FULL")
        connection.execute("PRAGMA foreign_keys = ON")
        if self._version() < len(STEPS):
            self._in_transaction("BEGIN IMMEDIATE", self._take_steps)
        if self._version() > len(STEPS):
            raise NewerShelfError(self.path, self._version(), len(STEPS))
        found = connection.execute("PRAGMA quick_check(1)").fetchone()[0]
        if found != "ok":
            raise DamagedShelfError(self.path, storable(found))
        self._check_layout(connection)
        for table in unsound(connection):
            raise DamagedShelfError(self.path, tr("its {table} hold what they cannot", table=table))
        for query in ("SELECT tag FROM tag", "SELECT sql FROM sqlite_master"):
            connection.execute(query).fetchall()  # what is no text is told here

    def _claim(self) -> None:
        """Take an empty file as ours; one with other tables in it is not touched."""

        def claim(connection: sqlite3.Connection) -> None:
            if connection.execute("PRAGMA application_id").fetchone()[0] == APPLICATION_ID:
                return  # another process was quicker
            if connection.execute("SELECT count(*) FROM sqlite_master").fetchone()[0]:
                raise DamagedShelfError(self.path, tr("it is another program's file"))
            if path_aside(self.path).exists():
                raise DamagedShelfError(
                    self.path, tr("the file is gone or empty, but what you noted was written aside")
                )
            connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")

        self._in_transaction("BEGIN IMMEDIATE", claim)

    def _version(self) -> int:
        return int(self._connection.execute("PRAGMA user_version").fetchone()[0])

    def _check_layout(self, connection: sqlite3.Connection) -> None:
        """Refuse tables that are not as the steps taken so far have made them."""
        known, found = layout_after(STEPS[: max(self._version(), 0)]), layout_of(connection)
        if missing := known - found:
            raise DamagedShelfError(self.path, tr("it holds no {table}", table=min(name for _, name, _ in missing)))
        if any(kind in ("trigger", "view") for kind, _, _ in found - known) or self._version() < 0:
            raise DamagedShelfError(self.path, tr("it is another program's file"))

    def _take_steps(self, connection: sqlite3.Connection) -> None:
        self._check_layout(connection)
        if not self._version() and layout_of(connection):
            raise DamagedShelfError(self.path, tr("it is another program's file"))
        for step in STEPS[self._version() :]:
            for statement in step:
                connection.execute(statement)
            connection.execute(f"PRAGMA user_version = {self._version() + 1}")

    # ------------------------------------------------------------------------------------------------- trying

    def _in_transaction(self, begin: str, work: Callable[[sqlite3.Connection], T]) -> T:
        connection = self._connection
        connection.execute(begin)
        try:
            result = work(connection)
            connection.execute("COMMIT")
        except BaseException:
            if connection.in_transaction:
                connection.execute("ROLLBACK")
            raise
        return result

    def _tried(self, work: Callable[[], T]) -> T:
        give_up = time.monotonic() + PATIENCE_S
        while True:
            try:
                return work()
            except UnicodeDecodeError as fault:  # SQLite quotes in its message what is no text
                raise DamagedShelfError(self.path, storable(str(fault))) from fault
            except sqlite3.DatabaseError as fault:
                code = _kind(fault)
                is_no_text = isinstance(fault, sqlite3.OperationalError) and not hasattr(fault, "sqlite_errorcode")
                if code in BROKEN or is_no_text or _is_of_the_index(fault):
                    raise DamagedShelfError(self.path, storable(str(fault))) from fault
                if code in OUTSIDE:
                    raise ShelfError(
                        tr("The shelf {path} cannot be used: {fault}.", path=self.path, fault=fault)
                    ) from fault
                if code not in BUSY:
                    raise
                if time.monotonic() > give_up:
                    raise ShelfBusyError(self.path) from fault
                time.sleep(PAUSE_S)


def _kind(fault: sqlite3.Error) -> int:
    """The kind of a fault without its detail."""
    return int(getattr(fault, "sqlite_errorcode", sqlite3.SQLITE_ERROR)) & 0xFF


def _is_of_the_index(fault: sqlite3.Error) -> bool:
    """Whether a row stands where the full-text index writes its own; a breach in our tables has another code."""
    return getattr(fault, "sqlite_errorcode", None) == sqlite3.SQLITE_CONSTRAINT
