"""The tunes that come with the program."""

from __future__ import annotations

import re
from importlib.resources import as_file, files
from pathlib import Path

from core.translation import plural, tr

SAMPLE_SUFFIXES = (".abc", ".musicxml", ".mxl")
_TUNE = re.compile(r"^X:", re.MULTILINE)
_TITLE = re.compile(r"^T:(.*)$|<(?:work|movement)-title>([^<]*)<", re.MULTILINE)


def sample_files() -> list[Path]:
    """The tunes that come with the program, by name."""
    found = []
    for entry in files("sample_tunes").iterdir():
        if entry.name.endswith(SAMPLE_SUFFIXES):
            with as_file(entry) as path:
                found.append(path)
    return sorted(found)


def sample_label(path: Path) -> str:
    """What a sample is called, without reading it as a tune: the first screen should come at once."""
    text = path.read_text("utf-8")
    tunes = len(_TUNE.findall(text))
    if tunes > 1:
        return plural("{book} (1 tune)", "{book} ({n} tunes)", tunes, book=path.stem.replace("_", " ").capitalize())
    title = _TITLE.search(text)
    name = " ".join((title[1] or title[2]).split()) if title is not None else path.stem
    return name if path.suffix == ".abc" else tr("{title} (finished lesson)", title=name)
