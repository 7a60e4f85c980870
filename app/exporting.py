"""The open lesson for others: printed, as a PDF file, and as a tune book in ABC."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.dialogs import Dialogs
from app.document import Document
from app.files import ABC_SUFFIX, FileError, save_abc, suggested_name
from app.set_list import SetList
from app.settings import Settings
from app.sheet_choice import SheetChoice, Way
from core.errors import RefusedEditError
from core.file_faults import why
from core.translation import plural, sentence, tr

if TYPE_CHECKING:
    from app.sheet import Printed


class Exporting(QObject):
    """Prints and writes the lesson of a document.

    Args:
        document: The document.
        sets: The set, which may be printed with the lesson.
        dialogs: Asks the user.
        settings: The sheet that was set up last, and where files are suggested.
        window: Above which the questions stand.

    Signals:
        told: (sentence, lines): why it failed, or what the file has no place for.
        hinted: A sentence for the status line: what is written.
    """

    told = Signal(str, object)
    hinted = Signal(str)

    def __init__(
        self, document: Document, sets: SetList, dialogs: Dialogs, settings: Settings, window: QWidget
    ) -> None:
        super().__init__(window)
        self._document = document
        self._sets = sets
        self._dialogs = dialogs
        self._settings = settings
        self._window = window

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        return {
            "print": self.print_lesson,
            "preview": partial(self.print_lesson, Way.KEEP),
            "export_pdf": partial(self.print_lesson, Way.EXPORT),
            "export_abc": self.export_abc,
        }

    def export_abc(self) -> None:
        """Ask for a file and write the lesson in it as ABC; tell what ABC has no place for."""
        state = self._document.state
        if state is None:
            return
        chosen = self._dialogs.path_to_export(self._window, self._suggestion(state.tune.title, ABC_SUFFIX))
        if chosen is None:
            return
        path = chosen if chosen.suffix.lower() == ABC_SUFFIX else chosen.with_name(chosen.name + ABC_SUFFIX)
        try:
            losses = save_abc(state.lesson, path)
        except FileError as fault:
            self.told.emit(str(fault), ())
            return
        if losses:
            self.told.emit(
                tr("{name} is written; ABC has no place for all that the lesson holds.", name=path.name), losses
            )
        else:
            self.hinted.emit(tr("Written to {name}.", name=path.name))

    def print_lesson(self, way: Way = Way.PRINT) -> None:
        """Set up a sheet beside its pages; keep it in the lesson, and print it or write it to a PDF file."""
        from app.sheet_dialog import printed  # as all of printing, not for the window's start

        state = self._document.state
        if state is None:
            return
        plan = state.lesson.sheet or replace(self._settings.sheet, bowings=(state.bowing.name,))
        tune_set = self._sets.state.tune_set if self._sets.state.tunes else None
        choice = self._dialogs.sheet(self._window, state.lesson, plan, way, tune_set)
        if choice is None:
            return
        self._settings.sheet = choice.plan
        if choice.plan != plan or choice.way is Way.KEEP:
            self._document.change(
                tr("Set up the sheet"), lambda lesson: replace(lesson, sheet=choice.plan), state.shown
            )
        try:
            self._put_on_paper(printed(state.lesson, tune_set, choice.plan), choice, state.tune.title)
        except (OSError, RefusedEditError) as fault:
            said = str(fault) if isinstance(fault, RefusedEditError) else sentence(why(fault, writing=True))
            self.told.emit(tr("The sheet cannot be printed: {reason}", reason=said), ())

    def _put_on_paper(self, given: Printed, choice: SheetChoice, title: str) -> None:
        from app.printing import print_sheet_of, write_sheet

        if choice.way is Way.PRINT:
            printer = self._dialogs.printer(self._window)
            if printer is not None:
                print_sheet_of(printer, given, choice.plan)
        elif choice.way is Way.EXPORT:
            path = self._dialogs.path_to_export(self._window, self._suggestion(title, ".pdf"))
            if path is not None:
                path = path if path.suffix else path.with_suffix(".pdf")
                pages = write_sheet(given, choice.plan, path)
                self.hinted.emit(plural("Wrote {name}, 1 page.", "Wrote {name}, {n} pages.", pages, name=path.name))

    def _suggestion(self, title: str, suffix: str) -> Path:
        return self._settings.folder / Path(suggested_name(title)).with_suffix(suffix)
