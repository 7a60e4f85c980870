"""Texts as ABC holds them (ABC 2.1, 8.2): one line each, with everything escaped that a reader would take as code."""

from __future__ import annotations

import re

_NOT_TEXT = re.compile(r"[\x00-\x08\x0b-\x1f\x7f\ud800-\udfff\ufffe\uffff]")
_CODES = re.compile(
    r"""
      [\\%]
    | &(?=[A-Za-z]{2,8};|\#[0-9]{2,6};)  # else an ampersand stands for itself
    | =(?=3D|20|0D|09|2E)                # readers undo these codes of old mail programs
    """,
    re.VERBOSE,
)


def one_line(text: str) -> str:
    """The text without control characters, every run of white space one space.

    >>> one_line(" The  Frost\\nand the Sluice ")
    'The Frost and the Sluice'
    """
    return " ".join(_NOT_TEXT.sub("", text).split())


def field_text(text: str) -> str:
    r"""A text as the value of a field.

    >>> field_text("100 % slurred")
    '100 \\% slurred'
    """
    return _CODES.sub(lambda code: "\\u003d" if code[0] == "=" else "\\" + code[0], one_line(text))


def field(letter: str, text: str) -> str:
    """A field on a line of its own, its text escaped; ``C:|`` and the like would be the end of a bar."""
    value = field_text(text)
    return f"{letter}: {value}" if value.startswith(("|", ":", "]")) else f"{letter}:{value}"


def inline_text(text: str) -> str:
    """A text as the value of a field within square brackets."""
    return field_text(text).replace("[", "\\u005b").replace("]", "\\u005d")


def quoted(text: str, placement: str = "") -> str:
    r"""A text in quotation marks, for a chord symbol, words or a tempo.

    Args:
        text: The text.
        placement: For words: ``^`` above the staff, ``_`` below it (ABC 2.1, 4.19). A digit that stands alone is then
            escaped, since readers take it as a finger.

    >>> print(quoted('the "low" turn', "_"))
    "_the &quot;low&quot; turn"
    """
    inside = field_text(text).replace('"', "&quot;")
    if placement and len(inside) == 1 and inside.isdigit():
        inside = f"\\u{ord(inside):04x}"
    return f'"{placement}{inside}"'
