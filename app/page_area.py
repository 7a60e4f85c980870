"""Scrolls and zooms the page."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

from app.page_view import PageView

ZOOM_STEP = 1.15
WIDEST_FIT = 1.9  # a page as wide as a very wide window would be too large to read


class PageArea(QScrollArea):
    """Holds the page; fits it to the width of the window until the user zooms.

    Signals:
        zoomed: The zoom and whether it follows the width of the window.
    """

    zoomed = Signal(float, bool)

    def __init__(self, page: PageView, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.page = page
        self._fits = True
        self.setObjectName("page_area")
        self.setViewport(QWidget())  # one that is known here: to name one of Qt's, all kinds of widgets are loaded
        self.setWidget(page)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)  # else fitting the width could swing
        page.revealed.connect(self._on_revealed)
        page.widened.connect(self._on_widened)

    def fit_width(self) -> None:
        """Make the page as wide as there is room for, and keep it so."""
        self._fits = True
        self.page.set_zoom(min(self.page.fitting_zoom(self.viewport().width()), WIDEST_FIT))
        self.zoomed.emit(self.page.zoom, True)

    def set_zoom(self, zoom: float) -> None:
        """Show the page at a zoom of its own, around the middle of what is in sight."""
        bar = self.verticalScrollBar()
        middle = (bar.value() + self.viewport().height() / 2) / max(self.page.height(), 1)
        self._fits = False
        self.page.set_zoom(zoom)
        self.page.resize(self.page.minimumSize().expandedTo(self.viewport().size()))
        bar.setValue(round(middle * self.page.height() - self.viewport().height() / 2))
        self.zoomed.emit(self.page.zoom, False)

    def zoom_in(self) -> None:
        """One step larger."""
        self.set_zoom(self.page.zoom * ZOOM_STEP)

    def zoom_out(self) -> None:
        """One step smaller."""
        self.set_zoom(self.page.zoom / ZOOM_STEP)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fits:
            self.fit_width()

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.set_zoom(self.page.zoom * ZOOM_STEP ** (event.angleDelta().y() / 120))
            event.accept()
        else:
            super().wheelEvent(event)

    def _on_widened(self) -> None:
        if self._fits:
            self.fit_width()

    def _on_revealed(self, rect: QRect) -> None:
        self.ensureVisible(rect.center().x(), rect.center().y(), rect.width() // 2, rect.height() // 2)
