"""A process of ``tests.benchmarks.startup``: it shows a window, tells when that is painted, and ends.

Run by that alone: ``python start_runner.py bare`` or ``bowbench FILE``. It loads nothing that the window would not
load. Each line that it prints is a word, the moment (seconds of the clock that all processes share), processor seconds
used, and KiB of memory resident and not shared.
"""

from __future__ import annotations

import sys
import time
from functools import partial


def memory() -> tuple[int, int]:
    """KiB resident, and those of them that are this process's own."""
    with open("/proc/self/smaps_rollup") as told:
        fields = dict(line.split(":", 1) for line in list(told)[1:])
    own = sum(int(fields[name].split()[0]) for name in ("Private_Clean", "Private_Dirty"))
    return int(fields["Rss"].split()[0]), own


def tell(what: str) -> None:
    """Say on standard output that something has been reached, and when."""
    print(what, time.monotonic(), time.process_time(), *memory(), flush=True)


def show_bare() -> None:
    """A window with nothing in it."""
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication, QMainWindow

    class Bare(QMainWindow):
        painted = False

        def paintEvent(self, event: object) -> None:
            super().paintEvent(event)
            if not self.painted:
                self.painted = True
                QTimer.singleShot(0, reached)

    def reached() -> None:
        tell("painted")
        tell("settled")
        app.quit()

    app = QApplication([])
    window = Bare()
    window.resize(1280, 820)
    window.show()
    app.exec()


def show_bowbench(file: str) -> None:
    """The program with a lesson, by its own command."""
    from app.cli import main

    sys.meta_path.insert(0, Watch())
    main([file])


class Watch:
    """Waits for the page's module to be imported and has its first picture told: nothing is imported for our sake."""

    def find_spec(self, name: str, path: object, target: object = None) -> object:
        if name != "app.page_canvas":
            return None
        import importlib.util

        sys.meta_path.remove(self)
        spec = importlib.util.find_spec(name)
        assert spec is not None
        assert spec.loader is not None
        run = spec.loader.exec_module

        def run_and_watch(module: object) -> None:
            run(module)
            watch_page(module.PageCanvas)

        spec.loader.exec_module = run_and_watch
        return spec


def watch_page(canvas: type) -> None:
    """Tell when a page is first painted with music on it, and when it is at rest."""
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication

    paint = canvas.paintEvent
    seen = []

    def paint_and_tell(page: object, event: object) -> None:
        paint(page, event)
        if page.rows and not seen:
            seen.append(page)
            QTimer.singleShot(0, partial(reached, page))

    def reached(page: object) -> None:
        tell("painted")
        rest(page)

    def rest(page: object) -> None:
        later = getattr(page.window(), "later", None)  # an older tree has none
        if page.waits or (later is not None and later.waits):
            QTimer.singleShot(1, partial(rest, page))
        else:
            tell("settled")
            QApplication.exit()

    canvas.paintEvent = paint_and_tell


if __name__ == "__main__":
    if sys.argv[1] == "bare":
        show_bare()
    else:
        show_bowbench(sys.argv[2])
