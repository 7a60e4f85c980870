"""What carrying on costs: run by hand with ``python -m tests.benchmarks.carry_on [TUNES]``.

Reads the style that comes with the program, then carries on from the first four bars of tunes of the fiddle book of
1883, each read afresh so that nothing is at hand: all of it, and the share of reading the tune, of asking the style and
of planning. Then learns a style from as many tunes. Times are process times; goals: 150 ms for a proposal after the
first, seconds for learning.
"""

from __future__ import annotations

import sys
from dataclasses import replace
from statistics import median
from time import process_time

from core.accent_plan import AccentPlan, PlanKind
from core.style.carry_on import carry_on, decode
from core.style.learning import example, learn
from core.style.style import book_of_1883, facts, log_odds, marks_of, say
from tests.outside.book_of_1883 import all_tunes, tune
from tests.outside.style_by_1883 import FEWEST_SLURS, slurs


def main() -> None:
    """Print the times."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    names = [name for name, each in all_tunes().items() if slurs(*each) >= FEWEST_SLURS][:: max(1, 279 // count)]
    began = process_time()
    style = book_of_1883()
    print(f"the style read: {1000 * (process_time() - began):.0f} ms")
    times: dict[str, list[float]] = {"whole": [], "reading": [], "asking": [], "planning": []}
    for name in names:
        written, printed = tune(name)
        bowing = replace(printed, accents=AccentPlan(PlanKind.NONE))
        given = frozenset(range(4))
        began = process_time()
        carry_on(written, bowing, given, style)
        times["whole"].append(process_time() - began)
        written, _ = tune(name)
        began = process_time()
        read = facts(written)
        times["reading"].append(process_time() - began)
        began = process_time()
        say(style, read, marks_of(read, bowing, given))
        times["asking"].append(process_time() - began)
        odds = log_odds(style, written, bowing, given)
        began = process_time()
        decode(written, bowing, given, odds)
        times["planning"].append(process_time() - began)
    for what, taken in times.items():
        first, *later = taken
        worst = f"p95 {1000 * sorted(later)[int(0.95 * len(later))]:.1f}, most {1000 * max(later):.1f}"
        print(
            f"{what:9} first {1000 * first:5.0f} ms, then median {1000 * median(later):5.1f}, "
            f"{worst} ({len(later)} tunes)"
        )
    began = process_time()
    shown = [example(*tune(name)) for name in names]
    read_in = process_time() - began
    began = process_time()
    learn(shown, "Benchmark")
    print(f"{len(shown)} tunes read in {read_in:.1f} s, learned from in {process_time() - began:.1f} s")


if __name__ == "__main__":
    main()
