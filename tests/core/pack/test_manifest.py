"""The manifest of a pack as text."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.pack.manifest import FileRecord, LessonRecord, Manifest, read_manifest, record_of, write_manifest
from core.pack.names import Identity, safe_name

names = st.text(max_size=20).map(safe_name)
text = st.text(max_size=20)
files = st.builds(lambda name, data: record_of(f"{name}/{name}.abc", data), names, st.binary(max_size=9))
records = st.builds(
    LessonRecord, st.builds(Identity, text, text, st.integers(0, 9)), names, text,
    st.lists(files, max_size=2).map(tuple), st.lists(text, max_size=2).map(tuple),
)  # fmt: skip
manifests = st.builds(Manifest, st.lists(records, max_size=3).map(tuple), st.none() | files, text)


@given(manifests)
def test_a_manifest_is_read_as_it_was_written(manifest):
    assert read_manifest(write_manifest(manifest)) == manifest


@pytest.mark.parametrize("path", ["../a", "/etc/passwd", "a/../b", "a/b/c", "C:\\a", "", "a/.b", "a/"])
def test_a_manifest_that_leads_out_of_the_pack_is_refused(path):
    record = LessonRecord(Identity("s", "t", 0), "t", "f", (FileRecord(path, 1, "x"),))
    with pytest.raises(ValueError, match="pack"):
        read_manifest(write_manifest(Manifest((record,))))


@pytest.mark.parametrize(
    "text", ["", "{", "[]", "{}", '{"format": "bowbench-pack/2"}', '{"format": "bowbench-pack/1", "lessons": 1}']
)
def test_what_is_no_manifest_is_refused(text):
    with pytest.raises(ValueError):  # noqa: PT011  # the sentence is told with the file's name by ``app.pack_folder``
        read_manifest(text)


def test_a_value_of_another_kind_is_refused():
    found = json.loads(write_manifest(Manifest((LessonRecord(Identity("s", "t", 0), "t", "f", ()),))))
    found["lessons"][0]["files"] = [["a/b.abc", "12", "x"]]
    with pytest.raises(ValueError, match="number"):
        read_manifest(json.dumps(found))
