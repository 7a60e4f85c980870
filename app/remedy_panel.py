"""What mends the chosen finding: a button for each change, or a sentence where there is none."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QEvent, QRect, QSize, Qt, Signal
from PySide6.QtGui import QEnterEvent, QFocusEvent, QFontMetrics, QPaintEvent, QPalette
from PySide6.QtWidgets import (
    QLabel,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from core.check import Remedy
from core.translation import translatable

LOOKING = translatable("Looking for a change that mends it …")
NONE_FOUND = translatable(
    "No single change mends this without doing harm elsewhere. It can stay as it is, or Plan (F9) works out several."
)
SIDE_PAD, TOP_PAD = 10, 5  # pixels around the words of a button
_WRAP = int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignLeft) | int(Qt.AlignmentFlag.AlignVCenter)


class RemedyPanel(QWidget):
    """Offers remedies.

    Signals:
        chosen: The ``Remedy`` whose button was pressed.
        pointed: The ``Remedy`` that the pointer or the keyboard has come to, or None where it has left.
    """

    chosen = Signal(object)
    pointed = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._remedies: tuple[Remedy, ...] = ()
        self._pointed: Remedy | None = None
        self.buttons: list[RemedyButton] = []
        self._words = QLabel()
        self._words.setWordWrap(True)
        self._words.setProperty("rank", "quiet")
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(4)
        self._column.addWidget(self._words)
        self.say("")

    @property
    def remedies(self) -> tuple[Remedy, ...]:
        """What is offered, best first."""
        return self._remedies

    @property
    def words(self) -> str:
        """The sentence that stands here instead of buttons, or ""."""
        return self._words.text()

    def say(self, text: str) -> None:
        """Show a sentence and no buttons; "" for an empty place."""
        self._fill((), text)

    def offer(self, remedies: Sequence[Remedy]) -> None:
        """Show a button for each remedy."""
        self._fill(tuple(remedies), "")

    def _fill(self, remedies: tuple[Remedy, ...], text: str) -> None:
        self._point(None)
        self._remedies = remedies
        self._words.setText(text)
        self._words.setVisible(bool(text))
        for button in self.buttons:
            button.hide()
            button.deleteLater()
        self.buttons = []
        for remedy in remedies:
            button = RemedyButton(remedy.text)
            button.clicked.connect(lambda _=False, remedy=remedy: self.chosen.emit(remedy))
            button.pointed.connect(partial(self._on_pointed, remedy))
            self._column.addWidget(button)
            self.buttons.append(button)
        self.setVisible(bool(remedies) or bool(text))

    def _on_pointed(self, remedy: Remedy, here: bool) -> None:
        if here or self._pointed is remedy:
            self._point(remedy if here else None)

    def _point(self, remedy: Remedy | None) -> None:
        if remedy is not self._pointed:
            self._pointed = remedy
            self.pointed.emit(remedy)


class RemedyButton(QPushButton):
    """A button whose words run on to another line where the pane is narrow.

    Signals:
        pointed: Whether the pointer or the keyboard is on it.
    """

    pointed = Signal(bool)

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        room = QRect(0, 0, max(width - 2 * SIDE_PAD, 60), 10_000)
        return QFontMetrics(self.font()).boundingRect(room, _WRAP, self.text()).height() + 2 * TOP_PAD + 2

    def sizeHint(self) -> QSize:
        return QSize(200, self.heightForWidth(self.width()))

    def minimumSizeHint(self) -> QSize:
        return QSize(80, QFontMetrics(self.font()).height() + 2 * TOP_PAD + 2)

    def paintEvent(self, event: QPaintEvent) -> None:
        from PySide6.QtWidgets import QStyle, QStyleOptionButton, QStylePainter  # not for the start: tables of names

        option = QStyleOptionButton()
        self.initStyleOption(option)
        option.text = ""
        painter = QStylePainter(self)
        painter.drawControl(QStyle.ControlElement.CE_PushButton, option)
        painter.setPen(self.palette().color(QPalette.ColorRole.ButtonText))
        painter.drawText(self.rect().adjusted(SIDE_PAD, TOP_PAD, -SIDE_PAD, -TOP_PAD), _WRAP, self.text())

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self.pointed.emit(True)

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self.pointed.emit(False)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.pointed.emit(True)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.pointed.emit(False)
