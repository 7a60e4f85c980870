"""Opening and saving: bytes to and from the disk, with every failure turned into one sentence.

What is in the bytes is ``core``'s business. A save is all or nothing: the new file is written beside the old one, is
flushed to the disk, and only then takes its name. It takes the place of nothing that its writer has not seen: where
the file has another content than that, ``save_over`` refuses, or keeps that content aside.
"""

from __future__ import annotations

import errno
import os
import stat
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import BinaryIO

from app.data_folder import data_folder
from app.hold import hold_on, turn
from app.imprint import Imprint, imprint, imprint_of
from core.errors import UnreadableFileError
from core.file_faults import why
from core.lesson import Lesson
from core.reading import Reading, read_file
from core.translation import tr, translatable
from core.values import dataclass

LESSON_SUFFIXES = (".musicxml", ".mxl")
OPEN_FILTERS = translatable((
    "Lessons, scores and tune books (*.musicxml *.mxl *.xml *.abc *.txt)",
    "Lessons and scores in MusicXML (*.musicxml *.mxl *.xml)",
    "Tune books in ABC (*.abc *.txt)",
    "All files (*)",
))  # fmt: skip
SAVE_FILTERS = translatable(("Lesson in MusicXML (*.musicxml)", "Packed lesson (*.mxl)"))
ABC_SUFFIX = ".abc"
LARGEST_FILE_BYTES = 64 * 1024 * 1024
SLOW_FILE_BYTES = {".mxl": 60 * 1024, ".musicxml": 1024 * 1024, ".xml": 1024 * 1024}  # about half a second, by suffix
SLOW_BOOK_BYTES = 200 * 1024  # the same of a tune book
PART_PREFIX, PART_SUFFIX = ".bowbench-", ".part"  # short: the longest name of a file must still be open to us
PART_AGE_S = 24 * 3600  # older ones were left by a save that was killed
PATIENCE_S = 3.0  # for another window that is saving the same file
LONGEST_NAME_BYTES = 200  # of the 255 that most systems take, so that there is room for what is added
DEVICES = {"con", "prn", "aux", "nul", *(f"{port}{number}" for port in ("com", "lpt") for number in range(1, 10))}


class FileError(Exception):
    """A file could not be read or written; ``str()`` is one sentence that names it."""


class ChangedFileError(FileError):
    """A file was not overwritten, since it is not as its writer knows it."""


@dataclass(frozen=True)
class Saved:
    """A save that is done.

    Attributes:
        imprint: The file as it is now.
        aside: Where the content that stood there was kept; None where it was known.
    """

    imprint: Imprint
    aside: Path | None = None


def read_path(path: Path) -> Reading:
    """Read a file of any kind that ``core.reading`` knows.

    Raises:
        FileError: it cannot be opened, or nothing in it can be read.
    """
    return read_known(path)[0]


def read_known(path: Path) -> tuple[Reading, Imprint]:
    """Read a file, and say what it looked like.

    Raises:
        FileError: it cannot be opened, or nothing in it can be read.
    """
    try:
        data = limited_bytes(path)
    except (OSError, ValueError) as fault:
        raise FileError(tr("{name} cannot be opened: {why}.", name=path.name, why=why(fault))) from fault
    try:
        return read_file(data), imprint(data)
    except UnreadableFileError as fault:
        raise FileError(f"{path.name}, {fault}" if fault.line else f"{path.name}: {fault}") from fault


def limited_bytes(path: Path) -> bytes:
    """What a file holds, and no more than a file may: a device may never end.

    Raises:
        OSError, ValueError: it cannot be opened.
        FileError: it is too large.
    """
    with path.open("rb") as file:
        data = file.read(LARGEST_FILE_BYTES + 1)
    if len(data) > LARGEST_FILE_BYTES:
        size = LARGEST_FILE_BYTES // 2**20
        raise FileError(tr("{name} is larger than {size} MB and was not opened.", name=path.name, size=size))
    return data


def is_slow_to_read(path: Path) -> bool:
    """Whether reading may take longer than a user waits without a sign of life."""
    try:
        return path.stat().st_size > SLOW_FILE_BYTES.get(path.suffix.lower(), SLOW_BOOK_BYTES)
    except OSError:
        return False  # reading will say why


def save_lesson(lesson: Lesson, path: Path) -> Imprint:
    """Write a lesson file, packed where the name ends in ``.mxl``, whatever stands there.

    Returns:
        What the file looks like now.
    Raises:
        FileError: it cannot be written; a file that stood there before is as it was.
    """
    from core.writing.musicxml import write_musicxml  # loaded when something is first saved
    from core.writing.mxl import pack_mxl

    text = write_musicxml(lesson)
    data = pack_mxl(text) if path.suffix.lower() == ".mxl" else text.encode()
    try:
        write_atomically(path, data)
    except (OSError, ValueError) as fault:
        raise FileError(tr("{name} cannot be saved: {why}.", name=path.name, why=why(fault, writing=True))) from fault
    return imprint(data)


def save_over(lesson: Lesson, path: Path, known: Imprint | None, *, set_aside: bool = False) -> Saved:
    """Write a lesson file in the place of what its writer knows; windows that save one file take turns.

    Args:
        lesson: The lesson.
        path: Its file.
        known: What the file looked like when it was read or last written; None where none is known to be there.
        set_aside: Another content is kept beside the file, under a name of its own, and then overwritten.
    Raises:
        ChangedFileError: the file has another content, and is not to be set aside.
        FileError: it cannot be written, or the other content not be kept; what stood there is as it was.
    """
    try:
        with turn(hold_on(data_folder() / "saving", path), PATIENCE_S):
            now = imprint_of(path)
            if now is None or now == known:
                return Saved(save_lesson(lesson, path))
            if not set_aside:
                raise ChangedFileError(
                    tr("{name} has been changed since this lesson was read from it.", name=path.name)
                )
            aside = keep_aside(path)
            try:
                return Saved(save_lesson(lesson, path), aside)
            except FileError:
                aside.unlink(missing_ok=True)  # it still stands where it stood
                raise
    except (OSError, ValueError) as fault:
        raise FileError(tr("{name} cannot be saved: {why}.", name=path.name, why=why(fault, writing=True))) from fault


def keep_aside(path: Path) -> Path:
    """Copy a file beside itself under a name that says when it was last changed and that no file has yet.

    Raises:
        OSError: that cannot be done.
    """
    path = path.resolve()
    data = path.read_bytes()
    changed = time.strftime("%Y-%m-%d %H.%M", time.localtime(path.stat().st_mtime))
    number = 1
    while True:
        again = f" {number}" if number > 1 else ""
        aside = path.with_name(f"{path.stem} (other, {changed}{again}){path.suffix}")
        try:
            handle = os.open(aside, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o666)
        except FileExistsError:
            number += 1
            continue
        os.close(handle)  # the name is ours
        try:
            write_atomically(aside, data)
        except BaseException:
            aside.unlink(missing_ok=True)
            raise
        return aside


def save_abc(lesson: Lesson, path: Path) -> tuple[str, ...]:
    """Write all bowings of a lesson as a tune book in ABC.

    Returns:
        Sentences for what ABC has no place for.
    Raises:
        FileError: it cannot be written; a file that stood there before is as it was.
    """
    from core.writing.abc import write_abc
    from core.writing.abc_losses import abc_losses

    try:
        write_atomically(path, write_abc([lesson]).encode())
    except (OSError, ValueError) as fault:
        raise FileError(tr("{name} cannot be written: {why}.", name=path.name, why=why(fault, writing=True))) from fault
    return abc_losses(lesson)


def write_atomically(path: Path, data: bytes) -> None:
    """Write a file so that at any moment either the old or the whole new content stands under its name.

    Raises:
        OSError: it cannot be written; nothing has changed.
        ValueError: no file can have that name.
    """
    with written_beside(path) as file:
        file.write(data)


@contextmanager
def written_beside(path: Path) -> Iterator[BinaryIO]:
    """A file open for writing that takes the name ``path`` when the block ends, and goes where the block raises.

    A link keeps pointing where it points. A file that is protected against writing is not replaced.

    Raises:
        OSError: it cannot be written; nothing has changed.
        ValueError: no file can have that name.
    """
    try:
        path = path.resolve()
    except RuntimeError as fault:  # of links in a circle, up to Python 3.12
        raise OSError(errno.ELOOP, os.strerror(errno.ELOOP)) from fault
    before = _to_replace(path)
    handle, name = tempfile.mkstemp(prefix=PART_PREFIX, suffix=PART_SUFFIX, dir=path.parent)
    part = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            if before is not None and not os.access(path, os.W_OK):
                raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
            yield file
            file.flush()
            os.fsync(file.fileno())
        _take_rights(part, before)
        part.replace(path)
    except BaseException:
        part.unlink(missing_ok=True)
        raise
    _flush_folder(path.parent)
    _clear_parts(path.parent)


def _to_replace(path: Path) -> os.stat_result | None:
    """The file that is to be replaced; None where there is none."""
    try:
        before = path.stat()
    except FileNotFoundError:
        return None
    if stat.S_ISDIR(before.st_mode):
        raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
    if not stat.S_ISREG(before.st_mode):  # a device, say
        raise OSError(errno.EINVAL, os.strerror(errno.EINVAL))
    return before


def _take_rights(part: Path, before: os.stat_result | None) -> None:
    """Give a new file the rights of the one that it replaces, its group too where that is allowed."""
    if before is not None and hasattr(os, "chown") and before.st_gid != part.stat().st_gid:
        with suppress(OSError):
            os.chown(part, -1, before.st_gid)
    part.chmod(0o666 & ~_umask() if before is None else before.st_mode & 0o777)


def _clear_parts(folder: Path) -> None:
    """Take away what saves that were killed have left in a folder, once nobody can be writing it any more."""
    with suppress(OSError):
        for part in folder.glob(f"{PART_PREFIX}*{PART_SUFFIX}"):
            if time.time() - part.stat().st_mtime > PART_AGE_S:
                part.unlink()


def lesson_path(chosen: Path) -> Path:
    """The name under which a lesson is saved: as chosen, with ``.musicxml`` where it has no lesson suffix."""
    return chosen if chosen.suffix.lower() in LESSON_SUFFIXES else chosen.with_name(chosen.name + LESSON_SUFFIXES[0])


def suggested_name(title: str) -> str:
    """A file name made from a tune's title: letters, digits, spaces and hyphens only, and no name of a device.

    Names that systems keep for devices: Microsoft Learn, "Naming Files, Paths, and Namespaces".
    """
    kept = "".join(c if c.isalnum() or c in " -'’" else " " for c in title)
    name = " ".join(kept.split())[:80].encode()[:LONGEST_NAME_BYTES].decode(errors="ignore").strip()
    if name.lower() in DEVICES:
        name += " tune"
    return (name or "Lesson") + LESSON_SUFFIXES[0]


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask


def _flush_folder(folder: Path) -> None:
    """Make the new name itself last; not every system lets a folder be opened for that."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        return
    try:
        os.fsync(handle)
    except OSError:
        pass
    finally:
        os.close(handle)
