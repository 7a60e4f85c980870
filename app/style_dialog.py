"""What a style does, in sentences; an own style can be taken away here."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QPlainTextEdit, QPushButton, QVBoxLayout, QWidget

from app.files import FileError
from app.style_words import style_text
from app.styles import forget_style, is_book, shown_name, style_of
from app.window_layout import fitting
from core.translation import tr

WIDTH, HEIGHT = 560, 380


class StyleText(QPlainTextEdit):
    """The sentences, to be read and copied."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setReadOnly(True)
        self.setTabChangesFocus(True)
        self.setAccessibleName(tr("What was found in the lessons of the style"))
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByKeyboard | Qt.TextInteractionFlag.TextSelectableByMouse
        )


class StyleDialog(QDialog):
    """One style.

    Args:
        name: Of the style.

    Signals:
        forgotten: The style was taken away.

    Raises:
        FileError: it cannot be read.
    """

    forgotten = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self._is_asked = False
        self.setWindowTitle(tr("The style “{name}”", name=shown_name(name)))
        self.text = StyleText()
        self.text.setPlainText(style_text(style_of(name)))
        self.says = QLabel()
        self.says.setWordWrap(True)
        self.says.hide()
        self.forget_button = QPushButton(tr("&Take it away…"))
        self.forget_button.setToolTip(tr("Forget this style; the lessons that it was learned from stay"))
        self.forget_button.setVisible(not is_book(name))
        self.forget_button.setAutoDefault(False)
        close = QPushButton(tr("&Close"))
        close.setDefault(True)
        buttons = QHBoxLayout()
        buttons.addWidget(self.forget_button)
        buttons.addStretch(1)
        buttons.addWidget(close)
        column = QVBoxLayout(self)
        column.addWidget(self.text, 1)
        column.addWidget(self.says)
        column.addLayout(buttons)
        self.resize(fitting(self, WIDTH, HEIGHT))
        self.forget_button.clicked.connect(self._forget)
        close.clicked.connect(self.accept)

    def _forget(self) -> None:
        """Asked once, say what goes; asked again, do it."""
        if not self._is_asked:
            self._is_asked = True
            self._say(tr("What was learned goes for good; the lessons stay, and it can be learned from them again."))
            self.forget_button.setText(tr("&Take it away for good"))
            return
        try:
            forget_style(self._name)
        except FileError as fault:
            self._say(str(fault))
            return
        self.forgotten.emit()
        self.accept()

    def _say(self, sentence: str) -> None:
        self.says.setText(sentence)
        self.says.show()
