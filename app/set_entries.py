"""How a tune of a set is named in one word, on the command line and in the settings.

``FILE#NxT/BOWING``: tune number N of the file, played T times, bowed so. All behind the file may be left out: the only
tune of its file, once, in its first bowing. ``FILE#2``, ``FILE#x3`` and ``FILE#/Smooth`` are whole as well.
"""

from __future__ import annotations

import os
import re

from core.bowing import Bowing
from core.lesson import Lesson
from core.reading import Reading
from core.translation import tr
from core.tune_set import MOST_TIMES, MOST_TUNES
from core.values import dataclass

FORM = "FILE[#[N][xT][/BOWING]]"
_WORD = re.compile(r"(?P<file>.+?)#(?P<number>\d{0,9})(?:x(?P<times>\d{1,9}))?(?:/(?P<bowing>.+))?")


class EntryError(Exception):
    """A tune of a set is named in a way that leads to none; ``str()`` is one sentence that says what was expected."""


@dataclass(frozen=True, slots=True)
class EntryName:
    """Where a tune of a set stands, and how it is played.

    Attributes:
        file: Path of the file, as given.
        number: Of the tune in its book (ABC ``X:``); None for the only one.
        times: How often it is played.
        bowing: Name of its bowing; None for the first.
    """

    file: str
    number: int | None = None
    times: int = 1
    bowing: str | None = None

    def __str__(self) -> str:
        number = "" if self.number is None else str(self.number)
        times = "" if self.times == 1 else f"x{self.times}"
        bowing = "" if self.bowing is None else f"/{self.bowing}"
        behind = f"{number}{times}{bowing}"
        return f"{self.file}#{behind}" if behind or "#" in self.file else self.file


def parse_entry(text: str) -> EntryName:
    """Read a name; one that is a file as it stands is that file.

    Raises:
        EntryError: what stands behind the ``#`` has another form, or the times are too many or none.
    """
    if "#" not in text or os.path.isfile(text):
        return EntryName(text)
    found = _WORD.fullmatch(text)
    if found is None:
        raise EntryError(
            tr("{text}: expected {form}, such as book.abc#3x2 for its tune 3, played twice", text=text, form=FORM)
        )
    times = int(found["times"] or 1)
    if not 1 <= times <= MOST_TIMES:
        raise EntryError(tr("{text}: a tune of a set is played 1 to {most} times", text=text, most=MOST_TIMES))
    number = int(found["number"]) if found["number"] else None
    return EntryName(found["file"], number, times, found["bowing"])


def refuse_too_many(count: int) -> None:
    """Raise ``EntryError`` where a set has more tunes than one may."""
    if count > MOST_TUNES:
        raise EntryError(tr("A set holds at most {most} tunes; there are {count}.", most=MOST_TUNES, count=count))


def find_entry(name: EntryName, reading: Reading, bowing: str | None = None) -> tuple[Lesson, Bowing]:
    """Find the tune and the bowing in what was read of the file.

    Args:
        name: What is looked for.
        reading: What the file holds.
        bowing: Name of the bowing where the entry names none.
    Raises:
        EntryError: it is not there, or several could be meant.
    """
    lessons = reading.lessons
    numbers = ", ".join(str(lesson.tune.number) for lesson in lessons)
    if name.number is None:
        if len(lessons) > 1:
            first = f"{name.file}#{lessons[0].tune.number}"
            raise EntryError(
                tr(
                    "{file}: a book of {count} tunes: expected one of them, such as {first}",
                    file=name.file,
                    count=len(lessons),
                    first=first,
                )
            )
        lesson = lessons[0]
    else:
        found = [lesson for lesson in lessons if lesson.tune.number == name.number]
        if not found:
            raise EntryError(
                tr("{file}: no tune {number}; there is {numbers}", file=name.file, number=name.number, numbers=numbers)
            )
        lesson = found[0]
    wanted = name.bowing or bowing
    if wanted is None:
        return lesson, lesson.bowings[0]
    try:
        return lesson, lesson.named(wanted)
    except KeyError:
        there = ", ".join(other.name for other in lesson.bowings)
        raise EntryError(
            tr("{file}: no bowing named “{wanted}”; there is {there}", file=name.file, wanted=wanted, there=there)
        ) from None
