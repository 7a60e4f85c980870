"""The texts that the sources ask to be translated, read off their syntax trees.

Qt's own extractor cannot do it: it loses calls with named values and every count (``core/translation.py`` says how
texts are written).
"""

from __future__ import annotations

import ast
import string
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[2]
PACKAGES = ("app", "core")

TABLES = {
    "ActionSpec": {"text": 1, "tip": 3, "short": None},
    "Menu": {"title": 0},
    "Rule": {"title": 1, "why": 2},
    "SetRule": {"title": 3, "why": 4},
    "Version": {"name": 0},
    "LeftOut": {"kind": 0},
    "Part": {"use": 1},
    "Stop": {"title": 1, "text": 2},
    "Page": {"title": 1},
    "Drill": {"title": 0, "task": 1},
}
"""Classes whose rows hold texts: fields, and at which place they stand when they are not named."""


@dataclass(frozen=True, slots=True)
class Message:
    """One text.

    Attributes:
        source: In English; of a text with a count, the form for many.
        comment: What tells it from another text that is the same in English.
        one: The form for one; None for a text without a count.
        places: Names of the values that it is given; None where that is not to be seen where the text stands.
        file: Where it stands, from the top of the project.
        line: The line there.
    """

    source: str
    comment: str
    one: str | None
    places: frozenset[str] | None
    file: str
    line: int

    @property
    def key(self) -> tuple[str, str]:
        """What translations are kept under."""
        return self.source, self.comment


class SourceError(Exception):
    """A text is written so that it cannot be translated; the sentence names file and line."""


def python_files(root: Path = ROOT) -> list[Path]:
    """All sources with texts for people."""
    return sorted(path for package in PACKAGES for path in (root / package).rglob("*.py"))


def messages(root: Path = ROOT) -> list[Message]:
    """All texts, in the order of files and lines."""
    return [
        message for path in python_files(root) for message in messages_of(path.read_text("utf-8"), _name(path, root))
    ]


def messages_of(source: str, file: str) -> list[Message]:
    """The texts of one module.

    Raises:
        SourceError: a call has a text that cannot be read off the source.
    """
    found = list(_messages(ast.parse(source), file))
    return sorted(found, key=lambda message: message.line)


def _messages(tree: ast.AST, file: str) -> Iterator[Message]:
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Name):
            continue
        name = node.func.id
        if name == "tr":
            yield from _plain(node, file)
        elif name == "plural":
            yield _counted(node, file)
        elif name == "translatable":
            comment = _literal(node.args[1], file) if len(node.args) > 1 else ""
            for text in filter(lambda text: text.value, _texts(node.args[0], file)):
                yield Message(text.value, comment, None, None, file, text.lineno)
        elif name in TABLES:
            for text in _row(node, TABLES[name]):
                for constant in _texts(text, file):
                    if constant.value:
                        yield Message(constant.value, "", None, None, file, constant.lineno)


def _plain(node: ast.Call, file: str) -> Iterator[Message]:
    """``tr``: one text, or one of two by a condition; none where a text of a table is shown."""
    places = _places(node)
    comment = _literal(node.args[1], file) if len(node.args) > 1 else ""
    for text in _choices(node.args[0]):
        if isinstance(text, ast.JoinedStr):
            raise SourceError(f"{file}:{text.lineno}: an f-string cannot be translated")
        if isinstance(text, ast.Constant) and isinstance(text.value, str):
            if places is not None and not named(text.value) <= places:
                raise SourceError(f"{file}:{text.lineno}: no value for {sorted(named(text.value) - places)}")
            yield Message(text.value, comment, None, places, file, text.lineno)


def _counted(node: ast.Call, file: str) -> Message:
    one, many = (_literal(argument, file) for argument in node.args[:2])
    comment = _literal(node.args[3], file) if len(node.args) > 3 else ""
    places = _places(node)
    if places is not None:
        places |= {"n"}
        if not named(one) | named(many) <= places:
            raise SourceError(f"{file}:{node.lineno}: no value for {sorted((named(one) | named(many)) - places)}")
    return Message(many, comment, one, places, file, node.lineno)


def _row(node: ast.Call, fields: dict[str, int | None]) -> Iterator[ast.expr]:
    for at in fields.values():
        if at is not None and at < len(node.args):
            yield node.args[at]
    for keyword in node.keywords:
        if keyword.arg in fields:
            yield keyword.value


def _choices(node: ast.expr) -> Iterator[ast.expr]:
    if isinstance(node, ast.IfExp):
        yield from _choices(node.body)
        yield from _choices(node.orelse)
    else:
        yield node


def _texts(node: ast.expr, file: str) -> Iterator[ast.Constant]:
    """All texts of a display, keys of dicts left out."""
    if isinstance(node, ast.Constant):
        if isinstance(node.value, str):
            yield node
    elif isinstance(node, ast.Dict):
        for value in node.values:
            yield from _texts(value, file)
    elif isinstance(node, ast.Tuple | ast.List | ast.Set):
        for element in node.elts:
            yield from _texts(element, file)
    elif isinstance(node, ast.JoinedStr):
        raise SourceError(f"{file}:{node.lineno}: an f-string cannot be translated")


def _literal(node: ast.expr, file: str) -> str:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    raise SourceError(f"{file}:{node.lineno}: expected a text as it stands, found {ast.unparse(node)}")


def _places(node: ast.Call) -> frozenset[str] | None:
    if any(keyword.arg is None for keyword in node.keywords):
        return None
    return frozenset(keyword.arg for keyword in node.keywords if keyword.arg)


def named(text: str) -> frozenset[str]:
    """Names of the places of a text."""
    return frozenset(name for _, name, _, _ in string.Formatter().parse(text) if name)


def by_key(found: Iterable[Message]) -> dict[tuple[str, str], list[Message]]:
    """Texts that are translated once, with all places where they stand."""
    grouped: dict[tuple[str, str], list[Message]] = {}
    for message in found:
        grouped.setdefault(message.key, []).append(message)
    return grouped


def _name(path: Path, root: Path) -> str:
    return path.relative_to(root).as_posix()
