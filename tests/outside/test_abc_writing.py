"""ABC that we write, held against the standard's own examples, three open collections, and music21 as a second reader.

``python -m tests.outside.test_abc_writing`` takes all 4,248 tunes of the collections (a quarter of an hour; options in
``whole_runs``): each is read, written and read again, and music21 reads what was written. Where music21 and we differ,
the difference must have a name in ``abc_collections``; with it, it is printed.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from core.engraving.bow_signs import MarkDensity
from core.reading.abc import read_abc
from core.writing.abc import write_abc
from core.writing.abc_losses import abc_losses
from tests.outside.abc_collections import FOLDERS, Source, compare, sources
from tests.outside.test_abc_standard import HEADER, MUSIC, shorthand
from tests.outside.whole_runs import run

pytestmark = pytest.mark.skipif(not sources(*FOLDERS), reason="this music21 comes without the ABC collections")

STEP = 29  # one tune in so many is tried in the suite
MUSIC21_STEP = 131


def rewritten(source: Source, density: MarkDensity | None = None) -> Source:
    """A tune as we write it."""
    return Source(source.place, write_abc(read_abc(source.text).lessons, density))


def comes_back(source: Source) -> bool:
    """Whether a tune is read, written and read again without change."""
    lessons = read_abc(source.text).lessons
    return read_abc(write_abc(lessons)).lessons == lessons


@pytest.mark.parametrize("folder", FOLDERS)
def test_tunes_of_a_collection_come_back_equal(folder: str) -> None:
    assert [source.place for source in sources(folder)[::STEP] if not comes_back(source)] == []


@pytest.mark.parametrize("density", [None, MarkDensity.EVERY], ids=["as fixed", "every stroke marked"])
@pytest.mark.parametrize("folder", FOLDERS)
def test_music21_reads_what_we_write_as_we_meant_it(folder: str, density: MarkDensity | None) -> None:
    verdicts = [compare(rewritten(source, density)) for source in sources(folder)[::MUSIC21_STEP]]
    assert [(verdict.source.place, verdict.differences) for verdict in verdicts if verdict.name == "unexplained"] == []


@pytest.mark.parametrize("music", [row[1] for row in MUSIC], ids=[f"{row[0]} {row[1]!r}" for row in MUSIC])
def test_examples_of_the_standard_come_back_equal(music: str) -> None:
    lessons = read_abc(HEADER + music).lessons
    text = write_abc(lessons)
    assert shorthand(text)[0] == shorthand(HEADER + music)[0]
    assert read_abc(text).lessons == lessons
    assert abc_losses(lessons[0]) == ()


def examine(source: Source) -> Iterator[tuple[str, str]]:
    """What a run by hand counts of a tune: how it comes back to us, and how music21 reads it."""
    yield ("comes back equal", "") if comes_back(source) else ("comes back changed", "comes back changed")
    for density, kind in ((None, ""), (MarkDensity.EVERY, ", every stroke marked")):
        verdict = compare(rewritten(source, density))
        name = f"music21{kind}: {verdict.name or 'equal as it stands'}"
        yield name, "" if verdict.mended else f"{name} ({', '.join(verdict.differences)})"


if __name__ == "__main__":
    run("Read, write and read again tunes of the collections as ABC, and let music21 read what is written.", examine)
