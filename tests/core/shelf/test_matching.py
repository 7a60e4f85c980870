"""Which tune is which after an edit."""

from hypothesis import given
from hypothesis import strategies as st

from core.shelf.matching import Likeness, pair

GATE, SILL, WEIR = Likeness(b"g", "gate", 1), Likeness(b"s", "sill", 2), Likeness(b"w", "weir", 3)
likenesses = st.builds(Likeness, st.sampled_from((b"a", b"b")), st.sampled_from(("", "x", "y")), st.integers(1, 2))


def test_a_tune_put_in_front_moves_the_others_on():
    assert pair([WEIR, GATE, SILL], [GATE, SILL]) == {1: 0, 2: 1}


def test_a_tune_given_another_title_is_the_same():
    assert pair([Likeness(b"g", "low gate", 1)], [SILL, GATE]) == {0: 1}


def test_a_tune_mended_in_a_note_is_the_same():
    assert pair([Likeness(b"G", "gate", 1)], [SILL, GATE]) == {0: 1}


def test_title_and_notes_changed_at_once_make_a_new_tune():
    assert pair([WEIR], [GATE]) == {}


def test_untitled_tunes_are_told_apart_by_their_notes_only():
    assert pair([Likeness(b"a", "", 1)], [Likeness(b"b", "", 1)]) == {}


def test_the_same_notes_count_more_than_the_same_title():
    assert pair([Likeness(b"g", "sill", 1)], [SILL, GATE]) == {0: 1}


def test_equal_tunes_are_told_apart_by_their_numbers_then_by_order():
    first, second = Likeness(b"g", "gate", 1), Likeness(b"g", "gate", 2)
    assert pair([second, first], [first, second]) == {0: 1, 1: 0}
    assert pair([GATE, GATE], [GATE, GATE]) == {0: 0, 1: 1}


@given(st.lists(likenesses, max_size=6))
def test_a_file_that_did_not_change_pairs_each_with_itself(tunes):
    assert pair(tunes, tunes) == {index: index for index in range(len(tunes))}


@given(st.lists(likenesses, max_size=6), st.lists(likenesses, max_size=6))
def test_no_tune_is_paired_twice_and_none_with_a_stranger(tunes, known):
    pairs = pair(tunes, known)
    assert len(set(pairs.values())) == len(pairs)
    for index, other in pairs.items():
        one, two = tunes[index], known[other]
        assert one.content == two.content or (one.title == two.title and one.title)
