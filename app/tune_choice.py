"""The tune of a book that a command takes where none is named."""

from __future__ import annotations

from core.lesson import Lesson
from core.translation import plural, tr


def first_taken(file: object, count: int, lesson: Lesson) -> str:
    """That of several tunes in a file the first was taken."""
    return plural(
        "{file}: of 1 tune the first was taken, “{title}”; --tune chooses another",
        "{file}: of {n} tunes the first was taken, “{title}”; --tune chooses another",
        count, file=file, title=lesson.tune.title or tr("untitled"),
    )  # fmt: skip
