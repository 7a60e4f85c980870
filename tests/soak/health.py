"""What a process that runs for long must not gather: objects, memory, threads, open files."""

from __future__ import annotations

import gc
import os
import threading
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from tests.soak.memory import give_back, in_use, resident


@dataclass(frozen=True)
class Health:
    """What a process holds at one moment.

    Attributes:
        gestures: Done so far.
        kinds: Objects that the garbage collector knows, by the name of their type.
        resident, in_use: KiB of memory, as in ``tests.soak.memory``.
        threads: Of the process.
        files: Descriptors open.
        qt: ``QObject``s below the windows.
        windows: Top-level widgets.
    """

    gestures: int
    kinds: Counter[str]
    resident: int
    in_use: int
    threads: int
    files: int
    qt: int
    windows: int

    @property
    def objects(self) -> int:
        return sum(self.kinds.values())


def examine(gestures: int) -> Health:
    """Look at this process; whatever can be collected is, and memory that is free is given back to the system."""
    for _ in range(3):
        gc.collect()
    give_back()
    windows = QApplication.topLevelWidgets()
    kinds = Counter(f"{type(thing).__module__}.{type(thing).__qualname__}" for thing in gc.get_objects())
    return Health(
        gestures,
        kinds,
        resident(),
        in_use(),
        max(threading.active_count(), len(os.listdir("/proc/self/task"))),
        len(os.listdir("/proc/self/fd")),
        sum(1 + len(window.findChildren(QObject)) for window in windows),
        len(windows),
    )


def objects() -> int:
    """How many objects the garbage collector knows that are in use."""
    gc.collect()
    return len(gc.get_objects())


def slope(points: Sequence[tuple[float, float]]) -> float:
    """The slope of the straight line that comes closest to points (least squares).

    >>> slope([(0, 1), (1, 3), (2, 5)])
    2.0
    """
    count = len(points)
    mean_x, mean_y = sum(x for x, _ in points) / count, sum(y for _, y in points) / count
    across = sum((x - mean_x) ** 2 for x, _ in points)
    return sum((x - mean_x) * (y - mean_y) for x, y in points) / across


def growing(states: Sequence[Health], at_least: float) -> list[tuple[str, float]]:
    """Types of which more are gathered all the time, the worst first, with how many a thousand gestures.

    Args:
        states: In order.
        at_least: Objects a thousand gestures; slower growth is not told.
    """
    names = set().union(*(state.kinds for state in states))
    rates = ((name, 1000 * slope([(state.gestures, state.kinds[name]) for state in states])) for name in names)
    return sorted(((name, rate) for name, rate in rates if rate >= at_least), key=lambda pair: -pair[1])
