"""Panes in one place beside the page, with a tab for each; the first alone needs no tab.

``QTabWidget`` would keep the keyboard on its tabs while they are hidden.
"""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QSizePolicy, QStackedWidget, QTabBar, QToolButton, QVBoxLayout, QWidget

from core.translation import tr


class SideTabs(QWidget):
    """One pane that is always there, and others that come and go.

    Args:
        first: The pane that is always there.
        name: What stands on its tab.

    Signals:
        close_wanted: The pane whose close button was pressed.
        shown: The pane that is in sight from now on.
    """

    close_wanted = Signal(QWidget)
    shown = Signal(QWidget)

    def __init__(self, first: QWidget, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._names = {first: name}
        self._panes = [first]  # those with a tab
        self.tabs = QTabBar()
        self.tabs.setAccessibleName(tr("Panes beside the page"))
        self.tabs.setDrawBase(True)
        self.tabs.setExpanding(False)
        self._stack = QStackedWidget()
        self._stack.addWidget(first)
        self._show(first)
        self.tabs.addTab(name)
        self.tabs.hide()
        self.tabs.currentChanged.connect(self._on_chosen)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.tabs)
        column.addWidget(self._stack, 1)

    def add(self, pane: QWidget, name: str) -> None:
        """Take in one more pane; it is hidden at first, and has no tab."""
        self._names[pane] = name
        self._stack.addWidget(pane)
        self._show(self.current)

    @property
    def current(self) -> QWidget:
        """The pane in sight."""
        return self._stack.currentWidget()

    def has(self, pane: QWidget) -> bool:
        """Whether a pane has a tab."""
        return pane in self._panes

    def choose(self, pane: QWidget) -> None:
        """Bring a pane into sight; one that was hidden gets its tab."""
        if not self.has(pane):
            self._panes.append(pane)
            place = self.tabs.addTab(self._names[pane])
            close = QToolButton()
            close.setText("×")
            close.setAccessibleName(tr("Close {pane}", pane=self._names[pane]))
            close.setToolTip(close.accessibleName())
            close.clicked.connect(lambda: self.close_wanted.emit(pane))
            self.tabs.setTabButton(place, QTabBar.ButtonPosition.RightSide, close)
            self.tabs.show()
        self.tabs.setCurrentIndex(self._panes.index(pane))
        self._show(pane)

    def close_pane(self, pane: QWidget) -> None:
        """Hide a pane and take its tab away."""
        if self.has(pane):
            place = self._panes.index(pane)
            self._panes.remove(pane)
            self.tabs.removeTab(place)
            self.tabs.setVisible(len(self._panes) > 1)
            self._on_chosen(self.tabs.currentIndex())

    def _on_chosen(self, place: int) -> None:
        if 0 <= place < len(self._panes):
            self._show(self._panes[place])

    def _show(self, shown: QWidget) -> None:
        for pane in self._names:  # those out of sight need no room
            policy = QSizePolicy.Policy.Preferred if pane is shown else QSizePolicy.Policy.Ignored
            pane.setSizePolicy(policy, policy)
        self._stack.setCurrentWidget(shown)
        self.shown.emit(shown)
