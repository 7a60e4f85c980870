"""A practice ladder: the tune again and again, each time a little faster.

Steps of three to five percent are just above what is noticed as a change of tempo (Drake and Botte, Perception &
Psychophysics 54, 1993, 277); where to begin is common practice, no source.
"""

from __future__ import annotations

import re
from fractions import Fraction

from core.translation import tr
from core.values import dataclass

MOST_PERCENT = 150
MOST_RUNGS = 100  # playings in all
_LADDER = re.compile(r"(\d{1,3})-(\d{1,3})(?:/(\d{1,2}))?(?:x(\d{1,2}))?")


@dataclass(frozen=True, slots=True)
class Ladder:
    """How fast a tune is played, one playing after another.

    Attributes:
        first, last: Percent of the tempo, 10 to 150; a ladder leads up.
        step: Percent from one rung to the next; the last rung is played even where the step does not meet it.
        times: Playings on each rung.
    Raises:
        ValueError: a value is out of its limits; the text is one sentence.
    """

    first: int = 60
    last: int = 100
    step: int = 5
    times: int = 1

    def __post_init__(self) -> None:
        if not 10 <= self.first <= self.last <= MOST_PERCENT or self.step < 1 or self.times < 1:
            raise ValueError(
                tr(
                    "A ladder leads up from at least 10 to at most {most} percent, by steps of at least 1, "
                    "at least once on each rung.",
                    most=MOST_PERCENT,
                )
            )
        if len(self.rungs) * self.times > MOST_RUNGS:
            raise ValueError(tr("The ladder {ladder} has more than {most} playings.", ladder=self, most=MOST_RUNGS))

    @property
    def rungs(self) -> tuple[int, ...]:
        """Percent of the tempo on each rung, slowest first."""
        return (*range(self.first, self.last, self.step), self.last)

    @property
    def speeds(self) -> tuple[Fraction, ...]:
        """Share of the tempo of each playing, in order."""
        return tuple(Fraction(rung, 100) for rung in self.rungs for _ in range(self.times))

    def __str__(self) -> str:
        return f"{self.first}-{self.last}/{self.step}x{self.times}"


def parse_ladder(text: str) -> Ladder:
    """Read a ladder from ``60-100``, ``60-100/4`` (steps of 4) or ``60-100/4x2`` (twice on each rung).

    Raises:
        ValueError: with one sentence that says what was expected.

    >>> parse_ladder("60-70/4x2").speeds
    (Fraction(3, 5), Fraction(3, 5), Fraction(16, 25), Fraction(16, 25), Fraction(17, 25), Fraction(17, 25), \
Fraction(7, 10), Fraction(7, 10))
    """
    found = _LADDER.fullmatch(text.strip())
    if found is None:
        raise ValueError(
            tr("“{text}” is no ladder: expected percents such as 60-100, 60-100/4 or 60-100/4x2", text=text)
        )
    given = zip(("first", "last", "step", "times"), found.groups(), strict=True)
    return Ladder(**{name: int(value) for name, value in given if value is not None})
