"""Writes recovery copies in a process of its own, so that writing music takes no time from the window.

Threads of one process share the interpreter: a copy written in a thread makes a click that falls into it wait. Here
only the values are handed over, the tune only once, since no edit changes it. Where the process cannot be had, the
thread that asks writes the copy itself.
"""

from __future__ import annotations

import pickle
import subprocess
import sys
from contextlib import suppress
from dataclasses import replace
from pathlib import Path

from app.recovery_copy import Note, write_copy
from core.lesson import Lesson
from core.tune import Tune

ROOT = Path(__file__).resolve().parent.parent
SERVE = "import sys; sys.path.insert(0, sys.argv[1]); from app.recovery_writer import serve; serve()"


class RecoveryWriter:
    """Hands copies to its process, one at a time, from one thread at a time."""

    def __init__(self) -> None:
        self._process: subprocess.Popen[bytes] | None = None
        self._tune: Tune | None = None  # the one that the process has
        self._works = not getattr(sys, "frozen", False)  # there the interpreter is the program itself

    @property
    def pid(self) -> int | None:
        """Number of the process; None where there is none now."""
        return self._process.pid if self._process is not None else None

    def start(self) -> None:
        """Start the process, unless it runs."""
        if self._process is not None or not self._works:
            return
        try:
            self._process = subprocess.Popen(
                [sys.executable, "-c", SERVE, str(ROOT)],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
                creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),
            )
        except OSError:
            self._works = False

    def write(self, path: Path, lesson: Lesson, note: Note) -> None:
        """Write a copy and wait until it stands on the disk.

        Raises:
            OSError: it cannot be written.
        """
        self.start()
        if self._process is not None:
            try:
                fault = self._ask(self._process, path, lesson, note)
            except (OSError, EOFError, pickle.UnpicklingError):
                self.close()  # it has died; the next copy gets a new one
            else:
                if fault is not None:
                    raise fault
                return
        write_copy(path, lesson, note)

    def close(self) -> None:
        """End the process; nothing is left for it to do."""
        if self._process is None:
            return
        process, self._process, self._tune = self._process, None, None
        process.kill()
        for pipe in (process.stdin, process.stdout):
            with suppress(OSError):
                pipe.close()
        process.wait()

    def _ask(self, process: subprocess.Popen[bytes], path: Path, lesson: Lesson, note: Note) -> OSError | None:
        tune = None if lesson.tune is self._tune else lesson.tune
        order = pickle.dumps((path, tune, replace(lesson, tune=None), note), pickle.HIGHEST_PROTOCOL)
        process.stdin.write(order)  # whole, or nothing of it: half an order would spoil all that come after it
        process.stdin.flush()
        self._tune = lesson.tune
        return pickle.load(process.stdout)


def serve() -> None:
    """Write what comes on the standard input, and answer None or an OSError, until the input ends."""
    orders, answers = sys.stdin.buffer, sys.stdout.buffer
    tune = None
    while True:
        try:
            path, new_tune, lesson, note = pickle.load(orders)
        except EOFError:
            return  # the window has ended, whichever way
        tune = new_tune or tune
        try:
            write_copy(path, replace(lesson, tune=tune), note)
            answer = None
        except OSError as fault:
            answer = OSError(fault.errno, fault.strerror)
        try:
            pickle.dump(answer, answers, pickle.HIGHEST_PROTOCOL)
            answers.flush()
        except BrokenPipeError:
            return
