"""music21 and verovio read slurs, bows, graces and endings in our files as we wrote them."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, assume, given, settings
from immutabledict import immutabledict

from core.bowing import Articulation, Bow, Grace, Join, Mark, Ornament, Signs
from core.lesson import Lesson
from core.tune import Pitch
from core.writing.musicxml import write_musicxml
from tests.core.builders import bowed
from tests.outside.second_readers import Shown, read_by_music21, read_by_verovio, shown_by
from tests.property.strategies import AWKWARD, lessons

READERS = pytest.mark.parametrize("read", [read_by_music21, read_by_verovio])
# Derandomised: a second reader that fails on a rare document is not a fault of ours that comes and goes.
FEW = settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
Reader = Callable[[str], list[Shown]]


def two_bowings() -> Lesson:
    """Endings of two bars, a pick-up, graces before a slurred note, a hook and a fixed bow, in two versions."""
    tune, first = bowed("A|:(A2 B2) c2 d2|[1(A4 B2=c2)|d8:|[2e8|f8||g8|]")
    cut = Grace((Pitch(5, "C"),)), Grace((Pitch(4, "G", 1),), slashed=True)
    signs = Signs(cut, (Ornament.TRILL,), (Articulation.ACCENT,), ("2",))
    second = replace(
        first,
        name="With graces",
        joins=immutabledict({"b1n3": Join.SLUR, "b1n4": Join.HOOK}),
        marks=immutabledict({"b3n1": Mark(Bow.UP)}),
        signs=immutabledict({"b1n2": signs, "b2n1": Signs(cut)}),
    )
    return Lesson(tune, (first, second))


@READERS
def test_typed_slurs_bows_graces_and_endings_are_read_as_written(read: Reader) -> None:
    first, second = read(write_musicxml(two_bowings()))
    assert first.lengths[:9] == (0.5, 1, 1, 1, 1, 2, 1, 1, 4)
    assert first.repeats == ((False, False), (True, False), (False, False), (False, True), *[(False, False)] * 3)
    assert first.slurs == {(1, 2), (5, 7)}
    assert second.slurs == {(2, 4)}
    assert second.graces == ((2, (72,)), (2, (68,)), (5, (72,)), (5, (68,)))
    assert first.endings == second.endings == ((), (), (1,), (1,), (2,), (2,), ())
    down, up = Bow.DOWN, Bow.UP  # bar 1 goes the other way the second time, so it shows nothing
    assert first.bows == {(0, up), (5, up), (8, down), (9, down), (10, up), (11, down)}
    assert (8, Bow.UP) in second.bows  # fixed


@READERS
def test_typed_directions_are_read_as_written(read: Reader) -> None:
    tune, bowing = bowed("A2 B2 c2 vd2|(e4 f2) g2|]")
    (shown,) = read(write_musicxml(Lesson(tune, (bowing,))))
    down, up = Bow.DOWN, Bow.UP
    assert shown.bows == {(0, down), (1, up), (2, down), (3, down), (4, up), (6, down)}


@READERS
@pytest.mark.parametrize("lesson", AWKWARD, ids=range(len(AWKWARD)))
def test_awkward_lessons_are_read_as_written(read: Reader, lesson: Lesson) -> None:
    assert read(write_musicxml(lesson)) == [shown_by(lesson, bowing) for bowing in lesson.bowings]


@given(lessons())
@FEW
def test_music21_reads_any_lesson_as_written(lesson: Lesson) -> None:
    same = read_by_music21(write_musicxml(lesson)) == [shown_by(lesson, bowing) for bowing in lesson.bowings]
    assert same


@given(lessons())
@FEW
def test_verovio_reads_any_lesson_as_written(lesson: Lesson) -> None:
    # It divides by the length of a bar, and may end the process, where there is no metre.
    assume(all(bar.meter.bar_length is not None for bar in lesson.tune.bars))
    # Endings and repeats that follow each other without sense, which nobody prints, verovio changes.
    shown = [replace(part, endings=(), repeats=()) for part in read_by_verovio(write_musicxml(lesson))]
    same = shown == [replace(shown_by(lesson, bowing), endings=(), repeats=()) for bowing in lesson.bowings]
    assert same
