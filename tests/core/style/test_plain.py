"""What a style reads of places, all at once, beside the same worked out plainly, place by place."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache
from pathlib import Path

import numpy as np
import pytest

from core.reading import read_file
from core.style.contexts import CONTEXTS
from core.style.numbers import NUMBERS
from core.style.style import facts
from core.tune import Tune
from tests.core.style.hands import lesson
from tests.core.style.plain import KEYS, MEASURES, Plain, plain_dance, plain_places
from tests.outside.book_of_1883 import FOLDER
from tests.outside.book_of_1883 import tune as printed

EVERY = 120  # so many tunes of the book apart
AWKWARD = b"""X:1
T:Awkward
M:6/8
L:1/8
R:jig
K:D
d2|"D"f2-f/e/ d>ef|[FA]2[Fd] z (3ABc d|(3:2:4d2ef2 g-|gag f4|:
M:4/4
A2-A2 z2 B2|[1 c8-|c4 d4:|[2 (5ABcde f3 g||
M:none
A B2 c3 d4 e5|
M:3/4
M:2/4
z4|D4|DE-|EFGA|]
X:2
T:Rests
M:5/8
K:C
z5|A z B z c|A5|
"""
SAMPLES = Path(__file__).parents[3] / "sample_tunes"


@cache
def tunes() -> tuple[Tune, ...]:
    """Tunes of all kinds."""
    return tuple(_tunes())


def _tunes() -> Iterator[Tune]:
    yield from (one.tune for one in read_file(AWKWARD).lessons)
    yield replace(lesson(0)[0], dance="fling")
    for path in sorted(SAMPLES.glob("*.musicxml"))[::5]:
        yield from (one.tune for one in read_file(path.read_bytes()).lessons)
    for path in sorted(FOLDER.glob("*.abc"))[::EVERY]:
        yield printed(path.stem)[0]


@cache
def plain() -> tuple[Sequence[Plain], ...]:
    """Their places."""
    return tuple(plain_places(tune) for tune in tunes())


def test_the_same_notes_can_be_joined() -> None:
    assert [facts(tune).found.ids for tune in tunes()] == [tuple(at.note.note.id for at in found) for found in plain()]
    assert sum(map(len, plain())) > 1500


@pytest.mark.parametrize("name", NUMBERS)
def test_a_number_is_what_its_name_says(name: str) -> None:
    column = 1 + list(NUMBERS).index(name)
    for tune, found in zip(tunes(), plain(), strict=True):
        expected = np.array([float(MEASURES[name](at)) for at in found]).astype(np.float32)
        np.testing.assert_array_equal(facts(tune).measures[:, column], expected, tune.title)


def test_the_dance_comes_first() -> None:
    for tune in tunes():
        assert (facts(tune).measures[:, 0] == plain_dance(tune)).all()


@pytest.mark.parametrize("context", CONTEXTS, ids=[context.name for context in CONTEXTS])
def test_places_are_alike_where_their_keys_are(context: tuple[str, object]) -> None:
    number = [one.name for one in CONTEXTS].index(context[0])
    for tune, found in zip(tunes(), plain(), strict=True):
        keys = [repr(KEYS[context[0]](at)) for at in found]
        groups = facts(tune).likeness.groups[number].tolist()
        assert len(set(zip(keys, groups, strict=True))) == len(set(keys)) == len(set(groups)), tune.title


def test_places_of_different_tunes_are_counted_together_where_their_keys_are_equal() -> None:
    keys: list[tuple[object, ...]] = []
    counted: list[int] = []
    for tune, found in zip(tunes(), plain(), strict=True):
        for at, row in zip(found, facts(tune).keys.tolist(), strict=True):
            of_place: list[tuple[object, ...]] = []
            for context in CONTEXTS:
                if not context.only_within:
                    key = repr(KEYS[context.name](at))
                    of_place.append((context.name, key))
                    if context.by_dance:
                        of_place.append((context.name, key, plain_dance(tune)))
            assert len(of_place) == len(row)
            keys += of_place
            counted += row
    assert len(set(zip(keys, counted, strict=True))) == len(set(keys)) == len(set(counted))
