"""How the window looks: its colours, and what stands on and under the page; all of it is remembered."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction, QGuiApplication
from PySide6.QtWidgets import QApplication

from app.actions import set_first_icons, set_icons
from app.bow_trace import BowTrace
from app.language import LANGUAGES
from app.later import Later
from app.page_area import PageArea
from app.settings import Look, Settings
from app.theme import Theme, apply_theme, choose_theme
from core.engraving.bow_signs import MarkDensity
from core.translation import percent, tr


class Looks(QObject):
    """Bow marks, accent strip, trace, zoom and theme, as the user chooses them.

    Args:
        settings: What is remembered.
        area: The page and its zoom.
        trace: The way of the bow under the page.
        later: What waits for the first picture of the window; nothing where None.

    Signals:
        theme_changed: The ``Theme`` that every part takes from now on.
        zoom_told: The zoom in words.
        hinted: A sentence for the status line.
    """

    theme_changed = Signal(object)
    zoom_told = Signal(str)
    hinted = Signal(str)

    def __init__(
        self,
        settings: Settings,
        area: PageArea,
        trace: BowTrace,
        parent: QObject | None = None,
        later: Later | None = None,
    ) -> None:
        super().__init__(parent)
        self._later = later or Later()
        self._settings, self._area, self._page, self._trace = settings, area, area.page, trace
        self._actions: Mapping[str, QAction] = {}
        self._page.set_density(MarkDensity(settings.marks))
        area.zoomed.connect(self._on_zoomed)
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._on_system_look_changed)

    @property
    def theme(self) -> Theme:
        """The theme that is chosen."""
        return choose_theme(self._settings.look)

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        handlers: dict[str, Callable[[], object]] = {
            "strip": self.toggle_strip,
            "trace": self.toggle_trace,
            "zoom_in": self._area.zoom_in,
            "zoom_out": self._area.zoom_out,
            "zoom_fit": self._area.fit_width,
        }
        handlers |= {f"marks_{density.value}": partial(self.set_density, density) for density in MarkDensity}
        handlers |= {f"look_{look.value}": partial(self.set_look, look) for look in Look}
        handlers |= {f"language_{code or 'system'}": partial(self.set_language, code) for code in ("", *LANGUAGES)}
        return handlers

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, to show in them what is chosen."""
        self._actions = actions

    def restore(self) -> None:
        """Look as it was at the end of the last session; the parts that follow ``theme_changed`` are connected."""
        settings = self._settings
        self._actions[f"marks_{settings.marks}"].setChecked(True)
        self._actions[f"look_{settings.look.value}"].setChecked(True)
        self._actions[f"language_{settings.language or 'system'}"].setChecked(True)
        self._actions["strip"].setChecked(settings.strip)
        self._page.show_strip(settings.strip)
        self._actions["trace"].setChecked(settings.trace)
        self._take_theme()
        if settings.zoom is not None:
            self._area.set_zoom(settings.zoom)

    def show_trace(self) -> None:
        """Show the way of the bow, for there is a lesson now, unless it is hidden."""
        self._trace.setVisible(self._settings.trace)

    def set_density(self, density: MarkDensity) -> None:
        """Choose which strokes carry a bow mark."""
        self._settings.marks = density.value
        self._page.set_density(density)

    def toggle_strip(self) -> None:
        """Show the accent strip or hide it, as its menu entry says."""
        self._settings.strip = self._actions["strip"].isChecked()
        self._page.show_strip(self._settings.strip)

    def toggle_trace(self) -> None:
        """Show the way of the bow under the page or hide it, as its menu entry says."""
        self._settings.trace = self._actions["trace"].isChecked()
        self.show_trace()

    def set_look(self, look: Look) -> None:
        """Choose light, dark, or as the system is."""
        self._settings.look = look
        self._take_theme()

    def set_language(self, code: str) -> None:
        """Choose a language, "" for that of the system, for the next start."""
        self._settings.language = code
        self.hinted.emit(tr("The language changes when the program is started again."))

    def _on_system_look_changed(self) -> None:
        if self._settings.look is Look.SYSTEM:
            self._take_theme()

    def _take_theme(self) -> None:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        theme = self.theme
        apply_theme(app, theme)
        if self._later.waits:
            set_first_icons(self._actions, theme, app.devicePixelRatio())
        self._later.do(lambda: set_icons(self._actions, self.theme))
        self.theme_changed.emit(theme)

    def _on_zoomed(self, zoom: float, fits: bool) -> None:
        self._settings.zoom = None if fits else zoom
        self.zoom_told.emit(tr("Fits the width, {zoom}", zoom=percent(zoom)) if fits else percent(zoom))
