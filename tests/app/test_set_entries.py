"""How a tune of a set is named in one word."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.set_entries import EntryError, EntryName, find_entry, parse_entry
from core.reading import read_file

BOOK = b"X:3\nT:One\nK:D\nd2|\n\nX:5\nT:Two\nK:D\ne2|\n"
names = st.builds(
    EntryName,
    st.sampled_from(("a.abc", "a b.mxl", "dir/a.abc", "a#1.abc", "#.abc", "x2/a")),
    st.none() | st.integers(0, 999),
    st.integers(1, 12),
    st.none() | st.sampled_from(("Smooth", "By phrase, 2", "a/b", "x3", "#2")),
)


@pytest.mark.parametrize(
    ("word", "name"),
    [
        ("a.abc", EntryName("a.abc")),
        ("a.abc#2", EntryName("a.abc", 2)),
        ("a.abc#x3", EntryName("a.abc", None, 3)),
        ("a.abc#2x3", EntryName("a.abc", 2, 3)),
        ("a.abc#/Smooth bows", EntryName("a.abc", None, 1, "Smooth bows")),
        ("a.abc#2x3/Smooth", EntryName("a.abc", 2, 3, "Smooth")),
        ("a#b.abc#2", EntryName("a#b.abc", 2)),
    ],
)
def test_what_stands_behind_the_file_is_number_times_and_bowing(word: str, name: EntryName) -> None:
    assert parse_entry(word) == name


@pytest.mark.parametrize("word", ["a.abc#two", "a.abc#2x", "a.abc#-1", "a.abc#2*3", "#2"])
def test_other_forms_are_refused_with_what_was_expected(word: str) -> None:
    with pytest.raises(EntryError, match="expected FILE"):
        parse_entry(word)


@pytest.mark.parametrize("word", ["a.abc#x0", "a.abc#1x13"])
def test_times_are_kept_within_reason(word: str) -> None:
    with pytest.raises(EntryError, match="1 to 12 times"):
        parse_entry(word)


def test_a_file_of_that_very_name_is_that_file(tmp_path, monkeypatch) -> None:
    (tmp_path / "a#two").write_bytes(BOOK)
    monkeypatch.chdir(tmp_path)
    assert parse_entry("a#two") == EntryName("a#two")


@given(names)
def test_a_name_is_read_as_it_is_written(name: EntryName) -> None:
    assert parse_entry(str(name)) == name


class TestFinding:
    def test_a_tune_by_its_number_and_a_bowing_by_its_name(self) -> None:
        lesson, bowing = find_entry(EntryName("a.abc", 5, 1, "As written"), read_file(BOOK))
        assert (lesson.tune.title, bowing.name) == ("Two", "As written")

    @pytest.mark.parametrize(
        ("name", "sentence"),
        [
            (EntryName("a.abc"), "a.abc: a book of 2 tunes: expected one of them, such as a.abc#3"),
            (EntryName("a.abc", 4), "a.abc: no tune 4; there is 3, 5"),
            (EntryName("a.abc", 3, 1, "Smooth"), "a.abc: no bowing named “Smooth”; there is As written"),
        ],
    )
    def test_what_is_not_there_is_said(self, name: EntryName, sentence: str) -> None:
        with pytest.raises(EntryError) as refused:
            find_entry(name, read_file(BOOK))
        assert str(refused.value) == sentence

    def test_another_bowing_can_be_asked_for_all(self) -> None:
        with pytest.raises(EntryError, match="no bowing named “Backbeat”"):
            find_entry(EntryName("a.abc", 3), read_file(BOOK), "Backbeat")
