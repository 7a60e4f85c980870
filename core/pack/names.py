"""Names of files and folders made from titles: safe on every system, told apart on every system, and lasting.

A name is cut to ``LONGEST`` letters and ``LONGEST_BYTES`` bytes, so that with what is put behind it no system finds it
too long. Names that differ only in capitals, or in how an accented letter is put together, are the same file on some
systems and so never stand side by side.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from itertools import count
from typing import NamedTuple

LONGEST, LONGEST_BYTES = 60, 100
KEPT = " -'’,"
UNTITLED = "Untitled"
# Microsoft, "Naming Files, Paths, and Namespaces": names of devices, with or without an ending
DEVICES = frozenset({"CON", "PRN", "AUX", "NUL", *(f"{port}{n}" for port in ("COM", "LPT") for n in range(10))})


class Identity(NamedTuple):
    """By what a lesson is known again.

    Attributes:
        source: Stands for the file; says nothing of where it lies.
        title: Of the tune, as written.
        copy: Which one of the file's tunes of this title, from 0.
    """

    source: str
    title: str
    copy: int


def safe_name(text: str, otherwise: str = UNTITLED) -> str:
    """A name made from any text: letters of any script, digits, spaces, hyphens, commas and apostrophes.

    >>> safe_name("Who's there? / Aux barricades... ")
    "Who's there Aux barricades"
    >>> safe_name("aux")
    'aux tune'
    """
    plain = unicodedata.normalize("NFC", unicodedata.normalize("NFKC", text))
    kept = "".join(c if c.isalnum() or c in KEPT or unicodedata.category(c)[0] == "M" else " " for c in plain)
    name = " ".join(kept.split())[:LONGEST]
    while len(name.encode("utf-8", "ignore")) > LONGEST_BYTES:
        name = name[:-1]
    name = name.strip(KEPT)
    if not any(c.isalnum() for c in name):
        return otherwise
    return f"{name} tune" if name.upper() in DEVICES else name


def same_file(name: str) -> str:
    """What two names have in common that some system takes for one."""
    return unicodedata.normalize("NFKD", unicodedata.normalize("NFKD", name).casefold())


def free_name(wanted: str, taken: set[str]) -> str:
    """The name, or with the first number (2, 3 ...) that is free; it is then taken.

    Args:
        wanted: A safe name.
        taken: ``same_file`` of each name that is in use.
    """
    for number in count(1):
        name = wanted if number == 1 else f"{wanted} {number}"
        if same_file(name) not in taken:
            taken.add(same_file(name))
            return name
    raise AssertionError("numbers do not end")


def name_lessons(
    lessons: Sequence[Identity], before: Mapping[Identity, str], in_use: Iterable[str] = ()
) -> dict[Identity, str]:
    """A name for each lesson, no two the same file.

    Args:
        lessons: In order.
        before: Names of an earlier packing; a lesson that has one keeps it.
        in_use: Names that no lesson gets.
    """
    taken = {same_file(name) for name in in_use}
    names: dict[Identity, str] = {}
    for identity in lessons:
        name = before.get(identity)
        if name is not None and same_file(name) not in taken:
            names[identity] = name
            taken.add(same_file(name))
    for identity in lessons:
        if identity not in names:
            names[identity] = free_name(safe_name(identity.title), taken)
    return names
