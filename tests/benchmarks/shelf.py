"""Time the shelf on the three collections inside music21: ``python -m tests.benchmarks.shelf [copies]``.

Three things, in one run: how long the shelf takes to read all tunes beside the readers alone, on the same files and by
turns (the ratio is what counts); how long searches take that somebody types letter by letter; and what it costs in
memory and on the disk. With ``copies`` the collections stand on the shelf that many times.
"""

from __future__ import annotations

import random
import resource
import shutil
import sys
import tempfile
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from statistics import median, quantiles

from core.reading import read_file
from core.shelf.catalogue import Catalogue
from core.shelf.query import Query
from core.shelf.remarks import STATUSES, change_tags, set_status
from core.shelf.scan import add_places, scan
from core.shelf.search import choices, count, find
from tests.outside.abc_collections import CORPUS, FOLDERS

ROUNDS = 3  # the least of each counts, since other work on the machine only ever slows
TYPED = 60  # titles typed letter by letter
ROWS = 1000  # of a list, as the window asks for them
GOAL_MS = 50


def seconds(work: Callable[[], object]) -> float:
    """Processor time of some work, of this process."""
    started = time.process_time()
    work()
    return time.process_time() - started


def read_all(folder: Path) -> None:
    """Read every file as the shelf does, and keep nothing."""
    for path in sorted(folder.rglob("*.abc")):
        read_file(path.read_bytes())


def fill(path: Path, folder: Path) -> None:
    """Build a catalogue over a folder."""
    for ending in ("", "-wal", "-shm", ".remarks"):
        path.with_name(path.name + ending).unlink(missing_ok=True)
    with Catalogue(path) as catalogue:
        add_places(catalogue, [folder])
        scan(catalogue)


def queries(catalogue: Catalogue) -> dict[str, list[Query]]:
    """What is asked, by kind; the same each time."""
    chance = random.Random(1883)
    entries = find(catalogue).entries
    chosen = chance.sample(entries, TYPED)
    stock = choices(catalogue)
    letters = [entry.notes[: chance.randint(3, 6)] for entry in chosen if entry.notes]
    contours = ["".join(chance.choice("uds") for _ in range(length)) for length in range(1, 9) for _ in range(6)]
    return {
        "words, letter by letter": [
            Query(entry.title[:stop]) for entry in chosen for stop in range(1, min(len(entry.title), 8) + 1)
        ],
        "dance, key, metre": [
            Query(dance=dance, key=key.replace("no key", "none"), meter=meter)
            for dance in ("", *stock.dances[:6]) for key in ("", *stock.keys[:5]) for meter in ("", *stock.meters[:3])
        ],
        "note names": [Query(notes=names) for names in letters],
        "note names in any key": [Query(notes=names, any_key=True) for names in letters],
        "contour": [Query(notes=contour) for contour in contours],
        "status, tag, bowing": [
            *(Query(status=status) for status in STATUSES), Query(tags=("class",)), Query(bowing="written"),
            Query("the", dance="reel", status="ready", order="opened"),
        ],
    }  # fmt: skip


def times_ms(catalogue: Catalogue, asked: list[Query]) -> list[float]:
    """Processor time of each search, the best of some rounds."""
    best = [float("inf")] * len(asked)
    for _ in range(ROUNDS):
        for place, query in enumerate(asked):
            best[place] = min(best[place], seconds(partial(find, catalogue, query, ROWS)) * 1000)
    return best


def show(kind: str, times: list[float]) -> None:
    """Print a row of the table of searches."""
    p95 = quantiles(times, n=20)[18]
    print(f"{kind:26} {len(times):6} {median(times):10.2f} {p95:8.2f} {max(times):8.2f}")


def main() -> None:
    """Print the tables."""
    copies = int(sys.argv[1]) if len(sys.argv) > 1 else 1
    with tempfile.TemporaryDirectory() as scratch:
        folder, path = Path(scratch) / "music", Path(scratch) / "shelf.db"
        for number in range(copies):
            for name in FOLDERS:
                shutil.copytree(CORPUS / name, folder / str(number) / name)
        alone, whole = [], []
        for _ in range(ROUNDS if copies == 1 else 1):
            alone.append(seconds(lambda: read_all(folder)))
            whole.append(seconds(lambda: fill(path, folder)))
        with Catalogue(path) as catalogue:
            again = seconds(lambda: scan(catalogue))
            tunes = count(catalogue)
            for tune in range(1, tunes, 7):
                set_status(catalogue, tune, STATUSES[tune % len(STATUSES)])
                change_tags(catalogue, tune, ["class"])
            opening = seconds(lambda: Catalogue(path).close())
            best, ratio = min(whole), min(whole) / min(alone)
            print(f"{tunes} tunes: reading alone {min(alone):.2f} s of processor time, with the shelf {best:.2f} s")
            print(f"ratio {ratio:.2f}; scan again {again * 1000:.0f} ms; open {opening * 1000:.0f} ms")
            print(f"\n{'searches':26} {'asked':>6} {'median ms':>10} {'p95 ms':>8} {'max ms':>8}")
            everything: list[float] = []
            for kind, asked in queries(catalogue).items():
                found = times_ms(catalogue, asked)
                everything += found
                show(kind, found)
            show("all", everything)
            print(f"median under {GOAL_MS} ms: {'yes' if median(everything) < GOAL_MS else 'NO'}")
        on_disk = sum(file.stat().st_size for file in Path(scratch).glob("shelf.db*"))
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"\n{on_disk / 2**20:.1f} MB on the disk, {on_disk / tunes / 1024:.1f} kB a tune; {peak:.0f} MB of memory")


if __name__ == "__main__":
    main()
