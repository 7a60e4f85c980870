"""Which files go into a pack."""

from pathlib import Path

import pytest

from app.pack_folder import MANIFEST
from app.pack_sources import Source, find_sources


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    for name in ("a.abc", "b/c.musicxml", "b/d.mxl", "b/e.pdf", ".hidden/f.abc", "pack/Reel/Reel.abc"):
        path = tmp_path / name
        path.parent.mkdir(exist_ok=True, parents=True)
        path.write_text(name)
    (tmp_path / "pack" / MANIFEST).write_text("{}")
    return tmp_path


def names(found):
    return [source.path.name for source in found.sources]


def test_lessons_and_tune_books_of_a_folder_go_in_but_no_pack(folder):
    found = find_sources([folder])
    assert names(found) == ["a.abc", "c.musicxml", "d.mxl"]
    assert found.problems == ()


def test_a_folder_in_a_pack_is_passed_over_too(folder):
    assert names(find_sources([folder / "pack"])) == []


def test_a_file_that_is_named_goes_in_wherever_it_lies(folder):
    assert names(find_sources([folder / "pack/Reel/Reel.abc", folder / "b/e.pdf"])) == ["Reel.abc", "e.pdf"]


def test_no_file_goes_in_twice(folder):
    assert names(find_sources([folder / "a.abc", folder, folder / "b"])) == ["a.abc", "c.musicxml", "d.mxl"]


def test_what_is_given_comes_first_and_in_the_place_of_its_file(folder):
    given = Source(folder / "b/c.musicxml", b"as on the page")
    found = find_sources([folder], [given])
    assert found.sources[0] is given
    assert names(found) == ["c.musicxml", "a.abc", "d.mxl"]


def test_a_place_that_is_not_there_is_told(folder):
    found = find_sources([folder / "nowhere", folder / "a.abc"])
    assert names(found) == ["a.abc"]
    assert [problem.split(":")[0] for problem in found.problems] == [str(folder / "nowhere")]


def test_the_key_of_a_file_does_not_tell_where_it_lies(folder):
    keys = {source.key for source in find_sources([folder]).sources}
    assert len(keys) == 3
    assert all(len(key) == 16 and int(key, 16) >= 0 for key in keys)
