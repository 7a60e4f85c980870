"""About Bowbench: version, what the program is made of, and the licence of each part with its text."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QGuiApplication, QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QPushButton,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from app.desktop_entry import program_icon
from app.licences import Part, all_parts, version_lines
from app.theme import scaled_font
from app.window_layout import fitting
from core.translation import tr, translatable

TITLE = translatable("About Bowbench")
SENTENCE = translatable("Works out, checks, plays and prints the bowings of fiddle tunes.")
RIGHTS = translatable("Free software under the MIT licence. What it is made of, and under which licences:")
NO_TEXT = translatable("No licence text came with this part; its home has it.")
COPY, COPIED = translatable(("&Copy versions", "The versions are in the clipboard."))
ICON_SIDE = 64  # pixels of the screen at a scale of 1
SIZE = (760, 540)


class AboutDialog(QDialog):
    """The parts on the left, what is to be known of the chosen one on the right."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr(TITLE))
        self.parts = all_parts()
        versions = version_lines()
        name = QLabel("Bowbench")
        name.setFont(scaled_font(name.font(), 1.7))
        self.version = QLabel(f"{versions[0].partition(' ')[2]}  ({', '.join(versions[1:])})")
        self.version.setProperty("rank", "quiet")
        self.version.setWordWrap(True)
        self.version.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        words = QVBoxLayout()
        words.setSpacing(2)
        for label in (name, QLabel(tr(SENTENCE)), self.version):
            words.addWidget(label)
        picture = QLabel()
        picture.setPixmap(program_icon().pixmap(QSize(ICON_SIDE, ICON_SIDE), self.devicePixelRatioF()))
        head = QHBoxLayout()
        head.setSpacing(16)
        head.addWidget(picture, 0, Qt.AlignmentFlag.AlignTop)
        head.addLayout(words, 1)
        rights = QLabel(tr(RIGHTS))
        rights.setWordWrap(True)
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Parts of the program"))
        self.list.addItems([" ".join(filter(None, (part.name, part.version))) for part in self.parts])
        self.list.currentRowChanged.connect(self._show_part)
        self.text = QTextBrowser()
        self.text.setAccessibleName(tr("Licence of the part"))
        self.text.setOpenExternalLinks(True)
        both = QHBoxLayout()
        both.addWidget(self.list, 2)
        both.addWidget(self.text, 5)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        self.copy_button = QPushButton(tr(COPY))
        self.copy_button.setToolTip(tr("For a report of a fault"))
        self.copy_button.setAutoDefault(False)
        self.copy_button.clicked.connect(lambda: QGuiApplication.clipboard().setText("\n".join(versions)))
        self.copy_button.clicked.connect(lambda: self.copy_button.setText(tr(COPIED)))
        buttons.addButton(self.copy_button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 16)
        column.setSpacing(12)
        column.addLayout(head)
        column.addWidget(rights)
        column.addLayout(both, 1)
        column.addWidget(buttons)
        self.resize(fitting(self, *SIZE))
        self.list.setCurrentRow(0)
        self.list.setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.list.doItemsLayout()  # rows were laid out before they had their style

    def _show_part(self, row: int) -> None:
        self.text.setHtml(part_page(self.parts[row]))


def part_page(part: Part) -> str:
    """All that is known of a part as HTML."""
    home = f'<a href="{escape(part.home)}">{escape(part.home)}</a>' if part.home else ""
    rows = (
        (tr("Used for"), escape(tr(part.use) if part.use else "")),
        (tr("Licence"), escape(part.licence)),
        (tr("Home"), home),
    )
    table = "".join(
        f"<tr><td style='padding-right:14px'>{label}</td><td>{value}</td></tr>" for label, value in rows if value
    )
    text = part.notice()
    title = " ".join(filter(None, (part.name, part.version)))
    notice = f"<pre style='white-space:pre-wrap'>{escape(text)}</pre>" if text else f"<p>{escape(tr(NO_TEXT))}</p>"
    return f"<h3>{escape(title)}</h3><table>{table}</table>{notice}"
