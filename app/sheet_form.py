"""The fields in which a printed sheet is set up: kind and bowings, music, words, paper."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from enum import Enum
from typing import Any

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFormLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPlainTextEdit,
    QSpinBox,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from core.drills import DRILLS
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson
from core.sheet_plan import COPIES, PAPERS, NoteSize, SheetKind, SheetPlan, TextBlock, turned_into
from core.translation import plural, tr, translatable

KIND_WORDS = translatable({
    SheetKind.PLAIN: ("Bowings", "The bowings one after the other, and nothing else."),
    SheetKind.TEACHER: ("Teacher's sheet", "All bowings with their totals and what the check finds in them."),
    SheetKind.CLASS: ("Class sheet", "To play from: as large as the page allows, with what the signs mean."),
    SheetKind.EXERCISE: ("Exercise", "The bowing is left out, to be written in; the key is a page of its own."),
    SheetKind.SET: ("Set", "Tunes one after the other, and how the bow comes from each to the next."),
})  # fmt: skip
SIZE_WORDS = translatable({
    NoteSize.SMALL: "Small",
    NoteSize.NORMAL: "Normal",
    NoteSize.LARGE: "Large",
    NoteSize.FILL: "As large as the page allows",
    NoteSize.SCREEN: "For a small screen",
})  # fmt: skip
DENSITY_WORDS = translatable({
    MarkDensity.EVERY: "On every stroke",
    MarkDensity.BARS: "Where each bar begins",
    MarkDensity.NEEDED: "Only where needed to read the rest",
})  # fmt: skip
COPY_WORDS = translatable({1: "One", 2: "Two, to be cut apart", 4: "Four, to be cut apart"}, "copies")
NO_DRILL = translatable("None: the bowing as it is")
LAST_BAR = 9999


class SheetForm(QWidget):
    """Shows a ``SheetPlan`` and takes what is changed in it.

    Args:
        lesson: What is printed.
        plan: As it is shown at first.
        set_size: Tunes of the set in hand; 0 where there is none.

    Signals:
        changed: The plan is another.
    """

    changed = Signal()

    def __init__(self, lesson: Lesson, plan: SheetPlan, set_size: int = 0, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._lesson = lesson
        self._kind = plan.kind
        self._for_others: tuple[str, ...] = ()  # bowings chosen before those of a teacher's sheet; empty for all
        self.kind = _choice({kind: tr(words[0]) for kind, words in KIND_WORDS.items()})
        self.about = QLabel()
        self.about.setWordWrap(True)
        self.about.setProperty("rank", "quiet")
        self._set_size = set_size
        self.bowings = self._bowing_list()
        self.size_of_notes = _choice({size: tr(words) for size, words in SIZE_WORDS.items()})
        self.marks = _choice({density: tr(words) for density, words in DENSITY_WORDS.items()})
        self.strip = QCheckBox(tr("Show under each line how &accents are met"))
        self.legend = QCheckBox(tr("Say what the si&gns mean"))
        self.drill = _choice({"": tr(NO_DRILL)} | {name: tr(drill.title) for name, drill in DRILLS.items()})
        self.from_bar = QSpinBox(minimum=0, maximum=LAST_BAR, specialValueText=tr("the beginning"), prefix=tr("bar "))
        self.from_bar.setMinimumHeight(self.from_bar.fontMetrics().height() + 12)
        self.key = QCheckBox(tr("Print the ke&y on a page of its own"))
        self.before = _TextFields(tr("Heading before the music"), tr("Text before the music"))
        self.after = _TextFields(tr("Heading after the music"), tr("Text after the music"))
        self.totals = QCheckBox(tr("&Totals of each bowing"))
        self.findings = QCheckBox(tr("What the &check finds in it"))
        self.credits = QCheckBox(tr("Where the tune c&omes from"))
        self.caution = QCheckBox(tr("A word on resting and on &pain"))
        self.footer = QLineEdit()
        self.footer.setPlaceholderText(tr("Class, date …"))
        self.paper = _choice({paper: paper for paper in PAPERS})
        self.landscape = QCheckBox(tr("On its &long side"))
        self.copies = _choice({count: tr(COPY_WORDS[count], "copies") for count in COPIES})
        self._lay_out()
        self.show_plan(plan)
        self._listen()

    @property
    def plan(self) -> SheetPlan | None:
        """The plan as it is filled in; None while no bowing is ticked."""
        ticked = [row for row in range(self.bowings.count()) if self._is_ticked(row)]
        if not ticked:
            return None
        names = () if len(ticked) == self.bowings.count() else tuple(self._lesson.bowings[row].name for row in ticked)
        return SheetPlan(
            kind=self.kind.currentData(),
            bowings=names,
            marks=self.marks.currentData(),
            size=self.size_of_notes.currentData(),
            before=self.before.block,
            after=self.after.block,
            credits=self.credits.isChecked(),
            footer=self.footer.text().strip(),
            legend=self.legend.isChecked(),
            strip=self.strip.isChecked(),
            findings=self.findings.isChecked(),
            totals=self.totals.isChecked(),
            caution=self.caution.isChecked(),
            paper=self.paper.currentData(),
            landscape=self.landscape.isChecked(),
            copies=self.copies.currentData(),
            from_bar=self.from_bar.value(),
            drill=self.drill.currentData(),
            key=self.key.isChecked(),
        )

    def show_plan(self, plan: SheetPlan) -> None:
        """Fill the fields in, without a word to anyone."""
        self._kind = plan.kind
        chosen = plan.chosen(self._lesson.bowings)
        blocked = [QSignalBlocker(field) for field in self._fields]
        for row, bowing in enumerate(self._lesson.bowings):
            ticked = any(bowing is other for other in chosen)
            self.bowings.item(row).setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
        for box, value in (
            (self.kind, plan.kind), (self.size_of_notes, plan.size), (self.marks, plan.marks), (self.drill, plan.drill),
            (self.paper, plan.paper), (self.copies, plan.copies),
        ):  # fmt: skip
            box.setCurrentIndex(max(_index(box, value), 0))
        for name in ("strip", "legend", "key", "totals", "findings", "credits", "caution", "landscape"):
            getattr(self, name).setChecked(getattr(plan, name))
        self.from_bar.setValue(plan.from_bar)
        self.footer.setText(plan.footer)
        self.before.show_block(plan.before)
        self.after.show_block(plan.after)
        del blocked
        self._tell_kind()

    @property
    def _fields(self) -> tuple[QWidget, ...]:
        return (
            self.kind, self.bowings, self.size_of_notes, self.marks, self.strip, self.legend, self.drill, self.from_bar,
            self.key, *self.before.fields, *self.after.fields, self.totals, self.findings, self.credits, self.caution,
            self.footer, self.paper, self.landscape, self.copies,
        )  # fmt: skip

    def _lay_out(self) -> None:
        head = QFormLayout()
        head.addRow(tr("K&ind of sheet"), self.kind)
        head.addRow(self.about)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        music = QFormLayout()
        music.addRow(tr("&Bowings"), self.bowings)
        music.addRow(tr("&Size"), self.size_of_notes)
        music.addRow(tr("Bow &marks"), self.marks)
        music.addRow("", self.strip)
        music.addRow("", self.legend)
        self._exercise = QWidget()
        exercise = QFormLayout(self._exercise)
        exercise.setContentsMargins(0, 0, 0, 0)
        exercise.addRow(tr("&Drill"), self.drill)
        exercise.addRow(tr("Leave out &from"), self.from_bar)
        exercise.addRow("", self.key)
        music.addRow(self._exercise)
        words = QFormLayout()
        words.addRow(tr("Be&fore the music"), self.before.heading)
        words.addRow(self.before.text)
        words.addRow(tr("Afte&r the music"), self.after.heading)
        words.addRow(self.after.text)
        for box in (self.totals, self.findings, self.caution, self.credits):
            words.addRow("", box)
        words.addRow(tr("Foot of the pa&ge"), self.footer)
        paper = QFormLayout()
        paper.addRow(tr("&Paper"), self.paper)
        paper.addRow("", self.landscape)
        paper.addRow(tr("C&opies on a page"), self.copies)
        for name, form in ((tr("M&usic"), music), (tr("&Words"), words), (tr("Pap&er"), paper)):
            page = QWidget()
            page.setLayout(form)
            self.tabs.addTab(page, name)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(head)
        column.addWidget(self.tabs, 1)

    def _listen(self) -> None:
        self.kind.currentIndexChanged.connect(self._on_kind)
        self.bowings.itemChanged.connect(self.changed)
        for box in (self.size_of_notes, self.marks, self.drill, self.paper, self.copies):
            box.currentIndexChanged.connect(self.changed)
        for box in (
            self.strip, self.legend, self.key, self.totals, self.findings, self.credits, self.caution, self.landscape,
        ):  # fmt: skip
            box.toggled.connect(self.changed)
        self.from_bar.valueChanged.connect(self.changed)
        self.footer.textChanged.connect(self.changed)
        for block in (self.before, self.after):
            block.heading.textChanged.connect(self.changed)
            block.text.textChanged.connect(self.changed)

    def _on_kind(self) -> None:
        kind: SheetKind = self.kind.currentData()
        plan = self.plan
        if plan is not None:
            turned = turned_into(replace(plan, kind=self._kind), kind)
            if kind is SheetKind.TEACHER:
                self._for_others, turned = plan.bowings, replace(turned, bowings=())
            elif self._kind is SheetKind.TEACHER and not plan.bowings:
                turned = replace(turned, bowings=self._for_others)
            self.show_plan(turned)
        self._kind = kind
        self._tell_kind()
        self.changed.emit()

    def _tell_kind(self) -> None:
        text = tr(KIND_WORDS[self._kind][1])
        if self._kind is SheetKind.SET:
            count = self._set_size
            in_hand = plural("The tune of the set in hand.", "The {n} tunes of the set in hand.", count)
            text = f"{text} {in_hand if count else tr('No set is in hand: this tune alone.')}"
        self.about.setText(text)
        self.kind.setAccessibleDescription(text)
        self._exercise.setVisible(self._kind is SheetKind.EXERCISE)
        for box in (self.totals, self.findings):
            box.setEnabled(self._kind not in (SheetKind.EXERCISE, SheetKind.SET))

    def _bowing_list(self) -> QListWidget:
        found = QListWidget()
        found.setAccessibleName(tr("Bowings on the sheet"))
        for bowing in self._lesson.bowings:
            item = QListWidgetItem(bowing.name)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsUserCheckable | Qt.ItemFlag.ItemIsSelectable)
            item.setCheckState(Qt.CheckState.Checked)
            item.setSizeHint(QSize(0, found.fontMetrics().height() + 10))
            found.addItem(item)
        found.setCurrentRow(0)
        return found

    def _is_ticked(self, row: int) -> bool:
        return self.bowings.item(row).checkState() is Qt.CheckState.Checked


class _TextFields:
    """Heading and text of a block."""

    def __init__(self, heading: str, text: str) -> None:
        self.heading, self.text = QLineEdit(), QPlainTextEdit()
        self.heading.setPlaceholderText(tr("Heading"))
        self.heading.setAccessibleName(heading)
        self.text.setPlaceholderText(tr("What to listen for, homework …"))
        self.text.setAccessibleName(text)
        self.text.setTabChangesFocus(True)
        self.text.setMinimumHeight(3 * self.text.fontMetrics().lineSpacing() + 12)
        self.fields = (self.heading, self.text)

    @property
    def block(self) -> TextBlock:
        return TextBlock(self.heading.text(), self.text.toPlainText())

    def show_block(self, block: TextBlock) -> None:
        """Fill the fields in."""
        self.heading.setText(block.heading)
        self.text.setPlainText(block.text)


def _choice(words: Mapping[Any, str]) -> QComboBox:
    """A list to choose one value of."""
    box = QComboBox()
    for value, text in words.items():
        box.addItem(text, value)
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setMinimumContentsLength(18)
    return box


def _index(box: QComboBox, value: object) -> int:
    """Place of a value; enums and plain values alike."""
    same = (lambda data: data is value) if isinstance(value, Enum) else (lambda data: data == value)
    return next((row for row in range(box.count()) if same(box.itemData(row))), -1)
