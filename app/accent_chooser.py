"""Chooses the accents that a bowing is meant to drive."""

from __future__ import annotations

from fractions import Fraction

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QToolButton, QVBoxLayout, QWidget

from core.accent_plan import AccentPlan, PlanKind, accented_places
from core.translation import tr, translatable
from core.tune import Meter

KIND_WORDS = translatable({
    PlanKind.ON_BEAT: "On the beat",
    PlanKind.BACKBEAT: "On the backbeat",
    PlanKind.BY_PHRASE: "As each phrase does better",
    PlanKind.NONE: "None",
    PlanKind.PLACES: "At places of your own",
})  # fmt: skip
LETTERS = 16  # of a choice in sight, at least
EIGHTH = Fraction(1, 2)
COUNTS = {2: ("{}", "e", "&", "a"), 4: ("{}", "&")}  # how the eighths of one beat are counted, by the metre's unit


class AccentChooser(QWidget):
    """A list of accent plans, and for places of one's own a button for each eighth of the bar.

    Signals:
        plan_chosen: An ``AccentPlan`` that the user chose; never sent by ``show_plan``.
    """

    plan_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plan = AccentPlan()
        self._meter = Meter()
        self._changes = ""
        self.kinds = QComboBox()
        self.kinds.setAccessibleName(tr("Accents to drive"))
        for kind, words in KIND_WORDS.items():
            self.kinds.addItem(tr(words), kind)
        self.kinds.setToolTip(tr("Where in the bar the bow is meant to drive with a new down-bow"))
        self.kinds.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.kinds.setMinimumContentsLength(LETTERS)  # in large text the pane need not be as wide as the longest
        self.kinds.view().setMinimumWidth(self.kinds.view().sizeHintForColumn(0))
        self.kinds.activated.connect(self._on_kind_chosen)
        label = QLabel(tr("&Accents"))
        label.setBuddy(self.kinds)
        row = QHBoxLayout()
        row.addWidget(label)
        row.addWidget(self.kinds, 1)
        self._places = QWidget()
        self._places.setAccessibleName(tr("Accented places of the bar"))
        self._places_row = QHBoxLayout(self._places)
        self._places_row.setContentsMargins(0, 0, 0, 0)
        self._places_row.setSpacing(2)
        self._buttons: dict[Fraction, QToolButton] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(row)
        column.addWidget(self._places)
        self.changes = QLabel()
        self.changes.setWordWrap(True)
        self.changes.setProperty("rank", "quiet")
        self.changes.setAccessibleName(tr("Bars with accents of their own"))
        self.changes.hide()
        column.addWidget(self.changes)
        self._places.hide()

    @property
    def place_buttons(self) -> dict[Fraction, QToolButton]:
        """The button of each place, in quarter notes from the start of the bar."""
        return dict(self._buttons)

    def show_plan(self, plan: AccentPlan, meter: Meter, changes: str = "") -> None:
        """Show a bowing's plan for a tune in a metre, and a sentence about the bars with other plans, if any."""
        if changes != self._changes:
            self._changes = changes
            self.changes.setText(changes)
            self.changes.setVisible(bool(changes))
        if (plan, meter) == (self._plan, self._meter) and self.kinds.currentData() is plan.kind:
            return
        self._plan, self._meter = plan, meter
        self.kinds.setCurrentIndex(self.kinds.findData(plan.kind))
        own = plan.kind is PlanKind.PLACES
        if own:
            self._show_places(place_labels(meter, plan.places))
        self._places.setVisible(own)

    def _show_places(self, labels: dict[Fraction, str]) -> None:
        if list(labels) != list(self._buttons):
            for button in self._buttons.values():
                self._places_row.removeWidget(button)
                button.deleteLater()
            self._buttons = {}
            for place, label in labels.items():
                button = QToolButton()
                button.setText(label.replace("&", "&&"))  # else Qt takes it for the mark of a key
                button.setCheckable(True)
                button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
                button.setAccessibleName(
                    tr("Accent at count {label}, {place} quarter notes into the bar", label=label, place=place)
                )
                button.toggled.connect(self._on_place_toggled)
                self._places_row.addWidget(button, 1)
                self._buttons[place] = button
        for place, button in self._buttons.items():
            button.blockSignals(True)
            button.setChecked(place in self._plan.places)
            button.blockSignals(False)

    def _on_kind_chosen(self, index: int) -> None:
        kind = self.kinds.itemData(index)
        if kind is not self._plan.kind or self._changes:
            self.plan_chosen.emit(own_places(self._plan, self._meter) if kind is PlanKind.PLACES else AccentPlan(kind))

    def _on_place_toggled(self) -> None:
        places = tuple(place for place, button in self._buttons.items() if button.isChecked())
        self.plan_chosen.emit(AccentPlan(PlanKind.PLACES, places) if places else AccentPlan(PlanKind.NONE))


def own_places(plan: AccentPlan, meter: Meter) -> AccentPlan:
    """Places of one's own to begin with: where the plan so far has its accents, else the first note of the bar."""
    named = AccentPlan(PlanKind.ON_BEAT) if plan.kind is PlanKind.BY_PHRASE else plan
    return AccentPlan(PlanKind.PLACES, accented_places(named, meter) or (Fraction(0),))


def place_labels(meter: Meter, places: tuple[Fraction, ...] = ()) -> dict[Fraction, str]:
    """How each place of a bar is counted, by quarter notes from its start: every eighth, and any finer place given.

    >>> list(place_labels(Meter((2,), 4)).values())
    ['1', '&', '2', '&']
    """
    length = meter.bar_length or Fraction(4)
    counts = COUNTS.get(meter.unit)
    labels: dict[Fraction, str] = {}
    for eighth in range(int(length / EIGHTH)):
        if counts is None:
            labels[eighth * EIGHTH] = str(eighth + 1)
        else:
            beat, part = divmod(eighth, len(counts))
            labels[eighth * EIGHTH] = counts[part].format(beat + 1)
    for place in places:
        labels.setdefault(place, str(place))
    return dict(sorted(labels.items()))
