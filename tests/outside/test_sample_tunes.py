"""The sample tunes are our own: beside the 4,248 tunes of the three ABC collections that music21 carries, none has two
bars of a reel (16 notes) in common with a tune of theirs, in any key and any rhythm.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from importlib.resources import files
from itertools import pairwise
from pathlib import Path

import music21
import pytest

from core.reading.abc import decode, read_abc
from core.tune import Tune

COLLECTIONS = ("ryansMammoth", "oneills1850", "airdsAirs")
NOTES_IN_A_ROW = 16
SAMPLES = sorted(entry.name for entry in files("sample_tunes").iterdir() if entry.name.endswith(".abc"))


@pytest.mark.parametrize("name", SAMPLES)
def test_no_sample_has_sixteen_notes_in_a_row_from_an_old_collection(name: str) -> None:
    for tune in tunes_in(files("sample_tunes").joinpath(name).read_bytes()):
        assert [known()[steps] for steps in runs(tune) if steps in known()] == []


def test_the_comparison_finds_a_tune_of_a_collection_in_another_key_and_rhythm() -> None:
    soldiers_joy_in_g = tunes_in(b"X:1\nL:1/8\nK:G\nb>ag>a bd'c'b | a2gf gabc' a2 |")[0]
    assert [known().get(steps) for steps in runs(soldiers_joy_in_g)] == ["SOLDIERS' JOY."]


def tunes_in(data: bytes) -> list[Tune]:
    return [lesson.tune for lesson in read_abc(decode(data)).lessons]


def runs(tune: Tune) -> Iterator[tuple[int, ...]]:
    """Steps in semitones between each sixteen notes in a row, as written, rests and held notes left out."""
    pitches = [note.pitches[-1].midi for note in tune.sequence if note.pitches and not note.held]
    steps = [after - before for before, after in pairwise(pitches)]
    for first in range(len(steps) - NOTES_IN_A_ROW + 2):
        yield tuple(steps[first : first + NOTES_IN_A_ROW - 1])


@cache
def known() -> dict[tuple[int, ...], str]:
    """Title of a tune by each run of steps that it has."""
    folder = Path(music21.__file__).parent / "corpus"
    found: dict[tuple[int, ...], str] = {}
    for path in sorted(path for name in COLLECTIONS for path in (folder / name).glob("*.abc")):
        for tune in tunes_in(path.read_bytes()):
            found.update(dict.fromkeys(runs(tune), tune.title))
    return found
