"""The page of all keys, written from the table of commands."""

from __future__ import annotations

import re
from html import escape

from PySide6.QtGui import QKeySequence

from app.actions import ACTIONS, MENUS, SEPARATOR, ActionSpec, MenuItems, plain, told_tip
from app.language import ENGLISH, spoken_language
from app.manual import PAGES
from core.translation import tr

NATIVE = QKeySequence.SequenceFormat.NativeText  # in the words of the language
HEAD = """<!DOCTYPE html>
<html lang="{language}">
<head>
<meta charset="utf-8">
<title>{title} – Bowbench</title>
<link rel="stylesheet" type="text/css" href="{style}">
</head>
<body>
<p><a href="index.html">{manual}</a></p>
<h1>{title}</h1>
{words}
"""
WORDS = {
    ENGLISH: """\
<p>On the page arrow keys, <kbd>Home</kbd> and <kbd>End</kbd> move the marked note; with <kbd>Shift</kbd> they select.
<kbd>Tab</kbd> goes from part to part of the window, <kbd>Alt</kbd> and a letter open a menu. Plain letters work while
the page has the keyboard. On macOS <kbd>Ctrl</kbd> is the command key.</p>""",
    "de": """\
<p>Auf dem Blatt bewegen Pfeiltasten, <kbd>Pos1</kbd> und <kbd>Ende</kbd> die markierte Note; mit <kbd>Umschalt</kbd>
wählen sie aus. <kbd>Tab</kbd> geht im Fenster von Teil zu Teil, <kbd>Alt</kbd> und ein Buchstabe öffnen ein Menü.
Einfache Buchstaben wirken, solange das Blatt die Tastatur hat. <kbd>Return</kbd> ist die Eingabetaste,
<kbd>Hoch</kbd> und <kbd>Herunter</kbd> sind Pfeiltasten. Unter macOS ist <kbd>Strg</kbd> die Befehlstaste.</p>""",
}  # above the tables, by language


def keys_page() -> str:
    """The page as HTML, in the language that is spoken: the commands of each menu that have a key, in their order."""
    specs = {spec.name: spec for spec in ACTIONS}
    language = spoken_language()
    style = "manual.css" if language == ENGLISH else "../manual.css"
    head = HEAD.format(
        language=language, style=style, manual=_title("index"), title=_title("keys"), words=WORDS[language]
    )
    parts = [head]
    for menu, items in MENUS:
        rows = [_row(specs[name]) for name in _names(items) if name in specs and _keys(specs[name])]
        if rows:
            parts.append(f"<h2>{escape(plain(menu))}</h2>\n<table>\n" + "\n".join(rows) + "\n</table>\n")
    return "".join(parts) + "</body>\n</html>\n"


def _title(name: str) -> str:
    return next(tr(page.title) for page in PAGES if page.name == name)


def _names(items: MenuItems) -> list[str]:
    names: list[str] = []
    for item in items:
        names += [item] if isinstance(item, str) else _names(item[1])
    return [name for name in names if name != SEPARATOR]


def _row(spec: ActionSpec) -> str:
    keys = ", ".join(f"<kbd>{escape(key)}</kbd>" for key in _keys(spec))
    return f"<tr><td>{keys}</td><td>{escape(plain(spec.text).rstrip('…'))}</td><td>{escape(told_tip(spec))}</td></tr>"


def _keys(spec: ActionSpec) -> list[str]:
    """Keys as they are written on Linux and Windows; of a standard key the one that most systems have."""
    keys = [QKeySequence(key) if isinstance(key, str) else _usual(key) for key in spec.keys]
    return list(dict.fromkeys(name for key in keys if key and (name := key.toString(NATIVE))))


def _usual(key: QKeySequence.StandardKey) -> QKeySequence | None:
    """Ctrl and a letter, where there is such a key, else the first."""
    keys = QKeySequence.keyBindings(key)
    return next((key for key in keys if re.fullmatch(r"Ctrl\+[A-Z]", key.toString())), keys[0] if keys else None)
