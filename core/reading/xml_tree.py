"""XML read without danger: no entities, nothing fetched, limits on size and depth, and sentences for what is wrong."""

from __future__ import annotations

import re
from collections.abc import Mapping
from fractions import Fraction
from functools import lru_cache
from pyexpat import ExpatError, ParserCreate, errors
from typing import NoReturn

from lxml import etree

from core.errors import UnreadableFileError
from core.reading.limits import MAX_BYTES, MAX_MARKUP
from core.translation import tr


def parse_xml(data: bytes) -> etree._Element:
    """Read a document.

    Args:
        data: The file; UTF-8, UTF-16 with a byte order mark, or what its first line declares.
    Returns:
        The root element; comments and processing instructions are left out, elements know their line.
    Raises:
        UnreadableFileError: no XML, broken XML, entities declared, or too large or too deep.
    """
    if len(data) > MAX_BYTES:
        raise UnreadableFileError(
            tr(
                "The file has {size} megabytes; at most {most} are read.",
                size=len(data) // 2**20,
                most=MAX_BYTES // 2**20,
            )
        )
    if data.count(b"<") + data.count(b"=") > MAX_MARKUP:
        raise UnreadableFileError(tr("The file has more than {most} tags and attributes.", most=MAX_MARKUP))
    data = _declaration_first(data)
    _check_prolog(data)
    parser = etree.XMLParser(
        resolve_entities=False, no_network=True, load_dtd=False, huge_tree=False, remove_comments=True, remove_pis=True
    )
    try:
        root = etree.fromstring(data, parser)
    except etree.XMLSyntaxError as error:
        _refuse(error.msg or "", error.lineno or None)
    if root is None:
        raise UnreadableFileError(tr("The file holds no XML element."))
    etree.strip_elements(root, etree.Entity, with_tail=False)  # declared elsewhere, so never read
    return root


def first_children(element: etree._Element) -> dict[str, etree._Element]:
    """The children of an element by tag, of several alike the first: to look at many, this is faster than to search."""
    return {child.tag: child for child in element.iterchildren(reversed=True)}


def text_of(children: Mapping[str, etree._Element], tag: str) -> str:
    """The text of one of ``first_children`` without blanks around it; "" where there is none."""
    child = children.get(tag)
    return (child.text or "").strip() if child is not None else ""


def _declaration_first(data: bytes) -> bytes:
    """Move blank lines from before an XML declaration, where none may stand, to behind it: lines keep their number."""
    begun = data.lstrip(b" \t\r\n")
    if len(begun) == len(data) or not begun.startswith(b"<?xml"):
        return data
    end = begun.find(b"?>") + 2
    blank_lines = data[: len(data) - len(begun)].count(b"\n")
    return begun[:end] + b"\n" * blank_lines + begun[end:]


class _RootReachedError(Exception):
    """The prolog is over."""


def _check_prolog(data: bytes) -> None:
    """Refuse entities before anything could expand them; looks no further than the first element.

    A name that stands for other text can be made to stand for endless text, or for another file. MusicXML has no use
    for either, so a document type that declares one is refused as it is.
    """
    parser = ParserCreate()

    def entity(name: str, *_: object) -> NoReturn:
        raise UnreadableFileError(
            tr("The document type declares an entity (“{name}”), which is refused: a score has none.", name=name),
            parser.CurrentLineNumber,
        )

    def root(*_: object) -> NoReturn:
        raise _RootReachedError

    parser.EntityDeclHandler = entity
    parser.StartElementHandler = root
    try:
        parser.Parse(data, True)
    except _RootReachedError:
        return
    except ExpatError as error:
        if error.code in _ENCODING_FAULTS:
            return  # the other parser knows more encodings, and expands none of what this one would have refused
        _refuse(errors.messages[error.code], error.lineno)
    except (ValueError, LookupError):  # an encoding that Python does not know
        return


_ENCODING_FAULTS = {errors.codes[errors.XML_ERROR_UNKNOWN_ENCODING], errors.codes[errors.XML_ERROR_INCORRECT_ENCODING]}
MAX_QUOTED = 120  # characters of what the parser says, which quotes names whole
_POSITION = re.compile(r", line \d+, column \d+.*", re.DOTALL)


def _refuse(reason: str, line: int | None) -> NoReturn:
    reason = _POSITION.sub("", reason).strip().rstrip(".")[:MAX_QUOTED]
    raise UnreadableFileError(
        tr("The file is no complete XML document ({reason}).", reason=reason or "nothing was found"), line
    )


_DECIMAL = re.compile(r"[+-]?(\d+)(?:\.\d{1,9})?")


@lru_cache(maxsize=4096)
def decimal_number(text: str | None, most_digits: int = 9) -> Fraction | None:
    """A decimal number as it stands in an element or attribute; None where there is none, or one with more digits."""
    text = (text or "").strip()
    found = _DECIMAL.fullmatch(text) if text.isascii() else None
    return Fraction(text) if found and len(found[1]) <= most_digits else None
