from dataclasses import replace
from fractions import Fraction

import pytest

from core.engraving.beams import beam_groups, tuplet_groups
from core.tune import Bar, Meter, Tuplet
from tests.core.builders import tune_of


def beams(text: str, meter: str = "4/4") -> list[int]:
    """How many notes each beam of the one typed bar takes, in order."""
    return [len(beam) for beam in beam_groups(tune_of(text, meter).bars[0])]


@pytest.mark.parametrize(
    ("meter", "text", "expected"),
    [
        ("4/4", "ABcd efga", [4, 4]),
        ("2/2", "ABcd efga", [4, 4]),
        ("4/4", "A2Bc d2ef", [2, 2]),
        ("4/4", "A3/2B/c3/2d/ e3/2f/g3/2a/", [2, 2, 2, 2]),
        ("4/4", "A/B/c/d/ efga", [4, 4]),
        ("4/4", "AB/c/ de fgab", [3, 2, 4]),
        ("4/4", "AB2c d2ef", [2]),
        ("2/4", "ABcd", [4]),
        ("2/4", "AB/c/ de", [3, 2]),
        ("3/4", "ABcdef", [2, 2, 2]),
        ("3/8", "ABc", [3]),
        ("6/8", "ABc def", [3, 3]),
        ("6/8", "A2B cde", [3]),
        ("6/8", "A3/2B/c def", [3, 3]),
        ("9/8", "ABc def gab", [3, 3, 3]),
        ("12/8", "ABc def gab agf", [3, 3, 3, 3]),
        ("3/2", "ABcd efga gfed", [4, 4, 4]),
    ],
)
def test_beams_show_the_beats_of_the_metre(meter: str, text: str, expected: list[int]) -> None:
    assert beams(text, meter) == expected


def test_groups_written_in_the_metre_are_kept() -> None:
    bar = replace(tune_of("ABcdefg", "7/8").bars[0], meter=Meter((2, 2, 3), 8))
    assert [len(beam) for beam in beam_groups(bar)] == [2, 2, 3]
    assert [len(beam) for beam in beam_groups(replace(bar, meter=Meter((3, 2, 2), 8)))] == [3, 2, 2]


def test_a_rest_breaks_a_beam_and_a_lone_eighth_has_a_flag() -> None:
    assert beams("ABzd efga") == [2, 4]
    assert beams("Az2d e2fg") == [2]


def test_a_pick_up_is_beamed_by_its_place_in_the_full_bar() -> None:
    pickup = tune_of("Bcd|e8").bars[0]
    assert pickup.start == Fraction(5, 2)
    assert beam_groups(pickup) == (range(3),)
    assert beam_groups(tune_of("ABcde|f8").bars[0]) == (range(1, 5),)


def triplets(count: int) -> Bar:
    bar = tune_of("A" * count, "4/4").bars[0]
    third = Fraction(1, 3)
    notes = (replace(n, at=third * i, length=third, tuplet=Tuplet(3, 2, i % 3 == 0)) for i, n in enumerate(bar.notes))
    return replace(bar, notes=tuple(notes), start=Fraction(0))


def test_each_triplet_has_a_beam_of_its_own() -> None:
    assert beam_groups(triplets(6)) == (range(0, 3), range(3, 6))
    assert tuplet_groups(triplets(6)) == (range(0, 3), range(3, 6))


def test_a_tuplet_without_a_marked_start_is_still_a_group() -> None:
    bar = triplets(3)
    notes = tuple(replace(note, tuplet=Tuplet(3, 2)) for note in bar.notes)
    assert tuplet_groups(replace(bar, notes=notes)) == (range(0, 3),)


def test_free_metre_is_beamed_by_quarters() -> None:
    bar = replace(tune_of("ABcd").bars[0], meter=Meter(()), start=Fraction(0))
    assert [len(beam) for beam in beam_groups(bar)] == [2, 2]
