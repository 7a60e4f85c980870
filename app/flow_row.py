"""A row of widgets that runs on to further lines where room is scarce, so that panes can be narrow and words large."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowRow(QLayout):
    """Lays its widgets out from left to right, line under line.

    Those of its widgets that have a share need their least width only, and get what is left over in their line. The row
    is as narrow as its widest widget and no higher than its lines need.

    Args:
        spacing: Pixels between widgets, and between lines.
    """

    def __init__(self, spacing: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._shares: list[int] = []
        self.setSpacing(spacing)
        self.setContentsMargins(0, 0, 0, 0)

    def add(self, widget: QWidget, share: int = 0) -> None:
        """Put a widget at the end, with its share of what is left over in its line."""
        self.addWidget(widget)
        self._shares[-1] = share

    # ------------------------------------------------------------------------------------------------- Qt's layout

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)
        self._shares.append(0)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        if not 0 <= index < len(self._items):
            return None
        del self._shares[index]
        return self._items.pop(index)

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        edges = self.contentsMargins()
        room = width - edges.left() - edges.right()
        heights = [max(map(_height, line, self._widths(line, room))) for line in self._lines(room)]
        return edges.top() + edges.bottom() + sum(heights) + self.spacing() * max(len(heights) - 1, 0)

    def sizeHint(self) -> QSize:
        items = [item for item in self._items if not item.isEmpty()]
        return self._with_edges(self._length(items), _highest(items))

    def minimumSize(self) -> QSize:
        items = [item for item in self._items if not item.isEmpty()]
        return self._with_edges(max(map(self._width, items), default=0), _highest(items))

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        room = rect.marginsRemoved(self.contentsMargins())
        y = room.y()
        for line in self._lines(room.width()):
            widths = self._widths(line, room.width())
            heights = list(map(_height, line, widths))
            high, x = max(heights), room.x()
            for item, width, height in zip(line, widths, heights, strict=True):
                item.setGeometry(QRect(x, y + (high - height) // 2, width, height))
                x += width + self.spacing()
            y += high + self.spacing()

    # ------------------------------------------------------------------------------------------------- lines

    def _lines(self, width: int) -> list[list[QLayoutItem]]:
        lines: list[list[QLayoutItem]] = []
        for item in self._items:
            if item.isEmpty():
                continue
            if lines and self._length([*lines[-1], item]) <= width:
                lines[-1].append(item)
            else:
                lines.append([item])
        return lines

    def _widths(self, line: Sequence[QLayoutItem], room: int) -> list[int]:
        left = max(room - self._length(line), 0)
        shares = [self._shares[self._items.index(item)] for item in line]
        return [
            min(self._width(item), room) + (left * share // sum(shares) if share else 0)
            for item, share in zip(line, shares, strict=True)
        ]

    def _length(self, items: Sequence[QLayoutItem]) -> int:
        return sum(map(self._width, items)) + self.spacing() * max(len(items) - 1, 0)

    def _width(self, item: QLayoutItem) -> int:
        """What an item needs before anything is shared out."""
        size = item.minimumSize() if self._shares[self._items.index(item)] else item.sizeHint()
        return size.width()

    def _with_edges(self, width: int, height: int) -> QSize:
        edges = self.contentsMargins()
        return QSize(width + edges.left() + edges.right(), height + edges.top() + edges.bottom())


def _height(item: QLayoutItem, width: int) -> int:
    return item.heightForWidth(width) if item.hasHeightForWidth() else item.sizeHint().height()


def _highest(items: Sequence[QLayoutItem]) -> int:
    return max((item.minimumSize().height() for item in items), default=0)
