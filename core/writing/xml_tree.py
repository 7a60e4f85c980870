"""XML elements built in order, with texts that XML can hold."""

from __future__ import annotations

from lxml import etree

from core.xml_characters import with_xml_characters


def add(parent: etree._Element, name: str, text: object = None, /, **attributes: str) -> etree._Element:
    """Append a child with this text; underscores in the names of attributes stand for hyphens.

    Characters that XML cannot hold (controls, halves of surrogate pairs) are left out.
    """
    child = etree.SubElement(
        parent, name, {key.replace("_", "-"): with_xml_characters(text) for key, text in attributes.items()}
    )
    if text is not None:
        child.text = with_xml_characters(str(text))
    return child
