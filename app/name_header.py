"""Names over narrow columns: side by side where there is room, else turned on their side."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPalette
from PySide6.QtWidgets import QHeaderView, QStyleOptionHeaderV2, QWidget

PAD = 6  # pixels round a name
WRAP = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
TURNED_WRAP = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
LEAST_LINES, MOST_LINES = 3, 4  # of a name that stands upright
TURNED_LINES = 12  # of text, the most height that turned names take; what is longer is cut
EDGES = 3  # pixels between the columns of turned names


class NameHeader(QHeaderView):
    """The heads of a table whose columns all share its width.

    A name is wrapped between its words. Where its words are wider than a column can be, all names are turned to be read
    from below, so that as many columns as there are figures with room fit side by side.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self.turned = False
        self.setSectionsClickable(True)
        self.setHighlightSections(False)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.setDefaultAlignment(WRAP)

    def fit(self, room: int, widest_figure: str) -> None:
        """Take the height that the names need, and turn them where they do not fit upright.

        Args:
            room: Pixels for all columns.
            widest_figure: What may stand in a column.
        """
        names = self.texts
        figure = self.fontMetrics().horizontalAdvance(widest_figure)
        each = room // max(len(names), 1)
        letters = self._letters
        wide = max([letters.horizontalAdvance(word) for name in names for word in name.split()], default=0)
        upright = [_height(letters, name, max(each, wide + 2 * PAD) - 2 * PAD) for name in names]
        tall = max(upright, default=0)
        self.turned = wide + 2 * PAD > each or tall > MOST_LINES * letters.lineSpacing()
        self.setMinimumSectionSize(figure + 2 * EDGES if self.turned else max(wide, figure) + 2 * PAD)
        if self.turned:
            across = max(each, self.minimumSectionSize()) - 2 * EDGES
            most = TURNED_LINES * letters.lineSpacing()
            tall = max([_length(letters, name, across, most) for name in names], default=0)
        self.setFixedHeight(max(tall, LEAST_LINES * letters.lineSpacing()) + 2 * PAD)
        self.viewport().update()

    @property
    def texts(self) -> list[str]:
        """The names, from the first column to the last."""
        model = self.model()
        if model is None:
            return []
        return [str(model.headerData(place, Qt.Orientation.Horizontal) or "") for place in range(self.count())]

    @property
    def _letters(self) -> QFontMetrics:
        """Those of the name in bold, which are the widest."""
        bold = QFont(self.font())
        bold.setBold(True)
        return QFontMetrics(bold)

    def paintSection(self, painter: QPainter, place: QRect, section: int) -> None:
        if not self.turned or self.model() is None:
            super().paintSection(painter, place, section)
            return
        from PySide6.QtWidgets import QStyle  # not for the start

        option = QStyleOptionHeaderV2()
        self.initStyleOption(option)
        option.rect, option.section = place, section
        self.style().drawControl(QStyle.ControlElement.CE_HeaderSection, option, painter, self)
        font = self.model().headerData(section, Qt.Orientation.Horizontal, Qt.ItemDataRole.FontRole)
        painter.save()
        painter.setFont(font.resolve(self.font()) if isinstance(font, QFont) else self.font())
        painter.setPen(option.palette.color(QPalette.ColorRole.ButtonText))
        painter.translate(place.bottomLeft())
        painter.rotate(-90)
        inner = QRect(PAD, EDGES, place.height() - 2 * PAD, place.width() - 2 * EDGES)
        painter.drawText(inner, TURNED_WRAP, self.texts[section])
        painter.restore()


def _height(letters: QFontMetrics, name: str, width: int) -> int:
    """Pixels that a name takes up and down, wrapped in a width."""
    return letters.boundingRect(QRect(0, 0, width, 10_000), int(WRAP), name).height()


def _length(letters: QFontMetrics, name: str, across: int, most: int) -> int:
    """Pixels that a name takes along its line, wrapped so that its lines lie side by side in a width."""
    step = max(letters.averageCharWidth(), 1)
    along = max([letters.horizontalAdvance(word) for word in name.split()], default=0)
    while along < most and _height(letters, name, along) > max(across, letters.height()):
        along += step
    return min(along, most)
