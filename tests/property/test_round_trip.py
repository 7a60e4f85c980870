"""Laws of files: what is written is read back equal, and the tune in it is never changed by the way it is packed."""

import pytest
from hypothesis import HealthCheck, given, settings

from core.lesson import Lesson
from core.reading.musicxml import read_musicxml, read_mxl
from core.writing.musicxml import write_musicxml
from core.writing.mxl import pack_mxl
from tests.property.strategies import AWKWARD, examples, lessons

UNHURRIED = settings(
    max_examples=examples(100), deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large]
)


def assert_comes_back(lesson: Lesson) -> None:
    reading = read_musicxml(write_musicxml(lesson).encode())
    same = reading.lessons == (lesson,)  # compared here: pytest would spend minutes on showing the difference
    assert same
    assert reading.problems == ()
    assert reading.is_lesson_file


@given(lessons())
@UNHURRIED
def test_a_written_lesson_is_read_back_equal(lesson: Lesson) -> None:
    assert_comes_back(lesson)


@pytest.mark.parametrize("lesson", AWKWARD, ids=range(len(AWKWARD)))
def test_awkward_lessons_are_read_back_equal(lesson: Lesson) -> None:
    assert_comes_back(lesson)


@given(lessons())
@settings(UNHURRIED, max_examples=examples(20))
def test_writing_what_was_read_gives_the_same_text(lesson: Lesson) -> None:
    text = write_musicxml(lesson)
    assert write_musicxml(read_musicxml(text.encode()).lessons[0]) == text


@given(lessons())
@settings(UNHURRIED, max_examples=examples(20))
def test_packing_changes_nothing(lesson: Lesson) -> None:
    assert read_mxl(pack_mxl(write_musicxml(lesson))) == read_musicxml(write_musicxml(lesson).encode())
