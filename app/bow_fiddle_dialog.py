"""Asks what a lesson is checked by: the bow, its speeds, the tempo, and how the fiddle is tuned."""

from __future__ import annotations

from fractions import Fraction

from PySide6.QtCore import QLocale
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from app.bow_words import beat_words, pace_words, tuning_words
from core.checks.reach import BEATS
from core.lesson import Lesson
from core.reach import BEATS_A_MINUTE, HAIR_CM, ORDINARY, SPEEDS_CM_S, ReachSettings
from core.strings import STANDARD, TUNINGS, Tuning, parse_tuning
from core.tempos import pace
from core.translation import tr, translatable
from core.tune import Tempo

ASSUMPTIONS = translatable(
    "Usual values: about 65 cm of hair on a full-size bow (instrument handbooks, from memory); bow speeds of 5 to "
    "100 cm/s in ordinary playing (Askenfelt, Journal of the Acoustical Society of America 80, 1986, and 86, 1989, "
    "from memory); the one even speed of 30 cm/s lies between, and is ours. Tempos of dances: Breathnach, Ceol Rince "
    "na hÉireann 1 (1963), and dance clubs. Tunings: common practice, no source."
)
OWN_TUNING = translatable("As typed here")
DECIMALS = 2
TITLE = 40  # pixels left for the title bar of the dialog
WIDTH = 72  # characters


class FigureBox(QDoubleSpinBox):
    """A box for figures without zeros behind the point, which keeps finer ones as long as they are not touched."""

    def __init__(self, limits: tuple[float, float], unit: str, step: float) -> None:
        super().__init__()
        self.setDecimals(DECIMALS)
        self.setRange(*limits)
        self.setSuffix(unit)
        self.setSingleStep(step)
        self._filled: tuple[float, Fraction | float] = self.value(), self.value()  # as shown and as it is

    def fill(self, value: Fraction | float) -> None:
        """Show a value."""
        self.setValue(float(value))
        self._filled = self.value(), value

    @property
    def figure(self) -> Fraction | float:
        """The value that it was filled with where that is still shown, else what was typed."""
        shown, value = self._filled
        return value if self.value() == shown else self.value()

    def textFromValue(self, value: float) -> str:
        return self.locale().toString(value, "f", QLocale.FloatingPointPrecisionOption.FloatingPointShortest.value)


class BowFiddleDialog(QDialog):
    """Hair, speeds, tempo and strings; what cannot be is refused in one sentence where it is typed.

    Args:
        lesson: Whose settings are shown.
    """

    def __init__(self, lesson: Lesson, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Bow and fiddle"))
        self._lesson = lesson
        self.hair = FigureBox(HAIR_CM, " cm", 0.5)
        self.even = FigureBox(SPEEDS_CM_S, " cm/s", 1)
        self.slowest = FigureBox(SPEEDS_CM_S, " cm/s", 1)
        self.fastest = FigureBox(SPEEDS_CM_S, " cm/s", 1)
        self.sets_tempo = QCheckBox(tr("Check at this &tempo, whatever the tune says"))
        self.beat = QComboBox()
        self.beat.setAccessibleName(tr("Note that is counted"))
        self.per_minute = FigureBox(BEATS_A_MINUTE, tr(" a minute"), 1)
        self.per_minute.setAccessibleName(tr("Beats a minute"))
        self.tuning = QComboBox()
        self.strings = QLineEdit()
        self.strings.setAccessibleName(tr("Open strings from low to high"))
        self.strings.setPlaceholderText("G3 D4 A4 E5")
        self.complaint = QLabel()
        self.complaint.setWordWrap(True)
        self.complaint.setProperty("rank", "heading")
        self.complaint.setAccessibleName(tr("What has to be changed first"))
        self._lay_out()
        self._show(lesson.reach, lesson.tuning)
        for spin in (self.hair, self.even, self.slowest, self.fastest, self.per_minute):
            spin.valueChanged.connect(self._on_changed)
        self.sets_tempo.toggled.connect(self._on_changed)
        self.beat.currentIndexChanged.connect(self._on_changed)
        self.tuning.currentIndexChanged.connect(self._on_tuning_chosen)
        self.strings.textChanged.connect(self._on_changed)
        self._on_changed()

    def _lay_out(self) -> None:
        own = pace(self._lesson.tune)
        of_tune = QLabel(tr("Otherwise {pace}.", pace=pace_words(own, is_set=False)))
        of_tune.setProperty("rank", "quiet")
        of_tune.setWordWrap(True)
        tempo = QHBoxLayout()
        tempo.addWidget(self.beat)
        tempo.addWidget(self.per_minute, 1)
        form = QFormLayout()
        form.addRow(tr("Length of the &hair"), self.hair)
        form.addRow(tr("&Even bow speed"), self.even)
        form.addRow(tr("&Slowest"), self.slowest)
        form.addRow(tr("&Fastest"), self.fastest)
        form.addRow("", self.sets_tempo)
        form.addRow(tr("Tempo"), tempo)
        form.addRow("", of_tune)
        form.addRow(tr("T&uning"), self.tuning)
        form.addRow("", self.strings)
        assumptions = QLabel(tr(ASSUMPTIONS))
        assumptions.setWordWrap(True)
        assumptions.setProperty("rank", "quiet")
        standard = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(standard.Ok | standard.Cancel | standard.RestoreDefaults)
        self.buttons.button(standard.RestoreDefaults).setText(tr("&Usual values"))
        self.buttons.button(standard.RestoreDefaults).clicked.connect(self._show_usual)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addLayout(form)
        column.addWidget(self.complaint)
        column.addWidget(assumptions)
        column.addWidget(self.buttons)
        for field in self._fields:
            field.setMinimumHeight(field.sizeHint().height())  # where room is scarce the text below gives way
        self.setMinimumWidth(WIDTH * self.fontMetrics().averageCharWidth())

    @property
    def _fields(self) -> tuple[QWidget, ...]:
        return (
            self.hair, self.even, self.slowest, self.fastest, self.sets_tempo, self.beat, self.per_minute, self.tuning,
            self.strings,
        )  # fmt: skip

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.sets_tempo.setMinimumWidth(self.sets_tempo.sizeHint().width())  # known once it has its style
        self._make_room()

    def _make_room(self) -> None:
        """Be as wide as the words and as high as the wrapped texts need, as far as the screen goes."""
        layout = self.layout()
        assert layout is not None
        width = max(self.width(), layout.totalMinimumSize().width())
        height = layout.totalHeightForWidth(width)
        self.resize(width, max(self.height(), min(height, self.screen().availableGeometry().height() - TITLE)))

    def _show(self, reach: ReachSettings, tuning: Tuning) -> None:
        self.hair.fill(reach.hair_cm)
        self.even.fill(reach.even_cm_s)
        self.slowest.fill(reach.slowest_cm_s)
        self.fastest.fill(reach.fastest_cm_s)
        self.sets_tempo.setChecked(reach.tempo is not None)
        tempo = reach.tempo or pace(self._lesson.tune).tempo
        self.beat.clear()
        for beat in sorted({*BEATS, tempo.beat}):
            self.beat.addItem(beat_words(beat), beat)
        self.beat.setCurrentIndex(self.beat.findText(beat_words(tempo.beat)))
        self.per_minute.fill(tempo.per_minute)
        self.tuning.clear()
        for common in TUNINGS.values():
            self.tuning.addItem(tuning_words(common), common)
        self.tuning.addItem(tr(OWN_TUNING))
        common_ones = list(TUNINGS.values())
        self.tuning.setCurrentIndex(common_ones.index(tuning) if tuning in common_ones else len(common_ones))
        self.strings.setText(str(tuning))

    def _show_usual(self) -> None:
        self._show(ORDINARY, STANDARD)

    @property
    def choice(self) -> tuple[ReachSettings, Tuning]:
        """What is set now.

        Raises:
            ValueError: it cannot be; the text is one sentence.
        """
        reach = ReachSettings(
            float(self.hair.figure), float(self.even.figure), float(self.slowest.figure), float(self.fastest.figure),
            Tempo(self.beat.currentData(), Fraction(str(self.per_minute.figure)))
            if self.sets_tempo.isChecked() else None,
        )  # fmt: skip
        return reach, self.tuning.currentData() or parse_tuning(self.strings.text())

    def _on_tuning_chosen(self) -> None:
        chosen = self.tuning.currentData()
        if chosen is not None:
            self.strings.setText(str(chosen))
        self._on_changed()

    def _on_changed(self) -> None:
        """Let what belongs together be seen together, and say what cannot be."""
        self.beat.setEnabled(self.sets_tempo.isChecked())
        self.per_minute.setEnabled(self.sets_tempo.isChecked())
        self.strings.setEnabled(self.tuning.currentIndex() == self.tuning.count() - 1)
        complaint = ""
        try:
            _ = self.choice
        except ValueError as fault:
            complaint = str(fault)
        self.complaint.setText(complaint)
        self.complaint.setVisible(bool(complaint))
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(not complaint)
        if complaint and self.isVisible():
            self._make_room()
