"""Sets up a printed sheet beside its pages, and asks where it goes."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from app.sheet import Printed, Sheet
from app.sheet_choice import WAY_TEXTS, SheetChoice, Way
from app.sheet_form import SheetForm
from app.sheet_preview import SheetPreview
from app.sheet_work import SheetWork
from app.window_layout import fitting
from core.lesson import Lesson
from core.sheet_plan import SheetKind, SheetPlan
from core.translation import plural, tr, translatable
from core.tune_set import TuneSet

WIDTH, HEIGHT, FORM_WIDTH = 1080, 700, 390
NO_BOWING = translatable("Tick at least one bowing.")
WORKING = translatable("The pages are being set …")


def printed(lesson: Lesson, tune_set: TuneSet | None, plan: SheetPlan) -> Printed:
    """What a plan prints: the set in hand where it asks for one, else the lesson."""
    return tune_set if plan.kind is SheetKind.SET and tune_set is not None else [lesson]


class SheetDialog(QDialog):
    """All that a sheet can be, and its pages as they are printed.

    Args:
        lesson: What is printed.
        plan: What was chosen the last time.
        way: The button that Return presses.
        tune_set: The set in hand, if there is one.
    """

    def __init__(
        self,
        lesson: Lesson,
        plan: SheetPlan,
        way: Way,
        tune_set: TuneSet | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Sheet"))
        self._lesson, self._tune_set, self._way = lesson, tune_set, way
        self.form = SheetForm(lesson, plan, len(tune_set.entries) if tune_set is not None else 0)
        self.preview = SheetPreview()
        self.state = QLabel()
        self.state.setWordWrap(True)
        self.state.setProperty("rank", "quiet")
        self.state.setAccessibleName(tr("Pages"))
        self.work = SheetWork(self)
        self.work.begun.connect(lambda: self._say(tr(WORKING)))
        self.work.done.connect(self._on_sheet)
        self.work.refused.connect(self._on_refused)
        self.form.changed.connect(self._ask)
        self.finished.connect(self.work.stop)
        self._lay_out(way)
        self._ask()

    @property
    def choice(self) -> SheetChoice:
        """What is chosen now; only while a bowing is ticked."""
        plan = self.form.plan
        assert plan is not None
        return SheetChoice(plan, self._way)

    def _lay_out(self, way: Way) -> None:
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.form, 1)
        column.addWidget(self.state)
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(side)
        split.addWidget(self.preview)
        split.setStretchFactor(1, 1)
        split.setSizes([FORM_WIDTH, WIDTH - FORM_WIDTH])
        split.setChildrenCollapsible(False)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        buttons.rejected.connect(self.reject)
        self.way_buttons: dict[Way, QPushButton] = {}
        for choice in Way:
            button = buttons.addButton(tr(WAY_TEXTS[choice]), QDialogButtonBox.ButtonRole.ActionRole)
            button.setAutoDefault(choice is way)
            button.clicked.connect(self._taker(choice))
            self.way_buttons[choice] = button
        self.way_buttons[Way.KEEP].setToolTip(tr("Keep this sheet in the lesson, for the next time"))
        row = QVBoxLayout(self)
        row.addWidget(split, 1)
        foot = QHBoxLayout()
        foot.addWidget(buttons)
        row.addLayout(foot)
        self.resize(fitting(self, WIDTH, HEIGHT))
        self.form.kind.setFocus()
        self.way_buttons[way].setDefault(True)  # only now does it belong to the dialog

    def _taker(self, way: Way) -> Callable[[], None]:
        return lambda: self._take(way)

    def _ask(self) -> None:
        plan = self.form.plan
        for button in self.way_buttons.values():
            button.setEnabled(plan is not None)
        if plan is None:
            self.work.stop()
            self._say(tr(NO_BOWING))
        else:
            self.work.ask(printed(self._lesson, self._tune_set, plan), plan)

    def _on_sheet(self, sheet: Sheet) -> None:
        self.preview.show_sheet(sheet)
        count = len(sheet.pages)
        plan = self.form.plan
        if plan is None or sheet.copies >= plan.copies:
            self._say(plural("1 page.", "{n} pages.", count))
        elif sheet.copies == 1:
            self._say(plural(
                "1 page; {copies} copies do not fit on one, one can.",
                "{n} pages; {copies} copies do not fit on one, one can.",
                count, copies=plan.copies,
            ))  # fmt: skip
        else:
            self._say(plural(
                "1 page; {copies} copies do not fit on one, {fitting} can.",
                "{n} pages; {copies} copies do not fit on one, {fitting} can.",
                count, copies=plan.copies, fitting=sheet.copies,
            ))  # fmt: skip

    def _on_refused(self, sentence: str) -> None:
        self.preview.show_sheet(None)
        self._say(sentence)
        for way in (Way.PRINT, Way.EXPORT):
            self.way_buttons[way].setEnabled(False)

    def _say(self, text: str) -> None:
        self.state.setText(text)

    def _take(self, way: Way) -> None:
        self._way = way
        self.accept()
