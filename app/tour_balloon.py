"""What a stop of the tour looks like: a frame round a part of the window, and a balloon with words beside it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from core.translation import tr, translatable

BACK, NEXT, DONE, LEAVE = translatable(("&Back", "&Next", "&Done", "&Leave the tour"))
LOOK = "#tour { background: palette(base); border: 2px solid palette(highlight); border-radius: 8px; }"
WIDTH = 360  # pixels, at the usual size of text
GAP, MARGIN = 12, 10  # pixels between part and balloon, and kept free at the window's edge
RIM = 3  # pixels


class TourBalloon(QFrame):
    """Words with buttons, kept beside a part of the window however that moves. The rest of the window works on.

    Signals:
        forward_wanted, back_wanted, end_wanted: The buttons, or the keys Right, Left and Esc.
    """

    forward_wanted = Signal()
    back_wanted = Signal()
    end_wanted = Signal()

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        self._target: QWidget | None = None
        self._part: QRect | None = None
        self.setObjectName("tour")
        self.setStyleSheet(LOOK)
        self.rim = _Rim(window)
        self._title, self._text, self._count = QLabel(), QLabel(), QLabel()
        self._title.setProperty("rank", "heading")
        self._count.setProperty("rank", "quiet")
        self._text.setWordWrap(True)
        self.back_button = QPushButton(tr(BACK))
        self.back_button.clicked.connect(self.back_wanted)
        self.end_button = QPushButton(tr(LEAVE))
        self.end_button.clicked.connect(self.end_wanted)
        self.forward_button = QPushButton()
        self.forward_button.clicked.connect(self.forward_wanted)
        self._buttons = (self.end_button, self.back_button, self.forward_button)
        for button in self._buttons:
            button.installEventFilter(self)
        head = QHBoxLayout()
        head.addWidget(self._title, 1)
        head.addWidget(self._count)
        row = QHBoxLayout()
        row.addWidget(self.end_button)
        row.addStretch(1)
        row.addWidget(self.back_button)
        row.addWidget(self.forward_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 14, 16, 14)
        column.setSpacing(10)
        column.addLayout(head)
        column.addWidget(self._text)
        column.addLayout(row)
        window.installEventFilter(self)

    def show_stop(
        self, target: QWidget, part: QRect | None, title: str, text: str, count: str, *, first: bool, last: bool
    ) -> None:
        """Show a stop beside a part of the window.

        Args:
            target, part: A widget, and the part of it that is told of, in its own pixels; all of it where None.
            count: Which stop it is, in words.
            first, last: There is none before it; none behind it.
        """
        if self._target is not None:
            self._target.removeEventFilter(self)
        self._target, self._part = target, part
        target.installEventFilter(self)
        self._title.setText(title)
        self._text.setText(text)
        self._count.setText(count)
        self.back_button.setEnabled(not first)
        self.end_button.setVisible(not last)
        self.forward_button.setText(tr(DONE if last else NEXT))
        self.setAccessibleName(f"{title}, {count}")
        self.forward_button.setAccessibleDescription(f"{title}. {text}")  # read out, since it gets the keyboard
        self.show()
        self.rim.show()
        self._place()
        self.forward_button.setFocus(Qt.FocusReason.OtherFocusReason)
        QTimer.singleShot(0, self, self._place)  # once more when a part that was hidden has its place

    def close_down(self) -> None:
        """Go away for good."""
        self._window.removeEventFilter(self)
        if self._target is not None:
            self._target.removeEventFilter(self)
        focused = self.focusWidget()
        if focused is not None:
            focused.clearFocus()  # while it is shown: Qt would look for the next button as it goes
        for widget in (self.rim, self):
            widget.hide()
            widget.deleteLater()

    def _place(self) -> None:
        if self._target is None:
            return
        part = self._part or self._target.rect()
        around = part.translated(self._target.mapTo(self._window, QPoint(0, 0)))
        room = self._window.rect().adjusted(MARGIN, MARGIN, -MARGIN, -MARGIN)
        width = min(max(WIDTH, self.fontMetrics().averageCharWidth() * 52), room.width())
        layout = self.layout()
        assert layout is not None
        height = max(layout.totalHeightForWidth(width), self.minimumSizeHint().height())
        self.rim.setGeometry(around.adjusted(-RIM, -RIM, RIM, RIM) & self._window.rect())
        self.setGeometry(beside(around, QSize(width, min(height, room.height())), room))
        self.rim.raise_()
        self.raise_()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress and watched in self._buttons:
            if event.key() in (Qt.Key.Key_Left, Qt.Key.Key_Right):  # which would go from button to button
                self.keyPressEvent(event)
                return True
            return False
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Move, QEvent.Type.Show):
            QTimer.singleShot(0, self, self._place)
        return False

    def keyPressEvent(self, event: QKeyEvent) -> None:
        signals = {
            Qt.Key.Key_Escape: self.end_wanted,
            Qt.Key.Key_Right: self.forward_wanted,
            Qt.Key.Key_Left: self.back_wanted,
        }
        focused = self.focusWidget()
        if event.key() in signals:
            signals[Qt.Key(event.key())].emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and isinstance(focused, QPushButton):
            focused.click()
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, forwards: bool) -> bool:
        """Tab goes round within the balloon; a click leaves it, Esc ends the tour."""
        buttons = [button for button in self._buttons if button.isVisible() and button.isEnabled()]
        if not buttons:
            return super().focusNextPrevChild(forwards)
        focused = self.focusWidget()
        here = buttons.index(focused) if isinstance(focused, QPushButton) and focused in buttons else 0
        buttons[(here + (1 if forwards else -1)) % len(buttons)].setFocus(Qt.FocusReason.TabFocusReason)
        return True


def beside(around: QRect, size: QSize, room: QRect) -> QRect:
    """Where a balloon of a size stands: under the part, over it, left or right of it, else inside at its lower end.

    All in the pixels of one widget; the result lies in ``room`` as long as it fits there.
    """
    x = min(max(around.center().x() - size.width() // 2, room.left()), room.right() + 1 - size.width())
    y = min(max(around.top(), room.top()), room.bottom() + 1 - size.height())
    places = (
        QPoint(x, around.bottom() + 1 + GAP),
        QPoint(x, around.top() - GAP - size.height()),
        QPoint(around.left() - GAP - size.width(), y),
        QPoint(around.right() + 1 + GAP, y),
    )
    for place in places:
        if room.contains(QRect(place, size)):
            return QRect(place, size)
    inside = around & room
    return QRect(
        QPoint(
            max(inside.right() + 1 - GAP - size.width(), room.left()),
            max(inside.bottom() + 1 - GAP - size.height(), room.top()),
        ),
        size,
    )


class _Rim(QWidget):
    """A line round the part that is told of; the mouse goes through it."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.Highlight), RIM))
        painter.drawRoundedRect(self.rect().adjusted(RIM // 2, RIM // 2, -RIM // 2 - 1, -RIM // 2 - 1), 5, 5)
