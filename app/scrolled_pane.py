"""A pane that is scrolled where there is no room for all of it, on small screens and in large text."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

LEAST_LINES = 6  # of text, in sight at once


class ScrolledPane(QScrollArea):
    """Fills its width with what is inside, and scrolls it up and down only.

    Args:
        inside: What is shown; all of it has room where there is enough.
    """

    def __init__(self, inside: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._inside = inside
        self.setWidget(inside)

    def sizeHint(self) -> QSize:
        return self._inside.sizeHint()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """What is inside needs another size: so does this."""
        if watched is self._inside and event.type() is QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().eventFilter(watched, event)

    def minimumSizeHint(self) -> QSize:
        """As wide as what is inside needs, and of little height."""
        least = self._inside.minimumSizeHint()
        return QSize(least.width(), min(least.height(), LEAST_LINES * self.fontMetrics().lineSpacing()))
