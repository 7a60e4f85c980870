"""The window in which a set of tunes is put together and its joins are read, heard of and mended."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QItemSelection, Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLabel,
    QListView,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.dialogs import Dialogs
from app.document import Document, State
from app.files import read_path
from app.join_panel import JoinPanel
from app.notice import Notice
from app.remedy_search import AFTER_PAINT_MS
from app.set_adding import AddTuneButton
from app.set_entries import EntryError, parse_entry
from app.set_list import SetList, SetState
from app.set_report import orders_text
from app.set_rows import Role, SeamRow, SetDelegate, SetModel, TuneRow, rows_of
from app.settings import Settings
from app.theme import Theme
from app.window_layout import fitting
from core.set_orders import MOST_ORDERED, Order, orders
from core.translation import plural, tr, translatable
from core.tune_set import MOST_TIMES

EMPTY = translatable(
    "Add the tunes in the order you play them, and how the bow comes from each to the next stands between them."
)


class SetWindow(QDialog):
    """The set, beside the page.

    Args:
        sets: The set.
        document: The open lesson, in which remedies are done.
        settings: Where the set is remembered.
        dialogs: Asks the user.

    Signals:
        hinted: A sentence for the status line.
        notes_wanted: Ids of the notes of the open tune that are spoken of, and a ``Severity``; none when no longer.
    """

    hinted = Signal(str)
    notes_wanted = Signal(tuple, object)

    def __init__(
        self, sets: SetList, document: Document, settings: Settings, dialogs: Dialogs, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._sets, self._document, self._settings, self._dialogs = sets, document, settings, dialogs
        self._best: Order | None = None
        self._ordered: SetState | None = None  # whose orders are shown
        self._remembers = False  # until the remembered set was recalled
        self.setWindowTitle(tr("Set of tunes"))
        self.resize(fitting(self, 640, 620))
        self._build()
        self._connect()
        self._show_set()

    def _build(self) -> None:
        self.notice = Notice()
        self.model = SetModel(self)
        self.list = QListView()
        self.list.setAccessibleName(tr("Tunes of the set and the joins between them"))
        self.list.setModel(self.model)
        self._delegate = SetDelegate(self.list)
        self.list.setItemDelegate(self._delegate)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self._empty = QLabel(tr(EMPTY))
        self._empty.setWordWrap(True)
        self._empty.setProperty("rank", "quiet")
        self._empty.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.add_button = AddTuneButton(self._sets, self._document, self._settings, self._dialogs)
        self.add_menu, self.add_open = self.add_button.ways, self.add_button.from_page
        self.add_book, self.add_file = self.add_button.from_book, self.add_button.from_file
        self.up_button, self.down_button, self.remove_button = (
            QPushButton(text) for text in (tr("Move &up"), tr("Move &down"), tr("&Remove"))
        )
        self.bowing = QComboBox()
        self.bowing.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.bowing.setMinimumContentsLength(14)
        self.bowing.setAccessibleName(tr("Bowing of the chosen tune"))
        self.times = QSpinBox()
        self.times.setRange(1, MOST_TIMES)
        self.times.setAccessibleName(tr("Times through the chosen tune"))
        bowing_label, times_label = QLabel(tr("&Bowing")), QLabel(tr("&Times"))
        bowing_label.setBuddy(self.bowing)
        times_label.setBuddy(self.times)
        self.join = JoinPanel(self._sets, self._document)
        self._why, self.remedies, self.elsewhere = self.join.why, self.join.remedies, self.join.elsewhere
        self.verdict = QLabel()
        self.verdict.setWordWrap(True)
        self.verdict.setAccessibleName(tr("Whether the set comes round, and the best order"))
        self.order_button = QPushButton(tr("Play them in &that order"))
        self.close_button = QPushButton(tr("&Close"))
        adding, chosen, ending = QHBoxLayout(), QHBoxLayout(), QHBoxLayout()
        for widget in (self.add_button, self.up_button, self.down_button, self.remove_button):
            adding.addWidget(widget)
        adding.addStretch(1)
        for widget in (bowing_label, self.bowing, times_label, self.times):
            chosen.addWidget(widget)
        chosen.addStretch(1)
        ending.addWidget(self.order_button)
        ending.addStretch(1)
        ending.addWidget(self.close_button)
        column = QVBoxLayout(self)
        column.setSpacing(10)
        column.addWidget(self.notice)
        column.addLayout(adding)
        column.addWidget(self._empty, 1)
        column.addWidget(self.list, 1)
        column.addLayout(chosen)
        for part in (self.join, self.verdict):
            column.addWidget(part)
        column.addLayout(ending)
        for button in self.findChildren(QPushButton):
            button.setAutoDefault(False)  # Return would press one while the list has the keyboard

    def _connect(self) -> None:
        self._later = QTimer(self, singleShot=True, interval=AFTER_PAINT_MS)  # an edit on the page is painted first
        self._later.timeout.connect(self._show_set)
        self._sets.changed.connect(self._later.start)
        self._sets.arranged.connect(self._on_arranged)
        self._document.lesson_changed.connect(self._on_lesson_changed)
        self.list.selectionModel().selectionChanged.connect(self._on_chosen)
        self.up_button.clicked.connect(partial(self.move_by, -1))
        self.down_button.clicked.connect(partial(self.move_by, 1))
        self.remove_button.clicked.connect(self.remove)
        self.bowing.activated.connect(self._on_bowing)
        self.times.valueChanged.connect(self._on_times)
        self.add_button.added.connect(self._on_added)
        self.add_button.told.connect(self.notice.say)
        self.join.done.connect(self._on_done)
        self.join.notes_wanted.connect(self.notes_wanted)
        self.order_button.clicked.connect(self.take_best_order)
        self.close_button.clicked.connect(self.close)
        stack = self._document.stack
        for key, do in (
            ("Alt+Up", partial(self.move_by, -1)),
            ("Alt+Down", partial(self.move_by, 1)),
            (QKeySequence.StandardKey.Undo, stack.undo),
            (QKeySequence.StandardKey.Redo, stack.redo),
            ("Ctrl+Return", self.join.apply_first),
        ):
            QShortcut(QKeySequence(key), self).activated.connect(do)
        delete = QShortcut(QKeySequence.StandardKey.Delete, self.list)
        delete.setContext(Qt.ShortcutContext.WidgetShortcut)
        delete.activated.connect(self.remove)

    # ------------------------------------------------------------------------------------------------- what is chosen

    @property
    def chosen(self) -> TuneRow | SeamRow | None:
        """The chosen row."""
        rows = self.list.selectionModel().selectedIndexes()
        return rows[0].data(Role.ROW) if rows else None

    @property
    def chosen_tune(self) -> int | None:
        """Place of the chosen tune in the set."""
        row = self.chosen
        return row.place if isinstance(row, TuneRow) else None

    @property
    def waits(self) -> bool:
        """Whether remedies of the chosen join are still looked for."""
        return self.join.waits

    def choose_tune(self, place: int) -> None:
        """Choose a tune by its place."""
        self._choose([k for k, row in enumerate(self.model.rows) if isinstance(row, TuneRow)][place])

    def choose_join(self, number: int) -> None:
        """Choose a join, counted from 0 in the order played."""
        self._choose([k for k, row in enumerate(self.model.rows) if isinstance(row, SeamRow)][number])

    def _choose(self, row: int) -> None:
        self.list.setCurrentIndex(self.model.index(row))

    # ------------------------------------------------------------------------------------------------- arranging

    def _on_added(self, place: int) -> None:
        self.notice.hide()
        self.choose_tune(place)
        self.list.setFocus()

    def remove(self) -> None:
        """Take the chosen tune out of the set; its file stays as it is."""
        place = self.chosen_tune
        if place is not None:
            self._sets.remove(place)
            if self._sets.state.tunes:
                self.choose_tune(min(place, len(self._sets.state.tunes) - 1))
            else:
                self.add_button.setFocus()

    def move_by(self, by: int) -> None:
        """Move the chosen tune."""
        place = self.chosen_tune
        if place is not None:
            self.choose_tune(self._sets.move(place, by))

    def take_best_order(self) -> None:
        """Play the tunes in the best order."""
        if self._best is not None:
            self._sets.reorder(self._best.places)
            self.choose_tune(0)

    def _on_bowing(self, bowing: int) -> None:
        place = self.chosen_tune
        if place is not None:
            self._sets.set_bowing(place, bowing)
            self.choose_tune(place)

    def _on_times(self, times: int) -> None:
        place = self.chosen_tune
        if place is not None:
            self._sets.set_times(place, times)
            self.choose_tune(place)

    # ------------------------------------------------------------------------------------------------- remembering

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not self._remembers:
            self._remembers = True
            self._recall()
        self._show_set()
        (self.list if self._sets.state.tunes else self.add_button).setFocus()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.join.leave()

    def _recall(self) -> None:
        """Bring back the set of the last time; what is gone is said, and forgotten with the next change only."""
        names, lost = [], []
        for word in self._settings.set_names:
            try:
                names.append(parse_entry(word))
            except EntryError as fault:
                lost.append(f"{fault}.")
        lost += self._sets.recall(names, read_path)
        self._show_set()
        if lost:
            self.notice.say(plural(
                "One tune of the last set cannot be read again.", "{n} tunes of the last set cannot be read again.",
                len(lost),
            ), lost)  # fmt: skip
        if self._sets.state.tunes:
            self.choose_tune(0)

    def _on_arranged(self) -> None:
        """Show at once what the user did here, and remember it."""
        self._show_set()
        names = [tune.name for tune in self._sets.state.tunes]
        self._settings.set_names = tuple(str(name) for name in names if name is not None)

    # ------------------------------------------------------------------------------------------------- showing

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._delegate.theme = theme
        self.list.viewport().update()

    def _show_set(self) -> None:
        self._later.stop()
        if not self.isVisible():
            return
        state = self._sets.state
        current = self.list.currentIndex().row()
        open_places = frozenset(place for place in range(len(state.tunes)) if self._sets.is_open(place))
        self.model.show_rows(rows_of(state, open_places))
        if self.chosen is None and 0 <= current < self.model.rowCount():
            self._choose(current)
        self.list.setVisible(bool(state.tunes))
        self._empty.setVisible(not state.tunes)
        self._show_verdict(state)
        self._on_chosen()

    def _show_verdict(self, state: SetState) -> None:
        if state is self._ordered:
            return
        self._ordered, self._best = state, None
        if not state.report.seams:
            self.verdict.setText("")
        else:
            comes_round = state.report.comes_round
            text = tr("The set comes round.") if comes_round else tr("The set does not come round as it began.")
            if 1 < len(state.tunes) <= MOST_ORDERED:
                found = orders(state.tune_set)
                if found[0].places != tuple(range(len(state.tunes))):
                    self._best = found[0]
                text += f" {orders_text(found)}"
            elif len(state.tunes) > MOST_ORDERED:
                text = f"{text} {tr('Orders are compared of up to {most} tunes.', most=MOST_ORDERED)}"
            self.verdict.setText(text)
        self.verdict.setVisible(bool(self.verdict.text()))
        self.order_button.setVisible(self._best is not None)

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        if before is None or before.tune is not after.tune:
            self._show_set()

    def _on_chosen(self, chosen: QItemSelection | None = None, before: QItemSelection | None = None) -> None:
        row, tunes = self.chosen, self._sets.state.tunes
        place = self.chosen_tune
        for widget in (self.up_button, self.down_button, self.remove_button, self.bowing, self.times):
            widget.setEnabled(place is not None)
        self.bowing.clear()
        if place is not None:
            self.up_button.setEnabled(place > 0)
            self.down_button.setEnabled(place < len(tunes) - 1)
            tune = tunes[place]
            self.bowing.addItems([bowing.name for bowing in tune.lesson.bowings])
            self.bowing.setCurrentIndex(tune.bowing)
            self.times.blockSignals(True)
            self.times.setValue(tune.times)
            self.times.blockSignals(False)
        self.join.show_join(row if isinstance(row, SeamRow) else None)

    def _on_done(self, label: str) -> None:
        """A remedy was done on the page."""
        self._show_set()
        self.list.setFocus()  # the button that had it is gone
        self.hinted.emit(tr("Done: {edit}.", edit=label))
