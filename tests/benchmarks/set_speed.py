"""How long a set takes: run by hand with ``python -m tests.benchmarks.set_speed``.

Prints, for sets of two to fourteen sample tunes, each played twice, how many checks of one tune fit into the check of
the set, the comparison of all its orders (of up to seven tunes), and the search for what mends its first finding.
"""

from __future__ import annotations

from collections.abc import Callable
from importlib.resources import files
from statistics import median
from time import perf_counter

from core.check import check
from core.reading import read_file
from core.set_check import check_set
from core.set_orders import orders
from core.set_remedies import set_remedies
from core.tune_set import Entry, TuneSet

ROUNDS = 9


def main() -> None:
    """Print one line for each size."""
    books = sorted((path for path in files("sample_tunes").iterdir() if path.name.endswith(".abc")), key=str)
    entries = [
        Entry(lesson.tune, lesson.bowings[0], 2) for path in books for lesson in read_file(path.read_bytes()).lessons
    ]
    print(f"{'tunes':>5} {'set':>6} {'orders':>7} {'remedies':>9}   (in checks of one tune, medians of {ROUNDS})")
    for count in (2, 4, 7, 14):
        told, ordered, mended = _figures(TuneSet(tuple(entries[:count])))
        print(f"{count:>5} {told:>6.1f} {ordered:>7.1f} {mended:>9.1f}")


def _figures(tune_set: TuneSet) -> tuple[float, float, float]:
    one = _median(lambda: [check(entry.tune, entry.bowing) for entry in tune_set.entries]) / len(tune_set.entries)
    findings = check_set(tune_set).findings
    told, ordered = _median(lambda: check_set(tune_set)), _median(lambda: orders(tune_set))
    mended = _median(lambda: set_remedies(tune_set, findings[0])) if findings else 0
    return told / one, ordered / one, mended / one


def _median(work: Callable[[], object]) -> float:
    work()
    times = []
    for _ in range(ROUNDS):
        began = perf_counter()
        work()
        times.append(perf_counter() - began)
    return median(times)


if __name__ == "__main__":
    main()
