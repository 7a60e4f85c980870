"""Going through the folders of the shelf: reading what is new or changed, and noticing what moved or went.

A file is read only where its size or time differs from what the catalogue has, and taken apart into tunes only where
its bytes do. Each file is written in a transaction of its own, so a scan may be stopped or killed at any moment: the
next one goes on where it stopped. Two scans at once do each other no harm. A file that cannot be read costs one
``FileProblem``.
"""

from __future__ import annotations

import os
import sqlite3
import time
from collections.abc import Callable, Sequence
from dataclasses import field, replace
from pathlib import Path

from core.errors import UnreadableFileError
from core.file_faults import why
from core.reading import read_file
from core.shelf.aside import write_places_aside
from core.shelf.catalogue import Catalogue
from core.shelf.facts import FACTS_VERSION, facts_of, file_hash
from core.shelf.filing import FileFacts, file_tunes, move_file, put_away
from core.shelf.folding import storable
from core.shelf.paths import is_under, to_bytes, to_path, to_text
from core.shelf.walk import Seen, Walk
from core.translation import tr
from core.values import dataclass

LARGEST_FILE_BYTES = 64 * 1024 * 1024
SETTLED_NS = 2_000_000_000  # a file changed later than this before it was read may change again unnoticed
AT_ONCE = 50  # files put away in one transaction


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a scan is.

    Attributes:
        done, total: Files looked at, of those found; ``total`` 0 while folders are being looked through.
        name: The file at hand.
    """

    done: int
    total: int
    name: str = ""


@dataclass(frozen=True, slots=True)
class FileProblem:
    """A file or folder of which nothing can be read; ``text`` is one sentence without its name."""

    path: Path
    text: str

    def __str__(self) -> str:
        return f"{to_text(self.path)}: {self.text}"


@dataclass
class ScanReport:
    """What a scan did, in files.

    Attributes:
        files: Found in the places scanned.
        new, changed, moved, back, gone: Of these, or of those found earlier.
        problems: In the order met.
        stopped: It was stopped before its end.
    """

    files: int = 0
    new: int = 0
    changed: int = 0
    moved: int = 0
    back: int = 0
    gone: int = 0
    problems: list[FileProblem] = field(default_factory=list)
    stopped: bool = False


@dataclass(frozen=True, slots=True)
class _Known:
    """A row of the table of files."""

    id: int
    path: bytes
    size: int | None
    mtime_ns: int | None
    hash: bytes | None
    facts_version: int
    problem: str
    away: int


def add_places(catalogue: Catalogue, places: Sequence[Path]) -> None:
    """Put folders or single files on the shelf for good; ``scan`` reads them."""
    rows = [(to_bytes(place),) for place in places]

    def work(connection: sqlite3.Connection) -> None:
        connection.executemany("INSERT INTO place (path) VALUES (?) ON CONFLICT DO NOTHING", rows)
        write_places_aside(catalogue.path, connection)

    if rows:
        catalogue.write(work)


def places_of(catalogue: Catalogue) -> tuple[Path, ...]:
    """The folders and files that were put on the shelf, by name."""
    rows = catalogue.read(lambda db: db.execute("SELECT path FROM place ORDER BY path").fetchall())
    return tuple(to_path(path) for (path,) in rows)


def drop_place(catalogue: Catalogue, place: Path) -> None:
    """Take a folder or file off the shelf; what the teacher said of its tunes waits, should it be put back."""
    dropped = to_bytes(place)

    def work(connection: sqlite3.Connection) -> None:
        connection.execute("DELETE FROM place WHERE path = ?", (dropped,))
        write_places_aside(catalogue.path, connection)
        others = [path for (path,) in connection.execute("SELECT path FROM place")]
        files = connection.execute("SELECT path FROM file WHERE NOT away").fetchall()
        gone = [
            path for (path,) in files
            if is_under(path, dropped) and not any(is_under(path, other) for other in others)
        ]  # fmt: skip
        put_away(catalogue.path, connection, gone)

    catalogue.write(work)


def scan(
    catalogue: Catalogue,
    places: Sequence[Path] | None = None,
    *,
    watch: Callable[[Progress], None] = lambda progress: None,
    stopped: Callable[[], bool] = lambda: False,
    now_ns: Callable[[], int] = time.time_ns,
) -> ScanReport:
    """Bring the catalogue up to what stands in the folders.

    Args:
        places: Only these of the shelf's places; all where None.
        watch: Told before each file.
        stopped: Asked before each file and folder; once it says True, the scan ends.
        now_ns: The clock, nanoseconds since 1970.
    Raises:
        ShelfError: the catalogue itself cannot be used.
    """
    catalogue.flush_rarely(True)
    try:
        return _Scan(catalogue, watch, stopped, now_ns).run(places_of(catalogue) if places is None else places)
    finally:
        catalogue.flush_rarely(False)


@dataclass
class _Scan:
    catalogue: Catalogue
    watch: Callable[[Progress], None]
    stopped: Callable[[], bool]
    now_ns: Callable[[], int]
    report: ScanReport = field(default_factory=ScanReport)

    def run(self, places: Sequence[Path]) -> ScanReport:
        roots = [to_bytes(place) for place in places]
        known = {row.path: row for row in self._known() if any(is_under(row.path, root) for root in roots)}
        walk = Walk()
        self.watch(Progress(0, 0))
        for root in roots:
            if not os.path.lexists(root):
                self._tell(root, tr("is not there."))
            walk.take(to_path(root), self.stopped)
        for path, reason in walk.closed:
            self._tell(path, tr("cannot be looked into: {why}.", why=reason))
        if self.stopped():
            self.report.stopped = True
            return self.report
        self.report.files = len(walk.files)
        missing = self._put_away(known, walk)
        for done, seen in enumerate(walk.files):
            if self.stopped():
                self.report.stopped = True
                break
            self.watch(Progress(done, len(walk.files), to_text(to_path(seen.path))))
            self._take(seen, known.get(seen.path))
        else:
            self.watch(Progress(len(walk.files), len(walk.files)))
        self.report.gone = self._count_gone(missing)
        return self.report

    def _known(self) -> list[_Known]:
        columns = ", ".join(_Known.__slots__)
        rows = self.catalogue.read(lambda db: db.execute(f"SELECT {columns} FROM file").fetchall())
        return [_Known(*row) for row in rows]

    def _put_away(self, known: dict[bytes, _Known], walk: Walk) -> list[int]:
        listed = {seen.path for seen in walk.files}
        missing = [
            row for row in known.values()
            if not row.away and row.path not in listed
            and not any(is_under(row.path, path) for path, _ in walk.closed)
        ]  # fmt: skip
        for first in range(0, len(missing), AT_ONCE):
            some = missing[first : first + AT_ONCE]

            def work(connection: sqlite3.Connection, some: list[_Known] = some) -> None:
                put_away(self.catalogue.path, connection, [row.path for row in some if _is_gone(row.path, walk)])

            self.catalogue.write(work)
        return [row.id for row in missing]

    def _count_gone(self, missing: list[int]) -> int:
        def work(connection: sqlite3.Connection) -> int:
            question = """SELECT 1 FROM file WHERE id = ? AND away
                AND EXISTS (SELECT 1 FROM tune WHERE file = file.id AND position IS NOT NULL)"""
            return sum(connection.execute(question, (file,)).fetchone() is not None for file in missing)

        return self.catalogue.read(work)

    def _take(self, seen: Seen, known: _Known | None) -> None:
        if known is not None and _is_as_known(seen, known):
            self._take_as_known(known)
            return
        data = self._bytes(seen)
        if data is None:
            return
        settled = seen.mtime_ns < self.now_ns() - SETTLED_NS
        read = FileFacts(seen.path, seen.size, seen.mtime_ns if settled else None, file_hash(data))
        same = known if known is not None and (known.hash, known.facts_version) == (read.hash, FACTS_VERSION) else None
        if same is not None and not same.problem:
            self._take_as_known(same, read)
            return
        if known is None and self.catalogue.write(lambda db: move_file(self.catalogue.path, db, read)):
            self.report.moved += 1
            return
        filed = _with_tunes(read, data)
        if filed.problem:
            self._tell(seen.path, filed.problem)
            if same is not None:
                self._take_as_known(same, read)
                return
        moved = self.catalogue.write(lambda db: file_tunes(self.catalogue.path, db, filed))
        self.report.changed += known is not None
        self.report.moved += known is None and moved
        self.report.new += known is None and not moved

    def _take_as_known(self, known: _Known, read: FileFacts | None = None) -> None:
        """Leave a file's tunes as they are; ``read`` where it was opened, to find out."""
        if read is not None and (known.size, known.mtime_ns) != (read.size, read.mtime_ns):
            times = (read.size, read.mtime_ns, known.id)
            self.catalogue.write(lambda db: db.execute("UPDATE file SET size = ?, mtime_ns = ? WHERE id = ?", times))
        if known.away:
            self.catalogue.write(lambda db: db.execute("UPDATE file SET away = 0 WHERE id = ?", (known.id,)))
            self.report.back += 1

    def _bytes(self, seen: Seen) -> bytes | None:
        """The file's bytes; None, told, where they cannot be had. Its tunes stay on the shelf as they were."""
        if seen.size > LARGEST_FILE_BYTES:
            self._tell(seen.path, tr("is larger than {size} MB and was left out.", size=LARGEST_FILE_BYTES // 2**20))
            return None
        try:
            return to_path(seen.path).read_bytes()
        except OSError as fault:
            self._tell(seen.path, tr("cannot be opened: {reason}.", reason=why(fault)))
            return None

    def _tell(self, path: bytes, text: str) -> None:
        self.report.problems.append(FileProblem(to_path(path), text))


def _with_tunes(read: FileFacts, data: bytes) -> FileFacts:
    try:
        return replace(read, tunes=tuple(map(facts_of, read_file(data).lessons)))
    except UnreadableFileError as fault:
        return replace(read, problem=str(fault))
    except Exception as fault:  # a mistake of a reader's must not end the scan of all other files
        return replace(
            read,
            problem=tr(
                "cannot be read ({name}: {storable}).", name=type(fault).__name__, storable=storable(str(fault))
            ),
        )


def _is_as_known(seen: Seen, known: _Known) -> bool:
    """Whether a file need not be opened; why one could not be read is found again, in the language of now."""
    return not known.problem and (seen.size, seen.mtime_ns, FACTS_VERSION) == (
        known.size,
        known.mtime_ns,
        known.facts_version,
    )


def _is_gone(path: bytes, walk: Walk) -> bool:
    """Whether there is no such file, or it is listed under another of its paths."""
    try:
        found = os.stat(path)
    except OSError:
        return True
    return (found.st_dev, found.st_ino) in walk.identities
