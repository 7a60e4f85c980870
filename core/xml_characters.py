"""Which characters XML can hold.

Source: Extensible Markup Language (XML) 1.0, fifth edition, section 2.2, production 2.
"""

from __future__ import annotations

import re
from functools import cache


def with_xml_characters(text: str, instead: str = "") -> str:
    """The text with ``instead`` for each character that XML cannot hold (controls, halves of surrogate pairs).

    >>> with_xml_characters("a\\x07b", " ")
    'a b'
    """
    return text if text.isprintable() else _others().sub(instead, text)


def is_xml_text(text: str) -> bool:
    """Whether XML can hold every character of the text."""
    return text.isprintable() or _others().search(text) is None


@cache
def _others() -> re.Pattern[str]:
    """Made for the first text with a character that is not printable: all that XML cannot hold are of these."""
    return re.compile(r"[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
