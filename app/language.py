"""In which language the program speaks: which there are, which one the system asks for, and how it is set.

It is set once for a process, before anything is shown. English needs no file and no Qt.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from typing import TYPE_CHECKING

from app.own_files import resource
from core import translation

if TYPE_CHECKING:
    from PySide6.QtCore import QCoreApplication

CONTEXT = "Bowbench"  # the one context of our translation files
ENGLISH = "en"
LANGUAGES = {ENGLISH: "English", "de": "Deutsch"}
"""By code, as each calls itself. A new language is a row here and a file ``bowbench_CODE.ts`` beside the others."""

PLAIN = {"c", "posix"}  # numbers as in English, but for the signs between thousands, which nothing here shows

_spoken = ENGLISH


def spoken_language() -> str:
    """The code of the language that is spoken."""
    return _spoken


def system_language(environment: Mapping[str, str] = os.environ) -> str:
    """The code of the language that the system asks for; English where there is no translation.

    Args:
        environment: ``LC_ALL``, ``LC_MESSAGES`` and ``LANG`` count, in this order (POSIX.1-2017, XBD 8.2). Where none
            is set, what Windows or macOS say.
    """
    for name in ("LC_ALL", "LC_MESSAGES", "LANG"):
        if environment.get(name):
            return _known(environment[name])
    if sys.platform in ("win32", "darwin"):
        from PySide6.QtCore import QLocale

        return _known(QLocale.system().name())
    return ENGLISH


def wanted_language(chosen: str) -> str:
    """The code of the language to speak.

    Args:
        chosen: What the user chose, "" for that of the system.
    """
    return chosen if chosen in LANGUAGES else system_language()


def use_language(code: str) -> None:
    """Speak a language from now on; ours only, not Qt's own texts.

    Args:
        code: A key of ``LANGUAGES``.
    """
    global _spoken
    translation.install(None if code == ENGLISH else _Compiled(code))
    _spoken = code


def use_language_in_qt(app: QCoreApplication, code: str) -> None:
    """Have Qt name its buttons and write numbers and dates in a language.

    Numbers and dates stay those of the system where it speaks the same language.
    """
    from PySide6.QtCore import QLibraryInfo, QTranslator

    if not _system_speaks(code):
        from PySide6.QtCore import QLocale  # it brings the names of all languages and countries

        if QLocale.system().language() != QLocale(code).language():
            QLocale.setDefault(QLocale(code))
    translator = QTranslator(app)
    if translator.load(f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        app.installTranslator(translator)


def _system_speaks(code: str, environment: Mapping[str, str] = os.environ) -> bool:
    """Whether the environment alone says that numbers and dates of the system are those of a language."""
    if sys.platform in ("win32", "darwin"):  # which have settings of their own
        return False
    for name in ("LC_ALL", "LC_NUMERIC", "LANG"):
        if environment.get(name):
            named = environment[name].partition("_")[0].partition(".")[0].lower()
            return named == code or (code == ENGLISH and named in PLAIN)
    return code == ENGLISH


class _Compiled:
    """A translator that looks texts up in a compiled file."""

    def __init__(self, code: str) -> None:
        from PySide6.QtCore import QTranslator

        self._data = resource("translations", f"bowbench_{code}.qm").read_bytes()  # Qt keeps no copy
        self._texts = QTranslator()
        if not self._texts.load(self._data):
            raise ValueError(f"bowbench_{code}.qm: expected texts compiled by Qt's lrelease")

    def __call__(self, text: str, comment: str, n: int | None) -> str:
        return self._texts.translate(CONTEXT, text, comment, -1 if n is None else n) or ""


def _known(name: str) -> str:
    """``de`` of ``de_AT.UTF-8``."""
    code = name.replace("-", "_").partition("_")[0].partition(".")[0].lower()
    return code if code in LANGUAGES else ENGLISH
