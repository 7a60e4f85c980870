"""Starts the window."""

from __future__ import annotations

import gc
import sys
from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from app.language import use_language, use_language_in_qt, wanted_language
from app.main_window import MainWindow
from app.settings import Settings

PAINTED_MS = 100  # by then a window has been painted, with its lesson


def run_window(paths: Sequence[Path] = ()) -> int:
    """Open a window and run until it is closed.

    Args:
        paths: The file to open, if any; further ones are left alone.
    Returns:
        Exit status of the program.
    """
    gc.disable()  # what is made now stays; ``spare_pauses`` ends this
    running = QApplication.instance()
    app = running if isinstance(running, QApplication) else QApplication(sys.argv[:1])
    app.setApplicationName("Bowbench")
    app.setApplicationDisplayName("Bowbench")
    app.setOrganizationName("Bowbench")
    QGuiApplication.setDesktopFileName("bowbench")
    settings = Settings()
    language = wanted_language(settings.language)
    use_language(language)
    use_language_in_qt(app, language)
    window = MainWindow(settings)  # it gives the theme to all widgets once they stand where they stay: styled once
    window.show()
    if paths:
        window.open_path(Path(paths[0]))
    QTimer.singleShot(PAINTED_MS, window, partial(_settle, window))
    return app.exec()


def _settle(window: MainWindow) -> None:
    """Do what can wait until the window is painted."""
    from app.desktop_entry import program_icon  # not for the start

    QGuiApplication.setWindowIcon(program_icon())
    spare_pauses()
    window.offer_left_behind()
    window.greet()


def spare_pauses() -> None:
    """Take what stands by now out of garbage collection: full collections would cost a frame now and then."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 50)
    gc.enable()
