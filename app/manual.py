"""The manual: its pages, and where they are.

Pages are plain HTML in ``resources/manual``, so that a browser shows them too. Their pictures are made by
``python -m tests.manual``, which works the real window; tests hold the words to the texts of the program.
"""

from __future__ import annotations

from importlib.resources import as_file, files
from pathlib import Path
from typing import NamedTuple


class Page(NamedTuple):
    """A page of the manual: name of its file, and its title."""

    name: str
    title: str

    @property
    def file(self) -> str:
        return f"{self.name}.html"


PAGES = (
    Page("index", "Manual"),
    Page("first_bowing", "A first bowing"),
    Page("check", "What the bow check says"),
    Page("accents", "Accents"),
    Page("plan", "Have it worked out"),
    Page("compare", "Compare bowings"),
    Page("hear", "Hear it"),
    Page("print", "Print it"),
    Page("packs", "Lesson packs"),
    Page("shelf", "The shelf"),
    Page("sets", "Sets of tunes"),
    Page("keys", "All keys"),
)


def manual_folder() -> Path:
    """The folder that holds the pages."""
    with as_file(files("resources") / "manual") as folder:  # wheels are unpacked: it is always a folder
        return folder
