"""How long a check takes: run by hand with ``python -m tests.benchmarks.check_speed``.

Prints medians in milliseconds for tunes of 32 to 512 bars, each played three times: after an edit (the tune is known
already) and for a tune seen for the first time. Goal: 32 bars after an edit under 5 ms, then about linear.
"""

from __future__ import annotations

from dataclasses import replace
from statistics import median
from time import perf_counter

from core.bowing import Bowing, toggle_join_to_next
from core.check import check
from core.order import playing_order
from core.tune import Tune
from tests.core.builders import bowed

ROUNDS = 41
BARS = ("ABcd efga|", "bcde (fg)a2|", "ABcd vefga|", "c2Bc dedc|")


def main() -> None:
    """Print one line for each length."""
    print(f"{'bars':>5} {'visits':>7} {'notes':>6} {'after an edit':>14} {'new tune':>9}   (medians, ms)")
    for count in (32, 128, 512):
        tune, bowing = bowed("|:" + "".join(BARS[(k + k // 8) % 4] for k in range(count))[:-1] + ":|3")
        edited = toggle_join_to_next(tune, bowing, "b0n1")
        visits = len(playing_order(tune))
        known = _median([(tune, edited)] * ROUNDS)
        new = _median([(replace(tune), edited) for _ in range(ROUNDS)])
        print(f"{count:>5} {visits:>7} {len(tune.sequence):>6} {known:>14.2f} {new:>9.2f}")


def _median(cases: list[tuple[Tune, Bowing]]) -> float:
    times = []
    for tune, bowing in cases:
        began = perf_counter()
        check(tune, bowing).worked_out()
        times.append(1000 * (perf_counter() - began))
    return median(times)


if __name__ == "__main__":
    main()
