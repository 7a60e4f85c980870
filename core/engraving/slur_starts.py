"""Begins slurs beside the bow sign of their first note where that has two rows.

The engraver begins a slur over all that stands on its first note: over two rows of signs, of which the upper one is
often empty, it would hang in the air.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from core.engraving.glyphs import Command
from core.engraving.picture import STAFF_SPACE, BowSlot, Box, Curve, Outline, slot_height, slot_width

BESIDE = 0.12 * STAFF_SPACE  # between a sign and the slur beside it
CLEAR = 0.3 * STAFF_SPACE  # between a slur and the notes under it
SHORTEST = 1.2 * STAFF_SPACE  # a slur is not made shorter
_STEPS = 12  # of each curve that are looked at


def start_beside(
    curve: Curve, shape: Outline, slots: Mapping[str, BowSlot], boxes: Mapping[str, Box]
) -> Outline | None:
    """Pull the start of a slur down beside the first row of signs, keeping its end.

    Args:
        curve: The slur.
        shape: As the engraver drew it.
        slots: Bow slots of the line, by note id.
        boxes: Boxes of its notes and rests, by note id, from left to right.
    Returns:
        The slur as it should be drawn; None where it can stay as it is or would meet a note.
    """
    slot = slots.get(curve.start)
    begin, end = _ends(shape)
    if slot is None or slot.rows < 2 or begin[1] > slot.foot(1):
        return None
    x = slot.x + slot_width(slot) / 2 + BESIDE
    y = slot.foot(0) - slot_height(slot)
    if end[0] - x < SHORTEST:
        return None
    whole, rise = end[0] - begin[0], end[1] - begin[1]
    scale = (end[0] - x) / whole

    def moved(point: tuple[float, float]) -> tuple[float, float]:
        """Where a point goes: the slur becomes shorter, and half as much flatter."""
        along = (point[0] - begin[0]) / whole
        arch = point[1] - (begin[1] + along * rise)
        return x + along * whole * scale, y + along * (end[1] - y) + arch * (1 + scale) / 2

    commands = tuple(
        Command(
            letter, tuple(value for at in range(0, len(numbers), 2) for value in moved((numbers[at], numbers[at + 1])))
        )
        for letter, numbers in shape.commands
    )
    pulled = replace(shape, commands=commands)
    inner = [
        box for note_id, box in boxes.items() if note_id not in (curve.start, curve.end) and x < box.right < end[0]
    ]
    if any(box.left < px < box.right and py > box.top - CLEAR for px, py in _points(pulled) for box in inner):
        return None
    return pulled


def _ends(shape: Outline) -> tuple[tuple[float, float], tuple[float, float]]:
    """The leftmost and the rightmost point at which its curves meet."""
    corners = [(numbers[-2], numbers[-1]) for _, numbers in shape.commands if numbers]
    return min(corners), max(corners)


def _points(shape: Outline) -> Iterator[tuple[float, float]]:
    """Points along its curves."""
    here = (0.0, 0.0)
    for letter, numbers in shape.commands:
        if letter == "C":
            x1, y1, x2, y2, x3, y3 = numbers
            for step in range(_STEPS + 1):
                t = step / _STEPS
                a, b, c, d = (1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3
                yield a * here[0] + b * x1 + c * x2 + d * x3, a * here[1] + b * y1 + c * y2 + d * y3
        if numbers:
            here = (numbers[-2], numbers[-1])
