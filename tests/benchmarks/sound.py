"""How long sound takes: run by hand with ``python -m tests.benchmarks.sound``.

Prints, for a reel of 32 bars played twice with a bar counted in and backing: milliseconds from the lesson to the first
buffer (4,096 samples), in a fresh process (loading our modules and libraries too) and in one that has played before;
how many times faster than it is heard the whole is rendered, with nothing kept, for another bowing then, and with
everything kept; and each step beside the whole. All in time of the processor. Goals: a first buffer within 100 ms, 500
times real time warm. The whole in blocks of 1,024 samples must be the same samples; that is told too.
"""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable
from importlib.resources import files
from statistics import median
from time import process_time

import numpy as np

from core.bowing import Bowing
from core.lesson import Lesson
from core.reading import read_file
from core.sound import fiddle, fiddle_bank, plucked
from core.sound.backing import back
from core.sound.fiddle import fiddle as fiddle_track
from core.sound.loops import excerpt
from core.sound.mix import Mix, mix
from core.sound.performance import Manner, perform
from core.sound.track import SAMPLES_A_SECOND
from core.strokes import work_out

ROUNDS = 9
BUFFER = 4096
KEPT = (fiddle._sound, fiddle_bank._kept, fiddle_bank.recording, plucked.plucked, plucked.strummed)
FRESH = """
import time
from importlib.resources import files
from core.reading import read_file
lesson = read_file((files("sample_tunes") / "tuesday_ferry.musicxml").read_bytes()).lessons[0]
began = time.process_time()
from core.sound.backing import back
from core.sound.mix import mix
from core.sound.performance import Manner, perform
performance = perform(lesson.tune, lesson.bowings[0], manner=Manner(count_in=1))
mix(performance, back(performance)).render(0, 4096)
print(1000 * (time.process_time() - began))
"""


def reel() -> Lesson:
    """The sample lesson: 32 bars with their repeats, and a pick-up."""
    return read_file((files("sample_tunes") / "tuesday_ferry.musicxml").read_bytes()).lessons[0]


def prepared(lesson: Lesson, bowing: Bowing, times: int = 2) -> Mix:
    """All that stands before the first sample."""
    strokes = work_out(lesson.tune, bowing)
    strokes = excerpt(strokes, range(len(strokes.order)), times)
    performance = perform(lesson.tune, bowing, strokes, Manner(count_in=1))
    return mix(performance, back(performance))


def first_buffer(lesson: Lesson, bowing: Bowing) -> Mix:
    """Prepare, and render what a player asks for first."""
    made = prepared(lesson, bowing)
    made.render(0, BUFFER)
    return made


def main() -> None:
    """Print the figures."""
    fresh = [float(subprocess.run([sys.executable, "-c", FRESH], capture_output=True, text=True, check=True).stdout)
             for _ in range(3)]  # fmt: skip
    lesson = reel()
    first, other = lesson.bowings[1], lesson.bowings[2]
    first_buffer(lesson, first)
    warm = _median(lambda: first_buffer(lesson, first))
    print(f"first buffer: {median(fresh):.0f} ms in a fresh process, {1000 * warm:.1f} ms warm")
    made = prepared(lesson, first)
    seconds = made.length / SAMPLES_A_SECOND

    def whole(bowing: Bowing) -> Mix:
        made = prepared(lesson, bowing)
        made.render(0, made.length)
        return made

    forget()
    began = process_time()
    whole(first)
    cold = process_time() - began
    began = process_time()
    whole(other)
    changed = process_time() - began
    kept = _median(lambda: whole(first))
    print(f"{seconds:.0f} s of music: {seconds / cold:.0f} times real time cold, {seconds / changed:.0f} for another "
          f"bowing then, {seconds / kept:.0f} warm")  # fmt: skip
    steps: dict[str, Callable[[], object]] = {
        "strokes": lambda: work_out(lesson.tune, first),
        "prepared": lambda: prepared(lesson, first),
        "fiddle": lambda: fiddle_track(perform(lesson.tune, first)).render(0, made.length),
        "mix": lambda: made.render(0, made.length),
    }
    print(", ".join(f"{name} {_median(step) / kept:.0%}" for name, step in steps.items()), "of the warm whole")
    joined = np.concatenate(list(made.blocks(1024)))
    print("blocks of 1,024 join to the same samples:", np.array_equal(joined, made.render(0, made.length)))


def forget() -> None:
    """Empty all that is kept between renderings."""
    for function in KEPT:
        function.cache_clear()


def _median(work: Callable[[], object]) -> float:
    times = []
    for _ in range(ROUNDS):
        began = process_time()
        work()
        times.append(process_time() - began)
    return median(times)


if __name__ == "__main__":
    main()
