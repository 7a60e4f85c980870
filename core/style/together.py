"""Pieces of work done at the same time, in threads, while the caller keeps watch.

For work that a library does in its own code, where Python's threads do not wait for one another. Nothing depends on
which piece ends first.
"""

from __future__ import annotations

import os
from collections import deque
from collections.abc import Callable, Sequence
from concurrent.futures import CancelledError, ThreadPoolExecutor, wait
from threading import Event
from typing import TypeAlias, TypeVar

V = TypeVar("V")
Round: TypeAlias = Callable[[], None]

LOOK_S = 0.05  # the caller looks after the work so often


def done_together(pieces: Sequence[Callable[[Round], V]], watch: Callable[[int], None]) -> list[V]:
    """Do pieces of work, as many at a time as there are processors.

    Args:
        pieces: Each is called with what it calls after each of its rounds, which raises where the work was left off.
        watch: Called in the caller's thread now and then, with how many rounds were done in all; raises to leave off.
            What is being done then ends by itself with its round; nobody waits for it.
    Returns:
        What each piece returns, in their order.
    Raises:
        Exception: whatever ``watch`` or the first piece that fails raises.
    """
    left_off = Event()
    rounds: deque[None] = deque()

    def after_round() -> None:
        if left_off.is_set():
            raise CancelledError
        rounds.append(None)

    pool = ThreadPoolExecutor(min(len(pieces), _processors()))
    try:
        waiting = {pool.submit(piece, after_round): number for number, piece in enumerate(pieces)}
        results: dict[int, V] = {}
        while waiting:
            ended, _ = wait(waiting, LOOK_S, "FIRST_COMPLETED")
            watch(len(rounds))
            for future in ended:
                results[waiting.pop(future)] = future.result()
        return [results[number] for number in range(len(pieces))]
    finally:
        left_off.set()
        pool.shutdown(wait=False, cancel_futures=True)


def _processors() -> int:
    """How many this process may use."""
    try:
        return len(os.sched_getaffinity(0))
    except AttributeError:  # not on every system
        return os.cpu_count() or 1
