"""The bow check: totals, the accents to drive, and what the check finds, all of the bowing on the page.

Reads the document and sends edits to it; which finding is chosen goes out as a signal, which note has the focus comes
in by ``show_note``.
"""

from __future__ import annotations

from PySide6.QtCore import QItemSelection, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QLabel, QListView, QPushButton, QVBoxLayout, QWidget

from app.accent_chooser import KIND_WORDS, AccentChooser
from app.document import Document, State
from app.findings_model import FindingDelegate, FindingsModel, Role, why_text
from app.theme import Theme
from app.totals_view import TotalsView
from core.accent_plan import AccentPlan
from core.bowing import set_plan
from core.check import Finding
from core.checks import words

NOTHING_OPEN = "Open a tune and its bow check stands here."
NOTHING_FOUND = "Nothing found: the marks and slurs of this bowing agree, and what comes back is bowed as before."


class SideList(QWidget):
    """Totals and findings of the shown bowing.

    Signals:
        finding_chosen: The ``Finding`` whose notes should be shown, or None where none is chosen any more.
        hinted: A sentence for the status line.
    """

    finding_chosen = Signal(object)
    hinted = Signal(str)

    def __init__(self, document: Document, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._note_id = ""
        self.totals = TotalsView()
        self.accents = AccentChooser()
        self.accents.plan_chosen.connect(self._on_plan_chosen)
        self.model = FindingsModel(self)
        self.list = QListView()
        self.list.setAccessibleName("Findings")
        self.list.setModel(self.model)
        self._delegate = FindingDelegate(self.list)
        self.list.setItemDelegate(self._delegate)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.selectionModel().selectionChanged.connect(self._on_selection_changed)
        self.list.clicked.connect(self._on_clicked)
        self._list_width = 0
        self.list.verticalScrollBar().rangeChanged.connect(self._fit_rows)
        self._heading = QLabel("Bow check")
        self._heading.setProperty("rank", "heading")
        self._empty = QLabel(NOTHING_OPEN)
        self._empty.setWordWrap(True)
        self._empty.setProperty("rank", "quiet")
        self._empty.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._why = QLabel()
        self._why.setWordWrap(True)
        self._why.setProperty("rank", "quiet")
        self._why.setAccessibleName("Why this is found")
        self.remedy_button = QPushButton()
        self.remedy_button.clicked.connect(self.apply_remedy)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 12, 14, 12)
        column.setSpacing(10)
        for widget in (self._heading, self.totals, self.accents, self._empty, self.list, self._why, self.remedy_button):
            column.addWidget(widget, 1 if widget in (self.list, self._empty) else 0)
        document.lesson_changed.connect(self._on_lesson_changed)
        self._show_report()

    @property
    def chosen(self) -> Finding | None:
        """The chosen finding."""
        rows = self.list.selectionModel().selectedIndexes()
        return rows[0].data(Role.FINDING) if rows else None

    def show_note(self, note_id: str) -> None:
        """Highlight the findings about a note and bring the first into sight."""
        self._note_id = note_id
        rows = self.model.show_note(note_id)
        if rows and not any(self.list.selectionModel().isRowSelected(row) for row in rows):
            self.list.scrollTo(self.model.index(rows[0]))

    def choose(self, row: int) -> None:
        """Choose the finding in a row."""
        self.list.setCurrentIndex(self.model.index(row))

    def step(self, by: int) -> None:
        """Choose the next or the previous finding, round the ends."""
        count = self.model.rowCount()
        if count:
            current = self.list.currentIndex().row() if self.chosen is not None else -1 if by > 0 else count
            self.choose((current + by) % count)

    def apply_remedy(self) -> None:
        """Do what the chosen finding offers, as one undo step."""
        finding = self.chosen
        if finding is not None and finding.remedy is not None:
            self._document.edit(finding.remedy.label, finding.remedy.edit)
            self.hinted.emit(f"Done: {finding.remedy.label}.")

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._delegate.theme = theme
        self.totals.set_theme(theme)
        self.list.viewport().update()

    def _on_lesson_changed(self, before: State | None, after: State | None) -> None:
        self._show_report()

    def _show_report(self) -> None:
        state = self._document.state
        report = self._document.report() if state is not None else None
        self.totals.show_totals(report.totals if report is not None else None)
        self.totals.setVisible(state is not None)
        self.accents.setVisible(state is not None)
        if state is not None:
            self.accents.show_plan(state.bowing.accents, state.tune.bars[-1].meter, changes_text(state))
        findings = report.findings if report is not None else ()
        self.model.show_findings(findings)
        self.list.setVisible(bool(findings))
        self._empty.setVisible(not findings)
        self._empty.setText(NOTHING_FOUND if state is not None else NOTHING_OPEN)
        self._show_chosen()
        if self._note_id:
            self.model.show_note(self._note_id)

    def _fit_rows(self) -> None:
        """Lay the rows out anew where the scroll bar came or went: their texts wrap in another width then."""
        width = self.list.viewport().width()
        if width != self._list_width:
            self._list_width = width
            self.list.scheduleDelayedItemsLayout()

    def _on_selection_changed(self, chosen: QItemSelection, before: QItemSelection) -> None:
        self._show_chosen()
        self.finding_chosen.emit(self.chosen)

    def _on_clicked(self) -> None:
        self.finding_chosen.emit(self.chosen)  # once more: its notes may have been scrolled out of sight

    def _show_chosen(self) -> None:
        finding = self.chosen
        self._why.setVisible(finding is not None)
        self._why.setText(why_text(finding) if finding is not None else "")
        remedy = finding.remedy if finding is not None else None
        self.remedy_button.setVisible(remedy is not None)
        self.remedy_button.setText(remedy.label if remedy is not None else "")

    def _on_plan_chosen(self, plan: AccentPlan) -> None:
        name = KIND_WORDS[plan.kind]
        self._document.edit(f"Accents: {name[:1].lower()}{name[1:]}", lambda tune, bowing: set_plan(tune, bowing, plan))


def changes_text(state: State) -> str:
    """Which bars have accent plans other than the bowing's main one, as a sentence; "" where none has."""
    plans = state.bowing.plans(len(state.tune.bars))
    own = [bar for bar, plan in enumerate(plans) if plan != state.bowing.accents]
    if not own:
        return ""
    where = words.bars(state.tune, own)
    have = "has accents of its own" if len(own) == 1 else "have accents of their own"
    return f"{where[:1].upper()}{where[1:]} {have}. A choice here is for the whole tune."
