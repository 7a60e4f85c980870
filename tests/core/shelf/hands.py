"""What other processes do to a shelf while a test looks on; each is started by ``multiprocessing``."""

from __future__ import annotations

import os
from pathlib import Path

from core.shelf.catalogue import Catalogue
from core.shelf.remarks import change_tags, set_status
from core.shelf.scan import scan
from core.shelf.search import find


def put_tags_on(path: Path, tune: int, name: str, count: int) -> None:
    """Put tags on a tune one by one, and take every third off again."""
    with Catalogue(path) as catalogue:
        for number in range(count):
            change_tags(catalogue, tune, [f"{name} {number}"])
            if number % 3 == 0:
                change_tags(catalogue, tune, remove=[f"{name} {number}"])


def scan_again_and_again(path: Path, times: int) -> None:
    with Catalogue(path) as catalogue:
        for _ in range(times):
            scan(catalogue)


def tell_while_speaking(path: Path, told: Path) -> None:
    """Say something of tune after tune for ever, and note in a file what has been said for good."""
    with Catalogue(path) as catalogue, told.open("ab", buffering=0) as notes:
        tunes = [entry.id for entry in find(catalogue).entries]
        turn = 0
        while True:
            tune = tunes[turn % len(tunes)]
            set_status(catalogue, tune, ("ready", "taught")[turn // len(tunes) % 2])
            change_tags(catalogue, tune, [f"turn {turn}"])
            os.write(notes.fileno(), f"{tune} {turn}\n".encode())
            turn += 1
