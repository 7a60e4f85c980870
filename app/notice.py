"""A strip above the page with something to know: what was repaired on opening, or why something failed."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from core.translation import tr

MOST_ROWS_SHOWN = 5


class Notice(QFrame):
    """One sentence, and under it a list where there is more to say; stays until it is closed or replaced."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("rank", "notice")
        self._sentence = QLabel()
        self._sentence.setWordWrap(True)
        self._sentence.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Problems in the file"))
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.list.setWordWrap(True)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.act_button = QPushButton()
        self.act_button.clicked.connect(self._act)
        self._on_act: Callable[[], object] | None = None
        self.close_button = QToolButton()
        self.close_button.setText(tr("Close"))
        self.close_button.setAccessibleName(tr("Close this notice"))
        self.close_button.clicked.connect(self.hide)
        row = QHBoxLayout()
        row.addWidget(self._sentence, 1)
        row.addWidget(self.act_button, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self.close_button, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 10, 14, 10)
        column.addLayout(row)
        column.addWidget(self.list)
        self.hide()

    @property
    def sentence(self) -> str:
        return self._sentence.text()

    @property
    def lines(self) -> tuple[str, ...]:
        return tuple(self.list.item(row).text() for row in range(self.list.count()))

    def say(
        self, sentence: str, lines: Sequence[str] = (), act: tuple[str, Callable[[], object]] | None = None
    ) -> None:
        """Show a sentence and a list in place of what was shown.

        Args:
            act: What can be done about it: words for a button, and what the button does once the notice has closed.
        """
        self._sentence.setText(sentence)
        self._on_act = act[1] if act is not None else None
        self.act_button.setText(act[0] if act is not None else "")
        self.act_button.setVisible(act is not None)
        self.list.clear()
        self.list.addItems(list(lines))
        self.list.setVisible(bool(lines))
        if lines:
            rows = min(len(lines), MOST_ROWS_SHOWN)
            self.list.setFixedHeight(rows * self.list.sizeHintForRow(0) + 2 * self.list.frameWidth() + 2)
        self.show()

    def _act(self) -> None:
        act, self._on_act = self._on_act, None
        self.hide()
        if act is not None:
            act()
