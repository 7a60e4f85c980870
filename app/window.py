"""Starts the window."""

from __future__ import annotations

import gc
import sys
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from app.main_window import MainWindow


def run_window(paths: Sequence[Path] = ()) -> int:
    """Open a window and run until it is closed.

    Args:
        paths: The file to open, if any; further ones are left alone.
    Returns:
        Exit status of the program.
    """
    running = QApplication.instance()
    app = running if isinstance(running, QApplication) else QApplication(sys.argv[:1])
    app.setApplicationName("Bowbench")
    app.setApplicationDisplayName("Bowbench")
    app.setOrganizationName("Bowbench")
    QGuiApplication.setDesktopFileName("bowbench")
    window = MainWindow()
    window.show()
    if paths:
        window.open_path(Path(paths[0]))
    QTimer.singleShot(0, window, window.offer_left_behind)
    QTimer.singleShot(0, window, window.greet)
    spare_pauses()
    return app.exec()


def spare_pauses() -> None:
    """Take what stands by now out of garbage collection: full collections would cost a frame now and then."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 50)
