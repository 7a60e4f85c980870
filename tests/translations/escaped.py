"""Texts that a person may see and that nobody asks to be translated, found in the syntax trees of the sources."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator

from tests.translations.messages import TABLES

ASKING = {"tr", "plural", "translatable", *TABLES}
SHOWING = {
    "setText", "setWindowTitle", "setTitle", "setToolTip", "setStatusTip", "setWhatsThis", "setPlaceholderText",
    "setAccessibleName", "setAccessibleDescription", "setInformativeText", "setSuffix", "setPrefix", "setIconText",
    "setSpecialValueText", "addAction", "addMenu", "addItem", "addItems", "addRow", "addSection", "addTab", "emit",
    "QLabel", "QPushButton", "QCheckBox", "QAction", "QToolBar", "QDockWidget", "QMenu",
    "Remedy", "Problem", "Proposal",
}  # fmt: skip
"""What puts its texts before people, even single words."""
OF_PROGRAMMERS = {"ValueError", "KeyError", "TypeError", "AssertionError", "RuntimeError", "NotImplementedError"}
"""Errors that no person sees: callers give what is asked for."""
_WORDS = re.compile(r"[A-Za-z’']{2,},? [a-z’']{2,}|[a-z]{2,}[.…]$")
_WORD = re.compile(r"[A-Za-z]{2,}")
_OF_MACHINES = re.compile(
    r"[<>\\]|^[a-z_]+\.$|[a-z]: |\w+\.\w+ "  # markup, styles, patterns
    r"|\b(?:SELECT|INSERT|UPDATE|DELETE|CREATE|PRAGMA|BEGIN|EXISTS|FROM|WHERE|ORDER|AND|LIKE|MATCH|NOT|IN|IS|DESC) "
)


def escaped(source: str) -> Iterator[tuple[int, str]]:
    """Line and text of each literal of a module that reads like words for people and is not to be translated."""
    tree = ast.parse(source)
    passed_over = {id(node) for node in _passed_over(tree)}
    shown = {id(node) for node in _shown(tree)}
    for node in ast.walk(tree):
        if id(node) in passed_over or not isinstance(node, ast.Constant) or not isinstance(node.value, str):
            continue
        text = node.value
        if (id(node) in shown and _WORD.search(text)) or (_WORDS.search(text) and not _OF_MACHINES.search(text)):
            yield node.lineno, text


def _passed_over(tree: ast.AST) -> Iterator[ast.AST]:
    """Docstrings, what is to be translated, values of enums, and what only programmers see."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            yield node.value
        elif isinstance(node, ast.Call) and _name(node.func) in ASKING | OF_PROGRAMMERS:
            yield from (inner for argument in (*node.args, *node.keywords) for inner in ast.walk(argument))
        elif isinstance(node, ast.ClassDef) and any(_name(base) == "Enum" for base in node.bases):
            yield from ast.walk(node)  # values are names for programs; what people read stands in a table
        elif isinstance(node, ast.Assert) and node.msg is not None:
            yield from ast.walk(node.msg)


def _shown(tree: ast.AST) -> Iterator[ast.AST]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _name(node.func) in SHOWING:
            for argument in node.args:
                if isinstance(argument, ast.Constant | ast.JoinedStr | ast.IfExp):
                    yield from ast.walk(argument)


def _name(function: ast.expr) -> str:
    return (
        function.attr if isinstance(function, ast.Attribute) else function.id if isinstance(function, ast.Name) else ""
    )
