"""Every question that stops the program until the user answers, in one place, so that tests can answer instead."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import Enum
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QEventLoop, Qt, QTimer
from PySide6.QtWidgets import QDialog, QFileDialog, QMessageBox, QProgressDialog, QWidget

from app.files import OPEN_FILTERS, SAVE_FILTERS
from core.translation import tr, translatable

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

    from app.recovery_copy import Left
    from app.sheet_choice import SheetChoice, Way
    from core.lesson import Lesson
    from core.reach import ReachSettings
    from core.sheet_plan import SheetPlan
    from core.strings import Tuning
    from core.tune_set import TuneSet

Result = TypeVar("Result")
EXPORTS = translatable(
    {
        ".pdf": ("Export as PDF", "PDF (*.pdf)"),
        ".abc": ("Export as ABC", "Tune book in ABC (*.abc)"),
    }
)  # suffix: title of the dialog, and the kind of file
PATIENCE_MS = 400  # nothing is shown for work that ends sooner


class Answer(Enum):
    """What to do with changes that are not saved."""

    SAVE = "save"
    DROP = "drop"
    STAY = "stay"


class Clash(Enum):
    """What to do where a file to be saved holds something else."""

    OTHER_NAME = "other name"
    OVERWRITE = "overwrite"
    CANCEL = "cancel"


class Dialogs:
    """The questions as Qt dialogs; each dialog of ours is loaded when it is first wanted."""

    def path_to_open(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for a file to open; None where the user thinks better of it, as below."""
        name, _ = QFileDialog.getOpenFileName(parent, tr("Open"), str(folder), ";;".join(map(tr, OPEN_FILTERS)))
        return Path(name) if name else None

    def folder_to_shelve(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for a folder to put on the shelf."""
        name = QFileDialog.getExistingDirectory(parent, tr("Add a folder to the shelf"), str(folder))
        return Path(name) if name else None

    def paths_to_pack(self, parent: QWidget, folder: Path) -> list[Path]:
        """Ask for lessons and tune books that go into a pack; none where the user thinks better of it."""
        names, _ = QFileDialog.getOpenFileNames(
            parent, tr("Add to the pack"), str(folder), ";;".join(map(tr, OPEN_FILTERS))
        )
        return [Path(name) for name in names]

    def folder_to_pack(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for a folder of which all lessons and tune books go into a pack."""
        name = QFileDialog.getExistingDirectory(parent, tr("Add a folder to the pack"), str(folder))
        return Path(name) if name else None

    def folder_of_pack(self, parent: QWidget, folder: Path) -> Path | None:
        """Ask for the folder that a pack is made in."""
        name = QFileDialog.getExistingDirectory(parent, tr("Make the pack in"), str(folder))
        return Path(name) if name else None

    def path_to_save(self, parent: QWidget, suggestion: Path) -> Path | None:
        """Ask for the name of a lesson file."""
        name, _ = QFileDialog.getSaveFileName(
            parent, tr("Save the lesson as"), str(suggestion), ";;".join(map(tr, SAVE_FILTERS))
        )
        return Path(name) if name else None

    def path_to_export(self, parent: QWidget, suggestion: Path) -> Path | None:
        """Ask for the name of a file to write that is no lesson; its suffix says of what kind."""
        title, kinds = map(tr, EXPORTS[suggestion.suffix])
        dialog = QFileDialog(parent, title, str(suggestion), kinds)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(suggestion.suffix)  # so that it asks before it overwrites the name with its suffix
        chosen = Path(dialog.selectedFiles()[0]) if dialog.exec() == QDialog.DialogCode.Accepted else None
        dialog.deleteLater()
        return chosen

    def about_changes(self, parent: QWidget, title: str) -> Answer:
        """Ask what to do with changes that are not saved."""
        box = QMessageBox(parent)
        box.setIcon(QMessageBox.Icon.Question)
        box.setWindowTitle("Bowbench")
        box.setText(tr("Save the changes to “{title}”?", title=title))
        box.setInformativeText(tr("They are lost if you do not save them."))
        buttons = QMessageBox.StandardButton
        box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
        box.setDefaultButton(buttons.Save)
        answers = {buttons.Save: Answer.SAVE, buttons.Discard: Answer.DROP}
        return answers.get(buttons(box.exec()), Answer.STAY)

    def about_clash(self, parent: QWidget, sentence: str) -> Clash:
        """Ask what to do where the file to be saved holds something else, as the sentence says."""
        box = _question(parent, sentence, tr("If it is overwritten, what it holds now is kept beside it."))
        other = box.addButton(tr("Save &as another name…"), QMessageBox.ButtonRole.AcceptRole)
        over = box.addButton(tr("&Overwrite"), QMessageBox.ButtonRole.DestructiveRole)
        box.addButton(QMessageBox.StandardButton.Cancel)
        box.setDefaultButton(other)
        box.exec()
        answers = {other: Clash.OTHER_NAME, over: Clash.OVERWRITE}
        return answers.get(box.clickedButton(), Clash.CANCEL)

    def save_elsewhere(self, parent: QWidget, sentence: str) -> bool:
        """Tell why a save failed, and ask whether to save somewhere else."""
        box = _question(parent, sentence, tr("The lesson is open as it was. Nothing on the disk has been changed."))
        box.setIcon(QMessageBox.Icon.Warning)
        elsewhere = box.addButton(tr("Save &elsewhere…"), QMessageBox.ButtonRole.AcceptRole)
        box.addButton(QMessageBox.StandardButton.Cancel)
        box.setDefaultButton(elsewhere)
        box.exec()
        return box.clickedButton() is elsewhere

    def lesson_left_behind(self, parent: QWidget, left: Sequence[Left]) -> Left | None:
        """Offer lessons that were not saved when the program ended; some may be thrown away on the way."""
        from app.recovery_dialog import RecoveryDialog

        dialog = RecoveryDialog(left, parent)
        chosen = dialog.chosen if dialog.exec() == QDialog.DialogCode.Accepted else None
        dialog.deleteLater()
        return chosen

    def tune_of_book(self, parent: QWidget, name: str, lessons: Sequence[Lesson]) -> int | None:
        """Ask for one tune of a book, by its index."""
        from app.tune_chooser import TuneChooser

        chooser = TuneChooser(name, lessons, parent)
        chosen = chooser.chosen if chooser.exec() == QDialog.DialogCode.Accepted else None
        chooser.deleteLater()
        return chosen

    def sheet(
        self, parent: QWidget, lesson: Lesson, plan: SheetPlan, way: Way, tune_set: TuneSet | None
    ) -> SheetChoice | None:
        """Ask what goes on a printed sheet, and where it goes."""
        from app.sheet_dialog import SheetDialog

        dialog = SheetDialog(lesson, plan, way, tune_set, parent)
        choice = dialog.choice if dialog.exec() == QDialog.DialogCode.Accepted else None
        dialog.deleteLater()
        return choice

    def bow_and_fiddle(self, parent: QWidget, lesson: Lesson) -> tuple[ReachSettings, Tuning] | None:
        """Ask what a lesson is checked by, bow, tempo and strings."""
        from app.bow_fiddle_dialog import BowFiddleDialog

        dialog = BowFiddleDialog(lesson, parent)
        choice = dialog.choice if dialog.exec() == QDialog.DialogCode.Accepted else None
        dialog.deleteLater()
        return choice

    def printer(self, parent: QWidget) -> QPrinter | None:
        """Ask for a printer."""
        from PySide6.QtPrintSupport import QPrintDialog, QPrinter

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
        from concurrent.futures import ThreadPoolExecutor

        box = QProgressDialog(text, tr("Leave off"), 0, 0, parent)
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


def _question(parent: QWidget, sentence: str, more: str) -> QMessageBox:
    box = QMessageBox(parent)
    box.setIcon(QMessageBox.Icon.Question)
    box.setWindowTitle("Bowbench")
    box.setText(sentence)
    box.setInformativeText(more)
    return box
