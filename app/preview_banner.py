"""The strip over the page that says: this is a preview, and what takes it or drops it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QSizePolicy, QWidget

from app.flow_row import FlowRow
from app.plan_preview import PlanPreview
from core.translation import tr, translatable

LETTERS = 32  # of the sentence in a line, at least
MARK = translatable("PREVIEW")


class PreviewBanner(QFrame):
    """Shown while the page shows a bowing that is not the document's.

    Signals:
        take_wanted, bars_wanted, drop_wanted: The user pressed the button.
    """

    take_wanted = Signal()
    bars_wanted = Signal()
    drop_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("preview_banner")
        self.setProperty("rank", "notice")
        mark = QLabel(tr(MARK))
        mark.setProperty("rank", "heading")
        self._sentence = QLabel()
        self._sentence.setWordWrap(True)
        self._sentence.setAccessibleName(tr("The page shows a preview"))
        self._sentence.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._sentence.setMinimumWidth(LETTERS * self._sentence.fontMetrics().averageCharWidth())
        self.take_button = QPushButton(tr("Take"))
        self.take_button.setToolTip(tr("Put it in the place of this bowing (Enter)"))
        self.take_button.setAccessibleName(tr("Take the previewed bowing"))
        self.take_button.clicked.connect(self.take_wanted)
        self.bars_button = QPushButton(tr("Take this bar"))
        self.bars_button.setToolTip(
            tr("Take the bar of the marked note, or those of the selection, and drop the others (Alt+Enter)")
        )
        self.bars_button.setAccessibleName(tr("Take of the previewed bowing the bar of the marked note only"))
        self.bars_button.clicked.connect(self.bars_wanted)
        self.drop_button = QPushButton(tr("Drop"))
        self.drop_button.setToolTip(tr("Leave the bowing as it is (Esc)"))
        self.drop_button.setAccessibleName(tr("Drop the previewed bowing"))
        self.drop_button.clicked.connect(self.drop_wanted)
        row = FlowRow(8, self)
        row.setContentsMargins(18, 6, 14, 6)
        row.add(mark)
        row.add(self._sentence, 1)
        for button in (self.take_button, self.bars_button, self.drop_button):
            row.add(button)
        self.hide()

    @property
    def sentence(self) -> str:
        return self._sentence.text()

    def show_preview(self, preview: PlanPreview | None) -> None:
        """Say what is previewed, and take the room for it at once; None hides the strip."""
        if preview is not None:
            self._sentence.setText(preview.sentence)
            self.bars_button.setVisible(preview.takes_bars)
        self.setVisible(preview is not None)
        parent = self.parentWidget()
        column = parent.layout() if parent is not None else None
        if preview is not None and column is not None:
            column.activate()
