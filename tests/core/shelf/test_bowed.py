"""What the bowed lessons on the shelf teach."""

from dataclasses import replace

import numpy as np
import pytest
from immutabledict import immutabledict

from core.bowing import Bowing, Join
from core.lesson import Lesson
from core.reading.abc import read_abc
from core.shelf.bowed import bowed_lessons, teaching_bowing
from core.shelf.errors import QueryError
from core.shelf.query import Query
from tests.core.shelf.conftest import abc

SLURRED = "(GA)Bc d2B2|(GA)Bc d2B2|G4 (dB)G2|G8|"
BARE = "GABc d2B2|e2dB d4|"
BEGUN = "(EF)GA B2G2|EFGA B2G2|E2G2 B2G2|E4 G4|F8|"


@pytest.fixture
def taught(shelf):
    shelf.write("book.abc", abc("Slurred", SLURRED, 1), abc("Bare", BARE, 2), abc("Begun", BEGUN, 3))
    shelf.scan()
    return shelf


def test_lessons_with_slurs_teach_and_bare_ones_are_counted(taught):
    found = bowed_lessons(taught.catalogue)
    assert sorted(one.tune.title for one in found.examples) == ["Begun", "Slurred"]
    assert (found.bare, found.problems) == (1, ())


def test_only_what_the_query_finds_teaches(taught):
    assert [one.tune.title for one in bowed_lessons(taught.catalogue, Query("slur")).examples] == ["Slurred"]
    assert bowed_lessons(taught.catalogue, Query("bare")).examples == ()
    with pytest.raises(QueryError):
        bowed_lessons(taught.catalogue, Query(key="H"))


def test_a_lesson_that_was_only_begun_does_not_teach_that_the_rest_is_separate(taught):
    (begun,) = bowed_lessons(taught.catalogue, Query("begun")).examples
    known = {int(bar) for bar, joined in zip(begun.read.bars, begun.joined, strict=True) if not np.isnan(joined)}
    assert known == {0}
    (whole,) = bowed_lessons(taught.catalogue, Query("slurred")).examples
    assert not np.isnan(whole.joined).any()


def test_a_file_that_went_costs_one_line(taught):
    gone = taught.write("gone.abc", abc("Gone", SLURRED.replace("G", "A")))
    taught.scan()
    gone.unlink()
    found = bowed_lessons(taught.catalogue)
    assert len(found.examples) == 2
    assert [problem.path for problem in found.problems] == [gone]


def test_reading_is_watched_and_can_be_left_off(taught):
    seen = []

    def watch(progress):
        seen.append((progress.done, progress.total))
        if progress.done == 1:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        bowed_lessons(taught.catalogue, watch=watch)
    assert seen[0] == (0, 3)


def test_the_bowing_that_is_looked_for_teaches():
    tune = read_abc(abc("Two", "GABc d2B2|")).lessons[0].tune
    short = Bowing("Short bows", joins=immutabledict({tune.sequence[1].id: Join.SLUR}))
    longer = replace(short, name="Longer bows")
    lesson = Lesson(tune, (Bowing("Bare"), short, longer))
    assert teaching_bowing(lesson) is short
    assert teaching_bowing(lesson, "long") is longer
    assert teaching_bowing(lesson, "bare") is None
    assert teaching_bowing(lesson, str(short.accents)) is short
