from fractions import Fraction

import pytest

from core.order import MAX_VISITS, Visit, endings, playing_order, sections
from core.tune import Bar, Jump, Note, Pitch, Tune
from tests.core.builders import tune_of


def order(text: str, part_order: str = "") -> str:
    """Bars in playing order, named A, B, C ... as written; bars that hold the same note count apart."""
    tune = tune_of(text, part_order=part_order)
    return "".join(chr(ord("A") + visit.bar) for visit in playing_order(tune))


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("A8", "A"),
        ("A8|B8|c8|]", "ABC"),
        ("|:A8|B8:|c8|]", "ABABC"),
        ("|:A8|B8::c8|d8:|", "ABABCDCD"),
        ("A8|B8:|c8|]", "ABABC"),  # ABC 2.1, 4.8: back to the start
        ("A8|B8||c8|d8:|", "ABCDCD"),  # ... or to the double bar
        ("A8:|B8:|", "AABB"),  # ... or to the repeat end
        ("|:A8||B8:|", "ABAB"),  # a sign to go back to outweighs the double bar
        ("|:A8|:B8:|", "ABB"),
        ("|:A8:|3B8|", "AAAB"),
        ("|:A8|B8|", "AB"),
    ],
)
def test_repeats(text: str, expected: str) -> None:
    assert order(text) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("|:A8|[1B8:|[2c8|]", "ABAC"),
        ("|:A8|[1B8:|[2c8|]d8|]", "ABACD"),
        ("|:A8|[1B8|c8:|[2d8|e8|]f8|]", "ABCADEF"),
        ("|:A8|[1,3B8:|[2c8:|d8|]", "ABACABD"),
        ("|:A8|[1,2B8:|[3c8|]", "ABABAC"),
        ("|:A8|[1B8:|[2c8:|d8|]", "ABACD"),  # the second repeat sign is a habit of tune books
        ("A8|[1B8:|[2c8||d8|[1e8:|[2f8|]", "ABACDEDF"),
        ("|:A8|[1B8:|c8|]", "ABAC"),  # no second ending: the last pass goes on behind the first
        ("|:A8:|[2B8|]", "AAB"),  # no first ending
        ("|:A8|[2B8:|c8|]", "AABC"),
        ("|:A8|[1B8:|[3c8|]", "ABAC"),  # a pass without an ending between two that have one
        ("|:A8|[1B8|[2c8:|", "ABAC"),
        ("|:A8|[1B8|]", "AB"),
    ],
)
def test_endings(text: str, expected: str) -> None:
    assert order(text) == expected


@pytest.mark.parametrize(
    ("text", "part_order", "expected"),
    [
        ("{A}A8|B8||{B}c8|]", "AAB", "ABABC"),
        ("{A}A8||{B}B8||{C}c8|]", "ABACA", "ABACA"),
        ("{A}|:A8:||:B8:|{B}c8|]", "ABA", "AABBCAABB"),
        ("A8|{A}B8||{B}c8|]", "BA", "ACB"),  # what comes before the first part is played first
        ("{A}A8||{B}B8||{C}c8|]", "AB", "AB"),  # a part that the header leaves out
        ("{A}A8||{B}B8|]", "AXB", "AB"),
        ("{A}A8||{B}B8|]", "XY", "AB"),
        ("A8||B8:|", "AB", "ABB"),  # no part is named in the music
        ("{A}A8||{B}B8||{A}c8|]", "ABA", "ABC"),  # a part written out again
    ],
)
def test_parts_in_the_order_of_the_header(text: str, part_order: str, expected: str) -> None:
    assert order(text, part_order) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("A8!fine!|B8!D.C. al Fine!|]", "ABA"),
        ("|:A8!fine!::B8:|c8!D.C. al Fine!|]", "AABBCA"),  # no repeats after the jump
        ("A8|B8!D.C.!|]", "ABAB"),
        ("A8!fine!|B8!D.C.!|]", "ABA"),
        ("A8|!segno!B8|c8!fine!|d8!D.S. al Fine!|]", "ABCDBC"),
        ("A8|!segno!B8!tocoda!|c8!D.S. al Coda!|!coda!d8|]", "ABCBD"),
        ("A8!tocoda!|B8!D.C. al Coda!|!coda!c8|d8|]", "ABACD"),
        ("|:A8|[1B8:|[2c8!fine!||d8!D.C. al Fine!|]", "ABACDAC"),  # the last ending after the jump
        ("|:A8|B8!D.C.!:|", "ABABAB"),  # after the last repeat
        ("A8!fine!||B8!D.C. al Fine!||c8!D.C. al Fine!|]", "ABACA"),  # a rondo
        ("A8!fine!||B8!D.C. al Fine!||c8|]", "ABAC"),  # what is written behind the jump is not lost
    ],
)
def test_jumps(text: str, expected: str) -> None:
    assert order(text) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("A8|B8!D.S.!|c8|]", "ABABC"),  # no segno
        ("A8|B8!D.C. al Coda!|!coda!c8|]", "ABABC"),  # no sign where to leave
        ("A8!tocoda!|B8!D.C. al Coda!|c8|]", "ABABC"),  # no coda
        ("A8|B8!D.C. al Fine!|c8|]", "ABABC"),  # no Fine
        ("!coda!A8|B8!tocoda!|c8!D.C. al Coda!|]", "ABCABABC"),  # the coda stands before the sign
        ("A8!D.C.!|B8!D.C.!|c8!D.C.!|]", "AABC"),
    ],
)
def test_signs_without_their_counterpart_leave_no_bar_out(text: str, expected: str) -> None:
    assert order(text) == expected


def test_passes_count_on_over_repeats_and_jumps() -> None:
    visits = playing_order(tune_of("|:A8|[1B8:|[2c8!D.C.!|]"))
    assert visits == tuple(Visit(*pair) for pair in [(0, 1), (1, 1), (0, 2), (2, 1), (0, 3), (2, 2)])


@pytest.mark.parametrize(
    "bar",
    [
        Bar(1, (), repeats=10**9),
        Bar(1, (), ending=(10**9,), repeats=2),
        Bar(1, (), repeats=1000, jump=Jump.DA_CAPO),
        Bar(1, (), segno=True, coda=True, to_coda=True, jump=Jump.DAL_SEGNO_AL_CODA, repeats=500, opens_repeat=True),
    ],
)
def test_nonsense_is_played_straight_through(bar: Bar) -> None:
    tune = Tune("", (bar,) * 500)
    assert playing_order(tune) == tuple(Visit(index, 1) for index in range(500))


def test_two_thousand_bars_each_with_a_jump_end_soon() -> None:
    note = Note("b0n1", Fraction(0), Fraction(4), (Pitch(4, "A"),))
    tune = Tune("", (Bar(1, (note,), jump=Jump.DA_CAPO_AL_FINE),) * 2000)
    assert 2000 <= len(playing_order(tune)) <= MAX_VISITS


def test_endings_numbered_below_one_are_played() -> None:
    assert playing_order(Tune("", (Bar(1, ()), Bar(2, (), ending=(0,))))) == (Visit(0, 1), Visit(1, 1))


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("A8|B8|]", ["AB"]),
        ("A8|B8||c8|]", ["AB", "C"]),
        ("|:A8|[1B8:|[2c8||d8|]", ["ABC", "D"]),  # both endings belong to their section
        ("|:A8:|[1B8:|[2c8|]", ["A", "BC"]),
        ("A8|{B}B8|]", ["A", "B"]),
        ("A8|:B8:|", ["A", "B"]),
    ],
)
def test_sections(text: str, expected: list[str]) -> None:
    found = sections(tune_of(text))
    assert ["".join(chr(ord("A") + index) for index in section) for section in found] == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("|:A8:|", []),
        ("|:A8|[1B8:|[2c8|]", [["B", "C"]]),
        ("|:A8|[1B8|c8:|[2d8|e8|]f8|]", [["BC", "DE"]]),
        ("|:A8|[1B8:|[2c8::d8|[1e8:|[2f8|]", [["B", "C"], ["E", "F"]]),
    ],
)
def test_endings_stand_by_repeats(text: str, expected: list[list[str]]) -> None:
    found = endings(tune_of(text))
    assert [["".join(chr(ord("A") + index) for index in ending) for ending in group] for group in found] == expected


def test_the_order_is_worked_out_once_for_a_tune() -> None:
    tune = tune_of("A8:|")
    assert playing_order(tune) is playing_order(tune)
    assert playing_order(tune) == playing_order(tune_of("A8:|"))
