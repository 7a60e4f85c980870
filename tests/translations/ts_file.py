"""Qt's translation files: read, and written as Qt's own programs write them."""

from __future__ import annotations

import xml.etree.ElementTree as ElementTree
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path
from xml.sax.saxutils import escape

from app.language import CONTEXT
from tests.translations.messages import Message, by_key


@dataclass(frozen=True, slots=True)
class Entry:
    """One text with its translation.

    Attributes:
        source, comment: As in ``Message``.
        forms: The translation; of a text with a count, each form that the language has; "" where there is none yet.
        counted: It has a count.
        state: "" where it is finished, else ``unfinished``, or ``vanished`` from the sources.
    """

    source: str
    comment: str
    forms: tuple[str, ...]
    counted: bool
    state: str = ""

    @property
    def key(self) -> tuple[str, str]:
        """What it is kept under."""
        return self.source, self.comment


def read(path: Path) -> dict[tuple[str, str], Entry]:
    """All entries of a file."""
    entries: dict[tuple[str, str], Entry] = {}
    for message in ElementTree.parse(path).getroot().iter("message"):
        translation = message.find("translation")
        assert translation is not None
        counted = message.get("numerus") == "yes"
        forms = [form.text or "" for form in translation.iter("numerusform")] if counted else [translation.text or ""]
        entry = Entry(
            message.findtext("source", ""), message.findtext("comment", ""), tuple(forms), counted,
            translation.get("type", ""),
        )  # fmt: skip
        entries[entry.key] = entry
    return entries


def updated(
    entries: Mapping[tuple[str, str], Entry], found: Iterable[Message], plural_forms: int
) -> dict[tuple[str, str], Entry]:
    """Entries for the texts of the sources, in their order, with the translations that there are.

    What the sources do not have any more stays at the end as ``vanished``, where something was translated.
    """
    new: dict[tuple[str, str], Entry] = {}
    for key, places in by_key(found).items():
        counted = places[0].one is not None
        forms: tuple[str, ...] = ("",) * (plural_forms if counted else 1)
        old = entries.get(key)
        if old is not None and old.counted is counted:
            forms = old.forms
        new[key] = Entry(*key, forms, counted, "" if all(forms) else "unfinished")
    for key, old in entries.items():
        if key not in new and any(old.forms):
            new[key] = Entry(*key, old.forms, old.counted, "vanished")
    return new


def written(language: str, entries: Mapping[tuple[str, str], Entry], found: Iterable[Message]) -> str:
    """A file as text."""
    places = by_key(found)
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{language}" sourcelanguage="en">',
        "<context>",
        f"    <name>{CONTEXT}</name>",
    ]
    for key, entry in entries.items():
        stands = places.get(key, [])
        lines.append('    <message numerus="yes">' if entry.counted else "    <message>")
        lines += [f'        <location filename="../../{file}"/>' for file in dict.fromkeys(m.file for m in stands)]
        lines.append(f"        <source>{_text(entry.source)}</source>")
        if entry.comment:
            lines.append(f"        <comment>{_text(entry.comment)}</comment>")
        if stands and stands[0].one is not None:
            lines.append(f"        <extracomment>one: {_text(stands[0].one)}</extracomment>")
        kind = f' type="{entry.state}"' if entry.state else ""
        if entry.counted:
            lines.append(f"        <translation{kind}>")
            lines += [f"            <numerusform>{_text(form)}</numerusform>" for form in entry.forms]
            lines.append("        </translation>")
        else:
            lines.append(f"        <translation{kind}>{_text(entry.forms[0])}</translation>")
        lines.append("    </message>")
    return "\n".join([*lines, "</context>", "</TS>", ""])


def _text(text: str) -> str:
    return escape(text, {'"': "&quot;", "'": "&apos;"})
