"""Which lessons and tune books there are in a folder.

Links are followed, but no folder is entered and no file is listed twice, so that a link to a folder above ends nobody
up in a circle; what is reached without a link comes first. Hidden files and folders (a name with a dot in front) are
left out, and whatever is no plain file.
"""

from __future__ import annotations

import errno
import os
import stat
from collections.abc import Callable
from dataclasses import field
from pathlib import Path

from core.file_faults import why
from core.values import dataclass

SUFFIXES = (b".musicxml", b".mxl", b".abc")


@dataclass(frozen=True, slots=True)
class Seen:
    """A file as the folder tells of it.

    Attributes:
        path: Absolute, as bytes.
        size: Bytes.
        mtime_ns: Time of the last change in nanoseconds since 1970.
    """

    path: bytes
    size: int
    mtime_ns: int


@dataclass
class Walk:
    """What was found.

    Attributes:
        files: In the order found.
        closed: Folders that could not be looked into, and why; nothing is known of what is inside.
        identities: Device and number of every file listed, by which a second way to it is known.
    """

    files: list[Seen] = field(default_factory=list)
    closed: list[tuple[bytes, str]] = field(default_factory=list)
    identities: set[tuple[int, int]] = field(default_factory=set)
    _entered: set[tuple[int, int]] = field(default_factory=set)

    def take(self, place: Path, stopped: Callable[[], bool] = lambda: False) -> None:
        """List a folder with all inside, or one file whatever its name ends in.

        Args:
            place: Absolute.
            stopped: Asked for each folder; once it says True, the rest is left out.
        """
        path = os.fsencode(place)
        try:
            found = os.stat(path)
        except FileNotFoundError:
            return
        except (OSError, ValueError) as fault:
            self.closed.append((path, why(fault)))
            return
        if not stat.S_ISDIR(found.st_mode):
            self._list(path, found)
            return
        waiting: list[bytes] = [path]
        links: list[bytes] = []
        while (waiting or links) and not stopped():
            folder = waiting.pop() if waiting else links.pop(0)
            try:
                inner, linked = self._enter(folder)
            except OSError as fault:
                self._note_closed(folder, fault)
                continue
            waiting += reversed(inner)
            links += linked

    def _enter(self, folder: bytes) -> tuple[list[bytes], list[bytes]]:
        """List the files of a folder; return the folders and the links in it that are to be looked at later."""
        found = os.stat(folder)
        if not stat.S_ISDIR(found.st_mode):
            self._list(folder, found)  # a link to a file
            return [], []
        identity = (found.st_dev, found.st_ino)
        if identity in self._entered:
            return [], []
        with os.scandir(folder) as scanned:
            entries = sorted(scanned, key=lambda entry: entry.name)
        self._entered.add(identity)
        inner: list[bytes] = []
        links: list[bytes] = []
        for entry in entries:
            if entry.name.startswith(b"."):
                continue
            try:
                if entry.is_symlink():
                    if entry.is_dir() or _is_named_as_music(entry.name):
                        links.append(entry.path)
                elif entry.is_dir():
                    inner.append(entry.path)
                elif _is_named_as_music(entry.name):
                    self._list(entry.path, os.stat(entry.path))
            except OSError as fault:
                self._note_closed(entry.path, fault)
        return inner, links

    def _note_closed(self, path: bytes, fault: OSError) -> None:
        if fault.errno not in (errno.ENOENT, errno.ELOOP):  # it went while we looked, or is a link to nothing
            self.closed.append((path, why(fault)))

    def _list(self, path: bytes, found: os.stat_result) -> None:
        identity = (found.st_dev, found.st_ino)
        if not stat.S_ISREG(found.st_mode) or identity in self.identities:
            return
        self.identities.add(identity)
        self.files.append(Seen(path, found.st_size, found.st_mtime_ns))


def _is_named_as_music(name: bytes) -> bool:
    return name.lower().endswith(SUFFIXES)
