"""Which accent plan suits the tune: a sentence, and a small table whose rows set the accents."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLabel,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from core.accent_plan import PlanKind
from core.planner import Suited, sentence
from core.translation import tr, translatable

NAMES = translatable({PlanKind.ON_BEAT: "On the beat", PlanKind.BACKBEAT: "Backbeat", PlanKind.BY_PHRASE: "By phrase"})
COLUMNS: tuple[tuple[str, str, Callable[[Suited], object]], ...] = translatable((
    ("Accents", "Where in the bar the bowing drives", lambda suited: tr(NAMES[suited.plan.kind])),
    ("Missed", "Accents not driven, as played", lambda suited: suited.score.missed),
    ("Broken", "Bars bowed unlike their like, and retakes where parts meet", lambda suited: suited.score.broken),
    ("Slurs", "Slurs as written", lambda suited: suited.slurs),
    ("Retakes", "Retakes in one playing, the way back to the start included", lambda suited: suited.retakes),
))  # fmt: skip


class SuitsTable(QWidget):
    """The table with its sentence.

    Signals:
        plan_chosen: The ``AccentPlan`` of the row that the user chose.
    """

    plan_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Suited, ...] = ()
        self.table = QTableWidget(0, len(COLUMNS))
        self.table.setAccessibleName(tr("How the accent plans suit this tune"))
        self.table.setHorizontalHeaderLabels([tr(title) for title, _, _ in COLUMNS])
        for column, (_, tip, _) in enumerate(COLUMNS):
            self.table.horizontalHeaderItem(column).setToolTip(tr(tip))
        self.table.horizontalHeader().setHighlightSections(False)
        self.table.horizontalHeader().setMinimumSectionSize(20)
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.table.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.table.verticalHeader().hide()
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setProperty("rank", "small")
        self.table.setWordWrap(True)
        self.table.currentCellChanged.connect(self._on_row_changed)
        self.sentence = QLabel()
        self.sentence.setWordWrap(True)
        self.sentence.setAccessibleName(tr("Which accent plan suits this tune"))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self.sentence)
        layout.addWidget(self.table)

    @property
    def rows(self) -> tuple[Suited, ...]:
        """What is shown."""
        return self._rows

    def show_rows(self, rows: Sequence[Suited]) -> None:
        """Show other rows; none is chosen."""
        self._rows = tuple(rows)
        self.table.blockSignals(True)
        self.table.setRowCount(len(rows))
        for row, suited in enumerate(rows):
            for column, (_, _, value) in enumerate(COLUMNS):
                item = QTableWidgetItem(str(value(suited)))
                if column:
                    item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
                self.table.setItem(row, column, item)
        self.table.setCurrentCell(-1, -1)
        self.table.blockSignals(False)
        self.sentence.setText(sentence(rows) if rows else "")
        self._fit()

    def _fit(self) -> None:
        """As high as its rows."""
        self.table.resizeRowsToContents()
        rows = sum(self.table.rowHeight(row) for row in range(self.table.rowCount()))
        header = self.table.horizontalHeader()
        columns = [header.sectionSizeHint(column) for column in range(len(COLUMNS))]
        columns[0] = max(columns[0], self.table.sizeHintForColumn(0))
        fits = sum(columns) + 4 <= self.width()
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch if fits else QHeaderView.ResizeMode.Fixed)
        if not fits:
            header.resizeSection(0, columns[0])
        bar = 0 if fits else self.table.horizontalScrollBar().sizeHint().height()
        self.table.setFixedHeight(rows + header.sizeHint().height() + bar + 4)

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)
        self._fit()

    def _on_row_changed(self, row: int) -> None:
        if 0 <= row < len(self._rows):
            self.plan_chosen.emit(self._rows[row].plan)
