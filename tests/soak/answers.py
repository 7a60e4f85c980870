"""Somebody who answers all that the window asks, by lot, in the real dialogs where these show more than a question."""

from __future__ import annotations

import random
from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QDialog, QWidget

from app.bow_fiddle_dialog import BowFiddleDialog
from app.dialogs import Answer, Clash, Dialogs
from app.recovery_copy import Left
from app.sheet_dialog import SheetChoice, SheetDialog, Way
from app.tune_chooser import TuneChooser
from core.lesson import Lesson
from core.reach import ReachSettings
from core.sheet_plan import SheetPlan
from core.strings import Tuning
from core.tune_set import TuneSet

SAVED_AS = ("monday.musicxml", "tuesday.mxl", "wednesday.musicxml", "thursday.mxl")


class Answers(Dialogs):
    """Answers by lot.

    Args:
        lot: What it is drawn from.
        folder: Where files are saved and exported.
        wait: Lets events be handled until a condition holds, or for a while.

    Attributes:
        goes_through: Sheets are exported, and files saved, every time.
    """

    def __init__(self, lot: random.Random, folder: Path, wait: Callable[[Callable[[], bool]], None]) -> None:
        self._lot, self._folder, self._wait = lot, folder, wait
        self.goes_through = False

    def path_to_open(self, parent: QWidget, folder: Path) -> Path | None:
        return None

    def folder_to_shelve(self, parent: QWidget, folder: Path) -> Path | None:
        return None

    def paths_to_pack(self, parent: QWidget, folder: Path) -> list[Path]:
        return []

    def folder_to_pack(self, parent: QWidget, folder: Path) -> Path | None:
        return None

    def folder_of_pack(self, parent: QWidget, folder: Path) -> Path | None:
        return None

    def path_to_save(self, parent: QWidget, suggestion: Path) -> Path | None:
        return self._file_or_none(*SAVED_AS)

    def path_to_export(self, parent: QWidget, suggestion: Path) -> Path | None:
        return self._file_or_none(f"sheet{suggestion.suffix}")

    def _file_or_none(self, *names: str) -> Path | None:
        paths = [self._folder / name for name in names]
        return self._lot.choice(paths if self.goes_through else [None, *paths])

    def about_changes(self, parent: QWidget, title: str) -> Answer:
        return Answer.DROP

    def about_clash(self, parent: QWidget, sentence: str) -> Clash:
        return self._lot.choice([Clash.OVERWRITE, Clash.CANCEL])

    def save_elsewhere(self, parent: QWidget, sentence: str) -> bool:
        return False

    def lesson_left_behind(self, parent: QWidget, left: Sequence[Left]) -> Left | None:
        return None

    def tune_of_book(self, parent: QWidget, name: str, lessons: Sequence[Lesson]) -> int | None:
        chooser = TuneChooser(name, lessons, parent)
        self._look_at(chooser)
        return self._lot.randrange(len(lessons))

    def sheet(
        self, parent: QWidget, lesson: Lesson, plan: SheetPlan, way: Way, tune_set: TuneSet | None
    ) -> SheetChoice | None:
        dialog = SheetDialog(lesson, plan, way, tune_set, parent)
        dialog.show()
        for _ in range(self._lot.randint(1, 2)):
            dialog.form.kind.setCurrentIndex(self._lot.randrange(dialog.form.kind.count()))
            self._wait(lambda: not dialog.work.runs)
        way = Way.EXPORT if self.goes_through else self._lot.choice([Way.KEEP, Way.EXPORT, way])
        gives_up = self._lot.random() < 0.3 and not self.goes_through
        if way is Way.PRINT or not dialog.way_buttons[way].isEnabled() or gives_up:
            dialog.reject()
        else:
            dialog.way_buttons[way].click()
        choice = dialog.choice if dialog.result() == QDialog.DialogCode.Accepted else None
        dialog.deleteLater()
        return choice

    def bow_and_fiddle(self, parent: QWidget, lesson: Lesson) -> tuple[ReachSettings, Tuning] | None:
        dialog = BowFiddleDialog(lesson, parent)
        self._look_at(dialog)
        choice = dialog.choice
        return self._lot.choice([None, choice, (ReachSettings(hair_cm=self._lot.randint(20, 60)), choice[1])])

    def printer(self, parent: QWidget) -> QPrinter | None:
        return None

    def tell(self, parent: QWidget, title: str, text: str) -> None:
        pass

    def _look_at(self, dialog: QDialog) -> None:
        dialog.show()
        self._wait(lambda: False)
        dialog.reject()
        dialog.deleteLater()
