"""The tunes that come with the program."""

from __future__ import annotations

import re
from pathlib import Path

from app.own_files import TOP
from core.translation import plural, tr

SAMPLE_SUFFIXES = (".abc", ".musicxml", ".mxl")
_TUNE = re.compile(r"^X:", re.MULTILINE)
_TITLE = re.compile(r"^T:(.*)$|<(?:work|movement)-title>([^<]*)<", re.MULTILINE)


def sample_files() -> list[Path]:
    """The tunes that come with the program, by name."""
    return sorted(path for path in (TOP / "sample_tunes").iterdir() if path.name.endswith(SAMPLE_SUFFIXES))


def sample_label(path: Path) -> str:
    """What a sample is called, without reading it as a tune: the first screen should come at once."""
    text = path.read_text("utf-8")
    tunes = len(_TUNE.findall(text))
    if tunes > 1:
        return plural("{book} (1 tune)", "{book} ({n} tunes)", tunes, book=path.stem.replace("_", " ").capitalize())
    title = _TITLE.search(text)
    name = " ".join((title[1] or title[2]).split()) if title is not None else path.stem
    return name if path.suffix == ".abc" else tr("{title} (finished lesson)", title=name)
