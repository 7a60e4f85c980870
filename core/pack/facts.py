"""What the contents page says of a lesson, and how it is known again."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from core.lesson import Lesson
from core.pack.fingerprint import fingerprint
from core.pack.kinds import Kind
from core.pack.names import Identity
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Facts:
    """A lesson in words.

    Attributes:
        title: As written; may be empty.
        other_titles: Further ones.
        dance, key, meter: As text; may be empty.
        bowings: (name, accent plan) of each.
        copy: Which one of the file's tunes of this title, from 0.
        fingerprint: See ``core.pack.fingerprint``.
    """

    title: str
    other_titles: tuple[str, ...]
    dance: str
    key: str
    meter: str
    bowings: tuple[tuple[str, str], ...]
    copy: int
    fingerprint: str

    def identity(self, source: str) -> Identity:
        """By what the lesson is known again in a file."""
        return Identity(source, self.title, self.copy)


def facts_of(lessons: Sequence[Lesson], kinds: frozenset[Kind], program: str) -> tuple[Facts, ...]:
    """Facts of all lessons of a file, in order.

    Args:
        lessons: In file order.
        kinds: What goes into the pack.
        program: Version of the program.
    """
    seen: Counter[str] = Counter()
    found = []
    for lesson in lessons:
        tune = lesson.tune
        first = tune.bars[0]
        found.append(
            Facts(
                tune.title,
                tune.other_titles,
                tune.dance,
                str(first.key),
                str(first.meter),
                tuple((bowing.name, str(bowing.accents)) for bowing in lesson.bowings),
                seen[tune.title],
                fingerprint(lesson, kinds, program),
            )
        )
        seen[tune.title] += 1
    return tuple(found)
