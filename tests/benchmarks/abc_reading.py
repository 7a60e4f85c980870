"""Time our ABC reader on the three collections inside music21: ``python -m tests.benchmarks.abc_reading``.

Prints the median and the slowest tune in milliseconds of processor time, per collection, and the time for whole files.
"""

from __future__ import annotations

import time
from statistics import median, quantiles

from core.reading.abc import decode, read_abc
from tests.outside.abc_collections import CORPUS, FOLDERS, Source, sources

ROUNDS = 3  # the best of them counts, since other work on the machine only ever slows


def tune_times(tunes: list[Source]) -> list[float]:
    """Milliseconds for each tune, the best of some rounds."""
    best = [float("inf")] * len(tunes)
    for _ in range(ROUNDS):
        for place, tune in enumerate(tunes):
            started = time.perf_counter()
            read_abc(tune.text)
            best[place] = min(best[place], (time.perf_counter() - started) * 1000)
    return best


def main() -> None:
    """Print the table."""
    print(f"{'collection':14} {'tunes':>6} {'median ms':>10} {'p95 ms':>8} {'max ms':>8} {'slowest':30} {'files s':>8}")
    everything: list[float] = []
    for folder in FOLDERS:
        tunes = sources(folder)
        times = tune_times(tunes)
        everything += times
        slowest = tunes[times.index(max(times))].place.partition("/")[2]
        started = time.process_time()
        for path in (CORPUS / folder).glob("*.abc"):
            read_abc(decode(path.read_bytes()))
        seconds = time.process_time() - started
        print(
            f"{folder:14} {len(tunes):6} {median(times):10.2f} {quantiles(times, n=20)[18]:8.2f} {max(times):8.2f} "
            f"{slowest:30} {seconds:8.2f}"
        )
    print(f"{'all':14} {len(everything):6} {median(everything):10.2f} {quantiles(everything, n=20)[18]:8.2f}")


if __name__ == "__main__":
    main()
