"""The fiddle book of 1883 (1,059 ABC files in music21's corpus, folder ryansMammoth), read by our own reader."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import music21

from core.bowing import Bowing
from core.reading.abc import decode, read_abc
from core.tune import Tune

FOLDER = Path(music21.__file__).parent / "corpus" / "ryansMammoth"


def tune(name: str) -> tuple[Tune, Bowing]:
    """The tune of one file, named without its ending, bowed as printed."""
    lesson = read_abc(decode((FOLDER / f"{name}.abc").read_bytes())).lessons[0]
    return lesson.tune, lesson.bowings[0]


@cache
def all_tunes() -> dict[str, tuple[Tune, Bowing]]:
    """Every tune by the name of its file."""
    return {path.stem: tune(path.stem) for path in sorted(FOLDER.glob("*.abc"))}
