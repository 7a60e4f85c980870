"""The controls of the planner: accents, how much is slurred, which bars, what stays, limits of a stroke."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from fractions import Fraction

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFormLayout,
    QGridLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QSlider,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.plan_choices import Choices, Span
from app.plan_words import ACCENTS, FLOWS, LENGTHS, OWN_ACCENTS, SPANS, accents_text
from app.settings import Settings
from core.accent_plan import AccentPlan
from core.planner import Flow
from core.translation import tr, translatable

LIMITS = translatable("Limits of a stroke")
FEWEST_NOTES, MOST_NOTES = 2, 16
FLOW_SIDES = translatable((
    ("fewest", Qt.AlignmentFlag.AlignLeft), ("some", Qt.AlignmentFlag.AlignHCenter),
    ("smooth", Qt.AlignmentFlag.AlignRight),
))  # fmt: skip
KEEP = ("keep", "afresh")


class PlanForm(QWidget):
    """Shows ``Choices`` and lets the user change them.

    Signals:
        changed: The user chose something else.
    """

    changed = Signal()

    def __init__(self, settings: Settings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        self._quiet = False
        self.accents = QComboBox()
        self.accents.setAccessibleName(tr("Accents that the planned bowing drives"))
        self.accents.addItem(tr(OWN_ACCENTS), None)
        for plan, text in ACCENTS.items():
            self.accents.addItem(tr(text), plan)
        self.flow = QSlider(Qt.Orientation.Horizontal)
        self.flow.setRange(min(Flow), max(Flow))
        self.flow.setPageStep(1)
        self.flow.setAccessibleName(tr("How much is slurred"))
        self.span = QComboBox()
        self.span.setAccessibleName(tr("Which bars may change"))
        for span, text in SPANS.items():
            self.span.addItem(tr(text), span)
        self.keep = QCheckBox(tr("&Keep my slurs and marks"))
        self.keep.setToolTip(tr("Slurs, hooks, fixed marks and retakes stay; unticked, the bars are bowed afresh"))
        self.most_notes = QSpinBox()
        self.most_notes.setRange(FEWEST_NOTES, MOST_NOTES)
        self.most_notes.setAccessibleName(tr("Notes in a planned stroke at most"))
        self.longest = QComboBox()
        self.longest.setAccessibleName(tr("How long a planned stroke may last"))
        for share, text in LENGTHS.items():
            self.longest.addItem(tr(text), share)
        for box in (self.accents, self.span, self.longest):
            box.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.limits_button = QPushButton()
        self.limits_button.setProperty("rank", "link")
        self.limits_button.setCheckable(True)
        self.limits_button.setAccessibleName(LIMITS)
        self.limits = QWidget()
        self._lay_out()
        self.restore()
        self._fold()
        self.accents.activated.connect(self._on_chosen)
        self.flow.valueChanged.connect(self._on_chosen)
        self.span.activated.connect(self._on_chosen)
        self.keep.toggled.connect(self._on_chosen)
        self.most_notes.valueChanged.connect(self._on_chosen)
        self.longest.activated.connect(self._on_chosen)
        self.limits_button.toggled.connect(self._fold)

    def _lay_out(self) -> None:
        rows = QFormLayout()
        rows.setContentsMargins(0, 0, 0, 0)
        rows.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        rows.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        rows.addRow(tr("&Drive"), self.accents)
        ends = QWidget()
        grid = QGridLayout(ends)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setVerticalSpacing(0)
        grid.addWidget(self.flow, 0, 0, 1, len(FLOW_SIDES))
        for column, (text, side) in enumerate(FLOW_SIDES):
            place = QLabel(tr(text))
            place.setProperty("rank", "quiet")
            grid.addWidget(place, 1, column, side)
            grid.setColumnStretch(column, 1)
        rows.addRow(tr("S&lurs"), ends)
        rows.labelForField(ends).setBuddy(self.flow)
        rows.addRow(tr("Ba&rs"), self.span)
        limits = QFormLayout(self.limits)
        limits.setContentsMargins(16, 0, 0, 0)
        limits.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        limits.addRow(tr("Notes at most"), self.most_notes)
        limits.addRow(tr("Lasts at most"), self.longest)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(rows)
        column.addWidget(self.keep)
        column.addWidget(self.limits_button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.limits)

    @property
    def choices(self) -> Choices:
        """What is chosen now."""
        return Choices(
            accents=self.accents.currentData(),
            flow=Flow(self.flow.value()),
            span=self.span.currentData(),
            keep=self.keep.isChecked(),
            most_notes=self.most_notes.value(),
            longest=self.longest.currentData(),
        )

    def show_choices(self, choices: Choices) -> None:
        """Show other choices; nothing is announced and nothing remembered."""
        with self._quietly():
            if choices.accents is not None and index_of(self.accents, choices.accents) < 0:
                self.accents.addItem(accents_text(choices.accents), choices.accents)
            self.accents.setCurrentIndex(index_of(self.accents, choices.accents))
            self.flow.setValue(choices.flow)
            self.span.setCurrentIndex(index_of(self.span, choices.span))
            self.keep.setChecked(choices.keep)
            self.most_notes.setValue(choices.most_notes)
            self.longest.setCurrentIndex(index_of(self.longest, choices.longest))
        self._describe_flow()

    def choose_accents(self, plan: AccentPlan) -> None:
        """Choose accents for the user, who pointed at them elsewhere."""
        if self.choices.accents != plan:
            self.show_choices(replace(self.choices, accents=plan))
            self._on_chosen()

    def restore(self) -> None:
        """What was chosen last, for all bars and the accents that the bowing has: these belong to a tune."""
        remembered = self._settings.planner_choice
        flow = remembered("flow", tuple(str(int(flow)) for flow in Flow))
        notes = [str(number) for number in range(FEWEST_NOTES, MOST_NOTES + 1)]
        notes.insert(0, notes.pop(notes.index(str(Choices().most_notes))))
        shares = sorted(map(str, LENGTHS), key=lambda share: share != str(Choices().longest))
        self.show_choices(
            Choices(
                flow=Flow(int(flow)),
                keep=remembered("keep", KEEP) == KEEP[0],
                most_notes=int(remembered("most_notes", tuple(notes))),
                longest=Fraction(remembered("longest", tuple(shares))),
            )
        )

    def _remember(self) -> None:
        choices, remember = self.choices, self._settings.remember_planner_choice
        remember("flow", str(int(choices.flow)))
        remember("most_notes", str(choices.most_notes))
        remember("longest", str(choices.longest))
        if choices.span is not Span.ONWARD:  # from a note on one bows afresh, and does not mean to the next time
            remember("keep", KEEP[not choices.keep])

    def _on_chosen(self) -> None:
        if not self._quiet:
            self._describe_flow()
            self._remember()
            self.changed.emit()

    def _describe_flow(self) -> None:
        text = tr(FLOWS[Flow(self.flow.value())])
        self.flow.setAccessibleDescription(text)
        self.flow.setToolTip(tr("How much is slurred: {text}", text=text))

    def _fold(self) -> None:
        unfolded = self.limits_button.isChecked()
        self.limits_button.setText(f"{'▾' if unfolded else '▸'} {tr(LIMITS)}")
        self.limits.setVisible(unfolded)

    @contextmanager
    def _quietly(self) -> Iterator[None]:
        self._quiet = True
        try:
            yield
        finally:
            self._quiet = False


def index_of(box: QComboBox, value: object) -> int:
    """Place of the item that holds a value equal to this (Qt would ask for the very same); -1 where none does."""
    return next((index for index in range(box.count()) if box.itemData(index) == value), -1)
