"""ABC that we write, held against the standard's own examples, three open collections, and music21 as a second reader.

``python -m tests.outside.test_abc_writing [folder ...]`` takes all 4,248 tunes of the collections: each is read,
written and read again, and music21 reads what was written (some minutes). Where music21 and we differ, the difference
must have a name in ``abc_collections``; with it, it is printed.
"""

from __future__ import annotations

import sys
from collections import Counter

import pytest

from core.engraving.bow_signs import MarkDensity
from core.reading.abc import read_abc
from core.writing.abc import write_abc
from core.writing.abc_losses import abc_losses
from tests.outside.abc_collections import FOLDERS, Source, Verdict, compare, sources
from tests.outside.test_abc_standard import HEADER, MUSIC, shorthand

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


def _report(folders: tuple[str, ...]) -> None:
    counts: Counter[str] = Counter()
    for source in sources(*folders):
        counts["tunes"] += 1
        if not comes_back(source):
            counts["changed by writing and reading"] += 1
            print(f"{source.place}: changed")
        verdict: Verdict = compare(rewritten(source))
        counts[verdict.name or "read by music21 as it stands"] += 1
        if not verdict.mended:
            print(f"{source.place}: {verdict.name} ({', '.join(verdict.differences)})", flush=True)
    for name, count in counts.most_common():
        print(f"{count:5} {name}")


if __name__ == "__main__":
    _report(tuple(sys.argv[1:]) or FOLDERS)
