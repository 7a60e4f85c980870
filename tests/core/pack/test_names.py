"""Names of files made from titles."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.pack.names import (
    DEVICES,
    LONGEST_BYTES,
    UNTITLED,
    Identity,
    free_name,
    name_lessons,
    safe_name,
    same_file,
)

FORBIDDEN = set('<>:"/\\|?*') | {chr(code) for code in range(32)}  # Microsoft, "Naming Files, Paths, and Namespaces"
titles = st.one_of(st.text(max_size=90), st.sampled_from(["CON", "lpt1", "Com¹", "..", "", "A" * 300, "é" * 200]))


@given(titles)
def test_a_name_is_safe_on_every_system(title):
    name = safe_name(title)
    assert name
    assert not set(name) & FORBIDDEN
    assert name == name.strip(" .")
    assert name.split(".")[0].upper() not in DEVICES
    assert len(name.encode()) <= LONGEST_BYTES + len(" tune")
    assert unicodedata.normalize("NFC", name) == name


@given(titles)
def test_a_name_is_a_name_of_itself(title):
    assert safe_name(safe_name(title)) == safe_name(title)


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("The Tuesday Ferry", "The Tuesday Ferry"),
        ("Who's there?", "Who's there"),
        ("AC/DC: part 2...", "AC DC part 2"),
        ("Fæiche Bhán", "Fæiche Bhán"),
        ("नदी", "नदी"),  # vowel signs belong to their letters
        ("🎻", UNTITLED),
        ("nul", "nul tune"),
    ],
)
def test_letters_stay_and_signs_go(title, name):
    assert safe_name(title) == name


@given(st.lists(st.sampled_from(["Reel", "REEL", "reel 2", "Re\u0301el", "R\u00e9el", "a/b", "a b"]), max_size=8))
def test_no_two_lessons_share_a_file_on_any_system(found):
    lessons = [Identity("file", title, found[:place].count(title)) for place, title in enumerate(found)]
    names = name_lessons(lessons, {})
    assert set(names) == set(lessons)
    assert len({same_file(name) for name in names.values()}) == len(lessons)


def test_a_lesson_keeps_its_name_when_others_come_before_it():
    old, new = Identity("b.abc", "Reel", 0), Identity("a.abc", "Reel", 0)
    before = name_lessons([old], {})
    assert name_lessons([new, old], before) == {old: "Reel", new: "Reel 2"}


def test_a_name_that_is_free_again_is_given_again():
    gone, new = Identity("a.abc", "Reel", 0), Identity("b.abc", "Reel", 0)
    assert name_lessons([new], {gone: "Reel"}) == {new: "Reel"}


def test_a_number_is_put_behind_a_name_that_is_taken():
    taken = {same_file("Reel"), same_file("REEL 2")}
    assert free_name("reel", taken) == "reel 3"
    assert same_file("Reel 3") in taken
