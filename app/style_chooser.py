"""Choosing the style in which a bowing is carried on, and what asks for that."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QComboBox, QFormLayout, QHBoxLayout, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.carrying import THIS_TUNE
from app.plan_results import button
from app.settings import Settings
from app.styles import BOOK, own_styles, shown_name
from core.translation import tr

OWN = "own:"  # before the name of an own style, where it is remembered
SHIPPED, HERE = "shipped", "here"


class StyleChooser(QWidget):
    """Lists the styles and remembers which was chosen.

    Args:
        settings: Remembers it.

    Signals:
        chosen: The user chose another style.
        carry_wanted: The user wants the bowing carried on.
        words_wanted: The user wants to read what the style does.
    """

    chosen = Signal()
    carry_wanted = Signal()
    words_wanted = Signal()

    def __init__(self, settings: Settings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        self.styles = QComboBox()
        self.styles.setAccessibleName(tr("Style in which the bowing is carried on"))
        self.styles.setToolTip(
            tr("Whose hand the bowing is carried on in; styles of your own are learned on the shelf")
        )
        self.styles.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.carry_button: QPushButton = button(
            tr("Carry on t&his bowing"), tr("Propose the rest from the bars that are slurred or marked, or selected")
        )
        self.words_button: QPushButton = button(tr("&What the style does…"), tr("Read what was found in its lessons"))
        row = QFormLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        row.addRow(tr("S&tyle"), self.styles)
        buttons = QHBoxLayout()
        buttons.addWidget(self.carry_button, 1)
        buttons.addWidget(self.words_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(row)
        column.addLayout(buttons)
        self.fill()
        self.styles.activated.connect(self._on_chosen)
        self.carry_button.clicked.connect(self.carry_wanted)
        self.words_button.clicked.connect(self.words_wanted)

    @property
    def style_name(self) -> str:
        """Name of the style that is chosen, or ``THIS_TUNE``."""
        return str(self.styles.currentData())

    def fill(self) -> None:
        """List what styles there are now; the one that was chosen last stays chosen where it is still there."""
        own = own_styles()
        self.styles.clear()
        for name in own:
            self.styles.addItem(name, name)
        self.styles.addItem(shown_name(BOOK), BOOK)
        self.styles.addItem(tr("From this tune only"), THIS_TUNE)
        codes = {SHIPPED: BOOK, HERE: THIS_TUNE, **{f"{OWN}{name}": name for name in own}}
        wanted = codes[self._settings.planner_choice("style", tuple(codes))]
        self.styles.setCurrentIndex(self.styles.findData(wanted))
        self._show_words()

    def choose(self, name: str) -> None:
        """Choose a style for the user, and remember it."""
        self._remember(name)
        self.fill()

    def _on_chosen(self) -> None:
        self._remember(self.style_name)
        self._show_words()
        self.chosen.emit()

    def _remember(self, name: str) -> None:
        code = {BOOK: SHIPPED, THIS_TUNE: HERE}.get(name, f"{OWN}{name}")
        self._settings.remember_planner_choice("style", code)

    def _show_words(self) -> None:
        self.words_button.setEnabled(self.style_name != THIS_TUNE)

    def showEvent(self, event: QShowEvent) -> None:
        self.fill()
        super().showEvent(event)
