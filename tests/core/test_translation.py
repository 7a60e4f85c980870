"""Texts without a translator, and what a translator is asked for."""

import pytest

from core import translation
from core.translation import listed, number, ordinal, percent, plural, sentence, tr


@pytest.fixture
def polish():
    """A translator into something like Polish, which has three forms for counts."""
    forms = ("{n} smyczek {where}", "{n} smyczki {where}", "{n} smyczków {where}")

    def translate(text: str, comment: str, n: int | None) -> str:
        if text == "{n} strokes {where}" and n is not None:
            few = 2 <= n % 10 <= 4 and not 12 <= n % 100 <= 14
            return forms[0 if n == 1 else 1 if few else 2]
        return {("turn", "of the bow"): "obrót", ("turn", ""): "obiegnik", (".", "decimal sign"): ","}.get(
            (text, comment), ""
        )

    translation.install(translate)
    yield
    translation.install(None)


def test_english_needs_no_translator():
    assert tr("{bars}: down", bars="bar 5") == "bar 5: down"
    assert [plural("1 slur", "{n} slurs", n) for n in (0, 1, 2)] == ["0 slurs", "1 slur", "2 slurs"]


def test_values_may_hold_braces():
    assert tr("No tune named {name}", name="{n} {x}") == "No tune named {n} {x}"


def test_a_text_without_places_may_hold_braces():
    assert tr("{as it stands}") == "{as it stands}"


@pytest.mark.parametrize(("n", "form"), [(1, "1 smyczek tu"), (3, "3 smyczki tu"), (5, "5 smyczków tu"),
                                         (22, "22 smyczki tu")])  # fmt: skip
def test_a_count_takes_as_many_forms_as_the_language_has(polish, n, form):
    assert plural("1 stroke {where}", "{n} strokes {where}", n, where="tu") == form


def test_a_comment_tells_two_meanings_apart(polish):
    assert (tr("turn", "of the bow"), tr("turn")) == ("obrót", "obiegnik")


def test_what_is_not_translated_stays_english(polish):
    assert tr("slur") == "slur"
    assert plural("1 slur", "{n} slurs", 1) == "1 slur"


def test_numbers_take_the_decimal_sign_of_the_language(polish):
    assert (number(2.5), number(3, ".2f"), percent(0.5)) == ("2,5", "3,00", "50%")


def test_ordinals():
    assert [ordinal(n) for n in (1, 12, 13, 21, 22, 23, 24, 101, 111, 112, 113)] == [
        "first", "twelfth", "13th", "21st", "22nd", "23rd", "24th", "101st", "111th", "112th", "113th",
    ]  # fmt: skip


def test_rows():
    assert [listed(["a", "b", "c", "d"][:n]) for n in range(5)] == ["", "a", "a and b", "a, b and c", "a, b, c and d"]


def test_a_sentence():
    assert sentence("the pick-up is free") == "The pick-up is free."
