"""The tool bar: words beside the drawings where there is room for all of them, else drawings alone."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QActionEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QToolBar, QToolButton, QWidget

from core.translation import tr

LEAST_SIDE = 20  # pixels of a drawing
WORDS, DRAWINGS = Qt.ToolButtonStyle.ToolButtonTextBesideIcon, Qt.ToolButtonStyle.ToolButtonIconOnly


class ToolBar(QToolBar):
    """Stands fast; its drawings grow with the text.

    Every button can be reached in a window that is narrow, in a longer language, and in large text. What a drawing
    means, its tip says.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(tr("Tools"), parent)
        self.setObjectName("tools")
        self.setMovable(False)
        self.setFloatable(False)
        self._bare: list[QToolButton] = []  # those that have given up their words
        self._with_words: int | None = None  # pixels that all need then; None where it is not known
        self._size_drawings()

    def actionEvent(self, event: QActionEvent) -> None:
        super().actionEvent(event)
        if event.type() is not QEvent.Type.ActionChanged:
            self._with_words = None

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._with_words = None
            self._size_drawings()
            self._fit()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._with_words = None  # the buttons have their style only now
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _size_drawings(self) -> None:
        side = max(LEAST_SIDE, round(1.2 * self.fontMetrics().height()))
        self.setIconSize(QSize(side, side))

    def _fit(self) -> None:
        """Show the words where there is room for all."""
        if self._with_words is None:
            self._show_words()
            self._with_words = self.sizeHint().width()
        if self._with_words <= self.width():
            self._show_words()
        elif not self._bare:
            self._bare = [button for button in self.findChildren(QToolButton) if button.toolButtonStyle() is WORDS]
            for button in self._bare:
                button.setToolButtonStyle(DRAWINGS)

    def _show_words(self) -> None:
        for button in self._bare:
            button.setToolButtonStyle(WORDS)
        self._bare = []
