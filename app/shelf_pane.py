"""The shelf beside the page: finds and opens tunes, notes status and tags, looks through folders for what is new.

The pane says what it wants to its desk (``app.shelf_desk``) and shows what the desk answers. To open a tune is the
window's business.
"""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QLabel,
    QMenu,
    QProgressBar,
    QPushButton,
    QStackedWidget,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.flow_row import FlowRow
from app.shelf_desk import ShelfDesk, Stock
from app.shelf_filters import ShelfFilters
from app.shelf_model import ShelfModel
from app.shelf_table import ShelfTable
from core.shelf.paths import to_text
from core.shelf.query import Query
from core.shelf.scan import Progress, ScanReport
from core.shelf.search import Found
from core.translation import plural, tr, translatable

EMPTY = translatable(
    "The shelf is empty. Add the folders in which your lessons and tune books lie: Bowbench reads them, never changes "
    "them, and finds every tune by its words, its dance, its key or its first notes."
)
LOOKS_A_SEARCH = 10  # once a second while a scan runs
FIRST_WIDTH = 430  # pixels
NOTHING_IN_IT = translatable("There are no lessons or tune books (.musicxml, .mxl, .abc) in what is on the shelf.")


class ShelfPane(QWidget):
    """Search fields, the list of tunes, and a line with what is on the shelf.

    Args:
        path: The catalogue; neither read nor made before the pane is first shown.

    Signals:
        opened: The ``Entry`` that the user wants to open.
        folder_wanted: The user wants to put a folder on the shelf; ``add_place`` does it.
        samples_wanted: The user wants the tunes that come with the program on the shelf.
        learn_wanted: (``Query``, how many tunes it finds): the user wants a style learned from them.
        leave_wanted: The keyboard may go back to the page, the pane may close.
        hinted: A sentence for the status line.
        told: (sentence, lines): something to know that is not to be missed.
    """

    opened = Signal(object)
    folder_wanted = Signal()
    samples_wanted = Signal()
    learn_wanted = Signal(object, int)
    leave_wanted = Signal()
    hinted = Signal(str)
    told = Signal(str, list)

    def __init__(self, path: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = ShelfDesk(path, self)
        self._was_shown = False
        self._open_when_found = self._learn_when_found = False
        self._is_asked = False  # a scan by itself, when the shelf is first shown, puts no notice over the page
        self._looks = 0
        self._found = Found((), 0)
        self._stock: Stock | None = None
        self.filters = ShelfFilters()
        self.model = ShelfModel(self)
        self.table = ShelfTable(self.model)
        self.message = QLabel()
        self.message.setWordWrap(True)
        self.message.setAlignment(Qt.AlignmentFlag.AlignLeft)
        self.folder_button = _button(tr("Add a folder…"), self.folder_wanted.emit)
        self.samples_button = _button(tr("Add the tunes to try"), self.samples_wanted.emit)
        self.rebuild_button = _button(tr("Build the shelf anew"), self._rebuild)
        self._pages = QStackedWidget()
        self._pages.addWidget(self.table)
        self._pages.addWidget(self._message_page())
        self.count = QLabel()
        self.count.setProperty("rank", "quiet")
        self.progress = QProgressBar()
        self.progress.setAccessibleName(tr("Reading files of the shelf"))
        self.progress.setMaximumWidth(220)
        self.progress.setTextVisible(False)
        self.progress.setMaximumHeight(10)
        self.cancel_button = _button(tr("Leave off"), self.desk.stop_scan)
        self.places_button = QToolButton()
        self.places_button.setText(tr("Folders"))
        self.places_button.setToolTip(tr("Add folders, look through them again, take them off the shelf"))
        self.places_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.places_button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.places_menu = QMenu(self.places_button)
        self.places_button.setMenu(self.places_menu)
        self._build()
        self._connect()

    def _build(self) -> None:
        foot = FlowRow(6)
        foot.add(self.count, 1)
        for widget in (self.progress, self.cancel_button, self.places_button):
            foot.add(widget)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 8, 10, 6)
        column.setSpacing(6)
        column.addWidget(self.filters)
        column.addWidget(self._pages, 1)
        column.addLayout(foot)
        self._show_scan(False)
        self._fill_places_menu()

    def _message_page(self) -> QWidget:
        page = QWidget()
        buttons = FlowRow(6)
        for button in (self.folder_button, self.samples_button, self.rebuild_button):
            buttons.add(button)
        column = QVBoxLayout(page)
        column.addWidget(self.message)
        column.addLayout(buttons)
        column.addStretch(1)
        return page

    def _connect(self) -> None:
        self.filters.changed.connect(self.search)
        self.filters.step_wanted.connect(self.table.step)
        self.filters.open_wanted.connect(self._open_first)
        self.filters.leave_wanted.connect(self.leave_wanted)
        self.table.opened.connect(self.opened)
        self.table.order_wanted.connect(self._order)
        self.model.status_wanted.connect(self.desk.set_status)
        self.model.tags_wanted.connect(self.desk.change_tags)
        desk = self.desk
        desk.found.connect(self._on_found)
        desk.refused.connect(self._on_refused)
        desk.stock_changed.connect(self._on_stock_changed)
        desk.scan_moved.connect(self._on_scan_moved)
        desk.scanned.connect(self._on_scanned)
        desk.failed.connect(self._on_failed)

    # ------------------------------------------------------------------------------------------------- doing

    def search(self) -> None:
        """Look for what the fields say."""
        self.desk.find(self.filters.query)

    def add_places(self, places: list[Path]) -> None:
        """Put folders or files on the shelf and read them."""
        self._is_asked = True
        self.desk.add_places(places)
        self._show_page(0)
        self._show_scan(True)

    def scan(self) -> None:
        """Look through all that is on the shelf for what is new, and tell all that cannot be read."""
        self._is_asked = True
        self.desk.scan()
        self._show_scan(True)

    def learn(self) -> None:
        """Have a style learned from the tunes that are found, once it is known which these are."""
        self._learn_when_found = self._stock is None or self.desk.searches
        if not self._learn_when_found:
            self._ask_to_learn()

    def _ask_to_learn(self) -> None:
        self._learn_when_found = False
        if self._found.total:
            self.learn_wanted.emit(self.filters.query, self._found.total)
        else:
            self.hinted.emit(tr("There is no tune to learn from: put folders with bowed lessons on the shelf first."))

    def take_keyboard(self) -> None:
        """Let the user type what is looked for, or choose how to fill an empty shelf."""
        self._first_widget.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.filters.words.selectAll()

    @property
    def has_keyboard(self) -> bool:
        """Whether ``take_keyboard`` has nothing to do."""
        return self._first_widget.hasFocus()

    @property
    def _first_widget(self) -> QWidget:
        if self._pages.currentIndex() == 0:
            return self.filters.words
        return self.folder_button if self.rebuild_button.isHidden() else self.rebuild_button

    def _open_first(self) -> None:
        if self.desk.searches:
            self._open_when_found = True
        else:
            self.table.open_current()

    def _order(self, order: str) -> None:
        self.filters.order = order
        self.search()

    def _rebuild(self) -> None:
        self.desk.rebuild()
        self._show_scan(True)

    # ------------------------------------------------------------------------------------------------- answers

    def _on_found(self, query: Query, found: Found) -> None:
        current = self.table.current
        row = self.table.currentIndex().row()
        self._found = found
        self.model.show(found.entries)
        if found.entries:
            self.table.choose(max(row, 0) if current is not None else 0, current.id if current is not None else None)
            if current is None or self.table.current is None or self.table.current.id != current.id:
                self.table.choose(0)
        self._show_count()
        if self._open_when_found:
            self._open_when_found = False
            self.table.open_current()
        if self._learn_when_found and self._stock is not None:
            self._ask_to_learn()

    def _on_refused(self, sentence: str) -> None:
        self._open_when_found = self._learn_when_found = False
        self._found = Found((), 0)
        self.model.show(())
        self.count.setText(sentence)

    def _on_stock_changed(self, stock: Stock) -> None:
        self._stock = stock
        self.filters.offer(stock.choices)
        self._fill_places_menu()
        if stock.tunes or self.desk.scans:
            self._show_page(0)
        else:
            self._show_message(tr(NOTHING_IN_IT if stock.places else EMPTY))
        self.search()

    def _on_scan_moved(self, progress: Progress) -> None:
        self.progress.setRange(0, progress.total)
        self.progress.setValue(progress.done)
        self.progress.setToolTip(progress.name)
        if progress.total:
            text = plural(
                "Reading {done} of 1 file …", "Reading {done} of {n} files …", progress.total, done=progress.done
            )
        else:
            text = tr("Looking through folders …")
        self.count.setText(text)
        self._show_scan(self.desk.scans)
        self._looks += 1
        if self._looks % LOOKS_A_SEARCH == 0 and not self.table.is_edited:
            self.search()  # what was read so far

    def _on_scanned(self, report: ScanReport) -> None:
        self._show_scan(self.desk.scans)
        if report.problems and self._is_asked:
            text = plural(
                "1 file or folder on the shelf cannot be read.", "{n} files or folders on the shelf cannot be read.",
                len(report.problems),
            )  # fmt: skip
            self.told.emit(text, list(map(str, report.problems)))
        self.hinted.emit(scan_words(report))

    def _on_failed(self, sentence: str, is_unusable: bool) -> None:
        self._open_when_found = self._learn_when_found = False
        self._show_scan(self.desk.scans)
        if is_unusable:
            self.model.show(())
            self._show_message(sentence, rebuild=True)
        else:
            self.told.emit(sentence, [])
            self.search()  # what is listed is what is kept

    # ------------------------------------------------------------------------------------------------- showing

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not self._was_shown:
            self._was_shown = True
            self.desk.ask_stock()
            self.desk.scan()
            self._show_scan(True)

    def sizeHint(self) -> QSize:
        return QSize(FIRST_WIDTH, super().sizeHint().height())

    def _show_page(self, page: int) -> None:
        """Show the list or the message, and let the keyboard go along."""
        had_keyboard = self.has_keyboard
        self._pages.setCurrentIndex(page)
        if had_keyboard and not self.has_keyboard:
            self.take_keyboard()

    def _show_message(self, text: str, *, rebuild: bool = False) -> None:
        self.message.setText(text)
        self.rebuild_button.setVisible(rebuild)
        self.folder_button.setVisible(not rebuild)
        self.samples_button.setVisible(not rebuild)
        self._show_page(1)
        self.count.clear()

    def _show_count(self) -> None:
        shown, total = len(self._found.entries), self._found.total
        if self._stock is None or self.desk.scans or not self._stock.tunes:
            return
        stock = self._stock.tunes
        if total == stock:
            text = plural("1 tune", "{n} tunes", stock)
        else:
            text = plural("{found} of 1 tune", "{found} of {n} tunes", stock, found=total)
        self.count.setText(tr("{text}, the first {shown} listed", text=text, shown=shown) if shown < total else text)

    def _show_scan(self, runs: bool) -> None:
        self.progress.setVisible(runs)
        self.cancel_button.setVisible(runs)
        if not runs:
            self._show_count()

    def _fill_places_menu(self) -> None:
        menu = self.places_menu
        menu.clear()
        menu.addAction(tr("&Add a folder…"), self.folder_wanted.emit)
        scan = menu.addAction(tr("Look for what is &new"), self.scan)
        places = self._stock.places if self._stock is not None else ()
        scan.setEnabled(bool(places))
        menu.addAction(tr("&Learn a style from these tunes…"), self.learn).setEnabled(bool(places))
        if places:
            menu.addSection(tr("On the shelf"))
        for place in places:
            inner = menu.addMenu(to_text(place).replace("&", "&&"))
            inner.addAction(tr("&Take it off the shelf"), partial(self.desk.drop_place, place))


def scan_words(report: ScanReport) -> str:
    """What a scan did, in a sentence."""
    told = (
        (report.new, plural("1 new", "{n} new", report.new)),
        (report.changed, plural("1 changed", "{n} changed", report.changed)),
        (report.moved, plural("1 moved", "{n} moved", report.moved)),
        (report.back, plural("1 back again", "{n} back again", report.back)),
        (report.gone, plural("1 gone", "{n} gone", report.gone)),
        (len(report.problems), plural("1 cannot be read", "{n} cannot be read", len(report.problems))),
    )
    parts = tr(", ", "between parts of a sentence").join(text for number, text in told if number) or tr("nothing new")
    if report.stopped:
        return plural("Left off looking through 1 file: {what}.", "Left off looking through {n} files: {what}.",
                      report.files, what=parts)  # fmt: skip
    return plural("Looked through 1 file: {what}.", "Looked through {n} files: {what}.", report.files, what=parts)


def _button(text: str, do: object) -> QPushButton:
    button = QPushButton(text)
    button.clicked.connect(lambda _=False: do())
    return button
