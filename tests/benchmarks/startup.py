"""From the start of the process to the painted sample lesson, beside a bare window of Qt.

Run by hand: ``python -m tests.benchmarks.startup [ROUNDS [PLATFORM...]]``. Every round starts one process after the
other: one that shows a ``QMainWindow`` with nothing in it, and one that runs the ``bowbench`` command with the lesson
that comes with the program. The clock runs from before the process is started until the window is painted for the first
time (in our case: the page with the lesson on it) and its events are done; both tell what memory they have resident
then. Who goes first changes from round to round. Settings and data folder are new and empty, once for all rounds, and
one round that is not counted comes first, so that byte code and files are at hand as they are for every start but the
first after an installation.

Platforms: ``offscreen``, and ``xcb`` where there is a display. All times are quoted as the median of the ratios of one
round, since they depend on the machine. Goal: 2.0 at most.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

ROUNDS = 15
GOAL = 2.0
LIMIT_S = 600
TOP = Path(__file__).parents[2]
SAMPLE = Path("sample_tunes") / "tuesday_ferry.musicxml"
RUNNER = Path(__file__).absolute().with_name("start_runner.py")


ROWS = (
    ("painted", "painted", "ms", 1000),
    ("processor until then", "worked", "ms", 1000),
    ("at rest", "settled", "ms", 1000),
    ("memory resident", "resident", "MiB", 1 / 1024),
    ("memory not shared", "private", "MiB", 1 / 1024),
)


@dataclass(frozen=True)
class Start:
    """How a process started.

    Attributes:
        painted: Seconds from before it was started to the painted window.
        worked: Seconds of a processor used until then.
        resident: KiB of memory resident then.
        private: KiB of them that no other process could share.
        settled: Seconds until nothing was left to be done, as long as nobody touches anything.
    """

    painted: float
    worked: float
    resident: int
    private: int
    settled: float


def start(what: str, environment: dict[str, str], tree: Path) -> Start:
    """Start a process and wait for it."""
    begun = time.monotonic()
    done = subprocess.run(
        [sys.executable, str(RUNNER), what, str(tree / SAMPLE)],
        cwd=tree,
        env=environment,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        timeout=LIMIT_S,
        check=True,
        text=True,
    )
    told = {line.split()[0]: line.split()[1:] for line in done.stdout.splitlines()}
    at, worked, resident, private = told["painted"]
    return Start(float(at) - begun, float(worked), int(resident), int(private), float(told["settled"][0]) - begun)


def rounds(number: int, platform: str, tree: Path = TOP) -> list[tuple[Start, Start]]:
    """Pairs of a bare window's start and the program's, as it stands in a folder."""
    with tempfile.TemporaryDirectory() as home:
        places = dict.fromkeys(("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"), home)
        environment = (
            os.environ
            | places
            | {"PYTHONPATH": str(tree), "QT_QPA_PLATFORM": platform, "PYTHONPYCACHEPREFIX": str(Path(home) / "code")}
        )
        environment.pop("PYTHONDONTWRITEBYTECODE", None)  # an installed program has its byte code
        pairs = []
        for place in range(-1, number):
            names = ("bare", "bowbench") if place % 2 else ("bowbench", "bare")
            took = {name: start(name, environment, tree) for name in names}
            if place >= 0:
                pairs.append((took["bare"], took["bowbench"]))
        return pairs


def platforms() -> list[str]:
    return ["offscreen", "xcb"] if os.environ.get("DISPLAY") else ["offscreen"]


def ratio(pairs: Sequence[tuple[Start, Start]], name: str) -> tuple[float, float, float]:
    """Median, least and most of the program's figure divided by the bare window's of the same round."""
    ratios = sorted(getattr(ours, name) / getattr(bare, name) for bare, ours in pairs)
    return statistics.median(ratios), ratios[0], ratios[-1]


def main() -> None:
    number = int(sys.argv[1]) if len(sys.argv) > 1 else ROUNDS
    for platform in sys.argv[2:] or platforms():
        pairs = rounds(number, platform)
        print(f"{platform}, {number} rounds       bare window   sample lesson   ratio (least, most)")
        for words, name, unit, scale in ROWS:
            bare, ours = (
                statistics.median(getattr(start, name) for start in starts) for starts in zip(*pairs, strict=True)
            )
            middle, least, most = ratio(pairs, name)
            print(
                f"  {words:<22} {bare * scale:7.0f} {unit:<5} {ours * scale:8.0f} {unit:<5}"
                f" {middle:9.2f} ({least:.2f}, {most:.2f})"
            )
        print(f"  goal {GOAL:.1f} at most: {'met' if ratio(pairs, 'painted')[0] <= GOAL else 'MISSED'}")


if __name__ == "__main__":
    main()
