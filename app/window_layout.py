"""Where the parts of the window stand: tool bar, page with what is over and under it, panes, status line."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QDockWidget,
    QLabel,
    QMainWindow,
    QSizePolicy,
    QSplitter,
    QStackedWidget,
    QStatusBar,
    QVBoxLayout,
    QWidget,
)

from app.settings import Settings
from app.tool_bar import ToolBar
from core.translation import tr

SIDE_WIDTH, SIDE_LEAST = 350, 280
FIRST_SIZE = (1280, 820)
FRAME = QSize(8, 40)  # what the system puts round a window, about
TEXT_HEIGHT = 16  # pixels of a line, about: sizes are meant for it
LEAST_PAGE = 160  # pixels of height


class WindowLayout:
    """Lays out a window; the parts beside and under the page are hidden until there is a lesson.

    Args:
        window: The window.
        welcome: Stands in the place of the page until then.
        page: The page, which can be scrolled.
        over: Parts over the page, from the top.
        under: Parts under the page, from the top.
        side: Parts beside the page, from the top; the last takes what room there is.
        dock: Beside all of them.

    Attributes:
        tool_bar: Still empty.
        hint: The status line.
        zoom: At the end of the status line.
    """

    def __init__(
        self,
        window: QMainWindow,
        *,
        welcome: QWidget,
        page: QWidget,
        over: Iterable[QWidget],
        under: Iterable[QWidget],
        side: Iterable[QWidget],
        dock: QDockWidget,
    ) -> None:
        self._window, self._welcome, self._page = window, welcome, page
        self.tool_bar = ToolBar()
        window.addToolBar(self.tool_bar)
        self._stack = QStackedWidget()
        self._stack.addWidget(welcome)
        self._stack.addWidget(page)
        left, column = _column()
        for part in over:
            column.addWidget(part)
        column.addWidget(self._stack, 1)
        for part in under:
            column.addWidget(part)
        self._side, column = _column(_Side())
        for part in side:
            column.addWidget(part)
        column.setStretchFactor(part, 1)
        self._side.hide()
        self._splitter = QSplitter(Qt.Orientation.Horizontal)
        self._splitter.addWidget(left)
        self._splitter.addWidget(self._side)
        self._splitter.setStretchFactor(0, 1)
        self._splitter.setStretchFactor(1, 0)
        self._splitter.setCollapsible(0, False)
        self._splitter.setSizes([FIRST_SIZE[0] - SIDE_WIDTH, SIDE_WIDTH])
        window.setCentralWidget(self._splitter)
        window.addDockWidget(Qt.DockWidgetArea.LeftDockWidgetArea, dock)
        self.hint = QLabel()
        self.hint.setAccessibleName(tr("What the pointer would do"))
        self.hint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)  # a long one widens nothing
        self.zoom = QLabel()
        self.zoom.setProperty("rank", "quiet")
        status = QStatusBar()
        status.setSizeGripEnabled(False)
        status.setContentsMargins(12, 0, 14, 0)
        status.addWidget(self.hint, 1)
        status.addPermanentWidget(self.zoom)
        window.setStatusBar(status)

    def show_page(self) -> None:
        """Show the page, for there is a lesson now, and what stands beside it."""
        self._stack.setCurrentWidget(self._page)
        self._welcome.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)  # it needs no more room
        self._stack.setMinimumHeight(LEAST_PAGE)
        self._side.show()

    def widen_side(self, width: int) -> None:
        """Give the parts beside the page this many pixels where they have fewer and the page has more."""
        page, side = self._splitter.sizes()
        if 0 < side < width < page:
            self._splitter.setSizes([page + side - width, width])

    def restore(self, settings: Settings) -> None:
        """Lay out the window as it was at the end of the last session, no larger than the screen."""
        self._window.resize(fitting(self._window, *FIRST_SIZE))
        self._window.restoreGeometry(settings.window("place"))
        self._splitter.restoreState(settings.window("split"))
        self._window.restoreState(settings.window("docks"))

    def remember(self, settings: Settings) -> None:
        """Keep how the window is laid out for the next session."""
        settings.set_window("place", self._window.saveGeometry())
        settings.set_window("split", self._splitter.saveState())
        settings.set_window("docks", self._window.saveState())


def fitting(widget: QWidget, width: int, height: int) -> QSize:
    """A size for a window: larger with larger text, and no larger than its screen has room for.

    Args:
        width, height: Pixels where a line of text has the height of ``TEXT_HEIGHT``.
    """
    scale = max(widget.fontMetrics().height() / TEXT_HEIGHT, 1)
    wanted = QSize(round(width * scale), round(height * scale))
    return wanted.boundedTo(widget.screen().availableGeometry().size() - FRAME)


class _Side(QWidget):
    """As wide as its parts need, and never too narrow to be read."""

    def minimumSizeHint(self) -> QSize:
        return super().minimumSizeHint().expandedTo(QSize(SIDE_LEAST, 0))


def _column(widget: QWidget | None = None) -> tuple[QWidget, QVBoxLayout]:
    """A widget for parts under one another, without any room between."""
    widget = widget or QWidget()
    column = QVBoxLayout(widget)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    return widget, column
