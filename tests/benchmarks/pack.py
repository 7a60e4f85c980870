"""Time a pack of many lessons: ``python -m tests.benchmarks.pack [lessons] [folder]``.

Tunes of the collections inside music21, every other one bowed by the planner and the rest as written, are packed into
new folders by one process and by two. Told are wall-clock seconds a lesson and their ratio, the processor time of a
lesson, the largest memory of any worker beside that after its first lessons, and what packing again costs when nothing
is missing. At last a packing is killed at half and made whole: every file that stands under its own name then has to be
the file of a pack that was never killed.
"""

from __future__ import annotations

import json
import os
import random
import resource
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from pypdf import PdfReader

from app.pack_folder import MANIFEST
from core.lesson import Lesson
from core.planner import RefusedPlanError, work_out_plan
from core.reading.abc import decode, read_abc
from core.writing.musicxml import write_musicxml
from tests.outside.abc_collections import CORPUS, FOLDERS

TOP = Path(__file__).resolve().parents[2]
LESSONS = 200


def make_lessons(count: int, folder: Path) -> None:
    """Write lessons, one to a file; the same each time."""
    books = sorted(path for name in FOLDERS for path in (CORPUS / name).glob("*.abc"))
    chance = random.Random(1883)
    chance.shuffle(books)
    made = 0
    for book in books:
        found = [lesson for lesson in read_abc(decode(book.read_bytes())).lessons if len(lesson.tune.bars) > 7]
        for lesson in chance.sample(found, min(len(found), 20)):
            if made % 2 and (planned := _planned(lesson)) is not None:
                lesson = planned
            (folder / f"{made:03}.musicxml").write_text(write_musicxml(lesson), "utf-8")
            made += 1
            if made == count:
                return


def _planned(lesson: Lesson) -> Lesson | None:
    try:
        plan = work_out_plan(lesson.tune, lesson.bowings[0])
    except RefusedPlanError:
        return None
    return Lesson(lesson.tune, (plan.bowing,))


def command(folder: Path, out: Path, jobs: int) -> list[str]:
    """The words of a packing."""
    return [sys.executable, "-m", "app", "pack", str(folder), "--out", str(out), "--jobs", str(jobs)]


class Memory:
    """Resident memory of a process and its children, from /proc."""

    def __init__(self) -> None:
        self.peaks: dict[int, int] = {}

    def look(self, parent: int) -> None:
        """Take note of what is used now, in KB."""
        try:
            children = Path(f"/proc/{parent}/task/{parent}/children").read_text().split()
        except OSError:
            return
        for pid in (parent, *map(int, children)):
            try:
                lines = Path(f"/proc/{pid}/status").read_text().splitlines()
            except OSError:
                continue
            for line in lines:
                if line.startswith("VmHWM"):
                    self.peaks[pid] = int(line.split()[1])


def recorded(out: Path) -> int:
    """Lessons that the manifest names."""
    try:
        return len(json.loads((out / MANIFEST).read_text("utf-8"))["lessons"])
    except FileNotFoundError:
        return 0


def pack(folder: Path, out: Path, jobs: int, count: int) -> tuple[float, float, str]:
    """Pack and give wall-clock seconds, processor seconds, and a line about memory."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    began = time.monotonic()
    run = subprocess.Popen(command(folder, out, jobs), cwd=TOP, stdout=subprocess.DEVNULL)
    memory = Memory()
    early = 0
    while run.poll() is None:
        memory.look(run.pid)
        workers = [kb for pid, kb in memory.peaks.items() if pid != run.pid]
        if not early and workers and recorded(out) >= min(20, count // 2):
            early = max(workers)
        time.sleep(0.1)
    seconds = time.monotonic() - began
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    workers = [kb for pid, kb in memory.peaks.items() if pid != run.pid]
    line = (
        f"workers {max(workers, default=0) / 1024:.0f} MB at most, {early / 1024:.0f} MB after the first lessons; "
        f"the packing process {memory.peaks.get(run.pid, 0) / 1024:.0f} MB"
    )
    used = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return seconds, used, line


def otherwise(out: Path, whole: Path) -> list[str]:
    """Files of a pack that are none, or other ones, in a whole pack of the same lessons; hidden ones left aside."""
    files = [path.relative_to(out) for path in out.rglob("*") if path.is_file() and not path.name.startswith(".")]
    return [
        str(path) for path in files
        if path.suffix not in (".zip", ".html")  # they carry the name of the pack
        and not ((whole / path).is_file() and _content(whole / path) == _content(out / path))
    ]  # fmt: skip


def _content(path: Path) -> object:
    """What has to be the same; a PDF tells when it was made, so it is read."""
    data = path.read_bytes()
    if path.suffix != ".pdf":
        return data
    if not data.rstrip().endswith(b"%%EOF"):
        return None
    return [page.extract_text() for page in PdfReader(path).pages]


def kill_at_half(folder: Path, out: Path, count: int, whole: Path) -> str:
    """Kill a packing when half is made, make the rest, and say what was found."""
    run = subprocess.Popen(command(folder, out, 2), cwd=TOP, stdout=subprocess.DEVNULL, start_new_session=True)
    while recorded(out) < count // 2 and run.poll() is None:
        time.sleep(0.05)
    os.killpg(run.pid, signal.SIGKILL)
    run.wait()
    made = recorded(out)
    parts = len(list(out.rglob(".*.part")))
    torn = otherwise(out, whole)
    done = subprocess.run(command(folder, out, 2), cwd=TOP, capture_output=True, text=True, check=False)
    left = len(list(out.rglob(".*.part")))
    return (
        f"killed with {made} made and {parts} files under way, {len(torn)} files otherwise than in a whole pack; then "
        f"{done.stdout.strip()} (status {done.returncode}), {left} under way, {len(otherwise(out, whole))} otherwise, "
        f"{recorded(out)} lessons" + "".join(f"\n  {name}" for name in torn)
    )


def main() -> None:
    """Run and tell."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else LESSONS
    with tempfile.TemporaryDirectory(dir=sys.argv[2] if len(sys.argv) > 2 else None) as work:
        folder = Path(work) / "lessons"
        folder.mkdir()
        make_lessons(count, folder)
        print(f"{count} lessons")
        took = {}
        for jobs in (1, 2):
            took[jobs], used, line = pack(folder, Path(work) / f"pack {jobs}", jobs, count)
            print(f"{jobs} at a time: {took[jobs]:.1f} s, {took[jobs] / count * 1000:.0f} ms a lesson; "
                  f"processor {used / count * 1000:.0f} ms a lesson; {line}")  # fmt: skip
        print(f"two at a time take {took[2] / took[1]:.2f} of the time of one")
        again, used, _ = pack(folder, Path(work) / "pack 2", 2, count)
        print(f"again, nothing missing: {again:.1f} s, processor {used / count * 1000:.1f} ms a lesson")
        print(kill_at_half(folder, Path(work) / "pack 3", count, Path(work) / "pack 2"))


if __name__ == "__main__":
    main()
