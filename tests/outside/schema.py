"""The MusicXML 4.0 schema, from the package that carries it; read by path, without importing the package."""

from __future__ import annotations

import importlib.util
from functools import cache
from pathlib import Path

import xmlschema


@cache
def musicxml_schema() -> xmlschema.XMLSchema:
    """The schema, compiled once for all tests."""
    package = importlib.util.find_spec("musicxml")
    assert package
    return xmlschema.XMLSchema(Path(package.origin or "").parent / "generate_classes" / "musicxml_4_0.xsd")


def faults(text: str) -> list[str]:
    """What the schema has against a document; empty for a valid one."""
    return [str(error.reason) for error in musicxml_schema().iter_errors(text)]
