"""The program in another language for a while, as it is where it is started in that language."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QCoreApplication, QLocale, QTranslator

from app.language import ENGLISH, use_language, use_language_in_qt


@contextmanager
def speaking(language: str) -> Iterator[None]:
    """Speak a language, our texts and Qt's; English afterwards.

    Args:
        language: A key of ``LANGUAGES``.
    """
    app = QCoreApplication.instance()
    locale, translators = QLocale(), app.findChildren(QTranslator)
    use_language(language)
    use_language_in_qt(app, language)
    try:
        yield
    finally:
        for translator in app.findChildren(QTranslator):
            if translator not in translators:
                app.removeTranslator(translator)
                translator.deleteLater()
        QLocale.setDefault(locale)
        use_language(ENGLISH)
