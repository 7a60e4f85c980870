"""Processes that feed a reader: watched for hangs and crashes, held to a cap of memory, begun again after either.

A process counts in memory that it shares with the one that watches it, so that nothing is sent for an input that goes
well, and nothing that was counted is lost with a process that dies.
"""

from __future__ import annotations

import ctypes
import gc
import multiprocessing
import os
import resource
import signal
import time
import traceback
from collections import Counter
from contextlib import suppress
from dataclasses import dataclass, field
from multiprocessing.connection import Connection, wait
from pathlib import Path
from types import FrameType

from tests.fuzz.outcomes import READ, REFUSED
from tests.fuzz.readers import input_of, reader_of

HANG_S = 5.0
CAP_MB = 512  # above what the process takes before its first input
WARMING = range(-20, 0)  # numbers of the inputs that load what is loaded late
KEPT_OF_A_KIND = 3
LOOK_S = 0.5
LOOK_EACH = 100  # inputs: the most memory is read
PATIENCE = 12  # times as long by the clock on the wall, since the machine may be busy with other things
MB = 2**20


class HangError(Exception):
    """An input took too long."""


class _State(ctypes.Structure):
    """How far a process is.

    Attributes:
        at: Number of the input that is fed, or was last; -1 before the first.
        since: When it was given, on the monotonic clock; 0 between inputs.
        read, refused, slowest_s, slowest, peak_mb: As in ``Report``.
    """

    _fields_ = (
        ("at", ctypes.c_longlong),
        ("since", ctypes.c_double),
        ("read", ctypes.c_longlong),
        ("refused", ctypes.c_longlong),
        ("slowest_s", ctypes.c_double),
        ("slowest", ctypes.c_longlong),
        ("peak_mb", ctypes.c_double),
    )


@dataclass
class Report:
    """What came of a run.

    Attributes:
        outcomes: How many inputs were read, refused, or failed.
        seconds: Wall time.
        slowest_s, slowest: The longest that an input took, in seconds of the processor, and its number.
        peak_mb: The most that a process took above what it took before its first input.
        kinds: What failed, how often, and the number of the first.
    """

    name: str
    seed: int
    outcomes: Counter[str] = field(default_factory=Counter)
    seconds: float = 0.0
    slowest_s: float = 0.0
    slowest: int = -1
    peak_mb: float = 0.0
    kinds: dict[str, tuple[int, int]] = field(default_factory=dict)

    @property
    def failures(self) -> int:
        return sum(count for count, _ in self.kinds.values())

    def fail(self, kind: str, number: int) -> int:
        """Count a failure; how many of its kind there are now."""
        count, first = self.kinds.get(kind, (0, number))
        self.kinds[kind] = (count + 1, first)
        self.outcomes["failed"] += 1
        return count + 1

    def add(self, state: _State) -> None:
        """Take in what a process counted that has ended."""
        self.outcomes += Counter({READ: state.read, REFUSED: state.refused})
        self.peak_mb = max(self.peak_mb, state.peak_mb)
        if state.slowest_s > self.slowest_s:
            self.slowest_s, self.slowest = state.slowest_s, state.slowest

    def __str__(self) -> str:
        count = sum(self.outcomes.values())
        told = ", ".join(f"{number:,} {name}" for name, number in sorted(self.outcomes.items()))
        lines = [
            f"{self.name}, seed {self.seed}: {count:,} inputs ({told}) in {self.seconds:.0f} s, "
            f"{count / max(self.seconds, 0.001):.0f} a second; slowest {self.slowest_s:.2f} s (number {self.slowest}); "
            f"at most {self.peak_mb:.0f} MB above rest"
        ]
        lines += [f"  {count:,} × {kind} (first: number {first})" for kind, (count, first) in self.kinds.items()]
        return "\n".join(lines)


def run(
    name: str,
    count: int,
    seed: int = 1,
    first: int = 0,
    jobs: int = 1,
    keep: Path | None = None,
    hang_s: float = HANG_S,
) -> Report:
    """Feed a reader with so many inputs.

    Args:
        name: The reader.
        count: Inputs.
        seed, first: Which inputs.
        jobs: Processes.
        keep: Folder for what fails.
        hang_s: Seconds after which an input counts as a hang.
    Returns:
        What came of them; of those that were fed until then where it is interrupted.
    """
    report = Report(name, seed)
    began = time.monotonic()
    step = -(-count // jobs)
    shares = [range(start, min(start + step, first + count)) for start in range(first, first + count, step)]
    workers = [_Worker(name, seed, share, hang_s) for share in shares]
    try:
        while workers:
            wait([worker.results for worker in workers], LOOK_S)
            for worker in list(workers):
                if worker.look(report, keep):
                    workers.remove(worker)
    except KeyboardInterrupt:
        before = {kind: signal.signal(kind, signal.SIG_IGN) for kind in (signal.SIGINT, signal.SIGTERM)}  # told twice
        for worker in workers:
            worker.end(report)
        for kind, handler in before.items():
            signal.signal(kind, handler)
    report.seconds = time.monotonic() - began
    return report


class _Worker:
    """A process at work on a range of inputs, and the look at it from outside."""

    def __init__(self, name: str, seed: int, share: range, hang_s: float) -> None:
        self._name, self._seed, self._share, self._hang_s = name, seed, share, hang_s
        self._begin(share.start)

    def _begin(self, start: int) -> None:
        context = multiprocessing.get_context("spawn")
        self.results, theirs = context.Pipe(duplex=False)
        self._state = context.RawValue(_State, -1)
        share = range(start, self._share.stop)
        self._process = context.Process(
            target=_work, args=(self._name, self._seed, share, theirs, self._state, self._hang_s), daemon=True
        )
        self._process.start()
        theirs.close()

    def look(self, report: Report, keep: Path | None) -> bool:
        """Take results in; begin a new process where this one hangs or died; whether all is done."""
        try:
            while self.results.poll():
                message = self.results.recv()
                if message is None:
                    self._process.join()
                    report.add(self._state)
                    return True
                number, kind, trace = message
                self._keep(kind, number, trace, report, keep)
        except EOFError:
            self._process.join()
            return self._go_on(f"crash, exit code {self._process.exitcode}", report, keep)
        since = self._state.since
        if since and time.monotonic() - since > PATIENCE * self._hang_s:  # not even an alarm comes through
            self._process.kill()
            self._process.join()
            return self._go_on(f"hang of more than {self._hang_s:g} s that no alarm ended", report, keep)
        return False

    def end(self, report: Report) -> None:
        """End the process before its time."""
        self._process.kill()
        self._process.join()
        report.add(self._state)

    def _go_on(self, kind: str, report: Report, keep: Path | None) -> bool:
        number = self._state.at
        if number < self._share.start:
            raise RuntimeError(f"{self._name}: the process ended before the first input: {kind}")
        report.add(self._state)
        self._keep(kind, number, "", report, keep)
        if number + 1 >= self._share.stop:
            return True
        self._begin(number + 1)
        return False

    def _keep(self, kind: str, number: int, trace: str, report: Report, keep: Path | None) -> None:
        if report.fail(kind, number) > KEPT_OF_A_KIND or keep is None:
            return
        keep.mkdir(parents=True, exist_ok=True)
        path = keep / f"{self._name}-{self._seed}-{number}{reader_of(self._name).suffix}"
        path.write_bytes(input_of(self._name, self._seed, number))
        path.with_name(path.name + ".why").write_text(f"{kind}\n{trace}")


def replay(name: str, path: Path) -> str:
    """Feed a kept input again, and follow it as far as any is followed."""
    return reader_of(name).feed(path.read_bytes(), 0)


# ------------------------------------------------------------------------------------------------- in the process


def _work(name: str, seed: int, share: range, results: Connection, state: _State, hang_s: float) -> None:
    signal.signal(signal.SIGPROF, _alarm)
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl+C is for the one that watches
    reader = reader_of(name)
    for number in WARMING:
        try:
            reader.feed(input_of(name, seed, number), 50 * number)
        except Exception:
            continue  # found again among those that count, or by nobody
    gc.collect()
    rest = _now_bytes("VmSize:")
    resource.setrlimit(resource.RLIMIT_AS, (rest + CAP_MB * MB, resource.RLIM_INFINITY))
    with suppress(OSError):  # where it cannot be set back, the most may be what was taken to get warm
        Path("/proc/self/clear_refs").write_text("5")
    resident = _now_bytes("VmRSS:")
    for number in share:
        state.at = number
        data = input_of(name, seed, number)
        state.since = time.monotonic()
        began = time.process_time()
        signal.setitimer(signal.ITIMER_PROF, hang_s)
        try:
            outcome = reader.feed(data, number)
        except (Exception, MemoryError, HangError) as fault:
            signal.setitimer(signal.ITIMER_PROF, 0)
            results.send((number, _kind(fault), traceback.format_exc()[-6000:]))
        else:
            signal.setitimer(signal.ITIMER_PROF, 0)
            state.read += outcome == READ
            state.refused += outcome == REFUSED
        state.since = 0.0
        took = time.process_time() - began
        if took > state.slowest_s:
            state.slowest_s, state.slowest = took, number
        if number % LOOK_EACH == 0 or number == share[-1]:
            state.peak_mb = (_now_bytes("VmHWM:") - resident) / MB
    results.send(None)
    results.close()
    os._exit(0)  # Qt need not put away what nobody will use


def _alarm(number: int, frame: FrameType | None) -> None:
    raise HangError("it took too long")


def _kind(fault: BaseException) -> str:
    """A failure in one line: what was raised, and where in the program."""
    frames = traceback.extract_tb(fault.__traceback__)
    ours = [frame for frame in frames if "/core/" in frame.filename or "/app/" in frame.filename] or frames
    where = f"{Path(ours[-1].filename).name}:{ours[-1].name}:{ours[-1].lineno}"
    return f"{type(fault).__name__} in {where}: {str(fault)[:100]!r}"


def _now_bytes(row: str) -> int:
    for line in Path("/proc/self/status").read_text().splitlines():
        if line.startswith(row):
            return int(line.split()[1]) * 1024
    raise LookupError(row)
