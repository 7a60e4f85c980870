"""Which bars stand on which line of the page.

Players read by phrases, so four full bars make a line, each part begins a new one, and a pick-up stands with the bar
that it leads to.
"""

from __future__ import annotations

from collections.abc import Iterator

from core.tune import Bar, Tune
from core.values import dataclass

MAX_NOTES = 64  # on one line; where four bars hold more, the section takes fewer bars a line


@dataclass(frozen=True, slots=True, order=True)
class Line:
    """Bars of one line.

    Attributes:
        first: Index in ``Tune.bars`` of the first bar.
        stop: Index after the last bar.
    """

    first: int
    stop: int


def break_lines(tune: Tune, bars_a_line: int = 4) -> tuple[Line, ...]:
    """Break a tune into lines.

    Args:
        tune: The tune.
        bars_a_line: Full bars on a line; pick-ups are not counted.
    Returns:
        Lines in order; together they hold every bar once. No line has one bar more than wished unless that saves a
        bar from standing alone; a bar stands alone only where its section has no other or notes are very many.
    Raises:
        ValueError: fewer than one bar a line.
    """
    if bars_a_line < 1:
        raise ValueError(f"a line needs at least one bar, not {bars_a_line}")
    return tuple(line for section in _sections(tune.bars) for line in _break_section(tune.bars, section, bars_a_line))


def _sections(bars: tuple[Bar, ...]) -> Iterator[Line]:
    first = 0
    for index in range(1, len(bars)):
        led_to = all(bar.is_pickup for bar in bars[first:index])  # by a pick-up: |: may stand after it
        if not led_to and _begins_section(bars[index - 1], bars[index]):
            yield Line(first, index)
            first = index
    yield Line(first, len(bars))


def _begins_section(before: Bar, bar: Bar) -> bool:
    if bar.part or bar.opens_repeat:
        return True
    if bar.ending:  # all endings stay in the section that they end
        return before.ends_section and not before.ending
    return before.ends_section or bool(before.ending)


def _break_section(bars: tuple[Bar, ...], section: Line, bars_a_line: int) -> Iterator[Line]:
    """Lines of one section; counted in full bars, each with the pick-ups that lead to it."""
    starts = [
        index for index in range(section.first, section.stop) if index == section.first or not bars[index - 1].is_pickup
    ]
    ends = [*starts[1:], section.stop]
    size = bars_a_line
    while size > 1 and max(_note_counts(bars, starts, ends, _sizes(len(starts), size))) > MAX_NOTES:
        size = (size + 1) // 2
    place = 0
    for count in _sizes(len(starts), size):
        yield Line(starts[place], ends[place + count - 1])
        place += count


def _note_counts(bars: tuple[Bar, ...], starts: list[int], ends: list[int], sizes: list[int]) -> Iterator[int]:
    place = 0
    for count in sizes:
        yield sum(len(bar.notes) for bar in bars[starts[place] : ends[place + count - 1]])
        place += count


def _sizes(count: int, size: int) -> list[int]:
    """Full bars on each line: as many full lines as there are, a single bar left over joins the line before.

    >>> _sizes(9, 4), _sizes(10, 4), _sizes(3, 2), _sizes(1, 4)
    ([4, 5], [4, 4, 2], [3], [1])
    """
    full, rest = divmod(count, size)
    sizes = [size] * full
    if rest == 1 and full and size > 1:
        sizes[-1] += 1
    elif rest:
        sizes.append(rest)
    return sizes
