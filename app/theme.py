"""Colours of the window and the page, light and dark, and how they reach Qt.

The page follows the look: in the dark it is a dark sheet with light ink, so that a lit room and a dim stage both
read well. Printing never asks here: paper is white and ink is black.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QGuiApplication, QIcon, QPainter, QPalette, QPixmap
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QApplication

from app.own_files import resource
from app.settings import Look
from core.check import Severity
from core.values import dataclass

THEME_PROPERTY = "bowbench_theme"  # of the application: the theme that its widgets have
STYLE_PROPERTY = "bowbench_style"
STYLE = "Fusion"


@dataclass(frozen=True)
class Theme:
    """Colours by what they are for, as ``#rrggbb``.

    Attributes:
        name: ``light`` or ``dark``.
        desk: Behind the page.
        panel, field, line: Panes; lists and text fields; thin rules between things.
        text, quiet: Words; words of second rank.
        paper, ink, faint_ink: The page; notes and fixed bow marks; derived bow marks.
        tint, tint_soft, on_tint: The program's one colour: focus and chosen things; behind text; text on it.
        severities: Colour of each severity; shape and word say the same.
    """

    name: str
    desk: str
    panel: str
    field: str
    line: str
    text: str
    quiet: str
    paper: str
    ink: str
    faint_ink: str
    tint: str
    tint_soft: str
    on_tint: str
    severities: dict[Severity, str]


LIGHT = Theme(
    name="light",
    desk="#dedad0",
    panel="#f3f0e9",
    field="#fffdf8",
    line="#d2cdc0",
    text="#26241f",
    quiet="#666156",
    paper="#fffdf8",
    ink="#1c1a17",
    faint_ink="#706b61",
    tint="#1d6b5a",
    tint_soft="#d3e6df",
    on_tint="#ffffff",
    severities={Severity.FAULT: "#a3321f", Severity.WARNING: "#8a5a00", Severity.NOTE: "#3b5b85"},
)
DARK = Theme(
    name="dark",
    desk="#17181a",
    panel="#222427",
    field="#2a2c30",
    line="#3c3f44",
    text="#e8e4da",
    quiet="#a8a397",
    paper="#26282b",
    ink="#efeade",
    faint_ink="#a09a8e",
    tint="#74c7ae",
    tint_soft="#263f38",
    on_tint="#10201b",
    severities={Severity.FAULT: "#ff907c", Severity.WARNING: "#e8b958", Severity.NOTE: "#97b8e4"},
)


def choose_theme(look: Look) -> Theme:
    """The theme for a look; that of the system where it says so."""
    if look is Look.SYSTEM:
        dark = QGuiApplication.styleHints().colorScheme() is Qt.ColorScheme.Dark
        return DARK if dark else LIGHT
    return DARK if look is Look.DARK else LIGHT


def apply_theme(app: QApplication, theme: Theme) -> None:
    """Give every widget of the program the theme's colours; costs nothing where it has them already."""
    if app.property(THEME_PROPERTY) == theme.name:
        return
    app.setProperty(THEME_PROPERTY, theme.name)
    if not app.property(STYLE_PROPERTY):
        app.setStyle(STYLE)
        app.setProperty(STYLE_PROPERTY, STYLE)
    app.setPalette(make_palette(theme))
    app.setStyleSheet(style_sheet(theme))


def styled_application(called: str) -> QApplication:
    """The application, in the style that the theme is for from its first widget on.

    Args:
        called: The name of the program, as the system called it.
    """
    app = QApplication([called, "-style", STYLE])
    app.setProperty(STYLE_PROPERTY, STYLE)
    return app


def make_palette(theme: Theme) -> QPalette:
    """The theme as a Qt palette, disabled text included."""
    palette = QPalette()
    role = QPalette.ColorRole
    for part, colour in {
        role.Window: theme.panel,
        role.WindowText: theme.text,
        role.Base: theme.field,
        role.AlternateBase: theme.panel,
        role.Text: theme.text,
        role.Button: theme.panel,
        role.ButtonText: theme.text,
        role.BrightText: theme.on_tint,
        role.ToolTipBase: theme.field,
        role.ToolTipText: theme.text,
        role.PlaceholderText: theme.quiet,
        role.Highlight: theme.tint,
        role.HighlightedText: theme.on_tint,
        role.Accent: theme.tint,
        role.Link: theme.tint,
        role.Mid: theme.line,
        role.Midlight: theme.line,
        role.Light: theme.field,
        role.Dark: theme.line,
        role.Shadow: theme.line,
    }.items():
        palette.setColor(part, QColor(colour))
    for part in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, part, mix(theme.text, theme.panel, 0.6))
    return palette


def style_sheet(theme: Theme) -> str:
    """The little that a palette cannot say."""
    tick = resource("icons", f"tick-{theme.name}.svg").as_posix()
    handle = mix(theme.quiet, theme.panel, 0.45).name()
    return f"""
    QDialogButtonBox {{ dialogbuttonbox-buttons-have-icons: 0; }}
    QToolTip {{ color: {theme.text}; background: {theme.field}; border: 1px solid {theme.line}; padding: 4px; }}
    QToolBar {{ background: {theme.panel}; border: none; border-bottom: 1px solid {theme.line};
                padding: 3px 8px; spacing: 2px; }}
    QToolBar::separator {{ background: {theme.line}; width: 1px; margin: 5px 7px; }}
    QToolButton {{ border: 1px solid transparent; border-radius: 5px; padding: 4px 7px; }}
    QToolBar > QToolButton {{ padding: 4px; }}
    QToolButton:hover {{ background: {theme.tint_soft}; }}
    QToolButton:pressed, QToolButton:checked {{ background: {theme.tint_soft}; border-color: {theme.tint}; }}
    QToolButton:focus {{ border-color: {theme.tint}; }}
    QStatusBar {{ background: {theme.panel}; border-top: 1px solid {theme.line}; }}
    QStatusBar::item {{ border: none; }}
    QSplitter::handle {{ background: {theme.line}; }}
    QSplitter::handle:horizontal {{ width: 1px; }}
    QSplitter::handle:vertical {{ height: 1px; }}
    QListView, QTableView {{ background: {theme.field}; border: 1px solid {theme.line}; border-radius: 5px;
                             outline: none; selection-background-color: {theme.tint_soft};
                             selection-color: {theme.text}; }}
    QListView:focus, QTableView:focus {{ border-color: {theme.tint}; }}
    QListView::item {{ padding: 0 7px; min-height: 24px; color: {theme.text}; border: 1px solid transparent; }}
    QTableView::item {{ padding: 0 4px; }}
    QListView::item:hover {{ background: {mix(theme.tint_soft, theme.field, 0.5).name()}; }}
    QListView::item:selected {{ background: {theme.tint_soft}; color: {theme.text}; }}
    QListView::item:focus {{ border: 1px solid {theme.tint}; }}
    QListView::indicator {{ width: 13px; height: 13px; border: 1px solid {theme.quiet}; border-radius: 3px;
                            background: {theme.field}; }}
    QListView::indicator:checked {{ background: {theme.tint}; border-color: {theme.tint}; image: url("{tick}"); }}
    QHeaderView::section {{ background: {theme.panel}; color: {theme.quiet}; border: none;
                            border-bottom: 1px solid {theme.line}; padding: 4px 7px; }}
    QPushButton {{ background: {theme.field}; border: 1px solid {theme.line}; border-radius: 5px; padding: 5px 14px; }}
    QPushButton:hover {{ background: {theme.tint_soft}; }}
    QPushButton:focus, QPushButton:default {{ border-color: {theme.tint}; }}
    QPushButton:disabled {{ color: {theme.quiet}; background: {theme.panel}; }}
    QPushButton[rank="link"] {{ background: transparent; border-color: transparent; border-radius: 0;
                                border-bottom-color: {theme.tint}; color: {theme.tint};
                                text-align: left; padding: 1px 0; }}
    QPushButton[rank="link"]:disabled {{ border-bottom-color: transparent; color: {theme.quiet}; }}
    QPushButton[rank="link"]:hover {{ background: {theme.tint_soft}; }}
    QPushButton[rank="link"]:focus {{ border-color: {theme.tint}; }}
    QSlider {{ min-height: 20px; }}
    QSlider::groove:horizontal {{ height: 4px; border: 8px solid transparent; border-left-width: 0;
                                  border-right-width: 0; background: {handle}; background-clip: padding; }}
    QSlider::handle:horizontal {{ width: 12px; margin: -6px 0; border: 2px solid {theme.tint}; border-radius: 8px;
                                  background: {theme.field}; }}
    QSlider::handle:horizontal:hover, QSlider::handle:horizontal:focus {{ background: {theme.tint}; }}
    QScrollBar {{ background: transparent; border: none; margin: 0; }}
    QScrollBar:vertical {{ width: 12px; }}
    QScrollBar:horizontal {{ height: 12px; }}
    QTableView[rank="small"] QHeaderView::section {{ padding: 4px 3px; }}
    QScrollBar::handle {{ background: {handle}; border-radius: 4px; margin: 2px; }}
    QScrollBar::handle:vertical {{ min-height: 36px; }}
    QScrollBar::handle:horizontal {{ min-width: 36px; }}
    QScrollBar::handle:hover {{ background: {theme.quiet}; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QAbstractScrollArea::corner {{ background: {theme.desk}; }}
    #page_area {{ background: {theme.desk}; }}
    QLabel[rank="heading"] {{ font-weight: 600; }}
    QLabel[rank="quiet"] {{ color: {theme.quiet}; }}
    QFrame[rank="notice"] {{ background: {theme.field}; border: none; border-bottom: 1px solid {theme.line}; }}
    """


def mix(colour: str, other: str, share: float) -> QColor:
    """A colour between two: ``share`` 1 is the first, 0 the other."""
    a, b = QColor(colour), QColor(other)
    pairs = ((a.red(), b.red()), (a.green(), b.green()), (a.blue(), b.blue()))
    return QColor(*(round(one * share + two * (1 - share)) for one, two in pairs))


def scaled_font(font: QFont, factor: float) -> QFont:
    """A font larger or smaller, whether its size is given in points or in pixels."""
    scaled = QFont(font)
    if font.pointSizeF() > 0:
        scaled.setPointSizeF(font.pointSizeF() * factor)
    else:
        scaled.setPixelSize(round(font.pixelSize() * factor))
    return scaled


def tinted_icon(svg: str, colours: dict[QIcon.Mode, str], sizes: Sequence[int]) -> QIcon:
    """Make an icon from an SVG drawing in which ``currentColor`` stands for the colour of the words beside it.

    Args:
        svg: The drawing.
        colours: That colour, by mode.
        sizes: Sides in pixels, each drawn anew.
    """
    icon = QIcon()
    for mode, colour in colours.items():
        renderer = QSvgRenderer(QByteArray(svg.replace("currentColor", colour).encode()))
        for size in sizes:
            pixmap = QPixmap(QSize(size, size))
            pixmap.fill(Qt.GlobalColor.transparent)
            painter = QPainter(pixmap)
            renderer.render(painter, QRectF(0, 0, size, size))
            painter.end()
            icon.addPixmap(pixmap, mode)
    return icon
