"""Feed a reader with input made by lot, in processes of their own, and keep whatever it stumbles over.

    python -m tests.fuzz READER COUNT [--seed N] [--first NUMBER] [--jobs N] [--keep FOLDER]
    python -m tests.fuzz READER --replay FILE         feed one kept file again

READER is one of ``tests.fuzz.readers.READERS``, or ``all``. An input is known by its reader, seed and number and is
made anew from these; one that fails is kept in FOLDER with what was raised. A hang is an input that takes longer than
``HANG_S`` of the processor; memory is capped at ``CAP_MB`` above what a process takes before the first input. A run
that is ended by hand (Ctrl+C, or SIGTERM) tells what came of the inputs until then. Exit status 1 where anything
failed.
"""

from __future__ import annotations

import argparse
import signal
import sys
import tempfile
from pathlib import Path

from tests.fuzz.readers import READERS
from tests.fuzz.running import replay, run


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m tests.fuzz")
    parser.add_argument("reader", choices=(*READERS, "all"))
    parser.add_argument("count", nargs="?", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--first", type=int, default=0, help="number of the first input")
    parser.add_argument("--jobs", type=int, default=1)
    parser.add_argument("--keep", type=Path, default=Path(tempfile.gettempdir()) / "bowbench-fuzz")
    parser.add_argument("--replay", type=Path)
    options = parser.parse_args()
    signal.signal(signal.SIGTERM, signal.default_int_handler)
    if options.replay:
        print(replay(options.reader, options.replay))
        return 0
    failed = False
    for name in READERS if options.reader == "all" else (options.reader,):
        report = run(name, options.count, options.seed, options.first, options.jobs, options.keep)
        print(report, flush=True)
        failed = failed or report.failures > 0
    return int(failed)


if __name__ == "__main__":
    sys.exit(main())
