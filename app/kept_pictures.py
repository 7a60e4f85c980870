"""Lines of lessons as they were engraved last time, kept in the user's data folder.

The first lines of a lesson that was open before are painted from here, before the engraver is loaded. What is kept is
never more than a saving of time: a file that is damaged, not to be read, or made by another version of the engraving is
passed over, and the lines are engraved.
"""

from __future__ import annotations

import hashlib
import json
import os
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from app.own_files import TOP
from core.engraving.glyphs import engraver_data
from core.engraving.keeping import Plain, from_plain, to_plain
from core.engraving.picture import Picture

TUNES_KEPT = 24
LINES_KEPT = 6  # of a tune: more than a window shows at once
LARGEST_BYTES = 4 * 2**20
DIGEST_BYTES = 32  # before the text, so that what is damaged is known
OWN_CODE = ("core", "core/engraving")  # whose modules a picture depends on
NO_PICTURE = (OSError, ValueError, TypeError, KeyError, IndexError, AttributeError, RecursionError)


class KeptPictures:
    """Pictures by the digest of their tune and their own name (``core.engraving.keeping``).

    Args:
        folder: Where they stand, a file for each tune; made when something is to be kept.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._made_by = _what_engraves()  # now: an update may put other files there while the window is open
        self._read: tuple[str, dict[str, Plain]] = ("", {})

    def find(self, tune: str, name: str) -> Picture | None:
        """The picture of a name, among those of a tune by its digest; None where none is kept."""
        plain = self._lines(tune).get(name)
        if plain is None:
            return None
        try:
            return from_plain(plain)
        except NO_PICTURE:
            self._read = (tune, {})  # it is written anew
            return None

    def keep(self, tune: str, pictures: Mapping[str, Picture]) -> None:
        """Keep some pictures of a tune in the place of those before, for the next time; the oldest tunes go.

        Not being able to is no harm.
        """
        pictures = dict(list(pictures.items())[:LINES_KEPT])
        if not pictures:
            return
        if self._lines(tune).keys() == pictures.keys():
            with suppress(OSError):
                os.utime(self._path(tune))
            return
        lines = {name: to_plain(picture) for name, picture in pictures.items()}
        from app.files import write_atomically

        with suppress(*NO_PICTURE):
            self._folder.mkdir(parents=True, exist_ok=True)
            text = json.dumps([self._made_by, lines], separators=(",", ":")).encode()
            write_atomically(self._path(tune), _digest(text) + text)
            self._read = (tune, lines)
            self._forget_oldest()

    def _lines(self, tune: str) -> dict[str, Plain]:
        """What is kept of a tune; read once."""
        if self._read[0] != tune:
            self._read = (tune, {})
            with suppress(*NO_PICTURE):
                path = self._path(tune)
                if path.stat().st_size <= LARGEST_BYTES:
                    data = path.read_bytes()
                    digest, text = data[:DIGEST_BYTES], data[DIGEST_BYTES:]
                    made_by, lines = json.loads(text) if digest == _digest(text) else ("", {})
                    if made_by == self._made_by:
                        self._read = (tune, lines)
        return self._read[1]

    def _path(self, tune: str) -> Path:
        return self._folder / f"{tune[:32]}.json"

    def _forget_oldest(self) -> None:
        files = sorted(self._folder.glob("*.json"), key=lambda path: path.stat().st_mtime, reverse=True)
        for path in files[TUNES_KEPT:]:
            path.unlink(missing_ok=True)


def _what_engraves() -> str:
    """What engraves, by name, size and times of every file of it; packages may set one of the times themselves."""
    told = []
    for folder in (*(TOP / name for name in OWN_CODE), engraver_data().parent):
        for entry in sorted(os.scandir(folder), key=lambda entry: entry.name):
            if entry.is_file():
                found = entry.stat()
                told.append((entry.name, found.st_size, found.st_mtime_ns, found.st_ctime_ns))
    return hashlib.sha256(repr(told).encode()).hexdigest()


def _digest(text: bytes) -> bytes:
    return hashlib.sha256(text).digest()
