"""A short text that is the same as long as what is made of a lesson is the same."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import is_dataclass
from enum import Enum
from hashlib import sha256

from core.lesson import Lesson
from core.pack.kinds import Kind, in_order_text

PACK_VERSION = 2  # higher whenever a pack of the same lessons would come out otherwise


def fingerprint(lesson: Lesson, kinds: Iterable[Kind], program: str) -> str:
    """Fingerprint of a lesson in a pack: equal lessons have the same one, in every process.

    Args:
        lesson: All that it holds counts.
        kinds: What is made of it.
        program: Version of the program.
    """
    text = f"{PACK_VERSION}\n{program}\n{in_order_text(kinds)}\n{_told(lesson)}"
    return sha256(text.encode("utf-8", "surrogatepass")).hexdigest()[:32]


def _told(value: object) -> str:
    """A value as text; what has no order of its own (sets, mappings) is put in one."""
    if isinstance(value, Enum):
        return str(value)
    if isinstance(value, Mapping):
        return "{" + ",".join(sorted(f"{_told(key)}:{_told(item)}" for key, item in value.items())) + "}"
    if isinstance(value, frozenset):
        return "{" + ",".join(sorted(map(_told, value))) + "}"
    if isinstance(value, tuple):
        return "(" + ",".join(map(_told, value)) + ")"
    if is_dataclass(value):
        rows = value.__dataclass_fields__
        return f"{type(value).__name__}(" + ",".join(_told(getattr(value, row)) for row in rows) + ")"
    return repr(value)
