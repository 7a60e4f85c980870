"""The manual in a window of its own: pages on the left, the page on the right."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt, QTimer, QUrl
from PySide6.QtGui import QDesktopServices, QImage, QKeySequence, QResizeEvent, QShortcut, QShowEvent, QTextDocument
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QPushButton, QTextBrowser, QVBoxLayout, QWidget

from app.language import spoken_language
from app.manual import PAGES, manual_folder
from app.window_layout import FRAME
from core.translation import tr, translatable

TITLE = translatable("Manual – Bowbench")
BACK, BROWSER, CLOSE = translatable(("&Back", "Show in the &browser", "&Close"))
SIZE = QSize(1160, 760)
LIST_WIDTH = 200  # pixels
EDGE = 100  # pixels beside a picture that has no room in its own size: the margins of a page


class ManualWindow(QWidget):
    """Beside the main window, to read and try at once, in the language that is spoken."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(tr(TITLE))
        self.pages = QListWidget()
        self.pages.setAccessibleName(tr("Pages of the manual"))
        self.pages.addItems([tr(page.title) for page in PAGES])
        self.pages.setFixedWidth(LIST_WIDTH)
        self.pages.currentRowChanged.connect(self._on_row_changed)
        self._folder = manual_folder(spoken_language())
        self.text = ManualText(self._folder)
        self.text.sourceChanged.connect(self._on_source_changed)
        self.back_button = QPushButton(tr(BACK))
        self.back_button.clicked.connect(self.text.backward)
        self.back_button.setEnabled(False)
        self.text.backwardAvailable.connect(self.back_button.setEnabled)
        browser = QPushButton(tr(BROWSER))
        browser.clicked.connect(lambda: QDesktopServices.openUrl(self.text.source()))
        close = QPushButton(tr(CLOSE))
        close.clicked.connect(self.close)
        both = QHBoxLayout()
        both.addWidget(self.pages)
        both.addWidget(self.text, 1)
        row = QHBoxLayout()
        row.addWidget(self.back_button)
        row.addWidget(browser)
        row.addStretch(1)
        row.addWidget(close)
        column = QVBoxLayout(self)
        column.addLayout(both, 1)
        column.addLayout(row)
        for key, do in ((QKeySequence.StandardKey.Back, self.text.backward), (Qt.Key.Key_Escape, self.close)):
            QShortcut(QKeySequence(key), self, do)
        self.resize(SIZE.boundedTo(self.screen().availableGeometry().size() - FRAME))
        self.show_page(0)

    def present(self) -> None:
        """Bring it to the front, with the keyboard in the list of pages."""
        self.show()
        self.raise_()
        self.activateWindow()
        self.pages.setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.pages.doItemsLayout()  # rows were laid out before they had their style

    def show_page(self, row: int) -> None:
        """Show a page, by its place in ``PAGES``."""
        self.pages.setCurrentRow(row)

    def _on_row_changed(self, row: int) -> None:
        address = QUrl.fromLocalFile(str(self._folder / PAGES[row].file))
        if self.text.source().fileName() != address.fileName():
            self.text.setSource(address)

    def _on_source_changed(self, address: QUrl) -> None:
        """Mark in the list what a link led to."""
        files = [page.file for page in PAGES]
        if address.fileName() in files:
            self.pages.setCurrentRow(files.index(address.fileName()))


class ManualText(QTextBrowser):
    """A page; pictures that are wider than it are made to fit.

    Args:
        folder: Where the pages are.
    """

    def __init__(self, folder: Path) -> None:
        super().__init__()
        self._folder = folder
        self.setAccessibleName(tr("Page of the manual"))
        self.setOpenExternalLinks(True)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)  # so that a page keeps its width
        self.setSearchPaths([str(folder)])
        self._width = 0
        self._later = QTimer(self, singleShot=True)  # a page must not be read while it is laid out
        self._later.timeout.connect(self._fit)

    def loadResource(self, kind: int, name: QUrl | str) -> object:
        address = QUrl(name) if isinstance(name, str) else name
        if kind != QTextDocument.ResourceType.ImageResource.value:
            return super().loadResource(kind, address)
        picture = QImage(str(self._folder / address.path()))
        room = max(self.viewport().width() - EDGE, EDGE)
        return picture if picture.width() <= room else picture.scaledToWidth(
            room, Qt.TransformationMode.SmoothTransformation
        )  # fmt: skip

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.viewport().width() != self._width:
            self._width = self.viewport().width()
            self._later.start()

    def _fit(self) -> None:
        """Show the page anew in this width, at the same place."""
        if not self.source().isEmpty():
            place = self.verticalScrollBar().value()
            self.reload()
            self.verticalScrollBar().setValue(place)
