"""How bars stand as measures in MusicXML: their numbers, and how often a repeat is played where no number says it."""

from __future__ import annotations

import re
from collections.abc import Sequence

from core.values import dataclass

_NUMBER = re.compile(r"(-?\d{1,9})(?:X\d+)?")


@dataclass(frozen=True, slots=True)
class MeasureNumber:
    """The number attribute of a measure, unique in its part.

    Attributes:
        text: The printed number; where an earlier bar has it already, the number, ``X`` and a count: ``8X1``.
        implicit: The number is not printed, as in a pick-up and in the last half of a bar that a repeat cuts in two.
    """

    text: str
    implicit: bool


def measure_numbers(numbers: Sequence[int]) -> tuple[MeasureNumber, ...]:
    """Name the measures of bars with these printed numbers.

    >>> [number.text for number in measure_numbers([0, 1, 1, 2])]
    ['0', '1', '1X1', '2']
    """
    seen: dict[int, int] = {}
    named = []
    for number in numbers:
        count = seen.get(number, 0)
        named.append(MeasureNumber(f"{number}X{count}" if count else str(number), count > 0 or number <= 0))
        seen[number] = count + 1
    return tuple(named)


def printed_number(text: str) -> int | None:
    """The printed number that a measure's number attribute tells, or None where it tells none (``X1``).

    >>> printed_number("8X1")
    8
    """
    match = _NUMBER.fullmatch(text.strip())
    return int(match[1]) if match else None


def implied_repeats(endings: Sequence[tuple[int, ...]], index: int) -> int:
    """How often a section is played that ends with a backward repeat in this bar, where no number says it.

    Args:
        endings: ``Bar.ending`` of all bars.
        index: The bar with the repeat.
    Returns:
        2 outside endings; else the highest pass that an ending of the same group names, or one more where no other
        ending stands beside it.
    """
    if not endings[index]:
        return 2
    first = stop = index
    while first > 0 and endings[first - 1]:
        first -= 1
    while stop + 1 < len(endings) and endings[stop + 1]:
        stop += 1
    group = set(endings[first : stop + 1])
    highest = max(max(numbers) for numbers in group)
    return max(2, highest if len(group) > 1 else highest + 1)
