"""Opening and saving: bytes to and from the disk, with every failure turned into one sentence.

What is in the bytes is ``core``'s business. A save is all or nothing: the new file is written beside the old one, is
flushed to the disk, and only then takes its name.
"""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.reading import Reading, read_file

LESSON_SUFFIXES = (".musicxml", ".mxl")
READABLE_SUFFIXES = (*LESSON_SUFFIXES, ".xml", ".abc", ".txt")
OPEN_FILTERS = (
    "Lessons, scores and tune books (*.musicxml *.mxl *.xml *.abc *.txt)",
    "Lessons and scores in MusicXML (*.musicxml *.mxl *.xml)",
    "Tune books in ABC (*.abc *.txt)",
    "All files (*)",
)
SAVE_FILTERS = ("Lesson in MusicXML (*.musicxml)", "Packed lesson (*.mxl)")
ABC_SUFFIX = ".abc"
LARGEST_FILE_BYTES = 64 * 1024 * 1024
SLOW_FILE_BYTES = 200 * 1024  # about half a second


class FileError(Exception):
    """A file could not be read or written; ``str()`` is one sentence that names it."""


def read_path(path: Path) -> Reading:
    """Read a file of any kind that ``core.reading`` knows.

    Raises:
        FileError: it cannot be opened, or nothing in it can be read.
    """
    try:
        if path.stat().st_size > LARGEST_FILE_BYTES:
            raise FileError(f"{path.name} is larger than {LARGEST_FILE_BYTES // 2**20} MB and was not opened.")
        data = path.read_bytes()
    except OSError as fault:
        raise FileError(f"{path.name} cannot be opened: {_reason(fault)}.") from fault
    try:
        return read_file(data)
    except UnreadableFileError as fault:
        raise FileError(f"{path.name}, {fault}" if fault.line else f"{path.name}: {fault}") from fault


def is_slow_to_read(path: Path) -> bool:
    """Whether reading may take longer than a user waits without a sign of life."""
    try:
        return path.stat().st_size > SLOW_FILE_BYTES
    except OSError:
        return False  # reading will say why


def save_lesson(lesson: Lesson, path: Path) -> None:
    """Write a lesson file, packed where the name ends in ``.mxl``.

    Raises:
        FileError: it cannot be written; a file that stood there before is as it was.
    """
    from core.writing.musicxml import write_musicxml  # loaded when something is first saved
    from core.writing.mxl import pack_mxl

    text = write_musicxml(lesson)
    data = pack_mxl(text) if path.suffix.lower() == ".mxl" else text.encode()
    try:
        write_atomically(path, data)
    except OSError as fault:
        raise FileError(f"{path.name} cannot be saved: {_reason(fault)}.") from fault


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
    except OSError as fault:
        raise FileError(f"{path.name} cannot be written: {_reason(fault)}.") from fault
    return abc_losses(lesson)


def write_atomically(path: Path, data: bytes) -> None:
    """Write a file so that at any moment either the old or the whole new content stands under its name.

    Raises:
        OSError: it cannot be written; nothing has changed.
    """
    with written_beside(path) as file:
        file.write(data)


@contextmanager
def written_beside(path: Path) -> Iterator[BinaryIO]:
    """A file open for writing that takes the name ``path`` when the block ends, and goes where the block raises.

    Raises:
        OSError: it cannot be written; nothing has changed.
    """
    path = path.resolve()  # a link keeps pointing where it points
    handle, name = tempfile.mkstemp(prefix=f".{path.name}.", suffix=".part", dir=path.parent)
    part = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            yield file
            file.flush()
            os.fsync(file.fileno())
        part.chmod(path.stat().st_mode & 0o777 if path.exists() else 0o666 & ~_umask())
        part.replace(path)
    except BaseException:
        part.unlink(missing_ok=True)
        raise
    _flush_folder(path.parent)


def lesson_path(chosen: Path) -> Path:
    """The name under which a lesson is saved: as chosen, with ``.musicxml`` where it has no lesson suffix."""
    return chosen if chosen.suffix.lower() in LESSON_SUFFIXES else chosen.with_name(chosen.name + LESSON_SUFFIXES[0])


def suggested_name(title: str) -> str:
    """A file name made from a tune's title: letters, digits, spaces and hyphens only."""
    kept = "".join(c if c.isalnum() or c in " -'’" else " " for c in title)
    return (" ".join(kept.split())[:80] or "Lesson") + LESSON_SUFFIXES[0]


def _reason(fault: OSError) -> str:
    text = fault.strerror or str(fault)
    return text[:1].lower() + text[1:]


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
