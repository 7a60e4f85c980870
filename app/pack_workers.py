"""Processes that do one task after another, each on its own: one that dies takes a single task with it.

The engraver keeps Python's lock while it works, so that threads would not be faster; and a crash in it ends a process.
Workers are spawned, share nothing with this process but a pipe, and end by themselves when the pipe does.
"""

from __future__ import annotations

import os
import signal
import time
from collections.abc import Callable, Iterable, Iterator
from contextlib import suppress
from multiprocessing import get_context
from multiprocessing.connection import Connection, wait
from multiprocessing.process import BaseProcess
from typing import TypeVar, cast

from core.translation import number, tr
from core.values import dataclass

T = TypeVar("T")
R = TypeVar("R")

PATIENCE_S = 300  # for one task; the worker is then ended
TASKS_EACH = 100  # then a worker makes room for a new one, so that no library can gather memory for ever
LOOK_S = 0.1
END_S = 5


@dataclass(frozen=True, slots=True)
class Lost:
    """A task that came to nothing.

    Attributes:
        why: To go on a sentence with.
    """

    why: str


@dataclass
class _Worker:
    """A process with our end of its pipe, and the task that it is at, if any, in a tuple."""

    process: BaseProcess
    pipe: Connection
    task: tuple[object] | None = None
    since: float = 0.0
    begun: int = 0  # number of tasks


class Workers:
    """Up to ``jobs`` processes, started when there is something to do; use them in a ``with`` statement."""

    def __init__(self, jobs: int, patience_s: float = PATIENCE_S, tasks_each: int = TASKS_EACH) -> None:
        self._jobs, self._patience_s, self._tasks_each = jobs, patience_s, tasks_each
        self._context = get_context("spawn")
        self._workers: list[_Worker] = []

    def __enter__(self) -> Workers:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def run(
        self, work: Callable[[T], R], tasks: Iterable[T], stopped: Callable[[], bool] = lambda: False
    ) -> Iterator[tuple[T, R | Lost]]:
        """Do all tasks.

        Args:
            work: A function of a module, since it is sent by its name.
            tasks: Values that can be pickled; taken one by one as workers become free.
            stopped: Asked several times a second; once it says True, workers are ended where they are.
        Yields:
            Each task with what came of it, in the order in which they end.
        """
        waiting = iter(tasks)
        more = True
        while True:
            if stopped():
                self.close()
                return
            while more and len(self._busy) < self._jobs:
                try:
                    task = next(waiting)
                except StopIteration:
                    more = False
                else:
                    self._begin(work, task)
            if not self._busy:
                return
            wait([worker.pipe for worker in self._busy], LOOK_S)
            for worker in self._busy:
                outcome = self._outcome(worker)
                if outcome is not None and worker.task is not None:
                    (done,), worker.task = worker.task, None
                    if worker.begun == self._tasks_each:
                        self._drop(worker)
                    yield cast(T, done), cast("R | Lost", outcome[0])

    def close(self) -> None:
        """End all workers, whatever they do."""
        for worker in self._busy:
            worker.process.kill()
        for worker in list(self._workers):
            self._drop(worker)

    @property
    def _busy(self) -> list[_Worker]:
        return [worker for worker in self._workers if worker.task is not None]

    def _begin(self, work: Callable[[T], R], task: T) -> None:
        """Give a task to a worker that waits for one, or to a new one."""
        worker = next((worker for worker in self._workers if worker.task is None), None) or self._start()
        worker.task, worker.since = (task,), time.monotonic()
        worker.begun += 1
        with suppress(OSError):  # it died; its pipe says so when it is looked at
            worker.pipe.send((work, task))

    def _start(self) -> _Worker:
        ours, theirs = self._context.Pipe()
        process = self._context.Process(target=_serve, args=(theirs,), daemon=True)
        process.start()
        theirs.close()
        worker = _Worker(process, ours)
        self._workers.append(worker)
        return worker

    def _outcome(self, worker: _Worker) -> tuple[object] | None:
        """What came of a worker's task, or None as long as it is at it; a dead worker is dropped."""
        try:
            if worker.pipe.poll():
                return (worker.pipe.recv(),)
        except (EOFError, OSError):
            worker.process.join(END_S)
            why = _last_words(worker.process.exitcode)
        else:
            if time.monotonic() - worker.since < self._patience_s:
                return None
            why = tr("it took longer than {seconds} seconds", seconds=number(self._patience_s))
        worker.process.kill()
        self._drop(worker)
        return (Lost(why),)

    def _drop(self, worker: _Worker) -> None:
        """Let a worker end, which it does without its pipe, and wait until it has."""
        if worker not in self._workers:
            return
        self._workers.remove(worker)
        worker.pipe.close()
        worker.process.join(END_S)
        if worker.process.is_alive():
            worker.process.kill()
            worker.process.join()


def _last_words(code: int | None) -> str:
    if code is not None and code < 0:
        return tr("the process at work on it was ended by signal {code}", code=-code)
    return tr("the process at work on it ended with status {code}", code=code)


def _serve(pipe: Connection) -> None:
    """Be a worker: do what comes through the pipe until it ends."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl+C reaches the whole group; our parent says what becomes of us
    while True:
        try:
            work, task = pipe.recv()
        except (EOFError, OSError):
            return
        try:
            outcome = work(task)
        except Exception as fault:
            outcome = Lost(tr("the program went wrong ({name}: {fault})", name=type(fault).__name__, fault=fault))
        try:
            pipe.send(outcome)
        except OSError:
            return  # nobody waits for it any more


def usual_jobs() -> int:
    """As many as this process may use processors, at most 8."""
    try:
        processors = len(os.sched_getaffinity(0))
    except AttributeError:  # not on this system
        processors = os.cpu_count() or 1
    return max(1, min(processors, 8))
