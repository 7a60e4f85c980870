"""The bow check: totals, the accents to drive, and what the check finds, all of the bowing on the page.

Reads the document and sends edits to it; which finding is chosen goes out as a signal, which note has the focus comes
in by ``show_note``.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QItemSelection, QPoint, Qt, QTimer, Signal
from PySide6.QtWidgets import QAbstractItemView, QLabel, QMenu, QPushButton, QVBoxLayout, QWidget

from app.accent_chooser import KIND_WORDS, AccentChooser
from app.comparison import Comparison
from app.document import Document, State
from app.findings_list import FindingsList
from app.findings_model import FindingDelegate, FindingsModel, Role, why_text
from app.later import Later
from app.quiet_menus import Change, all_back, finding_menu, quiet_text, restoring_menu, step
from app.remedy_panel import LOOKING, NONE_FOUND, RemedyPanel
from app.remedy_search import RemedySearch
from app.scrolled_pane import ScrolledPane
from app.theme import Theme
from app.totals_view import TotalsView
from core.accent_plan import AccentPlan
from core.bowing import set_plan
from core.check import Finding, Remedy, Severity
from core.checks import words
from core.translation import inside, plural, tr, translatable

if TYPE_CHECKING:
    from app.comparison_table import ComparisonTable

NOTHING_OPEN = translatable("Open a tune and its bow check stands here.")
CHECKING = translatable("The bow is being checked …")
NOTHING_FOUND = translatable(
    "Nothing found: the marks and slurs of this bowing agree, and what comes back is bowed as before."
)
NOTHING_TOLD = translatable("Nothing found by the rules that are told in this lesson.")


class SideList(QWidget):
    """Totals and findings of the shown bowing.

    Signals:
        finding_chosen: The ``Finding`` whose notes should be shown, or None where none is chosen any more.
        remedy_pointed: The ``Remedy`` that the pointer or the keyboard has come to, or None where it has left.
        hinted: A sentence for the status line.
    """

    finding_chosen = Signal(object)
    remedy_pointed = Signal(object)
    hinted = Signal(str)

    def __init__(
        self,
        document: Document,
        parent: QWidget | None = None,
        comparison: Comparison | None = None,
        later: Later | None = None,
    ) -> None:
        super().__init__(parent)
        self._later = later or Later()
        self._document = document
        self._comparison = comparison or Comparison(document, self)
        self._note_id = ""
        self._is_changing = False  # the rows of the list
        self._asked: tuple[State, Finding] | None = None  # what remedies are shown or looked for
        self.totals = TotalsView()
        self.accents = AccentChooser()
        self.accents.plan_chosen.connect(self._on_plan_chosen)
        self.model = FindingsModel(self)
        self.list = FindingsList()
        self.list.setAccessibleName(tr("Findings"))
        self.list.setModel(self.model)
        self._delegate = FindingDelegate(self.list)
        self.list.setItemDelegate(self._delegate)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setResizeMode(FindingsList.ResizeMode.Adjust)
        self.list.selectionModel().selectionChanged.connect(self._on_selection_changed)
        self.list.clicked.connect(self._on_clicked)
        self.list.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.list.customContextMenuRequested.connect(self._show_finding_menu)
        self._list_width = 0
        self.list.verticalScrollBar().rangeChanged.connect(self._fit_rows)
        self._heading = QLabel(tr("Bow check"))
        self._heading.setProperty("rank", "heading")
        self._empty = QLabel(tr(NOTHING_OPEN))
        self._empty.setWordWrap(True)
        self._empty.setProperty("rank", "quiet")
        self._empty.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._why = QLabel()
        self._why.setWordWrap(True)
        self._why.setProperty("rank", "quiet")
        self._why.setAccessibleName(tr("Why this is found"))
        self.remedies = RemedyPanel()
        self.remedies.chosen.connect(self._apply)
        self.remedies.pointed.connect(self.remedy_pointed)
        self._search = RemedySearch(self)
        self._search.found.connect(self._on_remedies_found)
        self.quiet_line = QPushButton()
        self.quiet_line.setProperty("rank", "link")
        self.quiet_line.clicked.connect(self._show_restoring_menu)
        inside = QWidget()
        self._column = column = QVBoxLayout(inside)
        column.setContentsMargins(14, 12, 14, 12)
        column.setSpacing(10)
        for widget in (self._heading, self.totals, self.accents, self._empty, self.list, self.quiet_line,
                       self.remedies, self._why):  # fmt: skip
            column.addWidget(widget, 1 if widget in (self.list, self._empty) else 0)
        column.setAlignment(self.quiet_line, Qt.AlignmentFlag.AlignLeft)
        self._area = ScrolledPane(inside)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self._area)
        document.lesson_changed.connect(self._on_lesson_changed)
        self._comparison.changed.connect(self._show_totals)
        self._show_report()

    @property
    def chosen(self) -> Finding | None:
        """The chosen finding."""
        rows = self.list.selectionModel().selectedIndexes()
        return rows[0].data(Role.FINDING) if rows else None

    @cached_property
    def table(self) -> ComparisonTable:
        """The totals of all that are compared, made when they first are."""
        from app.comparison_table import ComparisonTable  # not for the start

        table = ComparisonTable(self._document, self._comparison)
        before = self.accents.previousInFocusChain()
        self._column.insertWidget(self._column.indexOf(self.accents), table)
        self.setTabOrder(before, table)
        return table

    @property
    def waits(self) -> bool:
        """Whether remedies of the chosen finding are still looked for."""
        return self._search.runs

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
        """Choose the next or the previous finding, round the ends; after one that is told no longer, from its place."""
        count = self.model.rowCount()
        if count:
            row = self.list.currentIndex().row()  # -1 where none was chosen yet
            if self.chosen is not None:
                row += by
            elif by > 0:
                row = max(row, 0)
            else:
                row = (row if row >= 0 else count) - 1
            self.choose(row % count)

    def apply_remedy(self) -> None:
        """Do the first that is offered for the chosen finding, as one undo step."""
        if self.remedies.remedies:
            self._apply(self.remedies.remedies[0])
        elif self.waits:
            self.hinted.emit(tr(LOOKING))

    def turn_down(self, told_as: Severity | None) -> None:
        """Tell the rule of the chosen finding as a note, or not at all in this lesson, as one undo step."""
        if self.chosen is None:
            self.hinted.emit(tr("Choose a finding first."))
        else:
            self._change_quiet(*step(self.chosen.rule, told_as))

    def tell_all(self) -> None:
        """Tell every rule as it is again, as one undo step."""
        self._change_quiet(*all_back())

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._delegate.theme = theme
        self.totals.set_theme(theme)
        if self.list.isVisible():
            self.list.viewport().update()

    def _on_lesson_changed(self, before: State | None, after: State | None) -> None:
        if self._later.waits:
            self._empty.setText(tr(CHECKING))
        self._later.do(self._show_report)

    def _show_report(self) -> None:
        state = self._document.state
        report = self._document.report() if state is not None else None
        self._show_totals()
        self.accents.setVisible(state is not None)
        if state is not None:
            self.accents.show_plan(state.bowing.accents, state.tune.bars[-1].meter, changes_text(state))
        findings = report.findings if report is not None else ()
        self._show_findings(findings)
        self.list.setVisible(bool(findings))
        self._empty.setVisible(not findings)
        quiet = quiet_text(state.lesson.quiet) if state is not None else ""
        self._empty.setText(tr(NOTHING_OPEN if state is None else NOTHING_TOLD if quiet else NOTHING_FOUND))
        self.quiet_line.setVisible(bool(quiet))
        self.quiet_line.setText(quiet)
        self._show_chosen()
        if self._note_id:
            self.model.show_note(self._note_id)

    def _show_findings(self, findings: Sequence[Finding]) -> None:
        """Show other findings; the chosen one stays chosen while it is told, and no other takes its place.

        Whoever edits looks at what they edit: another finding would scroll the page to its own notes.
        """
        before = self.chosen
        self._is_changing = True
        self.model.show_findings(findings)
        if before in findings:
            self.choose(findings.index(before))
        else:
            self.list.clearSelection()
        self._is_changing = False
        if self.chosen != before:
            self.finding_chosen.emit(self.chosen)

    def _show_totals(self) -> None:
        """The totals of the shown bowing, or in a table those of all that are compared."""
        state, runs = self._document.state, self._comparison.runs
        if not runs:
            self.totals.show_report(self._document.report() if state is not None else None)
        self.totals.setVisible(state is not None and not runs)
        if runs or "table" in self.__dict__:
            self.table.show_totals()

    def _fit_rows(self) -> None:
        """Lay the rows out anew where the scroll bar came or went: their texts wrap in another width then."""
        width = self.list.viewport().width()
        if width != self._list_width:
            self._list_width = width
            self.list.scheduleDelayedItemsLayout()

    def _on_selection_changed(self, chosen: QItemSelection, before: QItemSelection) -> None:
        if self._is_changing:
            return
        self._show_chosen()
        self.finding_chosen.emit(self.chosen)

    def _on_clicked(self) -> None:
        self.finding_chosen.emit(self.chosen)  # once more: its notes may have been scrolled out of sight

    def _show_chosen(self) -> None:
        finding = self.chosen
        self._why.setVisible(finding is not None)
        self._why.setText(why_text(finding) if finding is not None else "")
        self._show_remedies(finding)

    # ------------------------------------------------------------------------------------------------- remedies

    def _show_remedies(self, finding: Finding | None) -> None:
        """Offer what mends a finding: at once where nothing is to be tried, else as soon as it is found."""
        state = self._document.state
        if state is None or finding is None:
            self._asked = None
            self._search.stop()
            self.remedies.say("")
        elif self._asked is None or self._asked[0] is not state or self._asked[1] != finding:
            from core.remedies import SEARCHED, remedies  # not for the start

            self._asked = state, finding
            self._search.stop()
            if finding.rule in SEARCHED:
                self.remedies.say(tr(LOOKING))
                self._search.start(state.lesson, state.bowing, finding)
            else:
                self.remedies.offer(remedies(state.tune, state.bowing, finding))
            self._keep_chosen_in_sight()

    def _on_remedies_found(self, found: Sequence[Remedy]) -> None:
        if found:
            self.remedies.offer(found)
        else:
            self.remedies.say(tr(NONE_FOUND))
        self._keep_chosen_in_sight()

    def _keep_chosen_in_sight(self) -> None:
        """Scroll to the chosen row, and to what mends it, when the list has made room for what is said below it."""
        QTimer.singleShot(0, self, self._show_chosen_row)

    def _show_chosen_row(self) -> None:
        for widget in (self.remedies, self.list):  # where not both have room, what is chosen
            if widget.isVisible():
                self._area.ensureWidgetVisible(widget)
        self.list.scrollTo(self.list.currentIndex())

    def _apply(self, remedy: Remedy) -> None:
        self._document.edit(remedy.label, remedy.edit)
        self.hinted.emit(tr("Done: {edit}.", edit=remedy.label))

    # ------------------------------------------------------------------------------------------------- turning down

    def _show_finding_menu(self, place: QPoint) -> None:
        index, state = self.list.indexAt(place), self._document.state
        if index.isValid() and state is not None:
            menu = finding_menu(self, index.data(Role.FINDING), state.lesson.quiet, self._change_quiet)
            self._pop_up(menu, self.list.viewport().mapToGlobal(place))

    def _show_restoring_menu(self) -> None:
        state = self._document.state
        if state is not None:
            menu = restoring_menu(self, state.lesson.quiet, self._change_quiet)
            self._pop_up(menu, self.quiet_line.mapToGlobal(QPoint(0, self.quiet_line.height())))

    def _pop_up(self, menu: QMenu, place: QPoint) -> None:
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(place)

    def _change_quiet(self, label: str, change: Change) -> None:
        state, chosen = self._document.state, self.chosen
        if state is None:
            return
        if self._document.change(label, lambda lesson: replace(lesson, quiet=change(lesson.quiet)), state.shown):
            self.hinted.emit(tr("Done: {edit}.", edit=label))
        for row, finding in enumerate(self.model.findings):
            if chosen is not None and (finding.rule, finding.notes) == (chosen.rule, chosen.notes):
                self.choose(row)  # it may be told as something else now, and is still the one that was chosen
                break

    # ------------------------------------------------------------------------------------------------- accents

    def _on_plan_chosen(self, plan: AccentPlan) -> None:
        label = tr("Accents: {plan}", plan=inside(tr(KIND_WORDS[plan.kind])))
        self._document.edit(label, lambda tune, bowing: set_plan(tune, bowing, plan))


def changes_text(state: State) -> str:
    """Which bars have accent plans other than the bowing's main one, as a sentence; "" where none has."""
    if not state.bowing.accent_changes:
        return ""
    plans = state.bowing.plans(len(state.tune.bars))
    own = [bar for bar, plan in enumerate(plans) if plan != state.bowing.accents]
    if not own:
        return ""
    where = words.bars(state.tune, own)
    return plural(
        "{bars} has accents of its own. A choice here is for the whole tune.",
        "{bars} have accents of their own. A choice here is for the whole tune.",
        len(own), "n: bars", bars=where[:1].upper() + where[1:],
    )  # fmt: skip
