"""The lesson pack in the window: choose, watch or stop it, and open what was made."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QProgressBar,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from app.dialogs import Dialogs
from app.document import Document
from app.notice import Notice
from app.pack_form import PackForm
from app.pack_run import PackReport, Progress, repaired_text
from app.pack_sources import Source
from app.pack_work import PackWork
from app.settings import Settings
from app.window_layout import fitting
from core.translation import plural, tr


def open_folder(path: Path) -> bool:
    """Show a folder as the system does."""
    return QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))


class PackDialog(QDialog):
    """Three pages, one after the other: what goes in; how far it is; what came of it.

    Args:
        document: Its lesson is offered first.
        settings: Where folders were found last.
        dialogs: Asks for files and folders.
        show_folder: Shows the pack to the user.
    """

    def __init__(
        self,
        document: Document,
        settings: Settings,
        dialogs: Dialogs,
        parent: QWidget | None = None,
        show_folder: Callable[[Path], object] = open_folder,
    ) -> None:
        super().__init__(parent)
        self._document, self._show_folder = document, show_folder
        self._out = Path()
        self.setWindowTitle(tr("Lesson pack"))
        self.resize(fitting(self, 620, 600))
        self.work = PackWork(self)
        self.notice = Notice()
        self.form = PackForm(settings, dialogs)
        self._build()
        self.form.changed.connect(self._enable)
        self.make_button.clicked.connect(self.make)
        self.stop_button.clicked.connect(self.stop)
        self.again_button.clicked.connect(self.choose)
        self.folder_button.clicked.connect(lambda: self._show_folder(self._out))
        self.close_button.clicked.connect(self.close)
        document.lesson_changed.connect(lambda _, after: self.form.name_open_lesson(after.tune.title))
        self.work.moved.connect(self._on_moved)
        self.work.ended.connect(self._on_ended)
        self.work.failed.connect(self._on_failed)
        self.choose()

    def _build(self) -> None:
        self.bar = QProgressBar()
        self.bar.setAccessibleName(tr("How far the pack is"))
        self.doing = QLabel()
        self.doing.setAccessibleName(tr("What is being packed"))
        self.doing.setWordWrap(True)
        working = QWidget()
        column = QVBoxLayout(working)
        column.setContentsMargins(0, 0, 0, 0)
        column.addStretch(1)
        column.addWidget(self.doing)
        column.addWidget(self.bar)
        column.addStretch(2)
        self.told = QLabel()
        self.told.setAccessibleName(tr("What came of it"))
        self.told.setWordWrap(True)
        self.lines = QListWidget()
        self.lines.setAccessibleName(tr("What is not in the pack, and what else there is to tell"))
        self.lines.setWordWrap(True)
        end = QWidget()
        column = QVBoxLayout(end)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(self.told)
        column.addWidget(self.lines, 1)
        self._rest = QWidget()  # keeps the sentence on top where there are no lines
        column.addWidget(self._rest, 1)
        self.pages = QStackedWidget()
        self._working, self._end = working, end
        for page in (self.form, working, end):
            self.pages.addWidget(page)
        self.make_button = QPushButton(tr("&Make the pack"))
        self.make_button.setDefault(True)
        self.stop_button = QPushButton(tr("&Stop"))
        self.again_button = QPushButton(tr("&Back"))
        self.folder_button = QPushButton(tr("Open the &folder"))
        self.close_button = QPushButton(tr("Close"))
        ending = QHBoxLayout()
        ending.addWidget(self.again_button)
        ending.addStretch(1)
        for button in (self.make_button, self.stop_button, self.folder_button, self.close_button):
            ending.addWidget(button)
        for button in self.findChildren(QPushButton):
            button.setAutoDefault(False)
        column = QVBoxLayout(self)
        column.setSpacing(12)
        column.addWidget(self.notice)
        column.addWidget(self.pages, 1)
        column.addLayout(ending)

    # ------------------------------------------------------------------------------------------------- doing

    def present(self) -> None:
        """Show the dialog; the lesson that is on the page now is in the list."""
        if self.pages.currentWidget() is not self._working:
            if self._document.state is not None:
                self.form.offer_open_lesson(self._document.state.tune.title)
            self.choose()
        self.show()
        self.raise_()
        self.activateWindow()

    def choose(self) -> None:
        """Show what goes in."""
        self._turn_to(self.form, self.make_button, self.close_button)
        self.form.list.setFocus()

    def make(self) -> None:
        """Make the pack that was chosen."""
        if not self.form.is_complete or self.work.is_busy:
            return
        wish = self.form.wish(self._on_page)
        self.notice.hide()
        self._out = wish.out
        self._on_moved(Progress(tr("Reading"), 0, 0))
        self._turn_to(self._working, self.stop_button)
        self.stop_button.setEnabled(True)
        self.stop_button.setFocus()
        self.work.start(wish)

    def stop(self) -> None:
        """Stop the packing; what is made stands."""
        self.doing.setText(tr("Stopping …"))
        self.stop_button.setEnabled(False)
        self.work.stop()

    def reject(self) -> None:
        """Leave: stop what runs, or close."""
        if self.work.is_busy:
            self.stop()
        else:
            super().reject()

    def done(self, result: int) -> None:
        """Close; a packing that runs is stopped first."""
        self.work.stop()
        super().done(result)

    # ------------------------------------------------------------------------------------------------- showing

    def _on_page(self) -> Source:
        """The lesson on the page as it is now, saved or not."""
        from core.writing.musicxml import write_musicxml  # loaded when something is first written

        state = self._document.state
        assert state is not None, "a lesson that was on the page leaves it for another one only"
        path = self._document.path or Path(f"{state.tune.title or tr('Untitled')}.musicxml")
        return Source(path, write_musicxml(state.lesson).encode())

    def _turn_to(self, page: QWidget, *buttons: QPushButton) -> None:
        self.pages.setCurrentWidget(page)
        for button in (self.make_button, self.stop_button, self.again_button, self.folder_button, self.close_button):
            button.setVisible(button in buttons)
        self._enable()

    def _enable(self) -> None:
        self.make_button.setEnabled(self.form.is_complete)

    def _on_moved(self, progress: Progress) -> None:
        if not self.stop_button.isEnabled() and self.work.is_busy:
            return  # it is stopping
        self.bar.setRange(0, progress.total)
        self.bar.setValue(progress.done)
        self.doing.setText(progress.text)

    def _on_ended(self, report: PackReport, problems: Sequence[str]) -> None:
        text = plural(
            "1 lesson was made, {kept} stood already.", "{n} lessons were made, {kept} stood already.",
            report.made, kept=report.kept,
        )  # fmt: skip
        if report.stopped:
            more = tr("The pack is not whole: make it again, and only the rest is made.")
        else:
            more = tr("These are not in the pack:") if problems else ""
        self.told.setText(f"{text} {more}".strip())
        self.lines.clear()
        self.lines.addItems([*problems, *report.notices])
        if report.remarks:
            self.lines.addItem(repaired_text(report.remarks))
        self.lines.setVisible(self.lines.count() > 0)
        self._rest.setVisible(self.lines.count() == 0)
        self._turn_to(self._end, self.again_button, self.folder_button, self.close_button)
        self.folder_button.setFocus()

    def _on_failed(self, sentence: str) -> None:
        self.choose()
        self.notice.say(sentence)
