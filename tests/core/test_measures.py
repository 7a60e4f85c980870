import pytest

from core.measures import MeasureNumber, implied_repeats, measure_numbers, printed_number


def test_measures_have_numbers_of_their_own() -> None:
    named = measure_numbers([0, 1, 2, 2, 3, 2])
    assert [number.text for number in named] == ["0", "1", "2", "2X1", "3", "2X2"]
    assert [number.implicit for number in named] == [True, False, False, True, False, True]
    assert named[0] == MeasureNumber("0", True)


@pytest.mark.parametrize(
    ("text", "number"), [("0", 0), ("17", 17), ("8X1", 8), (" 3 ", 3), ("X1", None), ("", None), ("1a", None)]
)
def test_printed_numbers(text: str, number: int | None) -> None:
    assert printed_number(text) == number


@pytest.mark.parametrize(
    ("endings", "index", "times"),
    [
        ([(), ()], 1, 2),  # no ending
        ([(), (1,), (2,)], 1, 2),
        ([(), (1,), (2,)], 2, 2),  # a repeat sign at the second ending asks for no third time
        ([(), (1, 2), (3,)], 1, 3),
        ([(), (1,), (1,), (2,)], 2, 2),
        ([(), (1, 2), ()], 1, 3),  # the ending of the third time is not written
    ],
)
def test_how_often_a_repeat_is_played_that_does_not_say_it(
    endings: list[tuple[int, ...]], index: int, times: int
) -> None:
    assert implied_repeats(endings, index) == times
