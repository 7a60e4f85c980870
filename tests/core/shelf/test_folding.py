"""Words made plain."""

import pytest

from core.shelf.folding import folded, indexed, sort_key, storable, words


@pytest.mark.parametrize(
    ("text", "plain"),
    [("Faíche", "faiche"), ("STRASSE", "strasse"), ("Straße", "strasse"), ("Sjölåt", "sjolat"), ("Bødalen", "bodalen"),
     ("Łódź", "lodz"), ("œuvre", "oeuvre"), ("Ｆｕｌｌ", "full")],
)  # fmt: skip
def test_accents_and_capitals_are_taken_off(text, plain):
    assert folded(text) == plain


def test_apostrophes_do_not_part_a_word_that_is_looked_for():
    assert words("the Keeper’s O'Brannan") == ["the", "keepers", "obrannan"]


def test_a_word_with_an_apostrophe_is_indexed_whole_and_cut():
    assert set(indexed("O'Brannan").split()) == {"o", "brannan", "obrannan"}


def test_titles_are_put_in_order_without_the_article():
    assert sort_key("The Gate") == "gate"
    assert sort_key("The") == "the"


def test_what_is_stored_is_one_line_of_whole_characters():
    assert storable("a\x00b\r\n\ud800c\u2028d") == "a b c d"
    assert len(storable("x" * 10_000)) == 400
