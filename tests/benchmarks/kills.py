"""Kill windows that are being worked in, and look at what is left.

Run by hand: ``python -m tests.benchmarks.kills [KILLS [SECONDS [FIRST SEED]]]``. Each child process opens a lesson
with a file or a pasted one, edits it by lot every tenth of a second or so, takes edits back, saves it every now and
then, and notes each state before it goes on. Within SECONDS (8) of its first edit it is killed by SIGKILL; every other
time together with the process that writes its copies. Then:

* the saved file must be readable and hold the state that was saved last, or the one that was just being saved;
* the copy, or the saved file where that is newer, must hold a state so young that no lost edit was older than 5 s;
* what is offered at the next start must be readable.

Goal: none lost and none unreadable. Exit status 1 where it is missed.
"""

from __future__ import annotations

import hashlib
import os
import random
import select
import shutil
import signal
import sys
import tempfile
import time
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QCoreApplication, QTimer

from app.document import Document
from app.files import FileError, read_path, save_lesson, save_over
from app.imprint import Imprint
from app.recovery import Recovery
from app.recovery_copy import left_behind
from core.bowing import Bow, Bowing, fix_bow, free_bow, toggle_join_to_next, toggle_retake
from core.errors import RefusedEditError
from core.lesson import Lesson
from core.reading.abc import read_abc
from core.tune import Tune
from core.writing.musicxml import write_musicxml

AT_ONCE = 6  # children
SECONDS = 8.0
PROMISE_S = 5.0
STEP_MS = (5, 250)
SAVES, UNDOES = 0.015, 0.12  # shares of all steps
READY_S = 60.0
TUNE = "X:1\nT:Ferry in the Fog\nR:reel\nM:4/4\nL:1/8\nK:D\n|:d2fd Adfd|e2ge Bege|d2fd Adfd|egfe d2z2:|\n"


def digest(lesson: Lesson) -> str:
    """A lesson in one word."""
    return hashlib.sha256(write_musicxml(lesson).encode()).hexdigest()[:16]


# ------------------------------------------------------------------------------------------------- the child


class Hands:
    """Works in a document until the process is killed, and notes every state in a log that outlives it."""

    def __init__(self, folder: Path, seed: int) -> None:
        self._lot = random.Random(seed)
        self._judge = os.getppid()
        self._document = Document()
        self._known: Imprint | None = None
        self._log = os.open(folder / "log", os.O_WRONLY | os.O_CREAT | os.O_APPEND)
        self._path = folder / f"lesson{self._lot.choice(['.musicxml', '.mxl'])}"
        self.recovery = Recovery(self._document, lambda: self._known, folder / "copies")
        lesson = read_abc(TUNE).lessons[0]
        if self._lot.random() < 0.7:
            self._known = save_lesson(lesson, self._path)
            self._note("saved", lesson)
            self._document.open(lesson, self._path)
        else:
            self._document.open(lesson, unsaved=True)
        self._note("edit", lesson)

    def step(self) -> None:
        """Do one thing, and plan the next."""
        if os.getppid() != self._judge:  # which was ended by hand: nobody will kill us
            os._exit(0)
        document, chance = self._document, self._lot.random()
        if chance < SAVES:
            self._save()
        elif chance < SAVES + UNDOES:
            (document.stack.undo if self._lot.random() < 0.6 else document.stack.redo)()
        else:
            with suppress(RefusedEditError):
                document.edit("By lot", self._edit)
        assert document.state is not None
        self._note("edit", document.state.lesson)
        QTimer.singleShot(self._lot.randint(*STEP_MS), self.step)

    def _edit(self, tune: Tune, bowing: Bowing) -> Bowing:
        note = self._lot.choice([note.id for bar in tune.bars for note in bar.notes])
        return self._lot.choice([
            lambda: fix_bow(tune, bowing, note, self._lot.choice(list(Bow))),
            lambda: free_bow(tune, bowing, note),
            lambda: toggle_join_to_next(tune, bowing, note),
            lambda: toggle_retake(tune, bowing, note),
        ])()  # fmt: skip

    def _save(self) -> None:
        state = self._document.state
        assert state is not None
        self._note("saving", state.lesson)
        self._known = save_over(state.lesson, self._path, self._known).imprint
        self._document.mark_saved(self._path)
        self._note("saved", state.lesson)

    def _note(self, what: str, lesson: Lesson) -> None:
        os.write(self._log, f"{time.monotonic()} {what} {digest(lesson)}\n".encode())


def work(folder: Path, seed: int, ready: int) -> None:
    """What a child does; it never returns."""
    os.setsid()
    os.environ["XDG_DATA_HOME"] = str(folder / "data")
    app = QCoreApplication([])
    hands = Hands(folder, seed)
    os.write(ready, b"1")
    QTimer.singleShot(0, hands.step)
    app.exec()


# ------------------------------------------------------------------------------------------------- the judge


@dataclass(frozen=True)
class Event:
    """A line of a child's log: when (seconds), what, and the lesson then."""

    at: float
    what: str
    lesson: str


@dataclass
class Tally:
    """What was found.

    Attributes:
        kills: Children killed.
        steps: States they had noted.
        copies: Copies left behind.
        saves: Children whose file had been saved.
        faults: What must not be, in words.
        ages: Seconds between the kill and the oldest edit that it cost, a kill each; 0 where it cost none.
        parts: Unfinished files that were left beside a lesson.
    """

    kills: int = 0
    steps: int = 0
    copies: int = 0
    saves: int = 0
    faults: list[str] = field(default_factory=list)
    ages: list[float] = field(default_factory=list)
    parts: int = 0


def read_log(folder: Path) -> list[Event]:
    lines = (folder / "log").read_text().splitlines()
    return [Event(float(at), what, lesson) for at, what, lesson in (line.split() for line in lines)]


def oldest_lost(events: list[Event], found: str, killed: float) -> float | None:
    """Age at the kill, in seconds, of the first edit that a found state lacks.

    Returns:
        0 where it lacks none; None where it is no state that there ever was.
    """
    states = [event for event in events if event.what == "edit"]
    for place in range(len(states) - 1, -1, -1):
        if states[place].lesson == found:
            later = [state for state in states[place + 1 :] if state.lesson != found]
            return killed - later[0].at if later else 0.0
    return None


def judge(folder: Path, seed: int, killed: float, tally: Tally) -> None:
    """Look at what a killed child has left."""
    events = read_log(folder)
    tally.kills += 1
    tally.steps += sum(event.what == "edit" for event in events)
    tally.parts += len(list(folder.glob(".bowbench-*"))) + len(list((folder / "copies").glob(".bowbench-*")))
    found = [events[0].lesson]  # what the user began with is not lost
    saved = [event for event in events if event.what == "saved"]
    saving = [event for event in events if event.what == "saving"]
    files = [path for path in folder.glob("lesson.*") if not path.name.startswith(".")]
    if saved and not files:
        tally.faults.append(f"seed {seed}: the saved file is gone")
    for path in files:
        tally.saves += 1
        try:
            lesson = digest(read_path(path).lessons[0])
        except FileError as fault:
            tally.faults.append(f"seed {seed}: {fault}")
            continue
        if lesson not in {saved[-1].lesson if saved else "", saving[-1].lesson if saving else ""}:
            tally.faults.append(f"seed {seed}: the file holds neither the state saved last nor the one being saved")
        found.append(lesson)
    for left in left_behind(folder / "copies"):
        tally.copies += 1
        if left.lesson is None:
            tally.faults.append(f"seed {seed}: a copy cannot be read")
        else:
            found.append(digest(left.lesson))
            if left.note.title != left.lesson.tune.title:
                tally.faults.append(f"seed {seed}: a copy has lost its note")
        left.hold.let_go()
    ages = [age for lesson in found if (age := oldest_lost(events, lesson, killed)) is not None]
    tally.ages.append(min(ages))
    if min(ages) > PROMISE_S:
        tally.faults.append(f"seed {seed}: an edit of {min(ages):.1f} s before the kill is lost")


# ------------------------------------------------------------------------------------------------- the run


@dataclass
class Child:
    """A running child."""

    pid: int
    seed: int
    folder: Path
    end: float  # when it is killed, in monotonic seconds


def start(root: Path, seed: int, seconds: float) -> Child:
    """Fork a child and wait until it is at work."""
    folder = root / str(seed)
    folder.mkdir()
    reading, writing = os.pipe()
    pid = os.fork()
    if pid == 0:
        try:
            os.close(reading)
            work(folder, seed, writing)
        finally:
            os._exit(1)
    os.close(writing)
    select.select([reading], [], [], READY_S)
    ready = os.read(reading, 1)
    os.close(reading)
    assert ready == b"1", f"the child of seed {seed} did not begin"
    return Child(pid, seed, folder, time.monotonic() + random.Random(-seed).uniform(0, seconds))


def kill(child: Child, tally: Tally) -> None:
    killed = time.monotonic()
    if child.seed % 2:
        os.killpg(child.pid, signal.SIGKILL)
    else:
        os.kill(child.pid, signal.SIGKILL)
    _, status = os.waitpid(child.pid, 0)
    if not os.WIFSIGNALED(status):
        tally.faults.append(f"seed {child.seed}: the child ended by itself")
    time.sleep(0.05)  # for a writer that finishes what it was given
    judge(child.folder, child.seed, killed, tally)
    shutil.rmtree(child.folder, ignore_errors=True)


def main() -> int:
    kills = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    seconds = float(sys.argv[2]) if len(sys.argv) > 2 else SECONDS
    first = int(sys.argv[3]) if len(sys.argv) > 3 else 0
    tally = Tally()
    running: list[Child] = []
    with tempfile.TemporaryDirectory() as root:
        for seed in range(first, first + kills):
            while len(running) >= AT_ONCE:
                soonest = min(running, key=lambda child: child.end)
                time.sleep(max(0.0, soonest.end - time.monotonic()))
                running.remove(soonest)
                kill(soonest, tally)
            running.append(start(Path(root), seed, seconds))
        for child in sorted(running, key=lambda child: child.end):
            time.sleep(max(0.0, child.end - time.monotonic()))
            kill(child, tally)
    ages = sorted(tally.ages)
    print(f"{tally.kills} kills after {tally.steps} steps; {tally.saves} files and {tally.copies} copies were left")
    print(
        f"oldest edit lost with a kill: median {ages[len(ages) // 2]:.2f} s, "
        f"95 of 100 within {ages[int(0.95 * (len(ages) - 1))]:.2f} s, most {ages[-1]:.2f} s (goal {PROMISE_S:.0f} s)"
    )
    print(f"{tally.parts} unfinished files left beside lessons and copies, to be cleared by a later save")
    print(f"lost or unreadable: {len(tally.faults)} of {tally.kills} (goal 0)")
    for fault in tally.faults:
        print(" ", fault)
    return 1 if tally.faults else 0


if __name__ == "__main__":
    sys.exit(main())
