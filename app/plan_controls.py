"""All that is seen of the planner, from the top: what is chosen, the work, its results, and what else it can tell."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from app.plan_form import PlanForm
from app.plan_results import PlanResults, button
from app.plan_suits import SuitsTable
from app.settings import Settings
from app.style_chooser import StyleChooser
from core.translation import tr


class PlanControls(QScrollArea):
    """Lays out the planner; ``app.plan_pane`` puts it to work.

    Args:
        settings: Remembers what was chosen.
    """

    def __init__(self, settings: Settings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.form = PlanForm(settings)
        self.work_button = button(tr("&Work out"), tr("Work out the best bowing and show it on the page"))
        self.cancel_button = button(tr("Cancel"), tr("Leave off working it out"))
        self.styles = StyleChooser(settings)
        self.results = PlanResults()
        self.suits_button = button(tr("Which accents &suit this tune?"), tr("Compare the accent plans on this tune"))
        self.suits = SuitsTable()
        self.versions_button = button(
            tr("Add startin&g versions"),
            tr("Add four bowings to start from: separate bows, on the beat, backbeat, smooth"),
        )
        working = QHBoxLayout()
        working.addWidget(self.work_button, 1)
        working.addWidget(self.cancel_button)
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(14, 12, 14, 12)
        column.setSpacing(10)
        column.addWidget(self.form)
        column.addLayout(working)
        column.addSpacing(8)
        column.addWidget(self.styles)
        column.addWidget(self.results)
        column.addSpacing(8)
        for widget in (self.suits_button, self.suits, self.versions_button):
            column.addWidget(widget)
        column.addStretch(1)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(inside)

    @property
    def wanted_width(self) -> int:
        """Pixels that it needs so as not to be scrolled sideways; more with larger text."""
        return self.widget().minimumSizeHint().width() + self.verticalScrollBar().sizeHint().width()

    def enable(self, enabled: bool) -> None:
        """Let work be asked for, or not."""
        for control in (
            self.work_button, self.styles.carry_button, self.suits_button, self.versions_button,
        ):  # fmt: skip
            control.setEnabled(enabled)

    def show_suits(self) -> None:
        """Bring the table of accent plans into sight, once it has its size."""
        self.suits.show()
        QTimer.singleShot(0, self, lambda: self.ensureWidgetVisible(self.suits))
