"""The manual: its pages, and where they are.

Pages are plain HTML in ``resources/manual``, so that a browser shows them too. Those of another language lie in a
folder inside, named by its code: the same names, and pictures of their own where these have words. ``python -m
tests.manual`` makes the pictures in the real window; tests hold the words to the texts of the program.
"""

from __future__ import annotations

from importlib.resources import as_file, files
from pathlib import Path
from typing import NamedTuple

from app.language import ENGLISH, LANGUAGES


class Page(NamedTuple):
    """A page of the manual: name of its file, and its title, which stands in English and is translated where shown."""

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
    Page("carry", "Carry on in a style"),
    Page("compare", "Compare bowings"),
    Page("hear", "Hear it"),
    Page("print", "Print it"),
    Page("packs", "Lesson packs"),
    Page("shelf", "The shelf"),
    Page("sets", "Sets of tunes"),
    Page("keys", "All keys"),
)


def manual_folder(language: str = ENGLISH) -> Path:
    """The folder that holds the pages in a language; in English where there are none in that.

    Args:
        language: A key of ``LANGUAGES``.
    """
    with as_file(files("resources") / "manual") as folder:  # wheels are unpacked: it is always a folder
        translated = folder / language
        return translated if translated.is_dir() else folder


def manual_languages() -> list[str]:
    """The codes of the languages that have pages."""
    return [code for code in LANGUAGES if code == ENGLISH or manual_folder(code) != manual_folder()]
