"""The text side of ABC: bytes to text, comments, and the mnemonics for letters that a keyboard lacks (ABC 2.1, 8.2)."""

from __future__ import annotations

import html
import re
import unicodedata

# Mnemonic after the backslash -> combining mark; ABC 2.1, 8.2 and appendix.
_ACCENTS = {
    "`": "\u0300", "'": "\u0301", "^": "\u0302", "~": "\u0303", '"': "\u0308", "u": "\u0306", "v": "\u030c",
    "H": "\u030b", "c": "\u0327", "o": "\u030a", "=": "\u0304", ";": "\u0328", ".": "\u0307",
}  # fmt: skip
_LETTERS = {
    "aa": "å", "AA": "Å", "ae": "æ", "AE": "Æ", "oe": "œ", "OE": "Œ", "ss": "ß", "/o": "ø", "/O": "Ø", "/l": "ł",
    "/L": "Ł", "/d": "đ", "/D": "Đ", "dh": "ð", "DH": "Ð", "th": "þ", "TH": "Þ", "cc": "ç", "cC": "Ç",
}  # fmt: skip
_ESCAPE = re.compile(r"\\(u[0-9a-fA-F]{4}|[A-Za-z/][A-Za-z]|[`'^~\"=;.][A-Za-z]|[%&\\])|&[A-Za-z]{2,8};|&#[0-9]{2,6};")
_COMMENT = re.compile(r"(?<!\\)%")
_CONTROL = re.compile(r"[\x00-\x08\x0b-\x1f\x7f\ud800-\udfff\ufffe\uffff]")


def decode(data: bytes) -> str:
    """Turn the bytes of an ABC file into text.

    UTF-8 is the standard's default (ABC 2.1, 2.2.2); what is not UTF-8 is taken as Latin-1, which never fails. A byte
    order mark is dropped and every line ends in ``\\n``.
    """
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        text = data.decode("utf-16", errors="replace")
    else:
        try:
            text = data.decode("utf-8")
        except UnicodeDecodeError:
            text = data.decode("latin-1")
    return text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")


def without_comment(line: str) -> str:
    """A line up to its comment (ABC 2.1, 2.2.5); ``\\%`` is a percent sign and starts none."""
    if "%" not in line:
        return line
    found = _COMMENT.search(line)
    return line[: found.start()] if found else line


def plain_text(text: str) -> str:
    """Text of a title or credit as it is meant to be read: mnemonics resolved, spaces tidied.

    >>> plain_text("Caf\\\\'e  &eacute;")
    'Café é'
    """
    text = _CONTROL.sub("", text)
    if "\\" in text or "&" in text:
        text = _CONTROL.sub("", _ESCAPE.sub(lambda found: _resolve(found[0]), text))
    return " ".join(text.split())


def _resolve(escape: str) -> str:
    if escape[0] == "&":
        return html.unescape(escape)
    code = escape[1:]
    if len(code) == 5:
        return chr(int(code[1:], 16))
    if code in _LETTERS:
        return _LETTERS[code]
    if len(code) == 1:
        return code
    mark = _ACCENTS.get(code[0])
    composed = unicodedata.normalize("NFC", code[1] + mark) if mark else ""
    return composed if len(composed) == 1 else escape
