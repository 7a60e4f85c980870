"""The lessons of files that are on the shelf."""

from __future__ import annotations

from pathlib import Path

from core.errors import UnreadableFileError
from core.file_faults import why
from core.lesson import Lesson
from core.reading import read_file
from core.shelf.scan import LARGEST_FILE_BYTES, FileProblem
from core.translation import tr


def lessons_in(file: Path, problems: list[FileProblem]) -> tuple[Lesson, ...]:
    """The lessons in a file; none, told as a problem, where it cannot be read."""
    try:
        if file.stat().st_size > LARGEST_FILE_BYTES:
            raise UnreadableFileError(
                tr("is larger than {size} MB and was left out.", size=LARGEST_FILE_BYTES // 2**20)
            )
        return read_file(file.read_bytes()).lessons
    except OSError as fault:
        problems.append(FileProblem(file, tr("cannot be opened: {reason}.", reason=why(fault))))
    except UnreadableFileError as fault:
        problems.append(FileProblem(file, str(fault)))
    return ()
