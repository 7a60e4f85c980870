"""XML elements built in order, with texts that XML can hold."""

from __future__ import annotations

import re

from lxml import etree

_NOT_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")  # XML 1.0, production 2


def add(parent: etree._Element, name: str, text: object = None, /, **attributes: str) -> etree._Element:
    """Append a child with this text; underscores in the names of attributes stand for hyphens.

    Characters that XML cannot hold (controls, halves of surrogate pairs) are left out.
    """
    child = etree.SubElement(parent, name, {key.replace("_", "-"): xml_text(text) for key, text in attributes.items()})
    if text is not None:
        child.text = xml_text(str(text))
    return child


def xml_text(text: str) -> str:
    """The text without the characters that XML cannot hold."""
    return _NOT_XML.sub("", text)
