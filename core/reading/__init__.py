"""Readers: bytes or text of a file in, lessons out, with every repair told.

``read_file`` looks at the bytes, not at the name, to tell ABC, MusicXML and packed MusicXML apart.
"""

from __future__ import annotations

from core.errors import Problem
from core.lesson import Lesson
from core.values import dataclass


@dataclass(frozen=True)
class Reading:
    """What a file holds.

    Attributes:
        lessons: One for each tune that could be read, in file order; their numbers are ``lesson.tune.number``.
        problems: Everything repaired, left out or not understood, in file order, for the whole file.
        is_lesson_file: The file is one of ours: it can be saved in place without changing its kind.
    """

    lessons: tuple[Lesson, ...]
    problems: tuple[Problem, ...] = ()
    is_lesson_file: bool = False


def read_file(data: bytes) -> Reading:
    """Read a file's bytes, whatever its kind.

    Raises:
        UnreadableFileError: no tune can be read; the sentence says what was found and expected.
    """
    if data[:4] == b"PK\x03\x04":
        from core.reading.musicxml import read_mxl  # each kind loads only what it needs

        return read_mxl(data)
    head = data.lstrip(b"\xef\xbb\xbf \t\r\n")[:1]
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        head = data[:1000].decode("utf-16", "ignore").lstrip()[:1].encode()
    if head == b"<":
        from core.reading.musicxml import read_musicxml

        return read_musicxml(data)
    from core.reading.abc import decode, read_abc

    return read_abc(decode(data))
