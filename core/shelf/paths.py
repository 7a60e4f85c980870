"""Paths as the catalogue keeps them: absolute, and as bytes, because not every file name is text."""

from __future__ import annotations

import os
from pathlib import Path


def to_bytes(path: Path) -> bytes:
    """The absolute path; links in it are kept as links."""
    return os.fsencode(os.path.abspath(path))


def to_path(stored: bytes) -> Path:
    """The path again."""
    return Path(os.fsdecode(stored))


def to_text(path: Path) -> str:
    """A path that can be shown and printed in one line whatever its bytes are."""
    text = str(path)
    if text.isprintable():
        return text
    return "".join(
        char if char.isprintable() else char.encode("unicode_escape", "surrogatepass").decode() for char in text
    )


def is_under(path: bytes, place: bytes) -> bool:
    """Whether a stored path is a place itself or inside it."""
    return path == place or path.startswith(place.rstrip(os.fsencode(os.sep)) + os.fsencode(os.sep))
