"""Good input to begin with: sample tunes, tunes of open collections, the unofficial MusicXML suite, awkward lessons."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

from core.lesson import Lesson
from core.reading.abc import decode
from core.writing.musicxml import write_musicxml
from tests.outside.musicxml_suite import FILES, MUSIC21
from tests.property.strategies import AWKWARD

SAMPLES = Path(__file__).parents[2] / "sample_tunes"
COLLECTIONS = ("ryansMammoth", "oneills1850", "airdsAirs")  # the three that ``tests.outside.abc_collections`` reads
EACH_NTH = 12  # file of a collection
LONGEST_SCORE = 5_000  # bytes of the files of others that are spoilt


@cache
def abc_tunes() -> tuple[str, ...]:
    """Tunes in ABC, each from its ``X:`` on."""
    files = sorted(SAMPLES.glob("*.abc"))
    for folder in COLLECTIONS:
        files += sorted((Path(MUSIC21.origin).parent / "corpus" / folder).glob("*.abc"))[::EACH_NTH]
    texts = [text for path in files for text in re.split(r"(?m)^(?=X:)", decode(path.read_bytes()))]
    return tuple(text for text in texts if text.startswith("X:") and len(text) < 450)


@cache
def lessons() -> tuple[Lesson, ...]:
    """Lessons of ours that are difficult."""
    return AWKWARD


@cache
def our_scores() -> tuple[str, ...]:
    """The same as lesson files."""
    return tuple(map(write_musicxml, lessons()))


@cache
def scores() -> tuple[bytes, ...]:
    """MusicXML documents: ours, and those of others that are not too long to be spoilt often."""
    ours = [text.encode() for text in our_scores()]
    ours += [path.read_bytes() for path in sorted(SAMPLES.glob("*.musicxml"))]
    others = [path.read_bytes() for path in FILES if path.suffix != ".mxl"]
    return tuple(data for data in (*ours, *others) if len(data) < LONGEST_SCORE)
