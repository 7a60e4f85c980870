"""The fonts of the page: Leipzig for music, Liberation Serif for text.

Both come with the engraver's package as WOFF2 inside style sheets, so that nothing needs to be installed on the machine
and the page looks the same everywhere. Their licences are in ``app/licences.py``.
"""

from __future__ import annotations

import base64
import re
from functools import cache

from PySide6.QtGui import QFont, QFontDatabase

from core.engraving.glyphs import engraver_data

FALLBACK_TEXT = "serif"
_STYLE_SHEETS = ("Leipzig.css", "Liberation.css")
_FONT_DATA = re.compile(r"base64,([^)'\"]*)")


@cache
def load_fonts() -> tuple[str, str]:
    """Load the fonts, once.

    Returns:
        Families of the music font and the text font. Where a font cannot be loaded its plain fallback is named: the
        music of the page does not depend on it, only notes and accidentals within texts do.
    """
    families: list[str] = []
    data = engraver_data()
    for sheet in _STYLE_SHEETS:
        source = data / sheet
        if not source.is_file():
            continue
        for found in _FONT_DATA.finditer(source.read_text("utf-8")):
            font = QFontDatabase.addApplicationFontFromData(base64.b64decode(found[1]))
            if font >= 0:
                families.extend(QFontDatabase.applicationFontFamilies(font))
    music = next((name for name in families if "Leipzig" in name), FALLBACK_TEXT)
    text = next((name for name in families if "Liberation" in name), FALLBACK_TEXT)
    return music, text


@cache
def page_font(music: bool, bold: bool, italic: bool, pixels: int) -> QFont:
    """A font of the page at a size in units of the painter."""
    font = QFont(load_fonts()[0 if music else 1])
    font.setPixelSize(pixels)
    font.setBold(bold)
    font.setItalic(italic)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    font.setStyleStrategy(QFont.StyleStrategy.PreferAntialias)
    return font
