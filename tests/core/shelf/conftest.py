"""A folder of music with a shelf over it."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

import pytest

from core.shelf.catalogue import Catalogue
from core.shelf.query import Query
from core.shelf.scan import Progress, ScanReport, add_places, scan
from core.shelf.search import Entry, find

LONG_AGO_S = 1_000_000_000


def abc(title: str, notes: str, number: int = 1, dance: str = "reel", key: str = "D", meter: str = "4/4") -> str:
    """One tune of a book."""
    return f"X:{number}\nT:{title}\nR:{dance}\nM:{meter}\nL:1/8\nK:{key}\n{notes}|]\n\n"


@dataclass
class Shelf:
    """A catalogue with one place, ``folder``."""

    folder: Path
    catalogue: Catalogue
    clock: int = field(default=LONG_AGO_S)

    def write(self, name: str, *tunes: str) -> Path:
        """Write a book, with a time of its own and long past, so that a scan sees it as new and as settled."""
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("".join(tunes), encoding="utf-8")
        self.clock += 1
        os.utime(path, (self.clock, self.clock))
        return path

    def scan(
        self, watch: Callable[[Progress], None] = lambda _: None, stopped: Callable[[], bool] = lambda: False
    ) -> ScanReport:
        return scan(self.catalogue, watch=watch, stopped=stopped)

    def find(self, **parts: object) -> tuple[Entry, ...]:
        return find(self.catalogue, Query(**parts)).entries

    def titles(self, **parts: object) -> list[str]:
        return [entry.title for entry in self.find(**parts)]

    def one(self, **parts: object) -> Entry:
        (entry,) = self.find(**parts)
        return entry


@pytest.fixture
def shelf(tmp_path: Path) -> Iterator[Shelf]:
    folder = tmp_path / "music"
    folder.mkdir()
    with Catalogue(tmp_path / "kept" / "shelf.db") as catalogue:
        add_places(catalogue, [folder])
        yield Shelf(folder, catalogue)
