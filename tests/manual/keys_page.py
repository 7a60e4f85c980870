"""The page of all keys, written from the table of commands."""

from __future__ import annotations

import re
from html import escape

from PySide6.QtGui import QKeySequence

from app.actions import ACTIONS, MENUS, SEPARATOR, ActionSpec, MenuItems
from app.manual import PAGES

HEAD = """<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>{title} – Bowbench</title>
<link rel="stylesheet" type="text/css" href="manual.css">
</head>
<body>
<p><a href="index.html">Manual</a></p>
<h1>{title}</h1>
<p>On the page arrow keys, <kbd>Home</kbd> and <kbd>End</kbd> move the marked note; with <kbd>Shift</kbd> they select.
<kbd>Tab</kbd> goes from part to part of the window, <kbd>Alt</kbd> and a letter open a menu. Plain letters work while
the page has the keyboard. On macOS <kbd>Ctrl</kbd> is the command key.</p>
"""


def keys_page() -> str:
    """The page as HTML: the commands of each menu that have a key, in the order of the menus."""
    specs = {spec.name: spec for spec in ACTIONS}
    title = next(page.title for page in PAGES if page.name == "keys")
    parts = [HEAD.format(title=title)]
    for menu, items in MENUS:
        rows = [_row(specs[name]) for name in _names(items) if name in specs and _keys(specs[name])]
        if rows:
            parts.append(f"<h2>{escape(menu.replace('&', ''))}</h2>\n<table>\n" + "\n".join(rows) + "\n</table>\n")
    return "".join(parts) + "</body>\n</html>\n"


def _names(items: MenuItems) -> list[str]:
    names: list[str] = []
    for item in items:
        names += [item] if isinstance(item, str) else _names(item[1])
    return [name for name in names if name != SEPARATOR]


def _row(spec: ActionSpec) -> str:
    keys = ", ".join(f"<kbd>{escape(key)}</kbd>" for key in _keys(spec))
    return (
        f"<tr><td>{keys}</td><td>{escape(spec.text.replace('&', '').rstrip('…'))}</td><td>{escape(spec.tip)}</td></tr>"
    )


def _keys(spec: ActionSpec) -> list[str]:
    """Keys as they are written on every system; of a standard key the one that most systems have."""
    keys = [QKeySequence(key).toString() if isinstance(key, str) else _usual(key) for key in spec.keys]
    return list(dict.fromkeys(filter(None, keys)))


def _usual(key: QKeySequence.StandardKey) -> str:
    """Ctrl and a letter, where there is such a key, else the first."""
    keys = [binding.toString() for binding in QKeySequence.keyBindings(key)]
    return next((name for name in keys if re.fullmatch(r"Ctrl\+[A-Z]", name)), keys[0] if keys else "")
