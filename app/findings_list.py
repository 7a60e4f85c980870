"""The list of findings: it takes what room is left, and asks for that of a few lines."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QListView

WANTED_LINES = 5  # of text: one finding and the beginning of the next


class FindingsList(QListView):
    """A list that leaves room to what stands below it; there are more findings than fit in any case."""

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), WANTED_LINES * self.fontMetrics().lineSpacing())

    def minimumSizeHint(self) -> QSize:
        return QSize(super().minimumSizeHint().width(), self.sizeHint().height())
