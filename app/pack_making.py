"""What workers do for a pack: look at a file, and make the files of one lesson of it."""

from __future__ import annotations

import errno
import os
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path

from app.files import FileError, read_path, write_atomically
from app.language import ENGLISH, spoken_language, use_language
from app.pack_sources import Source
from core.errors import BowbenchError
from core.file_faults import why
from core.lesson import Lesson
from core.pack.facts import Facts, facts_of
from core.pack.kinds import Kind, in_order
from core.pack.making import MAKERS, faults_of, sheets_of
from core.pack.manifest import FileRecord, record_of
from core.reading import Reading, read_file
from core.translation import tr
from core.values import dataclass

ENDS_ALL = frozenset({errno.ENOSPC, errno.EDQUOT, errno.EROFS})  # no other lesson can be written either


@dataclass(frozen=True, slots=True)
class Settings:
    """What counts for all lessons of a pack.

    Attributes:
        kinds: What is made for each.
        program: Version of the program, with what else the same lesson may come out differently by.
        language: In which sheets are written.
    """

    kinds: frozenset[Kind]
    program: str
    language: str = ENGLISH


@dataclass(frozen=True, slots=True)
class Looked:
    """What a file holds.

    Attributes:
        lessons: Facts of each.
        remarks: What was repaired or left out, a line each.
    """

    lessons: tuple[Facts, ...]
    remarks: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Order:
    """A lesson to be made.

    Attributes:
        source, place: The file, and the lesson's place in it from 0.
        name: Of the lesson's folder and files.
        fingerprint: Of what is to be made; another one in the file now means that it was changed meanwhile.
        folder: Of the pack.
    """

    source: Source
    place: int
    name: str
    fingerprint: str
    settings: Settings
    folder: Path


@dataclass(frozen=True, slots=True)
class Made:
    """A lesson that is made: its files, and the faults in its bowings."""

    files: tuple[FileRecord, ...]
    remarks: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Refused:
    """Nothing was made.

    Attributes:
        text: One sentence.
        ends_all: No other lesson can be made either.
    """

    text: str
    ends_all: bool = False


def _speak(language: str) -> None:
    """Speak the language of the process that we work for."""
    if language != spoken_language():
        use_language(language)


def look(task: tuple[Source, Settings]) -> Looked | Refused:
    """Read a file and tell what is in it."""
    source, settings = task
    _speak(settings.language)
    try:
        reading = _read(source)
    except (FileError, BowbenchError) as fault:
        return Refused(_why(fault))
    remarks = tuple(str(problem)[:1].upper() + str(problem)[1:] for problem in reading.problems)
    return Looked(facts_of(reading.lessons, settings.kinds, settings.program), remarks)


def make(order: Order) -> Made | Refused:
    """Make all files of a lesson, or none: nothing is written before all is worked out."""
    _speak(order.settings.language)
    try:
        lessons = _read(order.source).lessons
        settings = order.settings
        facts = facts_of(lessons[order.place : order.place + 1], settings.kinds, settings.program)
        if not facts or facts[0].fingerprint != order.fingerprint:
            return Refused(tr("the file was changed while it was packed; pack again"))
        lesson = lessons[order.place]
        made = list(_files(lesson, order.name, settings.kinds))
        remarks = faults_of(lesson)
    except (FileError, BowbenchError) as fault:
        return Refused(_why(fault))
    folder = order.folder / order.name
    try:
        folder.mkdir(exist_ok=True)
        for name, data in made:
            write_atomically(folder / name, data)
    except OSError as fault:
        return Refused(tr("cannot be written: {reason}", reason=why(fault, writing=True)), fault.errno in ENDS_ALL)
    return Made(tuple(record_of(f"{order.name}/{name}", data) for name, data in made), remarks)


def _files(lesson: Lesson, name: str, kinds: frozenset[Kind]) -> Iterator[tuple[str, bytes]]:
    for kind in in_order(kinds):
        yield from _sheets(lesson, name) if kind is Kind.SHEETS else MAKERS[kind](lesson, name)


def _sheets(lesson: Lesson, name: str) -> Iterator[tuple[str, bytes]]:
    """Sheets as PDF; what each is for stands in its name where there are several."""
    from PySide6.QtCore import QBuffer, QIODevice  # only where sheets are made

    from app.printing import write_sheet

    plans = sheets_of(lesson)
    for plan in plans:
        buffer = QBuffer()
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        write_sheet(lesson, plan, buffer)
        ending = f", {plan.kind.value}" if len(plans) > 1 else ""
        yield f"{name}{ending}.pdf", bytes(buffer.data().data())


def _read(source: Source) -> Reading:
    """Read a source; the one read last is kept, so that a book is not read again for each of its tunes.

    Raises:
        FileError: it cannot be read.
    """
    if source.data is not None:
        return read_file(source.data)
    try:
        found = os.stat(source.path)
    except OSError:
        return read_path(source.path)  # says why
    return _read_once(source.path, found.st_mtime_ns, found.st_size)


@lru_cache(maxsize=1)
def _read_once(path: Path, mtime_ns: int, size: int) -> Reading:
    return read_path(path)


def _why(fault: FileError | BowbenchError) -> str:
    """The sentence, without the name of the file that ``FileError`` begins with."""
    cause = fault.__cause__
    if isinstance(cause, OSError):
        return why(cause)
    return str(cause or fault)
