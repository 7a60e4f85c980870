"""The page of speeds in DEVELOPERS.md, as one table: what a user waits for, beside what nothing could be faster than.

Run by hand: ``python -m tests.benchmarks.speed_page [OLDER]``. Every row is a wait divided by a named floor that is
timed in the same round; the table shows the median of these ratios, since a busy machine slows both. OLDER is the
folder of an older checkout: it is measured by turns with this one, and its ratios stand in a column of their own.

The floors: a window of Qt with nothing in it; reading a file and doing nothing with it; the engraver alone, loading and
drawing the whole tune of 32 bars anew with no work of ours.
"""

from __future__ import annotations

import json
import os
import random
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

TOP = Path(__file__).parents[2]
TURNS = 3  # processes by turns, each with its own rounds
ROUNDS, CLICKS = 6, 8
STARTS = 9
TUNES = 200  # on the shelf
LIMIT_S = 600
ROWS = {
    "start": ("start, to the painted sample lesson", "bare window of Qt", "startup"),
    "start on a screen": ("the same under X11", "bare window of Qt", "startup"),
    "memory": ("memory with the sample lesson", "bare window of Qt", "startup"),
    "open": ("open a tune, to its painted page", "engraver alone", "click_to_paint"),
    "open file": ("the same from its bytes", "reading alone", "click_to_paint"),
    "edit": ("click, to the painted page and list", "engraver alone", "click_to_paint"),
    "plan": ("plan, to the painted preview", "engraver alone", "plan_to_preview"),
    "print": ("a sheet as PDF", "engraver alone", "speed_page"),
    "shelf": (f"{TUNES} tunes onto the shelf", "reading alone", "shelf"),
    "find": (f"find among {TUNES} tunes", "reading one of them", "shelf"),
}  # what is waited for, the floor, and the benchmark that tells more

Ratios = dict[str, list[float]]


# ------------------------------------------------------------------------------------------------- in a process


def measure() -> Ratios:
    """All ratios but those of the start, from the tree that is imported."""
    from PySide6.QtWidgets import QApplication

    from app.main_window import MainWindow
    from app.settings import Settings
    from app.window import spare_pauses
    from core.reading import read_file
    from tests.benchmarks.click_to_paint import REST_MS, TUNE, time_clicks, time_full_drawing

    app = QApplication([])
    found: Ratios = {name: [] for name in ("open", "open file", "edit", "plan", "print", "shelf", "find")}
    with tempfile.TemporaryDirectory() as home:
        os.environ["XDG_DATA_HOME"] = home
        window = MainWindow(Settings(Path(home) / "settings.ini"))
        window.resize(1366, 768)
        window.show()
        app.processEvents()
        for number in range(-1, ROUNDS):
            text = TUNE.replace("Bars", f"Bars {number}").encode()  # nothing of it is kept from before
            began = time.perf_counter()
            lesson = read_file(text).lessons[0]
            reading = time.perf_counter() - began
            began = time.perf_counter()
            window.document.open(lesson)
            app.processEvents()
            opening = time.perf_counter() - began
            _until(app, lambda: not window.page.waits)
            if number < 0:
                spare_pauses()
                continue
            engraver = statistics.median(time_full_drawing(window, 3)) / 1000
            clicks = statistics.median(time_clicks(app, window, CLICKS, REST_MS)) / 1000
            began = time.perf_counter()
            window.actions_by_name["plan"].trigger()
            _until(app, lambda: window.page.plan is not None)
            app.processEvents()
            planning = time.perf_counter() - began
            window.actions_by_name["plan_drop"].trigger()
            window.tabs.choose(window.side_list)  # clicks are painted there too
            printing = _time_print(lesson, Path(home) / "sheet.pdf")
            for name, ratio in {
                "open": opening / engraver,
                "open file": (reading + opening) / reading,
                "edit": clicks / engraver,
                "plan": planning / engraver,
                "print": printing / engraver,
            }.items():
                found[name].append(ratio)
        window.document.stack.setClean()
        window.close()
        for _ in range(ROUNDS):
            found["shelf"].append(_time_shelf(found["find"]))
    return found


def _until(app: object, condition: Callable[[], bool]) -> None:
    end = time.monotonic() + LIMIT_S
    while not condition():
        app.processEvents()
        if time.monotonic() > end:
            raise TimeoutError("what was waited for did not come")


def _time_print(lesson: object, path: Path) -> float:
    from app.printing import write_sheet
    from core.sheet_plan import SheetPlan

    began = time.perf_counter()
    write_sheet([lesson], SheetPlan(bowings=(lesson.bowings[0].name,)), path)
    return time.perf_counter() - began


def _time_shelf(finds: list[float]) -> float:
    """How long a scan takes as a multiple of reading alone; adds what a search takes beside reading one tune."""
    from core.reading import read_file
    from core.shelf.catalogue import Catalogue
    from core.shelf.query import Query
    from core.shelf.scan import add_places, scan
    from core.shelf.search import find

    lot = random.Random(5)
    with tempfile.TemporaryDirectory() as home:
        folder = Path(home) / "tunes"
        folder.mkdir()
        for number in range(TUNES):
            bars = "|".join("".join(lot.choice("DEFGABcdefg") for _ in range(8)) for _ in range(16))
            title = " ".join(lot.choices(("Ferry", "Gate", "Kettle", "Weir", "Lantern", "Goose"), k=3))
            (folder / f"{number}.abc").write_text(f"X:{number}\nT:{title} {number}\nM:4/4\nL:1/8\nK:D\n{bars}|\n")
        began = time.perf_counter()
        for path in folder.iterdir():
            read_file(path.read_bytes())
        alone = time.perf_counter() - began
        catalogue = Catalogue(Path(home) / "shelf.sqlite")
        began = time.perf_counter()
        add_places(catalogue, [folder])
        scan(catalogue)
        scanning = time.perf_counter() - began
        for words in ("ferry", "gate ket", "goose lantern", "w"):
            began = time.perf_counter()
            find(catalogue, Query(words=words), 100)
            finds.append((time.perf_counter() - began) / (alone / TUNES))
        catalogue.close()
    return scanning / alone


# ------------------------------------------------------------------------------------------------- the table


def measure_tree(tree: Path) -> Ratios:
    """The same by a process of its own, from any tree."""
    with tempfile.TemporaryDirectory() as home:
        places = dict.fromkeys(("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"), home)
        told = subprocess.run(
            [sys.executable, str(Path(__file__).absolute()), "--measure"],
            cwd=tree, env=os.environ | places | {"PYTHONPATH": str(tree)}, stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL, check=True, text=True,
        )  # fmt: skip
    return json.loads(told.stdout.splitlines()[-1])


def measure_starts(trees: Sequence[Path]) -> list[Ratios]:
    """Ratios of the start for each tree, by turns."""
    from tests.benchmarks.startup import rounds

    found: list[Ratios] = [{} for _ in trees]
    platforms = {"start": "offscreen"} | ({"start on a screen": "xcb"} if os.environ.get("DISPLAY") else {})
    for name, platform in platforms.items():
        for tree, ratios in zip(trees, found, strict=True):
            pairs = rounds(STARTS, platform, tree)
            ratios[name] = [ours.painted / bare.painted for bare, ours in pairs]
            ratios.setdefault("memory", []).extend(ours.resident / bare.resident for bare, ours in pairs)
    return found


def main() -> None:
    if "--measure" in sys.argv:
        print(json.dumps(measure()))
        return
    trees = [*(Path(name).absolute() for name in sys.argv[1:2]), TOP]
    found = measure_starts(trees)
    for _ in range(TURNS):
        for tree, ratios in zip(trees, found, strict=True):
            for name, more in measure_tree(tree).items():
                ratios.setdefault(name, []).extend(more)
    names = ("before", "now")[-len(trees) :]
    print(f"| what is waited for | divided by | {' | '.join(names)} | more by `python -m tests.benchmarks.` |")
    print(f"| --- | --- | {'---: | ' * len(trees)}--- |")
    for name, (what, floor, benchmark) in ROWS.items():
        if name in found[-1]:
            figures = " | ".join(f"{statistics.median(ratios[name]):.2g}" for ratios in found)
            print(f"| {what} | {floor} | {figures} | `{benchmark}` |")


if __name__ == "__main__":
    main()
