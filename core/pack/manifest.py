"""What stands in a pack: the text that a later packing reads, so that it makes only what is missing."""

from __future__ import annotations

import json
from collections.abc import Mapping
from hashlib import sha256
from typing import Any

from core.pack.names import Identity
from core.values import dataclass

FORMAT = "bowbench-pack/1"


@dataclass(frozen=True, slots=True)
class FileRecord:
    """A file of the pack.

    Attributes:
        path: From the pack's folder, with ``/``.
        size: Bytes.
        sha256: Of its bytes, in hexadecimal.
    """

    path: str
    size: int
    sha256: str


def record_of(path: str, data: bytes) -> FileRecord:
    """The record of a file with these bytes."""
    return FileRecord(path, len(data), sha256(data).hexdigest())


@dataclass(frozen=True, slots=True)
class LessonRecord:
    """A lesson of the pack, all of it made.

    Attributes:
        identity: By what it is known again.
        name: Of its folder and files.
        fingerprint: Of what it was made from.
        files: All of them.
        remarks: What was found wrong with it, a sentence each.
    """

    identity: Identity
    name: str
    fingerprint: str
    files: tuple[FileRecord, ...]
    remarks: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Manifest:
    """A pack.

    Attributes:
        lessons: Those that are made.
        archive: The zip of all; None where it is not made.
        archive_of: Fingerprint of what is in the zip.
    """

    lessons: tuple[LessonRecord, ...] = ()
    archive: FileRecord | None = None
    archive_of: str = ""


def write_manifest(manifest: Manifest) -> str:
    """The manifest as text."""
    archive = manifest.archive
    return json.dumps(
        {
            "format": FORMAT,
            "lessons": [
                {
                    "identity": list(record.identity),
                    "name": record.name,
                    "fingerprint": record.fingerprint,
                    "files": [[file.path, file.size, file.sha256] for file in record.files],
                    "remarks": list(record.remarks),
                }
                for record in manifest.lessons
            ],
            "archive": archive and [archive.path, archive.size, archive.sha256],
            "archive_of": manifest.archive_of,
        }
    )


def read_manifest(text: str) -> Manifest:
    """Read what ``write_manifest`` wrote.

    Raises:
        ValueError: the text is no manifest of this version, or names a file outside the pack.
    """
    try:
        found = json.loads(text)
        if found["format"] != FORMAT:
            raise ValueError(f"expected {FORMAT}, found {found['format']}")
        archive = found["archive"]
        return Manifest(
            tuple(_lesson(row) for row in found["lessons"]),
            None if archive is None else _file(archive),
            _text(found["archive_of"]),
        )
    except (KeyError, TypeError, AttributeError, RecursionError) as fault:
        raise ValueError(f"no manifest of a pack: {fault}") from fault


def _lesson(row: Mapping[str, Any]) -> LessonRecord:
    source, title, copy = row["identity"]
    return LessonRecord(
        Identity(_text(source), _text(title), _number(copy)),
        _part(row["name"]),
        _text(row["fingerprint"]),
        tuple(_file(file) for file in row["files"]),
        tuple(_text(remark) for remark in row["remarks"]),
    )


def _file(row: Any) -> FileRecord:
    path, size, digest = row
    if len(parts := _text(path).split("/")) > 2:
        raise ValueError(f"“{path}” is no file of a pack")
    for part in parts:
        _part(part)
    return FileRecord(path, _number(size), _text(digest))


def _part(name: Any) -> str:
    """A name that leads nowhere else; files named in a manifest may be deleted.

    Raises:
        ValueError: it leads elsewhere, or is no text that can be written down.
    """
    if not _text(name).strip(". ") or name.startswith(".") or set(name) & set("/\\:\0"):
        raise ValueError(f"“{name}” is no name in a pack")
    name.encode()  # half characters are refused by the system
    return str(name)


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise TypeError(f"expected a text, found {value!r}")
    return value


def _number(value: Any) -> int:
    if type(value) is not int:
        raise TypeError(f"expected a number, found {value!r}")
    return value
