"""The folder of a pack: what stands in it, and every change of it.

Whatever happens, a file under its own name is whole: it is written beside, flushed, and then renamed. A lesson counts
as made when the manifest says so. What a user changed in the folder is never deleted or written over: it is put aside
under another name. The contents page and the zip are made last and go first, so that they stand in a whole pack only.
"""

from __future__ import annotations

import zipfile
from collections.abc import Callable, Iterable, Sequence
from hashlib import file_digest, sha256
from pathlib import Path

from PySide6.QtCore import QLockFile

from app.files import write_atomically, written_beside
from core.file_faults import why
from core.pack.manifest import FileRecord, LessonRecord, Manifest, read_manifest, write_manifest
from core.pack.names import free_name, safe_name, same_file
from core.translation import tr

MANIFEST = ".bowbench-pack.json"
LOCK = ".bowbench-pack.lock"
CONTENTS = "Contents.html"
PACKED_ALREADY = frozenset({".pdf", ".ogg", ".mp3", ".flac"})  # files that the zip need not make smaller


class PackFolderError(Exception):
    """The folder cannot be used; one sentence."""


class _StoppedError(Exception):
    """The zip is not wanted any more."""


class PackFolder:
    """A pack's folder, held by one program at a time; use it in a ``with`` statement.

    Args:
        path: The folder; made where it is missing. Else it is empty, or holds a pack.
    Raises:
        PackFolderError: it holds other files, another program packs into it, or it cannot be written.

    Attributes:
        path: The folder.
        manifest: What stands in it.
        notices: What there is to tell of it.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self.manifest = Manifest()
        self.notices: list[str] = []
        self._lock: QLockFile | None = None
        try:
            path.mkdir(parents=True, exist_ok=True)
            self._take()
        except (OSError, PackFolderError) as fault:
            self.close()
            if isinstance(fault, OSError):
                raise PackFolderError(
                    tr("{path} cannot be used: {reason}.", path=path, reason=why(fault, writing=True))
                ) from fault
            raise

    def _take(self) -> None:
        if not (self.path / MANIFEST).exists() and any(not entry.name.startswith(".") for entry in self.path.iterdir()):
            raise PackFolderError(
                tr("{path} holds other files: choose a new folder, or one that holds a pack.", path=self.path)
            )
        self._lock = QLockFile(str(self.path / LOCK))
        self._lock.setStaleLockTime(0)  # held as long as its process lives
        if not self._lock.tryLock(0):
            refused = self._lock.error() is not QLockFile.LockError.LockFailedError
            self._lock = None
            if refused:
                raise PackFolderError(tr("{path} cannot be written.", path=self.path))
            raise PackFolderError(
                tr(
                    "{path} is in use by another program that packs; if none does, delete {file}.",
                    path=self.path,
                    file=LOCK,
                )
            )
        try:
            self.manifest = read_manifest((self.path / MANIFEST).read_text("utf-8"))
        except FileNotFoundError:
            self._keep(Manifest())
        except ValueError as fault:
            self.notices.append(
                tr(
                    "{path} cannot be used ({fault}); all lessons are made again.",
                    path=self.path / MANIFEST,
                    fault=fault,
                )
            )
            self._keep(Manifest())
        self.sweep()

    def __enter__(self) -> PackFolder:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def close(self) -> None:
        """Give the folder back."""
        if self._lock is not None:
            self._lock.unlock()
            self._lock = None

    def stands(self, file: FileRecord) -> bool:
        """Whether a file is there, as large as it was made."""
        try:
            return (self.path / file.path).stat().st_size == file.size
        except OSError:
            return False

    # ------------------------------------------------------------------------------------------------- changing

    def drop(self, outdated: Iterable[LessonRecord]) -> None:
        """Take lessons out of the pack, and the contents page and the zip with them.

        Raises:
            OSError: a file cannot be deleted.
        """
        gone = {record.identity: record for record in outdated}
        for record in gone.values():
            for file in record.files:
                self._remove(file)
            _remove_if_empty(self.path / record.name)
        self.drop_whole()
        self._keep(Manifest(tuple(record for record in self.manifest.lessons if record.identity not in gone)))

    def drop_whole(self) -> None:
        """Delete the contents page and the zip: from now on the pack is not whole."""
        (self.path / CONTENTS).unlink(missing_ok=True)
        if self.manifest.archive is not None:
            (self.path / self.manifest.archive.path).unlink(missing_ok=True)

    def add(self, record: LessonRecord) -> None:
        """Note that a lesson is made."""
        self._keep(Manifest((*self.manifest.lessons, record)))

    def write_contents(self, text: str) -> Path:
        """Write the contents page where it is not the same already."""
        path, data = self.path / CONTENTS, text.encode()
        if not path.exists() or path.read_bytes() != data:
            write_atomically(path, data)
        return path

    def write_archive(self, records: Sequence[LessonRecord], watch: Callable[[int], bool]) -> Path | None:
        """Put all files of the pack into one zip, unless that is what is in it already.

        Args:
            records: The lessons.
            watch: Told the number of files packed so far; says True to stop.
        Returns:
            The zip; None where it was stopped.
        Raises:
            OSError: it cannot be written.
        """
        name = safe_name(self.path.resolve().name, "Lesson pack")
        files = [(file.path, file.sha256) for record in records for file in record.files]
        files.append((CONTENTS, sha256((self.path / CONTENTS).read_bytes()).hexdigest()))
        archive_of = sha256(repr((name, sorted(files))).encode()).hexdigest()
        path = self.path / f"{name}.zip"
        before = self.manifest.archive
        is_same = before is not None and (before.path, self.manifest.archive_of) == (path.name, archive_of)
        if before is not None and is_same and self.stands(before):
            return path
        try:
            with written_beside(path) as beside, zipfile.ZipFile(beside, "w", strict_timestamps=False) as archive:
                for number, (file, _) in enumerate(sorted(files)):
                    if watch(number):
                        raise _StoppedError
                    method = zipfile.ZIP_STORED if Path(file).suffix in PACKED_ALREADY else zipfile.ZIP_DEFLATED
                    archive.write(self.path / file, f"{name}/{file}", method)
        except _StoppedError:
            return None
        made = FileRecord(path.name, path.stat().st_size, "")
        self._keep(Manifest(self.manifest.lessons, made, archive_of))
        return path

    def _keep(self, manifest: Manifest) -> None:
        write_atomically(self.path / MANIFEST, write_manifest(manifest).encode())
        self.manifest = manifest

    def _remove(self, file: FileRecord) -> None:
        """Delete a file as we made it; put it aside where a user changed it."""
        path = self.path / file.path
        try:
            with path.open("rb") as opened:
                is_ours = file_digest(opened, "sha256").hexdigest() == file.sha256
        except FileNotFoundError:
            return
        if is_ours:
            path.unlink()
            return
        taken = {same_file(other.stem) for other in path.parent.iterdir()}
        aside = path.with_name(free_name(tr("{name}, changed", name=path.stem), taken) + path.suffix)
        path.rename(aside)
        self.notices.append(
            tr("{path} was changed since it was packed; it is kept as {kept}.", path=path, kept=aside.name)
        )

    def sweep(self) -> None:
        """Delete what a process that was killed left half-written, under names of its own."""
        for folder in (self.path, *(entry for entry in self.path.iterdir() if entry.is_dir())):
            for part in folder.glob(".*.part"):
                part.unlink(missing_ok=True)


def _remove_if_empty(folder: Path) -> None:
    try:
        folder.rmdir()
    except OSError:
        return  # a file of the user's is in it, or it is gone
