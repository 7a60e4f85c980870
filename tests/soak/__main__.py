"""A long session in the real window: 10,000 gestures by lot, as in two hours of work.

Run by hand: ``python -m tests.soak [GESTURES [SEED]]``. Clicks, keys and menus (slurs, directions, retakes, ornaments,
accents, undo and redo, bowings, comparison, plans taken or not, saving, print preview, playing, shelf, set) in chapters
of 500. After each chapter undo must lead back to the first lesson and redo to the last; then the process is examined at
rest. Goals: no exception; from gesture 2,000 on neither objects nor memory, threads and open files go on growing.
Exit status 1 where one is missed.
"""

from __future__ import annotations

import faulthandler
import os
import sys
import tempfile
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

CHAPTER = 500
SETTLED = 2000  # gestures after which all that is kept on purpose has been filled
MOST_OBJECTS, MOST_KIB = 1000.0, 1024.0  # a thousand gestures
HANGS_S = 120.0


def main() -> int:
    gestures = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    faulthandler.enable()
    with tempfile.TemporaryDirectory() as home:
        for name in ("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"):
            os.environ[name] = home
        from PySide6.QtWidgets import QApplication

        from tests.soak.health import growing, slope
        from tests.soak.session import Session

        app = QApplication([])
        folder = Path(home) / "work"
        folder.mkdir()
        session = Session(seed, folder, HANGS_S)
        began = time.monotonic()
        print("gestures  objects  Qt objects  windows  resident KiB  threads  files  faults  seconds", flush=True)
        while session.gestures < gestures:
            session.chapter(min(CHAPTER, gestures - session.gestures))
            now = session.look()
            print(
                f"{now.gestures:8} {now.objects:8} {now.qt:11} {now.windows:8} {now.resident:13} {now.threads:8} "
                f"{now.files:6} {len(session.faults):7} {time.monotonic() - began:8.0f}",
                flush=True,
            )
        session.end()
        app.processEvents()
    settled = [state for state in session.history if state.gestures >= SETTLED]
    missed = bool(session.faults)
    for fault in session.faults[:10]:
        print(fault)
    print(f"exceptions and complaints of Qt, and undo that leads elsewhere: {len(session.faults)}")
    if len(settled) > 2:
        for name, most in (
            ("objects", MOST_OBJECTS),
            ("qt", MOST_OBJECTS),
            ("resident", MOST_KIB),
            ("threads", 1.0),
            ("files", 1.0),
        ):
            rate = 1000 * slope([(state.gestures, getattr(state, name)) for state in settled])
            missed = missed or rate > most
            print(f"{name} a thousand gestures, from {SETTLED} on: {rate:+.1f} (at most {most:.0f})")
        for name, rate in growing(settled, 20)[:15]:
            print(f"  {name}: {rate:+.0f}")
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main())
