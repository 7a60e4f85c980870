"""Which lessons go into a pack: files, folders with all inside, and the lesson on the page."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from hashlib import sha256
from pathlib import Path

from app.pack_folder import MANIFEST
from core.shelf.paths import is_under, to_bytes, to_path, to_text
from core.shelf.walk import Walk
from core.translation import tr
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Source:
    """A file whose lessons are packed.

    Attributes:
        path: The file, or a name for what is in no file.
        data: What is taken in place of the file's bytes.
    """

    path: Path
    data: bytes | None = None

    @property
    def key(self) -> str:
        """What stands for the file in the manifest; it does not tell where the file lies."""
        return sha256(to_bytes(self.path)).hexdigest()[:16]

    @property
    def shown(self) -> str:
        return to_text(self.path)


@dataclass(frozen=True, slots=True)
class Sources:
    """What was found.

    Attributes:
        sources: In the order found, no file twice.
        problems: Places and folders that cannot be read, a sentence each.
    """

    sources: tuple[Source, ...]
    problems: tuple[str, ...] = ()


def find_sources(places: Sequence[Path], given: Iterable[Source] = ()) -> Sources:
    """List the lessons and tune books in files and folders.

    Args:
        places: Files of any name, and folders. What lies in a pack, there or further in, is left out.
        given: Sources that come first; a file of the same path is not listed again.
    """
    first = tuple(given)
    walk = Walk()
    problems = []
    for place in places:
        if os.path.exists(place):
            walk.take(Path(os.path.abspath(place)))
        else:
            problems.append(tr("{file}: there is no such file or folder.", file=to_text(place)))
    problems += [
        tr("{file}: cannot be looked into: {why}.", file=to_text(to_path(path)), why=why) for path, why in walk.closed
    ]
    tops = [to_bytes(place) for place in places]
    packs: dict[Path, bool] = {}
    taken = {to_bytes(source.path) for source in first}
    found = [
        Source(path)
        for seen in walk.files
        if seen.path not in taken
        and not _in_pack(path := to_path(seen.path), [top for top in tops if is_under(seen.path, top)], packs)
    ]
    return Sources((*first, *found), tuple(problems))


def _in_pack(path: Path, tops: Sequence[bytes], packs: dict[Path, bool]) -> bool:
    """Whether a file was found on the way through a pack's folder; one that was named itself was not."""
    if to_bytes(path) in tops:
        return False
    for folder in path.parents:
        if folder not in packs:
            packs[folder] = (folder / MANIFEST).is_file()
        if packs[folder]:
            return True
        if to_bytes(folder) in tops:
            return False
    return False
