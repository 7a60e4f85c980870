"""Starts the window."""

from __future__ import annotations

import gc
import sys
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from app.data_folder import data_folder
from app.kept_pictures import KeptPictures
from app.language import use_language, use_language_in_qt, wanted_language
from app.later import Later
from app.main_window import MainWindow
from app.settings import Settings
from app.theme import styled_application
from core.engraving.engraver import Engraver
from core.engraving.keeping import tune_digest


def run_window(paths: Sequence[Path] = ()) -> int:
    """Open a window and run until it is closed.

    Args:
        paths: The file to open, if any; further ones are left alone.
    Returns:
        Exit status of the program.
    """
    gc.disable()  # what is made now stays; ``spare_pauses`` ends this
    running = QApplication.instance()
    app = running if isinstance(running, QApplication) else styled_application(sys.argv[0])
    app.setApplicationName("Bowbench")
    app.setApplicationDisplayName("Bowbench")
    app.setOrganizationName("Bowbench")
    QGuiApplication.setDesktopFileName("bowbench")
    settings = Settings()
    language = wanted_language(settings.language)
    use_language(language)
    use_language_in_qt(app, language)
    later = Later(waits=True)
    kept = KeptPictures(data_folder() / "pictures")
    engraver = Engraver(keeper=kept)
    window = MainWindow(settings, later=later, engraver=engraver)
    window.show()
    if paths:
        window.open_path(Path(paths[0]))
    for job in (engraver.load, _show_icon, spare_pauses, window.offer_left_behind, window.greet):
        later.do(job)
    later.begin_after_painting(window)
    status = app.exec()
    state = window.document.state
    if state is not None:
        kept.keep(tune_digest(state.tune), engraver.made(state.tune, window.page.pictures))
    return status


def _show_icon() -> None:
    from app.desktop_entry import program_icon  # not for the start

    QGuiApplication.setWindowIcon(program_icon())


def spare_pauses() -> None:
    """Take what stands by now out of garbage collection: full collections would cost a frame now and then."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 50)
    gc.enable()
