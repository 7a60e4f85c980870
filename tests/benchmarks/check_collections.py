"""What a check costs beside reading: run by hand with ``python -m tests.benchmarks.check_collections``.

Reads and checks the 4,248 tunes of three open collections in one run, each tune new to the check, and prints the time
of both, the tune whose check takes longest, how often each rule speaks, and how long the search for remedies takes.
Goal: a check costs no more than a quarter of reading; it raises nowhere.
"""

from __future__ import annotations

import gc
import sys
from collections import Counter
from statistics import median
from time import perf_counter

from core.check import Severity
from core.lesson_check import check_lesson
from core.reading.abc import read_abc
from core.remedies import TURNING, remedies
from tests.outside.abc_collections import FOLDERS, sources

SEARCHED_EVERY = 40  # tunes


def main() -> None:
    """Print the figures."""
    found = sources(*(sys.argv[1:] or FOLDERS))
    gc.collect()
    gc.freeze()  # what was loaded before is not part of the measure
    reading, checking, searching = [], [], []
    findings: Counter[str] = Counter()
    tunes: Counter[str] = Counter()
    loud: list[int] = []
    for index, source in enumerate(found):
        began = perf_counter()
        lessons = read_abc(source.text).lessons
        read = perf_counter()
        reports = [(lesson, check_lesson(lesson, lesson.bowings[0]).worked_out()) for lesson in lessons]
        checked = perf_counter()
        reading.append(1000 * (read - began))
        checking.append(1000 * (checked - read))
        for lesson, report in reports:
            rules = [finding.rule for finding in report.findings]
            findings.update(rules)
            tunes.update(set(rules))
            loud.append(sum(finding.severity is not Severity.NOTE for finding in report.findings))
            for finding in report.findings:
                if index % SEARCHED_EVERY == 0 and finding.rule in TURNING:
                    began = perf_counter()
                    remedies(lesson.tune, lesson.bowings[0], finding)
                    searching.append(1000 * (perf_counter() - began))
    worst = max(range(len(found)), key=checking.__getitem__)
    print(f"{len(found)} tunes: reading {sum(reading):.0f} ms, checking {sum(checking):.0f} ms", end=" ")
    print(f"({sum(checking) / sum(reading):.2f} of reading; medians {median(reading):.2f} and {median(checking):.2f})")
    print(f"longest check: {checking[worst]:.1f} ms (reading {reading[worst]:.1f} ms), {found[worst].place}")
    print(f"warnings and faults a tune: median {median(loud)}, most {max(loud)}")
    print(f"search for remedies: median {median(searching):.0f} ms, longest {max(searching):.0f} ms, {len(searching)}")
    for rule, count in findings.most_common():
        print(f"{count:6} {rule} in {tunes[rule]} tunes")


if __name__ == "__main__":
    main()
