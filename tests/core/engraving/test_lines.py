from dataclasses import replace
from pathlib import Path

import pytest

import sample_tunes
from core.engraving.lines import Line, break_lines
from core.reading import read_file
from tests.core.builders import tune_of

SAMPLES = sorted(Path(sample_tunes.__file__).parent.glob("*.abc"))


def lines(text: str, meter: str = "4/4", bars_a_line: int = 4) -> list[tuple[int, int]]:
    return [(line.first, line.stop) for line in break_lines(tune_of(text, meter), bars_a_line)]


def test_four_full_bars_make_a_line() -> None:
    assert lines("A8|" * 8) == [(0, 4), (4, 8)]


def test_the_opening_pick_up_goes_with_the_first_line() -> None:
    assert lines("D2|" + "A8|" * 8) == [(0, 5), (5, 9)]


def test_each_part_begins_a_line_and_takes_its_pick_up_with_it() -> None:
    assert lines("D2|A8|A8|A8|A6:|E2|B8|B8|B8|B6:|") == [(0, 5), (5, 10)]


def test_a_repeat_sign_after_a_pick_up_does_not_leave_the_pick_up_alone() -> None:
    assert lines("D2|:A8|A8|A8|A6:|") == [(0, 5)]


@pytest.mark.parametrize("end", ["||", "|]", ":|", "::"])
def test_a_section_ends_at_a_repeat_double_or_final_bar(end: str) -> None:
    assert lines(f"A8|A8|A8{end}B8|B8|") == [(0, 3), (3, 5)]


def test_a_part_letter_begins_a_line() -> None:
    assert lines("{A}A8|A8|{B}B8|B8|") == [(0, 2), (2, 4)]


def test_a_second_ending_joins_the_line_before() -> None:
    assert lines("A8|A8|A8|A8|A8|A8|A8|[1 A8:|[2 A8||B8|B8|") == [(0, 4), (4, 9), (9, 11)]


def test_a_bar_after_the_last_ending_begins_a_line() -> None:
    tune = tune_of("A8|A8|A8|[1 A8:|[2 A8|B8|B8|")
    outside = tuple(replace(bar, ending=()) for bar in tune.bars[5:])  # no line shows where the ending stops
    broken = break_lines(replace(tune, bars=tune.bars[:5] + outside))
    assert broken == (Line(0, 5), Line(5, 7))


def test_endings_of_two_bars_share_a_line() -> None:
    assert lines("A8|A8|A8|A8|A8|A8|[1 A8|A8:|[2 A8|A8||") == [(0, 4), (4, 8), (8, 10)]


@pytest.mark.parametrize(
    ("bars", "sizes"), [(1, [1]), (2, [2]), (5, [5]), (6, [4, 2]), (7, [4, 3]), (9, [4, 5]), (13, [4, 4, 5])]
)
def test_no_bar_stands_alone_where_it_can_be_avoided(bars: int, sizes: list[int]) -> None:
    assert [stop - first for first, stop in lines("A8|" * bars)] == sizes


def test_four_bars_of_sixteenths_fit_a_line_and_no_more() -> None:
    assert lines(("A/" * 16 + "|") * 4) == [(0, 4)]
    assert lines(("A/" * 15 + "A/4A/4|") * 4) == [(0, 2), (2, 4)]


def test_a_line_of_one_bar_can_be_asked_for() -> None:
    assert lines("D2|A8|A8|", bars_a_line=1) == [(0, 2), (2, 3)]
    with pytest.raises(ValueError, match="at least one bar"):
        lines("A8|", bars_a_line=0)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
@pytest.mark.parametrize("bars_a_line", [1, 2, 3, 4, 7])
def test_every_bar_stands_on_one_line_in_order(path: Path, bars_a_line: int) -> None:
    for lesson in read_file(path.read_bytes()).lessons:
        broken = break_lines(lesson.tune, bars_a_line)
        assert [index for line in broken for index in range(line.first, line.stop)] == list(
            range(len(lesson.tune.bars))
        )
        assert all(isinstance(line, Line) and line.first < line.stop for line in broken)
