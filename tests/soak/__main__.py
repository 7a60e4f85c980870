"""A long session in the real window: 10,000 gestures by lot, as in two hours of work.

Run by hand: ``python -m tests.soak [GESTURES [SEED [CHAPTER]]]``. Clicks, keys and menus (slurs, directions, retakes,
ornaments, accents, undo and redo, bowings, comparison, plans taken or not, saving, print preview, playing, shelf, set)
in chapters of 500, or as many as are told, each with a lesson of its own. Before the first, all that can be done is
done once, since much is loaded with its first use (what writes a PDF alone takes 15 MB). At a chapter's end undo must
lead back to the first lesson and redo to the last; then the process is examined at rest.

What a process holds is of three kinds. Steps that can be undone: as many as were made, since undo must lead back to the
first lesson; they go with the lesson. What is kept on purpose (``tests.soak.kept``): filled up to its bound. All else:
it is what the process holds where neither is left, after the first chapter, every 2,000 gestures and at the end, and it
must not grow. Of memory that is what is in use; what is resident beside it is told, and where it is free, no leak
(``tests.soak.memory``). Exit status 1 where it does, or something went wrong.
"""

from __future__ import annotations

import faulthandler
import os
import sys
import tempfile
import time
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from tests.soak.health import Health
    from tests.soak.session import Session

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

CHAPTER = 500
EMPTIED = 2000  # after so many gestures all that is kept on purpose is let go, to see what is left
MOST_OBJECTS, MOST_KIB = 1000.0, 1024.0  # a thousand gestures
HANGS_S = 120.0
HEADING = (
    "gestures  objects  Qt objects  windows  resident KiB  KiB in use  threads  files  steps to undo  faults  seconds"
)


def main() -> int:
    gestures, seed, length = (
        int(sys.argv[place]) if len(sys.argv) > place else usual for place, usual in ((1, 10_000), (2, 1), (3, CHAPTER))
    )
    faulthandler.enable()
    with tempfile.TemporaryDirectory() as home:
        for name in ("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"):
            os.environ[name] = home
        from PySide6.QtWidgets import QApplication

        from tests.soak.kept import kept, let_go
        from tests.soak.session import Session
        from tests.soak.verdict import verdict

        app = QApplication([])
        folder = Path(home) / "work"
        folder.mkdir()
        session = Session(seed, folder, HANGS_S)
        began = time.monotonic()
        session.use_everything()
        print(HEADING, flush=True)
        emptied, overfull, due = [], set(), 0
        while session.gestures < gestures:
            session.chapter(min(length if session.gestures else CHAPTER, gestures - session.gestures))
            _show(session, session.look(), time.monotonic() - began)
            overfull |= {one.name for one in kept() if one.most is not None and one.holds > one.most}
            if session.gestures >= min(due, gestures):
                full = kept()
                let_go()
                emptied.append(session.look())
                _show(session, emptied[-1], time.monotonic() - began, "  nothing kept")
                due = (session.gestures // EMPTIED + 1) * EMPTIED
        session.end()
        app.processEvents()
    for fault in session.faults[:10]:
        print(fault)
    print(f"exceptions and complaints of Qt, and undo that leads elsewhere: {len(session.faults)}")
    steps, held = session.undoable
    print(f"to be undone in the last chapter: {steps} steps, {held} objects")
    print("kept on purpose, and at most:")
    for one in full:
        print(f"  {one.name}: {one.holds} ({one.most if one.most is not None else 'finite'})")
    memory, beside = ("in_use", "resident") if emptied[0].in_use else ("resident", "in_use")
    grows = verdict(
        emptied,
        {"objects": MOST_OBJECTS, "qt": MOST_OBJECTS, memory: MOST_KIB, "threads": 1, "files": 1},
        told=(beside,),
    )
    print("\n".join(grows.lines))
    for name in sorted(overfull):
        print(f"more than its bound was kept by {name}")
    return 1 if session.faults or overfull or grows.grows else 0


def _show(session: Session, now: Health, seconds: float, remark: str = "") -> None:
    print(
        f"{now.gestures:8} {now.objects:8} {now.qt:11} {now.windows:8} {now.resident:13} {now.in_use:11} "
        f"{now.threads:8} {now.files:6} {session.undoable[0]:14} {len(session.faults):7} {seconds:8.0f}{remark}",
        flush=True,
    )


if __name__ == "__main__":
    sys.exit(main())
