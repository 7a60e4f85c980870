"""First notes as letters, and what is typed to find them."""

import pytest

from core.shelf.errors import QueryError
from core.shelf.letters import NOTES_KEPT, Way, openings, parse_letters
from tests.core.builders import tune_of


def first(text):
    return openings(tune_of(text))[0]


def test_contour_tells_up_down_and_same():
    assert first("A2B2 B2A2|").contour == "usd"


def test_names_are_letters_whatever_the_octave():
    assert first("A2a2 g2G2|").names == "AAGG"


def test_moves_are_the_same_in_another_key_and_octave():
    assert first("A2B2 G2A2|").moves == first("e2f2 D2e2|").moves == "151"


def test_rests_and_held_notes_do_not_count():
    assert first("z2A2-A2B2|z4 c4|").names == "ABC"


def test_a_tune_with_a_pick_up_is_also_known_by_its_first_full_bar():
    assert [one.names for one in openings(tune_of("AB|c2d2 e2f2|]"))] == ["ABCDEF", "CDEF"]
    assert [one.names for one in openings(tune_of("c2d2 e2f2|]"))] == ["CDEF"]


def test_a_tune_without_notes_has_no_first_notes():
    assert openings(tune_of("z8|z8|]")) == ()


def test_no_more_notes_are_kept_than_anybody_types():
    assert len(first("ABcdABcd|" * 8).names) == NOTES_KEPT


@pytest.mark.parametrize(
    ("typed", "way", "letters"),
    [
        ("u d s", Way.CONTOUR, "uds"),
        ("ddd", Way.CONTOUR, "ddd"),
        ("U-U-D", Way.CONTOUR, "uud"),
        ("dBAF", Way.NAMES, "DBAF"),
        ("d, b, a", Way.NAMES, "DBA"),
        ("DDD", Way.NAMES, "DDD"),
    ],
)
def test_what_is_typed_is_a_contour_or_names(typed, way, letters):
    pattern = parse_letters(typed)
    assert (pattern.way, pattern.letters) == (way, letters)


def test_names_in_any_key_are_moves():
    assert parse_letters("dBAF", any_key=True) == parse_letters("eCBG", any_key=True)
    assert parse_letters("dBAF", any_key=True).way is Way.MOVES


@pytest.mark.parametrize("typed", ["H", "dB4", "up", "*", "d'"])
def test_anything_else_is_refused_with_what_was_expected(typed):
    with pytest.raises(QueryError, match="expected u, d and s"):
        parse_letters(typed)


def test_one_note_is_too_little_for_any_key():
    with pytest.raises(QueryError, match="two notes"):
        parse_letters("A", any_key=True)
