"""Every question that stops the program until the user answers, in one place, so that tests can answer instead."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from enum import Enum
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import QEventLoop, Qt, QTimer
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QFileDialog, QMessageBox, QProgressDialog, QWidget

from app.bow_fiddle_dialog import BowFiddleDialog
from app.files import OPEN_FILTERS, SAVE_FILTERS
from app.sheet_dialog import SheetChoice, SheetDialog, Way
from app.tune_chooser import TuneChooser
from core.lesson import Lesson
from core.reach import ReachSettings
from core.sheet_plan import SheetPlan
from core.strings import Tuning
from core.tune_set import TuneSet

Result = TypeVar("Result")
EXPORTS = {
    ".pdf": ("Export as PDF", "PDF (*.pdf)"),
    ".abc": ("Export as ABC", "Tune book in ABC (*.abc)"),
}  # suffix: title of the dialog, and the kind of file
PATIENCE_MS = 400  # nothing is shown for work that ends sooner


class Answer(Enum):
    """What to do with changes that are not saved."""

    SAVE = "save"
    DROP = "drop"
    STAY = "stay"


class Dialogs:
    """The questions as Qt dialogs."""

    def path_to_open(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for a file to open; None where the user thinks better of it, as below."""
        name, _ = QFileDialog.getOpenFileName(parent, "Open", str(folder), ";;".join(OPEN_FILTERS))
        return Path(name) if name else None

    def folder_to_shelve(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for a folder to put on the shelf."""
        name = QFileDialog.getExistingDirectory(parent, "Add a folder to the shelf", str(folder))
        return Path(name) if name else None

    def paths_to_pack(self, parent: QWidget, folder: Path) -> list[Path]:
        """Ask for lessons and tune books that go into a pack; none where the user thinks better of it."""
        names, _ = QFileDialog.getOpenFileNames(parent, "Add to the pack", str(folder), ";;".join(OPEN_FILTERS))
        return [Path(name) for name in names]

    def folder_to_pack(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for a folder of which all lessons and tune books go into a pack."""
        name = QFileDialog.getExistingDirectory(parent, "Add a folder to the pack", str(folder))
        return Path(name) if name else None

    def folder_of_pack(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for the folder that a pack is made in."""
        name = QFileDialog.getExistingDirectory(parent, "Make the pack in", str(folder))
        return Path(name) if name else None

    def path_to_save(self, parent: QWidget, suggestion: Path) -> Path | None:
        """Ask for the name of a lesson file."""
        name, _ = QFileDialog.getSaveFileName(parent, "Save the lesson as", str(suggestion), ";;".join(SAVE_FILTERS))
        return Path(name) if name else None

    def path_to_export(self, parent: QWidget, suggestion: Path) -> Path | None:
        """Ask for the name of a file to write that is no lesson; its suffix says of what kind."""
        title, kinds = EXPORTS[suggestion.suffix]
        name, _ = QFileDialog.getSaveFileName(parent, title, str(suggestion), kinds)
        return Path(name) if name else None

    def about_changes(self, parent: QWidget, title: str) -> Answer:
        """Ask what to do with changes that are not saved."""
        box = QMessageBox(parent)
        box.setIcon(QMessageBox.Icon.Question)
        box.setWindowTitle("Bowbench")
        box.setText(f"Save the changes to “{title}”?")
        box.setInformativeText("They are lost if you do not save them.")
        buttons = QMessageBox.StandardButton
        box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
        box.setDefaultButton(buttons.Save)
        answers = {buttons.Save: Answer.SAVE, buttons.Discard: Answer.DROP}
        return answers.get(buttons(box.exec()), Answer.STAY)

    def tune_of_book(self, parent: QWidget, name: str, lessons: Sequence[Lesson]) -> int | None:
        """Ask for one tune of a book, by its index."""
        chooser = TuneChooser(name, lessons, parent)
        chosen = chooser.chosen if chooser.exec() == QDialog.DialogCode.Accepted else None
        chooser.deleteLater()
        return chosen

    def sheet(
        self, parent: QWidget, lesson: Lesson, plan: SheetPlan, way: Way, tune_set: TuneSet | None
    ) -> SheetChoice | None:
        """Ask what goes on a printed sheet, and where it goes."""
        dialog = SheetDialog(lesson, plan, way, tune_set, parent)
        choice = dialog.choice if dialog.exec() == QDialog.DialogCode.Accepted else None
        dialog.deleteLater()
        return choice

    def bow_and_fiddle(self, parent: QWidget, lesson: Lesson) -> tuple[ReachSettings, Tuning] | None:
        """Ask what a lesson is checked by, bow, tempo and strings."""
        dialog = BowFiddleDialog(lesson, parent)
        choice = dialog.choice if dialog.exec() == QDialog.DialogCode.Accepted else None
        dialog.deleteLater()
        return choice

    def printer(self, parent: QWidget) -> QPrinter | None:
        """Ask for a printer."""
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        dialog = QPrintDialog(printer, parent)
        accepted = dialog.exec() == QDialog.DialogCode.Accepted
        dialog.deleteLater()
        return printer if accepted else None

    def wait(self, parent: QWidget, text: str, work: Callable[[], Result]) -> Result | None:
        """Do long work in a thread of its own, with a sign of life and a button to leave off.

        Returns:
            What the work returns, or None where the user left off; the work then ends unheard.
        Raises:
            Exception: whatever the work raises.
        """
        box = QProgressDialog(text, "Leave off", 0, 0, parent)
        box.setWindowTitle("Bowbench")
        box.setWindowModality(Qt.WindowModality.WindowModal)
        box.setMinimumDuration(PATIENCE_MS)
        box.reset()  # shown by the timer, not by itself
        loop = QEventLoop()
        box.canceled.connect(loop.quit)
        QTimer.singleShot(PATIENCE_MS, box, box.show)
        pool = ThreadPoolExecutor(max_workers=1)
        future = pool.submit(work)
        look = QTimer()
        look.timeout.connect(lambda: loop.quit() if future.done() else None)
        look.start(10)
        loop.exec()
        pool.shutdown(wait=False)
        box.deleteLater()
        return future.result() if future.done() else None

    def tell(self, parent: QWidget, title: str, text: str) -> None:
        """Show a text that the user asked for."""
        box = QMessageBox(parent)
        box.setWindowTitle(title)
        box.setText(text)
        box.exec()
