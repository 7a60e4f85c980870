"""The MusicXML 4.0 schema, from the package that carries it; read by path, without importing the package.

libxml2 holds documents against it, twenty times faster than checkers written in Python. The two small schemas that it
imports from the web are taken from a package as well.
"""

from __future__ import annotations

import importlib.util
from functools import cache
from pathlib import Path

from lxml import etree

IMPORTED = {"xml.xsd": "XML/xml.xsd", "xlink.xsd": "XLINK/xlink.xsd"}  # in the schemas of xmlschema


class _Imports(etree.Resolver):  # type: ignore[misc]
    def resolve(self, url: str, public_id: str, context: object) -> object:
        """Give the file that stands in for an address; None for any other."""
        name = IMPORTED.get(url.rpartition("/")[2])
        return self.resolve_filename(str(_package("xmlschema") / "schemas" / name), context) if name else None


def _package(name: str) -> Path:
    found = importlib.util.find_spec(name)
    assert found
    return Path(found.origin or "").parent


@cache
def musicxml_schema() -> etree.XMLSchema:
    """The schema, compiled once for all tests."""
    parser = etree.XMLParser()
    parser.resolvers.add(_Imports())
    return etree.XMLSchema(etree.parse(_package("musicxml") / "generate_classes" / "musicxml_4_0.xsd", parser))


def faults(text: str) -> list[str]:
    """What the schema has against a document; empty for a valid one."""
    schema = musicxml_schema()
    schema.validate(etree.fromstring(text.encode()))
    return [f"line {error.line}: {error.message}" for error in schema.error_log]
