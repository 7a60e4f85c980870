"""The pages of a sheet as they will be printed, one under the other; each is painted when it comes into sight."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QFrame, QWidget

from app.sheet import Sheet, paint_page
from app.theme import DARK, LIGHT, THEME_PROPERTY, Theme
from core.translation import plural, tr

EDGE = 14  # pixels around pages
KEPT = 6  # painted pages
LARGEST_ZOOM = 4.0
ZOOM_STEP = 1.25


class SheetPreview(QAbstractScrollArea):
    """Shows a ``Sheet``, as wide as there is room for it; ``+``, ``-`` and ``0`` or the wheel with Ctrl zoom."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Preview of the pages"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self._sheet: Sheet | None = None
        self._pixmaps: dict[int, QPixmap] = {}
        self._zoom = 1.0
        self.painted: list[int] = []  # numbers of the pages painted for this sheet, from 0, in that order

    @property
    def sheet(self) -> Sheet | None:
        """What is shown."""
        return self._sheet

    def show_sheet(self, sheet: Sheet | None) -> None:
        """Show another sheet, at the same place."""
        self._sheet = sheet
        self._forget()
        count = 0 if sheet is None else len(sheet.pages)
        self.setAccessibleDescription(plural("1 page", "{n} pages", count) if count else "")
        self._set_bars()
        self.viewport().update()

    def page_rect(self, number: int) -> QRect:
        """Where a page stands in the viewport."""
        size = self._page_size()
        width = self.viewport().width()
        left = max((width - size.width()) // 2, EDGE) - self.horizontalScrollBar().value()
        top = EDGE + number * (size.height() + EDGE) - self.verticalScrollBar().value()
        return QRect(QPoint(left, top), size)

    def zoom_by(self, factor: float) -> None:
        """Show pages larger or smaller, never smaller than fits."""
        zoom = min(max(self._zoom * factor, 1.0), LARGEST_ZOOM)
        if zoom != self._zoom:
            bar = self.verticalScrollBar()
            place = bar.value() / max(bar.maximum(), 1)
            self._zoom = zoom
            self._forget()
            self._set_bars()
            bar.setValue(round(place * bar.maximum()))
            self.viewport().update()

    def sizeHint(self) -> QSize:
        return QSize(520, 640)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = _theme()
        with QPainter(self.viewport()) as painter:
            painter.fillRect(event.rect(), QColor(theme.desk))
            if self._sheet is None:
                return
            for number in range(len(self._sheet.pages)):
                place = self.page_rect(number)
                if place.intersects(event.rect()):
                    painter.drawPixmap(place.topLeft(), self._pixmap(number))
                    painter.setPen(QPen(QColor(theme.line)))
                    painter.drawRect(place.adjusted(-1, -1, 0, 0))

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._forget()
        self._set_bars()
        super().resizeEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        match event.text():
            case "+" | "=":
                self.zoom_by(ZOOM_STEP)
            case "-":
                self.zoom_by(1 / ZOOM_STEP)
            case "0":
                self.zoom_by(1 / LARGEST_ZOOM)
            case _:
                self._scroll(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom_by(ZOOM_STEP if event.angleDelta().y() > 0 else 1 / ZOOM_STEP)
        else:
            super().wheelEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.viewport().update()

    def _scroll(self, event: QKeyEvent) -> None:
        bar = self.verticalScrollBar()
        ends = {Qt.Key.Key_Home: bar.minimum(), Qt.Key.Key_End: bar.maximum()}
        if event.key() in ends:
            bar.setValue(ends[Qt.Key(event.key())])
        elif event.key() in (Qt.Key.Key_PageDown, Qt.Key.Key_Space):
            bar.setValue(bar.value() + self._page_size().height() + EDGE)
        elif event.key() == Qt.Key.Key_PageUp:
            bar.setValue(bar.value() - self._page_size().height() - EDGE)
        else:
            super().keyPressEvent(event)

    def _page_size(self) -> QSize:
        if self._sheet is None:
            return QSize(0, 0)
        paper = self._sheet.paper
        width = max(round((self.viewport().width() - 2 * EDGE) * self._zoom), 60)
        return QSize(width, round(width * paper.height_mm / paper.width_mm))

    def _set_bars(self) -> None:
        size, count = self._page_size(), 0 if self._sheet is None else len(self._sheet.pages)
        view = self.viewport().size()
        for bar, whole, shown in (
            (self.verticalScrollBar(), EDGE + count * (size.height() + EDGE), view.height()),
            (self.horizontalScrollBar(), size.width() + 2 * EDGE, view.width()),
        ):
            bar.setPageStep(shown)
            bar.setSingleStep(40)
            bar.setRange(0, max(0, whole - shown))

    def _pixmap(self, number: int) -> QPixmap:
        """A painted page; the ones painted last are kept."""
        assert self._sheet is not None
        known = self._pixmaps.pop(number, None)
        if known is None:
            size, ratio = self._page_size(), self.devicePixelRatioF()
            known = QPixmap(size * ratio)
            known.setDevicePixelRatio(ratio)
            known.fill(Qt.GlobalColor.white)
            with QPainter(known) as painter:
                scale = size.width() / self._sheet.paper.width_mm
                painter.scale(scale, scale)
                paint_page(painter, self._sheet.pages[number])
            self.painted.append(number)
        self._pixmaps[number] = known
        if len(self._pixmaps) > KEPT:
            del self._pixmaps[next(iter(self._pixmaps))]
        return known

    def _forget(self) -> None:
        self._pixmaps.clear()
        self.painted.clear()


def _theme() -> Theme:
    """The theme that the program's widgets have; pages stay white whatever it is."""
    app = QApplication.instance()
    return DARK if app is not None and app.property(THEME_PROPERTY) == DARK.name else LIGHT
